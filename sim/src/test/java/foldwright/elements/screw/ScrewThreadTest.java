// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.screw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foldwright.elements.table.UnknownNameException;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The law of the thread; the worked examples are in the proof chapter. */
class ScrewThreadTest {
    private static final double MM = 1e-3;
    private static final String SEED = "20261125";

    @Provide
    Arbitrary<TrapezoidalThread> threads() {
        return Arbitraries.of(TrapezoidalThread.catalog().all());
    }

    @Property(tries = 600, seed = SEED)
    void torqueScalesWithTheLoad(
            @ForAll("threads") TrapezoidalThread size,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.4) double f,
            @ForAll @Scale(4) @DoubleRange(min = 1, max = 1e4) double load) {
        ScrewThread t = size.thread();
        assertThat(t.raiseTorque(load, f))
                .isCloseTo(load * t.raiseTorque(1, f), within(1e-9 * load));
        assertThat(t.lowerTorque(load, f))
                .isCloseTo(load * t.lowerTorque(1, f), within(1e-9 * load));
    }

    /** The inclined plane itself: forces on a wedge of the lead angle, friction angle rho'. */
    @Property(tries = 600, seed = SEED)
    void torqueIsThatOfAWedge(
            @ForAll("threads") TrapezoidalThread size,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.4) double f) {
        ScrewThread t = size.thread();
        double rho = Math.atan(f / Math.cos(Math.toRadians(15)));
        double arm = t.pitchDiameter() / 2;
        assertThat(t.raiseTorque(1, f))
                .isCloseTo(arm * Math.tan(t.leadAngle() + rho), within(1e-14));
        assertThat(t.lowerTorque(1, f))
                .isCloseTo(arm * Math.tan(rho - t.leadAngle()), within(1e-14));
    }

    @Property(tries = 600, seed = SEED)
    void workIsLostOnlyToFriction(
            @ForAll("threads") TrapezoidalThread size,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.4) double f) {
        ScrewThread t = size.thread();
        double useful = t.lead() / (2 * Math.PI);
        assertThat(t.raiseTorque(1, 0)).isCloseTo(useful, within(1e-15));
        assertThat(t.lowerTorque(1, 0)).isCloseTo(-useful, within(1e-15));
        assertThat(t.raiseTorque(1, f)).isGreaterThan(useful);
        assertThat(t.lowerTorque(1, f)).isGreaterThan(-useful);
        assertThat(t.efficiency(f)).isCloseTo(useful / t.raiseTorque(1, f), within(1e-12));
        assertThat(t.efficiency(f, Collar.NONE)).isCloseTo(t.efficiency(f), within(1e-12));
    }

    @Property(tries = 600, seed = SEED)
    void holdsExactlyWhenTheLoadCannotTurnIt(
            @ForAll("threads") TrapezoidalThread size,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.4) double f) {
        ScrewThread t = size.thread();
        if (Math.abs(t.selfLockingMargin(f) - 1) > 1e-9) {
            assertThat(t.selfLocks(f)).isEqualTo(t.lowerTorque(1, f) >= 0);
            assertThat(t.backDriveTorque(1, f) > 0).isEqualTo(!t.selfLocks(f));
        }
        if (t.selfLocks(f)) {
            // a self-locking thread raises with less than half efficiency (textbook)
            assertThat(t.efficiency(f)).isLessThan(0.5);
        }
        assertThat(t.lowerTorque(1, t.frictionAtSelfLocking())).isCloseTo(0, within(1e-15));
    }

    @Property(tries = 200, seed = SEED)
    void flankAngleInTheNormalPlaneChangesLittle(
            @ForAll("threads") TrapezoidalThread size,
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.2) double f) {
        ScrewThread t = size.thread();
        ScrewThread normal = t.withNormalPlaneFlanks();
        double change = Math.abs(normal.raiseTorque(1, f) / t.raiseTorque(1, f) - 1);
        assertThat(change).isLessThan(2e-3);
        assertThat(normal.halfFlankAngle()).isLessThan(t.halfFlankAngle());
    }

    @Test
    void frictionThatWedgesTheThreadAsksForInfiniteTorque() {
        ScrewThread steep = ScrewThread.square(10 * MM, 2 * MM, 20);
        assertThat(steep.raiseTorque(1, 0.9)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(steep.efficiency(0.9)).isZero();
    }

    @Test
    void collarHelpsToHold() {
        // Shigley Example 8-1: the thread lets go, the collar holds
        ScrewThread t = ScrewThread.square(32 * MM, 4 * MM, 2);
        Collar collar = new Collar(0.08, 40 * MM);
        assertThat(t.selfLockingMargin(0.08)).isLessThan(1);
        assertThat(t.selfLockingMargin(0.08, collar)).isGreaterThan(1);
        double driving = 6400 * t.lead() / (2 * Math.PI);
        assertThat(t.selfLockingMargin(0.08, collar))
                .isCloseTo((driving + 9.77443) / driving, within(1e-5));
        assertThat(collar.torque(-6400)).isEqualTo(collar.torque(6400));
    }

    @ParameterizedTest
    @CsvSource({
        "Tr10x2, Tr10x2",
        "Tr 10×2, Tr10x2",
        "tr10X2, Tr10x2",
        "Tr10*2, Tr10x2",
        "Tr10x2.0, Tr10x2",
        "Tr10x2-7e, Tr10x2",
        "Tr8x8P2, Tr8x8P2",
        "Tr 8×8 (P2), Tr8x8P2",
        "'Tr8x1,5', Tr8x1.5",
        "Tr 8 x 3 P 1.50, Tr8x3P1.5"
    })
    void designationsAreReadAsPeopleWriteThem(String written, String meant) {
        assertThat(TrapezoidalThread.get(written).designation()).isEqualTo(meant);
    }

    @Test
    void designationsAreReadUnderATurkishLocaleToo() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(TrapezoidalThread.find("TR10X2")).isPresent();
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Tr10x3", "Tr8x8", "M10", "10x2"})
    void unknownDesignationsAreNotFound(String name) {
        assertThat(TrapezoidalThread.find(name)).isEmpty();
    }

    @Test
    void unknownDesignationNamesItsNeighbours() {
        assertThatThrownBy(() -> TrapezoidalThread.get("Tr8x8"))
                .isInstanceOfSatisfying(
                        UnknownNameException.class,
                        e -> {
                            assertThat(e.asked()).isEqualTo("Tr8x8");
                            assertThat(e.nearest()).contains("Tr8x8P2");
                        })
                .hasMessageStartingWith("no trapezoidal thread is called \"Tr8x8\"; nearest: ");
    }

    @Test
    void tableAgreesWithTheIsoFormulas() {
        // ISO 2904: D1 = d - P, D4 = d + 2 a_c, H1 = P/2
        for (TrapezoidalThread size : TrapezoidalThread.catalog().all()) {
            ScrewThread t = size.thread();
            ScrewThread rule = ScrewThread.trapezoidal(t.majorDiameter(), t.pitch(), t.starts());
            assertThat(t.pitchDiameter()).isCloseTo(rule.pitchDiameter(), within(1e-9));
            assertThat(t.rootDiameter()).isCloseTo(rule.rootDiameter(), within(1e-9));
            assertThat(size.contactDepth()).isCloseTo(t.pitch() / 2, within(1e-9));
            double clearance = (size.nutMajorDiameter() - t.majorDiameter()) / 2;
            assertThat(t.rootDiameter())
                    .isCloseTo(size.nutMinorDiameter() - 2 * clearance, within(1e-9));
        }
    }

    @Test
    void nutPressureSpreadsOverTheEngagedTurns() {
        // Roloff/Matek: p = F P/(L pi d2 H1); Tr10x2, 100 N, 15 mm
        Nut nut = Nut.of(TrapezoidalThread.get("Tr10x2").thread(), 15 * MM);
        double turns = 15.0 / 2;
        double ring = Math.PI * 9 * MM * 1 * MM;
        assertThat(nut.pressure(100)).isCloseTo(100 / (turns * ring), within(1e-6));
        // one turn a second at d2: hypotenuse of circumference and lead
        assertThat(nut.slidingSpeed(2 * Math.PI))
                .isCloseTo(Math.hypot(Math.PI * 9 * MM, 2 * MM), within(1e-12));
    }

    @Test
    void impossibleThreadsAreRefusedByName() {
        assertThatThrownBy(() -> ScrewThread.trapezoidal(2 * MM, 5 * MM, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ScrewThread.square(10 * MM, 2 * MM, 0))
                .hasMessageContaining("starts is 0.0 1, allowed: a whole number of at least 1");
        assertThatThrownBy(() -> new ScrewThread(10 * MM, 9 * MM, 9.5 * MM, 2 * MM, 1, 0))
                .hasMessageContaining("root < pitch < major");
    }
}
