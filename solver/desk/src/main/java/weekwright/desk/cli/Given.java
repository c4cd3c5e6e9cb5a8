package weekwright.desk.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Parameters;

/** The scenario and the plan that a command looks at. */
final class Given {
    @Parameters(index = "0", paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    String scenario = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PLAN",
            description = "The plan, or - for standard input; a folder brings its own.")
    @Nullable
    String plan;

    /** A path as it is typed into a command: in quotes where a space stands in it. */
    static String typed(String path) {
        return path.contains(" ") ? "\"" + path + "\"" : path;
    }
}
