// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import org.jcodec.codecs.h264.H264Encoder;
import org.jcodec.codecs.h264.encode.RateControl;
import org.jcodec.codecs.h264.io.model.SeqParameterSet;
import org.jcodec.codecs.h264.io.model.SliceType;
import org.jcodec.codecs.h264.io.model.VUIParameters;
import org.jcodec.common.Codec;
import org.jcodec.common.MuxerTrack;
import org.jcodec.common.VideoCodecMeta;
import org.jcodec.common.VideoEncoder;
import org.jcodec.common.io.FileChannelWrapper;
import org.jcodec.common.io.NIOUtils;
import org.jcodec.common.model.ColorSpace;
import org.jcodec.common.model.Packet;
import org.jcodec.common.model.Picture;
import org.jcodec.common.model.Size;
import org.jcodec.containers.mp4.muxer.MP4Muxer;

/**
 * Writes an MP4 film (H.264, 4:2:0, BT.709 limited range, stated in the stream).
 *
 * <p>The quantiser is constant: with the encoder's own rate control flat paper drifts into
 * blotches, because chroma is rounded before its transform. At 10 or less it stays within one
 * level.
 */
final class Mp4File implements FilmFile {
    private static final int QUANTISER = 8;
    private static final int KEY_EVERY = 25;

    private final FileChannelWrapper channel;
    private final MP4Muxer muxer;
    private final H264Encoder encoder;
    private final Yuv yuv;
    private final int framesPerSecond;
    private final ByteBuffer packed;
    private final int width;
    private final int height;
    private MuxerTrack track;
    private long frame;

    Mp4File(Path file, int width, int height, int framesPerSecond) throws IOException {
        this.width = width;
        this.height = height;
        this.framesPerSecond = framesPerSecond;
        channel = NIOUtils.writableChannel(file.toFile());
        muxer = MP4Muxer.createMP4MuxerToChannel(channel);
        encoder = new Encoder();
        encoder.setKeyInterval(KEY_EVERY);
        yuv = new Yuv(width, height);
        packed = ByteBuffer.allocate(encoder.estimateBufferSize(yuv.picture));
    }

    /** The same quantiser for all pictures, and a stream that says which colours it means. */
    private static final class Encoder extends H264Encoder {
        Encoder() {
            super(new Constant());
        }

        @Override
        public SeqParameterSet initSPS(Size size) {
            SeqParameterSet set = super.initSPS(size);
            VUIParameters about = new VUIParameters();
            about.videoSignalTypePresentFlag = true;
            about.videoFormat = 5;
            about.colourDescriptionPresentFlag = true;
            about.colourPrimaries = 1;
            about.transferCharacteristics = 1;
            about.matrixCoefficients = 1;
            set.vuiParams = about;
            return set;
        }
    }

    private static final class Constant implements RateControl {
        @Override
        public int startPicture(Size size, int most, SliceType type) {
            return QUANTISER;
        }

        @Override
        public int initialQpDelta() {
            return 0;
        }

        @Override
        public int accept(int bits) {
            return 0;
        }
    }

    @Override
    public void add(Pixels pixels) throws IOException {
        yuv.take(pixels);
        packed.clear();
        VideoEncoder.EncodedFrame coded = encoder.encodeFrame(yuv.picture, packed);
        if (track == null) {
            track =
                    muxer.addVideoTrack(
                            Codec.H264,
                            VideoCodecMeta.createSimpleVideoCodecMeta(
                                    new Size(width, height), ColorSpace.YUV420J));
        }
        Packet.FrameType kind = coded.isKeyFrame() ? Packet.FrameType.KEY : Packet.FrameType.INTER;
        track.addFrame(
                Packet.createPacket(coded.getData(), frame, framesPerSecond, 1, frame, kind, null));
        frame++;
    }

    @Override
    public void close() throws IOException {
        try {
            if (track != null) {
                muxer.finish();
            }
        } finally {
            channel.close();
        }
    }

    /** RGB to planes, ITU-R BT.709 (luma 0.2126, 0.7152, 0.0722), luma 16..235, chroma 16..240. */
    private static final class Yuv {
        final Picture picture;
        private final int width;
        private final int height;
        private final int wide;
        private final int high;

        Yuv(int width, int height) {
            this.width = width;
            this.height = height;
            wide = (width + 15) / 16 * 16;
            high = (height + 15) / 16 * 16;
            byte[][] planes = {
                new byte[wide * high], new byte[wide * high / 4], new byte[wide * high / 4]
            };
            picture =
                    new Picture(
                            wide,
                            high,
                            planes,
                            null,
                            ColorSpace.YUV420J,
                            0,
                            new org.jcodec.common.model.Rect(0, 0, width, height));
        }

        /**
         * Planes hold the value less 128, as the encoder wants it. Rows and columns beyond the
         * picture repeat its edge.
         */
        void take(Pixels pixels) {
            byte[] ly = picture.getPlaneData(0);
            byte[] lb = picture.getPlaneData(1);
            byte[] lr = picture.getPlaneData(2);
            for (int y = 0; y < high; y += 2) {
                for (int x = 0; x < wide; x += 2) {
                    int r = 0;
                    int g = 0;
                    int b = 0;
                    for (int k = 0; k < 4; k++) {
                        int px = Math.min(x + (k & 1), width - 1);
                        int py = Math.min(y + (k >> 1), height - 1);
                        int at = ((height - 1 - py) * width + px) * 4;
                        int cr = pixels.data.get(at) & 255;
                        int cg = pixels.data.get(at + 1) & 255;
                        int cb = pixels.data.get(at + 2) & 255;
                        // 219/255 of each weight, in 1/65536
                        int luma = (11966 * cr + 40254 * cg + 4064 * cb + 32768 >> 16) + 16;
                        ly[(y + (k >> 1)) * wide + x + (k & 1)] = (byte) (luma - 128);
                        r += cr;
                        g += cg;
                        b += cb;
                    }
                    int at = y / 2 * (wide / 2) + x / 2;
                    // 224/255 of (B - Y)/1.8556 and (R - Y)/1.5748, of the mean of four
                    lb[at] = (byte) (-6596 * r - 22189 * g + 28785 * b + 131072 >> 18);
                    lr[at] = (byte) (28784 * r - 26145 * g - 2639 * b + 131072 >> 18);
                }
            }
        }
    }
}
