package fusetale.mna;

/** One period that ends as it began; also where a neighbouring network may start from. Immutable. */
public interface PeriodicState extends Run {}
