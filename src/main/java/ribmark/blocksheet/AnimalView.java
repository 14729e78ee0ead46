package ribmark.blocksheet;

import java.time.ZoneId;
import java.util.List;
import ribmark.basics.Words;
import ribmark.carcase.ThisAnimal;

/** Which animal a sheet shows: this one as counted, or the usual one; and what was marked before anybody counted. */
public record AnimalView(String lead, List<String> counts, String before, boolean counted) {

    static AnimalView of(Walk walk, ZoneId zone) {
        return of(walk.sheet(), walk.animal(), zone);
    }

    /** The animal of a sheet, as pages of other parts say it too. */
    public static AnimalView of(BlockSheet sheet, ThisAnimal animal, ZoneId zone) {
        return new AnimalView(
                animal.lead(),
                animal.counts(zone),
                animal.since().isPresent() ? before(sheet, animal.since().getAsLong()) : "",
                animal.isCounted());
    }

    private static String before(BlockSheet sheet, long since) {
        int marks = (int) sheet.marks().stream()
                .filter(mark -> mark.evidenceSeq() < since)
                .count();
        return marks == 0
                ? ""
                : Words.capital(Words.count(marks, "mark", "marks")) + " given before that count "
                        + (marks == 1 ? "stays as it was" : "stay as they were") + " recorded.";
    }
}
