package fusetale.studies;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.NotSolved;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.mna.Work;
import fusetale.model.Conditions;
import fusetale.model.NetworkBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Solves every shipped circuit with the power on: healthy, and under each single failure that the catalogue knows with its
 * usual amount, started from the healthy state as a comparison does it. Says how many are solved, how, how fast, and which
 * are not.
 */
public final class SolveEverything {
    /** A failure that takes longer is counted as not solved [s]. */
    private static final double PATIENCE_SECONDS = 20;
    /** How many of the slowest are named. */
    private static final int NAMED = 8;

    private static final String HEALTHY = "(healthy)";

    private SolveEverything() {}

    /**
     * One circuit solved once.
     *
     * @param supposed the failure as a sentence would say it compactly
     * @param work what it cost; null where it was not solved
     * @param reason why it was not solved; null where it was
     * @param seconds time it took [s]
     */
    private record Try(
            String supposed, @Nullable Work work, @Nullable NotSolved reason, double seconds) {}

    /**
     * Prints a table for each circuit.
     *
     * @param arguments circuit files or folders of them; {@code circuits} where none is named
     */
    public static void main(String[] arguments) throws IOException, UnfitSupposition {
        List<Path> files = new ArrayList<>();
        for (String name : arguments.length == 0 ? new String[] {"circuits"} : arguments) {
            try (Stream<Path> found = Files.walk(Path.of(name), 1)) {
                found.filter(p -> p.toString().endsWith(".yaml")).sorted().forEach(files::add);
            }
        }
        for (Path file : files) {
            CircuitFile read = CircuitReader.withShippedParts().read(file);
            Circuit circuit = read.circuit();
            if (circuit == null) {
                throw new IOException(file + ": " + read.errors());
            }
            print(circuit.name(), tries(circuit));
        }
    }

    private static List<Try> tries(Circuit circuit) throws UnfitSupposition {
        List<Try> tries = new ArrayList<>();
        PeriodicState healthy = solve(HEALTHY, circuit, null, tries);
        for (FaultForm form : Catalogue.possible(circuit)) {
            Circuit supposed = Catalogue.apply(circuit, new Supposition(List.of(form.usual())));
            solve(form.target() + "=" + form.mode().compact(), supposed, healthy, tries);
        }
        return tries;
    }

    private static @Nullable PeriodicState solve(
            String name, Circuit circuit, @Nullable PeriodicState near, List<Try> tries) {
        long start = System.nanoTime();
        var network = NetworkBuilder.build(
                        circuit, Conditions.mains(circuit.mains().volts().si()))
                .network();
        Solver solver = near == null ? new Solver(network) : Solver.near(network, near);
        Solved<PeriodicState> solved = solver.periodicState(
                PeriodicSettings.mains(circuit.mains().hertz().si()),
                near,
                () -> System.nanoTime() - start > PATIENCE_SECONDS * 1e9);
        double seconds = (System.nanoTime() - start) * 1e-9;
        if (solved instanceof Solved.Found<PeriodicState> found) {
            tries.add(new Try(name, found.value().work(), null, seconds));
            return found.value();
        }
        tries.add(new Try(name, null, ((Solved.Failed<PeriodicState>) solved).reason(), seconds));
        return null;
    }

    private static void print(String circuit, List<Try> tries) {
        int solved = 0;
        double worst = 0;
        double seconds = 0;
        String worstOf = HEALTHY;
        Map<String, Integer> methods = new TreeMap<>();
        double[] each = new double[tries.size()];
        int[] passes = new int[tries.size()];
        for (int k = 0; k < each.length; k++) {
            Try t = tries.get(k);
            each[k] = t.seconds();
            seconds += t.seconds();
            Work work = t.work();
            if (work != null) {
                solved++;
                passes[k] = work.passes();
                methods.merge(work.method(), 1, Integer::sum);
                if (work.residual() > worst) {
                    worst = work.residual();
                    worstOf = t.supposed();
                }
            }
        }
        Arrays.sort(each);
        Arrays.sort(passes);
        say("%n%s: healthy and under each of %d single failures, power on", circuit, tries.size() - 1);
        say("  solved                    %6d of %d", solved, tries.size());
        methods.forEach((method, count) -> say("    by %-22s%6d", method, count));
        say("  not solved                %6d", tries.size() - solved);
        say("  worst end less start      %9.1e of full scale (%s)", worst, worstOf);
        say("  cycles, middle of all     %6d", passes[passes.length / 2]);
        say("  time, middle of all       %9.2f ms", 1e3 * each[each.length / 2]);
        say("  time, 19 of 20 below      %9.2f ms", 1e3 * each[each.length * 19 / 20]);
        say("  time, all together        %9.2f s", seconds);
        slowest(tries);
        for (Try t : tries) {
            NotSolved reason = t.reason();
            if (reason != null) {
                String detail = reason.detail() + (reason.names().isEmpty() ? "" : " " + reason.names());
                say("  not solved: %s, after %.1f s: %s", t.supposed(), t.seconds(), reason.kind());
                say("    %s", detail.length() > 94 ? detail.substring(0, 91) + "..." : detail);
            }
        }
    }

    private static void slowest(List<Try> tries) {
        say("  %-36s%10s%10s%12s  %s", "slowest", "ms", "cycles", "iterations", "by");
        tries.stream()
                .sorted(Comparator.comparingDouble(Try::seconds).reversed())
                .limit(NAMED)
                .forEach(t -> {
                    Work w = t.work();
                    String cost = w == null
                            ? "not solved"
                            : String.format(Locale.ROOT, "%10d%12d  %s", w.passes(), w.solves(), w.method());
                    say("    %-34s%10.1f%s", t.supposed(), 1e3 * t.seconds(), cost);
                });
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
