package weekwright.engine.explain;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Variant;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Window;

/**
 * Does what a remedy says, by reading its sentences as a coach would and changing the documents by hand. Where a session
 * is named that there are several of, the one asked for by number is meant.
 */
final class Doing {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final Pattern MOVE = Pattern.compile("Move (.*) to (\\w{3} \\d+ \\w{3} \\d\\d:\\d\\d)(.*)");
    private static final Pattern HOLD = Pattern.compile("Hold (.*\\)) (at .*|nowhere in particular.*)");
    private static final Pattern DO = Pattern.compile("Do (.*\\))( in a \\w+ dose.*)");
    private static final Pattern TAKE = Pattern.compile("Take (.*) for (.*\\))");
    private static final Pattern LET = Pattern.compile("Let (.*) lead (.*)");
    private static final Pattern LEAVE = Pattern.compile("Leave out (.*)");
    private static final Pattern PLACE = Pattern.compile("Place (.*) on (\\w{3} \\d+ \\w{3} \\d\\d:\\d\\d)(.*)");
    private static final Pattern LONGER = Pattern.compile(
            "(?:Free|Have) (.*?)(?: open)? (until|from) (\\d\\d:\\d\\d) on (\\w{3} \\d+ \\w{3}), (.*) (?:longer|earlier)");
    private static final Pattern DROP =
            Pattern.compile("Drop the aim of (.*) for (.*?)(?:, and with it \\d+ sessions?)?");
    private static final Pattern DOSE = Pattern.compile("in a (full|reduced|micro) dose");

    private final int which;
    private Scenario scenario;
    private Plan plan;

    Doing(Scenario scenario, Plan plan, int which) {
        this.scenario = scenario;
        this.plan = plan;
        this.which = which;
    }

    Scenario scenario() {
        return scenario;
    }

    Plan plan() {
        return plan;
    }

    /** How many sessions a step could mean. */
    static int meanings(Scenario scenario, Plan plan, List<String> steps) {
        Doing doing = new Doing(scenario, plan, 0);
        return steps.stream()
                .mapToInt(step -> (int) plan.placements().stream()
                        .filter(placed -> step.contains(doing.name(placed)))
                        .count())
                .max()
                .orElse(1);
    }

    void step(String step) {
        boolean done = step.startsWith("Unpin ")
                || matched(MOVE, step, this::move)
                || matched(HOLD, step, this::hold)
                || matched(DO, step, this::dose)
                || matched(TAKE, step, this::take)
                || matched(LET, step, this::let)
                || matched(LEAVE, step, this::leave)
                || matched(PLACE, step, this::place)
                || matched(DROP, step, this::drop)
                || matched(LONGER, step, this::longer);
        if (!done) {
            throw new AssertionError("nobody could do this: " + step);
        }
    }

    private static boolean matched(Pattern pattern, String step, Predicate<Matcher> action) {
        Matcher matcher = pattern.matcher(step);
        return matcher.matches() && action.test(matcher);
    }

    private boolean move(Matcher step) {
        Placement was = session(step.group(1));
        return replace(was, changed(was, moment(step.group(2)), step.group(3)));
    }

    private boolean hold(Matcher step) {
        Placement was = session(step.group(1));
        return replace(was, changed(was, was.start(), ", " + step.group(2)));
    }

    private boolean dose(Matcher step) {
        Placement was = session(step.group(1));
        return replace(was, changed(was, was.start(), step.group(2)));
    }

    private boolean take(Matcher step) {
        Placement was = session(step.group(2));
        String variant = family(was.family()).variants().stream()
                .filter(one -> one.label().equals(step.group(1)))
                .map(Variant::id)
                .findFirst()
                .orElseThrow();
        return replace(was, placement(was, was.start(), was.facility(), was.lead(), was.dose(), variant));
    }

    private boolean let(Matcher step) {
        Placement was = session(step.group(2));
        return replace(was, changed(was, was.start(), ", led by " + step.group(1)));
    }

    private boolean leave(Matcher step) {
        return replace(session(step.group(1)), null);
    }

    private boolean place(Matcher step) {
        Moment start = moment(step.group(2));
        for (Group group : scenario.groups()) {
            for (Aim aim : group.aims()) {
                String label = family(aim.family()).label();
                String name = scenario.groups().size() < 2 ? label : label + " of " + group.label();
                if (name.equals(step.group(1))) {
                    Dose fullest = aim.doses().stream().min(Dose::compareTo).orElseThrow();
                    Placement none = new Placement(
                            id(group, aim, start),
                            group.id(),
                            aim.family(),
                            start,
                            null,
                            null,
                            null,
                            fullest,
                            null,
                            null);
                    return replace(null, changed(none, start, step.group(3)));
                }
            }
        }
        return false;
    }

    /** The first of the aim's sessions of the week that is not placed. */
    private String id(Group group, Aim aim, Moment start) {
        long week = java.time.temporal.ChronoUnit.DAYS.between(scenario.firstDay(), start.date()) / 7;
        String prefix = group.id() + "/" + aim.key() + "/" + scenario.firstDay().plusWeeks(week) + "/";
        for (int number = 1; ; number++) {
            String id = prefix + number;
            if (plan.placements().stream().noneMatch(placed -> id.equals(placed.id()))) {
                return id;
            }
        }
    }

