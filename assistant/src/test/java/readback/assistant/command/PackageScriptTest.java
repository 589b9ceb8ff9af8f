package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The script that makes the zip for a tablet: what it refuses, and what lies in the zip. Linking a runtime and packing
 * are the work of other programs; here they are stood in for by scripts that leave the files behind which those leave.
 */
class PackageScriptTest {

    @TempDir
    Path folder;

    private Path target;
    private Path programs;
    private Path kept;

    @BeforeEach
    void aDistributionAndPrograms() throws IOException {
        target = folder.resolve("target");
        Path lib = Files.createDirectories(target.resolve("readback/lib"));
        Files.createDirectories(target.resolve("readback/bin"));
        Files.writeString(target.resolve("readback/bin/readback"), "");
        Files.writeString(target.resolve("readback/bin/readback.cmd"), "");
        jar(lib.resolve("vosk-0.jar"), "linux-x86-64/libvosk.so", "win32-x86-64/libvosk.dll");
        jar(
                lib.resolve("jna-0.jar"),
                "com/sun/jna/linux-x86-64/libjnidispatch.so",
                "com/sun/jna/win32-x86-64/jnidispatch.dll");
        programs = Files.createDirectories(folder.resolve("programs"));
        jar(lib.resolve("webrtc-java-0-linux-x86_64.jar"), "library");
        jar(lib.resolve("webrtc-java-0-linux-aarch64.jar"), "library");
        jar(lib.resolve("webrtc-java-0-windows-x86_64.jar"), "library");
        Files.writeString(target.resolve("readback/NOTICE"), "- vosk: it. A.txt\n- jna, webrtc-java: those. B.txt\n");
        // an archive is the list of what is packed into it
        kept = Files.createDirectories(folder.resolve("kept"));
        program("zip", "cat > \"$5\"\ncase $5 in *.jar) cp \"$5\" '" + kept + "' ;; esac");
        program("jmod", ":");
        linker("17.0.1", "java.exe");
    }

