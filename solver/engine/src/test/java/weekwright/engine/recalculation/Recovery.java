package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalDouble;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Hours;
import weekwright.model.catalogue.Role;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Pathway;

/** Hours from one hard thing to the next. */
final class Recovery extends Judge {
    /** A block and the next one count as neighbours up to this many days apart. */
    static final int DAYS_TO_THE_NEXT_BLOCK = 5;

    Recovery(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        forEachCohort(person -> {
            List<Thing> sessions = the.sessions(person);
            for (int i = 0; i < sessions.size(); i++) {
                for (Thing later : sessions.subList(i + 1, sessions.size())) {
                    Thing earlier = sessions.get(i);
                    if (isOurs(earlier, later)) {
                        pathwayGapFloor(earlier, later);
                    }
                    if (isOurs(earlier, later) && !sharedHigh(earlier, later).isEmpty()) {
                        pathwayGap(earlier, later);
                    }
                }
            }
            judgeBlocks(person);
        });
    }

    /** Recovery may be had again, and practices are the coach's own affair. */
    private static boolean onceADay(Family family) {
        return family.role() != Role.RECOVERY && family.role() != Role.PRACTICE;
    }

    /** The same quality at high intensity comes again only after its hours, and never the same family twice a day. */
    private void pathwayGapFloor(Thing earlier, Thing later) {
        String group = groupOf(earlier, later);
        Fraction limit = sameDay(earlier, later)
                ? Fraction.of(earlier.trains().againHours().must())
                : sharedHigh(earlier, later).stream()
                        .map(pathway -> earlier.ofDose(floorHours(earlier.trains(), pathway, group)))
                        .reduce(Fraction.ZERO, Fraction::max);
        Fraction hoursShort = limit.minus(earlier.hoursTo(later));
        boolean broken = sameDay(earlier, later)
                ? earlier.trains().id().equals(later.trains().id()) && onceADay(earlier.trains())
                : hoursShort.positive();
        if (broken) {
            mustHours("pathway-gap-floor", names(earlier.key(), later.key()), group, hoursShort, share(group));
        }
    }

    private static boolean sameDay(Thing earlier, Thing later) {
        return earlier.date().equals(later.date());
    }

    private Fraction floorHours(Family family, Pathway pathway, String group) {
        OptionalDouble set = the.settings().get(group).keyed("pathway-gap-floor", "hours", pathway.id());
        return Fraction.of(set.orElse(family.againHours().must()));
    }

    /** The hours wanted before the same quality at high intensity; of several qualities the one that wants most. */
    private void pathwayGap(Thing earlier, Thing later) {
        if (sameDay(earlier, later)) {
            return;
        }
        String group = groupOf(earlier, later);
        Fraction wanted = sharedHigh(earlier, later).stream()
                .map(pathway -> earlier.ofDose(wantedHours(earlier.trains(), pathway, group)))
                .reduce(Fraction.ZERO, Fraction::max);
        Fraction points =
                wanted.positive() ? pointsForGap("pathway-gap", group, wanted, earlier.hoursTo(later)) : Fraction.ZERO;
        want("pathway-gap", names(earlier.key(), later.key()), group, points, share(group));
    }

    private Fraction wantedHours(Family family, Pathway pathway, String group) {
        OptionalDouble set = the.settings().get(group).keyed("pathway-gap", "hours", pathway.id());
        if (set.isPresent()) {
            return Fraction.of(set.getAsDouble());
        }
        Fraction own = want(family.againHours());
        return isRepeatedOften(family, pathway, group)
                ? own.min(number("pathway-gap", "sprintStrengthHours", group))
                : own;
    }

    /** Maximal speed and heavy lower-body lifting in groups that live by them. */
    private boolean isRepeatedOften(Family family, Pathway pathway, String group) {
        GroupKind kind = the.group(group).kind();
        return (kind == GroupKind.SPRINT || kind == GroupKind.STRENGTH)
                && List.of(Pathway.MAX_VELOCITY_SPRINT, Pathway.KNEE_DOMINANT, Pathway.HIP_DOMINANT)
                        .contains(pathway)
                && family.order() != null
                && (family.order() == 1 || family.order() == 4);
    }

    private static Fraction want(Hours hours) {
        return hours.want() == null ? Fraction.ZERO : Fraction.of(hours.want());
    }

    private static List<Pathway> sharedHigh(Thing one, Thing other) {
        return one.highPathways().stream().filter(other::highOn).toList();
    }

    /** A high day without a fixture, as one stretch of work. */
    record Block(LocalDate date, List<Thing> sessions) {
        Thing first() {
            return sessions.stream().min(Thing.IN_TIME).orElseThrow();
        }

        Thing last() {
            return sessions.stream()
                    .reduce((one, other) -> other.end().isAfter(one.end()) ? other : one)
                    .orElseThrow();
        }

        Fraction hoursTo(Block later) {
            return last().hoursTo(later.first());
        }

        Fraction crossHours() {
            return sessions.stream()
                    .map(session -> session.ofDose(
                            Fraction.of(session.trains().crossHours().must())))
                    .reduce(Fraction.ZERO, Fraction::max);
        }

        boolean sharesQuality(Block other) {
            return sessions.stream()
                    .anyMatch(mine -> other.sessions.stream()
                            .anyMatch(theirs -> !sharedHigh(mine, theirs).isEmpty()));
        }
    }

    private void judgeBlocks(Person person) {
        Day any = Day.of(the, person, the.weeks().firstDay());
        List<Block> blocks = any.line().stream()
                .map(Thing::date)
                .distinct()
                .map(date -> new Block(date, any.on(date).block()))
                .filter(block -> !block.sessions().isEmpty())
                .toList();
        for (int i = 0; i + 1 < blocks.size(); i++) {
            Block earlier = blocks.get(i);
            Block later = blocks.get(i + 1);
            boolean near = ChronoUnit.DAYS.between(earlier.date(), later.date()) <= DAYS_TO_THE_NEXT_BLOCK;
            if (near && (isOurs(earlier.sessions()) || isOurs(later.sessions()))) {
                highBlockFloor(person.mainGroup(), earlier, later);
                highBlockGap(person.mainGroup(), earlier, later);
            }
        }
    }

    /** From the end of one high day's work to the next pass the hours that the hardest of it must have. */
    private void highBlockFloor(String group, Block earlier, Block later) {
        Fraction hoursShort = earlier.crossHours().minus(earlier.hoursTo(later));
        if (hoursShort.positive()) {
            mustHours("high-block-floor", names(group, earlier.date(), later.date()), group, hoursShort, share(group));
        }
    }

    /** High days of different qualities stand a day apart in weeks with a fixture, else two. */
    private void highBlockGap(String group, Block earlier, Block later) {
        if (earlier.sharesQuality(later)) {
            return;
        }
        int week = the.weeks().numberOf(later.date());
        boolean fixture =
                the.fixturesOf(group).stream().anyMatch(one -> the.weeks().numberOf(one.date()) == week);
        Fraction wanted = number("high-block-gap", fixture ? "fixtureWeekHours" : "otherWeekHours", group);
        Fraction points = pointsForGap("high-block-gap", group, wanted, earlier.hoursTo(later));
        want("high-block-gap", names(group, earlier.date(), later.date()), group, points, share(group));
    }
}