    private boolean drop(Matcher step) {
        for (Group group : scenario.groups()) {
            for (Aim aim : group.aims()) {
                boolean meant = group.label().equals(step.group(2))
                        && family(aim.family()).label().equals(step.group(1));
                if (meant) {
                    drop(group, aim);
                    return true;
                }
            }
        }
        return false;
    }

    private void drop(Group group, Aim aim) {
        List<Aim> rest = group.aims().stream()
                .filter(other -> !other.key().equals(aim.key()))
                .toList();
        scenario = Amended.with(scenario, group.withAims(rest));
        String prefix = group.id() + "/" + aim.key() + "/";
        plan = with(plan.placements().stream()
                .filter(placed -> !Objects.requireNonNull(placed.id()).startsWith(prefix))
                .toList());
    }

    private boolean longer(Matcher step) {
        String who = step.group(1);
        ClockTime edge = ClockTime.parse(step.group(3));
        int minutes = step.group(5).equals("1 h")
                ? 60
                : Integer.parseInt(step.group(5).replace(" min", ""));
        boolean later = step.group(2).equals("until");
        ClockTime from = later ? new ClockTime(edge.minutes() - minutes) : edge;
        ClockTime to = later ? edge : new ClockTime(edge.minutes() + minutes);
        Window more = new Window(List.of(), day(step.group(4)), from, to, null, null);
        for (Group group : scenario.groups()) {
            if (step.group().startsWith("Free ") && group.label().equals(who)) {
                scenario = Amended.with(scenario, group.withWindows(and(group.windows(), more)));
                return true;
            }
        }
        for (Facility facility : scenario.facilities()) {
            if (step.group().contains(" open ") && facility.label().equals(who)) {
                scenario = Amended.with(scenario, facility.withOpen(and(facility.open(), more)));
                return true;
            }
        }
        for (StaffMember member : scenario.staff()) {
            if (member.name().equals(who)) {
                scenario = Amended.with(scenario, member.withWindows(and(member.windows(), more)));
                return true;
            }
        }
        return false;
    }

    private static List<Window> and(List<Window> windows, Window more) {
        List<Window> all = new ArrayList<>(windows);
        all.add(more);
        return all;
    }

    /** A session as it is with the place, the dose and the lead that are named. */
    private Placement changed(Placement was, Moment start, String named) {
        String facility = named.startsWith(", nowhere in particular") ? null : was.facility();
        for (Facility one : scenario.facilities()) {
            facility = says(named, ", at " + one.label()) ? one.id() : facility;
        }
        String lead = was.lead();
        for (StaffMember one : scenario.staff()) {
            lead = says(named, ", led by " + one.name()) ? one.id() : lead;
        }
        Matcher dosed = DOSE.matcher(named);
        Dose dose = dosed.find() ? Dose.valueOf(dosed.group(1).toUpperCase(Locale.ROOT)) : was.dose();
        return placement(was, start, facility, lead, dose, was.variant());
    }

    private static boolean says(String named, String words) {
        return Pattern.compile(Pattern.quote(words) + "(?=,|$)").matcher(named).find();
    }

    private static Placement placement(
            Placement was,
            Moment start,
            @Nullable String facility,
            @Nullable String lead,
            Dose dose,
            @Nullable String variant) {
        return new Placement(
                was.id(), was.group(), was.family(), start, was.minutes(), facility, lead, dose, variant, null);
    }

    private boolean replace(@Nullable Placement was, @Nullable Placement now) {
        List<Placement> placements = new ArrayList<>(plan.placements());
        placements.remove(was);
        if (now != null) {
            placements.add(now);
        }
        plan = with(placements);
        return true;
    }

    private Plan with(List<Placement> placements) {
        return new Plan(
                plan.weekwright(),
                plan.scenario(),
                null,
                plan.published(),
                null,
                placements,
                List.of(),
                List.of(),
                null,
                List.of());
    }

    private Placement session(String name) {
        List<Placement> meant = plan.placements().stream()
                .filter(placed -> name(placed).equals(name))
                .toList();
        return meant.get(which % meant.size());
    }

    private String name(Placement placed) {
        String label = family(placed.family()).label();
        String group = scenario.groups().stream()
                .filter(one -> one.id().equals(placed.group()))
                .map(Group::label)
                .findFirst()
                .orElseThrow();
        return label + (scenario.groups().size() < 2 ? "" : " of " + group) + " ("
                + DAY.format(placed.start().local()) + " "
                + placed.start().local().toLocalTime() + ")";
    }

    private Family family(String id) {
        return Catalogue.builtIn().with(scenario.catalogue()).family(id);
    }

    private Moment moment(String said) {
        int space = said.lastIndexOf(' ');
        return Moment.of(day(said.substring(0, space)).atTime(java.time.LocalTime.parse(said.substring(space + 1))));
    }

    private LocalDate day(String said) {
        Function<Integer, LocalDate> date = scenario.firstDay()::plusDays;
        for (int day = -1; day <= scenario.days(); day++) {
            if (DAY.format(date.apply(day)).equals(said)) {
                return date.apply(day);
            }
        }
        throw new AssertionError("no day is called " + said);
    }
}
