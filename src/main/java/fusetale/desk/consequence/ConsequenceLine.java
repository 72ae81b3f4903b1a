package fusetale.desk.consequence;

import fusetale.desk.help.Explained;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Signs;
import fusetale.explore.Words;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The line under the sentence. What does not fit one line is a press away, and never the danger. */
public final class ConsequenceLine extends HBox implements Explained {
    private static final Words WORDS = Words.of(ConsequenceLine.class);
    private static final double HEIGHT = 28;

    private final HBox shout = new HBox();
    private final Label text = new Label();
    private final Button more = new Button();
    private Consequence shown = new Consequence(false, java.util.List.of(), false);
    private boolean open;

    /** An empty line. */
    public ConsequenceLine() {
        super(14);
        getStyleClass().add("consequence");
        getStylesheets()
                .add(ConsequenceLine.class.getResource("consequence.css").toExternalForm());
        setAlignment(Pos.TOP_LEFT);
        Label words = new Label(WORDS.say("danger"));
        words.setFont(Faces.SHOUT.at(17));
        words.setMinWidth(Region.USE_PREF_SIZE);
        words.getStyleClass().add("shout-words");
        words.setMinHeight(HEIGHT);
        shout.getChildren().addAll(Signs.hatch(22, HEIGHT), words);
        shout.setMinWidth(Region.USE_PREF_SIZE);
        text.setFont(Faces.WORDS.at(17));
        text.setWrapText(true);
        text.setTextOverrun(OverrunStyle.ELLIPSIS);
        text.setMinHeight(Region.USE_PREF_SIZE);
        text.setPadding(new Insets(2, 0, 2, 0));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        more.getStyleClass().add("more");
        more.setMinWidth(Region.USE_PREF_SIZE);
        more.setOnAction(e -> {
            open = !open;
            show(shown);
        });
        getChildren().addAll(shout, text, more);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TEXT);
    }

    @Override
    public String words() {
        return shown.danger() ? WORDS.say("danger") : first();
    }

    /** Shows what follows. */
    public void show(Consequence consequence) {
        boolean same = consequence.spoken().equals(shown.spoken());
        shown = consequence;
        shout.setVisible(consequence.danger());
        shout.setManaged(consequence.danger());
        text.getStyleClass().setAll("label", consequence.old() ? "label-soft" : "label");
        text.setText(open ? String.join("\n", consequence.sentences()) : first());
        int left = consequence.sentences().size() - 1;
        more.setVisible(left > 0);
        more.setManaged(left > 0);
        more.setText(open ? WORDS.say("less") : WORDS.say("more", left));
        more.setAccessibleText(more.getText());
        setAccessibleText(consequence.spoken());
        if (!same) {
            notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
        }
    }

    private String first() {
        return shown.sentences().isEmpty() ? "" : shown.sentences().get(0);
    }
}
