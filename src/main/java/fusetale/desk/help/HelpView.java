package fusetale.desk.help;

import fusetale.desk.kit.Page;
import fusetale.explore.Words;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Every key and every word, and a line to look one up in: its first letters are enough. */
public final class HelpView extends StackPane {
    private static final double KEY_LINE_WIDTH = 364;
    private static final double KEY_WIDTH = 116;
    private static final Words WORDS = Words.of(HelpView.class);

    private final Page page;
    private final TextField field = new TextField();
    private final Label keysHeading = Page.text(WORDS.say("keys"), "page-section");
    private final FlowPane keys = new FlowPane(20, 8);
    private final Label wordsHeading = Page.text(WORDS.say("words"), "page-section");
    private final VBox words = new VBox(10);
    private final List<KeyLine> keyLines;
    private final Glossary glossary;

    /**
     * The page.
     *
     * @param keyLines every key
     * @param glossary every word
     * @param leave what Esc and the button do
     */
    public HelpView(List<KeyLine> keyLines, Glossary glossary, Runnable leave) {
        this.keyLines = List.copyOf(keyLines);
        this.glossary = glossary;
        page = new Page(WORDS.say("heading"), leave);
        field.setPromptText(WORDS.say("find"));
        field.setAccessibleText(WORDS.say("find"));
        field.textProperty().addListener((of, before, now) -> show(now));
        page.getChildren().add(1, field);
        page.body().getChildren().addAll(keysHeading, keys, wordsHeading, words);
        page.setScrolledByKeys(true);
        page.button(WORDS.say("leave"), leave);
        page.setFirst(field);
        getChildren().add(page);
        show("");
    }

    /** Shows the keys and words that begin so, and puts the keyboard into the line. */
    public void lookUp(String beginning) {
        field.setText(beginning);
        field.requestFocus();
        field.end();
    }

    private void show(String beginning) {
        List<KeyLine> lines =
                keyLines.stream().filter(l -> matches(l, beginning)).toList();
        List<Glossary.Entry> entries = glossary.startingWith(beginning);
        keys.getChildren().setAll(lines.stream().map(HelpView::node).toList());
        words.getChildren().setAll(entries.stream().map(HelpView::node).toList());
        shown(keysHeading, !lines.isEmpty());
        shown(keys, !lines.isEmpty());
        shown(wordsHeading, !entries.isEmpty());
        page.say(lines.isEmpty() && entries.isEmpty() ? WORDS.say("none", beginning) : "");
    }

    private static void shown(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    private static boolean matches(KeyLine line, String beginning) {
        String wanted = beginning.strip().toLowerCase(Locale.ROOT);
        if (wanted.isEmpty() || line.keys().toLowerCase(Locale.ROOT).equals(wanted)) {
            return true;
        }
        for (String word : line.label().toLowerCase(Locale.ROOT).split("\\W+", -1)) {
            if (word.startsWith(wanted)) {
                return true;
            }
        }
        return line.label().toLowerCase(Locale.ROOT).startsWith(wanted);
    }

    private static Parent node(KeyLine line) {
        Label key = new Label(line.keys());
        key.getStyleClass().add("page-key");
        key.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
        HBox holder = new HBox(key);
        holder.setMinWidth(KEY_WIDTH);
        holder.setAlignment(Pos.CENTER_LEFT);
        Label label = Page.text(line.label());
        HBox row = new HBox(10, holder, label);
        row.setAlignment(Pos.CENTER_LEFT);
        row.setPrefWidth(KEY_LINE_WIDTH);
        row.setMinHeight(Region.USE_PREF_SIZE);
        row.setAccessibleText(line.keys() + ": " + line.label());
        return row;
    }

    private static Parent node(Glossary.Entry entry) {
        VBox card = new VBox(2, Page.text(entry.title(), "page-name"), Page.text(entry.says()));
        if (!entry.here().isEmpty()) {
            card.getChildren().add(Page.text(entry.here(), "page-soft"));
        }
        card.getStyleClass().add("page-card");
        card.setAccessibleText(entry.title() + ". " + entry.says() + " " + entry.here());
        return card;
    }
}
