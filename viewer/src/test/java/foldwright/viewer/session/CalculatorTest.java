// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.lift.ForceCurve;
import foldwright.lift.PartShares;
import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.viewer.Headless;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Which machine is worked on when several are asked for. */
class CalculatorTest {
    /** Notes the machines it is asked about and knows nothing of them. */
    private static final class Noting implements Engine {
        private final LinkedBlockingQueue<Machine> asked = new LinkedBlockingQueue<>();
        private final LinkedBlockingQueue<Machine> askedAll = new LinkedBlockingQueue<>();

        @Override
        public Results quick(Machine machine) {
            asked.add(machine);
            return Results.NONE;
        }

        @Override
        public Results compared(Machine machine) {
            return Results.NONE;
        }

        @Override
        public ForceCurve curve(Machine machine) {
            return null;
        }

        @Override
        public Results fold(Machine machine, ForceCurve curve) {
            asked.add(machine);
            return Results.NONE;
        }

        @Override
        public Results whole(Machine machine, ForceCurve curve, Consumer<String> progress) {
            askedAll.add(machine);
            return Results.NONE;
        }

        @Override
        public Optional<PartShares> shares(Machine machine, double height) {
            return Optional.empty();
        }

        @Override
        public ToDoubleFunction<Machine> margins(Machine machine, ForceCurve curve) {
            return m -> 1;
        }
    }

    /** Before the first picture what the curve tells; the rest after it, of the latest only. */
    @Test
    void noMoreThanTheCurveIsComputedBeforeTheFirstPicture() throws Exception {
        Noting engine = new Noting();
        Semaphore answers = new Semaphore(0);
        Machine bench = MachineFile.read(Headless.scene("van-bench")).machine();
        Machine binds = MachineFile.read(Headless.scene("van-bench-binds")).machine();
        try (Calculator calculator = new Calculator(engine, answers::release)) {
            calculator.hold();
            calculator.ask(bench, List.of(), Calculator.Depth.WHOLE);
            assertThat(answers.tryAcquire(20, TimeUnit.SECONDS)).isTrue();
            assertThat(engine.asked).containsExactly(bench);
            assertThat(engine.askedAll).isEmpty();
            long last = calculator.ask(binds, List.of(), Calculator.Depth.WHOLE);
            calculator.goOn();
            assertThat(answers.tryAcquire(2, 20, TimeUnit.SECONDS)).isTrue();
            assertThat(calculator.take().request()).isEqualTo(last);
            assertThat(engine.asked).containsExactly(bench, binds);
            assertThat(engine.askedAll).containsExactly(binds);
        }
    }

    /** After the hold every request is answered, one after the other. */
    @Test
    void goesOnAfterTheHold() throws Exception {
        Noting engine = new Noting();
        Semaphore answers = new Semaphore(0);
        MachineFile bench = MachineFile.read(Headless.scene("van-bench"));
        try (Calculator calculator = new Calculator(engine, answers::release)) {
            calculator.hold();
            calculator.goOn();
            for (int i = 0; i < 3; i++) {
                calculator.ask(bench.machine(), List.of(), Calculator.Depth.QUICK);
                assertThat(answers.tryAcquire(20, TimeUnit.SECONDS)).isTrue();
            }
            assertThat(engine.asked).hasSize(3);
        }
    }
}
