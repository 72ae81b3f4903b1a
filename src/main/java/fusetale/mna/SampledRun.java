package fusetale.mna;

import fusetale.signal.Waveform;
import org.jspecify.annotations.Nullable;

/** A recorded run; voltages and currents are worked out when asked for, from the inputs of every stage. */
final class SampledRun implements PeriodicState {
    /** A baseline may be off by this ratio: the slope of what is left still lets its device sleep. */
    private static final double CLOSE_BASELINE = 1e-3;
    /** Stages that are asked whether they miss their equations: rounding of a net behind 10 GΩ shows in every tenth alone. */
    private static final int TRIED = 48;

    private final Reductions reductions;
    private final Recorder.Tape tape;
    private final Work work;
    /** Worked out when first asked for; immutable, so that threads may race for it. */
    private @Nullable Means means;
    /** The same. */
    private @Nullable Checked checked;
    /** What a neighbour needs to start from here; null where this is not a periodic state. */
    final @Nullable Restart restart;

    /** A periodic state as a place to start from. Its arrays are never written again. */
    static final class Restart {
        final Layout layout;
        final Mesh mesh;
        final int[] carriedStates;
        final double[] x;
        final double[] own;
        final double[] volts;
        final double[] amps;
        final double[] scale;
        /** (1 − M)⁻¹ as last known; null where it is not. */
        final @Nullable PeriodInverse inverse;

        /** Port voltages [V] of every stage, see {@link Foresight}; empty where they were not kept. */
        final float[] stageVolts;
        /** How the carried states go with the voltage of all alternating sources; null where that is not known. */
        final @Nullable AlongMains alongMains;

        Restart(
                Layout layout,
                Mesh mesh,
                int[] carriedStates,
                double[][] vectors,
                @Nullable PeriodInverse inverse,
                float[] stageVolts,
                @Nullable AlongMains alongMains) {
            this.layout = layout;
            this.mesh = mesh;
            this.carriedStates = carriedStates;
            this.x = vectors[0];
            this.own = vectors[1];
            this.volts = vectors[2];
            this.amps = vectors[3];
            this.scale = vectors[4];
            this.inverse = inverse;
            this.stageVolts = stageVolts;
            this.alongMains = alongMains;
        }

        /** A state found over these very steps; null where it was over others. */
        static @Nullable Restart over(Mesh mesh, @Nullable Restart state) {
            return state != null && state.mesh.equals(mesh) ? state : null;
        }

        /**
         * The element with its law linearised at the states it has here, where it is here; with the baseline it was given
         * for an earlier neighbour where that still does.
         */
        Element near(Element.Ported p) {
            for (Layout.Device d : layout.devices) {
                if (d.name().equals(p.name()) && d.law().states() == p.law().states()) {
                    double[] states = java.util.Arrays.copyOfRange(
                            own, d.firstState(), d.firstState() + d.law().states());
                    PortLaw law = p.law().near(states);
                    double present = d.law().baselineSiemens(0);
                    boolean close =
                            Math.abs(law.baselineSiemens(0) - present) <= CLOSE_BASELINE * law.baselineSiemens(0);
                    return new Element.Ported(p.name(), p.ports(), close ? law.withBaseline(present) : law);
                }
            }
            return p;
        }
    }

    Reductions reductions() {
        return reductions;
    }

    SampledRun(Reductions reductions, Recorder.Tape tape, Work work, @Nullable Restart restart) {
        this.reductions = reductions;
        this.tape = tape;
        this.work = work;
        this.restart = restart;
    }

    Recorder.Tape tape() {
        return tape;
    }

    @Override
    public PeriodicState tabled() {
        TabledRun better = refined();
        return better != null ? better : new TabledRun(this, /* refined= */ false);
    }

    @Override
    public Work work() {
        return work;
    }

    /**
     * Whether some stages miss their equations by more than rounding should leave: nets that hang on leakage alone, beside amperes.
     *
     * @param refined the run with its unknowns refined; null where one row a curve is as good
     */
    private record Checked(@Nullable TabledRun refined) {}

    private @Nullable TabledRun refined() {
        Checked known = checked;
        if (known == null) {
            known = new Checked(misses() ? new TabledRun(this, /* refined= */ true) : null);
            checked = known;
        }
        return known.refined();
    }

    /** At some stages all over the run, of those that follow each other where most flows: what rounding leaves is a part of that. */
    private boolean misses() {
        double[] input = new double[tape.width];
        int every = Math.max(1, tape.size() / TRIED);
        for (int from = 0; from < tape.size(); from += every) {
            int at = from;
            double most = mostThrough(at);
            for (int k = from + 1; k < Math.min(tape.size(), from + every); k++) {
                double amps = mostThrough(k);
                at = amps > most ? k : at;
                most = Math.max(most, amps);
            }
            System.arraycopy(tape.block(at), tape.place(at), input, 0, tape.width);
            Reduction r = reduction(tape.levels[at]);
            if (Missed.matters(r, input, most)) {
                return true;
            }
        }
        return false;
    }

    /** Largest current [A] through a port at a stage. */
    private double mostThrough(int stage) {
        Layout layout = reductions.layout;
        double most = 0;
        for (int j = layout.states + layout.sources.size(); j < tape.width; j++) {
            most = Math.max(most, Math.abs(tape.input(stage, j)));
        }
        return most;
    }

    @Override
    public Waveform volts(int one, int two) {
        TabledRun better = refined();
        if (better != null) {
            return better.volts(one, two);
        }
        return fromRows(new Rows() {
            @Override
            double[] of(Reduction r) {
                return r.voltageRow(one, two);
            }
        });
    }

    @Override
    public double meanVolts(int one, int two) {
        Means known = means;
        if (known == null) {
            known = Means.of(this);
            means = known;
        }
        return known.across(one, two);
    }

    Reduction reduction(int level) {
        return ((Solved.Found<Reduction>) reductions.level(level)).value();
    }

    @Override
    public Waveform amps(String name) {
        TabledRun better = refined();
        if (better != null) {
            return better.amps(name);
        }
        return rough(name);
    }

    /** The current of an element by one row of the inputs. */
    Waveform rough(String name) {
        return fromRows(new Rows() {
            @Override
            double[] of(Reduction r) {
                return CurrentForm.of(r.layout, name, 1 / r.stageSeconds).row(r);
            }
        });
    }

    /** How an output follows from the inputs, looked up once a step size. */
    private abstract static class Rows {
        private final double[] @Nullable [] byLevel = new double[Reductions.SLOTS] @Nullable [];

        abstract double[] of(Reduction r);

        double[] at(int level, SampledRun run) {
            double[] row = byLevel[level];
            if (row == null) {
                row = of(run.reduction(level));
                byLevel[level] = row;
            }
            return row;
        }
    }

    private Waveform fromRows(Rows rows) {
        double[] values = new double[tape.size()];
        for (int k = 0; k < values.length; k++) {
            double[] row = rows.at(tape.levels[k], this);
            values[k] = product(row, tape.block(k), tape.place(k));
        }
        return new Waveform(tape.seconds, values, tape.weights);
    }

    /** Row times the values from {@code at} on, in four sums side by side: one after the other each would wait for the last. */
    private static double product(double[] row, double[] values, int at) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int j = 0;
        for (; j + 3 < row.length; j += 4) {
            a += row[j] * values[at + j];
            b += row[j + 1] * values[at + j + 1];
            c += row[j + 2] * values[at + j + 2];
            d += row[j + 3] * values[at + j + 3];
        }
        for (; j < row.length; j++) {
            a += row[j] * values[at + j];
        }
        return (a + b) + (c + d);
    }
}
