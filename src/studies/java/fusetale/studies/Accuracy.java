package fusetale.studies;

import fusetale.bench.Arrangement;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Fuse;
import fusetale.circuit.Part;
import fusetale.circuit.TestPoint;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Modelled;
import fusetale.model.NetworkBuilder;
import fusetale.signal.Waveform;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How far readings are from the converged value: every shipped circuit in every arrangement with the power on, healthy and
 * under suppositions picked evenly from the catalogue; mean, r.m.s. and peaks of every test point's voltage and of every
 * fuse's and bridge leg's current.
 *
 * <p>Steps are those in which many machines are compared, those of figures that are shown, and much finer ones.
 *
 * <p>The converged value is that of steps a thousandth as wrong as usual and sixteen times as many at least; how far that
 * may be off itself is told from steps a hundredth as wrong. Errors are parts of the converged value; where that is close to
 * zero, of a hundredth of the waveform's largest magnitude, of 0.1 V or of 1 mA, whichever is the most: what is asked for
 * is then half of the last digit of a 4000-count meter's 400.0 mV and 4.000 mA ranges. Highest and lowest are told as parts
 * of the larger of the two.
 */
public final class Accuracy {
    /** What the project asks for. */
    private static final double ASKED = 5e-4;
    /** Suppositions to an arrangement where no other number is asked for. */
    private static final int SUPPOSITIONS = 10;

    /** A state that takes longer is told as not solved [s]. */
    private static final double PATIENCE_SECONDS = 20;

    private static final double FLOOR_OF_PEAK = 1e-2;
    private static final double FLOOR_VOLTS = 0.1;
    private static final double FLOOR_AMPS = 1e-3;
    /** How many of the worst are named. */
    private static final int NAMED = 6;

    private final List<Tally> tallies;
    private final int suppositions;
    private int cases;

    private Accuracy(int suppositions, List<Setting> settings) {
        this.suppositions = suppositions;
        this.tallies = settings.stream().map(Tally::new).toList();
    }

    /** What is read from a waveform. */
    private enum Kind {
        MEAN("mean"),
        RMS("r.m.s., total"),
        ALTERNATING("r.m.s., a.c. alone"),
        RECTIFIED("rectified mean, a.c. alone"),
        HIGHEST("highest"),
        LOWEST("lowest");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        boolean isPeak() {
            return this == HIGHEST || this == LOWEST;
        }

        double of(Waveform w) {
            return switch (this) {
                case MEAN -> w.mean();
                case RMS -> w.rms();
                case ALTERNATING -> w.alternatingRms();
                case RECTIFIED -> w.alternatingRectifiedMean();
                case HIGHEST -> w.highest();
                case LOWEST -> w.lowest();
            };
        }
    }

    /** Steps by their local accuracy and their fewest number. */
    private record Setting(double accuracy, int fewest) {
        boolean isUsual() {
            PeriodicSettings usual = PeriodicSettings.mains(60);
            return accuracy == usual.accuracy() && fewest == usual.fewestSteps();
        }

        PeriodicSettings at(double hertz) {
            return PeriodicSettings.mains(hertz).withAccuracy(accuracy).withFewestSteps(fewest);
        }
    }

    /** A waveform and what it is of. */
    private record Trace(String name, Waveform wave) {}

    /** A reading beside its converged value; the error is a ratio. */
    private record Miss(Kind kind, String where, double got, double converged, double error) {}

    /** What one setting came to. */
    private static final class Tally {
        private final Setting setting;
        private final List<Miss> misses = new ArrayList<>();
        private final List<Integer> steps = new ArrayList<>();

        Tally(Setting setting) {
            this.setting = setting;
        }

        void add(String where, List<Trace> traces, List<Trace> converged) {
            steps.add(traces.get(0).wave().size() / 2);
            for (int k = 0; k < traces.size(); k++) {
                Waveform right = converged.get(k).wave();
                double peak = Math.max(Math.abs(right.highest()), Math.abs(right.lowest()));
                for (Kind kind : Kind.values()) {
                    double got = kind.of(traces.get(k).wave());
                    double wanted = kind.of(right);
                    double digits = traces.get(k).name().startsWith("V") ? FLOOR_VOLTS : FLOOR_AMPS;
                    double floor = Math.max(kind.isPeak() ? peak : FLOOR_OF_PEAK * peak, digits);
                    double full = Math.max(Math.abs(wanted), floor);
                    String at = where + ", " + traces.get(k).name();
                    misses.add(new Miss(kind, at, got, wanted, Math.abs(got - wanted) / full));
                }
            }
        }

        void print() {
            say(
                    "%nlocal accuracy %.0e, at least %d steps: %.0f steps on average, at most %d",
                    setting.accuracy(),
                    setting.fewest(),
                    steps.stream().mapToInt(s -> s).average().orElse(0),
                    steps.stream().mapToInt(s -> s).max().orElse(0));
            say("  %-28s%10s%10s%14s", "error of", "worst %", "99 % below", "above 0.05 %");
            for (Kind kind : Kind.values()) {
                List<Miss> all = sorted(kind);
                long above = all.stream().filter(m -> m.error() > ASKED).count();
                double worst = 100 * all.get(0).error();
                double most = 100 * all.get(all.size() / 100).error();
                say("  %-28s%10.4f%10.4f%8d of %d", kind.words, worst, most, above, all.size());
            }
            for (Kind kind : Kind.values()) {
                sorted(kind).stream()
                        .filter(m -> m.error() > ASKED)
                        .limit(NAMED)
                        .forEach(m -> say(
                                "    %s %.4f %%: %s: %.7g, converged %.7g",
                                kind.words, 100 * m.error(), m.where(), m.got(), m.converged()));
            }
        }

