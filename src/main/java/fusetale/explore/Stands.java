package fusetale.explore;

import fusetale.circuit.Circuit;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Part;
import fusetale.circuit.Ratings;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transistor;
import fusetale.circuit.Zener;
import java.util.Optional;

/**
 * What a part stands that switches a coil or catches its current, from its model; infinite where that is not known.
 *
 * @param steadyAmps current for good: a mean, of a MOSFET an r.m.s. one
 * @param peakAmps current of one half-cycle of 60 Hz
 * @param pulseAmpsSquaredSeconds I²t of less than a half-cycle
 * @param avalancheJoules energy of one pulse in breakdown
 */
public record Stands(double steadyAmps, double peakAmps, double pulseAmpsSquaredSeconds, double avalancheJoules) {
    private static final double UNKNOWN = Double.POSITIVE_INFINITY;

    /** Nothing is known. */
    static final Stands NOT_KNOWN = new Stands(UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN);

    /** Of the part of this name in a circuit, or as drawn where a fault took it to pieces. */
    static Stands of(Circuit circuit, Part drawn) {
        return ratings(circuit.part(drawn.name()).orElse(drawn))
                .map(r -> new Stands(r.averageAmps(), r.surgeAmps(), r.pulseAmpsSquaredSeconds(), r.avalancheJoules()))
                .orElse(NOT_KNOWN);
    }

    /** Whether it is told what it stands in breakdown. */
    boolean avalancheKnown() {
        return Double.isFinite(avalancheJoules);
    }

    private static Optional<Ratings> ratings(Part part) {
        if (part instanceof Transistor t) {
            return Optional.of(t.model().ratings());
        } else if (part instanceof Darlington d) {
            return Optional.of(d.model().ratings());
        } else if (part instanceof Mosfet m) {
            return Optional.of(m.model().ratings());
        } else if (part instanceof Thyristor t) {
            return Optional.of(t.model().ratings());
        } else if (part instanceof Diode d) {
            return Optional.of(d.model().ratings());
        }
        return part instanceof Zener z ? Optional.of(z.model().ratings()) : Optional.empty();
    }
}
