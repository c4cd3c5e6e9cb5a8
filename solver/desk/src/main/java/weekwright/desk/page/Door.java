package weekwright.desk.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import org.jspecify.annotations.Nullable;

/**
 * Who may come in: whoever brings a key that opens once. It is exchanged for a pass, which a browser keeps as a cookie and
 * no script can read.
 */
final class Door {
    private static final int BYTES = 32;

    private final SecureRandom chance = new SecureRandom();
    private final String pass = secret();
    private String key = secret();

    private String secret() {
        byte[] bytes = new byte[BYTES];
        chance.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** The key that opens next. */
    synchronized String key() {
        return key;
    }

    /** Gives the pass for the key, which is then worth nothing; null for any other key. */
    synchronized @Nullable String open(String offered) {
        if (!same(offered, key)) {
            return null;
        }
        key = secret();
        return pass;
    }

    /** Whether somebody holds the pass. */
    boolean knows(@Nullable String offered) {
        return offered != null && same(offered, pass);
    }

    /** Takes as long for a near miss as for a far one. */
    private static boolean same(String offered, String secret) {
        return MessageDigest.isEqual(offered.getBytes(StandardCharsets.UTF_8), secret.getBytes(StandardCharsets.UTF_8));
    }
}
