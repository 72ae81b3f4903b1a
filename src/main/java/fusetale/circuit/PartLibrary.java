package fusetale.circuit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Part models by name, in the order of their files.
 *
 * @param diodes rectifier and signal diodes
 * @param bridges one leg of each bridge
 * @param zeners zener diodes
 * @param transistors bipolar transistors
 * @param darlingtons Darlington transistors
 * @param mosfets field-effect transistors
 * @param thyristors thyristors
 * @param regulators three-terminal regulators
 * @param opAmps operational amplifiers
 * @param fuses cold resistances of fuse links
 * @param passives models of parts without junctions
 * @param meters multimeters
 */
public record PartLibrary(
        Map<String, DiodeModel> diodes,
        Map<String, DiodeModel> bridges,
        Map<String, DiodeModel> zeners,
        Map<String, TransistorModel> transistors,
        Map<String, DarlingtonModel> darlingtons,
        Map<String, MosfetModel> mosfets,
        Map<String, ThyristorModel> thyristors,
        Map<String, RegulatorModel> regulators,
        Map<String, OpAmpModel> opAmps,
        Map<String, FuseTable> fuses,
        PassiveLibrary passives,
        Map<String, MeterModel> meters) {
    /** Nothing at all. */
    public static final PartLibrary EMPTY = withDiodes(Map.of());

    /** Copies what can change, keeping its order. */
    public PartLibrary {
        diodes = ordered(diodes);
        bridges = ordered(bridges);
        zeners = ordered(zeners);
        transistors = ordered(transistors);
        darlingtons = ordered(darlingtons);
        mosfets = ordered(mosfets);
        thyristors = ordered(thyristors);
        regulators = ordered(regulators);
        opAmps = ordered(opAmps);
        fuses = ordered(fuses);
        meters = ordered(meters);
    }

    /** Diodes only. */
    static PartLibrary withDiodes(Map<String, DiodeModel> diodes) {
        Map<String, DiodeModel> none = Map.of();
        return new PartLibrary(
                diodes,
                none,
                none,
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                PassiveLibrary.EMPTY,
                Map.of());
    }

    /**
     * The models that come with the program.
     *
     * @throws IllegalStateException where the program's own files are unreadable: it was built wrongly
     */
    public static PartLibrary shipped() {
        return Shipped.LIBRARY;
    }

    static <M> Map<String, M> ordered(Map<String, M> models) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(models));
    }

    /** The names of all models by section of the part files, in their order; a section without any is left out. */
    public Map<String, List<String>> names() {
        Map<String, List<String>> names = new LinkedHashMap<>();
        names.put("diodes", List.copyOf(diodes.keySet()));
        names.put("bridges", List.copyOf(bridges.keySet()));
        names.put("zeners", List.copyOf(zeners.keySet()));
        names.put("transistors", List.copyOf(transistors.keySet()));
        names.put("darlingtons", List.copyOf(darlingtons.keySet()));
        names.put("mosfets", List.copyOf(mosfets.keySet()));
        names.put("thyristors", List.copyOf(thyristors.keySet()));
        names.put("regulators", List.copyOf(regulators.keySet()));
        names.put("op-amps", List.copyOf(opAmps.keySet()));
        names.put("fuses", List.copyOf(fuses.keySet()));
        names.putAll(passives.names());
        names.values().removeIf(List::isEmpty);
        return names;
    }

    /** Cold resistance of a fuse link, or null where no table covers it. */
    public @Nullable Double coldOhms(FuseLink.Standard standard, FuseLink.Speed speed, String size, double ratedAmps) {
        return fuses.values().stream()
                .filter(t -> t.standard() == standard
                        && t.speed() == speed
                        && t.size().equals(size)
                        && t.covers(ratedAmps))
                .findFirst()
                .map(t -> t.coldOhms(ratedAmps))
                .orElse(null);
    }

    /** Read once, when first asked for; immutable. */
    private static final class Shipped {
        private static final PartLibrary LIBRARY = read();

        private static PartLibrary read() {
            PartFiles files = PartFiles.shipped();
            if (!files.problems().isEmpty()) {
                throw new IllegalStateException(files.problems().get(0).toString());
            }
            return files.library();
        }
    }
}
