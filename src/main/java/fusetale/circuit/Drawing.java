package fusetale.circuit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where everything stands on the drawing.
 *
 * @param places of parts, of contacts ({@code J1.3}) and of test points, by name, in the order of the file
 * @param sections parts of the drawing with a heading, in the order of the file
 */
public record Drawing(Map<String, Stand> places, List<SectionArea> sections) {
    /** Nothing is drawn. */
    public static final Drawing NONE = new Drawing(Map.of(), List.of());

    /** Copies what can change. */
    public Drawing {
        places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
        sections = List.copyOf(sections);
    }
}
