// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * Holds a file against the rules of the 3MF core specification, rule by rule, without any of the code that writes one.
 *
 * <p>What is checked: the package (compression, content types, the one start relationship, part names), the XML (UTF-8, no
 * document type), the tree and the attributes that the schema of appendix B.1 allows, the forms of numbers, identifiers,
 * matrices and colours, the names of metadata, references that point backwards, and the rules for the mesh of a model:
 * distinct corners, each edge shared by two triangles in opposite order, volume outwards, no triangle without an area, no
 * vertex twice or unused, nothing built below zero. Extensions are none of its business: what is not in the core fails.
 *
 * <p>Source: 3MF Consortium, 3D Manufacturing Format, Core Specification, chapters 1 to 5, appendices B.1 and C (read in the
 * public repository of the specification; sections are named in the messages). The type of relationship parts is that of the
 * Open Packaging Conventions (from memory).
 */
public final class ThreeMfRules {
  private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
  private static final String START = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
  private static final String MODEL_TYPE = "application/vnd.ms-package.3dmanufacturing-3dmodel+xml";
  private static final String RELATIONSHIP_TYPE = "application/vnd.openxmlformats-package.relationships+xml";
  private static final String ONE_NUMBER = "[-+]?([0-9]+(\\.[0-9]+)?|\\.[0-9]+)([eE][-+]?[0-9]+)?";
  private static final Pattern NUMBER = Pattern.compile(ONE_NUMBER);
  private static final Pattern MATRIX = Pattern.compile(ONE_NUMBER + "( " + ONE_NUMBER + "){11}");
  private static final Pattern COLOUR = Pattern.compile("#[0-9A-Fa-f]{6}([0-9A-Fa-f]{2})?");
  private static final Set<String> UNITS = Set.of("micron", "millimeter", "centimeter", "inch", "foot", "meter");
  private static final Set<String> OBJECT_TYPES = Set.of("model", "solidsupport", "support", "surface", "other");
  private static final Set<String> METADATA = Set.of(
      "Title", "Designer", "Description", "Copyright", "LicenseTerms", "Rating", "CreationDate", "ModificationDate",
      "Application");

  /** Element to the pattern of the names of its children, each followed by a blank. */
  private static final Map<String, String> CHILDREN = Map.ofEntries(
      Map.entry("model", "(metadata )*resources build "),
      Map.entry("metadata", ""),
      Map.entry("resources", "(basematerials )*(object )*"),
      Map.entry("basematerials", "(base )+"),
      Map.entry("base", ""),
      Map.entry("object", "(metadatagroup )?(mesh |components )"),
      Map.entry("metadatagroup", "(metadata )+"),
      Map.entry("mesh", "vertices triangles "),
      Map.entry("vertices", "(vertex ){3,}"),
      Map.entry("vertex", ""),
      Map.entry("triangles", "(triangle )+"),
      Map.entry("triangle", ""),
      Map.entry("components", "(component )+"),
      Map.entry("component", ""),
      Map.entry("build", "(item )*"),
      Map.entry("item", "(metadatagroup )?"));

  /** Element to its attributes; those that it must have end in an exclamation mark. */
  private static final Map<String, Set<String>> ATTRIBUTES = Map.ofEntries(
      Map.entry("model", Set.of("unit", "xml:lang", "requiredextensions")),
      Map.entry("metadata", Set.of("name!", "preserve", "type")),
      Map.entry("basematerials", Set.of("id!")),
      Map.entry("base", Set.of("name!", "displaycolor!")),
      Map.entry("object", Set.of("id!", "type", "thumbnail", "partnumber", "name", "pid", "pindex")),
      Map.entry("vertex", Set.of("x!", "y!", "z!")),
      Map.entry("triangle", Set.of("v1!", "v2!", "v3!", "p1", "p2", "p3", "pid")),
      Map.entry("component", Set.of("objectid!", "transform")),
      Map.entry("item", Set.of("objectid!", "transform", "partnumber")));

