package fusetale.aftermath;

import fusetale.fault.Fault;
import org.jspecify.annotations.Nullable;

/**
 * One thing that happens, over all machines that were drawn.
 *
 * @param part designator
 * @param place what of it; empty for the whole part
 * @param harm what happens
 * @param consequence what the part is from then on; null where it stays what it was
 * @param leastSeconds soonest after switching on [s]
 * @param middleSeconds in half of the machines where it happens at all it has happened by then [s]
 * @param mostSeconds latest [s]
 * @param count in how many machines
 * @param notedSeconds by when one machine in fifty has come to it, of all that were drawn [s]; infinite where fewer ever do
 * @param source where the limit behind it is from
 */
public record Event(
        String part,
        String place,
        Harm harm,
        @Nullable Fault consequence,
        double leastSeconds,
        double middleSeconds,
        double mostSeconds,
        int count,
        double notedSeconds,
        String source) {
    /** {@code BR201.leg2} or {@code F201}. */
    public String target() {
        return place.isEmpty() ? part : part + "." + place;
    }
}
