package fusetale.sentence;

/**
 * One piece of a sentence. The texts of all pieces, one behind the other, are the sentence.
 *
 * @param kind what it is about
 * @param text as the sentence says it: {@code F202 pulled}
 * @param compact a short line that says the same when typed: {@code pull F202}; empty for {@link Kind#WORDS}
 * @param index which of its kind, from 0
 */
public record Piece(Kind kind, String text, String compact, int index) {
    /** What a piece is about. */
    public enum Kind {
        /** Words between the pieces. */
        WORDS,
        /** A fault supposed. */
        FAULT,
        /** A part swapped. */
        SWAP,
        /** Plug in or out. */
        POWER,
        /** Mains voltage, where not nominal. */
        MAINS,
        /** Frequency, where not that of the mains. */
        HERTZ,
        /** A lamp in the mains lead. */
        LAMP,
        /** A fuse out of its clips. */
        PULLED,
        /** A connector off. */
        UNPLUGGED,
        /** A pin unsoldered. */
        LIFTED,
        /** A clip lead. */
        CLIP,
        /** A coil, lamp or logic output held on. */
        HELD,
        /** A switch not as drawn. */
        SWITCH,
        /** A capacitor charged beforehand. */
        CHARGED,
        /** A coil, lamp or logic output switched on for a while. */
        PULSED,
        /** Which meter. */
        METER,
        /** The range it was set to by hand. */
        RANGE,
        /** What the meter's switch is set to. */
        FUNCTION,
        /** Where its leads are held. */
        LEADS
    }
}
