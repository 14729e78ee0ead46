package ribmark.weighupfile;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.scoring.Conditions;
import ribmark.scoring.ReferenceTable;
import ribmark.weighup.CarcaseReading;

/** The reference tables a weigh-up file names: one, or several with the coarsest first. */
record TableFields(List<ReferenceTable> tables, boolean allFound) {

    private static final String NAME = "reference";

    static TableFields read(Fields file, References references, Optional<CarcaseReading> carcase) {
        String help = "Name a table: "
                + String.join(
                        ", ",
                        references.tables().stream().map(ReferenceTable::id).toList()) + ".";
        Optional<JsonNode> named = file.value(NAME, help);
        if (named.isEmpty()) {
            return new TableFields(List.of(), false);
        }
        if (file.isEmptyList(NAME)) {
            file.refuse(NAME, "No table is named", help);
            return new TableFields(List.of(), false);
        }
        boolean list = named.get().isArray();
        int count = list ? named.get().size() : 1;
        List<ReferenceTable> tables = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String at = list ? NAME + "[" + i + "]" : NAME;
            JsonNode name = list ? named.get().get(i) : named.get();
            one(file, at, name, references, help).ifPresent(table -> {
                fit(file, at, table, tables, carcase);
                tables.add(table);
            });
        }
        return new TableFields(tables, tables.size() == count);
    }

    private static Optional<ReferenceTable> one(
            Fields file, String at, JsonNode name, References references, String help) {
        Optional<ReferenceTable> table = Optional.ofNullable(name.textValue()).flatMap(references::table);
        if (table.isEmpty()) {
            String typed = name.isTextual() ? name.textValue() : name.toString();
            file.refuse(at, "There is no reference table " + Fields.quoted(typed), help);
        }
        return table;
    }

    private static void fit(
            Fields file,
            String at,
            ReferenceTable table,
            List<ReferenceTable> before,
            Optional<CarcaseReading> carcase) {
        Optional<String> whyNot = carcase.map(c -> conditions(c, table)).flatMap(table::whyNot);
        whyNot.ifPresent(why -> file.refuse(at, why, "Take the table named there, or say that the kidneys are in."));
        if (before.contains(table)) {
            file.refuse(at, "Table " + table.id() + " is named twice", "Name it once.");
        }
        if (before.stream().anyMatch(earlier -> isFiner(earlier, table))) {
            file.refuse(at, "Table " + table.id() + " holds the larger pieces", "Name the coarser table first.");
        }
    }

    private static boolean isFiner(ReferenceTable one, ReferenceTable other) {
        return one.rows().stream()
                .anyMatch(row ->
                        row.partOf().stream().anyMatch(whole -> other.row(whole).isPresent()));
    }

    private static Conditions conditions(CarcaseReading carcase, ReferenceTable table) {
        return carcase.conditions(table.hot());
    }

    Optional<ReferenceTable.Row> row(String cut) {
        return tables.stream().flatMap(table -> table.row(cut).stream()).findFirst();
    }

    boolean lacks(String cut, CarcaseReading carcase) {
        return tables.stream().anyMatch(table -> table.lacks(cut, conditions(carcase, table)));
    }

    List<String> cuts() {
        return tables.stream()
                .flatMap(table -> table.rows().stream())
                .map(ReferenceTable.Row::cut)
                .distinct()
                .toList();
    }
}
