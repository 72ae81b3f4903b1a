package fusetale.studies;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.mna.Network;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solver;
import fusetale.model.Conditions;
import fusetale.model.NetworkBuilder;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Time to the periodic state of a shipped circuit at 120 V: warm, from its state at 119 V with everything prepared, as when
 * one look follows another; cold, from nothing but the network; and by plain stepping until the state repeats equally well.
 * {@link #main} runs all three and prints their ratios.
 */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
public class PeriodicBenchmark {
    private static final double MAINS_VOLTS = 120;
    private static final double NEIGHBOUR_VOLTS = 119;
    private static final PeriodicSettings SETTINGS = PeriodicSettings.mains(60);
    /** No shooting: cycle after cycle, until the end of one is as near to its start as shooting would have it. */
    private static final PeriodicSettings STEPPING = new PeriodicSettings(
            SETTINGS.period(), SETTINGS.accuracy(), SETTINGS.periodicity(), 0, 20_000, SETTINGS.fewestSteps());

    /** What is solved. */
    @Param({"first-light", "night-ferry"})
    public String circuit = "";

    private @Nullable Prepared prepared;

    private record Prepared(Network network, PeriodicState near, Solver warm) {}

    /** Solves the neighbour and, once, the network itself, so that its reductions are at hand. */
    @Setup
    public void prepare() {
        CircuitFile file = CircuitReader.withShippedParts().read(Path.of("circuits", circuit + ".yaml"));
        Circuit read = Objects.requireNonNull(file.circuit(), () -> String.valueOf(file.errors()));
        Network neighbour =
                NetworkBuilder.build(read, Conditions.mains(NEIGHBOUR_VOLTS)).network();
        Network network =
                NetworkBuilder.build(read, Conditions.mains(MAINS_VOLTS)).network();
        PeriodicState near = solve(new Solver(neighbour), SETTINGS, null, "shooting");
        Solver warm = Solver.near(network, near);
        solve(warm, SETTINGS, near, "shooting");
        prepared = new Prepared(network, near, warm);
    }

    /** From a neighbour's state. */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Warmup(iterations = 5, time = 2)
    @Measurement(iterations = 10, time = 1)
    public PeriodicState warm() {
        Prepared p = prepared();
        return solve(p.warm(), SETTINGS, p.near(), "shooting");
    }

    /** From the network alone, its structure checked and its linear part reduced on the way. */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Warmup(iterations = 5, time = 2)
    @Measurement(iterations = 5, time = 2)
    public PeriodicState cold() {
        return solve(new Solver(prepared().network()), SETTINGS, null, "shooting");
    }

    /** Plain stepping from rest; so long that it warms up by itself. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 1)
    @Measurement(iterations = 3)
    public PeriodicState stepping() {
        return solve(prepared().warm(), STEPPING, null, "stepping");
    }

    private Prepared prepared() {
        return Objects.requireNonNull(prepared);
    }

    private static PeriodicState solve(
            Solver solver, PeriodicSettings settings, @Nullable PeriodicState near, String method) {
        PeriodicState state = solver.periodicState(settings, near, () -> false).orElse(reason -> {
            throw new IllegalStateException(reason.toString());
        });
        if (!state.work().method().equals(method)) {
            throw new IllegalStateException("measured is " + method + ", not " + state.work());
        }
        return state;
    }

    /**
     * Measures and prints a table.
     *
     * @param arguments options of the benchmark harness, {@code -f 3} say
     */
    public static void main(String[] arguments) throws RunnerException, CommandLineOptionException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .parent(new CommandLineOptions(arguments))
                        .include(PeriodicBenchmark.class.getName())
                        .verbosity(VerboseMode.SILENT)
                        .build())
                .run();
        say("%-14s%12s%12s%14s%14s%14s", "ms", "warm", "cold", "stepping", "over warm", "over cold");
        for (String circuit : results.stream()
                .map(r -> r.getParams().getParam("circuit"))
                .distinct()
                .toList()) {
            double warm = milliseconds(results, circuit, "warm").getScore();
            double cold = milliseconds(results, circuit, "cold").getScore();
            double stepping = milliseconds(results, circuit, "stepping").getScore();
            say("%-14s%12.3f%12.1f%14.0f%14.0f%14.1f", circuit, warm, cold, stepping, stepping / warm, stepping / cold);
            say(
                    "%-14s%12.3f%12.1f%14.0f",
                    "  ±",
                    milliseconds(results, circuit, "warm").getScoreError(),
                    milliseconds(results, circuit, "cold").getScoreError(),
                    milliseconds(results, circuit, "stepping").getScoreError());
        }
    }

    private static Result<?> milliseconds(Collection<RunResult> results, String circuit, String benchmark) {
        return results.stream()
                .filter(r -> r.getParams().getParam("circuit").equals(circuit))
                .filter(r -> r.getParams().getBenchmark().endsWith("." + benchmark))
                .findFirst()
                .orElseThrow()
                .getPrimaryResult();
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
