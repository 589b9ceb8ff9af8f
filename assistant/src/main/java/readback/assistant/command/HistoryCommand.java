package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import readback.assistant.archive.Equipment;
import readback.assistant.archive.SessionFilter;
import readback.assistant.archive.Summary;
import readback.assistant.archive.Visits;
import readback.assistant.replay.Visible;
import readback.assistant.report.HistoryPage;
import readback.assistant.report.HistoryTexts;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.prompts.text.Language;

/** Shows what was done to a piece of equipment, visit by visit. */
@Command(
        name = "history",
        mixinStandardHelpOptions = true,
        description = {
            "Shows the sessions on each piece of equipment side by side: what changed since the visit before, refrigerant"
                    + " in and out, the leak rate over 365 days, and charges that were left to be measured again.",
            "Equipment is known by the serial number in its name, however it is written: SN 4471, sn-4471."
        })
public final class HistoryCommand implements Callable<Integer> {

    private static final int USUAL_VISITS = 3;
    private static final int WIDTH = 36;

    private final Console console;
    private final Clock clock;
    private final Language language = Language.english();
    private final HistoryTexts texts = new HistoryTexts(language);

    @Mixin
    private SessionFolders folders = new SessionFolders();

    @Option(
            names = "--appliance",
            paramLabel = "NAME",
            description = "Only this equipment: its serial number or its whole name.")
    private @Nullable String appliance;

    @Option(names = "--overdue", description = "Only equipment whose charge was left to be measured again.")
    private boolean overdue;

    @Option(names = "--visits", paramLabel = "N", description = "So many visits side by side. Default: 3.")
    private int visits = USUAL_VISITS;

    @Option(names = "--html", paramLabel = "FILE", description = "Write a page.")
    private @Nullable Path html;

    @Mixin
    private OverwriteOption overwrite = new OverwriteOption();

    public HistoryCommand(Console console) {
        this.console = console;
        this.clock = Clock.systemUTC();
    }

    @Override
    public Integer call() {
        if (visits < 1) {
            throw new CommandFailure("--visits is 1 at least, not " + visits + ".");
        }
        Optional<OutputFile> file = Optional.ofNullable(html).map(each -> OutputFile.at(each, overwrite.force()));
        Instant now = clock.instant();
        List<Visits> chosen = Visits.of(sessions()).stream()
                .filter(each -> appliance == null || each.key().equals(Equipment.key(appliance)))
                .filter(each -> !overdue || each.unsettled().isPresent())
                .toList();
        if (chosen.isEmpty()) {
            console.out().println(language.label("report.history.none"));
        }
        if (file.isPresent()) {
            file.get().write(HistoryPage.of(chosen, visits, HistoryCommand::refrigerant, language, now));
            console.out().println("Written: " + file.get());
            return 0;
        }
        chosen.forEach(each -> print(each, now));
        return 0;
    }

    private List<Summary> sessions() {
        List<Summary> sessions = new ArrayList<>();
        try {
            folders.gathering()
                    .each((summary, place) -> {
                        if (SessionFilter.ALL.takes(summary)) {
                            sessions.add(summary);
                        }
                    })
                    .troubles()
                    .forEach(each -> console.complain(Visible.text(each)));
        } catch (IOException e) {
            throw folders.unlisted(e);
        }
        return sessions;
    }

    private void print(Visits each, Instant now) {
        console.out().println(Visible.text(each.last().appliance()));
        texts.followUp(each, now).ifPresent(text -> console.out().println("  ! " + text));
        console.out().println("  " + texts.inAll(each));
        texts.leak(each, refrigerant(each.refrigerant()), now)
                .forEach(text -> console.out().println("  " + text));
        for (HistoryTexts.Row row : texts.rows(each, visits)) {
            StringBuilder line =
                    new StringBuilder(String.format(Locale.ROOT, "  %s %-24s", row.changed() ? "*" : " ", row.name()));
            row.values()
                    .forEach(
                            value -> line.append(String.format(Locale.ROOT, "%-" + WIDTH + "s ", Visible.text(value))));
            console.out().println(line.toString().stripTrailing());
        }
        console.out().println();
    }

    private static Optional<Refrigerant> refrigerant(String designation) {
        return designation.isEmpty()
                ? Optional.empty()
                : Catalogue.standard().find(designation).known();
    }
}
