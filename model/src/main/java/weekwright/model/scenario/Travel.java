package weekwright.model.scenario;

/** Minutes of travel to a fixture and home again. */
public record Travel(int outMinutes, int backMinutes) {
    /** No travel. */
    public static final Travel NONE = new Travel(0, 0);
}
