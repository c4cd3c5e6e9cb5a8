package weekwright.engine.rules;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.rules.AfterFixtureRules.AfterFixture;
import weekwright.engine.rules.AfterFixtureRules.AfterFixtureMargin;
import weekwright.engine.rules.AfterFixtureRules.FreeDayPlace;
import weekwright.engine.rules.AfterFixtureRules.TopUp;
import weekwright.engine.rules.AimRules.AimLeast;
import weekwright.engine.rules.AimRules.AimMost;
import weekwright.engine.rules.AimRules.AimTarget;
import weekwright.engine.rules.AimRules.DoseKept;
import weekwright.engine.rules.AimRules.EvenSpread;
import weekwright.engine.rules.AttendanceRules.EverybodyComes;
import weekwright.engine.rules.AttendanceRules.Quorum;
import weekwright.engine.rules.AttendanceRules.SitsOut;
import weekwright.engine.rules.BeforeFixtureRules.BeforeFixture;
import weekwright.engine.rules.BeforeFixtureRules.BeforeFixtureMargin;
import weekwright.engine.rules.BeforeFixtureRules.DayBeforeLight;
import weekwright.engine.rules.BeforeFixtureRules.PrimerEnd;
import weekwright.engine.rules.BeforeFixtureRules.PrimerWindow;
import weekwright.engine.rules.BeforeFixtureRules.TravelDayLight;
import weekwright.engine.rules.FixtureFacts.FixturesClose;
import weekwright.engine.rules.FixtureFacts.RestBetweenFixtures;
import weekwright.engine.rules.LearningRules.FreshestFirst;
import weekwright.engine.rules.LearningRules.LearnerFrequency;
import weekwright.engine.rules.LearningRules.MaximumRepeated;
import weekwright.engine.rules.LearningRules.VariantChurn;
import weekwright.engine.rules.LoadFacts.LoadOfWeek;
import weekwright.engine.rules.LoadFacts.LoadRatioOfWeek;
import weekwright.engine.rules.LoadFacts.LoadSpread;
import weekwright.engine.rules.LoadFacts.MarksOld;
import weekwright.engine.rules.LoadRules.PathwayNeglected;
import weekwright.engine.rules.LoadRules.ReturnDose;
import weekwright.engine.rules.LoadRules.SpeedExposure;
import weekwright.engine.rules.PackRules.CollegeDay;
import weekwright.engine.rules.PackRules.CollegeWeek;
import weekwright.engine.rules.PackRules.Youth;
import weekwright.engine.rules.PlaceAndTimeRules.FacilityFits;
import weekwright.engine.rules.PlaceAndTimeRules.FacilityOpen;
import weekwright.engine.rules.PlaceAndTimeRules.FacilityRoom;
import weekwright.engine.rules.PlaceAndTimeRules.InsideWindow;
import weekwright.engine.rules.PlaceAndTimeRules.LeadFree;
import weekwright.engine.rules.PlaceAndTimeRules.NightRest;
import weekwright.engine.rules.PlaceAndTimeRules.OnePlaceAtATime;
import weekwright.engine.rules.PlaceAndTimeRules.VisitsPerDay;
import weekwright.engine.rules.PreferenceRules.KeepPlan;
import weekwright.engine.rules.PreferenceRules.Pins;
import weekwright.engine.rules.PreferenceRules.PreferredFacility;
import weekwright.engine.rules.PreferenceRules.PreferredTime;
import weekwright.engine.rules.PreferenceRules.SameLead;
import weekwright.engine.rules.PreferenceRules.ShortWait;
import weekwright.engine.rules.PreferenceRules.Softened;
import weekwright.engine.rules.RecoveryRules.FreeDay;
import weekwright.engine.rules.RecoveryRules.HighBlockFloor;
import weekwright.engine.rules.RecoveryRules.HighBlockGap;
import weekwright.engine.rules.RecoveryRules.HighDaysRunning;
import weekwright.engine.rules.RecoveryRules.PathwayGap;
import weekwright.engine.rules.RecoveryRules.PathwayGapFloor;
import weekwright.engine.rules.RestRules.NightRestMargin;
import weekwright.engine.rules.RestRules.StrengthEnduranceApart;
import weekwright.engine.rules.RunUpRules.LoadFallsToFixture;
import weekwright.engine.rules.RunUpRules.Taper;
import weekwright.engine.rules.SizeRules.SprintMetres;
import weekwright.engine.rules.SizeRules.VisitSize;
import weekwright.engine.rules.WeekShapeRules.HighDaysLeast;
import weekwright.engine.rules.WeekShapeRules.HighDaysMost;
import weekwright.engine.rules.WeekShapeRules.HighDaysTarget;
import weekwright.engine.rules.WeekShapeRules.NoMiddleDay;
import weekwright.engine.rules.WeekShapeRules.SixDaysRunning;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Priority;

