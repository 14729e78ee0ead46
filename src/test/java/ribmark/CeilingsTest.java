package ribmark;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** No method over 30 lines, no file over 300, the median method at most 5, no part over 30 files. */
class CeilingsTest {

    private static final Path JAVA = Path.of("src/main/java");

    @Test
    void methods_stay_short() throws IOException {
        Map<String, Long> methods = methods();

        assertThat(methods.entrySet().stream().filter(m -> m.getValue() > 30))
                .as("methods over 30 lines")
                .isEmpty();
        List<Long> lengths = methods.values().stream().sorted().toList();
        assertThat(lengths.get(lengths.size() / 2))
                .as("median method, in lines")
                .isLessThanOrEqualTo(5);
    }

    @Test
    void files_stay_short() throws IOException {
        List<String> long_ = new ArrayList<>();
        for (Path file : sources()) {
            try (Stream<String> lines = Files.lines(file)) {
                if (lines.count() > 300) {
                    long_.add(file.toString());
                }
            }
        }
        assertThat(long_).as("files over 300 lines").isEmpty();
    }

    private static Map<String, Long> methods() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        Map<String, Long> found = new TreeMap<>();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, d -> {}, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(sources()));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                new Lengths(unit, positions, found).scan(unit, null);
            }
        }
        return found;
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> all = Files.walk(JAVA)) {
            return all.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }

    private static final class Lengths extends TreeScanner<Void, Void> {

        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final Map<String, Long> found;

        Lengths(CompilationUnitTree unit, SourcePositions positions, Map<String, Long> found) {
            this.unit = unit;
            this.positions = positions;
            this.found = found;
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            if (method.getBody() != null) {
                LineMap lines = unit.getLineMap();
                long first = lines.getLineNumber(positions.getStartPosition(unit, method));
                long last = lines.getLineNumber(positions.getEndPosition(unit, method));
                found.put(unit.getSourceFile().getName() + ":" + first + " " + method.getName(), last - first + 1);
            }
            return super.visitMethod(method, nothing);
        }
    }
}
