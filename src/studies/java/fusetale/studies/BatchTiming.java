package fusetale.studies;

import com.sun.management.OperatingSystemMXBean;
import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.explore.Batch;
import fusetale.explore.BatchAnswer;
import fusetale.explore.BatchSolver;
import fusetale.explore.Progress;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How long a batch takes: single failures of a machine, spread evenly over its list of them, in one arrangement, with one
 * thread and with two, and whether both give the same bits.
 */
public final class BatchTiming {
    private static final int WARMING_ROUNDS = 4;
    private static final int ROUNDS = 3;

    private BatchTiming() {}

    /**
     * Prints a table.
     *
     * @param arguments circuit file, number of suppositions, name of an arrangement of the file; {@code
     *     circuits/night-ferry.yaml 150 "as found"} where they are not given
     */
    public static void main(String[] arguments) throws UnfitArrangement {
        String file = arguments.length > 0 ? arguments[0] : "circuits/night-ferry.yaml";
        int count = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 150;
        Circuit circuit = Shipped.read(file);
        BenchSetting setting = setting(circuit, arguments.length > 2 ? arguments[2] : "");
        List<Supposition> suppositions = spread(circuit, count);
        Arrangement arrangement = Arrangement.of(circuit, setting);
        say("%s, %d single failures, %s", circuit.name(), suppositions.size(), arrangement.name());
        say("%-34s%12s%12s%8s%12s%12s", "seconds", "1 thread", "2 threads", "ratio", "CPU time", "same bits");
        Batch held = Batch.of(circuit, arrangement);
        time("states only", held, suppositions);
        List<Check> all = Check.all(circuit, arrangement.powerOn());
        time(
                "with " + all.size() + " readings, fuses melting",
                new Batch(circuit, arrangement, Meter.trueRms4000(), all, Batch.Fuses.MELT),
                suppositions);
    }

    private static BenchSetting setting(Circuit circuit, String name) {
        return circuit.settings().stream()
                .filter(a -> name.isEmpty() || a.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no arrangement " + name));
    }

    private static List<Supposition> spread(Circuit circuit, int count) {
        List<FaultForm> forms = Catalogue.possible(circuit);
        List<Supposition> chosen = new ArrayList<>();
        for (int k = 0; k < count && k < forms.size(); k++) {
            int at = (int) ((long) k * forms.size() / Math.min(count, forms.size()));
            chosen.add(new Supposition(List.of(forms.get(at).usual())));
        }
        return chosen;
    }

    private static void time(String what, Batch batch, List<Supposition> suppositions) {
        Round first = round(batch, suppositions, 2);
        say("%-34s%12s%12.2f%8s%12.2f", what + ", at first", "", first.seconds(), "", first.busySeconds());
        for (int k = 0; k < WARMING_ROUNDS; k++) {
            round(batch, suppositions, 2);
        }
        double one = Double.POSITIVE_INFINITY;
        double two = Double.POSITIVE_INFINITY;
        double busy = Double.POSITIVE_INFINITY;
        boolean same = true;
        for (int k = 0; k < ROUNDS; k++) {
            Round alone = round(batch, suppositions, 1);
            Round together = round(batch, suppositions, 2);
            one = Math.min(one, alone.seconds());
            two = Math.min(two, together.seconds());
            busy = Math.min(busy, together.busySeconds());
            same &= alone.answers().equals(together.answers())
                    && alone.answers().equals(first.answers());
        }
        String bits = same ? "yes" : "NO";
        say("%-34s%12.2f%12.2f%8.2f%12.2f%12s", "  warm, best of " + ROUNDS, one, two, one / two, busy, bits);
        long solved = first.answers().stream()
                .filter(a -> a instanceof BatchAnswer.Found)
                .count();
        say("  %d solved", solved);
    }

    /**
     * A batch solved once.
     *
     * @param seconds by the wall clock
     * @param busySeconds time that the cores spent on it, which other programs do not lengthen as they do the clock's
     * @param answers readings, bit for bit
     */
    private record Round(double seconds, double busySeconds, List<BatchAnswer<List<Long>>> answers) {}

    private static Round round(Batch batch, List<Supposition> suppositions, int threads) {
        long start = System.nanoTime();
        long busy = busyNanos();
        List<BatchAnswer<List<Long>>> answers =
                new BatchSolver(threads).solve(batch, suppositions, BatchTiming::bits, Progress.SILENT, () -> false);
        return new Round((System.nanoTime() - start) * 1e-9, (busyNanos() - busy) * 1e-9, answers);
    }

    /** Time of all threads of this program, compiler and collector included [ns]. */
    private static long busyNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    /** All readings, or the mean voltage of the test points, bit for bit. */
    private static List<Long> bits(Seen seen) {
        if (!seen.readings().isEmpty()) {
            return seen.readings().stream()
                    .map(r -> Double.doubleToLongBits(r.value()))
                    .toList();
        }
        return seen.circuit().points().stream()
                .map(p -> Double.doubleToLongBits(seen.meanVolts(p.at(), p.against())))
                .toList();
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