/** The list of rules, must above want, as they hold for one group; rules switched off are left out. */
public final class GroupRules {
    final List<RuleOn<PlacementView>> placement;
    final List<RuleOn<PairView>> pair;
    final List<RuleOn<GroupView>> day;
    final List<RuleOn<GroupView>> night;
    final List<RuleOn<GroupView>> run;
    final List<RuleOn<GroupView>> stretch;
    final List<RuleOn<GroupView>> week;
    /** What a week's load is measured against: its own days and those of the weeks before. */
    final List<RuleOn<GroupView>> loads;

    final List<RuleOn<GroupView>> fixture;
    final List<RuleOn<GroupView>> taper;
    final List<RuleOn<GroupView>> link;
    final List<RuleOn<AimView>> aim;
    final List<RuleOn<AimView>> topUp;
    final List<RuleOn<BookingView>> booking;
    final List<RuleOn<PlacementView>> lead;
    final List<RuleOn<LiftView>> lift;
    final List<RuleOn<LeadsView>> leads;
    /** What is told of pins: they cost nothing, so that only explanations ask. */
    final List<RuleOn<PlacementView>> pins;
    /** Facts about fixtures, which nobody here can mend: only explanations ask. */
    final List<RuleOn<GroupView>> fixtureFacts;
    /** Facts about a group as such: only explanations ask. */
    final List<RuleOn<GroupView>> groupFacts;

    private final boolean told;

    /** All rules that a group has not switched off. */
    GroupRules(RuleSettings settings) {
        this(settings, true);
    }

    /**
     * The rules of a group.
     *
     * @param told whether those that are only told are among them: they cost nothing, and a search does not ask
     */
    GroupRules(RuleSettings s, boolean told) {
        this.told = told;
        placement = on(List.of(
                new InsideWindow(s),
                new FacilityOpen(s),
                new FacilityFits(s),
                new Quorum(s),
                new PrimerWindow(s),
                new TravelDayLight(s),
                new SprintMetres(s),
                new DoseKept(s),
                new PreferredTime(s),
                new PreferredFacility(s),
                new KeepPlan(s),
                new EverybodyComes(s),
                new SitsOut(s),
                new MarksOld(s)));
        pair = on(List.of(
                new OnePlaceAtATime(s),
                new PathwayGapFloor(s),
                new BeforeFixture(s),
                new AfterFixture(s),
                new PrimerEnd(s),
                new PathwayGap(s),
                new BeforeFixtureMargin(s),
                new AfterFixtureMargin(s),
                new DayBeforeLight(s),
                new StrengthEnduranceApart(s),
                new FreshestFirst(s)));
        day = on(List.of(
                new VisitsPerDay(s), new NoMiddleDay(s), new VisitSize(s), new ShortWait(s), new CollegeDay(s)));
        night = on(List.of(new NightRest(s), new NightRestMargin(s)));
        run = on(List.of(
                new HighBlockFloor(s),
                new HighDaysRunning("four-high-days", s),
                new HighBlockGap(s),
                new HighDaysRunning("three-high-days", s)));
        stretch = on(List.of(new SixDaysRunning(s)));
        week = on(List.of(
                new FreeDay(s),
                new HighDaysMost(s),
                new HighDaysLeast(s),
                new HighDaysTarget(s),
                new CollegeWeek("college-in-season", s),
                new CollegeWeek("college-out-of-season", s),
                new Youth(s)));
        loads = on(List.of(new LoadOfWeek(s), new LoadSpread(s), new LoadRatioOfWeek(s)));
        fixture = on(List.of(new LoadFallsToFixture(s), new FreeDayPlace(s)));
        taper = on(List.of(new Taper(s)));
        link = on(List.of(new SpeedExposure(s), new ReturnDose(s), new PathwayNeglected(s)));
        aim = on(List.of(
                new AimMost(s),
                new AimLeast(s, Priority.KEY),
                new AimLeast(s, Priority.MAIN),
                new AimTarget(s),
                new EvenSpread(s),
                new LearnerFrequency(s)));
        topUp = on(List.of(new TopUp(s)));
        booking = on(List.of(new FacilityRoom(s)));
        lead = on(List.of(new LeadFree(s)));
        lift = on(List.of(new MaximumRepeated(s), new VariantChurn(s)));
        leads = on(List.of(new SameLead(s)));
        pins = on(List.of(new Pins(s)));
        fixtureFacts = on(List.of(new FixturesClose(s), new RestBetweenFixtures(s)));
        groupFacts = on(List.of(new Softened(s)));
    }

    /** Ids of all rules in force, in the order of the list. */
    public List<String> ids() {
        List<JudgedRule> all = new ArrayList<>();
        List.of(
                        placement,
                        pair,
                        day,
                        night,
                        run,
                        stretch,
                        week,
                        loads,
                        fixture,
                        taper,
                        link,
                        aim,
                        topUp,
                        booking,
                        lead,
                        lift,
                        leads,
                        pins,
                        fixtureFacts,
                        groupFacts)
                .forEach(all::addAll);
        return all.stream().map(JudgedRule::id).distinct().toList();
    }

    private <V extends View> List<RuleOn<V>> on(List<RuleOn<V>> rules) {
        return rules.stream()
                .filter(rule -> rule.level() != RuleLevel.OFF)
                .filter(rule -> told || rule.level() != RuleLevel.TOLD)
                .toList();
    }
}
