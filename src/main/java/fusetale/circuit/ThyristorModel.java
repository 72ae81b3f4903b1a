package fusetale.circuit;

/**
 * A thyristor by the figures of its data sheet.
 *
 * @param name the model's name in the part files
 * @param triggerAmps gate trigger current
 * @param triggerVolts gate trigger voltage at that current
 * @param gateOhms resistance inside from gate to cathode
 * @param latchingAmps anode current that keeps it on when the gate lets go
 * @param holdingAmps anode current below which it turns off
 * @param thresholdVolts threshold voltage of the on-state
 * @param slopeOhms slope resistance of the on-state
 * @param leakageOhms off-state leakage as a resistance
 * @param farads anode-cathode capacitance
 * @param breakdownVolts breakover forward and breakdown in reverse
 * @param turnOffSeconds turn-off time
 * @param ratings what it stands
 */
public record ThyristorModel(
        String name,
        double triggerAmps,
        double triggerVolts,
        double gateOhms,
        double latchingAmps,
        double holdingAmps,
        double thresholdVolts,
        double slopeOhms,
        double leakageOhms,
        double farads,
        double breakdownVolts,
        double turnOffSeconds,
        Ratings ratings) {
    /** Far above what these machines carry [A]: nothing latches it. */
    private static final double NEVER_AMPS = 1e4;

    /** The same thyristor that conducts only while its gate is driven. */
    public ThyristorModel withoutLatch() {
        return new ThyristorModel(
                name,
                triggerAmps,
                triggerVolts,
                gateOhms,
                NEVER_AMPS,
                NEVER_AMPS,
                thresholdVolts,
                slopeOhms,
                leakageOhms,
                farads,
                breakdownVolts,
                turnOffSeconds,
                ratings);
    }
}
