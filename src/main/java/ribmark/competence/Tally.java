package ribmark.competence;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ribmark.basics.Side;
import ribmark.basics.Words;

/** What counts for one step since the last not yet or stopped, beside what the rule asks for. */
public record Tally(
        EvidenceRule rule,
        boolean eachSide,
        LocalDate today,
        List<SheetEvidence> counting,
        Optional<SheetEvidence> afresh) {

    /** One line under the tags: what is counted, how much of it there is, and which. */
    public record Line(String what, String count, String note) {}

    /** Keeps its own copy. */
    public Tally {
        counting = List.copyOf(counting);
    }

    static Tally of(List<SheetEvidence> sheets, EvidenceRule rule, boolean eachSide, LocalDate today) {
        List<SheetEvidence> inOrder = sheets.stream()
                .filter(SheetEvidence::isMarked)
                .sorted(Comparator.comparingLong(SheetEvidence::sequence))
                .toList();
        List<SheetEvidence> counting = new ArrayList<>();
        SheetEvidence afresh = null;
        for (SheetEvidence sheet : inOrder) {
            if (sheet.startsAfresh()) {
                counting.clear();
                afresh = sheet;
            } else if (sheet.counts()) {
                counting.add(sheet);
            }
        }
        return new Tally(rule, eachSide, today, counting, Optional.ofNullable(afresh));
    }

    /** How many sheets count. */
    public int sheets() {
        return counting.size();
    }

    /** The names of the carcases they were on, in the order seen. */
    public List<String> carcaseNames() {
        return Naming.distinct(counting, SheetEvidence::carcase, SheetEvidence::carcaseName);
    }

    /** The names of the assessors who closed them, in the order seen. */
    public List<String> assessorNames() {
        return Naming.distinct(counting, SheetEvidence::assessor, SheetEvidence::assessorName);
    }

    /** The day the newest was closed. */
    public Optional<LocalDate> newest() {
        return counting.stream().map(SheetEvidence::closedOn).max(Comparator.naturalOrder());
    }

    /** The sheets that count, newest first. */
    public List<SheetEvidence> newestFirst() {
        List<SheetEvidence> turned = new ArrayList<>(counting);
        Collections.reverse(turned);
        return turned;
    }

    /** Whether everything the rule asks for is there. */
    public boolean isMet() {
        return missingSheets() == 0
                && missingCarcases() == 0
                && missingAssessors() == 0
                && missingSides().isEmpty()
                && isRecent();
    }

    int missingSheets() {
        return Math.max(0, rule.sheets() - sheets());
    }

    int missingCarcases() {
        return Math.max(0, rule.carcases() - carcaseNames().size());
    }

    int missingAssessors() {
        return Math.max(0, rule.assessors() - assessorNames().size());
    }

    Set<Side> missingSides() {
        Set<Side> missing = new TreeSet<>(eachSide ? Set.of(Side.LEFT, Side.RIGHT) : Set.of());
        counting.forEach(sheet -> missing.removeAll(sheet.sides()));
        return missing;
    }

    boolean isRecent() {
        return newest().filter(day -> daysAgo(day) <= rule.withinDays()).isPresent();
    }

    /** The fewest further sheets that can meet the rule: one sheet can bring a carcase, an assessor and both sides at once. */
    public int fewestNext() {
        int fewest = Math.max(missingSheets(), Math.max(missingCarcases(), missingAssessors()));
        return fewest == 0 && !isMet() ? 1 : fewest;
    }

    /** The four lines: sheets, carcases, assessors, newest. */
    public List<Line> lines() {
        return List.of(
                new Line("Closed sheets unaided", outOf(sheets(), rule.sheets()), since()),
                new Line("Carcases", outOf(carcaseNames().size(), rule.carcases()), String.join(", ", carcaseNames())),
                new Line("Assessors", outOf(assessorNames().size(), rule.assessors()), assessors()),
                new Line(
                        "Newest",
                        newest().map(day -> ago(daysAgo(day))).orElse("none"),
                        "at most " + rule.withinDays() + " days ago"));
    }

    private String since() {
        return afresh.map(sheet -> "since the "
                        + sheet.marksInOrder().values().stream()
                                .filter(Mark::startsAfresh)
                                .findFirst()
                                .orElseThrow()
                                .word()
                        + " of " + Words.day(sheet.closedOn()))
                .orElse("");
    }

    private String assessors() {
        List<String> names = assessorNames();
        return names.size() == 1 && rule.assessors() > 1 ? names.get(0) + " only" : String.join(", ", names);
    }

    private long daysAgo(LocalDate day) {
        return ChronoUnit.DAYS.between(day, today);
    }

    private static String outOf(int have, int need) {
        return have + " of " + need;
    }

    private static String ago(long days) {
        return days <= 0 ? "today" : days == 1 ? "yesterday" : days + " days ago";
    }
}
