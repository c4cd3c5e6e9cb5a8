package weekwright.desk.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.desk.form.Look.Offer;

/** How each field of a scenario is shown, by its path without numbers, such as {@code groups.aims.family}. */
final class Looks {
    private static final Map<String, Look> LOOKS = new LinkedHashMap<>();
    private static final Map<String, String> VALUES = new LinkedHashMap<>();

    private Looks() {}

    private static void put(String path, Look look) {
        LOOKS.put(path, look);
    }

    private static Look look(String label) {
        return Look.of(label);
    }

    static {
        week();
        fixtures();
        commitments();
        places();
        staff();
        groups();
        aims();
        athletes();
        marks();
        entries();
        for (String owner : List.of("groups.windows", "athletes.windows", "staff.windows", "facilities.open")) {
            window(owner);
        }
        for (String owner : List.of("groups.away", "athletes.away", "staff.away", "facilities.closed")) {
            away(owner);
        }
        values();
    }

    private static void week() {
        put("title", look("What it is for").help(" ").asName());
        put("zone", look("Clocks of").help("The zone of all times, named by region and town, such as Europe/Dublin."));
        put("firstDay", look("First day"));
        put("days", look("Days").help("7 for a week, 84 for twelve."));
        put(
                "gridMinutes",
                look("Starts lie on")
                        .unit("min")
                        .help("Sessions that are planned start on multiples of it: 15 means :00, :15, :30 and :45.")
                        .seldom());
        put("packs", look("Rule packs for all").names(Offer.PACKS).seldom());
    }

    private static void fixtures() {
        put("fixtures.label", look("Name").help(" ").asName());
        put("fixtures.groups", look("Who plays").names(Offer.GROUPS).help(" "));
        put(
                "fixtures.family",
                look("Kind of fixture").names(Offer.FIXTURE_FAMILIES).help(" "));
        put("fixtures.start", look("Starts").help("Kick-off, or the first event of a meet."));
        put("fixtures.minutes", look("Lasts").unit("min").help("From start to end, intervals included."));
        put("fixtures.weight", look("How much it matters").help(" "));
        put("fixtures.travel", look("Travel").help("The way is time taken: nothing is planned in it."));
        put("fixtures.travel.outMinutes", look("There").unit("min").help(" "));
        put("fixtures.travel.backMinutes", look("Home again").unit("min").help(" "));
        put("fixtures.playMinutes", look("Minutes of play").unit("min").seldom());
        put(
                "fixtures.taperDays",
                look("Days of taper")
                        .help("Only where a taper is wanted: the volume of those days shrinks, sharp work stays.")
                        .seldom());
        for (String list : List.of("expected", "played")) {
            put(
                    "fixtures." + list + ".athlete",
                    look("Athlete").names(Offer.ATHLETES).help(" "));
            put("fixtures." + list + ".minutes", look("Plays").unit("min").help(" "));
        }
        put("fixtures.expected", look("Minutes expected"));
        put("fixtures.played", look("Minutes played"));
    }

    private static void commitments() {
        put("commitments.label", look("Name").help(" ").asName());
        put(
                "commitments.groups",
                look("Which groups").names(Offer.GROUPS).help("For a practice of whole groups; else name athletes."));
        put(
                "commitments.athletes",
                look("Which athletes")
                        .names(Offer.ATHLETES)
                        .help("For one person's work shift, school match or second club.")
                        .seldom());
        put(
                "commitments.family",
                look("What is trained")
                        .names(Offer.FAMILIES)
                        .help("Without it the time is taken and nothing is trained, as in a shift at work."));
        put("commitments.start", look("Starts").help(" "));
        put("commitments.minutes", look("Lasts").unit("min").help(" "));
        put("commitments.facility", look("Where").names(Offer.PLACES).help(" "));
        put(
                "commitments.effort",
                look("How hard").help("Sets what it costs the body; without it the usual of its kind."));
        put(
                "commitments.lends",
                look("Minutes lent")
                        .help("Minutes of the practice in which a micro session of the same groups may lie, after its"
                                + " own warm-up."));
        put("commitments.lends.minutes", look("How many").unit("min").help(" "));
        put("commitments.lends.at", look("At its").help(" "));
    }

    private static void places() {
        put("facilities.label", look("Name").help(" ").asName());
        put("facilities.offers", look("What it is").help("Kinds of place that it serves as."));
        put("facilities.straightMetres", look("Longest straight run").unit("m").help("Without it: long enough."));
        put("facilities.room", look("Room").help("How many it holds at once; empty means any number."));
        put("facilities.room.groups", look("Groups").help(" "));
        put("facilities.room.athletes", look("Athletes").help(" "));
        put("facilities.open", look("Opening hours").help("None means always open."));
        put("facilities.closed", look("Closed").help("Spans in which it is shut."));
        put(
                "transfers.between",
                look("Between which two places").names(Offer.PLACES).help(" "));
        put("transfers.minutes", look("Takes").unit("min").help("The same either way."));
    }

