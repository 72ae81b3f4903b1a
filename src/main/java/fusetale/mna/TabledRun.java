package fusetale.mna;

import fusetale.signal.Waveform;

/**
 * A recorded run with all node voltages and branch currents worked out at once: one product of a matrix and the inputs a sample,
 * instead of one row of it for every curve that is asked for. Worth it where most of them are; about half a megabyte, for a while.
 */
final class TabledRun implements PeriodicState {
    /** What refined unknowns may miss their equations by [A, or V where a branch sets a voltage]. */
    private static final double LEAST_MISSED = 1e-10;

    private final SampledRun run;
    private final Layout layout;
    private final Recorder.Tape tape;
    /** {@code unknowns[unknown][sample]}. */
    private final double[][] unknowns;

    /**
     * Of a run.
     *
     * @param refined whether what rounding leaves is taken off
     */
    TabledRun(SampledRun run, boolean refined) {
        this.run = run;
        this.tape = run.tape();
        this.layout = reduction(0).layout;
        this.unknowns = new double[layout.unknowns][tape.size()];
        double[] input = new double[tape.width];
        for (int k = 0; k < tape.size(); k++) {
            System.arraycopy(tape.block(k), tape.place(k), input, 0, tape.width);
            double[] z = refined
                    ? Missed.refined(reduction(k), input, LEAST_MISSED)
                    : reduction(k).unknowns(input);
            for (int row = 0; row < z.length; row++) {
                unknowns[row][k] = z[row];
            }
        }
    }

    private Reduction reduction(int sample) {
        return ((Solved.Found<Reduction>) run.reductions().level(tape.levels[sample])).value();
    }

    @Override
    public Waveform volts(int one, int two) {
        return waveform(across(one, two));
    }

    private double[] across(int one, int two) {
        double[] values = new double[tape.size()];
        for (int k = 0; k < values.length; k++) {
            values[k] = (one > 0 ? unknowns[one - 1][k] : 0) - (two > 0 ? unknowns[two - 1][k] : 0);
        }
        return values;
    }

    /** As {@link CurrentForm} says how a current follows. */
    @Override
    public Waveform amps(String name) {
        Integer branch = layout.branches.get(name);
        if (branch != null) {
            return waveform(unknowns[branch]);
        }
        if (layout.elements.get(name) instanceof Element.Resistor resistor) {
            double[] values = across(resistor.one(), resistor.two());
            for (int k = 0; k < values.length; k++) {
                values[k] /= resistor.ohms();
            }
            return waveform(values);
        }
        for (Layout.Device device : layout.devices) {
            for (int port = 0; port < device.law().ports(); port++) {
                boolean only = device.law().ports() == 1 && name.equals(device.name());
                if (only || name.equals(device.name() + "." + port)) {
                    return waveform(throughPort(device, port));
                }
            }
        }
        return run.rough(name);
    }

    private double[] throughPort(Layout.Device device, int port) {
        int p = device.firstPort() + port;
        int state = layout.portState[p];
        int current = layout.states + layout.sources.size() + p;
        double siemens = device.law().baselineSiemens(port);
        double[] values = across(layout.portOne[p], layout.portTwo[p]);
        for (int k = 0; k < values.length; k++) {
            double volts = values[k];
            double amps = siemens * volts + tape.input(k, current);
            if (state >= 0) {
                double farads = layout.cells.get(state).farads();
                amps += farads / reduction(k).stageSeconds * (volts - tape.input(k, state));
            }
            values[k] = amps;
        }
        return values;
    }

    private Waveform waveform(double[] values) {
        return new Waveform(tape.seconds, values, tape.weights);
    }

    @Override
    public Work work() {
        return run.work();
    }

    @Override
    public PeriodicState tabled() {
        return this;
    }
}
