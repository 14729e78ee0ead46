package ribmark.proof;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ribmark.basics.Side;
import ribmark.contentfiles.ContentProblem;

/** The check as a program reads it. */
public final class CheckJson {

    private CheckJson() {}

    /** Whether all is well, what each breakdown ends in, and every problem. */
    public static JsonNode of(Check check) {
        ObjectNode root = JsonNodeFactory.instance.objectNode().put("ok", check.ok());
        ArrayNode breakdowns = root.putArray("breakdowns");
        check.proofs().forEach(proof -> add(proof, breakdowns.addObject()));
        ArrayNode problems = root.putArray("problems");
        check.problems().forEach(problem -> add(problem, problems.addObject()));
        return root;
    }

    private static void add(Proof proof, ObjectNode node) {
        node.put("breakdown", proof.breakdown())
                .put("formula", proof.formula())
                .put("steps", proof.steps())
                .put("bones", proof.bones())
                .put("joints", proof.joints());
        ArrayNode pieces = node.putArray("pieces");
        for (Freed freed : proof.pieces()) {
            ObjectNode piece = pieces.addObject().put("cut", freed.cut());
            piece.put("side", freed.side() == Side.ONCE ? null : freed.side().word());
            freed.holds().forEach(piece.putArray("holds")::add);
        }
    }

    private static void add(ContentProblem problem, ObjectNode node) {
        node.put("code", problem.code())
                .put("headline", problem.headline())
                .put("file", problem.file())
                .put("line", problem.line())
                .put("column", problem.column())
                .put("why", problem.why())
                .put("help", problem.help());
    }
}
