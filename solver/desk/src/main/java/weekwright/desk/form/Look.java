package weekwright.desk.form;

/**
 * How a field of the documents is shown to a coach; what may stand in it is said by {@link weekwright.model.document.Shape}.
 *
 * @param label what it is called
 * @param help what it is for; empty for what the document's schema says
 * @param unit unit of what is typed in; may be empty
 * @param offer what it names, or {@link Offer#NOTHING}
 * @param only the choice beside it that it belongs to, or empty
 * @param rare whether few ever need it
 * @param name whether it is the name by which a coach knows the thing, which a new one must have
 */
record Look(String label, String help, String unit, Offer offer, String only, boolean rare, boolean name) {
    /** What a field can name. */
    enum Offer {
        NOTHING,
        GROUPS,
        ATHLETES,
        PLACES,
        SESSIONS,
        FIXTURE_FAMILIES,
        FAMILIES,
        LEADS,
        LIFTS,
        PACKS
    }

    static Look of(String label) {
        return new Look(label, "", "", Offer.NOTHING, "", false, false);
    }

    Look help(String text) {
        return new Look(label, text, unit, offer, only, rare, name);
    }

    Look unit(String text) {
        return new Look(label, help, text, offer, only, rare, name);
    }

    Look names(Offer what) {
        return new Look(label, help, unit, what, only, rare, name);
    }

    Look only(String choice) {
        return new Look(label, help, unit, offer, choice, rare, name);
    }

    Look seldom() {
        return new Look(label, help, unit, offer, only, true, name);
    }

    Look asName() {
        return new Look(label, help, unit, offer, only, rare, true);
    }
}
