package ribmark.carcase;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import ribmark.basics.Weight;
import ribmark.basics.Words;
import ribmark.carcase.Checks.Cord;
import ribmark.curriculum.Breakdown.AtIntake;
import ribmark.curriculum.Curriculum;
import ribmark.scoring.Scale;
import ribmark.web.Form;

/** What was typed at the intake of a carcase, read field by field in the order of the page, and what is wrong with it. */
final class IntakeForm {

    /** How a fat class is written: 1 to 5, with L or H where a class is split. Common practice. */
    private static final Pattern FAT_CLASS = Pattern.compile("[1-5][LH]?");

    private static final List<String> HEAT = List.of("cold", "hot");

    private final Form form;
    private final Curriculum curriculum;
    private final String name;
    private final LocalDate today;

    IntakeForm(Form form, Curriculum curriculum, String name, LocalDate today) {
        this.form = form;
        this.curriculum = curriculum;
        this.name = name;
        this.today = today;
    }

    /** The whole intake, when nothing is wrong with any field of it. */
    Optional<Intake> read() {
        Optional<Ticket> ticket = ticket();
        Optional<Weighed> own = weighed("weight", "Weight on our own scale", "ownWeighed", "Our own weight is");
        String scale = form.oneOf(
                "scale", "Scale", curriculum.scales().stream().map(Scale::id).toList());
        Optional<Checks> checks = checks();
        CountForm.read(form, curriculum);
        decision(checks);
        if (!"yes".equals(form.value("sure"))) {
            form.add("sure", "I read the ticket against the carcase: not ticked. Read both, then tick it.");
        }
        return form.wrong()
                ? Optional.empty()
                : Optional.of(new Intake(
                        curriculum.breakdown().id(),
                        ticket.orElseThrow(),
                        own.orElseThrow(),
                        scale,
                        checks.orElseThrow()));
    }

    private Optional<Ticket> ticket() {
        Optional<LocalDate> killed = killed();
        String number = form.words("killNumber", "Kill number", "Copy it from the ticket.");
        String from = form.words("cameFrom", "Came from", "Copy name and place from the ticket.");
        String batch = form.words("batch", "Batch", "Copy it from the ticket.");
        Optional<Weighed> weighed =
                weighed("ticketWeight", "Weight on the ticket", "ticketWeighed", "The ticket’s weight is");
        String dressing = form.words("dressing", "Dressing", "Say what was left in and what was taken off.");
        Optional<String> fatClass = fatClass();
        return killed.isEmpty() || weighed.isEmpty()
                ? Optional.empty()
                : Optional.of(new Ticket(number, killed.get(), from, batch, weighed.get(), dressing, fatClass));
    }

    private Optional<LocalDate> killed() {
        String typed = form.value("killed");
        try {
            LocalDate day = LocalDate.parse(typed);
            if (day.isAfter(today)) {
                form.add("killed", "Kill date: " + Words.day(day) + " is not here yet. Read the ticket again.");
            }
            if (day.isBefore(today.minusYears(1))) {
                form.add("killed", "Kill date: " + Words.day(day) + " is over a year ago. Read the ticket again.");
            }
            return Optional.of(day);
        } catch (DateTimeParseException notADay) {
            String what = typed.isEmpty() ? "nothing was typed" : "“" + typed + "” is not a day";
            form.add("killed", "Kill date: " + what + ". Type year, month and day, for example " + today + ".");
            return Optional.empty();
        }
    }

    private Optional<String> fatClass() {
        String typed = form.value("fatClass").toUpperCase(Locale.ROOT);
        if (!typed.isEmpty() && !FAT_CLASS.matcher(typed).matches()) {
            form.add(
                    "fatClass",
                    "Fat class: “" + form.value("fatClass")
                            + "” is not a class. Type 1 to 5, with L or H where the ticket has it, or leave it empty.");
        }
        return Optional.of(typed).filter(text -> !text.isEmpty());
    }

    private Optional<Weighed> weighed(String field, String label, String heatField, String heatLabel) {
        String typed = form.value(field);
        Optional<String> why = Weight.whyNot(typed);
        why.or(() -> notALamb(Weight.ofKilograms(typed), typed))
                .ifPresent(sentence -> form.add(field, label + ": " + sentence));
        String heat = form.oneOf(heatField, heatLabel, HEAT);
        return why.isPresent()
                ? Optional.empty()
                : Optional.of(new Weighed(Weight.ofKilograms(typed), heat.equals("hot")));
    }

