// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks;

/**
 * The quick evaluation of a glider once more, as one would write it by hand for one program: doubles, tables and loops in a
 * single class without a type of the library. The benchmark holds the library against it, in result and in time.
 *
 * <p>Methods and searches are those of the library, so that the two differ in nothing but how the code is laid out.
 */
final class HandWrittenGlider {
  // what is given
  double rho;
  double nu;
  double taper;
  double k;
  double edgeThickness;
  double lean;
  double lowest;
  double line;
  double slotWidth;
  double[] place = {};
  double[] width = {};
  double[] height = {};
  double[] skin = {};
  double thickness;
  double camber;
  double designLift;
  double material;
  double wingWall;
  double bodyWall;
  double plate;
  double carriedMass;
  double carriedMoment;
  double margin;
  double leastArm;
  double vh;
  double ah;
  double lh;
  double vv;
  double av;
  double lv;
  double tailOutline;
  double tailForm;
  double[] series = {};

  // what comes out
  double station;
  double mass;
  double ballast;
  double xcg;
  double xnp;
  double stall;
  double bestLiftToDrag;
  double bestSpeed;
  double sinkRate;

  // on the way
  private double s;
  private double b;
  private double c;
  private double ar;
  private double xq;
  private double tanHalf;
  private double mw;
  private double xw;
  private double len;
  private double fin;
  private double wet;
  private double mb;
  private double dia;
  private double seat;
  private double seatAt;
  private double cmf;
  private double zw;
  private double xb;
  private double front;
  private double back;
  private double tailTangent;
  private double v;
  private double aw;
  private double sh;
  private double sv;
  private double empty;
  private double xe;
  private double delta;
  private double tailChord;
  private double finChord;
  private int answer;

  private static final double[] ANGLE_X = logs(6.13e4, 1.016e5, 2.024e5, 9e6);
  private static final double[] ANGLE_Y = {0.43, 0.58, 0.815, 0.93};
  private static final double[] SLOPE_X = logs(4e4, 6.1e4, 1e5, 9e6);
  private static final double[] SLOPE_Y = {0.6, 0.8, 0.87, 0.95};
  private static final double[] USABLE_X = logs(6e4, 2e5);
  private static final double[] USABLE_Y = {0.8, 0.95};
  private static final double LN_5 = Math.log(5.0);
  private static final double G = 9.80665;
  private static final double H = 1e-5;

