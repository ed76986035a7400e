// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.render;

import foldwright.viewer.gl.Program;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * One pass's shaders in a variant for each sort of mesh. A software renderer computes both sides of
 * every {@code if}, so plain parts must not carry the sines of coils and threads.
 */
final class Family implements AutoCloseable {
    /** Sorts of meshes. */
    enum Sort {
        PLAIN,
        /** Threads, belts, rims: lines drawn by the fragment stage. */
        PATTERN,
        /** Coil springs: bent by the vertex stage. */
        COIL
    }

    /** Which sorts have shaders of their own. */
    enum Variants {
        ALL,
        COIL_ONLY
    }

    private final Map<Sort, Program> programs = new EnumMap<>(Sort.class);

    Family(String vertex, String fragment, Variants variants) {
        programs.put(Sort.PLAIN, new Program(vertex, fragment));
        programs.put(Sort.COIL, new Program(vertex, fragment, Sort.COIL.name()));
        if (variants == Variants.ALL) {
            programs.put(Sort.PATTERN, new Program(vertex, fragment, Sort.PATTERN.name()));
        }
    }

    /** Draws the meshes, each with the variant it needs. */
    void draw(
            Map<Sort, List<GpuMesh>> meshes,
            Consumer<Program> uniforms,
            BiConsumer<GpuMesh, Program> draw) {
        for (Map.Entry<Sort, Program> e : programs.entrySet()) {
            Program program = e.getValue();
            program.use();
            uniforms.accept(program);
            all(meshes.get(e.getKey()), program, draw);
            if (e.getKey() == Sort.PLAIN && !programs.containsKey(Sort.PATTERN)) {
                all(meshes.get(Sort.PATTERN), program, draw);
            }
        }
    }

    private static void all(
            List<GpuMesh> meshes, Program program, BiConsumer<GpuMesh, Program> draw) {
        for (int i = 0; i < meshes.size(); i++) {
            draw.accept(meshes.get(i), program);
        }
    }

    @Override
    public void close() {
        programs.values().forEach(Program::close);
    }
}
