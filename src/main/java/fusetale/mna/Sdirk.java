package fusetale.mna;

/**
 * The two-stage singly diagonally implicit Runge-Kutta method of order 2 that is L-stable and stiffly accurate (R.
 * Alexander, "Diagonally implicit Runge-Kutta methods for stiff O.D.E.'s", SIAM J. Numer. Anal. 14(6), 1006-1021, 1977):
 * stages at γ and 1, weights (1 − γ, γ), γ = 1 − 1/√2. Both stages share one matrix, and nothing rings when a diode turns
 * off.
 */
final class Sdirk {
    /** γ. */
    static final double GAMMA = 1 - 1 / Math.sqrt(2);

    /** Second stage's predictor: x* = x0 + EXTRAPOLATION·(x1 − x0). */
    static final double EXTRAPOLATION = (1 - GAMMA) / GAMMA;

    /** Error of one step of x' = λx: this times h³·x'''. It is 3γ² − 2γ³ − 1/6, from the stability function. */
    static final double ERROR_CONSTANT = 3 * GAMMA * GAMMA - 2 * GAMMA * GAMMA * GAMMA - 1.0 / 6;

    private Sdirk() {}
}
