// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Writes an animated GIF (version 89a) that loops for ever: one palette of 255 colours chosen from
 * the first picture by median cut, the 256th clear; each picture holds only the rectangle that
 * changed, unchanged pixels clear.
 */
final class GifFile implements FilmFile {
    private static final int CLEAR = 255;

    private final OutputStream out;
    private final int width;
    private final int height;
    private final int hundredths;
    private int[] palette;
    private final byte[] nearest = new byte[1 << 18];
    private final byte[] known = new byte[1 << 18];
    private int[] last;

    GifFile(Path file, int width, int height, int framesPerSecond) throws IOException {
        out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16);
        this.width = width;
        this.height = height;
        hundredths = Math.max(2, Math.round(100f / framesPerSecond));
    }

    @Override
    public void add(Pixels pixels) throws IOException {
        int[] now = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                now[y * width + x] = pixels.rgb(x, y);
            }
        }
        if (palette == null) {
            palette = MedianCut.palette(now, CLEAR);
            header();
        }
        int[] box = changed(now);
        frame(now, box);
        last = now;
    }

    /** Left, top, right, bottom (exclusive) of what changed; one pixel when nothing did. */
    private int[] changed(int[] now) {
        if (last == null) {
            return new int[] {0, 0, width, height};
        }
        int[] box = {width, height, 0, 0};
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (now[y * width + x] != last[y * width + x]) {
                    box[0] = Math.min(box[0], x);
                    box[1] = Math.min(box[1], y);
                    box[2] = Math.max(box[2], x + 1);
                    box[3] = Math.max(box[3], y + 1);
                }
            }
        }
        return box[2] > box[0] ? box : new int[] {0, 0, 1, 1};
    }

    private void header() throws IOException {
        out.write("GIF89a".getBytes(StandardCharsets.US_ASCII));
        word(width);
        word(height);
        out.write(0xF7);
        out.write(0);
        out.write(0);
        for (int i = 0; i < 256; i++) {
            int c = i < palette.length ? palette[i] : 0;
            out.write(c >> 16);
            out.write(c >> 8);
            out.write(c);
        }
        // Loop for ever.
        out.write(new byte[] {0x21, (byte) 0xFF, 11});
        out.write("NETSCAPE2.0".getBytes(StandardCharsets.US_ASCII));
        out.write(new byte[] {3, 1, 0, 0, 0});
    }

    private void frame(int[] now, int[] box) throws IOException {
        out.write(new byte[] {0x21, (byte) 0xF9, 4, 0x05});
        word(hundredths);
        out.write(CLEAR);
        out.write(0);
        out.write(0x2C);
        word(box[0]);
        word(box[1]);
        word(box[2] - box[0]);
        word(box[3] - box[1]);
        out.write(0);
        byte[] codes = new byte[(box[2] - box[0]) * (box[3] - box[1])];
        int n = 0;
        for (int y = box[1]; y < box[3]; y++) {
            for (int x = box[0]; x < box[2]; x++) {
                int at = y * width + x;
                boolean same = last != null && last[at] == now[at];
                codes[n++] = same ? (byte) CLEAR : nearest(now[at]);
            }
        }
        new Lzw(out).write(codes);
    }

    private byte nearest(int rgb) {
        int cell = (rgb >> 18 & 63) << 12 | (rgb >> 10 & 63) << 6 | rgb >> 2 & 63;
        if (known[cell] == 0) {
            int best = 0;
            int least = Integer.MAX_VALUE;
            for (int i = 0; i < palette.length; i++) {
                int dr = (palette[i] >> 16 & 255) - (rgb >> 16 & 255);
                int dg = (palette[i] >> 8 & 255) - (rgb >> 8 & 255);
                int db = (palette[i] & 255) - (rgb & 255);
                int d = 2 * dr * dr + 4 * dg * dg + 3 * db * db;
                if (d < least) {
                    least = d;
                    best = i;
                }
            }
            nearest[cell] = (byte) best;
            known[cell] = 1;
        }
        return nearest[cell];
    }

    private void word(int value) throws IOException {
        out.write(value);
        out.write(value >> 8);
    }

    @Override
    public void close() throws IOException {
        if (palette != null) {
            out.write(0x3B);
        }
        out.close();
    }

    /** Variable-length LZW of 8-bit codes, in blocks of up to 255 bytes. */
    private static final class Lzw {
        private final OutputStream out;
        private final byte[] block = new byte[255];
        private int filled;
        private int bits;
        private int held;

        Lzw(OutputStream out) {
            this.out = out;
        }

        void write(byte[] data) throws IOException {
            out.write(8);
            int[] table = new int[1 << 14];
            int size = 9;
            int next = 258;
            put(256, size);
            Arrays.fill(table, -1);
            int prefix = data[0] & 255;
            for (int i = 1; i < data.length; i++) {
                int code = data[i] & 255;
                int key = prefix << 8 | code;
                int slot = (key * 0x9E3779B1 >>> 18) & (table.length - 1);
                int found = -1;
                while (table[slot] != -1) {
                    if (table[slot] >>> 12 == key) {
                        found = table[slot] & 4095;
                        break;
                    }
                    slot = (slot + 1) & (table.length - 1);
                }
                if (found >= 0) {
                    prefix = found;
                    continue;
                }
                put(prefix, size);
                if (next < 4096) {
                    table[slot] = key << 12 | next;
                    if (next == 1 << size) {
                        size++;
                    }
                    next++;
                } else {
                    put(256, size);
                    Arrays.fill(table, -1);
                    size = 9;
                    next = 258;
                }
                prefix = code;
            }
            put(prefix, size);
            if (next == 1 << size && size < 12) {
                size++;
            }
            put(257, size);
            while (bits > 0) {
                emit(held & 255);
                held >>>= 8;
                bits -= 8;
            }
            flush();
            out.write(0);
        }

        private void put(int code, int size) throws IOException {
            held |= code << bits;
            bits += size;
            while (bits >= 8) {
                emit(held & 255);
                held >>>= 8;
                bits -= 8;
            }
        }

        private void emit(int value) throws IOException {
            block[filled++] = (byte) value;
            if (filled == block.length) {
                flush();
            }
        }

        private void flush() throws IOException {
            if (filled > 0) {
                out.write(filled);
                out.write(block, 0, filled);
                filled = 0;
            }
        }
    }
}
