package ribmark.admin;

import ribmark.basics.Refused;
import ribmark.carcase.Carcase;
import ribmark.carcase.Decision;

/** Tells how the carcases of the demo came in: weighed, looked at, decided on, counted. */
final class DemoRail {

    private final DemoStores stores;
    private final DemoRoster roster;
    private final DemoStory story;

    DemoRail(DemoStores stores, DemoRoster roster, DemoStory story) {
        this.stores = stores;
        this.roster = roster;
        this.story = story;
    }

    void tell(DemoCarcases told) {
        told.carcases().forEach(this::tell);
    }

    private void tell(DemoCarcases.Body body) {
        String where = "carcases.yaml, lamb " + body.lamb();
        story.at(body.when(), where, () -> takeIn(body));
        body.later().forEach(later -> story.at(later.when(), where, () -> decide(body, later)));
        body.counted().forEach(count -> story.at(count.when(), where, () -> count(body, count)));
    }

    private void decide(DemoCarcases.Body body, DemoCarcases.Later later) {
        stores.carcases().decide(roster.lamb(body.lamb()), later.decided(), later.reason(), roster.person(later.by()));
        roster.lookAgain();
    }

    private void count(DemoCarcases.Body body, DemoCarcases.Count count) {
        stores.carcases().count(roster.lamb(body.lamb()), count.ribs(), count.loin(), roster.person(count.by()));
        roster.lookAgain();
    }

    private void takeIn(DemoCarcases.Body body) {
        var breakdown = stores.curriculum().breakdown();
        if (body.decided() != Decision.ACCEPT && body.why().isEmpty()) {
            throw new Refused("A carcase that is held or refused needs a reason.");
        }
        var intake = body.intake(
                breakdown.id(),
                breakdown.dressing(),
                story.moments().day(story.moments().at(body.when())));
        Carcase made = stores.carcases().add(body.lamb(), intake, body.decided(), body.why(), roster.person(body.by()));
        if (made.number() != body.lamb()) {
            throw new Refused("It was given the number " + made.number() + ".");
        }
    }
}
