package weekwright.desk.browser;

import com.microsoft.playwright.Page;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Goes round all pages that can be reached by links, one of each kind. */
final class EveryPage {
    private static final String LINKS =
            "() => [...document.querySelectorAll('a[href]')].map((link) => link.href.split('#')[0])";

    private EveryPage() {}

    /** Goes round, beginning with the page that is open, and does something on each. */
    static void from(Page page, Runnable there) {
        Deque<String> ahead = new ArrayDeque<>(List.of(page.url()));
        Set<String> seen = new HashSet<>();
        while (!ahead.isEmpty()) {
            String address = ahead.poll();
            if (seen.add(kind(address))) {
                page.navigate(address);
                there.run();
                ((List<?>) page.evaluate(LINKS)).forEach(link -> ahead.add((String) link));
            }
        }
    }

    /**
     * What pages of the same kind have in common: {@code /knowns/fixtures} for the form of any fixture, {@code /rules/one} for
     * that of any rule. The days of the log are told apart, since something may lie on some of them only.
     */
    static String kind(String address) {
        String path = address.replaceFirst("^https?://[^/]+", "").replaceFirst("^/w/[^/?]+", "");
        String days = path.startsWith("/log?") ? path : path.replaceFirst("\\?.*", "");
        return days.replaceFirst("^(/knowns/[a-z]+)/.*", "$1")
                .replaceFirst("^/rules/.+", "/rules/one")
                .replaceFirst("^/history/.+", "/history/one");
    }
}
