package fusetale.desk.match;

/**
 * Where the columns of the fit grid stand [px].
 *
 * @param nameX left of the names
 * @param nameWidth room of the names
 * @param firstX left of the first column that is shown
 * @param width of a column, the gap behind it included
 * @param from first column shown
 * @param shown how many are
 * @param right right edge
 */
record FitPlan(double nameX, double nameWidth, double firstX, double width, int from, int shown, double right) {
    private static final double MARGIN = 20;
    private static final double NAME_SHARE = 0.27;
    private static final double NAME_LEAST = 216;
    private static final double NAME_MOST = 330;
    private static final double NARROWEST = 100;
    private static final double WIDEST = 190;
    private static final double GAP = 26;
    private static final double BAR = 14;

    /** For so much room and so many readings, the first of those shown as wished. */
    static FitPlan of(double room, int columns, int wished) {
        double name = Math.max(NAME_LEAST, Math.min(NAME_MOST, room * NAME_SHARE));
        double first = MARGIN + name + 2 * BAR;
        double left = room - first - BAR;
        int most = Math.max(1, (int) (left / NARROWEST));
        int shown = Math.min(most, columns);
        int from = Math.max(0, Math.min(wished, columns - shown));
        double width = shown == 0 ? left : Math.min(WIDEST, left / shown);
        return new FitPlan(MARGIN, name, first, width, from, shown, room - MARGIN);
    }

    /** Where a share of a column's axis stands. */
    double x(int column, double share) {
        return firstX + (column - from) * width + share * (width - GAP);
    }

    /** In the gap before a column; behind the last one too. */
    double before(int column) {
        return left(column) - GAP / 2;
    }

    /** Left of a column. */
    double left(int column) {
        return x(column, 0);
    }

    /** Right end of its axis. */
    double end(int column) {
        return x(column, 1);
    }

    boolean shows(int column) {
        return column >= from && column < from + shown;
    }
}
