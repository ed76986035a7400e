// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.study.Question;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the cards say of a machine that leaves questions open. */
class LiftEngineTest {
    private static Machine seed(String name) throws Exception {
        Path here = Path.of("seeds", name + ".json");
        return MachineFile.read(Files.exists(here) ? here : Path.of("..").resolve(here)).machine();
    }

    @Test
    void whatIsNotAnsweredSaysWhatItNeeds() throws Exception {
        Machine bare = seed("hand-crank");
        LiftEngine engine = new LiftEngine();
        Results whole = engine.whole(bare, engine.curve(bare), words -> {});
        assertThat(whole.of(Question.SKEW)).isEmpty();
        assertThat(whole.waiting(Question.SKEW)).isEqualTo("needs a gantry");
        assertThat(whole.waiting(Question.LEAN)).contains("measured.lateralStiffness");
        assertThat(whole.of(Question.FIT)).isNotEmpty();
        assertThat(Results.NONE.waiting(Question.SKEW)).isEqualTo(Results.WORKING);
    }

    @Test
    void aCrankIsSaidToTravelBesideTheBox() throws Exception {
        Machine bare = seed("hand-crank");
        LiftEngine engine = new LiftEngine();
        Results whole = engine.whole(bare, engine.curve(bare), words -> {});
        assertThat(whole.checks())
                .filteredOn(c -> c.id().equals("fit.length"))
                .singleElement()
                .satisfies(c -> assertThat(c.text().finding()).contains("take it off"));
    }
}
