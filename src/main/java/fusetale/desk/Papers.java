package fusetale.desk;

import fusetale.circuit.Circuit;
import fusetale.desk.export.Copied;
import fusetale.desk.export.Drawn;
import fusetale.desk.export.Ending;
import fusetale.desk.export.ExportModel;
import fusetale.desk.export.ExportView;
import fusetale.desk.export.Exports;
import fusetale.desk.export.Offer;
import fusetale.desk.sheet.SheetPage;
import fusetale.desk.sheet.SheetView;
import fusetale.desk.sheet.SystemPrinting;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.Found;
import fusetale.desk.state.OnPaper;
import fusetale.desk.state.Shown;
import fusetale.desk.tags.TagFigures;
import fusetale.desk.tags.TagRow;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import fusetale.fault.UnfitSupposition;
import fusetale.match.ReadingsWriter;
import fusetale.report.BenchSheet;
import fusetale.report.OutOfDatePicture;
import fusetale.report.Picture;
import fusetale.report.PictureFile;
import fusetale.report.SheetDrawing;
import fusetale.report.drawing.DrawingPicture;
import fusetale.report.drawing.DrawingPlan;
import fusetale.report.drawing.Marks;
import fusetale.sentence.SentencePrinter;
import fusetale.sentence.Sentences;
import fusetale.store.AtomicFile;
import fusetale.store.UnwritableFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javafx.scene.input.Clipboard;
import javafx.stage.Stage;

/** What leaves the window: bench sheet, files, clipboard. */
final class Papers {
    private static final Words WORDS = Words.of(Papers.class);

    private final OpenRepair repair;
    private final Program program;
    private final Stage stage;

    Papers(OpenRepair repair, Program program, Stage stage) {
        this.repair = repair;
        this.program = program;
        this.stage = stage;
    }

    void take(Command command) {
        switch (command) {
            case SHEET -> sheet();
            case EXPORT -> export();
            case COPY -> copy();
            case SAVE_READINGS -> saveReadings();
            default -> {
                // nothing of paper
            }
        }
    }

    private Optional<OnPaper> paper() {
        return OnPaper.of(repair.model());
    }

    /** Says what paper has to wait for. */
    private void waits(Optional<OnPaper> paper) {
        boolean stopped =
                paper.isEmpty() && !repair.model().workingProperty().get().busy();
        repair.window().notice(WORDS.say(stopped ? "sheet.first-look" : "sheet.wait"));
    }

    private List<String> faults(Outcome outcome) {
        try {
            return new SentencePrinter(outcome.question().healthy())
                    .clauses(outcome.question().supposition());
        } catch (UnfitSupposition e) {
            throw new IllegalStateException("what was worked out fits its board", e);
        }
    }

    /** The bench sheet; empty while one of its two halves is still being worked out. */
    private Optional<BenchSheet> pages(OnPaper paper) {
        Optional<Outcome> off = paper.off();
        return paper.on()
                .filter(on -> off.isPresent())
                .map(on -> new BenchSheet(
                        off.orElseThrow(),
                        on,
                        faults(paper.outcome()),
                        SheetDrawing.of(
                                new DrawingPicture(plan(paper), marks(paper), DrawingPicture.Heading.NONE).blackOnly()),
                        new BenchSheet.Details(
                                "",
                                LocalDate.now(ZoneId.systemDefault()),
                                program.preferences().paper(),
                                paper.old())));
    }

    private DrawingPlan plan(OnPaper paper) {
        return repair.window().commands().plan(paper.shown().board());
    }

    /** The marks of the outcome that is put on paper: those on the screen may belong to the next question already. */
    private Marks marks(OnPaper paper) {
        return Marks.of(plan(paper), paper.outcome());
    }

    /** The drawing under what it shows and why not to power up, both of the outcome whose marks it bears. */
    private Picture drawing(OnPaper paper) {
        DrawingPicture.Heading heading = new DrawingPicture.Heading(
                words(paper.shown()), paper.shown().board().name(), paper.danger());
        Picture picture = new DrawingPicture(plan(paper), marks(paper), heading);
        return paper.old() ? new OutOfDatePicture(picture) : picture;
    }

    /** The sentence that an answer belongs to, on its own board. */
    private String words(Shown shown) {
        DeskModel model = repair.model();
        Circuit board = shown.board();
        Sentences sentences = board.equals(model.board()) ? model.sentences() : new Sentences(board);
        return sentences.text(shown.sentence());
    }

    private void sheet() {
        Optional<OnPaper> paper = paper();
        Optional<BenchSheet> pages = paper.flatMap(this::pages);
        if (pages.isEmpty()) {
            waits(paper);
            return;
        }
        BenchSheet sheet = pages.get();
        List<SheetPage> previews = IntStream.range(0, sheet.count())
                .mapToObj(page -> new SheetPage(scale -> sheet.png(page, scale), sheet.spoken(page)))
                .toList();
        SheetView[] view = new SheetView[1];
        view[0] = new SheetView(
                sheet.title(),
                previews,
                new SystemPrinting(stage, program.preferences().paper()),
                () -> savePdf(sheet, view[0]),
                program::leave);
        program.show(view[0]);
    }

