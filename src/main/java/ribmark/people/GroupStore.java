package ribmark.people;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.NotFound;
import ribmark.database.Database;
import ribmark.web.Role;

/** Which apprentices belong together, and which tutors look after them. */
public final class GroupStore {

    private final Database database;
    private final PeopleStore people;

    /** Members are people with accounts. */
    public GroupStore(Database database, PeopleStore people) {
        this.database = database;
        this.people = people;
    }

    /** The group of this name, made if it was not there. */
    public Group named(String name) {
        return find(name).orElseGet(() -> {
            Group made = new Group(UUID.randomUUID(), name);
            database.write(handle ->
                    handle.execute("insert into apprentice_groups (id, name) values (?, ?)", made.id(), made.name()));
            return made;
        });
    }

    /** The group of this name, if it is there. */
    public Optional<Group> find(String name) {
        return database.reading(
                handle -> handle.createQuery("select id, name from apprentice_groups where name = :name")
                        .bind("name", name)
                        .map(GroupStore::read)
                        .findOne());
    }

    /** All groups, by name. */
    public List<Group> all() {
        return database.reading(handle -> handle.createQuery("select id, name from apprentice_groups order by name")
                .map(GroupStore::read)
                .list());
    }

    /** The groups somebody belongs to or looks after. */
    public List<Group> allOf(UUID person) {
        return database.reading(handle -> handle.createQuery("select g.id, g.name from apprentice_groups g"
                        + " join group_members m on m.group_id = g.id where m.person_id = :person order by g.name")
                .bind("person", person)
                .map(GroupStore::read)
                .list());
    }

    /** A group of this tutor's, or nothing here. */
    public Group find(UUID group, UUID tutor) {
        return allOf(tutor).stream()
                .filter(g -> g.id().equals(group))
                .findFirst()
                .orElseThrow(NotFound::new);
    }

    /** The apprentices of a group whose accounts are open, by name. */
    public List<Person> apprentices(UUID group) {
        List<UUID> members = database.reading(
                handle -> handle.createQuery("select person_id from group_members where group_id = :group")
                        .bind("group", group)
                        .mapTo(UUID.class)
                        .list());
        return people.allWho(Role.APPRENTICE).stream()
                .filter(p -> members.contains(p.id()))
                .toList();
    }

    /** An apprentice in one of this tutor's groups, or nothing here. */
    public Person apprenticeOf(UUID tutor, UUID apprentice) {
        return allOf(tutor).stream()
                .flatMap(group -> apprentices(group.id()).stream())
                .filter(p -> p.id().equals(apprentice))
                .findFirst()
                .orElseThrow(NotFound::new);
    }

    /** Puts somebody into a group. */
    public void join(Group group, Person person) {
        database.write(handle -> handle.execute(
                "insert into group_members (group_id, person_id) values (?, ?)", group.id(), person.id()));
    }

    private static Group read(java.sql.ResultSet row, org.jdbi.v3.core.statement.StatementContext ctx)
            throws java.sql.SQLException {
        return new Group(row.getObject("id", UUID.class), row.getString("name"));
    }
}
