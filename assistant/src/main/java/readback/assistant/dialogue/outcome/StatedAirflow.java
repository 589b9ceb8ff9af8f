package readback.assistant.dialogue.outcome;

import java.util.List;
import readback.calc.condition.AirflowPerTon;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/** An airflow that was measured another way, in whole cubic feet a minute for each ton. */
public record StatedAirflow(boolean enough, long cubicFeetPerMinutePerTon) implements JobOutcome {

    public static StatedAirflow of(double cubicFeetPerMinutePerTon) {
        return new StatedAirflow(AirflowPerTon.enough(cubicFeetPerMinutePerTon), Math.round(cubicFeetPerMinutePerTon));
    }

    @Override
    public Judged judged() {
        return Judged.AIRFLOW;
    }

    @Override
    public String name() {
        return "airflow " + (enough ? "enough" : "too-little-air");
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        return List.of(Figure.airflowPerTon("airflow-per-ton", cubicFeetPerMinutePerTon));
    }

    @Override
    public String line() {
        return name() + " cfm-per-ton=" + cubicFeetPerMinutePerTon;
    }
}
