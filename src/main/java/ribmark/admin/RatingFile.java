package ribmark.admin;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import ribmark.basics.FileProblem;
import ribmark.competence.Agreement.Level;
import ribmark.competence.Mark;
import ribmark.competence.Rating;

/** Ratings of several assessors from a CSV file with the columns item, assessor and rating. */
final class RatingFile {

    private static final List<String> HEADER = List.of("item", "assessor", "rating");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,15}(\\.[0-9]{1,9})?");

    private final Level level;
    private final List<Rating> ratings = new ArrayList<>();
    private final List<FileProblem> problems = new ArrayList<>();
    private final Set<List<String>> seen = new HashSet<>();
    private boolean numbers;
    private boolean marks;

    private RatingFile(Level level) {
        this.level = level;
    }

    static RatingFile read(byte[] csv, Level level) {
        RatingFile file = new RatingFile(level);
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(csv))
                    .toString();
            file.parse(text.startsWith("\ufeff") ? text.substring(1) : text);
        } catch (CharacterCodingException notUtf8) {
            file.refuse("", "This file is not UTF-8 text", "Save it as UTF-8.");
        } catch (IOException | UncheckedIOException broken) {
            file.refuse("", "This is not a CSV file: a quote is not closed", "Mend it and try again.");
        }
        return file;
    }

    List<Rating> ratings() {
        return ratings;
    }

    List<FileProblem> problems() {
        return problems;
    }

    private void parse(String text) throws IOException {
        try (CSVParser parser = CSVParser.parse(
                new StringReader(text),
                CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get())) {
            int rows = 0;
            for (CSVRecord row : parser) {
                rows++;
                if (rows > 1) {
                    read(row, "line " + parser.getCurrentLineNumber());
                } else if (!row.toList().equals(HEADER)) {
                    refuse(
                            "line 1",
                            "The first line must be item,assessor,rating",
                            "Name the three columns in this order.");
                    return;
                }
            }
            if (rows < 2) {
                refuse("", "There is no rating in this file", "Write item,assessor,rating, then one rating a line.");
            }
        }
        if (numbers && marks) {
            refuse("rating", "Numbers and marks stand side by side", "Use one kind of rating in a file.");
        }
    }

    private void read(CSVRecord row, String at) {
        if (row.size() != HEADER.size() || row.stream().anyMatch(String::isBlank)) {
            refuse(at, "A rating needs an item, an assessor and a rating", "Write all three, none of them empty.");
            return;
        }
        String item = row.get(0).strip();
        String assessor = row.get(1).strip();
        Optional<String> rating = rating(row.get(2).strip());
        if (rating.isEmpty()) {
            refuse(at, "“" + row.get(2).strip() + "” has no place in an order", help());
        } else if (seen.add(List.of(item, assessor))) {
            ratings.add(new Rating(item, assessor, rating.get()));
        } else {
            refuse(at, assessor + " rated " + item + " twice", "Keep one of the two.");
        }
    }

    /** Numbers that are equal are one rating, however they are written; so is a mark by its word or its id. */
    private Optional<String> rating(String typed) {
        if (level == Level.NOMINAL) {
            return Optional.of(typed);
        }
        if (NUMBER.matcher(typed).matches()) {
            numbers = true;
            return Optional.of(new BigDecimal(typed).stripTrailingZeros().toPlainString());
        }
        Optional<String> mark = level == Level.ORDINAL ? Mark.of(typed).map(Mark::code) : Optional.empty();
        marks |= mark.isPresent();
        return mark;
    }

    private String help() {
        return level == Level.INTERVAL
                ? "Write a number, or choose another level."
                : "Write a number or one of our marks, or choose the level nominal.";
    }

    private void refuse(String at, String headline, String help) {
        problems.add(new FileProblem(at, headline, help));
    }
}
