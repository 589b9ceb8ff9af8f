package readback.assistant.dialogue;

import java.util.Optional;
import readback.prompts.checklist.JobId;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** The jobs under way: another one comes to the top, and the one that it interrupted goes on when it is done. */
final class JobStack {

    /** The choice set whose options are jobs. */
    static final String JOBS = "checklist";

    private final Flow flow;
    private final Closing closing;

    JobStack(Flow flow, Closing closing) {
        this.flow = flow;
        this.closing = closing;
    }

    /** A job that was only spoken of: whether to go to it is asked, unless it is the one under way. */
    void spokenOf(Draft draft, JobId job) {
        if (job.equals(draft.state().job())) {
            change(draft, job);
        } else {
            draft.become(draft.conversation()
                    .questioningFirst(
                            new Pending.GoTo(job, Message.of("job.go-to").with("job", new Fact.Term("job." + job)))));
        }
    }

    /** Another job comes to the top; what was answered stays. */
    void change(Draft draft, JobId job) {
        if (!flow.isJob(job)) {
            draft.say(Message.of("again.plain"));
        } else if (job.equals(draft.state().job())) {
            draft.say(Message.of("job.same").with("job", new Fact.Term("job." + job)));
        } else {
            draft.become(draft.state().doing(job));
            draft.become(draft.conversation().revisiting(Optional.empty()));
            draft.say(Message.of("job.changed").with("job", new Fact.Term("job." + job)));
        }
    }

    /** The current job has no step left: back to the one that it interrupted, or the end. */
    boolean done(Draft draft) {
        if (draft.state().jobs().size() == 1) {
            closing.close(draft);
            return false;
        }
        draft.become(draft.state().doneWithJob());
        draft.say(Message.of("job.back")
                .with("job", new Fact.Term("job." + draft.state().job())));
        return true;
    }
}
