package weekwright.model.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Array;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.model.answer.Change;
import weekwright.model.answer.Clash;
import weekwright.model.answer.Comparison;
import weekwright.model.answer.GiveUp;
import weekwright.model.answer.Shift;
import weekwright.model.answer.Spot;
import weekwright.model.answer.TradeOffs;
import weekwright.model.answer.WhyNot;
import weekwright.model.answer.WhyNotDay;
import weekwright.model.answer.WhyNotOption;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.document.Examples.Broken;
import weekwright.model.document.Node.Kind;
import weekwright.model.plan.Log;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;

/** The published schemas, the records and the reader say the same. */
class SchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private static com.networknt.schema.Schema published(String name) {
        return REGISTRY.getSchema(Documents.schema(name), InputFormat.JSON);
    }

    /** Paths, as a JSON pointer, at which a published validator finds a document wanting. */
    private static Set<String> wanting(com.networknt.schema.Schema schema, String text) {
        Set<String> paths = new TreeSet<>();
        schema.validate(text, InputFormat.JSON)
                .forEach(error -> paths.add(error.getInstanceLocation().toString()));
        return paths;
    }

    // --- schema and records ---

    @Test
    void everyFieldOfARecordIsInItsSchemaAndTheOtherWayRound() {
        Set<Class<?>> seen = new LinkedHashSet<>();
        compare(Scenario.class, Schemas.of("scenario"), seen);
        compare(Plan.class, Schemas.of("plan"), seen);
        compare(Log.class, Schemas.of("log"), seen);
        compare(Family.class, Schemas.of("catalogue").items().orElseThrow(), seen);
        compare(Rule.class, Schemas.of("rules").items().orElseThrow(), seen);
        compare(Comparison.class, Schemas.of("compare"), seen);
        compare(TradeOffs.class, Schemas.of("tradeoffs"), seen);
        assertThat(seen).as("records that documents are made of").hasSizeGreaterThan(40);
    }

    private static void compare(Class<?> type, Schema schema, Set<Class<?>> seen) {
        seen.add(type);
        List<String> names = Arrays.stream(type.getRecordComponents())
                .filter(component ->
                        type != RuleSetting.class || !component.getName().equals("numbers"))
                .map(SchemaTest::name)
                .toList();
        List<String> published = new ArrayList<>(schema.properties().keySet());
        // A check adds the rules that a plan keeps; a plan that is read has no use for them.
        published.removeIf(field -> type == Plan.class && field.equals("kept"));
        assertThat(published).as(type.getSimpleName()).containsExactlyElementsOf(names);
        for (RecordComponent component : type.getRecordComponents()) {
            if (schema.properties().containsKey(name(component))) {
                String where = type.getSimpleName() + "." + component.getName();
                Schema field = schema.property(name(component));
                compare(where, component.getAnnotatedType(), field, seen);
                assertThat(field.nullable())
                        .as(where + " may be null")
                        .isEqualTo(component.getAnnotatedType().isAnnotationPresent(Nullable.class));
                boolean usual = field.keyword("default").present();
                boolean needed = schema.required().contains(name(component));
                assertThat(usual && (needed || field.nullable()))
                        .as(where + " has one answer when it is left out")
                        .isFalse();
                assertThat(component.getType().isPrimitive() && !usual && !needed)
                        .as(where + " has a value when it is left out")
                        .isFalse();
            }
        }
    }

    private static String name(RecordComponent component) {
        JsonProperty property = component.getAccessor().getAnnotation(JsonProperty.class);
        return property == null ? component.getName() : property.value();
    }

    private static void compare(String where, AnnotatedType annotated, Schema schema, Set<Class<?>> seen) {
        if (annotated instanceof AnnotatedParameterizedType generic) {
            AnnotatedType[] of = generic.getAnnotatedActualTypeArguments();
            boolean list = generic.getType().getTypeName().startsWith("java.util.List");
            assertThat(schema.types()).as(where).containsExactly(list ? "array" : "object");
            compare(where, of[of.length - 1], (list ? schema.items() : schema.others()).orElseThrow(), seen);
            if (!list && of[0].getType() instanceof Class<?> key && key.isEnum()) {
                assertThat(schema.names().orElseThrow().values()).as(where).isEqualTo(constants(key));
            }
            return;
        }
        Class<?> type = (Class<?>) annotated.getType();
        if (type.isEnum()) {
            assertThat(schema.values()).as(where).isEqualTo(constants(type));
        } else if (type.isRecord() && RecordShape.scalar(type) == null) {
            assertThat(schema.types()).as(where).containsExactly("object");
            compare(type, schema, seen);
        } else if (!schema.values().isEmpty()) {
            boolean numbers = schema.values().stream().allMatch(value -> value.matches("[0-9]+"));
            assertThat(type).as(where).isEqualTo(numbers ? int.class : String.class);
        } else {
            assertThat(schema.types()).as(where).containsExactly(jsonType(type));
        }
    }

    private static List<String> constants(Class<?> type) {
        return Stream.of(type.getEnumConstants()).map(RecordShape::written).toList();
    }

    private static String jsonType(Class<?> type) {
        Map<Class<?>, String> types = Map.of(
                int.class, "integer",
                Integer.class, "integer",
                long.class, "integer",
                double.class, "number",
                Double.class, "number",
                boolean.class, "boolean",
                String.class, "string",
                LocalDate.class, "string",
                Moment.class, "string",
                ZoneId.class, "string");
        return type == ClockTime.class ? "string" : types.get(type);
    }

    // --- schema and published validator ---

    @ParameterizedTest
    @MethodSource("weekwright.model.document.Documents#schemaNames")
    void eachSchemaIsASchema(String name) {
        com.networknt.schema.Schema meta = REGISTRY.getSchema(
                com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(wanting(meta, Documents.schema(name))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("weekwright.model.document.Documents#schemaNames")
    void eachReferenceLeadsSomewhereAndEachDefinitionIsReferredTo(String name) {
        Node schema = Schemas.whole(name);
        Set<String> referred = new TreeSet<>();
        referred(schema, referred);
        assertThat(referred)
                .isEqualTo(new TreeSet<>(schema.field("$defs").fields().keySet()));
    }

    private static void referred(Node node, Set<String> into) {
        node.field("$ref").text().ifPresent(ref -> into.add(ref.replace("#/$defs/", "")));
        node.fields().values().forEach(part -> referred(part, into));
        node.items().forEach(part -> referred(part, into));
    }

    @ParameterizedTest
    @MethodSource("weekwright.model.document.Documents#schemaNames")
    void eachUsualValueAndEachExampleFitsItsPlace(String name) {
        fits(Schemas.of(name));
    }

    private static void fits(Schema schema) {
        Stream.concat(
                        schema.keyword("examples").items().stream(),
                        Stream.of(schema.keyword("default")).filter(Node::present))
                .forEach(value -> fits(value, schema));
        schema.properties().values().forEach(SchemaTest::fits);
        schema.items().ifPresent(SchemaTest::fits);
        schema.others().ifPresent(SchemaTest::fits);
    }

    private static void fits(Node value, Schema schema) {
        Faults faults = new Faults(Source.of("example", ""));
        Structure.check(value, schema, faults);
        assertThatCode(faults::throwIfAny).as(JsonPrinter.flat(value)).doesNotThrowAnyException();
    }

    /** What a reader puts in for a field left out is also what a record takes that is made without it. */
    @Test
    void usualValuesOfSchemasAreThoseOfTheRecords() {
        Set<String> different = new TreeSet<>();
        Set<Class<?>> seen = new LinkedHashSet<>();
        compare(Scenario.class, Schemas.of("scenario"), seen, different);
        compare(Plan.class, Schemas.of("plan"), seen, different);
        assertThat(different)
                .as("an entry is done and a session left out is explained unless the document says otherwise")
                .containsExactly("LeftOut.level", "LeftOut.need", "LeftOut.text", "LogEntry.done");
    }

    private static void compare(Class<?> type, Schema schema, Set<Class<?>> seen, Set<String> different) {
        if (!seen.add(type)) {
            return;
        }
        Object bare = RecordShape.of(type).make(nothing(type));
        for (RecordShape.Component component : RecordShape.of(type).components()) {
            Node usual = component.others()
                    ? Node.NOTHING
                    : schema.property(component.name()).keyword("default");
            Node taken = RecordWriter.node(RecordShape.get(component, bare));
            if (usual.present() && !JsonPrinter.flat(usual).equals(JsonPrinter.flat(taken))) {
                different.add(type.getSimpleName() + "." + component.name());
            }
            if (!component.others()) {
                recordIn(component.type(), schema.property(component.name()), seen, different);
            }
        }
    }

    private static void recordIn(Type type, Schema schema, Set<Class<?>> seen, Set<String> different) {
        if (type instanceof ParameterizedType generic && schema.items().isPresent()) {
            recordIn(generic.getActualTypeArguments()[0], schema.items().orElseThrow(), seen, different);
        } else if (type instanceof Class<?> record && record.isRecord() && RecordShape.scalar(record) == null) {
            compare(record, schema, seen, different);
        }
    }

    private static List<Object> nothing(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .map(component -> component.isPrimitive() ? Array.get(Array.newInstance(component, 1), 0) : null)
                .collect(Collectors.toList());
    }

    @Test
    void whatIsWrittenFitsItsSchema() throws DocumentException {
        assertThat(wanting(published("scenario"), Documents.write(Examples.scenario())))
                .isEmpty();
        assertThat(wanting(published("plan"), Documents.write(Examples.plan()))).isEmpty();
        assertThat(wanting(
                        published("check"), Documents.writeCheck(Examples.plan(), List.of("night-rest", "free-day"))))
                .isEmpty();
        assertThat(wanting(published("log"), Documents.write(Examples.log()))).isEmpty();
        assertThat(wanting(
                        published("catalogue"),
                        Documents.writeCatalogue(Catalogue.builtIn().families())))
                .isEmpty();
        assertThat(wanting(
                        published("rules"),
                        Documents.writeRules(Rulebook.builtIn().rules())))
                .isEmpty();
    }

    @Test
    void aListOfRevisionsFitsItsSchema() {
        String digest = "sha256:" + "0".repeat(64);
        String revision = "{ \"revision\": 2, \"at\": \"2027-03-01T08:00:00Z\", \"label\": \"Planned\", \"shows\": 2,"
                + " \"scenario.json\": \"" + digest + "\", \"plan.json\": \"" + digest + "\", \"beside\": false }";
        String list = "{ \"weekwright\": 1, \"head\": 2, \"revisions\": [" + revision + "] }";
        assertThat(wanting(published("history"), list)).isEmpty();
        assertThat(wanting(published("history"), list.replace("T08:00:00Z", "T08:00")))
                .isNotEmpty();
        assertThat(wanting(published("history"), list.replace("\"shows\": 2,", "")))
                .isNotEmpty();
    }

    @Test
    void theAnswerToWhyNotFitsItsSchema() {
        Moment start = Moment.parse("2027-03-02T16:30");
        WhyNotOption possible = new WhyNotOption(
                start, "turf", Dose.FULL, true, new Totals(0, 0, 0, -2.5), List.of(), List.of("night-rest"), null);
        WhyNotOption not = new WhyNotOption(
                start, null, Dose.MICRO, false, new Totals(1, 0, 0, 0), List.of("night-rest"), List.of(), "Too near.");
        WhyNot answer = new WhyNot(
                "match-squad/max-velocity/2027-03-01/1",
                new Spot(start, null, Dose.FULL),
                new Totals(0, 0, 0, 4),
                List.of(possible, not),
                List.of(
                        new WhyNotDay(LocalDate.parse("2027-03-02"), possible, "Tue 2 Mar: better."),
                        new WhyNotDay(LocalDate.parse("2027-03-03"), null, "Wed 3 Mar: not possible.")),
                "It lies here.");
        assertThat(wanting(published("whynot"), Documents.write(answer))).isEmpty();
        assertThat(Documents.write(answer)).contains("\"now\": {").contains("\"why\": null");
    }

    @Test
    void tradeOffsFitTheirSchema() {
        TradeOffs answer = new TradeOffs(
                new Totals(0, 1, 0, 4.5),
                List.of(new Clash(
                        List.of("match-squad/max-velocity/2027-03-01", "pin match-squad/primer/2027-03-01/1"),
                        true,
                        "They cannot both be had.")),
                List.of(new GiveUp(List.of("Do without it"), new Totals(0, -1, 0, 0.5), "Do without it.")),
                20_000,
                "Not all was met.");
        assertThat(wanting(published("tradeoffs"), Documents.write(answer))).isEmpty();
        assertThat(Documents.write(answer)).contains("\"do\": [").contains("\"couldGo\": [");
    }

    @Test
    void aComparisonFitsItsSchema() {
        Spot spot = new Spot(Moment.parse("2027-03-02T16:30"), null, Dose.FULL);
        String session = "match-squad/max-velocity/2027-03-01/1";
        Comparison comparison = new Comparison(
                new Totals(0, 0, 0, 4),
                new Totals(1, 0, 0, 4),
                new Totals(0, 0, 0, 2.5),
                List.of("Too near."),
                List.of(
                        new Change(session, List.of("moved", "led"), spot, spot, "It moves."),
                        new Change(session, List.of("added"), null, spot, "It is added.")),
                List.of(new Shift("night-rest-margin", RuleLevel.WANT, 4, 0, "Met now.")),
                List.of(new Shift("even-spread", RuleLevel.WANT, 0, 2.5, "Costs 2.5 points.")),
                "It moves.");
        assertThat(wanting(published("compare"), Documents.write(comparison))).isEmpty();
        assertThat(Documents.write(comparison)).contains("\"before\": null").contains("\"changed\": {");
    }

    @Test
    void aCheckNeedsWhatIsMadeOfAPlan() {
        String byHand = "{ \"weekwright\": 1, \"scenario\": \"week\", \"placements\": [] }";
        assertThat(wanting(published("plan"), byHand)).isEmpty();
        assertThat(wanting(published("check"), byHand)).isNotEmpty();
    }

    // --- reader and published validator ---

    static List<Broken> scenarios() {
        return with(Examples.brokenScenarios(), "scenario.json", "full-scenario.json");
    }

    static List<Broken> plans() {
        return with(Examples.brokenPlans(), "plan.json");
    }

    static List<Broken> logs() {
        return with(Examples.brokenLogs(), "log.json");
    }

    private static List<Broken> with(List<Broken> broken, String... sound) {
        return Stream.concat(
                        broken.stream(), Stream.of(sound).map(name -> new Broken(name, Examples.text(name), List.of())))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void readerAndValidatorAgreeOnScenarios(Broken broken) throws DocumentException {
        agree("scenario", broken);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void readerAndValidatorAgreeOnPlans(Broken broken) throws DocumentException {
        agree("plan", broken);
    }

    @ParameterizedTest
    @MethodSource("logs")
    void readerAndValidatorAgreeOnLogs(Broken broken) throws DocumentException {
        agree("log", broken);
    }

    /** Both must find the same fields wanting. */
    private static void agree(String name, Broken broken) throws DocumentException {
        Source source = Source.of("x.json", Examples.bytes(broken.text()));
        Node document = TokenWalk.read(source, new Faults(source));
        Set<String> ours = ours(document, Schemas.of(name), new Faults(source));
        Set<String> theirs = new TreeSet<>();
        Set<String> missing = new TreeSet<>();
        for (com.networknt.schema.Error error : published(name).validate(broken.text(), InputFormat.JSON)) {
            // Where null or something else may stand, "it is not null" says nothing.
            if (!error.getEvaluationPath().toString().contains("/anyOf/1/")) {
                (error.getKeyword().equals("required") ? missing : theirs).add(path(error, document));
            }
        }
        // For us a misspelt name that is needed is one fault.
        missing.removeIf(path -> !ours.contains(path)
                && ours.stream().anyMatch(other -> parent(other).equals(parent(path))));
        theirs.addAll(missing);
        assertThat(ours).isEqualTo(theirs);
    }

    private static Set<String> ours(Node document, Schema schema, Faults faults) {
        Structure.check(document, schema, faults);
        Set<String> paths = new TreeSet<>();
        try {
            faults.throwIfAny();
        } catch (DocumentException e) {
            for (Problem problem : e.problems()) {
                // A validator names the list that holds something twice; and the length of months is beyond it.
                if (problem.wrong().endsWith("is there twice")) {
                    paths.add(problem.path().replaceAll("\\[[0-9]+]$", ""));
                } else if (!problem.wrong().endsWith("does not exist")) {
                    paths.add(problem.path());
                }
            }
        }
        return paths;
    }

    private static String path(com.networknt.schema.Error error, Node document) {
        Node at = document;
        for (String step : error.getInstanceLocation().toString().split("/", -1)) {
            if (!step.isEmpty()) {
                at = at.is(Kind.LIST) ? at.items().get(Integer.parseInt(step)) : at.field(step);
            }
        }
        return Shown.safe(error.getProperty() == null ? at.path() : at.pathOf(error.getProperty()));
    }

    private static String parent(String path) {
        return path.substring(0, Math.max(0, path.lastIndexOf('.')));
    }

    @Test
    void aSchemaThatIsNotThereIsSaid() {
        assertThatThrownBy(() -> Documents.schema("plann"))
                .hasMessage("there is no schema of \"plann\". Did you mean \"plan\"?");
    }
}
