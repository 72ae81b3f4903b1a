package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Check;
import fusetale.circuit.MeterFunction;
import fusetale.desk.aftermath.AftermathView;
import fusetale.desk.aftermath.StoryRow.Moment;
import fusetale.desk.bars.BarsView;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Hands;
import fusetale.desk.kit.Palette;
import fusetale.desk.kit.Scaled;
import fusetale.desk.strip.HowFarView;
import fusetale.desk.strip.StripRow;
import fusetale.desk.strip.StripRows;
import fusetale.desk.waves.WaveModel;
import fusetale.desk.waves.WaveRow;
import fusetale.desk.waves.WaveView;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Strip, waves, bars and aftermath by keys alone, with what is spoken, and nothing cut. */
@ExtendWith(ApplicationExtension.class)
class ChartViewsTest {
    private static final double WIDTH = 1280;

    private final FxRobot robot = new FxRobot();
    private final StackPane root = new StackPane();

    @Start
    void start(Stage stage) {
        Faces.load();
        root.setStyle(Palette.LIGHT.style());
        Scene scene = new Scene(root, WIDTH, 560);
        scene.getStylesheets()
                .add(Objects.requireNonNull(Palette.class.getResource("/fusetale/desk/kit/desk.css"))
                        .toExternalForm());
        stage.setScene(scene);
        stage.show();
    }

    private <T extends Region> T shown(T view, double height, double factor) {
        robot.interact(() -> {
            Scaled scaled = new Scaled(view);
            scaled.factorProperty().set(factor);
            scaled.setMaxHeight(height);
            root.getChildren().setAll(scaled);
            root.applyCss();
            root.layout();
        });
        robot.interact(root::layout);
        return view;
    }

    private HowFarView strip() {
        HowFarView strip = made(HowFarView::new);
        robot.interact(() -> strip.setOutcomes(Answers.dropperOpen()));
        // 1280 × 720 leaves it 168 high
        return shown(strip, 168, 1);
    }

    private <T> T made(java.util.function.Supplier<T> maker) {
        List<T> made = new ArrayList<>();
        robot.interact(() -> made.add(maker.get()));
        return made.get(0);
    }

    private void focusFirst(Parent view, String styleClass) {
        robot.interact(() -> Objects.requireNonNull(view.lookup(styleClass)).requestFocus());
    }

    private Node focused() {
        return Objects.requireNonNull(root.getScene().getFocusOwner());
    }

    private Region view(String name) {
        List<WaveModel> waves = WaveModel.of(Answers.shortedLeg());
        return switch (name) {
            case "strip" -> {
                HowFarView view = new HowFarView();
                view.setOutcomes(Answers.dropperOpen());
                view.setMaxWidth(560);
                yield view;
            }
            case "waves" -> {
                WaveRow view = new WaveRow();
                view.setModels(waves);
                view.setMaxWidth(640);
                yield view;
            }
            case "large wave" -> {
                WaveView view = new WaveView();
                view.setModels(waves);
                view.showBeside(waves.get(waves.size() - 1));
                yield view;
            }
            case "bars" -> {
                BarsView view = new BarsView();
                view.setOutcomes(Answers.dropperOpen());
                view.show(MeterFunction.OHMS);
                yield view;
            }
            case "aftermath" -> {
                AftermathView view = new AftermathView();
                view.setOutcome(Answers.shortedLeg());
                yield view;
            }
            default -> throw new IllegalArgumentException(name);
        };
    }

    @ParameterizedTest
    @CsvSource({
        "strip, 1, 168",
        "strip, 1.5, 252",
        "waves, 1, 168",
        "waves, 1.5, 252",
        "large wave, 1, 520",
        "large wave, 1.5, 520",
        "bars, 1, 520",
        "bars, 1.5, 520",
        "aftermath, 1, 520",
        "aftermath, 1.5, 520",
        "aftermath, 1, 330"
    })
    void everythingCanBeReadWhole(String name, double factor, double height) {
        Region view = shown(made(() -> view(name)), height, factor);

        assertThat(VisibleTexts.cut(view)).isEmpty();
        assertThat(VisibleTexts.overlapping(view)).isEmpty();
        assertThat(VisibleTexts.outside(view)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"strip", "waves", "large wave", "bars", "aftermath"})
    void whateverCanHaveTheKeyboardIsSpoken(String name) {
        Region view = shown(made(() -> view(name)), 520, 1);

        assertThat(VisibleTexts.focusable(view))
                .isNotEmpty()
                .allSatisfy(node -> assertThat(node.getAccessibleText()).isNotBlank());
    }

