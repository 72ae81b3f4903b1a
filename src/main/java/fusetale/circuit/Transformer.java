package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A mains transformer. Pins are named {@code winding.position}, positions from 1: {@code primary.1}, {@code sol.2}.
 *
 * @param name reference designator
 * @param primary the winding that takes the mains
 * @param secondaries the other windings
 * @param magnetics the core
 * @param about notes
 */
public record Transformer(String name, Winding primary, List<Winding> secondaries, Magnetics magnetics, About about)
        implements Part {
    private static final double LEAST_REGULATION_RATIO = 0.01;
    private static final double LEAST_WINDING_OHMS = 1e-3;

    /**
     * One winding, perhaps with taps.
     *
     * @param name {@code primary} or the key of the file
     * @param nets ends and taps in order, 2 or more; taps divide the winding evenly
     * @param volts end to end: of the primary its rated voltage, of a secondary its voltage at rated load
     * @param ohms end to end at 25 °C
     * @param ratedAmps rms current it stands for good, where known
     */
    public record Winding(
            String name,
            List<Net> nets,
            Quantity volts,
            Toleranced ohms,
            @Nullable Quantity ratedAmps) {
        /** Copies the list. */
        public Winding {
            nets = List.copyOf(nets);
        }
    }

    /**
     * The core.
     *
     * @param regulation how far a secondary falls from no load to rated load, as a ratio of the latter
     * @param magnetisingAmps rms magnetising current of the primary at rated voltage
     * @param coreLossWatts iron loss at rated voltage
     * @param leakage leakage reactance of each winding as a ratio of its rated impedance
     */
    public record Magnetics(Quantity regulation, Quantity magnetisingAmps, Quantity coreLossWatts, Quantity leakage) {}

    /** Copies the list. */
    public Transformer {
        secondaries = List.copyOf(secondaries);
    }

    /** Primary first, then the secondaries. */
    public List<Winding> windings() {
        List<Winding> all = new ArrayList<>();
        all.add(primary);
        all.addAll(secondaries);
        return all;
    }

    /**
     * What a winding is rated for [A r.m.s.]: as stated; else, of a secondary, the current at which its own resistance drops
     * half of the regulation, and of the primary what all secondaries take together.
     */
    public double ratedAmps(Winding winding) {
        Quantity stated = winding.ratedAmps();
        if (stated != null) {
            return stated.si();
        }
        double volts = winding.volts().si();
        if (!winding.equals(primary)) {
            double fall = Math.max(magnetics.regulation().si(), LEAST_REGULATION_RATIO);
            return fall * volts / (2 * Math.max(winding.ohms().si(), LEAST_WINDING_OHMS));
        }
        double watts = 0;
        for (Winding secondary : secondaries) {
            watts += secondary.volts().si() * ratedAmps(secondary);
        }
        return watts > 0 ? watts / volts : 1;
    }

    /** What one of its windings is made of. */
    public Wound wound(Winding winding) {
        return about.wound(winding.name(), Wound.ofTransformer(winding));
    }

    @Override
    public List<Pin> pins() {
        List<Pin> pins = new ArrayList<>();
        for (Winding w : windings()) {
            for (int i = 0; i < w.nets().size(); i++) {
                pins.add(new Pin(w.name() + "." + (i + 1), w.nets().get(i)));
            }
        }
        return pins;
    }

    @Override
    public Transformer rewired(String pin, Net net) {
        net(pin);
        return new Transformer(
                name,
                rewired(primary, pin, net),
                secondaries.stream().map(w -> rewired(w, pin, net)).toList(),
                magnetics,
                about);
    }

    private static Winding rewired(Winding w, String pin, Net net) {
        List<Net> nets = new ArrayList<>(w.nets());
        for (int i = 0; i < nets.size(); i++) {
            if (pin.equals(w.name() + "." + (i + 1))) {
                nets.set(i, net);
            }
        }
        return new Winding(w.name(), nets, w.volts(), w.ohms(), w.ratedAmps());
    }
}
