package fusetale.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Models of parts without junctions by name, in the order of their files.
 *
 * @param lamps lamps
 * @param coils solenoids with one winding
 * @param electrolytics classes of electrolytic capacitors
 * @param capacitors classes of capacitors without polarity
 * @param wires wires by gauge
 * @param traces board traces by width
 * @param connectors classes of connectors
 * @param clips classes of fuse clips
 */
public record PassiveLibrary(
        Map<String, LampModel> lamps,
        Map<String, CoilModel> coils,
        Map<String, ElectrolyticModel> electrolytics,
        Map<String, CapacitorModel> capacitors,
        Map<String, ConductorModel> wires,
        Map<String, ConductorModel> traces,
        Map<String, ConnectorModel> connectors,
        Map<String, ClipModel> clips) {
    /** Nothing at all. */
    static final PassiveLibrary EMPTY =
            new PassiveLibrary(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of());

    /** Copies what can change, keeping its order. */
    public PassiveLibrary {
        lamps = PartLibrary.ordered(lamps);
        coils = PartLibrary.ordered(coils);
        electrolytics = PartLibrary.ordered(electrolytics);
        capacitors = PartLibrary.ordered(capacitors);
        wires = PartLibrary.ordered(wires);
        traces = PartLibrary.ordered(traces);
        connectors = PartLibrary.ordered(connectors);
        clips = PartLibrary.ordered(clips);
    }

    /** Wires and traces together. */
    Map<String, ConductorModel> conductors() {
        Map<String, ConductorModel> all = new LinkedHashMap<>(wires);
        all.putAll(traces);
        return all;
    }

    /** Names by section. */
    Map<String, List<String>> names() {
        Map<String, List<String>> names = new LinkedHashMap<>();
        names.put("lamps", names(lamps));
        names.put("coils", names(coils));
        names.put("electrolytics", names(electrolytics));
        names.put("capacitors", names(capacitors));
        names.put("wires", names(wires));
        names.put("traces", names(traces));
        names.put("connectors", names(connectors));
        names.put("clips", names(clips));
        return names;
    }

    private static List<String> names(Map<String, ?> models) {
        return new ArrayList<>(models.keySet());
    }
}
