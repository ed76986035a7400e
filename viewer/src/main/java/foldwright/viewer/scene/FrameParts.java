// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.lift.LiftNames;
import foldwright.machine.Machine;
import foldwright.viewer.mesh.Lines;
import foldwright.viewer.mesh.Solid;
import foldwright.viewer.mesh.Zone;

/**
 * Base with bed and guides, and the deck with its hangers: sizes from the file, thicknesses as
 * usual for such plates.
 */
final class FrameParts {
    private static final double PLATE = 0.005;
    private static final double CORNER = 0.022;

    private final Machine machine;
    private final LiftShape shape;
    private final PartList out;
    private final double pin;

    FrameParts(Machine machine, LiftShape shape, PartList out) {
        this.machine = machine;
        this.shape = shape;
        this.out = out;
        pin = machine.base().pinHeight();
    }

    /** Ends of the base along x, base frame [m]. */
    double[] baseEnds() {
        double from = -machine.base().pinInset();
        return new double[] {from, from + machine.base().length()};
    }

    /** Ends of the deck along x, deck frame [m]. */
    double[] deckEnds() {
        double inset = machine.deck().pinInset();
        double length = machine.deck().length();
        return shape.deckFixedOverFixed()
                ? new double[] {-inset, length - inset}
                : new double[] {inset - length, inset};
    }

    /**
     * Top face of the deck plate above the deck pins [m]: where the gantry stands, if it stands
     * there.
     */
    double deckTop() {
        return machine.gantryOnDeck()
                .map(g -> g.stand().origin().z())
                .filter(z -> z > 0.006)
                .orElse(0.012);
    }

    void add() {
        outline();
        grid();
        base();
        bed();
        guides(Bodies.BASE, Bodies.FOOT, -pin + PLATE, LiftNames::footSlider);
        brackets(Bodies.BASE, -pin + PLATE, 0);
        deck();
        guides(Bodies.DECK, Bodies.DECK_SLIDER, deckTop() - PLATE, LiftNames::deckSlider);
        brackets(Bodies.DECK, deckTop() - PLATE, 0);
    }

    /** The outline of the box it must fit into, on the table round the base. */
    private void outline() {
        machine.box()
                .ifPresent(
                        box -> {
                            double[] ends = baseEnds();
                            double cx = (ends[0] + ends[1]) / 2;
                            double l = box.length() / 2;
                            double w = box.width() / 2;
                            double[][] line = {
                                {cx - l, -w}, {cx + l, -w}, {cx + l, w}, {cx - l, w}
                            };
                            out.add(
                                    box.name(),
                                    PartKind.OUTLINE,
                                    Lines.dashes(line, -pin, 0.0078, 0.0022, 0.0011, 0.0022),
                                    out.bodies.of(Bodies.BASE));
                        });
    }

    /** Reach of the grid on the table, x, y from and to, whole fives of centimetres [m]. */
    static double[] gridReach(Machine machine) {
        double[] x = {
            -machine.base().pinInset(), machine.base().length() - machine.base().pinInset()
        };
        double middle = (x[0] + x[1]) / 2;
        double l = Math.max(x[1] - x[0], machine.box().map(b -> b.length()).orElse(0.0)) / 2;
        double w = Math.max(machine.base().width(), machine.box().map(b -> b.width()).orElse(0.0));
        return new double[] {
            fives(middle - l, -1), fives(-w / 2, -1), fives(middle + l, 1), fives(w / 2, 1)
        };
    }

    private static double fives(double value, int sense) {
        double lines = value / 0.05;
        return 0.05 * (sense < 0 ? Math.floor(lines + 1e-6) : Math.ceil(lines - 1e-6));
    }

    private void grid() {
        double[] r = gridReach(machine);
        int base = out.bodies.of(Bodies.BASE);
        out.add("grid of 10 mm", PartKind.GRID, Lines.grid(r, -pin, 0.010, 5), base);
        out.add("grid of 50 mm", PartKind.GRID, Lines.grid(r, -pin, 0.050, 0), base);
    }

    private void base() {
        double[] x = baseEnds();
        double w = machine.base().width() / 2;
        double rim = Math.min(0.012, 0.5 * pin);
        double wall = 0.005;
        Solid solid =
                new Solid()
                        .zone(Zone.FRAME)
                        .at(0, 0, -pin)
                        .frame(
                                new double[] {x[0], -w, x[1], w},
                                new double[] {x[0] + wall, -w + wall, x[1] - wall, w - wall},
                                CORNER,
                                CORNER - wall,
                                0,
                                rim)
                        .plate(
                                x[0] + wall,
                                -w + wall,
                                x[1] - wall,
                                w - wall,
                                CORNER - wall,
                                0,
                                PLATE);
        out.add("base", PartKind.BASE, solid.mesh(), out.bodies.of(Bodies.BASE));
    }

