package weekwright.model.answer;

import java.util.List;
import weekwright.model.Ids;

/**
 * Wishes that were not all met together; without any one of them a plan was found for the rest.
 *
 * @param wishes ids of aims in their week ({@code group/family/week}) or of sessions held in place ({@code pin} and the
 *     session's id)
 * @param proved whether every way of placing them was counted; else it was searched
 */
public record Clash(List<String> wishes, boolean proved, String text) {
    public Clash {
        wishes = Ids.listed(wishes);
    }
}
