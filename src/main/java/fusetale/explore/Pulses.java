package fusetale.explore;

import fusetale.bench.Arrangement;
import fusetale.bench.PulseRun;
import fusetale.bench.PulseRuns;
import fusetale.circuit.Circuit;
import fusetale.circuit.Fuse;
import fusetale.circuit.Part;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.mna.Solved;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;

/** Pulses what an arrangement pulses, as built and as supposed. */
final class Pulses {
    /** A fuse of whose least melting I²t a pulse takes less than this share is not worth telling. */
    private static final double WORTH_TELLING_RATIO = 1e-3;

    private final Question question;
    private final List<PulseRun> built;
    private final List<PulseRun> supposed;
    private final Circuit circuitAsBuilt;
    private final Circuit circuitAsSupposed;

    private Pulses(
            Question question, Settled asBuilt, Settled asSupposed, List<PulseRun> built, List<PulseRun> supposed) {
        this.question = question;
        this.built = built;
        this.supposed = supposed;
        this.circuitAsBuilt = asBuilt.machine().arranged();
        this.circuitAsSupposed = asSupposed.machine().arranged();
    }

    /** One answer a coil or lamp that is pulsed, by name; none where the arrangement pulses nothing. */
    static Solved<List<Pulsed>> of(Question question, Settled asBuilt, Settled asSupposed, BooleanSupplier stopped) {
        Map<String, Double> pulses = new TreeMap<>(question.arrangement().pulsedSeconds());
        if (pulses.isEmpty()) {
            return new Solved.Found<>(List.of());
        }
        Solved<List<PulseRun>> ranBuilt = runs(question, asBuilt, Supposition.NOTHING, stopped);
        Solved<List<PulseRun>> ranSupposed = question.supposition().isNothing()
                ? ranBuilt
                : runs(question, asSupposed, question.supposition(), stopped);
        if (!(ranBuilt instanceof Solved.Found<List<PulseRun>> built)) {
            return new Solved.Failed<>(Baseline.reason(ranBuilt));
        }
        if (!(ranSupposed instanceof Solved.Found<List<PulseRun>> supposed)) {
            return new Solved.Failed<>(Baseline.reason(ranSupposed));
        }
        Pulses all = new Pulses(question, asBuilt, asSupposed, built.value(), supposed.value());
        List<Pulsed> answers = new ArrayList<>();
        pulses.forEach((driven, seconds) -> all.pulsed(driven, seconds).ifPresent(answers::add));
        return new Solved.Found<>(answers);
    }

    private static Solved<List<PulseRun>> runs(
            Question question, Settled settled, Supposition supposition, BooleanSupplier stopped) {
        Arrangement supply = settled.machine().bare();
        for (Map.Entry<String, Double> pulse :
                question.arrangement().pulsedSeconds().entrySet()) {
            supply = supply.withPulse(pulse.getKey(), pulse.getValue());
        }
        return PulseRuns.of(
                question.healthy(), settled.machine().arranged(), supply, stuck(supposition), settled.seen(), stopped);
    }

    private static Set<String> stuck(Supposition supposition) {
        Set<String> stuck = new TreeSet<>();
        for (Fault fault : supposition.faults()) {
            if (fault.mode() == FailureMode.STUCK_ON || fault.mode() == FailureMode.STUCK_OFF) {
                stuck.add(fault.part());
            }
        }
        return stuck;
    }

    private Optional<Pulsed> pulsed(String name, double seconds) {
        return Switching.of(question.healthy(), name).map(switching -> {
            List<PulseReading> before = readings(built, circuitAsBuilt, switching, seconds);
            List<PulseReading> after = readings(supposed, circuitAsSupposed, switching, seconds);
            List<PulseFigures> figuresBuilt =
                    before.stream().map(PulseReading::figures).toList();
            List<PulseFigures> figuresSupposed =
                    after.stream().map(PulseReading::figures).toList();
            int worst = worst(figuresSupposed);
            String driver = switching.driver().name();
            return new Pulsed(
                    switching.driven().name(),
                    seconds,
                    driver,
                    PulseReading.pullInAmps(switching.driven()),
                    PulseReading.holdAmps(switching.driven()),
                    Stands.of(circuitAsBuilt, switching.driver()),
                    Stands.of(circuitAsSupposed, switching.driver()),
                    figuresBuilt,
                    figuresSupposed,
                    fuses(figuresBuilt, figuresSupposed),
                    PulsedClamp.of(figuresBuilt, figuresSupposed, fitted(switching)),
                    List.of(
                            new Trace(
                                    switching.driven().name(),
                                    Unit.AMPERE,
                                    before.get(worst).coilAmps(),
                                    after.get(worst).coilAmps()),
                            new Trace(
                                    driver + "." + switching.upper(),
                                    Unit.VOLT,
                                    before.get(worst).driverVolts(),
                                    after.get(worst).driverVolts())));
        });
    }

    private List<PulsedClamp.Fitted> fitted(Switching switching) {
        return switching.clamps().stream()
                .map(clamp -> new PulsedClamp.Fitted(
                        clamp.name(), Stands.of(circuitAsBuilt, clamp), Stands.of(circuitAsSupposed, clamp)))
                .toList();
    }

    private static List<PulseReading> readings(
            List<PulseRun> runs, Circuit circuit, Switching switching, double seconds) {
        return runs.stream()
                .map(run -> new PulseReading(circuit, run, switching, seconds))
                .toList();
    }

    /** The moment from which the driver sees most; else the first. */
    private static int worst(List<PulseFigures> figures) {
        int worst = 0;
        for (int k = 1; k < figures.size(); k++) {
            if (figures.get(k).peakVolts() > figures.get(worst).peakVolts()) {
                worst = k;
            }
        }
        return worst;
    }

    private List<Pulsed.PulsedFuse> fuses(List<PulseFigures> before, List<PulseFigures> after) {
        double longest = question.arrangement().pulsedSeconds().values().stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
        List<Pulsed.PulsedFuse> fuses = new ArrayList<>();
        for (Part part : question.healthy().parts()) {
            if (part instanceof Fuse drawn
                    && circuitAsSupposed.part(part.name()).orElse(part) instanceof Fuse fitted) {
                String name = part.name();
                Pulsed.PulsedFuse fuse = Pulsed.PulsedFuse.of(
                        name, drawn.fitted(), most(before, name), fitted.fitted(), most(after, name), longest);
                double share =
                        Math.max(fuse.asBuilt().shareRatio(), fuse.asSupposed().shareRatio());
                if (share >= WORTH_TELLING_RATIO) {
                    fuses.add(fuse);
                }
            }
        }
        return fuses;
    }

    private static double most(List<PulseFigures> side, String fuse) {
        return side.stream()
                .mapToDouble(f -> f.fuseAmpsSquaredSeconds().getOrDefault(fuse, 0.0))
                .max()
                .orElse(0);
    }
}
