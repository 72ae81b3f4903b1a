package fusetale.match;

import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.bench.Reading;
import fusetale.circuit.MeterFunction;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What one board lets expect of one ask.
 *
 * @param kind what it shows
 * @param middle on the {@link Axis}; 0 where it is no figure
 * @param slope how far the middle moves over one place of the amount [axis]; 0 where there is no amount
 * @param ownVariance variance that nothing else shares: meter, model, what is not worked out [axis²]
 * @param reading the reading behind it; null where it is none
 * @param sight what is seen; null where it is a reading
 */
record Expectation(
        Kind kind,
        double middle,
        double slope,
        double ownVariance,
        @Nullable Reading reading,
        @Nullable Observation sight) {
    /** What a board shows. */
    enum Kind {
        FIGURE,
        OVER,
        SIGHT,
        /** Not worked out, or the machine does not come to rest. */
        UNKNOWN
    }

    static final Expectation NONE = new Expectation(Kind.UNKNOWN, 0, 0, 0, null, null);

    /** How far models of junctions and transformers may be off, of a reading (judgement). */
    private static final double MODEL_RATIO = 0.03;
    /** Beyond this a reading has moved, and the spread of healthy machines says less of it [axis]. */
    private static final double MOVED = 0.05;

    private static final double MOVED_SPREAD = 0.04;
    private static final double STILL_SPREAD = 0.005;
    /**
     * Of what a healthy machine shows, what tolerances leave where a fault has voltages cancel that add up in it: a doubler with one diode
     * reversed has some 20 mV of 240 V (judgement).
     */
    private static final double CANCELLED_RATIO = 2e-4;

    private static final Set<MeterFunction> VOLTS = EnumSet.of(MeterFunction.DC_VOLTS, MeterFunction.AC_VOLTS);

    /** While only the middle of a range of amounts is known [axis, of what has moved]. */
    private static final double UNKNOWN_AMOUNT = 0.5;

    private static final double LEAST_UNKNOWN_AMOUNT = 0.1;

    /**
     * Of a board.
     *
     * @param lower the board with the next lower amount; null where there is none or it is not known
     * @param higher the same with the next higher
     * @param varies whether it has an amount that varies
     */
    static Expectation of(
            Wanted wanted, Trial trial, Trial healthy, @Nullable Trial lower, @Nullable Trial higher, boolean varies) {
        Trial.Shows shows =
                trial.in(wanted.bench()).filter(Trial.Shows::solvable).orElse(null);
        if (shows == null) {
            return NONE;
        }
        if (!(wanted.ask() instanceof Ask.Metered metered)) {
            Observation seen = shows.sights().get(wanted.sight());
            return seen == null ? NONE : new Expectation(Kind.SIGHT, 0, 0, 0, null, seen);
        }
        Check check = metered.check();
        Reading reading = shows.readings().get(check);
        if (reading == null) {
            return NONE;
        }
        if (reading.overRange()) {
            return new Expectation(Kind.OVER, 0, 0, 0, reading, null);
        }
        double t = Axis.at(check.function(), reading.value());
        Optional<Reading> good = figure(wanted, check, healthy);
        double moved = good.map(h -> Math.abs(t - Axis.at(check.function(), h.value())))
                .orElse(1.0);
        double meter = Axis.width(check.function(), reading.value(), reading.halfWidth() / Math.sqrt(3));
        double model = Axis.width(check.function(), reading.value(), MODEL_RATIO * reading.value());
        double transfer = moved > MOVED ? MOVED_SPREAD : STILL_SPREAD;
        double left = moved > MOVED && VOLTS.contains(check.function())
                ? good.map(h -> Axis.width(check.function(), reading.value(), CANCELLED_RATIO * h.value()))
                        .orElse(0.0)
                : 0;
        double variance = meter * meter + model * model + transfer * transfer + left * left;
        if (!varies) {
            return new Expectation(Kind.FIGURE, t, 0, variance, reading, null);
        }
        Optional<Double> slope = slope(wanted, check, t, lower, higher);
        double unknown = slope.isPresent() || moved < MOVED
                ? 0
                : Math.max(LEAST_UNKNOWN_AMOUNT, UNKNOWN_AMOUNT * Math.min(moved, 2));
        return new Expectation(Kind.FIGURE, t, slope.orElse(0.0), variance + unknown * unknown, reading, null);
    }

    private static Optional<Double> slope(
            Wanted wanted, Check check, double t, @Nullable Trial lower, @Nullable Trial higher) {
        Optional<Double> below = neighbour(wanted, check, lower);
        Optional<Double> above = neighbour(wanted, check, higher);
        if (below.isPresent() && above.isPresent()) {
            return Optional.of((above.get() - below.get()) / 2);
        }
        return above.map(a -> a - t).or(() -> below.map(b -> t - b));
    }

    private static Optional<Double> neighbour(Wanted wanted, Check check, @Nullable Trial trial) {
        return trial == null
                ? Optional.empty()
                : figure(wanted, check, trial).map(r -> Axis.at(check.function(), r.value()));
    }

    private static Optional<Reading> figure(Wanted wanted, Check check, Trial trial) {
        return trial.in(wanted.bench())
                .map(Trial.Shows::readings)
                .map((Map<Check, Reading> r) -> r.get(check))
                .filter(r -> !r.overRange());
    }
}
