package weekwright.desk.view.search;

import java.util.List;

/**
 * What could go where not all that is asked for can be had.
 *
 * @param base address of the folder
 * @param query query of the address that shows the same part of the week
 * @param revision the revision that is shown
 * @param state offered, waiting, running or ended, or none where there is nothing to look for
 * @param says how far it is or what was found, in a sentence
 * @param clashes what cannot be had together, each in a sentence
 * @param offers what could go, what buys most first; empty where it was looked for in another plan
 * @param note how it was tried, or an empty text
 */
public record CouldGo(
        String base,
        String query,
        int revision,
        String state,
        String says,
        List<String> clashes,
        List<Offer> offers,
        String note) {
    private static final int MOST_SHOWN = 6;

    public CouldGo {
        clashes = List.copyOf(clashes);
        offers = List.copyOf(offers);
    }

    /** Whether there is something to show. */
    public boolean shown() {
        return !state.equals("none");
    }

    /** Whether it is being looked for. */
    public boolean on() {
        return state.equals(Course.WAITING) || state.equals(Course.RUNNING);
    }

    /** Whether there is an answer. */
    public boolean ended() {
        return state.equals(Course.ENDED);
    }

    /** What buys most. */
    public List<Offer> first() {
        return offers.subList(0, Math.min(MOST_SHOWN, offers.size()));
    }

    /** What buys less. */
    public List<Offer> rest() {
        return offers.subList(first().size(), offers.size());
    }

    /**
     * Something that could go.
     *
     * @param number its number in the answer
     * @param step what to do
     * @param buys what it buys and what it costs
     */
    public record Offer(int number, String step, String buys) {}
}
