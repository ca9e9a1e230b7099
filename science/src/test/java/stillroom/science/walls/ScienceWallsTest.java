package stillroom.science.walls;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What this room may not know. */
@AnalyzeClasses(packages = "stillroom.science", importOptions = ImportOption.DoNotIncludeTests.class)
class ScienceWallsTest {

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("stillroom.science.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule NO_DATABASES_FILES_NETWORKS = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.sql..", "java.io", "java.nio.file..", "java.net..", "javax.swing..", "java.awt..");

    @ArchTest
    static final ArchRule NO_OTHER_ROOMS = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("stillroom.formulary..", "stillroom.ledger..", "stillroom.desk..");

    @ArchTest
    static final ArchRule NO_CLOCKS = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(java.time.Clock.class)
            .orShould()
            .accessTargetWhere(clockOrUnseededRandom());

    private static DescribedPredicate<JavaAccess<?>> clockOrUnseededRandom() {
        return DescribedPredicate.describe("reads the time, or draws random numbers without a seed", access -> {
            String owner = access.getTargetOwner().getName();
            String name = access.getTarget().getName();
            boolean time = (owner.startsWith("java.time.") && name.equals("now"))
                    || (owner.equals("java.lang.System")
                            && (name.equals("currentTimeMillis") || name.equals("nanoTime")));
            boolean unseeded = (owner.equals("java.util.Random") || owner.equals("java.util.SplittableRandom"))
                    && name.equals("<init>")
                    && access.getTarget().getFullName().endsWith("<init>()");
            boolean hidden = (owner.equals("java.lang.Math") && name.equals("random"))
                    || owner.equals("java.util.concurrent.ThreadLocalRandom")
                    || owner.equals("java.security.SecureRandom");
            return time || unseeded || hidden;
        });
    }
}
