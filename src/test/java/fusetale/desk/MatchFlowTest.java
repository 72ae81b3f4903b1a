package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fusetale.desk.kit.Hands;
import fusetale.desk.state.Found;
import fusetale.store.Preferences;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** The place "What did I read?" in the whole window, with the keyboard alone; what explains the readings is made up. */
class MatchFlowTest extends OneMatchWindowFlow {
    private static final double LEAST_TARGET = 44;

    @Test
    void placesAreReachedByTheKeyboardFromAnywhere() {
        place();
        assertThat(repair().window().matching()).isTrue();
        assertThat(field().isFocused()).isTrue();
        assertThat(line()).contains("Start with d.c. volts at TP1");
        key(KeyCode.CONTROL, KeyCode.DIGIT1);
        assertThat(repair().window().matching()).isFalse();
        key(KeyCode.CONTROL, KeyCode.TAB);
        assertThat(repair().window().matching()).isTrue();
        key(KeyCode.CONTROL, KeyCode.TAB);
        key(KeyCode.N);

        assertThat(repair().window().matching()).isTrue();
    }

    /** Figures, point, Enter; the asterisk is OL, the stroke cannot reach it, plus another one. */
    @Test
    void aBoardIsReadWithTheNumberPadAlone() {
        place();
        pad(KeyCode.NUMPAD1, "1");
        pad(KeyCode.NUMPAD8, "8");
        pad(KeyCode.DECIMAL, ",");
        pad(KeyCode.NUMPAD2, "2");
        key(KeyCode.ENTER);
        worked();
        assertThat(found()).containsExactly("TP1 18.2 V d.c. volts");
        assertThat(advised()).isEqualTo("TP2 to gnd, d.c. volts");
        pad(KeyCode.DIVIDE, "/");
        worked();
        until(() -> matching().adviceProperty().get().isPresent());
        assertThat(model().state().outOfReach()).containsExactly("TP2");
        assertThat(advised()).isEqualTo("TP1 to gnd, a.c. volts");
        pad(KeyCode.ADD, "+");
        assertThat(advised()).isEqualTo("TP4 to s2, a.c. volts");
        pad(KeyCode.MULTIPLY, "*");
        assertThat(field().getText()).isEqualTo("OL");
        key(KeyCode.ENTER);
        worked();

        assertThat(found()).containsExactly("TP1 18.2 V d.c. volts", "TP4 OL a.c. volts");
    }

    @Test
    void aReadingIsTypedInFullAndTakenBack() {
        place();
        read("tp2 0 dc");
        assertThat(found()).containsExactly("TP2 0 V d.c. volts");
        assertThat(rows().get(0).getAccessibleText()).startsWith("R2 is open.");
        key(KeyCode.CONTROL, KeyCode.Z);
        worked();
        assertThat(found()).isEmpty();
        key(KeyCode.CONTROL, KeyCode.Y);
        worked();

        assertThat(found()).containsExactly("TP2 0 V d.c. volts");
    }

    @Test
    void theGridShowsWhatFitsAndMarksWhatDoesNot() {
        place();
        read("tp1 18.2 dc", "tp2 0 dc");

        assertThat(rows()).hasSizeGreaterThan(4);
        assertThat(line()).contains("R2 is open explains all 2 readings.");
        assertThat(lookup(".fit-stop").queryAll()).isNotEmpty();
        assertThat(lookup(".fit-pencil").queryAll()).hasSizeGreaterThan(2 * rows().size());
        assertThat(rows().get(0).lookupAll(".fit-stop")).isEmpty();
        assertThat(rows().get(0).lookupAll(".sign-diamond")).hasSize(2);
        assertThat(rows().get(1).lookupAll(".fit-stop")).hasSize(1);
    }

