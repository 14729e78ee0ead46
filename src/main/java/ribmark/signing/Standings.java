package ribmark.signing;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.competence.Standing;
import ribmark.competence.StepSignedOff;
import ribmark.competence.StepStanding;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.people.Person;

/** Where apprentices stand, worked out from closed sheets, signatures, the evidence rule and today, each time it is asked. */
public final class Standings {

    private final BlockSheetStore sheets;
    private final SignOffStore signOffs;
    private final Supplier<Curriculum> curriculum;
    private final Clock clock;
    private final ZoneId zone;

    /** The clock and zone say which day it is at the college. */
    public Standings(
            BlockSheetStore sheets, SignOffStore signOffs, Supplier<Curriculum> curriculum, Clock clock, ZoneId zone) {
        this.sheets = sheets;
        this.signOffs = signOffs;
        this.curriculum = curriculum;
        this.clock = clock;
        this.zone = zone;
    }

    /** The standing on each step, by its id, in the order worked. */
    public Map<String, StepStanding> of(Person apprentice) {
        Map<String, StepStanding> all = new LinkedHashMap<>();
        record(apprentice).steps().forEach(step -> all.put(step.step().id(), step.derived()));
        return all;
    }

    /** Everything about one apprentice. */
    public ApprenticeRecord record(Person apprentice) {
        return record(apprentice, sheets.closedOf(apprentice.id()), signOffs.allOf(apprentice.id()));
    }

    /** Everything about several apprentices, in their order. */
    public List<ApprenticeRecord> records(List<Person> apprentices) {
        Map<UUID, List<BlockSheet>> closed = sheets.allClosed().stream()
                .collect(Collectors.groupingBy(sheet -> sheet.apprentice().id()));
        Map<UUID, List<SignOff>> signed = signOffs.all().stream().collect(Collectors.groupingBy(SignOff::apprenticeId));
        return apprentices.stream()
                .map(person -> record(
                        person,
                        closed.getOrDefault(person.id(), List.of()),
                        signed.getOrDefault(person.id(), List.of())))
                .toList();
    }

    /** Today at the college. */
    public LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone);
    }

    /** The zone days are counted in. */
    public ZoneId zone() {
        return zone;
    }

    /** What is taught and judged now. */
    public Curriculum curriculum() {
        return curriculum.get();
    }

    private ApprenticeRecord record(Person apprentice, List<BlockSheet> closed, List<SignOff> signed) {
        List<BlockSheet> ofBreakdown = closed.stream()
                .filter(sheet ->
                        sheet.breakdownId().equals(curriculum().breakdown().id()))
                .toList();
        List<StepRecord> steps = curriculum().breakdown().steps().stream()
                .map(step -> step(apprentice, step, ofBreakdown, signed))
                .toList();
        return new ApprenticeRecord(apprentice, steps, ofBreakdown);
    }

    private StepRecord step(Person apprentice, Step step, List<BlockSheet> closed, List<SignOff> signed) {
        List<SignOff> here =
                signed.stream().filter(s -> s.stepId().equals(step.id())).toList();
        StepStanding derived = Standing.derivedFrom(
                StepEvidence.of(closed, step.id(), zone),
                here.stream().map(this::signature).toList(),
                curriculum().rule(),
                step.eachSide(),
                today());
        List<BlockSheet> seen =
                closed.stream().filter(s -> !s.marksOf(step.id()).isEmpty()).toList();
        return new StepRecord(apprentice, step, derived, seen, here);
    }

    private StepSignedOff signature(SignOff signOff) {
        return new StepSignedOff(
                signOff.id().toString(),
                signOff.evidenceSeq(),
                LocalDate.ofInstant(signOff.signedAt(), zone),
                !signOff.stands());
    }
}
