package weekwright.engine.recalculation;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import weekwright.model.catalogue.AfterKey;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Hours;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Intensity;
import weekwright.model.scenario.Pathway;

/** Which of a fixture's hours hold for a session after it. */
final class AfterHours {
    private AfterHours() {}

    static Optional<Hours> of(Family fixture, Thing session) {
        Map<String, Hours> hours = fixture.afterHours();
        Optional<Hours> micro = microKey(session).map(hours::get);
        if (micro.isPresent()) {
            return micro;
        }
        List<Pathway> high = session.highPathways();
        if (!high.isEmpty()) {
            return high.stream()
                    .map(pathway -> hours.getOrDefault(pathway.id(), hours.get(AfterKey.OTHER_HIGH)))
                    .filter(Objects::nonNull)
                    .max(Comparator.comparing(Hours::must)
                            .thenComparing(entry -> entry.want() == null ? 0 : entry.want()));
        }
        return session.trains().pathways().get(Pathway.AEROBIC) == Intensity.LIGHT
                ? Optional.ofNullable(hours.get(AfterKey.EASY_AEROBIC))
                : Optional.empty();
    }

    /** Micro doses of sprinting without an aerobic part, and of strength work that has micro hours of its own. */
    private static Optional<String> microKey(Thing session) {
        if (session.dose() != Dose.MICRO) {
            return Optional.empty();
        }
        boolean sprint = session.highOn(Pathway.MAX_VELOCITY_SPRINT) || session.highOn(Pathway.ACCELERATION);
        if (sprint && !session.trains().pathways().containsKey(Pathway.AEROBIC)) {
            return Optional.of(AfterKey.MICRO_SPEED);
        }
        return Optional.ofNullable(session.trains().beforeFixtureMicroHours()).map(any -> AfterKey.MICRO_STRENGTH);
    }

    /** A short appearance weighs as a session of acceleration: its hours again, or across to another high quality. */
    static Optional<Hours> asAfterAcceleration(Family acceleration, Thing session) {
        if (session.highOn(Pathway.ACCELERATION)) {
            return Optional.of(acceleration.againHours());
        }
        return session.highPathways().isEmpty()
                ? Optional.empty()
                : Optional.of(new Hours(acceleration.crossHours().must(), null));
    }
}
