package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.rulebook.RuleLevel;

/**
 * How a scenario or a group changes one rule.
 *
 * @param level another level, or null
 * @param weight multiplies the cost of a want, or null for 1
 * @param numbers the rule's own numbers by name; a value is a number, or numbers by key such as a pathway
 */
public record RuleSetting(
        @Nullable RuleLevel level,
        @Nullable Double weight,
        @JsonAnySetter @JsonAnyGetter Map<String, Object> numbers) {
    public RuleSetting {
        numbers = numbers == null ? Map.of() : java.util.Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
    }
}
