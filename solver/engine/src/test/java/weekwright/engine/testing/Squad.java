package weekwright.engine.testing;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.FamilyPatch;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Lends;
import weekwright.model.scenario.LendsAt;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.Metres;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.Prefer;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Room;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Transfer;
import weekwright.model.scenario.Travel;
import weekwright.model.scenario.Weekday;
import weekwright.model.scenario.Window;

/**
 * A scenario and a plan, told line by line as a coach would: a squad of ten in Dublin with a weights room and a turf
 * pitch, and the week from Monday 1 March 2027, unless it is said otherwise. What describes a group, an aim, an athlete
 * or a thing in time speaks of the latest one told.
 */
public final class Squad {
    /** The first group's id. */
    public static final String ID = "squad";

    private String zone = "Europe/Dublin";
    private LocalDate firstDay = LocalDate.parse("2027-03-01");
    private int days = 7;
    private final List<Crew> crews = new ArrayList<>(List.of(new Crew(ID)));
    private final List<Athlete> athletes = new ArrayList<>();
    private final List<Thing> things = new ArrayList<>();
    private final List<Facility> facilities = new ArrayList<>();
    private final List<Transfer> transfers = new ArrayList<>();
    private final List<StaffMember> staff = new ArrayList<>();
    private final List<FamilyPatch> catalogue = new ArrayList<>();
    private final Map<String, RuleSetting> rules = new TreeMap<>();
    private final List<String> packs = new ArrayList<>();
    private final List<LeftOut> heldOut = new ArrayList<>();
    private boolean backwards;
    private boolean otherNames;

    @Nullable
    private String published;

    @Nullable
    private Squad before;

    @Nullable
    private String now;

    private Squad() {
        facility("weights-room", FacilityKind.GYM).facility("turf-pitch", FacilityKind.FIELD);
    }

    /** The squad in its week. */
    public static Squad squad() {
        return new Squad();
    }

    /** The squad in another week, and perhaps another zone. */
    public Squad week(String monday) {
        firstDay = LocalDate.parse(monday);
        return this;
    }

    public Squad days(int number) {
        days = number;
        return this;
    }

    public Squad zone(String id) {
        zone = id;
        return this;
    }

    /** A further group, of whom the next lines speak. */
    public Squad group(String id) {
        crews.add(new Crew(id));
        return this;
    }

    public Squad heads(int number) {
        crew().heads = number;
        return this;
    }

    /** The share of the group that a session needs. */
    public Squad quorum(double share) {
        crew().quorum = share;
        return this;
    }

    public Squad kind(GroupKind kind) {
        crew().kind = kind;
        return this;
    }

    public Squad phase(Phase phase) {
        crew().phase = phase;
        return this;
    }

    public Squad level(Level level) {
        crew().level = level;
        return this;
    }

    public Squad highDays(int least, int target, int most) {
        crew().highDays = new PerWeek(least, target, most);
        return this;
    }

    /** Hours in which the group can train, on some weekdays or on all. */
    public Squad window(String from, String to, Weekday... on) {
        crew().windows.add(hours(from, to, on));
        return this;
    }

    public Squad away(String from, String to) {
        crew().away.add(absence(from, to));
        return this;
    }

    /** An aim, key unless said otherwise. */
    public Squad aim(String family, int least, int target, int most) {
        crew().goals.add(new Crew.Goal(family, new PerWeek(least, target, most)));
        return this;
    }

    public Squad priority(Priority priority) {
        goal().priority = priority;
        return this;
    }

    public Squad doses(Dose... doses) {
        goal().doses = List.of(doses);
        return this;
    }

    public Squad whom(Share whom) {
        goal().whom = whom;
        return this;
    }

    public Squad prefers(@Nullable String from, @Nullable String to, String... places) {
        goal().prefer = new Prefer(
                List.of(places), from == null ? null : ClockTime.parse(from), to == null ? null : ClockTime.parse(to));
        return this;
    }

    public Squad microCounts() {
        goal().microCounts = true;
        return this;
    }

    public Squad learning() {
        goal().learning = true;
        return this;
    }

    public Squad power() {
        goal().power = true;
        return this;
    }

    /** Sprint metres of a full session: those near best speed, and all. */
    public Squad metres(int fast, int all) {
        goal().metres = new Metres(fast, all);
        return this;
    }

