/**
 * The schematic of a machine as a plan without a toolkit: sections, symbols, wires, labels and test points, from which
 * pictures and the window are drawn, and the marks that a supposition and its outcome leave on it. Begin with
 * {@link fusetale.report.drawing.DrawingPlan}. May use {@code report}, which knows nothing of it.
 */
@NullMarked
package fusetale.report.drawing;

import org.jspecify.annotations.NullMarked;
