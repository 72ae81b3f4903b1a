package fusetale.circuit;

/**
 * What a battery is made of: open-circuit voltage of one cell at rest and 25 °C over its charge, straight between the
 * points. Lead-acid: a 12 V battery's 12.65, 12.45, 12.24, 12.06, 11.89 V from full to empty (handbooks of the battery
 * trade); the others from memory of data sheets. Cells differ by some per cent.
 */
public enum Cells {
    /** Sealed nickel-cadmium, rested after charging. */
    NICKEL_CADMIUM(1.10, 1.24, 1.27, 1.29, 1.35),
    /** Lead-acid. */
    LEAD_ACID(11.89 / 6, 12.06 / 6, 12.24 / 6, 12.45 / 6, 12.65 / 6),
    /** Alkaline zinc-manganese. */
    ALKALINE(0.95, 1.22, 1.32, 1.42, 1.58),
    /** Lithium-manganese, not rechargeable. */
    LITHIUM(2.0, 2.85, 2.95, 3.0, 3.2);

    private final double emptyVolts;
    private final double quarterVolts;
    private final double halfVolts;
    private final double threeQuartersVolts;
    private final double fullVolts;

    Cells(double emptyVolts, double quarterVolts, double halfVolts, double threeQuartersVolts, double fullVolts) {
        this.emptyVolts = emptyVolts;
        this.quarterVolts = quarterVolts;
        this.halfVolts = halfVolts;
        this.threeQuartersVolts = threeQuartersVolts;
        this.fullVolts = fullVolts;
    }

    /**
     * Open-circuit voltage of one cell [V].
     *
     * @param chargeRatio how full it is, 0 to 1
     * @throws IllegalArgumentException outside 0 to 1
     */
    public double volts(double chargeRatio) {
        if (!(chargeRatio >= 0 && chargeRatio <= 1)) {
            throw new IllegalArgumentException("a charge of " + chargeRatio + "; it is from 0 to 1");
        }
        double[] points = {emptyVolts, quarterVolts, halfVolts, threeQuartersVolts, fullVolts};
        double place = chargeRatio * (points.length - 1);
        int below = Math.min((int) place, points.length - 2);
        return points[below] + (place - below) * (points[below + 1] - points[below]);
    }

    /** Open-circuit voltage over that of a full cell. */
    public double ratio(double chargeRatio) {
        return volts(chargeRatio) / volts(1);
    }
}
