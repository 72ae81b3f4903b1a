package fusetale.explore;

import fusetale.bench.Arrangement;
import fusetale.bench.Drawn;
import fusetale.circuit.Circuit;
import fusetale.circuit.Mains;
import java.util.SplittableRandom;

/**
 * One machine out of the many that a drawing describes: its parts somewhere within their tolerance, the mains somewhere
 * within its range.
 *
 * @param circuit the machine, nothing wrong with it
 * @param mainsRatio its mains over the nominal one
 */
public record Specimen(Circuit circuit, double mainsRatio) {
    /** Every value as printed, the mains nominal. */
    public static Specimen nominal(Circuit circuit) {
        return new Specimen(circuit, 1);
    }

    /**
     * One drawn at random, every value uniform within its tolerance and the mains uniform within its range.
     *
     * @param seed the same seed gives the same machine
     */
    public static Specimen drawn(Circuit circuit, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Mains mains = circuit.mains();
        double low = mains.lowestVolts().si();
        double high = mains.highestVolts().si();
        double volts = low + (high - low) * random.nextDouble();
        return new Specimen(
                new Drawn(random.split()).circuit(circuit),
                volts / mains.volts().si());
    }

    /** An arrangement with this machine's mains. */
    Arrangement fed(Arrangement arrangement) {
        return !arrangement.powerOn() || mainsRatio == 1
                ? arrangement
                : arrangement
                        .withMainsVolts(arrangement.mainsVolts() * mainsRatio)
                        .withName(arrangement.name());
    }
}
