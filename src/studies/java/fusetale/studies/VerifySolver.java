package fusetale.studies;

import fusetale.bench.Arrangement;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.Mains;
import fusetale.explore.Batch;
import fusetale.explore.BatchAnswer;
import fusetale.explore.BatchSolver;
import fusetale.explore.Effort;
import fusetale.explore.Progress;
import fusetale.fault.Supposition;
import fusetale.journeys.Balance;
import fusetale.mna.NotSolved;
import fusetale.mna.OperatingPoint;
import fusetale.mna.PeriodicState;
import fusetale.sentence.SentencePrinter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Solves every circuit of a folder in every arrangement its file names, at the lowest, nominal and highest voltage of its
 * mains: healthy, under every single failure at the ends and in the middle of its amount, and under random pairs of failures.
 * Counts how each was solved, adds up the currents at every net of the answer, and prints every case that needed a fallback
 * or has no answer as a line that {@code suppose} can be asked again.
 *
 * <p>With the power off the mains does not matter and one voltage is enough. Fuses hold: their melting would only take away
 * what is hard to solve.
 */
public final class VerifySolver {
    private static final List<String> DIRECT = List.of("shooting", "direct");

    /** Solved, but slowly: told too, though not counted. */
    private static final int MANY_PASSES = 100;

    /** What may be missing at a net: see the test of balance for the reasons. */
    private static final double OF_NODE_RATIO = 1e-6;

    private static final double FLOOR_AMPS = 1e-9;
    private static final double OF_ALL_RATIO = 3.6e-9;

    private final Settings settings;
    private final long deadlineNanos;
    private final Map<String, Tally> tallies = new TreeMap<>();
    private final Tally all = new Tally();

    private VerifySolver(Settings settings) {
        this.settings = settings;
        this.deadlineNanos = System.nanoTime() + (long) (settings.minutes() * 60e9);
    }

    /**
     * What to do.
     *
     * @param folder of circuit files
     * @param doubles pairs of failures a circuit
     * @param seed of the pairs
     * @param slice which part of the suppositions, from 1
     * @param slices into how many parts they are dealt
     * @param minutes after which what is left is not tried
     * @param only an arrangement; empty for all
     */
    private record Settings(String folder, int doubles, long seed, int slice, int slices, double minutes, String only) {
        static Settings of(String[] arguments) {
            String slice = at(arguments, 3, "1/1");
            int stroke = slice.indexOf('/');
            return new Settings(
                    at(arguments, 0, "circuits"),
                    Integer.parseInt(at(arguments, 1, "2000")),
                    Long.parseLong(at(arguments, 2, "1")),
                    Integer.parseInt(slice.substring(0, stroke)),
                    Integer.parseInt(slice.substring(stroke + 1)),
                    Double.parseDouble(at(arguments, 4, "1e6")),
                    at(arguments, 5, ""));
        }

        private static String at(String[] arguments, int k, String usual) {
            return arguments.length > k ? arguments[k] : usual;
        }
    }

    /** How many cases came out how. */
    private static final class Tally {
        private int cases;
        private int solved;
        private int fallback;
        private int told;
        private int unbalanced;
        private int threw;
        private int unfit;
        private int left;
        private long passes;

        void add(BatchAnswer<List<String>> answer) {
            if (answer instanceof BatchAnswer.Unfit) {
                unfit++;
                return;
            }
            if (stopped(answer)) {
                left++;
                return;
            }
            cases++;
            if (answer instanceof BatchAnswer.Found<List<String>> found) {
                passes += found.effort().passes();
                solved += DIRECT.contains(found.effort().method()) ? 1 : 0;
                fallback += DIRECT.contains(found.effort().method()) ? 0 : 1;
                unbalanced += found.kept().isEmpty() ? 0 : 1;
            } else if (answer instanceof BatchAnswer.NotFound) {
                told++;
            } else {
                threw++;
            }
        }

        String row(String name) {
            return String.format(
                    Locale.ROOT,
                    "| %-44s |%7d |%7d |%5d |%5d |%5d |%5d |%6d |%7d |%7.1f |",
                    name,
                    cases,
                    solved,
                    fallback,
                    told,
                    unbalanced,
                    threw,
                    unfit,
                    left,
                    (double) passes / Math.max(1, solved + fallback));
        }
    }

    /**
     * Prints a line for each case that did not go straight, and a table.
     *
     * @param arguments folder, pairs of failures, seed, slice as {@code 1/20}, minutes, arrangement; {@code circuits 2000 1
     *     1/1}, without end and all where they are not given
     */
    public static void main(String[] arguments) throws IOException, UnfitArrangement {
        Settings settings = Settings.of(arguments);
        VerifySolver verify = new VerifySolver(settings);
        say(
                "%d pairs, seed %d, slice %d of %d",
                settings.doubles(), settings.seed(), settings.slice(), settings.slices());
        for (String file : Shipped.in(settings.folder())) {
            verify.circuit(file, Shipped.read(file));
        }
        verify.summary();
    }

