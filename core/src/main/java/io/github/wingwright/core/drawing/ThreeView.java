// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import java.util.Objects;

/**
 * The three-view drawing of an airframe with its main dimensions.
 *
 * <p>Third-angle projection: the side view from port with the nose to the left, the plan exactly above it, the front view at
 * its left at the same height. Each dimension stands once (ISO 129-1). The corner above the front view carries what follows
 * from the dimensions: areas and ratios. The scale is the largest of the recommended ones (ISO 5455) at which the whole
 * sheet, lettering included, keeps within {@value #MOST_WIDTH} by {@value #MOST_HEIGHT} mm; the sheet is then cut to what is
 * on it. A bar of known length stays true when the picture is shown larger or smaller.
 *
 * <p>Lines, figures and arrow heads follow ISO 128-2, ISO 129-1 and ISO 3098 (from memory).
 */
public final class ThreeView {
  private static final double MOST_WIDTH = 250.0;
  private static final double MOST_HEIGHT = 240.0;
  private static final double MARGIN = 8.0;
  private static final double GAP = 8.0;

  private final Sketch plan;
  private final Sketch side;
  private final Sketch front;
  private final Sketch table;
  private final double leftColumn;
  private final double lowerTop;
  private final double upper;
  private final double width;
  private final double viewsHeight;
  private final Sketch foot;

  private ThreeView(Airframe airframe, String title, SheetScale scale, List<Mark> marks) {
    plan = PlanView.of(airframe, scale);
    side = SideView.of(airframe, scale, marks);
    front = FrontView.of(airframe, scale);
    table = DataTable.of(airframe, scale.unit());
    leftColumn = Math.max(front.bounds().width(), table.bounds().width());
    double right = columnRight() - columnLeft();
    lowerTop = Math.min(side.bounds().top(), front.bounds().top());
    upper = upperHeight();
    double lower = Math.max(side.bounds().bottom(), front.bounds().bottom()) - lowerTop;
    width = leftColumn + GAP + right + 2.0 * MARGIN;
    viewsHeight = MARGIN + upper + lower + GAP;
    foot = TitleStrip.of(title, scale, width - 2.0 * MARGIN);
  }

  /** Plan and side view share their stations, so also the column. */
  private double columnLeft() {
    return Math.min(plan.bounds().left(), side.bounds().left());
  }

  private double columnRight() {
    return Math.max(plan.bounds().right(), side.bounds().right());
  }

  /** How far the upper views reach above the highest point of the lower ones, which may stand in the free corner. */
  private double upperHeight() {
    double overSide = plan.bounds().height() + GAP + lowerTop - side.bounds().top();
    double overFront = table.bounds().height() + GAP + lowerTop - front.bounds().top();
    return Math.max(Math.max(overSide, overFront), 0.0);
  }

  /**
   * Draws an airframe.
   *
   * @param airframe the airframe
   * @param title name of the design
   * @param unit unit of the dimensions
   * @param marks stations to mark in the side view, such as the centre of gravity
   * @return the picture
   */
  public static Svg draw(Airframe airframe, String title, NamedUnit<Length> unit, List<Mark> marks) {
    Objects.requireNonNull(airframe, "airframe");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(marks, "marks");
    ThreeView sheet = null;
    for (double ratio : SheetScale.standardRatios()) {
      sheet = new ThreeView(airframe, title, new SheetScale(ratio, unit), marks);
      if (sheet.width <= MOST_WIDTH && sheet.height() <= MOST_HEIGHT) {
        break;
      }
    }
    return Objects.requireNonNull(sheet).assemble(title);
  }

  /**
   * A station to mark in the side view.
   *
   * @param x distance aft of the nose tip
   * @param label short label, such as {@code "CG"}
   * @param above whether the label stands above the fuselage
   */
  public record Mark(Length x, String label, boolean above) {
    public Mark {
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(label, "label");
    }
  }

  private double height() {
    return viewsHeight + foot.bounds().height() + MARGIN;
  }

  private Svg assemble(String title) {
    Svg svg = Sheet.blank(width, height(), "Three-view drawing of " + title);
    double noseX = MARGIN + leftColumn + GAP - columnLeft();
    double axisY = MARGIN + upper - lowerTop;
    double planY = axisY + side.bounds().top() - GAP - plan.bounds().bottom();
    double frontX = MARGIN + 0.5 * (leftColumn - front.bounds().width()) - front.bounds().left();
    plan.onto(svg, noseX, planY);
    side.onto(svg, noseX, axisY);
    front.onto(svg, frontX, axisY);
    table.onto(svg, MARGIN - table.bounds().left(), MARGIN - table.bounds().top());
    foot.onto(svg, MARGIN, viewsHeight - foot.bounds().top());
    return svg;
  }
}
