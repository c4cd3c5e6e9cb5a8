package weekwright.engine.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Share;

/** Makes the sessions of each aim and week, matched with the placements of a plan, and those that only the plan knows. */
final class SessionMaker {
    private final ProblemBuilder problem;
    private final @Nullable Plan plan;
    private final PlanUse use;
    private final Options options;
    private final Map<String, Pin> heldOut = new HashMap<>();

    SessionMaker(ProblemBuilder problem, @Nullable Plan plan, PlanUse use) {
        this.problem = problem;
        this.plan = plan;
        this.use = use;
        options = new Options(problem);
        if (plan != null) {
            plan.leftOut().stream()
                    .filter(left -> left.pin() != null)
                    .forEach(left -> heldOut.put(left.id(), java.util.Objects.requireNonNull(left.pin())));
        }
    }

    void make() {
        Map<String, List<Placement>> byAimWeek = new HashMap<>();
        List<Placement> extra = new ArrayList<>();
        for (Placement placement : placements()) {
            AimInfo aim = aimOf(placement);
            if (aim == null) {
                extra.add(placement);
            } else {
                byAimWeek
                        .computeIfAbsent(prefix(aim, weekOf(placement)), key -> new ArrayList<>())
                        .add(placement);
            }
        }
        for (AimInfo aim : problem.aims) {
            for (int week = 0; week < problem.calendar.weeks(); week++) {
                makeAimWeek(aim, week, byAimWeek.getOrDefault(prefix(aim, week), List.of()));
            }
        }
        makeExtra(extra);
    }

    private List<Placement> placements() {
        return plan == null
                ? List.of()
                : plan.placements().stream()
                        .sorted(Comparator.comparingInt((Placement p) -> problem.calendar.minute(p.start())))
                        .toList();
    }

    private int weekOf(Placement placement) {
        return problem.calendar.weekOf(problem.calendar.day(placement.start().date()));
    }

    private @Nullable AimInfo aimOf(Placement placement) {
        List<AimInfo> fitting = problem.aims.stream()
                .filter(aim -> aim.group.group.id().equals(placement.group())
                        && aim.aim.family().equals(placement.family()))
                .toList();
        String id = placement.id();
        if (id != null) {
            for (AimInfo aim : fitting) {
                if (id.startsWith(placement.group() + "/" + aim.aim.key() + "/")) {
                    return aim;
                }
            }
        }
        for (AimInfo aim : fitting) {
            if (aim.aim.whom() == Share.ALL) {
                return aim;
            }
        }
        return fitting.isEmpty() ? null : fitting.get(0);
    }

    private String prefix(AimInfo aim, int week) {
        return aim.group.group.id() + "/" + aim.aim.key() + "/" + problem.calendar.date(7 * week) + "/";
    }

    /** Gives ids that the plan leaves out, in order of start, and keeps those that it has. */
    private static Map<Integer, Placement> numbered(String prefix, List<Placement> placements) {
        Map<Integer, Placement> byNumber = new HashMap<>();
        List<Placement> unnamed = new ArrayList<>();
        for (Placement placement : placements) {
            int number = numberIn(placement.id(), prefix);
            if (number < 1 || byNumber.putIfAbsent(number, placement) != null) {
                unnamed.add(placement);
            }
        }
        int next = 1;
        for (Placement placement : unnamed) {
            while (byNumber.containsKey(next)) {
                next++;
            }
            byNumber.put(next, placement);
        }
        return byNumber;
    }

    private static int numberIn(@Nullable String id, String prefix) {
        if (id == null
                || !id.startsWith(prefix)
                || !id.substring(prefix.length()).matches("[1-9]\\d{0,3}")) {
            return 0;
        }
        return Integer.parseInt(id.substring(prefix.length()));
    }

    private void makeAimWeek(AimInfo aim, int week, List<Placement> placements) {
        String prefix = prefix(aim, week);
        Map<Integer, Placement> byNumber = numbered(prefix, placements);
        Set<Integer> numbers = new java.util.TreeSet<>(byNumber.keySet());
        for (int number = 1; aim.asked(week) && number <= aim.most(week); number++) {
            numbers.add(number);
        }
        for (int number : numbers) {
            add(prefix + number, aim.group, aim.family, aim, week, byNumber.get(number));
        }
    }

    private void makeExtra(List<Placement> extra) {
        Map<String, List<Placement>> byPrefix = new java.util.LinkedHashMap<>();
        for (Placement placement : extra) {
            String prefix = placement.group() + "/" + placement.family() + "/"
                    + problem.calendar.date(7 * weekOf(placement)) + "/";
            byPrefix.computeIfAbsent(prefix, key -> new ArrayList<>()).add(placement);
        }
        byPrefix.forEach((prefix, placements) -> numbered(prefix, placements).entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> {
                    Placement placement = entry.getValue();
                    GroupInfo group = problem.groups.get(
                            problem.groupIndexes(List.of(placement.group())).get(0));
                    add(
                            prefix + entry.getKey(),
                            group,
                            problem.family(placement.family()),
                            null,
                            weekOf(placement),
                            placement);
                }));
    }

    private void add(
            String id, GroupInfo group, FamilyInfo family, @Nullable AimInfo aim, int week, @Nullable Placement read) {
        Pin pin = read == null ? heldOut.getOrDefault(id, Pin.NONE) : read.held();
        Placement placement = pin.out() ? null : read;
        SessionDraft draft = new SessionDraft(problem.sessions.size(), id, group, family, aim, week, pin, placement);
        draft.stays = placement != null
                && (aim == null
                        || pin.start()
                        || pin.day()
                        || pin.facility()
                        || pin.dose()
                        || pin.lead()
                        || pin.variant());
        if (placement != null && placement.lead() != null && (use == PlanUse.CHECK || pin.lead())) {
            draft.heldLead = staff(placement.lead());
        }
        if (placement != null && (use == PlanUse.CHECK || pin.variant())) {
            draft.heldVariant = LiftLine.variant(family, placement.variant());
        }
        Session session = options.of(draft);
        problem.sessions.add(session);
        if (aim != null) {
            aim.sessions.get(week).add(session);
        }
    }

    private int staff(String id) {
        for (StaffInfo member : problem.staff) {
            if (member.member.id().equals(id)) {
                return member.index;
            }
        }
        return -1;
    }
}
