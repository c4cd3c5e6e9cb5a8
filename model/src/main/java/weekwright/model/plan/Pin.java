package weekwright.model.plan;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import weekwright.model.Ids;

/**
 * What the coach holds of a placement: each {@code true} holds the value that stands in it; {@code start} includes the
 * day.
 *
 * @param out left out on purpose
 * @param notDays dates on which it must not lie
 */
@JsonInclude(JsonInclude.Include.NON_DEFAULT)
public record Pin(
        boolean start,
        boolean day,
        boolean facility,
        boolean lead,
        boolean dose,
        boolean variant,
        boolean out,
        List<LocalDate> notDays) {
    /** Nothing is held. */
    public static final Pin NONE = new Pin(false, false, false, false, false, false, false, List.of());

    public Pin {
        notDays = Ids.listed(notDays);
    }

    /** Whether nothing is held. */
    @JsonIgnore
    public boolean isNone() {
        return equals(NONE);
    }
}
