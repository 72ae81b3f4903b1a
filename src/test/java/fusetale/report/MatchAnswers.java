package fusetale.report;

import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Supposition;
import fusetale.match.Advice;
import fusetale.match.Candidate;
import fusetale.match.Evidence;
import fusetale.match.Findings;
import fusetale.match.LookAlike;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.match.ReadingsFile;
import fusetale.match.ReadingsReader;
import fusetale.match.Repair;
import fusetale.match.Weighed;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Answers made by hand, so that what is printed of them can be looked at without working anything out. */
public final class MatchAnswers {
    public static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());

    /** Line 2 a fuse, line 3 a figure, line 4 what is over range. */
    public static final ReadingsFile READ = new ReadingsReader(FERRY).read("a.csv", """
                    function,from,to,value,arrangement,note
                    fuse,F201,,blown,,
                    dc,TP4,,17.4,,
                    diode,gnd,TP4,OL,"power off, F202 pulled",
                    """);

    private MatchAnswers() {}

    public static Supposition supposed(String clause) {
        try {
            return new Sentences(FERRY)
                    .supposing(Sentence.atFirst(FERRY), List.of(clause))
                    .sentence()
                    .supposition();
        } catch (SentenceException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static Evidence read(int index) {
        return READ.findings().evidence().get(index);
    }

    private static List<Weighed> weighed(double away, double bits) {
        return List.of(
                new Weighed(read(0), "wire gone", Double.NaN, Double.NaN, Double.NaN, 0, 2.5, 0.001, 0),
                new Weighed(read(1), "43.7 V", 43.7, 41.2, 46.3, away, bits, 0.4, 1),
                new Weighed(read(2), "OL", Double.NaN, Double.NaN, Double.NaN, 0, 0.2, 0.001, 2));
    }

    public static Candidate bridge(double share) {
        return new Candidate(
                new Repair(List.of("BR201")),
                share,
                List.of(
                        new Candidate.Likely(supposed("BR201.leg1=short"), share * 0.7),
                        new Candidate.Likely(supposed("BR201.leg2=short"), share * 0.25),
                        new Candidate.Likely(supposed("BR201.leg3=short"), share * 0.05)),
                weighed(-9, -4.1),
                List.of("F201"));
    }

    public static Candidate bleeder(double share) {
        return new Candidate(
                new Repair(List.of("R201")),
                share,
                List.of(new Candidate.Likely(supposed("R201=open"), share)),
                weighed(1, -0.3),
                List.of());
    }

    public static Candidate healthy(double share) {
        return new Candidate(
                Repair.NOTHING,
                share,
                List.of(new Candidate.Likely(Supposition.NOTHING, share)),
                weighed(4, 0.2),
                List.of());
    }

    public static Advice advice() {
        return new Advice(
                READ.findings().evidence().get(2).ask(),
                List.of("power off", "take F202 out"),
                3.2,
                0.9,
                List.of(
                        new Advice.Meaning("0.37 to 0.39 V", 0.61, new Repair(List.of("BR201")), false, 0.97),
                        new Advice.Meaning("OL", 0.39, Repair.NOTHING, true, 0.4)),
                List.of("Capacitors discharged and measured first."));
    }

    public static Ranking ranking(List<Candidate> candidates, double somethingElse, List<String> danger) {
        return new Ranking(
                candidates,
                somethingElse,
                somethingElse > 0.2,
                List.of(new Ranking.Suspect(1, 0.62, false)),
                List.of(new LookAlike(List.of(new Repair(List.of("BR201")), Repair.NOTHING), 0.93, List.of(advice()))),
                danger,
                new Ranking.HowFar(143, 143, 640, 4576));
    }

    public static NextReadings next(NextReadings.Verdict verdict, String replace, @Nullable Advice confirm) {
        return new NextReadings(List.of(advice()), verdict, replace, confirm);
    }

    public static Matched matched(Ranking ranking, @Nullable NextReadings next) {
        return new Matched(FERRY, Meter.builtIn().get(0), READ.findings(), READ.lines(), ranking, next);
    }

    public static Matched nothingRead() {
        return new Matched(
                FERRY,
                Meter.builtIn().get(0),
                Findings.NONE,
                List.of(),
                new Ranking(
                        List.of(),
                        0.03,
                        false,
                        List.of(),
                        List.of(),
                        List.of(),
                        new Ranking.HowFar(90, 143, 4576, 4576)),
                null);
    }
}
