package fusetale.explore;

import fusetale.aftermath.Surge;
import fusetale.bench.PulseRun;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Darlington;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Fuse;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import fusetale.circuit.Transistor;
import fusetale.circuit.Zener;
import fusetale.quantity.Quantity;
import fusetale.signal.Waveform;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Takes the figures of one run of a pulse; one use. */
final class PulseReading {
    /** Part of its breakdown voltage from which a driver's current is counted as avalanche. */
    private static final double BREAKS_DOWN_FROM_RATIO = 0.98;
    /** The peak is looked for while the coil still has this part of the current it was switched off at. */
    private static final double DECAYED_RATIO = 0.1;
    /** What limits carries at least this part of the coil's current. */
    private static final double CARRIES_RATIO = 0.5;
    /** Less current [A] than this when switched off leaves no peak. */
    private static final double LEAST_AMPS = 1e-3;
    /** Steps land on a moment to half a grain. */
    private static final double LANDED_SECONDS = 0.7e-6;

    private final Circuit circuit;
    private final PulseRun run;
    private final Switching switching;
    private final double from;
    private final double to;
    private final Waveform coil;

    /**
     * A reading.
     *
     * @param circuit the machine as arranged and as supposed
     * @param seconds how long the pulse is
     */
    PulseReading(Circuit circuit, PulseRun run, Switching switching, double seconds) {
        this.circuit = circuit;
        this.run = run;
        this.switching = switching;
        this.from = run.fromSeconds();
        this.to = from + seconds;
        this.coil = amps(switching.driven().name());
    }

    PulseFigures figures() {
        int off = lastUntil(coil, to);
        double offAmps = Math.abs(coil.value(off));
        double reached = 0;
        double pullIn = Double.NaN;
        double pullInAmps = here(PulseReading::pullInAmps, Coil::pullsInFromAmps);
        for (int k = 0; k < coil.size(); k++) {
            double amps = Math.abs(coil.value(k));
            reached = Math.max(reached, amps);
            if (Double.isNaN(pullIn) && coil.seconds(k) > from && amps >= pullInAmps) {
                pullIn = crossing(k, pullInAmps) - from;
            }
        }
        Peak peak = peak(off, offAmps);
        return new PulseFigures(
                reached,
                driverPeak(),
                driverSteady(),
                pullIn,
                henries() * offAmps * offAmps / 2,
                taken(),
                dip(),
                peak.volts,
                peak.limit,
                limitJoules(peak.limit),
                avalanche(),
                dropOut(off),
                fuses(),
                clamps());
    }

    /** Voltage across the driver, of either polarity, taken as it stands at rest. */
    Waveform driverVolts() {
        Part driver = here(switching.driver());
        return run.volts(driver.net(switching.upper()), driver.net(switching.lower()));
    }

    /** Current of the coil. */
    Waveform coilAmps() {
        return coil;
    }

    private double driverPeak() {
        Waveform amps = amps(switching.driver().name());
        return Math.max(amps.highest(), -amps.lowest());
    }

    /** Over the pulse: a MOSFET's channel heats as a resistance, what has junctions as its mean. */
    private double driverSteady() {
        Waveform amps = amps(switching.driver().name());
        boolean heating = here(switching.driver()) instanceof Mosfet;
        double sum = 0;
        for (int k = 0; k < amps.size(); k++) {
            double at = amps.seconds(k);
            if (at > from + LANDED_SECONDS && at <= to + LANDED_SECONDS) {
                double value = amps.value(k);
                sum += amps.weight(k) * (heating ? value * value : Math.abs(value));
            }
        }
        double mean = sum / (to - from);
        return heating ? Math.sqrt(mean) : mean;
    }

    private Map<String, Surge> clamps() {
        Map<String, Surge> all = new HashMap<>();
        for (Part clamp : switching.clamps()) {
            all.put(clamp.name(), Surge.of(amps(clamp.name()), PulseDoubts.HALF_CYCLE_SECONDS));
        }
        return all;
    }

    private record Peak(double volts, PulseFigures.Limit limit) {}

