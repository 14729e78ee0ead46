package ribmark.people;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.text.Normalizer;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import ribmark.database.Database;
import ribmark.web.Form;

/** Passwords, kept as Argon2id hashes (RFC 9106) at about twice the floor of the OWASP password storage advice: 46 MiB, two passes. */
public final class Passwords {

    /** Length alone decides (NIST SP 800-63B, rev. 4: 15 without a second factor); any characters, no rotation. */
    static final int SHORTEST = 15;

    private static final int LONGEST = 256;
    private static final int SALT_BYTES = 16;
    private static final Argon2Function ARGON = Argon2Function.getInstance(46 * 1024, 2, 1, 32, Argon2.ID);
    private static final Semaphore AT_ONCE = new Semaphore(2);

    /** Made once, beside the starting program: hashing is slow on purpose. */
    private static final CompletableFuture<String> OF_NOBODY =
            CompletableFuture.supplyAsync(() -> hashed(UUID.randomUUID().toString()));

    private final Database database;
    private final Clock clock;

    /** Hashing is limited to two at once, so that it cannot eat the machine. */
    public Passwords(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** Whether this is the person's password. */
    public boolean isTheirs(UUID person, String typed) {
        Optional<String> kept = hash(person);
        if (kept.isEmpty() || !matches(typed, kept.get())) {
            return false;
        }
        if (isOlder(kept.get())) {
            set(person, typed);
        }
        return true;
    }

    /** Takes as long as a real check, so that time does not tell who has an account. */
    void checkNobody(String typed) {
        matches(typed, OF_NOBODY.join());
    }

    /** Keeps a new password; the newest is the one that counts. */
    public void set(UUID person, String typed) {
        setHash(person, hash(typed));
    }

    /** Keeps a hash made before. */
    public void setHash(UUID person, String hash) {
        database.write(handle -> handle.execute(
                "insert into passwords (person_id, hash, set_at) values (?, ?, ?)", person, hash, clock.instant()));
    }

    /** The hash of a password, with a salt of its own. */
    public String hash(String typed) {
        return hashed(typed);
    }

    private static String hashed(String typed) {
        return limited(() -> Password.hash(composed(typed))
                .addRandomSalt(SALT_BYTES)
                .with(ARGON)
                .getResult());
    }

    /** Puts a sentence beside the field when this cannot be a password. */
    public static void checkNew(Form form, String field, String typed) {
        int length = typed.codePointCount(0, typed.length());
        if (length < SHORTEST) {
            form.add(
                    field,
                    "New password: " + length + " characters are too few. Use at least " + SHORTEST
                            + ", for example four words.");
        } else if (length > LONGEST) {
            form.add(field, "New password: " + length + " characters are too many. Use at most " + LONGEST + ".");
        } else if (typed.codePoints().distinct().count() < 5) {
            form.add(field, "New password: the same few characters over and over are guessed first. Use four words.");
        }
    }

    Optional<String> hash(UUID person) {
        return database.reading(handle -> handle.createQuery(
                        "select hash from passwords where person_id = :person order by id desc limit 1")
                .bind("person", person)
                .mapTo(String.class)
                .findOne());
    }

    private static boolean isOlder(String hash) {
        Argon2Function made = Argon2Function.getInstanceFromHash(hash);
        return made.getMemory() < ARGON.getMemory() || made.getIterations() < ARGON.getIterations();
    }

    private static boolean matches(String typed, String hash) {
        return limited(() -> Password.check(composed(typed), hash).with(Argon2Function.getInstanceFromHash(hash)));
    }

    private static String composed(String typed) {
        String short256 = typed.length() > 4 * LONGEST ? typed.substring(0, 4 * LONGEST) : typed;
        return Normalizer.normalize(short256, Normalizer.Form.NFC);
    }

    private static <T> T limited(java.util.function.Supplier<T> work) {
        AT_ONCE.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            AT_ONCE.release();
        }
    }
}
