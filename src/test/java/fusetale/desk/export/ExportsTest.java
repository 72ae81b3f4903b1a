package fusetale.desk.export;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.explore.Answer;
import fusetale.explore.Explorer;
import fusetale.explore.Outcome;
import fusetale.explore.Question;
import fusetale.fault.Supposition;
import fusetale.report.BenchSheet;
import fusetale.report.SheetDrawing;
import fusetale.store.Preferences;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExportsTest {
    private static final Drawn DRAWN = new Drawn() {
        @Override
        public byte[] png(int scale) {
            return new byte[] {(byte) scale};
        }

        @Override
        public byte[] svg() {
            return "<svg/>".getBytes(StandardCharsets.UTF_8);
        }
    };

    @TempDir
    Path folder;

    private final Outcome off = outcome(false);
    private final Outcome on = outcome(true);

    private static Outcome outcome(boolean powerOn) {
        Circuit circuit = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits/first-light.yaml"))
                .circuit());
        Question question = new Question(
                circuit,
                Supposition.NOTHING,
                powerOn ? Arrangement.powered(circuit) : Arrangement.unpowered(),
                Meter.builtIn().get(0),
                Check.all(circuit, powerOn),
                new Question.Options(2, 1, 2));
        return ((Answer.Answered) new Explorer(1).answer(question, (done, of) -> {}, () -> false)).outcome();
    }

    private List<Offer> offers(boolean outOfDate) {
        return Exports.of(
                on,
                List.of(),
                outOfDate,
                DRAWN,
                () -> new BenchSheet(
                        off,
                        on,
                        List.of(),
                        SheetDrawing.NONE,
                        new BenchSheet.Details("", LocalDate.EPOCH, Preferences.Paper.A4, outOfDate)));
    }

    private byte[] bytes(boolean outOfDate, String fileName) {
        return offers(outOfDate).stream()
                .filter(o -> o.fileName().equals(fileName))
                .findFirst()
                .orElseThrow()
                .bytes()
                .get();
    }

    @Test
    void thePicturesComeInThreeSizes() throws IOException {
        BufferedImage once = ImageIO.read(new ByteArrayInputStream(bytes(false, "first-light-readings-1x.png")));
        BufferedImage thrice = ImageIO.read(new ByteArrayInputStream(bytes(false, "first-light-readings-3x.png")));

        assertThat(thrice.getWidth()).isEqualTo(3 * once.getWidth());
        assertThat(thrice.getHeight()).isEqualTo(3 * once.getHeight());
        assertThat(bytes(false, "first-light-drawing-2x.png")).containsExactly(2);
    }

    @Test
    void theTableIsUtf8AndTheSheetAPdf() {
        assertThat(new String(bytes(false, "first-light-readings.csv"), StandardCharsets.UTF_8))
                .startsWith("from,to,label,")
                .contains("[V]");
        assertThat(new String(bytes(false, "first-light-bench-sheet.pdf"), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
        assertThat(new String(bytes(false, "first-light-readings.svg"), StandardCharsets.UTF_8))
                .contains("<svg");
    }

    @Test
    void whatIsOutOfDateSaysSoInNameAndContent() {
        assertThat(offers(true)).allMatch(o -> o.fileName().contains("out-of-date"));
        assertThat(new String(bytes(true, "first-light-out-of-date-readings.csv"), StandardCharsets.UTF_8))
                .contains("out of date");
        assertThat(new String(bytes(true, "first-light-out-of-date-readings.svg"), StandardCharsets.UTF_8))
                .contains("Out of date");
    }

    @Test
    void withoutADrawingNoneIsOffered() {
        assertThat(Exports.of(on, List.of(), false, null, () -> {
                    throw new IllegalStateException("not asked for");
                }))
                .noneMatch(o -> o.fileName().contains("drawing"));
    }

    @Test
    void theFileIsWrittenWhereItWasAskedForAndThatIsSaid() {
        Offer offer = new Offer("Readings", "CSV", "a.csv", () -> new byte[] {65});
        ExportModel model =
                new ExportModel(List.of(offer), o -> Optional.of(folder.resolve("mine")), Runnable::run, Runnable::run);

        model.write(offer);

        assertThat(folder.resolve("mine.csv")).hasContent("A");
        assertThat(model.saidProperty().get()).contains("mine.csv");
    }

    @Test
    void whereItCannotBeWrittenThatIsSaid() {
        Offer offer = new Offer("Readings", "CSV", "a.csv", () -> new byte[0]);
        ExportModel model = new ExportModel(
                List.of(offer), o -> Optional.of(folder.resolve("none/a.csv")), Runnable::run, Runnable::run);

        model.write(offer);

        assertThat(model.saidProperty().get()).contains("none");
        assertThat(Files.exists(folder.resolve("none"))).isFalse();
    }

    @Test
    void aCopyIsWordsAndATableThatSpreadsheetsTake() {
        Copied copied = new Copied(
                "Suppose <D1> is shorted.", List.of(List.of("where", "shows"), List.of("TP1", "4.7\tkΩ")), null);

        assertThat(copied.plain()).isEqualTo("Suppose <D1> is shorted.\nwhere\tshows\nTP1\t4.7 kΩ");
        assertThat(copied.html())
                .isEqualTo("<p>Suppose &lt;D1&gt; is shorted.</p><table><tr><th>where</th><th>shows</th></tr>"
                        + "<tr><td>TP1</td><td>4.7\tkΩ</td></tr></table>");
        assertThat(Copied.text("TP1").plain()).isEqualTo("TP1");
        assertThat(Copied.text("TP1").html()).isEmpty();
    }
}
