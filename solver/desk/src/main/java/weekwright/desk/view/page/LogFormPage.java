package weekwright.desk.view.page;

/**
 * The form for what was done.
 *
 * @param form its fields
 * @param quick lines that were typed and not understood
 * @param metres length of the runs in them
 */
public record LogFormPage(FormPage form, String quick, String metres) {}
