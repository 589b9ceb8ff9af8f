package readback.assistant;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Tag;
import readback.rules.EveryModule;

/** The rules of the house that the compiler cannot hold. */
@AnalyzeClasses(packages = "readback", importOptions = ImportOption.DoNotIncludeTests.class)
@Tag("slow")
class HouseRulesTest {

    @ArchTest
    static final ArchRule calc_knows_nobody = noClasses()
            .that()
            .resideInAPackage("readback.calc..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "readback.grammar..",
                    "readback.prompts..",
                    "readback.assistant..",
                    "com.fasterxml..",
                    "java.net..");

    @ArchTest
    static final ArchRule grammar_knows_calc_only = noClasses()
            .that()
            .resideInAPackage("readback.grammar..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("readback.prompts..", "readback.assistant..");

    @ArchTest
    static final ArchRule prompts_know_calc_only = noClasses()
            .that()
            .resideInAPackage("readback.prompts..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("readback.grammar..", "readback.assistant..");

    @ArchTest
    static final ArchRule the_dialogue_touches_no_clock_thread_file_or_sound = noClasses()
            .that()
            .resideInAPackage("readback.assistant.dialogue..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.io..",
                    "java.nio..",
                    "java.util.concurrent..",
                    "javax.sound..",
                    "readback.assistant.ear..",
                    "readback.assistant.voice..",
                    "readback.assistant.sound..",
                    "readback.assistant.record..",
                    "readback.assistant.session..",
                    "readback.assistant.command..");

    @ArchTest
    static final ArchRule the_dialogue_reads_no_clock = noClasses()
            .that()
            .resideInAPackage("readback.assistant.dialogue..")
            .should()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime");

    @ArchTest
    static final ArchTests every_module = ArchTests.in(EveryModule.class);

    /** From what is measured, over what it must satisfy, to what follows from it. */
    @ArchTest
    static final ArchRule the_rooms_of_the_charge_check_stand_in_order = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("measurement")
            .definedBy("readback.calc.measurement..")
            .layer("condition")
            .definedBy("readback.calc.condition..")
            .layer("targets")
            .definedBy("readback.calc.targets..")
            .layer("plausibility")
            .definedBy("readback.calc.plausibility..")
            .layer("charge")
            .definedBy("readback.calc.charge..")
            .whereLayer("measurement")
            .mayNotAccessAnyLayer()
            .whereLayer("condition")
            .mayOnlyAccessLayers("measurement")
            .whereLayer("targets")
            .mayOnlyAccessLayers("measurement", "condition")
            .whereLayer("plausibility")
            .mayOnlyAccessLayers("measurement");

    @ArchTest
    static final ArchRule the_rooms_beside_the_dialogue_do_not_know_it = noClasses()
            .that()
            .resideInAnyPackage("readback.assistant.dialogue.outcome..", "readback.assistant.dialogue.caution..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("readback.assistant.dialogue");

    @ArchTest
    static final ArchRule only_the_ear_knows_the_recogniser = classes()
            .that()
            .resideOutsideOfPackage("readback.assistant.ear..")
            .should()
            .onlyDependOnClassesThat()
            .resideOutsideOfPackage("org.vosk..");

    @ArchTest
    static final ArchRule only_the_probes_know_their_wires = classes()
            .that()
            .resideOutsideOfPackage("readback.assistant.probe..")
            .should()
            .onlyDependOnClassesThat()
            .resideOutsideOfPackages("com.ghgande..", "com.fazecast..");

    @ArchTest
    static final ArchRule the_probes_know_neither_screen_nor_ear = noClasses()
            .that()
            .resideInAPackage("readback.assistant.probe..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "readback.assistant.screen..",
                    "readback.assistant.ear..",
                    "readback.assistant.voice..",
                    "readback.assistant.live..",
                    "readback.assistant.record..",
                    "readback.assistant.session..");
}
