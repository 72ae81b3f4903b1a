package fusetale.journeys;

import fusetale.mna.Element;
import fusetale.mna.Network;
import fusetale.mna.OperatingPoint;
import fusetale.mna.PortLaw;
import fusetale.mna.PortPoint;
import fusetale.mna.Run;
import fusetale.mna.Work;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.assertj.core.data.Offset;

/**
 * Where the currents and the power of a run go, added up from outside: from the elements of the network and from the
 * currents and voltages that the solver tells, not from its equations.
 */
public final class Balance {
    private final Network network;
    private final Run run;
    private final Waveform[] nodeVolts;
    /** Sum of the currents that leave each node at each sample [A]. */
    private final double[][] leaving;
    /** Largest current at each node at each sample [A]. */
    private final double[][] largest;

    private final List<Followed> followed = new ArrayList<>();
    private double deliveredJoules;
    private double takenJoules;
    private double idealJoules;
    private double storedJoules;
    private double movedJoules;

    /**
     * A port's current beside what its law says, over the whole run.
     *
     * @param name port
     * @param ends its nodes
     * @param all the ends of all ports of the element
     * @param amps mean current as solved [A]
     * @param lawAmps mean of the law's current at the voltages as solved [A]
     * @param siemens mean slope of the law [S]
     */
    private record Followed(
            String name, Element.Ends ends, List<Element.Ends> all, double amps, double lawAmps, double siemens) {}

    private Balance(Network network, Run run) {
        this.network = network;
        this.run = run;
        int nodes = network.nodes().size();
        this.nodeVolts = new Waveform[nodes];
        for (int n = 0; n < nodes; n++) {
            nodeVolts[n] = run.volts(n, 0);
        }
        this.leaving = new double[nodes][nodeVolts[0].size()];
        this.largest = new double[nodes][nodeVolts[0].size()];
        network.elements().forEach(this::add);
    }

    /** Of a run of this network. */
    public static Balance of(Network network, Run run) {
        return new Balance(network, run);
    }

    /** Of a state at rest, as a run of one sample. */
    public static Balance of(Network network, OperatingPoint rest) {
        return new Balance(network, new Run() {
            @Override
            public Waveform volts(int one, int two) {
                return Waveform.steady(rest.volts(one, two));
            }

            @Override
            public Waveform amps(String element) {
                return Waveform.steady(rest.amps(element));
            }

            @Override
            public Work work() {
                return rest.work();
            }
        });
    }

    /** Energy [J] that the independent sources gave over the run. */
    public double deliveredJoules() {
        return deliveredJoules;
    }

    /** Energy [J] that resistors and elements with a law of their own took. */
    public double takenJoules() {
        return takenJoules;
    }

    /** Energy [J] that controlled sources took: those of an ideal transformer together take none. */
    public double idealJoules() {
        return idealJoules;
    }

    /** Energy [J] in capacitors and inductors at the end of the run. */
    public double storedJoules() {
        return storedJoules;
    }

    /** Energy [J] that went in or out of any element at any moment, whichever way: full scale of what rounding leaves. */
    public double movedJoules() {
        return movedJoules;
    }

    /** Largest current [A] of any element at any moment. */
    public double largestAmps() {
        double most = 0;
        for (double[] node : largest) {
            for (double amps : node) {
                most = Math.max(most, amps);
            }
        }
        return most;
    }

    /** A part of the energy given [J], for comparing with. */
    public Offset<Double> partOfDelivered(double ratio) {
        return Offset.offset(ratio * Math.abs(deliveredJoules));
    }

