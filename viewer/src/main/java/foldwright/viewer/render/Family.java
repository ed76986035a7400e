// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.render;

import foldwright.viewer.gl.Program;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * One pass's shaders in a variant for each sort of mesh. A software renderer computes both sides of
 * every {@code if}, so plain parts must not carry the sines of coils and threads.
 */
final class Family implements AutoCloseable {
    /** Sorts of meshes, by what their shaders must know. */
    enum Sort {
        PLAIN,
        /** Parts that can show a load. */
        INK("INK"),
        /** Threads, belts, rims: lines drawn by the fragment stage. */
        PATTERN("INK", "PATTERN"),
        /** Coil springs: bent by the vertex stage. */
        COIL("INK", "COIL");

        private final List<String> words;

        Sort(String... words) {
            this.words = List.of(words);
        }
    }

    private static final Sort[] SORTS = Sort.values();

    /** Which sorts have shaders of their own. */
    enum Variants {
        ALL,
        COIL_ONLY
    }

    private final Program[] programs = new Program[SORTS.length];

    /**
     * Compiles.
     *
     * @param words defined in all variants
     */
    Family(String vertex, String fragment, Variants variants, String... words) {
        for (Sort sort : SORTS) {
            boolean own = variants == Variants.ALL || sort == Sort.PLAIN || sort == Sort.COIL;
            programs[sort.ordinal()] =
                    own
                            ? new Program(
                                    vertex,
                                    fragment,
                                    Stream.concat(sort.words.stream(), Stream.of(words))
                                            .toArray(String[]::new))
                            : programs[0];
        }
    }

    /**
     * Draws the meshes, each with the variant it needs. Neither function may capture anything that
     * changes from picture to picture: they are made once.
     *
     * @param meshes by the place of their sort
     */
    void draw(
            List<List<GpuMesh>> meshes,
            Consumer<Program> uniforms,
            BiConsumer<GpuMesh, Program> draw) {
        Program last = null;
        for (int s = 0; s < programs.length; s++) {
            Program program = programs[s];
            List<GpuMesh> those = meshes.get(s);
            if (those.isEmpty()) {
                continue;
            }
            if (program != last) {
                program.use();
                uniforms.accept(program);
                last = program;
            }
            for (int i = 0; i < those.size(); i++) {
                draw.accept(those.get(i), program);
            }
        }
    }

    @Override
    public void close() {
        for (int s = 0; s < programs.length; s++) {
            if (s == 0 || programs[s] != programs[0]) {
                programs[s].close();
            }
        }
    }
}
