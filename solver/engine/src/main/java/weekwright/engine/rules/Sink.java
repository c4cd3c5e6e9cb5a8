package weekwright.engine.rules;

/** Takes breaches: one sink adds up costs for the search, another keeps facts for sentences. */
public interface Sink {
    /**
     * Takes a breach.
     *
     * @param view what the judge looked at; valid only during the call
     * @param breach what it found; valid only during the call
     * @param groupHeads people among whom the cost is shared
     */
    void breach(JudgedRule rule, View view, Breach breach, int groupHeads);
}
