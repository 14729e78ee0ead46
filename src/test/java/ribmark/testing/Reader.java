package ribmark.testing;

/** Somebody in front of the program: what a story needs, told alike for a real browser and for one without scripts. */
public interface Reader extends AutoCloseable {

    /** Opens an address of the program. */
    Reader open(String path);

    /** Types into a field, in place of what stands there. */
    Reader type(String field, String text);

    /** Takes a choice. */
    Reader choose(String field, String value);

    /** Presses the first button or link whose words begin so. */
    Reader press(String words);

    /** The words of the page's one heading. */
    String heading();

    /** All words on the page. */
    String text();

    /** The address it is at, without the machine. */
    String at();

    /** Signs in by hand. */
    default Reader signIn(String name, String password) {
        return open("/sign-in").type("name", name).type("password", password).press("Sign in");
    }

    @Override
    void close();
}
