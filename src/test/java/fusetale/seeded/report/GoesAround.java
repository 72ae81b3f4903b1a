package fusetale.seeded.report;

import fusetale.seeded.mna.Solver;

/** Breaks: reports reach the solver through the one service only. */
final class GoesAround {
    double solve() {
        return new Solver().solve().volts();
    }
}
