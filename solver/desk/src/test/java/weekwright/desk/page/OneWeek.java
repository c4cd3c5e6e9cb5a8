package weekwright.desk.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** A desk with one folder, {@code w}, in which a demo week lies that has not been planned. */
final class OneWeek implements AutoCloseable {
    final Browser browser;
    private final Path folder;

    private OneWeek(Path folder) {
        this.folder = folder;
        browser = Browser.of(folder);
    }

    static OneWeek in(Path place, String demo) {
        try {
            Path folder = Files.createDirectory(place.resolve("w"));
            Files.write(folder.resolve("scenario.json"), Scenarios.bytes(demo));
            return new OneWeek(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    byte[] file(String name) {
        try {
            return Files.readAllBytes(folder.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The scenario as it is in force. */
    Scenario scenario() throws DocumentException {
        return Documents.readScenario("scenario.json", file("scenario.json"));
    }

    /** The revision that the page shows. */
    String revision() {
        return browser.get("/w/w").body().replaceFirst("(?s).*data-revision=\"([0-9]+)\".*", "$1");
    }

    /** Sends a form that was shown just now. */
    HttpResponse<String> send(String address, String... fields) {
        List<String> all = new ArrayList<>(List.of("revision", revision()));
        all.addAll(List.of(fields));
        return browser.post(address, all.toArray(String[]::new));
    }

    @Override
    public void close() {
        browser.close();
    }
}
