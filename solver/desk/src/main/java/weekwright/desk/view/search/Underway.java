package weekwright.desk.view.search;

import org.jspecify.annotations.Nullable;

/**
 * What is worked out for a folder beside what is shown.
 *
 * @param search its last search for a plan, or null
 * @param couldGo its last search for what could go, or null
 */
public record Underway(@Nullable Course search, @Nullable Bargained couldGo) {}
