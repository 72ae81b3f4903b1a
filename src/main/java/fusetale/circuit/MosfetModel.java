package fusetale.circuit;

/**
 * An enhancement MOSFET: square law with Early voltage, drain resistance and body diode.
 *
 * @param name the model's name in the part files
 * @param channel N or P
 * @param thresholdVolts gate-source threshold, above 0 for both channels
 * @param gateVolts gate-source voltage, above the threshold, at which {@code drainAmps} flow
 * @param drainAmps drain current in saturation at that voltage
 * @param earlyVolts Early voltage, the inverse of the slope in saturation
 * @param drainOhms resistance in series with the drain
 * @param bodySaturationAmps saturation current of the body diode
 * @param gateLeakageOhms gate to source, leakage as a resistance
 * @param gateFarads gate-source capacitance
 * @param drainFarads drain-source capacitance
 * @param breakdownVolts drain-source breakdown
 * @param ratings what it stands
 */
public record MosfetModel(
        String name,
        Channel channel,
        double thresholdVolts,
        double gateVolts,
        double drainAmps,
        double earlyVolts,
        double drainOhms,
        double bodySaturationAmps,
        double gateLeakageOhms,
        double gateFarads,
        double drainFarads,
        double breakdownVolts,
        Ratings ratings) {
    /** Which channel. */
    public enum Channel {
        /** A positive gate turns on. */
        N,
        /** A negative gate turns on. */
        P
    }

    /** The same transistor with another gate leakage [ohm]. */
    public MosfetModel leaking(double ohms) {
        return new MosfetModel(
                name,
                channel,
                thresholdVolts,
                gateVolts,
                drainAmps,
                earlyVolts,
                drainOhms,
                bodySaturationAmps,
                ohms,
                gateFarads,
                drainFarads,
                breakdownVolts,
                ratings);
    }
}
