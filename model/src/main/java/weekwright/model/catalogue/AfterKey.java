package weekwright.model.catalogue;

/** Keys of a fixture family's {@code afterHours} besides the pathways. */
public final class AfterKey {
    /** Any other pathway at high intensity. */
    public static final String OTHER_HIGH = "other-high";
    /** Easy aerobic work: the aerobic pathway, light. */
    public static final String EASY_AEROBIC = "easy-aerobic";
    /** Micro doses of sprint families without an aerobic part: maximal velocity and acceleration. */
    public static final String MICRO_SPEED = "micro-speed";
    /** Micro doses of the lower-body strength families that carry {@code beforeFixtureMicroHours}. */
    public static final String MICRO_STRENGTH = "micro-strength";

    private AfterKey() {}
}
