package fusetale.circuit;

/** Thermal classes of insulation: the hottest spot it stands for its usual life (IEC 60085, from memory). */
public enum InsulationClass {
    /** Class A: paper and cotton, varnished; enamels of the fifties. */
    CLASS_105(105),
    /** Class E. */
    CLASS_120(120),
    /** Class B: what solenoids and small transformers of the time were wound with (judgement). */
    CLASS_130(130),
    /** Class F. */
    CLASS_155(155),
    /** Class H. */
    CLASS_180(180);

    private final int hottestCelsius;

    InsulationClass(int hottestCelsius) {
        this.hottestCelsius = hottestCelsius;
    }

    /** Hottest spot [°C] it stands for good. */
    public int hottestCelsius() {
        return hottestCelsius;
    }
}
