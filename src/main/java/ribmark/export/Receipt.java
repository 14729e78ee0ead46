package ribmark.export;

import java.time.Instant;
import ribmark.evidence.Head;

/** What ties a report to the evidence it was drawn from: the head of the log, the version of the content, and the moment. */
public record Receipt(Head head, String contentVersion, Instant at) {}
