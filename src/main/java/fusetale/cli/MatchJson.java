package fusetale.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fusetale.match.Advice;
import fusetale.match.Ask;
import fusetale.match.Candidate;
import fusetale.match.Evidence;
import fusetale.match.Findings;
import fusetale.match.LookAlike;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.match.Repair;
import fusetale.match.Shown;
import fusetale.match.Weighed;
import fusetale.report.MatchTables;
import fusetale.report.MatchWords;
import fusetale.report.Matched;
import fusetale.sentence.SentencePrinter;
import java.io.IOException;
import java.util.List;

/**
 * What matching found, as JSON; described by {@code shared/reference/schema/match.schema.json}. The keys stay; new ones come
 * behind the old ones of their object. Figures are SI, shares 0 to 1.
 */
final class MatchJson {
    private final Matched matched;
    private final MatchWords words;
    private final JsonGenerator json;

    private MatchJson(Matched matched, JsonGenerator json) {
        this.matched = matched;
        this.words = new MatchWords(matched.circuit());
        this.json = json;
    }

    /** One object. */
    static String text(Matched matched) {
        return JsonText.object(json -> new MatchJson(matched, json).write());
    }

    private void write() throws IOException {
        Ranking ranking = matched.ranking();
        json.writeStringField("circuit", matched.circuit().name());
        json.writeStringField("meter", matched.meter().words());
        findings();
        json.writeArrayFieldStart("candidates");
        for (Candidate candidate : ranking.candidates()) {
            candidate(candidate);
        }
        json.writeEndArray();
        json.writeObjectFieldStart("somethingElse");
        share(ranking.somethingElse());
        json.writeBooleanField("likely", ranking.notInTheList());
        json.writeEndObject();
        json.writeArrayFieldStart("suspects");
        for (Ranking.Suspect suspect : ranking.suspects()) {
            json.writeStartObject();
            json.writeNumberField("reading", suspect.index());
            share(suspect.share());
            json.writeBooleanField("repeated", suspect.repeated());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("lookAlikes");
        for (LookAlike group : ranking.lookAlikes()) {
            lookAlike(group);
        }
        json.writeEndArray();
        json.writeBooleanField("doNotPowerUp", !ranking.danger().isEmpty());
        texts("danger", ranking.danger());
        howFar(ranking.howFar());
        NextReadings next = matched.next();
        if (next == null) {
            json.writeNullField("next");
        } else {
            next(next);
        }
        texts("cautions", MatchWords.cautions());
    }

    private void share(double ratio) throws IOException {
        JsonText.number(json, "share", ratio);
        json.writeStringField("said", MatchWords.said(ratio));
    }

    private void texts(String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private void findings() throws IOException {
        json.writeArrayFieldStart("findings");
        int index = 0;
        for (Findings.Spell spell : matched.findings().spells()) {
            json.writeStartObject();
            texts("replaced", spell.replaced());
            json.writeArrayFieldStart("readings");
            for (Evidence evidence : spell.evidence()) {
                evidence(evidence, index++);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void evidence(Evidence evidence, int index) throws IOException {
        json.writeStartObject();
        json.writeNumberField("reading", index);
        if (index < matched.lines().size()) {
            json.writeNumberField("line", matched.lines().get(index));
        } else {
            json.writeNullField("line");
        }
        ask(evidence.ask());
        JsonText.number(json, "value", evidence.shown() instanceof Shown.Figure figure ? figure.si() : Double.NaN);
        json.writeStringField("shows", words.shown(evidence));
        json.writeStringField("note", evidence.note());
        json.writeEndObject();
    }

    private void ask(Ask ask) throws IOException {
        json.writeStringField("arrangement", words.bench(ask));
        if (ask instanceof Ask.Metered metered) {
            json.writeStringField("function", metered.check().function().words());
            json.writeStringField("from", metered.check().from());
            json.writeStringField("to", metered.check().to());
            json.writeStringField("unit", metered.check().function().unit().symbol());
        } else if (ask instanceof Ask.Noticed noticed) {
            json.writeStringField("function", noticed.aspect().words());
            json.writeStringField("from", noticed.part());
            json.writeNullField("to");
            json.writeNullField("unit");
        }
    }

    private void candidate(Candidate candidate) throws IOException {
        json.writeStartObject();
        texts("repair", candidate.repair().parts());
        share(candidate.share());
        json.writeStringField("sentence", words.repair(candidate.repair()));
        json.writeArrayFieldStart("suppositions");
        for (Candidate.Likely likely : candidate.suppositions()) {
            json.writeStartObject();
            texts("supposition", SentencePrinter.compactClauses(likely.supposition()));
            json.writeStringField("sentence", words.sentence(likely.supposition()));
            JsonText.number(json, "share", likely.share());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeNumberField("fits", candidate.fits());
        json.writeArrayFieldStart("readings");
        for (Weighed weighed : candidate.evidence()) {
            weighed(weighed);
        }
        json.writeEndArray();
        texts("consequences", candidate.consequences());
        json.writeEndObject();
    }

    private void weighed(Weighed weighed) throws IOException {
        json.writeStartObject();
        json.writeStringField("reading", words.read(weighed.evidence()));
        json.writeStringField("expected", weighed.expected());
        JsonText.number(json, "low", weighed.low());
        JsonText.number(json, "high", weighed.high());
        json.writeBooleanField("fits", weighed.fits());
        JsonText.number(json, "away", weighed.away());
        JsonText.number(json, "bits", weighed.bits());
        JsonText.number(json, "slip", weighed.mistakeShare());
        json.writeEndObject();
    }

    private void lookAlike(LookAlike group) throws IOException {
        json.writeStartObject();
        json.writeArrayFieldStart("repairs");
        for (Repair repair : group.repairs()) {
            json.writeStartArray();
            for (String part : repair.parts()) {
                json.writeString(part);
            }
            json.writeEndArray();
        }
        json.writeEndArray();
        share(group.share());
        json.writeArrayFieldStart("partedBy");
        for (Advice advice : group.partedBy()) {
            advice(advice);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void howFar(Ranking.HowFar far) throws IOException {
        json.writeObjectFieldStart("howFar");
        json.writeNumberField("suppositions", far.suppositions());
        json.writeNumberField("ofSuppositions", far.of());
        json.writeNumberField("machines", far.boards());
        json.writeNumberField("ofMachines", far.ofBoards());
        json.writeBooleanField("complete", far.complete());
        json.writeEndObject();
    }

    private void next(NextReadings next) throws IOException {
        json.writeObjectFieldStart("next");
        json.writeStringField("verdict", MatchTables.verdict(next.verdict()));
        json.writeArrayFieldStart("advice");
        for (Advice advice : next.advice()) {
            advice(advice);
        }
        json.writeEndArray();
        json.writeStringField("replace", next.replace());
        Advice confirm = next.confirm();
        if (confirm == null) {
            json.writeNullField("confirm");
        } else {
            json.writeFieldName("confirm");
            advice(confirm);
        }
        json.writeEndObject();
    }

    private void advice(Advice advice) throws IOException {
        json.writeStartObject();
        texts("deeds", advice.deeds());
        ask(advice.ask());
        JsonText.number(json, "minutes", advice.minutes());
        JsonText.number(json, "bits", advice.bits());
        json.writeArrayFieldStart("meanings");
        for (Advice.Meaning meaning : advice.meanings()) {
            json.writeStartObject();
            json.writeStringField("shows", meaning.shows());
            JsonText.number(json, "chance", meaning.chance());
            texts("repair", meaning.repair().parts());
            json.writeBooleanField("somethingElse", meaning.somethingElse());
            JsonText.number(json, "share", meaning.share());
            json.writeEndObject();
        }
        json.writeEndArray();
        texts("cautions", advice.cautions());
        json.writeEndObject();
    }
}
