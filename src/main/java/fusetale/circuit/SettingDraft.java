package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An arrangement as the file says it, before its names are looked up.
 *
 * @param name its key
 * @param powerOn whether the mains is connected
 * @param mainsVolts mains voltage where not nominal
 * @param seriesLampWatts wattage of a lamp in the mains lead
 * @param names names that must be found, by key
 * @param clips clip leads
 * @param switches switches, true = closed
 * @param charged voltages of capacitors charged beforehand
 * @param pulsed drivers switched on for a while
 * @param mainsHertz frequency of the mains where not the file's
 */
record SettingDraft(
        String name,
        boolean powerOn,
        @Nullable Quantity mainsVolts,
        @Nullable Quantity seriesLampWatts,
        Map<String, List<Located.Text>> names,
        List<List<Located.Text>> clips,
        List<Declared<Boolean>> switches,
        List<Declared<Quantity>> charged,
        List<Declared<Quantity>> pulsed,
        @Nullable Quantity mainsHertz) {
    private static final Key<Boolean> POWER = Key.required("power", Forms.choice(onOff()), "mains connected or not");
    private static final Key<Quantity> MAINS = Key.optional(
            "mains", Amounts.within(Unit.VOLT, 1e-3, BenchSetting.MOST_MAINS_VOLTS), "mains voltage where not nominal");
    private static final Key<Quantity> LAMP = Key.optional(
            "series lamp",
            Amounts.within(Unit.WATT, 1e-3, BenchSetting.MOST_LAMP_WATTS),
            "wattage of a lamp in the mains lead");
    static final Key<List<Located.Text>> PULLED = names("pulled", "a fuse", "fuses taken out of their clips");
    static final Key<List<Located.Text>> UNPLUGGED = names("unplugged", "a connector", "connectors pulled off");
    static final Key<List<Located.Text>> LIFTED =
            names("lifted", "PART.pin or CONNECTOR.pin", "pins unsoldered, as BR201.ac1");
    static final Key<List<Located.Text>> HELD_ON =
            names("held on", "a coil, a lamp or a logic output", "drivers held on");
    private static final Key<List<List<Located.Text>>> CLIPS = Key.optional(
            "clips",
            new ListForm<>("[point, point]", new ListForm<>("a point", Forms.RAW, 2, 2), 0, 99),
            "clip leads, each between two points");
    private static final Key<List<Declared<Boolean>>> SWITCHES = Key.optional(
            "switches", new NamedForm<>(NameForm.PART, Forms.choice(openClosed()), false), "switches: {S1: open}");

    private static final Key<List<Declared<Quantity>>> CHARGED = Key.optional(
            "charged",
            new NamedForm<>(NameForm.PART, Amounts.signed(Unit.VOLT, BenchSetting.MOST_CHARGE_VOLTS), false),
            "capacitors charged beforehand, with the power off: {C101: 8 V}");
    private static final Key<List<Declared<Quantity>>> PULSED = Key.optional(
            "pulsed",
            new NamedForm<>(
                    NameForm.PART,
                    Amounts.within(
                            Unit.SECOND, BenchSetting.SHORTEST_PULSE_SECONDS, BenchSetting.LONGEST_PULSE_SECONDS),
                    false),
            "drivers switched on for a while: {L1: 40 ms}");

    private static final Key<Quantity> HERTZ = Key.optional(
            "hertz",
            Amounts.within(Unit.HERTZ, Mains.LOWEST_HERTZ, Mains.HIGHEST_HERTZ),
            "frequency where not that of the mains, as of a signal generator");

    private static final Shape<SettingDraft> SHAPE = new Shape<>(
            "an arrangement",
            "One way to set the bench.",
            List.of(POWER, MAINS, LAMP, PULLED, UNPLUGGED, LIFTED, CLIPS, HELD_ON, SWITCHES, CHARGED, PULSED, HERTZ),
            SettingDraft::of);

    /** An arrangement is taken as far as it can be read, so that its names are looked up in the same go. */
    static final Form<SettingDraft> FORM = new Form<>() {
        @Override
        public @Nullable SettingDraft read(Located item, Spot spot) {
            return item instanceof Located.Table table ? of(SHAPE.readValues(table, spot)) : SHAPE.read(item, spot);
        }

        @Override
        public Json schema(Dialect dialect) {
            return SHAPE.schema(dialect);
        }
    };

    private static SettingDraft of(Values v) {
        Map<String, List<Located.Text>> names = new LinkedHashMap<>();
        for (Key<List<Located.Text>> key : List.of(PULLED, UNPLUGGED, LIFTED, HELD_ON)) {
            names.put(key.name(), MachineForms.orEmpty(v.find(key)));
        }
        return new SettingDraft(
                v.name(),
                Boolean.TRUE.equals(v.find(POWER)),
                v.find(MAINS),
                v.find(LAMP),
                names,
                MachineForms.orEmpty(v.find(CLIPS)),
                MachineForms.orEmpty(v.find(SWITCHES)),
                MachineForms.orEmpty(v.find(CHARGED)),
                MachineForms.orEmpty(v.find(PULSED)),
                v.find(HERTZ));
    }

    private static Key<List<Located.Text>> names(String key, String each, String doc) {
        return Key.optional(key, new ListForm<>(each, Forms.RAW, 0, 999), doc);
    }

    private static Map<String, Boolean> onOff() {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put("on", true);
        words.put("off", false);
        return words;
    }

    private static Map<String, Boolean> openClosed() {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put("open", false);
        words.put("closed", true);
        return words;
    }

    List<Located.Text> names(Key<List<Located.Text>> key) {
        return names.getOrDefault(key.name(), List.of());
    }

    BenchSetting setting() {
        Map<String, Boolean> positions = new LinkedHashMap<>();
        for (Declared<Boolean> each : switches) {
            positions.put(each.name(), Boolean.TRUE.equals(each.value()));
        }
        Map<String, Quantity> volts = new LinkedHashMap<>();
        for (Declared<Quantity> each : charged) {
            Quantity value = each.value();
            if (value != null) {
                volts.put(each.name(), value);
            }
        }
        Map<String, Quantity> pulses = new LinkedHashMap<>();
        for (Declared<Quantity> each : pulsed) {
            Quantity seconds = each.value();
            if (seconds != null) {
                pulses.put(each.name(), seconds);
            }
        }
        return new BenchSetting(
                name,
                powerOn,
                mainsVolts,
                seriesLampWatts,
                texts(PULLED),
                texts(UNPLUGGED),
                texts(LIFTED),
                clips.stream()
                        .map(c ->
                                new BenchSetting.Clip(c.get(0).text(), c.get(1).text()))
                        .toList(),
                texts(HELD_ON),
                positions,
                volts,
                pulses,
                mainsHertz);
    }

    private List<String> texts(Key<List<Located.Text>> key) {
        return names(key).stream().map(Located.Text::text).toList();
    }
}
