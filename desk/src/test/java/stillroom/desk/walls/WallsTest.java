package stillroom.desk.walls;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Which package of the desk may know which. The generated templates are left out: they know what they show. */
class WallsTest {
    private static final ImportOption NOT_TEMPLATES = WallsTest::isNoTemplate;
    private static final JavaClasses DESK = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .withImportOption(NOT_TEMPLATES)
            .importPackages("stillroom.desk");

    private static boolean isNoTemplate(Location location) {
        return !location.contains("/desk/templates/");
    }

    /** The folders of the desk that are looked at, so that the rules below cannot hold over nothing. */
    private static Set<String> folders() {
        Set<String> folders = new TreeSet<>();
        for (JavaClass found : DESK) {
            String inside = found.getPackageName().replaceFirst("^stillroom\\.desk\\.?", "");
            folders.add(inside.replaceFirst("\\..*", ""));
        }
        return folders;
    }

    @Test
    void theWholeDeskIsLookedAt() {
        assertThat(folders())
                .contains("shell", "start", "today", "materials", "lots", "workshop")
                .doesNotContain("templates");
    }

    @Test
    void noFolderDependsOnItselfByWayOfAnother() {
        slices().matching("stillroom.desk.(*)..").should().beFreeOfCycles().check(DESK);
    }

    @Test
    void onlyTheStartKnowsAllFolders() {
        noClasses()
                .that()
                .resideOutsideOfPackage("stillroom.desk.start..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("stillroom.desk.start..")
                .check(DESK);
    }

    @Test
    void theFrameKnowsNoPage() {
        noClasses()
                .that()
                .resideInAPackage("stillroom.desk.shell..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(folders().stream()
                        .filter(folder -> !folder.equals("shell"))
                        .map(folder -> "stillroom.desk." + folder + "..")
                        .toArray(String[]::new))
                .check(DESK);
    }

    @Test
    void pagesReachTheDatabaseOnlyByWayOfTheLedger() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAPackage("java.sql..")
                .check(DESK);
    }
}
