package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Problem;
import fusetale.explore.Words;
import fusetale.fault.Catalogue;
import fusetale.quantity.Spelling;
import fusetale.sentence.MeasuredParser;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reads what somebody wrote down at the bench, a row a reading, as a spreadsheet or a text editor saves it:
 *
 * <pre>
 * arrangement,function,from,to,value,unit,meter,note
 * as found,fuse,F201,,blown,,,
 * power off,diode test,gnd,TP4,"0,52",V,,
 * ,replaced,F201,,,,,from here on with a new one
 * </pre>
 *
 * <p>Columns may stand in any order; only function, from and value must be there. A row whose value is empty, or says that
 * nobody knows, counts for nothing. Everything wrong is told at once. For one circuit; belongs to one thread.
 */
public final class ReadingsReader {
    private static final Words WORDS = Words.of(ReadingsReader.class);

    /** Beyond so many a list helps nobody. */
    private static final int MOST_PROBLEMS = 200;

    private static final Set<String> UNKNOWN =
            Set.of("", "?", "-", "–", "—", "don't know", "dont know", "unknown", "not measured", "n/a", "na");

    private final Circuit circuit;
    private final MeteredReader metered;
    private final SeenReader seen;

    /** For readings on one circuit. */
    public ReadingsReader(Circuit circuit) {
        this.circuit = circuit;
        this.metered = new MeteredReader(new BenchWords(circuit), new MeasuredParser(circuit));
        this.seen = new SeenReader(circuit);
    }

    /** Reads a file. What cannot be read at all is a problem of it. */
    public ReadingsFile read(Path file) {
        String name = file.toString().replace('\\', '/');
        ReadingsText text = ReadingsText.of(file, name);
        Problem none = text.problem();
        return none != null
                ? new ReadingsFile(Findings.NONE, List.of(), List.of(), 0, List.of(none))
                : read(name, String.valueOf(text.text()));
    }

    /**
     * Reads a text, such as one pasted.
     *
     * @param name what to call it in messages
     */
    public ReadingsFile read(String name, String text) {
        CsvRows csv = CsvRows.of(text);
        Gathered gathered = new Gathered(name);
        if (csv.unclosedLine() > 0) {
            gathered.problem(csv.unclosedLine(), "", WORDS.say("quote"), "", "");
        } else if (csv.rows().isEmpty()) {
            gathered.problem(0, "", WORDS.say("empty"), "", "");
        } else {
            rows(csv.rows(), gathered, !text.endsWith("\n") && !text.endsWith("\r"));
        }
        return gathered.done();
    }

    /** {@code open}: whether the last line does not end, as where a file is cut short. */
    private void rows(List<CsvRows.Row> rows, Gathered gathered, boolean open) {
        CsvRows.Row head = rows.get(0);
        Map<Column, Integer> columns = columns(head, gathered);
        if (columns.isEmpty()) {
            return;
        }
        if (open && rows.size() == 1) {
            gathered.problem(head.line(), "", WORDS.say("cut-head"), WORDS.say("cut-head.allowed"), "");
        }
        for (CsvRows.Row row : rows.subList(1, rows.size())) {
            for (int k = head.cells().size(); k < row.cells().size(); k++) {
                if (!row.cell(k).isEmpty()) {
                    String found = WORDS.say("beyond", row.cell(k));
                    gathered.problem(row.line(), where(k, row, ""), found, WORDS.say("beyond.allowed"), "");
                }
            }
            Row cells = new Row(row, columns, new ArrayList<>());
            if (open && row.equals(rows.get(rows.size() - 1)) && cells.endsBeforeItsValue()) {
                gathered.problem(row.line(), "", WORDS.say("cut"), WORDS.say("cut.allowed"), "");
                continue;
            }
            row(cells, gathered);
            cells.wrong().stream()
                    .sorted(Comparator.comparing(w -> columns.getOrDefault(w.column(), -1)))
                    .forEach(w -> gathered.problem(
                            row.line(),
                            where(
                                    columns.getOrDefault(w.column(), -1),
                                    row,
                                    w.column().words()),
                            w.found(),
                            w.allowed(),
                            w.nearest()));
        }
    }

    /** {@code value, cell E4}, as a spreadsheet counts. */
    private static String where(int column, CsvRows.Row row, String heading) {
        if (column < 0) {
            return heading;
        }
        String letters = column < 26
                ? String.valueOf((char) ('A' + column))
                : String.valueOf((char) ('A' + column / 26 - 1)) + (char) ('A' + column % 26);
        String cell = WORDS.say("cell", letters + row.number());
        return heading.isEmpty() ? cell : heading + ", " + cell;
    }

