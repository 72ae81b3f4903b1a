/**
 * How each part kind becomes elements: circuit and conditions in, network with maps back out. Uses {@code quantity}, {@code
 * circuit} and {@code mna}. Knows neither meters nor files nor faults. Start at {@link fusetale.model.NetworkBuilder}.
 */
@NullMarked
package fusetale.model;

import org.jspecify.annotations.NullMarked;
