package fusetale.mna;

import java.util.Arrays;

/**
 * A thyristor, port 0 from gate to cathode, port 1 from anode to cathode. Three states: how far it conducts, w, from 0
 * (blocking) over 0.3 (held open by its gate) to 1 (latched), and its anode and gate current as switching sees them, a and
 * b [A]. The
 * static figures are those of data sheets (IEC 60747-6: gate trigger current IGT and voltage VGT, latching current IL,
 * holding current IH, threshold voltage VT0, slope resistance rT); how they are joined is ours:
 *
 * <pre>
 * iA = c(w)·(vA − VT0)/rT above VT0                                      c: 0 to 1 for w from 0.1 to 0.25
 * iG = IS·(exp(vG/VT) − 1) + vG/RGK − IGT/2·h(w)                         h: 0 to 1 for w from 0.5 to 0.9
 * τ·dw/dt = 1 − (1 − latched)·(1 − 0.3·triggered) − w                    60 μs·da/dt = iA − a
 *                                                                        60 μs·db/dt = iG without its last term − b
 * triggered: b past IGT
 * latched: a past IL, where w is below 0.85, or IH, where it is above
 * </pre>
 *
 * "Past" is a smooth step of ±5 %. So gate current lets it conduct; anode current past IL keeps it so when the gate lets
 * go; below IH it falls back, and blocks again after the turn-off time, in which w decays from 1 to 0.1. Latched, it holds
 * its own gate up near VGT, as a meter finds it. Forward breakdown turns it on (breakover), reverse breakdown conducts. A
 * gate pulse of less than 0.1 ms is not judged rightly, and a rate of rise that would fire it not at all.
 *
 * <p>The anode current as switching sees it is taken before the step, and so is the state that tells IL from IH: the law then has
 * one answer at every voltage, where the thyristor itself has two. The gate current is taken at its end, so that the instant of firing
 * errs with the square of the step. At rest it is followed from where it is asked to start, and its gate
 * is not held up.
 */
public final class ThyristorLaw implements PortLaw {
    private static final Rise CONDUCTS = new Rise(0.1, 0.25);
    /**
     * What the gate alone opens. Low enough that a step which overshoots it as far as the two-stage method can, 1 + √2
     * times, is not taken for latched.
     */
    private static final double GATED = 0.3;

    private static final Rise SPREADS = new Rise(0.75, 0.95);
    private static final Rise HOLDS_GATE = new Rise(0.5, 0.9);
    /** Share of the trigger current that a latched thyristor feeds its own gate: short of triggering itself. */
    private static final double HELD_RATIO = 0.5;
    /** How fast switching sees the currents [s]: slow enough that the longest step does not show it more than flows. */
    private static final double SEES_SECONDS = 60e-6;

    private static final Rise PAST = new Rise(0.95, 1.05);
    /** Half-width [V] of the rounded corner at the threshold voltage. */
    private static final double CORNER_VOLTS = 0.1;
    /** Current [A] at which breakdown is stated, and its resistance per volt: as in {@link MosfetLaw}. */
    private static final double BREAKDOWN_AMPS = 1e-3;

    private static final double BREAKDOWN_OHMS_PER_VOLT = 1.0 / 20;
    private static final double SETTLED = 1e-13;
    private static final int MOST_PASSES = 200;

    private final Gate gate;
    private final Main main;
    private final Exponential junction;
    private final Breakdown breakdown;
    private final SoftCorner corner;
    private final double constantSeconds;

    /**
     * The gate.
     *
     * @param triggerAmps IGT [A], above 0
     * @param triggerVolts VGT [V] at IGT, above 0
     * @param shuntOhms resistance inside from gate to cathode [ohm], above VGT/IGT; infinite for none
     */
    public record Gate(double triggerAmps, double triggerVolts, double shuntOhms) {
        /** Refuses a shunt that would take all of the trigger current. */
        public Gate {
            positive("gate trigger current", triggerAmps);
            positive("gate trigger voltage", triggerVolts);
            if (!(triggerVolts / shuntOhms < triggerAmps)) {
                throw new IllegalArgumentException("a gate resistance of " + shuntOhms
                        + " ohm takes the whole trigger current; it must be above VGT/IGT, "
                        + triggerVolts / triggerAmps + " ohm");
            }
        }
    }

