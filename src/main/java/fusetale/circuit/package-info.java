/**
 * What a machine is made of: parts, pins, nets, test points, connectors, part models; reading circuit files with located
 * errors. Uses {@code quantity} and {@code store}. Knows neither solver nor faults. Start at {@link
 * fusetale.circuit.Circuit}.
 */
@NullMarked
package fusetale.circuit;

import org.jspecify.annotations.NullMarked;