    private static void staff() {
        put("staff.name", look("Name").help(" ").asName());
        put("staff.leads", look("Can lead").names(Offer.LEADS).help("Which sessions this person can lead."));
        put("staff.atOnce", look("Sessions at one time").help(" ").seldom());
        put("staff.windows", look("Free hours").help("None means always."));
        put("staff.away", look("Away").help("Spans in which this person is away."));
    }

    private static void groups() {
        put("groups.label", look("Name").help(" ").asName());
        put("groups.kind", look("Sport").help(" "));
        put("groups.phase", look("Part of the season").help(" "));
        put("groups.level", look("Training age").help(" "));
        put(
                "groups.headcount",
                look("People in it").help("Without it: the athletes that are named. Others play every fixture."));
        put(
                "groups.quorum",
                look("Share that a session needs")
                        .help("0.8: a session goes on while four in five can come.")
                        .seldom());
        put("groups.windows", look("Hours that can be had").help("Its sessions lie inside; none means always."));
        put("groups.away", look("Time away").help("Spans in which the whole group is away."));
        put(
                "groups.highDays",
                look("High days a week")
                        .help("A high day asks 6.5 points or more of the body; fixtures count. Empty: no wish."));
        perWeek("groups.highDays");
        put("groups.aims", look("What it is to train each week").help("One line for each kind of session."));
        put(
                "groups.packs",
                look("Rule packs")
                        .names(Offer.PACKS)
                        .help("For this group alone.")
                        .seldom());
    }

    private static void perWeek(String owner) {
        put(owner + ".least", look("Least").help(" "));
        put(owner + ".target", look("Wanted").help(" "));
        put(owner + ".most", look("Most").help(" "));
    }

    private static void aims() {
        put("groups.aims.family", look("Session").names(Offer.SESSIONS).help(" "));
        put("groups.aims.perWeek", look("Each week").help(" "));
        perWeek("groups.aims.perWeek");
        put(
                "groups.aims.priority",
                look("How much it matters").help("Key work comes before main work, whatever else."));
        put("groups.aims.doses", look("Doses that will do").help("Full, two thirds (reduced), one third (micro)."));
        put("groups.aims.for", look("For whom").help(" ").seldom());
        put(
                "groups.aims.prefer",
                look("Rather").help("Where and when you would rather have it.").seldom());
        put("groups.aims.prefer.facilities", look("In").names(Offer.PLACES).help(" "));
        put("groups.aims.prefer.from", look("Not before").help(" "));
        put("groups.aims.prefer.to", look("Ended by").help(" "));
        put(
                "groups.aims.microCounts",
                look("A micro dose counts as one of the least").help(" ").seldom());
        put(
                "groups.aims.learning",
                look("A new skill is being learnt").help(" ").seldom());
        put(
                "groups.aims.power",
                look("Lifting for power").help("Wants 6 h from endurance work.").seldom());
        put(
                "groups.aims.weeks",
                look("Volume by week")
                        .help("A factor a week, such as 1 1.1 1.2 0.7; the last is repeated.")
                        .seldom());
        put(
                "groups.aims.minutes",
                look("Main part").unit("min").help("Instead of the usual.").seldom());
        put(
                "groups.aims.metres",
                look("Sprint metres of a full session").help(" ").seldom());
        put("groups.aims.metres.fast", look("At 95 % or more").unit("m").help(" "));
        put("groups.aims.metres.all", look("All sprinting").unit("m").help(" "));
    }

    private static void athletes() {
        put("athletes.name", look("Name").help(" ").asName());
        put(
                "athletes.groups",
                look("In which groups").names(Offer.GROUPS).help("The first that is ticked is the main one."));
        put(
                "athletes.level",
                look("Training age").help("Without it: that of the group.").seldom());
        put(
                "athletes.born",
                look("Born")
                        .help("Tells how old, where rules for the young apply.")
                        .seldom());
        put("athletes.marks", look("Marks").help("Measured bests; the day's numbers follow from them."));
        put(
                "athletes.restrictions",
                look("What a clinician allows")
                        .help("Typed in as it was given. The reason is shown to you alone; sheets say “sits out”."));
        put("athletes.restrictions.pathways", look("Qualities concerned").help(" "));
        put("athletes.restrictions.upTo", look("At most").help(" "));
        put("athletes.restrictions.from", look("From").help(" "));
        put("athletes.restrictions.to", look("Up to and with").help(" "));
        put("athletes.restrictions.why", look("Who said so").help(" "));
        put("athletes.windows", look("Own free hours").help("None means always."));
        put("athletes.away", look("Away").help("Spans in which this athlete is away."));
    }

    private static void marks() {
        put("athletes.marks.measure", look("What was measured").help(" "));
        put("athletes.marks.date", look("On").help(" "));
        put("athletes.marks.metres", look("Distance").unit("m").help(" ").only("sprint"));
        put("athletes.marks.seconds", look("Time").unit("s").help(" ").only("sprint"));
        put("athletes.marks.start", look("From").help(" ").only("sprint"));
        put("athletes.marks.timing", look("Timed").help(" ").only("sprint"));
        put("athletes.marks.lift", look("Lift").names(Offer.LIFTS).help(" ").only("lift"));
        put("athletes.marks.kg", look("Weight").unit("kg").help(" ").only("lift"));
        put("athletes.marks.repetitions", look("Repetitions").help(" ").only("lift"));
        put(
                "athletes.marks.metresPerSecond",
                look("Speed").unit("m/s").help(" ").only("aerobic-speed"));
    }

