package weekwright.desk.view.page;

import java.util.List;

/**
 * A field of a form as it is shown.
 *
 * @param control how it is filled in
 * @param name name under which it is sent, such as {@code windows[0].from}
 * @param label what it is called
 * @param help what it is for; may be empty
 * @param unit unit of what is typed in; may be empty
 * @param needed whether it must be filled in
 * @param rare whether few ever need it
 * @param only the choice beside it that it belongs to, such as {@code sprint}; empty where it always does
 * @param value what stands in it
 * @param choices what can be chosen
 * @param parts the fields inside, or the rows of a list
 * @param faults what is wrong with it
 * @param fresh whether it was just added
 */
public record FormField(
        Control control,
        String name,
        String label,
        String help,
        String unit,
        boolean needed,
        boolean rare,
        String only,
        String value,
        List<Choice> choices,
        List<FormField> parts,
        List<String> faults,
        boolean fresh) {
    public FormField {
        choices = List.copyOf(choices);
        parts = List.copyOf(parts);
        faults = List.copyOf(faults);
    }

    /** How a field is filled in. */
    public enum Control {
        LINE,
        NUMBER,
        NUMBERS,
        DATE,
        MOMENT,
        CLOCK,
        YES,
        ONE,
        MANY,
        PART,
        ROWS
    }

    /** Something that can be chosen. */
    public record Choice(String value, String label, boolean chosen) {}

    /** Its id in the page. */
    public String id() {
        return "f-" + name.replace("]", "").replace('[', '-').replace('.', '-');
    }

    /** Ids of what describes it. */
    public String described() {
        return help.isEmpty() ? id() + "-fault" : id() + "-help " + id() + "-fault";
    }

    /** Whether anything is wrong with it. */
    public boolean faulty() {
        return !faults.isEmpty();
    }

    /** The type of its input. */
    public String type() {
        return switch (control) {
            case DATE -> "date";
            case MOMENT -> value.isEmpty() || value.length() == "2027-03-06T14:30".length() ? "datetime-local" : "text";
            default -> "text";
        };
    }

    /** The keys that a phone shows for it. */
    public String keys() {
        return control == Control.NUMBER || control == Control.NUMBERS ? "decimal" : "text";
    }

    /** The fields inside that most need. */
    public List<FormField> common() {
        return parts.stream().filter(part -> !part.rare()).toList();
    }

    /** The fields inside that few need. */
    public List<FormField> seldom() {
        return parts.stream().filter(FormField::rare).toList();
    }

    /** Whether something stands in, or is wrong with, what few need. */
    public boolean seldomOpen() {
        return seldom().stream().anyMatch(FormField::touched);
    }

    private boolean touched() {
        return faulty()
                || (control != Control.ONE && control != Control.YES && !value.isEmpty())
                || (control == Control.YES && value.equals("true"))
                || (control == Control.MANY && choices.stream().anyMatch(Choice::chosen))
                || (control == Control.ROWS && !parts.isEmpty())
                || (control == Control.PART && parts.stream().anyMatch(FormField::touched));
    }

    /** This field and all inside. */
    public List<FormField> all() {
        List<FormField> all = new java.util.ArrayList<>(List.of(this));
        parts.forEach(part -> all.addAll(part.all()));
        return all;
    }
}
