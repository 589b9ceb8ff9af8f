package readback.assistant.setup;

import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/**
 * What can be chosen at a step.
 *
 * @param number by which it is chosen, from 1 on; empty where it has a word of its own
 * @param label what stands on it
 * @param device its name, where it is one
 */
record Offer(Choice choice, Optional<Integer> number, Message label, Optional<String> device) {

    static Offer of(Choice choice) {
        return new Offer(
                choice, Optional.empty(), Message.of("setup.option." + ConstantName.of(choice)), Optional.empty());
    }

    /** The same with another label. */
    Offer labelled(Message other) {
        return new Offer(choice, number, other, device);
    }

    static Offer numbered(int number, Choice choice) {
        return new Offer(choice, Optional.of(number), of(choice).label(), Optional.empty());
    }

    static Offer device(int number, String name) {
        return new Offer(
                Choice.DEVICE,
                Optional.of(number),
                Message.of("setup.option.device").with("name", new Fact.Quoted(name)),
                Optional.of(name));
    }
}
