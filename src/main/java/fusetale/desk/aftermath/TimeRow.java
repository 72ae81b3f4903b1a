package fusetale.desk.aftermath;

import fusetale.aftermath.Harm;
import fusetale.explore.Happening;
import fusetale.explore.Words;
import java.util.Locale;

/**
 * One row of the time line.
 *
 * @param happening what, when and how grave
 * @param share in how many machines: {@code all machines}, {@code 90 of 100 machines}
 */
public record TimeRow(Happening happening, String share) {
    private static final Words WORDS = Words.of(TimeRow.class);

    /** A row of an aftermath that drew so many machines. */
    static TimeRow of(Happening happening, int machines) {
        String share = happening.count() == machines
                ? WORDS.say("share.all")
                : WORDS.say("share", Happening.share(happening.count(), machines));
        return new TimeRow(happening, share);
    }

    /** What a gravity is called. */
    static String said(Harm.Gravity gravity) {
        return WORDS.say(gravity.name().toLowerCase(Locale.ROOT));
    }

    /** The row as a screen reader says it. */
    public String spoken() {
        return WORDS.say("spoken.row", happening.words(), happening.when(), share, said(happening.gravity()));
    }
}
