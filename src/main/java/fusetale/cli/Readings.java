package fusetale.cli;

import fusetale.circuit.Circuit;
import fusetale.explore.Question;
import fusetale.explore.StagedStart;
import fusetale.explore.Words;
import fusetale.report.Csv;
import fusetale.report.StageTables;
import fusetale.report.Tables;
import fusetale.sentence.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code readings}: what a healthy machine shows, with its spread. */
@Command(name = "readings", mixinStandardHelpOptions = true)
final class Readings implements Callable<Integer> {
    private static final Words WORDS = Words.of(Readings.class);

    private final Console console;

    @Parameters(index = "0", paramLabel = "CIRCUIT", descriptionKey = "circuit")
    private String file = "";

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "BENCH", descriptionKey = "bench")
    private List<String> lines = new ArrayList<>();

    @Mixin
    private BenchOptions bench = new BenchOptions();

    @Option(names = "--staged", descriptionKey = "staged")
    private boolean staged;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Option(names = "--csv", descriptionKey = "csv")
    private boolean csv;

    Readings(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Refused {
        if (json && csv) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("json-or-csv"));
        }
        if (staged) {
            new LeftOut()
                    .no("--csv", csv)
                    .no("--observations", bench.everySight())
                    .check("staged.leave-out");
        }
        if (csv) {
            new LeftOut().no("--observations", bench.everySight()).check("csv.leave-out");
        }
        Circuit circuit = CircuitFiles.read(file, console);
        Told told = Asked.arranging(circuit, lines).told();
        if (!told.sentence().supposition().isNothing()) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("readings.supposing"));
        }
        Question question = bench.question(circuit, told);
        if (staged) {
            return staged(question);
        }
        Asking asked = Asking.of(question, console);
        if (json) {
            console.out().print(OutcomeJson.readings(asked));
        } else if (csv) {
            console.warn(Tables.dangers(asked.outcome()));
            console.out().print(Csv.readings(asked.outcome()));
        } else {
            console.print(Tables.readings(
                    asked.outcome(), console.emphasis(), new Tables.More(bench.everySight(), false, false)));
        }
        return ExitCodes.DONE;
    }

    private int staged(Question question) throws Refused {
        long start = System.nanoTime();
        StagedStart stages = Asking.staged(question, console);
        if (json) {
            Asking last = new Asking(stages.last().outcome(), (System.nanoTime() - start) / 1e6);
            console.out().print(OutcomeJson.readings(last, stages));
        } else {
            console.print(StageTables.of(stages, question, "", console.emphasis()));
        }
        return ExitCodes.DONE;
    }
}
