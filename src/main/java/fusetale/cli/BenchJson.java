package fusetale.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fusetale.aftermath.FusePulse;
import fusetale.aftermath.Surge;
import fusetale.explore.Compared;
import fusetale.explore.Outcome;
import fusetale.explore.PulseFigures;
import fusetale.explore.Pulsed;
import fusetale.explore.PulsedClamp;
import fusetale.explore.SeriesLamp;
import fusetale.explore.StagedStart;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** What the arrangement itself shows, as JSON: series lamp, pulses, stages. Documented in the README. */
final class BenchJson {
    private final JsonGenerator json;
    private final Outcome outcome;
    private final boolean supposed;

    BenchJson(JsonGenerator json, Outcome outcome) {
        this.json = json;
        this.outcome = outcome;
        this.supposed = !outcome.question().supposition().isNothing();
    }

    /** The keys {@code seriesLamp} and {@code pulses}. */
    void write() throws IOException {
        lamp();
        json.writeArrayFieldStart("pulses");
        for (Pulsed pulsed : outcome.bench().pulses()) {
            pulse(pulsed);
        }
        json.writeEndArray();
    }

    private void lamp() throws IOException {
        SeriesLamp lamp = outcome.bench().seriesLamp();
        if (lamp == null) {
            json.writeNullField("seriesLamp");
            return;
        }
        json.writeObjectFieldStart("seriesLamp");
        JsonText.number(json, "ratedWatts", lamp.ratedWatts());
        glow("asBuilt", lamp.asBuilt());
        if (supposed) {
            glow("asSupposed", lamp.asSupposed());
        }
        json.writeEndObject();
    }

    private void glow(String key, SeriesLamp.Glow glow) throws IOException {
        json.writeObjectFieldStart(key);
        JsonText.number(json, "watts", glow.watts());
        JsonText.number(json, "volts", glow.volts());
        JsonText.number(json, "mainsAmps", glow.mainsAmps());
        JsonText.number(json, "share", glow.shareRatio());
        json.writeStringField("brightness", glow.brightness().words());
        json.writeEndObject();
    }

