package weekwright.engine.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Transfer;

/** Builds the planning problem from documents that were read without fault. */
public final class ProblemBuilder {
    final Scenario scenario;
    final Calendar calendar;
    final Map<String, FamilyInfo> families = new LinkedHashMap<>();
    final Map<String, Integer> facilityIndex = new LinkedHashMap<>();
    final Map<String, Integer> groupIndex = new LinkedHashMap<>();
    final People people;
    final Audiences audiences = new Audiences();
    final List<GroupInfo> groups = new ArrayList<>();
    final List<FacilityInfo> facilities = new ArrayList<>();
    final List<StaffInfo> staff = new ArrayList<>();
    final List<AimInfo> aims = new ArrayList<>();
    final List<Stimulus> fixed = new ArrayList<>();
    final List<Session> sessions = new ArrayList<>();

    @Nullable
    StayClose stayClose;

    private ProblemBuilder(Scenario scenario, Asked asked) {
        this.scenario = scenario;
        calendar = new Calendar(scenario);
        List<Family> known =
                new ArrayList<>(Catalogue.builtIn().with(scenario.catalogue()).families());
        known.sort(Comparator.comparing(Family::id));
        for (Family family : known) {
            families.put(family.id(), new FamilyInfo(families.size(), family));
        }
        people = new People(scenario, calendar);
        for (Facility facility : scenario.facilities()) {
            facilityIndex.put(facility.id(), facilities.size());
            facilities.add(new FacilityInfo(facilities.size(), facility, calendar));
        }
        for (StaffMember member : specialistsFirst(scenario.staff())) {
            staff.add(new StaffInfo(staff.size(), member, calendar));
        }
        for (Group group : scenario.groups()) {
            groupIndex.put(group.id(), groups.size());
            RuleSettings settings = RuleSettings.of(Rulebook.builtIn(), scenario, group);
            groups.add(new GroupInfo(
                    groups.size(),
                    group,
                    People.heads(scenario, group),
                    calendar,
                    settings,
                    People.youngest(scenario, group),
                    asked));
        }
        for (GroupInfo group : groups) {
            for (Aim aim : group.group.aims()) {
                aims.add(new AimInfo(aims.size(), group, aim, family(aim.family()), calendar, asked));
            }
        }
        new FixedThings(this).add();
    }

    /** Those who lead little come first, so that those who lead much stay free for the rest. */
    private static List<StaffMember> specialistsFirst(List<StaffMember> staff) {
        return staff.stream()
                .sorted(Comparator.comparingInt((StaffMember m) -> m.leads().contains("*")
                                ? Integer.MAX_VALUE
                                : m.leads().size())
                        .thenComparing(StaffMember::id))
                .toList();
    }

    /** The problem of a scenario on its own. */
    public static Problem of(Scenario scenario) {
        return of(scenario, null, PlanUse.NEW);
    }

    /** What the plan that was read is for. */
    public enum PlanUse {
        /** There is none, or only its pins matter. */
        NEW,
        /** It is judged as it stands: leads and variants that it names are held to. */
        CHECK,
        /** It is the start of a search. */
        START
    }

    /** The problem of a scenario with a plan's pins, extra sessions and places. */
    public static Problem of(Scenario scenario, @Nullable Plan plan, PlanUse use) {
        return of(scenario, plan, use, Asked.ALL);
    }

    /** The same, with some of what the scenario asks for set aside: no session is made for it but those of the plan. */
    public static Problem of(Scenario scenario, @Nullable Plan plan, PlanUse use, Asked asked) {
        ProblemBuilder builder = new ProblemBuilder(scenario, asked);
        new SessionMaker(builder, plan, use).make();
        return new Problem(builder);
    }

    /** The problem of changing a plan and staying close to it. */
    public static Problem close(Scenario scenario, Plan plan, @Nullable Moment now) {
        ProblemBuilder builder = new ProblemBuilder(scenario, Asked.ALL);
        builder.stayClose =
                new StayClose(plan.published() != null, now == null ? Integer.MIN_VALUE : builder.calendar.minute(now));
        new SessionMaker(builder, plan, PlanUse.START).make();
        return new Problem(builder);
    }

    FamilyInfo family(String id) {
        FamilyInfo family = families.get(id);
        if (family == null) {
            throw new IllegalArgumentException("no family is called \"" + id + "\"");
        }
        return family;
    }

    int facility(@Nullable String id) {
        return id == null ? Stimulus.NOWHERE : facilityIndex.getOrDefault(id, Stimulus.NOWHERE);
    }

    List<Integer> groupIndexes(List<String> ids) {
        return ids.stream()
                .map(id -> java.util.Objects.requireNonNull(groupIndex.get(id)))
                .toList();
    }

    int[][] transferMinutes() {
        int[][] minutes = new int[facilities.size()][facilities.size()];
        for (Transfer transfer : scenario.transfers()) {
            int a = facility(transfer.between().get(0));
            int b = facility(transfer.between().get(1));
            minutes[a][b] = transfer.minutes();
            minutes[b][a] = transfer.minutes();
        }
        return minutes;
    }
}
