// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.MomentOfInertia;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What an aircraft weighs and where: its items, their total, the centre of gravity and the moments of inertia about it.
 *
 * <pre>{@code
 * m = Σ m_i        x_cg = Σ m_i·x_i/m        I_yy = Σ (I_yy,i + m_i·((x_i − x_cg)² + (z_i − z_cg)²))
 * }</pre>
 *
 * <p>The numbers are those of the likely masses; {@link #massBand()}, {@link #centreOfGravityBand()} and {@link #rollInertiaBand()}
 * with its like say how far they may be off. The workings ({@link #massStep()} and its like) give them bit for bit.
 */
public final class MassStatement implements Serializable {
  private static final long serialVersionUID = 1L;

  /** What one item adds to the place of the centre of gravity. */
  public static final Formula SHARE =
      Formula.named("share in the centre of gravity")
          .gives("Δx", Length.METRE)
          .as("m_i·x_i / m")
          .where("m_i", "mass of the item", Mass.KILOGRAM, 0, 1e6)
          .where("x_i", "place of the item", Length.METRE, -100, 100)
          .where("m", "total mass", Mass.KILOGRAM, 1e-6, 1e7)
          .from(Source.DEFINITION)
          .computedBy(MassStatement::share);

  /** How far an item sits from the centre of gravity. */
  public static final Formula DISTANCE =
      Formula.named("distance from the centre of gravity")
          .gives("a", Length.METRE)
          .as("x_i − x_cg")
          .where("x_i", "place of the item", Length.METRE, -100, 100)
          .where("x_cg", "centre of gravity", Length.METRE, -100, 100)
          .from(Source.DEFINITION)
          .computedBy(MassStatement::distance);

  private final List<MassItem> items;
  private final double mass;
  private final double x;
  private final double y;
  private final double z;

  private MassStatement(List<MassItem> items) {
    if (items.isEmpty()) {
      throw new IllegalArgumentException("a mass statement needs at least one item, got none");
    }
    Set<String> names = new HashSet<>();
    double total = 0.0;
    for (MassItem item : items) {
      if (!names.add(item.name())) {
        throw new IllegalArgumentException("names of mass items must differ, \"" + item.name() + "\" came twice");
      }
      total += item.mass().si();
    }
    if (!(total > 0.0 && total < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("total mass must be positive, was " + Mass.KILOGRAM.format(total, 6));
    }
    this.items = List.copyOf(items);
    this.mass = total;
    double sumX = 0.0;
    double sumY = 0.0;
    double sumZ = 0.0;
    for (MassItem item : items) {
      double m = item.mass().si();
      sumX += share(m, item.centreOfGravity().x().si(), total);
      sumY += share(m, item.centreOfGravity().y().si(), total);
      sumZ += share(m, item.centreOfGravity().z().si(), total);
    }
    this.x = sumX;
    this.y = sumY;
    this.z = sumZ;
  }

  /**
   * A statement.
   *
   * @param items at least one item, with names that differ
   * @return the statement
   */
  public static MassStatement of(List<MassItem> items) {
    Objects.requireNonNull(items, "items");
    return new MassStatement(items);
  }

  /**
   * A statement.
   *
   * @param items at least one item, with names that differ
   * @return the statement
   */
  public static MassStatement of(MassItem... items) {
    Objects.requireNonNull(items, "items");
    return new MassStatement(Arrays.asList(items));
  }

  /**
   * What one item adds to the place of the centre of gravity.
   *
   * <pre>{@code Δx = m_i·x_i/m}</pre>
   *
   * @param itemMass mass of the item m_i [kg]
   * @param place place of the item x_i [m]
   * @param totalMass total mass m [kg], positive
   * @return Δx [m]; 10 g of 50 g at 200 mm add 40 mm
   */
  public static double share(double itemMass, double place, double totalMass) {
    return itemMass * place / totalMass;
  }

  /**
   * How far an item sits from the centre of gravity.
   *
   * <pre>{@code a = x_i − x_cg}</pre>
   *
   * @param place place of the item x_i [m]
   * @param centreOfGravity centre of gravity x_cg [m]
   * @return a [m]
   */
  public static double distance(double place, double centreOfGravity) {
    return place - centreOfGravity;
  }

  /**
   * The statement with one more item; an item of the same name is replaced where it stands.
   *
   * @param item the item
   * @return a new statement
   */
  public MassStatement with(MassItem item) {
    Objects.requireNonNull(item, "item");
    List<MassItem> changed = new ArrayList<>(items);
    for (int i = 0; i < changed.size(); i++) {
      if (changed.get(i).name().equals(item.name())) {
        changed.set(i, item);
        return new MassStatement(changed);
      }
    }
    changed.add(item);
    return new MassStatement(changed);
  }

  /**
   * The statement without an item.
   *
   * @param name name of the item
   * @return a new statement
   * @throws IllegalArgumentException if there is no such item, or no other
   */
  public MassStatement without(String name) {
    List<MassItem> rest = items.stream().filter(item -> !item.name().equals(name)).toList();
    if (rest.size() == items.size()) {
      throw new IllegalArgumentException(
          "item must be one of " + items.stream().map(MassItem::name).toList() + ", was \"" + name + "\"");
    }
    return new MassStatement(rest);
  }

  /**
   * The items.
   *
   * @return in the order they were given
   */
  public List<MassItem> items() {
    return items;
  }

  /**
   * An item by its name.
   *
   * @param name its name
   * @return the item, empty if there is none
   */
  public Optional<MassItem> item(String name) {
    Objects.requireNonNull(name, "name");
    return items.stream().filter(item -> item.name().equals(name)).findFirst();
  }

  /**
   * The total mass.
   *
   * @return m
   */
  public Mass mass() {
    return Mass.kilograms(mass);
  }

  /**
   * The total mass with its range: all items at their least, all at their greatest.
   *
   * @return the band
   */
  public QuantityBand<Mass> massBand() {
    Band sum = Band.exactly(0.0);
    for (MassItem item : items) {
      sum = sum.plus(item.massBand().si());
    }
    return QuantityBand.of(new Band(Math.min(sum.low(), mass), mass, Math.max(sum.high(), mass)), Mass::kilograms);
  }

  /**
   * The centre of gravity.
   *
   * @return the place, for the likely masses
   */
  public Placement centreOfGravity() {
    return new Placement(Length.metres(x), Length.metres(y), Length.metres(z));
  }

  /**
   * How far ahead and how far aft the centre of gravity can lie when each mass takes any value in its range: exact, because
   * the extremes are reached with all items ahead of some place at one end of their range and all aft of it at the other.
   *
   * @return the band of x_cg
   */
  public QuantityBand<Length> centreOfGravityBand() {
    return QuantityBand.of(new MassBands(this).centreOfGravity(), Length::metres);
  }

  /**
   * Moments and products of inertia about the centre of gravity.
   *
   * @return the inertia, for the likely masses
   */
  public Inertia inertia() {
    double[] sum = new double[6];
    for (MassItem item : items) {
      double m = item.mass().si();
      double a = distance(item.centreOfGravity().x().si(), x);
      double b = distance(item.centreOfGravity().y().si(), y);
      double c = distance(item.centreOfGravity().z().si(), z);
      Inertia own = item.ownInertia();
      sum[0] += Inertia.aboutParallelAxis(own.roll().si(), m, b, c);
      sum[1] += Inertia.aboutParallelAxis(own.pitch().si(), m, a, c);
      sum[2] += Inertia.aboutParallelAxis(own.yaw().si(), m, a, b);
      sum[3] += Inertia.aboutParallelAxes(own.productXy().si(), m, a, b);
      sum[4] += Inertia.aboutParallelAxes(own.productXz().si(), m, a, c);
      sum[5] += Inertia.aboutParallelAxes(own.productYz().si(), m, b, c);
    }
    return new Inertia(moment(sum[0]), moment(sum[1]), moment(sum[2]), moment(sum[3]), moment(sum[4]), moment(sum[5]));
  }

  /**
   * How small and how great the moment of inertia in roll can be when each mass takes any value in its range.
   *
   * <p>Exact: a moment about the centre of gravity grows with each mass, because a little more of it at a distance a adds
   * a²·dm and moves the centre to where the moment is least, which adds nothing to first order. So the least has all items at
   * their least, the greatest all at their greatest. An item's own inertia goes with its mass.
   *
   * @return the band of I_xx
   */
  public QuantityBand<MomentOfInertia> rollInertiaBand() {
    return QuantityBand.of(new MassBands(this).inertia(Inertia::roll), MomentOfInertia::kilogramSquareMetres);
  }

  /**
   * How small and how great the moment of inertia in pitch can be, as {@link #rollInertiaBand()}.
   *
   * @return the band of I_yy
   */
  public QuantityBand<MomentOfInertia> pitchInertiaBand() {
    return QuantityBand.of(new MassBands(this).inertia(Inertia::pitch), MomentOfInertia::kilogramSquareMetres);
  }

  /**
   * How small and how great the moment of inertia in yaw can be, as {@link #rollInertiaBand()}.
   *
   * @return the band of I_zz
   */
  public QuantityBand<MomentOfInertia> yawInertiaBand() {
    return QuantityBand.of(new MassBands(this).inertia(Inertia::yaw), MomentOfInertia::kilogramSquareMetres);
  }

  private static MomentOfInertia moment(double si) {
    return MomentOfInertia.kilogramSquareMetres(si);
  }

  /**
   * How the total mass comes about: the table of the items.
   *
   * @return the step
   */
  public Step massStep() {
    return massStep(Map.of());
  }

  /**
   * How the total mass comes about, down to how the mass of an item does.
   *
   * @param origins by the name of an item the step that gave its mass; items without one count as given
   * @return the step
   * @throws IllegalArgumentException if an origin does not give the mass of its item, or there is no such item
   */
  public Step massStep(Map<String, Step> origins) {
    Objects.requireNonNull(origins, "origins");
    return new MassSteps(this).total(origins);
  }

  /**
   * How the place of the centre of gravity comes about.
   *
   * @param total the step of the total mass, from {@link #massStep(Map)}
   * @return the step of x_cg
   */
  public Step centreOfGravityStep(Step total) {
    Objects.requireNonNull(total, "total");
    return new MassSteps(this).centreOfGravity(total);
  }

  /**
   * How the moment of inertia in pitch comes about.
   *
   * @param total the step of the total mass
   * @return the step of I_yy
   */
  public Step pitchInertiaStep(Step total) {
    Objects.requireNonNull(total, "total");
    return new MassSteps(this).pitchInertia(total);
  }

  /**
   * How the moment of inertia in roll comes about.
   *
   * @param total the step of the total mass
   * @return the step of I_xx
   */
  public Step rollInertiaStep(Step total) {
    Objects.requireNonNull(total, "total");
    return new MassSteps(this).rollInertia(total);
  }

  /**
   * How the moment of inertia in yaw comes about.
   *
   * @param total the step of the total mass
   * @return the step of I_zz
   */
  public Step yawInertiaStep(Step total) {
    Objects.requireNonNull(total, "total");
    return new MassSteps(this).yawInertia(total);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MassStatement that && items.equals(that.items);
  }

  @Override
  public int hashCode() {
    return items.hashCode();
  }

  /**
   * The statement as a table in units of one's choice.
   *
   * @param massUnit unit of the masses
   * @param lengthUnit unit of the places
   * @return the table; its text has a line for each item
   */
  public MassTable table(NamedUnit<Mass> massUnit, NamedUnit<Length> lengthUnit) {
    Objects.requireNonNull(massUnit, "mass unit");
    Objects.requireNonNull(lengthUnit, "length unit");
    return new MassTable(this, massUnit, lengthUnit);
  }

  /**
   * The statement as a table, in grams and millimetres for a model, in kilograms and metres for more than 5 kg.
   *
   * @return several lines of text, none longer than 75 characters
   */
  @Override
  public String toString() {
    return mass < 5.0
        ? table(Mass.GRAM, Length.MILLIMETRE).toString()
        : table(Mass.KILOGRAM, Length.METRE).toString();
  }
}
