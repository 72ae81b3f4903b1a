package fusetale.bench;

import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.TestPoint;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing to measure: where the leads go and what the meter is set to.
 *
 * @param from name of the point under the red lead
 * @param to name of the point under the black lead
 * @param function the meter's setting
 */
public record Check(String from, String to, MeterFunction function) {
    /**
     * What one would measure everywhere: at each test point d.c. and a.c. volts with the power on, ohms and diode test with
     * both polarities of the leads with the power off.
     */
    public static List<Check> all(Circuit circuit, boolean powered) {
        List<Check> checks = new ArrayList<>();
        for (TestPoint point : circuit.points()) {
            String at = point.name();
            String against = point.against().name();
            if (powered) {
                checks.add(new Check(at, against, MeterFunction.DC_VOLTS));
                checks.add(new Check(at, against, MeterFunction.AC_VOLTS));
            } else {
                checks.add(new Check(at, against, MeterFunction.OHMS));
                checks.add(new Check(against, at, MeterFunction.OHMS));
                checks.add(new Check(at, against, MeterFunction.DIODE_TEST));
                checks.add(new Check(against, at, MeterFunction.DIODE_TEST));
            }
        }
        return checks;
    }

    /** The same points with the leads exchanged. */
    public Check reversed() {
        return new Check(to, from, function);
    }

    /** {@code TP4 to gnd, d.c. volts}. */
    public String words() {
        return from + " to " + to + ", " + function.words();
    }
}