    /** Where each column stands; empty where the file cannot be read for lack of one. */
    private static Map<Column, Integer> columns(CsvRows.Row head, Gathered gathered) {
        Map<Column, Integer> columns = new EnumMap<>(Column.class);
        String allowed = String.join(", ", Column.all());
        if (head.cells().stream().allMatch(c -> Column.headed(c).isEmpty())) {
            gathered.problem(head.line(), "", WORDS.say("no-head"), allowed, "");
            return Map.of();
        }
        for (int k = 0; k < head.cells().size(); k++) {
            String cell = head.cell(k);
            Optional<Column> column = Column.headed(cell);
            if (column.isPresent()) {
                Integer before = columns.putIfAbsent(column.get(), k);
                if (before != null) {
                    gathered.problem(head.line(), where(k, head, ""), WORDS.say("head.twice", cell), "", "");
                }
            } else if (!cell.isEmpty()) {
                String nearest = Spelling.nearestIfAny(cell, Column.all());
                gathered.problem(head.line(), where(k, head, ""), WORDS.say("head.unknown", cell), allowed, nearest);
            }
        }
        List<String> lacking = Arrays.stream(Column.values())
                .filter(c -> c.needed() && !columns.containsKey(c))
                .map(Column::words)
                .toList();
        for (String each : lacking) {
            gathered.problem(head.line(), "", WORDS.say("head.lacking", each), "", "");
        }
        return lacking.isEmpty() ? columns : Map.of();
    }

    /** A look at some cells. */
    @FunctionalInterface
    private interface Look<T> {
        T at() throws RowException;
    }

    /**
     * The cells of a row by their columns.
     *
     * @param wrong cells that were not understood so far
     */
    private record Row(CsvRows.Row row, Map<Column, Integer> columns, List<RowException> wrong) {
        String cell(Column column) {
            return CsvRows.asMeant(row.cell(columns.getOrDefault(column, -1))).strip();
        }

        boolean endsBeforeItsValue() {
            return row.cells().size() <= columns.getOrDefault(Column.VALUE, -1) && !tellsOfNewParts();
        }

        boolean tellsOfNewParts() {
            return SightWords.plain(cell(Column.FUNCTION)).equals(WORDS.say("replaced"));
        }

        String written(Column column) {
            return CsvRows.asMeant(row.written(columns.getOrDefault(column, -1)));
        }

        /** What they say; empty where they are not understood, which is kept. */
        <T> Optional<T> understood(Look<T> look) {
            try {
                return Optional.of(look.at());
            } catch (RowException unclear) {
                wrong.add(unclear);
                return Optional.empty();
            }
        }
    }

    private void row(Row row, Gathered gathered) {
        String function = row.cell(Column.FUNCTION);
        if (row.tellsOfNewParts()) {
            row.understood(() -> parts(row.cell(Column.FROM))).ifPresent(gathered::replaced);
            return;
        }
        String value = row.cell(Column.VALUE).toLowerCase(Locale.ROOT).replace('’', '\'');
        if (UNKNOWN.contains(value)) {
            gathered.unmeasured++;
            return;
        }
        Optional<Meter> named = row.cell(Column.METER).isEmpty()
                ? Optional.empty()
                : row.understood(() -> meter(row.cell(Column.METER)));
        Optional<Evidence> evidence = SightWords.aspect(function)
                .map(aspect -> noticed(row, aspect))
                .orElseGet(() -> metered(row, named.orElse(Meter.builtIn().get(0))));
        if (row.wrong().isEmpty()) {
            named.ifPresent(gathered.meters::add);
            evidence.ifPresent(e -> gathered.evidence(e, row.row().line()));
        }
    }

    private List<String> parts(String cell) throws RowException {
        List<String> known = Catalogue.designators(circuit);
        List<String> parts = new ArrayList<>();
        for (String word : cell.split("[,;&\\s]+|\\band\\b", -1)) {
            if (!word.isBlank()) {
                parts.add(named(word, known));
            }
        }
        if (parts.isEmpty()) {
            throw new RowException(Column.FROM, WORDS.say("replaced.nothing"));
        }
        return parts;
    }

    /** The name that is spelt so, capitals ignored. */
    static String named(String word, List<String> known) throws RowException {
        return known.stream()
                .filter(k -> k.equals(word))
                .findFirst()
                .or(() -> known.stream().filter(k -> k.equalsIgnoreCase(word)).findFirst())
                .orElseThrow(() -> {
                    List<String> near = Spelling.nearestFew(word, known, 1);
                    return new RowException(
                            Column.FROM, WORDS.say("no-part", word), "", near.isEmpty() ? "" : near.get(0));
                });
    }

