// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.gl;

import static org.lwjgl.opengl.GL33C.*;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.joml.Matrix4fc;

/**
 * A linked pair of shaders. Sources are resource files {@code shaders/NAME.vert} and {@code
 * NAME.frag}; a line {@code #include "FILE"} is replaced by that file. A compile or link log
 * becomes the message of the exception.
 */
public final class Program implements AutoCloseable {
    private static final String FOLDER = "/foldwright/viewer/shaders/";

    private final int name;
    private final float[] matrix = new float[16];
    private final Map<String, Integer> places = new HashMap<>();

    /**
     * Compiles and links.
     *
     * @param words defined in both sources, which choose their parts by {@code #ifdef}: software
     *     renderers compute both sides of an {@code if}
     */
    public Program(String vertex, String fragment, String... words) {
        int vs = compile(GL_VERTEX_SHADER, vertex + ".vert", words);
        int fs = compile(GL_FRAGMENT_SHADER, fragment + ".frag", words);
        name = glCreateProgram();
        glAttachShader(name, vs);
        glAttachShader(name, fs);
        glLinkProgram(name);
        glDetachShader(name, vs);
        glDetachShader(name, fs);
        glDeleteShader(vs);
        glDeleteShader(fs);
        if (glGetProgrami(name, GL_LINK_STATUS) == GL_FALSE) {
            String log = glGetProgramInfoLog(name);
            glDeleteProgram(name);
            throw new IllegalStateException(
                    "shaders " + vertex + " + " + fragment + " do not link: " + log);
        }
    }

    private static int compile(int kind, String file, String... words) {
        int shader = glCreateShader(kind);
        StringBuilder text = new StringBuilder(source(file));
        for (String word : words) {
            text.insert(text.indexOf("\n") + 1, "#define " + word + "\n");
        }
        glShaderSource(shader, text);
        glCompileShader(shader);
        if (glGetShaderi(shader, GL_COMPILE_STATUS) == GL_FALSE) {
            String log = glGetShaderInfoLog(shader);
            glDeleteShader(shader);
            throw new IllegalStateException("shader " + file + " does not compile: " + log);
        }
        return shader;
    }

    private static String source(String file) {
        StringBuilder text = new StringBuilder();
        for (String line : read(file).split("\n", -1)) {
            if (line.startsWith("#include ")) {
                text.append(source(line.substring(10, line.lastIndexOf('"'))));
            } else {
                text.append(line).append('\n');
            }
        }
        return text.toString();
    }

    private static String read(String file) {
        try (InputStream in = Program.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("shader " + file + " is not in this build");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public void use() {
        glUseProgram(name);
    }

    private int place(String uniform) {
        Integer known = places.get(uniform);
        if (known == null) {
            known = glGetUniformLocation(name, uniform);
            places.put(uniform, known);
        }
        return known;
    }

    public void set(String uniform, int value) {
        glUniform1i(place(uniform), value);
    }

    public void set(String uniform, float value) {
        glUniform1f(place(uniform), value);
    }

    public void set(String uniform, float x, float y) {
        glUniform2f(place(uniform), x, y);
    }

    public void set(String uniform, float x, float y, float z) {
        glUniform3f(place(uniform), x, y, z);
    }

    public void set(String uniform, float x, float y, float z, float w) {
        glUniform4f(place(uniform), x, y, z, w);
    }

    public void set(String uniform, Matrix4fc value) {
        glUniformMatrix4fv(place(uniform), false, value.get(matrix));
    }

    /** Sets a vec3 from a colour 0xRRGGBB. */
    public void colour(String uniform, int rgb) {
        set(uniform, red(rgb), green(rgb), blue(rgb));
    }

    /** Red of a colour 0xRRGGBB, 0 to 1. */
    public static float red(int rgb) {
        return (rgb >> 16 & 255) / 255f;
    }

    /** Green of a colour, 0 to 1. */
    public static float green(int rgb) {
        return (rgb >> 8 & 255) / 255f;
    }

    /** Blue of a colour, 0 to 1. */
    public static float blue(int rgb) {
        return (rgb & 255) / 255f;
    }

    /** Sets an array of vec3. */
    public void setVec3Array(String uniform, float[] xyz) {
        glUniform3fv(place(uniform), xyz);
    }

    @Override
    public void close() {
        glDeleteProgram(name);
    }
}
