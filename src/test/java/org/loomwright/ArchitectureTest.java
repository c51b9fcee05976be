package org.loomwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;

import jakarta.persistence.Entity;

import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.springframework.data.repository.Repository;
import org.springframework.transaction.annotation.Transactional;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

@AnalyzeClasses(packages = "org.loomwright", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String ROOT = "org.loomwright.";
    private static final String CORE = ROOT + "core.";

    /** What each core package may use besides itself, {@code quantity} and {@code finding}. */
    private static final Map<String, List<String>> CORE_NEIGHBOURS = new HashMap<>();

    static {
        CORE_NEIGHBOURS.put("quantity", List.of());
        CORE_NEIGHBOURS.put("finding", List.of());
        CORE_NEIGHBOURS.put("geometry", List.of());
        CORE_NEIGHBOURS.put("catalogue", List.of());
        CORE_NEIGHBOURS.put("loom", List.of("catalogue"));
        CORE_NEIGHBOURS.put("amendment", List.of("loom", "catalogue"));
        CORE_NEIGHBOURS.put("difference", List.of("loom", "catalogue"));
        CORE_NEIGHBOURS.put("routing", List.of("loom", "catalogue"));
        CORE_NEIGHBOURS.put("bundle", List.of("geometry", "loom", "catalogue", "routing"));
        CORE_NEIGHBOURS.put(
                "electrical", List.of("loom", "catalogue", "amendment", "routing", "bundle"));
        CORE_NEIGHBOURS.put("colour", List.of("loom", "catalogue", "electrical", "routing"));
        CORE_NEIGHBOURS.put(
                "finder", List.of("loom", "catalogue", "electrical", "routing", "colour"));
        CORE_NEIGHBOURS.put(
                "kit",
                List.of("loom", "catalogue", "amendment", "electrical", "routing", "colour"));
        CORE_NEIGHBOURS.put(
                "open", List.of("loom", "catalogue", "amendment", "electrical", "routing"));
        CORE_NEIGHBOURS.put(
                "period",
                List.of("loom", "catalogue", "amendment", "difference", "electrical", "colour"));
        CORE_NEIGHBOURS.put("layout", List.of("geometry", "loom", "bundle"));
        CORE_NEIGHBOURS.put(
                "analysis",
                List.of("geometry", "loom", "catalogue", "amendment", "routing", "bundle"));
        CORE_NEIGHBOURS.put("workorder", List.of());
    }

    @ArchTest
    static final ArchRule coreSeesOnlyJavaAndItself =
            classes()
                    .that()
                    .resideInAPackage(CORE + ".")
                    .should()
                    .onlyDependOnClassesThat(
                            resideInAnyPackage("java..", CORE + ".", "org.jspecify.."));

    @ArchTest
    static final ArchRule corePackagesKeepToTheirNeighbours =
            classes().that().resideInAPackage(CORE + ".").should(keepToNeighbours());

    @ArchTest
    static final ArchRule noCycles = slices().matching(ROOT + "(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule appUsesNoOtherRingPackageThanExchangeAndDocument =
            noClasses()
                    .that()
                    .resideInAPackage(ROOT + "app..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(
                            ROOT + "store..", ROOT + "api..", ROOT + "web..", ROOT + "config..");

    @ArchTest static final ArchRule exchangeUsesOnlyCore = usesOnlyCore("exchange");

    @ArchTest static final ArchRule solverUsesOnlyCore = usesOnlyCore("solver");

    @ArchTest
    static final ArchRule onlyTheSolverKnowsItsLibrary =
            noClasses()
                    .that()
                    .resideOutsideOfPackage(ROOT + "solver..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.ejml..");

    @ArchTest static final ArchRule documentsUseOnlyCore = usesOnlyCore("document");

    @ArchTest
    static final ArchRule apiAndWebSeeNeitherEachOtherNorTheStore =
            noClasses()
                    .that()
                    .resideInAPackage(ROOT + "api..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(ROOT + "web..", ROOT + "store..");

    @ArchTest
    static final ArchRule webSeesNeitherApiNorStore =
            noClasses()
                    .that()
                    .resideInAPackage(ROOT + "web..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(ROOT + "api..", ROOT + "store..");

    @ArchTest
    static final ArchRule entitiesStayInTheStore =
            classes()
                    .that()
                    .areAnnotatedWith(Entity.class)
                    .or()
                    .areAssignableTo(Repository.class)
                    .should()
                    .resideInAPackage(ROOT + "store..")
                    .andShould()
                    .notBePublic();

    @ArchTest
    static final ArchRule onlyConfigReachesTheStore =
            noClasses()
                    .that()
                    .resideOutsideOfPackages(ROOT + "store..", ROOT + "config..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage(ROOT + "store..");

    @ArchTest
    static final ArchRule transactionsBeginInApp =
            noMethods()
                    .that()
                    .areDeclaredInClassesThat()
                    .resideOutsideOfPackage(ROOT + "app..")
                    .should()
                    .beAnnotatedWith(Transactional.class);

    @ArchTest
    static final ArchRule coreReadsNoClockAndNoDefaultLocale =
            noClasses()
                    .that()
                    .resideInAPackage(CORE + ".")
                    .should()
                    .callMethodWhere(
                            DescribedPredicate.describe(
                                    "reads a clock, a default locale or the environment",
                                    call ->
                                            call.getTarget().getName().equals("now")
                                                            && call.getTargetOwner()
                                                                    .getPackageName()
                                                                    .startsWith("java.")
                                                    || call.getTargetOwner()
                                                                    .isEquivalentTo(Locale.class)
                                                            && call.getTarget()
                                                                    .getName()
                                                                    .equals("getDefault")
                                                    || call.getTargetOwner()
                                                                    .isEquivalentTo(System.class)
                                                            && !call.getTarget()
                                                                    .getName()
                                                                    .equals("arraycopy")
                                                    || call.getTargetOwner()
                                                                    .isEquivalentTo(Math.class)
                                                            && call.getTarget()
                                                                    .getName()
                                                                    .equals("random")));

    @ArchTest
    static final ArchRule coreHasNoUnseededRandomness =
            noClasses().that().resideInAPackage(CORE + ".").should().callConstructor(Random.class);

    @ArchTest
    static final ArchRule noFieldInjection =
            noFields()
                    .should()
                    .beAnnotatedWith("org.springframework.beans.factory.annotation.Autowired")
                    .orShould()
                    .beAnnotatedWith("jakarta.inject.Inject")
                    .orShould()
                    .beAnnotatedWith("jakarta.persistence.PersistenceContext");

    @ArchTest
    static final ArchRule noVagueNames =
            noClasses().should().haveNameMatching(".*(Util|Utils|Helper|Manager)");

    @ArchTest
    static final ArchRule noPublicSetters =
            noMethods().that().arePublic().should().haveNameMatching("set[A-Z].*");

    @ArchTest
    static final ArchRule noBareDoublesInCore =
            methods()
                    .that()
                    .arePublic()
                    .and()
                    .areDeclaredInClassesThat()
                    .arePublic()
                    .and()
                    .areDeclaredInClassesThat()
                    .resideInAPackage(CORE + ".")
                    .and()
                    .areDeclaredInClassesThat()
                    .resideOutsideOfPackages(CORE + "geometry..", CORE + "quantity..")
                    .should(notUseBareDoubles())
                    .allowEmptyShould(true);

    @Test
    void everyPackageIsNullMarked() {
        var classes = new ClassFileImporter().importPackages("org.loomwright");
        var packages =
                classes.stream()
                        .map(JavaClass::getPackage)
                        .distinct()
                        .filter(
                                javaPackage ->
                                        javaPackage
                                                .tryGetAnnotationOfType(NullMarked.class)
                                                .isEmpty())
                        .map(javaPackage -> javaPackage.getName())
                        .toList();
        assertThat(packages).as("packages without a null-marked package-info").isEmpty();
    }

    private static ArchRule usesOnlyCore(String ringPackage) {
        String own = ROOT + ringPackage + "..";
        return noClasses()
                .that()
                .resideInAPackage(own)
                .should()
                .dependOnClassesThat(
                        resideInAPackage(ROOT + ".")
                                .and(DescribedPredicate.not(resideInAnyPackage(CORE + ".", own))));
    }

    private static ArchCondition<JavaClass> keepToNeighbours() {
        return new ArchCondition<>("use only the neighbours of their package") {
            @Override
            public void check(JavaClass javaClass, ConditionEvents events) {
                String own = corePackage(javaClass);
                List<String> allowed = CORE_NEIGHBOURS.get(own);
                if (allowed == null) {
                    events.add(
                            SimpleConditionEvent.violated(
                                    javaClass, "core package " + own + " is not in the table"));
                    return;
                }
                javaClass.getDirectDependenciesFromSelf().stream()
                        .map(dependency -> dependency.getTargetClass())
                        .filter(target -> target.getPackageName().startsWith(CORE))
                        .map(ArchitectureTest::corePackage)
                        .filter(used -> !isAllowed(own, used, allowed))
                        .distinct()
                        .forEach(
                                used ->
                                        events.add(
                                                SimpleConditionEvent.violated(
                                                        javaClass,
                                                        javaClass.getName()
                                                                + " uses core package "
                                                                + used)));
            }
        };
    }

    private static boolean isAllowed(String own, String used, List<String> allowed) {
        boolean open = Stream.of("quantity", "finding").anyMatch(used::equals);
        return used.equals(own)
                || allowed.contains(used)
                || (open && !own.equals("quantity") && !own.equals("geometry"));
    }

    private static String corePackage(JavaClass javaClass) {
        return javaClass.getPackageName().substring(CORE.length()).split("\\.", -1)[0];
    }

    private static ArchCondition<JavaMethod> notUseBareDoubles() {
        return new ArchCondition<>("not take or return a bare double") {
            @Override
            public void check(JavaMethod method, ConditionEvents events) {
                boolean bare =
                        Stream.concat(
                                        Stream.of(method.getRawReturnType()),
                                        method.getRawParameterTypes().stream())
                                .anyMatch(type -> type.isEquivalentTo(double.class));
                if (bare && method.getModifiers().contains(JavaModifier.PUBLIC)) {
                    events.add(SimpleConditionEvent.violated(method, method.getFullName()));
                }
            }
        };
    }
}
