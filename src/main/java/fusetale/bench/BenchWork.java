package fusetale.bench;

import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Mains;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import fusetale.circuit.Rewiring;
import fusetale.circuit.Switch;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Does to a circuit what an arrangement says, and collects what cannot be done. One use. */
final class BenchWork {
    /** A pulled fuse, a connector that is off, a lifted pin [ohm]: far above the input of a meter, as air is. */
    private static final double APART_OHMS = 1e10;

    private static final double CLIP_OHMS = 0.05;

    private final Arrangement arrangement;
    private final List<String> problems = new ArrayList<>();
    private Circuit circuit;

    BenchWork(Circuit circuit, Arrangement arrangement) {
        this.circuit = circuit;
        this.arrangement = arrangement;
    }

    Circuit done() throws UnfitArrangement {
        checkSupply();
        tune();
        checkCharges();
        // held drivers first: what they command is looked up before pins and nets move
        arrangement.heldOn().forEach(this::holdOn);
        for (Map.Entry<String, Boolean> s : new TreeMap<>(arrangement.switches()).entrySet()) {
            operate(s.getKey(), s.getValue());
        }
        arrangement.pulledFuses().forEach(this::pull);
        arrangement.unplugged().forEach(this::unplug);
        arrangement.liftedPins().forEach(this::lift);
        new TreeMap<>(arrangement.pulsedSeconds()).forEach(this::pulse);
        // last, so that a clip on a lifted pin holds the pin
        for (int k = 0; k < arrangement.clips().size(); k++) {
            clip(k + 1, arrangement.clips().get(k));
        }
        if (!problems.isEmpty()) {
            throw new UnfitArrangement(String.join("\n", problems));
        }
        return circuit;
    }

    private void checkCharges() {
        if (arrangement.powerOn() && !arrangement.charged().isEmpty()) {
            problems.add(
                    "capacitors charged beforehand: only with the power off; with the power on they charge by themselves");
        }
        for (Map.Entry<String, Double> each : new TreeMap<>(arrangement.charged()).entrySet()) {
            if (Capacitance.of(circuit, each.getKey()).isEmpty()) {
                List<String> known =
                        Capacitance.all(circuit).stream().map(Capacitance::part).toList();
                problems.add(
                        "no capacitor " + each.getKey() + " to charge" + UnfitArrangement.advice(each.getKey(), known));
            }
            if (!(Math.abs(each.getValue()) <= BenchSetting.MOST_CHARGE_VOLTS)) {
                problems.add(each.getKey() + " charged to " + figure(each.getValue(), Unit.VOLT)
                        + "; at most 1000 V either way");
            }
        }
    }

    private void checkSupply() {
        double volts = arrangement.mainsVolts();
        if (arrangement.powerOn() && !(volts > 0 && volts <= BenchSetting.MOST_MAINS_VOLTS)) {
            problems.add("mains of " + figure(volts, Unit.VOLT) + "; it must be above 0 and at most 1000 V");
        }
        Double watts = arrangement.seriesLampWatts();
        if (watts != null && !(watts > 0 && watts <= BenchSetting.MOST_LAMP_WATTS)) {
            problems.add("a series lamp of " + figure(watts, Unit.WATT) + "; it must be above 0 and at most 10 000 W");
        }
    }

    private void tune() {
        Double hertz = arrangement.mainsHertz();
        if (hertz == null) {
            return;
        }
        if (hertz >= Mains.LOWEST_HERTZ && hertz <= Mains.HIGHEST_HERTZ) {
            circuit = circuit.withMains(circuit.mains().at(new Quantity(hertz, Unit.HERTZ)));
        } else {
            problems.add("mains at " + figure(hertz, Unit.HERTZ) + "; the frequency must be from "
                    + figure(Mains.LOWEST_HERTZ, Unit.HERTZ) + " to " + figure(Mains.HIGHEST_HERTZ, Unit.HERTZ));
        }
    }

    private static String figure(double si, Unit unit) {
        return Notation.format(new Quantity(si, unit));
    }

    private void pull(String name) {
        Optional<Part> part = circuit.part(name).filter(Fuse.class::isInstance);
        if (part.isEmpty()) {
            problems.add("no fuse " + name + " to pull" + UnfitArrangement.advice(name, names(Fuse.class)));
            return;
        }
        Fuse fuse = (Fuse) part.get();
        // the clips stay, so that a meter can be held to both
        FuseLink fitted = fuse.fitted();
        FuseLink none = new FuseLink(
                fitted.ratedAmps(),
                fitted.speed(),
                fitted.standard(),
                fitted.size(),
                new Quantity(APART_OHMS, Unit.OHM));
        circuit = circuit.with(
                new Fuse(name, fuse.one(), fuse.two(), fuse.marked(), none, fuse.clipOhms(), fuse.about()));
    }

    private void unplug(String name) {
        if (circuit.connector(name).isEmpty()) {
            List<String> known =
                    circuit.connectors().stream().map(Connector::name).toList();
            problems.add("no connector " + name + " to unplug" + UnfitArrangement.advice(name, known));
            return;
        }
        part(name, null);
    }

