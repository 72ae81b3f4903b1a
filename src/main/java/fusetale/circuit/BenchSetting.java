package fusetale.circuit;

import fusetale.quantity.Quantity;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An arrangement of the bench as a circuit file names it; {@code bench} turns it into deeds.
 *
 * @param name its key in the file
 * @param powerOn whether the mains is connected
 * @param mainsVolts mains voltage where not nominal, r.m.s.
 * @param seriesLampWatts wattage of a lamp in the mains lead, where there is one
 * @param pulledFuses fuses taken out of their clips
 * @param unplugged connectors pulled off
 * @param liftedPins pins unsoldered, {@code BR201.ac1}
 * @param clips clip leads, each between two points
 * @param heldOn drivers held on, by the name of the coil, lamp or logic output
 * @param switches switches by name, true = closed
 * @param charged voltage of capacitors that are charged beforehand, plus or first pin against the other, by name
 * @param pulsed drivers switched on for a while, by the name of the coil, lamp or logic output
 * @param mainsHertz frequency of the mains, or of the source that stands for them, where not the file's
 */
public record BenchSetting(
        String name,
        boolean powerOn,
        @Nullable Quantity mainsVolts,
        @Nullable Quantity seriesLampWatts,
        List<String> pulledFuses,
        List<String> unplugged,
        List<String> liftedPins,
        List<Clip> clips,
        List<String> heldOn,
        Map<String, Boolean> switches,
        Map<String, Quantity> charged,
        Map<String, Quantity> pulsed,
        @Nullable Quantity mainsHertz) {
    /** Highest voltage of the mains, or of the source that stands for them [V]. */
    public static final double MOST_MAINS_VOLTS = 1000;

    /** Largest lamp in the mains lead [W]. */
    public static final double MOST_LAMP_WATTS = 10_000;

    /** Highest voltage of a capacitor that is charged beforehand, either way [V]: the reservoir of a television set holds less. */
    public static final double MOST_CHARGE_VOLTS = 1000;

    /** A shorter pulse [s] ends before a step of the solver is told from a step of the driver. */
    public static final double SHORTEST_PULSE_SECONDS = 1e-4;

    /** A longer one [s] is no pulse: hold it on. */
    public static final double LONGEST_PULSE_SECONDS = 1;

    /** Copies what can change. */
    public BenchSetting {
        pulledFuses = List.copyOf(pulledFuses);
        unplugged = List.copyOf(unplugged);
        liftedPins = List.copyOf(liftedPins);
        clips = List.copyOf(clips);
        heldOn = List.copyOf(heldOn);
        switches = Map.copyOf(switches);
        charged = Map.copyOf(charged);
        pulsed = Map.copyOf(pulsed);
    }

    /**
     * A clip lead.
     *
     * @param from one end: a test point, a net or {@code PART.pin}
     * @param to other end
     */
    public record Clip(String from, String to) {}
}
