package weekwright.desk.page;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import weekwright.desk.view.page.Frame;
import weekwright.model.document.Documents;

/** Style sheets, scripts and the picture in the tab. Each address names what it holds, so that browsers may keep it. */
final class Assets {
    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js";
    private static final String STYLE = "text/css; charset=utf-8";
    private static final String SCRIPT = "text/javascript; charset=utf-8";
    private static final int DIGITS = 16;

    private final Map<String, Asset> byAddress = new LinkedHashMap<>();
    private final Frame frame;

    Assets() {
        frame = new Frame(
                add("desk.css", STYLE, read("desk.css")),
                add("times.css", STYLE, TimeStyles.text().getBytes(StandardCharsets.UTF_8)),
                add("htmx.js", SCRIPT, read(HTMX)),
                add("desk.js", SCRIPT, read("desk.js")),
                add("pages.css", STYLE, read("pages.css")),
                add("forms.js", SCRIPT, read("forms.js")),
                add("icon.svg", "image/svg+xml", read("icon.svg")));
    }

    @SuppressWarnings("ArrayRecordComponent") // handed out only, never compared
    private record Asset(String type, byte[] bytes) {}

    /** Addresses of all that a page needs. */
    Frame frame() {
        return frame;
    }

    /** Gives what an address names. */
    void give(Context request) {
        Asset asset = byAddress.get(request.path());
        if (asset == null) {
            throw Refusal.nothingThere();
        }
        request.header("Cache-Control", "private, max-age=31536000, immutable");
        request.contentType(asset.type()).result(asset.bytes());
    }

    private String add(String name, String type, byte[] bytes) {
        String digest = Documents.digest(bytes).substring("sha256:".length()).substring(0, DIGITS);
        String address = "/assets/" + digest + "/" + name;
        byAddress.put(address, new Asset(type, bytes));
        return address;
    }

    private static byte[] read(String name) {
        String place = name.startsWith("/") ? name : "/weekwright/desk/page/" + name;
        try (InputStream in = Assets.class.getResourceAsStream(place)) {
            if (in == null) {
                throw new IllegalStateException("the file " + place + " is missing: build the program anew");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the file " + place + " cannot be read", e);
        }
    }
}
