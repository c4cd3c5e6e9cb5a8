package weekwright.desk.page;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** A desk with one folder, {@code w}, in which a demo week lies that has not been planned: what tests of its forms begin with. */
abstract class OneWeek {
    @TempDir
    private Path place;

    private final String demo;
    private final String forms;

    Browser browser;

    /**
     * A desk for each test.
     *
     * @param forms what the addresses of the forms that are sent begin with
     */
    OneWeek(String demo, String forms) {
        this.demo = demo;
        this.forms = forms;
    }

    @BeforeEach
    void open() throws IOException {
        Files.createDirectory(folder());
        Files.write(folder().resolve("scenario.json"), Scenarios.bytes(demo));
        browser = Browser.of(folder());
    }

    @AfterEach
    void close() {
        browser.close();
    }

    final Path folder() {
        return place.resolve("w");
    }

    final byte[] file(String name) throws IOException {
        return Files.readAllBytes(folder().resolve(name));
    }

    /** The scenario as it is in force. */
    final Scenario scenario() throws Exception {
        return Documents.readScenario("scenario.json", file("scenario.json"));
    }

    /** The revision that the page shows. */
    final String revision() {
        return browser.get("/w/w").body().replaceFirst("(?s).*data-revision=\"([0-9]+)\".*", "$1");
    }

    /** Sends a form that was shown just now. */
    final HttpResponse<String> send(String address, String... fields) {
        List<String> all = new ArrayList<>(List.of("revision", revision()));
        all.addAll(List.of(fields));
        return browser.post(forms + address, all.toArray(String[]::new));
    }
}
