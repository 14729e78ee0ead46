package ribmark.curriculum;

import java.util.Optional;

/**
 * What a figure or claim rests on: the key of a source and how it is known; a limit of law also says where it holds and
 * when it was last looked up.
 */
public record RestsOn(String fact, String source, String basis, Optional<String> place, Optional<String> checked) {}