    /** What fits is that of what was read before, from the moment on in which something else is read. */
    @Test
    void whatFitsIsMarkedOldAsSoonAsAReadingChanges() {
        place();
        read("tp1 18.2 dc");
        assertThat(lookup(".fit-head").<Node>query().lookupAll(".text-ink")).isNotEmpty();
        assertThat(old()).isFalse();
        List<Boolean> old = new ArrayList<>();
        interact(() -> {
            model().find(List.of(
                    model().state().found().get(0), model().state().found().get(0)));
            old.add(old());
            model().undo();
            old.add(old());
        });
        worked();

        assertThat(old).containsExactly(true, false);
        assertThat(old()).isFalse();
    }

    private boolean old() {
        repair().window().match().applyCss();
        repair().window().match().layout();
        return lookup(".fit-head").<Node>query().lookupAll(".text-soft").stream()
                .map(Text.class::cast)
                .anyMatch(t -> t.getText().contains("out of date"));
    }

    @Test
    void aRowIsTakenIntoTheOtherPlace() {
        place();
        read("tp2 0 dc");
        key(KeyCode.ESCAPE);
        assertThat(rows().get(0).isFocused()).isTrue();
        key(KeyCode.DOWN);
        key(KeyCode.UP);
        key(KeyCode.ENTER);

        assertThat(repair().window().matching()).isFalse();
        assertThat(model().sentences().text(model().state().sentence())).startsWith("Suppose R2 is open.");
    }

    @Test
    void aFigureTypedOnTheGridGoesIntoTheLine() {
        place();
        read("tp2 0 dc");
        key(KeyCode.ESCAPE);
        key(KeyCode.DIGIT1);

        assertThat(field().isFocused()).isTrue();
        assertThat(field().getText()).isEqualTo("1");
    }

    /** A reading typed while a button has the keyboard keeps its first figures: 0.13 V is not 13 V. */
    @Test
    void aReadingBegunOnAButtonIsTypedWhole() {
        place();
        read("tp2 0 dc");
        for (boolean letters : List.of(true, false)) {
            interact(() -> program().prefer(p -> p.withSingleLetters(letters)));
            onAButton();
            Hands.pushEach(this, KeyCode.DIGIT0, KeyCode.PERIOD, KeyCode.DIGIT1, KeyCode.DIGIT3);
            assertThat(field().getText()).as("letters %s", letters).isEqualTo("0.13");
            onAButton();
            Hands.pushEach(this, KeyCode.PERIOD, KeyCode.DIGIT5);
            assertThat(field().getText()).as("letters %s", letters).isEqualTo(".5");
            onAButton();
            pad(KeyCode.SUBTRACT, "-");
            pad(KeyCode.NUMPAD9, "9");
            assertThat(field().getText()).as("letters %s", letters).isEqualTo("-9");
            onAButton();
            pad(KeyCode.DECIMAL, ",");
            pad(KeyCode.NUMPAD7, "7");
            assertThat(field().getText()).as("letters %s", letters).isEqualTo(",7");
        }
        assertThat(repair().window().matching()).isTrue();
    }

    /** An empty line, and the keyboard on a button above it. */
    private void onAButton() {
        interact(() -> {
            field().clear();
            ButtonBase button = lookup(".place").query();
            button.requestFocus();
        });
    }

    /** While a list lies over the place, figures are none of a reading. */
    @Test
    void underAListNoReadingBegins() {
        place();
        read("tp2 0 dc");
        interact(() -> repair().window().commands().chooseFound());
        key(KeyCode.DIGIT7);

        assertThat(repair().window().overlay().showing()).isPresent();
        assertThat(field().isFocused()).isFalse();
    }

    @Test
    void whatIsFoundIsChangedAndTakenAwayInTheLine() {
        place();
        read("tp1 18.2 dc", "tp2 0 dc");
        key(KeyCode.LEFT);
        key(KeyCode.ENTER);
        assertThat(field().getText()).isEqualTo("TP2 0 V d.c. volts");
        interact(() -> field().clear());
        read("tp2 14.6 dc");
        assertThat(found()).containsExactly("TP1 18.2 V d.c. volts", "TP2 14.6 V d.c. volts");
        key(KeyCode.LEFT);
        key(KeyCode.DELETE);
        worked();
        assertThat(found()).containsExactly("TP1 18.2 V d.c. volts");
        interact(() -> field().requestFocus());
        key(KeyCode.BACK_SPACE);
        worked();

        assertThat(found()).isEmpty();
    }

