package ribmark.testing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import ribmark.basics.FileProblem;
import ribmark.weighup.WeighUpScore;
import ribmark.weighupfile.ScoreJson;
import ribmark.weighupfile.WeighUpFile;

/** Weigh-ups as they are typed into a file, with sound beginnings to change one thing in. */
public final class WeighUps {

    private static final JsonMapper JSON = new JsonMapper();

    private final String reference;
    private String carcase = "";
    private String scale = "\"scale\": {\"divisionG\": 5, \"repeatabilityG\": 2.0},";
    private String trim = "";
    private final List<String> pieces = new ArrayList<>();

    private WeighUps(String reference) {
        this.reference = reference;
    }

    public static WeighUps on(String... tables) {
        String names = "\"" + String.join("\", \"", tables) + "\"";
        return new WeighUps(tables.length == 1 ? names : "[" + names + "]");
    }

    public WeighUps carcase(String kg, String more) {
        carcase = "{\"weightKg\": \"" + kg + "\", " + more + "}";
        return this;
    }

    public WeighUps cold(String kg) {
        return carcase(kg, "\"weighed\": \"cold\", \"kidneys\": \"in\"");
    }

    public WeighUps scale(double division, double repeatability) {
        scale = "\"scale\": {\"divisionG\": " + division + ", \"repeatabilityG\": " + repeatability + "},";
        return this;
    }

    public WeighUps piece(String cut, String kg) {
        return piece(cut, kg, "");
    }

    public WeighUps piece(String cut, String kg, String more) {
        pieces.add("{\"cut\": \"" + cut + "\", \"weightKg\": \"" + kg + "\"" + more + "}");
        return this;
    }

    public WeighUps trim(String measure, String value, String division) {
        trim = ", \"trim\": [{\"measure\": \"" + measure + "\", \"value\": \"" + value + "\", \"division\": \""
                + division + "\"}]";
        return this;
    }

    public String json() {
        return "{\"breakdown\": \"lamb\", \"reference\": " + reference + ", \"carcase\": " + carcase + ", " + scale
                + " \"pieces\": [" + String.join(", ", pieces) + "]" + trim + "}";
    }

    public WeighUpScore score() {
        WeighUpFile file = read(json());
        if (file.weighUp().isEmpty()) {
            throw new AssertionError("refused: " + file.problems());
        }
        return WeighUpScore.of(file.weighUp().get());
    }

    public JsonNode scored() {
        WeighUpScore score = score();
        return tree(ScoreJson.of(score, score.finding(Tables.lamb().weighing())).toString());
    }

    public List<FileProblem> problems() {
        return problems(json());
    }

    public static List<FileProblem> problems(String json) {
        return read(json).problems();
    }

    public static WeighUpFile read(String json) {
        return WeighUpFile.read(json.getBytes(StandardCharsets.UTF_8), Tables.lamb());
    }

    public static JsonNode tree(String json) {
        try {
            return JSON.readTree(json);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
