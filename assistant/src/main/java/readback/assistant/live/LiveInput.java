package readback.assistant.live;

import readback.assistant.ear.Utterance;
import readback.assistant.screen.Stroke;
import readback.assistant.sound.Samples;

/** Something that happened outside and that the owner thread of a {@link LiveSession} has to act on. */
sealed interface LiveInput {

    /** Acts on it; called on the owner thread. */
    void reach(LiveSession session);

    /**
     * Something was said.
     *
     * @param endedAt when its last word ended, on the clock of {@link System#nanoTime}
     * @param aboveNoise how far the speech stood out of the noise, in decibels
     * @param sound the speech itself, with a little before and after it
     */
    record Spoken(Utterance utterance, long endedAt, double aboveNoise, Samples sound) implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.spoken(this);
        }
    }

    /** Something was said that began while Readback spoke, so that only its end was heard. */
    record BeginningLost() implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.beginningLost();
        }
    }

    /** Too much of Readback's own voice comes back to listen while it speaks. */
    record EchoTooStrong() implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.echoTooStrong();
        }
    }

    /** Someone is speaking: the words so far. */
    record Partial(String words) implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.partial(words);
        }
    }

    /** An order came while Readback was speaking, or with a headset on sound that is loud enough for speech. */
    record Interrupted() implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.interrupted();
        }
    }

    /** The microphone works, for the first time or again. */
    record MicrophoneFound(String device) implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.microphoneFound(device);
        }
    }

    /** It does not. */
    record MicrophoneLost(String why) implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.microphoneLost(why);
        }
    }

    /** Sound was lost because the machine was too busy. */
    record Overrun() implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.overrun();
        }
    }

    /** The voice begins to sound. */
    record VoiceStarted(long at) implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.voiceStarted(at);
        }
    }

    /** The voice has said everything. */
    record VoiceEnded() implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.voiceEnded();
        }
    }

    /** The voice failed; one sentence says why. */
    record VoiceFailed(String why) implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.voiceFailed(why);
        }
    }

    /** A key, or a touch of the screen. */
    record Struck(Stroke stroke) implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.struck(stroke);
        }
    }

    /** A line that was typed where there is no screen. */
    record Written(String words) implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.written(words);
        }
    }

    /** The screen has another size, or must be drawn anew. */
    record Resized() implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.resized();
        }
    }

    /** The program is told to stop. */
    record Stop() implements LiveInput {
        @Override
        public void reach(LiveSession session) {
            session.stop();
        }
    }
}
