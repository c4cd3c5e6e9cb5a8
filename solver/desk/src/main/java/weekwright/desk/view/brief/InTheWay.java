package weekwright.desk.view.brief;

import java.util.Map;
import weekwright.desk.view.Names;

/** What a rule that stands in the way of a session means, in a few words after {@code wherever it could lie, …}. */
final class InTheWay {
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("one-place-at-a-time", "the group is busy with something else"),
            Map.entry("inside-window", "it is outside the group's hours"),
            Map.entry("facility-open", "the place is closed"),
            Map.entry("facility-room", "the place is full"),
            Map.entry("facility-fits", "the place does not suit it"),
            Map.entry("lead-free", "nobody is free to lead it"),
            Map.entry("visits-per-day", "it would be one visit too many that day"),
            Map.entry("night-rest", "the night would be too short"),
            Map.entry("pathway-gap-floor", "it is too close to work for the same quality"),
            Map.entry("high-block-floor", "it is too close to other high work"),
            Map.entry("before-fixture", "it is too soon before a fixture"),
            Map.entry("after-fixture", "it is too soon after a fixture"),
            Map.entry("quorum", "too few of the group could come"),
            Map.entry("primer-end", "it is too soon before a fixture"),
            Map.entry("four-high-days", "it would be a fourth high day running"),
            Map.entry("free-day", "no free day would be left"),
            Map.entry("aim-most", "it would be more than asked for"),
            Map.entry("high-days-most", "it would be a high day too many"));

    private InTheWay() {}

    static String of(String rule) {
        return WORDS.getOrDefault(rule, "it would break the rule \"" + Names.rule(rule) + "\"");
    }
}