    private void bed() {
        double height = machine.base().bedHeight().orElse(0);
        if (height <= PLATE + 0.001) {
            return;
        }
        double[] x = baseEnds();
        double side = bedSide();
        double from = x[0] + 0.10 * (x[1] - x[0]);
        double to = x[1] - 0.24 * (x[1] - x[0]);
        double top = height - pin;
        Solid solid =
                new Solid()
                        .zone(Zone.FRAME)
                        .at(0, 0, 0)
                        .plate(from, -side, to, side, 0.008, top - 0.004, top);
        solid.zone(Zone.STEEL);
        for (int i = 0; i < 4; i++) {
            double px = i % 2 == 0 ? from + 0.014 : to - 0.014;
            double py = i / 2 == 0 ? -side + 0.014 : side - 0.014;
            solid.at(px, py, 0).bar(0.004, PLATE - pin, top - 0.004, 12);
        }
        out.add("bed", PartKind.BED, solid.mesh(), out.bodies.of(Bodies.BASE));
    }

    /** Half the width of the bed: between the arms, and clear of upright springs and screws [m]. */
    private double bedSide() {
        double side = shape.inside() - 0.016;
        for (var spring : machine.springs()) {
            if (spring.place() instanceof foldwright.machine.spring.Upright upright) {
                for (var spot : upright.at()) {
                    side = Math.min(side, Math.abs(spot.y()) - 0.022);
                }
            }
        }
        return Math.max(0.02, side);
    }

    private interface SideName {
        String of(LiftNames.Side side);
    }

    /** A flat rail on each side over the way of the slider ends, and the sliding blocks on it. */
    private void guides(String body, String slider, double mount, SideName name) {
        LiftShape.Joints j = shape.joints();
        boolean deck = body.equals(Bodies.DECK);
        double[] way = new double[2];
        double[] heights = {shape.flat(), shape.top()};
        for (int i = 0; i < 2; i++) {
            shape.solve(heights[i], j);
            int n = deck ? shape.stages() : 0;
            double pinned = deck && !shape.deckFixedOverFixed() ? j.slidingX[n] : j.fixedX[n];
            double moving = deck && !shape.deckFixedOverFixed() ? j.fixedX[n] : j.slidingX[n];
            way[i] = moving - (deck ? pinned : 0);
        }
        double grip = Math.max(0.010, 0.6 * shape.depth());
        double from = Math.min(way[0], way[1]) - grip - 0.006;
        double to = Math.max(way[0], way[1]) + grip + 0.006;
        double thick = 0.007;
        double reach = shape.depth() * 0.5;
        double up = deck ? 1 : -1;
        for (int side = -1; side <= 1; side += 2) {
            double y0 = shape.outside() + 0.0015;
            double ya = side > 0 ? y0 : -y0 - thick;
            double near = up * reach * 0.9;
            Solid rail =
                    new Solid()
                            .zone(Zone.RAIL)
                            .box(
                                    from,
                                    ya,
                                    Math.min(mount, near),
                                    to,
                                    ya + thick,
                                    Math.max(mount, near));
            out.add(body + " guide", PartKind.RAIL, rail.mesh(), out.bodies.of(body));
            Solid block =
                    new Solid()
                            .zone(Zone.BLOCK)
                            .box(
                                    -grip,
                                    ya - 0.0005,
                                    -reach * 0.85,
                                    grip,
                                    ya + thick + 0.0005,
                                    reach * 0.85)
                            .zone(Zone.STEEL)
                            .at(0, 0, 0)
                            .alongY()
                            .bar(
                                    0.0032,
                                    side > 0 ? y0 - 0.004 : -y0 - thick - 0.002,
                                    side > 0 ? y0 + thick + 0.002 : -y0 + 0.004,
                                    14);
            out.add(
                    name.of(ArmParts.side(side)),
                    PartKind.SLIDER,
                    block.mesh(),
                    out.bodies.of(slider));
        }
    }

    /** Upright plates that hold the fixed pins. */
    private void brackets(String body, double mount, double at) {
        double half = 0.62 * shape.depth();
        double thick = 0.005;
        double far = mount < 0 ? half * 0.9 : -half * 0.9;
        for (int side = -1; side <= 1; side += 2) {
            double y0 = shape.outside() + 0.0015;
            double ya = side > 0 ? y0 : -y0 - thick;
            Solid solid =
                    new Solid()
                            .zone(Zone.FRAME)
                            .box(
                                    at - half,
                                    ya,
                                    Math.min(mount, far),
                                    at + half,
                                    ya + thick,
                                    Math.max(mount, far))
                            .zone(Zone.BRONZE)
                            .at(at, 0, 0)
                            .alongY()
                            .bar(0.0035, ya - 0.001, ya + thick + 0.001, 14);
            boolean deck = body.equals(Bodies.DECK);
            out.add(
                    body + " pin bracket",
                    deck ? PartKind.DECK : PartKind.BASE,
                    solid.mesh(),
                    out.bodies.of(body));
        }
    }

    private void deck() {
        double[] x = deckEnds();
        double w = machine.deck().width() / 2;
        double top = deckTop();
        double span = Math.min(machine.deck().width() * 0.14, 0.05);
        double ends = Math.min(machine.deck().length() * 0.13, 0.06);
        Solid solid =
                new Solid()
                        .zone(Zone.FRAME)
                        .frame(
                                new double[] {x[0], -w, x[1], w},
                                new double[] {x[0] + ends, -w + span, x[1] - ends, w - span},
                                CORNER,
                                0.012,
                                top - PLATE,
                                top);
        out.add(LiftNames.deck(), PartKind.DECK, solid.mesh(), out.bodies.of(Bodies.DECK));
    }
}
