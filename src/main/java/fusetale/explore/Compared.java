package fusetale.explore;

import fusetale.bench.Check;
import fusetale.bench.Reading;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * One reading as built beside the same as supposed.
 *
 * @param asBuilt what the meter shows on a healthy machine whose parts are all nominal
 * @param asSupposed what it shows with the supposition
 * @param healthy what healthy machines may show
 * @param moved how far it moved, {@link HealthyRange#moved}
 */
public record Compared(Reading asBuilt, Reading asSupposed, HealthyRange healthy, double moved) {
    /** Refuses readings of two different checks. */
    public Compared {
        if (!asBuilt.check().equals(asSupposed.check())) {
            throw new IllegalArgumentException(asBuilt.check() + " beside " + asSupposed.check());
        }
    }

    /** Compares two readings of one check. */
    public static Compared of(Reading asBuilt, Reading asSupposed, HealthyRange healthy) {
        return new Compared(asBuilt, asSupposed, healthy, healthy.moved(asBuilt, asSupposed));
    }

    /** What was measured. */
    public Check check() {
        return asBuilt.check();
    }

    /** Whether the difference is lost in what healthy machines and the meter may stray. */
    public boolean tooCloseToTell() {
        return moved < 1;
    }

    /** How far it moved in two figures, so that readings of one rail are not ranked by their last digit. */
    public double movedInTwoFigures() {
        return new BigDecimal(moved).round(new MathContext(2)).doubleValue();
    }
}
