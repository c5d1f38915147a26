// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.stability.design.Design;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Locale;
import java.util.Map;

/** The design as data: flat, in SI, the unit in the name. */
final class DesignData {
  private static final int POINTS = 121;

  private DesignData() {}

  /** All numbers and findings as JSON. */
  static String json(Design design) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("name", design.brief().name());
      for (Map.Entry<String, Step> number : design.numbers().entrySet()) {
        json.writeNumberField(number.getKey(), number.getValue().value());
      }
      band(json, "glide.best_lift_to_drag", design.glide().greatestLiftToDrag());
      band(json, "decalage_rad", design.trim().decalageBand().si());
      json.writeStringField("throw_verdict", design.throwCheck().verdict().name().toLowerCase(Locale.ROOT));
      json.writeArrayFieldStart("findings");
      for (Finding finding : design.findings()) {
        finding(json, finding);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    return text + "\n";
  }

  private static void band(JsonGenerator json, String name, Band band) throws IOException {
    json.writeNumberField(name + ".low", band.low());
    json.writeNumberField(name + ".high", band.high());
  }

  private static void finding(JsonGenerator json, Finding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("severity", finding.severity().name().toLowerCase(Locale.ROOT));
    json.writeStringField("guideline", finding.subject());
    json.writeStringField("message", finding.message());
    if (finding.value().isPresent()) {
      json.writeNumberField("value", finding.value().getAsDouble());
      Interval range = finding.range().orElseThrow();
      // JSON has no infinity: an open end is left out.
      if (Double.isFinite(range.lower())) {
        json.writeNumberField("range_lower", range.lower());
      }
      if (Double.isFinite(range.upper())) {
        json.writeNumberField("range_upper", range.upper());
      }
    }
    json.writeStringField("source", finding.source().cite());
    json.writeEndObject();
  }

  /** The section as two columns, x and y over the chord, from the trailing edge round the nose. */
  static String coordinates(AirfoilSection section) {
    double[] x = new double[POINTS];
    double[] y = new double[POINTS];
    section.outline(x, y);
    StringBuilder text = new StringBuilder(section.name()).append('\n');
    for (int i = 0; i < POINTS; i++) {
      text.append(String.format(Locale.ROOT, "%10.6f %10.6f%n", x[i], y[i]).replace("\r\n", "\n"));
    }
    return text.toString();
  }
}