    /**
     * The path from anode to cathode.
     *
     * @param latchingAmps IL [A], not below the holding current
     * @param holdingAmps IH [A], above 0
     * @param thresholdVolts VT0 [V], above 0
     * @param slopeOhms rT [ohm], above 0
     * @param leakageOhms off-state leakage either way [ohm], above 0
     * @param farads capacitance [F], 0 or more
     * @param breakdownVolts breakover forward and breakdown in reverse [V] at 1 mA, above 0; infinite for none
     */
    public record Main(
            double latchingAmps,
            double holdingAmps,
            double thresholdVolts,
            double slopeOhms,
            double leakageOhms,
            double farads,
            double breakdownVolts) {
        /** Refuses what is not above 0, and a latching current below the holding current. */
        public Main {
            positive("holding current", holdingAmps);
            positive("threshold voltage", thresholdVolts);
            positive("slope resistance", slopeOhms);
            positive("leakage resistance", leakageOhms);
            if (!(latchingAmps >= holdingAmps && latchingAmps < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("thyristor latching current of " + latchingAmps
                        + " A; it must not be below the holding current, " + holdingAmps + " A");
            }
            if (!(farads >= 0 && farads < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("thyristor capacitance of " + farads + " F");
            }
        }
    }

    /**
     * A thyristor.
     *
     * @param gate its gate
     * @param main its main path
     * @param turnOffSeconds time [s] from the end of its current until it blocks, above 0
     * @throws IllegalArgumentException where a value is out of its bounds
     */
    public ThyristorLaw(Gate gate, Main main, double turnOffSeconds) {
        positive("turn-off time", turnOffSeconds);
        this.gate = gate;
        this.main = main;
        double junctionAmps = gate.triggerAmps() - gate.triggerVolts() / gate.shuntOhms();
        this.junction = new Exponential(junctionAmps / Math.expm1(gate.triggerVolts() / Exponential.THERMAL_VOLTS), 1);
        this.breakdown = Double.isInfinite(main.breakdownVolts())
                ? Breakdown.NONE
                : new Breakdown(main.breakdownVolts(), BREAKDOWN_AMPS, main.breakdownVolts() * BREAKDOWN_OHMS_PER_VOLT);
        this.corner = new SoftCorner(CORNER_VOLTS);
        this.constantSeconds = turnOffSeconds / Math.log(1 / CONDUCTS.from());
    }

    private static void positive(String what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("thyristor " + what + " of " + value + "; it must be above 0");
        }
    }

    @Override
    public int ports() {
        return 2;
    }

    @Override
    public int states() {
        return 3;
    }

    @Override
    public double switchedOnState(int state) {
        return state == 0 ? 1 : 0;
    }

    @Override
    public double baselineSiemens(int port) {
        return port == 0 ? 1 / gate.shuntOhms() : 1 / main.leakageOhms();
    }

    @Override
    public double farads(int port) {
        return port == 0 ? 0 : main.farads();
    }

    @Override
    public void evaluate(PortPoint at) {
        double gateVolts = at.volts[0];
        double gateAmps = junction.amps(gateVolts);
        double gateSlope = junction.siemens(gateAmps);
        double shunted = gateAmps + gateVolts / gate.shuntOhms();
        double shuntedSlope = gateSlope + 1 / gate.shuntOhms();
        double volts = at.volts[1];
        double full = corner.above(volts - main.thresholdVolts()) / main.slopeOhms();
        double fullSlope = corner.slope(volts - main.thresholdVolts()) / main.slopeOhms();
        double broken = broken(volts);
        double brokenSlope = brokenSlope(volts);

        if (Double.isInfinite(at.stepSeconds)) {
            double triggered = PAST.at(shunted / gate.triggerAmps());
            double triggeredSlope = PAST.slope(shunted / gate.triggerAmps()) * shuntedSlope / gate.triggerAmps();
            double end = settled(triggered, full, Math.max(broken, 0), at.start[0]);
            settle(at, end, triggered, full, fullSlope);
            at.siemens[0] = gateSlope;
            at.siemens[2] *= triggeredSlope;
            at.endByVolts[0] *= triggeredSlope;
            at.amps[0] = gateAmps;
            at.amps[1] += broken;
            at.siemens[3] += brokenSlope;
            return;
        }
        double seeing = at.stepSeconds / (SEES_SECONDS + at.stepSeconds);
        at.end[2] = at.start[2] + seeing * (shunted - at.start[2]);
        step(at, seeing, shuntedSlope);
        double c = CONDUCTS.at(at.end[0]);
        double opened = CONDUCTS.slope(at.end[0]) * full;
        double held = HELD_RATIO * gate.triggerAmps();
        double heldSlope = held * HOLDS_GATE.slope(at.end[0]);
        double endByGate = at.endByVolts[0];
        at.amps[0] = gateAmps - held * HOLDS_GATE.at(at.end[0]);
        at.amps[1] = c * full + broken;
        at.siemens[0] = gateSlope - heldSlope * endByGate;
        at.siemens[1] = 0;
        at.siemens[2] = opened * endByGate;
        at.siemens[3] = c * fullSlope + brokenSlope;
        at.end[1] = at.start[1] + seeing * (c * full + Math.max(broken, 0) - at.start[1]);
        at.endByVolts[2] = seeing * opened * endByGate;
        at.endByVolts[3] = seeing * (c * fullSlope + (broken > 0 ? brokenSlope : 0));
        at.endByVolts[4] = seeing * shuntedSlope;
        for (int s = 0; s < 3; s++) {
            at.ampsByStart[s] = -heldSlope * at.endByStart[s];
            at.ampsByStart[3 + s] = opened * at.endByStart[s];
            at.endByStart[3 + s] = seeing * opened * at.endByStart[s];
            at.endByStart[6 + s] = 0;
        }
        at.endByStart[4] += 1 - seeing;
        at.endByStart[8] = 1 - seeing;
    }

    /** How far it conducts after a step; answers to the gate current at its end and else to the states before it. */
    private void step(PortPoint at, double seeing, double shuntedSlope) {
        double before = at.start[0];
        double triggered = PAST.at(at.end[2] / gate.triggerAmps());
        double triggeredSlope = PAST.slope(at.end[2] / gate.triggerAmps()) / gate.triggerAmps();
        double least = latchAmps(before);
        double seen = at.start[1];
        double latched = PAST.at(seen / least);
        double latchedSlope = PAST.slope(seen / least) * (1 - GATED * triggered) / least;
        double share = at.stepSeconds / (constantSeconds + at.stepSeconds);
        at.end[0] = before + share * (target(latched, triggered) - before);
        at.endByStart[0] = 1 - share - share * latchedSlope * seen / least * latchAmpsSlope(before);
        at.endByStart[1] = share * latchedSlope;
        double endBySeen = share * (1 - latched) * GATED * triggeredSlope;
        at.endByStart[2] = endBySeen * (1 - seeing);
        Arrays.fill(at.endByVolts, 0.0);
        at.endByVolts[0] = endBySeen * seeing * shuntedSlope;
    }

    /**
     * The state at rest and its slopes, without breakdown; what answers to the gate is left to be multiplied with the slope
     * of the triggering.
     */
    private void settle(PortPoint at, double end, double triggered, double full, double fullSlope) {
        double c = CONDUCTS.at(end);
        double seen = c * full + Math.max(broken(at.volts[1]), 0);
        double seenSlope = c * fullSlope + Math.max(Math.signum(at.volts[1]) * brokenSlope(at.volts[1]), 0);
        double least = latchAmps(end);
        double latched = PAST.at(seen / least);
        double latchedSlope = PAST.slope(seen / least) * (1 - GATED * triggered) / least;
        double opened = CONDUCTS.slope(end) * full;
        double share = 1 / (1 - latchedSlope * (opened - seen / least * latchAmpsSlope(end)));
        double endByAnode = share * latchedSlope * seenSlope;
        double endByGate = share * (1 - latched) * GATED;
        Arrays.fill(at.endByStart, 0.0);
        Arrays.fill(at.ampsByStart, 0.0);
        Arrays.fill(at.endByVolts, 0.0);
        at.end[0] = end;
        at.end[1] = seen;
        at.end[2] = junction.amps(at.volts[0]) + at.volts[0] / gate.shuntOhms();
        at.endByVolts[0] = endByGate;
        at.endByVolts[1] = endByAnode;
        at.amps[1] = c * full;
        at.siemens[1] = 0;
        at.siemens[2] = opened * endByGate;
        at.siemens[3] = c * fullSlope + opened * endByAnode;
    }

    private static double target(double latched, double triggered) {
        return 1 - (1 - latched) * (1 - GATED * triggered);
    }

    /** Anode current [A] that keeps it on. */
    private double latchAmps(double state) {
        return main.latchingAmps() + (main.holdingAmps() - main.latchingAmps()) * SPREADS.at(state);
    }

    private double latchAmpsSlope(double state) {
        return (main.holdingAmps() - main.latchingAmps()) * SPREADS.slope(state);
    }

    /** The steady state that is reached first from {@code start} at these voltages: its own target. */
    private double settled(double triggered, double full, double flowing, double start) {
        double state = start;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double latched = PAST.at((CONDUCTS.at(state) * full + flowing) / latchAmps(state));
            double next = target(latched, triggered);
            double moved = Math.abs(next - state);
            state = next;
            if (moved < SETTLED) {
                break;
            }
        }
        return state;
    }

    private double broken(double volts) {
        if (breakdown.isOff(Math.abs(volts))) {
            return 0;
        }
        double amps = breakdown.amps(Math.abs(volts), breakdown.exponential(Math.abs(volts)));
        return volts < 0 ? -amps : amps;
    }

    private double brokenSlope(double volts) {
        return breakdown.isOff(Math.abs(volts)) ? 0 : breakdown.siemens(breakdown.exponential(Math.abs(volts)));
    }

    @Override
    public double limited(int port, double proposedVolts, double presentVolts) {
        if (port == 0) {
            return junction.limited(proposedVolts, presentVolts);
        }
        return proposedVolts > presentVolts
                ? breakdown.limited(proposedVolts, presentVolts)
                : -breakdown.limited(-proposedVolts, -presentVolts);
    }
}
