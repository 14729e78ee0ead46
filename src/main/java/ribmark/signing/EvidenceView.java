package ribmark.signing;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import ribmark.basics.Words;
import ribmark.competence.SheetEvidence;
import ribmark.people.Acting;
import ribmark.web.Role;

/** What hangs on the rail for one step: the sheets that count, what is missing, what was seen, and whose rule it is. */
public record EvidenceView(
        String title,
        String number,
        String apprentice,
        String address,
        String standing,
        List<Pair> pairs,
        String head,
        Hanging tally,
        Say say,
        List<Line> lines,
        String mayNot,
        Sign sign,
        List<String> sides,
        List<SeenRow> rows,
        List<Signed> signed,
        Withdrawing withdrawal,
        RuleView rule) {

    /** A caption with its value on the ticket strip. */
    public record Pair(String caption, String value, boolean kept) {}

    /** Tags on the rail, those still missing, and how many more there are. */
    public record Hanging(List<Tag> tags, List<MissingTag> missing, String more) {}

    /** One sheet that counts. */
    public record Tag(String href, String day, String carcase, String assessor) {}

    /** One sheet that is still missing, and what it must be. */
    public record MissingTag(String heading, List<String> lines) {}

    /** The first words, in bold, and the rest of the sentence. */
    public record Say(String first, String rest) {}

    /** One of the four lines. */
    public record Line(String name, String count, String says) {}

    /** Who may sign now, and the words on the plate. */
    public record Sign(String assessor, String plate) {}

    /** A signature, and who took it back. */
    public record Signed(String who, String words, String withdrawn, String reason) {}

    /** The signature that may be taken back, and the words on the plate. */
    public record Withdrawing(UUID id, String plate) {}

    private static final int TAGS = 6;

    /** What this reader sees of it. */
    static EvidenceView of(StepRecord record, Standings standings, Acting reader) {
        return new EvidenceView(
                title(record),
                Integer.toString(record.step().number()),
                record.apprentice().name(),
                record.address(),
                Words.capital(record.standing().word()),
                pairs(record, reader),
                head(record),
                tally(record),
                say(record, standings),
                record.derived().tally().lines().stream()
                        .map(line -> new Line(line.what(), line.count(), line.note()))
                        .toList(),
                mayNot(record, reader),
                sign(record, reader),
                record.step().eachSide() ? List.of("Left", "Right") : List.of("Mark"),
                SeenRow.newestFirst(record, standings.zone()),
                signed(record, standings),
                withdrawing(record, reader),
                RuleView.of(standings.curriculum()));
    }

    private static String title(StepRecord record) {
        String step = record.step().title();
        String lower = step.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + step.substring(1);
        return switch (record.standing()) {
                    case NOT_STARTED -> "Not started yet: ";
                    case PRACTISING, THIN_EVIDENCE -> "Not enough yet: ";
                    case READY_TO_SIGN -> "Ready to sign: ";
                    case SIGNED_OFF -> "Signed off: ";
                    case DUE_AGAIN -> "Due again: ";
                }
                + lower;
    }

    private static List<Pair> pairs(StepRecord record, Acting reader) {
        List<Pair> pairs = new ArrayList<>();
        pairs.add(new Pair("Apprentice", record.apprentice().name(), false));
        if (!reader.id().equals(record.apprentice().id())) {
            pairs.add(new Pair("Asking", reader.name(), true));
        }
        pairs.add(new Pair("Done", record.step().eachSide() ? "on both sides" : "once", true));
        return pairs;
    }

    private static String head(StepRecord record) {
        return record.derived().missing().isPresent() ? "What is missing" : "What there is";
    }

    private static Hanging tally(StepRecord record) {
        List<SheetEvidence> newest = record.derived().tally().newestFirst();
        List<List<String>> missing = record.derived().missingTags();
        int more = newest.size() - TAGS;
        return new Hanging(
                newest.stream().limit(TAGS).map(EvidenceView::tag).toList(),
                missing.stream().map(lines -> new MissingTag("One more", lines)).toList(),
                more > 0 ? "and " + Words.count(more) + " more" : null);
    }

    private static Tag tag(SheetEvidence sheet) {
        return new Tag(
                "/feedback/" + sheet.sheet(), Words.day(sheet.closedOn()), sheet.carcaseName(), sheet.assessorName());
    }

    private static Say say(StepRecord record, Standings standings) {
        if (record.derived().missing().isPresent()) {
            String sentence = record.derived().missing().get();
            int colon = sentence.indexOf(": ") + 1;
            return new Say(
                    sentence.substring(0, colon), sentence.substring(colon).strip());
        }
        if (record.derived().mayBeSigned()) {
            return new Say(
                    "Everything the rule asks for is there.", "It waits for a signature by somebody who watched.");
        }
        String by = record.signed()
                .map(s -> s.assessor().name() + ", " + Words.day(s.signedAt(), standings.zone()))
                .orElse("");
        return new Say(
                "Signed off by " + by + ".",
                "It stays so while it is seen on a closed sheet at least every "
                        + record.derived().tally().rule().withinDays() + " days, and never not yet or stopped.");
    }

    private static String mayNot(StepRecord record, Acting reader) {
        if (!reader.as(Role.ASSESSOR) || !record.derived().mayBeSigned() || sign(record, reader) != null) {
            return null;
        }
        if (reader.id().equals(record.apprentice().id())) {
            return "Nobody signs for themselves.";
        }
        return "You closed none of these sheets. "
                + String.join(" or ", record.derived().tally().assessorNames()) + " can sign.";
    }

    private static Sign sign(StepRecord record, Acting reader) {
        boolean may = reader.as(Role.ASSESSOR)
                && !reader.id().equals(record.apprentice().id())
                && record.derived().mayBeSigned()
                && record.wasWatchedBy(reader.id());
        return may
                ? new Sign(
                        reader.name(),
                        "Sign step " + record.step().number() + " off for "
                                + record.apprentice().name())
                : null;
    }

    private static List<Signed> signed(StepRecord record, Standings standings) {
        return record.signOffs().stream()
                .map(s -> new Signed(
                        s.assessor().name() + ", " + Words.day(s.signedAt(), standings.zone()) + ".",
                        quoted(s.convinced()),
                        s.withdrawal()
                                .map(w -> "Taken back by " + w.by().name() + ", "
                                        + Words.day(w.withdrawnAt(), standings.zone()) + ".")
                                .orElse(null),
                        s.withdrawal().map(w -> quoted(w.reason())).orElse(null)))
                .toList();
    }

    private static Withdrawing withdrawing(StepRecord record, Acting reader) {
        boolean may = (reader.as(Role.ASSESSOR) || reader.as(Role.TUTOR))
                && !reader.id().equals(record.apprentice().id());
        return record.signed()
                .filter(s -> may)
                .map(s -> new Withdrawing(s.id(), "Take " + s.assessor().name() + "’s sign-off back"))
                .orElse(null);
    }

    private static String quoted(String words) {
        return words.isEmpty() ? "" : "“" + words + "”";
    }
}
