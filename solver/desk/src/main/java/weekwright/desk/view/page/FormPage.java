package weekwright.desk.view.page;

import java.util.List;

/**
 * A form for one thing that a coach knows or wants.
 *
 * @param base address of the folder
 * @param address address to which it is sent
 * @param title what the form is for
 * @param back where the coach came from
 * @param revision the revision that it was filled from
 * @param fresh whether the thing is new
 * @param takeOut what taking it out is called; empty where it cannot be
 * @param cautions what is to be borne in mind
 * @param faults what is wrong and belongs to no field
 * @param whole the fields
 */
public record FormPage(
        String base,
        String address,
        String title,
        String back,
        int revision,
        boolean fresh,
        String takeOut,
        List<String> cautions,
        List<String> faults,
        FormField whole) {
    public FormPage {
        cautions = List.copyOf(cautions);
        faults = List.copyOf(faults);
    }

    /** The address to which it is sent while it is filled in. */
    public String check() {
        int query = address.indexOf('?');
        return query < 0 ? address + "/check" : address.substring(0, query) + "/check" + address.substring(query);
    }

    /** How many things are wrong, in words. */
    public String wrong() {
        long wrong = faults.size()
                + whole.all().stream().mapToLong(field -> field.faults().size()).sum();
        return wrong == 0
                ? "Nothing that stands here is wrong."
                : wrong == 1 ? "One thing is to be mended." : wrong + " things are to be mended.";
    }
}
