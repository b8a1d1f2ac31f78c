package org.cagewall.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.lang.reflect.Field;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds every package to what it may use, with the reason, so that the way from deed to screen keeps its one
 * direction. A new package or library is one more row in a table here, and nothing else.
 */
class ArchitectureTest {

    private static final List<Part> PARTS = List.of(
            part("text").uses().because("sentences are made at the border and know nothing of what they tell"),
            part("room").uses().because("the birdroom leans on nothing, so that everything may lean on it"),
            part("deed").uses("room").because("what a person records is judged by the room alone"),
            part("almanac").uses("room").because("what comes next follows from what was recorded and nothing else"),
            part("plan")
                    .uses("room", "almanac")
                    .because("what may come follows from the room, a date and a seed, whoever asks"),
            part("tasks").uses("room", "almanac").because("a day's list follows from the room and the date alone"),
            part("handover")
                    .uses("room", "almanac", "plan", "tasks")
                    .because("what is to be ready and what was missed follow from the record, and are never recorded"),
            part("paper").uses().because("a page is lines and letters, whatever they say"),
            part("cards").uses("room", "paper", "text").because("a card is a face on paper, in the reader's words"),
            part("scan").uses("room").because("what is read from a picture or from keys is a card of the room, or not"),
            part("store").uses("room", "deed").because("the record knows what it keeps, and nothing of who asks"),
            part("files")
                    .uses("room", "deed", "almanac", "tasks")
                    .because("a file is the record, or what follows from it, in another form, whoever asks for it"),
            part("desk")
                    .usesAllBut("kiosk", "demo", "command", "text")
                    .because("it joins the parts and is joined by none"),
            part("kiosk").usesAllBut("store", "demo", "command").because("its only way to the record is the desk"),
            part("demo")
                    .usesAllBut("store", "command")
                    .because("the invented room is recorded and painted as a keeper's is, and nothing leans on it"),
            part("command").usesAllBut("store").because("its only way to the record is the desk"));

    private static final List<Library> LIBRARIES = List.of(
            library("SQL and Derby")
                    .of("java.sql..", "javax.sql..", "org.apache.derby..", "org.flywaydb..")
                    .onlyIn("store")
                    .because("Derby is retired: on the day it is replaced one package changes"),
            library("Swing")
                    .of("javax.swing..", "com.formdev.flatlaf", "com.formdev.flatlaf.extras..", "net.miginfocom..")
                    .onlyIn("kiosk", "demo")
                    .because(
                            "what is shown is worked out without widgets and tested without a screen; the demo paints it"),
            library("PDFBox")
                    .of("org.apache.pdfbox..", "org.apache.fontbox..")
                    .onlyIn("paper", "cards")
                    .because("documents speak of pages and lines"),
            library("ZXing")
                    .of("com.google.zxing..")
                    .onlyIn("cards", "scan")
                    .because("one draws symbols, one reads them"),
            library("webcam-capture and its driver")
                    .of("com.github.sarxos..", "com.github.eduramiba..", "com.sun.jna..")
                    .onlyIn("scan")
                    .because("whoever looks for a card need not know whether a camera, a folder or a file sees"),
            library("Jackson")
                    .of("tools.jackson..", "com.fasterxml.jackson..")
                    .onlyIn("deed", "files", "command")
                    .because("JSON is a form of the record and of the command line, nobody else's"),
            library("JGraphT")
                    .of("org.jgrapht..")
                    .onlyIn("plan")
                    .because("which egg goes to which nest is the one question here that is a flow through a net"),
            library("iCal4j")
                    .of("net.fortuna..")
                    .onlyIn("files")
                    .because("a calendar is a file like others, and nobody else need know how it is written"),
            library("picocli")
                    .of("picocli..")
                    .onlyIn("command")
                    .because("what can be done depends not on how it is typed"));

    /** Packages and classes where moments, chance and new identities are made, to be handed on. */
    private static final Set<String> SOURCES_OF_NOW =
            Set.of("org.cagewall.desk", "org.cagewall.store", "org.cagewall.command");

