package fusetale.explore;

import fusetale.bench.Arrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Fuse;
import fusetale.circuit.Mains;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import fusetale.circuit.StartStage;
import fusetale.circuit.Transformer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order in which a machine is switched on: the stages of its file; where it has none, every fuse behind a secondary is
 * out at first, and they go in one by one, those behind the winding of the lowest voltage first, alike ones in the order of
 * the file.
 *
 * @param stages in order, at least one
 */
record StartPlan(List<StartStage> stages) {
    private static final Words WORDS = Words.of(StartPlan.class);

    /** Copies the list. */
    StartPlan {
        stages = List.copyOf(stages);
    }

    /** The plan of a machine. */
    static StartPlan of(Circuit circuit) {
        if (!circuit.stages().isEmpty()) {
            return new StartPlan(circuit.stages());
        }
        Set<Net> primary = new HashSet<>(Conductors.joined(circuit, Mains.LINE));
        primary.addAll(Conductors.joined(circuit, Mains.NEUTRAL));
        Map<Fuse, Double> volts = new LinkedHashMap<>();
        for (Part part : circuit.parts()) {
            if (part instanceof Fuse fuse && !primary.contains(fuse.one())) {
                volts.put(fuse, volts(circuit, fuse));
            }
        }
        List<StartStage> stages = new ArrayList<>();
        stages.add(new StartStage(
                WORDS.say(volts.isEmpty() ? "stage.everything" : "stage.no-fuses"), List.of(), List.of()));
        volts.entrySet().stream()
                .sorted(Comparator.comparingDouble(Map.Entry::getValue))
                .forEach(e -> stages.add(new StartStage(
                        WORDS.say("stage.fuse", e.getKey().name()),
                        List.of(e.getKey().name()),
                        List.of())));
        return new StartPlan(stages);
    }

    /** The bench at a stage: what later stages put in is out. */
    Arrangement at(int stage, Arrangement base) {
        Arrangement set = base;
        for (StartStage later : stages.subList(stage + 1, stages.size())) {
            for (String fuse : later.fusesIn()) {
                set = base.pulledFuses().contains(fuse) ? set : set.withPulledFuse(fuse);
            }
            for (String connector : later.pluggedIn()) {
                set = base.unplugged().contains(connector) ? set : set.withUnplugged(connector);
            }
        }
        return set.withName(base.name() + ", " + stages.get(stage).name());
    }

    /** Rated voltage [V] of the winding nearest to a fuse, part by part, ground not passed; 0 where there is none. */
    private static double volts(Circuit circuit, Fuse fuse) {
        Set<Net> reached = new HashSet<>(List.of(fuse.one(), fuse.two(), circuit.ground()));
        Deque<Net> open = new ArrayDeque<>(List.of(fuse.one(), fuse.two()));
        while (!open.isEmpty()) {
            Net at = open.poll();
            for (Part part : circuit.parts()) {
                if (part instanceof Transformer t) {
                    for (Transformer.Winding winding : t.secondaries()) {
                        if (winding.nets().contains(at)) {
                            return winding.volts().si();
                        }
                    }
                } else if (part.pins().stream().anyMatch(pin -> pin.net().equals(at))) {
                    part.pins().stream().map(Pin::net).filter(reached::add).forEach(open::add);
                }
            }
            for (Connector connector : circuit.connectors()) {
                for (Connector.Contact contact : connector.pins()) {
                    if (contact.board().equals(at) || contact.harness().equals(at)) {
                        List.of(contact.board(), contact.harness()).stream()
                                .filter(reached::add)
                                .forEach(open::add);
                    }
                }
            }
        }
        return 0;
    }
}
