package ribmark;

/** The whole program wired by hand, part by part: open this first. */
public final class App {

    private App() {}

    /** Runs one command. */
    public static void main(String[] args) {
        System.out.println("Ribmark");
    }
}
