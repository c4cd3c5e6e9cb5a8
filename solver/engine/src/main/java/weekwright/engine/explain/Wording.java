package weekwright.engine.explain;

import java.util.List;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.Ids;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Prefer;

/** Every sentence that a finding can say, by rule: actual, expected, and whom it concerns. */
final class Wording {
    private final Problem problem;
    private final Names names;

    Wording(Problem problem) {
        this.problem = problem;
        names = new Names(problem);
    }

    /** The finding in a coach's words. */
    String text(Fact fact) {
        return sentence(fact) + concerns(fact);
    }

    private String sentence(Fact fact) {
        return switch (fact.rule().id()) {
            case "one-place-at-a-time" -> onePlace(fact);
            case "inside-window" ->
                thing(fact) + " lies " + fact.measured() + " min outside the hours in which " + label(fact.group())
                        + " can train.";
            case "facility-open" ->
                thing(fact) + " lies " + fact.measured() + " min outside the opening hours of " + facility(fact) + ".";
            case "facility-fits" -> facilityFits(fact);
            case "facility-room" -> facilityRoom(fact);
            case "lead-free" -> "Nobody who may lead " + thing(fact) + " is free then.";
            case "visits-per-day" ->
                label(fact.group()) + " comes " + fact.measured() + " times on "
                        + names.day(fact.firstDay()) + "; at most " + Names.count(fact.limit(), "visit") + " a day "
                        + (fact.limit() == 1 ? "is" : "are") + " allowed.";
            case "night-rest" ->
                "Only " + Names.hours(fact.measured()) + " lie between the end of " + first(fact) + " and the start of "
                        + second(fact) + "; a night's rest is " + Names.hours(fact.limit()) + ".";
            case "pathway-gap-floor" -> pathwayGapFloor(fact);
            case "pathway-gap" ->
                second(fact) + " comes " + Names.hours(fact.measured()) + " after " + first(fact) + "; for "
                        + sharedQuality(fact) + " " + wanted(fact) + ".";
            case "high-block-floor" -> blocks(fact) + "; at least " + Names.hours(fact.limit()) + " must lie between.";
            case "high-block-gap" -> blocks(fact) + "; " + wanted(fact) + ".";
            case "before-fixture" -> before(fact) + "; it must end at least " + Names.hours(fact.limit()) + " before.";
            case "before-fixture-margin" -> before(fact) + "; " + wanted(fact) + ".";
            case "after-fixture" -> after(fact) + "; at least " + Names.hours(fact.limit()) + " must pass.";
            case "after-fixture-margin" -> after(fact) + "; " + wanted(fact) + ".";
            case "primer-end" -> before(fact) + "; a primer ends at least " + Names.hours(fact.limit()) + " before.";
            case "four-high-days", "three-high-days" ->
                "From " + names.day(fact.firstDay()) + " to "
                        + names.day(fact.lastDay()) + " " + fact.measured()
                        + " high days follow one another; at most " + fact.limit() + " should.";
            case "free-day" ->
                label(fact.group()) + " has " + noneOr(fact.measured()) + " in " + names.week(fact.firstDay()) + "; "
                        + fact.limit() + " must be kept.";
            default -> wish(fact);
        };
    }

    private String wish(Fact fact) {
        return switch (fact.rule().id()) {
            case "aim-most" -> aimCount(fact) + "; at most " + fact.limit() + " may be placed.";
            case "aim-least" -> aimCount(fact) + "; at least " + fact.limit() + " " + isAre(fact.limit()) + " owed.";
            case "aim-target" -> aimCount(fact) + "; " + fact.limit() + " " + isAre(fact.limit()) + " wanted.";
            case "high-days-most" ->
                highDays(fact) + "; at most " + fact.limit() + " " + isAre(fact.limit()) + " allowed.";
            case "high-days-least" ->
                highDays(fact) + "; at least " + fact.limit() + " " + isAre(fact.limit()) + " owed.";
            case "high-days-target" -> highDays(fact) + "; " + fact.limit() + " " + isAre(fact.limit()) + " wanted.";
            case "day-before-light" ->
                first(fact) + " lies on the day before " + second(fact)
                        + ": only low work, practice and a primer belong there.";
            case "load-falls-to-fixture" -> loadFalls(fact);
            case "free-day-place" -> freeDayPlace(fact);
            case "no-middle-day" ->
                names.day(fact.firstDay()) + " is a middle day for " + label(fact.group())
                        + ": demand " + Names.number(fact.measured() / 10.0) + ", above low ("
                        + Names.number(fact.limit() / 10.0) + ") and below high (6.5).";
            case "dose-kept" ->
                thing(fact) + " is done in the " + dose(fact.measured()) + " dose; the " + dose(fact.limit())
                        + " one is wanted.";
            case "freshest-first" -> freshest(fact);
            case "preferred-time" -> preferredTime(fact);
            case "preferred-facility" -> preferredFacility(fact);
            case "speed-exposure" ->
                label(fact.group()) + " goes " + fact.measured()
                        + " days without sprinting near best speed, from " + names.day(fact.firstDay()) + " to "
                        + names.day(fact.lastDay()) + "; every " + fact.limit() + " days are wanted.";
            case "keep-plan" -> keepPlan(fact);
            default ->
                throw new IllegalStateException("no sentence for " + fact.rule().id());
        };
    }

