package readback.assistant.command;

import java.util.Optional;
import readback.assistant.ear.Ear;
import readback.assistant.ear.EarUnavailableException;
import readback.assistant.ear.VoskEar;
import readback.assistant.echo.EchoCanceller;
import readback.assistant.echo.WebRtcEchoCanceller;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.setup.SetupRun;
import readback.assistant.voice.LineLoudspeaker;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceChoice;
import readback.assistant.voice.VoiceFailedException;
import readback.assistant.webrtc.ProcessingUnavailableException;

/** The devices of this machine. */
record MachineDevices() implements SetupRun.Devices {
    @Override
    public MicrophoneFinder.Socket microphone(String name) {
        return MicrophoneFinder.named(Optional.of(name));
    }

    @Override
    public Loudspeaker loudspeaker(String name) {
        return new LineLoudspeaker(Optional.of(name));
    }

    @Override
    public Voice voice() throws VoiceFailedException {
        return VoiceChoice.best(VoiceOptions.home());
    }

    @Override
    public Ear ear() throws EarUnavailableException {
        Optional<String> none = VoskEar.noneForThisMachine();
        if (none.isPresent()) {
            throw new EarUnavailableException(none.get());
        }
        return new EarOptions().tryOpen();
    }

    @Override
    public EchoCanceller canceller() throws ProcessingUnavailableException {
        return WebRtcEchoCanceller.open();
    }
}
