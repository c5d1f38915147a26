// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import java.util.LinkedHashMap;
import java.util.Map;

/** The report. */
final class FuselageReport {
  private final BodyStudy study;

  FuselageReport(BodyStudy study) {
    this.study = study;
  }

  Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("report.html", study.toString());
    return files;
  }
}