    /** What is being changed may be gone once something is taken back. */
    @Test
    void takingBackWhileAReadingIsChangedIsOfTheField() {
        place();
        read("tp1 18.2 dc", "tp2 3 dc");
        interact(() -> repair().window().match().change(1));
        keys("4");
        key(KeyCode.CONTROL, KeyCode.Z);
        assertThat(found()).hasSize(2);

        interact(() -> repair().window().commands().take(Command.UNDO));
        assertThat(found()).containsExactly("TP1 18.2 V d.c. volts");
        assertThat(field().getText()).isEmpty();
        keys("tp3 1 ac");
        key(KeyCode.ENTER);
        assertThat(found()).containsExactly("TP1 18.2 V d.c. volts", "TP3 1 V a.c. volts");
        key(KeyCode.CONTROL, KeyCode.Z);
        assertThat(found()).containsExactly("TP1 18.2 V d.c. volts");
    }

    @Test
    void whatIsSeenWithoutAMeterIsAnsweredByNumbers() {
        place();
        List<ToggleButton> choices = List.copyOf(lookup(".intake-choice").queryAllAs(ToggleButton.class));
        assertThat(choices.stream().filter(ToggleButton::isSelected).map(Labeled::getText))
                .containsOnly("don't know");
        key(KeyCode.DOWN);
        key(KeyCode.DIGIT2);
        worked();
        assertThat(found()).containsExactly("F1 wire gone");
        assertThat(field().getText()).as("the figure is no reading").isEmpty();
        assertThat(field().isFocused()).isFalse();
        key(KeyCode.CONTROL, KeyCode.Z);
        worked();

        assertThat(choices.get(0).isSelected()).isTrue();
    }

    /** From the other place it opens even where it was open already; in its own it opens and closes. */
    @Test
    void whatIsSeenIsAskedForByOneKeyFromTheOtherPlace() {
        key(KeyCode.I);
        worked();
        assertThat(repair().window().matching()).isTrue();
        assertThat(lookup(".intake").queryAll()).hasSize(1);
        key(KeyCode.CONTROL, KeyCode.DIGIT1);
        key(KeyCode.I);
        assertThat(lookup(".intake").queryAll()).hasSize(1);
        key(KeyCode.I);

        assertThat(lookup(".intake").queryAll()).isEmpty();
    }

    @Test
    void aColumnIsPastedFromASpreadsheet() {
        place();
        interact(() -> Clipboard.getSystemClipboard()
                .setContent(java.util.Map.of(DataFormat.PLAIN_TEXT, "TP1\t18,2\tdc\nTP2\t0\tdc\nTP99\t3\tdc\n")));
        interact(() -> field().paste());
        worked();

        assertThat(found()).containsExactly("TP1 18.2 V d.c. volts", "TP2 0 V d.c. volts");
        assertThat(line()).contains("TP99");
    }

    @Test
    void whatWasFoundIsThereWhenTheRepairIsOpenedAgain() {
        place();
        read("tp1 18.2 dc", "F1 blown", "tp3 to tp1 OL diode test (power off, pull f1)");
        pad(KeyCode.DIVIDE, "/");
        until(() -> !model().state().outOfReach().isEmpty());
        List<Found> before = model().state().found();
        Path kept = repair().autosave().file();
        interact(() -> {
            repair().autosave().now();
            program().open(kept);
        });

        assertThat(model().state().found()).isEqualTo(before).hasSize(3);
        assertThat(model().state().outOfReach()).hasSize(1);
    }

    @Test
    void aFileOfReadingsIsOpenedAndTakenBack() throws IOException {
        chosen = file("arrangement,function,from,to,value,unit\n,dc,TP1,,18.2,V\n,dc,TP2,,0,V\n,dc,TP4,,?,V\n");
        place();
        read("tp1 3.1 dc");
        key(KeyCode.CONTROL, KeyCode.R);
        until(() -> found().size() == 2);
        worked();
        assertThat(found()).containsExactly("TP1 18.2 V d.c. volts", "TP2 0 V d.c. volts");
        assertThat(line()).contains("in place of what was found before", "Not measured in it: 1");
        key(KeyCode.CONTROL, KeyCode.Z);
        worked();

        assertThat(found()).containsExactly("TP1 3.1 V d.c. volts");
        assertThat(line()).doesNotContain("in place of");
    }

