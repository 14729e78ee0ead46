package ribmark.competence;

import java.time.LocalDate;

/** A name was put to a step being shown; it may have been taken back since. The sequence is its place in the evidence log. */
public record StepSignedOff(String id, long sequence, LocalDate day, boolean withdrawn) {}
