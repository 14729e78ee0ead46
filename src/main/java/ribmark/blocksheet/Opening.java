package ribmark.blocksheet;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ribmark.basics.Refused;
import ribmark.carcase.Carcase;
import ribmark.people.Person;

/** A sheet about to be opened: who watches whom, on which carcase, and which steps and sides. */
public record Opening(Carcase carcase, Person apprentice, Person assessor, String breakdownId, Set<Place> scope) {

    /** Keeps a copy in the order worked. */
    public Opening {
        scope = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(scope));
    }

    /** The same, without some of the places. */
    public Opening without(Collection<Place> places) {
        Set<Place> left = new LinkedHashSet<>(scope);
        left.removeAll(places);
        return new Opening(carcase, apprentice, assessor, breakdownId, left);
    }

    /** Says no where nobody could stand at the block like that. */
    void check() {
        if (apprentice.id().equals(assessor.id())) {
            throw new Refused("Nobody marks themselves. Another assessor opens this sheet.");
        }
        if (apprentice.disabled()) {
            throw new Refused(
                    apprentice.name() + "’s account is closed. Open it again first, or choose somebody else.");
        }
        if (scope.isEmpty()) {
            throw new Refused(
                    "Nothing of " + carcase.name() + " is left to watch on this side. See the sheets open on it.");
        }
    }

    /** The open sheets of other apprentices on this carcase that hold some of these places. */
    List<BlockSheet> inTheWay(List<BlockSheet> open, Collection<Place> worked) {
        return open.stream()
                .filter(BlockSheet::isOpen)
                .filter(sheet -> !sheet.apprentice().id().equals(apprentice.id()))
                .filter(sheet -> worked.stream()
                        .anyMatch(
                                place -> scope.contains(place) && sheet.scope().contains(place)))
                .toList();
    }
}
