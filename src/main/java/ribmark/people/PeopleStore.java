package ribmark.people;

import java.text.Normalizer;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.web.Role;

/** Everybody with an account. Rows are only ever added: the newest change of an account is how it stands. */
public final class PeopleStore {

    private static final String PEOPLE = "select p.id, p.name,"
            + " (select string_agg(r.role, ',') from person_roles r where r.person_id = p.id) as roles,"
            + " (select c.change_made from account_changes c where c.person_id = p.id order by c.id desc limit 1) as last_change"
            + " from people p";

    private final Database database;
    private final EvidenceLog log;
    private final Clock clock;

    /** The clock says when an account was added or changed. */
    public PeopleStore(Database database, EvidenceLog log, Clock clock) {
        this.database = database;
        this.log = log;
        this.clock = clock;
    }

    /** The person with this id, or nothing here. */
    public Person find(UUID id) {
        return withId(id).orElseThrow(NotFound::new);
    }

    /** The person with this id, if there is one. */
    Optional<Person> withId(UUID id) {
        return database.reading(handle -> handle.createQuery(PEOPLE + " where p.id = :id")
                .bind("id", id)
                .map(PeopleStore::read)
                .findOne());
    }

    /** The apprentice with this id, or nothing here. */
    public Person findApprentice(UUID id) {
        return Optional.of(find(id)).filter(p -> p.is(Role.APPRENTICE)).orElseThrow(NotFound::new);
    }

    /** The person called so, however the name was typed. */
    public Optional<Person> named(String name) {
        return database.reading(handle -> handle.createQuery(PEOPLE + " where p.name_key = :key")
                .bind("key", key(name))
                .map(PeopleStore::read)
                .findOne());
    }

    /** Everybody, by name. */
    public List<Person> all() {
        return database.reading(handle -> handle.createQuery(PEOPLE + " order by p.name_key")
                .map(PeopleStore::read)
                .list());
    }

    /** Everybody by id, for putting names to rows. */
    public Map<UUID, Person> byId() {
        return all().stream().collect(Collectors.toMap(Person::id, Function.identity()));
    }

    /** Everybody whose account is open and who may act in a role, by name. */
    public List<Person> allWho(Role role) {
        return all().stream().filter(p -> p.is(role) && !p.disabled()).toList();
    }

    /** Whether nobody has an account yet. */
    public boolean isEmpty() {
        return all().isEmpty();
    }

    /** Opens an account. A name is taken once, whatever its capitals. */
    public Person add(String name, Set<Role> roles, Optional<UUID> by) {
        if (named(name).isPresent()) {
            throw new Refused("Somebody is already called “" + name + "” here. Add a second name or a letter.");
        }
        UUID id = UUID.randomUUID();
        database.write(handle -> insert(handle, id, name, roles, by));
        return find(id);
    }

    /** Closes or opens an account; whoever is signed in under a closed one is out at the next page. */
    public void change(UUID id, boolean disabled, UUID by) {
        database.write(handle -> {
            String change = disabled ? "disabled" : "enabled";
            log.append(Entry.of("account-" + change).fact("person_id", id).fact("by_id", by));
            handle.execute(
                    "insert into account_changes (person_id, change_made, changed_at) values (?, ?, ?)",
                    id,
                    change,
                    clock.instant());
            handle.execute("delete from sessions where person_id = ?", id);
        });
    }

    private void insert(Handle handle, UUID id, String name, Set<Role> roles, Optional<UUID> by) {
        handle.execute(
                "insert into people (id, name, name_key, added_at) values (?, ?, ?, ?)",
                id,
                name,
                key(name),
                clock.instant());
        roles.forEach(
                role -> handle.execute("insert into person_roles (person_id, role) values (?, ?)", id, role.word()));
        String words = roles.stream().sorted().map(Role::word).collect(Collectors.joining(","));
        log.append(Entry.of("account-added")
                .fact("person_id", id)
                .fact("roles", words)
                .fact("by_id", by.orElse(null))
                .words("name", name));
    }

    /** How a name is looked up: capitals, accents' spelling and blanks do not matter. */
    static String key(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC)
                .strip()
                .replaceAll("\\s+", " ")
                .toLowerCase(Locale.ROOT);
    }

    private static Person read(java.sql.ResultSet row, org.jdbi.v3.core.statement.StatementContext ctx)
            throws java.sql.SQLException {
        String roles = row.getString("roles");
        Set<Role> read = roles == null
                ? Set.of()
                : Set.of(roles.split(",")).stream()
                        .flatMap(w -> Role.of(w).stream())
                        .collect(Collectors.toSet());
        return new Person(
                row.getObject("id", UUID.class),
                row.getString("name"),
                read,
                "disabled".equals(row.getString("last_change")));
    }
}
