// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.motor;

import static foldwright.elements.table.Table.MILLI;
import static foldwright.elements.table.Table.ONE;

import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import java.util.List;
import java.util.Optional;

/**
 * Typical data of a stepper by frame size and body length, low side of several makers (table {@code
 * motors_stepper_typical.csv}). A start for a design; the data sheet of the motor bought takes its
 * place.
 *
 * <p>Named like {@code "17 x 40"}: frame size, body length in mm.
 *
 * @param frameSize NEMA ICS 16 size
 * @param bodyLength [m]
 * @param motor its electrical data, 200 full steps a turn
 * @param mass [kg]
 * @param source where the row comes from
 */
public record TypicalStepper(
        int frameSize, double bodyLength, HybridStepper motor, double mass, String source) {

    /** Frame size and body length in mm, e.g. {@code "17 x 40"}. */
    public String name() {
        return frameSize + " x " + Math.round(bodyLength / MILLI);
    }

    /** The motor of that name, or empty. */
    public static Optional<TypicalStepper> find(String name) {
        return Shipped.CATALOG.find(name);
    }

    /**
     * The motor of that name.
     *
     * @throws foldwright.elements.table.UnknownNameException with the nearest names
     */
    public static TypicalStepper get(String name) {
        return Shipped.CATALOG.get(name);
    }

    /** All motors, small frames first. */
    public static Catalog<TypicalStepper> catalog() {
        return Shipped.CATALOG;
    }

    private static TypicalStepper of(Table.Row row) {
        double gramSquareCentimetre = 1e-7;
        HybridStepper motor =
                new HybridStepper(
                        row.number("holding_torque_Nm_two_phase_on", ONE),
                        row.number("rated_current_A_per_phase", ONE),
                        row.number("R_ohm", ONE),
                        row.number("L_mH", MILLI),
                        HybridStepper.TEETH_200_STEPS,
                        row.number("rotor_inertia_gcm2", gramSquareCentimetre),
                        row.number("detent_torque_Nm", ONE));
        return new TypicalStepper(
                row.whole("frame_size"),
                row.number("body_length_mm", MILLI),
                motor,
                row.number("mass_kg", ONE),
                row.text("source"));
    }

    /** Read when the first motor is asked for. */
    private static final class Shipped {
        private static final Catalog<TypicalStepper> CATALOG =
                Catalog.of(
                        "typical stepper",
                        entries(),
                        TypicalStepper::name,
                        name -> Catalog.plain(name.replace('×', 'x')));

        private static List<TypicalStepper> entries() {
            return Table.shipped("motors_stepper_typical.csv").rows().stream()
                    .map(TypicalStepper::of)
                    .toList();
        }
    }
}
