package readback.assistant.dialogue.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import readback.calc.name.ConstantName;
import readback.calc.procedure.HeatingCheck;
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
                result.rise().map(Tenths::of),
                Tenths.of(result.usualRise()),
                result.dischargeOverOutdoor().map(Tenths::of),
                result.superheat().map(Tenths::of),
                result.boilingBelowOutdoor().map(Tenths::of));
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
            figures.add(Tenths.figure("air-rise", tenths, units));
            figures.add(Tenths.figure("usual-air-rise", usualRiseTenths, units));
        });
        dischargeOverOutdoorTenths.ifPresent(
                tenths -> figures.add(Tenths.figure("discharge-over-outdoor", tenths, units)));
        superheatTenths.ifPresent(tenths -> figures.add(Tenths.figure("superheat", tenths, units)));
        boilingBelowOutdoorTenths.ifPresent(
                tenths -> figures.add(Tenths.figure("boiling-below-outdoor", tenths, units)));
        return figures;
    }

    @Override
    public String line() {
        StringJoiner line = new StringJoiner(" ");
        line.add(name());
        signs.forEach(sign -> line.add("sign=" + ConstantName.of(sign)));
        obstacle.ifPresent(each -> line.add("obstacle=" + ConstantName.of(each)));
        riseTenths.ifPresent(
                tenths -> line.add("rise=" + Tenths.shown(tenths) + " usual=" + Tenths.shown(usualRiseTenths)));
        dischargeOverOutdoorTenths.ifPresent(tenths -> line.add("discharge-over-outdoor=" + Tenths.shown(tenths)));
        superheatTenths.ifPresent(tenths -> line.add("superheat=" + Tenths.shown(tenths)));
        boilingBelowOutdoorTenths.ifPresent(tenths -> line.add("boiling-below-outdoor=" + Tenths.shown(tenths)));
        return line.toString();
    }
}
