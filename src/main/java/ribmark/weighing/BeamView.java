package ribmark.weighing;

import java.util.ArrayList;
import java.util.List;
import ribmark.weighup.Balance;
import ribmark.weighup.Numbers;

/** The pieces laid end to end to scale over the carcase, and the gap that is left; widths are percentages of the drawing. */
public record BeamView(String words, List<Block> pieces, Gap gap, String carcase) {

    /** One piece; a narrow one has no name. */
    public record Block(String x, String width, String name, boolean hatched) {}

    /** What is missing up to the carcase. */
    public record Gap(String x, String width, String end) {}

    /** A piece wider than this carries its name. */
    private static final double NAMED_FROM = 10;

    /** How wide a letter is on the narrowest screen, in percent of the drawing. */
    private static final double LETTER = 2.8;

    static BeamView of(List<BalanceView.Group> groups, Balance balance) {
        double whole = balance.wholeG().doubleValue();
        double full = Math.max(whole, balance.partsG());
        List<Block> blocks = new ArrayList<>();
        List<String> words = new ArrayList<>();
        double x = 0;
        for (BalanceView.Group group : groups) {
            double width = 100 * group.grams() / full;
            boolean named = width > NAMED_FROM && group.beamName().length() * LETTER < width;
            blocks.add(new Block(percent(x), percent(width), named ? group.beamName() : null, blocks.size() % 2 == 0));
            words.add(group.name() + " " + Numbers.places(100 * group.grams() / whole, 1) + "\u00a0%");
            x += width;
        }
        double left = 100 - x;
        words.add("gap " + Numbers.places(balance.gapPercent(), 1) + "\u00a0%");
        Gap gap = balance.gapG().signum() > 0 ? new Gap(percent(x), percent(left), percent(100)) : null;
        return new BeamView(
                "The pieces to scale over the carcase: " + String.join(", ", words) + ".",
                blocks,
                gap,
                percent(100 * whole / full));
    }

    private static String percent(double number) {
        return Numbers.places(number, 2) + "%";
    }
}
