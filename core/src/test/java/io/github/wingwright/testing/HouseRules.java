// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noCodeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;

/** What holds for every class of the library modules core, airfoils and stability. */
public final class HouseRules {
  private static final String COMMONS_MATH = "org.apache.commons.math3";

  private static final String CONSTRUCTOR = JavaConstructor.CONSTRUCTOR_NAME;

  private static final Set<String> FORMATTING_CLASSES =
      Set.of("java.lang.String", "java.util.Formatter", "java.io.PrintStream", "java.io.PrintWriter");

  @ArchTest
  public static final ArchRule UNITS_OF_OTHERS_STAY_IN_QUANTITY = noClasses()
      .that().resideOutsideOfPackage("io.github.wingwright.core.quantity..")
      .should().dependOnClassesThat()
      .resideInAnyPackage("javax.measure..", "tech.units..", "tech.uom..", "si.uom..", "systems.uom..")
      .because("core.quantity is the only bridge to JSR-385")
      .allowEmptyShould(true);

  @ArchTest
  public static final ArchRule COMMONS_MATH_STAYS_BEHIND_NUMERICS_IN_CORE = noClasses()
      .that().resideInAPackage("io.github.wingwright.core..")
      .and().resideOutsideOfPackage("io.github.wingwright.core.numerics..")
      .should().dependOnClassesThat().resideInAPackage(COMMONS_MATH + "..")
      .allowEmptyShould(true);

  @ArchTest
  public static final ArchRule COMMONS_MATH_IS_IN_NO_PUBLIC_SIGNATURE = noCodeUnits()
      .that(described("are public or protected in a public class", HouseRules::isVisible))
      .should(haveInSignature(COMMONS_MATH));

  @ArchTest
  public static final ArchRule NO_DESKTOP = noClasses()
      .should().dependOnClassesThat()
      .resideInAnyPackage("java.awt..", "java.beans..", "javax.swing..", "javax.imageio..", "javax.print..")
      .because("a library must run where there is no java.desktop module");

  @ArchTest
  public static final ArchRule NO_OUTPUT_OF_ITS_OWN = GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

  @ArchTest
  public static final ArchRule VISIBLE_FIELDS_ARE_FINAL = fields()
      .that().arePublic().or().areProtected().or().areStatic()
      .should().beFinal()
      .because("everything public is immutable and nothing keeps state between calls")
      .allowEmptyShould(true);

  @ArchTest
  public static final ArchRule NO_VISIBLE_ARRAYS = noFields()
      .that().arePublic().or().areProtected()
      .should().haveRawType(described("an array", JavaClass::isArray))
      .because("the elements of an array can always be changed")
      .allowEmptyShould(true);

  @ArchTest
  public static final ArchRule RANDOMNESS_HAS_A_SEED = noClasses()
      .should().callCodeUnitWhere(target("takes randomness without a seed", HouseRules::isUnseeded))
      .because("the same seed must give the same result");

  @ArchTest
  public static final ArchRule OUTPUT_DOES_NOT_DEPEND_ON_THE_MACHINE = noClasses()
      .should().callCodeUnitWhere(
          target("uses the default locale, time zone, character set or clock", HouseRules::isByDefault))
      .because("the same design must give the same bytes everywhere: pass Locale.ROOT, UTF_8 and so on");

  @ArchTest
  public static final ArchRule EVERY_PACKAGE_IS_NULL_MARKED = classes()
      .should(new ArchCondition<JavaClass>("be in a package with a @NullMarked package-info") {
        @Override
        public void check(JavaClass one, ConditionEvents events) {
          boolean marked = one.getPackage().isAnnotatedWith(NullMarked.class);
          events.add(new SimpleConditionEvent(one, marked,
              one.getName() + (marked ? " is" : " is not") + " in a null-marked package"));
        }
      });

  @ArchTest
  public static final ArchRule NAMES_SAY_WHAT_A_CLASS_IS = noClasses()
      .should().haveNameMatching(".*(Util|Utils|Utility|Utilities|Helper|Helpers|Manager|Managers)([.$].*)?")
      .because("such a name says nothing");

  private HouseRules() {
  }

  private static boolean isUnseeded(CodeUnitCallTarget target) {
    String owner = target.getOwner().getName();
    String name = target.getName();
    boolean bare = target.getRawParameterTypes().isEmpty();
    boolean generator = owner.startsWith(COMMONS_MATH + ".random.")
        || Set.of("java.util.Random", "java.util.SplittableRandom", "java.security.SecureRandom").contains(owner);
    return generator && bare && name.equals(CONSTRUCTOR)
        || owner.equals("java.util.concurrent.ThreadLocalRandom") && name.equals("current")
        || owner.equals("java.lang.Math") && name.equals("random")
        || owner.equals("java.util.UUID") && name.equals("randomUUID")
        || owner.equals("java.util.Collections") && name.equals("shuffle")
            && target.getRawParameterTypes().size() == 1;
  }

  private static boolean isByDefault(CodeUnitCallTarget target) {
    String owner = target.getOwner().getName();
    String name = target.getName();
    boolean bare = target.getRawParameterTypes().isEmpty();
    boolean withLocale = target.getRawParameterTypes().stream().anyMatch(type -> type.isEquivalentTo(Locale.class));
    boolean formats = Set.of("format", "formatted", "printf", "toLowerCase", "toUpperCase").contains(name);
    return FORMATTING_CLASSES.contains(owner) && formats && !withLocale
        || owner.equals("java.text.NumberFormat") && name.startsWith("get") && name.endsWith("Instance")
            && !withLocale
        || owner.equals("java.text.DecimalFormat") && name.equals(CONSTRUCTOR)
            && target.getRawParameterTypes().size() < 2
        || owner.equals("java.lang.String") && name.equals("getBytes") && bare
        || Set.of("java.util.Locale", "java.util.TimeZone").contains(owner) && name.equals("getDefault")
        || owner.equals("java.time.ZoneId") && name.equals("systemDefault")
        || owner.startsWith("java.time.") && name.equals("now")
        || owner.equals("java.lang.System") && name.equals("currentTimeMillis")
        || owner.equals("java.nio.charset.Charset") && name.equals("defaultCharset");
  }

  private static boolean isVisible(JavaCodeUnit unit) {
    Set<JavaModifier> modifiers = unit.getModifiers();
    return unit.getOwner().getModifiers().contains(JavaModifier.PUBLIC)
        && (modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED));
  }

  private static ArchCondition<JavaCodeUnit> haveInSignature(String packageName) {
    return new ArchCondition<>("have a type of " + packageName + " in their signature") {
      @Override
      public void check(JavaCodeUnit unit, ConditionEvents events) {
        boolean found = Stream.of(unit.getRawParameterTypes(), Set.of(unit.getRawReturnType()),
                unit.getExceptionTypes())
            .flatMap(types -> types.stream())
            .anyMatch(type -> type.getBaseComponentType().getPackageName().startsWith(packageName));
        events.add(new SimpleConditionEvent(unit, found, unit.getFullName()));
      }
    };
  }

  private static DescribedPredicate<JavaCall<?>> target(String description, Predicate<CodeUnitCallTarget> predicate) {
    return described(description, call -> predicate.test(call.getTarget()));
  }

  private static <T> DescribedPredicate<T> described(String description, Predicate<? super T> predicate) {
    return DescribedPredicate.describe(description, predicate);
  }
}
