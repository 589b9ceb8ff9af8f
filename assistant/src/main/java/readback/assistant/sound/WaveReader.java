package readback.assistant.sound;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import readback.assistant.sound.Recording.Part;
import readback.assistant.sound.Recording.Unreadable;
import readback.assistant.sound.Recording.Whole;

/**
 * Reads RIFF wave files (IBM and Microsoft, "Multimedia Programming Interface and Data Specifications 1.0", 1991, with
 * the extensible format of 2001). Chunks other than {@code fmt} and {@code data} are passed over; a {@code data} chunk
 * of size 0 or 0xFFFFFFFF, as written by programs that did not know the length yet, reaches to the end of the file.
 */
final class WaveReader {
    private static final String WANTED =
            "Readback reads WAV files, PCM of 8, 16 or 24 bits, mono or stereo, 8 to 48 kHz";
    private static final int PCM = 1;
    private static final int EXTENSIBLE = 0xFFFE;
    private static final int LONGEST_SECONDS = 3600;
    private static final int BLOCK_FRAMES = 8192;

    /** How other kinds of file begin, to say what was given instead. */
    private static final Map<String, String> OTHERS = Map.of(
            "fLaC", "a FLAC file",
            "OggS", "an Ogg file",
            "ID3", "an MP3 file",
            "FORM", "an AIFF file",
            "RF64", "an RF64 file",
            "RIFX", "a big-endian wave file",
            "caff", "a CAF file",
            "PK", "a zip file");

    private record Format(int kind, int channels, int rate, int bits) {
        int frameBytes() {
            return channels * ((bits + 7) / 8);
        }
    }

    private final String file;
    private final InputStream in;

    private WaveReader(String file, InputStream in) {
        this.file = file;
        this.in = in;
    }

