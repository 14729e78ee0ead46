package ribmark.bonemap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What is shown on a drawing, whatever its size: how each bone is filled, the lines, the words, and what it all means. */
record Scene(
        Drawing drawing,
        String subject,
        String heading,
        Map<String, List<Portion>> portions,
        List<DrawnLine> lines,
        List<Tag> tags,
        List<Mark> marks,
        List<Box> focus) {

    /** What the picture is called. */
    String title() {
        return subject + ": " + heading;
    }

    /** The whole sheet, so many pixels wide. */
    String whole(double pixels) {
        return new SvgWriter(this, drawing.field(), pixels).write();
    }

    /** The part of the sheet where the work is, for a narrow page. */
    String closeUp(double pixels) {
        return new SvgWriter(this, closeUpBox(), pixels).write();
    }

    Box closeUpBox() {
        return focus.isEmpty() ? drawing.field() : drawing.closeUp(focus);
    }

    List<Portion> portions(String bone) {
        return portions.getOrDefault(bone, List.of(Portion.whole(bone, Fill.PLAIN)));
    }

    /** The whole picture in words. */
    String description() {
        List<String> sentences = new ArrayList<>(List.of(view()));
        marks.forEach(mark -> sentences.add(mark.mark() + ": " + mark.meaning() + "."));
        return sentences.stream().collect(Collectors.joining(" "));
    }

    /** From where the animal is seen. */
    String view() {
        return drawing.showsBothSides()
                ? "Seen from the back, head end at the left, the animal’s left side below."
                : "Seen from the left, head end at the left.";
    }
}
