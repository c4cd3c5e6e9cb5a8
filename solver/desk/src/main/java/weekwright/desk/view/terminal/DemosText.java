package weekwright.desk.view.terminal;

import java.util.List;
import weekwright.scenarios.Demo;

/** The demo scenarios as lines to read. */
public final class DemosText {
    private static final int WIDTH = 100;

    private DemosText() {}

    /** Each demo with its name, its title and what to expect of its plan. */
    public static String of(List<Demo> demos, Ink ink) {
        Paper paper = new Paper(WIDTH);
        for (Demo demo : demos) {
            paper.wrapped(0, ink.strong("demo:" + demo.name()) + "  ", demo.title());
            paper.wrapped(4, "", demo.note());
        }
        return paper.toString();
    }
}
