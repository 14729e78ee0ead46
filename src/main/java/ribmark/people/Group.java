package ribmark.people;

import java.util.UUID;

/** The apprentices a tutor looks after. */
public record Group(UUID id, String name) {}
