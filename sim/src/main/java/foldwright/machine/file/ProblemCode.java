// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

/** What can be wrong with a machine file. */
public enum ProblemCode {
    /** The file cannot be opened or read. */
    CANNOT_READ,
    /** The file is larger than any machine file. */
    TOO_LARGE,
    /** Nothing but white space and comments. */
    EMPTY,
    /** Bytes that are no text. */
    BINARY,
    /** Text in another encoding than UTF-8. */
    WRONG_ENCODING,
    /** The text ends inside an object, list or text. */
    CUT_SHORT,
    /** The text is not JSON. */
    SYNTAX,
    /** Brackets nested deeper than any machine file. */
    TOO_DEEP,
    /** Something follows the closing bracket. */
    TEXT_AFTER_END,
    /** A key stands twice in one object. */
    DUPLICATE_KEY,
    /** A key nobody knows at this place. */
    UNKNOWN_KEY,
    /** A required key is missing. */
    MISSING_KEY,
    /** A text where a list is needed, and so on. */
    WRONG_TYPE,
    /** A text that does not start with a number. */
    NO_NUMBER,
    /** A number with a comma as decimal sign. */
    DECIMAL_COMMA,
    /** A number without its unit. */
    NO_UNIT,
    /** A unit nobody knows. */
    UNKNOWN_UNIT,
    /** A unit of another dimension. */
    WRONG_DIMENSION,
    /** A value outside its allowed range. */
    OUT_OF_RANGE,
    /** A list with too few or too many entries. */
    LIST_SIZE,
    /** A word that is none of the allowed ones. */
    UNKNOWN_WORD,
    /** A name that is not in its table. */
    UNKNOWN_NAME,
    /** A key path that leads nowhere in this file. */
    UNKNOWN_PATH,
    /** Values that are right one by one but cannot be true together. */
    CONTRADICTION
}
