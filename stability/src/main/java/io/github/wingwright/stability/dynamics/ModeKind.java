// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

/** The natural motions of an aircraft, and what they turn into. */
public enum ModeKind {
  /** Slow exchange of height and speed at nearly constant angle of attack. */
  PHUGOID("phugoid"),
  /** Quick nodding: the angle of attack swings back at nearly constant speed. */
  SHORT_PERIOD("short period"),
  /** Half of a short period that no longer swings: the nose creeps back. A very damped or barely stable aircraft. */
  SHORT_PERIOD_SUBSIDENCE("short-period subsidence"),
  /** The nose runs away from its angle: centre of gravity behind the point where the static margin is lost. */
  PITCH_DIVERGENCE("pitch divergence"),
  /** Half of a phugoid that no longer swings: speed settles without overshoot. */
  PHUGOID_SUBSIDENCE("phugoid subsidence"),
  /** Speed runs away at nearly constant angle of attack. */
  SPEED_DIVERGENCE("speed divergence"),
  /** A slow swing that speed and pitch share, left over when short period and phugoid have come apart. */
  THIRD_OSCILLATION("third oscillation"),
  /** A rate of roll dies out by the damping of the wing. */
  ROLL("roll"),
  /** Slow return from a bank, or slow tightening of a turn. */
  SPIRAL("spiral"),
  /** Quick swing in yaw with roll following: the tail wags. */
  DUTCH_ROLL("Dutch roll"),
  /** Half of a Dutch roll that no longer swings: yaw creeps back. A fin that is very small or very damped. */
  YAW_SUBSIDENCE("yaw subsidence"),
  /** The nose runs away from the wind sideways: the fin is too small. */
  YAW_DIVERGENCE("yaw divergence"),
  /** Slow swing in bank: roll and spiral joined. Much dihedral, little damping in roll. */
  ROLL_SPIRAL_OSCILLATION("roll-spiral oscillation");

  private final String words;

  ModeKind(String words) {
    this.words = words;
  }

  /** The trade's name of the motion. */
  public String words() {
    return words;
  }
}
