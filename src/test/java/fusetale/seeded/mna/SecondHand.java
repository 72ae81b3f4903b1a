package fusetale.seeded.mna;

import org.ejml.data.DMatrixRMaj;

/** Breaks: one class talks to the library. */
final class SecondHand {
    DMatrixRMaj matrix() {
        return new DMatrixRMaj(1, 1);
    }
}
