package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

    /** These, by their words. */
    static List<Offer> commands(Choice... choices) {
        return Stream.of(choices).map(Offer::of).toList();
    }

    /** These, by numbers from 1 on. */
    static List<Offer> numbered(Choice... choices) {
        return IntStream.range(0, choices.length)
                .mapToObj(index -> numbered(index + 1, choices[index]))
                .toList();
    }

    /** Devices by numbers from 1 on, and the way on and back without one. */
    static List<Offer> devices(List<String> names) {
        List<Offer> offers = new ArrayList<>();
        for (String name : names) {
            offers.add(device(offers.size() + 1, name));
        }
        offers.addAll(commands(Choice.SKIP, Choice.BACK));
        return offers;
    }

    /** The same with another label. */
    Offer labelled(Message other) {
        return new Offer(choice, number, other, device);
    }

    static Offer numbered(int number, Choice choice) {
        return new Offer(choice, Optional.of(number), of(choice).label(), Optional.empty());
    }

    private static Offer device(int number, String name) {
        return new Offer(
                Choice.DEVICE,
                Optional.of(number),
                Message.of("setup.option.device").with("name", new Fact.Quoted(name)),
                Optional.of(name));
    }
}
