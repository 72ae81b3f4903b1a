package fusetale.desk.sheet;

import fusetale.desk.kit.Page;
import fusetale.explore.Words;
import java.io.ByteArrayInputStream;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;

/** The pages as they will be printed. Enter prints; where there is no printer, the way to a PDF is offered. */
public final class SheetView extends StackPane {
    private static final double PREVIEW_SCALE = 1.5;
    private static final double MARGIN = 24;
    private static final Words WORDS = Words.of(SheetView.class);

    private final List<SheetPage> pages;
    private final String title;
    private final Printing printing;
    private final Page page;
    private final Button print;
    private final Button pdf;

    /**
     * The preview.
     *
     * @param title what is printed
     * @param pages its pages
     * @param printing what prints them
     * @param savePdf asks for a file and writes them as PDF into it
     * @param leave what Esc and the last button do
     */
    public SheetView(String title, List<SheetPage> pages, Printing printing, Runnable savePdf, Runnable leave) {
        this.pages = List.copyOf(pages);
        this.title = title;
        this.printing = printing;
        page = new Page(title, leave);
        pages.forEach(p -> page.body().getChildren().add(preview(p)));
        page.setScrolledByKeys(true);
        print = page.button(WORDS.say("print"), this::print);
        print.getStyleClass().add("first");
        print.setDefaultButton(true);
        pdf = page.button(WORDS.say("pdf"), savePdf);
        page.button(WORDS.say("leave"), leave);
        page.say(WORDS.say(pages.size() == 1 ? "one-page" : "pages", pages.size()));
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER && !(e.getTarget() instanceof Button)) {
                e.consume();
                print();
            }
        });
        page.setFirst(print);
        getChildren().add(page);
    }

    /** Says something in the line under the pages, such as where the PDF is. */
    public void say(String text) {
        page.say(text);
    }

    private void print() {
        switch (printing.print(pages, title)) {
            case SENT -> page.say(WORDS.say("sent"));
            case NO_PRINTER -> {
                page.say(WORDS.say("no-printer"));
                pdf.requestFocus();
            }
            case REFUSED -> page.say(WORDS.say("refused"));
            case GIVEN_UP -> page.say("");
        }
    }

    private Node preview(SheetPage of) {
        ImageView image =
                new ImageView(new Image(new ByteArrayInputStream(of.png().apply(PREVIEW_SCALE))));
        image.setPreserveRatio(true);
        image.setSmooth(true);
        image.fitWidthProperty().bind(page.body().widthProperty().subtract(MARGIN));
        image.setAccessibleText(of.spoken());
        StackPane sheet = new StackPane(image);
        sheet.getStyleClass().add("page-sheet");
        // or the picture, once wide, would keep the page wide
        sheet.setMinWidth(0);
        sheet.setAccessibleText(of.spoken());
        return sheet;
    }
}
