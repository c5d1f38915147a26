// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Symbol;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import net.objecthunter.exp4j.Expression;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;

/**
 * The printed text of a formula, read by an expression evaluator that knows nothing of the method behind it.
 *
 * <p>The text is taken apart strictly: a name is a symbol that the formula explains or one of the functions, or it is
 * refused; two factors without a sign between them are refused; a symbol that is explained and not used is refused.
 */
final class FormulaText {
  /** The functions of a formula's text, and what the evaluator calls them. */
  private static final Map<String, String> FUNCTIONS = Map.ofEntries(
      Map.entry("sin", "sin"), Map.entry("cos", "cos"), Map.entry("tan", "tan"),
      Map.entry("asin", "asin"), Map.entry("acos", "acos"), Map.entry("atan", "atan"),
      Map.entry("exp", "exp"), Map.entry("ln", "log"), Map.entry("log10", "log10"),
      Map.entry("abs", "abs"), Map.entry("min", "min"), Map.entry("max", "max"),
      Map.entry("sinh", "sinh"), Map.entry("cosh", "cosh"), Map.entry("tanh", "tanh"));

  private static final Map<Character, String> FRACTIONS = Map.of(
      '½', "(1/2)", '¼', "(1/4)", '¾', "(3/4)", '⅓', "(1/3)", '⅔', "(2/3)", '⅛', "(1/8)");

  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  private static final Function MINIMUM = new Function("min", 2) {
    @Override
    public double apply(double... values) {
      return Math.min(values[0], values[1]);
    }
  };

  private static final Function MAXIMUM = new Function("max", 2) {
    @Override
    public double apply(double... values) {
      return Math.max(values[0], values[1]);
    }
  };

  private final String text;
  private final List<Symbol> symbols;
  private final Map<String, String> variables = new HashMap<>();
  private final Set<String> unused = new TreeSet<>();
  private final StringBuilder out = new StringBuilder();
  private final List<Character> open = new ArrayList<>();
  private int at;

  /** Whether what was read last is a complete operand, so that an operator must follow. */
  private boolean operand;

  private FormulaText(Formula formula) {
    this.text = formula.text();
    this.symbols = formula.inputs();
    for (int i = 0; i < symbols.size(); i++) {
      variables.put(symbols.get(i).symbol(), "v" + i);
      unused.add(symbols.get(i).symbol());
    }
  }

  /**
   * Reads a formula's text.
   *
   * @param formula the formula
   * @return an expression with the variables v0, v1 and so on, in the order of the formula's inputs
   * @throws IllegalArgumentException if the text is not one that can be read; the message says where
   */
  static Expression expression(Formula formula) {
    String translated = translate(formula);
    String[] names = new String[formula.inputs().size()];
    for (int i = 0; i < names.length; i++) {
      names[i] = "v" + i;
    }
    return new ExpressionBuilder(translated)
        .implicitMultiplication(false)
        .functions(MINIMUM, MAXIMUM)
        .variables(names)
        .build();
  }

  /** The text in the evaluator's own notation. */
  static String translate(Formula formula) {
    FormulaText reader = new FormulaText(formula);
    while (reader.at < reader.text.length()) {
      reader.token();
    }
    if (!reader.open.isEmpty()) {
      throw reader.refuse("a bracket is not closed");
    }
    if (!reader.operand) {
      throw reader.refuse("the text ends too early");
    }
    if (!reader.unused.isEmpty()) {
      throw reader.refuse("explained and not used: " + reader.unused);
    }
    return reader.out.toString();
  }

  private void token() {
    char c = text.charAt(at);
    if (Character.isWhitespace(c)) {
      at++;
    } else if (symbol()) {
      return;
    } else if (Character.isDigit(c) || c == '.') {
      number();
    } else if (SUPERSCRIPTS.indexOf(c) >= 0 || c == '⁻') {
      power();
    } else if (FRACTIONS.containsKey(c)) {
      beginOperand();
      out.append(FRACTIONS.get(c));
      at++;
      operand = true;
    } else if (c == 'π') {
      beginOperand();
      out.append("pi");
      at++;
      operand = true;
    } else if (c == '√' || c == '∛') {
      beginOperand();
      at++;
      if (at >= text.length() || text.charAt(at) != '(') {
        throw refuse("a root needs brackets around what it is of");
      }
      out.append(c == '√' ? "sqrt" : "cbrt");
    } else if (Character.isLetter(c)) {
      function();
    } else {
      sign(c);
    }
  }

