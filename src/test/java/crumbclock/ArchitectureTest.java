package crumbclock;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Arrows between packages point one way, and libraries stay where they belong. */
class ArchitectureTest {

    private static final List<String> LAYERS =
            List.of("cli", "app", "search", "bound", "engine", "rules", "methods", "formats", "report", "domain", "units");
    private static final Set<String> CLOCK_CALLS = Set.of("now", "currentTimeMillis", "nanoTime");

    private static JavaClasses classes;

    @BeforeAll
    static void readClasses() {
        classes = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("crumbclock");
    }

    /** Guards all other tests here: a rule about no classes always holds. */
    @ParameterizedTest
    @ValueSource(strings = {"cli", "app", "search", "bound", "engine", "rules", "methods", "formats", "report", "domain",
            "units"})
    void classesOfEachLayerAreSeen(String layer) {
        assertThat(classes.that(resideInAPackage(within(layer)))).isNotEmpty();
    }

    @Test
    void everyClassBelongsToALayer() {
        String[] all = LAYERS.stream().map(ArchitectureTest::within).toArray(String[]::new);

        assertThat(classes.that(DescribedPredicate.not(resideInAnyPackage(all)))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "units,   ''",
        "domain,  units",
        "engine,  domain units",
        "bound,   engine domain units",
        "search,  engine domain units",
        "rules,   domain units",
        "methods, domain units",
        "formats, methods domain units",
        "report,  domain units",
        "app,     search bound engine rules domain units",
        "cli,     app search engine formats report domain units"})
    void layerUsesOnly(String layer, String used) {
        List<String> allowed = Stream.concat(Stream.of(layer), Arrays.stream(used.split(" "))).toList();
        String[] others = LAYERS.stream().filter(one -> !allowed.contains(one)).map(ArchitectureTest::within)
                .toArray(String[]::new);
        if (others.length > 0) {
            noClasses().that().resideInAPackage(within(layer)).should().dependOnClassesThat().resideInAnyPackage(others)
                    .check(classes);
        }
    }

    /** A bound that asked the decoder would be no check on it. */
    @Test
    void boundKnowsTheCompiledProblemAndNothingElseOfTheEngine() {
        noClasses().that().resideInAPackage(within("bound")).should().dependOnClassesThat()
                .resideInAnyPackage(within("engine.book"), within("engine.cost"), within("engine.decode"), within("engine.shelf"))
                .check(classes);
    }

    @ParameterizedTest
    @CsvSource({
        "ai.timefold..,         search rules",
        "com.fasterxml..,       formats",
        "com.networknt..,       formats",
        "org.apache.commons..,  formats",
        "freemarker..,          report",
        "picocli..,             cli",
        "me.tongfei..,          cli"})
    void libraryStaysIn(String library, String layers) {
        String[] home = Arrays.stream(layers.split(" ")).map(ArchitectureTest::within).toArray(String[]::new);

        assertThat(classes.stream().flatMap(one -> one.getDirectDependenciesFromSelf().stream())
                .anyMatch(dependency -> resideInAPackage(library).test(dependency.getTargetClass())))
                .as("%s is used at all", library).isTrue();
        noClasses().that().resideOutsideOfPackages(home).should().dependOnClassesThat().resideInAPackage(library)
                .check(classes);
    }

    @Test
    void packagesFormNoCircle() {
        slices().matching("crumbclock.(**)").should().beFreeOfCycles().check(classes);
    }

    @Test
    void streamsOfTheSystemAreTouchedByTheCommandLineAlone() {
        noClasses().that().resideOutsideOfPackage(within("cli"))
                .should().accessField(System.class, "out").orShould().accessField(System.class, "err")
                .orShould().callMethod(System.class, "exit", int.class)
                .orShould().callMethod(Throwable.class, "printStackTrace").check(classes);
    }

    /** A plan must repeat itself; only a search that ends by the clock looks at it, in one class. */
    @Test
    void clockIsReadByTheCommandLineAndOneClassOfTheSearch() {
        var readers = classes.stream().filter(one -> !resideInAPackage(within("cli")).test(one))
                .filter(one -> one.getMethodCallsFromSelf().stream().anyMatch(ArchitectureTest::readsClock))
                .map(one -> one.getName().replaceFirst("\\$.*", "")).distinct().toList();

        assertThat(readers).hasSizeLessThanOrEqualTo(1).allMatch(name -> name.startsWith("crumbclock.search."));
    }

    @Test
    void chanceIsAlwaysSeeded() {
        noClasses().should().callConstructor(Random.class).orShould().callMethod(Math.class, "random")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.security.SecureRandom").check(classes);
    }

    private static boolean readsClock(JavaAccess<?> call) {
        String owner = call.getTargetOwner().getName();
        return CLOCK_CALLS.contains(call.getName()) && (owner.equals("java.lang.System") || owner.startsWith("java.time."));
    }

    private static String within(String layer) {
        return "crumbclock." + layer + "..";
    }
}
