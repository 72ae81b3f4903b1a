package fusetale.studies;

import fusetale.bench.Arrangement;
import fusetale.bench.Bench;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Reading;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.journeys.Balance;
import fusetale.mna.NotSolved;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solved;
import fusetale.mna.Trial;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Spoils shipped circuit files at random: values a thousand times off, parts left out, pins on other nets, letters lost.
 * Each must be refused with messages, or solved with readings that are numbers and currents that add up, or refused by the
 * solver with a reason; with the power on and off.
 */
public final class FuzzFiles {
    private static final double PATIENCE_SECONDS = 10;
    private static final Pattern AMOUNT =
            Pattern.compile("(?<![\\w.])(\\d+(?:\\.\\d+)?)(?= (?:ohm|kohm|uF|nF|mH|H|A|mA|V|W)\\b)");
    private static final Pattern PART = Pattern.compile("(?m)^  [A-Z]+\\d+: .*$\\n?");
    private static final Pattern WORD = Pattern.compile("(?<=[\\[ ])[a-z][a-z0-9+]*(?=[,\\]}])");

    private final Path folder;
    private final Map<String, Integer> counts = new TreeMap<>();
    private final Map<String, List<String>> cases = new LinkedHashMap<>();

    private FuzzFiles(Path folder) {
        this.folder = folder;
    }

    /** A file's text and what was done to it. */
    private record Spoilt(String text, List<String> deeds) {}

    /** How one file fared. */
    private record Fared(String outcome, List<Trial.Finding> findings) {}

    /**
     * Spoils until the time is up.
     *
     * @param arguments seconds and first seed
     */
    public static void main(String[] arguments) throws IOException {
        double seconds = arguments.length > 0 ? Double.parseDouble(arguments[0]) : 60;
        long first = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        FuzzFiles fuzz = new FuzzFiles(copied(Path.of("circuits")));
        long end = System.nanoTime() + (long) (seconds * 1e9);
        for (long seed = first; System.nanoTime() < end; seed++) {
            for (String machine : List.of("first-light", "night-ferry")) {
                fuzz.spoil(machine, seed);
            }
        }
        fuzz.print(first);
        System.exit(0); // what hangs is still there
    }

