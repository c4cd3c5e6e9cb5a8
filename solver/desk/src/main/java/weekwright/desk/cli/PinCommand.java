package weekwright.desk.cli;

import java.util.Arrays;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Pinning;
import weekwright.desk.app.Pinning.Kind;
import weekwright.desk.app.Pinning.Pinned;
import weekwright.desk.app.Pinning.Request;
import weekwright.desk.app.Work;
import weekwright.desk.view.plan.Changed;
import weekwright.desk.view.terminal.Plain;
import weekwright.model.Nearest;

/** Pins something of a session, and judges the plan anew. */
@Command(
        name = "pin",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Holds something of a session, so that no search changes it, and judges the plan anew.",
            "With a value it is changed first; without, it is held as it is. What is pinned against the rules is kept,"
                    + " and what it breaks is said."
        })
final class PinCommand implements Callable<Integer> {
    /** Stands for an option without a value. */
    private static final String AS_IT_IS = "";

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    private String scenario = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PLAN",
            description = "The plan, or - for standard input; a folder brings its own, and keeps the change.")
    private @Nullable String plan;

    @Option(
            names = "--session",
            required = true,
            paramLabel = "ID",
            description = "The session, by its id in the plan.")
    private String session = "";

    @ArgGroup(exclusive = true)
    private @Nullable Pins pins;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "PLAN",
            description = "File to write the plan into; it is replaced whole or not at all.")
    private @Nullable String output;

    @Option(names = "--json", description = "Print the plan as JSON instead of showing it.")
    private boolean json;

    /** What is pinned or let go. */
    private static final class Pins {
        @Option(
                names = "--start",
                arity = "0..1",
                fallbackValue = AS_IT_IS,
                paramLabel = "T",
                description = "Its start.")
        private @Nullable String start;

        @Option(
                names = "--day",
                arity = "0..1",
                fallbackValue = AS_IT_IS,
                paramLabel = "D",
                description = "Its day; the hour may change.")
        private @Nullable String day;

        @Option(
                names = "--facility",
                arity = "0..1",
                fallbackValue = AS_IT_IS,
                paramLabel = "ID",
                description = "Its place.")
        private @Nullable String facility;

        @Option(
                names = "--lead",
                arity = "0..1",
                fallbackValue = AS_IT_IS,
                paramLabel = "ID",
                description = "Who leads it.")
        private @Nullable String lead;

        @Option(
                names = "--dose",
                arity = "0..1",
                fallbackValue = AS_IT_IS,
                paramLabel = "NAME",
                description = "Its dose: full, reduced or micro.")
        private @Nullable String dose;

        @Option(
                names = "--variant",
                arity = "0..1",
                fallbackValue = AS_IT_IS,
                paramLabel = "ID",
                description = "Which lift it is.")
        private @Nullable String variant;

        @Option(names = "--out", description = "It is left out on purpose.")
        private boolean out;

        @Option(names = "--not-day", paramLabel = "D", description = "A day on which it must not lie.")
        private @Nullable String notDay;

        @Option(
                names = "--clear",
                arity = "0..1",
                fallbackValue = AS_IT_IS,
                paramLabel = "KIND",
                description =
                        "Lets go what is named (start, day, facility, lead, dose, variant, out, not-day), or all.")
        private @Nullable String clear;

        Request request() {
            if (clear != null) {
                return new Request(clear.equals(AS_IT_IS) ? null : kind(clear), null, true);
            }
            if (out) {
                return new Request(Kind.OUT, null, false);
            }
            Kind[] kinds = {Kind.START, Kind.DAY, Kind.FACILITY, Kind.LEAD, Kind.DOSE, Kind.VARIANT, Kind.NOT_DAY};
            @Nullable String[] values = {start, day, facility, lead, dose, variant, notDay};
            for (int i = 0; i < kinds.length; i++) {
                String value = values[i];
                if (value != null) {
                    return new Request(kinds[i], value.equals(AS_IT_IS) ? null : value, false);
                }
            }
            throw nothingSaid();
        }

        private static Kind kind(String name) {
            return Arrays.stream(Kind.values())
                    .filter(kind -> kind.id().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new InputFault("--clear is \"" + name + "\": "
                            + Nearest.hint(
                                    name,
                                    Arrays.stream(Kind.values()).map(Kind::id).toList())));
        }
    }

    private static InputFault nothingSaid() {
        return new InputFault("nothing is said of what to pin: give one of --start, --day, --facility, --lead, --dose,"
                + " --variant, --out, --not-day and --clear");
    }

    PinCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        if (pins == null) {
            throw nothingSaid();
        }
        Request request = pins.request();
        Work work = Work.toChange(new Inputs(around.in()), scenario, plan, output, around.clock());
        around.tell(work.news());
        Pinned pinned = Pinning.pin(around.planner(), work.scenario(), work.planned(), session, request);
        Shown shown = new Shown(around, work.scenario(), pinned.judged());
        around.err().println(Plain.text(pinned.text()));
        shown.save(work.target(), Changed.pinned(work.scenario(), session, pinned.text()));
        if (work.target() == null && !json) {
            around.err().println("Nothing is written: give -o PLAN to keep it.");
        }
        shown.print(json ? shown.planJson() : null);
        return shown.exit();
    }
}