    private Peak peak(int off, double offAmps) {
        if (offAmps < LEAST_AMPS) {
            return new Peak(Double.NaN, PulseFigures.Limit.NONE);
        }
        Waveform volts = driverVolts();
        int at = off;
        for (int k = off + 1; k < coil.size() && Math.abs(coil.value(k)) > DECAYED_RATIO * offAmps; k++) {
            if (at == off || Math.abs(volts.value(k)) > Math.abs(volts.value(at))) {
                at = k;
            }
        }
        double highest = Math.abs(volts.value(at));
        return new Peak(highest, limit(at, highest));
    }

    private PulseFigures.Limit limit(int at, double volts) {
        double most = CARRIES_RATIO * Math.abs(coil.value(at));
        PulseFigures.Limit limit = PulseFigures.Limit.NONE;
        for (Part clamp : switching.clamps()) {
            double amps = Math.abs(amps(clamp.name()).value(at));
            if (amps >= most) {
                most = amps;
                boolean zener = clamp instanceof Zener;
                limit = new PulseFigures.Limit(zener ? PulseFigures.Kind.ZENER : PulseFigures.Kind.DIODE, clamp.name());
            }
        }
        if (Math.abs(amps(switching.driver().name()).value(at)) >= most) {
            boolean past = volts >= BREAKS_DOWN_FROM_RATIO * breakdownVolts();
            limit = new PulseFigures.Limit(
                    past ? PulseFigures.Kind.BREAKDOWN : PulseFigures.Kind.STILL_ON,
                    switching.driver().name());
        }
        return limit;
    }

    private double limitJoules(PulseFigures.Limit limit) {
        if (limit.part().isEmpty()) {
            return 0;
        }
        if (limit.part().equals(switching.driver().name())) {
            return joules(driverVolts(), amps(limit.part()), to, 0);
        }
        Part clamp = circuit.part(limit.part()).orElse(null);
        if (clamp == null) {
            return Double.NaN;
        }
        Pin one = clamp.pins().get(0);
        Pin two = clamp.pins().get(1);
        return joules(run.volts(one.net(), two.net()), amps(clamp.name()), to, 0);
    }

    private double avalanche() {
        double volts = breakdownVolts();
        return Double.isInfinite(volts)
                ? 0
                : joules(driverVolts(), amps(switching.driver().name()), to, BREAKS_DOWN_FROM_RATIO * volts);
    }

    /** Integral of volts times amperes after a moment, where the voltage is at least so high. */
    private static double joules(Waveform volts, Waveform amps, double after, double fromVolts) {
        double sum = 0;
        for (int k = 0; k < volts.size(); k++) {
            if (volts.seconds(k) > after + LANDED_SECONDS && Math.abs(volts.value(k)) >= fromVolts) {
                sum += volts.weight(k) * volts.value(k) * amps.value(k);
            }
        }
        return Math.abs(sum);
    }

    /** Nearest net of the rail's end of the coil, as it stands here. */
    private Net rail() {
        return here(switching.driven()).net(switching.railPin());
    }

    private double taken() {
        Net lower = here(switching.driver()).net(switching.lower());
        Waveform volts = run.volts(rail(), lower);
        double sum = 0;
        for (int k = 0; k < volts.size(); k++) {
            double at = volts.seconds(k);
            if (at > from + LANDED_SECONDS && at <= to + LANDED_SECONDS) {
                sum += volts.weight(k) * volts.value(k) * coil.value(k);
            }
        }
        return Math.abs(sum);
    }

    private double dip() {
        Net lower = here(switching.driver()).net(switching.lower());
        Waveform volts = run.volts(rail(), lower);
        Waveform rest = run.restVolts(rail(), lower);
        double sign = Math.signum(rest.mean());
        double most = 0;
        for (int k = 0; k < volts.size(); k++) {
            double at = volts.seconds(k);
            if (at > from && at <= to) {
                most = Math.max(most, sign * (atRest(rest, at) - volts.value(k)));
            }
        }
        return most;
    }

