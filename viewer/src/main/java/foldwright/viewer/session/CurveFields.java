// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.elements.spring.SpringLaw;
import foldwright.lift.ArmLoad;
import foldwright.lift.CurvePoint;
import foldwright.lift.ForceCurve;
import foldwright.lift.LiftNames;
import foldwright.lift.PinLoad;
import foldwright.lift.SpringLoad;
import foldwright.machine.Machine;
import foldwright.machine.drive.BeltReduction;
import foldwright.study.Series;
import foldwright.viewer.scene.BeltNames;
import foldwright.viewer.scene.SourceNames;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The loads a force curve tells of the parts, by overlay. */
final class CurveFields {
    private final Machine machine;
    private final List<CurvePoint> points;
    private final Map<String, Double> alsoUsed;

    /**
     * @param alsoUsed shares used of parts the curve knows nothing of, the same at every height
     */
    CurveFields(Machine machine, ForceCurve curve, Map<String, Double> alsoUsed) {
        this(machine, curve.raising(), alsoUsed);
    }

    CurveFields(Machine machine, List<CurvePoint> points, Map<String, Double> alsoUsed) {
        this.machine = machine;
        this.points = points;
        this.alsoUsed = alsoUsed;
    }

    Optional<LoadField> field(Overlay overlay) {
        if (points.size() < 2 || overlay == Overlay.NONE) {
            return Optional.empty();
        }
        Map<String, Series> out = new HashMap<>();
        switch (overlay) {
            case ARM_BENDING -> arms(ArmLoad::bending, out);
            case ARM_AXIAL -> arms(ArmLoad::axial, out);
            case ARM_STRESS -> arms(ArmLoad::stress, out);
            case PIN_FORCE -> pins(PinLoad::force, out);
            case PIN_PRESSURE -> pins(PinLoad::pressure, out);
            case SCREW_FORCE -> screws(p -> p.screw().force(), out);
            case SPRING_FORCE -> springs(SpringLaw.Measure.LENGTH, SpringLoad::force, out);
            case SPRING_MOMENT -> springs(SpringLaw.Measure.ANGLE, SpringLoad::force, out);
            case DRIVE_BELT -> driveBelt(out);
            case USED -> used(out);
            default -> {}
        }
        // A scale of shares used always shows the whole that may be used.
        double least = overlay == Overlay.USED ? 1 : 0;
        return out.isEmpty()
                ? Optional.empty()
                : Optional.of(new LoadField(overlay, series(CurvePoint::height), out, least));
    }

    private Series series(ToDoubleFunction<CurvePoint> number) {
        return Series.of(points.stream().mapToDouble(number).toArray());
    }

    private <T> void each(
            Function<CurvePoint.Parts, List<T>> list,
            Function<T, String> name,
            ToDoubleFunction<T> number,
            Map<String, Series> out) {
        List<T> first = list.apply(points.get(0).parts());
        for (int k = 0; k < first.size(); k++) {
            int index = k;
            Series s =
                    series(
                            p -> {
                                List<T> here = list.apply(p.parts());
                                return index < here.size()
                                        ? number.applyAsDouble(here.get(index))
                                        : Double.NaN;
                            });
            if (s.max() > Double.NEGATIVE_INFINITY) {
                out.put(name.apply(first.get(k)), s);
            }
        }
    }

    private void arms(ToDoubleFunction<ArmLoad> number, Map<String, Series> out) {
        each(CurvePoint.Parts::arms, ArmLoad::arm, number, out);
    }

    private void pins(ToDoubleFunction<PinLoad> number, Map<String, Series> out) {
        each(CurvePoint.Parts::pins, PinLoad::pin, number, out);
    }

    private void springs(
            SpringLaw.Measure measure,
            ToDoubleFunction<SpringLoad> number,
            Map<String, Series> out) {
        each(
                p -> p.springs().stream().filter(s -> s.measure() == measure).toList(),
                SpringLoad::spring,
                number,
                out);
    }

    /** The curve knows the most loaded screw; all are shown with its load. */
    private void screws(ToDoubleFunction<CurvePoint> number, Map<String, Series> out) {
        Series s = series(number);
        for (int i = 1; i <= machine.drive().lines().size(); i++) {
            out.put(LiftNames.screw(i), s);
        }
    }

    /**
     * Pull of the strands over the slack one: the motor's torque over its pitch radius on the
     * strand it hauls in, less by each screw's equal part after every screw.
     */
    private void driveBelt(Map<String, Series> out) {
        if (machine.drive().transmission() instanceof BeltReduction belt) {
            double radius = belt.teeth().motor() * belt.pitch() / (2 * Math.PI);
            int screws = machine.drive().lines().size();
            for (int passed = 0; passed <= screws; passed++) {
                double share = (double) passed / screws;
                out.put(
                        BeltNames.driveStrand(passed, screws),
                        series(
                                p -> {
                                    double pull = p.motor().needed() / radius;
                                    return pull >= 0 ? share * pull : (share - 1) * pull;
                                }));
            }
        }
    }

    /** Shares up to the most that is told: a motor that gives nothing would use without end. */
    private static Series shown(Series share) {
        double[] out = new double[share.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = Math.min(share.at(i), LoadField.MOST_USED);
        }
        return Series.of(out);
    }

    /** Load over what may be carried, for every part with a stated or computed limit. */
    private void used(Map<String, Series> out) {
        OptionalDouble strength = machine.lift().arm().material().strength();
        strength.ifPresent(limit -> arms(a -> a.stress() / limit, out));
        pins(p -> p.use() > 0 ? p.use() : Double.NaN, out);
        each(CurvePoint.Parts::springs, SpringLoad::spring, SpringLoad::use, out);
        OptionalDouble pressure = machine.drive().screw().nut().allowedPressure();
        screws(
                p ->
                        Math.max(
                                p.screw().bucklingUse(),
                                pressure.isPresent()
                                        ? p.screw().nutPressure() / pressure.getAsDouble()
                                        : 0),
                out);
        Series motor = series(p -> 1 / p.margin());
        SourceNames.of(machine).forEach(source -> out.put(source, motor));
        alsoUsed.forEach((part, share) -> out.put(part, series(p -> share)));
        out.replaceAll((part, share) -> shown(share));
    }
}