    /** What only computes: no clock, file, database or widget. */
    private static final Set<String> COMPUTING = Set.of("text", "room", "deed", "almanac", "plan", "tasks", "handover");

    /** What the screens stand on; every other package below kiosk is a screen. */
    private static final Set<String> BELOW_SCREENS = Set.of("shell", "kit", "theme");

    private static final String ROOT = "org.cagewall";

    /** Read for every spot of every picture, and private; what was laid out last, behind a lock; a tally of nothing. */
    private static final Set<String> TABLES = Set.of(
            "almanac.OwnNumbers.NONE",
            "kiosk.kit.Letters.KNOWN",
            "scan.CardSymbol.DATA",
            "scan.CardSymbol.KNOWN_WORDS",
            "scan.Format.FIRST_COLUMNS",
            "scan.Format.FIRST_ROWS",
            "scan.ReedSolomon.LOGS",
            "scan.ReedSolomon.POWERS",
            "scan.Samples.SPOTS");

    private static final JavaClasses CAGEWALL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);

    @TestFactory
    Stream<DynamicTest> aPackageUsesOnlyWhatItMay() {
        return PARTS.stream()
                .map(part -> dynamicTest(part.rule(), () -> {
                    classes()
                            .that(belongTo(part.name()))
                            .and(not(areDocuments()))
                            .should()
                            .onlyDependOnClassesThat(areOpenTo(part))
                            .because(part.reason())
                            .allowEmptyShould(true)
                            .check(CAGEWALL);
                    classes()
                            .that(belongTo(part.name()))
                            .and(areDocuments())
                            .should()
                            .onlyDependOnClassesThat(areOpenTo(part.printing()))
                            .because(part.reason())
                            .allowEmptyShould(true)
                            .check(CAGEWALL);
                }));
    }

    @TestFactory
    Stream<DynamicTest> aPackageOfTheTableIsNotEmpty() {
        Set<String> filled = partsWithClasses();
        return PARTS.stream()
                .map(part -> dynamicTest(part.name(), () -> assertThat(filled)
                        .as("an empty package obeys every rule: fill it, or take its row out")
                        .contains(part.name())));
    }

    @Test
    void everyPackageHasItsRow() {
        Set<String> withoutRow = partsWithClasses();
        withoutRow.removeAll(PARTS.stream().map(Part::name).toList());
        assertThat(withoutRow)
                .as("packages without a row in PARTS: say what they may use and why")
                .isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> aLibraryStaysWhereItBelongs() {
        return LIBRARIES.stream()
                .map(library -> dynamicTest(library.rule(), () -> noClasses()
                        .that(not(belongTo(library.parts())))
                        .should()
                        .dependOnClassesThat(
                                resideInAnyPackage(library.packages().toArray(String[]::new)))
                        .because(library.reason())
                        .check(CAGEWALL)));
    }

    @Test
    void onlyTheShellKnowsAFrame() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.cagewall.kiosk.shell..")
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("javax.swing.JFrame")
                .because("there is one window, and one owner of it")
                .check(CAGEWALL);
    }

    @Test
    void nothingOpensASecondWindow() {
        noClasses()
                .should()
                .dependOnClassesThat(areNamed("javax.swing.JDialog", "javax.swing.JWindow", "javax.swing.JOptionPane"))
                .because("a second window can hide behind a full screen: questions are layers inside the one frame")
                .check(CAGEWALL);
    }

    @Test
    void whatDecidesAScreenKnowsNoWidget() {
        noClasses()
                .that()
                .haveNameMatching(".*(Presenter|State|Acts|Words|Job)(\\$.*)?")
                .and()
                .resideOutsideOfPackages("org.cagewall.kiosk.kit..", "org.cagewall.kiosk.theme..")
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage("javax.swing..", "java.awt..", "com.formdev..", "net.miginfocom.."))
                .because("what a screen shows is decided, and tested, without the screen")
                .allowEmptyShould(true)
                .check(CAGEWALL);
    }

    @Test
    void noScreenKnowsAnother() {
        slices().assignedFrom(screens())
                .should()
                .notDependOnEachOther()
                .because("the shell alone knows the way from one screen to the next")
                .allowEmptyShould(true)
                .check(CAGEWALL);
    }

    @Test
    void whatComputesTouchesNoFile() {
        noClasses()
                .that(belongTo(COMPUTING))
                .should()
                .dependOnClassesThat(areFiles())
                .because("the same room and date must give the same answer on every machine")
                .check(CAGEWALL);
    }

    @Test
    void theMomentIsMadeAtTheEdgeAndHandedOn() {
        noClasses()
                .that(describe("are not where moments are made", type -> !isSourceOfNow(type)))
                .should()
                .accessTargetWhere(describe("makes a moment, chance or an identity", ArchitectureTest::isUnrepeatable))
                .because("a day that cannot be set cannot be tested, and what was recorded must be repeatable")
                .check(CAGEWALL);
    }

    @Test
    void onlyTheLanesMakeThreadsAndOnlyTheShellKeepsTime() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName(ROOT + ".desk.Lanes")
                .should()
                .callConstructorWhere(
                        describe("makes a thread", call -> call.getTargetOwner().isAssignableTo(Thread.class)))
                .because("a thread that nobody knows of answers when nobody expects it")
                .check(CAGEWALL);
        noClasses()
                .that()
                .resideOutsideOfPackage("org.cagewall.kiosk.shell..")
                .should()
                .dependOnClassesThat(areNamed(
                        "javax.swing.Timer", "java.util.Timer", "java.util.concurrent.ScheduledExecutorService"))
                .because("what happens by itself is begun and stopped in one place")
                .check(CAGEWALL);
    }

    @Test
    void theKioskRecordsThroughThePenAlone() {
        noClasses()
                .that()
                .resideInAPackage("org.cagewall.kiosk..")
                .and()
                .doNotHaveFullyQualifiedName(ROOT + ".kiosk.shell.Pen")
                .should()
                .callMethodWhere(describe(
                        "records",
                        call -> call.getTargetOwner().getFullName().equals(ROOT + ".desk.Desk")
                                && Set.of("record", "recordTyped", "undo").contains(call.getName())))
                .because("whoever holds the pen stands behind what is recorded, and every answer is followed up")
                .check(CAGEWALL);
    }

    @Test
    void anAnswerIsFollowedUpInAllItsThreeCases() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.cagewall.desk..")
                .should()
                .dependOnClassesThat(areNamed(
                        ROOT + ".desk.Answer$Got", ROOT + ".desk.Answer$Refused", ROOT + ".desk.Answer$Failed"))
                .because("whoever looks for one case forgets the others: a page stays blank")
                .check(CAGEWALL);
    }

    @Test
    void noBareLabelIsShown() {
        noClasses()
                .should()
                .callConstructorWhere(describe(
                        "makes a bare label",
                        call -> call.getTargetOwner().getFullName().equals("javax.swing.JLabel")
                                && !call.getOriginOwner().isAssignableTo("javax.swing.JLabel")))
                .because("a bare label cuts its words and knows no size of letters")
                .check(CAGEWALL);
    }

    @Test
    void nothingSharedCanBeChanged() {
        Set<String> changeable = CAGEWALL.stream()
                .flatMap(type -> type.getFields().stream())
                .filter(field -> field.getModifiers().contains(JavaModifier.STATIC)
                        && !field.getModifiers().contains(JavaModifier.SYNTHETIC))
                .filter(ArchitectureTest::canBeChanged)
                .map(field -> field.getFullName().substring(ROOT.length() + 1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(changeable)
                .as("state that belongs to nobody is changed by everybody, however final its name")
                .isSubsetOf(TABLES);
    }

    /**
     * A final field still holds what can be changed when that is an array or a collection that takes more; what is made
     * of immutable parts alone, a function or a constant of the language, cannot.
     */
    private static boolean canBeChanged(JavaField field) {
        JavaClass type = field.getRawType();
        if (type.isArray() || type.isAssignableTo(java.util.concurrent.atomic.AtomicReference.class)) {
            return true;
        }
        if (type.isAssignableTo(java.util.Collection.class) || type.isAssignableTo(Map.class)) {
            return !isUnmodifiable(valueOf(field));
        }
        return isOurs(type)
                && !type.isEnum()
                && type.getAllFields().stream()
                        .filter(each -> !each.getModifiers().contains(JavaModifier.STATIC))
                        .anyMatch(each -> !each.getModifiers().contains(JavaModifier.FINAL));
    }

    private static boolean isUnmodifiable(Object value) {
        String kind = value.getClass().getName();
        return kind.startsWith("java.util.ImmutableCollections") || kind.startsWith("java.util.Collections$");
    }

    private static Object valueOf(JavaField field) {
        try {
            Field found = field.reflect();
            found.setAccessible(true);
            return found.get(null);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void noFieldIsSharedAndChanges() {
        fields().that()
                .areStatic()
                .should()
                .beFinal()
                .because("state that belongs to nobody is changed by everybody")
                .check(CAGEWALL);
    }

    @Test
    void noPackagesGoInCircles() {
        slices().matching("org.cagewall.(*)..").should().beFreeOfCycles().check(CAGEWALL);
        slices().matching("org.cagewall.kiosk.(*)..")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(CAGEWALL);
    }

    @Test
    void aPackageIsNamedAfterTheTradeOrItsWork() {
        noClasses()
                .should()
                .resideInAnyPackage("..util..", "..common..", "..manager..")
                .because("what has no name of its own has no bounds either")
                .check(CAGEWALL);
    }

    private static Set<String> partsWithClasses() {
        return CAGEWALL.stream().map(ArchitectureTest::partOf).collect(Collectors.toCollection(TreeSet::new));
    }

    private static DescribedPredicate<JavaClass> belongTo(String part) {
        return belongTo(Set.of(part));
    }

    private static DescribedPredicate<JavaClass> belongTo(Set<String> parts) {
        return describe("belong to " + String.join(", ", new TreeSet<>(parts)), type -> parts.contains(partOf(type)));
    }

    /** A feature's own document, such as a pack to print: it alone may put words on paper. */
    private static DescribedPredicate<JavaClass> areDocuments() {
        return describe("are documents", type -> outermost(type).getSimpleName().endsWith("Pdf"));
    }

    private static DescribedPredicate<JavaClass> areOpenTo(Part part) {
        return describe(
                "are open to " + part.name(),
                type -> !isOurs(type)
                        || partOf(type).equals(part.name())
                        || outermost(type).getFullName().equals("org.cagewall.text.Message")
                        || part.mayUse().test(partOf(type)));
    }

    private static DescribedPredicate<JavaClass> areNamed(String... names) {
        return describe(
                "are " + String.join(" or ", names), type -> Set.of(names).contains(type.getFullName()));
    }

    private static DescribedPredicate<JavaClass> areFiles() {
        return describe(
                "are files",
                type -> type.getPackageName().startsWith("java.nio.file")
                        || type.getFullName().startsWith("java.io.File")
                        || type.getFullName().equals("java.io.RandomAccessFile"));
    }

    /** A call or a method reference; a clock or a seed that is handed in makes the answer repeatable. */
    private static boolean isUnrepeatable(JavaAccess<?> access) {
        if (!(access.getTarget() instanceof CodeUnitAccessTarget target)) {
            return false;
        }
        String name = target.getName();
        return switch (target.getOwner().getFullName()) {
            case "java.lang.System" -> name.equals("currentTimeMillis");
            case "java.lang.Math", "java.lang.StrictMath" -> name.equals("random");
            case "java.util.UUID" -> name.equals("randomUUID");
            case "java.util.concurrent.ThreadLocalRandom" -> name.equals("current");
            case "java.security.SecureRandom" -> true;
            case "java.util.Date", "java.util.Random", "java.util.SplittableRandom" ->
                name.equals("<init>") && target.getRawParameterTypes().isEmpty();
            case "java.time.Clock" -> name.startsWith("system") || name.startsWith("tick");
            default ->
                target.getOwner().getPackageName().startsWith("java.time")
                        && name.equals("now")
                        && target.getRawParameterTypes().stream().noneMatch(type -> type.isEquivalentTo(Clock.class));
        };
    }

    private static boolean isSourceOfNow(JavaClass type) {
        String name = outermost(type).getFullName();
        return SOURCES_OF_NOW.stream().anyMatch(source -> name.equals(source) || name.startsWith(source + "."));
    }

    private static SliceAssignment screens() {
        return new SliceAssignment() {
            @Override
            public SliceIdentifier getIdentifierOf(JavaClass type) {
                return screenOf(type).map(SliceIdentifier::of).orElseGet(SliceIdentifier::ignore);
            }

            @Override
            public String getDescription() {
                return "screens";
            }
        };
    }

    private static Optional<String> screenOf(JavaClass type) {
        String below = ROOT + ".kiosk.";
        if (!type.getPackageName().startsWith(below)) {
            return Optional.empty();
        }
        String screen = firstOf(type.getPackageName().substring(below.length()));
        return Optional.of(screen).filter(name -> !BELOW_SCREENS.contains(name));
    }

    /** The first name below the root; empty for a class in the root itself. */
    private static String partOf(JavaClass type) {
        String name = baseOf(type).getPackageName();
        return name.startsWith(ROOT + ".") ? firstOf(name.substring(ROOT.length() + 1)) : "";
    }

    private static String firstOf(String name) {
        return name.split("\\.", 2)[0];
    }

    private static boolean isOurs(JavaClass type) {
        return (baseOf(type).getPackageName() + ".").startsWith(ROOT + ".");
    }

    private static JavaClass outermost(JavaClass type) {
        JavaClass outer = baseOf(type);
        while (outer.getEnclosingClass().isPresent()) {
            outer = outer.getEnclosingClass().get();
        }
        return outer;
    }

    private static JavaClass baseOf(JavaClass type) {
        return type.getBaseComponentType();
    }

    private static Part part(String name) {
        return new Part(name, "", part -> false, "");
    }

    private static Library library(String name) {
        return new Library(name, List.of(), Set.of(), "");
    }

    /** A row: a package, the packages that it may use, and why no more. Every package may use messages. */
    private record Part(String name, String words, Predicate<String> mayUse, String reason) {

        Part uses(String... parts) {
            String said = parts.length == 0 ? "nothing but messages" : String.join(", ", parts);
            return new Part(name, said, Set.of(parts)::contains, reason);
        }

        Part usesAllBut(String... parts) {
            return new Part(
                    name,
                    "all but " + String.join(", ", parts),
                    part -> !Set.of(parts).contains(part),
                    reason);
        }

        Part because(String why) {
            return new Part(name, words, mayUse, why);
        }

        Part printing() {
            return new Part(name, words + ", paper, text", mayUse.or(Set.of("paper", "text")::contains), reason);
        }

        String rule() {
            return name + " uses " + words + ", because " + reason;
        }
    }

    /** A row: a library, the packages that may use it, and why no others. */
    private record Library(String name, List<String> packages, Set<String> parts, String reason) {

        Library of(String... names) {
            return new Library(name, List.of(names), parts, reason);
        }

        Library onlyIn(String... names) {
            return new Library(name, packages, Set.of(names), reason);
        }

        Library because(String why) {
            return new Library(name, packages, parts, why);
        }

        String rule() {
            return name + " only in " + String.join(" and ", new TreeSet<>(parts)) + ", because " + reason;
        }
    }
}
