// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteOrder;
import java.nio.IntBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes PNG (ISO/IEC 15948): 8 bits a channel, RGB, each row filtered by the one above. Written by
 * hand because the platform's own image writer takes longer to load than a picture takes to draw.
 */
public final class PngFile {
    private static final byte[] MAGIC = {(byte) 137, 80, 78, 71, 13, 10, 26, 10};

    /** Half the time of the usual level for four per cent more bytes. */
    private static final int LEVEL = 3;

    private PngFile() {}

    /** Writes the picture. */
    public static void write(Pixels pixels, Path file) throws IOException {
        WholeFile.write(file, out -> write(pixels, out));
    }

    private static void write(Pixels pixels, OutputStream raw) throws IOException {
        DataOutputStream out = new DataOutputStream(new BufferedOutputStream(raw, 1 << 16));
        out.write(MAGIC);
        java.io.ByteArrayOutputStream head = new java.io.ByteArrayOutputStream();
        DataOutputStream h = new DataOutputStream(head);
        h.writeInt(pixels.width);
        h.writeInt(pixels.height);
        h.write(new byte[] {8, 2, 0, 0, 0});
        chunk(out, "IHDR", head.toByteArray());
        // Perceptual rendering intent: the numbers are sRGB.
        chunk(out, "sRGB", new byte[] {0});
        chunk(out, "IDAT", packed(pixels));
        chunk(out, "IEND", new byte[0]);
        out.flush();
    }

    private static byte[] packed(Pixels pixels) throws IOException {
        java.io.ByteArrayOutputStream bytes = new java.io.ByteArrayOutputStream(1 << 18);
        Deflater deflater = new Deflater(LEVEL);
        try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater, 1 << 16)) {
            IntBuffer all = pixels.data.duplicate().order(ByteOrder.LITTLE_ENDIAN).asIntBuffer();
            int[] row = new int[pixels.width];
            int[] above = new int[pixels.width];
            byte[] filtered = new byte[pixels.width * 3 + 1];
            for (int y = pixels.height - 1; y >= 0; y--) {
                all.get(y * pixels.width, row);
                filter(row, above, filtered);
                out.write(filtered);
                int[] swap = above;
                above = row;
                row = swap;
            }
        } finally {
            deflater.end();
        }
        return bytes.toByteArray();
    }

    /** Filter "up". Most pixels of a sheet equal the one above, so little is left to pack. */
    private static void filter(int[] row, int[] above, byte[] out) {
        Arrays.fill(out, (byte) 0);
        out[0] = 2;
        for (int x = 0; x < row.length; x++) {
            int c = row[x];
            int a = above[x];
            if (c != a) {
                out[3 * x + 1] = (byte) (c - a);
                out[3 * x + 2] = (byte) ((c >> 8) - (a >> 8));
                out[3 * x + 3] = (byte) ((c >> 16) - (a >> 16));
            }
        }
    }

    private static void chunk(DataOutputStream out, String kind, byte[] data) throws IOException {
        byte[] name = kind.getBytes(StandardCharsets.US_ASCII);
        out.writeInt(data.length);
        out.write(name);
        out.write(data);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(data);
        out.writeInt((int) crc.getValue());
    }
}
