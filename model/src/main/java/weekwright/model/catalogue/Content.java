package weekwright.model.catalogue;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.SprintStart;

/**
 * One line of what is done in a full session of a family; doses and week factors shrink or grow its sets. A line whose
 * levels, phases, kinds or variants are given is for those only.
 *
 * @param label what it is, e.g. {@code Flying sprint}
 * @param sets sets of a full session
 * @param repetitions repetitions, runs or contacts a set
 * @param seconds length of a repetition, or null
 * @param metres length of a run, or null
 * @param runIn metres run before a flying run begins
 * @param start how a run begins, or null where it does not matter
 * @param percentFrom least share of the best, in per cent, or null for no target; of a set that warms up for a lift the share
 *     of the day's weight, null for the empty bar
 * @param percentTo most share of the best, in per cent, or null for no upper edge
 * @param restSeconds rest after each repetition of a run, each set of anything else; null for runs: by their length
 * @param setRestSeconds rest between sets of runs, or null
 * @param inReserve repetitions that could still be done after a set, or null
 * @param lift id of the lift whose mark it follows, or null: that of the session's variant
 * @param pathway quality whose sets it counts for, or null
 * @param stopPercent two runs in a row slower than the day's best by so much end the work, or null for no such rule
 * @param source published source, {@code common practice, no source}, {@code expert proposal}; null: as the family's
 */
public record Content(
        ContentKind kind,
        String label,
        List<Level> levels,
        List<Phase> phases,
        List<GroupKind> kinds,
        List<String> variants,
        int sets,
        @Nullable Integer repetitions,
        @Nullable Integer seconds,
        @Nullable Double metres,
        double runIn,
        @Nullable SprintStart start,
        @Nullable Double percentFrom,
        @Nullable Double percentTo,
        @Nullable Integer restSeconds,
        @Nullable Integer setRestSeconds,
        @Nullable Integer inReserve,
        @Nullable String lift,
        @Nullable Pathway pathway,
        @Nullable Double stopPercent,
        @Nullable String note,
        @Nullable String source) {
    public Content {
        levels = Ids.listed(levels);
        phases = Ids.listed(phases);
        kinds = Ids.listed(kinds);
        variants = Ids.listed(variants);
        sets = sets == 0 ? 1 : sets;
    }

    /** Whether it is for somebody of this level in a group of this phase and kind, on this variant. */
    public boolean isFor(Level level, Phase phase, GroupKind kind, @Nullable String variant) {
        return (levels.isEmpty() || levels.contains(level))
                && (phases.isEmpty() || phases.contains(phase))
                && (kinds.isEmpty() || kinds.contains(kind))
                && (variants.isEmpty() || variants.contains(variant));
    }

    /** Whether it is a set that warms up for the first lift: repetitions at a share of the day's weight. */
    public boolean isWarmUpSet() {
        return kind == ContentKind.WARM_UP && repetitions != null;
    }

    /** Repetitions of all sets of a full session. */
    public int count() {
        return sets * Objects.requireNonNullElse(repetitions, 1);
    }

    /** The same line with other numbers of sets and repetitions. */
    public Content times(int otherSets, @Nullable Integer otherRepetitions) {
        return new Content(
                kind,
                label,
                levels,
                phases,
                kinds,
                variants,
                otherSets,
                otherRepetitions,
                seconds,
                metres,
                runIn,
                start,
                percentFrom,
                percentTo,
                restSeconds,
                setRestSeconds,
                inReserve,
                lift,
                pathway,
                stopPercent,
                note,
                source);
    }
}
