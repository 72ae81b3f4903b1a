package fusetale.mna;

/**
 * A tungsten filament, one port, one state: its temperature T [K]. Heat balance of radiation and conduction,
 *
 * <pre>
 * C·dT/dt = v²/R(T) − a·(T⁴ − T0⁴) − k·(T − T0)          R(T) = R(hot)·(T/T(hot))^1.2
 * </pre>
 *
 * (two-term fit: M. Carlà, "Stefan-Boltzmann law for the tungsten filament of a light bulb", Am. J. Phys. 81, 512, 2013;
 * exponent of the resistance: tables of H. A. Jones and I. Langmuir, General Electric Review 30, 1927, between 300 K and
 * 2500 K), fitted so that at rated voltage the rated current flows at the given temperature, with 2 % of the heat going
 * through the leads. That makes cold to hot about 1 : 12.8 at 2500 K and, near the rating, I ∝ V^0.54 (handbooks: 0.55).
 */
public final class FilamentLaw implements PortLaw {
    /** Room temperature [K]. */
    public static final double ROOM_KELVIN = 298.15;

    private static final double RESISTANCE_EXPONENT = 1.2;
    private static final double CONDUCTED_RATIO = 0.02;
    /** Below this [K], which no filament reaches, the resistance stays: a solver may ask. */
    private static final double FLOOR_KELVIN = 100;

    private static final double REACH_RATIO = 0.01;
    /** Coefficients of the series below are those of the exponent 1.2; its next term is under the last bit here. */
    private static final double SERIES_RATIO = 0.01;

    /** What a tangent may err by, of the current: 0.1 nA of an indicator's 0.2 A. */
    private static final double TANGENT_RATIO = 5e-10;
    /** How far the temperature may be off for that: what a filament's on filtered direct current moves by in four stages. */
    private static final double STRAIGHT_RATIO = 6e-6;

    private static final double SETTLED_KELVIN = 1e-8;
    private static final int MOST_PASSES = 200;

    private final double ratedVolts;
    private final double hotOhms;
    private final double hotKelvin;
    private final double radiation;
    private final double conduction;
    private final double joulesPerKelvin;
    private final double baselineSiemens;

    private FilamentLaw(FilamentLaw of, double baselineSiemens) {
        this.ratedVolts = of.ratedVolts;
        this.hotOhms = of.hotOhms;
        this.hotKelvin = of.hotKelvin;
        this.radiation = of.radiation;
        this.conduction = of.conduction;
        this.joulesPerKelvin = of.joulesPerKelvin;
        this.baselineSiemens = baselineSiemens;
    }

    private FilamentLaw(double ratedVolts, double hotOhms, double hotKelvin, double constantSeconds) {
        this.ratedVolts = ratedVolts;
        this.hotOhms = hotOhms;
        this.hotKelvin = hotKelvin;
        double watts = ratedVolts * ratedVolts / hotOhms;
        this.radiation = (1 - CONDUCTED_RATIO) * watts / (fourth(hotKelvin) - fourth(ROOM_KELVIN));
        this.conduction = CONDUCTED_RATIO * watts / (hotKelvin - ROOM_KELVIN);
        double slope = lossSlope(hotKelvin) + RESISTANCE_EXPONENT * watts / hotKelvin;
        this.joulesPerKelvin = constantSeconds * slope;
        this.baselineSiemens = 1 / hotOhms;
    }

