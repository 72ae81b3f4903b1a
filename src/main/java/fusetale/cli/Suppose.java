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
import fusetale.report.Picture;
import fusetale.report.Settings;
import fusetale.report.StageTables;
import fusetale.report.SupposePicture;
import fusetale.report.Tables;
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
        place();
        PictureFiles.check(picture);
        drawing.check();
        drawing.checkBeside(picture);
        Circuit circuit = CircuitFiles.read(file, console);
        Asked asked = Asked.supposing(circuit, faults);
        Supposition supposition = asked.told().sentence().supposition();
        if (supposition.isNothing()) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("no-fault"));
        }
        Question question = bench.question(circuit, asked.told());
        List<String> clauses = clauses(circuit, supposition);
        if (staged) {
            return staged(question, clauses);
        }
        Asking asking = Asking.of(question, console);
        // first, so that what cannot be done ends without half an answer
        if (picture != null) {
            PictureFiles.write(picture, picture(asking.outcome(), clauses), console);
        }
        drawing.draw(asking.outcome(), asked.text(question), console);
        print(asking, asked.text(question));
        return ExitCodes.DONE;
    }

    /** What is asked for must have a place in the answer. */
    private void place() throws Refused {
        if (staged) {
            new LeftOut()
                    .no("--csv", csv)
                    .no("--picture", picture != null)
                    .no("--drawing", drawing.asked())
                    .no("--stress", stress)
                    .no("--aftermath", playedOut)
                    .no("--observations", bench.everySight())
                    .check("staged.leave-out");
        }
        if (csv) {
            new LeftOut()
                    .no("--stress", stress)
                    .no("--aftermath", playedOut && picture == null)
                    .no("--observations", bench.everySight())
                    .check("csv.leave-out");
        }
    }

    private Picture picture(Outcome outcome, List<String> clauses) {
        Aftermath aftermath = outcome.aftermath();
        String setting = Settings.words(outcome.question());
        return playedOut && aftermath != null
                ? new AftermathPicture(outcome, aftermath, clauses, setting)
                : new SupposePicture(outcome, clauses, setting);
    }

    private int staged(Question question, List<String> clauses) throws Refused {
        long start = System.nanoTime();
        StagedStart stages = Asking.staged(question, console);
        Asking last = new Asking(stages.last().outcome(), (System.nanoTime() - start) / 1e6);
        // how the bench is set differs from stage to stage
        String sentence = new SupposePicture(last.outcome(), clauses, Settings.words(question)).sentence();
        if (json) {
            console.out().print(OutcomeJson.suppose(last, sentence, stages));
        } else {
            console.print(StageTables.of(stages, question, sentence, console.emphasis()));
        }
        return ExitCodes.DONE;
    }

    private void print(Asking asking, String sentence) {
        Outcome outcome = asking.outcome();
        if (json) {
            console.out().print(OutcomeJson.suppose(asking, sentence, more()));
        } else if (csv) {
            console.warn(Tables.dangers(outcome));
            console.out().print(Csv.suppose(outcome));
        } else {
            console.print(Tables.suppose(outcome, sentence, console.emphasis(), more()));
        }
    }

    private Tables.More more() {
        return new Tables.More(bench.everySight(), stress, playedOut);
    }

    private static List<String> clauses(Circuit circuit, Supposition supposition) throws Refused {
        try {
            return new SentencePrinter(circuit).clauses(supposition);
        } catch (UnfitSupposition e) {
            throw new Refused(ExitCodes.UNUSABLE, String.valueOf(e.getMessage()));
        }
    }
}
