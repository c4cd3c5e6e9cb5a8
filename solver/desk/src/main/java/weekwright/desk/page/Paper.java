package weekwright.desk.page;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Answers that are given out: pages for paper, which bring their own style, and files to be kept. */
final class Paper {
    private static final Pattern STYLE = Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL);

    private Paper() {}

    /** A page that asks for nothing else; its style is the only one that may apply, nothing in it may run. */
    static void page(Context request, byte[] html) {
        String text = new String(html, StandardCharsets.UTF_8);
        Matcher style = STYLE.matcher(text);
        String allowed = style.find() ? "'sha256-" + digest(style.group(1)) + "'" : "'none'";
        request.header(
                "Content-Security-Policy",
                "default-src 'none'; style-src " + allowed + "; base-uri 'none'; form-action 'none';"
                        + " frame-ancestors 'none'");
        request.contentType("text/html; charset=utf-8").result(text);
    }

    private static String digest(String style) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /**
     * A file to be kept.
     *
     * @param name what it is, from words that may have come from anywhere: only plain letters, digits and hyphens are left
     */
    static void file(Context request, String name, String ending, String type, byte[] bytes) {
        request.header("Content-Disposition", "attachment; filename=\"" + plain(name) + ending + "\"");
        request.contentType(type).result(bytes);
    }

    private static String plain(String name) {
        StringBuilder plain = new StringBuilder();
        name.codePoints()
                .map(Character::toLowerCase)
                .forEach(letter -> plain.append(isPlain(letter) ? Character.toString(letter) : "-"));
        String tidy = plain.toString().replaceAll("-+", "-").replaceAll("^-|-$", "");
        return tidy.isEmpty() ? "week" : tidy.substring(0, Math.min(tidy.length(), 60));
    }

    private static boolean isPlain(int letter) {
        return (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9');
    }
}
