package readback.fleet;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import readback.rules.EveryModule;

/** The rules of the house, with the fleet in it. */
@AnalyzeClasses(packages = "readback", importOptions = ImportOption.DoNotIncludeTests.class)
class FleetRulesTest {

    @ArchTest
    static final ArchRule only_the_fleet_sees_the_engine = noClasses()
            .that()
            .resideOutsideOfPackage("readback.fleet..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.spark..", "org.apache.hadoop..", "scala..", "readback.fleet..");

    /** Executors verify and read records; whatever those classes reach travels with them. */
    @ArchTest
    static final ArchRule records_are_read_without_ear_voice_and_screen = nothingReaches(
            "readback.assistant.ear..",
            "readback.assistant.voice..",
            "readback.assistant.screen..",
            "readback.assistant.microphone..",
            "readback.assistant.live..",
            "readback.assistant.webrtc..",
            "readback.assistant.command..",
            "org.vosk..",
            "com.sun.jna..",
            "org.jline..",
            "dev.onvoid..",
            "marytts..");

    private static ArchRule nothingReaches(String... packages) {
        return noClasses()
                .that()
                .resideInAPackage("readback.fleet..")
                .should()
                .transitivelyDependOnClassesThat()
                .resideInAnyPackage(packages);
    }

    /** Modules of JSON are reached through records alone, over several steps. */
    @ArchTest
    static void the_rule_sees_what_is_reached_over_several_steps(JavaClasses classes) {
        assertThatThrownBy(
                        () -> nothingReaches("com.fasterxml.jackson.datatype..").check(classes))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("readback.assistant.record.Json");
    }

    @ArchTest
    static final ArchTests every_module = ArchTests.in(EveryModule.class);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "org.vosk.Model",
                "com.sun.jna.Native",
                "org.jline.terminal.Terminal",
                "dev.onvoid.webrtc.media.audio.AudioProcessing",
                "marytts.LocalMaryInterface",
                "org.slf4j.nop.NOPLogger"
            })
    void the_class_path_holds_nothing_of_ear_voice_and_screen(String name) {
        assertThatThrownBy(() -> Class.forName(name)).isInstanceOf(ClassNotFoundException.class);
    }

    @Test
    void the_class_path_names_no_jar_of_theirs_and_records_are_read_with_the_engines_own_json() {
        List<String> jars = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .map(path -> path.substring(path.lastIndexOf('/') + 1))
                .filter(name -> name.endsWith(".jar"))
                .toList();

        assertThat(jars)
                .hasSizeGreaterThan(100)
                .noneMatch(name -> name.matches("(vosk|jna|jline|webrtc-java|marytts|voice-|slf4j-nop).*"));
        assertThat(jars.stream()
                        .filter(name -> name.startsWith("jackson-module-scala"))
                        .map(FleetRulesTest::version))
                .hasSize(1)
                .containsExactlyElementsOf(jars.stream()
                        .filter(name -> name.startsWith("jackson-databind"))
                        .map(FleetRulesTest::version)
                        .toList());
    }

    private static String version(String jar) {
        return jar.replaceFirst(".*-(\\d[\\d.]*)\\.jar", "$1");
    }
}
