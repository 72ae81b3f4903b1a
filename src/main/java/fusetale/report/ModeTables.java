package fusetale.report;

import fusetale.circuit.Circuit;
import fusetale.explore.Words;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.FaultForm;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** How parts can fail, as plain text of at most 100 columns. */
public final class ModeTables {
    private static final Words WORDS = Words.of(ModeTables.class);
    private static final String NONE = "-";
    private static final String INDENT = "  ";
    private static final Set<FailureMode> SELDOM_MEASURED = EnumSet.of(FailureMode.SHORT, FailureMode.OPEN);

    private ModeTables() {}

    /** One line a part, connector and the mains: its kind and what it can be. */
    public static List<String> circuit(Circuit circuit, Emphasis emphasis) {
        TextTable table = new TextTable(
                TextTable.Column.left(WORDS.say("head.part")),
                TextTable.Column.left(WORDS.say("head.kind")),
                TextTable.Column.left(WORDS.say("head.can-be")));
        for (String name : Catalogue.designators(circuit)) {
            List<FaultForm> forms = Catalogue.possible(circuit, name);
            table.row(
                    false,
                    name,
                    forms.get(0).telling().kind(),
                    forms.stream().map(f -> f.mode().compact()).distinct().collect(Collectors.joining(", ")));
        }
        List<String> lines = new ArrayList<>();
        lines.add(emphasis.strong(WORDS.say(
                "modes.circuit", circuit.name(), Catalogue.possible(circuit).size())));
        lines.add("");
        lines.addAll(table.lines(emphasis));
        return lines;
    }

    /**
     * Failures of one part: a table, then what each is and how to make sure.
     *
     * @param modes those to show, of one part; not empty
     */
    public static List<String> part(Circuit circuit, List<Mode> modes, Emphasis emphasis) {
        FaultForm first = modes.get(0).form();
        List<String> lines = new ArrayList<>();
        lines.add(emphasis.strong(WORDS.say(
                modes.size() == 1 ? "modes.part-one" : "modes.part",
                first.part(),
                circuit.name(),
                first.telling().kind(),
                modes.size())));
        lines.add("");
        lines.addAll(table(modes).lines(emphasis));
        lines.addAll(Tables.wrapped(footnote(modes)));
        for (List<Mode> group : groups(modes)) {
            lines.add("");
            lines.addAll(told(group, emphasis));
        }
        lines.add("");
        lines.add(emphasis.strong(WORDS.say("table.cautions")));
        lines.addAll(Tables.wrapped(WORDS.say("caution.on")));
        lines.addAll(Tables.wrapped(WORDS.say("caution.off")));
        return lines;
    }

    private static TextTable table(List<Mode> modes) {
        TextTable table = new TextTable(
                TextTable.Column.left(WORDS.say("head.type")),
                TextTable.Column.right(WORDS.say("head.usually")),
                TextTable.Column.left(WORDS.say("head.may-be")),
                TextTable.Column.right(WORDS.say("head.likely")),
                TextTable.Column.left(WORDS.say("head.means")));
        for (Mode mode : modes) {
            AmountRange range = mode.form().amount();
            String detail = mode.form().telling().detail();
            table.row(
                    false,
                    mode.typed(),
                    range == null ? NONE : figure(range, range.usualSi()),
                    range == null
                            ? NONE
                            : WORDS.say("modes.between", figure(range, range.lowSi()), figure(range, range.highSi())),
                    mode.likely(),
                    detail.isEmpty() ? mode.sentence() : WORDS.say("modes.detail", mode.sentence(), detail));
        }
        return table;
    }

    private static String figure(AmountRange range, double si) {
        return Notation.format(new Quantity(si, range.unit()), 3);
    }

    private static String footnote(List<Mode> modes) {
        String example = "";
        for (Mode mode : modes) {
            AmountRange range = mode.form().amount();
            // shorts and opens are seldom given an amount, so that another makes the better example
            boolean better = !SELDOM_MEASURED.contains(mode.form().mode());
            if (range != null && (better || example.isEmpty())) {
                example = mode.typedWithAmount(range);
                if (better) {
                    break;
                }
            }
        }
        return example.isEmpty() ? WORDS.say("modes.no-amounts") : WORDS.say("modes.amounts", example);
    }

    /** What is told alike is told once: the legs of a bridge, the pins of a connector. */
    private static List<List<Mode>> groups(List<Mode> modes) {
        Map<String, List<Mode>> groups = new LinkedHashMap<>();
        for (Mode mode : modes) {
            String key = mode.form().telling().key() + " " + mode.form().prior().source();
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(mode);
        }
        return new ArrayList<>(groups.values());
    }

    private static List<String> told(List<Mode> group, Emphasis emphasis) {
        FaultForm form = group.get(0).form();
        String targets = group.stream().map(m -> m.form().target()).collect(Collectors.joining(", "));
        List<String> lines = new ArrayList<>();
        Tables.wrapped(WORDS.say("modes.group", form.mode().compact(), targets))
                .forEach(line -> lines.add(emphasis.strong(line)));
        lines.addAll(indented(form.telling().happened()));
        lines.addAll(indented(WORDS.say("modes.confirm") + form.telling().confirmation()));
        lines.addAll(indented(WORDS.say("modes.source") + form.prior().source() + "."));
        return lines;
    }

    private static List<String> indented(String text) {
        return Paragraph.hanging(INDENT, text, TextTable.WIDTH);
    }
}
