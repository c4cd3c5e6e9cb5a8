package weekwright.model.document;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import weekwright.model.answer.Comparison;
import weekwright.model.answer.DaySheet;
import weekwright.model.answer.LoadReport;
import weekwright.model.answer.TradeOffs;
import weekwright.model.answer.WhyNot;
import weekwright.model.catalogue.Family;
import weekwright.model.document.Node.Kind;
import weekwright.model.plan.Log;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.Rule;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/**
 * Reads and writes the documents: strictly, with every fault at once; stably, so that writing what was read changes
 * nothing any more.
 *
 * <p>Bytes become values with their places, are held against the schema and then against each other, and only then
 * become records. No schema, zone or rule is loaded before it is needed.
 */
public final class Documents {
    private static final String SCENARIO = "scenario";
    private static final String PLAN = "plan";
    private static final String LOG = "log";

    private Documents() {}

    /**
     * Reads a scenario.
     *
     * @param file name of the file, for messages
     * @param utf8 its bytes, JSON in UTF-8, at most 16 MiB
     * @throws DocumentException with all that is wrong
     */
    public static Scenario readScenario(String file, byte[] utf8) throws DocumentException {
        Source source = Source.of(file, utf8);
        Faults faults = new Faults(source);
        Schema schema = Schemas.of(SCENARIO);
        Node document = document(source, SCENARIO, faults);
        List<Node> moments = Structure.check(document, schema, faults);
        ScenarioChecks.check(document, moments, faults);
        faults.throwIfAny();
        return RecordReader.read(document, schema, Scenario.class);
    }

    /**
     * Reads a plan, made by this program or by hand; one made for an earlier state of its scenario is no fault.
     *
     * @throws DocumentException with all that is wrong; for a plan of another scenario only that
     */
    public static Plan readPlan(String file, byte[] utf8, Scenario scenario) throws DocumentException {
        Source source = Source.of(file, utf8);
        Faults faults = new Faults(source);
        Schema schema = Schemas.of(PLAN);
        Node document = document(source, PLAN, faults);
        PlanChecks.sameScenario(document, scenario, faults);
        List<Node> moments = Structure.check(document, schema, faults);
        new PlanChecks(scenario, faults).plan(document, moments);
        faults.throwIfAny();
        return RecordReader.read(document, schema, Plan.class);
    }

    /**
     * Reads a log.
     *
     * @throws DocumentException with all that is wrong; for a log of another scenario only that
     */
    public static Log readLog(String file, byte[] utf8, Scenario scenario) throws DocumentException {
        Source source = Source.of(file, utf8);
        Faults faults = new Faults(source);
        Schema schema = Schemas.of(LOG);
        Node document = document(source, LOG, faults);
        PlanChecks.sameScenario(document, scenario, faults);
        List<Node> moments = Structure.check(document, schema, faults);
        new PlanChecks(scenario, faults).log(document, moments);
        faults.throwIfAny();
        return RecordReader.read(document, schema, Log.class);
    }

    /** The form that a document says it has; nothing where it says none or cannot be read. */
    public static OptionalInt form(byte[] utf8) {
        try {
            Source source = Source.of("", utf8);
            return TokenWalk.read(source, new Faults(source))
                    .field("weekwright")
                    .whole();
        } catch (DocumentException e) {
            return OptionalInt.empty();
        }
    }

    /**
     * Reads a list that ships with the program; it is no coach's document, so its first fault ends the reading.
     *
     * @param schema name of the schema of such a list
     * @throws IllegalStateException when it is damaged
     */
    public static <T extends Record> List<T> readBuiltIn(String file, byte[] utf8, String schema, Class<T> type) {
        try {
            Source source = Source.of(file, utf8);
            Faults faults = new Faults(source);
            Node list = TokenWalk.read(source, faults);
            faults.throwIfAny();
            Schema entry = Schemas.of(schema).items().orElseThrow();
            return list.items().stream()
                    .map(node -> RecordReader.read(node, entry, type))
                    .toList();
        } catch (DocumentException e) {
            throw new IllegalStateException("the built-in file " + file + " is damaged: build the program anew", e);
        }
    }

    /** The values of a document of the right kind and version; fields written twice are noted on the way. */
    private static Node document(Source source, String kind, Faults faults) throws DocumentException {
        Node document = TokenWalk.read(source, faults);
        if (!document.is(Kind.OBJECT)) {
            throw faults.only(
                    document,
                    "a " + kind + " is a set of fields in { }, not " + Shown.value(document),
                    "Begin with { and end with }.");
        }
        Kinds.check(document, kind, faults);
        return document;
    }

