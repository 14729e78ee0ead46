package ribmark.scoring;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import ribmark.scoring.ReferenceTable.Row;

/**
 * The tables a weigh-up is held against, the coarsest first, made ready once for every weigh-up held against them: each row once,
 * the larger piece its cut comes out of, one side of it, and the same tables as they hold for other carcases.
 */
public final class Yardstick {

    /** Said in place of a row where there is none. */
    public static final int NONE = -1;

    private final List<ReferenceTable> tables;
    private final Yardstick usual;
    private final List<Row> rows;
    private final Row[] whole;
    private final Row[] sides;
    private final String[] names;
    private final int[] wholes;
    private final AtomicReferenceArray<Yardstick> adjusted;

    private Yardstick(List<ReferenceTable> tables, Optional<Yardstick> usual) {
        this.tables = List.copyOf(tables);
        this.usual = usual.orElse(this);
        Map<String, Row> byCut = new LinkedHashMap<>();
        tables.forEach(table -> table.rows().forEach(row -> byCut.putIfAbsent(row.cut(), row)));
        this.rows = List.copyOf(byCut.values());
        this.whole = rows.toArray(Row[]::new);
        this.sides = rows.stream().map(Row::oneSide).toArray(Row[]::new);
        this.names = byCut.keySet().toArray(String[]::new);
        adjusted = new AtomicReferenceArray<>(2 << tables.size());
        adjusted.set(adjusted.length() - 1, this); // nothing to adjust for the carcase the tables mean
        wholes = rows.stream().mapToInt(this::whole).toArray();
    }

    /** Tables as they stand in the files; refuses none at all. */
    public static Yardstick of(List<ReferenceTable> tables) {
        if (tables.isEmpty()) {
            throw new IllegalArgumentException("A weigh-up needs a reference table");
        }
        return new Yardstick(tables, Optional.empty());
    }

    private int whole(Row row) {
        return row.partOf().stream()
                .mapToInt(whole -> place(whole, 0))
                .filter(place -> place != NONE)
                .findFirst()
                .orElse(NONE);
    }

    /** The same tables as they hold for one carcase; refused in one sentence where one cannot judge it. */
    public Yardstick under(Conditions conditions) {
        if (!conditions.vertebrae().areUsual()) {
            return adjusted(conditions);
        }
        int kind = kind(conditions);
        Yardstick ready = adjusted.get(kind);
        if (ready == null) {
            ready = adjusted(conditions);
            adjusted.set(kind, ready);
        }
        return ready;
    }

    private Yardstick adjusted(Conditions conditions) {
        return new Yardstick(
                tables.stream().map(table -> table.under(conditions)).toList(), Optional.of(this));
    }

    /** All that changes what tables expect of an animal with the usual vertebrae: a bit for its kidneys, and one for each table's bounds. */
    private int kind(Conditions conditions) {
        int kind = conditions.kidneysIn() ? 1 : 0;
        for (ReferenceTable table : tables) {
            kind = 2 * kind + (table.bounds().hold(conditions) ? 1 : 0);
        }
        return kind;
    }

    /** These tables before they were adjusted to a carcase. */
    public Yardstick usual() {
        return usual;
    }

    /** The tables, the coarsest first. */
    public List<ReferenceTable> tables() {
        return tables;
    }

    /** The coarsest table: what holds for the carcase as a whole is read there. */
    public ReferenceTable first() {
        return tables.get(0);
    }

    /** Every row once, in the order of the tables; the coarser table's row goes first. */
    public List<Row> rows() {
        return rows;
    }

    /** The row that judges this cut. */
    public Optional<Row> row(String cut) {
        int place = place(cut, 0);
        return place == NONE ? Optional.empty() : Optional.of(rows.get(place));
    }

    /** How many rows there are. */
    public int size() {
        return names.length;
    }

    /** The row that stands at this place. */
    public Row row(int place) {
        return whole[place];
    }

    /** Where the row of a cut stands among the rows, or {@link #NONE}; looked for from a place on, as cuts mostly come in their order. */
    public int place(String cut, int from) {
        for (int at = from; at < names.length; at++) {
            if (names[at].equals(cut)) {
                return at;
            }
        }
        return from == 0 ? NONE : place(cut, 0);
    }

    /** Where the larger piece stands that the cut of a row comes out of; {@link #NONE} when it comes straight off the carcase. */
    public int whole(int place) {
        return wholes[place];
    }

    /** What judges one side of a pair alone. */
    public Row oneSide(int place) {
        return sides[place];
    }
}
