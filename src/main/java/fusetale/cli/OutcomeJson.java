package fusetale.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Stress;
import fusetale.bench.Arrangement;
import fusetale.bench.Climbing;
import fusetale.bench.Reading;
import fusetale.circuit.FuseLink;
import fusetale.explore.ComesAndGoes;
import fusetale.explore.Compared;
import fusetale.explore.Doubt;
import fusetale.explore.FuseFate;
import fusetale.explore.Noticed;
import fusetale.explore.Outcome;
import fusetale.explore.StagedStart;
import fusetale.quantity.Quantity;
import fusetale.report.Settings;
import fusetale.report.Tables;
import fusetale.sentence.SentencePrinter;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/**
 * Outcomes as JSON. The keys are documented in the README and stay; new ones come behind the old ones of their object.
 * Numbers are SI; null stands where the meter shows OL, or for a time without end.
 */
final class OutcomeJson {
    private final JsonGenerator json;
    private final Outcome outcome;

    OutcomeJson(JsonGenerator json, Outcome outcome) {
        this.json = json;
        this.outcome = outcome;
    }

    /** Of {@code suppose}. */
    static String suppose(Asking asked, String sentence, Tables.More more) {
        return JsonText.object(json -> {
            new OutcomeJson(json, asked.outcome()).supposition(asked, sentence);
            Aftermath aftermath = asked.outcome().aftermath();
            if (more.stress()) {
                new OutcomeJson(json, asked.outcome())
                        .stresses("strains", asked.outcome().strains());
            }
            if (more.aftermath() && aftermath != null) {
                AftermathJson.write(json, aftermath);
            }
        });
    }

    /** Of {@code suppose --staged}: the outcome of the last stage, the stages behind. */
    static String suppose(Asking asked, String sentence, StagedStart start) {
        return JsonText.object(json -> {
            new OutcomeJson(json, asked.outcome()).supposition(asked, sentence);
            BenchJson.stages(json, start);
        });
    }

    /** Of {@code readings --staged}. */
    static String readings(Asking asked, StagedStart start) {
        return JsonText.object(json -> {
            new OutcomeJson(json, asked.outcome()).healthy(asked);
            BenchJson.stages(json, start);
        });
    }

    /** Of {@code readings}. */
    static String readings(Asking asked) {
        return JsonText.object(json -> new OutcomeJson(json, asked.outcome()).healthy(asked));
    }

