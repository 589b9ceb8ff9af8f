package readback.assistant.live;

import readback.assistant.microphone.MicrophoneReader;

/** Hands sound to the ear and posts what happens to the microphone. Called on the microphone's thread. */
record MicrophoneEvents(InputQueue inputs, Hearing hearing) implements MicrophoneReader.Listener {

    @Override
    public void sound(short[] chunk) {
        if (!hearing.sound(chunk)) {
            inputs.post(new LiveInput.Overrun());
        }
    }

    @Override
    public void found(String device) {
        inputs.post(new LiveInput.MicrophoneFound(device));
    }

    @Override
    public void lost(String why) {
        inputs.post(new LiveInput.MicrophoneLost(why));
    }

    @Override
    public void overrun(long count) {
        inputs.post(new LiveInput.Overrun());
    }
}
