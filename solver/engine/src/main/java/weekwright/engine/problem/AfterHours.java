package weekwright.engine.problem;

import java.util.Map;
import weekwright.model.catalogue.AfterKey;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Hours;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Pathway;

/** The hours that a fixture family asks for after it, by what the next session trains. Minutes; 0 where none are asked. */
public final class AfterHours {
    /** Minutes of must and want. */
    public record Asked(int must, int want) {
        static final Asked NOTHING = new Asked(0, 0);

        static Asked of(Hours hours) {
            return new Asked(FamilyInfo.must(hours), FamilyInfo.want(hours));
        }

        Asked larger(Asked other) {
            return new Asked(Math.max(must, other.must), Math.max(want, other.want));
        }
    }

    private final Map<String, Hours> map;

    AfterHours(Family fixtureFamily) {
        map = fixtureFamily.afterHours();
    }

    /** What is asked after a fixture played in full. */
    public Asked before(FamilyInfo session, Dose dose) {
        if (dose == Dose.MICRO) {
            Hours micro = map.get(microKey(session));
            if (micro != null) {
                return Asked.of(micro);
            }
        }
        Asked asked = Asked.NOTHING;
        for (Pathway pathway : Pathway.values()) {
            if (session.family.high(pathway)) {
                asked = asked.larger(entry(pathway.id(), AfterKey.OTHER_HIGH));
            }
        }
        boolean easyAerobic = session.high == 0 && session.family.pathways().containsKey(Pathway.AEROBIC);
        return easyAerobic ? entry(AfterKey.EASY_AEROBIC, AfterKey.EASY_AEROBIC) : asked;
    }

    /** What is asked after a short appearance, which counts as a session of another family (acceleration). */
    public static Asked afterShort(FamilyInfo as, FamilyInfo session) {
        if ((session.high & as.high) != 0) {
            return new Asked(as.againMust, as.againWant);
        }
        return session.high == 0 ? Asked.NOTHING : new Asked(as.crossMust, 0);
    }

    private Asked entry(String key, String otherwise) {
        Hours hours = map.containsKey(key) ? map.get(key) : map.get(otherwise);
        return hours == null ? Asked.NOTHING : Asked.of(hours);
    }

    private static String microKey(FamilyInfo session) {
        if (session.family.beforeFixtureMicroHours() != null && !session.sprint) {
            return AfterKey.MICRO_STRENGTH;
        }
        boolean aerobic = session.family.pathways().containsKey(Pathway.AEROBIC);
        return session.sprint && !aerobic ? AfterKey.MICRO_SPEED : "";
    }
}
