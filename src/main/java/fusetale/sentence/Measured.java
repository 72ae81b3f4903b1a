package fusetale.sentence;

import fusetale.bench.Check;
import fusetale.quantity.Unit;

/**
 * A reading as somebody typed it.
 *
 * @param check what was measured
 * @param text the reading in full, {@code TP2 32.4 V d.c. volts}; read again it is the same
 * @param value in the unit of SI; infinite where over range or silent, 0 where the buzzer sounds
 * @param overRange whether the meter showed OL; of continuity, whether it was silent
 * @param unit its unit
 */
public record Measured(Check check, String text, double value, boolean overRange, Unit unit) {}