    private Optional<String> notALamb(Weight weight, String typed) {
        BigDecimal kilograms = BigDecimal.valueOf(weight.grams(), 3);
        BigDecimal lowest = limits().map(AtIntake::lowestKg).orElse(BigDecimal.valueOf(1, 3));
        Optional<BigDecimal> highest = limits().map(AtIntake::highestKg);
        String kind = curriculum.breakdown().id();
        if (highest.isPresent() && kilograms.compareTo(highest.get()) > 0) {
            return Optional.of(typed + "\u00a0kg is more than a " + kind + " can weigh. " + meant(kilograms, -1, -3));
        }
        return kilograms.compareTo(lowest) < 0
                ? Optional.of(typed + "\u00a0kg is less than a " + kind + " can weigh. " + meant(kilograms, 1, 3))
                : Optional.empty();
    }

    /** Offers the figure with its point moved, where that would be a weight. */
    private String meant(BigDecimal kilograms, int... moves) {
        for (int move : moves) {
            BigDecimal moved = kilograms.movePointRight(move);
            boolean fits = limits().isPresent()
                    && moved.compareTo(limits().get().lowestKg()) >= 0
                    && moved.compareTo(limits().get().highestKg()) <= 0
                    && moved.stripTrailingZeros().scale() <= 3;
            if (fits) {
                return "Type kilograms, for example " + moved.setScale(3).toPlainString() + ".";
            }
        }
        return "Type kilograms.";
    }

    private Optional<Checks> checks() {
        boolean legible = "yes".equals(oneOf("legible", "Health mark: say whether it can be read.", "yes", "no"));
        String mark = legible
                ? form.words("mark", "Number in the health mark", "Read it aloud and copy it.")
                : form.fitting("mark", "Number in the health mark");
        boolean kidneysIn = "in".equals(oneOf("kidneys", "Kidneys: say whether they are in or out.", "in", "out"));
        OptionalInt meat = temperature("meat", "Deepest temperature, thick of the leg");
        OptionalInt kidney = kidneysIn ? temperature("kidney", "Temperature of the kidneys") : noKidneys();
        Optional<Age> age = Age.of(oneOf(
                "age",
                "Age: say whether it is over 12 months.",
                Age.UNDER.code(),
                Age.OVER.code(),
                Age.UNKNOWN.code()));
        Optional<Cord> cord = Cord.of(
                oneOf("cord", "Spinal cord: say what you see.", Cord.OUT.code(), Cord.IN.code(), Cord.UNKNOWN.code()));
        return age.isEmpty() || cord.isEmpty() || meat.isEmpty()
                ? Optional.empty()
                : Optional.of(new Checks(mark, legible, age.get(), cord.get(), kidneysIn, meat.getAsInt(), kidney));
    }

    private String oneOf(String field, String sentence, String... choices) {
        String typed = form.value(field);
        if (!List.of(choices).contains(typed)) {
            form.add(field, sentence);
        }
        return typed;
    }

    private OptionalInt temperature(String field, String label) {
        String typed = form.value(field);
        Optional<String> why = Temperature.whyNot(typed);
        why.ifPresent(sentence -> form.add(field, label + ": " + sentence));
        return why.isPresent() ? OptionalInt.empty() : OptionalInt.of(Temperature.tenthsOf(typed));
    }

    private OptionalInt noKidneys() {
        if (!form.value("kidney").isEmpty() && form.problem("kidneys") == null) {
            form.add(
                    "kidney",
                    "Temperature of the kidneys: “" + form.value("kidney")
                            + "” was typed, but the kidneys are out. Leave it empty.");
        }
        return OptionalInt.empty();
    }

    /** What must be decided, and what must be said with it, given what was looked at. */
    private void decision(Optional<Checks> checks) {
        Optional<Decision> decision = Decision.of(oneOf(
                "decision",
                "What happens to " + name + ": choose accept, hold or refuse.",
                "accept",
                "hold",
                "refuse"));
        String reason = form.fitting("reason", "Reason");
        Optional<Concerns> concerns = checks.map(seen -> Concerns.about(seen, limits()));
        boolean accepted = decision.equals(Optional.of(Decision.ACCEPT));
        if (accepted && concerns.isPresent() && concerns.get().keepOffSaw()) {
            form.add(
                    "decision",
                    "Decision: accept does not go with an age over 12 months or not known. Choose hold; the supervisor and the site’s plan decide.");
        } else if (accepted && concerns.isPresent() && concerns.get().needAnswer() && reason.isEmpty()) {
            form.add(
                    "reason",
                    "Reason: " + concerns.get().inWords() + ". Choose hold, or write what was done about it.");
        }
        if (!accepted && decision.isPresent() && reason.isEmpty()) {
            form.add("reason", missing(decision.get()));
        }
    }

    private String missing(Decision decision) {
        return decision == Decision.HOLD
                ? "Hold: write the reason, so that whoever releases " + name + " knows what to look for."
                : "Refuse: write the reason, so that whoever sent " + name + " can be told.";
    }

    private Optional<AtIntake> limits() {
        return curriculum.breakdown().atIntake();
    }
}
