package stillroom.formulary;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.time.Clock;
import java.util.Random;

/** The walls of this room: no cycles, no clock, no chance, no network, no database, files only where tables are read. */
@AnalyzeClasses(packages = "stillroom.formulary", importOptions = ImportOption.DoNotIncludeTests.class)
class WallsTest {
    @ArchTest
    static final ArchRule noPackageCycles = SlicesRuleDefinition.slices()
            .matching("stillroom.formulary.(**)")
            .should()
            .beFreeOfCycles();

    @ArchTest
    static final ArchRule noDatabaseAndNoNetwork = noClasses()
            .should()
            .dependOnClassesThat(resideInAPackage("java.sql..")
                    .or(resideInAPackage("javax.sql.."))
                    .or(resideInAPackage("java.net..")));

    @ArchTest
    static final ArchRule noClock = noClasses().should().dependOnClassesThat().areAssignableTo(Clock.class);

    @ArchTest
    static final ArchRule noNow = noClasses()
            .should()
            .callMethodWhere(com.tngtech.archunit.core.domain.JavaCall.Predicates.target(
                            com.tngtech.archunit.core.domain.properties.HasName.Predicates.name("now"))
                    .and(com.tngtech.archunit.core.domain.JavaCall.Predicates.target(
                            com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner(
                                    resideInAPackage("java.time..")))));

    @ArchTest
    static final ArchRule noUnseededRandom = noClasses().should().callConstructor(Random.class);

    @ArchTest
    static final ArchRule noMathRandom = noClasses().should().callMethod(Math.class, "random");

    /** Reading tables of this jar is the one contact with files, and stands in few classes. */
    @ArchTest
    static final ArchRule filesOnlyWhereTablesAreRead = noClasses()
            .that()
            .haveNameNotMatching(
                    "stillroom\\.formulary\\.(reference|constants)\\..*|stillroom\\.formulary\\.rule\\.RuleTables")
            .should()
            .dependOnClassesThat(resideInAPackage("java.io..").or(resideInAPackage("java.nio.file..")));
}
