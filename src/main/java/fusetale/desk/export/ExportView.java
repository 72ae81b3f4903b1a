package fusetale.desk.export;

import fusetale.desk.kit.Page;
import fusetale.explore.Words;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;

/** What can be written, one button a file. */
public final class ExportView extends StackPane {
    private static final Words WORDS = Words.of(ExportView.class);

    /**
     * The page.
     *
     * @param model what it offers
     * @param outOfDate whether that is said at the top
     * @param leave what Esc and the last button do
     */
    public ExportView(ExportModel model, boolean outOfDate, Runnable leave) {
        Page page = new Page(WORDS.say("heading"), leave);
        if (outOfDate) {
            page.body().getChildren().add(Page.text(WORDS.say("out-of-date"), "page-name"));
        }
        Map<String, FlowPane> rows = new LinkedHashMap<>();
        for (Offer offer : model.offers()) {
            FlowPane row = rows.computeIfAbsent(offer.what(), what -> {
                FlowPane made = new FlowPane(8, 8);
                page.body().getChildren().addAll(Page.text(what, "page-section"), made);
                return made;
            });
            Button button = new Button(offer.kind());
            button.setAccessibleText(WORDS.say("write", offer.what(), offer.kind()));
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(e -> model.write(offer));
            row.getChildren().add(button);
        }
        page.button(WORDS.say("leave"), leave);
        page.say(model.saidProperty().get());
        model.saidProperty().addListener((of, before, now) -> page.say(now));
        getChildren().add(page);
    }
}
