// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a picture back with the XML parser of the JDK: its texts with the room they take, and all points drawn. */
final class SvgReader {
  private static final Pattern UPWARD = Pattern.compile("translate\\((\\S+) (\\S+)\\) rotate\\(-90\\)");

  private final Element root;

  /** A text with its box. */
  record Text(String words, Box box) {}

  SvgReader(Svg svg) throws Exception {
    Document document =
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg.document())));
    root = document.getDocumentElement();
  }

  Box sheet() {
    String[] view = root.getAttribute("viewBox").split(" ");
    return new Box(0.0, 0.0, Double.parseDouble(view[2]), Double.parseDouble(view[3]));
  }

  String title() {
    return root.getElementsByTagName("title").item(0).getTextContent();
  }

  List<String> words() {
    return texts().stream().map(Text::words).toList();
  }

  List<Text> texts() {
    List<Text> texts = new ArrayList<>();
    NodeList nodes = root.getElementsByTagName("text");
    for (int i = 0; i < nodes.getLength(); i++) {
      texts.add(text((Element) nodes.item(i)));
    }
    return texts;
  }

  private static Text text(Element element) {
    Lettering.Anchor anchor =
        switch (element.getAttribute("text-anchor")) {
          case "middle" -> Lettering.Anchor.MIDDLE;
          case "end" -> Lettering.Anchor.END;
          default -> Lettering.Anchor.START;
        };
    double size = Double.parseDouble(element.getAttribute("font-size"));
    boolean bold = element.getAttribute("font-weight").equals("bold");
    Lettering lettering = new Lettering(size, anchor, "", bold, "");
    String words = element.getTextContent();
    Matcher upward = UPWARD.matcher(element.getAttribute("transform"));
    Box box =
        upward.matches()
            ? lettering.upwardBox(Double.parseDouble(upward.group(1)), Double.parseDouble(upward.group(2)), words)
            : lettering.box(number(element, "x"), number(element, "y"), words);
    return new Text(words, box);
  }

  /** Every point of every shape, circles and rectangles by their corners. */
  List<double[]> points() {
    List<double[]> points = new ArrayList<>();
    for (Node node = root.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        points.addAll(points(element));
      }
    }
    return points;
  }

  private static List<double[]> points(Element e) {
    return switch (e.getTagName()) {
      case "line" -> List.of(
          new double[] {number(e, "x1"), number(e, "y1")}, new double[] {number(e, "x2"), number(e, "y2")});
      case "rect" -> List.of(
          new double[] {number(e, "x"), number(e, "y")},
          new double[] {number(e, "x") + number(e, "width"), number(e, "y") + number(e, "height")});
      case "circle" -> List.of(
          new double[] {number(e, "cx") - number(e, "r"), number(e, "cy") - number(e, "r")},
          new double[] {number(e, "cx") + number(e, "r"), number(e, "cy") + number(e, "r")});
      case "polygon", "polyline" -> listed(e);
      default -> List.of();
    };
  }

  /** The straight lines of one width and colour: x1, y1, x2, y2. */
  List<double[]> lines(String width, String colour) {
    List<double[]> lines = new ArrayList<>();
    NodeList nodes = root.getElementsByTagName("line");
    for (int i = 0; i < nodes.getLength(); i++) {
      Element e = (Element) nodes.item(i);
      if (e.getAttribute("stroke-width").equals(width) && e.getAttribute("stroke").equals(colour)) {
        lines.add(new double[] {number(e, "x1"), number(e, "y1"), number(e, "x2"), number(e, "y2")});
      }
    }
    return lines;
  }

  private static List<double[]> listed(Element e) {
    List<double[]> points = new ArrayList<>();
    for (String pair : e.getAttribute("points").split(" ")) {
      String[] both = pair.split(",");
      points.add(new double[] {Double.parseDouble(both[0]), Double.parseDouble(both[1])});
    }
    return points;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
