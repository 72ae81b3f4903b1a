package fusetale.explore;

import fusetale.bench.Seen;
import fusetale.circuit.Circuit;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Resistor;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Capacitors that hold a dangerous charge after switching off: more than 60 V d.c., the limit of safety extra-low voltage
 * without ripple (IEC 60364-4-41).
 */
final class Charges {
    /** Above this [V] a charge is spoken of. */
    static final double SAFE_VOLTS = 60;

    private Charges() {}

    /**
     * One charged capacitor.
     *
     * @param part its designator
     * @param volts voltage while the power is on [V]
     * @param joules energy, ½·C·V² at its nominal value [J]
     * @param seconds time to fall below {@link #SAFE_VOLTS} through the resistors straight across it, R·C·ln(V/60 V) [s];
     *     infinite where there is none
     */
    record Charge(String part, double volts, double joules, double seconds) {}

    /** Every electrolytic above {@link #SAFE_VOLTS}, in the order of the circuit. */
    static List<Charge> of(Seen seen) {
        List<Charge> charges = new ArrayList<>();
        for (Part part : seen.circuit().parts()) {
            if (part instanceof Electrolytic c) {
                double volts = Math.abs(seen.meanVolts(c.plus(), c.minus()));
                if (volts > SAFE_VOLTS) {
                    double farads = c.farads().si();
                    double seconds =
                            ohmsAcross(seen.circuit(), c.plus(), c.minus()) * farads * Math.log(volts / SAFE_VOLTS);
                    charges.add(new Charge(c.name(), volts, farads * volts * volts / 2, seconds));
                }
            }
        }
        return charges;
    }

    private static double ohmsAcross(Circuit circuit, Net one, Net two) {
        if (one.equals(two)) {
            return 0;
        }
        double siemens = 0;
        for (Part part : circuit.parts()) {
            if (part instanceof Resistor r && Set.of(one, two).equals(nets(r))) {
                siemens += 1 / r.ohms().si();
            }
        }
        return 1 / siemens;
    }

    private static Set<Net> nets(Resistor r) {
        return r.one().equals(r.two()) ? Set.of(r.one()) : Set.of(r.one(), r.two());
    }
}
