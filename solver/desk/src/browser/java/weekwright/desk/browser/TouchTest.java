package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** With a finger: a tap takes a session into the hand; from there it is dragged, or a tap on a start puts it there. */
class TouchTest {
    @TempDir
    private Path place;

    private static Browser.NewContextOptions touch(int width, int height) {
        return new Browser.NewContextOptions().setViewportSize(width, height).setHasTouch(true);
    }

    private static Locator taken(Page page) {
        page.locator("button.demo[value=one-match]").tap();
        assertThat(page.locator("#search-begin")).isVisible();
        Locator card = page.locator(".card[data-id*='heavy-lower-knee']");
        assertThat(page.locator("#saved")).containsText("Planned");
        // A week that is drawn anew under the finger is not pressed.
        for (int i = 0; i < 10 && page.locator(".cell.here").count() == 0; i++) {
            card.tap();
            page.waitForTimeout(500);
        }
        assertThat(page.locator(".cell.here")).isVisible();
        return card;
    }

    @Test
    void a_session_in_the_hand_is_dragged_with_a_finger() {
        try (Coach coach = Coach.in(place, touch(1366, 1024))) {
            Page page = coach.page;
            Locator card = taken(page);
            Locator target = page.locator(".cell:not(.here):not(.no)").first();
            target.scrollIntoViewIfNeeded();
            String start = target.getAttribute("data-start").substring(11, 16);
            BoundingBox from = card.boundingBox();
            BoundingBox to = target.boundingBox();
            CDPSession finger = page.context().newCDPSession(page);
            touch(finger, "touchStart", from.x + 20, from.y + 10);
            touch(finger, "touchMove", from.x + 40, from.y + 30);
            touch(finger, "touchMove", to.x + 10, to.y + to.height / 2);
            assertThat(page.locator(".ghost")).containsText(start);
            touch(finger, "touchEnd", 0, 0);

            assertThat(page.locator("#saved")).containsText("held there");
            assertThat(card.locator(".time")).containsText(start);
            coach.quiet();
        }
    }

    private static void touch(CDPSession finger, String type, double x, double y) {
        JsonArray points = new JsonArray();
        if (!type.equals("touchEnd")) {
            JsonObject point = new JsonObject();
            point.addProperty("x", x);
            point.addProperty("y", y);
            points.add(point);
        }
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        finger.send("Input.dispatchTouchEvent", event);
    }

    @Test
    void on_a_phone_a_tap_on_a_start_puts_it_there() {
        try (Coach coach = Coach.in(place, touch(390, 800))) {
            Page page = coach.page;
            Locator card = taken(page);
            coach.picture("phone-held");
            coach.accessible("held on a phone");
            Locator target = page.locator(".cell:not(.here):not(.no)").first();
            String start = target.getAttribute("data-start").substring(11, 16);
            target.tap();

            assertThat(page.locator("#saved")).containsText("held there");
            assertThat(card.locator(".time")).containsText(start);
            coach.quiet();
        }
    }
}
