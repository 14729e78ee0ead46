package ribmark.drills;

/** Something that can be asked about again and again: its id, the step it belongs to, and its words. */
public record Subject(String id, String step, String words) {}
