package fusetale.match;

import fusetale.circuit.Battery;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Mains;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import fusetale.circuit.Transformer;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Everything that is compared: nothing wrong, every single failure of the catalogue, and pairs that one cause explains.
 * Weights are relative and add up to {@link #LISTED}; what is left is kept for something not in the list.
 */
final class Hypotheses {
    /** People do bring healthy boards, and faults that nothing shows hide behind them (judgement: 4 to 6 of 100). */
    static final double NOTHING_WRONG = 0.05;

    /** Kept for what is not in the list (judgement). */
    static final double SOMETHING_ELSE = 0.03;

    static final double LISTED = 1 - SOMETHING_ELSE;

    /** How often a shorted part takes its neighbour along, or a short meets an over-rated fuse (judgement, 0.05 to 0.3). */
    private static final double CONSEQUENCE = 0.1;

    private final Circuit circuit;
    /** Kinds of parts that lead a fuse's current on. */
    private static final Set<String> LEADS_ON = Set.of("switch", "wire", "bridge", "diode", "coil", "dual coil");
    /** Those that join two nets, whichever way. */
    private static final Set<String> JOINS = Set.of("switch", "wire");

    private final Map<String, String> kinds = new HashMap<>();

    private Hypotheses(Circuit circuit) {
        this.circuit = circuit;
        Catalogue.possible(circuit).forEach(f -> kinds.put(f.part(), f.telling().kind()));
    }

    /** Nothing wrong first, then singles in the order of the circuit, then pairs. */
    static List<Hypothesis> of(Circuit circuit) {
        Hypotheses of = new Hypotheses(circuit);
        List<Hypothesis> singles = of.singles();
        List<Hypothesis> all = new ArrayList<>(singles);
        all.addAll(of.pairs(singles));
        double sum = all.stream().mapToDouble(Hypothesis::weight).sum();
        double scale = (LISTED - NOTHING_WRONG) / sum;
        List<Hypothesis> scaled = new ArrayList<>();
        scaled.add(new Hypothesis(Supposition.NOTHING, -1, null, NOTHING_WRONG, Repair.NOTHING));
        all.forEach(h -> scaled.add(new Hypothesis(h.usual(), h.varied(), h.range(), h.weight() * scale, h.repair())));
        return scaled;
    }

    private List<Hypothesis> singles() {
        Weights weights = Weights.shipped();
        Map<String, Double> ratios = new LinkedHashMap<>();
        List<FaultForm> forms = Catalogue.possible(circuit);
        forms.forEach(f -> ratios.merge(f.part(), f.priorRatio(), Double::sum));
        List<Hypothesis> singles = new ArrayList<>();
        for (FaultForm form : forms) {
            int pins = circuit.connector(form.part())
                    .map(Connector::pins)
                    .map(List::size)
                    .orElse(1);
            double share = form.priorRatio() / ratios.getOrDefault(form.part(), 1.0);
            double weight = weights.of(form.telling().kind(), pins) * share;
            AmountRange amount = form.amount();
            // a rating of a wrong fuse is read off the fuse; only the usual one is compared
            boolean varies = amount != null && (amount.unit() == Unit.OHM || amount.unit() == Unit.RATIO);
            singles.add(new Hypothesis(
                    new Supposition(List.of(form.usual())),
                    varies ? 0 : -1,
                    varies ? amount : null,
                    weight,
                    new Repair(List.of(form.part()))));
        }
        return singles;
    }

    /** Pairs that one cause explains; what melts in consequence is no pair, the simulation sees to it. */
    private List<Hypothesis> pairs(List<Hypothesis> singles) {
        List<Hypothesis> pairs = new ArrayList<>();
        List<Hypothesis> shorts = singles.stream()
                .filter(h -> fault(h).mode() == FailureMode.SHORT)
                .toList();
        for (int a = 0; a < shorts.size(); a++) {
            for (int b = a + 1; b < shorts.size(); b++) {
                Hypothesis one = shorts.get(a);
                Hypothesis other = shorts.get(b);
                if (legsOfOne(fault(one), fault(other)) || diodeAndDriver(fault(one), fault(other))) {
                    pairs.add(pair(one, other));
                }
            }
        }
        for (Hypothesis turns : singles) {
            if (fault(turns).mode() == FailureMode.SHORTED_TURNS) {
                shorts.stream()
                        .filter(s -> switching(fault(s)) && neighbours(fault(turns), fault(s)))
                        .forEach(s -> pairs.add(pair(turns, s)));
            }
        }
        for (Hypothesis wrong : singles) {
            if (fault(wrong).mode() == FailureMode.WRONG_RATING
                    && circuit.part(fault(wrong).part()).isPresent()) {
                Set<Net> behind = behind(fault(wrong).part());
                shorts.stream()
                        .filter(s -> heavy(fault(s)) && touches(fault(s), behind))
                        .forEach(s -> pairs.add(pair(wrong, s)));
            }
        }
        return pairs;
    }

    private static Fault fault(Hypothesis h) {
        return h.usual().faults().get(0);
    }

    private Hypothesis pair(Hypothesis one, Hypothesis other) {
        List<Fault> faults = List.of(fault(one), fault(other));
        Set<String> parts = new LinkedHashSet<>();
        faults.forEach(f -> parts.add(f.part()));
        List<String> order = Catalogue.designators(circuit);
        List<String> sorted =
                parts.stream().sorted(Comparator.comparingInt(order::indexOf)).toList();
        double weight = Math.min(one.weight(), other.weight()) * CONSEQUENCE;
        return new Hypothesis(new Supposition(faults), -1, null, weight, new Repair(sorted));
    }

    private static boolean legsOfOne(Fault one, Fault other) {
        return one.part().equals(other.part())
                && !one.place().equals(other.place())
                && one.place().startsWith("leg");
    }

    private String kind(Fault fault) {
        return kinds.getOrDefault(fault.part(), "");
    }

    private boolean switching(Fault fault) {
        return Set.of("transistor", "darlington", "mosfet", "thyristor").contains(kind(fault));
    }

    /** A shorted flyback diode hands the whole rail to the transistor that switches it. */
    private boolean diodeAndDriver(Fault one, Fault other) {
        boolean pair =
                (kind(one).equals("diode") && switching(other)) || (kind(other).equals("diode") && switching(one));
        return pair && neighbours(one, other);
    }

    /** What can carry the current that a fuse is there for. */
    private boolean heavy(Fault fault) {
        return Set.of(
                        "bridge",
                        "diode",
                        "electrolytic",
                        "coil",
                        "dual coil",
                        "darlington",
                        "transistor",
                        "mosfet",
                        "thyristor")
                .contains(kind(fault));
    }

    private boolean neighbours(Fault one, Fault other) {
        return touches(one, nets(other.part(), true));
    }

    private boolean touches(Fault fault, Set<Net> nets) {
        return nets(fault.part(), false).stream().anyMatch(nets::contains);
    }

    /** Nets of a part, without ground; with what a connector joins to them. */
    private Set<Net> nets(String part, boolean acrossConnectors) {
        Set<Net> nets = new HashSet<>();
        circuit.part(part)
                .ifPresent(p -> p.pins().stream()
                        .map(Pin::net)
                        .filter(n -> !n.equals(circuit.ground()))
                        .forEach(nets::add));
        if (acrossConnectors) {
            for (Connector connector : circuit.connectors()) {
                for (Connector.Contact pin : connector.pins()) {
                    if (nets.contains(pin.board()) || nets.contains(pin.harness())) {
                        nets.add(pin.board());
                        nets.add(pin.harness());
                    }
                }
            }
            nets.remove(circuit.ground());
        }
        return nets;
    }

    /** Nets that a fuse feeds: through switches, contacts, wires and rectifiers, not through loads nor other fuses. */
    private Set<Net> behind(String fuse) {
        List<Pin> pins = circuit.part(fuse).orElseThrow().pins();
        Net first = pins.get(0).net();
        Net last = pins.get(pins.size() - 1).net();
        // a fuse has no direction: it feeds what lies away from the source
        return reached(isFed(last) && !isFed(first) ? first : last, LEADS_ON);
    }

    /** Whether a source stands at a net, be it behind wires and contacts: the mains, a secondary, a battery. */
    private boolean isFed(Net net) {
        Set<Net> reached = reached(net, JOINS);
        Predicate<Net> source = n -> n.equals(Mains.LINE)
                || n.equals(Mains.NEUTRAL)
                || circuit.parts().stream()
                        .anyMatch(p -> p instanceof Transformer t
                                ? t.secondaries().stream()
                                        .anyMatch(w -> w.nets().contains(n))
                                : p instanceof Battery
                                        && p.pins().stream()
                                                .anyMatch(pin -> pin.net().equals(n)));
        return reached.stream().anyMatch(source);
    }

    private Set<Net> reached(Net start, Set<String> passing) {
        Set<Net> reached = new HashSet<>();
        reached.add(start);
        boolean more = true;
        while (more) {
            more = false;
            for (Part part : circuit.parts()) {
                Optional<List<Net>> through = through(part, passing);
                if (through.isPresent()
                        && through.get().stream().anyMatch(reached::contains)
                        && reached.addAll(through.get())) {
                    more = true;
                }
            }
            for (Connector connector : circuit.connectors()) {
                for (Connector.Contact pin : connector.pins()) {
                    boolean here = reached.contains(pin.board()) || reached.contains(pin.harness());
                    if (here
                            && !pin.board().equals(circuit.ground())
                            && !pin.harness().equals(circuit.ground())) {
                        more |= reached.add(pin.board());
                        more |= reached.add(pin.harness());
                    }
                }
            }
        }
        return reached;
    }

    private Optional<List<Net>> through(Part part, Set<String> passing) {
        boolean passes = passing.contains(kinds.getOrDefault(part.name(), ""));
        List<Net> nets = part.pins().stream()
                .map(Pin::net)
                .filter(n -> !n.equals(circuit.ground()))
                .toList();
        return passes ? Optional.of(nets) : Optional.empty();
    }
}
