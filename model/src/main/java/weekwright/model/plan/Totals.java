package weekwright.model.plan;

/**
 * What is broken, by level; 0 is clean. All four are whole tenths. Plans compare in the order must, key, main, want.
 */
public record Totals(double must, double key, double main, double want) {}
