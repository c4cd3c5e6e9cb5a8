package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who may come in, from where, and with how much. */
class GuardsTest {
    @TempDir
    private Path place;

    private Browser browser;

    @BeforeEach
    void open() {
        browser = Browser.in(place);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    @Test
    void it_listens_on_this_machine_only() throws IOException {
        for (NetworkInterface network : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(network.getInetAddresses())) {
                if (!address.isLoopbackAddress()) {
                    assertThat(answers(address)).as(address.toString()).isFalse();
                }
            }
        }
        assertThat(answers(InetAddress.getLoopbackAddress())).isTrue();
    }

    private boolean answers(InetAddress address) {
        try (Socket socket = new Socket(address, browser.desk.port())) {
            return socket.isConnected();
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void without_the_pass_nothing_is_shown() {
        browser.pass = "";
        assertThat(browser.get("/").statusCode()).isEqualTo(403);
        assertThat(browser.get("/w/anything").statusCode()).isEqualTo(403);
        assertThat(browser.get("/nowhere").statusCode()).isEqualTo(403);
        assertThat(browser.get("/").body()).contains("This desk is not open here");

        browser.pass = "weekwright-" + browser.desk.port() + "=guessed";
        assertThat(browser.get("/").statusCode()).isEqualTo(403);
    }

    @Test
    void an_address_opens_once_and_a_new_one_is_told() {
        String used = browser.addresses.get(0).substring(browser.origin().length());

        assertThat(browser.get(used).statusCode()).isEqualTo(403);
        assertThat(browser.get("/open/guess").statusCode()).isEqualTo(403);

        assertThat(browser.addresses).hasSize(2).doesNotHaveDuplicates();
        String next = browser.addresses.get(1).substring(browser.origin().length());
        assertThat(browser.get(next).statusCode()).isEqualTo(303);
    }

    @Test
    void no_script_reads_the_pass_and_no_other_site_sends_it() {
        String next = browser.addresses.get(1).substring(browser.origin().length());

        String cookie = browser.get(next).headers().firstValue("Set-Cookie").orElseThrow();

        assertThat(cookie).contains("; HttpOnly").contains("; SameSite=Strict").contains("; Path=/");
        assertThat(cookie).startsWith("weekwright-" + browser.desk.port() + "=");
    }

    @ParameterizedTest
    @ValueSource(strings = {"rebound.example", "rebound.example:80", "127.0.0.1", "127.0.0.1:1", "[::1]"})
    void another_name_of_this_machine_is_refused(String host) throws IOException {
        assertThat(raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nCookie: " + browser.pass
                        + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 421");
    }

    @Test
    void the_machine_s_own_name_is_answered() throws IOException {
        String host = "localhost:" + browser.desk.port();
        assertThat(raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nCookie: " + browser.pass
                        + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 200");
    }

    @Test
    void a_change_from_another_page_is_refused() {
        assertThat(browser.send(browser.foreignForm("/begin/demo", "demo", "one-match", "folder", "a"))
                        .statusCode())
                .isEqualTo(403);
        for (String origin : List.of("http://evil.example", "null", "http://127.0.0.1:1")) {
            assertThat(browser.send(browser.foreignForm("/begin/demo", "demo", "one-match", "folder", "a")
                                    .header("Origin", origin))
                            .statusCode())
                    .as(origin)
                    .isEqualTo(403);
        }
        assertThat(place).isEmptyDirectory();
    }

    @Test
    void another_site_may_not_even_look() {
        assertThat(browser.send(browser.request("/").header("Sec-Fetch-Site", "cross-site"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(browser.send(browser.request("/").header("Sec-Fetch-Site", "none"))
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void what_is_too_large_is_refused_before_it_is_read() throws IOException {
        assertThat(raw(post("/begin/blank", "Content-Length: 300000\r\n"))).startsWith("HTTP/1.1 413");
        assertThat(raw(post("/begin/files", "Content-Length: 40000000\r\n"))).startsWith("HTTP/1.1 413");
        assertThat(raw(post("/begin/blank", "Transfer-Encoding: chunked\r\n"))).startsWith("HTTP/1.1 411");
        String head = "a".repeat(20_000);
        assertThat(raw("GET /" + head + " HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n")).startsWith("HTTP/1.1 4");
    }

    @Test
    void whoever_sends_slowly_is_not_waited_for() throws Exception {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), browser.desk.port())) {
            OutputStream out = socket.getOutputStream();
            out.write(post("/begin/blank", "Content-Length: 200000\r\n").getBytes(StandardCharsets.US_ASCII));
            socket.setSoTimeout(20_000);
            InputStream in = socket.getInputStream();
            Thread slow = new Thread(() -> trickle(out));
            slow.start();
            String answer = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            slow.interrupt();
            assertThat(answer)
                    .startsWith("HTTP/1.1 ")
                    .doesNotStartWith("HTTP/1.1 2")
                    .doesNotStartWith("HTTP/1.1 3");
        }
    }

    private static void trickle(OutputStream out) {
        try {
            while (!Thread.currentThread().isInterrupted()) {
                out.write('a');
                out.flush();
                Thread.sleep(50);
            }
        } catch (IOException | InterruptedException e) {
            // Nobody listens any more, which is what is wanted.
            Thread.currentThread().interrupt();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/w/..%2f..%2fetc",
                "/w/..",
                "/w/%2e%2e/history",
                "/w/.",
                "/assets/../../etc/passwd",
                "/assets/x/%2e%2e%2fdesk.js",
                "/assets/x/desk.js",
                "/w/a%00b"
            })
    void no_path_leads_out_of_the_place(String path) throws IOException {
        Files.createDirectories(place.resolve("inside"));
        String answer = raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + browser.desk.port() + "\r\nCookie: "
                + browser.pass + "\r\nConnection: close\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 4").doesNotContain("root:");
    }

    @ParameterizedTest
    @ValueSource(strings = {"..", "../x", "a/b", "/tmp/x", ".hidden", "CON ", "", "a\u0000b", "-a"})
    void no_new_folder_lies_outside_the_place(String name) throws IOException {
        assertThat(browser.post("/begin/demo", "demo", "one-match", "folder", name)
                        .statusCode())
                .isEqualTo(422);
        try (var inside = Files.list(place)) {
            assertThat(inside).isEmpty();
        }
    }

    @Test
    void every_answer_carries_the_policy() {
        for (HttpResponse<String> answer : List.of(
                browser.get("/"),
                browser.get("/nowhere"),
                browser.get(asset("desk.js")),
                browser.post("/begin/demo", "demo", "no-such", "folder", "a"))) {
            String policy =
                    answer.headers().firstValue("Content-Security-Policy").orElseThrow();
            assertThat(policy)
                    .contains("default-src 'none'", "script-src 'self'", "style-src 'self'", "frame-ancestors 'none'")
                    .doesNotContain("unsafe");
            assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
            assertThat(answer.headers().firstValue("Server")).isEmpty();
        }
    }

    private String asset(String name) {
        var found = Pattern.compile("/assets/[0-9a-f]+/" + Pattern.quote(name))
                .matcher(browser.get("/").body());
        assertThat(found.find()).isTrue();
        return found.group();
    }

    @Test
    void pages_are_not_kept_and_parts_that_never_change_are() {
        assertThat(browser.get("/").headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(browser.get(asset("desk.css")).headers().firstValue("Cache-Control"))
                .hasValueSatisfying(value -> assertThat(value).contains("immutable"));
    }

    @Test
    void other_methods_do_nothing() {
        for (String method : List.of("PUT", "DELETE", "OPTIONS", "TRACE")) {
            var request =
                    browser.request("/").method(method, BodyPublishers.noBody()).header("Origin", browser.origin());
            assertThat(browser.send(request).statusCode()).as(method).isBetween(400, 499);
        }
    }

    private String post(String path, String length) {
        return "POST " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + browser.desk.port() + "\r\nOrigin: "
                + browser.origin() + "\r\nCookie: " + browser.pass + "\r\nContent-Type:"
                + " application/x-www-form-urlencoded\r\n" + length + "\r\n";
    }

    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), browser.desk.port())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
