package fusetale.circuit;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** Says in a repairer's words what the YAML parser stumbled over. */
final class YamlComplaint {
    private YamlComplaint() {}

    /** Where it happened: for a key without colon the key, not what follows it. */
    static int line(MarkedYamlEngineException e) {
        boolean keyAlone = String.valueOf(e.getProblem()).contains("could not find expected ':'");
        Optional<Mark> first = keyAlone ? e.getContextMark() : e.getProblemMark();
        return first.or(e::getProblemMark)
                .or(e::getContextMark)
                .map(m -> m.getLine() + 1)
                .orElse(0);
    }

    static String inWords(MarkedYamlEngineException e) {
        String problem = String.valueOf(e.getProblem());
        String context = String.valueOf(e.getContext());
        String opened = opened(e.getContextMark());
        if (problem.contains("stream end") || problem.contains("unexpected end of stream")) {
            return "the file ends in the middle of " + inside(context) + opened + "; is it cut short?";
        }
        if (problem.contains("'\\t'") || problem.contains("\\t(TAB)")) {
            return "a tab stands here; indent with spaces";
        }
        if (problem.contains("mapping values are not allowed here")) {
            return "a second colon stands on this line, or the line above is not finished; put texts with a colon in"
                    + " quotes";
        }
        if (problem.contains("could not find expected ':'")) {
            return "this line has no colon behind its key, or belongs to the line above and is indented too little";
        }
        if (problem.contains("expected <block end>")) {
            return "this line is indented differently from the lines it belongs to"
                    + opened.replace(" that begins", ", which begin");
        }
        if (problem.contains("expected ',' or")) {
            return "a comma or a closing bracket is missing in " + inside(context) + opened;
        }
        if (problem.contains("undefined alias")) {
            return "this alias (*name) points to nothing above it";
        }
        return "this is not readable as YAML: " + problem + opened;
    }

    private static String inside(String context) {
        if (context.contains("flow mapping")) {
            return "{...}";
        }
        if (context.contains("flow sequence")) {
            return "[...]";
        }
        if (context.contains("quoted scalar")) {
            return "a text in quotes";
        }
        return context.contains("flow") ? "{...} or [...]" : "something";
    }

    private static String opened(Optional<Mark> context) {
        return context.map(m -> " that begins on line " + (m.getLine() + 1)).orElse("");
    }
}