    private static Meter meter(String cell) throws RowException {
        String wanted = cell.toLowerCase(Locale.ROOT);
        return Meter.builtIn().stream()
                .filter(m -> m.name().toLowerCase(Locale.ROOT).startsWith(wanted))
                .findFirst()
                .orElseThrow(() -> {
                    List<String> names =
                            Meter.builtIn().stream().map(Meter::name).toList();
                    return new RowException(
                            Column.METER,
                            WORDS.say("no-meter", cell),
                            String.join(", ", names),
                            Spelling.nearestIfAny(cell, names));
                });
    }

    private Optional<Evidence> noticed(Row row, Observation.Aspect aspect) {
        String to = row.cell(Column.TO);
        if (!to.isEmpty()) {
            row.wrong().add(new RowException(Column.TO, WORDS.say("looked.to", aspect.words(), to)));
        }
        Optional<Arrangement> bench = row.understood(() -> metered.arrangement(row.cell(Column.ARRANGEMENT), true));
        Optional<String> part = row.understood(() -> seen.part(aspect, row.cell(Column.FROM)));
        Optional<Shown.Seen> shown = row.understood(() -> seen.shown(aspect, part.orElse(""), row.cell(Column.VALUE)));
        return bench.flatMap(b -> part.flatMap(
                p -> shown.map(s -> new Evidence(new Ask.Noticed(b, p, aspect), s, row.written(Column.NOTE)))));
    }

    private Optional<Evidence> metered(Row row, Meter meter) {
        Optional<MeterFunction> said = row.understood(() -> function(row.cell(Column.FUNCTION)));
        MeterFunction function = said.orElse(MeterFunction.DC_VOLTS);
        Optional<Check> check =
                row.understood(() -> metered.check(row.cell(Column.FROM), row.cell(Column.TO), function));
        Optional<Arrangement> bench =
                row.understood(() -> metered.arrangement(row.cell(Column.ARRANGEMENT), function.powered()));
        if (said.isEmpty()) {
            return Optional.empty();
        }
        Optional<Arrangement> able =
                bench.flatMap(b -> check.flatMap(c -> row.understood(() -> metered.able(b, c, meter))));
        // what the display showed is read without knowing where
        Check somewhere = check.orElse(new Check("", "", function));
        Optional<MeteredReader.Displayed> displayed =
                row.understood(() -> metered.displayed(somewhere, row.cell(Column.VALUE), row.cell(Column.UNIT)));
        return able.flatMap(b ->
                displayed.map(d -> new Evidence(new Ask.Metered(b, d.check()), d.shown(), row.written(Column.NOTE))));
    }

    private static MeterFunction function(String cell) throws RowException {
        return MeasuredParser.function(cell).orElseThrow(() -> {
            List<String> known = Stream.of(
                            Arrays.stream(MeterFunction.values()).map(MeterFunction::words),
                            Arrays.stream(Observation.Aspect.values()).map(Observation.Aspect::words),
                            Stream.of(WORDS.say("replaced")))
                    .flatMap(s -> s)
                    .toList();
            return new RowException(
                    Column.FUNCTION,
                    cell.isEmpty() ? WORDS.say("no-function.empty") : WORDS.say("no-function", cell),
                    String.join(", ", known),
                    Spelling.nearestIfAny(cell, known));
        });
    }

    /** What a text has given so far. */
    private static final class Gathered {
        private final String name;
        private final List<Problem> problems = new ArrayList<>();
        private final List<Integer> lines = new ArrayList<>();
        private final Set<Meter> meters = new LinkedHashSet<>();
        private final List<Findings.Spell> spells = new ArrayList<>();
        private List<String> replaced = List.of();
        private List<Evidence> evidence = new ArrayList<>();
        private int unmeasured;

        Gathered(String name) {
            this.name = name;
        }

        void problem(int line, String key, String found, String allowed, String nearest) {
            if (problems.size() < MOST_PROBLEMS) {
                problems.add(new Problem(Problem.Severity.ERROR, name, line, key, found, allowed, nearest));
            } else if (problems.size() == MOST_PROBLEMS) {
                String more = WORDS.say("more", MOST_PROBLEMS);
                problems.add(new Problem(Problem.Severity.ERROR, name, 0, "", more, "", ""));
            }
        }

        void evidence(Evidence more, int line) {
            evidence.add(more);
            lines.add(line);
        }

        /** Parts replaced one row after the other are replaced together. */
        void replaced(List<String> parts) {
            Set<String> all = new LinkedHashSet<>();
            if (evidence.isEmpty() && !spells.isEmpty()) {
                all.addAll(replaced);
            } else {
                spells.add(new Findings.Spell(replaced, evidence));
            }
            all.addAll(parts);
            replaced = List.copyOf(all);
            evidence = new ArrayList<>();
        }

        ReadingsFile done() {
            spells.add(new Findings.Spell(replaced, evidence));
            return new ReadingsFile(new Findings(spells), lines, List.copyOf(meters), unmeasured, problems);
        }
    }
}
