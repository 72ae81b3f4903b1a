package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One contact of a connector, {@code {board: a, harness: b}}; {@code [board: a, harness: b]} is read too. */
final class ContactForm implements Form<ContactForm.Said> {
    private static final Key<Net> BOARD = Key.required("board", Forms.NET, "the net on the board's side");
    private static final Key<Net> HARNESS = Key.required("harness", Forms.NET, "the net on the harness' side");
    private static final Toleranced USUAL = new Toleranced(new Quantity(0.005, Unit.OHM), new Tolerance(-0.6, 0.6));
    private static final Key<Toleranced> OHMS = Key.optional(
            "ohms",
            Amounts.toleranced(Unit.OHM, "±60 %"),
            "contact resistance; left out: the connector model's, or 5 mohm ±60 %");
    private static final Shape<Said> SHAPE = new Shape<>(
            "a contact",
            "One contact of a connector.",
            List.of(BOARD, HARNESS, OHMS),
            v -> new Said(v.name(), v.get(BOARD), v.get(HARNESS), v.find(OHMS)));

    /** A contact as the file says it. */
    record Said(
            String label, Net board, Net harness, @Nullable Toleranced ohms) {
        /** With what the connector's model says, or what is usual, where its own resistance is left out. */
        Connector.Contact of(@Nullable ConnectorModel model) {
            Toleranced usual = model == null ? USUAL : model.ohms();
            return new Connector.Contact(label, board, harness, ohms == null ? usual : ohms);
        }
    }

    @Override
    public @Nullable Said read(Located item, Spot spot) {
        if (item instanceof Located.Row row) {
            List<Located.Entry> entries = new ArrayList<>();
            for (Located each : row.items()) {
                if (each instanceof Located.Table pair) {
                    entries.addAll(pair.entries());
                }
            }
            if (!row.items().isEmpty() && entries.size() == row.items().size()) {
                return SHAPE.read(new Located.Table(entries, row.place()), spot);
            }
        }
        return SHAPE.read(item, spot);
    }

    @Override
    public Json schema(Dialect dialect) {
        Json pair = Json.of("type", "object")
                .with(
                        "properties",
                        Json.of("board", Forms.NET.schema(dialect))
                                .with("harness", Forms.NET.schema(dialect))
                                .with("ohms", OHMS.form().schema(dialect)))
                .with("additionalProperties", false)
                .with("minProperties", 1)
                .with("maxProperties", 1);
        Json row =
                Json.of("type", "array").with("items", pair).with("minItems", 2).with("maxItems", 3);
        return Json.of("anyOf", List.of(SHAPE.schema(dialect), row));
    }
}
