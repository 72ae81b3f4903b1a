package fusetale.circuit;

import java.util.List;

/**
 * A stage of a staged start-up as the file says it, before its names are looked up.
 *
 * @param name its key
 * @param fusesIn fuses put in
 * @param pluggedIn connectors put on
 */
record StageDraft(String name, List<Located.Text> fusesIn, List<Located.Text> pluggedIn) {
    private static final Key<List<Located.Text>> FUSES_IN =
            Key.optional("fuses in", new ListForm<>("a fuse", Forms.RAW, 0, 999), "fuses put in at this stage");
    private static final Key<List<Located.Text>> PLUGGED_IN = Key.optional(
            "plugged in", new ListForm<>("a connector", Forms.RAW, 0, 999), "connectors put on at this stage");

    static final Form<StageDraft> FORM = new Shape<>(
            "a stage",
            "What a stage of a staged start-up puts in; everything that a stage puts in is out before.",
            List.of(FUSES_IN, PLUGGED_IN),
            v -> new StageDraft(
                    v.name(), MachineForms.orEmpty(v.find(FUSES_IN)), MachineForms.orEmpty(v.find(PLUGGED_IN))));

    StartStage stage() {
        return new StartStage(
                name,
                fusesIn.stream().map(Located.Text::text).toList(),
                pluggedIn.stream().map(Located.Text::text).toList());
    }
}