    private void pulse(Pulsed pulsed) throws IOException {
        json.writeStartObject();
        json.writeStringField("part", pulsed.driven());
        JsonText.number(json, "seconds", pulsed.seconds());
        json.writeStringField("driver", pulsed.driver());
        number("pullInAmps", pulsed.pullInAmps());
        number("holdAmps", pulsed.holdAmps());
        JsonText.number(json, "driverRatedAmps", pulsed.stoodAsSupposed().steadyAmps());
        JsonText.number(json, "driverRatedPeakAmps", pulsed.stoodAsSupposed().peakAmps());
        number("avalancheRatedJoules", pulsed.avalancheRatedJoules());
        side("asBuilt", pulsed.asBuilt());
        if (supposed) {
            side("asSupposed", pulsed.asSupposed());
        }
        json.writeArrayFieldStart("fuses");
        for (Pulsed.PulsedFuse fuse : pulsed.fuses()) {
            json.writeStartObject();
            json.writeStringField("part", fuse.part());
            fuse("asBuilt", fuse.asBuilt());
            if (supposed) {
                fuse("asSupposed", fuse.asSupposed());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("clamps");
        for (PulsedClamp clamp : pulsed.clamps()) {
            json.writeStartObject();
            json.writeStringField("part", clamp.part());
            clamp("asBuilt", clamp.asBuilt());
            if (supposed) {
                clamp("asSupposed", clamp.asSupposed());
            }
            JsonText.number(json, "ratedAmps", clamp.stoodAsSupposed().peakAmps());
            JsonText.number(
                    json, "ratedAmpsSquaredSeconds", clamp.stoodAsSupposed().pulseAmpsSquaredSeconds());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void clamp(String key, Surge surge) throws IOException {
        json.writeObjectFieldStart(key);
        JsonText.number(json, "highestAmps", surge.peakAmps());
        JsonText.number(json, "ampsSquaredSeconds", surge.ampsSquaredSeconds());
        json.writeEndObject();
    }

    private void side(String key, List<PulseFigures> side) throws IOException {
        json.writeObjectFieldStart(key);
        json.writeNumberField("moments", side.size());
        range("highestAmps", side, PulseFigures::reachedAmps);
        range("driverHighestAmps", side, PulseFigures::driverPeakAmps);
        range("driverSteadyAmps", side, PulseFigures::driverSteadyAmps);
        range("pullInSeconds", side, PulseFigures::pullInSeconds);
        json.writeNumberField(
                "pullsIn", Pulsed.range(side, PulseFigures::pullInSeconds).moments());
        range("takenJoules", side, PulseFigures::takenJoules);
        range("dipVolts", side, PulseFigures::dipVolts);
        range("storedJoules", side, PulseFigures::storedJoules);
        range("highestVolts", side, PulseFigures::peakVolts);
        json.writeArrayFieldStart("limitedBy");
        for (PulseFigures each : side) {
            json.writeStartObject();
            json.writeStringField("part", each.limit().part());
            json.writeStringField(
                    "how", each.limit().kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            json.writeEndObject();
        }
        json.writeEndArray();
        range("limitJoules", side, PulseFigures::limitJoules);
        range("avalancheJoules", side, PulseFigures::avalancheJoules);
        range("dropOutSeconds", side, PulseFigures::dropOutSeconds);
        json.writeEndObject();
    }

    /** {@code [least, most]}, null where it never happens. */
    private void range(String key, List<PulseFigures> side, ToDoubleFunction<PulseFigures> figure) throws IOException {
        Pulsed.Range range = Pulsed.range(side, figure);
        if (range.moments() == 0) {
            json.writeNullField(key);
            return;
        }
        json.writeArrayFieldStart(key);
        JsonText.number(json, range.least());
        JsonText.number(json, range.most());
        json.writeEndArray();
    }

    private void fuse(String key, FusePulse pulse) throws IOException {
        json.writeObjectFieldStart(key);
        JsonText.number(json, "ampsSquaredSeconds", pulse.ampsSquaredSeconds());
        JsonText.number(json, "meltingAmpsSquaredSeconds", pulse.meltingAmpsSquaredSeconds());
        json.writeNumberField("pulsesWithstood", pulse.withstood());
        json.writeEndObject();
    }

    /** A number that may be unknown. */
    private void number(String key, double value) throws IOException {
        JsonText.number(json, key, Double.isNaN(value) ? Double.POSITIVE_INFINITY : value);
    }

    /** The keys {@code stages} and {@code firstShown}. */
    static void stages(JsonGenerator json, StagedStart start) throws IOException {
        json.writeArrayFieldStart("stages");
        for (StagedStart.Stage stage : start.stages()) {
            json.writeStartObject();
            json.writeStringField("stage", stage.name());
            strings(json, "in", stage.in());
            strings(json, "pulled", stage.outcome().question().arrangement().pulledFuses());
            strings(json, "unplugged", stage.outcome().question().arrangement().unplugged());
            json.writeBooleanField("goOn", stage.goOn());
            strings(json, "reasons", stage.reasons());
            OutcomeJson outcome = new OutcomeJson(json, stage.outcome());
            json.writeArrayFieldStart("readings");
            for (Compared row : stage.telling()) {
                outcome.compared(row);
            }
            json.writeEndArray();
            outcome.fuses();
            new BenchJson(json, stage.outcome()).lamp();
            json.writeEndObject();
        }
        json.writeEndArray();
        @Nullable Integer shown = start.firstShown().orElse(null);
        if (shown == null) {
            json.writeNullField("firstShown");
        } else {
            json.writeNumberField("firstShown", shown);
        }
    }

    private static void strings(JsonGenerator json, String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
