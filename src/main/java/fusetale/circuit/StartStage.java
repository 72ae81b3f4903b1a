package fusetale.circuit;

import java.util.List;

/**
 * One stage of a staged start-up. Before the first stage everything that a stage puts in is out; each stage adds to those
 * before it.
 *
 * @param name what the file calls it
 * @param fusesIn fuses put in
 * @param pluggedIn connectors put on
 */
public record StartStage(String name, List<String> fusesIn, List<String> pluggedIn) {
    /** Copies the lists. */
    public StartStage {
        fusesIn = List.copyOf(fusesIn);
        pluggedIn = List.copyOf(pluggedIn);
    }
}
