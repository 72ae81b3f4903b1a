package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Observation.Aspect;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Controller;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Part;
import fusetale.circuit.Relay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What is known of a machine before any meter is at hand: what its fuses, lamps and coils do, how far its controller comes, and
 * which coils and lamps answered when the machine last called for them. Free, and worth more than most readings.
 */
public final class Intake {
    private static final List<Aspect> FIRST = List.of(Aspect.START_UP, Aspect.LAMP);

    private Intake() {}

    /**
     * What strikes first, first: fuses and what their caps say, how far the controller comes, lamps that nothing commands; every coil and lamp as it is
     * commanded; the same at rest; which rails hum.
     */
    public static List<Ask.Noticed> of(Circuit circuit) {
        Arrangement asFound = Arrangement.powered(circuit);
        Map<String, Arrangement> commands = commands(circuit);
        List<Ask.Noticed> all = new ArrayList<>();
        for (Part part : circuit.parts()) {
            if (part instanceof Fuse) {
                all.add(new Ask.Noticed(asFound, part.name(), Aspect.FUSE));
                all.add(new Ask.Noticed(asFound, part.name(), Aspect.RATING));
            }
        }
        for (Aspect aspect : FIRST) {
            circuit.parts().stream()
                    .filter(p -> aspect(p) == aspect && !commands.containsKey(p.name()))
                    .forEach(p -> all.add(new Ask.Noticed(asFound, p.name(), aspect)));
        }
        commands.forEach((driven, arrangement) ->
                circuit.part(driven).ifPresent(p -> all.add(new Ask.Noticed(arrangement, driven, aspect(p)))));
        for (Part part : circuit.parts()) {
            if (aspect(part) == Aspect.COIL || commands.containsKey(part.name())) {
                all.add(new Ask.Noticed(asFound, part.name(), aspect(part)));
            }
        }
        circuit.parts().stream()
                .filter(p -> aspect(p) == Aspect.HUM)
                .forEach(p -> all.add(new Ask.Noticed(asFound, p.name(), Aspect.HUM)));
        return all;
    }

    /** Drivers commanded on, one arrangement a driven coil or lamp, by its name. */
    public static Map<String, Arrangement> commands(Circuit circuit) {
        Arrangement asFound = Arrangement.powered(circuit);
        Map<String, Arrangement> all = new LinkedHashMap<>();
        for (Part part : circuit.parts()) {
            if (part instanceof LogicOutput output && output.commands() != null) {
                String driven = Objects.requireNonNull(output.commands());
                all.put(driven, asFound.withHeldOn(driven));
            }
        }
        return all;
    }

    /** What there is to notice of a part; heat of any that has nothing else. */
    private static Aspect aspect(Part part) {
        if (part instanceof Lamp) {
            return Aspect.LAMP;
        }
        if (part instanceof Coil || part instanceof Relay || part instanceof DualCoil) {
            return Aspect.COIL;
        }
        if (part instanceof Controller) {
            return Aspect.START_UP;
        }
        return part instanceof Electrolytic ? Aspect.HUM : Aspect.HEAT;
    }
}
