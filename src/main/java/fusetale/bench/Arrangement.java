package fusetale.bench;

import fusetale.circuit.BenchSetting;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How the bench is set, checked against its circuit.
 *
 * @param name what to call it: a name of the circuit file or the changes made to one
 * @param powerOn whether the mains is connected and switched on; off means plug out
 * @param mainsVolts r.m.s.
 * @param seriesLampWatts wattage of a lamp in the mains lead; null for none
 * @param pulledFuses fuses taken out
 * @param unplugged connectors pulled off
 * @param liftedPins pins unsoldered
 * @param clips clip leads
 * @param heldOn coils, lamps or logic outputs held on
 * @param switches switches by name, true = closed
 */
public record Arrangement(
        String name,
        boolean powerOn,
        double mainsVolts,
        @Nullable Double seriesLampWatts,
        List<String> pulledFuses,
        List<String> unplugged,
        List<String> liftedPins,
        List<BenchSetting.Clip> clips,
        List<String> heldOn,
        Map<String, Boolean> switches) {
    /** Copies what can change. */
    public Arrangement {
        pulledFuses = List.copyOf(pulledFuses);
        unplugged = List.copyOf(unplugged);
        liftedPins = List.copyOf(liftedPins);
        clips = List.copyOf(clips);
        heldOn = List.copyOf(heldOn);
        switches = Map.copyOf(switches);
    }
}
