package weekwright.desk.page;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weekwright.desk.app.Planner;
import weekwright.desk.app.Shelf;

/** A desk in this process, and somebody who asks it as a browser would, without drawing anything. */
final class Browser implements AutoCloseable {
    static final Clock NOON = Clock.fixed(Instant.parse("2027-02-08T12:00:30Z"), ZoneOffset.UTC);

    final Desk desk;
    final List<String> addresses = new ArrayList<>();
    private final HttpClient client = HttpClient.newHttpClient();
    String pass = "";

    private Browser(Shelf shelf) {
        desk = Desk.start(shelf, 0, addresses::add);
    }

    /** A desk whose weeks lie in a place; nobody is let in yet. */
    static Browser outside(Path place) {
        return new Browser(Shelf.in(place, NOON, Planner.ENGINE));
    }

    /** The same, let in. */
    static Browser in(Path place) {
        Browser browser = outside(place);
        browser.enter();
        return browser;
    }

    /** The same with somebody else who plans. */
    static Browser in(Path place, Planner planner) {
        Browser browser = new Browser(Shelf.in(place, NOON, planner));
        browser.enter();
        return browser;
    }

    /** A desk of one folder, let in. */
    static Browser of(Path folder) {
        Browser browser = new Browser(Shelf.of(folder, NOON, Planner.ENGINE));
        browser.enter();
        return browser;
    }

    private void enter() {
        HttpResponse<String> answer =
                send(request(addresses.get(addresses.size() - 1).substring(origin().length())));
        pass = answer.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
    }

    String origin() {
        return "http://127.0.0.1:" + desk.port();
    }

    /** A request with the pass, to be changed. */
    HttpRequest.Builder request(String path) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin() + path));
        return pass.isEmpty() ? request : request.header("Cookie", pass);
    }

    HttpResponse<String> get(String path) {
        return send(request(path));
    }

    /** Sends a form: names and values by turns. */
    HttpResponse<String> post(String path, String... fields) {
        return send(form(path, fields));
    }

    /** A form from the page itself. */
    HttpRequest.Builder form(String path, String... fields) {
        return foreignForm(path, fields).header("Origin", origin());
    }

    /** A form that does not say where it comes from. */
    HttpRequest.Builder foreignForm(String path, String... fields) {
        String body = IntStream.range(0, fields.length / 2)
                .mapToObj(i -> encoded(fields[2 * i]) + "=" + encoded(fields[2 * i + 1]))
                .collect(Collectors.joining("&"));
        return request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new AssertionError("no answer", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted", e);
        }
    }

    /** Asks for a page again and again until it holds a text; gives the page. */
    String until(String path, String text) {
        for (int i = 0; i < 400; i++) {
            String page = get(path).body();
            if (page.contains(text)) {
                return page;
            }
            pause();
        }
        throw new AssertionError("never saw \"" + text + "\" in " + get(path).body());
    }

    private static void pause() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted", e);
        }
    }

    @Override
    public void close() {
        desk.close();
    }
}
