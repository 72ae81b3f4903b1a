package fusetale.cli;

import fusetale.bench.Meter;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Progress;
import fusetale.explore.Question;
import fusetale.explore.Words;
import fusetale.match.Ask;
import fusetale.match.Candidate;
import fusetale.match.Findings;
import fusetale.match.Matcher;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.match.ReadingsFile;
import fusetale.match.ReadingsReader;
import fusetale.report.Csv;
import fusetale.report.MatchTables;
import fusetale.report.MatchWords;
import fusetale.report.Matched;
import fusetale.sentence.MeasuredParser;
import fusetale.sentence.SentenceException;
import fusetale.store.Store;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code match}: from readings back to what is wrong, and what to measure next. */
@Command(name = "match", mixinStandardHelpOptions = true)
final class Match implements Callable<Integer> {
    private static final Words WORDS = Words.of(Match.class);

    private final Console console;
    private final Matching matching;

    @Parameters(index = "0", paramLabel = "CIRCUIT", descriptionKey = "circuit")
    private String file = "";

    @Parameters(index = "1", paramLabel = "READINGS.csv", descriptionKey = "match.readings")
    private String readings = "";

    @Option(names = "--next", descriptionKey = "match.next")
    private boolean next;

    @Option(names = "--meter", paramLabel = "NAME", descriptionKey = "meter")
    private @Nullable String meter;

    @Option(names = "--out-of-reach", paramLabel = "POINT", split = ",", descriptionKey = "match.out-of-reach")
    private List<String> outOfReach = new ArrayList<>();

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Option(names = "--csv", descriptionKey = "csv")
    private boolean csv;

    Match(Console console, Matching matching) {
        this.console = console;
        this.matching = matching;
    }

    /** Makes a matcher for one machine. */
    @FunctionalInterface
    interface Matching {
        /** By working out what every supposition lets expect, kept on the disk from one call to the next. */
        Matching WORKED_OUT = (circuit, meter) -> {
            Matcher matcher = Matcher.of(
                    circuit,
                    meter,
                    new Matcher.Settings(
                            Runtime.getRuntime().availableProcessors(),
                            Question.Options.USUAL.seed(),
                            Store.here().dictionaries()));
            return new Work() {
                @Override
                public Ranking rank(
                        Findings findings, Consumer<Ranking> sharper, Progress progress, BooleanSupplier stopped)
                        throws UnfitArrangement {
                    Ranking ranking = matcher.rank(findings, sharper, progress, stopped);
                    return ranking.with(matcher.lookAlikes(findings, progress, stopped));
                }

                @Override
                public NextReadings next(
                        Findings findings, Set<String> outOfReach, Progress progress, BooleanSupplier stopped)
                        throws UnfitArrangement {
                    return matcher.next(findings, outOfReach, List.<Ask>of(), progress, stopped);
                }

                @Override
                public void keep() {
                    matcher.keep();
                }
            };
        };

        /** One for a machine and the meter it was read with. */
        Work of(Circuit circuit, Meter meter);
    }

    /** A matcher at work, as {@link Matcher}. */
    interface Work {
        /** What explains the findings. */
        Ranking rank(Findings findings, Consumer<Ranking> sharper, Progress progress, BooleanSupplier stopped)
                throws UnfitArrangement;

        /** What to measure next. */
        NextReadings next(Findings findings, Set<String> outOfReach, Progress progress, BooleanSupplier stopped)
                throws UnfitArrangement;

        /** Keeps what was worked out, for the next call. */
        default void keep() {}
    }

