package ribmark;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The map of the house is the code: who may use whom, compared for equality, so that no rule can fall asleep. */
class ArchitectureTest {

    private static final String ROOT = "ribmark";

    /** One line a part: the part, and the parts it uses. */
    private static final Map<String, Set<String>> MAP = map(
            "basics",
            "web basics",
            "database basics",
            "anatomy basics",
            "scoring basics",
            "slips basics scoring",
            "weighup basics scoring slips",
            "competence basics",
            "evidence basics database web",
            "people basics database evidence web",
            "curriculum anatomy basics competence scoring slips web",
            "moved anatomy basics curriculum web",
            "bonemap anatomy basics competence curriculum moved web",
            "contentfiles basics",
            "proof anatomy basics competence contentfiles curriculum scoring slips web",
            "carcase anatomy basics curriculum database evidence people scoring web",
            "blocksheet moved anatomy basics carcase competence curriculum database evidence people web",
            "signing basics blocksheet carcase competence curriculum database evidence people web",
            "scales basics curriculum database evidence people scoring web",
            "cuttingtests basics carcase curriculum database evidence people scoring web",
            "weighing anatomy basics blocksheet carcase curriculum cuttingtests database evidence people scales scoring slips web weighup",
            "weighupfile basics scoring slips weighup",
            "feedback basics blocksheet carcase competence curriculum database evidence people web weighing",
            "drills anatomy basics curriculum moved",
            "study basics curriculum database drills people web",
            "progress basics blocksheet bonemap carcase competence curriculum feedback people signing study web",
            "export basics blocksheet carcase competence curriculum database evidence people progress signing web",
            "admin anatomy basics blocksheet carcase competence contentfiles curriculum database export feedback moved people proof scales scoring signing slips study web weighing weighup weighupfile");

    /** Parts that know neither files nor tables nor the web. */
    private static final Set<String> PURE = Set.of("anatomy", "scoring", "slips", "weighup", "competence", "basics");

    private final JavaClasses classes = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);

    @Test
    void every_part_uses_just_the_parts_the_map_says() {
        Map<String, Set<String>> found = new TreeMap<>();
        for (JavaClass each : classes) {
            if (!part(each).isEmpty()) {
                found.computeIfAbsent(part(each), part -> new TreeSet<>()).addAll(used(each));
            }
        }
        assertThat(found).isEqualTo(MAP);
    }

    @Test
    void no_circle_joins_two_parts() {
        for (String part : MAP.keySet()) {
            assertThat(reached(part, new TreeSet<>()))
                    .as("parts reached from " + part)
                    .doesNotContain(part);
        }
    }

    @Test
    void pure_parts_know_neither_tables_nor_pages_nor_files() {
        Set<String> impure = classes.stream()
                .filter(each -> PURE.contains(part(each)))
                .flatMap(each -> each.getDirectDependenciesFromSelf().stream())
                .map(Dependency::getTargetClass)
                .map(JavaClass::getPackageName)
                .filter(name -> name.startsWith("java.sql")
                        || name.startsWith("java.nio")
                        || name.startsWith("java.io")
                        || name.startsWith("java.net")
                        || name.startsWith("org.jdbi")
                        || name.startsWith("io.javalin")
                        || name.startsWith("com.fasterxml"))
                .filter(name -> !name.equals("java.io"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(impure).isEmpty();
    }

    private static Set<String> reached(String from, Set<String> seen) {
        for (String next : MAP.getOrDefault(from, Set.of())) {
            if (seen.add(next)) {
                reached(next, seen);
            }
        }
        return seen;
    }

    private static Set<String> used(JavaClass each) {
        return each.getDirectDependenciesFromSelf().stream()
                .map(dependency -> part(dependency.getTargetClass().getBaseComponentType()))
                .filter(part -> !part.isEmpty() && !part.equals(part(each)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String part(JavaClass each) {
        String name = each.getPackageName();
        return name.startsWith(ROOT + ".") ? name.substring(ROOT.length() + 1) : "";
    }

    private static Map<String, Set<String>> map(String... lines) {
        Map<String, Set<String>> map = new TreeMap<>();
        for (String line : lines) {
            String[] words = line.split(" ");
            Set<String> uses = new TreeSet<>(Set.of(words));
            uses.remove(words[0]);
            map.put(words[0], uses);
        }
        return map;
    }
}
