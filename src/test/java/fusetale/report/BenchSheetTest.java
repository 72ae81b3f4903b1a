package fusetale.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fusetale.aftermath.Aftermath;
import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.TestPoint;
import fusetale.explore.Answer;
import fusetale.explore.Explorer;
import fusetale.explore.Outcome;
import fusetale.explore.Question;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.report.drawing.DrawingPicture;
import fusetale.report.drawing.DrawingPlan;
import fusetale.report.drawing.Marks;
import fusetale.report.drawing.SymbolStyle;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import fusetale.sentence.SentencePrinter;
import fusetale.store.Preferences;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The PDF is read by PDFBox's own reader and renderer; sizes of paper are those of ISO 216 and ANSI/ASME Y14.1. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BenchSheetTest {
    private static final double POINTS_IN_A_MILLIMETRE = 72 / 25.4;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private final Circuit circuit = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/first-light.yaml"))
            .circuit());
    private Supposition shorted = Supposition.NOTHING;
    private List<String> clauses = List.of();
    private Outcome off;
    private Outcome on;

    @BeforeAll
    void ask() throws SentenceException, UnfitSupposition {
        shorted = new SentenceParser(circuit).parse(List.of("BR1.leg1=short", "F1=wrong-rating:10A"));
        clauses = new SentencePrinter(circuit).clauses(shorted);
        off = outcome(false);
        on = outcome(true);
    }

    private Outcome outcome(boolean powerOn) {
        Question question = new Question(
                circuit,
                shorted,
                powerOn ? Arrangement.powered(circuit) : Arrangement.unpowered(),
                Meter.builtIn().get(0),
                Check.all(circuit, powerOn),
                new Question.Options(4, 1, 0, Aftermath.Settings.USUAL));
        Answer answer = new Explorer(1).answer(question, (done, of) -> {}, () -> false);
        return ((Answer.Answered) answer).outcome();
    }

    private BenchSheet sheet(Preferences.Paper paper, boolean outOfDate, SheetDrawing drawing) {
        return new BenchSheet(off, on, clauses, drawing, new BenchSheet.Details("the plank", DAY, paper, outOfDate));
    }

    private BenchSheet sheet() {
        return sheet(Preferences.Paper.A4, false, SheetDrawing.NONE);
    }

    private static String text(BenchSheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void whatIsSupposedStandsInFullHoweverMuch() throws IOException {
        List<String> many = IntStream.rangeClosed(1, 14)
                .mapToObj(k -> "C" + k + " is dried out to " + 5 * k + " % left")
                .toList();
        BenchSheet.Details details = new BenchSheet.Details("", DAY, Preferences.Paper.A4, false);
        BenchSheet sheet = new BenchSheet(off, on, many, SheetDrawing.NONE, details);

        assertThat(text(sheet).replaceAll("\\s+", " "))
                .contains("Supposed: C1 is dried out to 5 % left and C2 is", "and C14 is dried out to 70 % left.")
                .contains(sheet.sentence());
        assertThat(sheet.spoken(0)).contains(sheet.sentence());
    }

    @Test
    void headSaysForWhichMainsTheMachineIsMade() throws IOException {
        assertThat(text(sheet())).contains("25 November 2026, made for 120 V 60 Hz");
    }

    @Test
    void textIsTextAndSaysWhatAHandAtTheBenchNeeds() throws IOException {
        String text = text(sheet());

        assertThat(text)
                .contains("Bench sheet", "First Light, the plank", "25 November 2026", "Do not power up")
                .contains("Power off, plug out", "Power on, mains 120 V", "you read", "F1", "2 A slow, 6.3 × 32 mm")
                .contains("supposed to hold 10 A slow", "capacitor", "primary", "Fusetale 1 of 1");
        assertThat(circuit.points())
                .extracting(TestPoint::name)
                .allSatisfy(p -> assertThat(text).contains(p));
    }

    @Test
    void itsFiguresAreThoseOfTheOutcomes() throws IOException {
        String text = text(sheet());

        assertThat(sheet().cells(true)).hasSizeGreaterThanOrEqualTo(5);
        for (Outcome outcome : List.of(off, on)) {
            List<String> shown =
                    outcome.readings().stream().map(r -> r.asSupposed().shows()).toList();
            assertThat(sheet().cells(outcome.question().arrangement().powerOn()))
                    .allSatisfy(row -> {
                        assertThat(shown).contains(row.get(3));
                        assertThat(text).contains(row.get(2)).contains(row.get(3));
                    });
        }
    }

    @Test
    void typefacesTravelInTheFile() throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet().pdf())) {
            List<PDFont> fonts = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                for (var name : page.getResources().getXObjectNames()) {
                    var form = (PDFormXObject) page.getResources().getXObject(name);
                    for (var font : form.getResources().getFontNames()) {
                        fonts.add(form.getResources().getFont(font));
                    }
                }
            }

            assertThat(fonts).hasSizeGreaterThanOrEqualTo(5).allMatch(PDFont::isEmbedded);
        }
    }

    @Test
    void pagesHaveTheSizeOfTheirPaperAcross() throws IOException {
        try (PDDocument a4 = Loader.loadPDF(sheet().pdf());
                PDDocument letter = Loader.loadPDF(sheet(Preferences.Paper.LETTER, false, SheetDrawing.NONE)
                        .pdf())) {
            assertThat(a4.getPage(0).getMediaBox().getWidth())
                    .isCloseTo((float) (297 * POINTS_IN_A_MILLIMETRE), within(0.01f));
            assertThat(a4.getPage(0).getMediaBox().getHeight())
                    .isCloseTo((float) (210 * POINTS_IN_A_MILLIMETRE), within(0.01f));
            assertThat(letter.getPage(0).getMediaBox().getWidth()).isEqualTo(11 * 72);
            assertThat(letter.getPage(0).getMediaBox().getHeight()).isEqualTo(8.5f * 72);
        }
    }

    @Test
    void itIsBlackOnly() throws IOException {
        itIsBlackOnly(sheet());
    }

    private static void itIsBlackOnly(BenchSheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 72);
            int dark = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    Color colour = new Color(image.getRGB(x, y));
                    assertThat(colour.getRed()).isEqualTo(colour.getGreen()).isEqualTo(colour.getBlue());
                    dark += colour.getRed() < 64 ? 1 : 0;
                }
            }
            assertThat(dark).as("something is printed").isGreaterThan(2000);
        }
    }

    @Test
    void theSameSheetGivesTheSameBytes() {
        assertThat(sheet().pdf()).isEqualTo(sheet().pdf());
        assertThat(sheet().png(0, 1)).isEqualTo(sheet().png(0, 1));
    }

    @Test
    void whatIsOutOfDateSaysSo() throws IOException {
        assertThat(text(sheet())).doesNotContain("Out of date");
        assertThat(text(sheet(Preferences.Paper.A4, true, SheetDrawing.NONE))).contains("Out of date");
        assertThat(sheet(Preferences.Paper.A4, true, SheetDrawing.NONE).spoken(0))
                .contains("Out of date");
    }

    @Test
    void theDrawingGetsABoxAndWhatDoesNotFitGoesOnAFurtherPage() throws IOException {
        List<Rectangle2D> boxes = new ArrayList<>();
        SheetDrawing large = new SheetDrawing() {
            @Override
            public double heightAt(double widthPixels) {
                return 10_000;
            }

            @Override
            public double scaleIn(double widthPixels, double heightPixels) {
                return 1;
            }

            @Override
            public void paint(Graphics2D g, Rectangle2D box) {
                boxes.add(box);
            }
        };
        BenchSheet sheet = sheet(Preferences.Paper.LETTER, false, large);
        String text = text(sheet);

        assertThat(sheet.count()).isGreaterThan(1);
        assertThat(boxes).as("on the first page alone").hasSize(1).allSatisfy(b -> {
            assertThat(b.getMinX()).isPositive();
            assertThat(b.getMaxX()).isLessThan(sheet.widthPixels());
            assertThat(b.getHeight()).isLessThan(sheet.heightPixels() / 2);
        });
        assertThat(text).contains("Fusetale 1 of " + sheet.count(), "Fusetale " + sheet.count() + " of");
        assertThat(circuit.points())
                .extracting(TestPoint::name)
                .allSatisfy(p -> assertThat(text).contains(p));
    }

    @Test
    void theDrawingOfTheMachineIsPrintedInBlackWithItsNamesAsText() throws IOException {
        DrawingPlan plan = DrawingPlan.of(circuit, SymbolStyle.IEC_60617);
        BenchSheet sheet = sheet(
                Preferences.Paper.A4,
                false,
                SheetDrawing.of(new DrawingPicture(plan, Marks.of(plan, on), DrawingPicture.Heading.NONE).blackOnly()));

        assertThat(text(sheet)).contains("BR1", "R2", "C1");
        itIsBlackOnly(sheet);
    }

    @Test
    void aDrawingTooSmallToReadBesideTheTablesGetsAPageOfItsOwn() {
        Picture poster = new Picture() {
            @Override
            public int width() {
                return 2000;
            }

            @Override
            public int height() {
                return 1700;
            }

            @Override
            public String sentence() {
                return "";
            }

            @Override
            public String description() {
                return "";
            }

            @Override
            public void paint(Graphics2D g) {
                g.setColor(Color.BLACK);
                g.fillRect(0, 0, 2000, 1700);
            }
        };

        assertThat(sheet(Preferences.Paper.A4, false, SheetDrawing.of(poster)).count())
                .isEqualTo(sheet().count() + 1);
    }

    @Test
    void twoOutcomesOfOneSideAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BenchSheet(
                        on,
                        on,
                        clauses,
                        SheetDrawing.NONE,
                        new BenchSheet.Details("", DAY, Preferences.Paper.A4, false)));
    }

    @Test
    void aTableForASpreadsheetHasItsUnitsInTheHeadings() {
        List<String> lines = Csv.sheet(on, false).lines().toList();

        assertThat(lines.get(0))
                .startsWith("from,to,label,\"d.c. volts, as built [V]\"")
                .doesNotContain("out of date");
        assertThat(lines).hasSize(1 + circuit.points().size());
        assertThat(lines.subList(1, lines.size())).allMatch(l -> l.split(",").length >= 10 && !l.contains(" V"));
        assertThat(Csv.sheet(on, true).lines()).allMatch(l -> l.endsWith("out of date"));
    }

    @Test
    void aPictureThatIsOutOfDateSaysSo() {
        Picture picture = new SupposePicture(on, clauses, Settings.words(on.question()));

        assertThat(new OutOfDatePicture(picture).description()).contains("Out of date");
        assertThat(new OutOfDatePicture(picture).height()).isGreaterThan(picture.height());
        assertThat(PictureFile.png(picture, 1)).isNotEqualTo(PictureFile.png(new OutOfDatePicture(picture), 1));
    }
}
