package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;
import static fusetale.fault.FailureMode.STUCK_HIGH;
import static fusetale.fault.FailureMode.STUCK_LOW;
import static fusetale.fault.FailureMode.WEAK;

import fusetale.circuit.Circuit;
import fusetale.circuit.Net;
import fusetale.circuit.OpAmp;
import fusetale.circuit.Rewiring;
import java.util.List;

/**
 * Operational amplifiers: output dead, shorted to ground or stuck at a rail, an input without contact, gain lost. Shares:
 * judgement; MIL-HDBK-338B knows "improper output" and "no output" for linear circuits (0.77 and 0.23, from memory), and
 * nobody's book takes the first of them apart.
 */
final class OpAmpFailures implements Failures<OpAmp> {
    /** Leak of a board around an input that nothing drives [Ω], judgement; against {@link Failing#OPEN_OHMS}. */
    private static final double FLOATING_INPUT_OHMS = 1e6;

    @Override
    public String kind() {
        return "op-amp";
    }

    @Override
    public List<FaultForm> forms(OpAmp u) {
        FailureRate rate = FailureRate.OP_AMP;
        return new FormList(u.name(), kind())
                .whole(STUCK_HIGH, null, rate.judged(0.27))
                .whole(STUCK_LOW, null, rate.judged(0.27))
                .whole(OPEN, OPENED, rate.judged(0.16))
                .whole(SHORT, SHORTED, rate.judged(0.07))
                .said("has its output shorted to ground", "has its output shorted to ground, {}")
                .whole(WEAK, ratio(1e-4, 1e-6, 0.9), rate.judged(0.13))
                .said("has lost gain", "has lost gain, {} left")
                .at("plus", "plus input", OPEN, OPENED, rate.judged(0.05))
                .at("minus", "minus input", OPEN, OPENED, rate.judged(0.05))
                .list();
    }

    /** An input without contact hangs on what leaks across the board. */
    private static Circuit floating(Failing<OpAmp> f) {
        String pin = f.fault().place();
        Circuit parted = f.inSeries(f.now(), pin, f.amountSi());
        Net inner = parted.part(f.now().name()).map(p -> p.net(pin)).orElseThrow(f::unlisted);
        return Rewiring.across(parted, f.label() + "~leak", inner, parted.ground(), FLOATING_INPUT_OHMS);
    }

    @Override
    public Circuit apply(Failing<OpAmp> f) {
        OpAmp u = f.now();
        return switch (f.fault().mode()) {
            case STUCK_HIGH -> f.replacedBy(u.with(OpAmp.State.HIGH));
            case STUCK_LOW -> f.replacedBy(u.with(OpAmp.State.LOW));
            case OPEN -> f.fault().place().isEmpty() ? f.inSeries(u, "out", f.amountSi()) : floating(f);
            case SHORT -> f.across(u.out(), f.circuit().ground());
            case WEAK -> f.replacedBy(u.with(u.model().withGainLeft(f.amountSi())));
            default -> throw f.unlisted();
        };
    }
}