    @ParameterizedTest
    @CsvSource({
        "strip, true", "waves, true", "large wave, true", "bars, true", "aftermath, true",
        "strip, false", "waves, false", "large wave, false", "bars, false", "aftermath, false"
    })
    void noColourIsForeign(String name, boolean dark) {
        Palette palette = dark ? Palette.DARK : Palette.LIGHT;
        robot.interact(() -> root.setStyle(palette.style()));
        Region view = shown(made(() -> view(name)), 520, 1);

        assertThat(VisibleTexts.colours(view))
                .hasSizeGreaterThan(2)
                .isSubsetOf(palette.colours().values().stream().map(Color::web).toList());
    }

    @Test
    void fiveRowsStandAtThisHeightAndKeysWalkToTheRest() {
        HowFarView strip = strip();
        List<StripRow> rows = strip.rows().rows();
        focusFirst(strip, ".strip-row");

        assertThat(strip.count()).isEqualTo(5);
        for (int k = 1; k <= 5; k++) {
            Hands.pushEach(robot, KeyCode.DOWN);
            assertThat(focused().getAccessibleText()).startsWith(rows.get(k).spoken());
        }
        assertThat(strip.first()).isEqualTo(1);
        Hands.pushEach(robot, KeyCode.END);
        assertThat(focused().getAccessibleText())
                .startsWith(rows.get(rows.size() - 1).spoken());
        Hands.pushEach(robot, KeyCode.HOME);
        Hands.pushEach(robot, KeyCode.PAGE_DOWN);
        assertThat(focused().getAccessibleText()).startsWith(rows.get(5).spoken());
        Hands.pushEach(robot, KeyCode.PAGE_UP);
        assertThat(focused().getAccessibleText()).startsWith(rows.get(0).spoken());
    }

    @Test
    void enterOnARowTellsItsCheck() {
        HowFarView strip = strip();
        List<Check> told = new ArrayList<>();
        robot.interact(() -> strip.setOnChosen(told::add));
        focusFirst(strip, ".strip-row");
        Hands.pushEach(robot, KeyCode.DOWN, KeyCode.DOWN, KeyCode.ENTER);

        assertThat(told).containsExactly(strip.rows().rows().get(2).check());
    }

    @Test
    void aRowKeepsTheKeyboardWhereverItMovesTo() {
        HowFarView strip = strip();
        focusFirst(strip, ".strip-row");
        StripRow first = strip.rows().rows().get(0);
        List<StripRow> turned = new ArrayList<>(strip.rows().rows());
        java.util.Collections.reverse(turned);
        robot.interact(() -> strip.setRows(new StripRows(turned, 0)));

        assertThat(focused().getAccessibleText()).startsWith(first.spoken());
        assertThat(strip.first()).isEqualTo(turned.size() - 5);
    }

    @Test
    void newValuesUseTheSameNodes() {
        HowFarView strip = strip();
        WaveRow waves = shown(made(WaveRow::new), 168, 1);
        robot.interact(() -> waves.setModels(WaveModel.of(Answers.dropperOpen().get(0))));
        List<Node> before = new ArrayList<>(strip.getChildrenUnmodifiable());
        List<Node> wavesBefore = new ArrayList<>(waves.getChildrenUnmodifiable());
        robot.interact(() -> {
            strip.setOutcomes(List.of(Answers.shortedLeg()));
            waves.setOutcome(Answers.shortedLeg());
        });

        assertThat(strip.getChildrenUnmodifiable()).containsExactlyElementsOf(before);
        assertThat(waves.getChildrenUnmodifiable()).containsExactlyElementsOf(wavesBefore);
    }

    @Test
    void arrowsWalkTheWavesAndEnterOpensOne() {
        WaveRow waves = shown(made(WaveRow::new), 168, 1);
        List<WaveModel> told = new ArrayList<>();
        robot.interact(() -> {
            waves.setOutcome(Answers.shortedLeg());
            waves.setOnChosen(told::add);
        });
        focusFirst(waves, ".wave-small");
        Hands.pushEach(robot, KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.LEFT, KeyCode.ENTER);

        assertThat(told).containsExactly(waves.models().get(1));
        assertThat(focused().getAccessibleText())
                .startsWith(waves.models().get(1).spoken());
    }

