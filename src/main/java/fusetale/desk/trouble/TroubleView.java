package fusetale.desk.trouble;

import fusetale.desk.kit.Page;
import fusetale.explore.Words;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Tells of something unforeseen: that the work is kept, what happened as text to copy, and the way on. */
public final class TroubleView extends StackPane {
    private static final double LEAST_TEXT_HEIGHT = 160;
    private static final Words WORDS = Words.of(TroubleView.class);

    /**
     * The page.
     *
     * @param trouble what happened
     * @param leave goes on with the work
     */
    public TroubleView(Trouble trouble, Runnable leave) {
        Page page = new Page(WORDS.say("heading"), leave);
        TextArea text = new TextArea(trouble.text());
        text.setEditable(false);
        text.setAccessibleText(WORDS.say("text"));
        text.setMinHeight(LEAST_TEXT_HEIGHT);
        page.setFilled();
        VBox.setVgrow(text, Priority.ALWAYS);
        page.body().getChildren().addAll(Page.text(trouble.where(), "page-name"), Page.text(WORDS.say("says")), text);
        Button goOn = page.button(WORDS.say("go-on"), leave);
        goOn.getStyleClass().add("first");
        page.button(WORDS.say("copy"), () -> {
            ClipboardContent content = new ClipboardContent();
            content.putString(trouble.text());
            Clipboard.getSystemClipboard().setContent(content);
            page.say(WORDS.say("copied"));
        });
        page.setFirst(goOn);
        getChildren().add(page);
    }
}