    /** A scenario as JSON: fields at their usual value are left out. */
    public static String write(Scenario scenario) {
        return write(scenario, SCENARIO);
    }

    /** A plan as JSON: all fields, placements sorted by start, then id. */
    public static String write(Plan plan) {
        return write(sorted(plan), PLAN);
    }

    /** A judged plan as JSON, with the ids of the rules that it keeps. */
    public static String writeCheck(Plan plan, List<String> kept) {
        Node document = Terse.of(RecordWriter.node(sorted(plan)), Schemas.of(PLAN));
        document.put("kept", RecordWriter.node(kept));
        return JsonPrinter.print(document);
    }

    /** A log as JSON: fields at their usual value are left out. */
    public static String write(Log log) {
        return write(log, LOG);
    }

    /** What may stand in a document of a kind, such as {@code scenario}, for forms to be made of. */
    public static Shape shape(String name) {
        return Shape.of(name);
    }

    /**
     * A scenario taken apart into maps, lists, texts, numbers and truths, which a form may change. Written with
     * {@link #writeAny} and read again it is the same scenario.
     */
    public static Map<String, Object> apart(Scenario scenario) {
        return Shape.apart(Terse.of(RecordWriter.node(scenario), Schemas.of(SCENARIO)));
    }

    /** A log taken apart in the same way. */
    public static Map<String, Object> apart(Log log) {
        return Shape.apart(Terse.of(RecordWriter.node(log), Schemas.of(LOG)));
    }

    /** Session families as JSON, in the shape that a scenario's catalogue accepts. */
    public static String writeCatalogue(List<Family> families) {
        return write(families, "catalogue");
    }

    /** Rules as JSON. */
    public static String writeRules(List<Rule> rules) {
        return write(rules, "rules");
    }

    /** Why a session does not lie elsewhere, as JSON: all fields. */
    public static String write(WhyNot answer) {
        return write(answer, "whynot");
    }

    /** What cannot all be had and what could go, as JSON: all fields. */
    public static String write(TradeOffs answer) {
        return write(answer, "tradeoffs");
    }

    /** Load planned and reported, as JSON: all fields. */
    public static String write(LoadReport report) {
        return write(report, "load");
    }

    /** A day sheet as JSON: all fields. */
    public static String write(DaySheet sheet) {
        return write(sheet, "sheet");
    }

    /** Two plans side by side, as JSON: all fields. */
    public static String write(Comparison comparison) {
        return write(comparison, "compare");
    }

    /** Any record, list or map as JSON in the same hand, with every field. */
    public static String writeAny(Object value) {
        return JsonPrinter.print(RecordWriter.node(value));
    }

    private static String write(Object value, String schema) {
        return JsonPrinter.print(Terse.of(RecordWriter.node(value), Schemas.of(schema)));
    }

    /** Of two times at one reading of the clock the one without an offset is the earlier. */
    private static Plan sorted(Plan plan) {
        Comparator<Moment> byTime = Comparator.comparing(Moment::local)
                .thenComparing(moment -> moment.offset() == null ? "" : moment.toString());
        List<Placement> placements = plan.placements().stream()
                .sorted(Comparator.comparing(Placement::start, byTime)
                        .thenComparing(placement -> placement.id() == null ? "" : placement.id()))
                .toList();
        return plan.withPlacements(placements);
    }

    /** The digest of the scenario as it is written. */
    public static String digest(Scenario scenario) {
        return digest(write(scenario).getBytes(StandardCharsets.UTF_8));
    }

    /** {@code sha256:} and the digest of the bytes, in hexadecimal digits. */
    public static String digest(byte[] bytes) {
        try {
            return "sha256:"
                    + HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** The names that {@link #schema} knows. */
    public static List<String> schemaNames() {
        return Schemas.NAMES;
    }

    /**
     * The JSON Schema (2020-12) of a document.
     *
     * @param name one of {@link #schemaNames}
     * @throws IllegalArgumentException when there is none of this name
     */
    public static String schema(String name) {
        if (!Schemas.NAMES.contains(name)) {
            throw new IllegalArgumentException("there is no schema of " + Shown.safe(Shown.quoted(name)) + ". "
                    + Shown.meant(name, Schemas.NAMES));
        }
        return JsonPrinter.print(Schemas.whole(name));
    }
}
