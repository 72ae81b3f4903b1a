package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.Fuse;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import fusetale.circuit.Regulator;
import fusetale.circuit.Resistor;
import fusetale.circuit.TestPoint;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transistor;
import fusetale.circuit.Zener;
import fusetale.fault.Fault;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Everything one could ask of a machine: at its test points and across its parts, as it stands, taken apart section from
 * section, and with its drivers commanded one after the other.
 */
final class Asks {
    private final Circuit circuit;
    private final Map<String, Nearness> nearDrivers = new ConcurrentHashMap<>();
    private final Map<String, Nearness> nearDriven = new ConcurrentHashMap<>();

    Asks(Circuit circuit) {
        this.circuit = circuit;
    }

    /** With the power off: ohms and diode test at test points both ways, then across parts and contacts. */
    List<Check> powerOff() {
        Set<Check> checks = new LinkedHashSet<>(Check.all(circuit, /* powered= */ false));
        for (Part part : circuit.parts()) {
            checks.addAll(across(part));
            checks.addAll(traces(part));
        }
        circuit.connectors().forEach(c -> checks.addAll(across(c)));
        return List.copyOf(checks);
    }

    /** Across the part or the contacts of the connector of that name. */
    List<Check> across(String name) {
        List<Check> checks = new ArrayList<>();
        circuit.part(name).ifPresent(p -> {
            checks.addAll(across(p));
            checks.addAll(traces(p));
        });
        circuit.connectors().stream().filter(c -> c.name().equals(name)).forEach(c -> checks.addAll(across(c)));
        return checks;
    }

    /** Between the traces that a resistor joins: its legs do not show a joint that is cracked under them. */
    private static List<Check> traces(Part part) {
        if (!(part instanceof Resistor)) {
            return List.of();
        }
        return List.of(new Check(
                part.pins().get(0).net().name(), part.pins().get(1).net().name(), MeterFunction.OHMS));
    }

    private static List<Check> across(Connector connector) {
        return connector.pins().stream()
                .map(p -> new Check(p.board().name(), p.harness().name(), MeterFunction.OHMS))
                .toList();
    }

    private static List<Check> across(Transformer transformer) {
        return transformer.windings().stream()
                .map(w -> {
                    String pin = transformer.name() + "." + w.name() + ".";
                    return new Check(pin + 1, pin + w.nets().size(), MeterFunction.OHMS);
                })
                .toList();
    }

    /** Across one part: ohms, of a transformer those of each winding, and of what conducts one way the diode test both ways. */
    private static List<Check> across(Part part) {
        if (part instanceof Transformer transformer) {
            return across(transformer);
        }
        List<Check> checks = new ArrayList<>();
        List<Pin> pins = part.pins();
        boolean junctions = junctions(part);
        for (int a = 0; a < pins.size(); a++) {
            for (int b = a + 1; b < pins.size(); b++) {
                String one = part.name() + "." + pins.get(a).name();
                String two = part.name() + "." + pins.get(b).name();
                if (junctions) {
                    checks.add(new Check(one, two, MeterFunction.DIODE_TEST));
                    checks.add(new Check(two, one, MeterFunction.DIODE_TEST));
                } else if (pins.size() <= 3) {
                    checks.add(new Check(one, two, MeterFunction.OHMS));
                }
            }
        }
        return checks;
    }

    private static boolean junctions(Part part) {
        return part instanceof Diode
                || part instanceof Zener
                || part instanceof Bridge
                || part instanceof Transistor
                || part instanceof Darlington
                || part instanceof Mosfet
                || part instanceof Thyristor;
    }

    /** With the power on: volts at test points, and at the pins of what switches and regulates. */
    List<Check> powerOn() {
        Set<Check> checks = new LinkedHashSet<>(Check.all(circuit, /* powered= */ true));
        Set<String> nets = new LinkedHashSet<>();
        for (TestPoint point : circuit.points()) {
            nets.add(point.at().name());
        }
        String ground = circuit.ground().name();
        nets.add(ground);
        for (Part part : circuit.parts()) {
            if ((junctions(part) && part.pins().size() == 3)
                    || part instanceof Regulator
                    || part instanceof LogicOutput) {
                for (Pin pin : part.pins()) {
                    if (nets.add(pin.net().name())) {
                        checks.add(new Check(pin.net().name(), ground, MeterFunction.DC_VOLTS));
                    }
                }
            }
        }
        return List.copyOf(checks);
    }

    /** How far parts lie from where the driver of a coil or lamp begins. */
    Nearness nearDriver(String driven) {
        return nearDrivers.computeIfAbsent(driven, d -> new Nearness(circuit, driver(d)));
    }

    /** Whether one of some faults lies in the chain from an output to what it drives, both included. */
    boolean isInChain(String driven, List<Fault> faults) {
        Nearness driver = nearDriver(driven);
        Nearness load = nearDriven.computeIfAbsent(driven, d -> new Nearness(circuit, Set.of(d)));
        return faults.stream()
                .anyMatch(f -> driver.partsTo(f.part()) + load.partsTo(f.part()) <= driver.partsTo(driven));
    }

    /** Where the driver of a coil or lamp begins: the nets of the outputs that command it. */
    Set<String> driver(String driven) {
        Set<String> nets = new LinkedHashSet<>();
        for (Part part : circuit.parts()) {
            if (part instanceof LogicOutput output && driven.equals(output.commands())) {
                nets.add(output.out().name());
            }
        }
        return nets;
    }

    /** Taken apart with the power off: all fuses out, all connectors off, both. */
    List<Arrangement> takenApart() {
        Arrangement off = Arrangement.unpowered();
        List<Arrangement> all = new ArrayList<>();
        Arrangement fuses = off;
        for (Part part : circuit.parts()) {
            if (part instanceof Fuse) {
                fuses = fuses.withPulledFuse(part.name());
            }
        }
        Arrangement connectors = off;
        Arrangement both = fuses;
        for (Connector connector : circuit.connectors()) {
            connectors = connectors.withUnplugged(connector.name());
            both = both.withUnplugged(connector.name());
        }
        if (!fuses.equals(off)) {
            all.add(fuses.withName("power off, all fuses out"));
        }
        if (!connectors.equals(off)) {
            all.add(connectors.withName("power off, all connectors off"));
            if (!fuses.equals(off)) {
                all.add(both.withName("power off, all fuses out, all connectors off"));
            }
        }
        return all;
    }

    /** With the power off and one pin of a part unsoldered: what measures the part alone. */
    List<Ask.Metered> lifted(String part) {
        return circuit.part(part).stream()
                .filter(p -> p.pins().size() <= 4 && !(p instanceof Fuse))
                .flatMap(p -> {
                    String pin = p.name() + "." + p.pins().get(0).name();
                    Arrangement lifted =
                            Arrangement.unpowered().withLiftedPin(pin).withName("power off, " + pin + " lifted");
                    return across(p).stream().map(c -> new Ask.Metered(lifted, c));
                })
                .toList();
    }
}
