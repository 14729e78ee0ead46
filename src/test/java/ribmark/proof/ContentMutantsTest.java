package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import ribmark.contentfiles.ContentFiles;
import ribmark.contentfiles.ContentProblem;

/**
 * Puts one fault at a time into the lamb, of every kind an author makes, and looks whether the check finds it, and where. A
 * sample in the ordinary build; all thousand with {@code -Ddrills=1000}.
 */
class ContentMutantsTest {

    private static final long SEED = 20261125;
    private static final int MANY = Math.min(1000, Integer.getInteger("drills", 60));

    private final ContentFiles lamb = ContentFiles.ours();
    private final List<Mutant> survivors = new ArrayList<>();
    private final List<Mutant> wrongLine = new ArrayList<>();
    private final List<Mutant> wrongColumn = new ArrayList<>();
    private int placed;
    private int messages;

    @Test
    void seeded_faults_are_caught_where_they_stand_with_one_message_each() {
        List<Mutant> mutants = mutants();
        mutants.forEach(this::judge);
        String told = "seed " + SEED + "\nsurvivors " + survivors.size() + " of " + mutants.size() + lines(survivors)
                + "\nwrong line " + wrongLine.size() + " of " + placed + lines(wrongLine) + "\nwrong column "
                + wrongColumn.size() + lines(wrongColumn) + "\nmessages for each cause "
                + (double) messages / (mutants.size() - survivors.size());
        if (MANY > 60) {
            System.out.println(told);
        }
        assertThat((double) survivors.size() / mutants.size()).as(told).isLessThanOrEqualTo(MANY < 1000 ? 0.04 : 0.01);
        assertThat(wrongLine).as(told).isEmpty();
        assertThat((double) wrongColumn.size() / placed).as(told).isLessThanOrEqualTo(0.05);
        assertThat((double) messages / (mutants.size() - survivors.size()))
                .as(told)
                .isLessThanOrEqualTo(1.2);
    }

    private static String lines(List<Mutant> mutants) {
        return mutants.isEmpty()
                ? ""
                : "\n  "
                        + String.join(
                                "\n  ", mutants.stream().map(Mutant::toString).toList());
    }

    /** Kind after kind in turn, so that none is missing from a sample; each fault once. */
    private List<Mutant> mutants() {
        Pen pen = new Pen(lamb, new Random(SEED));
        List<String> stages = List.of("intake", "wholesale", "legs", "fores", "middle", "close");
        Map<String, Supplier<Optional<Mutant>>> kinds = new LinkedHashMap<>(new Slips(pen).kinds());
        kinds.putAll(new Blocks(pen, stages).kinds());
        List<Mutant> mutants = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int round = 0; mutants.size() < MANY && round < 50 * MANY; round++) {
            for (Supplier<Optional<Mutant>> kind : kinds.values()) {
                kind.get()
                        .filter(m -> mutants.size() < MANY && seen.add(m.file() + m.text()))
                        .ifPresent(mutants::add);
            }
        }
        return mutants;
    }

    private void judge(Mutant mutant) {
        Map<String, byte[]> files = new TreeMap<>();
        lamb.paths().forEach(path -> files.put(path, lamb.bytes(path).orElseThrow()));
        files.put(mutant.file(), mutant.text().getBytes(StandardCharsets.UTF_8));
        List<ContentProblem> problems = Check.of(ContentFiles.of(files)).problems();
        if (problems.isEmpty()) {
            survivors.add(mutant);
            return;
        }
        messages += problems.size();
        if (mutant.hasPlace()) {
            placed++;
            if (!mutant.isInLineOf(problems)) {
                wrongLine.add(mutant);
            } else if (!mutant.isInColumnOf(problems)) {
                wrongColumn.add(mutant);
            }
        }
    }
}
