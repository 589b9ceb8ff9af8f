package readback.assistant.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import readback.assistant.probe.MappingException;
import readback.assistant.probe.ProbeFeed;
import readback.assistant.probe.ProbeMapping;
import readback.assistant.probe.ProbeWatch;
import readback.assistant.selfcheck.CheckResult;
import readback.assistant.selfcheck.ProbeCheck;
import readback.calc.quantity.UnitSetting;

/** Which instruments give values by themselves. */
final class ProbeOptions {

    @Option(
            names = "--probes",
            paramLabel = "FILE",
            description =
                    "Instruments that give values by themselves, over Modbus or as lines of SenML: a file that maps"
                            + " their channels. What they show is offered, and counts when you say take. Default: none.")
    private @Nullable Path file;

    /** The mapping that was named. */
    Optional<ProbeMapping> mapping() {
        if (file == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(ProbeMapping.read(file));
        } catch (MappingException e) {
            throw new CommandFailure(String.valueOf(e.getMessage()));
        }
    }

    /** Whether values come by the standard input, which nobody can type into then. */
    boolean readStandardInput() {
        return mapping().filter(ProbeMapping::readsStandardInput).isPresent();
    }

    /** What there is to say of the probes; nothing where none are named. */
    void findings(UnitSetting units, Consumer<CheckResult> told) {
        try {
            mapping().ifPresent(mapping -> ProbeCheck.run(mapping, units, told));
        } catch (CommandFailure e) {
            told.accept(new CheckResult(
                    "probes",
                    CheckResult.Grade.BAD,
                    String.valueOf(e.getMessage()),
                    "Mend the mapping; without it every value is called out."));
        }
    }

    /** Begins to watch them. */
    ProbeFeed open() {
        return mapping()
                .<ProbeFeed>map(mapping -> ProbeWatch.of(mapping, System.in))
                .orElse(ProbeFeed.NONE);
    }
}
