package fusetale.desk.bars;

import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Compared;
import fusetale.explore.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * All test points of a circuit, by function of the meter, in the order of the circuit.
 *
 * @param byFunction rows of each function that was read; never an empty list
 */
public record BarRows(Map<MeterFunction, List<BarRow>> byFunction) {
    /** Nothing read. */
    public static final BarRows NONE = new BarRows(Map.of());

    /** Copies the map, functions in the order of the meter's switch. */
    public BarRows {
        Map<MeterFunction, List<BarRow>> copy = new EnumMap<>(MeterFunction.class);
        byFunction.forEach((function, rows) -> copy.put(function, List.copyOf(rows)));
        byFunction = copy;
    }

    /** Rows of some readings of one circuit, points that are none of its test points last. */
    public static BarRows of(Circuit circuit, List<Compared> readings) {
        List<String> order = circuit.points().stream().map(p -> p.name()).toList();
        List<Compared> sorted = new ArrayList<>(readings);
        sorted.sort(Comparator.comparingInt(r -> rank(order, r)));
        Map<MeterFunction, List<BarRow>> rows = new EnumMap<>(MeterFunction.class);
        for (Compared reading : sorted) {
            rows.computeIfAbsent(reading.check().function(), f -> new ArrayList<>())
                    .add(BarRow.of(circuit, reading));
        }
        return new BarRows(rows);
    }

    /** Rows of the outcomes of one supposition: with the power on, with the power off. */
    public static BarRows of(List<Outcome> outcomes) {
        List<Compared> readings = new ArrayList<>();
        outcomes.forEach(o -> readings.addAll(o.readings()));
        return outcomes.isEmpty() ? NONE : of(outcomes.get(0).question().healthy(), readings);
    }

    /** The functions that were read, in the order of the meter's switch. */
    public List<MeterFunction> functions() {
        return List.copyOf(byFunction.keySet());
    }

    /** Rows of one function; empty where it was not read. */
    public List<BarRow> of(MeterFunction function) {
        return byFunction.getOrDefault(function, List.of());
    }

    /** Place of the point under the red lead, or of that under the black one where the leads are exchanged. */
    private static int rank(List<String> order, Compared reading) {
        int red = order.indexOf(reading.check().from());
        int black = order.indexOf(reading.check().to());
        return red >= 0 ? 2 * red : black >= 0 ? 2 * black + 1 : 2 * order.size();
    }
}
