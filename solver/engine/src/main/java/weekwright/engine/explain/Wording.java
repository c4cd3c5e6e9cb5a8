package weekwright.engine.explain;

import java.util.List;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.Ids;
import weekwright.model.catalogue.Variant;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Prefer;

/** Every sentence that a finding can say, by rule: actual, expected, and whom it concerns. */
final class Wording {
    private final Problem problem;
    private final Names names;
    private final GroupNames groups;
    private final WantWording wants;
    private final FactWording facts;

    Wording(Problem problem) {
        this.problem = problem;
        names = new Names(problem);
        groups = new GroupNames(problem);
        wants = new WantWording(problem);
        facts = new FactWording(problem);
    }

    /** The finding in a coach's words. */
    String text(Fact fact) {
        String sentence = wants.sentence(fact);
        sentence = sentence == null ? facts.sentence(fact) : sentence;
        return groups.named(fact.groups(), (sentence == null ? sentence(fact) : sentence) + concerns(fact));
    }

    private String sentence(Fact fact) {
        return switch (fact.rule().id()) {
            case "one-place-at-a-time" -> onePlace(fact);
            case "inside-window" ->
                thing(fact) + " has " + fact.measured() + " min outside the hours in which " + label(fact.group())
                        + " can train.";
            case "facility-open" ->
                thing(fact) + " has " + fact.measured() + " min outside the opening hours of " + facility(fact) + ".";
            case "facility-fits" -> facilityFits(fact);
            case "facility-room" -> facilityRoom(fact);
            case "quorum" ->
                thing(fact) + " can have " + (fact.measured() == 0 ? "nobody" : "only " + fact.measured())
                        + " of those it is for; at least " + fact.limit() + " must come.";
            case "lead-free" -> leadFree(fact);
            case "visits-per-day" ->
                label(fact.group()) + " comes " + fact.measured() + " times on "
                        + names.day(fact.firstDay()) + "; at most " + Names.count(fact.limit(), "visit") + " a day "
                        + (fact.limit() == 1 ? "is" : "are") + " allowed.";
            case "night-rest" -> nightRest(fact);
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
            case "primer-end" ->
                before(fact) + "; a primer must end at least " + Names.hours(fact.limit()) + " before.";
            case "four-high-days", "three-high-days" ->
                names.day(fact.firstDay()) + " to " + names.day(fact.lastDay()) + " are " + fact.measured()
                        + " high days running; at most " + fact.limit() + " should follow one another.";
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
                        + ": demand " + Names.number(fact.measured() / 100.0) + ", above low ("
                        + Names.number(fact.limit() / 100.0) + ") and below high (6.5).";
            case "dose-kept" ->
                thing(fact) + " is done in a " + dose(fact.measured()) + " dose; a " + dose(fact.limit())
                        + " one is wanted.";
            case "freshest-first" -> freshest(fact);
            case "preferred-time" -> preferredTime(fact);
            case "preferred-facility" -> preferredFacility(fact);
            case "speed-exposure" ->
                label(fact.group()) + " goes " + fact.measured()
                        + " days without sprinting near best speed, from " + names.day(fact.firstDay()) + " to "
                        + names.day(fact.lastDay()) + "; it is wanted every " + fact.limit() + " days.";
            case "keep-plan" -> keepPlan(fact);
            case "maximum-repeated" -> maximumRepeated(fact);
            case "variant-churn" -> variantChurn(fact);
            case "same-lead" -> sameLead(fact);
            case "pins" -> pins(fact);
            default ->
                throw new IllegalStateException("no sentence for " + fact.rule().id());
        };
    }

    private String onePlace(Fact fact) {
        if (fact.detail() != 0) {
            return lent(fact);
        }
        if (fact.measured() < 0) {
            boolean fixture = fact.things().stream().anyMatch(Stimulus::isFixture);
            return first(fact) + " and " + second(fact) + " overlap by " + -fact.measured() + " min"
                    + (fixture ? ", the fixture's travel and warm-up included." : ".");
        }
        return first(fact) + " and " + second(fact) + " are " + fact.measured()
                + " min apart; the way from one to the other takes " + fact.limit() + " min.";
    }

