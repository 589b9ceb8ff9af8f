package readback.assistant.setup;

import java.util.Map;

/** Something to be done outside; its end comes back as a {@link SetupEvent} where it has one. */
sealed interface SetupEffect {

    /** Does it. */
    void doneBy(Performer performer);

    /** Does each kind of effect. */
    interface Performer {

        void listenTo(ListenTo wanted);

        void speakBy(SpeakBy wanted);

        void takeLevel();

        void playSentence();

        void takeNoise();

        void tryEcho();

        void write(Write write);

        void end(End end);
    }

    /** This microphone from now on. */
    record ListenTo(String microphone) implements SetupEffect {
        @Override
        public void doneBy(Performer performer) {
            performer.listenTo(this);
        }
    }

    /** This loudspeaker from now on. */
    record SpeakBy(String loudspeaker) implements SetupEffect {
        @Override
        public void doneBy(Performer performer) {
            performer.speakBy(this);
        }
    }

    /** What is measured or played. */
    enum Trial implements SetupEffect {
        LEVEL {
            @Override
            public void doneBy(Performer performer) {
                performer.takeLevel();
            }
        },
        SENTENCE {
            @Override
            public void doneBy(Performer performer) {
                performer.playSentence();
            }
        },
        NOISE {
            @Override
            public void doneBy(Performer performer) {
                performer.takeNoise();
            }
        },
        ECHO {
            @Override
            public void doneBy(Performer performer) {
                performer.tryEcho();
            }
        }
    }

    /** These settings into the file; what else it says stays. */
    record Write(Map<Name, String> settings) implements SetupEffect {
        public Write {
            settings = Map.copyOf(settings);
        }

        @Override
        public void doneBy(Performer performer) {
            performer.write(this);
        }
    }

    /** It is over; {@link Choice#LEAVE}, or what begins now. */
    record End(Choice next) implements SetupEffect {
        @Override
        public void doneBy(Performer performer) {
            performer.end(this);
        }
    }
}