    @Test
    void ofAFileWithMistakesNothingIsTakenAndAllOfThemAreShown() throws IOException {
        Path wrong = file("function,from,value,unit\ndc,TP1,18.2,V\ndc,TP99,3,V\nohms,TP2,much,\n");
        place();
        interact(() -> program().open(wrong));
        until(() -> lookup(".problem").queryAll().size() == 2);
        List<String> problems = lookup(".problem").queryAllAs(Labeled.class).stream()
                .map(Labeled::getText)
                .toList();

        assertThat(problems.get(0)).startsWith("Line 3:").contains("TP99");
        assertThat(problems.get(1)).startsWith("Line 4:").contains("much");
        assertThat(found()).isEmpty();
        key(KeyCode.ESCAPE);
        assertThat(field().isFocused()).isTrue();
    }

    @Test
    void whatIsSavedOpensAsTheSame() throws IOException {
        chosen = file("");
        place();
        read(
                "tp1 18.2 dc",
                "F1 blown",
                "replaced F1",
                "tp3 to tp1 OL diode test (power off, pull f1)",
                "tp2 13.2 ohms");
        List<Found> before = model().state().found();
        key(KeyCode.CONTROL, KeyCode.S);
        assertThat(line()).contains(chosen.toString());
        assertThat(chosen).content().contains("replaced,F1");
        interact(() -> model().find(List.of()));
        key(KeyCode.CONTROL, KeyCode.R);
        until(() -> !found().isEmpty());

        assertThat(model().state().found()).isEqualTo(before);
        chosen = chosen.resolveSibling("board 2.1");
        key(KeyCode.CONTROL, KeyCode.S);
        assertThat(chosen.resolveSibling("board 2.1.csv")).as("whole name").exists();
    }

    private static Path file(String text) throws IOException {
        return Files.writeString(Files.createTempDirectory("fusetale-readings").resolve("a.csv"), text);
    }

    @Test
    void aNewPartStandsInTheLineAndInTheGrid() {
        place();
        read("tp2 0 dc", "new r2");
        assertThat(found()).containsExactly("TP2 0 V d.c. volts", "replaced R2");
        assertThat(repair().window().match().pieces()).containsExactly("TP2 0 V d.c.", "new: R2");
        assertThat(texts(".fit-head")).contains("new: R2");
        read("tp2 14.6 dc");
        assertThat(matching().standingProperty().get().orElseThrow().findings().spells())
                .extracting(s -> s.replaced().size(), s -> s.evidence().size())
                .containsExactly(tuple(0, 1), tuple(1, 1));
        assertThat(lookup(".fit-fresh").queryAll()).hasSize(rows().size() + 1);
        assertThat(rows().get(0).getAccessibleText()).contains("Then new: R2.");
        assertThat(model().state().measured().values())
                .as("the machine as it is now")
                .hasSize(1);
        key(KeyCode.CONTROL, KeyCode.Z);
        key(KeyCode.CONTROL, KeyCode.Z);
        worked();

        assertThat(found()).containsExactly("TP2 0 V d.c. volts");
        assertThat(lookup(".fit-fresh").queryAll()).isEmpty();
    }

    private List<String> texts(String within) {
        return from(lookup(within).<Node>query()).lookup(".text-ink").queryAllAs(Text.class).stream()
                .map(Text::getText)
                .toList();
    }

    @Test
    void whatCanBeReadInOneGoStandsBelowTheAdvice() {
        place();
        List<String> more = lookup(".advice-next").queryAllAs(Labeled.class).stream()
                .map(Labeled::getText)
                .toList();

        assertThat(advised()).isEqualTo("TP1 to gnd, d.c. volts");
        assertThat(more)
                .containsExactly(
                        "While the power is on, also: d.c. volts at TP2; a.c. volts at TP1; a.c. volts at TP4.");
        interact(() -> repair().window().match().next());
        key(KeyCode.A);
        assertThat(advised()).isEqualTo("TP2 to gnd, d.c. volts");
    }

