package weekwright.model.catalogue;

/** What a full session asks of the body, each 0 to 10. */
public record Demand(double neural, double metabolic, double tissue) {}
