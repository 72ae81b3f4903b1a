package fusetale.explore;

import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a pulse asks of the driver and of what catches the coil's current, where that is more than they stand. A machine that
 * asks a little more as built was made so: its data sheets are typical ones, and only what is worse than that is told.
 */
final class PulseDoubts {
    /** Data sheets give peak currents for half a cycle of 60 Hz; what lasts longer is held against the steady ones. */
    static final double HALF_CYCLE_SECONDS = 1 / 120.0;

    /** Past its rating as built: told only where it is further past by more than figures from memory are out ... */
    private static final double WORSE_RATIO = 1.2;

    /** ... or so far that the machine is drawn wrong, or was built so: the same at which a part is taken as lost. */
    private static final double FAR_RATIO = 2;

    /** Less in breakdown [J] than any driver of coils stands (judgement: the smallest avalanche ratings are some mJ). */
    private static final double LEAST_AVALANCHE_JOULES = 1e-4;

    private static final Words WORDS = Words.of(PulseDoubts.class);

    private final Pulsed pulsed;
    private final List<Doubt> found = new ArrayList<>();

    private PulseDoubts(Pulsed pulsed) {
        this.pulsed = pulsed;
    }

    /** Of all that is pulsed. */
    static List<Doubt> of(List<Pulsed> pulses) {
        List<Doubt> all = new ArrayList<>();
        for (Pulsed each : pulses) {
            PulseDoubts doubts = new PulseDoubts(each);
            doubts.avalanche();
            doubts.driver();
            each.clamps().forEach(doubts::clamp);
            all.addAll(doubts.found);
        }
        return all;
    }

    private void avalanche() {
        double joules = supposed(PulseFigures::avalancheJoules);
        Stands stands = pulsed.stoodAsSupposed();
        double asBuilt =
                built(PulseFigures::avalancheJoules) / pulsed.stoodAsBuilt().avalancheJoules();
        if (tooMuch(asBuilt, joules / stands.avalancheJoules())) {
            say("avalanche", pulsed.driver(), pulsed.driven(), about(joules), joules(stands.avalancheJoules()));
        }
        if (!stands.avalancheKnown() && joules >= LEAST_AVALANCHE_JOULES && unknownIsNews(joules)) {
            say("avalanche.unknown", pulsed.driver(), pulsed.driven(), about(joules));
        }
    }

    /** As built it was known, or less. */
    private boolean unknownIsNews(double joules) {
        return pulsed.stoodAsBuilt().avalancheKnown() || joules > WORSE_RATIO * built(PulseFigures::avalancheJoules);
    }

    private void driver() {
        double peak = supposed(PulseFigures::driverPeakAmps);
        double steady = supposed(PulseFigures::driverSteadyAmps);
        Stands built = pulsed.stoodAsBuilt();
        Stands stands = pulsed.stoodAsSupposed();
        double peakBuilt = built(PulseFigures::driverPeakAmps) / built.peakAmps();
        double steadyBuilt = built(PulseFigures::driverSteadyAmps) / built.steadyAmps();
        double peakRatio = peak / stands.peakAmps();
        double steadyRatio = pulsed.seconds() > HALF_CYCLE_SECONDS ? steady / stands.steadyAmps() : 0;
        boolean overPeak = tooMuch(peakBuilt, peakRatio);
        boolean overSteady = tooMuch(steadyBuilt, steadyRatio);
        if (overPeak && (!overSteady || peakRatio > steadyRatio)) {
            say("driver.peak", pulsed.driver(), pulsed.driven(), amps(peak), amps(stands.peakAmps()));
        } else if (overSteady) {
            say("driver.steady", pulsed.driver(), pulsed.driven(), amps(steady), amps(stands.steadyAmps()));
        }
    }

    private void clamp(PulsedClamp clamp) {
        if (!tooMuch(clamp.ratioAsBuilt(), clamp.ratioAsSupposed())) {
            return;
        }
        Stands stands = clamp.stoodAsSupposed();
        double peak = clamp.asSupposed().peakAmps();
        double heat = clamp.asSupposed().ampsSquaredSeconds();
        boolean byPeak = peak > stands.peakAmps();
        say(
                byPeak ? "clamp.peak" : "clamp.heat",
                clamp.part(),
                pulsed.driven(),
                byPeak ? amps(peak) : figure(heat, Unit.AMPERE_SQUARED_SECOND),
                byPeak ? amps(stands.peakAmps()) : figure(stands.pulseAmpsSquaredSeconds(), Unit.AMPERE_SQUARED_SECOND),
                pulsed.driver());
    }

    private static boolean tooMuch(double asBuilt, double asSupposed) {
        return asSupposed > 1 && (asBuilt <= 1 || asSupposed > WORSE_RATIO * asBuilt || asSupposed > FAR_RATIO);
    }

    private double built(ToDoubleFunction<PulseFigures> figure) {
        return most(pulsed.asBuilt(), figure);
    }

    private double supposed(ToDoubleFunction<PulseFigures> figure) {
        return most(pulsed.asSupposed(), figure);
    }

    private static double most(List<PulseFigures> side, ToDoubleFunction<PulseFigures> figure) {
        double most = Pulsed.range(side, figure).most();
        return Double.isNaN(most) ? 0 : most;
    }

    private void say(String key, Object... values) {
        found.add(new Doubt(Doubt.Severity.NOTE, WORDS.say(key, values)));
    }

    private static String joules(double joules) {
        return figure(joules, Unit.JOULE);
    }

    /** A computed energy; more figures than two it has not. */
    private static String about(double joules) {
        return Notation.format(new Quantity(joules, Unit.JOULE), 2);
    }

    private static String amps(double amps) {
        return figure(amps, Unit.AMPERE);
    }

    private static String figure(double si, Unit unit) {
        return Notation.format(new Quantity(si, unit), 3);
    }
}
