package ribmark.progress;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import ribmark.curriculum.Stage;
import ribmark.people.Group;

/** A group as its tutor sees it: people first, then one stage at a time. */
public record GroupView(
        String title, UUID groupId, List<Plate> groups, GroupProgress progress, Where where, List<Plate> stages) {

    /** A plate that leads to another group or stage. */
    public record Plate(String word, String href, boolean here) {}

    static GroupView of(Group group, List<Group> all, GroupProgress progress, Stage stage) {
        String address = "/group?group=" + group.id() + "&stage=";
        return new GroupView(
                group.name(),
                group.id(),
                all.stream()
                        .map(g -> new Plate(g.name(), "/group?group=" + g.id(), g.equals(group)))
                        .toList(),
                progress,
                progress.where(stage),
                progress.breakdown().stages().stream()
                        .map(s -> new Plate(
                                s.title().toLowerCase(Locale.ROOT), address + s.id() + "#where", s.equals(stage)))
                        .toList());
    }
}
