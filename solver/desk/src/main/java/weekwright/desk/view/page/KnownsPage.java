package weekwright.desk.view.page;

import java.util.List;

/**
 * All that a coach knows and wants, list by list.
 *
 * @param base address of the folder
 * @param title title of the week
 * @param saved the revision in force, in words
 * @param news what the coach should be told once
 */
public record KnownsPage(String base, String title, String saved, List<String> news, List<Section> sections) {
    public KnownsPage {
        news = List.copyOf(news);
        sections = List.copyOf(sections);
    }

    /**
     * Things of one kind.
     *
     * @param id name of the list in an address
     * @param about what they are, in a sentence
     * @param one what one of them is called, such as {@code a fixture}; empty where there is only one for all time
     */
    public record Section(String id, String title, String about, String one, List<Thing> things, List<Paste> pastes) {
        public Section {
            things = List.copyOf(things);
            pastes = List.copyOf(pastes);
        }
    }

    /** One thing, what there is to say of it in short, and where it is changed. */
    public record Thing(String label, String note, String address) {}

    /** Something that can be taken in from elsewhere. */
    public record Paste(String label, String address) {}
}
