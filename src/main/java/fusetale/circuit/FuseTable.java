package fusetale.circuit;

import java.util.Comparator;
import java.util.List;

/**
 * Cold resistances of one family of fuse links.
 *
 * @param standard whose gates the family keeps
 * @param speed quick or slow
 * @param size dimensions in mm, {@code 6.3x32}
 * @param rows by rising rating
 * @param sources where the figures are from
 */
public record FuseTable(
        FuseLink.Standard standard, FuseLink.Speed speed, String size, List<Row> rows, List<String> sources) {
    /**
     * One rating of the family.
     *
     * @param ratedAmps rated current
     * @param coldOhms cold resistance
     */
    public record Row(double ratedAmps, double coldOhms) {}

    /** Sorts the rows. */
    public FuseTable {
        rows = rows.stream().sorted(Comparator.comparingDouble(Row::ratedAmps)).toList();
        sources = List.copyOf(sources);
    }

    /** Whether a rating lies between the ends of the table. */
    public boolean covers(double ratedAmps) {
        return !rows.isEmpty()
                && ratedAmps >= rows.get(0).ratedAmps()
                && ratedAmps <= rows.get(rows.size() - 1).ratedAmps();
    }

    /**
     * Cold resistance at a rating, between rows along a straight line in logarithms (cold resistance falls about as a power
     * of the rating).
     *
     * @throws IllegalArgumentException where the table does not cover the rating
     */
    public double coldOhms(double ratedAmps) {
        if (!covers(ratedAmps)) {
            throw new IllegalArgumentException("no row near " + ratedAmps + " A");
        }
        Row below = rows.get(0);
        for (Row above : rows) {
            if (above.ratedAmps() == ratedAmps) {
                return above.coldOhms();
            }
            if (above.ratedAmps() > ratedAmps) {
                double share =
                        Math.log(ratedAmps / below.ratedAmps()) / Math.log(above.ratedAmps() / below.ratedAmps());
                return below.coldOhms() * Math.pow(above.coldOhms() / below.coldOhms(), share);
            }
            below = above;
        }
        throw new IllegalStateException("covered rating not found");
    }
}
