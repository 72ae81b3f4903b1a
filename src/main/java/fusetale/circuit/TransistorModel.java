package fusetale.circuit;

/**
 * A bipolar transistor: Ebers-Moll with Early voltage and saturation resistances.
 *
 * @param name the model's name in the part files
 * @param polarity NPN or PNP
 * @param saturationAmps transport saturation current IS
 * @param forwardGainRatio current gain forward
 * @param reverseGainRatio current gain in reverse
 * @param earlyVolts Early voltage
 * @param baseOhms base resistance
 * @param collectorOhms collector resistance
 * @param emitterOhms emitter resistance
 * @param collectorFarads collector-base capacitance
 * @param breakdownVolts collector-emitter breakdown with the base at rest
 * @param ratings what it stands
 */
public record TransistorModel(
        String name,
        Polarity polarity,
        double saturationAmps,
        double forwardGainRatio,
        double reverseGainRatio,
        double earlyVolts,
        double baseOhms,
        double collectorOhms,
        double emitterOhms,
        double collectorFarads,
        double breakdownVolts,
        Ratings ratings) {
    /** Which way round. */
    public enum Polarity {
        /** Conducts from collector to emitter. */
        NPN,
        /** Conducts from emitter to collector. */
        PNP
    }

    /** The same transistor with its forward gain multiplied by {@code factor}. */
    public TransistorModel withGainTimes(double factor) {
        return new TransistorModel(
                name,
                polarity,
                saturationAmps,
                forwardGainRatio * factor,
                reverseGainRatio,
                earlyVolts,
                baseOhms,
                collectorOhms,
                emitterOhms,
                collectorFarads,
                breakdownVolts,
                ratings);
    }
}
