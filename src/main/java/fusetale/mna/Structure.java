package fusetale.mna;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Checks of a network's values and graph before any number is computed; every flaw is told, with names. */
final class Structure {
    private final Network network;
    private final List<NotSolved> flaws = new ArrayList<>();

    Structure(Network network) {
        this.network = network;
    }

    /** Flaws that stand in the way of any solution. */
    List<NotSolved> flaws() {
        flaws.clear();
        values();
        islands(false);
        loops(false);
        return List.copyOf(flaws);
    }

    /** Flaws that stand in the way of a state at rest only: inductors are then short, capacitors open. */
    List<NotSolved> flawsAtRest() {
        flaws.clear();
        islands(true);
        loops(true);
        return List.copyOf(flaws);
    }

    private void values() {
        Set<String> names = new LinkedHashSet<>();
        for (Element e : network.elements()) {
            if (!names.add(e.name())) {
                bad(e.name(), "two elements share the name " + e.name());
            }
            if (e instanceof Element.Resistor r) {
                positive(e, r.ohms(), "ohm");
            } else if (e instanceof Element.Capacitor c) {
                positive(e, c.farads(), "F");
            } else if (e instanceof Element.Inductor l) {
                positive(e, l.henries(), "H");
            } else if (e instanceof Element.CoupledInductors c) {
                for (int k = 0; k < c.windings().size(); k++) {
                    positive(e, c.henries().get(k).get(k), "H");
                }
            } else if (e instanceof Element.VoltageSource v) {
                finite(e, v.shape());
            } else if (e instanceof Element.CurrentSource c) {
                finite(e, c.shape());
            } else if (e instanceof Element.VoltageByCurrent v && !isVoltageSource(v.control())) {
                bad(e.name(), e.name() + " is controlled by " + v.control() + ", which is no voltage source");
            } else if (e instanceof Element.CurrentByCurrent v && !isVoltageSource(v.control())) {
                bad(e.name(), e.name() + " is controlled by " + v.control() + ", which is no voltage source");
            }
        }
    }

    private boolean isVoltageSource(String name) {
        return network.elements().stream().anyMatch(e -> e.name().equals(name) && e instanceof Element.VoltageSource);
    }

    private void positive(Element e, double value, String unit) {
        if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
            bad(e.name(), e.name() + " has the value " + value + " " + unit + "; it must be above zero and finite");
        }
    }

    private void finite(Element e, SourceShape shape) {
        boolean finite = true;
        if (shape instanceof SourceShape.Constant c) {
            finite = Double.isFinite(c.value());
        } else if (shape instanceof SourceShape.Sine s) {
            finite = Double.isFinite(s.offset() + s.peak() + s.phaseRadians() + s.hertz()) && s.hertz() > 0;
        } else if (shape instanceof SourceShape.Corners c) {
            finite = c.values().stream().allMatch(Double::isFinite);
        }
        if (!finite) {
            bad(e.name(), e.name() + " is " + shape + "; its figures must be finite and its frequency above zero");
        }
    }

    private void bad(String name, String detail) {
        flaws.add(new NotSolved(NotSolved.Kind.BAD_VALUE, List.of(name), detail));
    }

    /** Groups of nodes that nothing ties to the reference. */
    private void islands(boolean atRest) {
        Groups joined = new Groups(network.nodes().size());
        Groups fed = new Groups(network.nodes().size());
        for (Element e : network.elements()) {
            for (Element.Ends ends : e.ends()) {
                boolean current = e instanceof Element.CurrentSource
                        || e instanceof Element.CurrentByVoltage
                        || e instanceof Element.CurrentByCurrent;
                boolean blocks = atRest && e instanceof Element.Capacitor;
                if (!blocks) {
                    fed.join(ends.one(), ends.two());
                    if (!current) {
                        joined.join(ends.one(), ends.two());
                    }
                }
            }
        }
        Map<Integer, List<String>> lost = new LinkedHashMap<>();
        for (int n = 1; n < network.nodes().size(); n++) {
            if (joined.root(n) != joined.root(0)) {
                lost.computeIfAbsent(joined.root(n), r -> new ArrayList<>())
                        .add(network.nodes().get(n));
            }
        }
        for (Map.Entry<Integer, List<String>> island : lost.entrySet()) {
            boolean cut = fed.root(island.getKey()) == fed.root(0);
            String names = String.join(", ", island.getValue());
            flaws.add(new NotSolved(
                    cut ? NotSolved.Kind.CUT_SET : NotSolved.Kind.FLOATING,
                    island.getValue(),
                    cut
                            ? names + ": only sources of current lead here, so its voltage is undetermined"
                            : names + ": nothing joins this to "
                                    + network.nodes().get(0) + (atRest ? " but capacitors" : "")));
        }
    }

    /** Rings of voltage sources; at rest inductors are part of them. */
    private void loops(boolean atRest) {
        Map<Integer, List<Edge>> tree = new LinkedHashMap<>();
        Groups joined = new Groups(network.nodes().size());
        for (Element e : network.elements()) {
            boolean source = e instanceof Element.VoltageSource
                    || e instanceof Element.VoltageByVoltage
                    || e instanceof Element.VoltageByCurrent;
            boolean winding = e instanceof Element.Inductor || e instanceof Element.CoupledInductors;
            if (!source && !(atRest && winding)) {
                continue;
            }
            for (Element.Ends ends : e.ends()) {
                if (joined.root(ends.one()) == joined.root(ends.two())) {
                    List<String> names = new ArrayList<>(path(tree, ends.one(), ends.two()));
                    names.add(e.name());
                    flaws.add(new NotSolved(
                            NotSolved.Kind.SOURCE_LOOP,
                            names,
                            String.join(", ", names) + ": voltage sources in a ring"
                                    + (atRest ? " (at rest a winding is one of zero volts)" : "")
                                    + " between " + network.nodes().get(ends.one()) + " and "
                                    + network.nodes().get(ends.two()) + "; put their resistance in"));
                } else {
                    joined.join(ends.one(), ends.two());
                    tree.computeIfAbsent(ends.one(), n -> new ArrayList<>()).add(new Edge(ends.two(), e.name()));
                    tree.computeIfAbsent(ends.two(), n -> new ArrayList<>()).add(new Edge(ends.one(), e.name()));
                }
            }
        }
    }

    private record Edge(int to, String name) {}

    private static List<String> path(Map<Integer, List<Edge>> tree, int from, int to) {
        List<String> names = new ArrayList<>();
        walk(tree, from, to, -1, names);
        return names;
    }

    private static boolean walk(Map<Integer, List<Edge>> tree, int at, int to, int cameFrom, List<String> names) {
        if (at == to) {
            return true;
        }
        for (Edge e : tree.getOrDefault(at, List.of())) {
            if (e.to() != cameFrom) {
                names.add(e.name());
                if (walk(tree, e.to(), to, at, names)) {
                    return true;
                }
                names.remove(names.size() - 1);
            }
        }
        return false;
    }

    /** Disjoint sets of nodes. */
    private static final class Groups {
        private final int[] parent;

        Groups(int n) {
            parent = new int[n];
            for (int k = 0; k < n; k++) {
                parent[k] = k;
            }
        }

        int root(int n) {
            int r = n;
            while (parent[r] != r) {
                parent[r] = parent[parent[r]];
                r = parent[r];
            }
            return r;
        }

        void join(int a, int b) {
            parent[root(b)] = root(a);
        }
    }
}
