// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.StringJoiner;

/**
 * A formula as it is printed, bound once to the plain static method that computes it.
 *
 * <pre>{@code
 * public static final Formula DYNAMIC_PRESSURE =
 *     Formula.named("dynamic pressure")
 *         .gives("q", Pressure.PASCAL)
 *         .as("½·ρ·V²")
 *         .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.001, 2)
 *         .where("V", "airspeed", Speed.METRE_PER_SECOND, 0, 100)
 *         .from(Source.DEFINITION)
 *         .computedBy(Air::dynamicPressure);
 * }</pre>
 *
 * <p>The text is plain Unicode: {@code ·} for every product, {@code ²} or {@code ^} for powers, {@code √(…)},
 * {@code ∛(…)}, {@code |…|}, {@code π}, {@code ½}, and the functions sin, cos, tan, asin, acos, atan, exp, ln, log10,
 * abs, min, max. A test evaluates the text of every formula of the library with an independent evaluator and compares it
 * with the method.
 */
public final class Formula {
  private final String name;
  private final String symbol;
  private final NamedUnit<?> unit;
  private final String text;
  private final List<Symbol> inputs;
  private final Source source;
  private final Kernel kernel;

  private Formula(Definition definition, Kernel kernel) {
    this.name = definition.name;
    this.symbol = definition.symbol;
    this.unit = definition.unit;
    this.text = definition.text;
    this.inputs = List.copyOf(definition.inputs);
    this.source = definition.source;
    this.kernel = kernel;
  }

  /**
   * Begins a definition.
   *
   * @param name what the formula gives, in words
   * @return the definition, to be completed by {@code computedBy}
   */
  public static Definition named(String name) {
    Objects.requireNonNull(name, "name");
    return new Definition(name);
  }

  /**
   * Computes the formula.
   *
   * @param values the inputs in the order of {@link #inputs()} [SI]
   * @return the result [SI]
   * @throws IllegalArgumentException if there are more or fewer values than inputs
   */
  public double evaluate(double... values) {
    checkCount(values);
    return kernel.compute(values);
  }

  private void checkCount(double[] values) {
    if (values.length != inputs.size()) {
      throw new IllegalArgumentException(
          name + " needs " + inputs.size() + " values " + symbols() + ", got " + values.length);
    }
  }

  private String symbols() {
    StringJoiner symbols = new StringJoiner(", ", "(", ")");
    inputs.forEach(input -> symbols.add(input.symbol()));
    return symbols.toString();
  }

