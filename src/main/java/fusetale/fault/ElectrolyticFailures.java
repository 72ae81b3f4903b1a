package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.leak;
import static fusetale.fault.AmountRange.ohms;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.DRIED_OUT;
import static fusetale.fault.FailureMode.HIGH_ESR;
import static fusetale.fault.FailureMode.LEAKY;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.REVERSED;
import static fusetale.fault.FailureMode.SHORT;

import fusetale.circuit.Circuit;
import fusetale.circuit.Electrolytic;
import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.List;

/**
 * Electrolytic capacitors. Shares of short and open: FMD-91 (from memory). That row knows no wear-out; drying out takes the
 * largest share of a machine of that age by judgement.
 *
 * <p>Dried out to a left (a ratio): capacitance × a, ESR × 1/a². The square is the rule for lost electrolyte volume of
 * M. L. Gasperi, "Life prediction model for aluminum electrolytic capacitors", IEEE IAS Annual Meeting 1996 (from
 * memory); taking the volume left for the capacitance left is judgement.
 *
 * <p>Reversed: the oxide dissolves and a low resistance is left; 10 Ω by judgement.
 */
final class ElectrolyticFailures implements Failures<Electrolytic> {
    @Override
    public String kind() {
        return "electrolytic";
    }

    @Override
    public List<FaultForm> forms(Electrolytic c) {
        FailureRate rate = FailureRate.ELECTROLYTIC;
        double esr = c.seriesOhms().si();
        return new FormList(c.name(), kind())
                .whole(SHORT, SHORTED, rate.share(0.10))
                .whole(OPEN, OPENED, rate.share(0.10))
                .whole(LEAKY, leak(470), rate.judged(0.15))
                .whole(DRIED_OUT, ratio(0.4, 0.01, 0.99), rate.judged(0.50))
                .whole(HIGH_ESR, ohms(10 * esr, Math.min(esr, 0.001), Math.max(1e6, 100 * esr)), rate.judged(0.15))
                .whole(REVERSED, ohms(10, 0.1, 10e3), FailureRate.HANDS.judged(1))
                .list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        boolean leaks = a.mode() == LEAKY || b.mode() == LEAKY;
        boolean dry = a.mode() == DRIED_OUT || a.mode() == HIGH_ESR || b.mode() == DRIED_OUT || b.mode() == HIGH_ESR;
        return !(leaks && dry);
    }

    @Override
    public Circuit apply(Failing<Electrolytic> f) {
        Electrolytic c = f.now();
        return switch (f.fault().mode()) {
            case SHORT, LEAKY -> f.across(c.plus(), c.minus());
            case OPEN -> f.replacedBy(with(c, CapacitorFailures.STRAY, c.seriesOhms(), f.ohms()));
            case DRIED_OUT -> f.replacedBy(driedOut(c, f.amountSi()));
            case HIGH_ESR -> f.replacedBy(with(c, c.farads(), f.ohms(), c.leakageOhms()));
            case REVERSED -> f.replacedBy(with(c, c.farads(), c.seriesOhms(), f.ohms()));
            default -> throw f.unlisted();
        };
    }

    private static Electrolytic driedOut(Electrolytic c, double left) {
        Quantity esr = new Quantity(c.seriesOhms().si() / (left * left), Unit.OHM);
        return with(c, c.farads().times(left), esr, c.leakageOhms());
    }

    private static Electrolytic with(Electrolytic c, Toleranced farads, Quantity esr, Quantity leakage) {
        return new Electrolytic(c.name(), c.plus(), c.minus(), farads, c.ratedVolts(), esr, leakage, c.about());
    }
}
