package fusetale.seeded.circuit;

/** Breaks: final fields, units in names, no static state. */
public class Loose {
    static int madeSoFar;

    public int mutable;
    final double length;
    final Double boxed;
    final double[] several;

    Loose(double length) {
        this.length = length;
        this.boxed = length;
        this.several = new double[] {length};
    }
}