    private static Path copied(Path circuits) throws IOException {
        Path folder = Files.createTempDirectory(Path.of("target"), "spoilt");
        try (Stream<Path> files = Files.walk(circuits)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(circuits.relativize(file).toString());
                Files.createDirectories(copy.resolveSibling("."));
                Files.copy(file, copy);
            }
        }
        return folder;
    }

    private void spoil(String machine, long seed) throws IOException {
        Path file = folder.resolve(machine + ".yaml");
        String sound = Files.readString(Path.of("circuits", machine + ".yaml"));
        Spoilt spoilt = spoilt(sound, new SplittableRandom(seed));
        Files.writeString(file, spoilt.text());
        CircuitFile read = CircuitReader.withShippedParts().read(file);
        Circuit circuit = read.circuit();
        if (circuit == null) {
            counts.merge(machine + ", refused by the reader", 1, Integer::sum);
            if (read.errors().isEmpty()) {
                note("refused without a message", machine, seed, spoilt, "");
            }
            return;
        }
        for (boolean powered : new boolean[] {true, false}) {
            Fared fared =
                    Alone.done(() -> look(circuit, powered), findings -> new Fared("stopped the study", findings));
            String how = powered ? "power on" : "power off";
            counts.merge(machine + ", " + how + ", " + fared.outcome(), 1, Integer::sum);
            if (fared.outcome().contains("NO_") || fared.outcome().contains("STEP")) {
                note("not solved, " + how + ": " + fared.outcome(), machine, seed, spoilt, "");
            }
            fared.findings().forEach(f -> note(how + ": " + f.what(), machine, seed, spoilt, f.detail()));
        }
    }

    private void note(String what, String machine, long seed, Spoilt spoilt, String detail) {
        String line = machine + " " + seed + " " + spoilt.deeds() + " " + detail;
        cases.computeIfAbsent(what, w -> new ArrayList<>()).add(line);
    }

    private static Fared look(Circuit circuit, boolean powered) throws UnfitArrangement {
        long start = System.nanoTime();
        Arrangement arrangement = powered ? Arrangement.powered(circuit) : Arrangement.unpowered();
        Bench bench = Bench.of(circuit, arrangement, Meter.trueRms4000());
        Solved<Seen> solved = bench.look(
                Check.all(bench.circuit(), powered), null, () -> System.nanoTime() - start > PATIENCE_SECONDS * 1e9);
        List<Trial.Finding> findings = new ArrayList<>();
        if (solved instanceof Solved.Failed<Seen> failed) {
            NotSolved reason = failed.reason();
            if (reason.detail().isBlank()) {
                findings.add(new Trial.Finding("refusal without a reason", reason.toString()));
            }
            return new Fared(reason.kind().toString(), findings);
        }
        Seen seen = ((Solved.Found<Seen>) solved).value();
        for (Reading reading : seen.readings()) {
            if (!reading.overRange() && !Double.isFinite(reading.value())) {
                findings.add(new Trial.Finding("no number", reading.check().words() + ": " + reading.value()));
            }
        }
        PeriodicState state = seen.state();
        if (state != null) {
            Balance balance = Balance.of(seen.modelled().network(), state);
            List<String> unbalanced = balance.unbalanced(1e-6, 1e-9, 1e-7);
            if (!unbalanced.isEmpty()) {
                findings.add(new Trial.Finding("currents do not add up", unbalanced.toString()));
            }
            double left = balance.deliveredJoules() - balance.takenJoules() - balance.idealJoules();
            if (!(Math.abs(left)
                    <= 1e-3 * Math.abs(balance.deliveredJoules()) + 1e-3 * balance.movedJoules() + 1e-12)) {
                findings.add(new Trial.Finding("power does not add up", left + " J left"));
            }
        }
        return new Fared("solved", findings);
    }

    private static Spoilt spoilt(String sound, SplittableRandom random) {
        String text = sound;
        List<String> deeds = new ArrayList<>();
        int many = 1 + random.nextInt(3);
        for (int k = 0; k < many; k++) {
            int kind = random.nextInt(10);
            if (kind < 4) {
                String ratio = random.nextBoolean() ? "1000" : "0.001";
                text = changed(
                        text,
                        AMOUNT,
                        random,
                        deeds,
                        found -> new BigDecimal(found)
                                .multiply(new BigDecimal(ratio))
                                .toPlainString());
            } else if (kind < 6) {
                text = changed(text, PART, random, deeds, found -> "");
            } else if (kind < 9) {
                String other = any(text, WORD, random);
                text = changed(text, WORD, random, deeds, found -> other);
            } else {
                int at = random.nextInt(text.length());
                deeds.add("lost letter " + at);
                text = text.substring(0, at) + text.substring(at + 1);
            }
        }
        return new Spoilt(text, deeds);
    }

    private static String any(String text, Pattern what, SplittableRandom random) {
        List<MatchResult> all = what.matcher(text).results().toList();
        return all.isEmpty() ? "" : all.get(random.nextInt(all.size())).group();
    }

    private static String changed(
            String text,
            Pattern what,
            SplittableRandom random,
            List<String> deeds,
            java.util.function.UnaryOperator<String> change) {
        Matcher matcher = what.matcher(text);
        List<MatchResult> all = matcher.results().toList();
        if (all.isEmpty()) {
            return text;
        }
        MatchResult one = all.get(random.nextInt(all.size()));
        String instead = change.apply(one.group());
        int line = (int) text.substring(0, one.start())
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;
        String was = one.group().strip();
        deeds.add("line " + line + ": " + (was.length() > 30 ? was.substring(0, 30) : was) + " -> " + instead);
        return text.substring(0, one.start()) + instead + text.substring(one.end());
    }

    private void print(long first) {
        say("spoilt files of seeds from %d on", first);
        counts.forEach((what, count) -> say("  %-56s%8d", what, count));
        cases.forEach((what, lines) -> {
            say("%n%s: %d", what, lines.size());
            lines.stream().limit(12).forEach(line -> say("  %s", line.length() > 400 ? line.substring(0, 400) : line));
        });
        say("%n%d findings", cases.values().stream().mapToInt(List::size).sum());
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
