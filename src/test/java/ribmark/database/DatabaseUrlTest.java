package ribmark.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import ribmark.basics.Refused;

/** S-03: the address of the database cannot drift to one under which acknowledged work is lost. */
class DatabaseUrlTest {

    @Test
    void our_own_addresses_are_safe() {
        assertThat(DatabaseUrl.inFolder(Path.of("data")).text()).contains(";WRITE_DELAY=0;");
        assertThat(DatabaseUrl.throwAway().text()).endsWith(";WRITE_DELAY=0");
    }

    @Test
    void an_unsafe_address_is_refused_and_says_what_to_do() {
        for (String unsafe : List.of(
                "jdbc:h2:file:./x",
                "jdbc:h2:file:./x;WRITE_DELAY=500",
                "jdbc:h2:file:./x;write_delay=0;WRITE_DELAY=500",
                "jdbc:h2:file:./x;WRITE_DELAY=0;LOG=0",
                "jdbc:h2:file:./x;WRITE_DELAY=0;LOCK_MODE=0",
                "jdbc:h2:file:./x;WRITE_DELAY=0;FILE_LOCK=NO",
                "jdbc:h2:file:./x;WRITE_DELAY=0;READ_UNCOMMITTED=1",
                "jdbc:h2:file:./x;WRITE_DELAY=00",
                "jdbc:h2:tcp://elsewhere/x;WRITE_DELAY=0",
                "jdbc:sqlite:x",
                "")) {
            assertThatThrownBy(() -> new DatabaseUrl(unsafe))
                    .as(unsafe)
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("database address");
        }
    }
}
