// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

/** What a formula computes: from its inputs in SI to its result in SI. The nested types are methods of fixed arity. */
@FunctionalInterface
public interface Kernel {
  /**
   * Computes the result.
   *
   * @param values the inputs [SI]
   * @return the result [SI]
   */
  double compute(double[] values);

  /** A method of one input. */
  @FunctionalInterface
  interface Of1 {
    /**
     * Computes the result.
     *
     * @param a input 1 [SI]
     * @return the result [SI]
     */
    double compute(double a);
  }

  /** A method of two inputs. */
  @FunctionalInterface
  interface Of2 {
    /**
     * Computes the result.
     *
     * @param a input 1 [SI]
     * @param b input 2 [SI]
     * @return the result [SI]
     */
    double compute(double a, double b);
  }

  /** A method of three inputs. */
  @FunctionalInterface
  interface Of3 {
    /**
     * Computes the result.
     *
     * @param a input 1 [SI]
     * @param b input 2 [SI]
     * @param c input 3 [SI]
     * @return the result [SI]
     */
    double compute(double a, double b, double c);
  }

  /** A method of four inputs. */
  @FunctionalInterface
  interface Of4 {
    /**
     * Computes the result.
     *
     * @param a input 1 [SI]
     * @param b input 2 [SI]
     * @param c input 3 [SI]
     * @param d input 4 [SI]
     * @return the result [SI]
     */
    double compute(double a, double b, double c, double d);
  }

  /** A method of five inputs. */
  @FunctionalInterface
  interface Of5 {
    /**
     * Computes the result.
     *
     * @param a input 1 [SI]
     * @param b input 2 [SI]
     * @param c input 3 [SI]
     * @param d input 4 [SI]
     * @param e input 5 [SI]
     * @return the result [SI]
     */
    double compute(double a, double b, double c, double d, double e);
  }

  /** A method of six inputs. */
  @FunctionalInterface
  interface Of6 {
    /**
     * Computes the result.
     *
     * @param a input 1 [SI]
     * @param b input 2 [SI]
     * @param c input 3 [SI]
     * @param d input 4 [SI]
     * @param e input 5 [SI]
     * @param f input 6 [SI]
     * @return the result [SI]
     */
    double compute(double a, double b, double c, double d, double e, double f);
  }

  /** A method of seven inputs. */
  @FunctionalInterface
  interface Of7 {
    /**
     * Computes the result.
     *
     * @param a input 1 [SI]
     * @param b input 2 [SI]
     * @param c input 3 [SI]
     * @param d input 4 [SI]
     * @param e input 5 [SI]
     * @param f input 6 [SI]
     * @param g input 7 [SI]
     * @return the result [SI]
     */
    double compute(double a, double b, double c, double d, double e, double f, double g);
  }

  /** A method of eight inputs. */
  @FunctionalInterface
  interface Of8 {
    /**
     * Computes the result.
     *
     * @param a input 1 [SI]
     * @param b input 2 [SI]
     * @param c input 3 [SI]
     * @param d input 4 [SI]
     * @param e input 5 [SI]
     * @param f input 6 [SI]
     * @param g input 7 [SI]
     * @param h input 8 [SI]
     * @return the result [SI]
     */
    double compute(double a, double b, double c, double d, double e, double f, double g, double h);
  }
}
