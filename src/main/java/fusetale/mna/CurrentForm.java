package fusetale.mna;

import java.util.ArrayList;
import java.util.List;

/** How the current of an element follows from voltages, branch currents and the inputs of a {@link Reduction}: a sum of terms. */
record CurrentForm(List<Term> terms) {
    /** One term of the sum. */
    sealed interface Term {
        /** How the term follows from the inputs. */
        double[] row(Reduction r);

        /** The term [A] where all unknowns and inputs are known. */
        double amps(double[] unknowns, double[] input);

        /** A row times a factor, in place. {@code row}: Modified. */
        static double[] times(double[] row, double factor) {
            for (int k = 0; k < row.length; k++) {
                row[k] *= factor;
            }
            return row;
        }
    }

    /** A conductance times a voltage. */
    private record Across(int one, int two, double siemens) implements Term {
        @Override
        public double[] row(Reduction r) {
            return Term.times(r.voltageRow(one, two), siemens);
        }

        @Override
        public double amps(double[] unknowns, double[] input) {
            return siemens * Layout.across(unknowns, one, two);
        }
    }

    /** A multiple of a branch current. */
    private record Branch(int branch, double gain) implements Term {
        @Override
        public double[] row(Reduction r) {
            return Term.times(r.branchRow(branch), gain);
        }

        @Override
        public double amps(double[] unknowns, double[] input) {
            return gain * unknowns[branch];
        }
    }

    /** A multiple of an input. */
    private record Input(int input, double gain) implements Term {
        @Override
        public double[] row(Reduction r) {
            double[] row = new double[r.inputs];
            row[input] = gain;
            return row;
        }

        @Override
        public double amps(double[] unknowns, double[] inputs) {
            return gain * inputs[input];
        }
    }

    /**
     * The form for an element's name, or {@code name.k} for winding or port k.
     *
     * @param perSecond 1/(γh) of the step [1/s]; 0 at rest
     * @throws IllegalArgumentException where there is no such element
     */
    static CurrentForm of(Layout layout, String name, double perSecond) {
        Integer branch = layout.branches.get(name);
        if (branch != null) {
            return new CurrentForm(List.of(new Branch(branch, 1)));
        }
        Element e = layout.elements.get(name);
        if (e instanceof Element.Resistor x) {
            return new CurrentForm(List.of(new Across(x.one(), x.two(), 1 / x.ohms())));
        }
        if (e instanceof Element.Capacitor) {
            return new CurrentForm(charging(layout, state(layout, name), perSecond));
        }
        if (e instanceof Element.CurrentSource) {
            return new CurrentForm(source(layout, name));
        }
        if (e instanceof Element.CurrentByVoltage x) {
            return new CurrentForm(List.of(new Across(x.plus(), x.minus(), x.siemens())));
        }
        if (e instanceof Element.CurrentByCurrent x) {
            return new CurrentForm(List.of(new Branch(layout.branch(x.control()), x.gain())));
        }
        return new CurrentForm(port(layout, name, perSecond));
    }

    /** How the current follows from the inputs. */
    double[] row(Reduction r) {
        double[] row = new double[r.inputs];
        for (Term term : terms) {
            Reduction.axpy(row, term.row(r), 1, row.length);
        }
        return row;
    }

    /** The current [A] where all unknowns and inputs are known. */
    double amps(double[] unknowns, double[] input) {
        double sum = 0;
        for (Term term : terms) {
            sum += term.amps(unknowns, input);
        }
        return sum;
    }

    private static List<Term> port(Layout layout, String name, double perSecond) {
        for (Layout.Device d : layout.devices) {
            for (int k = 0; k < d.law().ports(); k++) {
                boolean only = d.law().ports() == 1 && name.equals(d.name());
                if (only || name.equals(d.name() + "." + k)) {
                    int p = d.firstPort() + k;
                    List<Term> terms = new ArrayList<>();
                    terms.add(new Across(
                            layout.portOne[p], layout.portTwo[p], d.law().baselineSiemens(k)));
                    if (layout.portState[p] >= 0) {
                        terms.addAll(charging(layout, layout.portState[p], perSecond));
                    }
                    terms.add(new Input(layout.states + layout.sources.size() + p, 1));
                    return terms;
                }
            }
        }
        throw new IllegalArgumentException("no element " + name + " in this network");
    }

    private static int state(Layout layout, String name) {
        for (int s = 0; s < layout.cells.size(); s++) {
            if (layout.cells.get(s).name().equals(name)) {
                return s;
            }
        }
        throw new IllegalArgumentException("no state " + name);
    }

    private static List<Term> charging(Layout layout, int s, double perSecond) {
        Layout.StateCell cell = layout.cells.get(s);
        double siemens = cell.farads() * perSecond;
        return List.of(new Across(cell.one(), cell.two(), siemens), new Input(s, -siemens));
    }

    private static List<Term> source(Layout layout, String name) {
        for (int s = 0; s < layout.sources.size(); s++) {
            if (layout.sources.get(s).name().equals(name)) {
                return List.of(new Input(layout.states + s, 1));
            }
        }
        return List.of();
    }
}
