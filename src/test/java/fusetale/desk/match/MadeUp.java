package fusetale.desk.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.bench.Observation.Sight;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Progress;
import fusetale.fault.Supposition;
import fusetale.match.Advice;
import fusetale.match.Ask;
import fusetale.match.Candidate;
import fusetale.match.Evidence;
import fusetale.match.Findings;
import fusetale.match.LookAlike;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.match.Repair;
import fusetale.match.Shown;
import fusetale.match.Weighed;
import fusetale.report.Figures;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Weighs First Light by a table of made-up figures, at once: what the place shows is tried with it, not what is true of the
 * board. Its shares follow the readings: each that does not fit costs a candidate e⁴.
 */
public final class MadeUp implements Weigher {
    private static final double COST = 4;
    private static final double TOLERANCE = 0.05;

    private final Circuit board;
    private final List<Row> rows;
    private final Mood mood;

    /** What else is told. */
    public enum Mood {
        /** Nothing out of the way. */
        PLAIN,
        /** What is not in the list is likelier than all that is. */
        UNLISTED,
        /** Power must stay off. */
        DANGER,
        /** Power comes on only through a series lamp. */
        LAMP,
        /** The first of two answers is a first look, and the second never comes. */
        FIRST_LOOK
    }

    /**
     * A candidate.
     *
     * @param line its supposition
     * @param prior how likely before any reading
     * @param figures what it lets show, by the words of the check; anything else reads 0
     */
    private record Row(String line, double prior, Map<String, Double> figures, Sight fuse, List<String> victims) {}

    private MadeUp(Circuit board, Mood mood) {
        this.board = board;
        this.mood = mood;
        this.rows = List.of(
                new Row("", 0.05, figures(17, 0.09, 14.6, 13.9, 13), Sight.WIRE_WHOLE, List.of()),
                new Row("br1 leg1 open", 0.2, figures(15.7, 0.25, 13.5, 13.9, 13), Sight.WIRE_WHOLE, List.of()),
                new Row("j1.1 burnt 2 ohm", 0.15, figures(15.7, 0.25, 13.5, 13.9, 13), Sight.WIRE_WHOLE, List.of()),
                new Row("r2 open", 0.2, figures(18.1, 0.02, 0, 14.1, 1e3), Sight.WIRE_WHOLE, List.of()),
                new Row("e1 open", 0.2, figures(18.1, 0.02, 18.1, 14.1, 1e3), Sight.WIRE_WHOLE, List.of()),
                new Row("c1 dried out 20%", 0.1, figures(16.1, 0.51, 13.9, 13.9, 13), Sight.WIRE_WHOLE, List.of()),
                new Row("br1 leg1 shorted", 0.1, figures(0, 0, 0, 0, 13), Sight.WIRE_GONE, List.of("F1")));
    }

    private static Map<String, Double> figures(double tp1, double ripple, double tp2, double tp4, double ohms) {
        return Map.of(
                "TP1 to gnd, d.c. volts", tp1,
                "TP1 to gnd, a.c. volts", ripple,
                "TP2 to gnd, d.c. volts", tp2,
                "TP4 to s2, a.c. volts", tp4,
                "TP2 to gnd, ohms", ohms);
    }

    /** Makes one in a mood. */
    public static Maker in(Mood mood) {
        return (board, meter) -> new MadeUp(board, mood);
    }

    @Override
    public Ranking rank(Findings findings, Consumer<Ranking> sharper, Progress progress, BooleanSupplier stopped) {
        Ranking whole = ranking(findings, 4576);
        if (mood != Mood.FIRST_LOOK) {
            progress.at(4576, 4576);
            return whole;
        }
        sharper.accept(ranking(findings, 640));
        progress.at(640, 4576);
        while (!stopped.getAsBoolean()) {
            LockSupport.parkNanos(5_000_000);
        }
        return whole;
    }

