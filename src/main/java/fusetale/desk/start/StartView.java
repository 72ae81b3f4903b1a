package fusetale.desk.start;

import fusetale.desk.kit.Page;
import fusetale.explore.Words;
import fusetale.store.Recent;
import java.nio.file.Path;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The first screen: a board that comes with the program, a repair, the repairs opened last; nothing else. */
public final class StartView extends StackPane {
    private static final double CARD_WIDTH = 372;
    private static final Words WORDS = Words.of(StartView.class);

    private final StartModel model;
    private final Deeds deeds;
    private final VBox recents = new VBox(8);
    private final Page page;

    /** What somebody may want from here. */
    public interface Deeds {
        /** Begins a repair of a board. */
        void begin(Path circuit);

        /** Goes on with a repair. */
        void open(Path repair);

        /** Asks for the file of a repair; nothing where none was chosen. */
        Optional<Path> chosenRepair();

        /** Goes back to where one was; does nothing where there is nothing behind this screen. */
        void leave();
    }

    /** The screen. */
    public StartView(StartModel model, Deeds deeds) {
        this.model = model;
        this.deeds = deeds;
        page = new Page(WORDS.say("heading"), deeds::leave);
        FlowPane boards = new FlowPane(16, 16);
        for (BuiltInBoard board : BuiltInBoard.values()) {
            boards.getChildren().add(card(board));
        }
        page.body().getChildren().addAll(Page.text(WORDS.say("boards"), "page-section"), boards, recents);
        page.button(WORDS.say("open"), () -> deeds.chosenRepair().ifPresent(deeds::open));
        page.say(model.saidProperty().get());
        model.saidProperty().addListener((of, before, now) -> page.say(now));
        model.recentProperty().addListener((of, before, now) -> show(now));
        show(model.recentProperty().get());
        getChildren().add(page);
    }

    private Node card(BuiltInBoard board) {
        Button open = new Button(board.title());
        open.setAccessibleText(WORDS.say("begin", board.title(), board.says()));
        open.setMaxWidth(Double.MAX_VALUE);
        open.getStyleClass().add("first");
        open.setOnAction(e -> model.board(board).ifPresent(deeds::begin));
        VBox card = new VBox(10, open, Page.text(board.says()));
        card.getStyleClass().add("page-card");
        card.setPrefWidth(CARD_WIDTH);
        return card;
    }

    private void show(Recent recent) {
        recents.getChildren().clear();
        if (recent.entries().isEmpty()) {
            return;
        }
        recents.getChildren().add(Page.text(WORDS.say("recent"), "page-section"));
        recent.entries().forEach(e -> recents.getChildren().add(row(e)));
    }

    private Node row(Recent.Entry entry) {
        String remark = model.remark(entry);
        Button open = new Button(entry.name());
        open.setAccessibleText(entry.name() + ", " + remark);
        open.setMinWidth(USE_PREF_SIZE);
        Button pin = new Button(WORDS.say(entry.pinned() ? "unpin" : "pin"));
        pin.setAccessibleText(WORDS.say(entry.pinned() ? "unpin-name" : "pin-name", entry.name()));
        pin.setMinWidth(USE_PREF_SIZE);
        pin.setOnAction(e -> model.pin(entry, !entry.pinned()));
        Button forget = new Button(WORDS.say("forget"));
        forget.setAccessibleText(WORDS.say("forget-name", entry.name()));
        forget.setMinWidth(USE_PREF_SIZE);
        forget.setOnAction(e -> model.forget(entry));
        Label text = Page.text(remark, "page-soft");
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(10, open, text);
        row.setAlignment(Pos.CENTER_LEFT);
        if (entry.missing()) {
            open.setText(WORDS.say("look-for", entry.name()));
            open.setOnAction(e -> deeds.chosenRepair().ifPresent(file -> model.found(entry, file)));
        } else {
            open.setOnAction(e -> deeds.open(entry.file()));
        }
        row.getChildren().addAll(pin, forget);
        return row;
    }
}
