// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.drive.ScrewThread;
import foldwright.machine.keys.KeyOf;
import foldwright.machine.keys.Keys;
import foldwright.machine.linkage.ArmAngle;
import foldwright.machine.linkage.Opening;
import foldwright.machine.linkage.PinHeight;
import foldwright.machine.part.Material;
import foldwright.machine.part.Point;
import foldwright.machine.part.Spot;
import foldwright.machine.part.Teeth;
import foldwright.quantity.Dimension;
import foldwright.quantity.NotAQuantity;
import foldwright.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads records that a file writes as one text or as a list of lengths. */
final class TextForms {
    private static final Pattern TEETH = Pattern.compile(" *([0-9]{1,4}) *: *([0-9]{1,4}) *");

    private final Problems problems;
    private final Scalars scalars;

    TextForms(Problems problems, Scalars scalars) {
        this.problems = problems;
        this.scalars = scalars;
    }

    /** Whether a type is always written as one text or as a list of lengths. */
    static boolean isShort(Class<?> type) {
        return type == Point.class
                || type == Spot.class
                || type == Teeth.class
                || type == Opening.class;
    }

    /** Whether a type may be written by a name of its table instead of by numbers. */
    static boolean isNamed(Class<?> type) {
        return type == Material.class || type == ScrewThread.class;
    }

    Optional<Object> read(Node node, String path, Class<?> type) {
        if (type == Point.class) {
            return coordinates(node, path, Point.class).map(c -> new Point(c[0], c[1], c[2]));
        } else if (type == Spot.class) {
            return coordinates(node, path, Spot.class).map(c -> new Spot(c[0], c[1]));
        } else if (type == Teeth.class) {
            return teeth(node, path);
        }
        return opening(node, path);
    }

    /** A record named by its table, given as a text. */
    Optional<Object> named(Node.Text node, String path, Class<?> type) {
        boolean material = type == Material.class;
        Optional<Object> found =
                material
                        ? NameTables.material(node.text()).map(Object.class::cast)
                        : NameTables.thread(node.text()).map(Object.class::cast);
        if (found.isEmpty()) {
            NameTables.Names names = material ? NameTables.materials() : NameTables.threads();
            problems.addUnknownName(node.start(), path, node.text(), names);
        }
        return found;
    }

    private Optional<double[]> coordinates(Node node, String path, Class<?> type) {
        List<KeyOf> keys = Keys.of(type);
        String allowed = keys.size() == 2 ? "a list of 2 lengths" : "a list of 3 lengths";
        if (!(node instanceof Node.Items list)) {
            problems.add(ProblemCode.WRONG_TYPE, node.start(), path, Scalars.found(node), allowed);
            return Optional.empty();
        }
        if (list.items().size() != keys.size()) {
            String found = "found " + list.items().size() + " entries";
            problems.add(ProblemCode.LIST_SIZE, node.start(), path, found, allowed);
            return Optional.empty();
        }
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < keys.size(); i++) {
            String here = path + "[" + i + "]";
            scalars.number(
                            list.items().get(i),
                            here,
                            Dimension.LENGTH,
                            keys.get(i).range(),
                            "12 mm")
                    .ifPresent(values::add);
        }
        return values.size() == keys.size()
                ? Optional.of(values.stream().mapToDouble(Double::doubleValue).toArray())
                : Optional.empty();
    }

    private Optional<Object> teeth(Node node, String path) {
        List<KeyOf> keys = Keys.of(Teeth.class);
        Matcher matcher = node instanceof Node.Text text ? TEETH.matcher(text.text()) : null;
        if (matcher != null && matcher.matches()) {
            int motor = Integer.parseInt(matcher.group(1));
            int screw = Integer.parseInt(matcher.group(2));
            if (keys.get(0).range().holds(motor) && keys.get(1).range().holds(screw)) {
                return Optional.of(new Teeth(motor, screw));
            }
        }
        ProblemCode code =
                matcher == null
                        ? ProblemCode.WRONG_TYPE
                        : matcher.matches() ? ProblemCode.OUT_OF_RANGE : ProblemCode.NO_NUMBER;
        String range = keys.get(0).range().words();
        String allowed = "teeth of motor and screw pulley, " + range + ", such as \"16:48\"";
        problems.add(code, node.start(), path, Scalars.found(node), allowed);
        return Optional.empty();
    }

    private Optional<Object> opening(Node node, String path) {
        KeyOf angle = Keys.of(ArmAngle.class).get(0);
        KeyOf height = Keys.of(PinHeight.class).get(0);
        if (node instanceof Node.Text text && isOf(text.text(), Dimension.LENGTH)) {
            return scalars.number(node, path, Dimension.LENGTH, height.range(), "34 mm")
                    .map(PinHeight::new);
        }
        if (node instanceof Node.Text text && isOf(text.text(), Dimension.ANGLE)) {
            return scalars.number(node, path, Dimension.ANGLE, angle.range(), "5.13 deg")
                    .map(ArmAngle::new);
        }
        String allowed =
                "an arm angle such as \"5.13 deg\", or a height of the deck pins such as \"34 mm\"";
        ProblemCode code = ProblemCode.WRONG_TYPE;
        String found = Scalars.found(node);
        if (node instanceof Node.Text text) {
            try {
                Quantity.read(text.text(), Dimension.LENGTH);
            } catch (NotAQuantity e) {
                code = Scalars.code(e.reason());
                found += ", which " + Scalars.why(e);
            }
        }
        problems.add(code, node.start(), path, found, allowed);
        return Optional.empty();
    }

    private static boolean isOf(String text, Dimension dimension) {
        try {
            return Quantity.read(text).unit().measures(dimension);
        } catch (NotAQuantity e) {
            return false;
        }
    }
}
