package fusetale.report.drawing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A part, or one pin of a connector, on the sheet.
 *
 * @param name designator; {@code J1.3} of a pin of a connector
 * @param kind what it is, in words: {@code fuse}
 * @param value value or rating in words; may be empty
 * @param bounds what its symbol covers, leads included, labels not
 * @param solids what of {@code bounds} its symbol really covers, leads left out
 * @param strokes its symbol, back to front
 * @param labels its name, its value and what stands inside it
 * @param ports ends of its leads by pin; a controller also has {@code check 1} and so on
 * @param legs where marks go: the empty text for the whole part, else the place of a fault, as {@code sol} of a winding
 */
public record DrawnPart(
        String name,
        String kind,
        String value,
        Box bounds,
        List<Box> solids,
        List<Stroke> strokes,
        List<Label> labels,
        Map<String, Port> ports,
        Map<String, Leg> legs) {
    /** Copies what can change. */
    public DrawnPart {
        solids = List.copyOf(solids);
        strokes = List.copyOf(strokes);
        labels = List.copyOf(labels);
        ports = Collections.unmodifiableMap(new LinkedHashMap<>(ports));
        legs = Collections.unmodifiableMap(new LinkedHashMap<>(legs));
    }

    /** The leg of a fault's place, or the whole part where it has none of that name. */
    public Leg leg(String place) {
        Leg whole = legs.get("");
        Leg leg = legs.getOrDefault(place, whole);
        if (leg == null) {
            throw new IllegalStateException(name + " has no leg to mark");
        }
        return leg;
    }

    /** The symbol with its labels: what nothing else may touch. */
    public Box extent() {
        Box all = bounds;
        for (Label label : labels) {
            all = all.with(label.bounds());
        }
        return all;
    }

    /** With more labels. */
    DrawnPart labelled(List<Label> more) {
        return new DrawnPart(name, kind, value, bounds, solids, strokes, more, ports, legs);
    }

    DrawnPart moved(double byX, double byY) {
        Outline.Place place = Placement.by(byX, byY);
        Map<String, Port> movedPorts = new LinkedHashMap<>();
        ports.forEach((pin, port) -> movedPorts.put(pin, port.moved(byX, byY)));
        Map<String, Leg> movedLegs = new LinkedHashMap<>();
        legs.forEach((where, leg) -> movedLegs.put(where, leg.mapped(place)));
        return new DrawnPart(
                name,
                kind,
                value,
                bounds.moved(byX, byY),
                solids.stream().map(b -> b.moved(byX, byY)).toList(),
                strokes.stream().map(s -> s.mapped(place)).toList(),
                labels.stream().map(l -> l.moved(byX, byY)).toList(),
                movedPorts,
                movedLegs);
    }
}
