package readback.calc.procedure;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import readback.calc.fact.FactTable;
import readback.calc.fluid.AssessmentReport;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.Mass;

/**
 * A rule on the leak rate of appliances, with the day since which it holds. Most split systems are exempt, or too
 * small. Facts: leak-rules.txt.
 *
 * @param name as it is cited
 * @param ozoneDepleting whether it is for substances that deplete ozone, or for others
 * @param warmingPotential that must be exceeded, by the fourth assessment report
 * @param fullCharge from which it holds
 * @param percent in 365 days that a comfort cooling appliance may not exceed
 * @param since the day since which it holds
 * @param homesExempt whether residential and light commercial air conditioning and heat pumps are exempt
 * @param source where it stands
 */
public record LeakRule(
        String name,
        boolean ozoneDepleting,
        double warmingPotential,
        Mass fullCharge,
        double percent,
        LocalDate since,
        boolean homesExempt,
        String source) {

    private static final List<LeakRule> RULES = FactTable.lines(LeakRule.class, "leak-rules.txt").stream()
            .map(LeakRule::of)
            .toList();

    private static LeakRule of(List<String> line) {
        return new LeakRule(
                line.get(0).replace('-', ' '),
                line.get(1).equals("ods"),
                Double.parseDouble(line.get(2)),
                Mass.pounds(Double.parseDouble(line.get(3))),
                Double.parseDouble(line.get(4)),
                LocalDate.parse(line.get(5)),
                line.get(6).equals("exempt"),
                line.get(7).replace('_', ' '));
    }

    /** The rule that is for a refrigerant on a day, whatever the charge; empty where there is none. */
    public static Optional<LeakRule> of(Refrigerant refrigerant, LocalDate day) {
        boolean depletes = refrigerant.ozoneDepletionPotential() > 0;
        return RULES.stream()
                .filter(rule -> rule.ozoneDepleting == depletes
                        && (depletes
                                || refrigerant.globalWarmingPotential(AssessmentReport.AR4) > rule.warmingPotential)
                        && !day.isBefore(rule.since))
                .findFirst();
    }

    /** Whether a full charge is large enough for the rule. */
    public boolean reaches(Mass charge) {
        return charge.compareTo(fullCharge) >= 0;
    }
}
