package weekwright.desk.store;

/** The power goes. No error, since nobody may tidy up after it. */
final class PowerCut extends Error {
    private static final long serialVersionUID = 1;
}
