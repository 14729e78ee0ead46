package ribmark.admin;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Whether a command prints for people or for programs. */
public enum OutputFormat {
    /** Lines for people. */
    TEXT,
    /** JSON for programs. */
    JSON;

    /** Reads the word behind {@code --format}. */
    public static final class Reader implements ITypeConverter<OutputFormat> {

        @Override
        public OutputFormat convert(String word) {
            return switch (word) {
                case "text" -> TEXT;
                case "json" -> JSON;
                default -> throw new TypeConversionException("“" + word + "” is not a format. Write text or json.");
            };
        }
    }
}