    @Test
    void aGroupIsSaidToDoAsItShouldAtOnce() {
        place();
        key(KeyCode.ESCAPE);
        ToggleButton blown = lookup(".intake-choice").queryAllAs(ToggleButton.class).stream()
                .filter(b -> b.getText().equals("wire gone"))
                .findFirst()
                .orElseThrow();
        interact(blown::fire);
        worked();
        key(KeyCode.UP);
        ButtonBase rest = (ButtonBase) repair().window().getScene().getFocusOwner();
        assertThat(rest.getText()).isEqualTo("The rest as they should");
        key(KeyCode.ENTER);
        worked();
        assertThat(found()).containsExactly("F1 wire gone", "F1 as marked at its holder");
        assertThat(rest.isDisabled()).isTrue();
        key(KeyCode.CONTROL, KeyCode.Z);
        worked();

        assertThat(found()).containsExactly("F1 wire gone");
    }

    @Test
    void noRowIsCutAtTheLowerEdge() {
        place();
        read("tp1 15.7 dc", "tp2 13.4 dc", "F1 good");
        key(KeyCode.ESCAPE);
        for (int k = 0; k < rows().size(); k++) {
            whole();
            key(KeyCode.DOWN);
        }
        assertThat(rows().stream().map(Node::isFocused).toList().indexOf(true)).isEqualTo(rows().size() - 1);
        whole();
    }

    /** Every row is seen whole or not at all; the one with the keyboard whole. */
    private void whole() {
        Node view = lookup(".fit-grid .scroll-pane").query();
        Bounds seen = view.localToScene(view.getLayoutBounds());
        for (Node row : rows()) {
            Bounds at = row.localToScene(row.getLayoutBounds());
            boolean inside = at.getMinY() >= seen.getMinY() - 1 && at.getMaxY() <= seen.getMaxY() + 1;
            boolean outside = at.getMinY() >= seen.getMaxY() - 1 || at.getMaxY() <= seen.getMinY() + 1;
            assertThat(inside || (outside && !row.isFocused()))
                    .as("%s in %s", at, seen)
                    .isTrue();
        }
    }

    @Test
    void nothingIsCutAndEverythingSpeaks() {
        place();
        tidy("empty");
        read("tp1 15.7 dc", "tp2 13.4 dc", "tp1 0.24 ac", "tp4 14 ac", "tp2 13.2 ohms", "F1 good", "tp5 OL ohms");
        tidy("100 %");
        interact(() -> program().prefer(p -> p.withTextPerCent(150).withLight(Preferences.Light.LAMP_OFF)));
        WaitForAsyncUtils.waitForFxEvents();
        tidy("150 %");
    }

    private void tidy(String where) {
        interact(() -> repair().window().getScene().getRoot().applyCss());
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(VisibleTexts.cut(repair().window().match())).as(where).isEmpty();
        assertThat(VisibleTexts.outside(repair().window())).as(where).isEmpty();
        assertThat(VisibleTexts.overlapping(repair().window().match()))
                .as(where)
                .isEmpty();
        for (Node node : VisibleTexts.focusable(repair().window().match())) {
            String said = node.getAccessibleText();
            boolean speaks = said != null && !said.isBlank();
            assertThat(speaks || (node instanceof Labeled l && !l.getText().isBlank()))
                    .as("%s: %s", where, node)
                    .isTrue();
            if (node instanceof ButtonBase) {
                boolean small =
                        node.getStyleClass().stream().anyMatch(List.of("fit-more", "found-earlier", "more")::contains);
                assertThat(node.getLayoutBounds().getHeight())
                        .as("%s: %s", where, node)
                        .isGreaterThanOrEqualTo(small ? 28 : LEAST_TARGET);
            }
        }
    }
}
