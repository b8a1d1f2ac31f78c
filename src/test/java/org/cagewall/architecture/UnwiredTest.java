package org.cagewall.architecture;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Nothing counts as built until the window or the command line calls it: a method of the program that only tests call,
 * or nobody, is a feature that was never wired, or what is left of one.
 */
class UnwiredTest {

    private static final String ROOT = "org.cagewall";

    /** Methods that the program never calls, each with the reason why it may stay. */
    private static final Map<String, String> MAY_STAY = Map.ofEntries(
            entry("almanac.Almanac.ownNumbers", "the windows of the room are held to what its own numbers say"),
            entry("almanac.OwnNumbers.days", "the same, one by one"),
            entry("almanac.OwnNumbers.own", "the same, as a window"),
            entry("almanac.Almanac.satFrom", "the day that an egg is sat from is held to what is known of sitting"),
            entry("almanac.Timetable.isKnown", "a species nobody has written a timetable for is told apart"),
            entry("deed.Lines.kinds", "the document of the record and deeds drawn at random are held to all kinds"),
            entry("kiosk.Kiosk.shell", "tests look at the window from without"),
            entry("kiosk.kit.DateStrip.chosen", "what a part shows is looked at"),
            entry("kiosk.kit.wall.Tile.face", "what a part shows is looked at"),
            entry("kiosk.kit.TouchButton.kind", "what a part shows is looked at"),
            entry("kiosk.kit.WrapLabel.tone", "what a part shows is looked at"),
            entry("kiosk.kit.WrapLabel.type", "what a part shows is looked at"),
            entry("paper.Area.within", "printed pages are measured inside a box"),
            entry("room.nest.Egg.isMovedIn", "eggs of other nests are told apart"),
            entry("scan.Keystrokes.quiet", "pauses between keys are played again, no clock being in it"),
            entry("scan.Luma.of", "the benchmark turns pictures"),
            entry("scan.Luma.toBytes", "the benchmark hands pictures to other readers"),
            entry("tasks.Report.urgency", "the urgency of a report is asked for in one word"),
            entry("store.Store.at", "a record in memory"));

    /** Whether words are cut is asked of every part by the tests of the screens. */
    private static final String LOOKED_AT = ".isWhole";

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);

    @Test
    void everyMethodOfTheProgramIsCalledByTheProgram() {
        Set<String> unwired = unwired();
        unwired.removeAll(MAY_STAY.keySet());
        unwired.removeIf(method -> method.endsWith(LOOKED_AT));
        assertThat(unwired)
                .as("methods that the program never calls: wire them, or take them out with their tests")
                .isEmpty();
    }

    @Test
    void whatMayStayIsStillThereAndStillUnwired() {
        assertThat(unwired()).containsAll(MAY_STAY.keySet());
    }

    private static Set<String> unwired() {
        return PROGRAM.stream()
                .flatMap(type -> type.getMethods().stream())
                .filter(UnwiredTest::isAskedFor)
                .filter(method -> callers(method).noneMatch(caller -> !caller.equals(method.getFullName())))
                .map(method -> method.getOwner().getFullName().substring(ROOT.length() + 1) + "." + method.getName())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Whoever calls the method, or the one that it stands in for, or names it. */
    private static Stream<String> callers(JavaMethod method) {
        return Stream.concat(Stream.of(method.getOwner()), supers(method.getOwner()))
                .flatMap(type -> type.getMethods().stream())
                .filter(each -> isSame(each, method))
                .flatMap(each -> Stream.<JavaAccess<?>>concat(
                        each.getCallsOfSelf().stream(), each.getReferencesToSelf().stream()))
                .map(access -> access.getOrigin().getFullName());
    }

    /** Not what the compiler makes, what a record or an enum brings, or what a library or the system calls. */
    private static boolean isAskedFor(JavaMethod method) {
        JavaClass owner = method.getOwner();
        return !method.getModifiers().contains(JavaModifier.SYNTHETIC)
                && !method.getModifiers().contains(JavaModifier.BRIDGE)
                && !method.getName().contains("$")
                && !(owner.isEnum() && Set.of("values", "valueOf").contains(method.getName()))
                && !isComponent(method)
                && !(method.getName().equals("main") && owner.getSimpleName().equals("Main"))
                && supers(owner)
                        .filter(type -> !type.getPackageName().startsWith(ROOT))
                        .flatMap(type -> type.getMethods().stream())
                        .noneMatch(each -> isSame(each, method))
                && !method.isAnnotatedWith("picocli.CommandLine$Command");
    }

    private static boolean isComponent(JavaMethod method) {
        return method.getOwner().isRecord()
                && method.getRawParameterTypes().isEmpty()
                && method.getOwner().tryGetField(method.getName()).isPresent();
    }

    private static boolean isSame(JavaMethod one, JavaMethod other) {
        return one.getName().equals(other.getName())
                && one.getRawParameterTypes().size()
                        == other.getRawParameterTypes().size();
    }

    private static Stream<JavaClass> supers(JavaClass type) {
        return Stream.concat(type.getAllRawSuperclasses().stream(), type.getAllRawInterfaces().stream());
    }
}
