package ribmark.carcase;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.function.Function;
import ribmark.basics.Refused;
import ribmark.basics.Weight;
import ribmark.basics.Words;
import ribmark.people.Person;

/** One body on the rail: what was recorded at intake, and every later decision, count and weight, oldest first. */
public record Carcase(
        UUID id,
        int number,
        Intake intake,
        List<Decided> decisions,
        List<Counted> counts,
        List<Reweighed> weights,
        Person recordedBy,
        Instant recordedAt) {

    /** Keeps copies; a carcase is never without a decision. */
    public Carcase {
        decisions = List.copyOf(decisions);
        counts = List.copyOf(counts);
        weights = List.copyOf(weights);
    }

    /** What it is called in a sentence: {@code lamb 31}; kind and number do not part. */
    public String name() {
        return intake.breakdownId() + "\u00a0" + number;
    }

    /** What it is called at the start of a sentence: {@code Lamb 31}. */
    public String title() {
        return Words.capital(name());
    }

    /** The breakdown it is cut by. */
    public String breakdownId() {
        return intake.breakdownId();
    }

    /** Its ticket. */
    public Ticket ticket() {
        return intake.ticket();
    }

    /** What was looked at. */
    public Checks checks() {
        return intake.checks();
    }

    /** Its weight on our own scale, as last weighed. */
    public Weight ownWeight() {
        return lastWeighed().map(Reweighed::weight).orElse(intake.own().weight());
    }

    /** The newest weight after the one of the intake, if there is one. */
    public Optional<Reweighed> lastWeighed() {
        return weights.stream().reduce((before, after) -> after);
    }

    /** The same carcase, had it weighed this when it was last weighed. */
    public Carcase weighing(Weight other) {
        List<Reweighed> more = new ArrayList<>(weights);
        more.add(new Reweighed(other, Optional.empty(), scaleId(), recordedBy, recordedAt, 0));
        return new Carcase(id, number, intake, decisions, counts, more, recordedBy, recordedAt);
    }

    /** Whether it was hot on our own scale. */
    public boolean hot() {
        return intake.own().hot();
    }

    /** The scale it was last weighed on. */
    public String scaleId() {
        return lastWeighed().map(Reweighed::scaleId).orElse(intake.scaleId());
    }

    /** Whether kidneys and their fat were still in it. */
    public boolean kidneysIn() {
        return checks().kidneysIn();
    }

    /** Its fat class, where the ticket names one. */
    public Optional<String> fatClass() {
        return ticket().fatClass();
    }

    /** Weight with its dressing, which never part: {@code 20.120 kg cold, kidneys in}. */
    public String weightInWords() {
        return new Weighed(ownWeight(), hot()) + ", kidneys " + checks().kidneys();
    }

    /** The newest decision with its reason: the one that counts. */
    public Decided decided() {
        return decisions.get(decisions.size() - 1);
    }

    /** The newest decision: the one that counts. */
    public Decision decision() {
        return decided().decision();
    }

    /** Whether it may be worked on. */
    public boolean isAccepted() {
        return decision() == Decision.ACCEPT;
    }

    /** Refuses to go on when nothing may be decided any more. */
    public void mustBeOpen() {
        if (decision().next().isEmpty()) {
            throw new Refused(title() + " is " + decision().standing() + ", and stays so.");
        }
    }

    /** Refuses a decision that may not follow the newest one. */
    public void mustAllow(Decision later) {
        mustBeOpen();
        if (!decision().next().contains(later)) {
            throw new Refused(title() + " is " + decision().standing() + " already.");
        }
    }

    /** How many vertebrae carry ribs, as last counted. */
    public OptionalInt thoracic() {
        return newest(Counted::thoracic);
    }

    /** How many vertebrae the loin has, as last counted. */
    public OptionalInt lumbar() {
        return newest(Counted::lumbar);
    }

    /** The vertebrae of this animal from head to tail: what was counted on it, and the usual numbers for the rest. */
    public String formula(String usual) {
        String[] regions = usual.split(",");
        thoracic().ifPresent(count -> regions[1] = Integer.toString(count));
        lumbar().ifPresent(count -> regions[2] = Integer.toString(count));
        return String.join(",", regions);
    }

    private OptionalInt newest(Function<Counted, OptionalInt> region) {
        return newestOf(region).map(region).orElse(OptionalInt.empty());
    }

    /** The newest count in which a region was counted. */
    Optional<Counted> newestOf(Function<Counted, OptionalInt> region) {
        return counts.stream().filter(count -> region.apply(count).isPresent()).reduce((before, after) -> after);
    }
}
