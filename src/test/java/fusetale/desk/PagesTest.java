package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.desk.export.ExportModel;
import fusetale.desk.export.ExportView;
import fusetale.desk.export.Offer;
import fusetale.desk.help.Glossary;
import fusetale.desk.help.HelpView;
import fusetale.desk.help.KeyLine;
import fusetale.desk.help.OnThisBoard;
import fusetale.desk.kit.Hands;
import fusetale.desk.kit.OnScreen;
import fusetale.desk.kit.Palette;
import fusetale.desk.preferences.PreferencesModel;
import fusetale.desk.preferences.PreferencesView;
import fusetale.desk.sheet.Printing;
import fusetale.desk.sheet.SheetPage;
import fusetale.desk.sheet.SheetView;
import fusetale.desk.start.StartModel;
import fusetale.desk.start.StartView;
import fusetale.desk.start.UnreadableView;
import fusetale.desk.trouble.Trouble;
import fusetale.desk.trouble.TroubleView;
import fusetale.store.Saved;
import fusetale.store.Store;
import fusetale.store.UnwritableFile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/**
 * What holds for every page that lies over the window: 44 px for whatever can be pressed (WCAG 2.1, criterion 2.5.5), a spoken text
 * for whatever takes the keyboard (4.1.2), the keyboard for everything (2.1.1), no text cut at 1280 by 720 and 150 % (1.4.4).
 */