    /**
     * Capacitors and windings that do not end a cycle as they began it: the charge that went into the one, and the volt-seconds that
     * were across the other, are not zero.
     *
     * @param ratio of full scale allowed: the highest voltage or current in the cycle, and 0.1 V or 0.1 A besides, as what is small
     *     goes with what is large beside it
     */
    public List<String> drifting(double ratio) {
        List<String> found = new ArrayList<>();
        for (Element element : network.elements()) {
            if (element instanceof Element.Capacitor c) {
                Waveform amps = run.amps(c.name());
                double volts = Math.abs(amps.mean()) * amps.length() / c.farads();
                if (!(volts <= ratio * (0.1 + peak(run.volts(c.one(), c.two()))))) {
                    found.add(c.name() + " ends " + volts + " V from where it began");
                }
            } else if (element instanceof Element.Inductor l) {
                wound(l, 0, List.of(l.henries()), ratio, found);
            } else if (element instanceof Element.CoupledInductors l) {
                for (int k = 0; k < l.henries().size(); k++) {
                    wound(l, k, l.henries().get(k), ratio, found);
                }
            }
        }
        return found;
    }

    private void wound(Element element, int winding, List<Double> henries, double ratio, List<String> found) {
        Element.Ends ends = element.ends().get(winding);
        Waveform volts = run.volts(ends.one(), ends.two());
        double linked = 0;
        for (int j = 0; j < henries.size(); j++) {
            linked += Math.abs(henries.get(j)) * (0.1 + peak(run.amps(element.currentName(j))));
        }
        double voltSeconds = Math.abs(volts.mean()) * volts.length();
        if (!(voltSeconds <= ratio * linked)) {
            found.add(element.currentName(winding) + " ends " + voltSeconds + " V·s from where it began, of " + linked);
        }
    }

    private static double peak(Waveform wave) {
        return Math.max(wave.highest(), -wave.lowest());
    }

    private void add(Element element) {
        List<Waveform> amps = new ArrayList<>();
        for (int k = 0; k < element.ends().size(); k++) {
            Element.Ends ends = element.ends().get(k);
            Waveform current = run.amps(element.currentName(k));
            amps.add(current);
            leave(ends.one(), current, 1);
            leave(ends.two(), current, -1);
            double joules = joules(ends, current);
            if (element instanceof Element.VoltageSource || element instanceof Element.CurrentSource) {
                deliveredJoules -= joules;
            } else if (element instanceof Element.Resistor || element instanceof Element.Ported) {
                takenJoules += joules;
            } else if (element instanceof Element.Capacitor c) {
                double volts = across(ends, current.size() - 1);
                storedJoules += c.farads() * volts * volts / 2;
            } else if (element instanceof Element.Inductor l) {
                storedJoules += l.henries() * last(current) * last(current) / 2;
            } else if (element instanceof Element.CoupledInductors c) {
                for (int j = 0; j <= k; j++) {
                    double henries = c.henries().get(k).get(j) * (j == k ? 0.5 : 1);
                    storedJoules += henries * last(amps.get(j)) * last(current);
                }
            } else {
                idealJoules += joules;
            }
        }
        // laws with states of their own (filaments) cannot be asked from outside what they carry
        if (element instanceof Element.Ported ported && ported.law().states() == 0) {
            follow(ported, amps);
        }
    }

    private void leave(int node, Waveform current, int sign) {
        for (int s = 0; s < current.size(); s++) {
            leaving[node][s] += sign * current.value(s);
            largest[node][s] = Math.max(largest[node][s], Math.abs(current.value(s)));
        }
    }

    private double across(Element.Ends ends, int sample) {
        return nodeVolts[ends.one()].value(sample) - nodeVolts[ends.two()].value(sample);
    }

    private static double last(Waveform wave) {
        return wave.value(wave.size() - 1);
    }

    private double joules(Element.Ends ends, Waveform current) {
        double joules = 0;
        for (int s = 0; s < current.size(); s++) {
            double part = current.weight(s) * across(ends, s) * current.value(s);
            joules += part;
            movedJoules += Math.abs(part);
        }
        return joules;
    }

