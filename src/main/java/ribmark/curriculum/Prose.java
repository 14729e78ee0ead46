package ribmark.curriculum;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** An author's Markdown as paragraphs, lists and stressed words; the page draws those itself, so nothing else can get in. */
public record Prose(List<Block> blocks) {

    /** What kind of block its lines make. */
    public enum Kind {
        PARAGRAPH,
        NUMBERED,
        LISTED
    }

    /** A paragraph of one line, or a list with a line for each entry. */
    public record Block(Kind kind, List<Line> lines) {}

    /** Words in a row. */
    public record Line(List<Run> runs) {}

    /** Words that are all stressed or all plain. */
    public record Run(String text, boolean stressed) {}

    private static final Parser PARSER = Parser.builder().build();

    /** Reads an author's Markdown. */
    public static Prose of(String markdown) {
        Blocks blocks = new Blocks();
        PARSER.parse(markdown).accept(blocks);
        return new Prose(List.copyOf(blocks.found));
    }

    private static final class Blocks extends AbstractVisitor {

        private final List<Block> found = new ArrayList<>();

        @Override
        public void visit(Paragraph paragraph) {
            found.add(new Block(Kind.PARAGRAPH, List.of(line(paragraph))));
        }

        @Override
        public void visit(OrderedList list) {
            found.add(new Block(Kind.NUMBERED, entries(list)));
        }

        @Override
        public void visit(BulletList list) {
            found.add(new Block(Kind.LISTED, entries(list)));
        }

        private static List<Line> entries(Node list) {
            Entries entries = new Entries();
            list.accept(entries);
            return List.copyOf(entries.found);
        }
    }

    private static final class Entries extends AbstractVisitor {

        private final List<Line> found = new ArrayList<>();

        @Override
        public void visit(ListItem item) {
            found.add(line(item));
        }
    }

    private static Line line(Node holder) {
        Runs runs = new Runs();
        holder.accept(runs);
        return new Line(List.copyOf(runs.found));
    }

    private static final class Runs extends AbstractVisitor {

        private final List<Run> found = new ArrayList<>();
        private int stress;

        @Override
        public void visit(Text text) {
            add(text.getLiteral());
        }

        @Override
        public void visit(Code code) {
            add(code.getLiteral());
        }

        @Override
        public void visit(SoftLineBreak end) {
            add(" ");
        }

        @Override
        public void visit(HardLineBreak end) {
            add(" ");
        }

        @Override
        public void visit(Emphasis words) {
            stressed(words);
        }

        @Override
        public void visit(StrongEmphasis words) {
            stressed(words);
        }

        private void stressed(Node words) {
            stress++;
            visitChildren(words);
            stress--;
        }

        private void add(String text) {
            found.add(new Run(text, stress > 0));
        }
    }
}
