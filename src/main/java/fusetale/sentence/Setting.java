package fusetale.sentence;

import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.MeterFunction;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How the meter is set.
 *
 * @param meter which one, and the range it was set to by hand
 * @param function what its switch is set to
 * @param leads where its leads are held; null where it goes round the test points
 */
public record Setting(
        Meter meter, MeterFunction function, @Nullable Leads leads) {
    /** The usual meter on d.c. volts, going round the test points. */
    public static Setting usual() {
        return new Setting(Meter.trueRms4000(), MeterFunction.DC_VOLTS, null);
    }

    /** The same with another meter. */
    public Setting withMeter(Meter other) {
        return new Setting(other, function, leads);
    }

    /** The same on another function. */
    public Setting withFunction(MeterFunction other) {
        return new Setting(meter, other, leads);
    }

    /** The same with the leads somewhere else; null for going round the test points. */
    public Setting withLeads(@Nullable Leads other) {
        return new Setting(meter, function, other);
    }

    /** What is measured between the leads; empty where they are held nowhere. */
    public Optional<Check> check() {
        Leads held = leads;
        return held == null ? Optional.empty() : Optional.of(new Check(held.red(), held.black(), function));
    }
}
