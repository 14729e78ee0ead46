package ribmark.anatomy;

import java.util.List;

/** Roman numerals, as Latin names of vertebrae and ribs carry them. */
final class Roman {

    private static final List<String> SIGNS = List.of("L", "XL", "X", "IX", "V", "IV", "I");
    private static final List<Integer> VALUES = List.of(50, 40, 10, 9, 5, 4, 1);

    private Roman() {}

    /** The numeral one higher. */
    static String next(String numeral) {
        return of(valueOf(numeral) + 1);
    }

    private static int valueOf(String numeral) {
        int value = 0;
        String rest = numeral;
        for (int at = 0; at < SIGNS.size(); at++) {
            while (rest.startsWith(SIGNS.get(at))) {
                value += VALUES.get(at);
                rest = rest.substring(SIGNS.get(at).length());
            }
        }
        return value;
    }

    private static String of(int value) {
        StringBuilder numeral = new StringBuilder();
        int rest = value;
        for (int at = 0; at < SIGNS.size(); at++) {
            numeral.append(SIGNS.get(at).repeat(rest / VALUES.get(at)));
            rest %= VALUES.get(at);
        }
        return numeral.toString();
    }
}
