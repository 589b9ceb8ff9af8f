package readback.assistant.command;

import java.util.List;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;
import readback.assistant.practice.Outlook;
import readback.assistant.practice.PracticeTime;
import readback.assistant.practice.World;
import readback.assistant.session.Audience;

/**
 * A practice call that is about to run.
 *
 * @param time how fast it passes
 * @param outlook what is to be seen at the unit
 */
record PracticeCall(World world, PracticeTime time, Outlook outlook) {

    /** A quarter of an hour is over in as many seconds. */
    private static final double WAITING_PACE = 60;

    /** The unit follows the session, and time runs fast while it is only waited out. */
    List<Audience> live() {
        return List.of(world, new Audience() {
            @Override
            public void happened(Event event, Turn turn) {
                time.pace(world.waiting() ? WAITING_PACE : 1);
            }
        });
    }
}
