package ribmark.curriculum;

import java.util.List;

/** A word heard at the block, what it means and the bones it points at. */
public record Term(String trade, String means, String where, List<String> bones, List<RestsOn> restsOn) {}
