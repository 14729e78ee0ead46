package ribmark.admin;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import ribmark.basics.Refused;
import ribmark.blocksheet.BlockSheet;
import ribmark.carcase.Carcase;
import ribmark.people.Acting;
import ribmark.people.Group;
import ribmark.people.Person;
import ribmark.web.Role;

/** Finds people, carcases and sheets of the demo by the names its files use, and opens the accounts. */
final class DemoRoster {

    private final DemoStores stores;
    private final Map<String, Person> people = new HashMap<>();
    private final Map<Integer, Carcase> lambs = new HashMap<>();
    private final Map<String, UUID> sheets = new HashMap<>();

    DemoRoster(DemoStores stores) {
        this.stores = stores;
    }

    /** Opens every account, and puts everybody into their group. */
    void tell(DemoPeople told, DemoStory story) {
        story.at(told.since(), "people.yaml", () -> told.people().forEach(this::open));
        story.at(told.since(), "people.yaml", () -> told.groups().forEach(this::gather));
        told.left()
                .forEach(left -> story.at(
                        left.when(),
                        "people.yaml, " + left.name(),
                        () -> stores.people()
                                .change(
                                        person(left.name()).id(),
                                        true,
                                        person(left.by()).id())));
    }

    private void open(DemoPeople.Member member) {
        Optional<UUID> by = people.values().stream()
                .filter(person -> person.is(Role.ADMINISTRATOR))
                .map(Person::id)
                .findFirst();
        Person made = stores.people().add(member.name(), Set.of(member.as()), by);
        people.put(member.name(), made);
    }

    private void gather(DemoPeople.Together told) {
        Group group = stores.groups().named(told.name());
        told.tutors().forEach(tutor -> stores.groups().join(group, person(tutor)));
        told.apprentices().forEach(apprentice -> stores.groups().join(group, person(apprentice)));
    }

    Person person(String name) {
        return Optional.ofNullable(people.get(name))
                .orElseThrow(() -> new Refused("Nobody here is called “" + name + "”."));
    }

    /** Somebody in the one role they have. */
    Acting acting(String name) {
        Person person = person(name);
        return new Acting(person, person.rolesInOrder().get(0));
    }

    /** An assessor, or nobody. */
    Person assessor(String name) {
        Person person = person(name);
        if (!person.is(Role.ASSESSOR)) {
            throw new Refused(name + " is no assessor.");
        }
        return person;
    }

    /** A carcase as it stands now. */
    Carcase lamb(int number) {
        if (!lambs.containsKey(number)) {
            stores.carcases().all().forEach(carcase -> lambs.put(carcase.number(), carcase));
        }
        return Optional.ofNullable(lambs.get(number))
                .orElseThrow(() -> new Refused("No carcase has the number " + number + " yet."));
    }

    /** Forgets how a carcase stood, after something was decided or counted. */
    void lookAgain() {
        lambs.clear();
    }

    /** Remembers which sheet belongs to an apprentice and a lamb; there is one. */
    void remember(String apprentice, int lamb, UUID sheet) {
        if (sheets.putIfAbsent(apprentice + lamb, sheet) != null) {
            throw new Refused(apprentice + " has a sheet on lamb " + lamb + " already.");
        }
    }

    UUID sheetId(String apprentice, int lamb) {
        return Optional.ofNullable(sheets.get(apprentice + lamb))
                .orElseThrow(() -> new Refused(apprentice + " has no sheet on lamb " + lamb + " yet."));
    }

    BlockSheet sheet(String apprentice, int lamb) {
        return stores.sheets().find(sheetId(apprentice, lamb)).orElseThrow();
    }
}
