package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Check;
import fusetale.desk.tags.TagFigures;
import fusetale.desk.waves.WaveModel;
import fusetale.desk.waves.WaveView;
import fusetale.explore.Outcome;
import fusetale.store.Preferences;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** The whole window on the teaching board, with the keyboard alone. */
class DeskFlowTest extends OneWindowFlow {
    @Test
    void aFaultIsSupposedInSixStrokesAndTakenBackByOne() {
        worked();
        key(KeyCode.S);
        assertThat(repair().window().sentence().editing()).isTrue();
        keys("r2 op");
        key(KeyCode.ENTER);
        worked();

        assertThat(sentence()).startsWith("Suppose R2 is open.");
        assertThat(tags())
                .anyMatch(t -> t.state() == TagFigures.State.MOVED && t.name().equals("TP2"));
        key(KeyCode.Z);
        worked();
        assertThat(sentence()).startsWith("Suppose nothing.");
        assertThat(tags()).allMatch(t -> t.state() == TagFigures.State.AS_HEALTHY);
    }

    /** A letter that opens a field must not also be typed into it. */
    @Test
    void theLetterThatOpensTheLineIsNotTypedIntoIt() {
        worked();
        key(KeyCode.S);

        assertThat(lookup(".text-field").queryAllAs(TextInputControl.class))
                .filteredOn(Node::isVisible)
                .allMatch(f -> f.getText().isEmpty());
        key(KeyCode.ESCAPE);
        assertThat(repair().window().sentence().editing()).isFalse();
    }

    @Test
    void theMeterIsTurnedByFigures() {
        worked();
        key(KeyCode.DIGIT4);
        worked();
        assertThat(sentence()).contains("a.c. volts");
        key(KeyCode.DIGIT1);
        worked();

        assertThat(sentence()).contains("Power off").contains("ohms");
        key(KeyCode.O);
        worked();
        assertThat(sentence()).contains("Power on");
    }

    @Test
    void aReadingIsTypedAndTheKeyboardWalksOn() {
        worked();
        interact(() -> repair().window().board().cord().focus(model().tags().get(0)));
        key(KeyCode.R);
        keys("16.4");
        key(KeyCode.ENTER);

        assertThat(model().state().measured()).hasSize(1);
        assertThat(tags()).anyMatch(t -> t.read().equals("16.4 V"));
        assertThat(repair().window().focusedTag())
                .get()
                .extracting(TagFigures::read)
                .isEqualTo("");
        key(KeyCode.U);
        assertThat(tags()).anyMatch(t -> t.state() == TagFigures.State.OUT_OF_REACH);
    }

    @Test
    void fromATagDownToItsPartAndItsCard() {
        worked();
        interact(() -> repair().window().board().cord().focus(model().tags().get(1)));
        key(KeyCode.DOWN);
        assertThat(repair().window().board().drawing().focused()).isPresent();
        key(KeyCode.ENTER);
        assertThat(repair().window().overlay().showing()).isPresent();
        key(KeyCode.DOWN);
        key(KeyCode.ENTER);
        worked();

        assertThat(model().state().sentence().supposition().faults()).hasSize(1);
        assertThat(repair().window().overlay().showing()).isEmpty();
    }

    @Test
    void everyPageOpensByItsKeyAndClosesByEscape() {
        worked();
        key(KeyCode.S);
        keys("br1 leg1 sh");
        key(KeyCode.ENTER);
        worked();
        until(() -> model().otherPowerProperty()
                .get()
                .filter(o -> o.sentence().equals(model().asked()))
                .isPresent());
        for (KeyCode key : List.of(KeyCode.V, KeyCode.C, KeyCode.H, KeyCode.M, KeyCode.SLASH)) {
            key(key);
            tidy(key.getName());
            key(KeyCode.ESCAPE);
        }
        for (KeyCode key : List.of(KeyCode.P, KeyCode.E, KeyCode.COMMA)) {
            key(key);
            assertThat(scene().getRoot().lookupAll(".page")).as(key.getName()).isNotEmpty();
            tidy(key.getName());
            key(KeyCode.ESCAPE);
            assertThat(scene().getRoot().lookupAll(".page")).as(key.getName()).isEmpty();
        }
        assertThat(sentence()).contains("BR1 leg 1 is shorted");
    }

    @Test
    void aWordIsExplainedWhereItStandsAndThenAllOfThem() {
        worked();
        key(KeyCode.S);
        keys("r2 op");
        key(KeyCode.ENTER);
        worked();
        interact(() -> repair().window().board().cord().focus(model().tags().get(1)));
        push(KeyCode.SHIFT, KeyCode.SLASH);

        assertThat(repair().window().overlay().showing())
                .get()
                .extracting(Node::getAccessibleText)
                .asString()
                .contains("Moved", "D.c. volts", "Test point");
        tidy("word");
        push(KeyCode.SHIFT, KeyCode.SLASH);
        assertThat(scene().getRoot().lookupAll(".page")).isNotEmpty();
        key(KeyCode.ESCAPE);
        assertThat(scene().getRoot().lookupAll(".page")).isEmpty();
    }

