package fusetale.mna;

/** One period that ends as it began; also where a neighbouring network may start from. Immutable. */
public interface PeriodicState extends Run {
    /**
     * The same with every voltage and most currents worked out at once: quicker where most of them are asked for, larger, and no
     * place to start from.
     */
    PeriodicState tabled();
}