    private void supposition(Asking asked, String sentence) throws IOException {
        head();
        json.writeArrayFieldStart("supposition");
        for (String clause : SentencePrinter.compactClauses(outcome.question().supposition())) {
            json.writeString(clause);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("readings");
        for (Compared row : outcome.readings()) {
            compared(row);
        }
        json.writeEndArray();
        tail(asked);
        json.writeStringField("sentence", sentence);
        json.writeBooleanField("doNotPowerUp", outcome.doNotPowerUp());
        setting();
        stresses("stresses", outcome.stresses());
        observations(true);
        comesAndGoes();
        new BenchJson(json, outcome).write();
        SwapsJson.write(json, outcome.swaps());
    }

    /** A reading as built beside as supposed. */
    void compared(Compared row) throws IOException {
        json.writeStartObject();
        check(row);
        value("asBuilt", row.asBuilt());
        value("asSupposed", row.asSupposed());
        range(row);
        json.writeStringField("shows", row.asSupposed().shows());
        JsonText.number(json, "moved", row.moved());
        json.writeStringField("asBuiltShows", row.asBuilt().shows());
        json.writeStringField("label", outcome.label(row));
        climbing("climbing", row.asSupposed());
        climbing("asBuiltClimbing", row.asBuilt());
        json.writeEndObject();
    }

    private void healthy(Asking asked) throws IOException {
        head();
        json.writeArrayFieldStart("readings");
        for (Compared row : outcome.readings()) {
            json.writeStartObject();
            check(row);
            value("asBuilt", row.asBuilt());
            range(row);
            json.writeStringField("shows", row.asBuilt().shows());
            json.writeStringField("label", outcome.label(row));
            climbing("climbing", row.asBuilt());
            json.writeEndObject();
        }
        json.writeEndArray();
        tail(asked);
        setting();
        stresses("stresses", outcome.stresses());
        observations(false);
        new BenchJson(json, outcome).write();
    }

    private void head() throws IOException {
        json.writeStringField("circuit", outcome.question().healthy().name());
        json.writeStringField("arrangement", outcome.question().arrangement().name());
    }

    private void check(Compared row) throws IOException {
        json.writeStringField("from", row.check().from());
        json.writeStringField("to", row.check().to());
        json.writeStringField("function", row.check().function().words());
        json.writeStringField("unit", row.check().function().unit().symbol());
    }

    private void value(String key, Reading reading) throws IOException {
        JsonText.number(json, key, reading.overRange() ? Double.POSITIVE_INFINITY : reading.value());
    }

    private void climbing(String key, Reading reading) throws IOException {
        Climbing climbing = reading.climbing();
        if (climbing == null) {
            json.writeNullField(key);
            return;
        }
        json.writeObjectFieldStart(key);
        JsonText.number(json, "afterSeconds", Climbing.AFTER_SECONDS);
        shown("value", "shows", climbing.after());
        shown("settles", "settlesShows", climbing.settled());
        json.writeEndObject();
    }

    private void shown(String valueKey, String showsKey, Climbing.Shown shown) throws IOException {
        JsonText.number(json, valueKey, shown.overRange() ? Double.POSITIVE_INFINITY : shown.value());
        json.writeStringField(showsKey, shown.shows());
    }

    private void observations(boolean supposed) throws IOException {
        json.writeArrayFieldStart("observations");
        for (Noticed noticed : outcome.observations()) {
            json.writeStartObject();
            json.writeStringField("part", noticed.part());
            json.writeStringField("what", noticed.what().words());
            json.writeStringField("asBuilt", noticed.asBuilt());
            if (supposed) {
                json.writeStringField("asSupposed", noticed.asSupposed());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void comesAndGoes() throws IOException {
        json.writeArrayFieldStart("comesAndGoes");
        for (ComesAndGoes each : outcome.comingAndGoing()) {
            json.writeStartObject();
            json.writeStringField("from", each.check().from());
            json.writeStringField("to", each.check().to());
            json.writeStringField("function", each.check().function().words());
            json.writeStringField("unit", each.check().function().unit().symbol());
            value("good", each.good());
            value("bad", each.bad());
            json.writeStringField("goodShows", each.good().shows());
            json.writeStringField("badShows", each.bad().shows());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void range(Compared row) throws IOException {
        JsonText.number(json, "low", row.healthy().low());
        JsonText.number(json, "high", row.healthy().high());
    }

    /** Fuses, notes, solver: the same for every outcome. */
    private void tail(Asking asked) throws IOException {
        fuses();
        json.writeArrayFieldStart("notes");
        for (Doubt doubt : outcome.doubts()) {
            json.writeStartObject();
            json.writeStringField("severity", doubt.severity().name().toLowerCase(Locale.ROOT));
            json.writeStringField("text", doubt.text());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeObjectFieldStart("solver");
        json.writeStringField("method", outcome.effort().method());
        json.writeNumberField("passes", outcome.effort().passes());
        JsonText.number(json, "milliseconds", Math.rint(asked.milliseconds() * 10) / 10);
        JsonText.number(json, "residual", outcome.effort().residual());
        json.writeNumberField("solves", outcome.effort().solves());
        json.writeEndObject();
    }

    /** What becomes of each fuse. */
    void fuses() throws IOException {
        json.writeArrayFieldStart("fuses");
        for (FuseFate fuse : outcome.fuses()) {
            fuse(fuse);
        }
        json.writeEndArray();
    }

    private void fuse(FuseFate fuse) throws IOException {
        json.writeStartObject();
        json.writeStringField("part", fuse.part());
        json.writeStringField("state", fuse.state().words());
        FuseFate.Between seconds = fuse.seconds();
        if (seconds == null) {
            json.writeNullField("seconds");
        } else {
            json.writeArrayFieldStart("seconds");
            JsonText.number(json, seconds.least());
            JsonText.number(json, seconds.most());
            json.writeEndArray();
        }
        JsonText.number(json, "amps", fuse.amps());
        link("marked", fuse.marked());
        link("fitted", fuse.fitted());
        json.writeEndObject();
    }

    private void link(String key, FuseLink link) throws IOException {
        json.writeObjectFieldStart(key);
        Quantity rated = link.ratedAmps();
        JsonText.number(json, "amps", rated.si());
        json.writeStringField("speed", link.speed() == FuseLink.Speed.SLOW ? "slow" : "quick");
        json.writeEndObject();
    }

    private void setting() throws IOException {
        Arrangement arrangement = outcome.question().arrangement();
        json.writeObjectFieldStart("bench");
        json.writeBooleanField("powerOn", arrangement.powerOn());
        JsonText.number(json, "mainsVolts", arrangement.powerOn() ? arrangement.mainsVolts() : 0);
        json.writeStringField("words", Settings.words(arrangement));
        json.writeStringField("meter", outcome.question().meter().words());
        json.writeEndObject();
    }

    private void stresses(String key, List<Stress> rows) throws IOException {
        json.writeArrayFieldStart(key);
        for (Stress stress : rows) {
            json.writeStartObject();
            json.writeStringField("part", stress.part());
            json.writeStringField("place", stress.place());
            json.writeStringField("what", stress.strain().words());
            json.writeStringField("unit", stress.strain().unit().symbol());
            JsonText.number(json, "value", stress.value());
            JsonText.number(json, "rating", stress.limit());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
