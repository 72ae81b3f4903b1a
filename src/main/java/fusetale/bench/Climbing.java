package fusetale.bench;

/**
 * A display that still moves when a repairer would read it, because a capacitor charges or discharges through the meter.
 *
 * @param after what it shows after {@link #AFTER_SECONDS}
 * @param settled where it ends
 */
public record Climbing(Shown after, Shown settled) {
    /** How long [s] a repairer waits for a display to settle. */
    public static final double AFTER_SECONDS = 3;

    /**
     * What a display shows.
     *
     * @param value SI
     * @param overRange whether it is OL
     * @param shows the display with its unit
     */
    public record Shown(double value, boolean overRange, String shows) {
        static Shown of(Reading reading) {
            return new Shown(reading.value(), reading.overRange(), reading.shows());
        }
    }

    /** Whether it goes down rather than up; over range is up. */
    public boolean falling() {
        if (after.overRange() != settled.overRange()) {
            return after.overRange();
        }
        return settled.value() < after.value();
    }
}
