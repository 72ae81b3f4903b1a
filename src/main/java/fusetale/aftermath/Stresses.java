package fusetale.aftermath;

import fusetale.circuit.Capacitor;
import fusetale.circuit.Connector;
import fusetale.circuit.Diode;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.Ratings;
import fusetale.circuit.Resistor;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transformer.Winding;
import fusetale.circuit.Wire;
import fusetale.quantity.Quantity;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Waveforms of a part against its ratings, over one cycle of a periodic state. Figures that are not known give no row. Pure
 * functions: waveforms in, rows out.
 */
public final class Stresses {
    private Stresses() {}

    /**
     * A winding's heating current.
     *
     * @param part the transformer's designator
     * @param amps current of the winding [A], either direction
     */
    public static List<Stress> winding(String part, Winding winding, Waveform amps) {
        return row(part, winding.name(), Strain.WINDING_CURRENT, amps.rms(), rating(winding.ratedAmps()));
    }

    /** A fuse's heating current [A] against its link, and against its marking where that asks for another. */
    public static List<Stress> fuse(Fuse fuse, Waveform amps) {
        double fitted = fuse.fitted().ratedAmps().si();
        double marked = fuse.marked().ratedAmps().si();
        List<Stress> rows = new ArrayList<>(row(fuse.name(), "", Strain.LINK_CURRENT, amps.rms(), fitted));
        if (marked != fitted) {
            rows.addAll(row(fuse.name(), "", Strain.MARKED_CURRENT, amps.rms(), marked));
        }
        return rows;
    }

    /**
     * A diode's mean and peak forward current and its reverse voltage.
     *
     * @param amps current from anode to cathode [A]
     * @param volts anode against cathode [V]
     */
    public static List<Stress> diode(Diode diode, Waveform amps, Waveform volts) {
        Ratings ratings = diode.model().ratings();
        List<Stress> rows = new ArrayList<>();
        rows.addAll(row(diode.name(), "", Strain.AVERAGE_CURRENT, Math.max(0, amps.mean()), ratings.averageAmps()));
        rows.addAll(row(diode.name(), "", Strain.PEAK_CURRENT, Math.max(0, amps.highest()), ratings.surgeAmps()));
        rows.addAll(
                row(diode.name(), "", Strain.REVERSE_VOLTAGE, Math.max(0, -volts.lowest()), ratings.inverseVolts()));
        return rows;
    }

    /**
     * A thyristor's mean and peak current and the voltage it blocks, either way.
     *
     * @param amps current from anode to cathode [A]
     * @param volts anode against cathode [V]
     */
    public static List<Stress> thyristor(Thyristor thyristor, Waveform amps, Waveform volts) {
        Ratings ratings = thyristor.model().ratings();
        List<Stress> rows = new ArrayList<>();
        rows.addAll(row(thyristor.name(), "", Strain.AVERAGE_CURRENT, Math.max(0, amps.mean()), ratings.averageAmps()));
        rows.addAll(row(thyristor.name(), "", Strain.PEAK_CURRENT, Math.max(0, amps.highest()), ratings.surgeAmps()));
        double blocked = Math.max(volts.highest(), -volts.lowest());
        rows.addAll(row(thyristor.name(), "", Strain.VOLTAGE, blocked, ratings.inverseVolts()));
        return rows;
    }

    /**
     * A transistor's or Darlington's mean and peak current and the voltage across it, magnitudes: what a PNP one carries and
     * blocks counts downwards.
     *
     * @param amps current of the collector [A]
     * @param volts collector against emitter [V]
     */
    public static List<Stress> driver(String part, Ratings ratings, Waveform amps, Waveform volts) {
        List<Stress> rows =
                new ArrayList<>(row(part, "", Strain.DRIVER_CURRENT, Math.abs(amps.mean()), ratings.averageAmps()));
        rows.addAll(switching(part, ratings, amps, volts));
        return rows;
    }

