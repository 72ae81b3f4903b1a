package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Unit;
import java.util.List;

/**
 * A class of electrolytic capacitors: what follows from capacitance and voltage.
 *
 * @param name the model's name in the part files
 * @param tolerance how far the capacitance may stray
 * @param lossRatio loss factor tan δ at 120 Hz
 * @param leakage the rule of its leakage current
 * @param leakageRatio the number in that rule: µA with C in µF and V in volts
 * @param leastLeakageAmps a leakage current that is allowed in any case
 * @param sources where each figure is from
 */
public record ElectrolyticModel(
        String name,
        Tolerance tolerance,
        double lossRatio,
        Leakage leakage,
        double leakageRatio,
        double leastLeakageAmps,
        List<String> sources) {
    /** Large cans as they are taken where a circuit names no model: tan δ 0.20, 3·√(C·V) µA after five minutes. */
    static final ElectrolyticModel USUAL =
            new ElectrolyticModel("", new Tolerance(-0.2, 0.5), 0.20, Leakage.ROOT_OF_CV, 3, 0, List.of());

    private static final double LOSS_HERTZ = 120;

    /** Rules for the leakage current at rated voltage. */
    public enum Leakage {
        /** A number times C·V. */
        CV,
        /** A number times √(C·V). */
        ROOT_OF_CV
    }

    /** Copies the list. */
    public ElectrolyticModel {
        sources = List.copyOf(sources);
    }

    /** Equivalent series resistance, tan δ/(2π·f·C) at 120 Hz. */
    public Quantity seriesOhms(double farads) {
        return new Quantity(lossRatio / (2 * Math.PI * LOSS_HERTZ * farads), Unit.OHM);
    }

    /** Leakage at rated voltage as a resistance. */
    public Quantity leakageOhms(double farads, double volts) {
        double charge = farads * 1e6 * volts;
        double amps = 1e-6 * leakageRatio * (leakage == Leakage.CV ? charge : Math.sqrt(charge));
        return new Quantity(volts / Math.max(amps, leastLeakageAmps), Unit.OHM);
    }
}
