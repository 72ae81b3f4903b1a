package fusetale.circuit;

import fusetale.quantity.Quantity;

/**
 * The element that melts.
 *
 * @param ratedAmps rated current
 * @param speed quick or slow
 * @param standard whose gates it keeps
 * @param size dimensions in mm, {@code 6.3x32}
 * @param coldOhms cold resistance
 */
public record FuseLink(Quantity ratedAmps, Speed speed, Standard standard, String size, Quantity coldOhms) {
    /** How a link answers to a surge. */
    public enum Speed {
        /** Quick-acting. */
        QUICK,
        /** Time-lag. */
        SLOW
    }

    /** The families of time gates. */
    public enum Standard {
        /** IEC 60127-2, sheets 2 (quick) and 3 (time-lag). */
        IEC_60127,
        /** UL / CSA 248-14. */
        UL_248_14
    }
}
