package weekwright.desk.view.page;

import java.util.List;

/**
 * All rules, and how they hold here.
 *
 * @param base address of the folder
 * @param title title of the week
 * @param saved the revision in force, in words
 * @param scopes for whom rules can be looked at
 * @param levels the rules by how much they matter here
 */
public record RulesPage(String base, String title, String saved, List<Scope> scopes, List<Level> levels) {
    public RulesPage {
        scopes = List.copyOf(scopes);
        levels = List.copyOf(levels);
    }

    /** The rules that differ from the usual here. */
    public List<Entry> changed() {
        return levels.stream()
                .flatMap(level -> level.rules().stream())
                .filter(rule -> !rule.changed().isEmpty())
                .toList();
    }

    /** All groups, or one. */
    public record Scope(String label, String address, boolean chosen) {}

    /** Rules that matter alike. */
    public record Level(String heading, List<Entry> rules) {
        public Level {
            rules = List.copyOf(rules);
        }
    }

    /**
     * A rule.
     *
     * @param changed how it differs from the usual here; empty where it does not
     * @param numbers its numbers in force, in words
     * @param address where it is changed
     */
    public record Entry(
            String id,
            String title,
            String sentence,
            String cost,
            List<String> numbers,
            String source,
            String changed,
            boolean judged,
            String address) {
        public Entry {
            numbers = List.copyOf(numbers);
        }
    }
}
