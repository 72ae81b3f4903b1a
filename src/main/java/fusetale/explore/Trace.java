package fusetale.explore;

import fusetale.quantity.Unit;
import fusetale.signal.Waveform;

/**
 * One quantity over a mains cycle, as built and as supposed.
 *
 * @param label what it is, {@code TP2 to gnd} or {@code F201}
 * @param unit volts or amperes
 * @param asBuilt in a healthy machine
 * @param asSupposed with the supposition
 */
public record Trace(String label, Unit unit, Waveform asBuilt, Waveform asSupposed) {}
