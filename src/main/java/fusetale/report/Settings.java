package fusetale.report;

import fusetale.bench.Arrangement;
import fusetale.circuit.BenchSetting;
import fusetale.explore.Question;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How the bench is set, in words. */
public final class Settings {
    private static final Words WORDS = Words.of(Settings.class);

    private Settings() {}

    /** {@code Night Ferry. Power on, mains 120 V, F201 pulled. Meter: true rms 4000-count.} */
    public static String words(Question question) {
        return WORDS.say(
                "setting",
                question.healthy().name(),
                words(question.arrangement()),
                question.meter().words());
    }

    /** What a sentence leaves unsaid: {@code Night Ferry, mains 120 V. Meter: true rms 4000-count.} */
    public static String besideSentence(Question question) {
        Arrangement arrangement = question.arrangement();
        return WORDS.say(
                "setting.beside",
                question.healthy().name(),
                arrangement.powerOn()
                        ? WORDS.say("setting.mains", quantity(arrangement.mainsVolts(), Unit.VOLT))
                        : WORDS.say("setting.plug-out"),
                question.meter().words());
    }

    /** {@code Power on, mains 120 V, F201 pulled}. */
    public static String words(Arrangement a) {
        List<String> words = new ArrayList<>();
        if (a.powerOn()) {
            words.add(WORDS.say("setting.on", quantity(a.mainsVolts(), Unit.VOLT)));
        } else {
            words.add(WORDS.say("setting.off"));
        }
        Double hertz = a.mainsHertz();
        if (hertz != null) {
            words.add(WORDS.say("setting.hertz", quantity(hertz, Unit.HERTZ)));
        }
        Double watts = a.seriesLampWatts();
        if (watts != null) {
            words.add(WORDS.say("setting.lamp", quantity(watts, Unit.WATT)));
        }
        a.pulledFuses().forEach(f -> words.add(WORDS.say("setting.pulled", f)));
        a.unplugged().forEach(c -> words.add(WORDS.say("setting.unplugged", c)));
        a.liftedPins().forEach(p -> words.add(WORDS.say("setting.lifted", p)));
        for (BenchSetting.Clip clip : a.clips()) {
            words.add(WORDS.say("setting.clip", clip.from(), clip.to()));
        }
        a.heldOn().forEach(h -> words.add(WORDS.say("setting.held", h)));
        for (Map.Entry<String, Double> pulse : new TreeMap<>(a.pulsedSeconds()).entrySet()) {
            words.add(WORDS.say("setting.pulsed", pulse.getKey(), quantity(pulse.getValue(), Unit.SECOND)));
        }
        for (Map.Entry<String, Boolean> s : new TreeMap<>(a.switches()).entrySet()) {
            words.add(WORDS.say(s.getValue() ? "setting.closed" : "setting.open", s.getKey()));
        }
        for (Map.Entry<String, Double> c : new TreeMap<>(a.charged()).entrySet()) {
            words.add(WORDS.say("setting.charged", c.getKey(), quantity(c.getValue(), Unit.VOLT)));
        }
        return String.join(", ", words);
    }

    private static String quantity(double si, Unit unit) {
        return Notation.format(new Quantity(si, unit));
    }
}