    private String lent(Fact fact) {
        boolean secondIsLent = fact.things().get(1).lentBy != null;
        return (secondIsLent ? second(fact) : first(fact)) + " lies in the minutes that "
                + (secondIsLent ? first(fact) : second(fact)) + " lends, and leaves " + fact.measured()
                + " min of them for the way there or back; it takes " + fact.limit() + " min.";
    }

    private String leadFree(Fact fact) {
        int held = fact.session() == null ? -1 : fact.session().heldLead;
        return held < 0
                ? "Nobody who may lead " + thing(fact) + " is free then."
                : problem.staff.get(held).member.name() + " is named to lead " + thing(fact)
                        + ", but may not lead it or is not free then.";
    }

    private String nightRest(Fact fact) {
        boolean home = fact.things().get(0).isFixture();
        boolean out = fact.things().get(1).isFixture();
        return "Only " + Names.hours(fact.measured()) + " lie between the end of " + first(fact)
                + (home ? ", the way home included," : "") + " and the start of " + second(fact)
                + (out ? ", the way there and the warm-up included" : "") + "; a night's rest is "
                + Names.hours(fact.limit()) + ".";
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
        String where = fact.facility() == null ? " has no place" : " cannot be held at " + facility(fact);
        return thing(fact) + where + ": it needs a " + Names.choice(kinds) + ".";
    }

    private String facilityRoom(Fact fact) {
        String what = fact.detail() == 0 ? "group" : "athlete";
        Stimulus last = fact.things().get(fact.things().size() - 1);
        return facility(fact) + " holds " + Names.count(fact.limit(), what) + " at once; when " + names.thing(last)
                + " starts there are " + fact.measured() + ": " + names.things(fact.things()) + ".";
    }

