package weekwright.desk.view.page;

import java.util.List;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Words;
import weekwright.model.catalogue.Demands;

/**
 * The words of the page, each explained once.
 *
 * @param base address of the folder
 * @param title title of the week
 */
public record WordsPage(String base, String title) {
    private static final List<Word> WORDS = List.of(
            new Word(
                    "demand",
                    "Demand, skyline",
                    "What a day asks of nerves, breath and tissue together, in points from 0 to 10. The skyline above a lane"
                            + " shows it day by day."),
            new Word(
                    "high",
                    "High, low and middle days",
                    "A high day asks " + Dates.number(Demands.HIGH_FROM / 1000.0) + " points or more, a low day up to "
                            + Dates.number(Demands.LOW_TO / 1000.0)
                            + ". A middle day lies between: too hard to recover on, too easy to"
                            + " gain from, so it is avoided."),
            new Word(
                    "match-day",
                    "MD−2, MD, MD+1",
                    "Days counted from the match: MD−2 is two days before it, MD the day itself, MD+1 the day after."),
            new Word(
                    "quality",
                    "Quality",
                    "What a session trains: maximal velocity, acceleration, knee- or hip-dominant strength, pushing, pulling,"
                            + " jumping and landing, change of direction, aerobic work. The same quality needs its hours before"
                            + " it comes again at high intensity."),
            new Word(
                    "dose",
                    "Dose",
                    "How much of the main part is done: full, reduced (two thirds), micro (one third). The warm-up never"
                            + " shrinks."),
            new Word(
                    "least",
                    "Least, wanted, most",
                    "Of a session in a week: what is owed, what you would like, and what is never passed."),
            new Word(
                    "key",
                    "Key, main, spare",
                    "What a missing session costs. Key work comes before main work, whatever else; spare work has its place"
                            + " where it fits."),
            new Word(
                    "must",
                    "What must hold, wishes",
                    "What must hold is broken only where you say so. Wishes cost points; the plan with the fewest points is"
                            + " the best that was found."),
            new Word(
                    "pin",
                    "Pin",
                    "What you hold of a session: its time, day, place, lead, dose or lift, or that it is left out. Planning"
                            + " again never moves what is pinned."),
            new Word(
                    "given-out",
                    "Given out",
                    "People were told of the week. From then on a new plan stays much closer to it, and what has changed"
                            + " since is said."),
            new Word(
                    "lends",
                    "Minutes lent",
                    "Minutes of a team practice in which a micro session may lie, after the practice's own warm-up."),
            new Word(
                    "quorum",
                    "Share that a session needs",
                    "A session goes on while that share of the group can come: 0.8 is four in five."),
            new Word(
                    "rpe",
                    "RPE and load",
                    "RPE is how hard somebody found it, from 0 to 10, asked half an hour after. Load is RPE times minutes, in"
                            + " AU (arbitrary units)."),
            new Word(
                    "monotony",
                    "Monotony and strain",
                    "Monotony is high where all days are alike; strain is the week's load times it. They describe a week and"
                            + " foretell no injury."));

    /** A word and what it means. */
    public record Word(String id, String word, String meaning) {}

    /** All words. */
    public List<Word> words() {
        return WORDS;
    }

    /** What holds whatever a plan says. */
    public String caution() {
        return Words.CAUTION;
    }
}
