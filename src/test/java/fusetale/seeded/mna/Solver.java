package fusetale.seeded.mna;

import fusetale.seeded.signal.Wave;
import org.ejml.data.DMatrixRMaj;

/** Keeps the rules; the first class that talks to the library. */
public final class Solver {
    public Wave solve() {
        return new Wave(new DMatrixRMaj(1, 1).get(0, 0));
    }
}
