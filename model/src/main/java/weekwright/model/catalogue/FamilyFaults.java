package weekwright.model.catalogue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.Nearest;
import weekwright.model.Plain;
import weekwright.model.scenario.Pathway;

/** What is wrong with a scenario's change to a family, or with a family of its own. */
final class FamilyFaults {
    private static final List<String> AFTER_KEYS = Stream.concat(
                    Stream.of(Pathway.values()).map(Pathway::id),
                    Stream.of(
                            AfterKey.OTHER_HIGH, AfterKey.EASY_AEROBIC, AfterKey.MICRO_SPEED, AfterKey.MICRO_STRENGTH))
            .toList();

    private final List<String> found = new ArrayList<>();

    private FamilyFaults() {}

    /** One line a fault; the path of the field comes before the first colon. */
    static List<String> of(@Nullable Family base, FamilyPatch patch) {
        FamilyFaults faults = new FamilyFaults();
        if (base == null) {
            faults.missing(patch);
        }
        faults.figures(patch);
        faults.hours(patch);
        faults.fixture(base, patch);
        faults.variants(patch.variants());
        faults.found.addAll(ContentFaults.of(Ids.listed(patch.content())));
        return List.copyOf(faults.found);
    }

    private void missing(FamilyPatch patch) {
        need("demand", patch.demand(), "neural, metabolic and tissue demand, each 0 to 10");
        need("rpe", patch.rpe(), "planned exertion, 0 to 10");
        need("minutes", patch.minutes(), "main minutes of a full session");
        need("warmUpMinutes", patch.warmUpMinutes(), "minutes of warm-up, 0 for none");
        need("pathways", patch.pathways(), "the qualities it trains, { } for none");
        if (patch.role() != Role.FIXTURE) {
            need("againHours", patch.againHours(), "hours before the same quality comes again");
            need("crossHours", patch.crossHours(), "hours before the next high day");
            need("beforeFixtureHours", patch.beforeFixtureHours(), "hours by which it ends before a fixture");
        }
    }

    private void need(String field, @Nullable Object value, String meaning) {
        if (value == null) {
            found.add(field + ": is missing; a family that is not built in needs " + meaning);
        }
    }

    private void figures(FamilyPatch patch) {
        Demand demand = patch.demand();
        if (demand != null) {
            score("demand.neural", demand.neural());
            score("demand.metabolic", demand.metabolic());
            score("demand.tissue", demand.tissue());
        }
        score("rpe", patch.rpe());
        within("minutes", patch.minutes(), 0, 600);
        within("warmUpMinutes", patch.warmUpMinutes(), 0, 120);
        within("straightMetres", patch.straightMetres(), 1, 1000);
        within("order", patch.order(), 0, 9);
    }

    private void score(String field, @Nullable Double value) {
        within(field, value, 0, 10);
        // Classes are compared exactly, which a tenth allows and a hundredth does not.
        if (value != null && Math.abs(value * 10 - Math.rint(value * 10)) > 1e-9) {
            found.add(field + ": " + Plain.number(value) + " is finer than a tenth; give it with one decimal");
        }
    }

    private void within(String field, @Nullable Number value, int least, int most) {
        if (value != null && !(value.doubleValue() >= least && value.doubleValue() <= most)) {
            found.add(field + ": " + Plain.number(value.doubleValue()) + " is outside " + least + " to " + most);
        }
    }

    private void hours(FamilyPatch patch) {
        hours("againHours", patch.againHours());
        hours("crossHours", patch.crossHours());
        hours("beforeFixtureHours", patch.beforeFixtureHours());
        hours("beforeFixtureMicroHours", patch.beforeFixtureMicroHours());
        if (patch.afterHours() != null) {
            patch.afterHours().forEach(this::afterHours);
        }
    }

    private void afterHours(String key, Hours hours) {
        if (AFTER_KEYS.contains(key)) {
            hours("afterHours." + key, hours);
        } else {
            found.add("afterHours." + key + ": is no quality and no kind of work; " + Nearest.hint(key, AFTER_KEYS));
        }
    }

    private void hours(String field, @Nullable Hours hours) {
        if (hours == null) {
            return;
        }
        within(field + ".must", hours.must(), 0, 240);
        Double want = hours.want();
        within(field + ".want", want, 0, 240);
        if (want != null && want < hours.must()) {
            found.add(field + ".want: " + Plain.number(want) + " h wanted is less than the "
                    + Plain.number(hours.must()) + " h that must be; give the same or more");
        }
    }

    private void fixture(@Nullable Family base, FamilyPatch patch) {
        Family whole = FamilyPatches.merged(base, patch);
        if (whole.role() != Role.FIXTURE) {
            if (!whole.afterHours().isEmpty()) {
                found.add("afterHours: only a fixture has hours after it; give role fixture or leave them out");
            }
            return;
        }
        if (!whole.afterHours().containsKey(AfterKey.OTHER_HIGH)) {
            found.add("afterHours: a fixture needs other-high, the hours before any other high work");
        }
        if (patch.minutes() != null && patch.minutes() == 0) {
            found.add("minutes: a fixture has at least 1 minute of play");
        }
    }

    private void variants(@Nullable List<Variant> variants) {
        Set<String> seen = new HashSet<>();
        for (Variant variant : Ids.listed(variants)) {
            if (!seen.add(variant.id())) {
                found.add("variants: " + variant.id() + " is there twice; give each variant its own id");
            }
        }
    }
}
