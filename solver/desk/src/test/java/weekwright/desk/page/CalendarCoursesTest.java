package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.desk.page.CalendarCourses.Now;
import weekwright.desk.page.CalendarCourses.Past;
import weekwright.desk.store.Contents;
import weekwright.desk.store.Revision;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** What is read of a folder with hundreds of revisions for a calendar: each week once, and none that is the same again. */
class CalendarCoursesTest {
    private static final Instant MONDAY = Instant.parse("2027-02-08T12:00:00Z");
    private static final String SQUAD = "group:first-squad";

    private final List<Revision> revisions = new ArrayList<>();
    private final List<Plan> plans = new ArrayList<>();
    private final List<Integer> read = new ArrayList<>();
    private final CalendarCourses courses = new CalendarCourses();
    private Scenario scenario;
    private Plan plan;

    private final Past past = new Past() {
        @Override
        public List<Revision> history() {
            return List.copyOf(revisions);
        }

        @Override
        public Contents contents(int number) {
            read.add(number);
            return new Contents(scenario, plans.get(number - 1), null);
        }
    };

    @BeforeEach
    void a_week_is_planned() throws Exception {
        scenario = Scenarios.read("one-match");
        plan = Engine.propose(new Proposal(scenario, null, Budget.moves(300), 1, 1, null), Progress.SILENT)
                .plan();
    }

    /** Saves another revision; its plan is told from others by when its first session starts. */
    private void save(Plan one) {
        int number = revisions.size() + 1;
        String digest = one.placements().get(0).start().toString();
        plans.add(one);
        revisions.add(new Revision(
                number,
                MONDAY.plus(Duration.ofMinutes(number)),
                "Change",
                number,
                false,
                Map.of("scenario.json", "the same", "plan.json", digest)));
    }

    /** The plan with its first session so many minutes later. */
    private Plan later(int minutes) {
        List<Placement> placements = new ArrayList<>(plan.placements());
        Placement first = placements.get(0);
        placements.set(0, first.withStart(Moment.of(first.start().local().plusMinutes(minutes))));
        return plan.withPlacements(placements);
    }

    private String calendar(CalendarCourses of) {
        int last = revisions.size();
        return of.text("week", SQUAD, past, new Now(revisions.get(last - 1), scenario, plans.get(last - 1)));
    }

    @Test
    void a_week_that_was_saved_again_and_again_is_read_once() {
        for (int i = 0; i < 300; i++) {
            save(plan);
        }

        String calendar = calendar(courses);

        assertThat(read).containsExactly(1);
        assertThat(calendar).contains("SEQUENCE:1").doesNotContain("SEQUENCE:2");
    }

    @Test
    void what_was_followed_once_is_not_read_again() {
        for (int i = 0; i < 300; i++) {
            save(later(15 * (i % 3)));
        }
        String first = calendar(courses);
        assertThat(read).as("the one in force is known").hasSize(299);
        read.clear();

        assertThat(calendar(courses)).isEqualTo(first);
        assertThat(read).isEmpty();
        save(later(60));
        String after = calendar(courses);
        assertThat(read).as("only what has come since").containsExactly(300);
        assertThat(after).contains("SEQUENCE:301");
        assertThat(calendar(new CalendarCourses()))
                .as("and it is what it would be if all had been read")
                .isEqualTo(after);
    }

    @Test
    void a_past_that_is_no_longer_the_same_is_followed_anew() {
        save(plan);
        save(later(15));
        save(later(30));
        calendar(courses);
        read.clear();
        Revision second = revisions.get(1);
        revisions.set(
                1,
                new Revision(2, second.at(), "Change", 2, false, Map.of("scenario.json", "an athlete was forgotten")));

        calendar(courses);

        assertThat(read).containsExactly(1, 2);
    }
}
