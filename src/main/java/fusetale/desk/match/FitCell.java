package fusetale.desk.match;

/**
 * What one candidate lets one reading show.
 *
 * @param shows in words of the display
 * @param low left end of its bar on the column's axis, 0 to 1
 * @param middle where its middle stands
 * @param high right end
 * @param fits whether the reading fits
 */
record FitCell(String shows, double low, double middle, double high, boolean fits) {}
