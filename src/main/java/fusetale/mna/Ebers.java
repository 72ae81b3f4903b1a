package fusetale.mna;

/**
 * The equations that {@link BipolarLaw} and {@link DarlingtonLaw} share: one transport exponential, two gains, Early's
 * widening 1 − vbc/VA.
 *
 * @param transport IS·(exp(v/VT) − 1)
 * @param forwardGain βF
 * @param reverseGain βR
 * @param perEarlyVolt 1/VA [1/V]
 */
record Ebers(Exponential transport, double forwardGain, double reverseGain, double perEarlyVolt) {
    /** A collector junction forward-biased beyond reason must not turn the sign of the transport current. */
    private static final double LEAST_WIDENING = 0.5;

    double forward(double volts) {
        return transport.amps(volts);
    }

    double slope(double amps) {
        return transport.siemens(amps);
    }

    /** How far [V] a junction may go without its slope doubling. */
    double reachVolts(double volts) {
        return transport.reachVolts(volts);
    }

    double widening(double collectorVolts) {
        return Math.max(1 - collectorVolts * perEarlyVolt, LEAST_WIDENING);
    }

    /** −d widening / d vbc. */
    double wideningSlope(double collectorVolts) {
        return 1 - collectorVolts * perEarlyVolt > LEAST_WIDENING ? perEarlyVolt : 0;
    }

    double limited(double proposedVolts, double presentVolts) {
        return transport.limited(proposedVolts, presentVolts);
    }
}