    /**
     * A filament by its rating.
     *
     * @param ratedVolts rated voltage [V], above 0
     * @param ratedAmps current there [A], above 0
     * @param hotKelvin temperature there [K], above 1000: 2200 to 2500 for miniature lamps, 2400 to 2700 for mains lamps
     * @param constantSeconds time constant of small changes at rated voltage [s], above 0: 0.05 to 0.1
     * @throws IllegalArgumentException where a value is out of its bounds
     */
    public static FilamentLaw rated(double ratedVolts, double ratedAmps, double hotKelvin, double constantSeconds) {
        if (!(ratedVolts > 0 && ratedAmps > 0 && ratedVolts + ratedAmps < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a lamp for " + ratedVolts + " V and " + ratedAmps + " A; both must be above 0");
        }
        if (!(hotKelvin > 1000 && hotKelvin < 3695)) {
            throw new IllegalArgumentException(
                    "a filament at " + hotKelvin + " K; tungsten glows from 1000 K" + " and melts at 3695 K");
        }
        if (!(constantSeconds > 0 && constantSeconds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a filament's time constant of " + constantSeconds + " s");
        }
        return new FilamentLaw(ratedVolts, ratedVolts / ratedAmps, hotKelvin, constantSeconds);
    }

    @Override
    public int ports() {
        return 1;
    }

    @Override
    public int states() {
        return 1;
    }

    @Override
    public double restingState(int state) {
        return ROOM_KELVIN;
    }

    @Override
    public double leastState(int state) {
        return ROOM_KELVIN;
    }

    @Override
    public double settledState(int state, double[] rmsVolts) {
        return steadyKelvin(rmsVolts[0]);
    }

    @Override
    public double baselineSiemens(int port) {
        return baselineSiemens;
    }

    @Override
    public PortLaw near(double[] states) {
        return new FilamentLaw(this, 1 / ohms(states[0]));
    }

    @Override
    public PortLaw withBaseline(double siemens) {
        return new FilamentLaw(this, siemens);
    }

    @Override
    public void evaluate(PortPoint at) {
        double v = at.volts[0];
        boolean steady = Double.isInfinite(at.stepSeconds);
        double start = Math.max(at.start[0], FLOOR_KELVIN);
        double startOhms = steady ? hotOhms : ohms(start);
        double kelvin = steady ? steadyKelvin(v) : steppedKelvin(v, at.start[0], startOhms, at.stepSeconds);
        double ohms = steady ? ohms(kelvin) : ohmsBeside(start, startOhms, kelvin);
        double ohmsGrowth = ohmsGrowth(kelvin);
        // of the heat balance, by temperature and by voltage
        double balanceByKelvin = lossSlope(kelvin) + v * v / ohms * ohmsGrowth;
        double balanceByVolts = 2 * v / ohms;
        double ratio = at.stepSeconds / joulesPerKelvin;
        double kelvinByVolts =
                steady ? balanceByVolts / balanceByKelvin : ratio * balanceByVolts / (1 + ratio * balanceByKelvin);
        double kelvinByStart = steady ? 0 : 1 / (1 + ratio * balanceByKelvin);
        double ampsByKelvin = -v / ohms * ohmsGrowth;
        at.end[0] = kelvin;
        at.endByVolts[0] = kelvinByVolts;
        at.endByStart[0] = kelvinByStart;
        at.amps[0] = v * (1 / ohms - baselineSiemens);
        at.siemens[0] = 1 / ohms - baselineSiemens + ampsByKelvin * kelvinByVolts;
        at.ampsByStart[0] = ampsByKelvin * kelvinByStart;
    }

    /**
     * In the steady state a filament's resistance and heat change by little within a hundredth of its rated voltage. In a
     * step the slope is 1/R less the baseline, which stays, less 2·q·v² by what the step heats it, with q = −di/dT·dT/dv /
     * (2·v²): within r of v that grows by 2·q·(2·v + r)·r at most, here by twice as much.
     */
    @Override
    public double reachVolts(PortPoint at, int port) {
        double siemens = Math.max(NO_SIEMENS, Math.abs(at.siemens[0]));
        double bound = ratedVolts * REACH_RATIO;
        if (Double.isInfinite(at.stepSeconds)) {
            return siemens * bound / (siemens + baselineSiemens);
        }
        double v = Math.abs(at.volts[0]);
        double here = at.siemens[0] + baselineSiemens - at.ampsByStart[0] * at.endByVolts[0] / at.endByStart[0];
        double heating = at.stepSeconds / joulesPerKelvin * at.endByStart[0];
        double square = siemens / (4 * here * here * ohmsGrowth(at.end[0]) * heating);
        return Math.min(bound, square / (Math.sqrt(v * v + square) + v));
    }

    /**
     * In a step i = v/R − q·v³ about, q as above: dv away the tangent errs by 3·q·|v|·dv², here by {@link #TANGENT_RATIO} of v/R; and
     * where the temperature differs by a ratio u as well, by 1.2·u·dv/R, here by four times that ratio of the rated voltage over R.
     */
    @Override
    public double straightVolts(PortPoint at, int port, double reachVolts) {
        if (Double.isInfinite(at.stepSeconds)) {
            return STRAIGHT * reachVolts;
        }
        double siemens = at.siemens[0] + baselineSiemens - at.ampsByStart[0] * at.endByVolts[0] / at.endByStart[0];
        double heating = at.stepSeconds / joulesPerKelvin * at.endByStart[0];
        double alone = Math.sqrt(TANGENT_RATIO / (3 * siemens * ohmsGrowth(at.end[0]) * heating));
        return Math.min(alone, ratedVolts * 4 * TANGENT_RATIO / (RESISTANCE_EXPONENT * STRAIGHT_RATIO));
    }

    /** The current goes with T^−1.2: off by a ratio u, the tangent errs by 1.2·2.2/2·u² of it, a tenth of {@link #TANGENT_RATIO}. */
    @Override
    public double straightRatio(PortPoint at, int state) {
        return STRAIGHT_RATIO;
    }

    /** Resistance [ohm] at a temperature [K]. */
    public double ohms(double kelvin) {
        return hotOhms * Math.pow(Math.max(kelvin, FLOOR_KELVIN) / hotKelvin, RESISTANCE_EXPONENT);
    }

    /** The same where the resistance at a temperature close by is known: a binomial series for the power, without its cost. */
    private double ohmsBeside(double known, double knownOhms, double kelvin) {
        double u = kelvin / known - 1;
        if (!(Math.abs(u) < SERIES_RATIO)) {
            return ohms(kelvin);
        }
        double tail = 0.0144 + u * (-0.008064 + u * 0.0051072);
        return knownOhms * (1 + u * (RESISTANCE_EXPONENT + u * (0.12 + u * (-0.032 + u * tail))));
    }

    /** Relative growth of the resistance [1/K]. */
    private static double ohmsGrowth(double kelvin) {
        return kelvin < FLOOR_KELVIN ? 0 : RESISTANCE_EXPONENT / kelvin;
    }

    /** Heat lost [W]; rises with temperature everywhere. */
    private double lossWatts(double kelvin) {
        double t4 = fourth(kelvin);
        return radiation * ((kelvin < 0 ? -t4 : t4) - fourth(ROOM_KELVIN)) + conduction * (kelvin - ROOM_KELVIN);
    }

    private double lossSlope(double kelvin) {
        double t = Math.abs(kelvin);
        return 4 * radiation * t * t * t + conduction;
    }

    private static double fourth(double kelvin) {
        double square = kelvin * kelvin;
        return square * square;
    }

    /**
     * Temperature [K] at which a steady voltage is balanced: Newton on loss·R = v², convex above room temperature, from the
     * power law on the hot side.
     */
    public double steadyKelvin(double volts) {
        double square = volts * volts;
        double kelvin = ROOM_KELVIN + hotKelvin * Math.pow(Math.abs(volts) / ratedVolts, 2 / (4 + RESISTANCE_EXPONENT));
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double ohms = ohms(kelvin);
            double loss = lossWatts(kelvin);
            double step = (loss * ohms - square) / (ohms * (lossSlope(kelvin) + loss * ohmsGrowth(kelvin)));
            kelvin = Math.max(ROOM_KELVIN, kelvin - step);
            if (Math.abs(step) < SETTLED_KELVIN * kelvin) {
                break;
            }
        }
        return kelvin;
    }

    /**
     * The implicit stage T = start + s/C·(v²/R(T) − loss(T)). Its two sides part monotonically, so there is one root;
     * Newton, halved back into the bracket where it leaves it.
     */
    private double steppedKelvin(double volts, double start, double startOhms, double stepSeconds) {
        double ratio = stepSeconds / joulesPerKelvin;
        double square = volts * volts;
        double low = Math.min(start, ROOM_KELVIN);
        double high = Double.POSITIVE_INFINITY;
        double kelvin = start;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double heat = square / ohmsBeside(Math.max(start, FLOOR_KELVIN), startOhms, kelvin);
            double error = kelvin - start - ratio * (heat - lossWatts(kelvin));
            if (error > 0) {
                high = Math.min(high, kelvin);
            } else {
                low = Math.max(low, kelvin);
            }
            double next = kelvin - error / (1 + ratio * (lossSlope(kelvin) + heat * ohmsGrowth(kelvin)));
            if (next < low || next > high) {
                next = (low + high) / 2;
            }
            double moved = Math.abs(next - kelvin);
            kelvin = next;
            if (moved <= SETTLED_KELVIN * Math.abs(kelvin)) {
                break;
            }
        }
        return kelvin;
    }
}
