package tuttarco.video;

import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_unref;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_alloc_context3;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_find_decoder;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_flush_buffers;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_free_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_open2;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_parameters_to_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_receive_frame;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_send_packet;
import static org.bytedeco.ffmpeg.global.avformat.AVSEEK_FLAG_BACKWARD;
import static org.bytedeco.ffmpeg.global.avformat.av_find_best_stream;
import static org.bytedeco.ffmpeg.global.avformat.av_read_frame;
import static org.bytedeco.ffmpeg.global.avformat.av_seek_frame;
import static org.bytedeco.ffmpeg.global.avformat.avformat_close_input;
import static org.bytedeco.ffmpeg.global.avformat.avformat_find_stream_info;
import static org.bytedeco.ffmpeg.global.avformat.avformat_open_input;
import static org.bytedeco.ffmpeg.global.avutil.AVERROR_EOF;
import static org.bytedeco.ffmpeg.global.avutil.AV_LOG_QUIET;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_free;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_set;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_log_set_level;

import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVInputFormat;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.javacpp.PointerPointer;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;

/** The pictures or the sound of a file on this machine, decoded from any place on. Its times are those of {@link Clip}. */
final class DecodedStream implements AutoCloseable {
    private final Path file;
    private final int mediaType;
    private final AVPacket packet = av_packet_alloc();
    private final AVFrame frame = av_frame_alloc();
    private AVFormatContext container;
    private AVCodecContext decoder;
    private int stream;
    private double originS;
    private AVRational tick;
    private boolean draining;
    private boolean broken;

    /**
     * @param mediaType FFmpeg's AVMEDIA_TYPE_VIDEO or AVMEDIA_TYPE_AUDIO; of several streams the one that FFmpeg holds for
     *     the best
     */
    DecodedStream(Path file, int mediaType) throws InputException {
        this.file = file;
        this.mediaType = mediaType;
        av_log_set_level(AV_LOG_QUIET);
        if (!start()) {
            close();
            throw new InputException(InputBytes.name(file)
                    + " can't be read; it may be damaged, cut off while copying, or of another kind than it says.");
        }
    }

    private boolean start() {
        container = new AVFormatContext(null);
        AVDictionary options = new AVDictionary(null);
        av_dict_set(options, "protocol_whitelist", "file", 0);
        av_dict_set(options, "format_whitelist", Clip.CONTAINERS, 0);
        boolean opened =
                avformat_open_input(container, file.toAbsolutePath().toString(), (AVInputFormat) null, options) >= 0
                        && avformat_find_stream_info(container, (PointerPointer<?>) null) >= 0;
        av_dict_free(options);
        stream = opened ? av_find_best_stream(container, mediaType, -1, -1, (AVCodec) null, 0) : -1;
        if (stream < 0) {
            return false;
        }
        for (int i = 0; i < container.nb_streams(); i++) {
            container.streams(i).discard(i == stream ? avcodec.AVDISCARD_DEFAULT : avcodec.AVDISCARD_ALL);
        }
        AVStream chosen = container.streams(stream);
        AVCodec codec = avcodec_find_decoder(chosen.codecpar().codec_id());
        if (codec == null || codec.isNull()) {
            return false;
        }
        decoder = avcodec_alloc_context3(codec);
        tick = chosen.time_base();
        originS = container.start_time() == AV_NOPTS_VALUE ? 0 : container.start_time() / 1e6;
        draining = false;
        if (avcodec_parameters_to_context(decoder, chosen.codecpar()) < 0) {
            return false;
        }
        decoder.pkt_timebase(tick);
        decoder.thread_count(0);
        return avcodec_open2(decoder, codec, (PointerPointer<?>) null) >= 0;
    }

    /** Decodes what follows and has a time into {@link #frame}; false at the end of what can be read. */
    boolean next() {
        while (!broken) {
            int received = avcodec_receive_frame(decoder, frame);
            if (received >= 0) {
                if (frame.best_effort_timestamp() != AV_NOPTS_VALUE) {
                    return true;
                }
                continue;
            }
            if (draining || received == AVERROR_EOF()) {
                return false;
            }
            feed();
        }
        return false;
    }

    /** Gives the decoder one packet more; after the last it gives out what it still holds. */
    private void feed() {
        int read = av_read_frame(container, packet);
        if (read < 0) {
            draining = true;
            avcodec_send_packet(decoder, (AVPacket) null);
            return;
        }
        if (packet.stream_index() == stream) {
            // a damaged packet gives no frame; those after it may
            avcodec_send_packet(decoder, packet);
        }
        av_packet_unref(packet);
    }

    /** What was decoded last; whoever wants to keep it takes its content away. */
    AVFrame frame() {
        return frame;
    }

    /** Presentation time of what was decoded last, seconds from the clip's start. */
    double timeS() {
        long us = 1_000_000L * frame.best_effort_timestamp() * tick.num() / tick.den();
        return us / 1e6 - originS;
    }

    /** Goes to a place from which it can be decoded, no later than the time as far as the file tells. */
    void seek(double timeS) {
        long ticks = (long) Math.floor((timeS + originS) * tick.den() / tick.num());
        if (!broken && av_seek_frame(container, stream, ticks, AVSEEK_FLAG_BACKWARD) >= 0) {
            avcodec_flush_buffers(decoder);
            draining = false;
        } else {
            restart();
        }
    }

    /** Goes to the start by opening the file anew, for those that cannot be sought in. */
    private void restart() {
        stop();
        broken = !start();
    }

    private void stop() {
        if (decoder != null) {
            avcodec_free_context(decoder);
        }
        avformat_close_input(container);
    }

    @Override
    public void close() {
        stop();
        av_frame_free(frame);
        av_packet_free(packet);
    }
}
