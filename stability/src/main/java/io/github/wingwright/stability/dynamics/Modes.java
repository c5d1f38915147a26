// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The natural motions of a longitudinal or lateral system, quickest first.
 *
 * <p>How they are named. Longitudinal: two pairs are short period and phugoid, the one with more speed in it (|u| against
 * |w| of its eigenvector) being the phugoid. When a pair has come apart the other is judged alone: more speed than
 * incidence, and it is the phugoid. One real root that grows is the divergence of an aircraft without static margin, and a
 * pair beside it is the third oscillation; two that grow are a phugoid come apart. Lateral: a pair beside two real roots is
 * the Dutch roll, the quicker real root roll, the slower the spiral; two pairs are Dutch roll and, with more bank against
 * sideslip, the joined roll and spiral; four real roots are roll (quickest), spiral (slowest) and the two halves of a yaw
 * motion. A real root that grows where the aircraft is not stable in yaw is a divergence in yaw.
 *
 * @param all the motions
 */
public record Modes(List<Mode> all) {
  public Modes {
    Objects.requireNonNull(all, "all");
    all = List.copyOf(all);
  }

  /** A root with what its naming needs: its place among the eigenvalues and a ratio of two states. */
  private record Root(double real, double imaginary, double ratio) {
    double size() {
      return Math.hypot(real, imaginary);
    }
  }

  static Modes of(StateMatrix matrix) {
    SmallEigenproblem eigen = new SmallEigenproblem(matrix.rows());
    List<Root> pairs = new ArrayList<>();
    List<Root> reals = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      if (eigen.imaginary[i] >= 0) {
        // longitudinal: u against w; lateral: φ against the sideslip v/u₀
        double first = size(eigen, i, matrix.isLateral() ? 3 : 0);
        double second = size(eigen, i, matrix.isLateral() ? 0 : 1) / (matrix.isLateral() ? matrix.speed() : 1);
        Root root = new Root(eigen.real[i], eigen.imaginary[i], first / Math.max(second, 1e-300));
        (eigen.imaginary[i] > 0 ? pairs : reals).add(root);
      }
    }
    pairs.sort(Comparator.comparingDouble(Root::size).reversed());
    reals.sort(Comparator.comparingDouble(Root::size).reversed());
    List<Mode> modes = new ArrayList<>();
    if (matrix.isLateral()) {
      nameLateral(pairs, reals, matrix.entry(2, 0) < 0, modes);
    } else {
      nameLongitudinal(pairs, reals, modes);
    }
    modes.sort(Comparator.comparingDouble((Mode m) -> Math.hypot(m.real(), m.imaginary())).reversed());
    return new Modes(modes);
  }

  private static double size(SmallEigenproblem eigen, int i, int component) {
    return Math.hypot(eigen.vectorReal[i][component], eigen.vectorImaginary[i][component]);
  }

  private static void nameLongitudinal(List<Root> pairs, List<Root> reals, List<Mode> modes) {
    if (pairs.size() == 2) {
      boolean quickIsPhugoid = pairs.get(0).ratio() > pairs.get(1).ratio();
      add(modes, pairs.get(0), quickIsPhugoid ? ModeKind.PHUGOID : ModeKind.SHORT_PERIOD);
      add(modes, pairs.get(1), quickIsPhugoid ? ModeKind.SHORT_PERIOD : ModeKind.PHUGOID);
      return;
    }
    boolean pairIsPhugoid = !pairs.isEmpty() && pairs.get(0).ratio() > 1;
    // an odd number of growing real roots: the constant term of the polynomial is negative, the static margin is lost
    boolean noMargin = reals.stream().filter(r -> r.real() > 0).count() % 2 == 1;
    for (Root pair : pairs) {
      add(modes, pair, noMargin ? ModeKind.THIRD_OSCILLATION
          : pairIsPhugoid ? ModeKind.PHUGOID : ModeKind.SHORT_PERIOD);
    }
    for (int i = 0; i < reals.size(); i++) {
      Root root = reals.get(i);
      boolean nods = pairs.isEmpty() ? i < 2 : pairIsPhugoid || noMargin;
      ModeKind kind = root.real() > 0
          ? noMargin ? ModeKind.PITCH_DIVERGENCE : ModeKind.SPEED_DIVERGENCE
          : nods ? ModeKind.SHORT_PERIOD_SUBSIDENCE : ModeKind.PHUGOID_SUBSIDENCE;
      add(modes, root, kind);
    }
  }

  private static void nameLateral(List<Root> pairs, List<Root> reals, boolean unstableInYaw, List<Mode> modes) {
    if (pairs.size() == 2) {
      boolean quickIsBank = pairs.get(0).ratio() > pairs.get(1).ratio();
      add(modes, pairs.get(0), quickIsBank ? ModeKind.ROLL_SPIRAL_OSCILLATION : ModeKind.DUTCH_ROLL);
      add(modes, pairs.get(1), quickIsBank ? ModeKind.DUTCH_ROLL : ModeKind.ROLL_SPIRAL_OSCILLATION);
      return;
    }
    if (pairs.size() == 1) {
      boolean yawRunsAway = unstableInYaw && reals.stream().anyMatch(r -> r.real() > 0);
      add(modes, pairs.get(0), yawRunsAway ? ModeKind.ROLL_SPIRAL_OSCILLATION : ModeKind.DUTCH_ROLL);
      for (int i = 0; i < 2; i++) {
        ModeKind kind = yawRunsAway
            ? reals.get(i).real() > 0 ? ModeKind.YAW_DIVERGENCE : ModeKind.YAW_SUBSIDENCE
            : i == 0 ? ModeKind.ROLL : ModeKind.SPIRAL;
        add(modes, reals.get(i), kind);
      }
      return;
    }
    int roll = 0;
    while (roll < 3 && reals.get(roll).real() > 0) {
      roll++;
    }
    for (int i = 0; i < 4; i++) {
      ModeKind kind = i == roll ? ModeKind.ROLL
          : i == 3 ? ModeKind.SPIRAL
          : reals.get(i).real() > 0 ? ModeKind.YAW_DIVERGENCE : ModeKind.YAW_SUBSIDENCE;
      add(modes, reals.get(i), kind);
    }
  }

  private static void add(List<Mode> modes, Root root, ModeKind kind) {
    modes.add(new Mode(kind, root.real(), root.imaginary()));
  }

  /** The first motion of this kind. */
  public Optional<Mode> find(ModeKind kind) {
    Objects.requireNonNull(kind, "kind");
    return all.stream().filter(m -> m.kind() == kind).findFirst();
  }

  /** Whether every motion dies out. */
  public boolean areStable() {
    return all.stream().allMatch(Mode::isStable);
  }

  @Override
  public String toString() {
    return all.stream().map(Mode::toString).collect(Collectors.joining("\n"));
  }
}
