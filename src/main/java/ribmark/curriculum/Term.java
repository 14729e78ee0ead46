package ribmark.curriculum;

import java.util.List;

/** A word heard at the block, what it means, where it means that, whether our own pages mean it so, and the bones it points at. */
public record Term(String trade, String means, String where, boolean ours, List<String> bones, List<RestsOn> restsOn) {}
