package ribmark.proof;

import java.util.List;
import ribmark.basics.Side;

/** One piece that is left when all is done: which cut it is, from which side, and the parts of bones it holds. */
public record Freed(String cut, Side side, List<String> holds) {}