    /** Factors of the main part by week. */
    public Squad factors(Double... byWeek) {
        goal().weeks = List.of(byWeek);
        return this;
    }

    public Squad mainMinutes(int minutes) {
        goal().minutes = minutes;
        return this;
    }

    /** Somebody listed by name, in the groups given or else the first; the first of them is the main one. */
    public Squad athlete(String id, String... groups) {
        athletes.add(new Athlete(
                id,
                Naming.label(id),
                groups.length == 0 ? List.of(ID) : List.of(groups),
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of()));
        return this;
    }

    /** What a clinician allows the athlete, from one date to another. */
    public Squad restricted(RestrictionLimit upTo, String from, String to, Pathway... pathways) {
        Athlete athlete = athletes.remove(athletes.size() - 1);
        List<Restriction> all = new ArrayList<>(athlete.restrictions());
        all.add(new Restriction(List.of(pathways), upTo, LocalDate.parse(from), LocalDate.parse(to), null));
        return athlete(athlete, athlete.born(), athlete.marks(), all);
    }

    /** A time at which the athlete cannot come. */
    public Squad busy(String from, String to) {
        Athlete athlete = athletes.remove(athletes.size() - 1);
        List<Away> all = new ArrayList<>(athlete.away());
        all.add(absence(from, to));
        return athlete(athlete, athlete.windows(), all);
    }

    /** Hours in which alone the athlete can come, on some weekdays or on all. */
    public Squad comes(String from, String to, Weekday... on) {
        Athlete athlete = athletes.remove(athletes.size() - 1);
        List<Window> all = new ArrayList<>(athlete.windows());
        all.add(hours(from, to, on));
        return athlete(athlete, all, athlete.away());
    }

    private Squad athlete(Athlete of, List<Window> windows, List<Away> away) {
        athletes.add(new Athlete(
                of.id(), of.name(), of.groups(), null, of.born(), of.marks(), windows, away, of.restrictions()));
        return this;
    }

    /** The athlete's birth date. */
    public Squad born(String date) {
        Athlete athlete = athletes.remove(athletes.size() - 1);
        return athlete(athlete, LocalDate.parse(date), athlete.marks(), athlete.restrictions());
    }

    /** A mark of the athlete: 30 m in 4.12 s, a squat of 120 kg, or 4.4 m/s. */
    public Squad mark(Measure measure, String date) {
        Athlete athlete = athletes.remove(athletes.size() - 1);
        boolean sprint = measure == Measure.SPRINT;
        boolean lift = measure == Measure.LIFT;
        List<Mark> all = new ArrayList<>(athlete.marks());
        all.add(new Mark(
                measure,
                sprint ? 30.0 : null,
                sprint ? 4.12 : null,
                null,
                null,
                lift ? "back-squat" : null,
                lift ? 120.0 : null,
                lift ? 1 : null,
                sprint || lift ? null : 4.4,
                LocalDate.parse(date)));
        return athlete(athlete, athlete.born(), all, athlete.restrictions());
    }

    private Squad athlete(Athlete of, @Nullable LocalDate born, List<Mark> marks, List<Restriction> restrictions) {
        athletes.add(
                new Athlete(of.id(), of.name(), of.groups(), null, born, marks, of.windows(), of.away(), restrictions));
        return this;
    }

    /** A fixture of 105 minutes from start to end, for the first group unless said otherwise. */
    public Squad fixture(String id, String start) {
        return fixture(id, "fixture", start);
    }

    public Squad fixture(String id, String family, String start) {
        return thing(new Thing(Thing.Kind.FIXTURE, id, family, start, ID)).lasting(105);
    }

    public Squad weight(FixtureWeight weight) {
        return latest(thing -> thing.weight = weight);
    }

    /** Days of taper that are wanted before the fixture. */
    public Squad tapering(int days) {
        return latest(thing -> thing.taperDays = days);
    }

    /** Minutes of play of the fixture, where they are its own. */
    public Squad playing(int minutes) {
        return latest(thing -> thing.playMinutes = minutes);
    }

    public Squad travelling(int outMinutes, int backMinutes) {
        return latest(thing -> thing.travel = new Travel(outMinutes, backMinutes));
    }

