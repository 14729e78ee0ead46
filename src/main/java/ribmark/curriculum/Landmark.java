package ribmark.curriculum;

import java.util.List;

/** A bone or joint that fixes where the knife goes, and how to find it. */
public record Landmark(
        String id, String name, String text, List<String> bones, List<String> joints, List<RestsOn> restsOn) {}
