package fusetale.circuit;

import fusetale.circuit.MeterModel.AmpsRange;
import fusetale.circuit.MeterModel.OhmsRange;
import fusetale.circuit.MeterModel.Range;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How meters are written: reader and JSON Schema of their part file. */
final class MeterForms {
    private static final int MOST_RANGES = 20;
    private static final int MOST_COUNTS = 999;

    private static final Key<MeterModel.Display> DISPLAY =
            Key.required("display", Forms.choice(MeterModel.Display.class), "figures, or a needle before scales");
    private static final Key<Boolean> RANGING =
            Key.required("ranging", Forms.choice(words("auto", "by hand")), "who picks the range");
    private static final Key<Quantity> LEADS =
            Key.required("leads", Amounts.within(Unit.OHM, 1e-3, 10), "resistance of both test leads together");
    private static final Key<List<String>> SOURCES = Key.required(
            "sources",
            new ListForm<>("a text", Forms.TEXT, 1, 99),
            "where each figure is from; 'from memory' or 'common practice' where that is what it is");

    private static final Key<Quantity> INPUT =
            Key.optional("input", Amounts.within(Unit.OHM, 1e3, 1e11), "input resistance, the same on every range");
    private static final Key<Quantity> PER_VOLT =
            Key.optional("per volt", Amounts.within(Unit.OHM, 100, 10e6), "input resistance per volt of full scale");
    private static final Key<MeterModel.Detector> DETECTOR =
            Key.required("detector", Forms.choice(detectors()), "what it makes of the wave");
    private static final Key<Boolean> COUPLED =
            Key.required("coupled", Forms.TRUTH, "whether a capacitor keeps steady voltage out");
    private static final Key<List<Range>> VOLT_RANGES = ranges(new RangeRow(Unit.VOLT));

    private static final Form<MeterModel.Volts> DIRECT = new Shape<>(
            "d.c. volts of a meter", "D.c. volts.", List.of(INPUT, PER_VOLT, VOLT_RANGES), MeterForms::volts);
    private static final Form<Alternate> ALTERNATING = new Shape<>(
            "a.c. volts of a meter",
            "A.c. volts.",
            List.of(DETECTOR, COUPLED, INPUT, PER_VOLT, VOLT_RANGES),
            MeterForms::alternate);

    private static final Key<Quantity> OPEN =
            Key.required("open", Amounts.within(Unit.VOLT, 0.1, 50), "voltage of the open leads");
    private static final Key<Quantity> SHORTED =
            Key.required("shorted", Amounts.within(Unit.AMPERE, 1e-9, 1), "current through shorted leads");
    private static final Key<Boolean> POSITIVE =
            Key.required("positive", Forms.choice(words("red", "black")), "which lead is the positive one");
    private static final Key<Quantity> STANDS =
            Key.required("stands", Amounts.within(Unit.VOLT, 10, 10e3), "voltage between the leads that it survives");
    private static final Key<List<OhmsRange>> OHMS_RANGES = ranges(new OhmsRow());
    private static final Form<MeterModel.Ohms> OHMS = new Shape<>(
            "ohms of a meter",
            "Ohms.",
            List.of(POSITIVE, STANDS, OHMS_RANGES),
            v -> new MeterModel.Ohms(
                    v.get(OHMS_RANGES), v.get(POSITIVE), v.get(STANDS).si()));

    private static final Key<Range> DIODE_RANGE = Key.required("range", new RangeRow(Unit.VOLT), RangeRow.WORDS);
    private static final Form<MeterModel.DiodeTest> DIODE = new Shape<>(
            "the diode test of a meter",
            "Diode test.",
            List.of(DIODE_RANGE, OPEN, SHORTED),
            v -> new MeterModel.DiodeTest(
                    v.get(DIODE_RANGE), v.get(OPEN).si(), v.get(SHORTED).si()));

    private static final Key<Quantity> BELOW =
            Key.required("below", Amounts.within(Unit.OHM, 0.1, 1e4), "it sounds below this resistance");
    private static final Form<MeterModel.Continuity> CONTINUITY = new Shape<>(
            "the buzzer of a meter",
            "Continuity.",
            List.of(BELOW, OPEN, SHORTED),
            v -> new MeterModel.Continuity(
                    v.get(BELOW).si(), v.get(OPEN).si(), v.get(SHORTED).si()));

    private static final Key<List<AmpsRange>> AMPS_RANGES = ranges(new AmpsRow());
    private static final Form<List<AmpsRange>> AMPS =
            new Shape<>("d.c. amps of a meter", "D.c. amps.", List.of(AMPS_RANGES), v -> v.get(AMPS_RANGES));

