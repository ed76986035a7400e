// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.machine.Machine;
import foldwright.study.Question;
import foldwright.viewer.session.Calculator;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.Engine;
import foldwright.viewer.session.Results;
import foldwright.viewer.sheet.SheetModel;
import java.util.List;
import java.util.Optional;

/**
 * What is known of the machine on the table: results and the hills over its numbers, from what is
 * computed on another thread. What belongs to a machine that was left is passed over.
 */
final class Answers implements AutoCloseable {
    /** What a look at the other thread brought. */
    enum News {
        NONE,
        MORE,
        /** Enough to tell where the machine is worst. */
        TELLING
    }

    private final Calculator calculator;
    private Results results = Results.NONE;
    private List<SheetModel.Hill> hills = List.of();
    private long opened;

    /**
     * Starts the other thread.
     *
     * @param wake called there when something is known
     */
    Answers(Engine engine, Runnable wake) {
        calculator = new Calculator(engine, wake);
    }

    Calculator calculator() {
        return calculator;
    }

    /** Forgets everything. */
    void clear() {
        results = Results.NONE;
        hills = List.of();
    }

    /** Asks for a machine that was just put on the table; what is known stays until then. */
    void open(Machine machine, List<Dial> dials) {
        opened = calculator.ask(machine, dials, Calculator.Depth.WHOLE);
    }

    /** Asks again, after numbers have changed. */
    void ask(Machine machine, List<Dial> dials, Calculator.Depth depth) {
        calculator.ask(machine, dials, depth);
    }

    /** Takes what is finished. */
    News take() {
        Calculator.Done done = calculator.take();
        if (done == null || done.request() < opened) {
            return News.NONE;
        }
        boolean telling = done.results().whole() || results == Results.NONE;
        results = done.results().after(results);
        if (!done.hills().isEmpty()) {
            hills = done.hills();
        }
        return telling ? News.TELLING : News.MORE;
    }

    Results results() {
        return results;
    }

    /** As many as are known, in the order of the dials. */
    List<SheetModel.Hill> hills() {
        return hills;
    }

    /** What is said where a question has no answer yet; empty where it has one. */
    Optional<String> waiting(Question question) {
        return results.whole() || !results.of(question).isEmpty()
                ? Optional.empty()
                : Optional.of(results.waiting());
    }

    @Override
    public void close() {
        calculator.close();
    }
}
