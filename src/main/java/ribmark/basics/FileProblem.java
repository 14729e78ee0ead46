package ribmark.basics;

/** One thing wrong with a file somebody hands in: the field or place in it, what is wrong in one sentence, and what to do. */
public record FileProblem(String at, String headline, String help) {}
