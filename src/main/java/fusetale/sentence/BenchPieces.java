package fusetale.sentence;

import fusetale.bench.Arrangement;
import fusetale.circuit.BenchSetting;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The pieces of a sentence that tell how the bench is set, in their order and without the words between them. */
final class BenchPieces {
    private final List<Piece> pieces = new ArrayList<>();

    private BenchPieces() {}

    /**
     * Those of an arrangement.
     *
     * @param nominalVolts mains voltage that goes without saying [V r.m.s.]
     */
    static List<Piece> of(Arrangement a, double nominalVolts) {
        BenchPieces all = new BenchPieces();
        String power = a.powerOn() ? "Power on" : "Power off";
        all.pieces.add(new Piece(Piece.Kind.POWER, power, a.powerOn() ? "power on" : "power off", 0));
        if (a.mainsVolts() != nominalVolts) {
            String mains = "mains " + said(a.mainsVolts(), Unit.VOLT);
            all.pieces.add(new Piece(Piece.Kind.MAINS, mains, mains, 0));
        }
        Double hertz = a.mainsHertz();
        if (hertz != null) {
            String at = "at " + said(hertz, Unit.HERTZ);
            all.add(Piece.Kind.HERTZ, at, at);
        }
        a.pulledFuses().forEach(f -> all.add(Piece.Kind.PULLED, f + " pulled", "pull " + f));
        a.unplugged().forEach(c -> all.add(Piece.Kind.UNPLUGGED, c + " unplugged", "unplug " + c));
        a.liftedPins().forEach(p -> all.add(Piece.Kind.LIFTED, p + " lifted", "lift " + p));
        for (BenchSetting.Clip clip : a.clips()) {
            String ends = clip.from() + " to " + clip.to();
            all.add(Piece.Kind.CLIP, "a clip lead from " + ends, "clip " + ends);
        }
        Double watts = a.seriesLampWatts();
        if (watts != null) {
            String lamp = said(watts, Unit.WATT);
            all.add(Piece.Kind.LAMP, SwapWords.withArticle(lamp) + " lamp in series", "lamp " + lamp);
        }
        a.heldOn().forEach(h -> all.add(Piece.Kind.HELD, h + " held on", "hold " + h));
        for (Map.Entry<String, Double> pulse : sorted(a.pulsedSeconds()).entrySet()) {
            String time = said(pulse.getValue(), Unit.SECOND);
            all.add(
                    Piece.Kind.PULSED,
                    pulse.getKey() + " pulsed for " + time,
                    "pulse " + pulse.getKey() + " for " + time);
        }
        for (Map.Entry<String, Boolean> position : sorted(a.switches()).entrySet()) {
            String set = position.getKey() + (position.getValue() ? " closed" : " open");
            all.add(Piece.Kind.SWITCH, set, set);
        }
        for (Map.Entry<String, Double> charge : sorted(a.charged()).entrySet()) {
            String volts = charge.getKey() + " charged to " + said(charge.getValue(), Unit.VOLT);
            all.add(Piece.Kind.CHARGED, volts, "charge " + volts.replace(" charged to", ""));
        }
        return all.pieces;
    }

    private void add(Piece.Kind kind, String text, String compact) {
        int index = (int) pieces.stream().filter(p -> p.kind() == kind).count();
        pieces.add(new Piece(kind, text, compact, index));
    }

    private static <V> Map<String, V> sorted(Map<String, V> map) {
        Map<String, V> sorted = new TreeMap<>(NaturalOrder.NAMES);
        sorted.putAll(map);
        return sorted;
    }

    private static String said(double si, Unit unit) {
        return SentencePrinter.said(new Quantity(si, unit));
    }
}
