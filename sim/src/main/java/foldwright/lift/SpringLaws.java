// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.elements.spring.Attachment;
import foldwright.elements.spring.ConicalSpring;
import foldwright.elements.spring.LinearLaw;
import foldwright.elements.spring.SpringLaw;
import foldwright.elements.spring.TorsionSpring;
import foldwright.elements.spring.WireGrade;
import foldwright.machine.spring.Coil;
import foldwright.machine.spring.ConicalCoil;
import foldwright.machine.spring.Contact;
import foldwright.machine.spring.GasSpring;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.RatedCoil;
import foldwright.machine.spring.RatedTorsion;
import foldwright.machine.spring.TorsionAtFlat;
import foldwright.machine.spring.TorsionCoil;

/** Springs of the machine file as force laws over length or angle. */
public final class SpringLaws {
    private SpringLaws() {}

    /** Law of a spring that acts along a length. */
    static SpringLaw along(HelperSpring spring) {
        Attachment hold = attachment(spring);
        if (spring.law() instanceof Coil c) {
            return new LinearLaw(
                    rate(c), c.freeLength(), c.closedLength(), hold, SpringLaw.Measure.LENGTH);
        }
        if (spring.law() instanceof RatedCoil c) {
            return new LinearLaw(
                    c.rate(), c.freeLength(), c.solidLength(), hold, SpringLaw.Measure.LENGTH);
        }
        if (spring.law() instanceof ConicalCoil c) {
            return conical(c).law(hold);
        }
        if (spring.law() instanceof GasSpring g) {
            return gas(g).law(hold);
        }
        throw new IllegalArgumentException(
                "\"" + spring.name() + "\" is a torsion spring and cannot act along a length");
    }

    /**
     * Law of a torsion spring over the angle of its legs.
     *
     * @param freeAngle angle at which it lets go [rad]
     * @param flatAngle angle at which it stands when folded flat, below {@code freeAngle} [rad]
     */
    static SpringLaw around(HelperSpring spring, double freeAngle, double flatAngle) {
        double rate;
        if (spring.law() instanceof TorsionCoil t) {
            rate = torsion(t).rate();
        } else if (spring.law() instanceof RatedTorsion r) {
            rate = r.rate();
        } else if (spring.law() instanceof TorsionAtFlat t) {
            rate = t.torqueAtFlat() / (freeAngle - flatAngle);
        } else {
            throw new IllegalArgumentException(
                    "\"" + spring.name() + "\" is no torsion spring and cannot act at pins");
        }
        double wind = freeAngle - flatAngle;
        return new LinearLaw(
                rate, freeAngle, freeAngle - 2 * wind, attachment(spring), SpringLaw.Measure.ANGLE);
    }

    private static Attachment attachment(HelperSpring spring) {
        return spring.contact() == Contact.ATTACHED ? Attachment.ATTACHED : Attachment.TOUCHING;
    }

    /** G d⁴/(8 D³ N) [N/m]. */
    static double rate(Coil c) {
        double d = c.wire();
        double m = c.meanDiameter();
        double shear = WireGrade.get(c.grade()).shearModulus(d);
        return shear * d * d * d * d / (8 * m * m * m * c.activeCoils());
    }

    /** Coils at a constant pitch over the free length, less one dead coil at each end. */
    public static ConicalSpring conical(ConicalCoil c) {
        return new ConicalSpring(
                c.wire(),
                c.smallDiameter(),
                c.largeDiameter(),
                c.activeCoils(),
                c.freeLength() - 2 * c.wire(),
                2 * c.wire(),
                WireGrade.get(c.grade()).shearModulus(c.wire()));
    }

    static TorsionSpring torsion(TorsionCoil t) {
        return new TorsionSpring(
                t.wire(),
                t.meanDiameter(),
                t.activeCoils(),
                0,
                WireGrade.get(t.grade()).youngsModulus(t.wire()),
                TorsionSpring.RateForm.BARE_WIRE);
    }

    /** Slow compression: the ratio of the two stated forces is the isothermal one. */
    static foldwright.elements.spring.GasSpring gas(GasSpring g) {
        return new foldwright.elements.spring.GasSpring(
                g.extendedLength(),
                g.stroke(),
                g.force(),
                g.compressedForce() / g.force(),
                1,
                g.friction());
    }
}
