package ribmark.admin;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Formula;
import ribmark.anatomy.Ids;
import ribmark.anatomy.Operation;
import ribmark.anatomy.Piece;
import ribmark.anatomy.Skeleton;
import ribmark.basics.FileProblem;
import ribmark.basics.Refused;
import ribmark.basics.Words;
import ribmark.contentfiles.ContentFiles;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Line;
import ribmark.moved.Outcome;
import ribmark.moved.Way;
import ribmark.proof.Check;
import ribmark.proof.SkeletonRows;

/** Operations done on an animal, or a line that ran elsewhere: the pieces, or the first thing that could not be done. */
record Trial(List<Piece> pieces, Optional<Outcome> moved, Optional<FileProblem> problem) {

    static Trial of(TryFile asked, ContentFiles files) {
        return asked.moved().isPresent() ? moved(asked, asked.moved().get(), files) : worked(asked, files);
    }

    private static Trial worked(TryFile asked, ContentFiles files) {
        String at = "skeleton";
        try {
            Skeleton usual = SkeletonRows.named(asked.skeleton(), files);
            at = "formula";
            Skeleton animal =
                    asked.formula().map(Formula::parse).map(usual::withFormula).orElse(usual);
            return done(asked.operations(), animal);
        } catch (Refused refused) {
            return not(at, refused);
        }
    }

    private static Trial done(List<Operation> operations, Skeleton animal) {
        Animal now = Animal.whole(animal);
        for (int i = 0; i < operations.size(); i++) {
            Operation written = operations.get(i);
            try {
                now = now.after(Ids.of(animal).operations(written));
            } catch (Refused refused) {
                return not("operations[" + i + "]" + culprit(written, refused.getMessage()), refused);
            }
        }
        return new Trial(now.pieces(), Optional.empty(), Optional.empty());
    }

    private static Trial moved(TryFile asked, TryFile.Moved moved, ContentFiles files) {
        String at = "moved.breakdown";
        try {
            Curriculum usual = breakdown(moved.breakdown(), files);
            at = "skeleton";
            isOf(asked.skeleton(), usual, files);
            at = "formula";
            Curriculum animal =
                    asked.formula().map(Formula::parse).map(usual::on).orElse(usual);
            at = "moved";
            Outcome outcome = Outcome.of(animal, way(animal, moved.way()));
            return new Trial(outcome.moved().pieces(), Optional.of(outcome), Optional.empty());
        } catch (Refused refused) {
            return not(at, refused);
        }
    }

    private static Curriculum breakdown(String id, ContentFiles files) {
        Check check = Check.of(files);
        if (!check.ok()) {
            throw new Refused("The content files are not sound: run check to see why.");
        }
        List<String> ids =
                check.curricula().stream().map(each -> each.breakdown().id()).toList();
        return check.curricula().stream()
                .filter(each -> each.breakdown().id().equals(id))
                .findFirst()
                .orElseThrow(
                        () -> new Refused("There is no breakdown “" + id + "”: write one of " + Words.list(ids) + "."));
    }

    private static void isOf(String skeleton, Curriculum curriculum, ContentFiles files) {
        if (!skeleton.isEmpty()
                && !SkeletonRows.named(skeleton, files)
                        .bones()
                        .equals(curriculum.skeleton().bones())) {
            throw new Refused("The breakdown “" + curriculum.breakdown().id() + "” is not of the skeleton “" + skeleton
                    + "”: leave it out, or name another breakdown.");
        }
    }

    private static Way way(Curriculum curriculum, List<String> words) {
        return Way.of(curriculum.breakdown(), words).orElseThrow(() -> {
            List<String> ways = Way.all(curriculum.breakdown()).stream()
                    .filter(way -> way.line().id().equals(words.get(0)))
                    .map(way -> String.join(" ", way.words()))
                    .toList();
            List<String> lines =
                    curriculum.breakdown().lines().stream().map(Line::id).toList();
            return new Refused(
                    ways.isEmpty()
                            ? "No line “" + words.get(0) + "” can run elsewhere: write one of " + Words.list(lines)
                                    + "."
                            : "The line “" + words.get(0) + "” cannot run so: write one of " + Words.list(ways) + ".");
        });
    }

    /** The id the sentence quotes, as a place in the file. */
    private static String culprit(Operation written, String sentence) {
        for (int i = 0; i < written.ids().size(); i++) {
            if (sentence.contains("“" + written.ids().get(i) + "”")) {
                return "." + written.getClass().getSimpleName().toLowerCase(Locale.ROOT) + "[" + i + "]";
            }
        }
        return "";
    }

    private static Trial not(String at, Refused refused) {
        return new Trial(List.of(), Optional.empty(), Optional.of(TryFile.problem(at, refused)));
    }
}
