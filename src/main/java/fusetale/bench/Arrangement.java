package fusetale.bench;

import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.model.Conditions;
import fusetale.quantity.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How the bench is set. {@link #of} checks it against its circuit; the changes ({@link #withPulledFuse} and so on) are not
 * checked before {@link #appliedTo}.
 *
 * @param name what to call it: a name of the circuit file or the changes made to one
 * @param powerOn whether the mains is connected and switched on; off means plug out
 * @param mainsVolts r.m.s.
 * @param seriesLampWatts wattage of a lamp in the mains lead; null for none
 * @param pulledFuses fuses taken out
 * @param unplugged connectors pulled off
 * @param liftedPins pins unsoldered
 * @param clips clip leads
 * @param heldOn coils, lamps or logic outputs held on
 * @param switches switches by name, true = closed
 * @param charged voltage [V] of capacitors charged beforehand, by name; with the power off only
 * @param pulsedSeconds drivers switched on for a while [s], by coil, lamp or logic output; readings are those at rest
 * @param mainsHertz frequency of the mains, or of the source that stands for them [Hz]; null for the circuit's
 */
public record Arrangement(
        String name,
        boolean powerOn,
        double mainsVolts,
        @Nullable Double seriesLampWatts,
        List<String> pulledFuses,
        List<String> unplugged,
        List<String> liftedPins,
        List<BenchSetting.Clip> clips,
        List<String> heldOn,
        Map<String, Boolean> switches,
        Map<String, Double> charged,
        Map<String, Double> pulsedSeconds,
        @Nullable Double mainsHertz) {
    /** Copies what can change. */
    public Arrangement {
        pulledFuses = List.copyOf(pulledFuses);
        unplugged = List.copyOf(unplugged);
        liftedPins = List.copyOf(liftedPins);
        clips = List.copyOf(clips);
        heldOn = List.copyOf(heldOn);
        switches = Map.copyOf(switches);
        charged = Map.copyOf(charged);
        pulsedSeconds = Map.copyOf(pulsedSeconds);
    }

    /**
     * A setting of the circuit file.
     *
     * @throws UnfitArrangement where it names what the circuit does not have; all of it is told, with what comes nearest
     */
    public static Arrangement of(Circuit circuit, BenchSetting setting) throws UnfitArrangement {
        Quantity volts = setting.mainsVolts();
        Quantity watts = setting.seriesLampWatts();
        Map<String, Double> charged = new LinkedHashMap<>();
        setting.charged().forEach((part, at) -> charged.put(part, at.si()));
        Map<String, Double> pulsed = new LinkedHashMap<>();
        setting.pulsed().forEach((driven, seconds) -> pulsed.put(driven, seconds.si()));
        Quantity hertz = setting.mainsHertz();
        Arrangement arrangement = new Arrangement(
                setting.name(),
                setting.powerOn(),
                volts == null ? circuit.mains().volts().si() : volts.si(),
                watts == null ? null : watts.si(),
                setting.pulledFuses(),
                setting.unplugged(),
                setting.liftedPins(),
                setting.clips(),
                setting.heldOn(),
                setting.switches(),
                charged,
                pulsed,
                hertz == null ? null : hertz.si());
        arrangement.appliedTo(circuit);
        return arrangement;
    }

    /** Everything as drawn, plug in, mains at its nominal voltage. */
    public static Arrangement powered(Circuit circuit) {
        return plain("power on", true, circuit.mains().volts().si());
    }

    /** Everything as drawn, plug out. */
    public static Arrangement unpowered() {
        return plain("power off", false, 0);
    }

    private static Arrangement plain(String name, boolean powerOn, double mainsVolts) {
        return new Arrangement(
                name,
                powerOn,
                mainsVolts,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                null);
    }

    /** The same under another name. */
    public Arrangement withName(String newName) {
        return copy(newName).done();
    }

    /** Supply and charges alone, for a circuit on which all deeds are done; pulses, which are no deeds, are left out. */
    public Arrangement withoutDeeds() {
        Copy supply = new Copy(plain(name, powerOn, mainsVolts), name).lamp(seriesLampWatts);
        supply.charged.putAll(charged);
        return supply.done();
    }

    /**
     * The circuit at the arranged frequency, with fuses pulled, connectors off, pins lifted, clips laid, drivers held and switches set.
     *
     * @throws UnfitArrangement where the arrangement names what the circuit does not have; all of it is told
     */
    public Circuit appliedTo(Circuit circuit) throws UnfitArrangement {
        return new BenchWork(circuit, this).done();
    }

    /** Frequency of what feeds a circuit [Hz]. */
    public double hertz(Circuit circuit) {
        return mainsHertz == null ? circuit.mains().hertz().si() : mainsHertz;
    }

    /** What feeds the circuit. */
    public Conditions conditions() {
        return new Conditions(powerOn, powerOn ? mainsVolts : 0, seriesLampWatts);
    }

    /** The same with the plug in or out. */
    public Arrangement withPower(boolean on) {
        return copy(changed(on ? "power on" : "power off")).power(on).done();
    }

    /** The same with another mains voltage [V r.m.s.]. */
    public Arrangement withMainsVolts(double volts) {
        return copy(changed("mains " + volts + " V")).mains(volts).done();
    }

    /** The same at another frequency [Hz]; null for the circuit's. */
    public Arrangement withMainsHertz(@Nullable Double hertz) {
        return copy(changed(hertz == null ? "mains frequency" : "at " + hertz + " Hz"))
                .hertz(hertz)
                .done();
    }

    /** The same with a lamp of so many watts in the live conductor; null for none. */
    public Arrangement withSeriesLamp(@Nullable Double watts) {
        return copy(changed(watts == null ? "no series lamp" : "series lamp " + watts + " W"))
                .lamp(watts)
                .done();
    }

    /** The same with one more fuse out of its clips. */
    public Arrangement withPulledFuse(String fuse) {
        Copy copy = copy(changed(fuse + " pulled"));
        copy.pulledFuses.add(fuse);
        return copy.done();
    }

    /** The same with one more connector off. */
    public Arrangement withUnplugged(String connector) {
        Copy copy = copy(changed(connector + " off"));
        copy.unplugged.add(connector);
        return copy.done();
    }

    /** The same with one more pin unsoldered, {@code BR201.ac1}. */
    public Arrangement withLiftedPin(String pin) {
        Copy copy = copy(changed(pin + " lifted"));
        copy.liftedPins.add(pin);
        return copy.done();
    }

    /** The same with one more clip lead. */
    public Arrangement withClip(String from, String to) {
        Copy copy = copy(changed("clip from " + from + " to " + to));
        copy.clips.add(new BenchSetting.Clip(from, to));
        return copy.done();
    }

    /** The same with one more coil, lamp or logic output held on. */
    public Arrangement withHeldOn(String driven) {
        Copy copy = copy(changed(driven + " held on"));
        copy.heldOn.add(driven);
        return copy.done();
    }

    /** The same with a switch closed or open. */
    public Arrangement withSwitch(String switchName, boolean closed) {
        Copy copy = copy(changed(switchName + (closed ? " closed" : " open")));
        copy.switches.put(switchName, closed);
        return copy.done();
    }

    /** The same with a capacitor charged beforehand to so many volts, plus or first pin against the other. */
    public Arrangement withCharged(String capacitor, double volts) {
        Copy copy = copy(changed(capacitor + " charged to " + volts + " V"));
        copy.charged.put(capacitor, volts);
        return copy.done();
    }

    /** The same with a coil, a lamp or a logic output switched on for a while [s]. */
    public Arrangement withPulse(String driven, double seconds) {
        Copy copy = copy(changed(driven + " pulsed"));
        copy.pulsedSeconds.put(driven, seconds);
        return copy.done();
    }

    private String changed(String change) {
        return name.isEmpty() ? change : name + ", " + change;
    }

    private Copy copy(String newName) {
        return new Copy(this, newName);
    }

    /** A copy on which one change is being made. */
    private static final class Copy {
        private final String name;
        private boolean powerOn;
        private double mainsVolts;
        private @Nullable Double seriesLampWatts;
        private final List<String> pulledFuses;
        private final List<String> unplugged;
        private final List<String> liftedPins;
        private final List<BenchSetting.Clip> clips;
        private final List<String> heldOn;
        private final Map<String, Boolean> switches;
        private final Map<String, Double> charged;
        private final Map<String, Double> pulsedSeconds;
        private @Nullable Double mainsHertz;

        Copy(Arrangement of, String name) {
            this.name = name;
            this.powerOn = of.powerOn;
            this.mainsVolts = of.mainsVolts;
            this.seriesLampWatts = of.seriesLampWatts;
            this.pulledFuses = new ArrayList<>(of.pulledFuses);
            this.unplugged = new ArrayList<>(of.unplugged);
            this.liftedPins = new ArrayList<>(of.liftedPins);
            this.clips = new ArrayList<>(of.clips);
            this.heldOn = new ArrayList<>(of.heldOn);
            this.switches = new LinkedHashMap<>(of.switches);
            this.charged = new LinkedHashMap<>(of.charged);
            this.pulsedSeconds = new LinkedHashMap<>(of.pulsedSeconds);
            this.mainsHertz = of.mainsHertz;
        }

        Copy power(boolean on) {
            powerOn = on;
            return this;
        }

        Copy mains(double volts) {
            mainsVolts = volts;
            return this;
        }

        Copy hertz(@Nullable Double hertz) {
            mainsHertz = hertz;
            return this;
        }

        Copy lamp(@Nullable Double watts) {
            seriesLampWatts = watts;
            return this;
        }

        Arrangement done() {
            return new Arrangement(
                    name,
                    powerOn,
                    mainsVolts,
                    seriesLampWatts,
                    pulledFuses,
                    unplugged,
                    liftedPins,
                    clips,
                    heldOn,
                    switches,
                    charged,
                    pulsedSeconds,
                    mainsHertz);
        }
    }
}
