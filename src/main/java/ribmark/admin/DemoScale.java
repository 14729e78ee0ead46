package ribmark.admin;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.Refused;
import ribmark.basics.Weight;
import ribmark.carcase.Carcase;
import ribmark.curriculum.Cut;
import ribmark.people.Acting;
import ribmark.scoring.Scale;
import ribmark.weighing.KeptReading;
import ribmark.weighing.KeptReading.Typed;
import ribmark.weighing.SlipAnswer.Choice;

/** Tells what was weighed: piece after piece, and which readings were taken off the list again. */
final class DemoScale {

    private static final Duration BETWEEN = Duration.ofMinutes(1);

    private final DemoStores stores;
    private final DemoRoster roster;
    private final DemoStory story;

    DemoScale(DemoStores stores, DemoRoster roster, DemoStory story) {
        this.stores = stores;
        this.roster = roster;
        this.story = story;
    }

    void tell(DemoWeighUps told) {
        told.checks()
                .forEach(check -> story.at(
                        story.moments().at(check.when()),
                        "weigh-ups.yaml, check of " + check.scale(),
                        () -> keep(check)));
        told.weighUps().forEach(this::tell);
    }

    private void keep(DemoWeighUps.Check check) {
        Scale scale = stores.curriculum()
                .scale(check.scale())
                .orElseThrow(() -> new Refused("“" + check.scale() + "” is no scale."));
        stores.scaleChecks()
                .keep(
                        scale,
                        Weight.ofKilograms(check.nominalKg()),
                        Weight.ofKilograms(check.readKg()),
                        roster.acting(check.by()));
    }

    private void tell(DemoWeighUps.OnTheScale told) {
        Instant at = story.moments().at(told.when());
        for (DemoWeighUps.Read read : told.readings()) {
            String where = "weigh-ups.yaml, lamb " + told.lamb() + ", " + read.cut();
            story.at(at, where, () -> keep(told, read));
            at = at.plus(BETWEEN);
        }
        if (told.cuttingTest() != null) {
            String where = "weigh-ups.yaml, lamb " + told.lamb() + ", cutting-test";
            story.at(
                    at,
                    where,
                    () -> stores.cuttingTests()
                            .enter(roster.lamb(told.lamb()), told.cuttingTest(), roster.acting(told.by())));
        }
    }

    private void keep(DemoWeighUps.OnTheScale told, DemoWeighUps.Read read) {
        Carcase carcase = roster.lamb(told.lamb());
        Acting by = roster.acting(told.by());
        UUID id = stores.weights().keep(carcase.id(), typed(told, read), by);
        if (read.struck() != null) {
            KeptReading kept = stores.weights().find(carcase.id(), id).orElseThrow();
            stores.weights().strike(kept, read.struck(), by);
        }
        if (read.asked() != null) {
            Choice choice = Choice.of(read.asked()).orElse(Choice.KEEP);
            stores.questions().answer(carcase, choice, choice == Choice.KEEP ? read.asked() : "", by);
        }
    }

    private Typed typed(DemoWeighUps.OnTheScale told, DemoWeighUps.Read read) {
        Cut cut = stores.curriculum().cut(read.cut()).orElseThrow(() -> new Refused("“" + read.cut() + "” is no cut."));
        if (!cut.sides().contains(read.onSide())) {
            throw new Refused("The side is one of " + cut.sides() + ".");
        }
        String scale = read.scale() == null ? told.scale() : read.scale();
        if (stores.curriculum().scale(scale).isEmpty()) {
            throw new Refused("“" + scale + "” is no scale.");
        }
        return new Typed(
                cut.id(),
                row(cut, read.row()),
                read.onSide(),
                read.weight(),
                read.tare(),
                scale,
                read.later(),
                Optional.ofNullable(read.of()),
                Optional.ofNullable(read.freedBy()).map(who -> freedBy(who, told.lamb(), cut)),
                Optional.of(read.kg()));
    }

    private UUID freedBy(String apprentice, int lamb, Cut cut) {
        boolean watched = stores.curriculum()
                .stepThatFrees(cut.id())
                .filter(step ->
                        !roster.sheet(apprentice, lamb).sidesOf(step.id()).isEmpty())
                .isPresent();
        if (!watched) {
            throw new Refused(apprentice + " was not watched at the step that frees it.");
        }
        return roster.sheetId(apprentice, lamb);
    }

    /** The only row there is, unless the file says which of several. */
    private static Optional<String> row(Cut cut, String named) {
        List<String> rows = cut.rows();
        if (named != null && !rows.contains(named)) {
            throw new Refused("“" + named + "” is no row that weighs it.");
        }
        if (named == null && rows.size() > 1) {
            throw new Refused("Name one of its rows, " + rows + ".");
        }
        return named == null ? rows.stream().findFirst() : Optional.of(named);
    }
}
