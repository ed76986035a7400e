// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.screw;

import static foldwright.elements.table.Table.MILLI;

import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A trapezoidal thread of the table {@code threads_trapezoidal.csv}: sizes of ISO 2904 from Tr8 to
 * Tr16, workshop sizes from Tr4, and their multi-start forms.
 *
 * <p>Names are written as in ISO 2902: diameter x lead, and the pitch after P if there are several
 * starts. {@code "Tr10x2"}, {@code "Tr 10×2"}, {@code "tr8x8P2"} and {@code "Tr 8x8(P2)"} are all
 * understood; a tolerance class after a dash is ignored.
 *
 * @param designation as printed in the table
 * @param thread its geometry
 * @param nutMinorDiameter D1 [m]
 * @param nutMajorDiameter D4 [m]
 * @param source where the dimensions come from
 */
public record TrapezoidalThread(
        String designation,
        ScrewThread thread,
        double nutMinorDiameter,
        double nutMajorDiameter,
        String source) {

    private static final Pattern NAME =
            Pattern.compile(
                    "tr(\\d+(?:\\.\\d+)?)x(\\d+(?:\\.\\d+)?)"
                            + "(?:\\(?p(\\d+(?:\\.\\d+)?)\\)?)?(?:-.*)?");

    /** The thread of that designation, or empty. */
    public static Optional<TrapezoidalThread> find(String designation) {
        return Shipped.CATALOG.find(designation);
    }

    /**
     * The thread of that designation.
     *
     * @throws foldwright.elements.table.UnknownNameException with the nearest designations
     */
    public static TrapezoidalThread get(String designation) {
        return Shipped.CATALOG.get(designation);
    }

    /** All threads of the table with their names. */
    public static Catalog<TrapezoidalThread> catalog() {
        return Shipped.CATALOG;
    }

    /** H1 = (d - D1)/2, depth over which screw and nut touch [m]. */
    public double contactDepth() {
        return (thread.majorDiameter() - nutMinorDiameter) / 2;
    }

    /** One spelling for one thread; text that is no designation is only cleaned. */
    static String normalise(String name) {
        String plain =
                name.toLowerCase(Locale.ROOT)
                        .replace('×', 'x')
                        .replace('*', 'x')
                        .replace(',', '.')
                        .replaceAll("\\s", "");
        Matcher m = NAME.matcher(plain);
        if (!m.matches()) {
            return plain;
        }
        String lead = trim(m.group(2));
        String pitch = m.group(3) == null ? lead : trim(m.group(3));
        String body = "tr" + trim(m.group(1)) + "x" + lead;
        return pitch.equals(lead) ? body : body + "p" + pitch;
    }

    private static String trim(String number) {
        return number.contains(".") ? number.replaceAll("0+$", "").replaceAll("\\.$", "") : number;
    }

    private static TrapezoidalThread of(Table.Row row) {
        ScrewThread thread =
                new ScrewThread(
                        row.number("d_mm", MILLI),
                        row.number("d2_pitch_dia_mm", MILLI),
                        row.number("d3_screw_root_mm", MILLI),
                        row.number("pitch_mm", MILLI),
                        row.whole("starts"),
                        ScrewThread.ISO_TRAPEZOIDAL);
        return new TrapezoidalThread(
                row.text("designation"),
                thread,
                row.number("D1_nut_minor_mm", MILLI),
                row.number("D4_nut_major_mm", MILLI),
                row.text("source"));
    }

    /** Read when the first thread is asked for. */
    private static final class Shipped {
        private static final Catalog<TrapezoidalThread> CATALOG =
                Catalog.of(
                        "trapezoidal thread",
                        entries(),
                        TrapezoidalThread::designation,
                        TrapezoidalThread::normalise);

        private static List<TrapezoidalThread> entries() {
            return Table.shipped("threads_trapezoidal.csv").rows().stream()
                    .map(TrapezoidalThread::of)
                    .toList();
        }
    }
}
