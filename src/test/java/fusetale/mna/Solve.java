package fusetale.mna;

/** Shortcuts of the tests: solve, and fail the test where there is no solution. */
final class Solve {
    private Solve() {}

    static OperatingPoint rest(Network n) {
        return found(new Solver(n).operatingPoint(null));
    }

    static PeriodicState periodic(Network n) {
        return periodic(n, PeriodicSettings.mains(60));
    }

    static PeriodicState periodic(Network n, PeriodicSettings settings) {
        return found(new Solver(n).periodicState(settings, null, () -> false));
    }

    static Run run(Network n, PeriodicSettings settings, double seconds) {
        return found(new Solver(n).run(settings, seconds));
    }

    /** The solution, or a failed test that tells the reason. */
    static <T> T found(Solved<T> solved) {
        return solved.orElse(reason -> {
            throw new AssertionError("not solved: " + reason);
        });
    }
}
