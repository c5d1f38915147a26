// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Hands null to the public doors of a package: record constructors, static methods, and the methods of all that can be made
 * of samples.
 *
 * <p>A door is reached when samples for all its arguments are found. Then each argument in turn is null, and the door must
 * say so on purpose: the message names the argument and is not the one that the virtual machine makes up ("Cannot invoke …
 * because … is null"). Where the door refuses the samples themselves, which are made without knowing what it allows, any
 * other refusal passes.
 */
public final class NullDoors {
  private static final int DEEPEST = 4;
  private static final Map<Class<?>, Object> PLAIN = Map.ofEntries(
      Map.entry(double.class, 0.5),
      Map.entry(int.class, 3),
      Map.entry(boolean.class, true),
      Map.entry(String.class, "name"),
      Map.entry(Object.class, "name"),
      Map.entry(CharSequence.class, "name"),
      Map.entry(double[].class, new double[] {0.5, 1.0, 1.5}),
      Map.entry(List.class, List.of()),
      Map.entry(Set.class, Set.of()),
      Map.entry(Map.class, Map.of()),
      Map.entry(Optional.class, Optional.empty()),
      Map.entry(OptionalDouble.class, OptionalDouble.empty()),
      Map.entry(NamedUnit.class, Length.METRE));
  /** The interfaces for which a stand-in is made; not those of files and streams, or a test would write. */
  private static final List<String> SPOKEN_TO = List.of("io.github.wingwright.", "java.util.function.", "javax.measure.");
  private final Map<Class<?>, Object> samples = new HashMap<>();
  private final List<String> open = new ArrayList<>();
  private int tried;

  private NullDoors() {
  }

  /**
   * Tries all doors of the packages.
   *
   * @param packages names of packages, those below them included
   * @return what was found
   */
  public static NullDoors of(String... packages) {
    return of(List.of(), packages);
  }

  /**
   * Tries all doors of the packages.
   *
   * @param samples values of types that plain samples cannot make
   * @param packages names of packages, those below them included
   * @return what was found
   */
  public static NullDoors of(List<?> samples, String... packages) {
    NullDoors doors = new NullDoors();
    samples.forEach(one -> doors.samples.put(one.getClass(), one));
    new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages(packages)
        .stream()
        .filter(NullDoors::isReachable)
        .map(JavaClass::reflect)
        .sorted((a, b) -> a.getName().compareTo(b.getName()))
        .forEach(doors::tryAll);
    return doors;
  }

  /** How many arguments were null once. */
  public int tried() {
    return tried;
  }

  /** The arguments that may be null without being named in a message of the library's own. */
  public List<String> open() {
    return List.copyOf(open);
  }

  private static boolean isReachable(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(NullDoors::isReachable).orElse(true);
  }

  private void tryAll(Class<?> type) {
    doors(type).forEach(door -> {
      @Nullable Object[] taken = arguments(door, 0);
      Object owner = door instanceof Method method && !Modifier.isStatic(method.getModifiers()) ? sample(type, 0) : "";
      if (taken == null || owner == null) {
        return;
      }
      boolean takesSamples = !(call(door, owner, taken) instanceof Throwable);
      for (int i = 0; i < taken.length; i++) {
        Parameter parameter = door.getParameters()[i];
        if (!parameter.getType().isPrimitive() && !mayBeNull(parameter)) {
          @Nullable Object[] without = taken.clone();
          without[i] = null;
          tried++;
          Object answer = call(door, owner, without);
          note(takesSamples || isOfTheMachine(answer), answer, type.getName().replace("io.github.wingwright.", "") + "."
              + door.getName().replaceAll(".*[.]", "") + " #" + parameter.getName());
        }
      }
    });
  }

  private void note(boolean counts, Object answer, String argument) {
    if (counts && !isRefusal(answer)) {
      open.add(argument);
    }
  }

  private static boolean isRefusal(Object answer) {
    return (answer instanceof NullPointerException || answer instanceof IllegalArgumentException)
        && !isOfTheMachine(answer);
  }

  /** Without a message (as from {@code List.of}), or with the words that the virtual machine makes up. */
  private static boolean isOfTheMachine(Object answer) {
    return answer instanceof NullPointerException refusal
        && (refusal.getMessage() == null || refusal.getMessage().contains("because "));
  }

  private static boolean mayBeNull(Parameter parameter) {
    return Stream.<AnnotatedElement>of(parameter, parameter.getAnnotatedType())
        .anyMatch(place -> place.isAnnotationPresent(Nullable.class));
  }

  /** Record constructors, and all methods that have a body here. */
  private static Stream<Executable> doors(Class<?> type) {
    Stream<Constructor<?>> constructors = type.isRecord() ? Arrays.stream(type.getConstructors()) : Stream.empty();
    Stream<Method> methods = Arrays.stream(type.getDeclaredMethods())
        .filter(one -> Modifier.isPublic(one.getModifiers()) && !one.isSynthetic() && !one.getName().equals("valueOf"))
        .filter(one -> !Modifier.isAbstract(one.getModifiers()) && !one.getName().equals("equals"));
    return Stream.concat(constructors, methods)
        .filter(one -> one.getParameterCount() > 0)
        .sorted((a, b) -> a.toString().compareTo(b.toString()));
  }

  private static Object call(Executable door, Object owner, @Nullable Object... arguments) {
    try {
      Object answer = door instanceof Constructor<?> constructor
          ? constructor.newInstance(arguments)
          : ((Method) door).invoke(owner, arguments);
      return answer == null ? "" : answer;
    } catch (InvocationTargetException e) {
      return e.getCause();
    } catch (ReflectiveOperationException | IllegalArgumentException e) {
      return new IllegalStateException("door must be open to reflection, was " + door, e);
    }
  }

  private @Nullable Object @Nullable [] arguments(Executable door, int depth) {
    Parameter[] parameters = door.getParameters();
    @Nullable Object[] found = new Object[parameters.length];
    for (int i = 0; i < found.length; i++) {
      found[i] = sample(parameters[i].getType(), depth + 1);
      if (found[i] == null) {
        return null;
      }
    }
    return found;
  }

  private @Nullable Object sample(Class<?> type, int depth) {
    Object known = PLAIN.getOrDefault(type, samples.get(type));
    if (known == null && depth <= DEEPEST) {
      known = made(type, depth);
      if (known != null && !type.isInterface()) {
        samples.put(type, known);
      }
    }
    return known;
  }

  private @Nullable Object made(Class<?> type, int depth) {
    if (type.isEnum()) {
      return type.getEnumConstants()[0];
    }
    if (type.isArray() && !type.getComponentType().isPrimitive()) {
      return Array.newInstance(type.getComponentType(), 0);
    }
    if (type.isSealed()) {
      return firstOf(Arrays.stream(type.getPermittedSubclasses()).map(one -> sample(one, depth)));
    }
    if (type.isInterface()) {
      return SPOKEN_TO.stream().anyMatch(type.getName()::startsWith) ? standIn(type, depth) : null;
    }
    return type.getName().startsWith("io.github.wingwright.")
        ? firstOf(Stream.concat(Stream.of(type.getConstructors()), doorsThatGive(type)).map(door -> {
          Object[] taken = arguments(door, depth);
          return taken == null ? null : call(door, "", taken);
        }).filter(type::isInstance))
        : null;
  }

  private static @Nullable Object firstOf(Stream<? extends @Nullable Object> found) {
    return found.filter(Objects::nonNull).findFirst().orElse(null);
  }

  /** Something that answers with a sample what its type leaves open. */
  private Object standIn(Class<?> type, int depth) {
    return Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, (me, method, arguments) -> method.isDefault()
        ? InvocationHandler.invokeDefault(me, method, arguments)
        : sample(method.getReturnType(), depth + 1));
  }

  private static Stream<Executable> doorsThatGive(Class<?> type) {
    return Arrays.stream(type.getMethods())
        .filter(one -> Modifier.isStatic(one.getModifiers()) && type.isAssignableFrom(one.getReturnType()))
        .sorted((a, b) -> a.getParameterCount() != b.getParameterCount()
            ? a.getParameterCount() - b.getParameterCount() : a.toString().compareTo(b.toString()))
        .map(Executable.class::cast);
  }
}
