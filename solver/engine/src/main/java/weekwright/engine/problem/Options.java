package weekwright.engine.problem;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Stimulus.Kind;
import weekwright.model.catalogue.Demands;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Share;

/**
 * Finds where a session may lie: starts on the grid, times facilities of the right kind, times doses, in the group's
 * windows and the facility's hours. A pin narrows them; where the session stands now is among them unless that day is
 * barred and nothing holds it there.
 */
final class Options {
    /** Minutes of the coarse grid on which a search begins. */
    static final int COARSE_GRID = 30;

    private final ProblemBuilder problem;
    private final Map<Integer, List<Integer>> gridStarts = new HashMap<>();

    Options(ProblemBuilder problem) {
        this.problem = problem;
    }

    Session of(SessionDraft draft) {
        Placement placement = draft.placement;
        Stimulus now = placement == null ? null : standing(draft, placement);
        List<Stimulus> found = new ArrayList<>();
        if (!draft.pin.out()) {
            addAll(draft, now, found);
        }
        if (now != null) {
            boolean leaves = leaves(draft, now, found);
            draft.before = leaves ? now : addOnce(found, now);
        }
        Stimulus[] options = found.toArray(Stimulus[]::new);
        Stimulus[] coarse = found.stream()
                .filter(option ->
                        option == draft.before || problem.calendar.clockMinutes(option.start) % COARSE_GRID == 0)
                .toArray(Stimulus[]::new);
        return new Session(draft, options, coarse.length == 0 ? options : coarse);
    }

    /**
     * All starts, places of the right kind and doses in the group's free time, open or not; pins are ignored.
     *
     * @param longer minutes by which the group's free time is taken to be longer
     */
    List<Stimulus> thinkable(Session session, int longer) {
        SessionDraft draft = new SessionDraft(
                session.index,
                session.id,
                session.group,
                session.family,
                session.aim,
                session.week,
                weekwright.model.plan.Pin.NONE,
                null);
        draft.openOnly = false;
        draft.longer = longer;
        draft.like = session.aim == null ? session.before : null;
        List<Stimulus> found = new ArrayList<>();
        addAll(draft, null, found);
        return found;
    }

    private void addAll(SessionDraft draft, @Nullable Stimulus now, List<Stimulus> found) {
        int firstDay = 7 * draft.week;
        for (int day = firstDay; day < firstDay + problem.calendar.daysIn(draft.week); day++) {
            boolean heldElsewhere = now != null && draft.pin.day() && now.day != day;
            if (heldElsewhere || barred(draft, now, day)) {
                continue;
            }
            List<Integer> starts = starts(draft, now, day);
            for (int start : starts) {
                for (Dose dose : draft.doses()) {
                    addPlaces(draft, found, start, dose);
                }
            }
            boolean startHeld = now != null && draft.pin.start();
            if (!startHeld && draft.doses().contains(Dose.MICRO)) {
                addLent(draft, found, day, starts);
            }
        }
    }

    /** The first start in lent minutes may lie off the grid. */
    private void addLent(SessionDraft draft, List<Stimulus> found, int day, List<Integer> grid) {
        int main = mainMinutes(draft, Dose.MICRO);
        for (int facility : draft.facilities(problem)) {
            lenders(draft)
                    .firstStarts(day, facility)
                    .distinct()
                    .filter(start -> !grid.contains(start))
                    .forEach(start -> {
                        Stimulus practice = lenders(draft).of(Dose.MICRO, start, main);
                        if (practice != null && lenders(draft).waysFit(practice, start, main, facility)) {
                            addPlace(draft, found, start, Dose.MICRO, facility);
                        }
                    });
        }
    }

    private Lenders lenders(SessionDraft draft) {
        Lenders lenders = draft.lenders;
        if (lenders == null) {
            lenders = new Lenders(problem, draft);
            draft.lenders = lenders;
        }
        return lenders;
    }

    /**
     * Whether it must leave where it stands, because that day is barred. What must stay placed, and has nowhere to go in
     * the hours allowed, goes outside them; where every day is barred it stays where it is.
     */
    private boolean leaves(SessionDraft draft, Stimulus now, List<Stimulus> found) {
        if (!barred(draft, now, now.day)) {
            return false;
        }
        if (draft.stays && found.isEmpty()) {
            draft.anyHour = true;
            addAll(draft, now, found);
        }
        return !draft.stays || !found.isEmpty();
    }

    /** Whether a day is barred; a day that is held as well is kept. */
    private boolean barred(SessionDraft draft, @Nullable Stimulus now, int day) {
        boolean held = now != null && now.day == day && (draft.pin.day() || draft.pin.start());
        return !held && draft.pin.notDays().contains(problem.calendar.date(day));
    }

    /** A start that is held may lie off the grid. */
    private List<Integer> starts(SessionDraft draft, @Nullable Stimulus now, int day) {
        if (now != null && draft.pin.start()) {
            return now.day == day ? List.of(now.start) : List.of();
        }
        return gridStarts.computeIfAbsent(day, d -> problem.calendar.gridStarts(d, problem.scenario.gridMinutes()));
    }

    private void addPlaces(SessionDraft draft, List<Stimulus> found, int start, Dose dose) {
        for (int facility : draft.facilities(problem)) {
            addPlace(draft, found, start, dose, facility);
        }
    }

