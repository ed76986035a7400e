// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.gl;

import static org.lwjgl.glfw.GLFW.*;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lwjgl.PointerBuffer;
import org.lwjgl.glfw.GLFW;
import org.lwjgl.opengl.GL;
import org.lwjgl.opengl.GL11C;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;
import org.lwjgl.system.Platform;

/**
 * An OpenGL 3.3 core context, current on the thread that made it: either a window, or headless
 * (GLFW's null platform with EGL on Linux, a window that is never shown elsewhere). Everything is
 * drawn into a {@link Target}, so both kinds give the same pixels.
 */
public final class GlSurface implements AutoCloseable {
    private static final String MESA = "Debian and Ubuntu: apt-get install libegl1 libgl1-mesa-dri";

    private final long handle;
    private final Kind kind;

    /** Where the pictures go. */
    public enum Kind {
        WINDOW,
        HEADLESS
    }

    private GlSurface(long handle, Kind kind) {
        this.handle = handle;
        this.kind = kind;
    }

    /**
     * A context without any display.
     *
     * @throws NoGraphicsException when no OpenGL 3.3 can be had
     */
    public static GlSurface headless() {
        return headless(16, 16);
    }

    /**
     * A context without any display that yet has a window of this size [px], which nobody sees.
     *
     * @throws NoGraphicsException when no OpenGL 3.3 can be had
     */
    public static GlSurface headless(int width, int height) {
        // Asking LWJGL for a driver thread of its own would only cost start time here.
        boolean linux = Platform.get() == Platform.LINUX;
        if (linux) {
            glfwInitHint(GLFW_PLATFORM, GLFW_PLATFORM_NULL);
        }
        init(Kind.HEADLESS);
        hints();
        glfwWindowHint(GLFW_VISIBLE, GLFW_FALSE);
        if (linux) {
            glfwWindowHint(GLFW_CONTEXT_CREATION_API, GLFW_EGL_CONTEXT_API);
        }
        return create(width, height, "Foldwright", Kind.HEADLESS);
    }

    /**
     * A window, not yet shown.
     *
     * @param width of the client area [screen units]
     * @param height of the client area [screen units]
     * @throws NoGraphicsException when there is no display or no OpenGL 3.3
     */
    public static GlSurface window(String title, int width, int height) {
        // Without this folder Wayland's library can only complain on its own.
        boolean onlyX11 =
                Platform.get() == Platform.LINUX && System.getenv("XDG_RUNTIME_DIR") == null;
        glfwInitHint(GLFW_PLATFORM, onlyX11 ? GLFW_PLATFORM_X11 : GLFW_ANY_PLATFORM);
        init(Kind.WINDOW);
        hints();
        glfwWindowHint(GLFW_VISIBLE, GLFW_FALSE);
        glfwWindowHint(GLFW_SCALE_FRAMEBUFFER, GLFW_TRUE);
        return create(width, height, title, Kind.WINDOW);
    }

    private static void init(Kind kind) {
        Configuration.DEBUG_STREAM.set(System.err);
        glfwSetErrorCallback(null);
        if (!glfwInit()) {
            throw noDisplay(kind, lastError());
        }
    }

    private static void hints() {
        glfwDefaultWindowHints();
        glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
        glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 3);
        glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
        glfwWindowHint(GLFW_OPENGL_FORWARD_COMPAT, GLFW_TRUE);
        glfwWindowHint(GLFW_STENCIL_BITS, 0);
        glfwWindowHint(GLFW_DEPTH_BITS, 0);
    }

    private static GlSurface create(int width, int height, String title, Kind kind) {
        long window = glfwCreateWindow(width, height, title, MemoryUtil.NULL, MemoryUtil.NULL);
        if (window == MemoryUtil.NULL) {
            String why = lastError();
            glfwTerminate();
            throw new NoGraphicsException(
                    "No OpenGL 3.3 on this computer ("
                            + why
                            + "). Install a graphics driver, or Mesa's software renderer ("
                            + MESA
                            + ").");
        }
        glfwMakeContextCurrent(window);
        GL.createCapabilities(true);
        return new GlSurface(window, kind);
    }

    private static NoGraphicsException noDisplay(Kind kind, String why) {
        if (kind == Kind.WINDOW) {
            return new NoGraphicsException(
                    "No display to open a window on ("
                            + why
                            + "). Pictures need none: foldwright watch MACHINE --still picture.png, --film"
                            + " film.mp4 or --glb machine.glb; the whole job as a page: foldwright assess"
                            + " MACHINE -o DIR.");
        }
        return new NoGraphicsException(
                "No way to draw without a display ("
                        + why
                        + "). Install EGL with Mesa: "
                        + MESA
                        + ".");
    }

    private static String lastError() {
        try (MemoryStack stack = MemoryStack.stackPush()) {
            PointerBuffer text = stack.mallocPointer(1);
            int code = glfwGetError(text);
            if (code == GLFW_NO_ERROR) {
                return "no reason given";
            }
            return MemoryUtil.memUTF8(text.get(0)) + String.format(Locale.ROOT, ", code %#x", code);
        }
    }

    public Kind kind() {
        return kind;
    }

    /** The GLFW window. */
    public long handle() {
        return handle;
    }

    /** What draws, for bug reports and for golden pictures: renderer and version. */
    public String renderer() {
        return GL11C.glGetString(GL11C.GL_RENDERER) + " / " + GL11C.glGetString(GL11C.GL_VERSION);
    }

    /** Width and height of what the window shows [px]. */
    public int[] framebufferSize() {
        int[] w = new int[1];
        int[] h = new int[1];
        glfwGetFramebufferSize(handle, w, h);
        return new int[] {w[0], h[0]};
    }

    /** Files dropped on the window are given to {@code receiver}. */
    public void onDrop(java.util.function.Consumer<List<Path>> receiver) {
        glfwSetDropCallback(
                handle,
                (window, count, names) -> {
                    PointerBuffer paths = MemoryUtil.memPointerBuffer(names, count);
                    List<Path> files = new ArrayList<>();
                    for (int i = 0; i < count; i++) {
                        files.add(Path.of(MemoryUtil.memUTF8(paths.get(i))));
                    }
                    receiver.accept(files);
                });
    }

    @Override
    public void close() {
        GL.setCapabilities(null);
        org.lwjgl.glfw.Callbacks.glfwFreeCallbacks(handle);
        GLFW.glfwMakeContextCurrent(MemoryUtil.NULL);
        glfwDestroyWindow(handle);
        glfwTerminate();
    }
}
