package fusetale.bench;

import fusetale.circuit.MeterFunction;

/**
 * One thing to measure: where the leads go and what the meter is set to.
 *
 * @param from name of the point under the red lead
 * @param to name of the point under the black lead
 * @param function the meter's setting
 */
public record Check(String from, String to, MeterFunction function) {}
