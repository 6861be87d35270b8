package org.kitweft;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;

/** Holds the floors of the contributor's guide: each package knows only what it is allowed to. */
@AnalyzeClasses(packagesOf = ArchitectureTest.class, importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest static final ArchRule patternKnowsNobody = only("pattern");
    @ArchTest static final ArchRule kitKnowsNobody = only("kit");
    @ArchTest static final ArchRule fileKnowsNobody = only("file");
    @ArchTest static final ArchRule groove = only("groove", "pattern", "kit");
    @ArchTest static final ArchRule explore = only("explore", "groove", "pattern", "kit");
    @ArchTest static final ArchRule band = only("band", "groove", "pattern", "kit");

    @ArchTest
    static final ArchRule lesson = only("lesson", "file", "band", "groove", "pattern", "kit");

    @ArchTest
    static final ArchRule score =
            only("score", "file", "lesson", "band", "groove", "pattern", "kit");

    @ArchTest
    static final ArchRule sound =
            only("sound", "file", "score", "lesson", "band", "explore", "groove", "pattern", "kit");

    @ArchTest
    static final ArchRule commandLineDoesNotKnowTheWindow =
            noClasses()
                    .that()
                    .resideInAPackage("org.kitweft.cli..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.kitweft.ui..")
                    .allowEmptyShould(true);

    @ArchTest
    static final ArchRule windowDoesNotKnowTheCommandLine =
            noClasses()
                    .that()
                    .resideInAPackage("org.kitweft.ui..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.kitweft.cli..")
                    .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyTheWindowKnowsSwing =
            noClasses()
                    .that()
                    .resideOutsideOfPackage("..ui..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage("javax.swing..", "com.formdev..", "net.miginfocom..")
                    .because(
                            "counting, engraving and playing must run in a test without a display");

    @ArchTest
    static final ArchRule noPackageCycles =
            slices().matching("org.kitweft.(**)").should().beFreeOfCycles();

    /** A package, sub-packages included, may know of our own packages only itself and these. */
    private static ArchRule only(String name, String... others) {
        String[] allowed =
                Stream.concat(Stream.of(name), Stream.of(others))
                        .map(other -> "org.kitweft." + other + "..")
                        .toArray(String[]::new);
        return classes()
                .that()
                .resideInAPackage("org.kitweft." + name + "..")
                .should()
                .onlyDependOnClassesThat(
                        resideOutsideOfPackage("org.kitweft..").or(resideInAnyPackage(allowed)))
                .allowEmptyShould(true);
    }
}
