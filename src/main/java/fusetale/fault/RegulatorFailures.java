package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;
import static fusetale.fault.FailureMode.WEAK;

import fusetale.circuit.Circuit;
import fusetale.circuit.Regulator;
import java.util.List;

/**
 * Three-terminal regulators: in to out shorted, input or ground pin open, output too low. Oscillation is not among them:
 * this program does not compute it. Shares: judgement; FMD-91 knows only "improper output" for linear circuits.
 */
final class RegulatorFailures implements Failures<Regulator> {
    @Override
    public String kind() {
        return "regulator";
    }

    @Override
    public List<FaultForm> forms(Regulator u) {
        FailureRate rate = FailureRate.REGULATOR;
        return new FormList(u.name(), kind())
                .whole(SHORT, SHORTED, rate.judged(0.30))
                .said("is shorted in to out", "is shorted in to out, {}")
                .whole(OPEN, OPENED, rate.judged(0.35))
                .at("ground", "ground pin", OPEN, OPENED, rate.judged(0.10))
                .whole(WEAK, ratio(0.8, 0.05, 0.99), rate.judged(0.25))
                .said("gives low output", "gives low output, {} left")
                .list();
    }

    @Override
    public Circuit apply(Failing<Regulator> f) {
        Regulator u = f.now();
        return switch (f.fault().mode()) {
            case SHORT -> f.across(u.in(), u.out());
            case OPEN -> f.inSeries(u, f.fault().place().isEmpty() ? "in" : "ground", f.amountSi());
            case WEAK ->
                f.replacedBy(new Regulator(
                        u.name(),
                        u.in(),
                        u.out(),
                        u.ground(),
                        u.model().withOutputVolts(u.model().outputVolts() * f.amountSi()),
                        u.about()));
            default -> throw f.unlisted();
        };
    }
}
