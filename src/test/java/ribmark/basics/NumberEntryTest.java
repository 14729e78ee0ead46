package ribmark.basics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Kilograms as people type them, more than 400 ways of it (U-50): each is read as what it says, or not read at all and questioned in
 * a sentence. What is expected is put together from whole grams, never by reading the text again. The cases are invented.
 */
class NumberEntryTest {

    /** A text, and the grams it must be read as; nothing where it must be questioned. */
    private record Typed(String text, Optional<Long> grams) {}

    private static final List<Integer> KILOGRAMS = List.of(0, 1, 7, 12, 20, 45, 99, 100, 123, 500, 1000, 1234, 99_999);
    private static final List<Integer> GRAMS = List.of(0, 1, 5, 10, 50, 100, 120, 345, 500, 999);
    private static final List<String> NO_NUMBERS = List.of(
            "",
            " ",
            "\t",
            ".",
            ",",
            "-",
            "+",
            "-1",
            "+1",
            "−1",
            "1-",
            ".5",
            ",5",
            "5.",
            "5,",
            "1..5",
            "1,,5",
            "1.2.3",
            "1,2,3",
            "1.234,5",
            "1,234.5",
            "1,234,567",
            "1.234.567",
            "1 234",
            "1\u00a0234",
            "1\u202f234",
            "1'234",
            "1’234",
            "1_234",
            "1e3",
            "1E3",
            "1.5e1",
            "0x10",
            "NaN",
            "Infinity",
            "∞",
            "½",
            "1½",
            "٣",
            "७",
            "７.310",
            "1٫5",
            "1·5",
            "1;5",
            "1:5",
            "1/2",
            "1/2,5",
            "7.310kg",
            "7.310 kg",
            "7 kg",
            "kg",
            "7,310 g",
            "~7",
            "=7",
            "'7",
            "\"7\"",
            "(7)",
            "7%",
            "7?",
            "seven",
            "O.5",
            "l2",
            "1O",
            "7.31O",
            "null",
            "true",
            "7.3 10",
            "7 .31",
            "7. 31",
            "1.2345",
            "1.0001",
            "0,0005",
            "12,34567",
            "1234567",
            "1234567.1",
            "1.0000000001",
            "<7>",
            "7<br>",
            "7\u0000",
            "\u20077",
            "7\n8");

    @Test
    void everything_typed_is_read_as_it_stands_or_questioned() {
        List<Typed> cases = Stream.concat(
                        numbers().stream(), NO_NUMBERS.stream().map(text -> new Typed(text, Optional.empty())))
                .toList();
        assertThat(cases).extracting(Typed::text).doesNotHaveDuplicates().hasSizeGreaterThan(400);
        for (Typed typed : cases) {
            Optional<String> whyNot = Weight.whyNot(typed.text());
            assertThat(whyNot.isEmpty())
                    .as("“" + typed.text() + "” is read")
                    .isEqualTo(typed.grams().isPresent());
            typed.grams()
                    .ifPresent(grams -> assertThat(Weight.ofKilograms(typed.text()))
                            .as(typed.text())
                            .isEqualTo(new Weight(grams)));
            whyNot.ifPresent(why -> assertThat(why).contains(" Type ").endsWith("."));
        }
    }

    /** Three figures after a comma, with one to three before it that do not begin with nought, might be thousands. */
    private static List<Typed> numbers() {
        List<Typed> cases = new ArrayList<>();
        for (int kilograms : KILOGRAMS) {
            cases.add(new Typed(Integer.toString(kilograms), Optional.of(1000L * kilograms)));
            for (int grams : GRAMS) {
                String three = String.format("%03d", grams);
                String shortest = three.replaceAll("0{1,2}$", "");
                boolean likeThousands = kilograms > 0 && kilograms < 1000;
                long all = 1000L * kilograms + grams;
                cases.add(new Typed(kilograms + "." + three, Optional.of(all)));
                cases.add(new Typed(kilograms + "," + three, likeThousands ? Optional.empty() : Optional.of(all)));
                cases.add(new Typed(" " + kilograms + "." + three + "0 ", Optional.of(all)));
                if (shortest.length() < three.length()) {
                    cases.add(new Typed(kilograms + "," + shortest, Optional.of(all)));
                }
            }
        }
        return cases;
    }
}
