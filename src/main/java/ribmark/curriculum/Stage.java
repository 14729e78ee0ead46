package ribmark.curriculum;

import java.util.List;

/** A group of steps worked one after the other. */
public record Stage(String id, String title, String whatFor, List<Step> steps) {}
