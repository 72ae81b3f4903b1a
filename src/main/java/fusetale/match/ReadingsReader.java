package fusetale.match;

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
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

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
    private final BenchWords benches;
    private final MeasuredParser parser;
    private final SeenReader seen;

    /** For readings on one circuit. */
    public ReadingsReader(Circuit circuit) {
        this.circuit = circuit;
        this.benches = new BenchWords(circuit);
        this.parser = new MeasuredParser(circuit);
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
            rows(csv.rows(), gathered);
        }
        return gathered.done();
    }

    private void rows(List<CsvRows.Row> rows, Gathered gathered) {
        CsvRows.Row head = rows.get(0);
        Map<Column, Integer> columns = columns(head, gathered);
        if (columns.isEmpty()) {
            return;
        }
        for (CsvRows.Row row : rows.subList(1, rows.size())) {
            for (int k = head.cells().size(); k < row.cells().size(); k++) {
                if (!row.cell(k).isEmpty()) {
                    String found = WORDS.say("beyond", row.cell(k));
                    gathered.problem(row.line(), where(k, row, ""), found, WORDS.say("beyond.allowed"), "");
                }
            }
            Row cells = new Row(row, columns);
            try {
                row(cells, gathered);
            } catch (RowException wrong) {
                gathered.problem(
                        row.line(),
                        where(
                                columns.getOrDefault(wrong.column(), -1),
                                row,
                                wrong.column().words()),
                        wrong.found(),
                        wrong.allowed(),
                        wrong.nearest());
            }
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

    /** The cells of a row by their columns. */
    private record Row(CsvRows.Row row, Map<Column, Integer> columns) {
        String cell(Column column) {
            return CsvRows.asMeant(row.cell(columns.getOrDefault(column, -1))).strip();
        }

        String written(Column column) {
            return CsvRows.asMeant(row.written(columns.getOrDefault(column, -1)));
        }
    }

    private void row(Row row, Gathered gathered) throws RowException {
        if (SightWords.plain(row.cell(Column.FUNCTION)).equals(WORDS.say("replaced"))) {
            gathered.replaced(parts(row.cell(Column.FROM)));
            return;
        }
        String value = row.cell(Column.VALUE);
        if (UNKNOWN.contains(value.toLowerCase(Locale.ROOT).replace('’', '\''))) {
            gathered.unmeasured++;
            return;
        }
        Meter meter = meter(row.cell(Column.METER));
        Optional<Observation.Aspect> aspect = SightWords.aspect(row.cell(Column.FUNCTION));
        Evidence evidence =
                aspect.isPresent() ? noticed(row, aspect.get()) : metered(row, value, meter == null ? usual() : meter);
        if (meter != null) {
            gathered.meters.add(meter);
        }
        gathered.evidence(evidence, row.row().line());
    }

    private static Meter usual() {
        return Meter.builtIn().get(0);
    }

    private List<String> parts(String cell) throws RowException {
        List<String> known = Catalogue.designators(circuit);
        List<String> parts = new ArrayList<>();
        for (String word : cell.split("[,;&\\s]+|\\band\\b")) {
            if (!word.isBlank()) {
                parts.add(named(word, known));
            }
        }
        if (parts.isEmpty()) {
            throw new RowException(Column.FROM, WORDS.say("replaced.nothing"));
        }
        return parts;
    }

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

    private @Nullable Meter meter(String cell) throws RowException {
        if (cell.isEmpty()) {
            return null;
        }
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

    private Evidence noticed(Row row, Observation.Aspect aspect) throws RowException {
        if (!row.cell(Column.TO).isEmpty()) {
            throw new RowException(Column.TO, WORDS.say("looked.to", aspect.words(), row.cell(Column.TO)));
        }
        String part = seen.part(aspect, row.cell(Column.FROM));
        Shown shown = seen.shown(aspect, part, row.cell(Column.VALUE));
        Ask ask = new Ask.Noticed(
                new MeteredReader(benches, parser).arrangement(row.cell(Column.ARRANGEMENT), true), part, aspect);
        return new Evidence(ask, shown, row.written(Column.NOTE));
    }

    private Evidence metered(Row row, String value, Meter meter) throws RowException {
        String cell = row.cell(Column.FUNCTION);
        MeterFunction function = MeasuredParser.function(cell).orElseThrow(() -> {
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
        MeteredReader reader = new MeteredReader(benches, parser);
        Ask.Metered ask =
                reader.ask(row.cell(Column.ARRANGEMENT), function, row.cell(Column.FROM), row.cell(Column.TO), meter);
        return reader.evidence(ask, value, row.cell(Column.UNIT), row.written(Column.NOTE));
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
