package ribmark.scoring;

import java.util.Optional;

/** How a carcase came to the scale: its weight once cold, kidneys in or out, and the fat class on its ticket. */
public record Conditions(double coldKg, boolean kidneysIn, Optional<String> fatClass) {}
