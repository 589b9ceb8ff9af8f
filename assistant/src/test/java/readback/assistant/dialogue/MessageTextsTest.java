package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import readback.calc.applicability.ChargeTest;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Correction;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.condition.Remedy;
import readback.calc.condition.WinterSetUp;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.name.ConstantName;
import readback.calc.plausibility.Contradiction;
import readback.calc.procedure.HeatingCheck;
import readback.calc.procedure.RestingPressure;
import readback.calc.procedure.SplitCheck;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumDecay;
import readback.calc.procedure.WeighIn;
import readback.calc.targets.TargetSource;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Step;

/**
 * Every message that the dialogue can make has a text, and every place of the text is filled. The messages are read
 * from the sources, so none can be forgotten; what a key is made of besides its literal parts stands in
 * {@link #ENDINGS}.
 */
class MessageTextsTest {

    private static final Path SOURCES = Path.of("src/main/java/readback/assistant/dialogue");
    private static final String ANY = "*";

    /** What may follow a literal beginning of a key where the code puts a name there. */
    private static final Map<String, List<String>> ENDINGS = Map.ofEntries(
            Map.entry("airflow.", names(SplitCheck.Outcome.values())),
            Map.entry("evacuation.", names(VacuumDecay.Outcome.values())),
            Map.entry("pressure-test.", names(StandingPressure.Outcome.values())),
            Map.entry("weighed-in.", names(WeighIn.Outcome.values())),
            Map.entry("weigh-in.basis.", names(WeighIn.Basis.values())),
            Map.entry("weigh-in.drier.", List.of("stated", "usual")),
            Map.entry("weigh-in.driers.", List.of("stated", "usual")),
            Map.entry("resting-pressure.", names(RestingPressure.Outcome.values())),
            Map.entry("which.", names(ChargeTest.values())),
            Map.entry(
                    "winter.",
                    names(WinterSetUp.Outcome.values()).stream()
                            .filter(outcome -> !outcome.equals("hold"))
                            .toList()),
            Map.entry("heating.", names(HeatingCheck.Outcome.values())),
            Map.entry("heating.obstacle.", names(HeatingCheck.Obstacle.values())),
            Map.entry("heating.sign.", names(HeatingCheck.Sign.values())),
            Map.entry("reason.", names(Verdict.DoNotCharge.Reason.values())),
            Map.entry("finding.", List.of("superheat", "subcooling")),
            Map.entry("target.", names(TargetSource.values())),
            Map.entry("verdict.", compared()),
            Map.entry("verdict.undecided.", List.of("on-target", "in-tolerance", "add", "recover", "weigh-in")),
            Map.entry("valve.", names(Comparison.Position.values())),
            Map.entry("condition.", names(Condition.values())),
            Map.entry("remedy.", names(Remedy.values())),
            Map.entry("contradiction.", names(Contradiction.Kind.values())),
            Map.entry(
                    "correction.",
                    names(Correction.Basis.values()).stream()
                            .filter(basis -> !basis.equals("nothing-to-correct"))
                            .toList()),
            Map.entry("why.method.", names(ChargeMethod.values())),
            Map.entry(
                    "why.target.",
                    names(TargetSource.values()).stream()
                            .filter(source -> !source.equals("rating-plate"))
                            .toList()),
            Map.entry("why.verdict.", names(Verdict.Kind.values())),
            // filled by kind: ReasonMessageTest
            Map.entry("not-understood.", List.of()),
            Map.entry("help.choose.", setsChosen()),
            Map.entry("units.now.", List.of("metric", "us")),
            Map.entry("answer.saturation.", List.of("suction", "liquid")),
            Map.entry("emergency.", names(Emergency.values())),
            Map.entry("explained.", names(Term.values())),
            Map.entry(
                    "probe.trouble.",
                    Stream.of(ProbeReport.Quality.values())
                            .filter(ProbeReport.Quality::trouble)
                            .map(ConstantName::of)
                            .toList()),
            Map.entry(
                    "situation.",
                    names(Situations.Told.values()).stream()
                            .filter(told -> !told.equals("frozen"))
                            .toList()),
            Map.entry("caution.", names(CautionRule.values())),
            Map.entry("", List.of("doubt.above", "doubt.below", "refused.outside")));

    /** Facts that other statements than the one that makes the message add to it. */
    private static final Map<String, Set<String>> ADDED = Map.of(
            "diagnosis.ambiguous", Set.of("other"),
            "refused.unphysical", Set.of("value"),
            "refused.outside", Set.of("value"));

    /**
     * One message of the sources.
     *
     * @param key with an asterisk for each part that is not literal
     */
    private record Made(String key, Set<String> facts, String where) {}

    private static List<String> names(Enum<?>[] constants) {
        return Arrays.stream(constants).map(ConstantName::of).toList();
    }

    private static List<String> compared() {
        return Stream.of("superheat.", "subcooling.")
                .flatMap(method -> Stream.of("in-tolerance", "add", "recover").map(method::concat))
                .toList();
    }

    private static List<String> setsChosen() {
        return steps().map(Step::task)
                .flatMap(task -> task.choices().stream())
                .distinct()
                .toList();
    }

    private static Stream<Step> steps() {
        return Checklists.standard().all().stream().flatMap(list -> list.steps().stream());
    }

