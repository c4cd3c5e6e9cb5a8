package weekwright.model.catalogue;

/** How much of a fixture somebody played: over 60 minutes, 30 to 60, 1 to 29, or nothing. */
public enum Played {
    NONE(0),
    SHORT(5),
    PART(8),
    FULL(10);

    /** Fewest minutes of a part; below them a fixture is as hard as an acceleration session. Expert proposal. */
    public static final int PART_FROM_MINUTES = 30;
    /** Most minutes of a part; above them the whole of a fixture's hours hold. Expert proposal. */
    public static final int PART_TO_MINUTES = 60;

    private final int demandTenths;

    Played(int demandTenths) {
        this.demandTenths = demandTenths;
    }

    /**
     * The class of so many minutes played of a fixture of so many; all of a short one is all the same.
     *
     * @param playMinutes minutes of play of the whole fixture
     */
    public static Played of(int minutes, int playMinutes) {
        if (minutes <= 0) {
            return NONE;
        }
        if (minutes > PART_TO_MINUTES || minutes >= playMinutes) {
            return FULL;
        }
        return minutes < PART_FROM_MINUTES ? SHORT : PART;
    }

    /** Share of a whole fixture's demand, in tenths. Expert proposal. */
    public int demandTenths() {
        return demandTenths;
    }
}