    @Override
    public Integer call() throws Refused {
        if (json && csv) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("json-or-csv"));
        }
        if (csv && next) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("match.next-csv"));
        }
        if (!outOfReach.isEmpty() && !next) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("match.reach-next"));
        }
        Circuit circuit = CircuitFiles.read(file, console);
        Set<String> unreachable = unreachable(circuit);
        ReadingsFile read = new ReadingsReader(circuit).read(CircuitFiles.path(readings));
        if (!read.usable()) {
            throw new Refused(ExitCodes.UNUSABLE, CircuitFiles.lines(read.problems()));
        }
        Meter with = meter(read);
        Work work = matching.of(circuit, with);
        try (Interruption interruption = Interruption.listening()) {
            Matched matched = matched(work, circuit, with, read, unreachable, interruption);
            console.tellProgress("");
            if (interruption.asked()) {
                console.err().print(WORDS.say("match.interrupted") + "\n");
            }
            print(matched);
            console.out().flush();
            console.err().flush();
            // once the answer is there to be read
            work.keep();
            return matched.noneFits() ? ExitCodes.NO : ExitCodes.DONE;
        } catch (UnfitArrangement unfit) {
            throw new Refused(ExitCodes.UNUSABLE, String.valueOf(unfit.getMessage()));
        }
    }

    /** The meter asked for, or the one that the file names, or the usual one. */
    private Meter meter(ReadingsFile read) throws Refused {
        if (meter != null) {
            return BenchOptions.namedMeter(meter);
        }
        if (read.meters().size() > 1) {
            throw new Refused(
                    ExitCodes.UNUSABLE,
                    WORDS.say(
                            "match.meters",
                            readings,
                            read.meters().stream().map(Meter::name).collect(Collectors.joining("; "))));
        }
        return read.meters().isEmpty() ? Meter.builtIn().get(0) : read.meters().get(0);
    }

    private Set<String> unreachable(Circuit circuit) throws Refused {
        MeasuredParser parser = new MeasuredParser(circuit);
        Set<String> points = new LinkedHashSet<>();
        for (String point : outOfReach) {
            try {
                points.add(parser.check(point, "", MeterFunction.DC_VOLTS).from());
            } catch (SentenceException unknown) {
                throw new Refused(ExitCodes.UNUSABLE, "--out-of-reach: " + unknown.getMessage());
            }
        }
        return points;
    }

    private Matched matched(
            Work work,
            Circuit circuit,
            Meter with,
            ReadingsFile read,
            Set<String> unreachable,
            Interruption interruption)
            throws Refused, UnfitArrangement {
        Leading leading = new Leading(new MatchWords(circuit));
        Progress told = (done, of) -> console.tellProgress(leading.told(done, of));
        Ranking ranking = work.rank(read.findings(), leading, told, interruption::asked);
        if (ranking.candidates().isEmpty() && ranking.howFar().boards() == 0) {
            throw new Refused(ExitCodes.NO_ANSWER, WORDS.say("match.no-answer"));
        }
        NextReadings after = next && !interruption.asked()
                ? work.next(
                        read.findings(),
                        unreachable,
                        (done, of) -> console.tellProgress(WORDS.say("match.progress-next", done, of)),
                        interruption::asked)
                : null;
        return new Matched(circuit, with, read.findings(), read.lines(), ranking, after);
    }

    /** Who leads so far, beside how far the work has come. */
    private static final class Leading implements Consumer<Ranking> {
        private final MatchWords words;
        private volatile String leader = "";

        Leading(MatchWords words) {
            this.words = words;
        }

        @Override
        public void accept(Ranking ranking) {
            for (Candidate first : ranking.candidates().stream().limit(1).toList()) {
                leader = WORDS.say("match.leads", words.parts(first.repair()), MatchWords.said(first.share()));
            }
        }

        String told(int done, int of) {
            return WORDS.say("match.progress", done, of) + leader;
        }
    }

    private void print(Matched matched) {
        if (json) {
            console.out().print(MatchJson.text(matched));
        } else if (csv) {
            console.warn(MatchTables.dangers(matched.ranking()));
            console.out().print(Csv.match(matched));
        } else {
            console.print(MatchTables.of(matched, console.emphasis()));
        }
    }
}
