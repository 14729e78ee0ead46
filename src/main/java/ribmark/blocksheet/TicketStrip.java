package ribmark.blocksheet;

import java.util.List;
import java.util.stream.Stream;

/** Who, which carcase and who watches: the card on top of every page about a sheet. */
final class TicketStrip {

    /** A caption with its value; kept says that the caption stays on a phone. */
    public record Pair(String caption, String value, boolean kept) {}

    private TicketStrip() {}

    static List<Pair> of(BlockSheet sheet) {
        return List.of(
                new Pair("Apprentice", sheet.apprentice().name(), false),
                new Pair("Carcase", sheet.carcase().title(), false),
                new Pair("Watched by", sheet.assessor().name(), false));
    }

    /** At the block, with the animal whose bones are shown. */
    static List<Pair> of(Walk walk) {
        Pair counted = new Pair(walk.animal().caption(), walk.animal().inShort(), true);
        return Stream.concat(of(walk.sheet()).stream(), Stream.of(counted)).toList();
    }

    static List<Pair> of(BlockSheet sheet, String day) {
        return Stream.concat(of(sheet).stream(), Stream.of(new Pair("Day", day, false)))
                .toList();
    }
}
