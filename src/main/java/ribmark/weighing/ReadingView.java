package ribmark.weighing;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import ribmark.basics.Words;
import ribmark.carcase.Carcase;
import ribmark.curriculum.Curriculum;
import ribmark.scoring.Scale;
import ribmark.weighing.KeptReading.Struck;
import ribmark.weighing.KeptReading.Typed;
import ribmark.weighing.PageLine.Fact;
import ribmark.weighup.Numbers;

/** One reading to look into: what was on the scale, on which scale, for whom and by whom, and why it was taken off the list. */
public record ReadingView(
        UUID id, String name, String kg, List<Fact> facts, boolean counts, boolean comesOff, String why) {

    /** The weight of the whole carcase: it is never taken off, only weighed again. */
    static ReadingView ofCarcase(Carcase carcase, Curriculum curriculum, ZoneId zone) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "At intake",
                carcase.intake().own() + ", " + carcase.recordedBy().name()));
        carcase.weights()
                .forEach(again -> facts.add(new Fact(
                        again.text()
                                .map(text -> "Weighed again, typed “" + text + "”")
                                .orElse("Taken over"),
                        again.weight() + ", " + again.by().name() + ", " + Words.moment(again.at(), zone))));
        facts.add(new Fact("Scale", scaleInWords(Assembly.scale(curriculum, carcase.scaleId()))));
        String kg = carcase.ownWeight().toString();
        return new ReadingView(carcase.id(), carcase.title() + " whole", kg, facts, true, false, "");
    }

    static ReadingView of(KeptReading kept, String name, Curriculum curriculum, Map<UUID, String> sheets, ZoneId zone) {
        Typed typed = kept.typed();
        Scale scale = Assembly.scale(curriculum, typed.scale());
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("On the scale", typed.weight().toString()));
        typed.text().ifPresent(text -> facts.add(new Fact("As typed", "“" + text + "”")));
        typed.tare().ifPresent(tare -> facts.add(new Fact("Tray, taken off", tare.toString())));
        facts.add(new Fact("Scale", scaleInWords(scale)));
        if (typed.later()) {
            facts.add(new Fact("When", Assembly.LATER));
        }
        typed.sheet().map(sheets::get).ifPresent(who -> facts.add(new Fact("Freed by", who)));
        facts.add(new Fact("Weighed by", kept.by().name() + ", " + Words.moment(kept.recordedAt(), zone)));
        return new ReadingView(
                kept.id(),
                name,
                kept.net().toString(),
                facts,
                kept.counts(),
                kept.counts(),
                kept.struck().map(struck -> why(struck, zone)).orElse(""));
    }

    /** The same with what was asked about it. */
    ReadingView asked(List<Fact> more) {
        List<Fact> all = new ArrayList<>(facts);
        all.addAll(more);
        return new ReadingView(id, name, kg, all, counts, comesOff, why);
    }

    private static String why(Struck struck, ZoneId zone) {
        return "Taken off the list by " + struck.by().name() + ", " + Words.moment(struck.at(), zone) + ": “"
                + struck.why() + "”";
    }

    /** A scale by its name and division. */
    static String scaleInWords(Scale scale) {
        return scale.name() + ", " + Numbers.plain(scale.divisionG()) + "\u00a0g";
    }
}
