// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.potential.DenseLu;
import io.github.wingwright.airfoils.potential.DisplacedFlow;
import io.github.wingwright.airfoils.potential.PanelMethod;
import java.util.Arrays;

/**
 * Boundary layers, wake and outer flow solved together by Newton's method.
 *
 * <p>A boundary layer in a given pressure distribution has no solution past separation, so the layers are not marched
 * in a given flow. The unknowns are the mass defects m = V·δ* of all stations and the two places of transition. For given
 * defects the layer equations give the speeds at the edge ({@code V_layer(m)}, regular through separation); the outer flow
 * gives its own ({@code V_outer(m)}, linear in m); the solution is where they agree. Each iteration marches the equations
 * once, carries the derivatives with respect to all unknowns along, and solves one dense system.
 *
 * <p>Two guards make it robust. A pseudo-time term, in the direction in which defects relax physically, fades as the
 * residual falls. And transition starts a little behind laminar separation and moves with the iteration, at most a few
 * per cent of the chord at a time, as an unknown of the same system.
 *
 * <p>The first three stations from the stagnation point keep the similar layer of a stagnation point, a step behind. One
 * instance serves one thread; it keeps the last solution as the start of the next.
 */
final class CoupledSolver {
    private static final int STAGNATION_STATIONS = 3;
    private static final double LONGEST_STEP = 0.04;
    /** How much more slowly a solver goes that is told to be gentle. */
    private static final double GENTLE = 0.35;
    private static final double FURTHEST = 0.01;
    /** Below this residual the pseudo-time term is left out. */
    private static final double FADED = 0.01;
    /** How often transition may leave over the trailing edge before it is left there. */
    private static final int MOST_EXITS = 2;

    private final DisplacedFlow flow;
    private final PanelMethod method;
    final int section;
    final int total;
    private final int unknowns;
    private final int width;
    final double[] place;
    final double[] undisplaced;
    final double[] outer;
    private final double[] signed;
    final double[] defect;
    final double[] theta;
    final double[] speed;
    final double[] carried;
    final boolean[] turbulent;
    final double[] transition = new double[2];
    private final double[] trip = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    private final int[] node;
    private final boolean[] fixed;
    private final double[] fixedStep;
    private final double[][] dTheta;
    private final double[][] dSpeed;
    private final double[][] dCarried;
    private final double[][] onset;
    private final int[] cell = new int[2];
    private final double[] reach = new double[2];
    private final int[] exits = new int[2];
    private final double[] lastAmplification = new double[2];
    private final double[] lastGrowth = new double[2];
    private final double[] in = new double[LayerEquations.INPUTS];
    private final double[] out = new double[LayerEquations.OUTPUTS];
    private final double[] moved = new double[LayerEquations.OUTPUTS];
    private final double[][] jacobian = new double[LayerEquations.INPUTS][LayerEquations.OUTPUTS];
    private final double[] rememberedTheta;
    private final double[] rememberedSpeed;
    private final double[] rememberedDefect;
    private final double[] rememberedTransition = new double[2];
    private int rememberedStagnation = -1;
    private final double[] wakeTheta;
    private final double[] wakeSpeed;
    private final double[] wakeDefect;
    private final double[] wakeCarried;

    int stagnation = -1;
    double stagnationPlace;
    private int lowerStart;
    private int wakeStart;
    private double residual;
    private double critical = 9;
    private double pace = 1;
    private LayerEquations equations = new LayerEquations(1e5, 9);
    int iterations;

