package weekwright.engine.explain;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.Pathway;

/** What is said of wants about rest, size, exposure and learning. */
final class WantWording {
    private final Names names;

    WantWording(Problem problem) {
        names = new Names(problem);
    }

    /** The sentence of a finding, or null where the rule is another's. */
    @Nullable
    String sentence(Fact fact) {
        return switch (fact.rule().id()) {
            case "primer-window" -> primerWindow(fact);
            case "even-spread" ->
                thing(fact, 1) + " starts " + Names.hours(fact.measured()) + " after " + thing(fact, 0)
                        + "; spread evenly over the week, " + Names.hours(fact.limit()) + " lie between.";
            case "night-rest-margin" -> longNight(fact);
            case "six-days-running" ->
                group(fact) + " has no free day from " + names.day(fact.firstDay()) + " to " + names.day(fact.lastDay())
                        + ", " + fact.measured() + " days running; at most " + fact.limit() + " are wanted.";
            case "strength-endurance-apart" ->
                thing(fact, 1) + " starts " + Names.hours(fact.measured()) + " after " + thing(fact, 0)
                        + "; between lifting and hard endurance work on one day " + Names.hours(fact.limit())
                        + " are wanted.";
            case "top-up" ->
                "Those who did not play " + thing(fact, 0) + " have nothing by the end of " + names.day(fact.lastDay())
                        + "; wanted: " + family(fact) + ".";
            case "travel-day-light" -> thing(fact, 0) + " lies on a day of long travel: only low work belongs there.";
            case "attendance" ->
                thing(fact, 0) + " lies where " + fact.measured() + " of " + fact.group().heads + " in " + group(fact)
                        + " cannot take part.";
            case "visit-size" -> visitSize(fact);
            case "short-wait" ->
                group(fact) + " waits " + Names.hours(fact.measured()) + " between visits on "
                        + names.day(fact.firstDay()) + ".";
            default -> exposure(fact);
        };
    }

    private @Nullable String exposure(Fact fact) {
        return switch (fact.rule().id()) {
            case "learner-frequency" -> learner(fact);
            case "return-dose" ->
                names.things(fact.things()) + " comes " + fact.detail()
                        + " days after the last sprinting near best speed, with " + fact.measured()
                        + " % of the usual volume; at most " + fact.limit() + " % are wanted.";
            case "pathway-neglected" ->
                group(fact) + " goes " + fact.measured() + " days without "
                        + Wording.quality(Pathway.values()[fact.detail()]) + " at high intensity, from "
                        + names.day(fact.firstDay()) + " to " + names.day(fact.lastDay()) + "; it is wanted every "
                        + fact.limit() + " days.";
            case "sprint-metres" -> sprintMetres(fact);
            case "taper" -> taper(fact);
            default -> null;
        };
    }

    private String primerWindow(Fact fact) {
        int from = (int) Math.round(60 * fact.group().settings.number("primer-window", "fromHours"));
        int to = (int) Math.round(60 * fact.group().settings.number("primer-window", "toHours"));
        String wanted = "; a primer works from " + Names.hours(to) + " to " + Names.hours(from) + " before.";
        return fact.things().size() < 2
                ? thing(fact, 0) + " has no fixture after it" + wanted
                : thing(fact, 0) + " ends " + Names.hours(fact.measured()) + " before " + thing(fact, 1) + wanted;
    }

    private String longNight(Fact fact) {
        boolean fixture = fact.things().stream().anyMatch(Stimulus::isFixture);
        return Names.hours(fact.measured()) + " lie between the end of " + thing(fact, 0) + " and the start of "
                + thing(fact, 1) + (fixture ? ", travel and a fixture's warm-up included" : "")
                + "; for a long night " + Names.hours(fact.limit()) + " are wanted.";
    }

    private String visitSize(Fact fact) {
        String day = names.day(fact.firstDay());
        return fact.detail() == 0
                ? group(fact) + " has a visit of " + fact.measured() + " sessions on " + day
                        + ", easy and short work not counted; at most " + fact.limit() + " are wanted."
                : group(fact) + " trains " + fact.measured() + " min on " + day
                        + ", warm-ups and easy work not counted; at most " + fact.limit() + " min are wanted.";
    }

    private String learner(Fact fact) {
        if (fact.detail() != 0) {
            String which = fact.measured() > 1 ? "on a day that has it already" : "after something tiring";
            return thing(fact, 0) + " comes " + which + "; a new skill is learnt fresh, on days of its own.";
        }
        String count = fact.measured() == 0 ? "none" : String.valueOf(fact.measured());
        return family(fact) + ": " + count + " in " + names.week(fact.firstDay())
                + "; a skill being learnt is wanted at " + (fact.measured() < fact.limit() ? "least " : "most ")
                + fact.limit() + " times.";
    }

    private String sprintMetres(Fact fact) {
        String what = fact.detail() == 0 ? " m at 95 % of best speed or more" : " m of sprinting, run-ins included";
        return thing(fact, 0) + " holds " + fact.measured() + what + "; "
                + (fact.measured() > fact.limit() ? "at most " : "at least ") + fact.limit() + " m are wanted.";
    }

    private String taper(Fact fact) {
        String change = fact.measured() < 0
                ? "rises by " + Names.number(-fact.measured() / 10.0)
                : "falls by " + Names.number(fact.measured() / 10.0);
        int limit = fact.limit();
        return "Before " + thing(fact, 0) + " the daily load of " + group(fact) + " " + change + " % against the "
                + fact.detail() + " days before the taper; a fall of at "
                + (fact.measured() < limit ? "least " : "most ") + Names.number(limit / 10.0) + " % is wanted.";
    }

    private String thing(Fact fact, int number) {
        List<Stimulus> things = fact.things();
        return names.thing(things.get(number));
    }

    private static String family(Fact fact) {
        return fact.aim() == null ? "" : fact.aim().family.family.label();
    }

    private static String group(Fact fact) {
        return fact.group().group.label();
    }
}