  private final List<String> violations = new ArrayList<>();

  /** Of each resource met so far the element. */
  private final Map<String, Element> resources = new HashMap<>();

  private ThreeMfRules() {}

  /**
   * What is wrong with a file.
   *
   * @param file its bytes
   * @return one sentence for each rule broken, empty if none is
   */
  public static List<String> violations(byte[] file) {
    ThreeMfRules rules = new ThreeMfRules();
    try {
      rules.pack(file);
    } catch (IOException e) {
      rules.broken("1.1: the package must be a zip archive: " + e.getMessage());
    }
    return List.copyOf(rules.violations);
  }

  /**
   * What is wrong with the XML of a model alone.
   *
   * @param model the part 3D/3dmodel.model
   * @return one sentence for each rule broken, empty if none is
   */
  public static List<String> modelViolations(byte[] model) {
    ThreeMfRules rules = new ThreeMfRules();
    rules.model(model);
    return List.copyOf(rules.violations);
  }

  private void broken(String words) {
    violations.add(words);
  }

  private void pack(byte[] file) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String name = entry.getName();
        if (entry.getMethod() != ZipEntry.DEFLATED && entry.getMethod() != ZipEntry.STORED) {
          broken("1.1: " + name + " must be deflated or stored");
        }
        if (entries.put(name, zip.readAllBytes()) != null) {
          broken("2.2: part names must differ, there are two of " + name);
        }
        for (String segment : name.split("/", -1)) {
          if (segment.isEmpty() || segment.startsWith(".") && !segment.equals(".rels")) {
            broken("2.2: a part name must have no empty segment and none that begins with a period, was " + name);
          }
        }
      }
    }
    Map<String, String> types = new HashMap<>();
    for (Element type : all(parse("[Content_Types].xml", entries.get("[Content_Types].xml")), "Default")) {
      types.put(type.getAttribute("Extension"), type.getAttribute("ContentType"));
    }
    if (!RELATIONSHIP_TYPE.equals(types.get("rels"))) {
      broken("OPC: the content type of relationships must be " + RELATIONSHIP_TYPE + ", was " + types.get("rels"));
    }
    String model = null;
    Set<String> ids = new HashSet<>();
    for (Element relation : all(parse("_rels/.rels", entries.get("_rels/.rels")), "Relationship")) {
      if (!ids.add(relation.getAttribute("Id")) || !relation.getAttribute("Id").matches("[A-Za-z_][\\w.-]*")) {
        broken("OPC: a relationship must have an identifier of its own, was " + relation.getAttribute("Id"));
      }
      if (relation.getAttribute("Type").equals(START)) {
        if (model != null) {
          broken("2.1.1: there must be one start part, there is a second");
        }
        model = relation.getAttribute("Target");
      }
    }
    if (model == null || !model.startsWith("/3D/") || !entries.containsKey(model.substring(1))) {
      broken("2.1.1: the start relationship must point to a part of the package below /3D/, points to " + model);
      return;
    }
    if (!MODEL_TYPE.equals(types.get(model.substring(model.lastIndexOf('.') + 1)))) {
      broken("C.1: the content type of the model must be " + MODEL_TYPE + ", types are " + types);
    }
    model(entries.get(model.substring(1)));
  }

  private Document parse(String name, byte[] xml) {
    if (xml == null) {
      broken("2.1: the package must hold " + name);
      return empty();
    }
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(xml));
    } catch (CharacterCodingException e) {
      broken("2.3.2: " + name + " must be UTF-8");
    }
    try {
      Document document = builder().parse(new ByteArrayInputStream(xml));
      if (document.getXmlEncoding() != null && !document.getXmlEncoding().equalsIgnoreCase("UTF-8")) {
        broken("2.3.2: the encoding declared in " + name + " must be UTF-8, was " + document.getXmlEncoding());
      }
      if (document.getDoctype() != null) {
        broken("2.3.2: " + name + " must have no document type");
      }
      return document;
    } catch (SAXException | IOException e) {
      broken("2.3.2: " + name + " must be XML: " + e.getMessage());
      return empty();
    }
  }

  private static DocumentBuilder builder() {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setExpandEntityReferences(false);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder;
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Document empty() {
    Document document = builder().newDocument();
    document.appendChild(document.createElement("nothing"));
    return document;
  }

  private static List<Element> all(Document document, String name) {
    List<Element> found = new ArrayList<>();
    for (Element child : children(document.getDocumentElement())) {
      if (child.getLocalName().equals(name)) {
        found.add(child);
      }
    }
    return found;
  }

  private static List<Element> children(Element parent) {
    List<Element> found = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        found.add(element);
      }
    }
    return found;
  }

  private static Element child(Element parent, String name) {
    return children(parent).stream().filter(c -> name.equals(c.getLocalName())).findFirst().orElseThrow();
  }

  private void model(byte[] xml) {
    Element root = parse("the model", xml).getDocumentElement();
    if (!"model".equals(root.getLocalName())) {
      broken("3.4: the root must be a model, was " + root.getNodeName());
      return;
    }
    shape(root);
    if (!violations.isEmpty()) {
      return; // What follows relies on the shape of the tree.
    }
    if (root.hasAttribute("unit") && !UNITS.contains(root.getAttribute("unit"))) {
      broken("3.4: unit must be one of " + UNITS + ", was " + root.getAttribute("unit"));
    }
    metadata(root);
    Set<String> materialNames = new HashSet<>();
    for (Element resource : children(child(root, "resources"))) {
      String id = resource.getAttribute("id");
      positive("3.4.2: id of a resource", id);
      if (resource.getLocalName().equals("basematerials")) {
        for (Element base : children(resource)) {
          if (!COLOUR.matcher(base.getAttribute("displaycolor")).matches()) {
            broken("5.1.1: displaycolor must be #RRGGBB or #RRGGBBAA, was " + base.getAttribute("displaycolor"));
          }
          if (!materialNames.add(base.getAttribute("name"))) {
            broken("5.1: names of materials should differ, there are two of " + base.getAttribute("name"));
          }
        }
      } else {
        object(resource);
      }
      if (resources.put(id, resource) != null) {
        broken("3.4.2: ids must be unique, there are two of " + id);
      }
    }
    for (Element item : children(child(root, "build"))) {
      item(item);
    }
  }

  /** Elements, their order and their attributes as the schema has them. */
  private void shape(Element element) {
    String name = element.getLocalName();
    if (!CORE.equals(element.getNamespaceURI()) || !CHILDREN.containsKey(name)) {
      broken("B.1: elements must be of the core namespace, was " + element.getNodeName());
      return;
    }
    StringBuilder order = new StringBuilder();
    for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        order.append(child.getLocalName()).append(' ');
      } else if (node.getNodeType() == Node.TEXT_NODE && !name.equals("metadata") && !node.getNodeValue().isBlank()) {
        broken("B.1: " + name + " must hold no text, holds " + node.getNodeValue().strip());
      }
    }
    if (!matches(CHILDREN.get(name), order.toString())) {
      broken("B.1: children of " + name + " must be " + CHILDREN.get(name).strip() + ", were " + first(order));
    }
    Set<String> allowed = ATTRIBUTES.getOrDefault(name, Set.of());
    for (String attribute : allowed) {
      if (attribute.endsWith("!") && !element.hasAttribute(attribute.substring(0, attribute.length() - 1))) {
        broken("B.1: " + name + " must have " + attribute);
      }
    }
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      String attribute = ((Attr) element.getAttributes().item(i)).getName();
      if (!attribute.startsWith("xmlns") && !allowed.contains(attribute) && !allowed.contains(attribute + "!")) {
        broken("B.1: " + name + " must have no attribute " + attribute);
      }
    }
    children(element).forEach(this::shape);
  }

  /** Repetitions of many thousand children are beyond the regular expressions of the JDK, which recurse. */
  private static boolean matches(String pattern, String order) {
    return order.replaceAll("(\\b\\w+ )\\1{3,}", "$1$1$1").matches(pattern);
  }

  private static String first(CharSequence order) {
    return order.length() > 80 ? order.subSequence(0, 80) + "…" : order.toString().strip();
  }

  private void metadata(Element root) {
    Set<String> names = new HashSet<>();
    for (Element metadata : children(root)) {
      if (metadata.getLocalName().equals("metadata")) {
        String name = metadata.getAttribute("name");
        if (!METADATA.contains(name)) {
          broken("3.4.1: a name of metadata without a namespace must be one of the specification's, was " + name);
        }
        if (!names.add(name)) {
          broken("3.4.1: metadata must be given once, there are two of " + name);
        }
      }
    }
  }

  private void object(Element object) {
    String id = object.getAttribute("id");
    String type = object.hasAttribute("type") ? object.getAttribute("type") : "model";
    if (!OBJECT_TYPES.contains(type)) {
      broken("4: type of an object must be one of " + OBJECT_TYPES + ", was " + type);
    }
    if (object.hasAttribute("pindex") || object.hasAttribute("pid")) {
      Element group = resources.get(object.getAttribute("pid"));
      if (group == null || !group.getLocalName().equals("basematerials")) {
        broken("4: pid of object " + id + " must point to materials before it, was " + object.getAttribute("pid"));
      } else if (object.hasAttribute("pindex")) {
        int index = index("4: pindex of object " + id, object.getAttribute("pindex"));
        if (index >= children(group).size()) {
          broken("4: pindex of object " + id + " must be less than " + children(group).size() + ", was " + index);
        }
      }
    }
    Element shape = children(object).get(children(object).size() - 1);
    if (shape.getLocalName().equals("components")) {
      children(shape).forEach(component -> reference("4.2.1: component", component));
    } else if (type.equals("model") || type.equals("solidsupport")) {
      mesh("object " + id, shape);
    }
  }

  private void mesh(String which, Element mesh) {
    List<double[]> vertices = new ArrayList<>();
    Set<List<Double>> places = new HashSet<>();
    for (Element vertex : children(child(mesh, "vertices"))) {
      double[] p = {number(vertex, "x"), number(vertex, "y"), number(vertex, "z")};
      vertices.add(p);
      if (!places.add(List.of(p[0] + 0.0, p[1] + 0.0, p[2] + 0.0))) {
        broken("4.1.3: vertices of " + which + " should differ, there are two at " + places.size());
      }
    }
    Map<Long, Integer> edges = new HashMap<>();
    boolean[] used = new boolean[vertices.size()];
    double volume = 0.0;
    int count = 0;
    for (Element triangle : children(child(mesh, "triangles"))) {
      int[] v = new int[3];
      for (int k = 0; k < 3; k++) {
        v[k] = index("4.1.4.1: corner of a triangle", triangle.getAttribute("v" + (k + 1)));
      }
      String place = "triangle " + count++ + " of " + which;
      if (v[0] == v[1] || v[1] == v[2] || v[2] == v[0]) {
        broken("4.1.4.1: corners of " + place + " must differ");
        continue;
      }
      if (Math.max(v[0], Math.max(v[1], v[2])) >= vertices.size()) {
        broken("4.1.4.1: corners of " + place + " must be among " + vertices.size() + " vertices");
        continue;
      }
      for (int k = 0; k < 3; k++) {
        used[v[k]] = true;
        edges.merge((long) v[k] << 32 | v[(k + 1) % 3], 1, Integer::sum);
      }
      double[] n = cross(vertices.get(v[0]), vertices.get(v[1]), vertices.get(v[2]));
      if (!(Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) > 0.0)) {
        broken("4.1: " + place + " should have an area");
      }
      double[] a = vertices.get(v[0]);
      volume += (a[0] * n[0] + a[1] * n[1] + a[2] * n[2]) / 6.0;
    }
    if (count < 4) {
      broken("4.1.4: " + which + " must have at least 4 triangles, has " + count);
    }
    for (Map.Entry<Long, Integer> edge : edges.entrySet()) {
      long back = edge.getKey() << 32 | edge.getKey() >>> 32;
      if (edge.getValue() != 1 || edges.getOrDefault(back, 0) != 1) {
        broken("4.1: each edge of " + which + " must be run along once each way, not so from "
            + (edge.getKey() >>> 32) + " to " + (int) (long) edge.getKey());
        break;
      }
    }
    for (int i = 0; i < used.length; i++) {
      if (!used[i]) {
        broken("4.1.3.1: vertex " + i + " of " + which + " must belong to a triangle");
      }
    }
    if (!(volume > 0.0)) {
      broken("4.1: normals of " + which + " must point outwards, its volume is " + volume);
    }
  }

  private static double[] cross(double[] a, double[] b, double[] c) {
    double ux = b[0] - a[0];
    double uy = b[1] - a[1];
    double uz = b[2] - a[2];
    double vx = c[0] - a[0];
    double vy = c[1] - a[1];
    double vz = c[2] - a[2];
    return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
  }

  private void item(Element item) {
    Element object = reference("3.4.3.1: item", item);
    if (object == null) {
      return;
    }
    if (object.getAttribute("type").equals("other")) {
      broken("3.4.3.1: an item must not build an object of type other");
    }
    Element mesh = children(object).get(children(object).size() - 1);
    if (!mesh.getLocalName().equals("mesh")) {
      return;
    }
    double[] m = {1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0};
    if (item.hasAttribute("transform") && MATRIX.matcher(item.getAttribute("transform")).matches()) {
      String[] words = item.getAttribute("transform").split(" ");
      for (int i = 0; i < 12; i++) {
        m[i] = Double.parseDouble(words[i]);
      }
    }
    for (Element vertex : children(child(mesh, "vertices"))) {
      double x = number(vertex, "x");
      double y = number(vertex, "y");
      double z = number(vertex, "z");
      for (int k = 0; k < 3; k++) {
        // A row vector from the left, the shift in the last row; sums of decimals may miss zero by their last digit.
        if (x * m[k] + y * m[3 + k] + z * m[6 + k] + m[9 + k] < -1e-9) {
          broken("3.3: what is built should lie in the positive octant, object " + object.getAttribute("id") + " does not");
          return;
        }
      }
    }
  }

  private Element reference(String what, Element from) {
    String transform = from.getAttribute("transform");
    if (from.hasAttribute("transform") && !MATRIX.matcher(transform).matches()) {
      broken("3.3: a transform must be twelve numbers, was " + transform);
    }
    Element object = resources.get(from.getAttribute("objectid"));
    if (object == null || !object.getLocalName().equals("object")) {
      broken(what + " must point to an object before it, points to " + from.getAttribute("objectid"));
      return null;
    }
    return object;
  }

  private double number(Element element, String attribute) {
    String text = element.getAttribute(attribute);
    if (!NUMBER.matcher(text).matches()) {
      broken("B.1: a number must have digits on both sides of its point and be finite, was " + text);
      return 0.0;
    }
    return Double.parseDouble(text);
  }

  private void positive(String what, String text) {
    if (!text.matches("\\+?0*[1-9][0-9]{0,9}") || Long.parseLong(text) >= 1L << 31) {
      broken(what + " must be a whole number from 1 to 2147483647, was " + text);
    }
  }

  private int index(String what, String text) {
    if (!text.matches("\\+?[0-9]{1,10}") || Long.parseLong(text) >= 1L << 31) {
      broken(what + " must be a whole number from 0 to 2147483647, was " + text);
      return 0;
    }
    return Integer.parseInt(text);
  }
}
