package weekwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is packed into the runnable jar is named there with its licence. */
class LicencesTest {
    /** Libraries of the tests, which are not packed. */
    private static final List<String> FOR_TESTS = List.of(
            "junit-",
            "opentest4j-",
            "apiguardian-",
            "assertj-",
            "byte-buddy-",
            "archunit-",
            "surefire-",
            // Of the profile that drives a browser.
            "playwright-",
            "driver-",
            "gson-",
            "Java-WebSocket-");

    @Test
    void every_bundled_library_is_named() throws IOException {
        String named = resource("/META-INF/THIRD-PARTY.txt");

        List<String> bundled = libraries().toList();

        assertThat(bundled).hasSizeGreaterThan(10);
        assertThat(bundled).allSatisfy(library -> assertThat(named).contains(library));
    }

    @Test
    void our_own_licence_comes_along() throws IOException {
        assertThat(resource("/META-INF/LICENSE")).contains("Apache License").contains("Version 2.0, January 2004");
    }

    @Test
    void the_licence_of_the_fonts_comes_along() throws IOException {
        assertThat(resource("/net/sf/jasperreports/fonts/dejavu/LICENSE"))
                .contains("Fonts are (c) Bitstream")
                .contains("DejaVu changes are in public domain");
    }

    /** As {@code :artifact:version}, from the files' places: …/artifact/version/artifact-version.jar. */
    private static Stream<String> libraries() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .map(Path::of)
                .filter(path -> path.toString().endsWith(".jar"))
                .filter(path -> !path.getFileName().toString().startsWith("weekwright-"))
                .filter(path -> FOR_TESTS.stream().noneMatch(path.getFileName().toString()::startsWith))
                .map(path -> ":" + path.getParent().getParent().getFileName() + ":"
                        + path.getParent().getFileName());
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = LicencesTest.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