    CoupledSolver(DisplacedFlow flow) {
        this.flow = flow;
        method = flow.method();
        section = flow.sectionNodes();
        total = flow.size();
        unknowns = total - 2;
        width = unknowns + 3;
        place = new double[total];
        for (int i = 0; i < total; i++) {
            place[i] = flow.place(i);
        }
        undisplaced = new double[total];
        outer = new double[total];
        signed = new double[total];
        defect = new double[total];
        theta = new double[total];
        speed = new double[total];
        carried = new double[total];
        turbulent = new boolean[total];
        node = new int[unknowns];
        fixed = new boolean[unknowns];
        fixedStep = new double[unknowns];
        dTheta = new double[unknowns][width];
        dSpeed = new double[unknowns][width];
        dCarried = new double[unknowns][width];
        onset = new double[2][width];
        rememberedTheta = new double[total];
        rememberedSpeed = new double[total];
        rememberedDefect = new double[total];
        wakeTheta = new double[width];
        wakeSpeed = new double[width];
        wakeDefect = new double[width];
        wakeCarried = new double[width];
    }

    double shape(int i) {
        return defect[i] / (theta[i] * speed[i]);
    }

    /** Distance from the stagnation point. */
    double distance(int i) {
        return Math.max(Math.abs(place[i] - stagnationPlace), 1e-7);
    }

    double end(int side) {
        return distance(side == 0 ? 1 : section - 2);
    }

    /** Whether to go slowly: for cases that flutter at full pace. */
    void gentle(boolean slowly) {
        pace = slowly ? GENTLE : 1;
    }

    /** Starts afresh from the undisplaced flow with thin layers. */
    void start(double angle, double reynolds) {
        rememberedStagnation = -1;
        flow.undisplaced(angle, undisplaced);
        System.arraycopy(undisplaced, 0, outer, 0, total);
        stagnation = -1;
        locateStagnation();
        for (int i = 0; i < total; i++) {
            double s = Math.max(i < section ? distance(i) : place[section - 1] - stagnationPlace, 1e-6);
            speed[i] = Math.max(Math.abs(undisplaced[i]), 1e-3);
            theta[i] = 0.5 * Math.sqrt(s / (reynolds * speed[i])) * (i < section ? 1 : 2);
            defect[i] = (i < section ? 2.3 : 1.5) * theta[i] * speed[i];
            carried[i] = 0;
        }
        for (int side = 0; side < 2; side++) {
            transition[side] = Math.min(laminarSeparation(side) + 0.02, end(side) + FURTHEST);
        }
        sign();
    }

