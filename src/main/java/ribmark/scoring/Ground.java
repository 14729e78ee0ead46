package ribmark.scoring;

/** One thing a figure rests on: what is claimed, the key of its source, and how it is known. */
public record Ground(String fact, String source, Basis basis) {}