    private void circuit(String file, Circuit circuit) throws UnfitArrangement {
        List<Supposition> whole = new ArrayList<>(Cases.singles(circuit));
        whole.addAll(Cases.doubles(circuit, settings.doubles(), settings.seed()));
        List<Supposition> slice = new ArrayList<>();
        for (int k = settings.slice() - 1; k < whole.size(); k += settings.slices()) {
            slice.add(whole.get(k));
        }
        Mains mains = circuit.mains();
        List<Double> volts = List.of(
                mains.volts().si(),
                mains.lowestVolts().si(),
                mains.highestVolts().si());
        for (BenchSetting setting : circuit.settings()) {
            if (!settings.only().isEmpty() && !settings.only().equals(setting.name())) {
                continue;
            }
            Arrangement arrangement = Arrangement.of(circuit, setting);
            for (double v : arrangement.powerOn() ? volts : volts.subList(0, 1)) {
                Arrangement here = arrangement.powerOn() ? arrangement.withMainsVolts(v) : arrangement;
                String name = circuit.name() + ", " + setting.name()
                        + (arrangement.powerOn() ? String.format(Locale.ROOT, ", %.0f V", v) : "");
                String asked = file + " --arrangement \"" + setting.name() + "\""
                        + (arrangement.powerOn() ? String.format(Locale.ROOT, " --mains %.0f", v) : "");
                round(name, asked, Batch.of(circuit, here), slice);
            }
        }
    }

    private void round(String name, String asked, Batch batch, List<Supposition> suppositions) {
        long start = System.nanoTime();
        if (start > deadlineNanos) {
            return;
        }
        List<BatchAnswer<List<String>>> answers = new BatchSolver(
                        Runtime.getRuntime().availableProcessors())
                .solve(
                        batch,
                        suppositions,
                        VerifySolver::unbalanced,
                        Progress.SILENT,
                        () -> System.nanoTime() > deadlineNanos);
        Tally tally = new Tally();
        for (BatchAnswer<List<String>> answer : answers) {
            tally.add(answer);
            all.add(answer);
            String line = oddity(answer);
            if (!line.isEmpty()) {
                say("%s %s   # %s", asked, SentencePrinter.compact(answer.supposition()), line);
            }
        }
        tallies.put(name, tally);
        say("# %s: %d cases in %.1f s", name, tally.cases, (System.nanoTime() - start) * 1e-9);
    }

    /** Nets of an answer at which the currents do not add up. */
    private static List<String> unbalanced(Seen seen) {
        PeriodicState state = seen.state();
        OperatingPoint rest = seen.rest();
        Balance balance = state != null
                ? Balance.of(seen.modelled().network(), state)
                : Balance.of(seen.modelled().network(), Objects.requireNonNull(rest));
        return balance.unbalanced(OF_NODE_RATIO, FLOOR_AMPS, state != null ? OF_ALL_RATIO : 0);
    }

    private static boolean stopped(BatchAnswer<?> answer) {
        return answer instanceof BatchAnswer.NotFound<?> n && n.reason().kind() == NotSolved.Kind.STOPPED;
    }

    /** What is not as it should be; empty where all is. */
    private static String oddity(BatchAnswer<List<String>> answer) {
        if (answer instanceof BatchAnswer.Found<List<String>> found) {
            Effort effort = found.effort();
            String needed = DIRECT.contains(effort.method()) && effort.passes() <= MANY_PASSES
                    ? ""
                    : "by " + effort.method() + ", " + effort.passes() + " passes, " + effort.solves() + " solves";
            String unbalanced = found.kept().isEmpty() ? "" : "unbalanced: " + found.kept();
            return needed + (needed.isEmpty() || unbalanced.isEmpty() ? "" : "; ") + unbalanced;
        } else if (answer instanceof BatchAnswer.NotFound<List<String>> none && !stopped(answer)) {
            NotSolved reason = none.reason();
            return "not solved, " + reason.kind() + ": " + reason.detail() + " " + reason.names();
        } else if (answer instanceof BatchAnswer.Mistaken<List<String>> mistake) {
            return "threw " + mistake.thrown() + " at " + mistake.thrown().getStackTrace()[0];
        }
        return "";
    }

    private void summary() {
        say(
                "%n| %-44s | cases  |directly|other | told | unb. | threw| unfit |  left  | passes |",
                "circuit, arrangement, mains");
        say("|%s|--------|--------|------|------|------|------|-------|--------|--------|", "-".repeat(46));
        tallies.forEach((name, tally) -> say("%s", tally.row(name)));
        say("%s", all.row("all"));
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
