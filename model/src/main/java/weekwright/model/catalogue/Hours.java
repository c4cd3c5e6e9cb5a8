package weekwright.model.catalogue;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/** Elapsed hours: the fewest that are allowed, and those that are wanted (null: none). */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Hours(double must, @Nullable Double want) {}
