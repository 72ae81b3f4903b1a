package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Check;
import fusetale.circuit.MeterFunction;
import fusetale.desk.tags.TagFigures;
import fusetale.desk.waves.WaveView;
import java.util.List;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/**
 * What can be done without seeing and without a pointer. What is announced as a button can be pressed by what announces it (WCAG 2.1,
 * criterion 4.1.2: what users can set, programs can set too).
 */
class SpokenFlowTest extends OneWindowFlow {
    private void fire(String styleClass, int index) {
        interact(() -> {
            Node node = List.copyOf(lookup(styleClass).queryAllAs(Node.class)).get(index);
            assertThat(node.getAccessibleRole()).isIn(AccessibleRole.BUTTON, AccessibleRole.RADIO_BUTTON);
            node.executeAccessibleAction(AccessibleAction.FIRE);
        });
    }

    private boolean overlaid() {
        return repair().window().overlay().showing().isPresent();
    }

    @Test
    void whatIsAnnouncedAsAButtonCanBePressed() {
        say("r2 open");
        other();
        fire(".part", 0);
        assertThat(overlaid()).as("the card of a part").isTrue();
        key(KeyCode.ESCAPE);
        fire(".piece", 0);
        assertThat(overlaid()).as("what can be done with a piece").isTrue();
        key(KeyCode.ESCAPE);
        fire(".wave-small", 0);
        WaveView waves = lookup(".wave-large").queryAs(WaveView.class);
        assertThat(waves.shown()).hasSize(1);
        key(KeyCode.ESCAPE);
        fire(".strip-row", 0);
        assertThat(repair().window().focusedTag()).isPresent();
    }

    @Test
    void theCursorOfTheWaveformsIsASlider() {
        worked();
        key(KeyCode.V);
        WaveView waves = lookup(".wave-large").queryAs(WaveView.class);
        Node slider = lookup(".wave-field").query();
        double end = (double) slider.queryAccessibleAttribute(AccessibleAttribute.MAX_VALUE);
        interact(() -> slider.executeAccessibleAction(AccessibleAction.INCREMENT));
        assertThat(waves.cursor()).isPositive().isLessThan(end);
        assertThat(slider.queryAccessibleAttribute(AccessibleAttribute.VALUE)).isEqualTo(waves.cursor());
        interact(() -> slider.executeAccessibleAction(AccessibleAction.DECREMENT));
        assertThat(waves.cursor()).isZero();
    }

    @Test
    void aStoryIsChosenAsOneOfAFew() {
        say("br1 leg1 short and f1 holds 25 A");
        key(KeyCode.H);
        // what scrolls has its contents once it is laid out
        until(() -> lookup(".story").queryAll().size() > 1);
        List<Node> stories = List.copyOf(lookup(".story").queryAllAs(Node.class));
        int last = stories.size() - 1;
        fire(".story", last);

        for (int k = 0; k <= last; k++) {
            assertThat(stories.get(k).queryAccessibleAttribute(AccessibleAttribute.SELECTED))
                    .as("story %s of %s", k, last)
                    .isEqualTo(k == last);
        }
    }

    /** A row of the chart is a button: it leads to its test point, with the meter on what was looked at. */
    @Test
    void aRowOfTheChartLeadsToItsTestPoint() {
        say("r2 open");
        key(KeyCode.C);
        interact(() -> lookup(".bar-row").queryAllAs(Node.class).stream()
                .findFirst()
                .orElseThrow()
                .requestFocus());
        key(KeyCode.DOWN);
        key(KeyCode.ENTER);

        assertThat(lookup(".bar-row").queryAll()).isEmpty();
        assertThat(repair().window().focusedTag().map(TagFigures::check))
                .contains(model().tags().get(1));
        key(KeyCode.C);
        fire(".bar-row", 0);
        assertThat(repair().window().focusedTag().map(TagFigures::check))
                .get()
                .extracting(Check::function)
                .isEqualTo(MeterFunction.DC_VOLTS);
    }
}
