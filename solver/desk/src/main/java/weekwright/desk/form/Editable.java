package weekwright.desk.form;

import java.util.List;
import weekwright.desk.view.page.FormField;

/** A thing in a form: rows are added and taken out, and the whole document is read with it as if it came from a file. */
public interface Editable {
    /** Adds an empty row to a list, such as {@code aims}. */
    void grow(String list);

    /** Takes a row out of a list, such as {@code aims[2]}. */
    void shrink(String row);

    /**
     * Reads the whole document with the thing in it.
     *
     * @param half whether the form is still being filled in
     * @return whether nothing is wrong
     */
    boolean read(boolean half);

    /**
     * Reads the whole document without the thing.
     *
     * @return whether nothing is wrong
     */
    boolean without();

    /** The fields as they are to be shown. */
    FormField shown();

    /** What is wrong and belongs to no field; to be asked after {@link #shown}. */
    List<String> elsewhere();
}