    private static void entries() {
        put("entries.done", look("It was done").help("Not ticked: missed, and nothing was trained."));
        put("entries.start", look("Started").help(" "));
        put(
                "entries.minutes",
                look("Lasted").unit("min").help("All of it, warm-up included; of a fixture from start to end."));
        put("entries.dose", look("How much of it").help(" "));
        put("entries.rpe", look("Effort of the group (RPE)").help("0 rest to 10 the most, asked half an hour after."));
        put(
                "entries.except",
                look("Who was not there").names(Offer.ATHLETES).help(" ").seldom());
        put("entries.people", look("What athletes reported").help("Only those who differ need a line."));
        put("entries.people.athlete", look("Athlete").names(Offer.ATHLETES).help(" "));
        put("entries.people.rpe", look("RPE").help(" "));
        put("entries.people.minutes", look("Minutes").unit("min").help(" "));
        put(
                "entries.people.topSpeedShare",
                look("Top speed over the best").help("0.96 for 96 %.").seldom());
        put(
                "entries.people.soreness",
                look("Soreness").help("0 none to 10 worst; for you alone.").seldom());
        put("entries.people.note", look("Note").help("For you alone.").seldom());
        put("entries.people.results", look("Times and lifts").help(" ").seldom());
        put("entries.people.results.measure", look("What").help(" "));
        put(
                "entries.people.results.metres",
                look("Distance").unit("m").help(" ").only("sprint"));
        put("entries.people.results.seconds", look("Times").unit("s").help(" ").only("sprint"));
        put(
                "entries.people.results.lift",
                look("Lift").names(Offer.LIFTS).help(" ").only("lift"));
        put("entries.people.results.kg", look("Weight").unit("kg").help(" ").only("lift"));
        put("entries.people.results.repetitions", look("Repetitions").help(" ").only("lift"));
        put("entries.note", look("Note").help("For you alone.").seldom());
    }

    private static void window(String owner) {
        put(owner + ".days", look("On").help(" "));
        put(owner + ".from", look("From").help(" "));
        put(owner + ".to", look("To").help(" "));
        put(owner + ".date", look("Or on one date").help(" ").seldom());
        put(owner + ".firstDate", look("Only from").help(" ").seldom());
        put(owner + ".lastDate", look("Only up to").help(" ").seldom());
    }

    private static void away(String owner) {
        put(owner + ".from", look("From").help(" "));
        put(owner + ".to", look("To").help(" "));
        put(owner + ".why", look("Why").help(" "));
    }

    /** What values are called where the document's word does not say it. */
    private static void values() {
        VALUES.put("fixtures.weight=key", "Key: all else gives way");
        VALUES.put("fixtures.weight=regular", "Regular");
        VALUES.put("fixtures.weight=minor", "Minor: trained through");
        VALUES.put("groups.kind=field", "Field: football codes, hockey");
        VALUES.put("groups.aims.priority=key", "Key");
        VALUES.put("groups.aims.priority=main", "Main");
        VALUES.put("groups.aims.priority=spare", "Spare: where it fits");
        VALUES.put("groups.aims.for=played", "Those who played");
        VALUES.put("groups.aims.for=not-played", "Those who did not play");
        VALUES.put("groups.aims.for=all", "All");
        VALUES.put("groups.aims.doses=micro", "Micro");
        VALUES.put("athletes.restrictions.upTo=light", "Light: sits out where it is high");
        VALUES.put("athletes.restrictions.upTo=micro", "Micro doses");
        VALUES.put("athletes.restrictions.upTo=none", "None of it");
        VALUES.put("athletes.marks.measure=aerobic-speed", "Aerobic speed");
        VALUES.put("athletes.marks.timing=electronic", "Electronically");
        VALUES.put("athletes.marks.timing=hand", "By hand");
        VALUES.put("athletes.marks.start=flying", "A flying start");
        VALUES.put("athletes.marks.start=blocks", "Blocks");
    }

    /** How a field is shown; nothing where it is not shown in forms. */
    static Optional<Look> of(String path) {
        return Optional.ofNullable(LOOKS.get(path));
    }

    /** What a value of a field is called. */
    static String value(String path, String value) {
        String known = VALUES.get(path + "=" + value);
        if (known != null) {
            return known;
        }
        String words = value.replace('-', ' ');
        boolean day = words.length() == 3 && words.equals(words.strip()) && Character.isUpperCase(words.charAt(1));
        String rest = day ? lower(words.substring(1)) : words.substring(1);
        return Character.toUpperCase(words.charAt(0)) + rest;
    }

    private static String lower(String text) {
        StringBuilder lower = new StringBuilder();
        text.codePoints().map(Character::toLowerCase).forEach(lower::appendCodePoint);
        return lower.toString();
    }

    /** The paths that have a look, for tests. */
    static Set<String> paths() {
        return LOOKS.keySet();
    }
}
