package readback.assistant.dialogue.outcome;

import java.util.List;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/** The airflow that electric heat shows, in whole cubic feet a minute. */
public record HeaterAirflow(long cubicFeetPerMinute) implements JobOutcome {

    @Override
    public Judged judged() {
        return Judged.HEATER_AIRFLOW;
    }

    @Override
    public String name() {
        return "heater-airflow measured";
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        return List.of(Figure.airflow("heater-airflow", cubicFeetPerMinute));
    }

    @Override
    public String line() {
        return name() + " cfm=" + cubicFeetPerMinute;
    }
}
