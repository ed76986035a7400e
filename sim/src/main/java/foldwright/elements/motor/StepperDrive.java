// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.motor;

import foldwright.elements.Domain;
import java.util.Objects;

/**
 * What feeds the motor: a full bridge a phase with a current chopper.
 *
 * @param supplyVoltage of the bridge [V]
 * @param currentAmplitude largest current amplitude of a phase [A]; sqrt2 times the rated current
 *     for the rated holding torque
 * @param waveform which voltage amplitude the bridge reaches
 */
public record StepperDrive(double supplyVoltage, double currentAmplitude, Waveform waveform) {
    /** Amplitude of the fundamental of the phase voltage over the supply voltage. */
    public enum Waveform {
        /** Sine up to the supply voltage: amplitude V. Microstepping; the cautious choice. */
        SINE(1),
        /** Square wave of full steps: fundamental 4/pi V. */
        SQUARE(4 / Math.PI);

        private final double factor;

        Waveform(double factor) {
            this.factor = factor;
        }
    }

    public StepperDrive {
        Domain.positive("supply voltage", supplyVoltage, "V");
        Domain.positive("current amplitude", currentAmplitude, "A");
        Objects.requireNonNull(waveform, "waveform");
    }

    /** A microstepping drive at the rated current of the motor. */
    public static StepperDrive rated(HybridStepper motor, double supplyVoltage) {
        return new StepperDrive(supplyVoltage, motor.ratedAmplitude(), Waveform.SINE);
    }

    /** Largest voltage amplitude at a phase [V]. */
    public double voltageAmplitude() {
        return supplyVoltage * waveform.factor;
    }
}