    static Recording read(Path file) {
        if (!Files.exists(file)) {
            return new Unreadable("There is no file '" + file + "': check the name and the folder.");
        }
        if (Files.isDirectory(file)) {
            return new Unreadable("'" + file + "' is a folder, not an audio file.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return read(file.toString(), in);
        } catch (IOException unreadable) {
            return new Unreadable("'" + file + "' cannot be read (" + unreadable.getMessage() + ").");
        }
    }

    static Recording read(String name, InputStream in) {
        try {
            return new WaveReader(name, new BufferedInputStream(in, 1 << 16)).read();
        } catch (IOException unreadable) {
            return new Unreadable("'" + name + "' cannot be read (" + unreadable.getMessage() + ").");
        }
    }

    private Recording read() throws IOException {
        byte[] head = in.readNBytes(12);
        if (head.length == 0) {
            return new Unreadable("'" + file + "' is empty: record it again.");
        }
        if (head.length < 12
                || !ascii(head, 0).equals("RIFF")
                || !ascii(head, 8).equals("WAVE")) {
            return new Unreadable("'" + file + "' is " + kindOf(head) + "; " + WANTED + ": convert it first.");
        }
        Format format = null;
        while (true) {
            byte[] header = in.readNBytes(8);
            if (header.length < 8) {
                return new Unreadable("'" + file + "' ends before its sound begins: record or copy it again.");
            }
            long size = Integer.toUnsignedLong(little(header).getInt(4));
            switch (ascii(header, 0)) {
                case "fmt " -> {
                    byte[] body = in.readNBytes((int) Math.min(size, 1024));
                    if (body.length < 16) {
                        return new Unreadable("'" + file + "' has a damaged header: record or copy it again.");
                    }
                    format = format(body);
                    skip(size - body.length + (size & 1));
                }
                case "data" -> {
                    if (format == null) {
                        return new Unreadable("'" + file + "' does not say how its sound is stored: convert it first.");
                    }
                    return sound(format, size);
                }
                default -> skip(size + (size & 1));
            }
        }
    }

    private static Format format(byte[] body) {
        ByteBuffer fields = little(body);
        int kind = Short.toUnsignedInt(fields.getShort(0));
        if (kind == EXTENSIBLE && body.length >= 26) {
            // The first two bytes of the sub-format's identifier are the kind.
            kind = Short.toUnsignedInt(fields.getShort(24));
        }
        return new Format(kind, fields.getShort(2), fields.getInt(4), fields.getShort(14));
    }

    private Recording sound(Format format, long size) throws IOException {
        String what = unsupported(format);
        if (!what.isEmpty()) {
            return new Unreadable("'" + file + "' holds " + what + "; " + WANTED + ": convert it first.");
        }
        boolean sized = size != 0 && size != 0xFFFFFFFFL;
        long limit = sized ? size : Long.MAX_VALUE;
        short[] pcm = new short[BLOCK_FRAMES];
        int length = 0;
        long got = 0;
        boolean broken = false;
        while (got < limit) {
            byte[] block;
            try {
                block = in.readNBytes((int) Math.min((long) BLOCK_FRAMES * format.frameBytes(), limit - got));
            } catch (IOException lost) {
                broken = true;
                break;
            }
            if (block.length == 0) {
                break;
            }
            got += block.length;
            int frames = block.length / format.frameBytes();
            if (length + frames > LONGEST_SECONDS * format.rate()) {
                return new Unreadable("'" + file + "' is longer than an hour: cut it into shorter files.");
            }
            if (length + frames > pcm.length) {
                pcm = Arrays.copyOf(pcm, Math.max(2 * pcm.length, length + frames));
            }
            for (int frame = 0; frame < frames; frame++) {
                pcm[length++] = mean(block, frame * format.frameBytes(), format);
            }
        }
        Samples samples = Samples.of(Arrays.copyOf(pcm, length), format.rate());
        if (length == 0) {
            return new Unreadable("'" + file + "' holds no sound: record it again.");
        }
        if (broken || (sized && got < size)) {
            return new Part(
                    samples,
                    String.format(
                            Locale.ROOT,
                            "'%s' is cut off: %.1f s of %.1f s could be read and are used; copy it again for the rest.",
                            file,
                            samples.seconds(),
                            (double) size / format.frameBytes() / format.rate()));
        }
        return new Whole(samples);
    }

    /** What is stored in a form that is not read here, or nothing. */
    private static String unsupported(Format format) {
        if (format.kind() != PCM) {
            return switch (format.kind()) {
                case 3 -> "floating-point samples";
                case 6, 7 -> "telephone-coded samples";
                case 2, 17 -> "ADPCM-coded samples";
                default -> "compressed sound (code " + format.kind() + ")";
            };
        }
        if (format.bits() != 8 && format.bits() != 16 && format.bits() != 24) {
            return "samples of " + format.bits() + " bits";
        }
        if (format.channels() != 1 && format.channels() != 2) {
            return format.channels() + " channels";
        }
        if (format.rate() < 8000 || format.rate() > 48000) {
            return format.rate() + " samples a second";
        }
        return "";
    }

    private static short mean(byte[] block, int at, Format format) {
        if (format.channels() == 1) {
            return sample(block, at, format.bits());
        }
        int second = at + format.frameBytes() / 2;
        return (short) ((sample(block, at, format.bits()) + sample(block, second, format.bits())) >> 1);
    }

    private static short sample(byte[] block, int at, int bits) {
        return switch (bits) {
            // Eight bits are stored unsigned around 128, more bits signed.
            case 8 -> (short) (((block[at] & 0xFF) - 128) << 8);
            case 16 -> (short) ((block[at] & 0xFF) | block[at + 1] << 8);
            default -> {
                int wide = (block[at] & 0xFF) | (block[at + 1] & 0xFF) << 8 | block[at + 2] << 16;
                yield (short) Math.min(Short.MAX_VALUE, (wide + 128) >> 8);
            }
        };
    }

    private void skip(long bytes) throws IOException {
        long left = bytes;
        while (left > 0) {
            long skipped = in.skip(left);
            if (skipped <= 0) {
                if (in.read() < 0) {
                    return;
                }
                skipped = 1;
            }
            left -= skipped;
        }
    }

    private static String kindOf(byte[] head) {
        String start = new String(head, StandardCharsets.ISO_8859_1);
        return OTHERS.entrySet().stream()
                .filter(other -> start.startsWith(other.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("not an audio file that is known here");
    }

    private static String ascii(byte[] bytes, int at) {
        return new String(bytes, at, 4, StandardCharsets.ISO_8859_1);
    }

    private static ByteBuffer little(byte[] bytes) {
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }
}
