package fusetale.explore;

import fusetale.aftermath.Surge;
import java.util.Map;

/**
 * One pulse from one moment of the mains cycle. What is not known, or does not happen, is {@link Double#NaN}.
 *
 * @param reachedAmps highest current of the coil
 * @param driverPeakAmps highest current of the driver
 * @param driverSteadyAmps its current over the pulse: the mean, of a MOSFET the r.m.s.
 * @param pullInSeconds after which the current that pulls the plunger in is reached
 * @param storedJoules what the coil stores when it is switched off, ½·L·i²
 * @param takenJoules what coil and driver take from the rail while on
 * @param dipVolts how far the rail falls below what it is at the same moment of the cycle at rest, at most
 * @param peakVolts highest voltage across the driver between switching off and the end of the coil's current
 * @param limit what keeps it from going higher
 * @param limitJoules what that takes up after switching off
 * @param avalancheJoules what the driver takes up in breakdown
 * @param dropOutSeconds from switching off until the current falls to that which holds the plunger
 * @param fuseAmpsSquaredSeconds by fuse, what the pulse adds to its I²t
 * @param clamps by diode or zener that catches the coil's current, its peak and its I²t
 */
public record PulseFigures(
        double reachedAmps,
        double driverPeakAmps,
        double driverSteadyAmps,
        double pullInSeconds,
        double storedJoules,
        double takenJoules,
        double dipVolts,
        double peakVolts,
        Limit limit,
        double limitJoules,
        double avalancheJoules,
        double dropOutSeconds,
        Map<String, Double> fuseAmpsSquaredSeconds,
        Map<String, Surge> clamps) {
    /** Copies the maps. */
    public PulseFigures {
        fuseAmpsSquaredSeconds = Map.copyOf(fuseAmpsSquaredSeconds);
        clamps = Map.copyOf(clamps);
    }

    /**
     * What keeps the voltage across the driver from going higher when the coil is switched off.
     *
     * @param kind in what manner
     * @param part which part; empty where none does
     */
    public record Limit(Kind kind, String part) {
        /** No current, or nothing that carries it on. */
        public static final Limit NONE = new Limit(Kind.NOTHING, "");
    }

    /** How a voltage is limited. */
    public enum Kind {
        /** A diode carries the coil's current on. */
        DIODE,
        /** A zener does. */
        ZENER,
        /** The driver itself does, past its breakdown voltage. */
        BREAKDOWN,
        /** The driver does without breaking down: it has not switched off. */
        STILL_ON,
        /** Nothing that is known. */
        NOTHING
    }
}
