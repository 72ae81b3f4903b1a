package fusetale.cli;

import fusetale.circuit.Circuit;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.report.BenchSheet;
import fusetale.report.SheetDrawing;
import fusetale.report.drawing.DrawingPicture;
import fusetale.report.drawing.DrawingPlan;
import fusetale.report.drawing.Marks;
import fusetale.report.drawing.SymbolStyle;
import fusetale.sentence.SentencePrinter;
import fusetale.store.AtomicFile;
import fusetale.store.Preferences.Paper;
import fusetale.store.UnwritableFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code sheet}: a bench sheet to print, power off first, then on. */
@Command(name = "sheet", mixinStandardHelpOptions = true)
final class Sheet implements Callable<Integer> {
    /** Pixels of a picture in a pixel of 1/96 inch: 150 in an inch. */
    private static final double PICTURE_SCALE = 1.5625;

    private static final Words WORDS = Words.of(Sheet.class);

    private final Console console;

    @Parameters(index = "0", paramLabel = "CIRCUIT", descriptionKey = "circuit")
    private String file = "";

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "FAULT", descriptionKey = "fault")
    private List<String> faults = new ArrayList<>();

    @Option(names = "--to", paramLabel = "FILE", required = true, descriptionKey = "sheet.to")
    private String to = "";

    @Option(names = "--paper", paramLabel = "A4|Letter", descriptionKey = "sheet.paper")
    private Paper paper = Paper.A4;

    @Option(names = "--repair", paramLabel = "NAME", descriptionKey = "sheet.repair")
    private String repair = "";

    @Mixin
    private BenchOptions bench = new BenchOptions();

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    Sheet(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Refused {
        String name = to.toLowerCase(Locale.ROOT);
        if (!name.endsWith(".pdf") && !name.endsWith(".png")) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("sheet.ending", to));
        }
        Path target = CircuitFiles.path(to);
        Circuit circuit = CircuitFiles.read(file, console);
        Asked asked = faults.isEmpty() ? Asked.arranging(circuit, List.of()) : Asked.supposing(circuit, faults);
        Supposition supposition = asked.told().sentence().supposition();
        Outcome off = Asking.of(bench.sheetQuestion(circuit, asked.told(), false), console)
                .outcome();
        Outcome on = Asking.of(bench.sheetQuestion(circuit, asked.told(), true), console)
                .outcome();
        DrawingPlan plan = DrawingPlan.of(circuit, SymbolStyle.IEC_60617);
        BenchSheet sheet = new BenchSheet(
                off,
                on,
                clauses(circuit, supposition),
                SheetDrawing.of(new DrawingPicture(plan, Marks.of(plan, on), DrawingPicture.Heading.NONE).blackOnly()),
                new BenchSheet.Details(repair, LocalDate.now(ZoneId.systemDefault()), paper, false));
        List<Path> written = name.endsWith(".pdf") ? List.of(pdf(sheet, target)) : pngs(sheet, target);
        if (json) {
            console.out().print(SheetJson.text(sheet, on, written));
        } else {
            console.print(sheet.told());
            written.forEach(w -> console.out().print(WORDS.say("sheet.written", w) + "\n"));
        }
        return ExitCodes.DONE;
    }

    private static Path pdf(BenchSheet sheet, Path target) throws Refused {
        write(target, sheet.pdf());
        return target;
    }

    /** One picture a page: {@code sheet.png}, {@code sheet-2.png}. */
    private static List<Path> pngs(BenchSheet sheet, Path target) throws Refused {
        List<Path> written = new ArrayList<>();
        String name = String.valueOf(target.getFileName());
        String stem = name.substring(0, name.length() - ".png".length());
        for (int page = 0; page < sheet.count(); page++) {
            Path each = page == 0 ? target : target.resolveSibling(stem + "-" + (page + 1) + ".png");
            write(each, sheet.png(page, PICTURE_SCALE));
            written.add(each);
        }
        return written;
    }

    private static void write(Path target, byte[] content) throws Refused {
        try {
            AtomicFile.write(target, content);
        } catch (UnwritableFile e) {
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
