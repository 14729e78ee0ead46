package ribmark;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the number behind {@code --port}. */
final class PortReader implements ITypeConverter<Integer> {

    /** Ports are two bytes (RFC 9293, section 3.1). */
    private static final int HIGHEST = 65_535;

    @Override
    public Integer convert(String typed) {
        if (!typed.matches("[0-9]{1,5}") || Integer.parseInt(typed) > HIGHEST) {
            throw new TypeConversionException("“" + typed + "” is not a port. Write a number from 0 to 65535.");
        }
        return Integer.valueOf(typed);
    }
}
