package fusetale.match;

import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.TestPoint;
import fusetale.store.AtomicFile;
import fusetale.store.UnwritableFile;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * What a dictionary worked out, kept from one run to the next: one file a machine, meter and seed, named after the content
 * they are made of, so that a changed circuit finds none. Written whole and put in place in one step (see {@link
 * AtomicFile}), so two programs at once cannot spoil it: the later one wins. Compressed by GZIP (RFC 1952), whose checksum
 * tells a damaged file; that, and anything else that cannot be read, counts as none.
 */
final class DictionaryFile {
    /** To be raised when the solver, the catalogue of failures or this file's form changes what it says. */
    private static final int EDITION = 20;
    /** Lists of names that go with what one machine shows. */
    private static final int LISTS = 5;

    private static final String MAGIC = "fusetale dictionary";
    private static final int LONGEST_LIST = 1_000_000;
    /** Readings that differ, of a machine of two hundred parts. */
    private static final int MOST_READINGS = 20_000_000;

    private final Path file;

    private DictionaryFile(Path file) {
        this.file = file;
    }

    /**
     * What is kept.
     *
     * @param trials by supposition, then by arrangement
     * @param drawn by arrangement and check, how drawn machines stand [axis]
     */
    record Content(Map<String, Map<String, Trial.Shows>> trials, Map<String, Map<Check, double[]>> drawn) {
        static final Content NOTHING = new Content(Map.of(), Map.of());
    }