    private void savePdf(BenchSheet sheet, SheetView view) {
        Optional<Path> file = chosen("bench-sheet.pdf", "pdf");
        file.ifPresent(f -> {
            try {
                AtomicFile.write(f, sheet.pdf());
                view.say(WORDS.say("written", f));
            } catch (UnwritableFile e) {
                view.say(String.valueOf(e.getMessage()));
            }
        });
    }

    private void export() {
        Optional<OnPaper> whole = paper();
        if (whole.isEmpty()) {
            waits(whole);
            return;
        }
        OnPaper paper = whole.get();
        Optional<BenchSheet> pages = pages(paper);
        Picture drawing = drawing(paper);
        Drawn drawn = new Drawn() {
            @Override
            public byte[] png(int scale) {
                return PictureFile.png(drawing, scale);
            }

            @Override
            public byte[] svg() {
                return PictureFile.SVG.bytes(drawing);
            }
        };
        List<Offer> offers = new ArrayList<>(
                Exports.of(paper.outcome(), faults(paper.outcome()), paper.old(), drawn, () -> pages.orElseThrow()));
        if (pages.isEmpty()) {
            offers.removeIf(o -> o.fileName().endsWith(".pdf"));
        }
        ExecutorService work = Executors.newSingleThreadExecutor(r -> {
            Thread thread = new Thread(r, "writes files");
            thread.setDaemon(true);
            return thread;
        });
        ExportModel model = new ExportModel(offers, o -> chosen(o.fileName(), o.ending()), work, Platform::runLater);
        program.show(new ExportView(model, paper.old(), () -> {
            work.shutdown();
            program.leave();
        }));
    }

    private Optional<Path> chosen(String name, String ending) {
        return program.files().toSave(name, ending).map(file -> Ending.of(file, ending));
    }

    /** What was found, as a table that opens in any spreadsheet and here again. */
    private void saveReadings() {
        DeskModel model = repair.model();
        if (model.state().found().isEmpty()) {
            repair.window().notice(WORDS.say("readings.none"));
            return;
        }
        String name = WORDS.say("readings.name", model.board().name());
        chosen(name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", "-"), "csv")
                .ifPresent(file -> {
                    String text = new ReadingsWriter(model.board())
                            .text(
                                    Found.findings(model.state().found()),
                                    model.state().sentence().setting().meter());
                    try {
                        AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8));
                        repair.window().notice(WORDS.say("written", file));
                    } catch (UnwritableFile e) {
                        repair.window().notice(String.valueOf(e.getMessage()));
                    }
                });
    }

    /** The sentence that the figures on the tags belong to: of a hand that moves, the one it stands at. */
    private String answered() {
        DeskModel model = repair.model();
        return model.glancedProperty()
                .get()
                .map(g -> model.sentences().text(g.sentence()))
                .or(() -> model.shownProperty().get().map(this::words))
                .orElseGet(() -> model.sentences().text(model.state().sentence()));
    }

    /** Whether the figures on the tags answer another question than the one that stands now. */
    private boolean old() {
        DeskModel model = repair.model();
        return model.glancedProperty().get().isEmpty()
                && model.shownProperty().get().isPresent()
                && model.freshness() != DeskModel.Freshness.FRESH;
    }

    /** Copies the focused tag, or all of them, with the picture of the readings. */
    private void copy() {
        boolean old = old();
        String sentence = old ? WORDS.say("copied.out-of-date") + "\n" + answered() : answered();
        Optional<TagFigures> focused = repair.window().focusedTag();
        List<TagFigures> tags = focused.map(List::of).orElseGet(() -> TagRow.of(repair.model()));
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of(
                WORDS.say("cell.point"),
                WORDS.say("cell.setting"),
                WORDS.say(old ? "cell.healthy.out-of-date" : "cell.healthy"),
                WORDS.say(old ? "cell.supposed.out-of-date" : "cell.supposed"),
                WORDS.say("cell.read")));
        tags.forEach(t -> cells.add(List.of(t.name(), t.check().function().words(), t.healthy(), t.shows(), t.read())));
        String text = focused.map(t -> sentence + "\n" + t.spoken()).orElse(sentence);
        Copied copied = paper().map(p -> new Copied(
                        text,
                        cells,
                        () -> PictureFile.png(Exports.picture(p.outcome(), faults(p.outcome()), p.old()), 1)))
                .orElseGet(() -> new Copied(text, cells, null));
        Clipboard.getSystemClipboard().setContent(copied.content());
        repair.window().notice(WORDS.say("copied"));
    }
}
