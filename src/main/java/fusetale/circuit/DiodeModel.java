package fusetale.circuit;

/**
 * A junction: forward i = IS·(exp(v/(N·VT)) − 1) behind a series resistance, with a capacitance and a reverse breakdown.
 *
 * @param name the model's name in the part files
 * @param saturationAmps IS
 * @param idealityRatio N
 * @param seriesOhms series resistance
 * @param junctionFarads junction capacitance
 * @param leakageOhms linear reverse leakage
 * @param breakdownVolts reverse voltage at {@code breakdownAmps}
 * @param breakdownAmps current at which breakdown is stated
 * @param breakdownOhms differential resistance in breakdown
 * @param ratings what it stands
 */
public record DiodeModel(
        String name,
        double saturationAmps,
        double idealityRatio,
        double seriesOhms,
        double junctionFarads,
        double leakageOhms,
        double breakdownVolts,
        double breakdownAmps,
        double breakdownOhms,
        Ratings ratings) {
    /**
     * The same junction with its forward voltage at every current multiplied: of v = N·VT·ln(i/IS + 1) + i·R both terms are
     * linear in N and R.
     */
    public DiodeModel withForwardVoltsTimes(double ratio) {
        return new DiodeModel(
                name,
                saturationAmps,
                idealityRatio * ratio,
                seriesOhms * ratio,
                junctionFarads,
                leakageOhms,
                breakdownVolts,
                breakdownAmps,
                breakdownOhms,
                ratings);
    }

    /** The same junction with another breakdown voltage. */
    public DiodeModel withBreakdownVolts(double volts) {
        return new DiodeModel(
                name,
                saturationAmps,
                idealityRatio,
                seriesOhms,
                junctionFarads,
                leakageOhms,
                volts,
                breakdownAmps,
                breakdownOhms,
                ratings);
    }
}
