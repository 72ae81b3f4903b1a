package fusetale.desk.state;

import fusetale.match.Evidence;
import fusetale.sentence.Measured;
import org.jspecify.annotations.Nullable;

/**
 * One thing found on the machine, by meter or by eye.
 *
 * @param text as a line that reads back to it, the bench left out: {@code TP2 32.4 V d.c. volts}, {@code F201 wire gone}
 * @param evidence as the matcher takes it, with the bench it was found on
 * @param measured the reading; null for what was seen, heard or felt
 */
public record Found(
        String text, Evidence evidence, @Nullable Measured measured) {}
