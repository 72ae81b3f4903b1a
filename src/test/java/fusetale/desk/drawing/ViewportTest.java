package fusetale.desk.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.report.drawing.Box;
import org.junit.jupiter.api.Test;

/** Zooming and panning. */
class ViewportTest {
    private final Viewport begun = new Viewport(1, 0, 0);

    @Test
    void aBoxIsFittedInTheMiddle() {
        Viewport view = Viewport.showing(new Box(100, 50, 400, 200), 1000, 300, 4);

        assertThat(view.y(50)).isGreaterThanOrEqualTo(0);
        assertThat(view.y(250)).isLessThanOrEqualTo(300);
        assertThat((view.x(100) + view.x(500)) / 2).isCloseTo(500, within(1e-9));
        assertThat((view.y(50) + view.y(250)) / 2).isCloseTo(150, within(1e-9));
    }

    @Test
    void whatIsUnderTheHandStaysThereWhileZooming() {
        Viewport zoomed = begun.zoomed(1.25, 300, 200);

        assertThat(zoomed.x(300)).isCloseTo(300, within(1e-9));
        assertThat(zoomed.y(200)).isCloseTo(200, within(1e-9));
        assertThat(zoomed.scale()).isCloseTo(1.25, within(1e-12));
    }

    @Test
    void zoomingEndsSomewhere() {
        Viewport view = begun;
        for (int k = 0; k < 100; k++) {
            view = view.zoomed(1.25, 10, 10);
        }
        assertThat(view.scale()).isLessThanOrEqualTo(4);
        for (int k = 0; k < 200; k++) {
            view = view.zoomed(0.8, 10, 10);
        }
        assertThat(view.scale()).isGreaterThanOrEqualTo(0.12);
    }

    @Test
    void whatIsRevealedMovesNoFurtherThanItMust() {
        assertThat(begun.revealing(new Box(100, 100, 50, 50), 800, 400)).isEqualTo(begun);
        Viewport right = begun.revealing(new Box(900, 100, 50, 50), 800, 400);

        assertThat(right.x(950)).isLessThanOrEqualTo(800);
        assertThat(right.y(100)).isEqualTo(100);
    }
}