    private String pathwayGapFloor(Fact fact) {
        if (fact.detail() != 0) {
            Stimulus first = fact.things().get(0);
            return names.label(first) + " comes twice on " + names.day(first.day) + ", at " + names.time(first)
                    + " and at " + names.time(fact.things().get(1)) + "; it may come only once a day.";
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
        boolean ofLeast = fact.rule().id().equals("aim-least") || fact.detail() != 0;
        boolean micro = ofLeast && fact.things().stream().anyMatch(thing -> thing.dose == Dose.MICRO);
        return family + ": " + count + " in " + names.week(fact.firstDay())
                + (micro ? ", micro doses not counted" : "");
    }

    private static String noneOr(int free) {
        return free == 0 ? "no free day" : Names.count(free, "free day");
    }

    private static String isAre(int count) {
        return count == 1 ? "is" : "are";
    }

    private String highDays(Fact fact) {
        String count = fact.measured() == 0 ? "no high day" : Names.count(fact.measured(), "high day");
        return label(fact.group()) + " has " + count + " in " + names.week(fact.firstDay());
    }

    private String loadFalls(Fact fact) {
        String fixture = names.thing(fact.things().get(0));
        String load = Names.number(fact.measured() / 10.0) + " AU";
        String limit = Names.number(fact.limit() / 10.0) + " AU";
        if (fact.detail() == 3) {
            return names.day(fact.lastDay()) + ", the day before " + fixture + ", carries " + load
                    + "; measured against " + names.day(fact.firstDay()) + " at most " + limit + " are wanted.";
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
                : second(fact) + " comes after " + first(fact) + "; the work that needs freshness more belongs first.";
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
        String where = fact.facility() == null ? "nowhere in particular" : "at " + facility(fact);
        return thing(fact) + " is held " + where + "; preferred: " + Names.choice(wanted) + ".";
    }

    private static Prefer prefer(Fact fact) {
        Prefer prefer = fact.aim() == null ? null : fact.aim().aim.prefer();
        return java.util.Objects.requireNonNull(prefer);
    }

    private String keepPlan(Fact fact) {
        Session session = java.util.Objects.requireNonNull(fact.session());
        Stimulus before = java.util.Objects.requireNonNull(session.before);
        return fact.things().isEmpty()
                ? names.thing(before) + " is left out now."
                : names.thing(before) + " "
                        + Names.list(changes(before, fact.things().get(0))) + ".";
    }

    private List<String> changes(Stimulus before, Stimulus now) {
        List<String> changes = new java.util.ArrayList<>();
        if (now.start != before.start) {
            changes.add("moves to " + Names.moment(problem.calendar.moment(now.start)));
        }
        if (now.facility != before.facility) {
            changes.add("moves from " + place(before) + " to " + place(now));
        }
        if (now.dose != before.dose) {
            changes.add("changes from a " + before.dose.id() + " to a " + now.dose.id() + " dose");
        }
        return changes;
    }

    private String maximumRepeated(Fact fact) {
        return variant(fact) + " in full dose, " + names.day(fact.firstDay()) + ": the " + ordinal(fact.measured())
                + " week running for " + label(fact.group()) + "; after "
                + Names.count(fact.limit(), "week") + " another lift should take its place.";
    }

    private String variantChurn(Fact fact) {
        if (fact.detail() >= 0) {
            return variant(fact) + " gives way on " + names.day(fact.firstDay()) + " after "
                    + Names.count(fact.measured(), "session") + " of " + label(fact.group())
                    + "; a lift should stay for "
                    + fact.limit() + ".";
        }
        FamilyInfo family = java.util.Objects.requireNonNull(fact.aim()).family;
        List<String> tested = family.family.variants().stream()
                .filter(Variant::tested)
                .map(Variant::label)
                .toList();
        return label(fact.group()) + " goes " + fact.measured() + " days without the lift that is tested ("
                + Names.choice(tested) + "), from " + names.day(fact.firstDay()) + " to " + names.day(fact.lastDay())
                + "; it should come back within " + fact.limit() + " days.";
    }

    private static String variant(Fact fact) {
        FamilyInfo family = java.util.Objects.requireNonNull(fact.things().get(0).family);
        return family.family.variants().get(fact.detail()).label();
    }

    private static String ordinal(int number) {
        boolean teens = number % 100 >= 11 && number % 100 <= 13;
        return number
                + switch (teens ? 0 : number % 10) {
                    case 1 -> "st";
                    case 2 -> "nd";
                    case 3 -> "rd";
                    default -> "th";
                };
    }

    private String sameLead(Fact fact) {
        int staff = problem.staff.size();
        return lead(fact.detail() / staff) + " leads " + first(fact) + ", and " + lead(fact.detail() % staff) + " "
                + second(fact) + "; one lead for the week is wanted.";
    }

    private String lead(int index) {
        return problem.staff.get(index).member.name();
    }

    private String pins(Fact fact) {
        Session session = java.util.Objects.requireNonNull(fact.session());
        return switch (fact.detail()) {
            case 0 -> thing(fact) + " lies on a day that is barred for it; a new search moves it.";
            case 1 -> thing(fact) + " is held on a day that is barred for it; it stays where it is held.";
            case 2 ->
                thing(fact) + " is held in a " + fact.things().get(0).dose.id()
                        + " dose, which its aim does not allow; it stays as it is held.";
            default ->
                session.family.family.label() + " in " + names.week(fact.firstDay())
                        + " is held out, and held in the plan as well; it stays out.";
        };
    }

    private String place(Stimulus at) {
        return at.facility < 0
                ? "nowhere in particular"
                : problem.facilities.get(at.facility).facility.label();
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

    static String quality(Pathway pathway) {
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
        if (fact.cohorts().isEmpty() || !fact.athletes().isEmpty() || fact.heads() >= fact.group().heads) {
            return "";
        }
        List<String> athletes = Athletes.named(problem, fact);
        return athletes.isEmpty()
                ? " Concerns " + fact.heads() + " of " + fact.group().heads + " in " + label(fact.group()) + "."
                : " Concerns " + Names.list(Athletes.names(problem, athletes)) + ".";
    }
}
