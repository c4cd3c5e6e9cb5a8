package weekwright.model.prescription;

/** What a sheet reminds of where it applies, and to whom it defers. */
public enum Caution {
    /** Always: pain, illness and concussion follow their own protocols, never a load rule (common practice). */
    STOP("Pain, illness or a knock to the head: stop and refer; a return follows the clinician's protocol."),
    /** Somebody is held back: only inside what a clinician allows (StARRT framework, Shrier 2015, from memory). */
    HELD_BACK("Who sits out or does other work stays inside what the clinician allows. This sheet clears nobody."),
    /** Somebody is under 18: no maximal test without supervision (NSCA 2009; NATA). */
    MINORS("Under 18: no maximal lift without qualified supervision; maxima come from clean sets; hours by age."),
    /** Maximal tests (common practice; expert proposal). */
    TESTS("Maximal tests: supervised, spotters, warmed up, 48 h after hard work, not within 4 days of a match."),
    /** Out of doors: the local authority decides. */
    WEATHER("Heat, cold, air, lightning and surface: the local authority and the venue decide."),
    /** After illness, travel or a long break (expert proposal). */
    RETURN("After illness, travel or a long break: half the fast metres and heavy sets in the first week.");

    private final String text;

    Caution(String text) {
        this.text = text;
    }

    /** The reminder. */
    public String text() {
        return text;
    }
}
