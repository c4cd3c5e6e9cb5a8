package weekwright.engine.problem;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Stimulus.Kind;
import weekwright.model.catalogue.Demands;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;

/** Turns commitments, fixtures and history into stimuli. */
final class FixedThings {
    private final ProblemBuilder problem;

    FixedThings(ProblemBuilder problem) {
        this.problem = problem;
    }

    void add() {
        for (int i = 0; i < problem.scenario.fixtures().size(); i++) {
            addFixture(i, problem.scenario.fixtures().get(i));
        }
        for (int i = 0; i < problem.scenario.commitments().size(); i++) {
            addCommitment(i, problem.scenario.commitments().get(i));
        }
        for (int i = 0; i < problem.scenario.history().size(); i++) {
            if (problem.scenario.history().get(i).done()) {
                addHistory(i, problem.scenario.history().get(i));
            }
        }
    }

    private StimulusDraft draft(Kind kind, int index, Moment start, int minutes) {
        int from = problem.calendar.minute(start);
        return new StimulusDraft(kind, index).at(from, from + minutes, problem.calendar);
    }

    private void addFixture(int index, Fixture fixture) {
        FamilyInfo family = problem.family(fixture.family());
        StimulusDraft draft = draft(Kind.FIXTURE, index, fixture.start(), fixture.minutes());
        List<Integer> groups = problem.groupIndexes(fixture.groups());
        int play = fixture.playMinutes() == null ? family.family.minutes() : fixture.playMinutes();
        int[] played = problem.people.played(fixture, play, groups);
        asFixture(draft, family, groups, played, play, rpeTenths(family.family.rpe()));
        draft.before = family.family.warmUpMinutes() + fixture.travel().outMinutes();
        draft.after = fixture.travel().backMinutes();
        keep(draft.done(), groups);
    }

    private void asFixture(
            StimulusDraft draft, FamilyInfo family, List<Integer> groups, int[] played, int play, int rpeTenths) {
        draft.family = family;
        draft.group = groups.get(0);
        draft.meantFor(problem.people.of(groups), problem.audiences);
        draft.rpeTenths = rpeTenths;
        draft.appearances = new Appearances(played, play, family.family.warmUpMinutes(), rpeTenths / 10.0);
    }

    private void keep(Stimulus fixture, List<Integer> groups) {
        problem.fixed.add(fixture);
        groups.forEach(group -> problem.groups.get(group).add(fixture));
    }

    private void addCommitment(int index, Commitment commitment) {
        StimulusDraft draft = draft(Kind.COMMITMENT, index, commitment.start(), commitment.minutes());
        draft.facility = problem.facility(commitment.facility());
        List<Integer> groups = problem.groupIndexes(commitment.groups());
        draft.group = groups.isEmpty() ? -1 : groups.get(0);
        draft.meantFor(
                groups.isEmpty() ? problem.people.ofAthletes(commitment.athletes()) : problem.people.of(groups),
                problem.audiences);
        if (commitment.family() != null) {
            asPractice(draft, problem.family(commitment.family()), commitment.effort(), commitment.minutes());
            if (commitment.lends() != null) {
                draft.lends = LentTime.of(commitment.lends(), draft.start, draft.end, draft.warmUp);
            }
            countTowardsAims(commitment, draft.day);
        }
        problem.fixed.add(draft.done());
    }

    private void asPractice(StimulusDraft draft, FamilyInfo family, @Nullable Effort effort, int minutes) {
        draft.family = family;
        boolean strength = draft.group >= 0 && problem.groups.get(draft.group).strength();
        draft.demand = Demands.sessionDemand(family.family, effort, draft.dose, strength);
        draft.rpeTenths = effort == null ? rpeTenths(family.family.rpe()) : effort.rpe() * 10;
        draft.warmUp = Math.min(family.family.warmUpMinutes(), minutes);
        draft.load = draft.rpeTenths * minutes;
        draft.cohorts = problem.people.allowed(draft.cohorts, family, draft.dose, problem.calendar.date(draft.day));
    }

    private void countTowardsAims(Commitment commitment, int day) {
        if (day < 0 || day >= problem.calendar.days()) {
            return;
        }
        for (AimInfo aim : problem.aims) {
            if (aim.aim.family().equals(commitment.family())
                    && aim.aim.whom() == weekwright.model.scenario.Share.ALL
                    && commitment.groups().contains(aim.group.group.id())) {
                aim.commitments[problem.calendar.weekOf(day)]++;
            }
        }
    }

    private void addHistory(int index, LogEntry entry) {
        FamilyInfo family = problem.family(entry.family());
        StimulusDraft draft = draft(Kind.HISTORY, index, entry.start(), entry.minutes());
        List<Integer> groups = problem.groupIndexes(List.of(entry.group()));
        int rpe = rpeTenths(entry.rpe() == null ? family.family.rpe() : entry.rpe());
        draft.dose = entry.dose();
        if (family.fixture) {
            int play = family.family.minutes();
            asFixture(draft, family, groups, problem.people.played(entry, play, groups), play, rpe);
            noteFastRuns(java.util.Objects.requireNonNull(draft.appearances), entry);
            keep(draft.done(), groups);
            return;
        }
        draft.family = family;
        draft.group = groups.get(0);
        draft.rpeTenths = rpe;
        draft.load = rpe * entry.minutes();
        draft.demand = Demands.sessionDemand(
                family.family, entry.dose(), problem.groups.get(draft.group).strength());
        draft.meantFor(problem.people.of(groups), problem.audiences);
        draft.cohorts = without(draft.meant, entry.except());
        problem.fixed.add(draft.done());
    }

    private void noteFastRuns(Appearances appearances, LogEntry entry) {
        for (Cohort cohort : problem.people.cohorts) {
            if (problem.people.exposedIn(entry, cohort)) {
                appearances.ranNearBest(cohort.index());
            }
        }
    }

    private int[] without(int[] cohorts, List<String> except) {
        return java.util.Arrays.stream(cohorts)
                .filter(cohort ->
                        !except.contains(problem.people.cohorts.get(cohort).representative()))
                .toArray();
    }

    private static int rpeTenths(double rpe) {
        return (int) Math.round(rpe * 10);
    }
}
