package ribmark.carcase;

/** What staff record once when a carcase arrives: its ticket, its weight on our own scale, and what was looked at. */
public record Intake(String breakdownId, Ticket ticket, Weighed own, String scaleId, Checks checks) {}