    /** Minutes that somebody is expected to play of the fixture. */
    public Squad expecting(String athlete, int minutes) {
        return latest(thing -> thing.expected.add(new Appearance(athlete, minutes)));
    }

    /** Minutes that somebody is known to have played of the fixture. */
    public Squad withPlayed(String athlete, int minutes) {
        return latest(thing -> thing.played.add(new Appearance(athlete, minutes)));
    }

    /** Team practice of 85 minutes. */
    public Squad practice(String id, String start) {
        return commitment(id, "team-practice", start).lasting(85);
    }

    /** A commitment of a family, or one that only takes time, of 60 minutes. */
    public Squad commitment(String id, @Nullable String family, String start) {
        return thing(new Thing(Thing.Kind.COMMITMENT, id, family, start, ID)).lasting(60);
    }

    public Squad effort(Effort effort) {
        return latest(thing -> thing.effort = effort);
    }

    /** The commitment lends minutes to micro sessions, at its start or its end. */
    public Squad lending(int minutes, LendsAt at) {
        return latest(thing -> thing.lends = new Lends(minutes, at));
    }

    /** The commitment is of these athletes alone. */
    public Squad only(String... ids) {
        return latest(thing -> thing.athletes.addAll(List.of(ids)));
    }

    /** An entry of history: full, and 60 minutes long unless said otherwise; a fixture 105. */
    public Squad done(String family, String start) {
        boolean fixture = Catalogue.builtIn().family(family).role() == weekwright.model.catalogue.Role.FIXTURE;
        return thing(new Thing(Thing.Kind.DONE, "", family, start, ID)).lasting(fixture ? 105 : 60);
    }

    /** It was planned and missed. */
    public Squad missed() {
        return latest(thing -> thing.done = false);
    }

    /** Those who were not there. */
    public Squad without(String... ids) {
        return latest(thing -> thing.athletes.addAll(List.of(ids)));
    }

    /** Minutes that somebody played, or null, and the share of best speed that was measured, or null. */
    public Squad person(String athlete, @Nullable Integer minutes, @Nullable Double topSpeedShare) {
        return latest(thing ->
                thing.people.add(new PersonEntry(athlete, null, minutes, List.of(), topSpeedShare, null, null)));
    }

    /** A session placed for the first group, in the first place of the kind that it needs. */
    public Squad placed(String family, String start) {
        thing(new Thing(Thing.Kind.PLACED, "", family, start, ID));
        List<FacilityKind> kinds = Catalogue.builtIn()
                .find(family)
                .map(weekwright.model.catalogue.Family::facility)
                .orElse(List.of());
        return at(facilities.stream()
                .filter(place -> place.offers().stream().anyMatch(kinds::contains))
                .map(Facility::id)
                .findFirst()
                .orElse(null));
    }

    /** Where it is, or null for nowhere in particular. */
    public Squad at(@Nullable String facility) {
        return latest(thing -> thing.facility = facility);
    }

    public Squad dose(Dose dose) {
        return latest(thing -> thing.dose = dose);
    }

    /** Its start is held by the coach. */
    public Squad pinned() {
        return latest(thing -> thing.pin = new Pin(true, false, false, false, false, false, false, List.of()));
    }

    public Squad ledBy(String lead) {
        return latest(thing -> thing.lead = lead);
    }

    /** Which of the variants of its family it is. */
    public Squad lift(String variant) {
        return latest(thing -> thing.variant = variant);
    }

    /** What the coach holds of it, by the names of the document; with {@code out} it is held out. */
    public Squad held(String... what) {
        return latest(thing -> thing.pin = Squad.pin(thing.pin.notDays(), what));
    }

    /** Dates on which it must not lie. */
    public Squad notOn(String... dates) {
        List<LocalDate> barred =
                java.util.Arrays.stream(dates).map(LocalDate::parse).toList();
        return latest(thing -> thing.pin = new Pin(
                thing.pin.start(),
                thing.pin.day(),
                thing.pin.facility(),
                thing.pin.lead(),
                thing.pin.dose(),
                thing.pin.variant(),
                thing.pin.out(),
                barred));
    }

    /** A pin that holds what is named. */
    public static Pin pin(List<LocalDate> notDays, String... what) {
        List<String> held = List.of(what);
        return new Pin(
                held.contains("start"),
                held.contains("day"),
                held.contains("facility"),
                held.contains("lead"),
                held.contains("dose"),
                held.contains("variant"),
                held.contains("out"),
                notDays);
    }

