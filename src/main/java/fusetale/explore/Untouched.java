package fusetale.explore;

import fusetale.circuit.Capacitor;
import fusetale.circuit.Coil;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import fusetale.circuit.Resistor;
import fusetale.circuit.Switch;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transistor;
import fusetale.circuit.Wire;
import fusetale.circuit.Zener;
import fusetale.fault.FailureMode;
import fusetale.fault.Supposition;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Whether a supposition leaves a known state of a machine as it is. A state of the healthy machine solves the equations of
 * the faulty one too, where every branch that changed carries no current before and has no reason to carry one after: what
 * opens where nothing flows, what is laid across points of one voltage, what changes its value where there is neither.
 */
final class Untouched {
    /** Modes that take away paths for a current and add none. */
    private static final Set<FailureMode> OPENING = Set.of(
            FailureMode.OPEN,
            FailureMode.PARTLY_OPEN,
            FailureMode.BLOWN,
            FailureMode.MISSING,
            FailureMode.LOOSE,
            FailureMode.BURNT,
            FailureMode.CRACKED_JOINT,
            FailureMode.STUCK_OFF);

    private final State state;
    private final double nothingAmps;
    private final double nothingVolts;

    /** The state: largest currents and voltages over a cycle. */
    interface State {
        /** Largest current [A] of everything of a part or contact; infinite where it is not known. */
        double amps(String part);

        /** Largest voltage [V] between two nets, either way; infinite where it is not known. */
        double volts(Net one, Net two);
    }

    /**
     * For one state.
     *
     * @param nothingAmps currents up to this are none [A]
     * @param nothingVolts voltages up to this are none [V]
     */
    Untouched(State state, double nothingAmps, double nothingVolts) {
        this.state = state;
        this.nothingAmps = nothingAmps;
        this.nothingVolts = nothingVolts;
    }

    /** Whether the state stays as it is in the machine as supposed on the same bench. */
    boolean by(Supposition supposition, Changes changes) {
        if (!supposition.swaps().isEmpty() || changes.otherMains()) {
            return false;
        }
        boolean opens = supposition.faults().stream().allMatch(f -> OPENING.contains(f.mode()));
        for (Changes.OfPart part : changes.parts()) {
            Part was = part.was();
            Part is = part.is();
            boolean stays =
                    is != null && (was == null ? laidIn(is, changes.nets()) : changed(was, is, changes.nets(), opens));
            if (!stays) {
                return false;
            }
        }
        return changes.contacts().stream().allMatch(c -> opens && state.amps(c.name()) <= nothingAmps);
    }

    /**
     * A branch that changed, with the little it carried or carries now.
     *
     * @param one its one end, in the machine as supposed
     * @param two its other end
     * @param amps largest current [A]
     * @param volts largest voltage across it before [V]
     */
    record Branch(Net one, Net two, double amps, double volts) {}

    /**
     * What changed, for a closer look: next to nothing through the insulation of an open switch still lifts a point that the
     * supposition has left hanging.
     */
    List<Branch> branches(Changes changes) {
        List<Branch> branches = new ArrayList<>();
        for (Changes.OfPart part : changes.parts()) {
            Part was = part.was();
            Part is = part.is();
            if (was != null && is != null) {
                changedPins(was, is, changes.nets(), branches);
            } else if (is instanceof Wire w
                    && changes.nets().contains(w.one())
                    && changes.nets().contains(w.two())) {
                double volts = state.volts(w.one(), w.two());
                branches.add(new Branch(w.one(), w.two(), volts / w.ohms().si(), volts));
            }
        }
        for (Changes.OfContact contact : changes.contacts()) {
            double amps = state.amps(contact.name());
            branches.add(new Branch(contact.is().board(), contact.is().harness(), amps, 0));
        }
        return branches;
    }

    /** A part that kept its nets is one branch a pin; where a pin moved, the branch lies between its old net and the new. */
    private void changedPins(Part was, Part now, Set<Net> nets, List<Branch> branches) {
        double amps = state.amps(was.name());
        boolean moved = now.pins().stream().anyMatch(p -> !nets.contains(p.net()));
        Net first = now.pins().get(0).net();
        for (int k = 0; k < now.pins().size(); k++) {
            Net old = was.pins().get(k).net();
            Net fresh = now.pins().get(k).net();
            if (moved && !fresh.equals(old)) {
                branches.add(new Branch(fresh, old, amps, 0));
            } else if (!moved && k > 0) {
                branches.add(new Branch(first, fresh, amps, state.volts(first, fresh)));
            }
        }
    }

    /** A resistance laid in: across two nets that were there, or before a pin that a part was moved to. */
    private boolean laidIn(Part part, Set<Net> nets) {
        if (!(part instanceof Wire wire)) {
            return false;
        }
        boolean across = nets.contains(wire.one()) && nets.contains(wire.two());
        // one end on a new net: in series with a pin, whose part is asked for its current
        return !across || state.volts(wire.one(), wire.two()) / wire.ohms().si() <= nothingAmps;
    }

    private boolean changed(Part was, Part now, Set<Net> nets, boolean opens) {
        if (!(state.amps(was.name()) <= nothingAmps)) {
            return false;
        }
        boolean moved = now.pins().stream().anyMatch(p -> !nets.contains(p.net()));
        return moved || (passive(was) && (opens || withoutVolts(was)));
    }

    private boolean withoutVolts(Part part) {
        List<Pin> pins = part.pins();
        Net first = pins.get(0).net();
        return pins.stream().allMatch(p -> state.volts(first, p.net()) <= nothingVolts);
    }

    /** What gives nothing of its own: without a current and without a voltage it stays so whatever its values. */
    private static boolean passive(Part part) {
        return part instanceof Resistor
                || part instanceof Wire
                || part instanceof Capacitor
                || part instanceof Electrolytic
                || part instanceof Fuse
                || part instanceof Switch
                || part instanceof Lamp
                || part instanceof Coil
                || part instanceof DualCoil
                || semiconductor(part);
    }

    private static boolean semiconductor(Part part) {
        return part instanceof Diode
                || part instanceof Zener
                || part instanceof Transistor
                || part instanceof Darlington
                || part instanceof Mosfet
                || part instanceof Thyristor;
    }
}
