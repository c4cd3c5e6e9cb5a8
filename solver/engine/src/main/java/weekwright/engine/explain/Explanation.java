package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cohort;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.DayState;
import weekwright.engine.rules.Judge;
import weekwright.engine.rules.Leads;
import weekwright.engine.rules.Lifts;
import weekwright.model.document.Documents;
import weekwright.model.plan.Finding;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Solver;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Writes the plan document of where the sessions lie, with all that is to be said of it. */
public final class Explanation {
    private final Problem problem;
    private final Judge judge;
    private final Problem free;
    private final @Nullable Stimulus[] at;

    /** The explanation of where sessions lie, by session. */
    public Explanation(Problem problem, @Nullable Stimulus[] at) {
        this(problem, at, problem);
    }

    /**
     * The explanation of a plan that is judged as it is written.
     *
     * @param free the same problem in which only pins hold leads and variants, for what might be done instead
     */
    public Explanation(Problem problem, @Nullable Stimulus[] at, Problem free) {
        this.problem = problem;
        this.free = free;
        this.at = at;
        judge = Judge.of(problem, at);
    }

    /** The judged plan, with what would help where something is broken. */
    public Judged judged(@Nullable Moment published, @Nullable Solver solver) {
        return judged(published, solver, true);
    }

    /** The judged plan; no remedy is looked for. */
    public Judged judgedWithoutRemedies(@Nullable Moment published, @Nullable Solver solver) {
        return judged(published, solver, false);
    }

    private Judged judged(@Nullable Moment published, @Nullable Solver solver, boolean withRemedies) {
        Judge judgeOfFree = free == problem ? judge : Judge.of(free, sameIn(free, at));
        Plan bare = new Plan(
                Scenario.VERSION,
                problem.scenario.id(),
                Documents.digest(problem.scenario),
                published,
                solver,
                placements(),
                new LeftOuts(new WhatIf(free, judgeOfFree)).all(),
                softened(),
                judge.total().totals(),
                List.of());
        List<Fact> facts = FactSink.all(problem, judge);
        Remedies remedies = withRemedies ? Remedies.of(problem.scenario, bare, facts) : Remedies.none();
        List<Finding> findings = new Findings(problem, remedies).of(facts);
        return new Judged(bare.withFindings(findings), kept(findings), days());
    }

    /** The documents after what would help with a finding was done; null where nothing would. */
    public static @Nullable Remedied remedied(Scenario scenario, Plan plan, int finding) {
        return new RemedySearch(scenario, plan).carriedOut(finding);
    }

    /** The plan as a picture only: where all lies and what the days ask, with nothing found or left out. */
    public Judged drawn() {
        return new Judged(bare(List.of()), List.of(), days());
    }

    /** The plan with all that the coach holds, and nothing said of it. */
    Plan written() {
        return bare(problem.sessions.stream()
                .filter(session -> judge.at(session) == null && !session.pin.isNone())
                .map(session ->
                        new LeftOut(session.id, "target", RuleLevel.WANT, 0, session.pin, 0, List.of(), null, ""))
                .toList());
    }

    private Plan bare(List<LeftOut> leftOut) {
        return new Plan(
                Scenario.VERSION,
                problem.scenario.id(),
                null,
                null,
                null,
                placements(),
                leftOut,
                List.of(),
                judge.total().totals(),
                List.of());
    }

    /** The same options in a problem that was built from the same documents. */
    public static @Nullable Stimulus[] sameIn(Problem problem, @Nullable Stimulus[] found) {
        @Nullable Stimulus[] same = new @Nullable Stimulus[found.length];
        for (int i = 0; i < found.length; i++) {
            Stimulus option = found[i];
            Session session = problem.sessions.get(i);
            same[i] = option == null ? null : option.option < 0 ? session.before : session.options[option.option];
        }
        return same;
    }

    /** Where the sessions of a problem stand in the plan that it was built from. */
    static @Nullable Stimulus[] standing(Problem problem) {
        @Nullable Stimulus[] at = new @Nullable Stimulus[problem.sessions.size()];
        problem.sessions.forEach(session -> at[session.index] = session.before);
        return at;
    }

    private List<Placement> placements() {
        Stimulus[] placed = Arrays.stream(judge.placements())
                .filter(Objects::nonNull)
                .sorted(Stimulus::inOrder)
                .toArray(Stimulus[]::new);
        Leads leads = Leads.of(problem, placed);
        int[] lifts = Lifts.of(problem, judge.placements());
        List<Placement> all = new ArrayList<>();
        for (int i = 0; i < placed.length; i++) {
            all.add(placement(problem.sessions.get(placed[i].index), placed[i], leads.lead(i), lifts[placed[i].index]));
        }
        all.sort(Comparator.comparing((Placement p) -> p.start().instant(problem.scenario.zone()))
                .thenComparing(p -> Objects.requireNonNull(p.id())));
        return all;
    }

    private Placement placement(Session session, Stimulus at, int lead, int variant) {
        return new Placement(
                session.id,
                session.group.group.id(),
                session.family.family.id(),
                problem.calendar.moment(at.start),
                at.minutes(),
                at.facility < 0
                        ? null
                        : problem.facilities.get(at.facility).facility.id(),
                lead < 0 ? null : problem.staff.get(lead).member.id(),
                at.dose,
                variant < 0
                        ? null
                        : session.family.family.variants().get(variant).id(),
                pin(session));
    }

    private static @Nullable Pin pin(Session session) {
        return session.pin.isNone() ? null : session.pin;
    }

    private List<String> softened() {
        TreeSet<String> ids = new TreeSet<>();
        problem.groups.forEach(group -> ids.addAll(group.settings.softened()));
        return List.copyOf(ids);
    }

    private List<String> kept(List<Finding> findings) {
        TreeSet<String> inForce = new TreeSet<>();
        problem.groups.forEach(group -> judge.rulesInForce(group.index).stream()
                .filter(rule -> group.settings.level(rule) != RuleLevel.TOLD)
                .forEach(inForce::add));
        findings.forEach(finding -> inForce.remove(finding.rule()));
        return Rulebook.builtIn().rules().stream()
                .map(Rule::id)
                .filter(inForce::contains)
                .toList();
    }

    private List<DayPicture> days() {
        List<DayPicture> days = new ArrayList<>();
        for (GroupInfo group : problem.groups) {
            int cohort = largestCohort(group);
            for (int day = 0; day < problem.calendar.days(); day++) {
                DayState state = judge.day(cohort, day);
                days.add(new DayPicture(
                        group.group.id(),
                        problem.calendar.date(day),
                        MatchDays.of(group, day),
                        state.demand(),
                        state.loadTenths() / 10.0,
                        state.dayClass()));
            }
        }
        return days;
    }

    private int largestCohort(GroupInfo group) {
        return Arrays.stream(problem.cohortsOfGroup[group.index])
                .mapToObj(problem.cohorts::get)
                .max(Comparator.comparingInt(Cohort::heads).thenComparingInt(cohort -> -cohort.index()))
                .orElseThrow()
                .index();
    }
}
