package fusetale.mna;

/** How the current of an element follows from a reduction's inputs. */
final class CurrentRow {
    private CurrentRow() {}

    /**
     * The row for an element's name, or {@code name.k} for winding or port k.
     *
     * @throws IllegalArgumentException where there is no such element
     */
    static double[] of(Reduction r, String name) {
        Layout layout = r.layout;
        Integer branch = layout.branches.get(name);
        if (branch != null) {
            return r.branchRow(branch);
        }
        Element e = layout.elements.get(name);
        if (e instanceof Element.Resistor x) {
            return times(r.voltageRow(x.one(), x.two()), 1 / x.ohms());
        }
        if (e instanceof Element.Capacitor) {
            return charging(r, state(layout, name));
        }
        if (e instanceof Element.CurrentSource) {
            return source(r, name);
        }
        if (e instanceof Element.CurrentByVoltage x) {
            return times(r.voltageRow(x.plus(), x.minus()), x.siemens());
        }
        if (e instanceof Element.CurrentByCurrent x) {
            return times(r.branchRow(layout.branch(x.control())), x.gain());
        }
        return port(r, name);
    }

    private static double[] port(Reduction r, String name) {
        Layout layout = r.layout;
        for (Layout.Device d : layout.devices) {
            for (int k = 0; k < d.law().ports(); k++) {
                boolean only = d.law().ports() == 1 && name.equals(d.name());
                if (only || name.equals(d.name() + "." + k)) {
                    int p = d.firstPort() + k;
                    double[] row = times(
                            r.voltageRow(layout.portOne[p], layout.portTwo[p]),
                            d.law().baselineSiemens(k));
                    if (layout.portState[p] >= 0) {
                        add(row, charging(r, layout.portState[p]));
                    }
                    row[layout.states + layout.sources.size() + p] += 1;
                    return row;
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

    private static double[] charging(Reduction r, int s) {
        Layout.StateCell cell = r.layout.cells.get(s);
        double perSecond = 1 / r.stageSeconds;
        double[] row = times(r.voltageRow(cell.one(), cell.two()), cell.farads() * perSecond);
        row[s] -= cell.farads() * perSecond;
        return row;
    }

    private static double[] source(Reduction r, String name) {
        double[] row = new double[r.inputs];
        for (int s = 0; s < r.layout.sources.size(); s++) {
            if (r.layout.sources.get(s).name().equals(name)) {
                row[r.layout.states + s] = 1;
            }
        }
        return row;
    }

    private static double[] times(double[] row, double factor) {
        double[] out = row.clone();
        for (int k = 0; k < out.length; k++) {
            out[k] *= factor;
        }
        return out;
    }

    private static void add(double[] row, double[] more) {
        for (int k = 0; k < row.length; k++) {
            row[k] += more[k];
        }
    }
}