    /** Whole minutes of the latest thing. */
    public Squad lasting(int minutes) {
        return latest(thing -> thing.minutes = minutes);
    }

    /** The groups of the latest thing. */
    public Squad of(String... groups) {
        return latest(thing -> thing.groups = List.of(groups));
    }

    /** A session that the coach keeps out on purpose. */
    public Squad heldOut(String id) {
        Pin out = new Pin(false, false, false, false, false, false, true, List.of());
        heldOut.add(new LeftOut(id, "least", RuleLevel.KEY, 1, out, 0, List.of(), null, ""));
        return this;
    }

    public Squad facility(String id, FacilityKind... offers) {
        return facility(id, null, null, offers);
    }

    /** A place with a straight of so many metres and room for so many, either of them null where nothing is known. */
    public Squad facility(String id, @Nullable Integer straight, @Nullable Room room, FacilityKind... offers) {
        facilities.add(new Facility(id, Naming.label(id), List.of(offers), straight, room, List.of(), List.of()));
        return this;
    }

    /** Only so many groups or athletes fit in a place told before; null for any number. */
    public Squad room(String id, @Nullable Integer groups, @Nullable Integer athletes) {
        return change(
                id,
                f -> new Facility(
                        f.id(),
                        f.label(),
                        f.offers(),
                        f.straightMetres(),
                        new Room(groups, athletes),
                        f.open(),
                        f.closed()));
    }

    public Squad straight(String id, @Nullable Integer metres) {
        return change(id, f -> new Facility(f.id(), f.label(), f.offers(), metres, f.room(), f.open(), f.closed()));
    }

    /** Hours in which a place told before is open. */
    public Squad open(String id, String from, String to, Weekday... on) {
        return change(
                id,
                f -> new Facility(
                        f.id(),
                        f.label(),
                        f.offers(),
                        f.straightMetres(),
                        f.room(),
                        List.of(hours(from, to, on)),
                        f.closed()));
    }

    public Squad closed(String id, String from, String to) {
        return change(
                id,
                f -> new Facility(
                        f.id(),
                        f.label(),
                        f.offers(),
                        f.straightMetres(),
                        f.room(),
                        f.open(),
                        List.of(absence(from, to))));
    }

    public Squad transfer(String one, String other, int minutes) {
        transfers.add(new Transfer(List.of(one, other), minutes));
        return this;
    }

    /** Somebody who may lead some families, or all by {@code *}, one session at once. */
    public Squad staff(String id, String... leads) {
        return staff(new StaffMember(id, Naming.label(id), List.of(leads), 1, List.of(), List.of()));
    }

    public Squad staff(StaffMember member) {
        staff.add(member);
        return this;
    }

    public Squad family(FamilyPatch patch) {
        catalogue.add(patch);
        return this;
    }

    /** A setting of a rule for all groups. */
    public Squad rule(String id, @Nullable RuleLevel level, @Nullable Double weight, Map<String, Object> numbers) {
        rules.put(id, new RuleSetting(level, weight, numbers));
        return this;
    }

    public Squad level(String rule, RuleLevel level) {
        return rule(rule, level, null, Map.of());
    }

    public Squad weight(String rule, double weight) {
        return rule(rule, null, weight, Map.of());
    }

    /** A number of a rule, or a map of numbers by pathway. */
    public Squad number(String rule, String name, Object value) {
        return rule(rule, null, null, Map.of(name, value));
    }

    /** A setting of a rule for the latest group alone. */
    public Squad groupRule(String id, @Nullable RuleLevel level, @Nullable Double weight, Map<String, Object> numbers) {
        crew().rules.put(id, new RuleSetting(level, weight, numbers));
        return this;
    }

    public Squad groupNumber(String rule, String name, Object value) {
        return groupRule(rule, null, null, Map.of(name, value));
    }

    /** A pack that is switched on for all groups. */
    public Squad pack(String id) {
        packs.add(id);
        return this;
    }

    /** A pack that is switched on for the latest group alone. */
    public Squad groupPack(String id) {
        crew().packs.add(id);
        return this;
    }

