package fusetale.match;

import fusetale.circuit.MeterFunction;

/**
 * The axis readings are compared on: asinh(y / y0), straight near zero, logarithmic far from it, the sign kept. A volt more
 * or less means little at 200 V and much at 0 V; spreads become nearly normal.
 */
final class Axis {
    /** 50 mV, 0.5 Ω, 10 mA: below it readings are as good as nothing. */
    private static final double NEAR_ZERO_VOLTS = 0.05;

    private static final double NEAR_ZERO_OHMS = 0.5;
    private static final double NEAR_ZERO_AMPS = 0.01;

    /** From here on the 1 below the root is less than rounding, and the square of the largest figures would overflow. */
    private static final double LARGE = 1e8;

    private Axis() {}

    static double nearZero(MeterFunction function) {
        return switch (function) {
            case OHMS, CONTINUITY -> NEAR_ZERO_OHMS;
            case DC_AMPS -> NEAR_ZERO_AMPS;
            default -> NEAR_ZERO_VOLTS;
        };
    }

    static double at(MeterFunction function, double si) {
        double x = Math.abs(si) / nearZero(function);
        double t = x > LARGE ? Math.log(x) + Math.log(2) : Math.log(x + Math.sqrt(x * x + 1));
        return si < 0 ? -t : t;
    }

    static double back(MeterFunction function, double t) {
        return nearZero(function) * Math.sinh(t);
    }

    /** How wide a small spread of a value is on the axis. */
    static double width(MeterFunction function, double si, double spreadSi) {
        return spreadSi / Math.hypot(si, nearZero(function));
    }
}
