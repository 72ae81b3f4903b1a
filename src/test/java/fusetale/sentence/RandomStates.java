package fusetale.sentence;

import fusetale.bench.Arrangement;
import fusetale.bench.Driven;
import fusetale.bench.Meter;
import fusetale.bench.MeterRange;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Part;
import fusetale.circuit.Switch;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** States of a bench as they come, all of them possible. */
final class RandomStates {
    private final Circuit circuit;
    private final Random random;
    private final List<FaultForm> forms;
    private final List<Swap> swaps;
    private final Names names;

    RandomStates(Circuit circuit, long seed) {
        this.circuit = circuit;
        this.random = new Random(seed);
        this.forms = Catalogue.possible(circuit);
        this.swaps = SwapSentenceTest.everySwap(circuit);
        this.names = new Names(circuit);
    }

    Sentence next() {
        Arrangement arrangement = arrangement();
        return new Sentence(supposition(), arrangement, setting(arrangement.powerOn()));
    }

    private Supposition supposition() {
        while (true) {
            List<Fault> faults = new ArrayList<>();
            List<Swap> swapped = new ArrayList<>();
            int many = random.nextInt(4);
            for (int i = 0; i < many; i++) {
                faults.add(fault(forms.get(random.nextInt(forms.size()))));
            }
            for (int i = random.nextInt(3); i > 0; i--) {
                swapped.add(swaps.get(random.nextInt(swaps.size())));
            }
            Supposition supposition = new Supposition(faults, swapped);
            try {
                Catalogue.check(circuit, supposition);
                return supposition;
            } catch (UnfitSupposition unfit) {
                // others, then
            }
        }
    }

    private Fault fault(FaultForm form) {
        AmountRange range = form.amount();
        if (range == null || random.nextBoolean()) {
            return form.usual();
        }
        double low = Math.max(range.lowSi(), 1e-6);
        double si = Math.min(range.highSi(), low * Math.pow(range.highSi() / low, random.nextDouble()));
        return form.of(new Quantity(random.nextBoolean() ? si : rounded(si, range), range.unit()));
    }

    private static double rounded(double si, AmountRange range) {
        double rounded = Double.parseDouble(String.format(java.util.Locale.ROOT, "%.2g", si));
        return rounded < range.lowSi() || rounded > range.highSi() ? si : rounded;
    }

    private Arrangement arrangement() {
        while (true) {
            boolean on = random.nextBoolean();
            Arrangement arrangement = on ? Arrangement.powered(circuit) : Arrangement.unpowered();
            if (on && random.nextInt(3) == 0) {
                arrangement = arrangement.withMainsVolts(80 + random.nextInt(200) + random.nextInt(10) / 10.0);
            }
            if (random.nextInt(3) == 0) {
                arrangement = arrangement.withMainsHertz(1 + random.nextInt(100_000) + random.nextInt(10) / 10.0);
            }
            if (random.nextInt(3) == 0) {
                arrangement = arrangement.withSeriesLamp((double) (5 + random.nextInt(200)));
            }
            for (String fuse : some(parts(Fuse.class))) {
                arrangement = arrangement.withPulledFuse(fuse);
            }
            for (String connector :
                    some(circuit.connectors().stream().map(Connector::name).toList())) {
                arrangement = arrangement.withUnplugged(connector);
            }
            for (String pin : some(names.all(Names.Kind.PIN))) {
                arrangement = arrangement.withLiftedPin(pin);
            }
            if (random.nextInt(3) == 0) {
                arrangement = arrangement.withClip(any(names.all(Names.Kind.POINT)), any(names.all(Names.Kind.POINT)));
            }
            arrangement = driven(arrangement);
            for (String each : some(parts(Switch.class))) {
                arrangement = arrangement.withSwitch(each, random.nextBoolean());
            }
            try {
                arrangement.appliedTo(circuit);
                return arrangement;
            } catch (UnfitArrangement unfit) {
                // another, then
            }
        }
    }

    private Arrangement driven(Arrangement bare) {
        Arrangement arrangement = bare;
        for (String each : some(Driven.names(circuit))) {
            arrangement = random.nextBoolean()
                    ? arrangement.withHeldOn(each)
                    : arrangement.withPulse(each, (1 + random.nextInt(900)) / 1000.0);
        }
        List<String> capacitors = new ArrayList<>(parts(Electrolytic.class));
        capacitors.addAll(parts(Capacitor.class));
        for (String each : some(capacitors)) {
            arrangement = arrangement.withCharged(each, random.nextInt(400) / 10.0 - 20);
        }
        return arrangement;
    }

    private Setting setting(boolean on) {
        List<Meter> meters = Meter.builtIn();
        Meter meter = meters.get(random.nextInt(meters.size()));
        List<MeterFunction> functions = Arrays.stream(MeterFunction.values())
                .filter(f -> meter.has(f) && (f.powered() || !on))
                .toList();
        MeterFunction function = functions.get(random.nextInt(functions.size()));
        List<MeterRange> ranges = Draft.ranges(meter, function);
        Meter set = meter;
        if (!ranges.isEmpty() && random.nextBoolean()) {
            double full = ranges.get(random.nextInt(ranges.size())).fullScale();
            set = meter.withRange(new Quantity(full, function.unit())).orElse(meter);
        }
        return new Setting(set, function, leads());
    }

    private @Nullable Leads leads() {
        return random.nextBoolean()
                ? null
                : new Leads(any(names.all(Names.Kind.POINT)), any(names.all(Names.Kind.POINT)));
    }

    private List<String> parts(Class<? extends Part> kind) {
        return circuit.parts().stream().filter(kind::isInstance).map(Part::name).toList();
    }

    /** None, mostly; else one or two. */
    private List<String> some(Collection<String> all) {
        int many = all.isEmpty() ? 0 : Math.max(0, random.nextInt(5) - 2);
        List<String> some = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            some.add(any(all));
        }
        return some;
    }

    private String any(Collection<String> all) {
        return List.copyOf(all).get(random.nextInt(all.size()));
    }
}
