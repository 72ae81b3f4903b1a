package fusetale.aftermath;

import fusetale.fault.Fault;
import org.jspecify.annotations.Nullable;

/**
 * A temperature at which something happens to a part. Where exactly is not known, so it is a range.
 *
 * @param lowCelsius where it happens to the first [°C]
 * @param highCelsius by where it has happened to the last [°C], at least {@code lowCelsius}
 * @param harm what happens
 * @param consequence what the part is from then on; null where it stays what it was
 * @param source where the range is from
 */
public record Limit(
        double lowCelsius,
        double highCelsius,
        Harm harm,
        @Nullable Fault consequence,
        String source) {
    /** Refuses ranges that are the wrong way round. */
    public Limit {
        if (!(lowCelsius <= highCelsius)) {
            throw new IllegalArgumentException(harm + " from " + lowCelsius + " to " + highCelsius + " °C");
        }
    }
}
