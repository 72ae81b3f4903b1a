package fusetale.bench;

/**
 * What a meter shows.
 *
 * @param check what was measured
 * @param value in SI; where {@code overRange} the quantity the meter cannot show
 * @param overRange whether the meter shows OL
 * @param shows the display with its unit: {@code 12.34 V}, {@code OL}
 * @param halfWidth half-width of the meter's accuracy at this value, SI
 */
public record Reading(Check check, double value, boolean overRange, String shows, double halfWidth) {}