    private static final Key<MeterModel.Volts> DIRECT_VOLTS =
            Key.required(MeterFunction.DC_VOLTS.words(), DIRECT, "d.c. volts: {input, ranges}");
    private static final Key<Alternate> ALTERNATING_VOLTS =
            Key.required(MeterFunction.AC_VOLTS.words(), ALTERNATING, "a.c. volts: {detector, coupled, input, ranges}");
    private static final Key<MeterModel.Ohms> OF_OHMS =
            Key.required(MeterFunction.OHMS.words(), OHMS, "ohms: {positive, stands, ranges}");
    private static final Key<MeterModel.DiodeTest> DIODE_TEST =
            Key.optional(MeterFunction.DIODE_TEST.words(), DIODE, "diode test: {range, open, shorted}");
    private static final Key<MeterModel.Continuity> BUZZER =
            Key.optional(MeterFunction.CONTINUITY.words(), CONTINUITY, "continuity: {below, open, shorted}");
    private static final Key<List<AmpsRange>> DIRECT_AMPS =
            Key.optional(MeterFunction.DC_AMPS.words(), AMPS, "d.c. amps: {ranges}");

    static final Form<MeterModel> METER = new Shape<>(
            "a meter",
            "A multimeter as its sheet describes it.",
            List.of(
                    DISPLAY,
                    RANGING,
                    DIRECT_VOLTS,
                    ALTERNATING_VOLTS,
                    OF_OHMS,
                    DIODE_TEST,
                    BUZZER,
                    DIRECT_AMPS,
                    LEADS,
                    SOURCES),
            v -> new MeterModel(
                    v.name(),
                    v.get(DISPLAY),
                    v.get(RANGING),
                    v.get(ALTERNATING_VOLTS).how(),
                    v.get(DIRECT_VOLTS),
                    v.get(ALTERNATING_VOLTS).volts(),
                    v.get(OF_OHMS),
                    v.find(DIODE_TEST),
                    v.find(BUZZER),
                    MachineForms.orEmpty(v.find(DIRECT_AMPS)),
                    v.get(LEADS).si(),
                    v.get(SOURCES)));

    private MeterForms() {}

    /** A.c. volts as the file says them. */
    private record Alternate(MeterModel.Alternating how, MeterModel.Volts volts) {}

    private static Map<String, Boolean> words(String yes, String no) {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put(yes, true);
        words.put(no, false);
        return words;
    }

    private static Map<String, MeterModel.Detector> detectors() {
        Map<String, MeterModel.Detector> words = new LinkedHashMap<>();
        words.put("true rms", MeterModel.Detector.TRUE_RMS);
        words.put("average-responding", MeterModel.Detector.AVERAGE_RESPONDING);
        words.put("half-wave", MeterModel.Detector.HALF_WAVE);
        return words;
    }

    private static <R> Key<List<R>> ranges(Form<R> row) {
        return Key.required("ranges", new ListForm<>("a range", row, 1, MOST_RANGES), "ranges, the lowest first");
    }

    private static MeterModel.@Nullable Volts volts(Values v) {
        Quantity fixed = v.find(INPUT);
        Quantity perVolt = v.find(PER_VOLT);
        if (fixed == null && perVolt == null) {
            v.error(VOLT_RANGES, "an input resistance is missing", "input: 10 Mohm, or per volt: 20 kohm", "");
            return null;
        }
        MeterModel.Input input =
                new MeterModel.Input(fixed == null ? 0 : fixed.si(), perVolt == null ? 0 : perVolt.si());
        return new MeterModel.Volts(input, v.get(VOLT_RANGES));
    }

    private static @Nullable Alternate alternate(Values v) {
        MeterModel.Volts volts = volts(v);
        return volts == null ? null : new Alternate(new MeterModel.Alternating(v.get(DETECTOR), v.get(COUPLED)), volts);
    }

    /**
     * What every row begins with: full scale, last digit, and the accuracy either as share of the reading and counts or, of a
     * needle, as a share of full scale.
     *
     * @param amount form of an amount in the range's unit
     */
    private record RangeStart(Form<Quantity> amount) {
        private static final Form<Quantity> SHARE = Amounts.positive(Unit.RATIO);
        private static final Form<Integer> COUNTS = Forms.integer(0, MOST_COUNTS);

        @Nullable
        Range read(List<Located> items, Place place, boolean counted, Spot spot) {
            Quantity full = amount.read(items.get(0), spot);
            Quantity step = amount.read(items.get(1), spot);
            Quantity share = SHARE.read(items.get(2), spot);
            Integer counts = counted ? COUNTS.read(items.get(3), spot) : Integer.valueOf(0);
            if (full == null || step == null || share == null || counts == null) {
                return null;
            }
            if (step.si() > full.si()) {
                spot.error(place, "the last digit is larger than full scale", "[full scale, last digit, ...]", "");
                return null;
            }
            return new Range(full.si(), step.si(), counted ? share.si() : 0, counted ? 0 : share.si(), counts);
        }

        List<Json> schema(boolean counted, Form.Dialect dialect) {
            List<Json> items =
                    new ArrayList<>(List.of(amount.schema(dialect), amount.schema(dialect), SHARE.schema(dialect)));
            if (counted) {
                items.add(COUNTS.schema(dialect));
            }
            return items;
        }
    }

    private static Json row(List<Json> items) {
        return Json.of("type", "array")
                .with("prefixItems", new ArrayList<Object>(items))
                .with("minItems", items.size())
                .with("maxItems", items.size());
    }

