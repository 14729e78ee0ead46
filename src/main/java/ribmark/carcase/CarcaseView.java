package ribmark.carcase;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.stream.Stream;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Known;
import ribmark.people.Acting;
import ribmark.scoring.Scale;
import ribmark.web.Choice;
import ribmark.web.Role;

/** Everything about one carcase as its page says it, ready to be shown. */
public record CarcaseView(Carcase carcase, Curriculum curriculum, Acting reader, ZoneId zone) {

    /** A caption and a value on the ticket strip. */
    public record Pair(String caption, String value, boolean kept) {}

    /** A line of facts. */
    public record Fact(String caption, String value) {}

    /** A decision as listed. */
    public record DecisionRow(String at, String decision, String by, String reason) {}

    /** A count as listed. */
    public record CountRow(String at, String ribs, String loin, String by) {}

    /** Its address. */
    public UUID id() {
        return carcase.id();
    }

    /** What it is called. */
    public String title() {
        return carcase.title();
    }

    /** What it is called in a sentence. */
    public String name() {
        return carcase.name();
    }

    /** The ticket strip. */
    public List<Pair> strip() {
        return List.of(
                new Pair("Our own scale", carcase.weightInWords(), true),
                new Pair("Came in", Words.day(carcase.recordedAt(), zone), true));
    }

    /** How it stands, with a capital: {@code On hold}. */
    public String standing() {
        return Words.capital(carcase.decision().standing());
    }

    /** The newest decision in one sentence. */
    public String lead() {
        Decided newest = carcase.decided();
        String by = standing() + " by " + newest.by().name() + ", " + Words.day(newest.at(), zone);
        return newest.reason().isEmpty() ? by + "." : by + ": “" + newest.reason() + "”";
    }

    /** What may be done with it now, in one sentence. */
    public String means() {
        return switch (carcase.decision()) {
            case ACCEPT ->
                offSaw()
                        ? "It may be worked on as the reason says; the saw stays off its backbone."
                        : "It may be worked on.";
            case HOLD -> "Hang it apart, labelled. No knife touches it until somebody decides again.";
            case REFUSE ->
                "Nobody works on it, and that stays so. Keep it apart, labelled, and follow the site’s plan.";
        };
    }

    /** Mark and temperatures that need an answer, as a sentence; nothing when there are none. */
    public String concern() {
        Concerns concerns = concerns();
        return concerns.needAnswer() ? Words.capital(concerns.inWords()) + "." : null;
    }

    /** Whether its age keeps the saw off its backbone. */
    public boolean offSaw() {
        return concerns().keepOffSaw();
    }

    /** What the limits rest on. */
    public List<Known> grounds() {
        return grounds(curriculum);
    }

    static List<Known> grounds(Curriculum curriculum) {
        return curriculum
                .breakdown()
                .atIntake()
                .map(limits -> Known.of(curriculum, limits.restsOn().stream()))
                .orElse(List.of());
    }

    private Concerns concerns() {
        return Concerns.about(carcase.checks(), curriculum.breakdown().atIntake());
    }

    /** The ticket, line by line. */
    public List<Fact> ticket() {
        Ticket ticket = carcase.ticket();
        return facts(
                new Fact("Killed", Words.day(ticket.killedOn()) + ", number " + ticket.killNumber()),
                new Fact("Came from", ticket.cameFrom()),
                new Fact("Batch", ticket.batch()),
                new Fact("Weight on the ticket", ticket.weighed().toString()),
                new Fact("Dressing", ticket.dressing()),
                new Fact("Fat class", ticket.fatClass().orElse("not on the ticket")));
    }

    /** What was looked at, line by line. */
    public List<Fact> checks() {
        return Stream.concat(looked().stream(), weighedAgain()).toList();
    }

    private List<Fact> looked() {
        Checks checks = carcase.checks();
        return facts(
                new Fact("Our own scale", carcase.intake().own() + ", " + scaleWords()),
                new Fact("Health mark", mark(checks)),
                new Fact("Kidneys", checks.kidneys()),
                new Fact("Deepest temperature", Temperature.say(checks.meatTenths())),
                new Fact("Kidneys’ temperature", degrees(checks.kidneyTenths())),
                new Fact("Age", checks.age().words()),
                new Fact("Spinal cord", checks.cord().words()),
                new Fact("Recorded by", carcase.recordedBy().name() + ", " + Words.moment(carcase.recordedAt(), zone)));
    }

    private Stream<Fact> weighedAgain() {
        return carcase.weights().stream()
                .map(again -> new Fact(
                        again.text().isPresent() ? "Weighed again" : "Weight taken over",
                        again.weight() + ", " + again.by().name() + ", " + Words.moment(again.at(), zone)));
    }

    private static List<Fact> facts(Fact... facts) {
        return Stream.of(facts).filter(fact -> !fact.value().isEmpty()).toList();
    }

    private static String mark(Checks checks) {
        String number = checks.mark().isEmpty() ? "" : checks.mark() + ", ";
        return number + (checks.markLegible() ? "can be read" : "blurred or missing");
    }

    private static String degrees(OptionalInt tenths) {
        return tenths.isPresent() ? Temperature.say(tenths.getAsInt()) : "";
    }

    private Optional<Scale> scale() {
        return curriculum.scale(carcase.scaleId());
    }

    private String scaleWords() {
        return scale().map(scale -> "scale: " + scale.name()).orElse("scale: " + carcase.scaleId());
    }

    /** Our scale against the ticket; nothing when the scale is no longer among ours. */
    public AgainstTicket against() {
        return scale().map(scale -> new AgainstTicket(
                        carcase.ticket().weighed(), carcase.intake().own(), scale))
                .orElse(null);
    }

    /** All decisions, the newest first. */
    public List<DecisionRow> decisions() {
        return newestFirst(carcase.decisions().stream()
                .map(d ->
                        new DecisionRow(Words.moment(d.at(), zone), d.decision().word(), d.by().name(), d.reason()))
                .toList());
    }

    /** All counts, the newest first. */
    public List<CountRow> counts() {
        return newestFirst(carcase.counts().stream()
                .map(c -> new CountRow(
                        Words.moment(c.at(), zone), figure(c.thoracic()), figure(c.lumbar()), c.by().name()))
                .toList());
    }

    /** The vertebrae of this animal in one sentence. */
    public String formula() {
        String usual = curriculum.breakdown().formula().toString();
        String own = carcase.formula(usual);
        return own.equals(usual)
                ? "Taken as the usual animal, " + usual.replace(",", ", ") + ", head to tail."
                : "This animal: " + own.replace(",", ", ") + ", head to tail. Usual: " + usual.replace(",", ", ") + ".";
    }

    /** What may be decided next. */
    public List<Choice> next() {
        return carcase.decision().next().stream()
                .map(d -> Choice.of(d.word(), d == carcase.decision() ? d.word() + ", for a further reason" : d.word()))
                .toList();
    }

    /** Whether it was ever accepted, so that something may have been weighed. */
    public boolean wasAccepted() {
        return carcase.decisions().stream().anyMatch(d -> d.decision() == Decision.ACCEPT);
    }

    /** Whether the reader may open a block sheet on it. */
    public boolean mayOpenSheet() {
        return carcase.isAccepted() && reader.as(Role.ASSESSOR);
    }

    private static String figure(OptionalInt count) {
        return count.isPresent() ? Integer.toString(count.getAsInt()) : "";
    }

    private static <T> List<T> newestFirst(List<T> oldestFirst) {
        List<T> turned = new ArrayList<>(oldestFirst);
        Collections.reverse(turned);
        return turned;
    }
}