    private static void jar(Path file, String... entries) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                JarOutputStream jar = new JarOutputStream(out)) {
            for (String entry : entries) {
                jar.putNextEntry(new JarEntry(entry));
            }
        }
    }

    private void program(String name, String script) throws IOException {
        Path file = programs.resolve(name);
        Files.writeString(file, "#!/bin/sh\n" + script + "\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    /** A linker of this version that makes a runtime with this program in it. */
    private void linker(String version, String java) throws IOException {
        program(
                "jlink",
                "[ \"$1\" = --version ] && echo " + version + " && exit\n"
                        + "echo \"$*\" >\"$(dirname \"$0\")/linked\"\n"
                        + "while [ \"$1\" != --output ]; do shift; done\n"
                        + "mkdir -p \"$2/bin\" && touch \"$2/bin/" + java + "\" && chmod +x \"$2/bin/" + java + "\"");
    }

    private Path jdk(String system, String processor, String version) throws IOException {
        Path jdk = folder.resolve("jdk-" + system);
        Files.createDirectories(jdk.resolve("jmods"));
        Files.writeString(
                jdk.resolve("release"),
                "JAVA_VERSION=\"" + version + "\"\nOS_ARCH=\"" + processor + "\"\nOS_NAME=\"" + system + "\"\n");
        return jdk;
    }

    /** What a run came to. */
    private record Came(int code, String words) {}

    private Came script(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("sh", "src/distribution/package"));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        Path bin = Path.of(System.getProperty("java.home"), "bin");
        builder.environment().merge("PATH", programs + ":" + bin, (old, first) -> first + ":" + old);
        builder.environment().put("READBACK_TARGET", target.toString());
        builder.environment().put("JLINK", programs.resolve("jlink").toString());
        Process process = builder.start();
        process.getOutputStream().close();
        String words = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Came(process.waitFor(), words);
    }

    private Came refused(String... arguments) throws IOException, InterruptedException {
        Came came = script(arguments);
        assertThat(came.code()).isNotZero();
        assertThat(target).isDirectoryNotContaining("glob:**.zip");
        return came;
    }

    @Test
    void aWindowsJdkGivesAZipThatWindowsCanStart() throws Exception {
        Came came = script(jdk("Windows", "x86_64", "17.0.9").toString());

        assertThat(came.words()).endsWith(target.resolve("readback-windows-x86-64.zip") + "\n");
        assertThat(came.code()).isZero();
        assertThat(Files.readAllLines(target.resolve("readback-windows-x86-64.zip")))
                .containsExactlyInAnyOrder(
                        "readback-windows-x86-64/INSTALL.md",
                        "readback-windows-x86-64/NOTICE",
                        "readback-windows-x86-64/bin/readback.cmd",
                        "readback-windows-x86-64/lib/jna-0.jar",
                        "readback-windows-x86-64/lib/vosk-0.jar",
                        "readback-windows-x86-64/lib/webrtc-java-0-windows-x86_64.jar",
                        "readback-windows-x86-64/runtime/bin/java.exe");
    }

    @Test
    void aLinuxJdkGivesAZipWithStarterAndDesktopEntry() throws Exception {
        linker("17.0.1", "java");

        Came came = script(jdk("Linux", "x86_64", "17.0.9").toString());

        assertThat(came.code()).as(came.words()).isZero();
        assertThat(Files.readAllLines(target.resolve("readback-linux-x86-64.zip")))
                .contains(
                        "readback-linux-x86-64/bin/readback",
                        "readback-linux-x86-64/lib/native/libvosk.so",
                        "readback-linux-x86-64/readback.desktop",
                        "readback-linux-x86-64/runtime/bin/java")
                .noneMatch(file -> file.endsWith(".cmd"));
        assertThat(packedJar("vosk-0.jar")).isEmpty();
    }

    @Test
    void forLinuxTheSameFilesAreInATarXz() throws Exception {
        linker("17.0.1", "java");
        String jdk = jdk("Linux", "x86_64", "17.0.9").toString();
        script(jdk);
        Path packed = target.resolve("readback-linux-x86-64.tar.xz");
        byte[] first = Files.readAllBytes(packed);

        Process list = new ProcessBuilder("tar", "-tJf", packed.toString()).start();
        assertThat(new String(list.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines())
                .containsExactlyElementsOf(Files.readAllLines(target.resolve("readback-linux-x86-64.zip")));
        Process check = new ProcessBuilder("sha256sum", "-c", "readback-linux-x86-64.tar.xz.sha256")
                .directory(target.toFile())
                .start();
        assertThat(check.waitFor()).isZero();
        script(jdk);
        assertThat(packed).hasBinaryContent(first);
    }

    @Test
    void ofTheVoicesJarOtherLibrariesStayBehindAndOtherLanguages() throws Exception {
        Path voice = Files.createDirectories(target.resolve("readback/lib/voice"));
        jar(
                voice.resolve("marytts-runtime-0.jar"),
                "com/ibm/icu/impl/data/icudt54b/brkitr/thaidict.dict",
                "com/ibm/icu/impl/data/icudt54b/curr/supplementalData.res",
                "com/ibm/icu/impl/data/icudt54b/en.res",
                "com/ibm/icu/impl/data/icudt54b/es_MX.res",
                "com/ibm/icu/impl/data/icudt54b/rbnf/fil.res",
                "com/ibm/icu/impl/data/icudt54b/rbnf/root.res",
                "com/google/common/base/Joiner.class",
                "groovy/lang/Closure.class",
                "marytts/server/http/MaryHttpServer.class",
                "org/hsqldb/Server.class");
        Files.writeString(
                target.resolve("readback/NOTICE"),
                "- vosk: it. A.txt\n- jna, marytts-runtime, webrtc-java: those. B.txt\n");

        script(jdk("Windows", "x86_64", "17.0.9").toString());

        assertThat(packedJar("marytts-runtime-0.jar"))
                .containsExactly(
                        "com/google/common/base/Joiner.class",
                        "com/ibm/icu/impl/data/icudt54b/curr/supplementalData.res",
                        "com/ibm/icu/impl/data/icudt54b/en.res",
                        "com/ibm/icu/impl/data/icudt54b/rbnf/root.res",
                        "marytts/server/http/MaryHttpServer.class");
    }

    @Test
    void whatDrawsIsNotLinked() throws Exception {
        program("jmod", "printf 'classes/java/awt/%s\\n' Window.class Button.class 'Button$1.class' font/Glyph.class");

        script(jdk("Windows", "x86_64", "17.0.9").toString());

        assertThat(Files.readString(programs.resolve("linked")))
                .contains(
                        "--exclude-resources=regex:/java\\.desktop/(?!(java/awt/Button.class|java/awt/font/Glyph.class)$)")
                .contains("--exclude-files=regex:/java\\.desktop/(lib|bin)/(?!.*jsound).*");
    }

    @Test
    void withoutADistributionItSaysWhatToRunFirst() throws Exception {
        target = folder.resolve("empty");
        Files.createDirectories(target);

        assertThat(refused().words()).contains("run mvn package first");
    }

    @Test
    void aRuntimeWithoutModulesIsNoJdk() throws Exception {
        Path jre = Files.createDirectories(folder.resolve("jre"));

        assertThat(refused(jre.toString()).words()).contains("has no jmods: name a whole JDK");
        assertThat(refused(folder.resolve("nowhere").toString()).words()).contains("there is no folder");
    }

    @Test
    void otherSystemsAndProcessorsAreRefusedByName() throws Exception {
        assertThat(refused(jdk("Darwin", "x86_64", "17.0.9").toString()).words())
                .contains("is for 'Darwin'");
        assertThat(refused(jdk("Linux", "riscv64", "17.0.9").toString()).words())
                .contains("is for 'riscv64' processors");
        assertThat(refused(jdk("Windows", "aarch64", "17.0.9").toString()).words())
                .contains("is for Windows on ARM: name a JDK for Windows x86-64");
    }

    @Test
    void aJdkOfAnotherVersionThanTheLinkerIsRefused() throws Exception {
        assertThat(refused(jdk("Windows", "x86_64", "21.0.2").toString()).words())
                .contains("is Java 21, but jlink here is Java 17");
    }

    @Test
    void modulesOfAnotherSystemThanTheJdkSaysAreFoundOut() throws Exception {
        linker("17.0.1", "java");

        assertThat(refused(jdk("Windows", "x86_64", "17.0.9").toString()).words())
                .contains("are not those of Windows");
    }

    @Test
    void aRecogniserWithoutALibraryForTheSystemIsFoundOut() throws Exception {
        jar(target.resolve("readback/lib/vosk-0.jar"), "linux-x86-64/libvosk.so");

        assertThat(refused(jdk("Windows", "x86_64", "17.0.9").toString()).words())
                .contains("vosk-0.jar has no win32-x86-64/libvosk.dll");
    }

    @Test
    void moreThanOneArgumentIsAnsweredWithTheUsage() throws Exception {
        assertThat(refused("one", "two").words()).startsWith("usage: package");
        assertThat(refused("--help").words()).contains("usage: assistant/src/distribution/package");
    }

    @Test
    void librariesOfOtherSystemsStayBehind() throws Exception {
        jar(
                target.resolve("readback/lib/jSerialComm-0.jar"),
                "Android/x86_64/libjSerialComm.so",
                "Linux/x86_64/libjSerialComm.so",
                "Windows/x86/jSerialComm.dll",
                "Windows/x86_64/jSerialComm.dll",
                "com/fazecast/jSerialComm/SerialPort.class");
        Files.writeString(
                target.resolve("readback/NOTICE"),
                "- vosk: it. A.txt\n- jna, jSerialComm, webrtc-java: those. B.txt\n");

        script(jdk("Windows", "x86_64", "17.0.9").toString());

        assertThat(packedJar("vosk-0.jar")).containsExactly("win32-x86-64/libvosk.dll");
        assertThat(packedJar("jna-0.jar")).containsExactly("com/sun/jna/win32-x86-64/jnidispatch.dll");
        assertThat(packedJar("jSerialComm-0.jar"))
                .containsExactly("Windows/x86_64/jSerialComm.dll", "com/fazecast/jSerialComm/SerialPort.class");
    }

    private List<String> packedJar(String name) throws IOException {
        return Files.readAllLines(kept.resolve(name));
    }

    /** The checksum as sha256sum of the GNU core utilities checks it. */
    @Test
    void theZipHasAChecksum() throws Exception {
        script(jdk("Windows", "x86_64", "17.0.9").toString());

        Process check = new ProcessBuilder("sha256sum", "-c", "readback-windows-x86-64.zip.sha256")
                .directory(target.toFile())
                .start();
        assertThat(check.waitFor()).isZero();
    }

    @Test
    void aSecondRunGivesTheSame() throws Exception {
        String jdk = jdk("Windows", "x86_64", "17.0.9").toString();
        script(jdk);
        String first = Files.readString(target.resolve("readback-windows-x86-64.zip.sha256"));
        script(jdk);

        assertThat(target.resolve("readback-windows-x86-64.zip.sha256")).hasContent(first);
    }

    @Test
    void aJarThatTheNoticeDoesNotNameIsNotPacked() throws Exception {
        jar(target.resolve("readback/lib/stray-1.0.jar"), "library");

        assertThat(refused(jdk("Windows", "x86_64", "17.0.9").toString()).words())
                .contains("NOTICE does not name stray-1.0.jar");
    }

    @Test
    void aListOfPartsIsPackedWhereThereIsOne() throws Exception {
        Files.writeString(target.resolve("sbom.cdx.json"), "{}");

        script(jdk("Windows", "x86_64", "17.0.9").toString());

        assertThat(Files.readAllLines(target.resolve("readback-windows-x86-64.zip")))
                .contains("readback-windows-x86-64/sbom.cdx.json");
    }

    private Path armJdk() throws IOException {
        linker("17.0.1", "java");
        jar(target.resolve("readback/lib/jna-0.jar"), "com/sun/jna/linux-aarch64/libjnidispatch.so");
        return jdk("Linux", "aarch64", "17.0.9");
    }

    /** Byte 18 of an ELF file tells the processor: 183 for AArch64, 62 for x86-64 (elf.h). */
    private Path recogniser(int processor) throws IOException {
        Path own = Files.createDirectories(folder.resolve("own"));
        byte[] head = new byte[64];
        head[18] = (byte) processor;
        Files.write(own.resolve("libvosk.so"), head);
        Files.writeString(own.resolve("libatomic.so.1"), "");
        Files.writeString(own.resolve("note.txt"), "");
        return own;
    }

    @Test
    void forArmItIsPackedWithoutARecogniserAndSaysSo() throws Exception {
        Came came = script(armJdk().toString());

        assertThat(came.code()).as(came.words()).isZero();
        assertThat(came.words()).contains("without a recogniser").contains("--recogniser");
        assertThat(Files.readAllLines(target.resolve("readback-linux-aarch64.zip")))
                .contains("readback-linux-aarch64/lib/webrtc-java-0-linux-aarch64.jar")
                .noneMatch(file -> file.contains("x86_64") || file.contains("/native/"));
    }

    @Test
    void forArmARecogniserOfOnesOwnIsPacked() throws Exception {
        Came came = script("--recogniser", recogniser(183).toString(), armJdk().toString());

        assertThat(came.code()).as(came.words()).isZero();
        assertThat(came.words()).doesNotContain("without a recogniser");
        assertThat(Files.readAllLines(target.resolve("readback-linux-aarch64.zip")))
                .contains(
                        "readback-linux-aarch64/lib/native/libvosk.so",
                        "readback-linux-aarch64/lib/native/libatomic.so.1")
                .noneMatch(file -> file.endsWith("note.txt"));
    }

    @Test
    void aRecogniserForAnotherProcessorIsRefused() throws Exception {
        assertThat(refused("--recogniser", recogniser(62).toString(), armJdk().toString())
                        .words())
                .contains("libvosk.so' is not for aarch64");
        assertThat(refused("--recogniser", folder.toString(), armJdk().toString())
                        .words())
                .contains("there is no libvosk.so in");
        assertThat(refused(
                                "--recogniser",
                                recogniser(183).toString(),
                                jdk("Windows", "x86_64", "17.0.9").toString())
                        .words())
                .contains("--recogniser is for Linux on ARM");
    }
}
