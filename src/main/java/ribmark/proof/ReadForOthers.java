package ribmark.proof;

import ribmark.anatomy.Formula;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Newest;
import ribmark.basics.Refused;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Shelf;
import ribmark.curriculum.Curriculum;

/** Reads sound files for the usual animal, and later for any other on which the breakdown is then proven to hold. */
final class ReadForOthers implements Curriculum.Animals {

    /** So many animals are remembered, more than were ever published for sheep: ours. */
    private static final int ANIMALS = 12;

    private final Shelf shelf;
    private final Skeleton usual;
    private final String version;
    private final Newest<Formula, Curriculum> known = new Newest<>(ANIMALS);

    ReadForOthers(Shelf shelf, Skeleton usual, String version) {
        this.shelf = shelf;
        this.usual = usual;
        this.version = version;
    }

    /** For the usual animal. */
    Curriculum read() {
        return read(usual);
    }

    @Override
    public Curriculum on(Formula formula) {
        return known.get(formula, this::proven);
    }

    private Curriculum proven(Formula formula) {
        Skeleton animal = usual.withFormula(formula);
        Findings found = new Findings();
        if (new OtherAnimals(shelf, usual, found).prove(animal).isEmpty()) {
            throw new Refused("On an animal with vertebrae " + formula
                    + " the breakdown does not hold as it is written. Count again, and ask the tutor.");
        }
        return read(animal);
    }

    private Curriculum read(Skeleton animal) {
        return new CurriculumReader(shelf, animal).read(version, this);
    }
}
