package ribmark.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.testing.TestApp;
import ribmark.web.Role;

/** S-15: the user who serves requests can add evidence and cannot change or remove it. */
class EvidenceRightsTest {

    private final TestApp app = new TestApp();

    @AfterEach
    void stop() {
        app.close();
    }

    @Test
    void evidence_can_only_be_added() {
        app.person("Maeve", Role.ASSESSOR);
        List<String> tables = app.app
                .database()
                .reading(handle -> handle.createQuery(
                                "select table_name from information_schema.tables where table_schema = 'PUBLIC'")
                        .mapTo(String.class)
                        .list());
        List<String> mayChange =
                List.of("sessions", "failed_sign_ins", "one_time_links", "answered", "flyway_schema_history");
        assertThat(tables).map(String::toLowerCase).contains("evidence", "evidence_words", "people");
        for (String table : tables) {
            if (!mayChange.contains(table.toLowerCase(java.util.Locale.ROOT))) {
                refused("delete from " + table);
                refused("drop table " + table);
            }
        }
        refused("update evidence set text = ''");
        refused("update evidence_words set words = ''");
        refused("script to 'x.sql'");
        refused("create alias x for 'java.lang.System.exit'");
    }

    private void refused(String sql) {
        assertThatThrownBy(() -> app.app.database().write(handle -> handle.execute(sql)))
                .as(sql)
                .hasMessageContaining("rights");
    }
}
