package reglet.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;

/** Reads manifests and classes against {@code releng/arrows.txt}. */
class ArrowsTest {
    private static Checkout checkout;
    private static Arrows page;
    private static final Map<String, JavaClasses> CLASSES = new LinkedHashMap<>();
    /** Each package for itself: a pattern of names would leave out the one that the others stand below. */
    private static final SliceAssignment PACKAGES = new SliceAssignment() {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            return type.getPackageName().startsWith("reglet.") ? SliceIdentifier.of(type.getPackageName()) : SliceIdentifier.ignore();
        }

        @Override
        public String getDescription() {
            return "packages";
        }
    };

    @BeforeAll
    static void readOnce() throws IOException {
        checkout = Checkout.here();
        page = checkout.arrows();
        for (String bundle : checkout.bundles()) {
            if (checkout.hasSources(bundle)) {
                CLASSES.put(bundle, checkout.classes(bundle));
            }
        }
    }

    @Test
    void everyBundleHasItsLineAndEveryLineItsBundle() throws IOException {
        assertEquals(page.arrows().keySet(), new TreeSet<>(checkout.bundles()));
        page.arrows().values().forEach(used -> assertTrue(page.arrows().keySet().containsAll(used),
            () -> "an unknown bundle among " + used));
    }

    @Test
    void everyBundleWithSourcesWasRead() {
        CLASSES.forEach((bundle, classes) -> assertFalse(classes.isEmpty(), () -> bundle + " has sources but no classes"));
    }

    @Test
    void manifestsKeepToTheArrows() throws IOException {
        for (String bundle : checkout.bundles()) {
            Set<String> used = new TreeSet<>(checkout.named(bundle, "Require-Bundle"));
            used.addAll(checkout.named(bundle, "Import-Package"));
            used.addAll(checkout.named(bundle, "DynamicImport-Package"));
            used.retainAll(page.arrows().keySet());
            assertEquals(page.arrows().get(bundle), used, () -> "the manifest of " + bundle);
        }
    }

    @Test
    void classesKeepToTheArrows() {
        List<String> wrong = new ArrayList<>();
        CLASSES.forEach((bundle, classes) -> {
            for (JavaClass type : classes) {
                for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                    String target = home(dependency.getTargetClass());
                    if (!target.isEmpty() && !target.equals(bundle) && !page.arrows().get(bundle).contains(target)) {
                        wrong.add(bundle + " may not use " + target + ": " + dependency.getDescription());
                    }
                }
            }
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    void aBundleKeepsItsPackagesUnderItsName() {
        CLASSES.forEach((bundle, classes) -> classes.forEach(type -> assertTrue(below(type.getPackageName(), bundle),
            () -> type.getName() + " stands in " + bundle)));
    }

    /** Its packages are steps from a page to what it says, each of which uses only those before it. */
    @Test
    void packagesOfTheReadingFormNoCycle() {
        SlicesRuleDefinition.slices().assignedFrom(PACKAGES).should().beFreeOfCycles().check(CLASSES.get("reglet.reading"));
    }

    @Test
    void packagesOfOneBundleAreNamedByNoOther() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Map.Entry<String, Set<String>> only : page.packages().entrySet()) {
            for (String bundle : checkout.bundles()) {
                if (only.getValue().contains(bundle)) {
                    continue;
                }
                Set<String> named = new TreeSet<>(checkout.named(bundle, "Require-Bundle"));
                named.addAll(checkout.named(bundle, "Import-Package"));
                named.stream().filter(name -> below(name, only.getKey())).forEach(name -> wrong.add("manifest of " + bundle + ": " + name));
            }
            CLASSES.forEach((bundle, classes) -> {
                if (!only.getValue().contains(bundle)) {
                    classes.stream().filter(type -> names(type, only.getKey()))
                        .forEach(type -> wrong.add(type.getName() + ": " + only.getKey()));
                }
            });
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void theRulesAreSeenToNameTheExpressionEngine() {
        assertTrue(CLASSES.get("reglet.rules").stream().anyMatch(type -> names(type, "dev.cel")));
    }

    @Test
    void oneClassWritesFiles() {
        assertEquals(page.acts().get("writes files"), doing(Acts::writesFiles));
    }

    @Test
    void foreignPdfsAreOpenedWhereTheyMayBe() {
        assertEquals(page.acts().get("opens a PDF"), doing(Acts::opensAPdf));
    }

    private static Set<String> doing(Predicate<JavaClass> act) {
        Set<String> found = new TreeSet<>();
        CLASSES.values().forEach(classes -> classes.stream().filter(act).forEach(type -> found.add(outermost(type).getName())));
        return found;
    }

    private static JavaClass outermost(JavaClass type) {
        return type.getEnclosingClass().map(ArrowsTest::outermost).orElse(type);
    }

    private static boolean names(JavaClass type, String root) {
        return type.getDirectDependenciesFromSelf().stream()
            .anyMatch(used -> below(used.getTargetClass().getBaseComponentType().getPackageName(), root));
    }

    /** The bundle that a class stands in; empty for classes that aren't ours. */
    private static String home(JavaClass type) {
        String name = type.getBaseComponentType().getPackageName();
        return page.arrows().keySet().stream().filter(bundle -> below(name, bundle)).findFirst().orElse("");
    }

    private static boolean below(String name, String root) {
        return name.equals(root) || name.startsWith(root + ".");
    }
}
