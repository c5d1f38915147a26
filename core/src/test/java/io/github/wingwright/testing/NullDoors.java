// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Hands null to the public doors of a package: record constructors, static factories and the setters of specifications.
 *
 * <p>A door counts when samples for all its arguments are found and it takes them. Then each argument in turn is null, and
 * the door must say so on purpose: the message names the argument and is not the one that the virtual machine makes up.
 */
public final class NullDoors {
  private static final int DEEPEST = 4;
  private final Map<Class<?>, Object> samples = new HashMap<>();
  private final List<String> open = new ArrayList<>();
  private final List<String> quiet = new ArrayList<>();
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
    NullDoors doors = new NullDoors();
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

  /** Those of them that take null without any exception, so that it turns up somewhere else. */
  public List<String> quiet() {
    return List.copyOf(quiet);
  }

  private static boolean isReachable(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(NullDoors::isReachable).orElse(true);
  }

  private void tryAll(Class<?> type) {
    doors(type).forEach(door -> {
      @Nullable Object[] taken = arguments(door, 0);
      Object owner = door instanceof Method method && !Modifier.isStatic(method.getModifiers()) ? sample(type, 0) : "";
      if (taken == null || owner == null || call(door, owner, taken) instanceof Throwable) {
        return;
      }
      for (int i = 0; i < taken.length; i++) {
        Parameter parameter = door.getParameters()[i];
        if (!parameter.getType().isPrimitive() && !mayBeNull(parameter)) {
          @Nullable Object[] without = taken.clone();
          without[i] = null;
          tried++;
          note(call(door, owner, without), type.getName().replace("io.github.wingwright.", "") + "."
              + door.getName().replaceAll(".*[.]", "") + " #" + parameter.getName());
        }
      }
    });
  }

  private void note(Object answer, String argument) {
    if (!isRefusal(answer)) {
      open.add(argument);
    }
    if (!(answer instanceof Throwable)) {
      quiet.add(argument);
    }
  }

  private static boolean isRefusal(Object answer) {
    return (answer instanceof NullPointerException || answer instanceof IllegalArgumentException)
        && ((Throwable) answer).getMessage() != null
        && !((Throwable) answer).getMessage().contains("because");
  }

  private static boolean mayBeNull(Parameter parameter) {
    return Stream.<AnnotatedElement>of(parameter, parameter.getAnnotatedType())
        .anyMatch(place -> place.isAnnotationPresent(Nullable.class));
  }

  /** Record constructors, static methods, and methods that give the type they belong to. */
  private static Stream<Executable> doors(Class<?> type) {
    Stream<Constructor<?>> constructors = type.isRecord() ? Arrays.stream(type.getConstructors()) : Stream.empty();
    Stream<Method> methods = Arrays.stream(type.getDeclaredMethods())
        .filter(one -> Modifier.isPublic(one.getModifiers()) && !one.isSynthetic() && !one.getName().equals("valueOf"))
        .filter(one -> Modifier.isStatic(one.getModifiers())
            || one.getReturnType() == type && !Modifier.isAbstract(one.getModifiers()));
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
    Object plain = plain(type);
    if (plain != null || depth > DEEPEST || !type.getName().startsWith("io.github.wingwright.")) {
      return plain;
    }
    Object known = samples.get(type);
    if (known == null) {
      known = Stream.concat(Stream.of(type.getConstructors()), doorsThatGive(type))
          .map(door -> {
            Object[] taken = arguments(door, depth);
            return taken == null ? new IllegalStateException() : call(door, "", taken);
          })
          .filter(type::isInstance)
          .findFirst()
          .orElse(null);
      if (known != null) {
        samples.put(type, known);
      }
    }
    return known;
  }

  private static Stream<Executable> doorsThatGive(Class<?> type) {
    return Arrays.stream(type.getMethods())
        .filter(one -> Modifier.isStatic(one.getModifiers()) && type.isAssignableFrom(one.getReturnType()))
        .sorted((a, b) -> a.getParameterCount() != b.getParameterCount()
            ? a.getParameterCount() - b.getParameterCount() : a.toString().compareTo(b.toString()))
        .map(Executable.class::cast);
  }

  private static @Nullable Object plain(Class<?> type) {
    if (type.isEnum()) {
      return type.getEnumConstants()[0];
    }
    return type == double.class ? (Object) 0.5
        : type == int.class ? (Object) 3
        : type == boolean.class ? (Object) true
        : type == String.class || type == Object.class || type == CharSequence.class ? "name"
        : type == List.class ? List.of()
        : type == Optional.class ? Optional.empty()
        : type == OptionalDouble.class ? OptionalDouble.empty()
        : null;
  }
}
