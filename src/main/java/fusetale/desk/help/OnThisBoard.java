package fusetale.desk.help;

import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Connector;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Part;
import fusetale.circuit.Regulator;
import fusetale.circuit.TestPoint;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transistor;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What of a word is on the board being worked on: every figure comes from its circuit file. */
public final class OnThisBoard {
    private static final int MOST = 6;
    private static final Words WORDS = Words.of(OnThisBoard.class);

    private final Map<String, String> said = new LinkedHashMap<>();

    private OnThisBoard() {}

    /** Sentences by the word's key. */
    public static Map<String, String> of(Circuit circuit) {
        OnThisBoard here = new OnThisBoard();
        here.put("test-point", circuit.points(), TestPoint::name);
        here.put(
                "fuse",
                parts(circuit, Fuse.class),
                f -> f.name() + " " + Notation.format(f.marked().ratedAmps()));
        here.put("transformer", parts(circuit, Transformer.class), Part::name);
        List<Part> rectifiers = new ArrayList<>(parts(circuit, Bridge.class));
        here.put("rectifier", rectifiers, Part::name);
        here.put("diode", parts(circuit, Diode.class), Part::name);
        here.put(
                "filter-capacitor",
                parts(circuit, Electrolytic.class),
                c -> c.name() + " " + Notation.format(c.farads().nominal()));
        here.put("regulator", parts(circuit, Regulator.class), Part::name);
        List<Part> coils = new ArrayList<>(parts(circuit, Coil.class));
        coils.addAll(parts(circuit, DualCoil.class));
        here.put("coil", coils, Part::name);
        List<Part> drivers = new ArrayList<>(parts(circuit, Transistor.class));
        drivers.addAll(parts(circuit, Darlington.class));
        drivers.addAll(parts(circuit, Mosfet.class));
        here.put("driver-transistor", drivers, Part::name);
        here.put("burnt-pin", circuit.connectors(), Connector::name);
        here.put("ground", List.of(circuit.ground()), g -> g.name());
        return Map.copyOf(here.said);
    }

    private static <T extends Part> List<T> parts(Circuit circuit, Class<T> kind) {
        return circuit.parts().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private <T> void put(String key, List<T> things, Function<T, String> words) {
        if (things.isEmpty()) {
            return;
        }
        String named = String.join(
                ", ", things.stream().limit(MOST).map(words).map(String::strip).toList());
        int more = things.size() - MOST;
        said.put(key, more > 0 ? WORDS.say("here-more", named, more) : WORDS.say("here", named));
    }
}
