package ribmark.anatomy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The sheep of the content folder, and operations written as lines of words. */
final class Ovine {

    static final Skeleton USUAL = Skeleton.of(bones(), joints());

    private Ovine() {}

    static List<Bone> bones() {
        return rows(
                "skeleton.csv",
                row -> Bone.of(
                        row.get("id"),
                        row.get("name_en"),
                        row.get("name_la"),
                        row.get("side"),
                        row.get("region"),
                        row.get("uberon"),
                        row.get("source")));
    }

    static List<Joint> joints() {
        return rows(
                "joints.csv",
                row -> Joint.of(
                        row.get("id"),
                        row.get("name_en"),
                        row.get("type"),
                        row.get("bone_a"),
                        row.get("bone_b"),
                        row.get("source"),
                        row.get("end_a"),
                        row.get("end_b")));
    }

    static Skeleton with(String formula) {
        return USUAL.withFormula(Formula.parse(formula));
    }

    static Animal usual() {
        return Animal.whole(USUAL);
    }

    /** The animal after lines such as {@code saw midline T1 T2}; several operations may stand in one line with semicolons. */
    static Animal after(Animal animal, String... lines) {
        Ids ids = Ids.of(animal.skeleton());
        return animal.after(operations(lines).stream()
                .flatMap(operation -> ids.operations(operation).stream())
                .toList());
    }

    static List<Operation> operations(String... lines) {
        return Stream.of(lines)
                .flatMap(line -> Stream.of(line.split(";")))
                .map(String::strip)
                .map(Ovine::operation)
                .toList();
    }

    private static Operation operation(String line) {
        List<String> words = new ArrayList<>(Arrays.asList(line.split("\\s+")));
        return switch (words.remove(0)) {
            case "sever" -> Operation.of(words, null, null, null);
            case "lift" -> Operation.of(null, null, null, words);
            default -> {
                String plane = words.remove(0);
                yield Operation.of(null, words, plane, null);
            }
        };
    }

    /** Sizes of the pieces, largest first. */
    static List<Integer> sizes(Animal animal) {
        return animal.pieces().stream().map(Piece::size).toList();
    }

    private interface Reading<T> {
        T from(CSVRecord row);
    }

    private static <T> List<T> rows(String file, Reading<T> reading) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var reader = Files.newBufferedReader(Path.of("content", "ovine", file));
                var parser = format.parse(reader)) {
            return parser.stream().map(reading::from).toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