  /** The longest explained symbol that stands here and is not the beginning of a longer name. */
  private boolean symbol() {
    return symbols.stream()
        .map(Symbol::symbol)
        .sorted(Comparator.comparingInt(String::length).reversed())
        .filter(symbol -> text.startsWith(symbol, at) && !continues(at + symbol.length()))
        .findFirst()
        .map(symbol -> {
          beginOperand();
          out.append(variables.get(symbol));
          unused.remove(symbol);
          at += symbol.length();
          operand = true;
          return true;
        })
        .orElse(false);
  }

  private boolean continues(int index) {
    if (index >= text.length()) {
      return false;
    }
    char c = text.charAt(index);
    return Character.isLetterOrDigit(c) && FRACTIONS.get(c) == null && SUPERSCRIPTS.indexOf(c) < 0
        || c == '_' || c == '\'' || c == '′' || Character.getType(c) == Character.NON_SPACING_MARK;
  }

  private void number() {
    beginOperand();
    int end = at;
    while (end < text.length() && (isDigit(end) || text.charAt(end) == '.')) {
      end++;
    }
    if (end < text.length() && text.charAt(end) == 'e' && end + 1 < text.length()) {
      int digits = text.charAt(end + 1) == '-' || text.charAt(end + 1) == '−' ? end + 2 : end + 1;
      if (digits < text.length() && isDigit(digits)) {
        end = digits;
        while (end < text.length() && isDigit(end)) {
          end++;
        }
      }
    }
    out.append(text.substring(at, end).replace('−', '-').replace('e', 'E'));
    at = end;
    operand = true;
  }

  private boolean isDigit(int index) {
    return text.charAt(index) >= '0' && text.charAt(index) <= '9';
  }

  private void power() {
    if (!operand) {
      throw refuse("a power of nothing");
    }
    StringBuilder digits = new StringBuilder();
    while (at < text.length() && (SUPERSCRIPTS.indexOf(text.charAt(at)) >= 0 || text.charAt(at) == '⁻')) {
      char c = text.charAt(at++);
      digits.append(c == '⁻' ? "-" : SUPERSCRIPTS.indexOf(c));
    }
    out.append("^(").append(digits).append(')');
  }

  private void function() {
    int end = at;
    while (end < text.length() && (continues(end))) {
      end++;
    }
    String name = text.substring(at, end);
    String known = FUNCTIONS.get(name);
    if (known == null || end >= text.length() || text.charAt(end) != '(') {
      throw refuse("unknown symbol \"" + name + "\"");
    }
    beginOperand();
    out.append(known);
    at = end;
  }

  private void sign(char c) {
    at++;
    switch (c) {
      case '(' -> {
        beginOperand();
        open.add('(');
        out.append('(');
      }
      case ')' -> close('(');
      case '|' -> {
        if (operand) {
          close('|');
        } else {
          open.add('|');
          out.append("abs(");
        }
      }
      case '+', '-', '−' -> operator(c == '−' ? '-' : c, true);
      case '·', '/', '^', ',' -> operator(c == '·' ? '*' : c, false);
      default -> throw refuse("unknown sign \"" + c + "\"");
    }
  }

  private void close(char bracket) {
    if (!operand || open.isEmpty() || open.get(open.size() - 1) != bracket) {
      throw refuse("a bracket closes that was not opened");
    }
    open.remove(open.size() - 1);
    out.append(')');
  }

  private void operator(char sign, boolean mayLead) {
    if (!operand && !(mayLead && canLead())) {
      throw refuse("an operand is missing");
    }
    out.append(sign);
    operand = false;
  }

  /** A sign may lead at the start and after an opening bracket, as in (−x). */
  private boolean canLead() {
    return out.length() == 0 || out.charAt(out.length() - 1) == '(' || out.charAt(out.length() - 1) == ',';
  }

  private void beginOperand() {
    if (operand) {
      throw refuse("a product needs a sign ·");
    }
  }

  private IllegalArgumentException refuse(String why) {
    return new IllegalArgumentException(
        why + " in \"" + text.substring(0, at) + "▸" + text.substring(at) + "\" of "
            + symbols.stream().map(Symbol::symbol).toList());
  }
}
