package stillroom.ledger;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Instant;
import java.time.LocalDate;

/** The walls inside this room. */
@AnalyzeClasses(packages = "stillroom.ledger", importOptions = ImportOption.DoNotIncludeTests.class)
final class WallsTest {
    @ArchTest
    static final ArchRule packagesFormNoCycle =
            slices().matching("stillroom.ledger.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule sqlStaysBehindItsSlice = classes()
            .that()
            .haveSimpleNameEndingWith("Sql")
            .and()
            .doNotHaveSimpleName("Sql")
            .should()
            .bePackagePrivate();

    @ArchTest
    static final ArchRule onlyTheStoreKnowsTheDatabaseDriver = noClasses()
            .that()
            .resideOutsideOfPackage("stillroom.ledger.store")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..", "org.flywaydb..");

    @ArchTest
    static final ArchRule onlyTheWrittenFormKnowsTheJsonLibrary = noClasses()
            .that()
            .resideOutsideOfPackages("stillroom.ledger.json", "stillroom.ledger.exchange", "stillroom.ledger.export")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml..");

    @ArchTest
    static final ArchRule slicesDoNotKnowTheWhole = noClasses()
            .that()
            .resideInAPackage("stillroom.ledger.*..")
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("stillroom.ledger.Ledger");

    @ArchTest
    static final ArchRule nobodyKnowsTheDesk =
            noClasses().should().dependOnClassesThat().resideInAPackage("stillroom.desk..");

    @ArchTest
    static final ArchRule momentsComeFromTheCaller =
            noClasses().should().callMethod(Instant.class, "now").orShould().callMethod(LocalDate.class, "now");
}
