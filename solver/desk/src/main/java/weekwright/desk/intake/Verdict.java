package weekwright.desk.intake;

/** What comes of a row when the preview is taken. */
public enum Verdict {
    /** It is added. */
    NEW("new"),
    /** Something in the scenario moves. */
    MOVED("moved"),
    /** Something in the scenario gets another name or length. */
    CHANGED("changed"),
    /** Something in the scenario is taken out. */
    GONE("taken out"),
    /** The scenario has it already. */
    SAME("as it was"),
    /** It is not taken, and why is said. */
    PASSED_OVER("passed over"),
    /** A coach has to say whether it is right. */
    ASKED("asked"),
    /** It cannot be read. */
    UNREADABLE("unreadable");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word for it. */
    public String word() {
        return word;
    }

    /** Whether it stands in the way of taking the preview. */
    public boolean isOpen() {
        return this == ASKED || this == UNREADABLE;
    }
}
