// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.PrescribedMotion;
import foldwright.mechanics.solve.Kinetostatics;
import foldwright.mechanics.solve.MovingBalance;

/**
 * A lift driven through its travel: loads while moving at any height, without time stepping.
 *
 * <p>Belongs to one thread. Heights asked for one after the other should lie close together: the
 * loads of the last one are the first guess.
 */
final class MovingLift {
    private final LiftModel model;
    private final Kinetostatics solver;
    private final State guess;
    private final Course[] courses;

    MovingLift(LiftModel model) {
        this.model = model;
        solver = new Kinetostatics(model.mechanism());
        guess = model.mechanism().start();
        courses = new Course[model.screws().size()];
        for (int i = 0; i < courses.length; i++) {
            courses[i] = new Course(model.path(i));
            ((Driver) model.screws().get(i).row()).follow(courses[i]);
        }
    }

    LiftModel model() {
        return model;
    }

    /**
     * Loads while passing a height.
     *
     * @param shape ideal shape at that height
     * @param deckSpeed upward, negative while sinking [m/s]
     */
    MovingBalance passing(Scissor.Shape shape, double deckSpeed) {
        aim(shape, deckSpeed);
        return solver.solve(guess, Kinetostatics.Inertia.IGNORED);
    }

    /** The same as the next of a course of close heights: faster. */
    MovingBalance following(Scissor.Shape shape, double deckSpeed) {
        aim(shape, deckSpeed);
        return solver.follow(guess);
    }

    private void aim(Scissor.Shape shape, double deckSpeed) {
        for (Course c : courses) {
            c.deckSpeed = deckSpeed;
        }
        model.pose(guess, shape);
        guess.time = shape.height();
    }

    /** A screw length over height [m in place of s], passed at a steady deck speed. */
    private static final class Course implements PrescribedMotion {
        private final NutPath path;
        private double deckSpeed;

        Course(NutPath path) {
            this.path = path;
        }

        @Override
        public double value(double height) {
            return path.value(height);
        }

        @Override
        public double rate(double height) {
            return path.rate(height) * deckSpeed;
        }

        @Override
        public double acceleration(double height) {
            return path.acceleration(height) * deckSpeed * deckSpeed;
        }
    }
}
