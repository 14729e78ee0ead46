package ribmark.weighupfile;

/** One thing wrong with a weigh-up file: the field, what is wrong in one sentence, and what to do. */
public record FileProblem(String at, String headline, String help) {}