    /** A failure explains itself by what happened inside the part and how the trade makes sure. */
    @Test
    void aFailureInTheSentenceIsExplained() {
        worked();
        key(KeyCode.S);
        keys("r2 op");
        key(KeyCode.ENTER);
        worked();
        interact(() -> repair().window().sentence().begin());
        push(KeyCode.SHIFT, KeyCode.SLASH);

        assertThat(repair().window().overlay().showing())
                .get()
                .extracting(Node::getAccessibleText)
                .asString()
                .startsWith("R2 is open. ");
        // a danger would stand in the line under the sentence: never covered
        Bounds line = repair().window()
                .consequence()
                .localToScene(repair().window().consequence().getLayoutBounds());
        assertThat(repair().window().overlay().showing())
                .get()
                .satisfies(word -> assertThat(
                                word.localToScene(word.getLayoutBounds()).intersects(line))
                        .isFalse());
        key(KeyCode.ESCAPE);
        assertThat(repair().window().overlay().showing()).isEmpty();
    }

    /** The leak overheats the winding within the hour, which the first look does not see. */
    @Test
    void aFirstLookIsNeitherPrintedNorExported() {
        worked();
        List<Integer> pages = new ArrayList<>();
        InvalidationListener first = changed -> {
            if (!model().shownProperty().get().orElseThrow().whole()) {
                for (Command command : List.of(Command.SHEET, Command.EXPORT)) {
                    program().take(command);
                    pages.add(scene().getRoot().lookupAll(".page").size());
                }
            }
        };
        interact(() -> model().shownProperty().addListener(first));
        key(KeyCode.S);
        keys("f1 holds 25 A and c1 leaky 5 ohm");
        key(KeyCode.ENTER);
        worked();
        interact(() -> model().shownProperty().removeListener(first));

        assertThat(pages).containsExactly(0, 0);
        assertThat(repair().window().consequence().getAccessibleText()).startsWith("Do not power up");
        until(() -> model().otherPowerProperty()
                .get()
                .filter(o -> o.sentence().equals(model().asked()))
                .isPresent());
        key(KeyCode.P);
        assertThat(scene().getRoot().lookupAll(".page")).isNotEmpty();
        key(KeyCode.ESCAPE);
    }

    @Test
    void theBoardIsSteppedThroughWhatFollows() {
        worked();
        key(KeyCode.S);
        keys("br1 leg1 sh and f1 holds 25 A");
        key(KeyCode.ENTER);
        worked();
        assertThat(repair().window().consequence().getAccessibleText()).startsWith("Do not power up");
        key(KeyCode.H);
        key(KeyCode.RIGHT);
        until(() -> model().forwardProperty().get().isPresent());
        worked();
        assertThat(model().asked()).isNotEqualTo(model().state().sentence());
        key(KeyCode.ESCAPE);
        worked();

        assertThat(model().forwardProperty().get()).isEmpty();
    }

    @Test
    void pagesFollowTheSentence() {
        say("r2 drifted x2");
        key(KeyCode.V);
        WaveView waves = lookup(".wave-large").queryAs(WaveView.class);
        WaveModel second = WaveModel.of(outcome()).get(1);
        interact(() -> waves.show(second));
        say("put back");
        say("e1 open");
        List<WaveModel> now = WaveModel.of(outcome());
        assertThat(now.stream().map(m -> WaveModel.csv(List.of(m)))).contains(waves.toCsv());
        if (now.stream().anyMatch(m -> m.title().equals(second.title()))) {
            assertThat(waves.shown()).extracting(WaveModel::title).containsExactly(second.title());
        }
        say("ohms");
        assertThat(lookup(".wave-large").queryAll()).as("with the power off").isEmpty();

        say("dc volts");
        key(KeyCode.C);
        List<String> before = bars();
        say("put back");
        other();
        List<String> after = bars();
        key(KeyCode.ESCAPE);
        key(KeyCode.C);
        assertThat(after).isNotEqualTo(before).isEqualTo(bars());
        key(KeyCode.ESCAPE);
    }

    private List<String> bars() {
        return lookup(".bar-row").queryAllAs(Node.class).stream()
                .map(Node::getAccessibleText)
                .toList();
    }

