package ribmark.competence;

/** What one assessor said of one thing that others judged too. */
public record Rating(String item, String assessor, String rating) {}
