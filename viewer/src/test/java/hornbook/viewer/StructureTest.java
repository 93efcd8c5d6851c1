package hornbook.viewer;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may know whom, over all four modules. There are no exceptions. */
class StructureTest {
    private static final List<String> DOWNWARDS = List.of("viewer", "indexer", "catalogue", "shared");
    private static final int FEWEST_CLASSES = 40;

    private static JavaClasses classes;

    @BeforeAll
    static void read() {
        classes = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("hornbook");
    }

    /** Otherwise everything below could hold because nothing was looked at. */
    @Test
    void enoughClassesWereFound() {
        assertThat(classes.size()).isGreaterThan(FEWEST_CLASSES);
        assertThat(classes).anyMatch(in("viewer")::test).anyMatch(in("shared")::test);
    }

    @ParameterizedTest
    @CsvSource({"shared", "catalogue", "indexer"})
    void modulesKnowOnlyWhatIsBelow(String module) {
        String[] above = DOWNWARDS.subList(0, DOWNWARDS.indexOf(module)).stream()
                .map(name -> "hornbook." + name + "..")
                .toArray(String[]::new);
        noClasses()
                .that(in(module))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(above)
                .allowEmptyShould(true)
                .check(classes);
    }

    @Test
    void noPackagesKnowEachOtherInACircle() {
        SlicesRuleDefinition.slices()
                .assignedFrom(new EachPackage())
                .should()
                .beFreeOfCycles()
                .check(classes);
    }

    @ParameterizedTest(name = "{0} only in {1}")
    @CsvSource({
        "java.sql.., hornbook.shared.store..",
        "org.sqlite.., hornbook.shared.store..",
        "org.apache.lucene.., hornbook.indexer..",
        "javafx.., hornbook.viewer..",
        "picocli.., hornbook.viewer.cli..",
        "org.apache.pdfbox.., hornbook.viewer.paper..",
    })
    void aLibraryIsKnownWhereItIsUsed(String library, String home) {
        noClasses()
                .that()
                .resideOutsideOfPackage(home)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(classes);
    }

    /** A command must not load JavaFX, and what a screen asks must be testable without it. */
    @ParameterizedTest
    @CsvSource({"hornbook.viewer.cli..", "hornbook.viewer.work..", "hornbook.viewer.workshop.."})
    void commandsAndServicesKnowNoJavaFx(String place) {
        noClasses()
                .that()
                .resideInAPackage(place)
                .should()
                .dependOnClassesThat()
                .resideInAPackage("javafx..")
                .allowEmptyShould(true)
                .check(classes);
    }

    private static DescribedPredicate<JavaClass> in(String module) {
        return JavaClass.Predicates.resideInAPackage("hornbook." + module + "..");
    }

    private static final class EachPackage implements SliceAssignment {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass javaClass) {
            return SliceIdentifier.of(javaClass.getPackageName());
        }

        @Override
        public String getDescription() {
            return "each package";
        }
    }
}