    /** A story is of one sentence; a reading taken meanwhile changes nothing of it. */
    @Test
    void whatFollowsIsLeftWhenTheSentenceChanges() {
        say("br1 leg1 short and f1 holds 25 A");
        key(KeyCode.H);
        key(KeyCode.RIGHT);
        until(() -> model().forwardProperty().get().isPresent());
        interact(() -> repair().window().commands().takeReading("tp1 3.2 dc"));
        worked();
        assertThat(model().forwardProperty().get()).isPresent();
        assertThat(lookup(".aftermath").queryAll()).isNotEmpty();
        say("f1 blown");

        assertThat(lookup(".aftermath").queryAll()).isEmpty();
        assertThat(model().forwardProperty().get()).isEmpty();
    }

    /** One step back from the power with the lamp must not be the power without it. */
    @Test
    void underADangerTheLampComesWithThePowerInOneStep() {
        say("br1 leg1 short and f1 holds 25 A");
        say("power off");
        other();
        key(KeyCode.O);
        worked();
        assertThat(sentence()).contains("Power on").contains("lamp in series");
        key(KeyCode.Z);
        worked();
        assertThat(sentence()).contains("Power off");
    }

    @Test
    void beforeTheDangerIsKnownTheLampComesAlongAndThatIsSaid() {
        say("power off");
        interact(() -> {
            repair().window().commands().say("r2 open");
            repair().window().commands().take(Command.POWER);
        });
        assertThat(sentence()).contains("Power on").contains("lamp in series");
        assertThat(repair().window().consequence().getAccessibleText()).contains("With a lamp in series: ");
        worked();
        say("no lamp");
        key(KeyCode.O);
        worked();
        other();
        key(KeyCode.O);
        worked();
        assertThat(sentence()).as("known to be harmless").contains("Power on").doesNotContain("lamp in series");
    }

    @Test
    void homeAndEndMoveAnAmountForGood() {
        say("r2 drifted x2");
        interact(() -> repair().window().openCard("R2"));
        Slider slider = lookup(".slider").queryAs(Slider.class);
        interact(slider::requestFocus);
        key(KeyCode.END);
        worked();

        assertThat(model().moving()).isFalse();
        assertThat(sentence()).doesNotContain("× 2 ").startsWith("Suppose R2 has drifted");
        String atTheEnd = sentence();
        interact(() -> slider.setValue(0.5));
        assertThat(model().moving()).isTrue();
        key(KeyCode.ESCAPE);
        worked();
        assertThat(model().moving()).isFalse();
        assertThat(sentence()).isNotEqualTo(atTheEnd);
    }

    @Test
    void withoutSingleLettersAltAndALetterDoTheSameWhileOneTypes() {
        interact(() -> program().prefer(p -> p.withSingleLetters(false)));
        say("r2 open");
        interact(() -> repair().window().commands().take(Command.SUPPOSE));
        keys("r1");
        key(KeyCode.ALT, KeyCode.DIGIT4);
        worked();
        assertThat(sentence()).startsWith("Suppose R2 is open.").contains("a.c. volts");
        assertThat(lookup(".text-field").queryAllAs(TextInputControl.class))
                .filteredOn(Node::isVisible)
                .extracting(TextInputControl::getText)
                .containsOnlyOnce("r1");
        interact(() -> program().prefer(p -> p.withSingleLetters(true)));
    }

    /** Whoever turns the meter while standing on a test point measures the same point with it. */
    @Test
    void theKeyboardStaysOnItsPointWhenTheMeterIsTurned() {
        worked();
        interact(() -> repair().window().board().cord().focus(model().tags().get(2)));
        Check volts = repair().window().focusedTag().orElseThrow().check();
        for (KeyCode turn : List.of(KeyCode.DIGIT4, KeyCode.DIGIT1, KeyCode.X, KeyCode.DIGIT2, KeyCode.DIGIT3)) {
            key(turn);
            assertThat(repair().window().focusedTag().map(TagFigures::check))
                    .as(turn.getName())
                    .get()
                    .satisfies(c ->
                            assertThat(List.of(c.from(), c.to())).containsExactlyInAnyOrder(volts.from(), volts.to()))
                    .extracting(Check::function)
                    .isEqualTo(model().state().sentence().setting().function());
        }
        assertThat(repair().window().focusedTag().map(TagFigures::check)).contains(volts);
    }

    @Test
    void aSmallWaveformOpensAsTheChosenOneOfTheLarge() {
        say("r2 open");
        interact(() -> lookup(".wave-small").queryAllAs(Node.class).stream()
                .skip(1)
                .findFirst()
                .orElseThrow()
                .requestFocus());
        key(KeyCode.ENTER);
        WaveView waves = lookup(".wave-large").queryAs(WaveView.class);
        String second = WaveModel.of(outcome()).get(1).title();

        assertThat(waves.shown()).extracting(WaveModel::title).containsExactly(second);
        assertThat(lookup(".wave-choice").queryAllAs(ToggleButton.class))
                .filteredOn(ToggleButton::isSelected)
                .extracting(Labeled::getText)
                .containsExactly(second);
    }

