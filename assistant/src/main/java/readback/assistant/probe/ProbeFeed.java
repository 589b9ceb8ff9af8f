package readback.assistant.probe;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.ProbeReport;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.UnitSetting;

/** What probes show, for a session. Owned by the session's thread. */
public interface ProbeFeed extends AutoCloseable {

    /** Nothing is connected. */
    ProbeFeed NONE = new ProbeFeed() {
        @Override
        public Optional<Event.Measured> poll(Instant now, AbsolutePressure air, UnitSetting units) {
            return Optional.empty();
        }

        @Override
        public List<ProbeReport> live() {
            return List.of();
        }

        @Override
        public void close() {
            // nothing is open
        }
    };

    /**
     * What is no longer as it was told before; empty while everything is.
     *
     * @param now the session's time
     * @param air pressure around the gauges, which absolute pressures are turned into gauge pressures by
     * @param units of the session
     */
    Optional<Event.Measured> poll(Instant now, AbsolutePressure air, UnitSetting units);

    /** What every probe showed at the last poll, steady or not, for a screen. */
    List<ProbeReport> live();

    @Override
    void close();
}
