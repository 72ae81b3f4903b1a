package fusetale.report.drawing;

import fusetale.circuit.Circuit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The schematic of a machine, free of any toolkit. Lengths in px at 100 %, x to the right, y downwards, the sheet's top left
 * at (0, 0). Symbols and wires stand on a grid of 2 px; all wires are level or upright. The same circuit gives the same plan.
 *
 * @param width of the sheet
 * @param height of the sheet
 * @param sections parts of the sheet with a heading
 * @param parts parts in the order of the file
 * @param nets nets with a wire or flag
 * @param points test points in the order of the file
 * @param connectors connectors in the order of the file
 */
public record DrawingPlan(
        double width,
        double height,
        List<Section> sections,
        List<DrawnPart> parts,
        List<DrawnNet> nets,
        List<DrawnPoint> points,
        List<DrawnConnector> connectors) {
    /** Copies the lists. */
    public DrawingPlan {
        sections = List.copyOf(sections);
        parts = List.copyOf(parts);
        nets = List.copyOf(nets);
        points = List.copyOf(points);
        connectors = List.copyOf(connectors);
    }

    /** The drawing of a machine as built, symbols after a standard. */
    public static DrawingPlan of(Circuit circuit, SymbolStyle style) {
        return new Draughtsman(circuit, style).plan();
    }

    /** Parts and pins of connectors: all that has a symbol. */
    public Stream<DrawnPart> symbols() {
        return Stream.concat(parts.stream(), connectors.stream().flatMap(c -> c.contacts().stream()));
    }

    /** The part, or pin of a connector, of a name. */
    public Optional<DrawnPart> symbol(String name) {
        return symbols().filter(p -> p.name().equals(name)).findFirst();
    }

    /** The net of a name. */
    public Optional<DrawnNet> net(String name) {
        return nets.stream().filter(n -> n.net().equals(name)).findFirst();
    }
}
