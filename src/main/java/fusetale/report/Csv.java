package fusetale.report;

import fusetale.bench.Climbing;
import fusetale.bench.Reading;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Compared;
import fusetale.explore.Outcome;
import fusetale.fault.AmountRange;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.match.Candidate;
import fusetale.sentence.SentencePrinter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Readings and failures as comma-separated values, RFC 4180: values in SI, nothing where a meter shows OL. */
public final class Csv {
    private static final String END = "\r\n";

    private Csv() {}

    /** A healthy machine: a line a reading. */
    public static String readings(Outcome outcome) {
        StringBuilder text =
                new StringBuilder("arrangement,function,from,to,value,unit,low,high,shows,label,climbing" + END);
        for (Compared row : outcome.readings()) {
            text.append(line(
                    outcome.question().arrangement().name(),
                    row.check().function().words(),
                    row.check().from(),
                    row.check().to(),
                    value(row.asBuilt().overRange(), row.asBuilt().value()),
                    row.check().function().unit().symbol(),
                    value(false, row.healthy().low()),
                    value(false, row.healthy().high()),
                    row.asBuilt().shows(),
                    outcome.label(row),
                    climbing(row.asBuilt())));
        }
        return text.toString();
    }

    /** A supposition: a line a reading, most moved first. */
    public static String suppose(Outcome outcome) {
        StringBuilder text = new StringBuilder(
                "arrangement,function,from,to,as built,as supposed,unit,low,high,shows,moved,label,climbing as built,climbing as supposed"
                        + END);
        for (Compared row : outcome.readings()) {
            text.append(line(
                    outcome.question().arrangement().name(),
                    row.check().function().words(),
                    row.check().from(),
                    row.check().to(),
                    value(row.asBuilt().overRange(), row.asBuilt().value()),
                    value(row.asSupposed().overRange(), row.asSupposed().value()),
                    row.check().function().unit().symbol(),
                    value(false, row.healthy().low()),
                    value(false, row.healthy().high()),
                    row.asSupposed().shows(),
                    value(false, row.moved()),
                    outcome.label(row),
                    climbing(row.asBuilt()),
                    climbing(row.asSupposed())));
        }
        return text.toString();
    }

    /**
     * A supposition for a table on a screen or on paper: a line a pair of points, the units in the headings, a column for what
     * healthy machines may show at least and at most, nothing where a meter shows OL.
     *
     * @param outOfDate whether the question has changed since; then a last column says so in every line
     */
    public static String sheet(Outcome outcome, boolean outOfDate) {
        List<MeterFunction> functions = Arrays.stream(MeterFunction.values())
                .filter(f -> outcome.readings().stream().anyMatch(r -> r.check().function() == f))
                .toList();
        Map<List<String>, Map<MeterFunction, Compared>> pairs = new LinkedHashMap<>();
        for (Compared row : outcome.readings()) {
            pairs.computeIfAbsent(
                            List.of(row.check().from(), row.check().to()), k -> new EnumMap<>(MeterFunction.class))
                    .put(row.check().function(), row);
        }
        List<String> heads = new ArrayList<>(List.of("from", "to", "label"));
        for (MeterFunction function : functions) {
            String unit = " [" + function.unit().symbol() + "]";
            for (String column : List.of("as built", "as supposed", "low", "high")) {
                heads.add(function.words() + ", " + column + unit);
            }
        }
        if (outOfDate) {
            heads.add("out of date");
        }
        StringBuilder text = new StringBuilder(line(heads.toArray(String[]::new)));
        pairs.forEach((pair, row) -> text.append(line(cells(outcome, pair, row, functions, outOfDate))));
        return text.toString();
    }

    private static String[] cells(
            Outcome outcome,
            List<String> pair,
            Map<MeterFunction, Compared> row,
            List<MeterFunction> functions,
            boolean outOfDate) {
        List<String> cells = new ArrayList<>(pair);
        cells.add(outcome.label(row.values().iterator().next()));
        for (MeterFunction function : functions) {
            Compared reading = row.get(function);
            if (reading == null) {
                cells.addAll(List.of("", "", "", ""));
            } else {
                cells.add(value(reading.asBuilt().overRange(), reading.asBuilt().value()));
                cells.add(value(
                        reading.asSupposed().overRange(), reading.asSupposed().value()));
                cells.add(value(false, reading.healthy().low()));
                cells.add(value(false, reading.healthy().high()));
            }
        }
        if (outOfDate) {
            cells.add("out of date");
        }
        return cells.toArray(String[]::new);
    }

    /** How parts can fail: a line a failure; amounts in SI, nothing where a failure takes none. */
    public static String modes(List<Mode> modes) {
        StringBuilder text = new StringBuilder("part,kind,type,sentence,failure,place,detail,unit,usual,low,high,share,"
                + "prior,source,happened,confirm" + END);
        for (Mode mode : modes) {
            FaultForm form = mode.form();
            AmountRange range = form.amount();
            text.append(line(
                    form.part(),
                    form.telling().kind(),
                    mode.typed(),
                    mode.sentence(),
                    form.mode().compact(),
                    form.place(),
                    form.telling().detail(),
                    range == null ? "" : range.unit().symbol(),
                    range == null ? "" : value(false, range.usualSi()),
                    range == null ? "" : value(false, range.lowSi()),
                    range == null ? "" : value(false, range.highSi()),
                    value(false, mode.shareRatio()),
                    value(false, form.priorRatio()),
                    form.prior().source(),
                    form.telling().happened(),
                    form.telling().confirmation()));
        }
        return text.toString();
    }

    /** What was matched: a line a repair, likeliest first, and one for what is in no list; shares 0 to 1. */
    public static String match(Matched matched) {
        MatchWords words = new MatchWords(matched.circuit());
        StringBuilder text = new StringBuilder("share,repair,supposition,sentence,fits,readings,will need new" + END);
        for (Candidate candidate : matched.ranking().candidates()) {
            Supposition likeliest = candidate.suppositions().isEmpty()
                    ? Supposition.NOTHING
                    : candidate.suppositions().get(0).supposition();
            text.append(line(
                    value(false, candidate.share()),
                    candidate.repair().words(),
                    SentencePrinter.compact(likeliest),
                    words.sentence(likeliest),
                    String.valueOf(candidate.fits()),
                    String.valueOf(candidate.evidence().size()),
                    String.join(" ", candidate.consequences())));
        }
        return text
                + line(value(false, matched.ranking().somethingElse()), "", "", MatchWords.somethingElse(), "", "", "");
    }

    /** {@code 0.298 V then OL}; nothing where the display stands still. */
    private static String climbing(Reading reading) {
        Climbing climbing = reading.climbing();
        return climbing == null
                ? ""
                : climbing.after().shows() + " then " + climbing.settled().shows();
    }

    private static String value(boolean overRange, double si) {
        return overRange || Double.isInfinite(si) ? "" : new BigDecimal(Double.toString(si)).toPlainString();
    }

    private static String line(String... fields) {
        return List.of(fields).stream().map(Csv::field).collect(Collectors.joining(",")) + END;
    }

    private static String field(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
