package readback.assistant.voice;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.sound.sampled.AudioInputStream;
import readback.assistant.sound.Samples;

/**
 * The embedded voice: MaryTTS 5.2.1 (DFKI, LGPL-3) with its voice cmu-slt-hsmm, in Java.
 *
 * <p>Its jar bundles old versions of logging and other libraries, so it lives in a class loader of its own whose only
 * parent is the Java platform ({@link VoiceJars}), and is called by reflection. Takes turns: one text at a time.
 */
final class MaryVoice implements Voice {
    private static final String SPEAKER = "cmu-slt-hsmm";
    private static final int DEFAULT_RATE = 16000;

    private final URLClassLoader loader;
    private final FutureTask<Engine> engine;

    /** What the jars hold, started. */
    private record Engine(Object speaker, Method generate, Method samplesOf) {}

    private MaryVoice(URLClassLoader loader) {
        this.loader = loader;
        this.engine = new FutureTask<>(() -> within(loader, () -> start(loader)));
    }

    /**
     * The voice whose jars lie in the folder. It starts beside what else is done, for a second or two: what is to be
     * spoken before waits for it, and is told if the jars do not work.
     *
     * @throws VoiceFailedException when they do not lie there
     */
    static MaryVoice open(Path folder) throws VoiceFailedException {
        MaryVoice voice = new MaryVoice(new VoiceJars(jars(folder)));
        Thread starting = new Thread(voice.engine, "voice-start");
        starting.setDaemon(true);
        starting.start();
        return voice;
    }

    private static Engine start(URLClassLoader loader) throws ReflectiveOperationException {
        Class<?> type = loader.loadClass("marytts.LocalMaryInterface");
        Object engine = type.getConstructor().newInstance();
        type.getMethod("setVoice", String.class).invoke(engine, SPEAKER);
        Method samplesOf = loader.loadClass("marytts.util.data.audio.MaryAudioUtils")
                .getMethod("getSamplesAsDoubleArray", AudioInputStream.class);
        return new Engine(engine, type.getMethod("generateAudio", String.class), samplesOf);
    }

    private static URL[] jars(Path folder) throws VoiceFailedException {
        List<URL> jars = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                if (file.toString().endsWith(".jar")) {
                    jars.add(file.toUri().toURL());
                }
            }
        } catch (MalformedURLException impossible) {
            throw new IllegalStateException(impossible);
        } catch (IOException missing) {
            throw new VoiceFailedException(missing(folder), missing);
        }
        if (jars.isEmpty()) {
            throw new VoiceFailedException(missing(folder));
        }
        return jars.toArray(new URL[0]);
    }

    private static String missing(Path folder) {
        return "The embedded voice is not in '" + folder
                + "': install Readback again, or choose another voice with --voice.";
    }

    @Override
    public String name() {
        return "MaryTTS 5.2.1, " + SPEAKER;
    }

    @Override
    public synchronized Samples speak(String text) throws VoiceFailedException {
        if (text.isBlank()) {
            return Samples.silence(0, DEFAULT_RATE);
        }
        Engine started = started();
        return within(loader, () -> {
            AudioInputStream stream = (AudioInputStream) started.generate().invoke(started.speaker(), text);
            double[] amplitudes = (double[]) started.samplesOf().invoke(null, stream);
            short[] pcm = new short[amplitudes.length];
            for (int i = 0; i < pcm.length; i++) {
                pcm[i] = (short) Math.round(Math.max(-1, Math.min(1, amplitudes[i])) * Short.MAX_VALUE);
            }
            return Samples.of(pcm, Math.round(stream.getFormat().getSampleRate()));
        });
    }

    private Engine started() throws VoiceFailedException {
        try {
            return engine.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof VoiceFailedException failed) {
                throw failed;
            }
            throw failure(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new VoiceFailedException("Speaking was interrupted.", e);
        }
    }

    /** The engine finds its parts through the thread's class loader. */
    private static <T> T within(ClassLoader loader, Callable<T> work) throws VoiceFailedException {
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        thread.setContextClassLoader(loader);
        try {
            return work.call();
        } catch (InvocationTargetException failed) {
            throw failure(failed.getCause() == null ? failed : failed.getCause());
        } catch (Exception failed) {
            throw failure(failed);
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    private static VoiceFailedException failure(Throwable cause) {
        return new VoiceFailedException(
                "The embedded voice failed (" + cause + "): choose another voice with --voice.", cause);
    }

    /** Leaves the jars open: the engine's own shutdown hook loads classes from them when the process ends. */
    @Override
    public void close() {}
}
