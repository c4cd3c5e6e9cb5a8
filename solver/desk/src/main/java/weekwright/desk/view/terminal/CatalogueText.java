package weekwright.desk.view.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Demands;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Hours;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Intensity;

/** The session families as lines to read. */
public final class CatalogueText {
    private static final int WIDTH = 100;
    private static final int INDENT = 4;

    private final Paper paper = new Paper(WIDTH);
    private final Ink ink;

    private CatalogueText(Ink ink) {
        this.ink = ink;
    }

    /** All families, each with its time, demand, qualities, hours and source. */
    public static String of(Catalogue catalogue, Ink ink) {
        CatalogueText text = new CatalogueText(ink);
        catalogue.families().forEach(text::family);
        return text.paper.toString();
    }

    private void family(Family family) {
        paper.wrapped(0, ink.strong(family.id()) + "  ", family.label());
        paper.wrapped(INDENT, "", figures(family));
        String qualities = qualities(family, Intensity.HIGH);
        paper.wrapped(INDENT, "Qualities: ", qualities + lightly(family, qualities.isEmpty()));
        String hours = hours(family);
        if (!hours.isEmpty()) {
            paper.wrapped(INDENT, "Hours: ", hours);
        }
        paper.wrapped(INDENT, "Source: ", family.source());
    }

    private static String figures(Family family) {
        String where = family.facility().isEmpty()
                ? "anywhere"
                : family.facility().stream().map(FacilityKind::id).collect(Collectors.joining(" or "));
        return String.format(
                Locale.ROOT,
                "%s; %d min warm-up and %d min of work; RPE %s; neural %s, metabolic %s, tissue %s; %s",
                Demands.classOf(family, false).id(),
                family.warmUpMinutes(),
                family.minutes(),
                Dates.exact(family.rpe()),
                Dates.exact(family.demand().neural()),
                Dates.exact(family.demand().metabolic()),
                Dates.exact(family.demand().tissue()),
                where);
    }

    private static String qualities(Family family, Intensity intensity) {
        return family.pathways().entrySet().stream()
                .filter(entry -> entry.getValue() == intensity)
                .map(entry -> entry.getKey().id())
                .collect(Collectors.joining(", "));
    }

    private static String lightly(Family family, boolean only) {
        String light = qualities(family, Intensity.LIGHT);
        if (light.isEmpty()) {
            return only ? "none" : "";
        }
        return (only ? "" : "; ") + "lightly " + light;
    }

    private static String hours(Family family) {
        List<String> parts = new ArrayList<>();
        add(parts, "the like again", family.againHours());
        add(parts, "the next high day", family.crossHours());
        add(parts, "before a fixture", family.beforeFixtureHours());
        add(parts, "a micro dose before a fixture", family.beforeFixtureMicroHours());
        family.afterHours().forEach((quality, hours) -> add(parts, "after it " + quality, hours));
        return String.join("; ", parts);
    }

    private static void add(List<String> parts, String what, @Nullable Hours hours) {
        if (hours != null && (hours.must() > 0 || hours.want() != null)) {
            String wanted = hours.want() == null ? "" : ", wanted " + Dates.exact(hours.want());
            parts.add(what + " " + Dates.exact(hours.must()) + wanted);
        }
    }
}
