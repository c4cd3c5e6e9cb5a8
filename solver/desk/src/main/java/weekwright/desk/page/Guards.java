package weekwright.desk.page;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Stands before every request: it must be meant for this machine, come from this page, be of a reasonable size and bring
 * the pass.
 */
final class Guards {
    /** Enough for every form of the page. */
    static final long FORM_BYTES = 256 * 1024;
    /** Two documents of the largest size that is read, and what stands round them. */
    static final long FILES_BYTES = 34L * 1024 * 1024;

    /** A table or a calendar of the largest size that is read, in letters that a form can carry. */
    static final long TAKE_BYTES = 24L * 1024 * 1024;

    static final String FILES = "/begin/files";
    private static final String TAKE = "/take";
    private static final Set<String> OPEN_TO_ALL = Set.of("/open/", "/assets/");

    /** Nothing comes from elsewhere, nothing goes elsewhere, nothing stands in the page that was not meant to run. */
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
            + " connect-src 'self'; font-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final Door door;

    Guards(Door door) {
        this.door = door;
    }

    /** Lets a request through or refuses it. */
    void check(Context request) {
        headers(request);
        String own = host(request);
        origin(request, own);
        size(request);
        boolean open = OPEN_TO_ALL.stream().anyMatch(request.path()::startsWith);
        if (!open && !door.knows(request.cookie(cookie(request)))) {
            throw new Refusal(
                    403,
                    "This desk is not open here",
                    "Open the address that the program printed when it started, or the newest that it has printed"
                            + " since; each opens once.");
        }
    }

    /** Lets in whoever brings the key. */
    void open(Context request) {
        String pass = door.open(request.pathParam("key"));
        if (pass == null) {
            throw new Refusal(
                    403,
                    "This address has been used",
                    "Each address opens the desk once. The program has printed a new one where it was started.");
        }
        request.cookie(new Cookie(cookie(request), pass, "/", -1, false, true, null, SameSite.STRICT));
        request.redirect("/", io.javalin.http.HttpStatus.SEE_OTHER);
    }

    private static void headers(Context request) {
        request.header("Content-Security-Policy", POLICY);
        request.header("X-Content-Type-Options", "nosniff");
        // Under "no-referrer" browsers hide where a form comes from, and the next check would refuse our own.
        request.header("Referrer-Policy", "same-origin");
        request.header("Cross-Origin-Opener-Policy", "same-origin");
        request.header("Cross-Origin-Resource-Policy", "same-origin");
        request.header("X-Frame-Options", "DENY");
        request.header("Cache-Control", "no-store");
    }

    /** A name of another machine that was made to point here is none of ours. */
    private static String host(Context request) {
        int port = request.req().getLocalPort();
        String host = request.header("Host");
        if (host == null || !List.of("127.0.0.1:" + port, "localhost:" + port).contains(host)) {
            throw new Refusal(421, "This desk answers to its own address only", "Open it under 127.0.0.1.");
        }
        return host;
    }

    private static void origin(Context request, String host) {
        String origin = request.header("Origin");
        boolean changes = !isGet(request);
        boolean foreign = origin == null ? changes : !origin.equals("http://" + host);
        String site = request.header("Sec-Fetch-Site");
        boolean otherSite = site != null && !site.equals("same-origin") && !site.equals("none");
        if (foreign || otherSite) {
            throw new Refusal(403, "This did not come from the desk's own page", "Nothing was done.");
        }
    }

    private static boolean isGet(Context request) {
        return request.method().equals(HandlerType.GET);
    }

    private static void size(Context request) {
        if (isGet(request)) {
            return;
        }
        String length = request.header("Content-Length");
        if (length == null) {
            throw new Refusal(411, "The size of what was sent is not said", "Nothing was done.");
        }
        long most = most(request.path());
        if (!length.matches("[0-9]{1,12}") || Long.parseLong(length) > most) {
            throw new Refusal(
                    413, "That is too large", "At most " + most / 1024 + " kB can be sent here; nothing was done.");
        }
    }

    private static long most(String path) {
        if (path.equals(FILES)) {
            return FILES_BYTES;
        }
        return path.startsWith("/w/") && path.endsWith(TAKE) ? TAKE_BYTES : FORM_BYTES;
    }

    /** Browsers keep cookies by machine, not by port: two desks side by side must not share a name. */
    private static String cookie(Context request) {
        return "weekwright-" + request.req().getLocalPort();
    }

    /** The part of an address that is named, never null. */
    static String field(@Nullable String value) {
        return value == null ? "" : value;
    }
}