    /**
     * The file of a machine.
     *
     * @param folder made when something is first written
     * @param settings whatever else the content depends on
     */
    static DictionaryFile of(Path folder, Circuit circuit, String settings) {
        StringBuilder content = new StringBuilder(MAGIC).append(EDITION).append(settings);
        content.append(circuit.parts())
                .append(circuit.connectors())
                .append(circuit.mains())
                .append(circuit.ground());
        for (TestPoint point : circuit.points()) {
            content.append(point.name()).append(point.at()).append(point.against());
        }
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256")
                    .digest(content.toString().getBytes(StandardCharsets.UTF_8));
            return new DictionaryFile(
                    folder.resolve(HexFormat.of().formatHex(hash).substring(0, 32) + ".dictionary"));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** What is kept; nothing where there is no file, or none that can be read. */
    Content read() {
        if (!Files.isRegularFile(file)) {
            return Content.NOTHING;
        }
        try (DataInputStream in =
                new DataInputStream(new BufferedInputStream(new GZIPInputStream(Files.newInputStream(file))))) {
            if (!MAGIC.equals(in.readUTF()) || in.readInt() != EDITION) {
                return Content.NOTHING;
            }
            List<String> words = strings(in);
            List<Reading> readings = readings(in, words);
            List<Observation> sights = sights(in, words);
            Map<String, Map<String, Trial.Shows>> trials = new LinkedHashMap<>();
            for (int n = count(in); n > 0; n--) {
                String supposition = words.get(in.readInt());
                Map<String, Trial.Shows> shows = new LinkedHashMap<>();
                for (int a = count(in); a > 0; a--) {
                    shows.put(words.get(in.readInt()), shows(in, words, readings, sights));
                }
                trials.put(supposition, shows);
            }
            Map<String, Map<Check, double[]>> drawn = new LinkedHashMap<>();
            for (int n = count(in); n > 0; n--) {
                Map<Check, double[]> of = new LinkedHashMap<>();
                drawn.put(words.get(in.readInt()), of);
                for (int c = count(in); c > 0; c--) {
                    Check check = check(in, words);
                    double[] away = new double[count(in)];
                    for (int d = 0; d < away.length; d++) {
                        away[d] = in.readFloat();
                    }
                    of.put(check, away);
                }
            }
            // the checksum stands behind the last byte
            return in.read() == -1 ? new Content(trials, drawn) : Content.NOTHING;
        } catch (IOException | IndexOutOfBoundsException e) {
            return Content.NOTHING;
        }
    }

    /**
     * Writes.
     *
     * @throws IOException where the folder cannot be made
     * @throws UnwritableFile where the file cannot be written
     */
    void write(Content content) throws IOException, UnwritableFile {
        Tables tables = new Tables();
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        ByteArrayOutputStream rows = new ByteArrayOutputStream();
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(body)) {
            write(content, tables, out);
        }
        try (DataOutputStream out = new DataOutputStream(rows)) {
            writeRows(tables, out);
        }
        try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(whole))) {
            out.writeUTF(MAGIC);
            out.writeInt(EDITION);
            out.writeInt(tables.words.places.size());
            for (String word : tables.words.places.keySet()) {
                byte[] bytes = word.getBytes(StandardCharsets.UTF_8);
                out.writeInt(bytes.length);
                out.write(bytes);
            }
            out.write(rows.toByteArray());
            out.write(body.toByteArray());
        }
        Path folder = file.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        AtomicFile.write(file, whole.toByteArray());
    }

    /** Things that come again and again, each written once. */
    private static final class Table<T> {
        final Map<T, Integer> places = new LinkedHashMap<>();

        int at(T one) {
            Integer place = places.get(one);
            if (place == null) {
                place = places.size();
                places.put(one, place);
            }
            return place;
        }
    }

    /** Most machines show at most places what the healthy one shows there: that is written once. */
    private static final class Tables {
        final Table<String> words = new Table<>();
        final Table<Reading> readings = new Table<>();
        final Table<Observation> sights = new Table<>();
    }

    private static void write(Content content, Tables tables, DataOutputStream out) throws IOException {
        Table<String> words = tables.words;
        out.writeInt(content.trials().size());
        for (Map.Entry<String, Map<String, Trial.Shows>> trial :
                content.trials().entrySet()) {
            out.writeInt(words.at(trial.getKey()));
            out.writeInt(trial.getValue().size());
            for (Map.Entry<String, Trial.Shows> shows : trial.getValue().entrySet()) {
                out.writeInt(words.at(shows.getKey()));
                write(shows.getValue(), tables, out);
            }
        }
        out.writeInt(content.drawn().size());
        for (Map.Entry<String, Map<Check, double[]>> of : content.drawn().entrySet()) {
            out.writeInt(words.at(of.getKey()));
            out.writeInt(of.getValue().size());
            for (Map.Entry<Check, double[]> one : of.getValue().entrySet()) {
                write(one.getKey(), words, out);
                out.writeInt(one.getValue().length);
                for (double away : one.getValue()) {
                    out.writeFloat((float) away);
                }
            }
        }
    }

    private static void write(Trial.Shows shows, Tables tables, DataOutputStream out) throws IOException {
        out.writeBoolean(shows.solvable());
        for (List<String> list : List.of(
                shows.melted(),
                shows.instead(),
                shows.mayMelt(),
                shows.lost(),
                shows.moved().stream().sorted().toList())) {
            out.writeInt(list.size());
            for (String word : list) {
                out.writeInt(tables.words.at(word));
            }
        }
        write(tables.readings, shows.readings().values(), out);
        write(tables.sights, shows.sights().values(), out);
    }

    /** In the order of the table, so that what is alike in two machines packs well. */
    private static <T> void write(Table<T> table, Collection<T> some, DataOutputStream out) throws IOException {
        out.writeInt(some.size());
        for (int at : some.stream().mapToInt(table::at).sorted().toArray()) {
            out.writeInt(at);
        }
    }

    private static void writeRows(Tables tables, DataOutputStream out) throws IOException {
        out.writeInt(tables.readings.places.size());
        for (Reading reading : tables.readings.places.keySet()) {
            write(reading.check(), tables.words, out);
            out.writeDouble(reading.value());
            out.writeBoolean(reading.overRange());
            out.writeInt(tables.words.at(reading.shows()));
            out.writeDouble(reading.halfWidth());
        }
        out.writeInt(tables.sights.places.size());
        for (Observation seen : tables.sights.places.keySet()) {
            out.writeInt(tables.words.at(seen.part()));
            out.writeInt(tables.words.at(seen.sight().name()));
            out.writeInt(tables.words.at(seen.detail()));
        }
    }

    private static void write(Check check, Table<String> words, DataOutputStream out) throws IOException {
        out.writeInt(words.at(check.from()));
        out.writeInt(words.at(check.to()));
        out.writeInt(words.at(check.function().name()));
    }

    private static int count(DataInputStream in) throws IOException {
        return count(in, LONGEST_LIST);
    }

    private static int count(DataInputStream in, int most) throws IOException {
        int count = in.readInt();
        if (count < 0 || count > most) {
            throw new IOException("a list of " + count);
        }
        return count;
    }

    private static List<String> strings(DataInputStream in) throws IOException {
        List<String> words = new ArrayList<>();
        for (int n = count(in); n > 0; n--) {
            words.add(new String(in.readNBytes(count(in)), StandardCharsets.UTF_8));
        }
        return words;
    }

    private static List<Reading> readings(DataInputStream in, List<String> words) throws IOException {
        List<Reading> readings = new ArrayList<>();
        for (int n = count(in, MOST_READINGS); n > 0; n--) {
            Check check = check(in, words);
            readings.add(
                    new Reading(check, in.readDouble(), in.readBoolean(), words.get(in.readInt()), in.readDouble()));
        }
        return readings;
    }

    private static List<Observation> sights(DataInputStream in, List<String> words) throws IOException {
        List<Observation> sights = new ArrayList<>();
        for (int n = count(in); n > 0; n--) {
            String part = words.get(in.readInt());
            Observation.Sight sight = sight(words.get(in.readInt()));
            sights.add(new Observation(part, sight, words.get(in.readInt())));
        }
        return sights;
    }

    private static Trial.Shows shows(
            DataInputStream in, List<String> words, List<Reading> allReadings, List<Observation> allSights)
            throws IOException {
        boolean solvable = in.readBoolean();
        List<List<String>> lists = new ArrayList<>();
        for (int k = 0; k < LISTS; k++) {
            List<String> list = new ArrayList<>();
            for (int n = count(in); n > 0; n--) {
                list.add(words.get(in.readInt()));
            }
            lists.add(list);
        }
        Map<Check, Reading> readings = new HashMap<>();
        for (int n = count(in); n > 0; n--) {
            Reading reading = allReadings.get(in.readInt());
            readings.put(reading.check(), reading);
        }
        Map<String, Observation> sights = new HashMap<>();
        for (int n = count(in); n > 0; n--) {
            Observation seen = allSights.get(in.readInt());
            sights.put(Trial.Shows.key(seen.part(), seen.sight().aspect()), seen);
        }
        return new Trial.Shows(
                readings,
                sights,
                lists.get(0),
                lists.get(1),
                lists.get(2),
                lists.get(3),
                Set.copyOf(lists.get(4)),
                solvable);
    }

    private static Observation.Sight sight(String name) throws IOException {
        for (Observation.Sight sight : Observation.Sight.values()) {
            if (sight.name().equals(name)) {
                return sight;
            }
        }
        throw new IOException("no sight " + name);
    }

    private static Check check(DataInputStream in, List<String> words) throws IOException {
        String from = words.get(in.readInt());
        String to = words.get(in.readInt());
        String name = words.get(in.readInt());
        for (MeterFunction function : MeterFunction.values()) {
            if (function.name().equals(name)) {
                return new Check(from, to, function);
            }
        }
        throw new IOException("no function " + name);
    }
}
