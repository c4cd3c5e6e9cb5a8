package weekwright.desk.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
    private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    @Test
    void a_file_is_replaced_and_nothing_is_left_beside_it() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.json"), "a longer old text");

        AtomicFile.at(file).write(NEW, "New");

        assertThat(file).hasContent("new");
        assertThat(inFolder()).containsExactly(file);
    }

    @Test
    void a_file_that_only_its_owner_reads_stays_so() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.json"), "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));

        AtomicFile.at(file).write(NEW, "New");

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
    }

    @Test
    void a_link_stays_and_what_it_points_to_is_replaced() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.json"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);

        AtomicFile.at(link).write(NEW, "New");

        assertThat(link).isSymbolicLink().hasContent("new");
        assertThat(file).hasContent("new");
    }

    @Test
    void when_the_folder_has_gone_the_fault_is_said() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        AtomicFile file = AtomicFile.at(inner.resolve("plan.json"));
        Files.delete(inner);

        assertThatThrownBy(() -> file.write(NEW, "New"))
                .isInstanceOf(FileFault.class)
                .hasMessageContaining("does not exist");
    }

    @Test
    void a_file_that_cannot_be_replaced_keeps_its_old_text() throws IOException {
        Path file = folder.resolve("plan.json");
        AtomicFile planned = AtomicFile.at(file);
        // Somebody makes a folder of that name meanwhile.
        Files.createDirectories(file.resolve("full"));

        assertThatThrownBy(() -> planned.write(NEW, "New")).isInstanceOf(FileFault.class);

        assertThat(inFolder()).containsExactly(file);
        assertThat(file.resolve("full")).isDirectory();
    }

    private Stream<Path> inFolder() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList().stream();
        }
    }
}