    /** Value at rest at the same moment of the cycle, on a straight line between samples; the last one ends the cycle. */
    private static double atRest(Waveform rest, double seconds) {
        double period = rest.seconds(rest.size() - 1);
        double at = seconds - period * Math.floor(seconds / period);
        double before = 0;
        double value = rest.value(rest.size() - 1);
        for (int k = 0; k < rest.size(); k++) {
            if (rest.seconds(k) >= at) {
                double part = (at - before) / (rest.seconds(k) - before);
                return value + part * (rest.value(k) - value);
            }
            before = rest.seconds(k);
            value = rest.value(k);
        }
        return value;
    }

    private double dropOut(int off) {
        double hold = here(PulseReading::holdAmps, Coil::holdsFromAmps);
        for (int k = off; k < coil.size(); k++) {
            if (Math.abs(coil.value(k)) < hold) {
                return k == off ? 0 : crossing(k, hold) - to;
            }
        }
        return Double.NaN;
    }

    /** When the magnitude of the coil's current passes a value between sample k − 1 and sample k. */
    private double crossing(int k, double amps) {
        double before = Math.abs(coil.value(k - 1));
        double after = Math.abs(coil.value(k));
        double part = after == before ? 1 : (amps - before) / (after - before);
        return coil.seconds(k - 1) + Math.max(0, Math.min(1, part)) * (coil.seconds(k) - coil.seconds(k - 1));
    }

    private Map<String, Double> fuses() {
        Map<String, Double> all = new HashMap<>();
        for (Part part : circuit.parts()) {
            if (part instanceof Fuse) {
                Waveform amps = amps(part.name());
                double rest = run.restAmps(part.name()).map(Waveform::rms).orElse(0.0);
                double sum = 0;
                for (int k = 0; k < amps.size(); k++) {
                    if (amps.seconds(k) > from + LANDED_SECONDS) {
                        sum += amps.weight(k) * (amps.value(k) * amps.value(k) - rest * rest);
                    }
                }
                all.put(part.name(), Math.max(0, sum));
            }
        }
        return all;
    }

    private static int lastUntil(Waveform wave, double seconds) {
        int last = 0;
        for (int k = 0; k < wave.size() && wave.seconds(k) <= seconds + LANDED_SECONDS; k++) {
            last = k;
        }
        return last;
    }

    private Waveform amps(String name) {
        return run.amps(name).orElseGet(() -> zero());
    }

    /** The current of a part that fell into pieces. */
    private Waveform zero() {
        Waveform any = run.volts(circuit.ground(), circuit.ground());
        return any;
    }

    /** The part as it stands in this machine; as drawn where it fell into pieces. */
    private Part here(Part drawn) {
        return circuit.part(drawn.name()).orElse(drawn);
    }

    private double henries() {
        Part part = here(switching.driven());
        if (part instanceof Coil c) {
            return c.henries().si();
        }
        return part instanceof DualCoil c ? c.powerHenries().si() : 0;
    }

    /** A current of the plunger as it is wound in this machine; not known where the drawing does not state it. */
    private double here(ToDoubleFunction<Part> stated, ToDoubleFunction<Coil> now) {
        double drawn = stated.applyAsDouble(switching.driven());
        return !Double.isNaN(drawn) && here(switching.driven()) instanceof Coil c ? now.applyAsDouble(c) : drawn;
    }

    static double pullInAmps(Part driven) {
        return driven instanceof Coil c ? known(c.pullInAmps()) : Double.NaN;
    }

    static double holdAmps(Part driven) {
        return driven instanceof Coil c ? known(c.holdAmps()) : Double.NaN;
    }

    private static double known(@Nullable Quantity quantity) {
        return quantity == null ? Double.NaN : quantity.si();
    }

    private double breakdownVolts() {
        return Optional.of(here(switching.driver()))
                .map(PulseReading::breakdownVolts)
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double breakdownVolts(Part driver) {
        if (driver instanceof Transistor t) {
            return t.model().breakdownVolts();
        } else if (driver instanceof Darlington d) {
            return d.model().second().breakdownVolts();
        }
        return driver instanceof Mosfet m ? m.model().breakdownVolts() : Double.POSITIVE_INFINITY;
    }
}
