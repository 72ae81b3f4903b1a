package fusetale.explore;

import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Connector;
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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    private final Circuit before;
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
     * @param before the healthy machine as arranged
     * @param nothingAmps currents up to this are none [A]
     * @param nothingVolts voltages up to this are none [V]
     */
    Untouched(Circuit before, State state, double nothingAmps, double nothingVolts) {
        this.before = before;
        this.state = state;
        this.nothingAmps = nothingAmps;
        this.nothingVolts = nothingVolts;
    }

    /** Whether the state stays as it is in {@code after}, the machine as supposed on the same bench. */
    boolean by(Supposition supposition, Circuit after) {
        if (!supposition.swaps().isEmpty() || !before.mains().equals(after.mains())) {
            return false;
        }
        boolean opens = supposition.faults().stream().allMatch(f -> OPENING.contains(f.mode()));
        Map<String, Part> old = new HashMap<>();
        before.parts().forEach(p -> old.put(p.name(), p));
        Set<Net> nets = before.nets();
        for (Part part : after.parts()) {
            Part was = old.remove(part.name());
            if (part.equals(was)) {
                continue;
            }
            boolean stays = was == null ? laidIn(part, nets) : changed(was, part, nets, opens);
            if (!stays) {
                return false;
            }
        }
        return old.isEmpty() && contacts(after, opens);
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
    List<Branch> branches(Circuit after) {
        List<Branch> branches = new ArrayList<>();
        Set<Net> nets = before.nets();
        for (Part part : after.parts()) {
            Part was = before.part(part.name()).orElse(null);
            if (part.equals(was)) {
                continue;
            }
            if (was != null) {
                changedPins(was, part, nets, branches);
            } else if (part instanceof Wire w && nets.contains(w.one()) && nets.contains(w.two())) {
                double volts = state.volts(w.one(), w.two());
                branches.add(new Branch(w.one(), w.two(), volts / w.ohms().si(), volts));
            }
        }
        for (int k = 0; k < before.connectors().size(); k++) {
            Connector was = before.connectors().get(k);
            List<Connector.Contact> now = after.connectors().get(k).pins();
            for (int p = 0; p < now.size(); p++) {
                if (!now.get(p).equals(was.pins().get(p))) {
                    double amps = state.amps(was.name() + "." + now.get(p).label());
                    branches.add(new Branch(now.get(p).board(), now.get(p).harness(), amps, 0));
                }
            }
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

    private boolean contacts(Circuit after, boolean opens) {
        for (int k = 0; k < before.connectors().size(); k++) {
            Connector was = before.connectors().get(k);
            Connector now = after.connectors().get(k);
            for (int p = 0; p < was.pins().size() && !was.equals(now); p++) {
                Connector.Contact one = was.pins().get(p);
                boolean same = one.equals(now.pins().get(p));
                String name = was.name() + "." + one.label();
                if (!same && !(opens && state.amps(name) <= nothingAmps)) {
                    return false;
                }
            }
        }
        return true;
    }
}