    private Outcome outcome() {
        return model().shownProperty().get().orElseThrow().outcome();
    }

    @Test
    void everythingThatCanHaveTheKeyboardSaysWhatItIs() {
        worked();

        assertThat(focusable())
                .hasSizeGreaterThan(30)
                .allSatisfy(n -> assertThat(spoken(n)).as(n.toString()).isNotBlank());
    }

    @Test
    void nothingIsCutAtAHundredAndFiftyPerCent() {
        worked();
        tidy("100 %");
        interact(() -> program().take(Command.TEXT_LARGER));
        for (int step = 1; step < 5; step++) {
            interact(() -> program().take(Command.TEXT_LARGER));
        }
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(program().preferences().textPerCent()).isEqualTo(150);
        tidy("150 %");
    }

    @Test
    void whatLiesOverTheBoardIsWholeAtAHundredAndFiftyPerCent() {
        worked();
        interact(() -> {
            program().prefer(p -> p.withTextPerCent(150).withLight(Preferences.Light.LIGHT));
            repair().window().commands().say("br1 leg1 short");
            repair().window().commands().say("f1 holds 25 A");
        });
        worked();
        for (Command page : List.of(Command.WAVES, Command.BARS, Command.AFTERMATH)) {
            interact(() -> repair().window().commands().take(page));
            worked();
            tidy("150 % " + page);
            assertThat(VisibleTexts.cut(scene().getRoot())).as(page.toString()).isEmpty();
            interact(() -> repair().window().commands().take(Command.STOP));
            worked();
        }
        interact(() -> repair().window().openCard("BR1"));
        WaitForAsyncUtils.waitForFxEvents();
        tidy("150 % card");
        assertThat(VisibleTexts.cut(scene().getRoot())).isEmpty();
        Node card = scene().lookup(".card");
        Bounds lies = card.localToScene(card.getLayoutBounds());
        assertThat(lies.getMaxY()).isLessThan(scene().getHeight() - 1.5 * 30);
        for (Node text : card.lookupAll(".card-below .text")) {
            assertThat(lies.contains(text.localToScene(text.getLayoutBounds()))).isTrue();
        }
        Node first = scene().getFocusOwner();
        assertThat(first.getStyleClass()).contains("card-row");
        Node page = card.lookup(".viewport");
        assertThat(page.localToScene(page.getLayoutBounds()).getMaxY() + 1)
                .isGreaterThan(first.localToScene(first.getLayoutBounds()).getMaxY());
        assertThat(page.localToScene(page.getLayoutBounds()).getMinY() - 1)
                .isLessThan(first.localToScene(first.getLayoutBounds()).getMinY());
    }

    private List<Node> focusable() {
        List<Node> found = new ArrayList<>();
        Deque<Node> left = new ArrayDeque<>(List.of(scene().getRoot()));
        while (!left.isEmpty()) {
            Node node = left.pop();
            if (!node.isVisible()) {
                continue;
            }
            if (node.isFocusTraversable()) {
                found.add(node);
            }
            if (node instanceof Parent parent) {
                left.addAll(parent.getChildrenUnmodifiable());
            }
        }
        return found;
    }

    private static String spoken(Node node) {
        String said = node.getAccessibleText();
        if (said != null && !said.isBlank()) {
            return said;
        }
        return node instanceof Labeled labeled ? String.valueOf(labeled.getText()) : "";
    }

    /** No label ends in an ellipsis of its own, and no text leaves the window, except inside what scrolls or pans. */
    private void tidy(String where) {
        interact(() -> scene().getRoot().applyCss());
        WaitForAsyncUtils.waitForFxEvents();
        // in the window's own thread, or a label that tells of a repair saved changes between layout and look
        interact(() -> {
            scene().getRoot().layout();
            scene().getRoot().lookupAll(".text").forEach(node -> tidy(where, node));
        });
    }

    private void tidy(String where, Node node) {
        if (!(node instanceof Text text) || !shown(text)) {
            return;
        }
        if (text.getParent() instanceof Labeled labeled && labeled.getText() != null) {
            assertThat(text.getText()).as("%s: %s", where, labeled.getText()).isEqualTo(labeled.getText());
        }
        Bounds bounds = text.localToScene(text.getLayoutBounds());
        assertThat(bounds.getMaxX()).as("%s: %s", where, text.getText()).isLessThan(scene().getWidth() + 2);
    }

    private static boolean shown(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible() || at instanceof ScrollPane || at.getClip() != null) {
                return false;
            }
        }
        return true;
    }
}