    /** The setting of a rule for every group, each by its own rules. */
    public Squad everyGroupRule(String id, RuleSetting setting) {
        crews.forEach(crew -> crew.rules.put(id, setting));
        return this;
    }

    /** Holds the starts of all sessions placed. */
    public Squad allPinned() {
        Pin start = new Pin(true, false, false, false, false, false, false, List.of());
        things.stream().filter(thing -> thing.kind == Thing.Kind.PLACED).forEach(thing -> thing.pin = start);
        return this;
    }

    /** Tells all lists from their ends. */
    public Squad backwards() {
        backwards = true;
        if (before != null) {
            before.backwards();
        }
        return this;
    }

    /** Tells everything under other names, the first of which come last in the alphabet. */
    public Squad underOtherNames() {
        otherNames = true;
        if (before != null) {
            before.underOtherNames();
        }
        return this;
    }

    /** The plan was given out. */
    public Squad published(String at) {
        published = at;
        return this;
    }

    /** The plan is to stay close to another squad's, at a time, or null where nobody says. */
    public Squad closeTo(Squad other, @Nullable String at) {
        before = other;
        now = at;
        return this;
    }

    /** The scenario document. */
    public Scenario scenario() {
        Naming naming = new Naming(backwards, otherNames);
        return new Scenario(
                Scenario.VERSION,
                "sketch",
                "Sketch",
                ZoneId.of(zone),
                firstDay,
                days,
                60,
                naming.listed(crews, crew -> crew.group(naming)),
                naming.listed(athletes, naming::athlete),
                naming.listed(of(Thing.Kind.FIXTURE), thing -> thing.fixture(naming)),
                naming.listed(of(Thing.Kind.COMMITMENT), thing -> thing.commitment(naming)),
                naming.listed(facilities, naming::facility),
                naming.listed(transfers, way -> new Transfer(naming.ids(way.between()), way.minutes())),
                naming.listed(staff, naming::staff),
                naming.listed(of(Thing.Kind.DONE), thing -> thing.entry(naming)),
                catalogue,
                rules,
                packs);
    }

    /** Some plan of the scenario, proposed from this one in so many moves. */
    public Plan proposed(int moves) {
        Proposal proposal = new Proposal(scenario(), plan(), Budget.moves(moves), 1, 1, null);
        return Engine.propose(proposal, Progress.SILENT).plan();
    }

    /** The plan document. */
    public Plan plan() {
        Naming naming = new Naming(backwards, otherNames);
        return new Plan(
                Scenario.VERSION,
                "sketch",
                null,
                published == null ? null : Moment.parse(published),
                null,
                naming.listed(of(Thing.Kind.PLACED), thing -> thing.placement(naming)),
                heldOut,
                List.of(),
                null,
                List.of());
    }

    /** How the plan stands. */
    public Verdict judged() {
        return new Verdict(
                before == null
                        ? Engine.judge(scenario(), plan())
                        : StayingClose.judged(
                                scenario(), plan(), before.plan(), now == null ? null : Moment.parse(now)));
    }

    /** The figures of what is found of one rule. */
    public List<Amount> found(String rule) {
        return judged().amounts(rule);
    }

    private Squad thing(Thing thing) {
        things.add(thing);
        return this;
    }

    private Squad latest(Consumer<Thing> change) {
        change.accept(things.get(things.size() - 1));
        return this;
    }

    private List<Thing> of(Thing.Kind kind) {
        return things.stream().filter(thing -> thing.kind == kind).toList();
    }

    private Crew crew() {
        return crews.get(crews.size() - 1);
    }

    private Crew.Goal goal() {
        return crew().goals.get(crew().goals.size() - 1);
    }

    private Squad change(String facility, UnaryOperator<Facility> change) {
        facilities.replaceAll(place -> place.id().equals(facility) ? change.apply(place) : place);
        return this;
    }

    /** Hours on some weekdays, or on all. */
    public static Window hours(String from, String to, Weekday... on) {
        List<Weekday> weekdays = on.length == 0 ? List.of(Weekday.values()) : List.of(on);
        return new Window(weekdays, null, ClockTime.parse(from), ClockTime.parse(to), null, null);
    }

    /** A time away. */
    public static Away absence(String from, String to) {
        return new Away(Moment.parse(from), Moment.parse(to), null);
    }
}
