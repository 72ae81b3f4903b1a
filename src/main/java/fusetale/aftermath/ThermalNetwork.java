package fusetale.aftermath;

import java.util.List;

/**
 * How one part sheds its heat, as the sum of stages each of which follows its heat with one time constant: junction to case, case to
 * plate, plate to air. The partial-fraction form in which data sheets give transient thermal impedance, Z(t) = Σ R·(1 −
 * e<sup>−t/τ</sup>) (IEC 60747-1; also called Foster network). It is exact for a single mass, and good for several whose time
 * constants lie apart, as they do here by factors of ten and more.
 *
 * @param stages from the inside out
 */
public record ThermalNetwork(List<Stage> stages) {
    /** Copies the list. */
    public ThermalNetwork {
        stages = List.copyOf(stages);
    }

    /**
     * One stage.
     *
     * @param kelvinPerWatt its resistance [K/W], 0 or more
     * @param joulesPerKelvin heat capacity [J/K] behind it, above 0; the time constant is the product of both
     * @param shared whether the heat of the part's other bodies passes it too
     */
    public record Stage(double kelvinPerWatt, double joulesPerKelvin, boolean shared) {
        /** Refuses what has no warmth. */
        public Stage {
            if (!(kelvinPerWatt >= 0 && joulesPerKelvin > 0)) {
                throw new IllegalArgumentException(
                        "a stage of " + kelvinPerWatt + " K/W and " + joulesPerKelvin + " J/K");
            }
        }

        private double later(double kelvin, double seconds, double watts) {
            double end = watts * kelvinPerWatt;
            double constantSeconds = kelvinPerWatt * joulesPerKelvin;
            return constantSeconds > 0 ? end + (kelvin - end) * Math.exp(-seconds / constantSeconds) : end;
        }
    }

    /** Rises over each stage [K], from the inside out. Immutable. */
    public static final class Warmth {
        private final double[] kelvin;
        private final double riseKelvin;

        /** {@code kelvin}: kept, and never modified again. */
        private Warmth(double[] kelvin) {
            this.kelvin = kelvin;
            double sum = 0;
            for (double each : kelvin) {
                sum += each;
            }
            this.riseKelvin = sum;
        }

        /** Rise of the innermost over the air [K]. */
        public double riseKelvin() {
            return riseKelvin;
        }
    }

    /** A single mass. */
    public static ThermalNetwork single(double kelvinPerWatt, double joulesPerKelvin) {
        return new ThermalNetwork(List.of(new Stage(kelvinPerWatt, joulesPerKelvin, false)));
    }

    /** The same with other resistances and capacities, each times a factor above 0. */
    public ThermalNetwork times(double resistanceRatio, double capacityRatio) {
        return new ThermalNetwork(stages.stream()
                .map(s ->
                        new Stage(s.kelvinPerWatt() * resistanceRatio, s.joulesPerKelvin() * capacityRatio, s.shared()))
                .toList());
    }

    /** As cool as the air. */
    public Warmth cool() {
        return new Warmth(new double[stages.size()]);
    }

    /** Rise of the innermost over the air in the end [K], under constant heats [W]: its own and that of all that share. */
    public double settledKelvin(double ownWatts, double allWatts) {
        double sum = 0;
        for (Stage stage : stages) {
            sum += stage.kelvinPerWatt() * (stage.shared() ? allWatts : ownWatts);
        }
        return sum;
    }

    /** Rise of the outside over the air in the end [K]: of what all share, or of the whole where nothing is shared. */
    double outerKelvin(double ownWatts, double allWatts) {
        return stages.stream().anyMatch(Stage::shared) ? settledKelvin(0, allWatts) : settledKelvin(ownWatts, allWatts);
    }

    /**
     * The rises after some time under constant heats.
     *
     * @param now at the beginning
     * @param seconds how much later [s], 0 or more
     * @param ownWatts heat of this body [W]
     * @param allWatts heat of all bodies that share its outer stages, its own included [W]
     */
    public Warmth after(Warmth now, double seconds, double ownWatts, double allWatts) {
        double[] later = new double[stages.size()];
        for (int k = 0; k < later.length; k++) {
            Stage stage = stages.get(k);
            later[k] = stage.later(now.kelvin[k], seconds, stage.shared() ? allWatts : ownWatts);
        }
        return new Warmth(later);
    }
}
