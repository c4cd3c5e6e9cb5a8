package weekwright.desk.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Finding;
import weekwright.model.scenario.Scenario;

/** Tables for spreadsheets: RFC 4180, and no cell that a spreadsheet would run. */
class PlanTablesTest {
    private static final Scenario WEEK = Plans.week();
    private static final Judged PLAN = Plans.judged(WEEK, Plans.HEAVY, Plans.SPEED, Plans.UPPER);

    private static List<Map<String, String>> rows(String table) {
        assertThat(table).startsWith("\uFEFF");
        try (MappingIterator<Map<String, String>> rows = new CsvMapper()
                .readerFor(Map.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(table.substring(1))) {
            return rows.readAll();
        }
    }

    private static List<Map<String, String>> rows(Tables.Kind kind) {
        return rows(Tables.of(kind, WEEK, PLAN, false));
    }

    @Test
    void the_plan_stands_in_order_of_time_with_all_that_lies_in_it() {
        String table = Tables.of(Tables.Kind.PLAN, WEEK, PLAN, false);

        assertThat(table.substring(1)).startsWith("""
                        date,start,end,minutes,kind,group,what,dose,lift,place,lead,for,pinned,id
                        2027-02-09,10:30,11:55,85,fixed,First squad,Team practice,,,Training pitch,,,,practice-tue
                        2027-02-09,12:00,13:00,60,session,First squad,"Heavy lower, knee-dominant",full,Back squat,Weights room,"H. Wrenlow, speed",,,first-squad/heavy-lower-knee/2027-02-08/1
                        """.replace("\n", "\r\n"));
        assertThat(rows(table)).hasSize(2 + 3 + 3);
        assertThat(rows(table)).extracting(row -> row.get("date")).isSorted();
    }

    @Test
    void findings_add_up_to_the_totals() {
        List<Map<String, String>> rows = rows(Tables.Kind.FINDINGS);

        assertThat(rows).hasSameSizeAs(PLAN.plan().findings());
        assertThat(rows)
                .extracting(row -> row.get("finding"))
                .containsExactlyElementsOf(
                        PLAN.plan().findings().stream().map(Finding::text).toList());
        double wants = rows.stream()
                .filter(row -> row.get("level").equals("want"))
                .mapToDouble(row -> Double.parseDouble(row.get("cost")))
                .sum();
        assertThat(wants)
                .isEqualTo(
                        java.util.Objects.requireNonNull(PLAN.plan().totals()).want(),
                        org.assertj.core.data.Offset.offset(0.05));
    }

    @Test
    void loads_have_a_row_for_each_group_and_day() {
        List<Map<String, String>> rows = rows(Tables.Kind.LOADS);

        assertThat(rows).hasSize(7);
        assertThat(rows.get(1))
                .containsEntry("date", "2027-02-09")
                .containsEntry("match day", "MD−4")
                .containsEntry("group", "First squad");
        assertThat(Double.parseDouble(rows.get(1).get("load AU"))).isPositive();
    }

    @Test
    void bookings_stand_place_by_place() {
        List<Map<String, String>> rows = rows(Tables.Kind.BOOKINGS);

        assertThat(rows)
                .extracting(row ->
                        row.get("place") + " " + row.get("date") + " " + row.get("start") + " " + row.get("what"))
                .containsExactly(
                        "Training pitch 2027-02-09 10:30 Team practice",
                        "Training pitch 2027-02-11 10:30 Team practice",
                        "Training pitch 2027-02-12 10:30 Team run-through",
                        "Weights room 2027-02-09 12:00 Heavy lower, knee-dominant",
                        "Weights room 2027-02-10 10:30 Upper push and pull",
                        "Town track 2027-02-10 09:00 Maximal velocity sprinting");
    }

    @Test
    void where_decimals_have_a_comma_columns_are_parted_by_semicolons() {
        String table = Tables.of(Tables.Kind.LOADS, WEEK, PLAN, true);

        assertThat(table).startsWith("\uFEFFdate;group;match day;class;demand points;load AU\r\n");
        assertThat(table.lines().skip(2).findFirst().orElseThrow())
                .matches("2027-02-09;First squad;MD−4;\\w+;\\d+(,\\d+)?;\\d+");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=HYPERLINK(\"http://example.org\",\"x\")",
                "+1+1",
                "-2+3",
                "@SUM(A1:A9)",
                "\t=1+1",
                "\r=1+1",
                "＝1+1"
            })
    void a_name_that_begins_like_a_formula_is_text(String name) {
        assertThat(CsvText.guarded(name)).isEqualTo("'" + name);
        CsvText table = new CsvText(false, "name", "next");
        table.row(name, -3.5);

        List<Map<String, String>> rows = rows(table.toString());

        assertThat(rows).hasSize(1);
        assertThat(rows.get(0)).containsEntry("name", "'" + name).containsEntry("next", "-3.5");
    }

    @Test
    void hostile_labels_of_a_scenario_come_out_as_text_in_every_table() {
        String evil = "=cmd|'/C calc'!A0";
        Scenario hostile = Plans.week(text -> text.replace("Weights room", evil)
                .replace("First squad", "@squad \\\"x\\\", <script>")
                .replace("Team practice", "+practice")
                .replace("H. Wrenlow, speed", "-Wrenlow"));
        Judged judged = Plans.judged(hostile, Plans.HEAVY, Plans.SPEED, Plans.UPPER);

        for (Tables.Kind kind : Tables.Kind.values()) {
            assertThat(rows(Tables.of(kind, hostile, judged, false)))
                    .as(kind.name())
                    .flatExtracting(Map::values)
                    .noneMatch(cell -> Stream.of("=", "@", "\t", "\r").anyMatch(cell::startsWith))
                    .noneMatch(cell -> cell.matches("[+-].*") && !cell.matches("-?[\\d.]+"));
        }
        assertThat(rows(Tables.of(Tables.Kind.BOOKINGS, hostile, judged, false)))
                .extracting(row -> row.get("place"))
                .contains("'" + evil);
    }

    @Test
    void a_table_that_there_is_not_is_said() {
        assertThatThrownBy(() -> Tables.Kind.named("load"))
                .hasMessage("there is no table of \"load\": did you mean loads?");
    }
}
