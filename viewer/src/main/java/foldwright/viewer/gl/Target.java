// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.gl;

import static org.lwjgl.opengl.GL33C.*;

import java.nio.ByteBuffer;

/** A picture to draw into: colour, and depth with stencil where asked for. */
public final class Target implements AutoCloseable {
    /** What a target holds. */
    public enum Form {
        /** RGBA colour as a texture, with depth and stencil. */
        COLOUR,
        /** RGBA colour with 4 samples a pixel and depth: resolve it before reading. */
        SAMPLES_4,
        /** One channel, linear filter, no depth. */
        GREY,
        /** Depth as a texture with hardware comparison. */
        SHADOW,
        /** One unsigned integer a pixel, with depth. */
        ID
    }

    public final int width;
    public final int height;
    private final Form form;
    private final int framebuffer;
    private final int colour;
    private final int depth;

    public Target(Form form, int width, int height) {
        this.form = form;
        this.width = width;
        this.height = height;
        framebuffer = glGenFramebuffers();
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        colour = colour();
        depth = depth();
        int state = glCheckFramebufferStatus(GL_FRAMEBUFFER);
        if (state != GL_FRAMEBUFFER_COMPLETE) {
            close();
            throw new IllegalStateException(
                    "target "
                            + form
                            + " of "
                            + width
                            + " x "
                            + height
                            + " px refused, code "
                            + state);
        }
    }

    private int colour() {
        return switch (form) {
            case SAMPLES_4 -> {
                int buffer = glGenRenderbuffers();
                glBindRenderbuffer(GL_RENDERBUFFER, buffer);
                glRenderbufferStorageMultisample(GL_RENDERBUFFER, 4, GL_RGBA8, width, height);
                glFramebufferRenderbuffer(
                        GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, buffer);
                yield buffer;
            }
            case SHADOW -> {
                glDrawBuffer(GL_NONE);
                glReadBuffer(GL_NONE);
                yield 0;
            }
            case COLOUR -> texture(GL_RGBA8, GL_RGBA, GL_UNSIGNED_BYTE, GL_NEAREST);
            case GREY -> texture(GL_R8, GL_RED, GL_UNSIGNED_BYTE, GL_LINEAR);
            case ID -> texture(GL_R32UI, GL_RED_INTEGER, GL_UNSIGNED_INT, GL_NEAREST);
        };
    }

    private int texture(int inside, int format, int type, int filter) {
        int name = glGenTextures();
        glBindTexture(GL_TEXTURE_2D, name);
        glTexImage2D(GL_TEXTURE_2D, 0, inside, width, height, 0, format, type, (ByteBuffer) null);
        clampTo(filter);
        glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, name, 0);
        return name;
    }

    private static void clampTo(int filter) {
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, filter);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, filter);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
    }

    private int depth() {
        if (form == Form.GREY) {
            return 0;
        }
        if (form == Form.SHADOW) {
            int name = glGenTextures();
            glBindTexture(GL_TEXTURE_2D, name);
            glTexImage2D(
                    GL_TEXTURE_2D,
                    0,
                    GL_DEPTH_COMPONENT24,
                    width,
                    height,
                    0,
                    GL_DEPTH_COMPONENT,
                    GL_UNSIGNED_INT,
                    (ByteBuffer) null);
            clampTo(GL_LINEAR);
            glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_MODE, GL_COMPARE_REF_TO_TEXTURE);
            glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_FUNC, GL_LEQUAL);
            glFramebufferTexture2D(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_TEXTURE_2D, name, 0);
            return name;
        }
        int buffer = glGenRenderbuffers();
        glBindRenderbuffer(GL_RENDERBUFFER, buffer);
        boolean stencil = form == Form.COLOUR;
        int inside = stencil ? GL_DEPTH24_STENCIL8 : GL_DEPTH_COMPONENT24;
        if (form == Form.SAMPLES_4) {
            glRenderbufferStorageMultisample(GL_RENDERBUFFER, 4, inside, width, height);
        } else {
            glRenderbufferStorage(GL_RENDERBUFFER, inside, width, height);
        }
        int point = stencil ? GL_DEPTH_STENCIL_ATTACHMENT : GL_DEPTH_ATTACHMENT;
        glFramebufferRenderbuffer(GL_FRAMEBUFFER, point, GL_RENDERBUFFER, buffer);
        return buffer;
    }

    /** Draws go here from now on, over the whole picture. */
    public void bind() {
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        glViewport(0, 0, width, height);
    }

    /** The colour (or, of a shadow map, the depth) as a texture. */
    public void bindTexture(int unit) {
        glActiveTexture(GL_TEXTURE0 + unit);
        glBindTexture(GL_TEXTURE_2D, form == Form.SHADOW ? depth : colour);
    }

    /** Copies the colour, averaging samples; both pictures have the same size. */
    public void copyTo(Target other) {
        blit(other.framebuffer);
    }

    /** Copies a box of the colour; x from the left, y from below. */
    public void copyTo(Target other, int x, int y, int w, int h) {
        glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer);
        glBindFramebuffer(GL_DRAW_FRAMEBUFFER, other.framebuffer);
        glBlitFramebuffer(x, y, x + w, y + h, x, y, x + w, y + h, GL_COLOR_BUFFER_BIT, GL_NEAREST);
        glBindFramebuffer(GL_FRAMEBUFFER, other.framebuffer);
    }

    /** Copies the colour to the window. */
    public void copyToWindow() {
        blit(0);
    }

    private void blit(int to) {
        glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer);
        glBindFramebuffer(GL_DRAW_FRAMEBUFFER, to);
        glBlitFramebuffer(
                0, 0, width, height, 0, 0, width, height, GL_COLOR_BUFFER_BIT, GL_NEAREST);
        glBindFramebuffer(GL_FRAMEBUFFER, to);
    }

    /** Reads the colour, bottom row first, 4 bytes a pixel. */
    public void read(ByteBuffer out) {
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        glPixelStorei(GL_PACK_ALIGNMENT, 4);
        glReadPixels(0, 0, width, height, GL_RGBA, GL_UNSIGNED_BYTE, out);
    }

    /** The unsigned integer at a pixel of an {@link Form#ID} target; y counts from below. */
    public int readId(int x, int y) {
        int[] out = new int[1];
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        glReadPixels(x, y, 1, 1, GL_RED_INTEGER, GL_UNSIGNED_INT, out);
        return out[0];
    }

    @Override
    public void close() {
        glDeleteFramebuffers(framebuffer);
        if (colour != 0) {
            if (form == Form.SAMPLES_4) {
                glDeleteRenderbuffers(colour);
            } else {
                glDeleteTextures(colour);
            }
        }
        if (depth != 0) {
            if (form == Form.SHADOW) {
                glDeleteTextures(depth);
            } else {
                glDeleteRenderbuffers(depth);
            }
        }
    }
}
