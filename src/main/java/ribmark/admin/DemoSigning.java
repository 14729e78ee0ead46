package ribmark.admin;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import ribmark.basics.Refused;
import ribmark.competence.SheetEvidence;
import ribmark.feedback.Reply;
import ribmark.people.Person;
import ribmark.signing.SignOff;
import ribmark.signing.StepRecord;

/** Tells who signed what off, what was taken back, and what the apprentices answered. */
final class DemoSigning {

    private final DemoStores stores;
    private final DemoRoster roster;
    private final DemoStory story;

    DemoSigning(DemoStores stores, DemoRoster roster, DemoStory story) {
        this.stores = stores;
        this.roster = roster;
        this.story = story;
    }

    void tell(String apprentice, DemoApprentice told) {
        String where = "apprentices, " + apprentice;
        told.signedOff().forEach(signed -> story.at(signed.when(), where, () -> sign(apprentice, signed)));
        told.takenBack().forEach(taken -> story.at(taken.when(), where, () -> withdraw(apprentice, taken)));
        told.answered().forEach(answered -> story.at(answered.when(), where, () -> answer(apprentice, answered)));
    }

    /** One sitting: the evidence is looked at once, and every step must have enough of it. */
    private void sign(String apprentice, DemoApprentice.Signed signed) {
        Person assessor = roster.assessor(signed.by());
        List<StepRecord> steps =
                stores.standings().record(roster.person(apprentice)).steps();
        for (Map.Entry<String, String> each : signed.steps().entrySet()) {
            StepRecord record = steps.stream()
                    .filter(step -> step.step().id().equals(each.getKey()))
                    .findFirst()
                    .orElseThrow(() -> new Refused("“" + each.getKey() + "” is no step."));
            if (!record.derived().mayBeSigned() || !record.wasWatchedBy(assessor.id())) {
                throw new Refused(each.getKey() + " cannot be signed by " + assessor.name() + ": it is "
                        + record.standing().word() + ". "
                        + record.derived().missing().orElse(""));
            }
            stores.signOffs()
                    .sign(record.apprentice().id(), record.step().id(), assessor, sheets(record), each.getValue());
        }
    }

    private static List<UUID> sheets(StepRecord record) {
        return record.derived().tally().counting().stream()
                .map(SheetEvidence::sheet)
                .map(UUID::fromString)
                .toList();
    }

    private void withdraw(String apprentice, DemoApprentice.TakenBack taken) {
        UUID who = roster.person(apprentice).id();
        SignOff standing = stores.signOffs().allOf(who, taken.step()).stream()
                .filter(SignOff::stands)
                .findFirst()
                .orElseThrow(() -> new Refused("No sign-off of " + taken.step() + " stands."));
        stores.signOffs().withdraw(standing, roster.person(taken.by()), taken.why());
    }

    private void answer(String apprentice, DemoApprentice.Answered answered) {
        Reply.Agrees agrees = Reply.Agrees.of(answered.agrees())
                .orElseThrow(() -> new Refused("“" + answered.agrees() + "” is neither yes, partly nor no."));
        stores.replies().add(roster.sheet(apprentice, answered.lamb()), agrees, answered.words());
    }
}
