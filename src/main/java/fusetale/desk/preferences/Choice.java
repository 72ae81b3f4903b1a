package fusetale.desk.preferences;

import fusetale.desk.kit.Page;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/**
 * One of a few, all of them in sight: a name and a row of buttons of which one is down. Its own text says which, so that the
 * difference is not one of colour alone.
 *
 * @param <T> what is chosen
 */
final class Choice<T> extends VBox {
    private static final String DOWN = "\u25CF ";

    private final Map<T, ToggleButton> buttons = new LinkedHashMap<>();
    private final Function<T, String> words;
    private final String name;

    Choice(String name, String remark, List<T> choices, Function<T, String> words, Consumer<T> chosen) {
        super(6);
        this.name = name;
        this.words = words;
        Label label = Page.text(name, "page-name");
        getChildren().add(label);
        FlowPane row = new FlowPane(8, 8);
        ToggleGroup group = new ToggleGroup();
        for (T choice : choices) {
            ToggleButton button = new ToggleButton();
            button.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
            button.setToggleGroup(group);
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(e -> {
                button.setSelected(true); // one is always down
                chosen.accept(choice);
            });
            buttons.put(choice, button);
            row.getChildren().add(button);
        }
        getChildren().add(row);
        if (!remark.isEmpty()) {
            getChildren().add(Page.text(remark, "page-soft"));
        }
    }

    /** Shows which one holds. */
    void show(T value) {
        buttons.forEach((choice, button) -> {
            boolean down = choice.equals(value);
            button.setSelected(down);
            button.setText((down ? DOWN : "") + words.apply(choice));
            button.setAccessibleText(name + ": " + words.apply(choice));
        });
    }
}
