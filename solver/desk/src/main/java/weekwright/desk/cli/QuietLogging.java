package weekwright.desk.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.logging.LogManager;

/** Lets the libraries speak of warnings only. The log manager makes one of these when first used, which may be never. */
public final class QuietLogging {
    private static final String CLASS = "java.util.logging.config.class";
    private static final String FILE = "java.util.logging.config.file";

    /** Sets the log up. */
    public QuietLogging() throws IOException {
        String settings = """
                handlers = java.util.logging.ConsoleHandler
                .level = WARNING
                io.javalin.level = SEVERE
                io.micrometer.level = SEVERE
                org.eclipse.jetty.level = SEVERE
                org.apache.pdfbox.level = SEVERE
                org.apache.fontbox.level = SEVERE
                java.util.logging.SimpleFormatter.format = %4$s: %5$s%n
                """;
        LogManager.getLogManager()
                .readConfiguration(new ByteArrayInputStream(settings.getBytes(StandardCharsets.ISO_8859_1)));
    }

    /** Has the log set up this way, unless somebody has asked for another. */
    static void use() {
        if (System.getProperty(CLASS) == null && System.getProperty(FILE) == null) {
            System.setProperty(CLASS, QuietLogging.class.getName());
        }
    }
}
