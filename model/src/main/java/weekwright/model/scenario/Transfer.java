package weekwright.model.scenario;

import java.util.List;
import weekwright.model.Ids;

/** Minutes that a group needs between two facilities, either way. */
public record Transfer(List<String> between, int minutes) {
    public Transfer {
        between = Ids.listed(between);
    }
}
