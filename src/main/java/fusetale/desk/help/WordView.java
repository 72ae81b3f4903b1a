package fusetale.desk.help;

import fusetale.desk.kit.Page;
import fusetale.explore.Words;
import java.util.List;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.VBox;

/** One or a few words explained beside where they stand. */
public final class WordView extends VBox {
    private static final Words WORDS = Words.of(WordView.class);
    private static final double WIDTH = 440;

    /** Explains words. */
    public WordView(List<Glossary.Entry> entries) {
        super(10);
        getStylesheets()
                .add(Objects.requireNonNull(Page.class.getResource("/fusetale/desk/kit/page.css"))
                        .toExternalForm());
        getStyleClass().addAll("page-card", "word-card");
        setPrefWidth(WIDTH);
        StringBuilder spoken = new StringBuilder();
        for (Glossary.Entry entry : entries) {
            VBox one = new VBox(2, Page.text(entry.title(), "page-name"), Page.text(entry.says()));
            if (!entry.here().isEmpty()) {
                one.getChildren().add(Page.text(entry.here(), "page-soft"));
            }
            getChildren().add(one);
            spoken.append(entry.spoken()).append(' ');
        }
        getChildren().add(Page.text(WORDS.say("again"), "page-soft"));
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TEXT);
        setAccessibleText(spoken + WORDS.say("again"));
    }
}
