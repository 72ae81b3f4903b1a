package fusetale.desk;

import fusetale.desk.export.Copied;
import fusetale.desk.export.Drawn;
import fusetale.desk.export.ExportModel;
import fusetale.desk.export.ExportView;
import fusetale.desk.export.Exports;
import fusetale.desk.export.Offer;
import fusetale.desk.sheet.SheetPage;
import fusetale.desk.sheet.SheetView;
import fusetale.desk.sheet.SystemPrinting;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.DeskModel.Freshness;
import fusetale.desk.state.Found;
import fusetale.desk.state.Shown;
import fusetale.desk.tags.TagFigures;
import fusetale.desk.tags.TagRow;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import fusetale.fault.UnfitSupposition;
import fusetale.match.ReadingsWriter;
import fusetale.report.BenchSheet;
import fusetale.report.Picture;
import fusetale.report.PictureFile;
import fusetale.report.SheetDrawing;
import fusetale.sentence.SentencePrinter;
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

    private Optional<Outcome> shown() {
        return repair.model().shownProperty().get().map(Shown::outcome);
    }

    private boolean old() {
        return repair.model().freshness() != Freshness.FRESH;
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
    private Optional<BenchSheet> pages() {
        DeskModel model = repair.model();
        Optional<Outcome> one = shown();
        Optional<Outcome> two = model.otherPowerProperty()
                .get()
                .filter(o -> o.sentence().supposition().equals(model.asked().supposition()))
                .map(Shown::outcome);
        if (one.isEmpty() || two.isEmpty()) {
            return Optional.empty();
        }
        boolean on = one.get().question().arrangement().powerOn();
        return Optional.of(new BenchSheet(
                on ? two.get() : one.get(),
                on ? one.get() : two.get(),
                faults(one.get()),
                SheetDrawing.of(repair.window().commands().printed()),
                new BenchSheet.Details(
                        "",
                        LocalDate.now(ZoneId.systemDefault()),
                        program.preferences().paper(),
                        old())));
    }

    private void sheet() {
        Optional<BenchSheet> pages = pages();
        if (pages.isEmpty()) {
            repair.window().notice(WORDS.say("sheet.wait"));
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
        Optional<Outcome> outcome = shown();
        if (outcome.isEmpty()) {
            repair.window().notice(WORDS.say("sheet.wait"));
            return;
        }
        Picture drawing = repair.window().commands().picture();
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
                Exports.of(outcome.get(), faults(outcome.get()), old(), drawn, () -> pages().orElseThrow()));
        if (pages().isEmpty()) {
            offers.removeIf(o -> o.fileName().endsWith(".pdf"));
        }
        ExecutorService work = Executors.newSingleThreadExecutor(r -> {
            Thread thread = new Thread(r, "writes files");
            thread.setDaemon(true);
            return thread;
        });
        ExportModel model = new ExportModel(offers, o -> chosen(o.fileName(), o.ending()), work, Platform::runLater);
        program.show(new ExportView(model, old(), () -> {
            work.shutdown();
            program.leave();
        }));
    }

    private Optional<Path> chosen(String name, String ending) {
        return program.files().toSave(name, ending);
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

    /** Copies the focused tag, or all of them, with the picture of the readings. */
    private void copy() {
        String sentence = repair.model().sentences().text(repair.model().state().sentence());
        Optional<TagFigures> focused = repair.window().focusedTag();
        List<TagFigures> tags = focused.map(List::of).orElseGet(() -> TagRow.of(repair.model()));
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of(
                WORDS.say("cell.point"),
                WORDS.say("cell.setting"),
                WORDS.say("cell.healthy"),
                WORDS.say("cell.supposed"),
                WORDS.say("cell.read")));
        tags.forEach(t -> cells.add(List.of(t.name(), t.check().function().words(), t.healthy(), t.shows(), t.read())));
        String text = focused.map(t -> sentence + "\n" + t.spoken()).orElse(sentence);
        Copied copied = shown().map(o ->
                        new Copied(text, cells, () -> PictureFile.png(Exports.picture(o, faults(o), old()), 1)))
                .orElseGet(() -> Copied.text(text));
        Clipboard.getSystemClipboard().setContent(copied.content());
        repair.window().notice(WORDS.say("copied"));
    }
}
