package crumbclock.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaMethodReference;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Finds rules and wishes without a constraint, and constraints that are not listed or not tested. */
class EveryConstraintIsTestedTest {

    private static final JavaClasses CLASSES = new ClassFileImporter().importPackages("crumbclock.rules");

    @Test
    void should_have_a_constraint_for_every_rule_and_wish() {
        List<String> numbers = new ArrayList<>();
        Stream.of(Rule.values()).forEach(rule -> numbers.add(rule.name()));
        Stream.of(Wish.values()).forEach(wish -> numbers.add(wish.name()));

        assertThat(constraints().stream().map(EveryConstraintIsTestedTest::number).collect(Collectors.toSet()))
                .containsAll(numbers);
    }

    @Test
    void should_list_every_constraint() {
        assertThat(referencedFrom(owner -> owner.getSimpleName().equals("KitchenConstraints")))
                .containsExactlyInAnyOrderElementsOf(constraints());
        assertThat(KitchenConstraints.ALL).hasSameSizeAs(constraints());
    }

    @Test
    void should_test_every_constraint() {
        assertThat(referencedFrom(owner -> owner.getSimpleName().endsWith("Test"))).containsAll(constraints());
    }

    private static Set<String> constraints() {
        return CLASSES.stream().filter(owner -> owner.getSimpleName().matches(".*(Rules|Wishes)"))
                .flatMap(owner -> owner.getMethods().stream())
                .filter(EveryConstraintIsTestedTest::isConstraint)
                .map(method -> method.getOwner().getSimpleName() + "." + method.getName())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean isConstraint(JavaMethod method) {
        return method.getRawReturnType().getSimpleName().equals("Constraint")
                && !method.getModifiers().contains(JavaModifier.PRIVATE)
                && !method.getModifiers().contains(JavaModifier.SYNTHETIC);
    }

    private static Set<String> referencedFrom(Predicate<JavaClass> from) {
        Set<String> constraints = constraints();
        return CLASSES.stream().filter(from)
                .flatMap(owner -> owner.getMethodReferencesFromSelf().stream())
                .map(JavaMethodReference::getTarget)
                .map(target -> target.getOwner().getSimpleName() + "." + target.getName())
                .filter(constraints::contains)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** {@code OvenRules.r09DoorShut} is about R09. */
    private static String number(String constraint) {
        String method = constraint.substring(constraint.indexOf('.') + 1);
        return method.substring(0, 3).toUpperCase(Locale.ROOT);
    }
}
