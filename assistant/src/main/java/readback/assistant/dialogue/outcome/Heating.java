package readback.assistant.dialogue.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import readback.calc.name.ConstantName;
import readback.calc.procedure.HeatingCheck;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/**
 * How a heat pump heats. Differences in tenths of a degree Fahrenheit.
 *
 * @param obstacle why nothing can be told, if nothing can
 */
public record Heating(
        HeatingCheck.Outcome outcome,
        List<HeatingCheck.Sign> signs,
        Optional<HeatingCheck.Obstacle> obstacle,
        Optional<Long> riseTenths,
        long usualRiseTenths,
        Optional<Long> dischargeOverOutdoorTenths,
        Optional<Long> superheatTenths,
        Optional<Long> boilingBelowOutdoorTenths)
        implements JobOutcome {

    public Heating {
        signs = List.copyOf(signs);
    }

    public static Heating of(HeatingCheck.Result result) {
        return new Heating(
                result.outcome(),
                result.signs(),
                result.obstacle(),
                result.rise().map(Heating::tenths),
                tenths(result.usualRise()),
                result.dischargeOverOutdoor().map(Heating::tenths),
                result.superheat().map(Heating::tenths),
                result.boilingBelowOutdoor().map(Heating::tenths));
    }

    private static long tenths(TemperatureDifference difference) {
        return Math.round(difference.fahrenheit() * 10);
    }

    @Override
    public Judged judged() {
        return Judged.HEATING;
    }

    @Override
    public String name() {
        return "heating " + ConstantName.of(outcome);
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        List<Figure> figures = new ArrayList<>();
        riseTenths.ifPresent(tenths -> {
            figures.add(figure("air-rise", tenths, units));
            figures.add(figure("usual-air-rise", usualRiseTenths, units));
        });
        dischargeOverOutdoorTenths.ifPresent(tenths -> figures.add(figure("discharge-over-outdoor", tenths, units)));
        superheatTenths.ifPresent(tenths -> figures.add(figure("superheat", tenths, units)));
        boilingBelowOutdoorTenths.ifPresent(tenths -> figures.add(figure("boiling-below-outdoor", tenths, units)));
        return figures;
    }

    private static Figure figure(String name, long tenths, UnitSetting units) {
        return Figure.difference(name, TemperatureDifference.fahrenheit(tenths / 10.0), units);
    }

    @Override
    public String line() {
        StringJoiner line = new StringJoiner(" ");
        line.add(name());
        signs.forEach(sign -> line.add("sign=" + ConstantName.of(sign)));
        obstacle.ifPresent(each -> line.add("obstacle=" + ConstantName.of(each)));
        riseTenths.ifPresent(tenths -> line.add("rise=" + tenths / 10.0 + "F usual=" + usualRiseTenths / 10.0 + "F"));
        dischargeOverOutdoorTenths.ifPresent(tenths -> line.add("discharge-over-outdoor=" + tenths / 10.0 + "F"));
        superheatTenths.ifPresent(tenths -> line.add("superheat=" + tenths / 10.0 + "F"));
        boilingBelowOutdoorTenths.ifPresent(tenths -> line.add("boiling-below-outdoor=" + tenths / 10.0 + "F"));
        return line.toString();
    }
}
