package readback.assistant.dialogue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import readback.prompts.text.Message;

/**
 * What came of a measurement.
 *
 * @param recorded the outcome with the numbers that led to it, in the one form that is recorded and compared on replay
 * @param messages the outcome for the technician, value first
 * @param news what is left to say when the outcome is of the same kind as before, but not by the same numbers
 */
record Report(String recorded, List<Message> messages, List<Message> news) {
    Report {
        messages = List.copyOf(messages);
        news = List.copyOf(news);
    }

    Report(String recorded, List<Message> messages) {
        this(recorded, messages, messages);
    }

    /** Whether two outcomes rest on the same numbers, whatever else was measured between them. */
    static boolean alike(String before, String now) {
        return carrying(before).equals(carrying(now));
    }

    /** The parts of a recorded outcome without the side of the system that its method does not use. */
    private static List<String> carrying(String recorded) {
        List<String> others = recorded.contains("method=total-superheat")
                ? List.of("condensing=", "subcooling=")
                : List.of("evaporating=", "superheat=");
        return Arrays.stream(recorded.split(" ", -1))
                .filter(part -> others.stream().noneMatch(part::startsWith))
                .toList();
    }

    /** The outcome without its numbers. A charge verdict is one word; those of other jobs follow the job's name. */
    static String kindOf(String report, String recorded) {
        int words = report.equals(Assessment.CHARGE) ? 1 : 2;
        return Arrays.stream(recorded.split(" ", -1)).limit(words).collect(Collectors.joining(" "));
    }
}