    private Ranking ranking(Findings findings, int boards) {
        double[] weights = new double[rows.size()];
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            int row = k;
            long misfits = weighed(rows.get(row), findings).stream()
                    .filter(w -> !w.fits())
                    .count();
            weights[k] = rows.get(k).prior() * Math.exp(-COST * misfits);
            sum += weights[k];
        }
        double other = mood == Mood.UNLISTED ? 0.9 : 0.03;
        List<Candidate> all = new ArrayList<>();
        for (int k = 0; k < weights.length; k++) {
            all.add(candidate(rows.get(k), weights[k] / sum * (1 - other), findings));
        }
        all.sort(Comparator.comparingDouble(Candidate::share).reversed());
        return new Ranking(
                all,
                other,
                mood == Mood.UNLISTED,
                suspects(all.get(0)),
                List.of(),
                mood == Mood.DANGER
                        ? List.of("A short behind F1 that a 25 A link would not clear is likely: 30 of 100.")
                        : List.of(),
                new Ranking.HowFar(7, 7, boards, 4576));
    }

    @Override
    public List<LookAlike> lookAlikes(Findings findings, Progress progress, BooleanSupplier stopped) {
        List<Candidate> all = ranking(findings, 4576).candidates();
        List<Repair> twins = List.of(new Repair(List.of("BR1")), new Repair(List.of("J1")));
        double both = all.stream()
                .filter(c -> twins.contains(c.repair()))
                .mapToDouble(Candidate::share)
                .sum();
        return List.of(new LookAlike(twins, both, List.of(lifted())));
    }

    private static List<Ranking.Suspect> suspects(Candidate leader) {
        List<Ranking.Suspect> all = new ArrayList<>();
        for (int k = 0; k < leader.evidence().size(); k++) {
            if (!leader.evidence().get(k).fits() && leader.fits() > 1) {
                all.add(new Ranking.Suspect(k, 0.9, false));
            }
        }
        return all;
    }

    private List<String> parts(Row row) {
        return switch (row.line()) {
            case "" -> List.of();
            case "j1.1 burnt 2 ohm" -> List.of("J1");
            case "br1 leg1 shorted" -> List.of("BR1", "F1");
            default -> List.of(supposition(row.line()).faults().get(0).part());
        };
    }

    /** Everything found beside what a row lets show; once all of its parts are new, that is what a healthy board shows. */
    private List<Weighed> weighed(Row row, Findings findings) {
        List<Weighed> all = new ArrayList<>();
        Set<String> fresh = new HashSet<>();
        for (Findings.Spell spell : findings.spells()) {
            fresh.addAll(spell.replaced());
            Row now = fresh.containsAll(parts(row)) ? rows.get(0) : row;
            spell.evidence().forEach(e -> all.add(weighed(now, e, all.size())));
        }
        return all;
    }

    private Candidate candidate(Row row, double share, Findings findings) {
        Supposition supposition = supposition(row.line());
        return new Candidate(
                new Repair(parts(row)),
                share,
                List.of(new Candidate.Likely(supposition, share)),
                weighed(row, findings),
                row.victims());
    }

    private Supposition supposition(String line) {
        try {
            return line.isEmpty() ? Supposition.NOTHING : new SentenceParser(board).parse(List.of(line));
        } catch (SentenceException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Weighed weighed(Row row, Evidence evidence, int index) {
        if (evidence.ask() instanceof Ask.Noticed noticed) {
            Sight expected = noticed.aspect() == Observation.Aspect.FUSE ? row.fuse() : Sight.LIT;
            boolean same = evidence.shown() instanceof Shown.Seen seen && seen.sight() == expected;
            double away = same ? 0 : Double.POSITIVE_INFINITY;
            return new Weighed(evidence, expected.words(), Double.NaN, Double.NaN, Double.NaN, away, 0, 0.02, index);
        }
        Check check = ((Ask.Metered) evidence.ask()).check();
        double middle = row.figures().getOrDefault(check.words(), 0.0);
        double half = Math.abs(middle) * TOLERANCE + 0.01;
        double shown = evidence.shown() instanceof Shown.Figure figure ? figure.si() : Double.POSITIVE_INFINITY;
        String words = Figures.beside(middle, middle, check.function().unit());
        double away = (shown - middle) / half * 2;
        return new Weighed(evidence, words, middle, middle - half, middle + half, away, 1, 0.02, index);
    }

    private Advice lifted() {
        Arrangement off = Sentence.named(Arrangement.unpowered().withPulledFuse("F1"));
        return new Advice(
                new Ask.Metered(off, new Check("TP3", "TP1", MeterFunction.DIODE_TEST)),
                List.of("power off", "take F1 out"),
                2,
                0.9,
                List.of(),
                List.of());
    }

    @Override
    public NextReadings next(
            Findings findings, Set<String> outOfReach, List<Ask> ruledOut, Progress progress, BooleanSupplier stopped) {
        List<Advice> all = new ArrayList<>();
        Arrangement plain = Arrangement.powered(board);
        Arrangement on = Sentence.named(mood == Mood.LAMP ? plain.withSeriesLamp(100.0) : plain);
        Arrangement off = Sentence.named(Arrangement.unpowered());
        if (mood != Mood.DANGER) {
            all.add(metered(on, "TP1", "gnd", MeterFunction.DC_VOLTS, "16.2 to 17.9 V", "BR1"));
            all.add(metered(on, "TP2", "gnd", MeterFunction.DC_VOLTS, "0.00 V", "R2"));
            all.add(metered(on, "TP1", "gnd", MeterFunction.AC_VOLTS, "0.4 to 0.6 V", "C1"));
            all.add(metered(on, "TP4", "s2", MeterFunction.AC_VOLTS, "0.00 V", "F1"));
        }
        all.add(metered(off, "TP2", "gnd", MeterFunction.OHMS, "OL", "E1"));
        all.add(new Advice(
                new Ask.Noticed(off, "F1", Observation.Aspect.FUSE),
                List.of("power off"),
                0.5,
                0.4,
                List.of(new Advice.Meaning("wire gone", 0.2, new Repair(List.of("BR1", "F1")), false, 0.7)),
                List.of("The primary side stays live while the plug is in.")));
        all.removeIf(a -> ruledOut.contains(a.ask())
                || findings.evidence().stream().anyMatch(e -> e.ask().equals(a.ask()))
                || (a.ask() instanceof Ask.Metered m
                        && outOfReach.contains(m.check().from())));
        NextReadings.Verdict verdict = all.isEmpty() ? NextReadings.Verdict.SETTLED : NextReadings.Verdict.GO_ON;
        return new NextReadings(all, verdict, "", all.isEmpty() ? lifted() : null);
    }

    private static Advice metered(
            Arrangement bench, String from, String to, MeterFunction function, String shows, @Nullable String part) {
        Repair repair = part == null ? Repair.NOTHING : new Repair(List.of(part));
        return new Advice(
                new Ask.Metered(bench, new Check(from, to, function)),
                bench.powerOn() ? List.of() : List.of("power off", "wait until C1 is empty"),
                1,
                0.8,
                List.of(
                        new Advice.Meaning(shows, 0.5, repair, false, 0.86),
                        new Advice.Meaning("any other figure", 0.4, Repair.NOTHING, false, 0.45),
                        new Advice.Meaning("OL", 0.1, repair, true, 0.31)),
                List.of());
    }
}
