package readback.assistant.setup;

import java.util.List;
import java.util.Optional;
import readback.assistant.echo.EchoTrial;
import readback.assistant.microphone.SpeechLevel;
import readback.grammar.Hypothesis;

/** Something that happened while a tablet is set up. */
sealed interface SetupEvent {

    /** What the case of this kind makes of the event. */
    <T> T fold(Cases<T> cases);

    /** What is to be made of each kind of event. */
    interface Cases<T> {

        T said(Said said);

        T microphoneLost(MicrophoneLost lost);

        T levelTaken(LevelTaken taken);

        T sentencePlayed(SentencePlayed played);

        T noiseTaken(NoiseTaken taken);

        T echoTried(EchoTried tried);

        T written(Written written);
    }

    /** Words were heard, typed, or said by a touch. */
    record Said(List<Hypothesis> hypotheses) implements SetupEvent {
        public Said {
            hypotheses = List.copyOf(hypotheses);
        }

        static Said typed(String words) {
            return new Said(List.of(Hypothesis.typed(words)));
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.said(this);
        }
    }

    /** The microphone cannot be opened, or gives no sound any more. */
    record MicrophoneLost(String why) implements SetupEvent {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.microphoneLost(this);
        }
    }

    /**
     * Somebody spoke, or the time for it is over.
     *
     * @param words what the recogniser made of it, nothing or the first utterance
     * @param deaf why there is no recogniser
     */
    record LevelTaken(SpeechLevel level, Optional<String> words, Optional<String> deaf) implements SetupEvent {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.levelTaken(this);
        }
    }

    /** The test sentence was played, or could not be. */
    record SentencePlayed(Optional<String> failure) implements SetupEvent {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.sentencePlayed(this);
        }
    }

    /** @param noise level of the place in decibels of full scale */
    record NoiseTaken(double noise) implements SetupEvent {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.noiseTaken(this);
        }
    }

    /** @param failure why it could not be tried */
    record EchoTried(Optional<EchoTrial.Result> result, Optional<String> failure) implements SetupEvent {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.echoTried(this);
        }
    }

    /**
     * The file was written, or not.
     *
     * @param kept what the file that was there before is called now
     */
    record Written(Optional<String> kept, Optional<String> failure) implements SetupEvent {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.written(this);
        }
    }
}
