package fusetale.quantity;

/**
 * A number in a unit, held in SI.
 *
 * @param si the value in the SI unit of {@code unit} (degrees for {@link Unit#CELSIUS}, decibels for {@link
 *     Unit#DECIBEL}); finite
 * @param unit its unit
 */
public record Quantity(double si, Unit unit) {
    /** Refuses numbers that are not finite. */
    public Quantity {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("not a finite number: " + si + " " + unit.symbol());
        }
    }

    /**
     * The ratio of two voltages that a level in decibels stands for: 10^(dB/20), 60 dB → 1000 (IEC 60027-3, levels of
     * field quantities).
     */
    public double voltageRatio() {
        if (unit != Unit.DECIBEL) {
            throw new IllegalStateException("no level in decibels: " + this);
        }
        return Math.pow(10, si / 20);
    }

    /** As a repairer reads it: {@link Notation#format(Quantity)}. */
    @Override
    public String toString() {
        return Notation.format(this);
    }
}
