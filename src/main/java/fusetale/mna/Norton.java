package fusetale.mna;

/**
 * A meter or a load laid between two nodes of a network that is already reduced: a conductance with a current source
 * beside it. Costs one rank-one update instead of a factorisation (Sherman and Morrison, Ann. Math. Stat. 21, 1950).
 *
 * @param one first node
 * @param two second node
 * @param siemens conductance between them, 0 or more
 * @param amps current from two through the source to one: it lifts node one
 */
public record Norton(int one, int two, double siemens, double amps) {}
