package fusetale.fault;

import fusetale.circuit.Circuit;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Rewiring;
import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.Optional;

/**
 * One part about to fail in one way, with the deeds its kind may do to the circuit.
 *
 * @param <P> its kind
 * @param circuit with the faults applied so far
 * @param healthy the part as drawn
 * @param now the part with the faults applied so far
 * @param fault what is to happen
 * @param amountSi how much there is after it, SI; the usual amount where the fault says none, 0 where it takes none
 */
record Failing<P>(Circuit circuit, P healthy, P now, Fault fault, double amountSi) {
    /** Resistance [Ω] of what is open; finite, so that every supposition stays solvable. */
    static final double OPEN_OHMS = 100e6;

    /** Resistance [Ω] of what is shorted. */
    static final double SHORT_OHMS = 0.020;

    /** From here on [Ω] a contact is not a fault's doing: an arrangement has taken it apart, and it stays apart. */
    private static final double APART_OHMS = 1e9;

    /** Whether an arrangement took a contact apart: a connector that is off, a fuse that is pulled. */
    static boolean apart(double ohms) {
        return ohms > APART_OHMS;
    }

    /** The circuit with the part replaced by another of its name. */
    Circuit replacedBy(Part other) {
        return circuit.with(other);
    }

    /** The circuit with {@link #amountSi} ohms laid across two nets. */
    Circuit across(Net one, Net two) {
        return Rewiring.across(circuit, label(), one, two, amountSi);
    }

    /** The circuit with two pins of a part exchanged. */
    Circuit exchanged(Part part, String one, String two) {
        return replacedBy(part.rewired(one, part.net(two)).rewired(two, part.net(one)));
    }

    /** The circuit with {@code ohms} in series with a pin of {@code part}. */
    Circuit inSeries(Part part, String pin, double ohms) {
        return Rewiring.inSeries(circuit, label(), part, pin, ohms);
    }

    /** {@link #amountSi} as an exact value in a unit. */
    Toleranced exactly(Unit unit) {
        return new Toleranced(new Quantity(amountSi, unit), Tolerance.EXACT);
    }

    /** {@link #amountSi} ohms. */
    Quantity ohms() {
        return new Quantity(amountSi, Unit.OHM);
    }

    /** A name no part of the circuit has: {@code R204~open}, {@code BR201.leg1~short}. */
    String label() {
        String label = fault.target() + "~" + fault.mode().compact();
        while (circuit.part(label).isPresent()) {
            label += "~";
        }
        return label;
    }

    /** Whether a net came about where something is open inside a part: see {@link #label} and {@link Rewiring#inSeries}. */
    static boolean behindBreak(Net net) {
        return net.name().endsWith("~") && path(net.name(), FailureMode.OPEN).isPresent();
    }

    /** What failed where a part or net has a name by {@link #label}; empty where it has none, or failed in another way. */
    static Optional<String> path(String name, FailureMode mode) {
        int end = name.length();
        while (end > 0 && name.charAt(end - 1) == '~') {
            end--;
        }
        String label = name.substring(0, end);
        String how = "~" + mode.compact();
        return label.endsWith(how) ? Optional.of(label.substring(0, label.length() - how.length())) : Optional.empty();
    }

    /** What to throw where a kind is handed a mode it does not list. */
    IllegalStateException unlisted() {
        return new IllegalStateException(fault + " is not listed for its kind");
    }
}