    /** Parts one contact of a connector, or all of them where {@code label} is null. */
    private void part(String connector, @Nullable String label) {
        circuit = circuit.withConnectors(circuit.connectors().stream()
                .map(c -> c.name().equals(connector) ? apart(c, label) : c)
                .toList());
    }

    private static Connector apart(Connector connector, @Nullable String label) {
        Toleranced apart = new Toleranced(new Quantity(APART_OHMS, Unit.OHM), Tolerance.EXACT);
        return new Connector(
                connector.name(),
                connector.pins().stream()
                        .map(p -> label == null || label.equals(p.label())
                                ? new Connector.Contact(p.label(), p.board(), p.harness(), apart)
                                : p)
                        .toList(),
                connector.ratedAmps());
    }

    private void lift(String name) {
        int dot = name.indexOf('.');
        String owner = dot < 0 ? name : name.substring(0, dot);
        String pin = dot < 0 ? "" : name.substring(dot + 1);
        Optional<Part> part = circuit.part(owner);
        Optional<Connector> connector = circuit.connector(owner);
        List<String> pins = part.map(p -> p.pins().stream().map(Pin::name).toList())
                .or(() -> connector.map(
                        c -> c.pins().stream().map(Connector.Contact::label).toList()))
                .orElse(List.of());
        if (part.isEmpty() && connector.isEmpty()) {
            List<String> known = circuit.parts().stream().map(Part::name).toList();
            problems.add("no part " + owner + " to lift a pin of" + UnfitArrangement.advice(owner, known));
        } else if (!pins.contains(pin)) {
            problems.add("no pin " + name + " to lift" + UnfitArrangement.advice(pin, pins));
        } else if (part.isPresent()) {
            circuit = Rewiring.inSeries(circuit, name + " lifted", part.get(), pin, APART_OHMS);
        } else {
            part(owner, pin);
        }
    }

    private void clip(int number, BenchSetting.Clip clip) {
        Optional<Net> from = point(clip.from());
        Optional<Net> to = point(clip.to());
        if (from.isEmpty() || to.isEmpty()) {
            return;
        }
        if (from.get().equals(to.get())) {
            problems.add(
                    "a clip lead from " + clip.from() + " to " + clip.to() + " joins net " + to.get() + " with itself");
            return;
        }
        circuit = Rewiring.across(circuit, "clip lead " + number, from.get(), to.get(), CLIP_OHMS);
    }

    private Optional<Net> point(String name) {
        Optional<Net> net = circuit.find(name);
        if (net.isEmpty()) {
            problems.add(
                    "no point " + name + " for a clip lead" + UnfitArrangement.advice(name, Points.known(circuit)));
        }
        return net;
    }

    private void operate(String name, boolean closed) {
        Optional<Part> part = circuit.part(name);
        if (part.isEmpty() || !(part.get() instanceof Switch s)) {
            problems.add("no switch " + name + UnfitArrangement.advice(name, names(Switch.class)));
            return;
        }
        circuit = circuit.with(new Switch(s.name(), s.one(), s.two(), closed, s.contactOhms(), s.about()));
    }

    private void holdOn(String name) {
        List<LogicOutput> outputs = Driven.outputs(circuit, name);
        if (outputs.isEmpty()) {
            problems.add("nothing drives " + name + ", so it cannot be held on"
                    + UnfitArrangement.advice(name, Driven.names(circuit)));
        }
        for (LogicOutput output : outputs) {
            circuit = circuit.with(Driven.inState(output, Driven.working(output)));
            String commands = output.commands();
            Part driven = commands == null ? null : circuit.part(commands).orElse(null);
            if (driven instanceof DualCoil coil) {
                circuit = circuit.with(coil.withPlungerIn());
            }
        }
    }

    /** Nothing is done to the circuit: a pulse is no state. What stands in its way is told. */
    private void pulse(String name, double seconds) {
        if (Driven.outputs(circuit, name).isEmpty()) {
            problems.add("nothing drives " + name + ", so it cannot be pulsed"
                    + UnfitArrangement.advice(name, Driven.names(circuit)));
        }
        if (!(seconds >= Driven.SHORTEST_PULSE_SECONDS && seconds <= Driven.LONGEST_PULSE_SECONDS)) {
            problems.add("a pulse of " + figure(seconds, Unit.SECOND) + " for " + name + "; it must be "
                    + figure(Driven.SHORTEST_PULSE_SECONDS, Unit.SECOND) + " to "
                    + figure(Driven.LONGEST_PULSE_SECONDS, Unit.SECOND));
        }
        if (!arrangement.powerOn()) {
            problems.add("a pulse for " + name + " with the power off; nothing drives it then");
        }
        if (arrangement.heldOn().contains(name)) {
            problems.add(name + " is held on; what is on already cannot be pulsed");
        }
    }

    private List<String> names(Class<? extends Part> kind) {
        return circuit.parts().stream().filter(kind::isInstance).map(Part::name).toList();
    }
}
