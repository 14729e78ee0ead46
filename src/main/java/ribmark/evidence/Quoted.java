package ribmark.evidence;

/**
 * A table of long words that records of one kind name by their digest, so that the log need not repeat them: the fact that
 * names them is called like {@code fact}, and the table has the columns {@code digest} and {@code words}.
 */
public record Quoted(String kind, String fact, String table) {}
