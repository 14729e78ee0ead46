package ribmark.competence;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ribmark.basics.Side;
import ribmark.basics.Words;

/** What the next block sheets must be so that the rule is met with as few of them as possible, in words. */
final class Missing {

    private final Tally tally;
    private final int next;

    Missing(Tally tally) {
        this.tally = tally;
        this.next = tally.fewestNext();
    }

    /** One sentence naming the fewest next observations. */
    String sentence() {
        List<String> parts = new ArrayList<>();
        parts.add(unaided());
        if (tally.missingCarcases() > 0) {
            parts.add(carcases());
        }
        if (tally.missingAssessors() > 0) {
            parts.add(assessors());
        }
        return Words.capital(Words.count(next)) + " more block " + (next == 1 ? "sheet" : "sheets") + " can settle it: "
                + String.join(", ", parts) + ".";
    }

    /** For each next sheet, what it must be: "another lamb", "not Maeve". */
    List<List<String>> tags() {
        List<List<String>> tags = new ArrayList<>();
        for (int sheet = 0; sheet < next; sheet++) {
            tags.add(tag(sheet));
        }
        return tags;
    }

    private List<String> tag(int sheet) {
        List<String> lines = new ArrayList<>();
        List<String> assessors = tally.assessorNames();
        if (sheet < tally.missingCarcases()) {
            lines.add("another " + Naming.kind(tally.carcaseNames()));
        }
        if (sheet < tally.missingAssessors()) {
            lines.add(assessors.size() == 1 && sheet == 0 ? "not " + assessors.get(0) : "another assessor");
        }
        Set<Side> sides = tally.missingSides();
        if (sheet == 0 && sides.size() == 1) {
            lines.add("on the " + sides.iterator().next().word());
        }
        return lines.isEmpty() ? List.of("unaided") : lines;
    }

    private String unaided() {
        if (!tally.eachSide()) {
            return "unaided";
        }
        Set<Side> sides = tally.missingSides();
        return sides.size() == 1 ? "unaided on the " + sides.iterator().next().word() : "unaided on both sides";
    }

    private String carcases() {
        List<String> names = tally.carcaseNames();
        int missing = tally.missingCarcases();
        if (next == 1 || missing == 1) {
            String kind = Naming.kind(names);
            String others = names.isEmpty() ? "" : " other than " + Naming.bare(names);
            return (next == 1 ? "on " : "at least one on ") + Naming.article(kind) + " " + kind + others;
        }
        String which = Words.count(missing) + (names.isEmpty() ? " different" : "") + " carcases";
        String others = names.isEmpty() ? "" : " other than " + Words.list(names);
        return (missing < next ? "on at least " : "on ") + which + others;
    }

    private String assessors() {
        List<String> names = tally.assessorNames();
        int missing = tally.missingAssessors();
        if (names.isEmpty()) {
            return "closed by " + (missing < next ? "at least " : "")
                    + (missing == 1 ? "one assessor" : Words.count(missing) + " different assessors");
        }
        String who = missing == 1 ? "somebody" : Words.count(missing) + " people";
        return (missing < next ? "at least " + Words.count(missing) + " " : "") + "closed by " + who + " other than "
                + Words.list(names);
    }
}