  private static double[] logs(double... x) {
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      y[i] = Math.log(x[i]);
    }
    return y;
  }

  private static double table(double[] x, double[] y, double re) {
    double l = Math.log(re);
    int n = x.length - 1;
    if (l <= x[0]) {
      return y[0];
    }
    if (l >= x[n]) {
      return y[n];
    }
    int i = 1;
    while (x[i] < l) {
      i++;
    }
    return y[i - 1] + (l - x[i - 1]) / (x[i] - x[i - 1]) * (y[i] - y[i - 1]);
  }

  void evaluate(double span, double aspect, double length, double diameter) {
    b = span;
    ar = aspect;
    len = length;
    s = b * b / ar;
    double root = 2 * s / (b * (1 + taper));
    c = 2.0 / 3.0 * root * (1 + taper + taper * taper) / (1 + taper);
    xq = 0.25 * root;
    tanHalf = -(1 - taper) / (1 + taper) / ar;
    tailTangent = -(1 - lh) / (1 + lh) / ah;
    wing(root);
    xw = xq + xw;
    dia = diameter;
    fin = len / diameter;
    wet = Math.PI * diameter * len;
    double volume = 0.25 * Math.PI * diameter * diameter * (len - diameter / 3);
    mb =
        Math.min(
            volume,
            wet * bodyWall
                - Math.PI * (len + diameter) * bodyWall * bodyWall
                + 4.0 / 3.0 * Math.PI * bodyWall * bodyWall * bodyWall);
    double radius = 0.5 * diameter;
    double floor = 0.4 * diameter + lowest * root;
    double lower = floor - bodyWall * Math.sqrt(1 + lean * lean);
    seat =
        floor >= radius
            ? 0
            : (root + 0.12 * c) * (above(radius - bodyWall, lower) - above(radius, floor))
                + 2 * bodyWall * above(radius - bodyWall, floor);
    seatAt = 0.5 * root;
    double e = Math.sqrt(1 - 1 / (fin * fin));
    double ln = Math.log((1 + e) / (1 - e));
    double alpha = 2 * (1 - e * e) / (e * e * e) * (0.5 * ln - e);
    double beta = 1 / (e * e) - (1 - e * e) / (2 * e * e * e) * ln;
    cmf = 2 * (beta / (2 - beta) - alpha / (2 - alpha)) * volume / (s * c);
    zw = 0.4 * diameter;
    xb = 0.25 * diameter;
    double qh = vh * s * c;
    double kh = 1.5 * Math.sqrt(qh / ah) / (1 + lh);
    double kv = 1.5 * Math.sqrt(vv * s * b / av) / (1 + lv);
    double room = 1.001 * Math.max(3 * Math.cbrt(0.25 * kh * kh), 3 * Math.cbrt(0.25 * kv * kv));
    if (leastArm > arm(room, kh)) {
      room = Math.max(room, leastArm + 1.5 * Math.sqrt(qh / leastArm / ah) / (1 + lh));
    }
    front = diameter;
    back = len - xq - room;
    settle(kh, kv);
    xcg = (empty * xe + ballast * xb) / mass;
    delta = loss();
    glide();
  }

  private static final double[] GAUSS_5 = {
    0.046910077030668, 0.2307653449471585, 0.5, 0.7692346550528415, 0.953089922969332
  };
  private static final double[] WEIGHT_5 = {
    0.1184634425280945, 0.2393143352496832, 0.2844444444444444, 0.2393143352496832, 0.1184634425280945
  };
  private static final double[] GAUSS_3 = {0.1127016653792583, 0.5, 0.8872983346207417};
  private static final double[] WEIGHT_3 = {0.2777777777777778, 0.4444444444444444, 0.2777777777777778};

  /** Mass of a hollow wing with closed ends, and its centre behind the quarter chord of the mean chord. */
  private void wing(double root) {
    double tip = taper * root;
    double edge = Math.max(0, line / tip - edgeThickness);
    double volume = 0;
    double moment = 0;
    for (int i = 0; i < 7; i++) {
      double at = i < 5 ? GAUSS_5[i] : i - 5;
      double chord = root + at * (tip - root);
      double wall = 0;
      double wallMoment = 0;
      double solidMoment = 0;
      double solid = 0;
      for (int j = 0; j < place.length; j++) {
        double part = Math.min(height[j] + edge * place[j], wingWall / chord * skin[j]) * width[j];
        wall += part;
        wallMoment += part * place[j];
        solid += height[j] * width[j];
        solidMoment += height[j] * width[j] * place[j];
      }
      double a = i < 5 ? wall : k + 0.5 * edge - wall;
      double m = i < 5 ? wallMoment : solidMoment * k / solid + edge / 3 - wallMoment;
      double share = i < 5 ? b * WEIGHT_5[i] : 2 * wingWall;
      volume += share * chord * chord * a;
      moment += share * chord * chord * (m * chord - a * 0.25 * chord);
    }
    mw = material * volume;
    xw = moment / volume;
  }

  private double above(double radius, double floor) {
    if (floor >= radius) {
      return 0;
    }
    double square = 1 + lean * lean;
    double y = (Math.sqrt(radius * radius * square - floor * floor) - floor * lean) / square;
    return radius * radius * (0.5 * Math.PI - Math.acos(y / radius)) - floor * y;
  }

  private double capsule(double fromEnd) {
    double r = 0.5 * dia;
    return fromEnd >= r ? r : Math.sqrt(Math.max(0, fromEnd * (dia - fromEnd)));
  }

  private double slot(double chord, boolean level) {
    double a = 0.5 * slotWidth + bodyWall;
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double x = GAUSS_3[i];
      double r = capsule(Math.min(chord * x * x, len - chord * x * x));
      double inside = Math.max(a, r - bodyWall);
      double area =
          level
              ? 4 * (a * inside - 0.5 * slotWidth * r)
              : 2 * (a * (inside - a) - 0.5 * slotWidth * Math.max(0, r - 0.5 * slotWidth));
      sum += WEIGHT_3[i] * 2 * x * area;
    }
    double front = Math.max(0, capsule(Math.min(chord, len - chord)) - bodyWall) * bodyWall * (slotWidth + 0.5 * Math.PI * bodyWall);
    return Math.max(0, chord * sum + (level ? 2 : 1) * front);
  }

  private static double arm(double room, double k) {
    double q = k / (room * Math.sqrt(room));
    double x = q < 0.3 ? room * (1 - q * (1 + q * (0.5 + q * (0.625 + q * (1 + q * 1.8046875))))) : room;
    for (int i = 0; i < 60; i++) {
      double r = Math.sqrt(x);
      double step = (x + k / r - room) / (1 - 0.5 * k / (x * r));
      x -= step;
      if (Math.abs(step) <= 1e-15 * x) {
        break;
      }
    }
    return x;
  }

  private double usable(double reAtOne) {
    double lift = 1;
    for (int i = 0; i < 20; i++) {
      double next = table(USABLE_X, USABLE_Y, reAtOne / Math.sqrt(lift));
      if (Math.abs(next - lift) <= 1e-12 * lift) {
        return next;
      }
      lift = next;
    }
    return lift;
  }

  private static double slope(double re, double a, double tangent) {
    double kappa = 0.5 * (1 + table(SLOPE_X, SLOPE_Y, re));
    double x = a / kappa;
    return 2 * Math.PI * a / (2 + Math.sqrt(4 + x * x * (1 + tangent * tangent)));
  }

  private void reckonFor(double m) {
    double p = m * G / s;
    double unit = Math.sqrt(2 * p / rho);
    v = 1.2 * Math.sqrt(2 * p / (rho * usable(unit * c / nu)));
    aw = slope(v * c / nu, ar, tanHalf);
  }

  /** Returns how far the centre of gravity lies behind where it is wanted. */
  private double place(double x, double kh, double kv) {
    station = x;
    double room = len - x - xq;
    double armH = arm(room, kh);
    double armV = arm(room, kv);
    sh = vh * s * c / armH;
    sv = vv * s * b / armV;
    tailChord = 4.0 / 3.0 * Math.sqrt(sh / ah) * (1 + lh + lh * lh) / ((1 + lh) * (1 + lh));
    finChord = 4.0 / 3.0 * Math.sqrt(sv / av) * (1 + lv + lv * lv) / ((1 + lv) * (1 + lv));
    double mh = plate * sh;
    double mv = plate * sv;
    double rootH = 2 * Math.sqrt(sh / ah) / (1 + lh);
    double rootV = 2 * Math.sqrt(sv / av) / (1 + lv);
    double slotH = slot(rootH, true);
    double slotV = slot(rootV, false);
    empty = mw + material * (mb + seat + slotH + slotV) + mh + mv + carriedMass;
    xe =
        (mw * (x + xw)
                + material
                    * (mb * 0.5 * len
                        + seat * (x + seatAt)
                        + slotH * (len - 0.5 * rootH)
                        + slotV * (len - 0.5 * rootV))
                + mh * (x + xq + armH + 0.25 * tailChord)
                + mv * (x + xq + armV + 0.25 * finChord)
                + carriedMoment)
            / empty;
    double at = slope(v * tailChord / nu, ah, tailTangent);
    double ka = 1 / ar - 1 / (1 + Math.pow(ar, 1.7));
    double down =
        4.44 * Math.pow(ka * (10 - 3 * taper) / 7 * (1 - zw / b) / Math.cbrt(2 * armH / b), 1.19);
    double t = 0.8 * sh / s * at * (1 - down);
    double h = (0.25 * aw - cmf + t * (0.25 + armH / c)) / (aw + t);
    xnp = x + xq + (h - 0.25) * c;
    return xe - (xnp - margin * c);
  }

  private double needed() {
    double target = xnp - margin * c;
    return empty * (xe - target) / (target - xb);
  }

  private double heavy() {
    return xnp - margin * c > xb ? empty + needed() : Double.POSITIVE_INFINITY;
  }

  private void accept() {
    ballast = answer == 2 ? needed() : 0;
    mass = empty + ballast;
  }

  private double scanned(int i) {
    return i == 16 ? back : front + (back - front) * i / 16;
  }

  private void find(double kh, double kv) {
    answer = 0;
    if (place(front, kh, kv) <= 0) {
      accept();
      return;
    }
    int lightest = 0;
    double least = heavy();
    for (int i = 1; i <= 16; i++) {
      if (place(scanned(i), kh, kv) <= 0) {
        answer = 1;
        place(zero(false, scanned(i - 1), scanned(i), kh, kv), kh, kv);
        accept();
        return;
      }
      double m = heavy();
      if (m < least) {
        least = m;
        lightest = i;
      }
    }
    answer = 2;
    place(lightest(scanned(Math.max(0, lightest - 1)), scanned(Math.min(16, lightest + 1)), kh, kv), kh, kv);
    accept();
  }

  private void findAgain(double kh, double kv) {
    double width = 2e-3 * (back - front);
    double lower = Math.max(front, station - width);
    double upper = Math.min(back, station + width);
    if (answer == 1 && place(lower, kh, kv) > 0 && place(upper, kh, kv) <= 0) {
      place(zero(false, lower, upper, kh, kv), kh, kv);
      accept();
      return;
    }
    if (answer == 2) {
      double x = lightest(lower, upper, kh, kv);
      if (x == front || x == back || (x > lower && x < upper)) {
        place(x, kh, kv);
        accept();
        return;
      }
    }
    find(kh, kv);
  }

  private double function(boolean rise, double x, double kh, double kv) {
    if (!rise) {
      return place(x, kh, kv);
    }
    double h = 1e-4 * (back - front);
    place(x + h, kh, kv);
    double after = heavy();
    place(x - h, kh, kv);
    return after - heavy();
  }

  private double lightest(double lower, double upper, double kh, double kv) {
    double h = 1e-4 * (back - front);
    double x = lower == front ? lower + h : lower;
    double y = upper == back ? upper - h : upper;
    double atX = function(true, x, kh, kv);
    if (!(atX < 0)) {
      return lower;
    }
    double atY = function(true, y, kh, kv);
    if (!(atY > 0)) {
      return upper;
    }
    return chords(true, x, atX, y, atY, kh, kv);
  }

  private double zero(boolean rise, double lower, double upper, double kh, double kv) {
    return chords(rise, lower, function(rise, lower, kh, kv), upper, function(rise, upper, kh, kv), kh, kv);
  }

  private double chords(boolean rise, double x0, double f0, double x1, double f1, double kh, double kv) {
    double tolerance = rise ? 1e-10 * (back - front) : 1e-13 * Math.max(1, Math.abs(x1));
    double x = x1;
    for (int i = 0; i < 60 && f1 != 0; i++) {
      double before = x;
      x = x1 - f1 * (x1 - x0) / (f1 - f0);
      if (Math.abs(x - before) <= tolerance) {
        break;
      }
      double f = function(rise, x, kh, kv);
      if ((f > 0) == (f1 > 0)) {
        double w = 1 - f / f1;
        f0 *= w > 0 ? w : 0.5;
      } else {
        x0 = x1;
        f0 = f1;
      }
      x1 = x;
      f1 = f;
    }
    return x;
  }

  private void settle(double kh, double kv) {
    double m = 1.2 * (mw + material * mb + carriedMass);
    reckonFor(m);
    find(kh, kv);
    boolean everywhere = false;
    for (int i = 0; i < 100; i++) {
      double before = m;
      m = mass;
      if (Math.abs(m - before) <= 1e-10 * m) {
        if (everywhere) {
          return;
        }
        everywhere = true;
        find(kh, kv);
      } else {
        reckonFor(m);
        if (everywhere) {
          find(kh, kv);
        } else {
          findAgain(kh, kv);
        }
      }
    }
    throw new IllegalStateException("mass would not settle");
  }

  private double loss() {
    double half = 0.5 * Math.log(60.0);
    double x = (Math.log(ar) - half) / half;
    double d1 = 0;
    double d2 = 0;
    for (int j = series.length - 1; j > 0; j--) {
      double d = 2 * x * d1 - d2 + series[j];
      d2 = d1;
      d1 = d;
    }
    return Math.max(0, x * d1 - d2 + series[0]);
  }

  private static double friction(double re) {
    if (re <= 5e5) {
      return 1.328 / Math.sqrt(re);
    }
    double turbulent = 0.455 / Math.pow(Math.log10(re), 2.58);
    return turbulent - 5e5 / re * (0.455 / Math.pow(Math.log10(5e5), 2.58) - 1.328 / Math.sqrt(5e5));
  }

  private double drag(double cl, double speed) {
    double re = speed * c / nu;
    double cf = 1.328 / Math.sqrt(re);
    double separated = Math.max(0, Math.min(1, Math.log(1.5e5 / re) / LN_5));
    double offset = cl - 0.5 * (1 + table(ANGLE_X, ANGLE_Y, re)) * designLift;
    double section =
        2 * cf * (1 + thickness)
            + thickness * thickness
            + 0.7 * separated * 0.15 * (thickness + camber)
            + (0.15 + 0.5 * separated) / (2 * Math.PI) * offset * offset;
    double bodyFriction = friction(speed * len / nu);
    double body = bodyFriction * (1 + 1 / (fin * Math.sqrt(fin)) + 0.11 / (fin * fin * bodyFriction)) * wet;
    double factor = tailOutline * tailForm * 1.05;
    double tails = factor * (sh * friction(speed * tailChord / nu) + sv * friction(speed * finChord / nu));
    return section + (1 + delta) * cl * cl / (Math.PI * ar) + (body + tails) / s;
  }

  private double speed(double cl, double p) {
    double level = Math.sqrt(2 * p / (rho * cl));
    double speed = level;
    for (int i = 0; i < 25; i++) {
      double t = drag(cl, speed) / cl;
      double next = level / Math.sqrt(Math.sqrt(1 + t * t));
      if (Math.abs(next - speed) <= 1e-12 * speed) {
        return next;
      }
      speed = next;
    }
    return speed;
  }

  private double rise(boolean range, double cl, double p) {
    double speed = speed(cl, p);
    double cd = drag(cl, speed);
    double dl = (drag(cl * (1 + H), speed) - drag(cl * (1 - H), speed)) / (2 * H * cd);
    double dv = (drag(cl, speed * (1 + H)) - drag(cl, speed * (1 - H))) / (2 * H * cd);
    double t = cd / cl;
    double sine2 = t * t / (1 + t * t);
    double ofTangent = (dl - 0.5 * dv * (1 - sine2)) / (1 + 0.5 * sine2 * dv) - 1;
    return range ? ofTangent : -0.5 + (1 - 1.5 * sine2) * ofTangent;
  }

  private double best(boolean range, double p) {
    double unit = Math.sqrt(2 * p / rho);
    double usable = usable(unit * c / nu);
    double step = 0.9 * usable / 24;
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 24; i++) {
      double cl = usable - i * step;
      double speed = unit / Math.sqrt(cl);
      double cost = drag(cl, speed) / cl;
      if (!range) {
        cost *= speed;
      }
      if (cost < least) {
        least = cost;
        best = i;
      }
    }
    double x1 = best == 0 ? usable * (1 - H) : usable - (best - 1) * step;
    double x0 = usable - Math.min(24, best + 1) * step;
    double f1 = rise(range, x1, p);
    if (best == 0 && f1 <= 0) {
      return usable;
    }
    double f0 = rise(range, x0, p);
    double x = x1;
    for (int i = 0; i < 60; i++) {
      double before = x;
      x = x1 - f1 * (x1 - x0) / (f1 - f0);
      if (Math.abs(x - before) <= 1e-11 * x) {
        break;
      }
      double f = rise(range, x, p);
      if ((f > 0) == (f1 > 0)) {
        double w = 1 - f / f1;
        f0 *= w > 0 ? w : 0.5;
      } else {
        x0 = x1;
        f0 = f1;
      }
      x1 = x;
      f1 = f;
    }
    return x;
  }

  private void glide() {
    double p = mass * G / s;
    stall = Math.sqrt(2 * p / (rho * usable(Math.sqrt(2 * p / rho) * c / nu)));
    double cl = best(true, p);
    bestSpeed = speed(cl, p);
    bestLiftToDrag = cl / drag(cl, bestSpeed);
    double slow = best(false, p);
    double slowSpeed = speed(slow, p);
    sinkRate = slowSpeed * Math.sin(Math.atan(drag(slow, slowSpeed) / slow));
  }
}
