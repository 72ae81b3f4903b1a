package fusetale.report;

import fusetale.bench.Climbing;
import fusetale.bench.Reading;
import fusetale.explore.Compared;
import fusetale.explore.Outcome;
import fusetale.fault.AmountRange;
import fusetale.fault.FaultForm;
import java.math.BigDecimal;
import java.util.List;
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
