package ribmark.study;

/** Something to be asked now and again: its id, the step it belongs to, what it is about, and how it asks. */
public record Card(String id, String step, String title, Source source) {

    /** Where the question comes from each time. */
    interface Source {
        Asked ask(long seed);
    }

    /** The question as it is put with this seed. */
    public Asked ask(long seed) {
        return source.ask(seed);
    }
}
