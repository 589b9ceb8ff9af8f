package readback.assistant.dialogue;

import java.util.List;
import java.util.Optional;
import readback.calc.fluid.Catalogue;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Meaning;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Step;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** What is done about a word that names something: an answer, a question, what happened, a job. */
final class ChoiceTalk {

    /** The choice set of the units meant when none is said. */
    private static final String UNITS = "units";

    private final Flow flow;
    private final Intake intake;
    private final Answers answers;
    private final Orders orders;
    private final JobStack jobs;
    private final Situations situations;

    ChoiceTalk(Flow flow, Intake intake, Waiting waiting, Answers answers, Orders orders, JobStack jobs) {
        this.flow = flow;
        this.intake = intake;
        this.answers = answers;
        this.orders = orders;
        this.jobs = jobs;
        this.situations = new Situations(intake, waiting);
    }

    void choose(Draft draft, Meaning.Choice choice) {
        Optional<Question> question = Question.in(choice);
        Optional<Situations.Told> told = Situations.Told.in(choice);
        Optional<Term> term = Term.in(choice);
        Optional<Step> inWords = asked(draft)
                .filter(step ->
                        step.task().inWords().filter(choice.choice()::equals).isPresent());
        if (inWords.isPresent()) {
            inWords(draft, inWords.get(), choice.option());
        } else if (question.filter(Question::workedOut).isPresent()
                && draft.state().examined()) {
            draft.say(Explanations.WITHHELD);
        } else if (question.isPresent()) {
            draft.say(answers.to(question.get(), draft.state()));
        } else if (term.isPresent()) {
            draft.say(term.get().explained());
        } else if (told.isPresent()) {
            situations.taken(draft, told.get(), asked(draft)).ifPresent(job -> jobs.change(draft, job));
        } else if (Emergency.in(choice).isPresent()) {
            // a leak at the question for one is an answer
            draft.say(Message.of("leak.answered"));
            orders.refused(draft, asked(draft));
        } else if (choice.choice().equals(JobStack.JOBS)) {
            jobs.change(draft, new JobId(choice.option()));
        } else if (choice.choice().equals(UNITS)) {
            draft.become(draft.state()
                    .with(draft.state()
                            .settings()
                            .in(choice.option().equals("metric") ? UnitSetting.METRIC : UnitSetting.US)));
            draft.say(Message.of("units.now." + choice.option()));
        } else if (Altitudes.said(choice).isPresent()) {
            intake.values(draft, List.of(Altitudes.said(choice).get()), false, false);
        } else if (choice.choice().equals(Slots.REFRIGERANT.id())
                && Catalogue.standard().find(choice.option()).known().isEmpty()) {
            draft.say(Message.of("refrigerant.unsupported").with("name", new Fact.Quoted(choice.option())));
        } else if (choice.equals(Orders.UNKNOWN_DEVICE)
                && draft.sheet()
                        .option(Slots.METERING_DEVICE)
                        .filter(choice.option()::equals)
                        .isPresent()) {
            // Looking for it came to nothing: said once more, it does not begin anew.
            orders.skip(draft, asked(draft));
        } else {
            intake.choice(draft, choice);
        }
    }

    private Optional<Step> asked(Draft draft) {
        return flow.next(draft.state());
    }

    /** "The filter is clean": yes to the question for it. Where something else has to be answered first, nothing. */
    private void inWords(Draft draft, Step step, String word) {
        boolean first = draft.conversation().pending().isEmpty()
                && draft.state().warnings().unheeded().isEmpty();
        if (first) {
            intake.word(draft, step, word);
        }
    }

    /** Answers what was only spoken of: what to do if it happens, whether to go to a job. */
    void mentioned(Draft draft, Meaning.Choice choice) {
        Optional<Emergency> emergency = Emergency.in(choice);
        Optional<Situations.Told> told = Situations.Told.in(choice);
        if (emergency.isPresent()) {
            draft.say(emergency.get().told());
            draft.say(Message.of("emergency.asked"));
        } else if (told.isPresent()) {
            draft.say(told.get().answer());
        } else {
            jobs.spokenOf(draft, new JobId(choice.option()));
        }
    }
}