    private String onePlace(Fact fact) {
        if (fact.measured() < 0) {
            return first(fact) + " and " + second(fact) + " overlap by " + -fact.measured()
                    + " min, travel and warm-up of a fixture included.";
        }
        return fact.measured() + " min lie between " + first(fact) + " and " + second(fact)
                + "; the way from the one to the other takes " + fact.limit() + " min.";
    }

    private String facilityFits(Fact fact) {
        List<String> kinds = fact.things().get(0).family == null
                ? List.of()
                : fact.things().get(0).family.family.facility().stream()
                        .map(Ids::of)
                        .toList();
        if (fact.detail() != 0) {
            return thing(fact) + " needs a straight of " + fact.limit() + " m; " + facility(fact) + " has "
                    + fact.measured() + " m.";
        }
        String where = fact.facility() == null ? " has no place" : " cannot be held in " + facility(fact);
        return thing(fact) + where + ": it needs a " + Names.choice(kinds) + ".";
    }

    private String facilityRoom(Fact fact) {
        String what = fact.detail() == 0 ? "group" : "athlete";
        Stimulus last = fact.things().get(fact.things().size() - 1);
        return facility(fact) + " holds " + Names.count(fact.limit(), what) + " at once; from " + names.thing(last)
                + " on there are " + fact.measured() + ": " + names.things(fact.things()) + ".";
    }

    private String pathwayGapFloor(Fact fact) {
        if (fact.detail() != 0) {
            return first(fact) + " comes twice on " + names.day(fact.things().get(0).day) + ", again at " + second(fact)
                    + "; once a day is allowed.";
        }
        return second(fact) + " comes " + Names.hours(fact.measured()) + " after " + first(fact) + "; for "
                + sharedQuality(fact) + " at high intensity at least " + Names.hours(fact.limit()) + " must pass.";
    }

    private String blocks(Fact fact) {
        return "The hard work of " + names.day(fact.lastDay()) + " begins " + Names.hours(fact.measured())
                + " after that of " + names.day(fact.firstDay()) + " ended";
    }

    private String before(Fact fact) {
        return first(fact) + " ends " + Names.hours(fact.measured()) + " before " + second(fact);
    }

    private String after(Fact fact) {
        return second(fact) + " starts " + Names.hours(fact.measured()) + " after " + first(fact);
    }

    private static String wanted(Fact fact) {
        int tolerance = fact.rule().toleranceMinutes();
        return Names.hours(fact.limit() + tolerance) + " are wanted, and " + Names.hours(fact.limit())
                + " count as enough";
    }

    private String aimCount(Fact fact) {
        String family = fact.aim() == null ? "" : fact.aim().family.family.label();
        String count = fact.measured() == 0 ? "none" : String.valueOf(fact.measured());
        return family + ": " + count + " in " + names.week(fact.firstDay());
    }

    private static String noneOr(int free) {
        return free == 0 ? "no free day" : Names.count(free, "free day");
    }

    private static String isAre(int count) {
        return count == 1 ? "is" : "are";
    }

    private String highDays(Fact fact) {
        return label(fact.group()) + " has " + Names.count(fact.measured(), "high day") + " in "
                + names.week(fact.firstDay());
    }

    private String loadFalls(Fact fact) {
        String fixture = names.thing(fact.things().get(0));
        String load = Names.number(fact.measured() / 10.0) + " AU";
        String limit = Names.number(fact.limit() / 10.0) + " AU";
        if (fact.detail() == 3) {
            return names.day(fact.lastDay()) + ", the day before " + fixture + ", carries " + load + "; two thirds of "
                    + names.day(fact.firstDay()) + " would be " + limit + ".";
        }
        return "Load rises towards " + fixture + ": " + load + " on " + names.day(fact.lastDay()) + " after " + limit
                + " on " + names.day(fact.firstDay()) + ".";
    }