    /** Keeps a solution, and moves on to what the next equal step of angle will probably give: saves iterations. */
    void extrapolate() {
        boolean alike = rememberedStagnation == stagnation;
        step(theta, rememberedTheta, alike);
        step(speed, rememberedSpeed, alike);
        step(defect, rememberedDefect, alike);
        for (int side = 0; side < 2; side++) {
            double now = transition[side];
            double end = end(side);
            if (alike && now < end && rememberedTransition[side] < end) {
                double next = now + Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, now - rememberedTransition[side]));
                transition[side] = Math.min(Math.max(next, 0.5 * now), end);
            }
            rememberedTransition[side] = now;
        }
        rememberedStagnation = stagnation;
    }

    private static void step(double[] now, double[] before, boolean move) {
        for (int i = 0; i < now.length; i++) {
            double value = now[i];
            if (move) {
                now[i] = value * Math.min(Math.max(value / before[i], 0.8), 1.25);
            }
            before[i] = value;
        }
    }

    private double laminarSeparation(int side) {
        int step = side == 0 ? -1 : 1;
        int first = side == 0 ? stagnation : stagnation + 1;
        int count = side == 0 ? stagnation : section - 2 - stagnation;
        double[] x = new double[count];
        double[] v = new double[count];
        for (int k = 0; k < count; k++) {
            x[k] = distance(first + step * k);
            v[k] = Math.max(Math.abs(undisplaced[first + step * k]), 1e-6);
        }
        double at = Thwaites.separation(x, v, 1e-5);
        return Double.isNaN(at) ? x[count - 1] : at;
    }

    /**
     * Iterates to the solution at one angle from the present state.
     *
     * @return whether it converged
     */
    boolean solve(double angle, double reynolds, Disturbance disturbance, int most) {
        equations = new LayerEquations(reynolds, disturbance.criticalAmplification());
        critical = disturbance.criticalAmplification();
        flow.undisplaced(angle, undisplaced);
        sign();
        outerSpeeds();
        Arrays.fill(exits, 0);
        for (iterations = 1; iterations <= most; iterations++) {
            locateStagnation();
            placeTrips(disturbance);
            order();
            march();
            double change = step(reynolds);
            if (!(change < Double.POSITIVE_INFINITY)) {
                return false;
            }
            if (change < 3e-4) {
                return true;
            }
        }
        return false;
    }

    private void placeTrips(Disturbance disturbance) {
        for (int side = 0; side < 2; side++) {
            double x = side == 0 ? disturbance.upperTrip() : disturbance.lowerTrip();
            trip[side] = Double.POSITIVE_INFINITY;
            if (x <= 1) {
                int step = side == 0 ? -1 : 1;
                int k = side == 0 ? stagnation - STAGNATION_STATIONS : stagnation + 1 + STAGNATION_STATIONS;
                while (k > 1 && k < section - 2 && method.x(k) < x) {
                    k += step;
                }
                // Between two nodes, so that the station in whose stretch it lies does not change from step to step.
                int before = k - step;
                double part = (x - method.x(before)) / (method.x(k) - method.x(before));
                part = Math.min(Math.max(part, 0.1), 0.9);
                trip[side] = distance(before) + part * (distance(k) - distance(before));
                transition[side] = Math.min(transition[side], trip[side]);
            }
        }
    }

    private void sign() {
        for (int i = 0; i < total; i++) {
            signed[i] = i <= stagnation ? -defect[i] : defect[i];
        }
    }

    private void outerSpeeds() {
        for (int i = 0; i < total; i++) {
            outer[i] = undisplaced[i] + flow.change(i, signed);
        }
    }

    private void locateStagnation() {
        int found = -1;
        for (int i = 1; i < section - 2; i++) {
            if (outer[i] > 0 && outer[i + 1] <= 0 && (found < 0 || method.x(i) < method.x(found))) {
                found = i;
            }
        }
        if (found < 0) {
            found = Math.max(stagnation, section / 2);
        }
        int before = stagnation;
        if (before >= 0 && Math.abs(found - before) == 1 && Math.abs(outer[Math.max(found, before)]) < 0.06) {
            // A node that is nearly at rest keeps its side: no flutter from one iteration to the next.
            found = before;
        }
        stagnation = found;
        double drop = outer[found] - outer[found + 1];
        double part = drop > 1e-9 ? outer[found] / drop : 0.5;
        stagnationPlace = place[found] + Math.min(Math.max(part, -1), 2) * (place[found + 1] - place[found]);
        if (before >= 0 && before != found) {
            changeSides(before, found);
        }
    }

    private void changeSides(int before, int found) {
        int from = found > before ? before + 1 : found + 1;
        int to = Math.max(found, before);
        int model = found > before ? Math.max(before - 1, 1) : Math.min(before + 2, section - 2);
        for (int i = from; i <= to; i++) {
            double s = distance(i);
            speed[i] = Math.max(speed[model] / distance(model) * s, 1e-3);
            theta[i] = equations.stagnationThickness(s, speed[i]);
            defect[i] = LayerEquations.STAGNATION_SHAPE * theta[i] * speed[i];
        }
        sign();
    }

    private void order() {
        int c = 0;
        for (int k = stagnation; k > 0; k--) {
            node[c++] = k;
        }
        lowerStart = c;
        for (int k = stagnation + 1; k < section - 1; k++) {
            node[c++] = k;
        }
        wakeStart = c;
        for (int k = section; k < total; k++) {
            node[c++] = k;
        }
        for (int r = 0; r < unknowns; r++) {
            fixed[r] = r < STAGNATION_STATIONS || (r >= lowerStart && r < lowerStart + STAGNATION_STATIONS);
        }
    }

    // ---- one march with derivatives ----

    private void march() {
        residual = 0;
        Arrays.fill(cell, -1);
        Arrays.fill(reach, Double.NaN);
        Arrays.fill(lastGrowth, 0);
        for (int r = 0; r < unknowns; r++) {
            Arrays.fill(dTheta[r], 0);
            Arrays.fill(dSpeed[r], 0);
            Arrays.fill(dCarried[r], 0);
            if (fixed[r]) {
                stagnationStation(r);
            } else if (r < wakeStart) {
                surfaceStation(r);
            } else {
                wakeStation(r);
            }
        }
    }

    private void stagnationStation(int r) {
        int k = node[r];
        double v = Math.max(Math.abs(outer[k]), 1e-4);
        speed[k] = v;
        theta[k] = equations.stagnationThickness(distance(k), v);
        carried[k] = 0;
        turbulent[k] = false;
        fixedStep[r] = LayerEquations.STAGNATION_SHAPE * theta[k] * v - defect[k];
    }

    private void load(int from, int to) {
        in[LayerEquations.T1] = theta[from];
        in[LayerEquations.V1] = speed[from];
        in[LayerEquations.M1] = defect[from];
        in[LayerEquations.C1] = carried[from];
        in[LayerEquations.T2] = theta[to];
        in[LayerEquations.V2] = speed[to];
        in[LayerEquations.M2] = defect[to];
    }

    private void surfaceStation(int r) {
        int side = r < lowerStart ? 0 : 1;
        int k = node[r];
        int p = node[r - 1];
        double s1 = distance(p);
        double s2 = distance(k);
        load(p, k);
        double x = transition[side];
        in[LayerEquations.X] = x;
        out[LayerEquations.ONSET] = 0;
        equations.surface(s1, s2, in, out);
        boolean here = s1 < x && s2 > x;
        turbulent[k] = s2 > x;
        carried[k] = out[LayerEquations.CARRIED];
        if (!turbulent[k]) {
            lastAmplification[side] = carried[k];
            lastGrowth[side] = (carried[k] - in[LayerEquations.C1]) / (s2 - s1);
            if (carried[k] > critical && Double.isNaN(reach[side])) {
                reach[side] = s1 + (critical - in[LayerEquations.C1]) / lastGrowth[side];
            }
        }
        differentiate(here, x + 1e-7 < s2 ? 1e-7 : -1e-7, () -> equations.surface(s1, s2, in, moved));
        propagate(r, dTheta[r - 1], dSpeed[r - 1], dCarried[r - 1], unit(r - 1), here ? unknowns + side : -1,
                r < lowerStart ? 0 : lowerStart);
        if (here) {
            cell[side] = r;
            onsetRow(r, side);
        }
    }

    /** Derivatives of the amplification at the place of transition. */
    private void onsetRow(int r, int side) {
        double[] row = onset[side];
        int o = LayerEquations.ONSET;
        for (int j = 0; j < width; j++) {
            double before = jacobian[LayerEquations.T1][o] * dTheta[r - 1][j]
                    + jacobian[LayerEquations.V1][o] * dSpeed[r - 1][j]
                    + jacobian[LayerEquations.C1][o] * dCarried[r - 1][j];
            row[j] = before + jacobian[LayerEquations.T2][o] * dTheta[r][j] + jacobian[LayerEquations.V2][o] * dSpeed[r][j];
        }
        row[r - 1] += jacobian[LayerEquations.M1][o];
        row[r] += jacobian[LayerEquations.M2][o];
        row[unknowns + side] += jacobian[LayerEquations.X][o];
        row[unknowns + 2] += out[o];
    }

    private double[] unit(int r) {
        Arrays.fill(wakeDefect, 0);
        wakeDefect[r] = 1;
        return wakeDefect;
    }

    private void wakeStation(int r) {
        int k = node[r];
        double ds;
        if (r == wakeStart) {
            int a = node[lowerStart - 1];
            int b = node[wakeStart - 1];
            joinSides(a, b, lowerStart - 1, wakeStart - 1);
            in[LayerEquations.T2] = theta[k];
            in[LayerEquations.V2] = speed[k];
            in[LayerEquations.M2] = defect[k];
            ds = place[k] - place[section - 1];
        } else {
            load(node[r - 1], k);
            ds = place[k] - place[node[r - 1]];
        }
        equations.wake(ds, in, out);
        carried[k] = out[LayerEquations.CARRIED];
        turbulent[k] = true;
        differentiate(false, 0, () -> equations.wake(ds, in, moved));
        if (r == wakeStart) {
            propagate(r, wakeTheta, wakeSpeed, wakeCarried, wakeDefect, -1, 0);
        } else {
            propagate(r, dTheta[r - 1], dSpeed[r - 1], dCarried[r - 1], unit(r - 1), -1, 0);
        }
    }

    /** The wake starts with the layers of both sides together. */
    private void joinSides(int a, int b, int ra, int rb) {
        double t = theta[a] + theta[b];
        double v = 0.5 * (speed[a] + speed[b]);
        double da = defect[a] / speed[a];
        double db = defect[b] / speed[b];
        double ca = turbulent[a] ? carried[a] : 0.01;
        double cb = turbulent[b] ? carried[b] : 0.01;
        in[LayerEquations.T1] = t;
        in[LayerEquations.V1] = v;
        in[LayerEquations.M1] = v * (da + db);
        in[LayerEquations.C1] = (ca * theta[a] + cb * theta[b]) / t;
        for (int j = 0; j < width; j++) {
            wakeTheta[j] = dTheta[ra][j] + dTheta[rb][j];
            wakeSpeed[j] = 0.5 * (dSpeed[ra][j] + dSpeed[rb][j]);
            double dma = j == ra ? 1 : 0;
            double dmb = j == rb ? 1 : 0;
            wakeDefect[j] = wakeSpeed[j] * (da + db)
                    + v * ((dma - da * dSpeed[ra][j]) / speed[a] + (dmb - db * dSpeed[rb][j]) / speed[b]);
            double dca = turbulent[a] ? dCarried[ra][j] : 0;
            double dcb = turbulent[b] ? dCarried[rb][j] : 0;
            wakeCarried[j] = (dca * theta[a] + dcb * theta[b] + ca * dTheta[ra][j] + cb * dTheta[rb][j]
                    - in[LayerEquations.C1] * wakeTheta[j]) / t;
        }
    }

    private void differentiate(boolean withTransition, double transitionStep, Runnable evaluate) {
        for (int v = 0; v < LayerEquations.INPUTS; v++) {
            double[] column = jacobian[v];
            if (v == LayerEquations.X && !withTransition) {
                Arrays.fill(column, 0);
                continue;
            }
            double q = in[v];
            double e = v == LayerEquations.X
                    ? transitionStep
                    : 1e-6 * Math.abs(q) + (v == LayerEquations.C1 ? 1e-7 : 1e-12);
            in[v] = q + e;
            moved[LayerEquations.ONSET] = 0;
            evaluate.run();
            in[v] = q;
            for (int o = 0; o < LayerEquations.OUTPUTS; o++) {
                column[o] = o == LayerEquations.ONSET && !withTransition ? 0 : (moved[o] - out[o]) / e;
            }
        }
    }

    /** Derivatives of a station's state from those of the station before it and the equations between. */
    private void propagate(
            int r, double[] pTheta, double[] pSpeed, double[] pCarried, double[] pDefect, int transitionColumn, int from) {
        double a = out[LayerEquations.MOMENTUM];
        double b = out[LayerEquations.SHAPE];
        residual = Math.max(residual, Math.max(Math.abs(a), Math.abs(b)));
        double[] t1 = jacobian[LayerEquations.T1];
        double[] v1 = jacobian[LayerEquations.V1];
        double[] m1 = jacobian[LayerEquations.M1];
        double[] c1 = jacobian[LayerEquations.C1];
        double[] x = jacobian[LayerEquations.X];
        double[] t2 = jacobian[LayerEquations.T2];
        double[] v2 = jacobian[LayerEquations.V2];
        double[] m2 = jacobian[LayerEquations.M2];
        double det = t2[0] * v2[1] - v2[0] * t2[1];
        double[] th = dTheta[r];
        double[] sp = dSpeed[r];
        double[] ca = dCarried[r];
        for (int j = from; j < width; j++) {
            if (j == r + 1) {
                j = unknowns;
            }
            double p = t1[0] * pTheta[j] + v1[0] * pSpeed[j] + m1[0] * pDefect[j] + c1[0] * pCarried[j];
            double q = t1[1] * pTheta[j] + v1[1] * pSpeed[j] + m1[1] * pDefect[j] + c1[1] * pCarried[j];
            double c = t1[2] * pTheta[j] + v1[2] * pSpeed[j] + m1[2] * pDefect[j] + c1[2] * pCarried[j];
            if (j == r) {
                p += m2[0];
                q += m2[1];
                c += m2[2];
            } else if (j == transitionColumn) {
                p += x[0];
                q += x[1];
                c += x[2];
            } else if (j == unknowns + 2) {
                p += a;
                q += b;
            }
            th[j] = -(p * v2[1] - q * v2[0]) / det;
            sp[j] = -(t2[0] * q - t2[1] * p) / det;
            ca[j] = c + t2[2] * th[j] + v2[2] * sp[j];
        }
    }

    // ---- one Newton step ----

    /** Solves the system and moves; gives the largest relative change, infinite if it broke down. */
    private double step(double reynolds) {
        int n = unknowns + 2;
        double[][] a = new double[n][n];
        double[] right = new double[n];
        sign();
        for (int r = 0; r < unknowns; r++) {
            int i = node[r];
            if (fixed[r]) {
                a[r][r] = 1;
                right[r] = fixedStep[r];
                continue;
            }
            double sign = i <= stagnation || i >= section ? 1 : -1;
            double wanted = sign * (undisplaced[i] + flow.change(i, signed));
            right[r] = wanted - speed[i] - dSpeed[r][unknowns + 2];
            residual = Math.max(residual, Math.abs(wanted - speed[i]));
            double[] row = a[r];
            double[] d = dSpeed[r];
            for (int j = 0; j < unknowns; j++) {
                int k = node[j];
                double response = flow.response(i, k);
                if (k == 1) {
                    response += flow.response(i, 0);
                } else if (k == section - 2) {
                    response += flow.response(i, section - 1);
                }
                row[j] = k <= stagnation ? d[j] + sign * response : d[j] - sign * response;
            }
            row[unknowns] = d[unknowns];
            row[unknowns + 1] = d[unknowns + 1];
        }
        if (!(residual < 1e6)) {
            return Double.POSITIVE_INFINITY;
        }
        boolean[] free = new boolean[2];
        for (int side = 0; side < 2; side++) {
            int row = unknowns + side;
            free[side] = cell[side] >= 0 && residual < 0.5 && Math.abs(onset[side][row]) >= 1
                    && !(transition[side] >= trip[side] && onset[side][unknowns + 2] < 0);
            if (free[side]) {
                System.arraycopy(onset[side], 0, a[row], 0, n);
                right[row] = -onset[side][unknowns + 2];
            } else {
                a[row][row] = 1;
            }
        }
        if (residual > FADED) {
            double relaxation = pace * Math.max(1, pace / residual);
            for (int r = 0; r < unknowns; r++) {
                if (!fixed[r]) {
                    a[r][r] -= speed[node[r]] / (defect[node[r]] * relaxation);
                }
            }
        }
        return move(new DenseLu(a).solve(right), free, reynolds);
    }

    private double move(double[] dm, boolean[] free, double reynolds) {
        double part = 1;
        for (int side = 0; side < 2; side++) {
            part = Math.min(part, pace * LONGEST_STEP / Math.abs(dm[unknowns + side]));
        }
        double[] ft = new double[unknowns];
        double[] fv = new double[unknowns];
        for (int r = 0; r < unknowns; r++) {
            int i = node[r];
            double t = dTheta[r][unknowns + 2];
            double v = dSpeed[r][unknowns + 2];
            for (int j = 0; j < unknowns + 2; j++) {
                t += dTheta[r][j] * dm[j];
                v += dSpeed[r][j] * dm[j];
            }
            ft[r] = t;
            fv[r] = v;
            if (!fixed[r]) {
                double most = Math.max(Math.abs(t) / theta[i] / 0.5,
                        Math.max(Math.abs(v) / (speed[i] + 0.002) / 0.5, Math.abs(dm[r]) / defect[i] / 0.6));
                part = Math.min(part, 1 / most);
            }
        }
        if (!(part > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int r = 0; r < unknowns; r++) {
            part = fixed[r] ? part : keepShape(node[r], ft[r], fv[r], dm[r], part);
        }
        double change = 0;
        for (int r = 0; r < unknowns; r++) {
            int i = node[r];
            if (fixed[r]) {
                defect[i] += dm[r];
                continue;
            }
            theta[i] += part * ft[r];
            speed[i] = Math.max(speed[i] + part * fv[r], 1e-4);
            defect[i] = Math.max(defect[i] + part * dm[r], 1.001 * theta[i] * speed[i]);
            change = Math.max(change,
                    Math.max(Math.abs(ft[r]) / theta[i], Math.abs(dm[r]) / (defect[i] + 0.03 / Math.sqrt(reynolds))));
        }
        copyEnd(0, 1);
        copyEnd(section - 1, section - 2);
        sign();
        outerSpeeds();
        return Math.max(change, moveTransition(dm, free, part));
    }

    /** Shortens the step until the shape factor of a station keeps a sane value. */
    private double keepShape(int i, double t, double v, double m, double step) {
        double before = shape(i) - 1;
        double part = step;
        for (int z = 0; z < 40; z++) {
            double tn = theta[i] + part * t;
            double vn = speed[i] + part * v;
            double mn = defect[i] + part * m;
            double after = mn / (tn * vn) - 1;
            if (tn > 0 && vn > 0 && mn > 0 && after > 0.5 * before && after < 2 * before + 0.3) {
                break;
            }
            part *= 0.7;
        }
        return part;
    }

    private void copyEnd(int end, int from) {
        defect[end] = defect[from];
        theta[end] = theta[from];
        speed[end] = speed[from];
        carried[end] = carried[from];
        turbulent[end] = turbulent[from];
    }

    private double moveTransition(double[] dm, boolean[] free, double part) {
        double change = 0;
        for (int side = 0; side < 2; side++) {
            double end = end(side);
            double before = transition[side];
            double gap;
            if (exits[side] >= MOST_EXITS) {
                // With turbulence in the last panel only, waves just do not grow enough; without it they just do. The
                // layer counts as laminar then.
                transition[side] = end + FURTHEST;
                continue;
            }
            if (free[side]) {
                gap = dm[unknowns + side];
                transition[side] = Math.max(before + part * gap, 0.005);
                if (transition[side] > end) {
                    transition[side] = end + FURTHEST;
                    exits[side]++;
                }
            } else {
                double wanted = reach[side];
                if (Double.isNaN(wanted)) {
                    wanted = lastGrowth[side] > 0.5
                            ? Math.min(before, end) + (critical - lastAmplification[side]) / lastGrowth[side]
                            : Double.POSITIVE_INFINITY;
                }
                gap = Math.min(Math.min(wanted, end + FURTHEST), trip[side]) - before;
                if (residual < 0.3) {
                    transition[side] = before + pace * Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, 0.7 * gap));
                }
            }
            transition[side] = Math.min(transition[side], trip[side]);
            if (transition[side] < trip[side] || gap < 0) {
                change = Math.max(change, Math.abs(gap));
            }
        }
        return change;
    }
}
