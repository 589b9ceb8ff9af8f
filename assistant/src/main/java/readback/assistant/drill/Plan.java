package readback.assistant.drill;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Which skills a drill asks for, in which order. */
final class Plan {

    /** Due skills in a drill at most. Decision 0021. */
    static final int MOST_DUE = 12;

    /** Skills never asked before in a drill at most. Decision 0021. */
    static final int MOST_NEW = 3;

    /** A drill begins with so many that are likely known. */
    private static final int EASY_FIRST = 2;

    private Plan() {}

    /** Two that are likely known, then those most likely forgotten, then new ones. */
    static List<Skill> of(List<Skill> skills, Progress progress, Instant now) {
        List<Skill> due = progress.due(skills, now);
        List<Skill> hardest = new ArrayList<>(due.subList(0, Math.min(MOST_DUE, due.size())));
        List<Skill> order = new ArrayList<>();
        for (int i = 0; i < EASY_FIRST && hardest.size() > 1; i++) {
            order.add(hardest.remove(hardest.size() - 1));
        }
        order.addAll(hardest);
        skills.stream()
                .filter(skill -> progress.asked(skill) == 0)
                .limit(MOST_NEW)
                .forEach(order::add);
        return order;
    }
}