  /**
   * Says which inputs lie where the formula is not valid.
   *
   * @param values the inputs in the order of {@link #inputs()} [SI]
   * @return a finding for each input outside its domain
   * @throws IllegalArgumentException if there are more or fewer values than inputs
   */
  public List<Finding> outsideDomain(double... values) {
    checkCount(values);
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      Symbol input = inputs.get(i);
      if (!input.domain().contains(values[i])) {
        findings.add(
            Finding.of(
                Severity.CAUTION,
                name,
                input.meaning() + " is outside the range for which the formula " + this + " is stated.",
                values[i],
                input.domain(),
                input.unit(),
                source));
      }
    }
    return findings;
  }

  /**
   * What the formula gives, in words.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * The symbol of the result.
   *
   * @return for example {@code "q"}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * The coherent SI unit of the result.
   *
   * @return the unit
   */
  public NamedUnit<?> unit() {
    return unit;
  }

  /**
   * The right-hand side as it is printed.
   *
   * @return for example {@code "½·ρ·V²"}
   */
  public String text() {
    return text;
  }

  /**
   * The inputs in the order of the kernel's parameters.
   *
   * @return the symbols
   */
  public List<Symbol> inputs() {
    return inputs;
  }

  /**
   * Where the formula comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  @Override
  public String toString() {
    return symbol + " = " + text;
  }

  /** A formula being written down; used once, where the constant is declared. */
  public static final class Definition {
    private final String name;
    private String symbol = "";
    private NamedUnit<?> unit = NamedUnit.NUMBER;
    private String text = "";
    private final List<Symbol> inputs = new ArrayList<>();
    private Source source = Source.DEFINITION;

    private Definition(String name) {
      this.name = name;
    }

    /**
     * States the result.
     *
     * @param resultSymbol letter of the textbook
     * @param resultUnit coherent SI unit
     * @return this definition
     */
    public Definition gives(String resultSymbol, NamedUnit<?> resultUnit) {
      this.symbol = resultSymbol;
      this.unit = resultUnit;
      return this;
    }

    /**
     * States a result without dimension.
     *
     * @param resultSymbol letter of the textbook
     * @return this definition
     */
    public Definition gives(String resultSymbol) {
      return gives(resultSymbol, NamedUnit.NUMBER);
    }

    /**
     * States the right-hand side.
     *
     * @param rightHandSide the text to print
     * @return this definition
     */
    public Definition as(String rightHandSide) {
      this.text = rightHandSide;
      return this;
    }

    /**
     * Explains the next input.
     *
     * @param inputSymbol letter of the textbook
     * @param meaning what it stands for
     * @param inputUnit coherent SI unit
     * @param lower lower end of validity [SI]
     * @param upper upper end of validity [SI]
     * @return this definition
     */
    public Definition where(
        String inputSymbol, String meaning, NamedUnit<?> inputUnit, double lower, double upper) {
      for (Symbol earlier : inputs) {
        if (earlier.symbol().equals(inputSymbol)) {
          throw new IllegalArgumentException(
              "each symbol of " + name + " must stand for one thing, " + inputSymbol + " stands for " + earlier.meaning()
                  + " and for " + meaning);
        }
      }
      inputs.add(new Symbol(inputSymbol, meaning, inputUnit, Interval.between(lower, upper)));
      return this;
    }

    /**
     * Explains the next input, a plain number.
     *
     * @param inputSymbol letter of the textbook
     * @param meaning what it stands for
     * @param lower lower end of validity
     * @param upper upper end of validity
     * @return this definition
     */
    public Definition where(String inputSymbol, String meaning, double lower, double upper) {
      return where(inputSymbol, meaning, NamedUnit.NUMBER, lower, upper);
    }

    /**
     * States the source.
     *
     * @param where author, title, edition, equation
     * @return this definition
     */
    public Definition from(Source where) {
      this.source = where;
      return this;
    }

    /**
     * Binds a method of one input.
     *
     * @param method the kernel
     * @return the formula
     */
    public Formula computedBy(Kernel.Of1 method) {
      return bind(1, v -> method.compute(v[0]));
    }

    /**
     * Binds a method of two inputs.
     *
     * @param method the kernel
     * @return the formula
     */
    public Formula computedBy(Kernel.Of2 method) {
      return bind(2, v -> method.compute(v[0], v[1]));
    }

    /**
     * Binds a method of three inputs.
     *
     * @param method the kernel
     * @return the formula
     */
    public Formula computedBy(Kernel.Of3 method) {
      return bind(3, v -> method.compute(v[0], v[1], v[2]));
    }

    /**
     * Binds a method of four inputs.
     *
     * @param method the kernel
     * @return the formula
     */
    public Formula computedBy(Kernel.Of4 method) {
      return bind(4, v -> method.compute(v[0], v[1], v[2], v[3]));
    }

    /**
     * Binds a method of five inputs.
     *
     * @param method the kernel
     * @return the formula
     */
    public Formula computedBy(Kernel.Of5 method) {
      return bind(5, v -> method.compute(v[0], v[1], v[2], v[3], v[4]));
    }

    /**
     * Binds a method of six inputs.
     *
     * @param method the kernel
     * @return the formula
     */
    public Formula computedBy(Kernel.Of6 method) {
      return bind(6, v -> method.compute(v[0], v[1], v[2], v[3], v[4], v[5]));
    }

    /**
     * Binds a method of seven inputs.
     *
     * @param method the kernel
     * @return the formula
     */
    public Formula computedBy(Kernel.Of7 method) {
      return bind(7, v -> method.compute(v[0], v[1], v[2], v[3], v[4], v[5], v[6]));
    }

    /**
     * Binds a method of eight inputs.
     *
     * @param method the kernel
     * @return the formula
     */
    public Formula computedBy(Kernel.Of8 method) {
      return bind(8, v -> method.compute(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7]));
    }

    private Formula bind(int arity, Kernel kernel) {
      if (inputs.size() != arity || symbol.isEmpty() || text.isEmpty()) {
        throw new IllegalStateException(
            name + " needs a symbol, a text and " + arity + " explained inputs, has " + inputs.size());
      }
      return new Formula(this, kernel);
    }
  }
}
