package ribmark.admin;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.type.LogicalType;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import ribmark.basics.Refused;

/** Reads one file of the demo, strictly: a word it does not know, a name given twice and a number where words belong are refused. */
final class DemoFile {

    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
            .withCoercionConfig(
                    LogicalType.Textual,
                    strict -> strict.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                            .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                            .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
            .build();

    private DemoFile() {}

    /** The file under demo-data, as the record it holds. */
    static <T> T read(String name, Class<T> type) {
        String file = "demo-data/" + name;
        try (InputStream in = DemoFile.class.getResourceAsStream("/" + file)) {
            if (in == null) {
                throw new Refused(file + " is not there.");
            }
            LoadSettings settings = LoadSettings.builder().setLabel(file).build();
            return MAPPER.convertValue(new Load(settings).loadFromInputStream(in), type);
        } catch (YamlEngineException | IllegalArgumentException wrong) {
            throw new Refused(file + ": " + wrong.getMessage());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A file under demo-data as it stands. */
    static byte[] bytes(String name) {
        try (InputStream in = DemoFile.class.getResourceAsStream("/demo-data/" + name)) {
            return needed(in, name).readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A value that must be there. */
    static <T> T needed(T value, String name) {
        if (value == null) {
            throw new Refused("“" + name + "” is missing.");
        }
        return value;
    }
}
