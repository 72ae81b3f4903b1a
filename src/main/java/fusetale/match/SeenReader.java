package fusetale.match;

import fusetale.bench.Observation.Aspect;
import fusetale.bench.Observation.Sight;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Controller;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.Part;
import fusetale.circuit.Relay;
import fusetale.explore.Words;
import fusetale.quantity.Spelling;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cells of a row that tell what was seen, heard or felt. */
record SeenReader(Circuit circuit) {
    private static final Words WORDS = Words.of(SeenReader.class);

    /** {@code stops at 2}, {@code 2 of 4 lamps}, {@code stops at 2 of 4, before solenoid rail}. */
    private static final Pattern COUNTED = Pattern.compile(
            "(?:(?:stops|stuck|hangs) )?(?:(?:at|after) )?(\\d{1,3})(?: ?(?:of|/) ?(\\d{1,3}))?(?: lamps?)?(?:, before .*)?");

    /** The part of which something was noticed. */
    String part(Aspect aspect, String cell) throws RowException {
        List<String> fitting = fitting(aspect);
        if (cell.isEmpty() && aspect == Aspect.START_UP && fitting.size() == 1) {
            return fitting.get(0);
        }
        if (cell.isEmpty()) {
            throw new RowException(Column.FROM, WORDS.say("looked.nowhere", aspect.words()));
        }
        List<String> all =
                new ArrayList<>(circuit.parts().stream().map(Part::name).toList());
        all.addAll(fitting);
        String name = ReadingsReader.named(cell, all);
        if (!fitting.contains(name)) {
            throw new RowException(
                    Column.FROM,
                    WORDS.say("looked.other", name, aspect.words()),
                    fitting.isEmpty() ? "" : String.join(", ", fitting.subList(0, Math.min(8, fitting.size()))),
                    "");
        }
        return name;
    }

    private List<String> fitting(Aspect aspect) {
        List<String> names = new ArrayList<>(circuit.parts().stream()
                .filter(p -> fits(aspect, p))
                .map(Part::name)
                .toList());
        if (aspect == Aspect.HEAT) {
            circuit.connectors().forEach(c -> c.pins().forEach(p -> names.add(c.name() + "." + p.label())));
        }
        return names;
    }

    private static boolean fits(Aspect aspect, Part part) {
        return switch (aspect) {
            case FUSE, RATING -> part instanceof Fuse;
            case LAMP -> part instanceof Lamp;
            case COIL -> part instanceof Coil || part instanceof Relay || part instanceof DualCoil;
            case START_UP -> part instanceof Controller;
            case HUM -> part instanceof Electrolytic;
            case HEAT -> true;
        };
    }

    /**
     * What was noticed.
     *
     * @param part of which; empty where that was not understood
     */
    Shown.Seen shown(Aspect aspect, String part, String cell) throws RowException {
        if (aspect == Aspect.START_UP) {
            Matcher counted = COUNTED.matcher(SightWords.plain(cell));
            if (counted.matches()) {
                return counted(part, Integer.parseInt(counted.group(1)), counted.group(2), cell);
            }
        }
        return SightWords.sight(aspect, cell)
                .map(Shown.Seen::new)
                .orElseThrow(() -> new RowException(
                        Column.VALUE,
                        WORDS.say("no-sight", cell, aspect.words()),
                        String.join("; ", SightWords.allowed(aspect)),
                        Spelling.nearestIfAny(cell, SightWords.allowed(aspect))));
    }

    private Shown.Seen counted(String part, int lamps, String ofWritten, String cell) throws RowException {
        int of = circuit.part(part).map(p -> ((Controller) p).checks().size()).orElse(0);
        boolean other = ofWritten != null && Integer.parseInt(ofWritten) != of;
        if (!part.isEmpty() && (lamps > of || other)) {
            throw new RowException(Column.VALUE, WORDS.say("counted", cell, part, of));
        }
        return lamps == of ? new Shown.Seen(Sight.STARTS) : new Shown.Seen(Sight.STOPS, lamps);
    }
}
