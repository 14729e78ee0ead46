package ribmark.curriculum;

import java.util.List;

/**
 * A picture of the bones at one step: what it shows, alone and in full, from where it is seen, its file for a wide and for a narrow page, and what
 * each mark on it means.
 */
public record StepPicture(String heading, String title, String seen, File wide, File narrow, List<Words> words) {

    /** A picture file and how large it is meant to be shown, in pixels. */
    public record File(String address, long width, long height) {}

    /** A mark on the picture, and its meaning in words. */
    public record Words(String mark, String meaning) {}

    /** Gives the pictures of a step; none for one that touches no bone. */
    @FunctionalInterface
    public interface Book {

        /** The pictures of this step of the curriculum, drawn on its animal, in the order looked at. */
        List<StepPicture> of(Curriculum curriculum, Step step);
    }
}
