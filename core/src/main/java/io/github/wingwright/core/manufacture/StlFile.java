// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;

/**
 * A mesh as binary STL: a header of 80 bytes, the number of triangles, and for each its normal, its corners and two empty
 * bytes, as little-endian 32-bit numbers. The format has no unit; millimetres are common practice, and are what is written.
 *
 * <p>Source of the layout: common practice since 1987; STL has no published standard.
 */
public final class StlFile {
  private static final int HEADER = 80;
  private static final int RECORD = 50;
  private static final float MILLIMETRES = 1000f;

  private StlFile() {}

  /**
   * The bytes of the file.
   *
   * @param part the part
   * @return the same bytes for the same part
   */
  public static byte[] bytes(Part part) {
    Objects.requireNonNull(part, "part");
    TriangleMesh mesh = part.mesh();
    ByteBuffer out = ByteBuffer.allocate(HEADER + 4 + RECORD * mesh.triangles()).order(ByteOrder.LITTLE_ENDIAN);
    // A header that begins with "solid" would pass for the text form of the format.
    byte[] name = ("unit: mm; part: " + part.name()).getBytes(StandardCharsets.US_ASCII);
    out.put(name, 0, Math.min(name.length, HEADER)).position(HEADER);
    out.putInt(mesh.triangles());
    float[] p = new float[9];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int k = 0; k < 9; k++) {
        p[k] = (float) (MILLIMETRES * mesh.coordinate(mesh.corner(t, k / 3), k % 3));
      }
      normal(out, p);
      for (float value : p) {
        out.putFloat(value);
      }
      out.putShort((short) 0);
    }
    return out.array();
  }

  private static void normal(ByteBuffer out, float[] p) {
    double ux = (double) p[3] - p[0];
    double uy = (double) p[4] - p[1];
    double uz = (double) p[5] - p[2];
    double vx = (double) p[6] - p[0];
    double vy = (double) p[7] - p[1];
    double vz = (double) p[8] - p[2];
    double x = uy * vz - uz * vy;
    double y = uz * vx - ux * vz;
    double z = ux * vy - uy * vx;
    double length = Math.sqrt(x * x + y * y + z * z);
    double scale = length > 0.0 ? 1.0 / length : 0.0;
    out.putFloat((float) (scale * x)).putFloat((float) (scale * y)).putFloat((float) (scale * z));
  }

  /**
   * Writes the file; what was there before is replaced only when all is written.
   *
   * @param part the part
   * @param file where
   * @throws IOException if it cannot be written; then nothing has changed
   */
  public static void write(Part part, Path file) throws IOException {
    WholeFile.write(file, bytes(part));
  }
}
