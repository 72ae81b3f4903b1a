package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;

/**
 * The two deeds that faults and arrangements share: laying a resistance across two nets, and putting one in series with a
 * pin. Circuit in, circuit out.
 */
public final class Rewiring {
    private Rewiring() {}

    /** Lays {@code ohms} between two nets as a new part named {@code label}. */
    public static Circuit across(Circuit circuit, String label, Net one, Net two, double ohms) {
        return circuit.plus(resistance(label, one, two, ohms));
    }

    /**
     * Puts {@code ohms} in series with a pin of a part: the pin moves to a new net {@code label~}, joined to the old one
     * by a new part named {@code label}.
     */
    public static Circuit inSeries(Circuit circuit, String label, Part part, String pin, double ohms) {
        Net old = part.net(pin);
        Net fresh = new Net(label + "~");
        return circuit.with(part.rewired(pin, fresh)).plus(resistance(label, fresh, old, ohms));
    }

    private static Wire resistance(String label, Net one, Net two, double ohms) {
        return new Wire(
                label, one, two, new Toleranced(new Quantity(ohms, Unit.OHM), Tolerance.EXACT), null, About.NOTHING);
    }
}
