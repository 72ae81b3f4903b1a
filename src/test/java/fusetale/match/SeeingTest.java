package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Observation;
import org.junit.jupiter.api.Test;

/** Which sights are taken for each other (judgement): those that hang on a few per cent of a current or a brightness. */
class SeeingTest {
    private static double probability(Observation.Sight seen, Observation.Sight expected) {
        return Seeing.probability(new Shown.Seen(seen), new Observation("L1", expected, ""));
    }

    /** A switch at the end of the stroke lets go; whether the other winding then holds is as near as dim is to dark. */
    @Test
    void coilThatHoldsIsNextToOneThatComesInAgainAndAgain() {
        double dim = probability(Observation.Sight.DIM, Observation.Sight.DARK);
        assertThat(probability(Observation.Sight.HOLDS, Observation.Sight.CHATTERS))
                .isEqualTo(dim);
        assertThat(probability(Observation.Sight.CHATTERS, Observation.Sight.HOLDS))
                .isEqualTo(dim);
        assertThat(probability(Observation.Sight.STILL, Observation.Sight.PULLS_IN))
                .isLessThan(dim / 10);
    }

    /** What is printed on a cap is read wrong less often than a glow; and nothing but a wrong fuse changes it. */
    @Test
    void capOfAFuseIsPlainToSee() {
        assertThat(probability(Observation.Sight.OVER_RATED, Observation.Sight.RIGHT_RATING))
                .isLessThan(probability(Observation.Sight.BUZZES, Observation.Sight.PULLS_IN));
        assertThat(Seeing.unlistedOdds(new Shown.Seen(Observation.Sight.OVER_RATED)))
                .isLessThan(Seeing.unlistedOdds(new Shown.Seen(Observation.Sight.HUMS)));
    }
}
