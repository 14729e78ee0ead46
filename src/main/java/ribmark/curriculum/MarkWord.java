package ribmark.curriculum;

/** A mark as it stands in words on the page; a higher order is better. */
public record MarkWord(String id, String word, String gloss, int order) {}
