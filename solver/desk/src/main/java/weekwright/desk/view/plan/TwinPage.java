package weekwright.desk.view.plan;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What would happen if: a question to ask, and the plan that came of the last one beside the plan as it is.
 *
 * @param base address of the folder
 * @param title title of the week
 * @param revision the revision in force
 * @param planned whether there is a plan
 * @param fixtures fixtures that could move, with when they are
 * @param places places that could be closed
 * @param groups groups that could lose a day
 * @param athletes athletes who could be lost
 * @param days days of the plan
 * @param asked the form that could not be used, or {@link Asked#NOTHING}
 * @param twins the two plans, or null where nothing was asked
 */
public record TwinPage(
        String base,
        String title,
        int revision,
        boolean planned,
        List<Choice> fixtures,
        List<Choice> places,
        List<Choice> groups,
        List<Choice> athletes,
        List<Choice> days,
        Asked asked,
        @Nullable Twins twins) {
    public TwinPage {
        fixtures = List.copyOf(fixtures);
        places = List.copyOf(places);
        groups = List.copyOf(groups);
        athletes = List.copyOf(athletes);
        days = List.copyOf(days);
    }

    /**
     * A form as it was filled in.
     *
     * @param what which of the forms
     * @param fields what stood in each of its fields, by their names
     * @param problems why it could not be used
     */
    public record Asked(String what, Map<String, String> fields, List<String> problems) {
        /** All was well. */
        public static final Asked NOTHING = new Asked("", Map.of(), List.of());

        public Asked {
            fields = Map.copyOf(fields);
            problems = List.copyOf(problems);
        }

        /** What stood in a field. */
        public String at(String field) {
            return fields.getOrDefault(field, "");
        }

        /** What is wrong with a form. */
        public List<String> wrong(String form) {
            return form.equals(what) ? problems : List.of();
        }
    }

    /** Something that can be chosen. */
    public record Choice(String value, String label) {}

    /**
     * Two plans side by side.
     *
     * @param text what came of it, in a sentence
     * @param before how the plan stands
     * @param after how the second plan stands
     * @param lists what differs, under headings
     */
    public record Twins(
            String question,
            List<String> besides,
            String text,
            String before,
            String after,
            List<Lane> lanes,
            List<Listed> lists) {
        public Twins {
            besides = List.copyOf(besides);
            lanes = List.copyOf(lanes);
            lists = List.copyOf(lists);
        }
    }

    /** A group's week in both plans. */
    public record Lane(String group, List<Day> days) {
        public Lane {
            days = List.copyOf(days);
        }
    }

    /** A day in both plans. */
    public record Day(
            String name, boolean differs, String beforeHead, String afterHead, List<Item> before, List<Item> after) {
        public Day {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }
    }

    /**
     * One thing on a day.
     *
     * @param mark what has become of it, in a word; empty where it is in both plans
     */
    public record Item(String time, String label, String where, String mark) {}

    /** Lines under a heading. */
    public record Listed(String heading, List<String> lines) {
        public Listed {
            lines = List.copyOf(lines);
        }
    }
}