    private void follow(Element.Ported ported, List<Waveform> amps) {
        PortLaw law = ported.law();
        int n = law.ports();
        PortPoint at = new PortPoint(n, 0);
        double[] lawCoulombs = new double[n];
        double[] siemensSeconds = new double[n];
        Waveform times = amps.get(0);
        for (int s = 0; s < times.size(); s++) {
            for (int k = 0; k < n; k++) {
                at.volts[k] = across(ported.ports().get(k), s);
            }
            at.seconds = times.seconds(s);
            law.evaluate(at);
            for (int k = 0; k < n; k++) {
                lawCoulombs[k] += times.weight(s) * (at.amps[k] + law.baselineSiemens(k) * at.volts[k]);
                for (int j = 0; j < n; j++) {
                    siemensSeconds[k] += times.weight(s) * Math.abs(at.siemens[k * n + j]);
                }
            }
        }
        double length = times.length();
        for (int k = 0; k < n; k++) {
            followed.add(new Followed(
                    ported.name() + "." + k,
                    ported.ports().get(k),
                    ported.ports(),
                    amps.get(k).mean(),
                    lawCoulombs[k] / length,
                    siemensSeconds[k] / length));
        }
    }

    /**
     * Nodes at which the currents do not add up to zero.
     *
     * @param ratio allowed, of the largest current at the node at that moment
     * @param floorAmps allowed besides [A]
     * @param ratioOfAll allowed besides, of the largest current in the circuit at that moment
     */
    public List<String> unbalanced(double ratio, double floorAmps, double ratioOfAll) {
        double[] anywhere = new double[nodeVolts[0].size()];
        for (double[] node : largest) {
            for (int s = 0; s < anywhere.length; s++) {
                anywhere[s] = Math.max(anywhere[s], node[s]);
            }
        }
        return unbalanced(ratio, (n, s) -> floorAmps + ratioOfAll * anywhere[s]);
    }

    /** What a node's currents may miss zero by besides at a sample [A]. */
    @FunctionalInterface
    public interface Allowance {
        /** At one node and sample. */
        double amps(int node, int sample);
    }

    /**
     * Nodes at which the currents do not add up to zero.
     *
     * @param ratio allowed, of the largest current at the node at that moment
     * @param besides allowed besides
     */
    public List<String> unbalanced(double ratio, Allowance besides) {
        List<String> found = new ArrayList<>();
        for (int n = 0; n < leaving.length; n++) {
            for (int s = 0; s < leaving[n].length; s++) {
                double allowed = ratio * largest[n][s] + besides.amps(n, s);
                if (!(Math.abs(leaving[n][s]) <= allowed)) {
                    found.add(network.nodes().get(n) + " at " + nodeVolts[n].seconds(s) + " s: " + leaving[n][s]
                            + " A over, largest " + largest[n][s] + " A");
                    break;
                }
            }
        }
        return found;
    }

    /**
     * Ports whose mean current is not what their law says.
     *
     * @param volts how far the voltage may be from the one that gives the current [V]
     * @param ratio allowed besides, of the largest current at its nodes
     * @param floorAmps allowed besides [A]
     */
    public List<String> disobedient(double volts, double ratio, double floorAmps) {
        return disobedient(ends -> volts, ratio, ends -> floorAmps);
    }

    /**
     * Ports whose mean current is not what their law says.
     *
     * @param volts how far the voltage between the ends of any of the element's ports may be from the one that gives the current [V]
     * @param ratio allowed besides, of the largest current at its nodes
     * @param floorAmps allowed besides [A], by the port's ends
     */
    public List<String> disobedient(
            ToDoubleFunction<Element.Ends> volts, double ratio, ToDoubleFunction<Element.Ends> floorAmps) {
        List<String> found = new ArrayList<>();
        for (Followed f : followed) {
            double most = 0;
            for (int s = 0; s < nodeVolts[0].size(); s++) {
                most = Math.max(
                        most,
                        Math.max(largest[f.ends().one()][s], largest[f.ends().two()][s]));
            }
            double off = f.all().stream().mapToDouble(volts).max().orElse(0);
            double allowed = off * f.siemens() + ratio * most + floorAmps.applyAsDouble(f.ends());
            if (!(Math.abs(f.amps() - f.lawAmps()) <= allowed)) {
                found.add(f + ", allowed " + allowed + " A");
            }
        }
        return found;
    }
}
