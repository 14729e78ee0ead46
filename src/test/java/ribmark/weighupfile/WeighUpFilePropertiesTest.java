package ribmark.weighupfile;

import static org.assertj.core.api.Assertions.assertThat;
import static ribmark.testing.Property.holds;

import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.basics.Weight;
import ribmark.testing.WeighUps;
import ribmark.weighup.WeighUpScore;

/** What holds for every file somebody may hand in. */
class WeighUpFilePropertiesTest {

    private static final String SIGNS = "0123456789.,-eE\"{}[]: abkK\\ü\n\0";

    private static String kilograms(Random random) {
        return new Weight(1 + random.nextInt(30_000)).kilograms();
    }

    @Test
    void every_weight_is_taken_as_it_was_written() {
        holds(random -> {
            String carcase = kilograms(random);
            String fores = kilograms(random);
            WeighUpFile file = WeighUps.read(WeighUps.on("uk-primals")
                    .cold(carcase)
                    .piece("fores", fores)
                    .json());
            file.weighUp()
                    .ifPresentOrElse(
                            weighUp -> {
                                assertThat(weighUp.carcase().weight().kilograms())
                                        .isEqualTo(carcase);
                                assertThat(weighUp.readings().get(0).weight().kilograms())
                                        .isEqualTo(fores);
                            },
                            () -> assertThat(file.problems()).isNotEmpty());
        });
    }

    /** It is scored as it stands, or told what is wrong; nothing else may come of it. */
    @Test
    void a_file_with_a_slip_of_the_finger_is_read_or_refused_in_words_and_never_breaks_anything() {
        String sound = WeighUps.on("uk-primals")
                .cold("20.120")
                .piece("fores", "7.330", ", \"side\": \"left\"")
                .piece("middle", "5.420", ", \"tareKg\": \"0.500\"")
                .trim("loin-fat-depth", "4", "1")
                .json();
        holds(random -> {
            StringBuilder json = new StringBuilder(sound);
            for (int slips = 1 + random.nextInt(2); slips > 0; slips--) {
                int at = random.nextInt(json.length());
                char sign = SIGNS.charAt(random.nextInt(SIGNS.length()));
                switch (random.nextInt(3)) {
                    case 0 -> json.setCharAt(at, sign);
                    case 1 -> json.deleteCharAt(at);
                    default -> json.insert(at, sign);
                }
            }
            WeighUpFile file = WeighUps.read(json.toString());
            assertThat(file.weighUp().isPresent()).isEqualTo(file.problems().isEmpty());
            file.weighUp()
                    .ifPresent(weighUp -> assertThat(
                                    ScoreJson.of(WeighUpScore.of(weighUp)).toString())
                            .startsWith("{"));
            assertThat(file.problems()).allMatch(problem -> !problem.headline().isBlank());
        });
    }

    @Test
    void any_bytes_at_all_are_refused_in_words() {
        holds(random -> {
            byte[] bytes = new byte[random.nextInt(40)];
            random.nextBytes(bytes);
            WeighUpFile file = WeighUpFile.read(bytes, ribmark.testing.Tables.lamb());
            assertThat(file.weighUp()).isEmpty();
            assertThat(file.problems()).isNotEmpty();
            assertThat(WeighUps.problems("[".repeat(random.nextInt(3_000)))).isNotEmpty();
        });
    }
}
