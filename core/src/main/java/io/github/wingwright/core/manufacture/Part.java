// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.quantity.Door;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Something to make: a name, a watertight mesh, and what it is made of, if that is settled.
 *
 * <p>A part exists only with a mesh that passed {@link MeshCheck}: what is written to a file can be printed.
 */
public final class Part {
  private final String name;
  private final TriangleMesh mesh;
  private final @Nullable Material material;
  private final MeshCheck check;

  private Part(String name, TriangleMesh mesh, @Nullable Material material, MeshCheck check) {
    this.name = name;
    this.mesh = mesh;
    this.material = material;
    this.check = check;
  }

  /**
   * A part.
   *
   * @param name what it is, not blank
   * @param mesh its surface
   * @return the part
   * @throws IllegalStateException if the mesh is not watertight; the message names the part and the place
   */
  public static Part of(String name, TriangleMesh mesh) {
    Objects.requireNonNull(mesh, "mesh");
    Door.said(name, "name of a part");
    try {
      return new Part(name, mesh, null, MeshCheck.of(mesh));
    } catch (IllegalStateException e) {
      throw new IllegalStateException(name + ": " + e.getMessage(), e);
    }
  }

  /**
   * The same part with its material.
   *
   * @param what it is made of
   * @return the part
   */
  public Part of(Material what) {
    Objects.requireNonNull(what, "what");
    return new Part(name, mesh, what, check);
  }

  /**
   * The same part turned as it lies in a machine, on z = 0 with the least corner of its box at the origin and the longer side
   * of the bed along x. Standing on end it stands on its flatter end.
   *
   * @param lying how it lies
   * @param lengthAxis the axis along which it is long as it is: 0 for x, such as a body, 1 for y, such as a half wing, 2 for z
   * @return the part
   */
  public Part lying(Orientation lying, int lengthAxis) {
    return with(Laying.of(mesh, Objects.checkIndex(lengthAxis, 3), lying));
  }

  /** The same part with its mesh elsewhere. */
  Part with(TriangleMesh moved) {
    Part part = of(name, moved);
    return material == null ? part : part.of(material);
  }

  /**
   * What it is.
   *
   * @return for example {@code "wing, starboard half"}
   */
  public String name() {
    return name;
  }

  /**
   * Its surface.
   *
   * @return the mesh, watertight
   */
  public TriangleMesh mesh() {
    return mesh;
  }

  /**
   * What it is made of.
   *
   * @return the material, empty if that is not settled
   */
  public Optional<Material> material() {
    return Optional.ofNullable(material);
  }

  /**
   * What the check of its mesh found.
   *
   * @return size, volume and surface
   */
  public MeshCheck check() {
    return check;
  }

  @Override
  public String toString() {
    return name + ", " + check.triangles() + " triangles, " + check.volume();
  }
}
