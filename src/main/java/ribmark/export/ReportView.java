package ribmark.export;

import java.util.List;
import ribmark.signing.RibStrip;

/** A progress report as a page: of one person or of a group, on the screen or as a file that stands alone. */
public record ReportView(
        String title,
        boolean links,
        String take,
        List<Fact> facts,
        String stagesInWords,
        List<PersonReport> people,
        List<PersonReport> inFull,
        String rule,
        ReceiptView receipt) {

    /** A caption and its value. */
    public record Fact(String caption, String value) {}

    /** The receipt in ready words. */
    public record ReceiptView(String records, String root, String version) {

        static ReceiptView of(Receipt receipt) {
            long records = receipt.head().records();
            return new ReceiptView(
                    records + (records == 1 ? " record" : " records"),
                    receipt.head().root(),
                    receipt.contentVersion());
        }
    }

    /** The one person a report is about. */
    public PersonReport person() {
        return people.get(0);
    }

    /** Their strip. */
    public RibStrip strip() {
        return person().strip();
    }
}
