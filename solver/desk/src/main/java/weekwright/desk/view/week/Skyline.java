package weekwright.desk.view.week;

import java.util.List;
import java.util.Locale;
import weekwright.desk.view.week.Lay.Hill;

/** Draws the hills of a lane's days so that neighbours run into each other. */
final class Skyline {
    private static final int GROUND = 70;
    private static final double POINT = 6.2;
    private static final double HIGHEST = 11;

    private Skyline() {}

    /** The piece over one day of a lane. */
    static Landscape.Sky over(List<Hill> days, int index) {
        Hill day = days.get(index);
        double before = index == 0 ? 0 : days.get(index - 1).height();
        double after = index == days.size() - 1 ? 0 : days.get(index + 1).height();
        String path = String.format(
                Locale.ROOT,
                "M0 %d L0 %.1f L34 %.1f L86 %.1f L120 %.1f L120 %d Z",
                GROUND,
                y((before + day.height()) / 2),
                y(day.height()),
                y(day.height()),
                y((day.height() + after) / 2),
                GROUND);
        return new Landscape.Sky(
                day.look(), path, (int) Math.round(y(day.height())), day.word(), day.points(), day.amount());
    }

    private static double y(double height) {
        return GROUND - POINT * Math.min(HIGHEST, height);
    }
}
