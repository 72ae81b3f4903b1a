package fusetale.explore;

/**
 * What an answer took, without the clock: that would differ from one day to the next.
 *
 * @param method how the state as supposed was found, plain words
 * @param passes passes needed for it
 * @param solves solves in all, spread and fuses included
 * @param residual what is left of it: end less start of a mains cycle as a ratio of full scale, or a current balance [A]
 */
public record Effort(String method, int passes, long solves, double residual) {}