    @Test
    void every_message_has_a_text_and_a_fact_for_each_of_its_places() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<Made> all = made();
        for (Made made : all) {
            // what is made in two places, once for the kinds with facts and once for those without, counts together
            Set<String> facts = all.stream()
                    .filter(each -> each.key().contains(ANY) && each.key().equals(made.key()))
                    .flatMap(each -> each.facts().stream())
                    .collect(Collectors.toCollection(() -> new TreeSet<>(made.facts())));
            for (String key : keys(made, wrong)) {
                if (!Rehearsal.WORDING.has(key)) {
                    wrong.add(made.where() + ": there is no text " + key);
                    continue;
                }
                for (String form : List.of("", ".brief", ".spoken")) {
                    Set<String> open = new TreeSet<>(
                            Rehearsal.WORDING.has(key + form) ? Rehearsal.WORDING.places(key + form) : Set.of());
                    open.removeAll(facts);
                    open.removeAll(ADDED.getOrDefault(key, Set.of()));
                    if (!open.isEmpty()) {
                        wrong.add(made.where() + ": nothing fills " + open + " in " + key + form);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void only_a_wait_tells_minutes_in_the_texts_of_its_step() {
        List<String> wrong = steps().flatMap(step -> Rehearsal.WORDING.keys().stream()
                        .filter(key -> key.startsWith("step." + step.id() + ".")
                                || key.startsWith("step." + step.texts() + "."))
                        .filter(key -> !Rehearsal.WORDING.places(key).isEmpty())
                        .filter(key -> step.task().awaited().isEmpty()
                                || !Rehearsal.WORDING.places(key).equals(Set.of("minutes"))
                                || !(key.contains(".ask") || key.contains(".again"))))
                .toList();
        assertThat(wrong).isEmpty();
    }

    private static Set<String> keys(Made made, List<String> wrong) {
        int at = made.key().indexOf(ANY);
        if (at < 0) {
            return Set.of(made.key());
        }
        String beginning = made.key().substring(0, at);
        List<String> endings = ENDINGS.get(beginning);
        if (endings == null) {
            wrong.add(made.where() + ": what may follow \"" + beginning + "\"?");
            return Set.of();
        }
        String rest = made.key().substring(made.key().lastIndexOf(ANY) + 1);
        return endings.stream().map(ending -> beginning + ending + rest).collect(Collectors.toSet());
    }

    private static List<Made> made() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<Made> made = new ArrayList<>();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
                Stream<Path> sources = Files.list(SOURCES)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null,
                    files,
                    null,
                    List.of("-proc:none"),
                    null,
                    files.getJavaFileObjectsFromPaths(
                            sources.filter(each -> each.toString().endsWith(".java"))
                                    .toList()));
            for (CompilationUnitTree unit : task.parse()) {
                new Messages(task, unit, made).scan(unit, null);
            }
        }
        assertThat(made).hasSizeGreaterThan(80);
        return made;
    }

    /** Finds each {@code Message.of(…)} with the {@code .with(…)} that follow it. */
    private static final class Messages extends TreePathScanner<Void, Void> {

        private final JavacTask task;
        private final CompilationUnitTree unit;
        private final List<Made> made;

        Messages(JavacTask task, CompilationUnitTree unit, List<Made> made) {
            this.task = task;
            this.unit = unit;
            this.made = made;
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void unused) {
            if (call.getMethodSelect().toString().equals("Message.of")) {
                String file = unit.getSourceFile().getName();
                String where = file.substring(file.lastIndexOf('/') + 1) + ":"
                        + unit.getLineMap().getLineNumber(position(call));
                parts(call.getArguments().get(0)).forEach(key -> made.add(new Made(key, facts(), where)));
            }
            return super.visitMethodInvocation(call, null);
        }

        private long position(Tree call) {
            return com.sun.source.util.Trees.instance(task).getSourcePositions().getStartPosition(unit, call);
        }

        private Set<String> facts() {
            Set<String> facts = new TreeSet<>();
            TreePath path = getCurrentPath().getParentPath();
            while (path.getLeaf() instanceof MemberSelectTree select
                    && select.getIdentifier().contentEquals("with")) {
                path = path.getParentPath();
                facts.add(((LiteralTree) ((MethodInvocationTree) path.getLeaf())
                                .getArguments()
                                .get(0))
                        .getValue()
                        .toString());
                path = path.getParentPath();
            }
            return facts;
        }

        /** The keys that the expression can give. */
        private static List<String> parts(ExpressionTree expression) {
            if (expression instanceof LiteralTree literal) {
                return List.of(literal.getValue().toString());
            }
            if (expression instanceof ParenthesizedTree inner) {
                return parts(inner.getExpression());
            }
            if (expression instanceof ConditionalExpressionTree either) {
                List<String> both = new ArrayList<>(parts(either.getTrueExpression()));
                both.addAll(parts(either.getFalseExpression()));
                return both;
            }
            if (expression instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
                List<String> joined = new ArrayList<>();
                for (String left : parts(sum.getLeftOperand())) {
                    parts(sum.getRightOperand()).forEach(right -> joined.add(left + right));
                }
                return joined;
            }
            return List.of(ANY);
        }
    }
}