@ExtendWith(ApplicationExtension.class)
class PagesTest {
    private static final double LEAST_TARGET = 44;
    private static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());
    private static final byte[] PNG = png();

    @TempDir
    Path folder;

    private @Nullable Stage stage;
    private int left;

    @Start
    void start(Stage shown) {
        stage = shown;
    }

    enum Which {
        HELP,
        PREFERENCES,
        START,
        TROUBLE,
        SHEET,
        EXPORT,
        UNREADABLE
    }

    private Region view(Which which) throws UnwritableFile {
        Runnable leave = () -> left++;
        Store store = new Store(folder, folder);
        return switch (which) {
            case HELP ->
                new HelpView(
                        List.of(new KeyLine("S", "suppose"), new KeyLine("Shift+Z", "do again what was undone")),
                        Glossary.all(OnThisBoard.of(FERRY)),
                        leave);
            case PREFERENCES ->
                new PreferencesView(
                        new PreferencesModel(
                                store,
                                () -> Meter.builtIn().stream().map(Meter::name).toList()),
                        () -> "",
                        leave);
            case START -> start(store, leave);
            case TROUBLE ->
                new TroubleView(
                        Trouble.of(
                                new IllegalStateException("a fuse without clips"),
                                Optional.of(new Saved.There(folder.resolve("a.repair.yaml"), Instant.EPOCH)),
                                "Suppose D1 is shorted.",
                                Instant.EPOCH,
                                Trouble.system()),
                        leave);
            case UNREADABLE -> {
                String text = "circuit: Pier Crane\nparts:\n  R1: {kind: resistor, ohms: many}\n";
                yield new UnreadableView(
                        folder.resolve("pier-crane.yaml"),
                        text,
                        CircuitReader.withShippedParts()
                                .readText(folder.resolve("pier-crane.yaml").toString(), text)
                                .problems(),
                        leave,
                        leave);
            }
            case SHEET ->
                new SheetView(
                        "Bench sheet: Night Ferry",
                        List.of(new SheetPage(scale -> PNG, "page one"), new SheetPage(scale -> PNG, "page two")),
                        (pages, title) -> Printing.Result.NO_PRINTER,
                        () -> {},
                        leave);
            case EXPORT ->
                new ExportView(
                        new ExportModel(
                                List.of(
                                        new Offer("Readings", "PNG 1×", "a.png", () -> new byte[0]),
                                        new Offer("Readings", "SVG", "a.svg", () -> new byte[0]),
                                        new Offer("Bench sheet", "PDF", "a.pdf", () -> new byte[0])),
                                offer -> Optional.empty(),
                                Runnable::run,
                                Runnable::run),
                        true,
                        leave);
        };
    }

    private StartView start(Store store, Runnable leave) throws UnwritableFile {
        store.changeRecent(
                r -> r.opened(folder.resolve("gone.repair.yaml"), "a repair whose file is gone", Instant.EPOCH)
                        .opened(folder.resolve("there.repair.yaml"), "Night Ferry, blows F201", Instant.EPOCH));
        try {
            Files.writeString(folder.resolve("there.repair.yaml"), "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new StartView(new StartModel(store, ZoneOffset.UTC), new StartView.Deeds() {
            @Override
            public void begin(Path circuit) {}

            @Override
            public void open(Path repair) {}

            @Override
            public Optional<Path> chosenRepair() {
                return Optional.empty();
            }

            @Override
            public void leave() {
                leave.run();
            }
        });
    }

    private static byte[] png() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(1122, 794, BufferedImage.TYPE_BYTE_GRAY), "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private Region shown(Which which, Palette palette, double factor) {
        return OnScreen.on(() -> {
            Region view = view(which);
            OnScreen.show(Objects.requireNonNull(stage), view, palette, factor);
            return view;
        });
    }

    @ParameterizedTest
    @EnumSource
    void whateverTakesTheKeyboardSpeaksAndWhateverCanBePressedIsLargeEnough(Which which) {
        Region view = shown(which, Palette.DARK, 1);

        List<Node> focusable = OnScreen.all(view, Node::isFocusTraversable);

        assertThat(focusable)
                .isNotEmpty()
                .allSatisfy(
                        n -> assertThat(n.getAccessibleText()).as(n.toString()).isNotBlank());
        assertThat(OnScreen.all(view, n -> n instanceof Button || n instanceof ToggleButton || n instanceof TextField))
                .isNotEmpty()
                .allSatisfy(n -> {
                    assertThat(n.getLayoutBounds().getHeight()).as(n.toString()).isGreaterThanOrEqualTo(LEAST_TARGET);
                    assertThat(n.getLayoutBounds().getWidth()).as(n.toString()).isGreaterThanOrEqualTo(LEAST_TARGET);
                });
    }

    @ParameterizedTest
    @EnumSource
    void noTextIsCutAndNothingStandsBeyondTheWindowsEdgesAtOneAndAHalfTimesItsSize(Which which) {
        Region view = shown(which, Palette.LIGHT, 1.5);

        List<String> cut = new ArrayList<>();
        for (Node node : OnScreen.all(view, Labeled.class::isInstance)) {
            Labeled labeled = (Labeled) node;
            for (Node text : OnScreen.all(labeled, Text.class::isInstance)) {
                // what is shown is shorter than what was said where JavaFX puts its three dots
                if (!((Text) text).getText().equals(labeled.getText())) {
                    cut.add(labeled.getText() + " shown as " + ((Text) text).getText());
                }
            }
        }

        assertThat(OnScreen.texts(view)).isNotEmpty();
        assertThat(cut).isEmpty();
        assertThat(OnScreen.all(view, n -> n instanceof Labeled && !isScrollBar(n)))
                .isNotEmpty()
                .allSatisfy(n -> {
                    Bounds place = n.localToScene(n.getLayoutBounds());
                    assertThat(place.getMinX()).as(n.toString()).isGreaterThanOrEqualTo(0);
                    assertThat(place.getMaxX()).as(n.toString()).isLessThanOrEqualTo(1280);
                });
    }

    private static boolean isScrollBar(Node node) {
        return node.getStyleClass().contains("scroll-bar");
    }

    @ParameterizedTest
    @EnumSource
    void tabReachesEverythingAndShowsWhereItIs(Which which, FxRobot robot) {
        Region view = shown(which, Palette.LIGHT, 1.5);
        Set<Node> wanted = new LinkedHashSet<>(OnScreen.all(view, Node::isFocusTraversable));
        wanted.removeIf(n -> n instanceof ToggleButton); // one of a row takes the keyboard, arrows go to the others
        Set<Node> met = new LinkedHashSet<>();

        for (int i = 0; i < 90 && !met.containsAll(wanted); i++) {
            Node owner =
                    OnScreen.on(() -> Objects.requireNonNull(stage).getScene().getFocusOwner());
            assertThat(owner).as("something has the keyboard").isNotNull();
            met.add(owner);
            if (!(owner instanceof ScrollPane)) {
                Bounds place = OnScreen.on(() -> owner.localToScene(owner.getLayoutBounds()));
                assertThat(place.getMinY()).as(owner.toString()).isGreaterThanOrEqualTo(-1);
                assertThat(place.getMaxY()).as(owner.toString()).isLessThanOrEqualTo(721);
            }
            // a text area keeps Tab for itself unless Ctrl is held
            if (owner instanceof TextArea) {
                Hands.push(robot, KeyCode.CONTROL, KeyCode.TAB);
            } else {
                Hands.push(robot, KeyCode.TAB);
            }
        }

        assertThat(met).containsAll(wanted);
    }

    @ParameterizedTest
    @EnumSource
    void escapeLeaves(Which which, FxRobot robot) {
        shown(which, Palette.LIGHT, 1);

        Hands.push(robot, KeyCode.ESCAPE);

        assertThat(left).isEqualTo(1);
    }
}
