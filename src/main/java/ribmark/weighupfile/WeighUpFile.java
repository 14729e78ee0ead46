package ribmark.weighupfile;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.basics.FileProblem;
import ribmark.scoring.Scale;
import ribmark.weighup.CarcaseReading;
import ribmark.weighup.Reading;
import ribmark.weighup.TrimReading;
import ribmark.weighup.WeighUp;

/** A weigh-up written as a file, read strictly: it holds either the weigh-up, or everything that is wrong with it. */
public record WeighUpFile(Optional<WeighUp> weighUp, List<FileProblem> problems) {

    private static final ObjectReader STRICT = JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build()
            .reader();
    private static final String[] KNOWN = {"breakdown", "reference", "carcase", "scale", "pieces", "trim"};

    /** Keeps its own copy of the problems. */
    public WeighUpFile {
        problems = List.copyOf(problems);
    }

    /** Reads one weigh-up, UTF-8 JSON, against the tables of its breakdown. */
    public static WeighUpFile read(byte[] json, References references) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(json));
            JsonNode root = STRICT.readTree(json);
            if (!root.isObject()) {
                return refused("", "A weigh-up is one object in braces", "Begin with { and end with }.");
            }
            return read(root, references);
        } catch (JsonProcessingException broken) {
            return refused(whereIn(broken), headline(broken), "Mend the file there; nothing else was read.");
        } catch (IOException unreadable) {
            return refused("", "This file is not UTF-8 text", "Save it as UTF-8.");
        }
    }

    private static WeighUpFile read(JsonNode root, References references) {
        List<FileProblem> problems = new ArrayList<>();
        Fields fields = new Fields(root, "", problems).only(KNOWN);
        fields.word("breakdown", List.of(references.breakdown()));
        Optional<Scale> scale = ScaleFields.ofTheFile(fields);
        Optional<CarcaseReading> carcase = CarcaseFields.read(fields, scale);
        TableFields tables = TableFields.read(fields, references, carcase);
        List<Reading> readings = new PieceFields(tables, carcase, scale).read(fields);
        List<TrimReading> trim = fields.has("trim") ? TrimFields.read(fields, references) : List.of();
        return problems.isEmpty()
                ? new WeighUpFile(
                        Optional.of(new WeighUp(
                                carcase.orElseThrow().ruledBy(references.permissible()),
                                tables.tables(),
                                readings.stream()
                                        .map(reading -> reading.ruledBy(references.permissible()))
                                        .toList(),
                                trim,
                                references.formula())),
                        List.of())
                : new WeighUpFile(Optional.empty(), problems);
    }

    private static WeighUpFile refused(String at, String headline, String help) {
        return new WeighUpFile(Optional.empty(), List.of(new FileProblem(at, headline, help)));
    }

    private static String whereIn(JsonProcessingException broken) {
        var place = broken.getLocation();
        return place == null ? "" : "line " + place.getLineNr() + ", column " + place.getColumnNr();
    }

    private static String headline(JsonProcessingException broken) {
        if (broken instanceof StreamConstraintsException) {
            return "Nothing in a weigh-up is that long, or that deep";
        }
        String message = broken.getOriginalMessage();
        return message.startsWith("Duplicate field")
                ? "A field stands twice: " + message.substring("Duplicate field ".length())
                : "This is not JSON";
    }
}
