// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

/** Thrown where a text is not the quantity asked for; says why and keeps the parts. */
public final class NotAQuantity extends Exception {
    private static final long serialVersionUID = 1L;

    /** What is wrong with the text. */
    public enum Reason {
        /** It does not start with a number. */
        NO_NUMBER("is not a number with a unit"),
        /** A number with a comma as decimal sign. */
        DECIMAL_COMMA("has a decimal comma; write a point"),
        /** A number whose exponent is beyond any physical value. */
        TOO_LARGE("is far too large or too small a number"),
        /** A number alone where a unit is needed. */
        NO_UNIT("has no unit"),
        /** What follows the number is no unit. */
        UNKNOWN_UNIT("has an unknown unit"),
        /** A known unit of another dimension. */
        WRONG_DIMENSION("has a unit of another dimension");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /** What is wrong, to be put after the text. */
        public String words() {
            return words;
        }
    }

    private final Reason reason;
    private final String unit;

    NotAQuantity(Reason reason, String text, String unit) {
        super("\"" + text + "\" " + reason.words());
        this.reason = reason;
        this.unit = unit;
    }

    /** What is wrong. */
    public Reason reason() {
        return reason;
    }

    /** The unit as found, empty where the text did not get that far. */
    public String unit() {
        return unit;
    }
}
