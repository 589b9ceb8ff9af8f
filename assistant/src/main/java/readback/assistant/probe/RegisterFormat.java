package readback.assistant.probe;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * How a number lies in 16-bit registers, each of which comes with its high byte first (Modbus Application Protocol
 * V1.1b3, section 4.2). The order of two registers is not settled there and differs between instruments.
 *
 * @param type of number
 * @param highFirst whether the first of two registers holds the high half
 * @param scale what the number is multiplied by
 */
record RegisterFormat(Type type, boolean highFirst, BigDecimal scale) {

    /** Kinds of numbers. */
    enum Type {
        INT16(1),
        UINT16(1),
        INT32(2),
        UINT32(2),
        /** IEEE 754 binary32. */
        FLOAT32(2);

        private final int registers;

        Type(int registers) {
            this.registers = registers;
        }

        /** How many registers hold one. */
        int registers() {
            return registers;
        }
    }

    /**
     * The number in these registers; not a number where they hold none.
     *
     * @param registers as they came, each 0 to 65535, as many as the type has
     */
    double number(int... registers) {
        if (registers.length != type.registers()) {
            return Double.NaN;
        }
        int first = registers[0] & 0xffff;
        int second = registers.length > 1 ? registers[1] & 0xffff : 0;
        int both = highFirst ? (first << 16) | second : (second << 16) | first;
        double number = switch (type) {
            case INT16 -> (short) first;
            case UINT16 -> first;
            case INT32 -> both;
            case UINT32 -> Integer.toUnsignedLong(both);
            // the shortest decimal of the float: the record shows no digits that the instrument did not give
            case FLOAT32 -> Double.parseDouble(Float.toString(Float.intBitsToFloat(both)));
        };
        return number * scale.doubleValue();
    }

    /** The registers as they came, in hexadecimal digits. */
    static String written(int... registers) {
        StringBuilder text = new StringBuilder();
        for (int register : registers) {
            text.append(text.isEmpty() ? "" : " ").append(String.format(Locale.ROOT, "%04x", register & 0xffff));
        }
        return text.toString();
    }
}
