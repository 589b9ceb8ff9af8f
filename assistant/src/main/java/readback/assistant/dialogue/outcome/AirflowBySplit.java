package readback.assistant.dialogue.outcome;

import java.util.List;
import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.calc.procedure.SplitCheck;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/**
 * The split of the indoor air.
 *
 * @param split tenths of a degree Fahrenheit; empty where the table of targets does not reach
 */
public record AirflowBySplit(Optional<Split> split) implements JobOutcome {

    /** Outcome, measured and target split, the latter in tenths of a degree Fahrenheit. */
    public record Split(SplitCheck.Outcome outcome, long actualTenths, long targetTenths) {}

    public static AirflowBySplit of(SplitCheck.Result result) {
        return new AirflowBySplit(
                Optional.of(new Split(result.outcome(), Tenths.of(result.actual()), Tenths.of(result.target()))));
    }

    @Override
    public Judged judged() {
        return Judged.AIRFLOW;
    }

    @Override
    public String name() {
        return "airflow " + split.map(each -> ConstantName.of(each.outcome())).orElse("outside-table");
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        return split.map(each -> List.of(
                        Tenths.figure("split", each.actualTenths(), units),
                        Tenths.figure("split-target", each.targetTenths(), units)))
                .orElse(List.of());
    }

    @Override
    public String line() {
        return split.map(each -> name() + " split=" + Tenths.shown(each.actualTenths()) + " target="
                        + Tenths.shown(each.targetTenths()))
                .orElseGet(this::name);
    }
}
