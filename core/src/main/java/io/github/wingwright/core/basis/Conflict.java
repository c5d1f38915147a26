// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;

/**
 * Considerations that no body satisfies together.
 *
 * @param clashing the smallest set that clashes; without any one of them the rest of the set agrees
 * @param givingWay for each of them that could end the whole clash alone: the body for which it would give way least
 * @param further sets that clash apart from the first; looked for only where no single concession is enough
 * @param together concessions of two or three at one body that end everything if all are made; looked for only where no
 *     single one is enough
 */
public record Conflict(
    List<Weighed> clashing, List<GivingWay> givingWay, List<List<Weighed>> further, List<List<GivingWay>> together) {
  private static final int TOLD = 3;

  /** Of ways that ask for the same but for rounding, the one that leaves more limits as they are. */
  private static final Comparator<List<GivingWay>> MILDEST_FIRST =
      Comparator.<List<GivingWay>>comparingDouble(way -> Math.rint(1e6 * miss(way))).thenComparingLong(Conflict::limits);

  /** Keeps copies, the smallest concession first. */
  public Conflict {
    Objects.requireNonNull(clashing, "clashing");
    Objects.requireNonNull(givingWay, "giving way");
    Objects.requireNonNull(further, "further");
    Objects.requireNonNull(together, "together");
    clashing = List.copyOf(clashing);
    further = further.stream().map(List::copyOf).toList();
    givingWay = givingWay.stream().sorted(Comparator.comparing(List::of, MILDEST_FIRST)).toList();
    together = together.stream().map(List::copyOf).sorted(MILDEST_FIRST).toList();
  }

  /**
   * One consideration giving way as little as possible, while all others hold.
   *
   * @param by who gives way
   * @param body the body that it would have to accept
   * @param miss by what part it misses that body
   */
  public record GivingWay(Weighed by, FeasibleRegion.Point body, double miss) {
    /** Refuses null. */
    public GivingWay {
      Objects.requireNonNull(by, "by");
      Objects.requireNonNull(body, "body");
    }

    /**
     * The concession in words.
     *
     * @param unit unit of length
     * @return for example {@code "\"fineness ratio 6 to 10\" widened to 12.5 (300 mm × 24 mm)"}
     */
    public String describe(NamedUnit<Length> unit) {
      Objects.requireNonNull(unit, "unit");
      return by.consideration().givingWayTo(body.length(), body.diameter(), unit) + " (a body of " + body.format(unit) + ")";
    }
  }

  private static double miss(List<GivingWay> all) {
    return all.stream().mapToDouble(GivingWay::miss).sum();
  }

  private static long limits(List<GivingWay> all) {
    return all.stream().filter(way -> way.by().isLimit()).count();
  }

  /**
   * The body that asks for the smallest concession.
   *
   * @return the body, empty if no single consideration can end the clash
   */
  public Optional<FeasibleRegion.Point> leastConcession() {
    return givingWay.stream().findFirst().map(GivingWay::body);
  }

  /**
   * All that would end everything, the mildest first: single concessions, or else several to be made together.
   *
   * @return lists of one concession, or of two or three; empty if more would have to give way
   */
  public List<List<GivingWay>> waysOut() {
    return givingWay.isEmpty() ? together : givingWay.stream().map(List::of).toList();
  }

  /**
   * Whether a consideration takes part in a clash.
   *
   * @param consideration the consideration
   * @return true if it belongs to the smallest set or to a further one
   */
  public boolean concerns(Weighed consideration) {
    Objects.requireNonNull(consideration, "consideration");
    return clashing.contains(consideration) || further.stream().anyMatch(set -> set.contains(consideration));
  }

  /**
   * The clash in words, as advice.
   *
   * @param unit unit of length
   * @return a few sentences
   */
  public String describe(NamedUnit<Length> unit) {
    if (clashing.size() == 1 && !givingWay.isEmpty()) {
      return clash(clashing, unit) + ". It comes closest with " + givingWay.get(0).body().format(unit) + ".";
    }
    if (!givingWay.isEmpty()) {
      StringJoiner ways = new StringJoiner("; or ");
      givingWay.forEach(g -> ways.add(g.describe(unit)));
      return clash(clashing, unit) + ". Enough alone would be " + ways + ".";
    }
    StringJoiner all = new StringJoiner("; and ");
    all.add(clash(clashing, unit));
    further.forEach(set -> all.add(clash(set, unit)));
    String told = all + ". No single concession is enough: " + (further.isEmpty() ? "more than one" : "each of these clashes")
        + (further.isEmpty() ? " must give way." : " needs its own.");
    StringJoiner ways = new StringJoiner("; or ");
    together.stream().limit(TOLD).forEach(way -> ways.add(several(way, unit)));
    return together.isEmpty() ? told : told + " Enough would be " + ways + ".";
  }

  private static String several(List<GivingWay> way, NamedUnit<Length> unit) {
    FeasibleRegion.Point body = way.get(0).body();
    return way.stream()
        .map(g -> g.by().consideration().givingWayTo(body.length(), body.diameter(), unit))
        .collect(Collectors.joining(" together with ", "", " (a body of " + body.format(unit) + ")"));
  }

  private static String clash(List<Weighed> set, NamedUnit<Length> unit) {
    List<String> names = set.stream().map(w -> "\"" + w.consideration().nameIn(unit) + "\"").toList();
    return switch (names.size()) {
      case 1 -> names.get(0) + " is satisfied by no body that was looked at";
      case 2 -> names.get(0) + " and " + names.get(1) + " cannot both hold";
      default ->
          String.join(", ", names.subList(0, names.size() - 1))
              + " and "
              + names.get(names.size() - 1)
              + " cannot all hold, though they could without any one of them";
    };
  }

  @Override
  public String toString() {
    return "conflict of " + clashing.size() + " considerations, " + givingWay.size() + " ways out";
  }
}
