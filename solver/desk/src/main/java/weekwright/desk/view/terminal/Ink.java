package weekwright.desk.view.terminal;

/** Weight of the letters on a terminal. It only helps the eye: nothing is said by it alone. */
public enum Ink {
    /** Letters as they are. */
    PLAIN("", "", ""),
    /** Strong and faint letters, for terminals that know them. */
    TERMINAL("\u001b[1m", "\u001b[2m", "\u001b[0m");

    private final String strong;
    private final String faint;
    private final String end;

    Ink(String strong, String faint, String end) {
        this.strong = strong;
        this.faint = faint;
        this.end = end;
    }

    /** The text without any weight of its letters. */
    static String bare(String text) {
        return text.replaceAll("\u001b\\[[0-9]m", "");
    }

    /** Strong letters. */
    public String strong(String text) {
        return strong + text + end;
    }

    /** Faint letters. */
    public String faint(String text) {
        return faint + text + end;
    }
}
