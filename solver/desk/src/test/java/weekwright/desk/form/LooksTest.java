package weekwright.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weekwright.model.document.Documents;
import weekwright.model.document.Shape;

/** A form for each field of a scenario: what the documents can hold, a coach can fill in. */
class LooksTest {
    /** Lists with pages of their own, and what is no coach's to type. */
    private static final Set<String> ELSEWHERE =
            Set.of("weekwright", "id", "history", "catalogue", "rules", "groups.id", "groups.rules");

    /** What an entry has of the plan: nobody types it. */
    private static final Set<String> PLANNED =
            Set.of("entries.placement", "entries.fixture", "entries.group", "entries.family", "entries.variant");

    private static void paths(Shape shape, String path, List<String> into) {
        shape.fields().forEach((name, field) -> {
            String at = Paths.join(path, name);
            boolean listed = Part.named(at).isPresent();
            if (!ELSEWHERE.contains(at) && !name.equals("id")) {
                if (!listed) {
                    into.add(at);
                }
                Shape inside = field.type() == Shape.Type.LIST ? field.items() : field;
                if (inside != null) {
                    paths(inside, at, into);
                }
            }
        });
    }

    @Test
    void every_field_that_a_scenario_can_hold_has_its_place_in_a_form() {
        List<String> fields = new ArrayList<>();
        paths(Documents.shape("scenario"), "", fields);
        Shape log = Documents.shape("log").field("entries").items();
        assertThat(log).isNotNull();
        List<String> entries = new ArrayList<>();
        paths(log, "entries", entries);
        entries.removeAll(PLANNED);
        fields.addAll(entries);

        assertThat(fields).contains("fixtures.travel.outMinutes", "groups.aims.perWeek.least", "athletes.marks.kg");
        assertThat(Looks.paths()).containsExactlyInAnyOrderElementsOf(fields);
    }

    @Test
    void values_are_called_by_words() {
        assertThat(Looks.value("groups.windows.days", "MON")).isEqualTo("Mon");
        assertThat(Looks.value("groups.phase", "pre-season")).isEqualTo("Pre season");
        assertThat(Looks.value("fixtures.weight", "minor")).isEqualTo("Minor: trained through");
    }
}
