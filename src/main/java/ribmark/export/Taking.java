package ribmark.export;

import java.util.List;
import java.util.UUID;

/** A report about to be taken away: of whom, in which form, the rows, and the receipt they carry. */
public record Taking(
        Export.Covers covers,
        UUID subject,
        String about,
        Export.Format format,
        List<ProgressRow> rows,
        Receipt receipt) {}
