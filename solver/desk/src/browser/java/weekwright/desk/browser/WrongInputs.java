package weekwright.desk.browser;

import java.util.ArrayList;
import java.util.List;

/** Something wrong for every form of the page. */
final class WrongInputs {
    private WrongInputs() {}

    /**
     * A form of something that is known, with something wrong in it.
     *
     * @param at address of the form in its week
     * @param good a field that is filled in rightly, and so must stay; empty where there is none
     * @param wrong the field that is not
     * @param says a part of what is said beside it
     */
    record Case(String at, String good, String wrong, String typed, String says) {}

    static final List<Case> CASES = List.of(
            new Case("/knowns/fixtures/new", "label", "minutes", "long", "is text, not a whole number"),
            new Case("/knowns/commitments/new", "label", "minutes", "0", "Give a whole number from 1"),
            new Case("/knowns/groups/new", "label", "headcount", "many", "is text, not a whole number"),
            new Case("/knowns/athletes/new", "name", "born", "2030-01-01", "is not before the first day of the plan"),
            new Case("/knowns/facilities/new", "label", "straightMetres", "-5", "Give a whole number from"),
            new Case("/knowns/transfers/new", "", "minutes", "soon", "is text, not a whole number"),
            new Case("/knowns/staff/new", "name", "atOnce", "99", "Give a whole number from 1 to 20"),
            new Case("/knowns/week/1", "title", "days", "100", "Give a whole number from 1 to 84"),
            new Case("/rules/all/three-high-days", "", "weight", "much", "is text, not a number"));

    /** A field and what is put into it. */
    record Put(String field, String value) {}

    /**
     * Any other form, with something wrong in it.
     *
     * @param form its address, and which of several it is
     * @param at the page on which it stands
     * @param stays whether it is shown again with all that was put into it
     */
    record Asked(String form, String at, List<Put> puts, String button, boolean stays, String says) {}

    static final String BEGIN = "/";

    static final List<Asked> ASKED = List.of(
            new Asked(
                    "/begin/blank",
                    BEGIN,
                    List.of(
                            new Put("#title", "Harbour <week>"),
                            new Put("#first-day", "2027-03-01"),
                            new Put("#zone", "Atlantis"),
                            new Put("#blank-folder", "harbour"),
                            new Put("#from-MON", "18:00"),
                            new Put("#fixture-0", "Cup tie")),
                    "#blank .main",
                    true,
                    "the clocks are those of \"Atlantis\": give a zone, such as Europe/Dublin"),
            new Asked(
                    "/begin/demo",
                    BEGIN,
                    List.of(new Put("#demo-folder", "demo")),
                    "button.demo[value=one-match]",
                    true,
                    "there is a week in demo already: open it, or give another name"),
            new Asked(
                    "/whatif move",
                    "/whatif",
                    List.of(new Put("#w-to", "2031-02-14T15:00")),
                    "#ask-move",
                    true,
                    "2031-02-14 lies more than 28 days past the last day"),
            new Asked(
                    "/whatif close",
                    "/whatif",
                    List.of(new Put("#w-place", "nowhere"), new Put("#w-closed", "2027-02-09")),
                    "#ask-close",
                    true,
                    "no facility is called \"nowhere\""),
            new Asked(
                    "/whatif lose",
                    "/whatif",
                    List.of(new Put("#w-lost", "2030-01-01")),
                    "#ask-lose",
                    true,
                    "2030-01-01 is no day of this plan"),
            new Asked(
                    "/whatif without",
                    "/whatif",
                    List.of(new Put("#w-athlete", "nobody")),
                    "#ask-without",
                    true,
                    "no athlete is called \"nobody\""),
            new Asked(
                    "/paper/sheet",
                    "/paper",
                    List.of(new Put("#sheet-day", "2030-01-01")),
                    "#sheet-show",
                    false,
                    "2030-01-01 is no day of this plan"),
            new Asked(
                    "/paper/wall",
                    "/paper",
                    List.of(new Put("#wall-week", "9")),
                    "#wall-show",
                    false,
                    "there is no week 9"),
            new Asked(
                    "/paper",
                    "/paper",
                    List.of(new Put("#chat-week", "9")),
                    "#chat-week ~ button",
                    false,
                    "there is no week 9"),
            new Asked(
                    "/paper/calendar",
                    "/paper",
                    List.of(new Put("#calendar-for", "group:nobody")),
                    "#calendar-keep",
                    false,
                    "nobody"),
            new Asked(
                    "/paper/table",
                    "/paper",
                    List.of(new Put("form[action$=table] button >> nth=0", "stars")),
                    "form[action$=table] button >> nth=0",
                    false,
                    "stars"),
            new Asked(
                    "/search",
                    "",
                    List.of(new Put("#seconds", "999999")),
                    "#search-begin",
                    false,
                    "cannot take that long"));

    /** Forms that have a test of their own below. */
    static final List<String> ELSEWHERE = List.of("/log/entry", "/take", "/next", "/begin/files");

    /** All forms for which there is a case. */
    static List<String> forms() {
        List<String> forms = new ArrayList<>(ELSEWHERE);
        CASES.forEach(one -> forms.add(EveryPage.kind(one.at())));
        ASKED.forEach(one -> forms.add(one.form()));
        return forms;
    }
}
