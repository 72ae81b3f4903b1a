package fusetale.mna;

/**
 * What a solution cost and how it was found.
 *
 * @param method plain words: {@code direct}, {@code shunts lowered}, {@code sources raised}, {@code shooting}, {@code
 *     stepping}
 * @param passes Newton or shooting passes
 * @param solves port solves (Newton iterations) in all
 * @param residual what is left: current balance [A] of an operating point; end less start of a periodic state as a ratio
 *     of full scale
 */
public record Work(String method, int passes, long solves, double residual) {}