    /**
     * A MOSFET's heating and peak current and the voltage across it, magnitudes: its channel is a resistance, and the steady
     * current of its data sheet is what heats it.
     *
     * @param amps current of the drain [A]
     * @param volts drain against source [V]
     */
    public static List<Stress> channel(String part, Ratings ratings, Waveform amps, Waveform volts) {
        List<Stress> rows = new ArrayList<>(row(part, "", Strain.CONDUCTOR_CURRENT, amps.rms(), ratings.averageAmps()));
        rows.addAll(switching(part, ratings, amps, volts));
        return rows;
    }

    private static List<Stress> switching(String part, Ratings ratings, Waveform amps, Waveform volts) {
        double peak = Math.max(amps.highest(), -amps.lowest());
        double blocked = Math.max(volts.highest(), -volts.lowest());
        List<Stress> rows = new ArrayList<>(row(part, "", Strain.PEAK_CURRENT, peak, ratings.surgeAmps()));
        rows.addAll(row(part, "", Strain.VOLTAGE, blocked, ratings.inverseVolts()));
        return rows;
    }

    /**
     * The highest voltage at a regulator's input, either polarity.
     *
     * @param volts input against ground pin [V]
     */
    public static List<Stress> input(String part, Ratings ratings, Waveform volts) {
        double highest = Math.max(volts.highest(), -volts.lowest());
        return row(part, "", Strain.INPUT_VOLTAGE, highest, ratings.inverseVolts());
    }

    /** A resistor's mean dissipation, V²/R, from the voltage across it [V]. */
    public static List<Stress> resistor(Resistor resistor, Waveform volts) {
        double watts = volts.rms() * volts.rms() / resistor.ohms().si();
        return row(
                resistor.name(), "", Strain.POWER, watts, resistor.ratedWatts().si());
    }

    /** A transistor's, Darlington's or regulator's mean dissipation [W] against its ratings. */
    public static List<Stress> dissipation(String part, Ratings ratings, Waveform watts) {
        return row(part, "", Strain.POWER, watts.mean(), ratings.watts());
    }

    /** A capacitor's highest voltage, either polarity [V]. */
    public static List<Stress> capacitor(Capacitor capacitor, Waveform volts) {
        return voltage(capacitor.name(), Math.max(volts.highest(), -volts.lowest()), capacitor.ratedVolts());
    }

    /** An electrolytic's highest voltage, plus against minus [V]. */
    public static List<Stress> electrolytic(Electrolytic capacitor, Waveform volts) {
        return voltage(capacitor.name(), Math.max(0, volts.highest()), capacitor.ratedVolts());
    }

    /** A wire's heating current [A]. */
    public static List<Stress> wire(Wire wire, Waveform amps) {
        return row(wire.name(), "", Strain.CONDUCTOR_CURRENT, amps.rms(), rating(wire.ratedAmps()));
    }

    /** One connector pin's heating current [A]. */
    public static List<Stress> contact(Connector connector, String pin, Waveform amps) {
        return row(connector.name(), pin, Strain.CONDUCTOR_CURRENT, amps.rms(), rating(connector.ratedAmps()));
    }

    /** A lamp's heating voltage [V]. */
    public static List<Stress> lamp(Lamp lamp, Waveform volts) {
        return row(
                lamp.name(), "", Strain.LAMP_VOLTAGE, volts.rms(), lamp.volts().si());
    }

    /** The same rows, the furthest past its rating first; equal ones stay in order. */
    public static List<Stress> worstFirst(List<Stress> stresses) {
        return stresses.stream()
                .sorted(Comparator.comparingDouble(Stress::ratio).reversed())
                .toList();
    }

    private static List<Stress> voltage(String part, double volts, Quantity rated) {
        return row(part, "", Strain.VOLTAGE, volts, rated.si());
    }

    private static double rating(@Nullable Quantity rated) {
        return rated == null ? Double.POSITIVE_INFINITY : rated.si();
    }

    private static List<Stress> row(String part, String place, Strain strain, double value, double limit) {
        return limit == Double.POSITIVE_INFINITY ? List.of() : List.of(new Stress(part, place, strain, value, limit));
    }
}
