package fusetale.desk.tags;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Check;
import fusetale.circuit.MeterFunction;
import fusetale.desk.kit.Faces;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.text.Text;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** What a tag shows where there is room for little. */
@ExtendWith(ApplicationExtension.class)
class TagViewTest {
    @BeforeAll
    static void faces() {
        Faces.load();
    }

    private static TagView stub(TagFigures.State state, TagView.Size size) {
        TagFigures figures = new TagFigures(
                new Check("TP1", "gnd", MeterFunction.DC_VOLTS),
                "TP1",
                "behind the bridge",
                state,
                "18.1 V",
                "16.8 V",
                "",
                5,
                "spoken");
        return WaitForAsyncUtils.waitForAsyncFx(5000, () -> {
            TagView view = new TagView(figures);
            view.show(figures, size);
            return view;
        });
    }

    private static List<String> texts(TagView view) {
        return view.getChildrenUnmodifiable().stream()
                .filter(n -> n instanceof Text && n.isVisible())
                .map(n -> ((Text) n).getText())
                .filter(t -> !t.isEmpty())
                .toList();
    }

    private static boolean shows(TagView view, String styleClass) {
        return view.getChildrenUnmodifiable().stream()
                .filter(n -> n.getStyleClass().contains(styleClass))
                .anyMatch(Node::isVisible);
    }

    @Test
    void aFigureThatIsOutOfDateIsMarkedOnAStub() {
        TagView old = stub(TagFigures.State.OUT_OF_DATE, TagView.Size.WIDE_STUB);
        assertThat(texts(old)).containsExactly("TP1", "18.1 V");
        assertThat(shows(old, "tag-dots")).isTrue();
        assertThat(shows(old, "sign-ring")).as("as healthy").isFalse();

        TagView working = stub(TagFigures.State.WORKING, TagView.Size.WIDE_STUB);
        assertThat(texts(working)).containsExactly("TP1", "\u00b7 \u00b7 \u00b7");
        assertThat(shows(working, "sign-ring")).isFalse();

        TagView narrow = stub(TagFigures.State.OUT_OF_DATE, TagView.Size.STUB);
        assertThat(texts(narrow)).containsExactly("TP1");
        assertThat(shows(narrow, "tag-dots")).isTrue();
        assertThat(shows(narrow, "sign-ring")).isFalse();
    }

    @Test
    void aFigureThatHoldsIsNotMarked() {
        TagView moved = stub(TagFigures.State.MOVED, TagView.Size.WIDE_STUB);
        assertThat(texts(moved)).containsExactly("TP1", "18.1 V");
        assertThat(shows(moved, "tag-dots")).isFalse();
        assertThat(shows(moved, "sign-diamond")).isTrue();
        TagView healthy = stub(TagFigures.State.AS_HEALTHY, TagView.Size.STUB);
        assertThat(shows(healthy, "tag-dots")).isFalse();
        assertThat(shows(healthy, "sign-ring")).isTrue();
    }
}
