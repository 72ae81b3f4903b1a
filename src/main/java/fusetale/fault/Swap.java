package fusetale.fault;

/**
 * One part replaced, in one aspect. A part replaced in two aspects, another model mounted otherwise, is two swaps.
 *
 * @param part designator
 * @param fitting what is fitted instead
 */
public record Swap(String part, Fitting fitting) {}