    @Test
    void keysMoveTheCursorAndItsFiguresAreSpoken() {
        WaveView view = shown(made(WaveView::new), 520, 1);
        List<WaveModel> models = WaveModel.of(Answers.shortedLeg());
        robot.interact(() -> {
            view.setModels(models);
            view.focusCursor();
        });
        WaveModel model = models.get(0);
        Hands.pushEach(robot, KeyCode.END);
        assertThat(view.cursor()).isEqualTo(model.seconds());
        Hands.pushEach(robot, KeyCode.HOME, KeyCode.RIGHT, KeyCode.RIGHT);
        double at = model.seconds() / 100;

        assertThat(view.cursor()).isCloseTo(at, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(focused().getAccessibleText())
                .contains(model.title(), model.builtSaid(at), model.supposedSaid(at), WaveModel.time(at));
        Hands.pushEach(robot, KeyCode.LEFT, KeyCode.LEFT, KeyCode.LEFT);
        assertThat(view.cursor()).isZero();
    }

    @Test
    void twoTracesAtMostAreShownAndOneAtLeast() {
        WaveView view = shown(made(WaveView::new), 520, 1);
        List<WaveModel> models = WaveModel.of(Answers.shortedLeg());
        robot.interact(() -> view.setModels(models));
        focusFirst(view, ".wave-choice");
        Hands.pushEach(robot, KeyCode.SPACE);
        assertThat(view.shown()).containsExactly(models.get(0));
        Hands.pushEach(robot, KeyCode.DOWN, KeyCode.SPACE);
        assertThat(view.shown()).containsExactly(models.get(0), models.get(1));
        Hands.pushEach(robot, KeyCode.DOWN, KeyCode.SPACE);

        assertThat(view.shown()).containsExactly(models.get(1), models.get(2));
        assertThat(view.toCsv()).startsWith("time [ms]," + models.get(1).label() + " healthy");
    }

    @Test
    void keysWalkTheBarsAndEnterTellsTheCheck() {
        BarsView view = shown(made(BarsView::new), 520, 1);
        List<Check> told = new ArrayList<>();
        robot.interact(() -> {
            view.setOutcomes(Answers.dropperOpen());
            view.setOnChosen(told::add);
        });
        focusFirst(view, ".bar-row");
        Hands.pushEach(robot, KeyCode.DOWN, KeyCode.ENTER, KeyCode.END, KeyCode.ENTER);

        assertThat(view.function()).isEqualTo(MeterFunction.DC_VOLTS);
        assertThat(told).extracting(Check::from).containsExactly("TP2", "TP5");
        assertThat(focused().getAccessibleText()).startsWith("TP5, d.c. volts: healthy ");
    }

    @Test
    void rightAndLeftStepThroughTheStory() {
        AftermathView view = shown(made(AftermathView::new), 520, 1);
        List<Moment> told = new ArrayList<>();
        robot.interact(() -> {
            view.setOutcome(Answers.shortedLeg());
            view.setOnStep(told::add);
        });
        focusFirst(view, ".time-row");
        Hands.pushEach(robot, KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.LEFT, KeyCode.LEFT, KeyCode.LEFT);

        assertThat(told).extracting(Moment::after).containsExactly(1, 2, 1, 0);
        assertThat(told.get(0).supposition().faults())
                .containsAll(Answers.shortedLeg().question().supposition().faults())
                .hasSizeGreaterThan(
                        Answers.shortedLeg().question().supposition().faults().size());
        assertThat(told.get(3).supposition())
                .isEqualTo(Answers.shortedLeg().question().supposition());
    }

    @Test
    void anotherOrderIsChosenByKeysAndBeginsAtSwitchOn() {
        AftermathView view = shown(made(AftermathView::new), 520, 1);
        List<Moment> told = new ArrayList<>();
        robot.interact(() -> {
            view.setOutcome(Answers.shortedLeg());
            view.stepOn();
            view.setOnStep(told::add);
        });
        focusFirst(view, ".story");
        Hands.pushEach(robot, KeyCode.DOWN, KeyCode.ENTER, KeyCode.RIGHT);
        String first = Objects.requireNonNull(view.model())
                .stories()
                .get(1)
                .steps()
                .get(0)
                .what()
                .words();

        assertThat(told).extracting(Moment::after).containsExactly(0, 1);
        assertThat(told.get(1).words()).contains(first);
    }
}