    private void addPlace(SessionDraft draft, List<Stimulus> found, int start, Dose dose, int facility) {
        Stimulus lentBy = lenders(draft).of(dose, start, mainMinutes(draft, dose));
        int end = start + (lentBy == null ? minutes(draft, dose) : mainMinutes(draft, dose));
        if (draft.anyHour
                || (free(draft, start, end) && (open(draft, start, end, facility) || guest(lentBy, facility)))) {
            found.add(stimulus(draft, start, end, facility, dose, lentBy, draft.openOnly ? found.size() : -1));
        }
    }

    private static boolean free(SessionDraft draft, int start, int end) {
        return draft.longer == 0
                ? draft.group.outside(start, end) == 0
                : draft.group.freeLonger(start, end) <= draft.longer;
    }

    private boolean open(SessionDraft draft, int start, int end, int facility) {
        return !draft.openOnly
                || facility < 0
                || problem.facilities.get(facility).shut(start, end) == 0;
    }

    private static boolean guest(@Nullable Stimulus lentBy, int facility) {
        return lentBy != null && lentBy.facility == facility;
    }

    private int minutes(SessionDraft draft, Dose dose) {
        if (draft.like != null && draft.like.lentBy == null) {
            return draft.like.minutes();
        }
        Aim aim = draft.aim == null ? null : draft.aim.aim;
        return Demands.wholeMinutes(
                draft.family.family,
                aim == null ? null : aim.minutes(),
                dose,
                aim == null ? 1.0 : aim.weekFactor(draft.week));
    }

    /** Minutes after the warm-up; none where the family has no main part. */
    private int mainMinutes(SessionDraft draft, Dose dose) {
        if (draft.like != null && draft.like.lentBy != null) {
            return draft.like.minutes();
        }
        return minutes(draft, dose) - draft.family.family.warmUpMinutes();
    }

    /** Where it stands; of minutes that the coach gives an extra session in lent minutes all are its main part. */
    private Stimulus standing(SessionDraft draft, Placement placement) {
        int start = problem.calendar.minute(placement.start());
        Integer given = draft.aim == null ? placement.minutes() : null;
        int main = given == null ? mainMinutes(draft, placement.dose()) : given;
        Stimulus lentBy = lenders(draft).of(placement.dose(), start, main);
        int whole = given == null ? minutes(draft, placement.dose()) : given;
        int end = start + (lentBy == null ? whole : main);
        return stimulus(draft, start, end, problem.facility(placement.facility()), placement.dose(), lentBy, -1);
    }

    private Stimulus addOnce(List<Stimulus> found, Stimulus now) {
        for (Stimulus option : found) {
            if (option.start == now.start
                    && option.end == now.end
                    && option.facility == now.facility
                    && option.dose == now.dose) {
                return option;
            }
        }
        StimulusDraft copy = StimulusDraft.like(now);
        copy.option = found.size();
        Stimulus added = copy.done();
        found.add(added);
        return added;
    }

    private Stimulus stimulus(
            SessionDraft draft, int start, int end, int facility, Dose dose, @Nullable Stimulus lentBy, int option) {
        FamilyInfo of = draft.family;
        StimulusDraft stimulus = new StimulusDraft(Kind.PLACEMENT, draft.index).at(start, end, problem.calendar);
        stimulus.group = draft.group.index;
        stimulus.family = of;
        stimulus.facility = facility;
        stimulus.dose = dose;
        stimulus.option = option;
        stimulus.learning = draft.aim != null && draft.aim.aim.learning();
        stimulus.lentBy = lentBy;
        stimulus.warmUp = lentBy == null ? Math.min(of.family.warmUpMinutes(), end - start) : 0;
        stimulus.rpeTenths = (int) Math.round(of.family.rpe() * 10);
        stimulus.load = stimulus.rpeTenths * (end - start);
        stimulus.demand = Demands.sessionDemand(of.family, dose, draft.group.strength());
        stimulus.meantFor(meant(draft.group.index, draft.aim, start), problem.audiences);
        stimulus.cohorts = problem.people.allowed(stimulus.meant, of, dose, problem.calendar.date(stimulus.day));
        return stimulus.done();
    }

    /** Makes all sets of people known for whom sessions of the aims may be. */
    void meetAudiences() {
        for (AimInfo aim : problem.aims) {
            int group = aim.group.index;
            problem.audiences.of(group, problem.people.of(List.of(group)));
            problem.audiences.of(group, meant(group, aim, Integer.MIN_VALUE));
            for (Stimulus fixture : problem.fixed) {
                if (fixture.isFixture()) {
                    problem.audiences.of(group, meant(group, aim, fixture.start + 1));
                }
            }
        }
    }

    /** Whom a session is for: its group, or those of it who played the latest fixture before, or those who did not. */
    private int[] meant(int group, @Nullable AimInfo aim, int start) {
        int[] all = problem.people.of(List.of(group));
        Share whom = aim == null ? Share.ALL : aim.aim.whom();
        if (whom == Share.ALL) {
            return all;
        }
        Stimulus latest = null;
        for (Stimulus fixture : problem.fixed) {
            boolean ours = fixture.isFixture() && fixture.start < start && sharesGroup(fixture, all);
            if (ours && (latest == null || fixture.start > latest.start)) {
                latest = fixture;
            }
        }
        Stimulus fixture = latest;
        boolean players = whom == Share.PLAYED;
        return java.util.Arrays.stream(all)
                .filter(cohort -> (fixture == null || fixture.playedBy(cohort)) == players)
                .toArray();
    }

    private static boolean sharesGroup(Stimulus fixture, int[] cohorts) {
        return java.util.Arrays.stream(cohorts).allMatch(fixture::has);
    }
}