    private String freeDayPlace(Fact fact) {
        String fixture = names.thing(fact.things().get(0));
        return fact.measured() == 1
                ? "The free day after " + fixture + " is the first day after it, not the second ("
                        + names.day(fact.lastDay()) + ")."
                : "Neither of the two days after " + fixture + " is free (" + names.day(fact.firstDay()) + " and "
                        + names.day(fact.lastDay()) + ").";
    }

    private String freshest(Fact fact) {
        return fact.detail() != 0
                ? second(fact) + " teaches a new skill after " + first(fact) + "; a new skill is learnt fresh."
                : second(fact) + " comes after " + first(fact) + "; the fresher work belongs first.";
    }

    private String preferredTime(Fact fact) {
        Prefer prefer = prefer(fact);
        String from = prefer.from() == null ? "00:00" : prefer.from().toString();
        String to = prefer.to() == null ? "24:00" : prefer.to().toString();
        return thing(fact) + " lies " + fact.measured() + " min outside the hours preferred for it, " + from + " to "
                + to + ".";
    }

    private String preferredFacility(Fact fact) {
        List<String> wanted = problem.facilities.stream()
                .filter(place -> prefer(fact).facilities().contains(place.facility.id()))
                .map(place -> place.facility.label())
                .toList();
        String where = fact.facility() == null ? "nowhere in particular" : "in " + facility(fact);
        return thing(fact) + " is held " + where + "; preferred: " + Names.choice(wanted) + ".";
    }

    private static Prefer prefer(Fact fact) {
        Prefer prefer = fact.aim() == null ? null : fact.aim().aim.prefer();
        return java.util.Objects.requireNonNull(prefer);
    }

    private String keepPlan(Fact fact) {
        Session session = java.util.Objects.requireNonNull(fact.session());
        String before = names.thing(java.util.Objects.requireNonNull(session.before));
        return fact.things().isEmpty()
                ? before + " is left out now."
                : before + " is changed: now " + thing(fact) + ".";
    }

    /** The qualities that two sessions share at high intensity. */
    private static String sharedQuality(Fact fact) {
        Stimulus first = fact.things().get(0);
        Stimulus second = fact.things().get(1);
        List<String> shared = new java.util.ArrayList<>();
        for (Pathway pathway : Pathway.values()) {
            boolean both = first.family != null
                    && second.family != null
                    && (first.family.high & second.family.high & 1 << pathway.ordinal()) != 0;
            if (both) {
                shared.add(quality(pathway));
            }
        }
        return Names.list(shared);
    }

    private static String quality(Pathway pathway) {
        return switch (pathway) {
            case MAX_VELOCITY_SPRINT -> "maximal sprinting";
            case ACCELERATION -> "acceleration";
            case KNEE_DOMINANT -> "knee-dominant strength";
            case HIP_DOMINANT -> "hip-dominant strength";
            case UPPER_PUSH -> "upper-body pushing";
            case UPPER_PULL -> "upper-body pulling";
            case JUMP_LANDING -> "jumping";
            case CHANGE_OF_DIRECTION -> "change of direction";
            case AEROBIC -> "aerobic work";
        };
    }

    private static String dose(int thirds) {
        for (Dose dose : Dose.values()) {
            if (dose.thirds() == thirds) {
                return dose.id();
            }
        }
        return "";
    }

    private String thing(Fact fact) {
        return names.thing(fact.things().get(0));
    }

    private String first(Fact fact) {
        return names.thing(fact.things().get(0));
    }

    private String second(Fact fact) {
        return names.thing(fact.things().get(1));
    }

    private static String facility(Fact fact) {
        return fact.facility() == null ? "" : fact.facility().facility.label();
    }

    private static String label(GroupInfo group) {
        return group.group.label();
    }

    /** Whom a finding concerns, where it is not the whole group. */
    private String concerns(Fact fact) {
        if (fact.cohorts().isEmpty() || fact.heads() >= fact.group().heads) {
            return "";
        }
        List<String> athletes = Athletes.named(problem, fact);
        return athletes.isEmpty()
                ? " Concerns " + fact.heads() + " of " + fact.group().heads + " in " + label(fact.group()) + "."
                : " Concerns " + Names.list(Athletes.names(problem, athletes)) + ".";
    }
}
