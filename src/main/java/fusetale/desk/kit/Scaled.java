package fusetale.desk.kit;

import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/**
 * Shows its content larger by one factor, text, lines and targets alike. The content is laid out in what room is left when all is
 * measured in its own, unscaled pixels.
 */
public final class Scaled extends Region {
    private final Region content;
    private final DoubleProperty factor = new SimpleDoubleProperty(this, "factor", 1);

    /** Shows {@code content} at its own size first. */
    public Scaled(Region content) {
        this.content = content;
        Scale scale = new Scale(1, 1, 0, 0);
        scale.xProperty().bind(factor);
        scale.yProperty().bind(factor);
        content.getTransforms().add(scale);
        getChildren().add(content);
        factor.addListener(changed -> requestLayout());
    }

    /** How much larger; 1 is as drawn. */
    public DoubleProperty factorProperty() {
        return factor;
    }

    @Override
    protected void layoutChildren() {
        content.resizeRelocate(0, 0, getWidth() / factor.get(), getHeight() / factor.get());
    }
}
