package fusetale.explore;

import fusetale.circuit.Circuit;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transistor;
import fusetale.circuit.Zener;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Who switches a coil or lamp, found on the drawing: the transistor whose collector (drain, anode), or the logic output,
 * that conductors join to one of its ends.
 *
 * @param driven the coil or lamp
 * @param railPin name of its pin at the other end
 * @param driver what switches it
 * @param upper driver's pin at the coil: collector, drain, anode, out
 * @param lower driver's other pin
 * @param clamps diodes and zeners at the driver's end of the coil
 */
record Switching(Part driven, String railPin, Part driver, String upper, String lower, List<Part> clamps) {
    /** Copies the list. */
    Switching {
        clamps = List.copyOf(clamps);
    }

    /** What a pulse of this name reaches: the coil or lamp itself, or that of a logic output; empty where nothing switches it. */
    static Optional<Switching> of(Circuit drawn, String name) {
        Part part = drawn.part(name).orElse(null);
        if (part instanceof LogicOutput output) {
            String commands = output.commands();
            part = commands == null ? null : drawn.part(commands).orElse(null);
        }
        if (part == null) {
            return Optional.empty();
        }
        for (int end : new int[] {1, 0}) {
            Set<Net> joined = Conductors.joined(drawn, part.pins().get(end).net());
            for (Part candidate : drawn.parts()) {
                String[] pins = switched(candidate);
                if (pins != null && joined.contains(candidate.net(pins[0]))) {
                    List<Part> clamps = drawn.parts().stream()
                            .filter(p -> p instanceof Diode || p instanceof Zener)
                            .filter(p -> p.pins().stream().anyMatch(pin -> joined.contains(pin.net())))
                            .toList();
                    String railPin = part.pins().get(1 - end).name();
                    return Optional.of(new Switching(part, railPin, candidate, pins[0], pins[1], clamps));
                }
            }
        }
        return Optional.empty();
    }

    /** Pin at the load and other pin of what can switch a load; null for what cannot. */
    private static String @Nullable [] switched(Part part) {
        if (part instanceof Transistor || part instanceof Darlington) {
            return new String[] {"collector", "emitter"};
        } else if (part instanceof Mosfet) {
            return new String[] {"drain", "source"};
        } else if (part instanceof Thyristor) {
            return new String[] {"anode", "cathode"};
        } else if (part instanceof LogicOutput) {
            return new String[] {"out", "ground"};
        }
        return null;
    }
}