        private List<Miss> sorted(Kind kind) {
            return misses.stream()
                    .filter(m -> m.kind() == kind)
                    .sorted(Comparator.comparingDouble(Miss::error).reversed())
                    .toList();
        }
    }

    /**
     * Prints the tables.
     *
     * @param arguments the folder of circuits, {@code circuits} where none is named; then the number of
     *     suppositions to an arrangement; then settings to try, each local accuracy and fewest steps as {@code 1e-5/256}
     */
    public static void main(String[] arguments) throws IOException, UnfitSupposition, UnfitArrangement {
        PeriodicSettings usual = PeriodicSettings.mains(60);
        List<Setting> settings = new ArrayList<>();
        settings.add(new Setting(usual.accuracy() / 100, 8 * usual.fewestSteps()));
        settings.add(new Setting(usual.accuracy(), usual.fewestSteps()));
        PeriodicSettings shown = PeriodicSettings.shown(60);
        settings.add(new Setting(shown.accuracy(), shown.fewestSteps()));
        for (int k = 2; k < arguments.length; k++) {
            String[] two = arguments[k].split("/", -1);
            settings.add(new Setting(Double.parseDouble(two[0]), Integer.parseInt(two[1])));
        }
        Accuracy study = new Accuracy(arguments.length < 2 ? SUPPOSITIONS : Integer.parseInt(arguments[1]), settings);
        try (Stream<Path> found = Files.list(Path.of(arguments.length == 0 ? "circuits" : arguments[0]))) {
            for (Path file :
                    found.filter(p -> p.toString().endsWith(".yaml")).sorted().toList()) {
                CircuitFile read = CircuitReader.withShippedParts().read(file);
                Circuit circuit = read.circuit();
                if (circuit == null) {
                    throw new IOException(file + ": " + read.errors());
                }
                study.circuit(circuit);
            }
        }
        say("%d states solved", study.cases);
        study.tallies.forEach(Tally::print);
    }

    private void circuit(Circuit circuit) throws UnfitSupposition, UnfitArrangement {
        List<Arrangement> arrangements = new ArrayList<>();
        for (BenchSetting setting : circuit.settings()) {
            if (setting.powerOn()) {
                arrangements.add(Arrangement.of(circuit, setting));
            }
        }
        if (arrangements.isEmpty()) {
            arrangements.add(Arrangement.powered(circuit));
        }
        List<FaultForm> forms = Catalogue.possible(circuit);
        for (int k = 0; k < arrangements.size(); k++) {
            Arrangement arrangement = arrangements.get(k);
            one(circuit, arrangement, "healthy");
            // other failures in each arrangement
            for (int j = 0; j < suppositions; j++) {
                int at = (int) ((j + (k + 0.5) / arrangements.size()) * forms.size() / suppositions);
                FaultForm form = forms.get(at);
                Circuit supposed = Catalogue.apply(circuit, new Supposition(List.of(form.usual())));
                one(supposed, arrangement, form.target() + "=" + form.mode().compact());
            }
        }
    }

    private void one(Circuit supposed, Arrangement arrangement, String name) throws UnfitArrangement {
        Circuit circuit = arrangement.appliedTo(supposed);
        String where = circuit.name() + ", " + arrangement.name() + ", " + name;
        Modelled modelled = NetworkBuilder.build(circuit, arrangement.conditions());
        double hertz = circuit.mains().hertz().si();
        PeriodicSettings usual = PeriodicSettings.mains(hertz);
        Solver solver = new Solver(modelled.network());
        PeriodicState near = solve(solver, usual, null, where);
        if (near == null) {
            return;
        }
        PeriodicSettings finest = usual.withAccuracy(usual.accuracy() / 1000).withFewestSteps(16 * usual.fewestSteps());
        PeriodicState converged = solve(solver, finest, near, where);
        if (converged == null) {
            return;
        }
        cases++;
        List<Trace> truth = traces(circuit, modelled, converged);
        for (Tally tally : tallies) {
            PeriodicState state = tally.setting.isUsual() ? near : solve(solver, tally.setting.at(hertz), near, where);
            if (state != null) {
                tally.add(where, traces(circuit, modelled, state), truth);
            }
        }
    }

    private static List<Trace> traces(Circuit circuit, Modelled modelled, PeriodicState state) {
        List<Trace> traces = new ArrayList<>();
        for (TestPoint p : circuit.points()) {
            traces.add(new Trace("V at " + p.name(), state.volts(modelled.node(p.at()), modelled.node(p.against()))));
        }
        for (Part part : circuit.parts()) {
            if (part instanceof Fuse) {
                modelled.element(part.name())
                        .ifPresent(e -> traces.add(new Trace("A of " + part.name(), state.amps(e))));
            } else if (part instanceof Bridge) {
                for (int leg = 1; leg <= 4; leg++) {
                    String name = part.name() + ".leg" + leg;
                    modelled.element(name).ifPresent(e -> traces.add(new Trace("A of " + name, state.amps(e))));
                }
            }
        }
        return traces;
    }

    private static @Nullable PeriodicState solve(
            Solver solver, PeriodicSettings settings, @Nullable PeriodicState near, String where) {
        long start = System.nanoTime();
        Solved<PeriodicState> solved =
                solver.periodicState(settings, near, () -> System.nanoTime() - start > PATIENCE_SECONDS * 1e9);
        if (solved instanceof Solved.Found<PeriodicState> found) {
            return found.value();
        }
        say("not solved: %s (%.0e): %s", where, settings.accuracy(), ((Solved.Failed<PeriodicState>) solved).reason());
        return null;
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
