package fusetale.cli;

import fusetale.aftermath.Aftermath;
import fusetale.circuit.Circuit;
import fusetale.explore.Outcome;
import fusetale.explore.Question;
import fusetale.explore.StagedStart;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.report.AftermathPicture;
import fusetale.report.Csv;
import fusetale.report.Settings;
import fusetale.report.StageTables;
import fusetale.report.SupposePicture;
import fusetale.report.Tables;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import fusetale.sentence.SentencePrinter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code suppose}: as built beside as supposed, ranked by how far each reading moved. */
@Command(name = "suppose", mixinStandardHelpOptions = true)
final class Suppose implements Callable<Integer> {
    private static final Words WORDS = Words.of(Suppose.class);

    private final Console console;

    @Parameters(index = "0", paramLabel = "CIRCUIT", descriptionKey = "circuit")
    private String file = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FAULT", descriptionKey = "fault")
    private List<String> faults = new ArrayList<>();

    @Mixin
    private BenchOptions bench = new BenchOptions();

    @Option(names = "--picture", paramLabel = "FILE", descriptionKey = "picture")
    private @Nullable String picture;

    @Mixin
    private DrawingOptions drawing = new DrawingOptions();

    @Option(names = "--staged", descriptionKey = "staged")
    private boolean staged;

    @Option(names = "--aftermath", descriptionKey = "aftermath")
    private boolean playedOut;

    @Option(names = "--stress", descriptionKey = "stress")
    private boolean stress;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Option(names = "--csv", descriptionKey = "csv")
    private boolean csv;

    Suppose(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Refused {
        if (json && csv) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("json-or-csv"));
        }
        PictureFiles.check(picture);
        drawing.check();
        Circuit circuit = CircuitFiles.read(file, console);
        Supposition supposition = supposition(circuit);
        if (staged) {
            return staged(circuit, supposition);
        }
        Asking asked = Asking.of(bench.question(circuit, supposition), console);
        List<String> clauses = clauses(circuit, supposition);
        SupposePicture drawn = new SupposePicture(
                asked.outcome(), clauses, Settings.words(asked.outcome().question()));
        // first, so that what cannot be done ends without half an answer
        if (picture != null) {
            Aftermath aftermath = asked.outcome().aftermath();
            PictureFiles.write(
                    picture,
                    playedOut && aftermath != null
                            ? new AftermathPicture(
                                    asked.outcome(),
                                    aftermath,
                                    clauses,
                                    Settings.words(asked.outcome().question()))
                            : drawn,
                    console);
        }
        drawing.draw(asked.outcome(), drawn.sentence(), console);
        print(asked, drawn);
        return ExitCodes.DONE;
    }

    private int staged(Circuit circuit, Supposition supposition) throws Refused {
        if (csv || picture != null || drawing.asked()) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("staged.no-csv"));
        }
        long start = System.nanoTime();
        Question question = bench.question(circuit, supposition);
        StagedStart stages = Asking.staged(question, console);
        Asking last = new Asking(stages.last().outcome(), (System.nanoTime() - start) / 1e6);
        String sentence =
                new SupposePicture(last.outcome(), clauses(circuit, supposition), Settings.words(question)).sentence();
        if (json) {
            console.out().print(OutcomeJson.suppose(last, sentence, stages));
        } else {
            console.print(StageTables.of(stages, question, sentence, console.emphasis()));
        }
        return ExitCodes.DONE;
    }

    private void print(Asking asked, SupposePicture drawn) {
        Outcome outcome = asked.outcome();
        if (json) {
            console.out().print(OutcomeJson.suppose(asked, drawn.sentence(), more()));
        } else if (csv) {
            console.out().print(Csv.suppose(outcome));
        } else {
            console.print(Tables.suppose(outcome, drawn.sentence(), console.emphasis(), more()));
        }
    }

    private Tables.More more() {
        return new Tables.More(bench.everySight(), stress, playedOut);
    }

    private Supposition supposition(Circuit circuit) throws Refused {
        try {
            Supposition supposition = new SentenceParser(circuit).parse(faults);
            if (supposition.isNothing()) {
                throw new Refused(ExitCodes.UNUSABLE, WORDS.say("no-fault"));
            }
            return supposition;
        } catch (SentenceException e) {
            throw new Refused(ExitCodes.UNUSABLE, String.valueOf(e.getMessage()));
        }
    }

    private static List<String> clauses(Circuit circuit, Supposition supposition) throws Refused {
        try {
            return new SentencePrinter(circuit).clauses(supposition);
        } catch (UnfitSupposition e) {
            throw new Refused(ExitCodes.UNUSABLE, String.valueOf(e.getMessage()));
        }
    }
}
