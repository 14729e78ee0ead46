package ribmark.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CheckTest {

    @Test
    void a_small_college_is_sound() {
        Check check = SmallCollege.sound().check();
        assertThat(CheckText.of(check)).contains("Version").doesNotContain("problem");
        System.out.println(CheckText.of(check) + CheckJson.of(check).toPrettyString());
    }
}