    /** Either of two rows. */
    private static Json either(List<Json> counted, List<Json> needle) {
        return Json.of("anyOf", new ArrayList<Object>(List.of(row(counted), row(needle))));
    }

    /** The items of a row where it has one of two lengths, else a problem and null. */
    private static @Nullable List<Located> items(Located item, int counted, String allowed, Spot spot) {
        if (item instanceof Located.Row row
                && (row.items().size() == counted || row.items().size() == counted - 1)) {
            return row.items();
        }
        spot.error(item.place(), item.what() + " stands here", allowed, "");
        return null;
    }

    /** {@code [39.99 V, 10 mV, 0.5 %, 2]}, or of a needle {@code [50 V, 0.5 V, 3 %]}. */
    private static final class RangeRow implements Form<Range> {
        static final String WORDS =
                "[full scale, last digit, share of reading, counts]; of a needle [full scale, readable, share of full scale]";
        private final RangeStart start;

        RangeRow(Unit unit) {
            this.start = new RangeStart(Amounts.positive(unit));
        }

        @Override
        public @Nullable Range read(Located item, Spot spot) {
            List<Located> items = items(item, 4, WORDS, spot);
            return items == null ? null : start.read(items, item.place(), items.size() == 4, spot);
        }

        @Override
        public Json schema(Dialect dialect) {
            return either(start.schema(true, dialect), start.schema(false, dialect));
        }
    }

    /** A range with volts and amperes behind it: {@code [399.9 ohm, 0.1 ohm, 0.8 %, 2, 3.2 V, 1 mA]}. */
    private static final class OhmsRow implements Form<OhmsRange> {
        private static final String WORDS =
                "[full scale, last digit, share of reading, counts, open volts, shorted amps];"
                        + " of a needle [last mark, readable share of the arc, share of the arc, open volts, shorted amps]";
        private static final int COUNTED = 6;
        private final Form<Quantity> ohms = Amounts.positive(Unit.OHM);
        private final RangeStart start = new RangeStart(ohms);
        private final Form<Quantity> volts = Amounts.positive(Unit.VOLT);
        private final Form<Quantity> amps = Amounts.positive(Unit.AMPERE);

        @Override
        public @Nullable OhmsRange read(Located item, Spot spot) {
            List<Located> items = items(item, COUNTED, WORDS, spot);
            if (items == null) {
                return null;
            }
            Range range = items.size() == COUNTED ? start.read(items, item.place(), true, spot) : needle(items, spot);
            Quantity open = volts.read(items.get(items.size() - 2), spot);
            Quantity shorted = amps.read(items.get(items.size() - 1), spot);
            return range == null || open == null || shorted == null
                    ? null
                    : new OhmsRange(range, open.si(), shorted.si());
        }

        @Override
        public Json schema(Dialect dialect) {
            List<Json> needle = new ArrayList<>(
                    List.of(ohms.schema(dialect), RangeStart.SHARE.schema(dialect), RangeStart.SHARE.schema(dialect)));
            return either(full(start.schema(true, dialect), dialect), full(needle, dialect));
        }

        private @Nullable Range needle(List<Located> items, Spot spot) {
            Quantity last = ohms.read(items.get(0), spot);
            Quantity readable = RangeStart.SHARE.read(items.get(1), spot);
            Quantity share = RangeStart.SHARE.read(items.get(2), spot);
            return last == null || readable == null || share == null
                    ? null
                    : new Range(last.si(), readable.si() * last.si(), 0, share.si(), 0);
        }

        private List<Json> full(List<Json> items, Dialect dialect) {
            items.add(volts.schema(dialect));
            items.add(amps.schema(dialect));
            return items;
        }
    }

    /** A range with its burden behind it: {@code [399.9 mA, 0.1 mA, 1 %, 3, 1.5 ohm]}. */
    private static final class AmpsRow implements Form<AmpsRange> {
        private static final String WORDS = "[full scale, last digit, share of reading, counts, burden];"
                + " of a needle [full scale, readable, share of full scale, burden]";
        private static final int COUNTED = 5;
        private final RangeStart start = new RangeStart(Amounts.positive(Unit.AMPERE));
        private final Form<Quantity> burden = Amounts.positive(Unit.OHM);

        @Override
        public @Nullable AmpsRange read(Located item, Spot spot) {
            List<Located> items = items(item, COUNTED, WORDS, spot);
            if (items == null) {
                return null;
            }
            Range range = start.read(items, item.place(), items.size() == COUNTED, spot);
            Quantity ohms = burden.read(items.get(items.size() - 1), spot);
            return range == null || ohms == null ? null : new AmpsRange(range, ohms.si());
        }

        @Override
        public Json schema(Dialect dialect) {
            return either(full(start.schema(true, dialect), dialect), full(start.schema(false, dialect), dialect));
        }

        private List<Json> full(List<Json> items, Dialect dialect) {
            items.add(burden.schema(dialect));
            return items;
        }
    }
}
