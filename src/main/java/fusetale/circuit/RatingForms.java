package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How the ratings of a part model are written. */
final class RatingForms {
    private static final Key<Quantity> AVERAGE =
            Key.optional("average current", Amounts.within(Unit.AMPERE, 1e-3, 1e3), "steady current it stands");
    private static final Key<Quantity> SURGE =
            Key.optional("surge current", Amounts.within(Unit.AMPERE, 1e-3, 1e4), "one half-cycle of 60 Hz");
    private static final Key<Quantity> PULSE = Key.optional(
            "pulse",
            Amounts.within(Unit.AMPERE_SQUARED_SECOND, 1e-6, 1e6),
            "I²t for less than a half-cycle, as 3.75 A²s");
    private static final Key<Quantity> INVERSE =
            Key.optional("reverse voltage", Amounts.within(Unit.VOLT, 1, 1e4), "reverse or blocking voltage");
    private static final Key<Quantity> POWER =
            Key.optional("power", Amounts.within(Unit.WATT, 1e-2, 1e3), "dissipation");
    private static final Key<Quantity> TO_AIR = Key.optional(
            "junction to air", Amounts.within(Unit.KELVIN_PER_WATT, 0.5, 2e3), "thermal resistance in free air");
    private static final Key<CaseStyle> CASE = Key.optional(
            "case",
            Forms.choice(cases()),
            "the case, which gives the thermal figures that are left out; left out: by junction to air");
    private static final Key<Quantity> HIGHEST =
            Key.optional("junction temperature", Amounts.within(Unit.CELSIUS, 50, 250), "highest junction temperature");
    private static final Key<Quantity> TO_CASE = Key.optional(
            "junction to case",
            Amounts.within(Unit.KELVIN_PER_WATT, 0.05, 1e3),
            "thermal resistance to the case, or to the lead; of a bridge, one leg's");
    private static final Key<Quantity> JUNCTION_HEAT = Key.optional(
            "junction heat capacity", Amounts.within(Unit.JOULE_PER_KELVIN, 1e-6, 1), "heat capacity of the chip");
    private static final Key<Quantity> CASE_HEAT = Key.optional(
            "case heat capacity", Amounts.within(Unit.JOULE_PER_KELVIN, 1e-3, 1e3), "heat capacity of the case");
    private static final Key<Quantity> AVALANCHE = Key.optional(
            "avalanche energy", Amounts.within(Unit.JOULE, 1e-6, 1e2), "energy of one pulse it stands in breakdown");

    static final Form<Ratings> FORM = new Shape<>(
            "ratings",
            "What the part stands; a figure left out is not known and never exceeded, thermal ones are the case's.",
            List.of(
                    AVERAGE,
                    SURGE,
                    PULSE,
                    INVERSE,
                    POWER,
                    TO_AIR,
                    CASE,
                    HIGHEST,
                    TO_CASE,
                    JUNCTION_HEAT,
                    CASE_HEAT,
                    AVALANCHE),
            RatingForms::ratings);

    private RatingForms() {}

    private static Map<String, CaseStyle> cases() {
        Map<String, CaseStyle> words = new LinkedHashMap<>();
        Arrays.stream(CaseStyle.values()).forEach(c -> words.put(c.words(), c));
        return words;
    }

    /** Nothing known. */
    static Ratings unknown() {
        double none = Double.POSITIVE_INFINITY;
        return new Ratings(none, none, none, none, none, none, List.of());
    }

    private static @Nullable Ratings ratings(Values v) {
        double toAir = known(v, TO_AIR);
        double toCase = known(v, TO_CASE);
        if (Double.isFinite(toAir) && Double.isFinite(toCase) && toCase >= toAir) {
            v.error(
                    TO_CASE,
                    "heat cannot reach the case worse than the air around it",
                    "less than junction to air",
                    "");
            return null;
        }
        return new Ratings(
                known(v, AVERAGE),
                known(v, SURGE),
                known(v, PULSE),
                known(v, INVERSE),
                known(v, POWER),
                toAir,
                known(v, AVALANCHE),
                thermal(v, toAir),
                List.of());
    }

    private static Thermal thermal(Values v, double toAir) {
        CaseStyle style = v.find(CASE);
        Thermal usual = Thermal.of(style == null ? CaseStyle.nearest(toAir) : style);
        Thermal aired = Double.isFinite(toAir) ? usual.withJunctionToAir(toAir) : usual;
        double toCase = or(v, TO_CASE, aired.junctionToCaseKelvinPerWatt());
        double whole = Math.max(aired.junctionToAirKelvinPerWatt(), toCase * 1.5);
        return new Thermal(
                aired.style(),
                or(v, HIGHEST, aired.highestCelsius()),
                toCase,
                (Double.isFinite(toAir) ? toAir : whole) - toCase,
                or(v, JUNCTION_HEAT, aired.junctionJoulesPerKelvin()),
                or(v, CASE_HEAT, aired.caseJoulesPerKelvin()));
    }

    private static double or(Values v, Key<Quantity> key, double usual) {
        Quantity quantity = v.find(key);
        return quantity == null ? usual : quantity.si();
    }

    private static double known(Values v, Key<Quantity> key) {
        return or(v, key, Double.POSITIVE_INFINITY);
    }
}
