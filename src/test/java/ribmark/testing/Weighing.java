package ribmark.testing;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import ribmark.basics.Side;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.Opening;
import ribmark.blocksheet.Place;
import ribmark.carcase.Carcase;
import ribmark.carcase.Decision;
import ribmark.carcase.Intake;
import ribmark.curriculum.Curriculum;
import ribmark.people.Person;
import ribmark.proof.ContentInUse;
import ribmark.web.Role;
import ribmark.weighup.WeighUpScore;
import ribmark.weighupfile.References;
import ribmark.weighupfile.WeighUpFile;

/** A lamb on the block with somebody to weigh it: what tests of the weigh-up begin with. */
public final class Weighing {

    public static final Curriculum LAMB = ContentInUse.read(Optional.empty()).curriculum();

    public final TestApp test;
    public final Person maeve;
    public final Carcase lamb;
    public final Browser browser;

    /** A lamb of this weight, cold, kidneys in, weighed on the scale at the block. */
    public Weighing(TestApp test, String kilograms) {
        this(test, Carcases.lambOf(kilograms));
    }

    public Weighing(TestApp test, Intake intake) {
        this.test = test;
        this.browser = test.as("Maeve", Role.ASSESSOR);
        this.maeve = test.person("Maeve");
        Intake atTheBlock = new Intake(intake.breakdownId(), intake.ticket(), intake.own(), "block", intake.checks());
        this.lamb = test.app.carcases().add(atTheBlock, Decision.ACCEPT, "", maeve);
    }

    public Page open() {
        return browser.open(path());
    }

    public String path() {
        return "/weigh-ups/" + lamb.id();
    }

    /** The page of the stage that frees this piece, with the piece on the scale. */
    public Page onTheScale(String piece, String kilograms) {
        String stage = LAMB.stepThatFrees(piece.substring(0, piece.indexOf('.')))
                .orElse(LAMB.breakdown().steps().get(LAMB.breakdown().steps().size() - 1))
                .stageId();
        return browser.open(path() + "?stage=" + stage).choose("piece", piece).fill("weight", kilograms);
    }

    public Page weigh(String piece, String kilograms) {
        return onTheScale(piece, kilograms).press("Keep this weight");
    }

    /** A sheet of this apprentice on the lamb, for these steps; all when none is named. */
    public BlockSheet sheet(String apprentice, Side side, String... steps) {
        Person who = test.person(apprentice, Role.APPRENTICE);
        Set<Place> scope = LAMB.breakdown().steps().stream()
                .filter(step -> steps.length == 0 || List.of(steps).contains(step.id()))
                .flatMap(step -> step.sides().stream().map(on -> new Place(step.id(), on)))
                .filter(place -> place.side() == Side.ONCE || side == Side.BOTH || place.side() == side)
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
        UUID id = test.app.sheets().open(new Opening(lamb, who, maeve, "lamb", scope));
        return test.app.sheets().find(id).orElseThrow();
    }

    /** What the score command makes of the same weights in a file. */
    public static WeighUpScore scored(WeighUps file) {
        References references = new References(
                LAMB.breakdown().id(),
                LAMB.breakdown().formula().toString(),
                LAMB.tables(),
                LAMB.trim(),
                LAMB.weighing(),
                LAMB.permissible(),
                LAMB.prices());
        WeighUpFile read = WeighUpFile.read(file.json().getBytes(StandardCharsets.UTF_8), references);
        if (read.weighUp().isEmpty()) {
            throw new AssertionError("refused: " + read.problems());
        }
        return WeighUpScore.of(read.weighUp().get());
    }
}
