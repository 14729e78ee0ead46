package ribmark.evidence;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.basics.Words;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where the administrator sees that the log holds, and its newest records. */
public final class LogPages {

    /** One line of the log as shown. */
    public record Line(long seq, String moment, String kind, String digest) {}

    private static final int SHOWN = 60;

    private final EvidenceLog log;
    private final Verifier verifier;
    private final Optional<HeadFile> headFile;
    private final ZoneId zone;

    /** The zone is the one times are shown in. */
    public LogPages(EvidenceLog log, Verifier verifier, Optional<HeadFile> headFile, ZoneId zone) {
        this.log = log;
        this.verifier = verifier;
        this.headFile = headFile;
        this.zone = zone;
    }

    /** Adds the address of the page. */
    public void addTo(Routes routes) {
        routes.page("/log", this::show, Allow.of(Role.ADMINISTRATOR));
    }

    private void show(Context ctx) {
        Verification found = verifier.verify(headFile.flatMap(HeadFile::read));
        List<Line> lines = log.newest(SHOWN).stream().map(this::line).toList();
        ctx.render("evidence/log.html", Map.of("found", found, "lines", lines));
    }

    private Line line(Kept kept) {
        return new Line(
                kept.seq(),
                Words.moment(kept.recordedAt(), zone),
                kept.kind().replace('-', ' '),
                kept.digest().substring(0, 12));
    }
}
