// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes PNG (ISO/IEC 15948): 8 bits a channel, RGB, each row filtered by the one above or to the
 * left. Written by hand because the platform's own image writer takes longer to load than a picture
 * takes to draw.
 */
public final class PngFile {
    private static final byte[] MAGIC = {(byte) 137, 80, 78, 71, 13, 10, 26, 10};

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
        Deflater deflater = new Deflater(6);
        try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater, 1 << 16)) {
            int stride = pixels.width * 3;
            byte[] row = new byte[stride];
            byte[] above = new byte[stride];
            byte[] filtered = new byte[stride + 1];
            for (int y = 0; y < pixels.height; y++) {
                row(pixels, y, row);
                filter(row, above, filtered);
                out.write(filtered);
                byte[] swap = above;
                above = row;
                row = swap;
            }
        } finally {
            deflater.end();
        }
        return bytes.toByteArray();
    }

    private static void row(Pixels pixels, int y, byte[] out) {
        int at = (pixels.height - 1 - y) * pixels.width * 4;
        for (int x = 0; x < pixels.width; x++) {
            out[3 * x] = pixels.data.get(at);
            out[3 * x + 1] = pixels.data.get(at + 1);
            out[3 * x + 2] = pixels.data.get(at + 2);
            at += 4;
        }
    }

    /** Filter "up" where it leaves less than "sub". */
    private static void filter(byte[] row, byte[] above, byte[] out) {
        int up = 0;
        int sub = 0;
        for (int i = 0; i < row.length; i++) {
            up += Math.abs((byte) (row[i] - above[i]));
            sub += Math.abs((byte) (row[i] - (i < 3 ? 0 : row[i - 3])));
        }
        boolean useUp = up <= sub;
        out[0] = (byte) (useUp ? 2 : 1);
        for (int i = 0; i < row.length; i++) {
            out[i + 1] = (byte) (row[i] - (useUp ? above[i] : i < 3 ? 0 : row[i - 3]));
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
