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
import ribmark.basics.Refused;
import ribmark.proof.ContentFiles;
import ribmark.proof.SkeletonRows;
import ribmark.weighupfile.FileProblem;

/** Operations done on an animal: the pieces, or the first thing that could not be done. */
record Trial(List<Piece> pieces, Optional<FileProblem> problem) {

    static Trial of(TryFile asked, ContentFiles files) {
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
        return new Trial(now.pieces(), Optional.empty());
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
        return new Trial(List.of(), Optional.of(TryFile.problem(at, refused)));
    }
}
