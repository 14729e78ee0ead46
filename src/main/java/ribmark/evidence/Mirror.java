package ribmark.evidence;

import java.util.List;

/**
 * A table whose rows say again what records of one kind say, for looking things up: its columns are named like the facts, and
 * {@code evidence_seq} points to the record. The check compares the two, so that a changed or missing row is found.
 */
public record Mirror(String kind, String table, List<String> facts) {}
