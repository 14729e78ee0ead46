package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ribmark.proof.Seeds.Seed;

/** One fault is seeded at a time; the check must point at the very line and column, and say nothing else. */
class ErrorPositionsTest {

    @Test
    void every_seeded_fault_is_found_where_it_stands() {
        List<String> wrong = new ArrayList<>();
        int messages = 0;
        for (Seed seed : Seeds.ALL) {
            List<String> found = found(seed);
            messages += found.size();
            if (found.stream().noneMatch(told -> told.startsWith(expected(seed) + " "))) {
                wrong.add("seed   " + seed.bad() + "\nwanted " + expected(seed) + "\nfound  " + found);
            }
        }
        assertThat(wrong).as(String.join("\n\n", wrong)).isEmpty();
        assertThat((double) messages / Seeds.ALL.size())
                .as("messages for each cause")
                .isLessThanOrEqualTo(1.2);
    }

    private static List<String> found(Seed seed) {
        return seed.check().problems().stream()
                .map(p -> p.code() + " " + p.file() + " " + p.line() + ":" + p.column() + " " + p.headline())
                .toList();
    }

    /** Where no sign stands, the code alone is awaited. */
    private static String expected(Seed seed) {
        if (!seed.bad().contains("«")) {
            return seed.code();
        }
        String text =
                SmallCollege.sound().with(seed.file(), seed.good(), seed.bad()).text(seed.file());
        String before = text.substring(0, text.indexOf('«'));
        long line = before.chars().filter(c -> c == '\n').count() + 1;
        return seed.code() + " " + seed.file() + " " + line + ":" + (before.length() - before.lastIndexOf('\n'));
    }
}
