package fusetale.desk.drawing;

import fusetale.desk.kit.Faces;
import fusetale.report.drawing.Box;
import fusetale.report.drawing.Label;
import fusetale.report.drawing.Section;
import java.util.function.Consumer;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.input.KeyCode;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/** A section's frame and its heading, which keeps a readable size however small the sheet is shown. Enter shows the section, Space folds it. */
final class SectionNode extends Group {
    /** Least size of a heading in the view [px]. */
    private static final double LEAST = 12;

    private final Section section;
    private final Runnable look;
    private final Text heading = new Text();
    private final Rectangle plate = new Rectangle();
    private final Rectangle cover;

    /**
     * A section.
     *
     * @param look shows it
     * @param fold told whether it was folded
     */
    SectionNode(Section section, Runnable look, Consumer<SectionNode> fold) {
        this.section = section;
        this.look = look;
        getStyleClass().add("section");
        Box box = section.bounds();
        Rectangle frame = new Rectangle(box.x(), box.y(), box.width(), box.height());
        frame.getStyleClass().add("section-frame");
        frame.setMouseTransparent(true);
        heading.setText(section.title().text());
        heading.getStyleClass().setAll("drawn-fill", "tone-ink");
        cover = new Rectangle(box.x() + 1, box.y() + 1, box.width() - 2, box.height() - 2);
        cover.getStyleClass().add("section-cover");
        plate.getStyleClass().add("section-plate");
        plate.setMouseTransparent(true);
        getChildren().addAll(frame, plate, heading);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(section.heading());
        heading.setOnMouseClicked(e -> {
            if (e.isStillSincePress() && e.isShiftDown()) {
                fold.accept(this);
            } else if (e.isStillSincePress()) {
                look.run();
            }
        });
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.SPACE) {
                fold.accept(this);
                e.consume();
            } else if (e.getCode() == KeyCode.ENTER) {
                look.run();
                e.consume();
            }
        });
        showAt(1);
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.FIRE) {
            look.run();
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }

    /** What lies over the section while it is folded. */
    Rectangle cover() {
        return cover;
    }

    Section section() {
        return section;
    }

    /** Sizes the heading for a scale of the sheet. */
    void showAt(double scale) {
        double drawn = Label.Role.HEADING.pixels();
        double room = 0.92
                * section.bounds().width()
                / Math.max(1, section.title().bounds().width());
        double size = drawn * Math.max(1, Math.min(room, LEAST / scale / drawn));
        heading.setFont(Faces.HEADING.at(size));
        heading.setX(section.title().bounds().x());
        heading.setY(section.title().y() + (size - drawn) * 0.7);
        // larger than drawn it comes to lie over parts
        plate.setVisible(size > drawn);
        Bounds text = heading.getLayoutBounds();
        plate.setX(section.bounds().x() + 1);
        plate.setY(section.bounds().y() + 1);
        plate.setWidth(Math.min(
                section.bounds().width() - 2,
                text.getMaxX() + size * 0.3 - section.bounds().x()));
        plate.setHeight(text.getMaxY() - section.bounds().y());
    }
}
