package weekwright.desk.view.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.desk.view.Dates;
import weekwright.model.change.NextWeek;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;

/** Weeks in a line each, for whoever looks for one or begins from one. */
public final class StartPages {
    private StartPages() {}

    /** E.g. {@code 1 to 7 March 2027, one fixture}. */
    public static String note(Scenario scenario) {
        return Dates.span(scenario.firstDay(), scenario.lastDay()) + ", "
                + fixtures((int) scenario.fixtures().stream()
                        .filter(one -> !one.start().date().isAfter(scenario.lastDay()))
                        .count());
    }

    /** A week of a scenario, counted from 0, e.g. {@code 8 to 14 March 2027, one fixture}. */
    public static String week(Scenario scenario, int week) {
        LocalDate first = NextWeek.firstDay(scenario, week);
        LocalDate last = first.plusDays(6).isAfter(scenario.lastDay()) ? scenario.lastDay() : first.plusDays(6);
        return Dates.span(first, last) + ", "
                + fixtures(NextWeek.fixtures(scenario, week).size());
    }

    /** A fixture, e.g. {@code Cup tie, Wed 17 Feb 19:30}. */
    public static String fixture(Fixture one) {
        return one.label() + ", " + Dates.day(one.start().date()) + " " + Dates.clock(one.start());
    }

    /** So many fixtures, in words. */
    public static String fixtures(int number) {
        return number == 0 ? "no fixture" : number == 1 ? "one fixture" : number + " fixtures";
    }

    /** What the next week takes over from a scenario, one line each. */
    public static List<String> carried(Scenario scenario) {
        List<String> lines = new ArrayList<>();
        add(lines, scenario.groups().size(), "group with what it is to train", "groups with what they are to train");
        add(lines, scenario.athletes().size(), "athlete with marks", "athletes with marks");
        add(lines, scenario.facilities().size(), "place with its hours", "places with their hours");
        add(lines, scenario.staff().size(), "member of staff", "members of staff");
        if (!scenario.commitments().isEmpty()) {
            lines.add("what is fixed in the week, at the same times of the new one");
        }
        if (changesRules(scenario)) {
            lines.add("rules as they are changed here");
        }
        return lines;
    }

    private static boolean changesRules(Scenario scenario) {
        return !scenario.rules().isEmpty()
                || !scenario.packs().isEmpty()
                || scenario.groups().stream()
                        .anyMatch(group ->
                                !group.rules().isEmpty() || !group.packs().isEmpty());
    }

    private static void add(List<String> lines, int number, String one, String many) {
        if (number > 0) {
            lines.add(number == 1 ? "1 " + one : number + " " + many);
        }
    }
}
