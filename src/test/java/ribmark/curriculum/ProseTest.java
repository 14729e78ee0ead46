package ribmark.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProseTest {

    @Test
    void numbered_lines_and_paragraphs_are_kept_apart() {
        Prose prose = Prose.of("1. Hold.\n2. **Cut** now.\n\nThen rest.");

        assertThat(prose.blocks())
                .extracting(Prose.Block::kind)
                .containsExactly(Prose.Kind.NUMBERED, Prose.Kind.PARAGRAPH);
        assertThat(prose.blocks().get(0).lines()).hasSize(2);
        assertThat(prose.blocks().get(0).lines().get(1).runs())
                .isEqualTo(List.of(new Prose.Run("Cut", true), new Prose.Run(" now.", false)));
    }

    @Test
    void markup_of_pages_is_words_like_any_other_or_left_out() {
        Prose prose = Prose.of("Cut <b>here</b>.\n\n<script>alert(1)</script>");

        assertThat(prose.blocks()).hasSize(1);
        assertThat(prose.blocks().get(0).lines().get(0).runs())
                .extracting(Prose.Run::text)
                .containsExactly("Cut ", "here", ".");
    }
}
