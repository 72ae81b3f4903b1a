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
    void aPieceTooTallToBeReadWholeIsReadFromItsTop() {
        Box sheet = new Box(0, 0, 2000, 3000);
        Viewport view = Viewport.reading(new Box(800, 600, 200, 1800), sheet, 1000, 300, 0.6, 1.25);

        assertThat(view.scale()).isEqualTo(0.6);
        assertThat(view.y(600)).isBetween(0.0, 30.0);
        assertThat((view.x(800) + view.x(1000)) / 2).isCloseTo(500, within(1e-9));
    }

    @Test
    void aPieceAtTheEdgeShowsMoreOfTheSheetRatherThanNothing() {
        Box sheet = new Box(0, 0, 2000, 3000);
        Viewport left = Viewport.reading(new Box(0, 0, 300, 250), sheet, 1000, 300, 0.6, 1.25);
        assertThat(left.x(0)).isBetween(0.0, 30.0);
        assertThat(left.y(0)).isBetween(0.0, 30.0);

        Viewport right = Viewport.reading(new Box(1700, 2750, 300, 250), sheet, 1000, 300, 0.6, 1.25);
        assertThat(right.x(2000)).isBetween(970.0, 1000.0);
        assertThat(right.y(3000)).isBetween(270.0, 300.0);
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
