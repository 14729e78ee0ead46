package ribmark.blocksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ribmark.carcase.ThisAnimal;

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

    /** At the block, with the animal whose bones are shown; one that is not the usual keeps its caption on a phone. */
    static List<Pair> of(Walk walk) {
        List<Pair> pairs = new ArrayList<>(of(walk.sheet()));
        ThisAnimal animal = walk.animal();
        String counted = animal.isCounted() ? ": " + animal.inShort() : ", not counted";
        pairs.set(
                1,
                new Pair(
                        "Carcase" + counted,
                        walk.sheet().carcase().title(),
                        !animal.curriculum().isUsual()));
        return pairs;
    }

    static List<Pair> of(BlockSheet sheet, String day) {
        return Stream.concat(of(sheet).stream(), Stream.of(new Pair("Day", day, false)))
                .toList();
    }
}
