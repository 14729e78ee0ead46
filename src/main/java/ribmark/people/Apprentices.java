package ribmark.people;

import java.util.List;
import java.util.UUID;
import ribmark.basics.NotFound;
import ribmark.web.Role;

/** Which apprentices somebody may look at: an assessor all, a tutor those of their groups, an apprentice only themselves. */
public final class Apprentices {

    private final PeopleStore people;
    private final GroupStore groups;

    /** People and who belongs with whom. */
    public Apprentices(PeopleStore people, GroupStore groups) {
        this.people = people;
        this.groups = groups;
    }

    /** The apprentice with this id as far as the reader may see them, or nothing here. */
    public Person find(UUID id, Acting reader) {
        return switch (reader.role()) {
            case ASSESSOR -> people.findApprentice(id);
            case TUTOR -> groups.apprenticeOf(reader.id(), id);
            case APPRENTICE -> themselves(id, reader);
            default -> throw new NotFound();
        };
    }

    /** All apprentices with open accounts whom the reader may see, by name. */
    public List<Person> all(Acting reader) {
        return switch (reader.role()) {
            case ASSESSOR -> people.allWho(Role.APPRENTICE);
            case TUTOR ->
                groups.allOf(reader.id()).stream()
                        .flatMap(group -> groups.apprentices(group.id()).stream())
                        .distinct()
                        .toList();
            case APPRENTICE -> List.of(reader.person());
            default -> List.of();
        };
    }

    private static Person themselves(UUID id, Acting reader) {
        if (!id.equals(reader.id())) {
            throw new NotFound();
        }
        return reader.person();
    }
}
