package weekwright.desk.intake;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/** Names as files write them, and ids made from them. */
public final class Labels {
    /** A result: two small numbers with a dash, standing by themselves. */
    private static final Pattern RESULT =
            Pattern.compile("(?<![\\w\\-–/.:])\\(?\\d{1,2} ?[-–] ?\\d{1,2}\\)?(?![\\w\\-–/.:])");

    private static final Pattern NOT_HELD =
            Pattern.compile("(?i)\\bbye\\b|\\bno (match|fixture|game)\\b|\\b(free|rest) (week|weekend|round)\\b");
    private static final Pattern CALLED_OFF =
            Pattern.compile("(?i)\\b(cancell?ed|called off|abandoned|void|walkover|w/o)\\b|^\\s*canc\\b");
    private static final Pattern POSTPONED = Pattern.compile("(?i)\\bpostponed\\b|^\\s*(p-p|ppd?)\\b");
    private static final int SLUG = 32;
    private static final int HASH = 8;

    private Labels() {}

    /** A text in one line without signs that control something, and not longer than names may be. */
    public static String clean(String text, Remarks remarks) {
        StringBuilder clean = new StringBuilder();
        text.codePoints().map(Labels::harmless).forEach(clean::appendCodePoint);
        String line = clean.toString().strip().replaceAll(" {2,}", " ");
        if (line.codePointCount(0, line.length()) > Limits.NAME) {
            remarks.note("the name is cut to " + Limits.NAME + " characters");
            return line.substring(0, line.offsetByCodePoints(0, Limits.NAME)).strip();
        }
        return line;
    }

    private static int harmless(int point) {
        int type = Character.getType(point);
        boolean harmful = type == Character.CONTROL
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.SURROGATE
                || (point >= 0x202A && point <= 0x202E)
                || (point >= 0x2066 && point <= 0x2069)
                || point == 0xFEFF;
        return harmful ? ' ' : point;
    }

    /** A name without the result that some calendars write into it after the match. */
    static String withoutResult(String label, Remarks remarks) {
        var result = RESULT.matcher(label);
        if (!result.find()) {
            return label;
        }
        String shown = result.group().replaceAll("[()]", "").strip();
        String before = label.substring(0, result.start()).strip();
        String after = label.substring(result.end()).strip();
        boolean between =
                !before.isEmpty() && !after.isEmpty() && !result.group().startsWith("(");
        String rest = (before + (between ? " – " : " ") + after).strip();
        if (rest.isEmpty()) {
            return label;
        }
        remarks.note("the result " + shown + " is left out of the name");
        return rest;
    }

    /** Whether a name says that nothing is played. */
    static boolean saysNotHeld(String label) {
        return NOT_HELD.matcher(label).find();
    }

    /** What a name or a status says of whether something holds. */
    public static Found.State state(String text) {
        return POSTPONED.matcher(text).find()
                ? Found.State.POSTPONED
                : CALLED_OFF.matcher(text).find() ? Found.State.CANCELLED : Found.State.HOLDS;
    }

    /** A name by which two writings of the same can be told: letters and digits only, no state, no accents. */
    static String plain(String label) {
        String bare = Normalizer.normalize(label, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
        return CALLED_OFF
                .matcher(POSTPONED.matcher(bare).replaceAll(""))
                .replaceAll("")
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }

    /** The part of an id that comes from a key: it stays the same when the name changes. */
    static String suffix(String key) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
            return "-" + HexFormat.of().formatHex(digest).substring(0, HASH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Whether a key can be an id as it is. */
    static boolean isId(@Nullable String key) {
        return key != null && key.matches(Ids.PATTERN);
    }

    /** A new id from a name and what tells it from its like. */
    static String id(String label, String apart, Collection<String> taken) {
        String slug = plain(label).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        String head =
                (slug.isEmpty() ? "entry" : slug.substring(0, Math.min(SLUG, slug.length()))).replaceAll("-+$", "");
        String id = head + apart;
        for (int more = 2; taken.contains(id); more++) {
            id = head + apart + "-" + more;
        }
        return id;
    }
}
