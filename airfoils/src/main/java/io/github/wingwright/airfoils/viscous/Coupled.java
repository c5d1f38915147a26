// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.potential.*;

public final class Coupled {
    final PanelMethod pm; final int n, nt; final DisplacedFlow df; final double[] arc;
    public double nCrit = 9, ramp = 0.02, lambda = 1, ceStart = 1, kappa = 0.05, hMaxSY = 2.5;
    public double[] m, th, h, ce, amp, w, g, ue, g0; double[] big;
    public double cl, cm, cd, cdUp, cdLo, cdp, cdf, xtrU, xtrL, change; public int sweeps; int stag; double sStag;
    public boolean converged; boolean started;
    public Coupled(PanelMethod pm) {
        this.pm = pm; n = pm.size();
        df = new DisplacedFlow(pm, 24); nt = df.size();
        arc = new double[nt]; for (int i = 0; i < nt; i++) arc[i] = df.place(i);
        m = new double[nt]; th = new double[nt]; h = new double[nt]; ce = new double[nt]; amp = new double[nt]; w = new double[nt]; g = new double[nt]; g0 = new double[nt]; ue = new double[nt]; big = new double[nt];
    }
    double re, nu;
    void updateG() { for (int i = 0; i < nt; i++) g[i] = row(i); }
    double row(int i) { return g0[i] + df.change(i, big); }
    void findStag() { int best = -1; for (int i = 1; i < n - 2; i++) if (g[i] > 0 && g[i + 1] <= 0 && (best < 0 || pm.x(i) < pm.x(best))) best = i;
        if (best < 0) throw new IllegalStateException("no stagnation"); stag = best; sStag = arc[best] + (arc[best + 1] - arc[best]) * g[best] / (g[best] - g[best + 1]); }
    void signs() { for (int i = 0; i < nt; i++) big[i] = i <= stag ? -m[i] : m[i]; }
    public void solve(double alpha, double reynolds, int maxSweeps) {
        re = reynolds; nu = 1 / re; df.undisplaced(alpha, g0);
        if (!started) { System.arraycopy(g0, 0, g, 0, nt); findStag();
            for (int i = 0; i < n; i++) { double s = Math.abs(arc[i] - sStag); m[i] = 1.72 * Math.sqrt(nu * (s + 1e-4)) * Math.sqrt(Math.abs(g[i]) + .01); }
            for (int i = n; i < nt; i++) m[i] = (m[0] + m[n - 1]) * 0.8; started = true; }
        converged = false;
        for (sweeps = 1; sweeps <= maxSweeps; sweeps++) {
            signs(); updateG(); findStag(); signs();
            change = 0; xchange = 0;
            march(-1); march(1); wake();
            if (Boolean.getBoolean("hist")) System.out.printf("%d %.2e at %d x %.3f st %d xtr %.4f %.4f%n", sweeps, change, worst, worst < n ? pm.x(worst) : 9, stag, xs[0], xs[1]);
            if (change < 1e-3 && xchange < 2e-4) { converged = true; break; }
        }
        signs(); updateG(); forces(alpha);
    }
    // local state
    double t1, h1, u1, t2, h2, u2, ds, wt, ce1, ce2, hs1, dis1, cfl1, cft1, ent1;
    double ra, rb;
    void residual(double T, double Hh, double U) {
        double re2 = Math.max(U * T / nu, 1);
        double tm = 0.5 * (t1 + T), lu = Math.log(U / u1), hm = 0.5 * (h1 + Hh);
        double cfl = 0, cft = 0, dis = 0, hs = 0;
        double cfm = 0;
        if (wt < 1) { hs = SimilarLayers.energyShape(Hh); cfl = 2 * SimilarLayers.shear(Hh) / re2; dis = SimilarLayers.dissipation(Hh) / re2; cfm += (1 - wt) * 0.5 * (cfl + cfl1); }
        if (wt > 0) { cft = Entrainment.cf(Hh, re2); if (inWake) cft = 0; cfm += wt * 0.5 * (cft + cft1); }
        ra = (T - t1 - ds * cfm / 2 + (hm + 2) * tm * lu) / t1;
        rb = 0;
        double lt = Math.log(Math.max(Hh - 1, 1e-6) / Math.max(h1 - 1, 1e-6));
        if (inWake) {
            double tw = tm / 2, tt = hm - 1, grad = tw * lu / ds;
            double rate = Entrainment.lagWake(ce1, hm, grad, 0.5) / tw;
            double eps = 1e-4; double dr = (Entrainment.lagWake(ce1 + eps, hm, grad, 0.5) / tw - rate) / eps;
            ce2 = Math.max(ce1 + ds * rate / (1 - Math.min(dr, 0) * ds), 1e-5);
            double p = 3.15 * tt + 1.72 - 0.01 * tt * tt * tt; // t*H1
            rb = lt + (ds * 0.5 * (ce1 + ce2) * tt / tw + p * (hm + 1) * lu) / (1.72 + 0.02 * tt * tt * tt);
            return;
        }
        if (wt < 1) { double hsm = 0.5 * (hs + hs1);
            double r = (hs - hs1) - ds / tm * ((dis + dis1) - hsm * 0.5 * (cfl + cfl1) / 2) - (hm - 1) * hsm * lu;
            rb += (1 - wt) * r * 5 * (wt > 0 ? Math.tanh((h1 - 4) / 0.5) : 1); }
        if (wt > 0) { double tt = hm - 1;
            double grad = tm * lu / ds;
            double rate = Entrainment.lag(ce1, hm, re2, grad, lambda) / tm;
            double eps = 1e-4; double dr = (Entrainment.lag(ce1 + eps, hm, re2, grad, lambda) / tm - rate) / eps;
            ce2 = Math.max(ce1 + ds * rate / (1 - Math.min(dr, 0) * ds), 1e-5); 
            double p = 3.15 * tt + 1.72 - 0.01 * tt * tt * tt;
            double r = lt + (ds / tm * (0.5 * (ce1 + ce2) * tt - p * 0.5 * (cft + cft1) / 2) + p * (hm + 1) * lu) / (1.72 + 0.02 * tt * tt * tt);
            rb += wt * r; }
    }
    void march(int dir) {
        int k = dir < 0 ? stag : stag + 1, prev = -1; double s1 = 0; double xtr = Double.NaN; boolean turb = false; double xt = dir < 0 ? 2 : 2;
        int te = dir < 0 ? 0 : n - 1;
        for (; k > 0 && k < n - 1; k += dir) {
            boolean last = k + dir == te;
            double s = Math.abs(arc[k] - sStag); if (s < 1e-7) s = 1e-7;
            double sg = dir < 0 ? 1 : -1;
            double bigSign = dir < 0 ? -1 : 1;
            double un = sg * row(k);
            double dd = sg * (df.response(k, k) + (last ? df.response(k, te) : 0)) * bigSign; // due/dm
            if (last) { m[te] = m[k]; big[te] = bigSign * m[k]; un = sg * row(k); }
            if (Math.abs(k - (dir < 0 ? stag : stag + 1)) < 5) { dd = 0; un = Math.max(un, 0.02); }
            double rest = un - dd * m[k];
            if (prev < 0) {
                double U = Math.max(un, 1e-3); th[k] = 0.29234 * Math.sqrt(nu * s / U); h[k] = 2.216; ue[k] = U; amp[k] = 0; w[k] = 0; ce[k] = 0;
                double mn = U * th[k] * h[k]; m[k] = mn; big[k] = bigSign * mn; prev = k; s1 = s; continue; }
            t1 = th[prev]; h1 = h[prev]; u1 = ue[prev]; ds = s - s1;
            ce1 = ce[prev];
            double rr1 = Math.max(u1 * t1 / nu, 1);
            hs1 = SimilarLayers.energyShape(h1); cfl1 = 2 * SimilarLayers.shear(h1) / rr1; dis1 = SimilarLayers.dissipation(h1) / rr1; cft1 = Entrainment.cf(h1, rr1);
            int side = dir < 0 ? 0 : 1; double X = xs[side];
            double rl = Math.max(ramp, 2 * ds), w2 = 0;
            if (s <= X) wt = 0;
            else if (s1 < X) { w2 = Math.min(1, (s - X) / rl); wt = 0.5 * w2 * (s - X) / ds; ce1 = ceStart * Math.max(Entrainment.equilibrium(Math.min(h1, 6), cft1), 1e-3); }
            else { w2 = Math.min(1, (s - X) / rl); wt = 0.5 * (Math.min(1, (s1 - X) / rl) + w2); }
            local(k, rest, dd);
            if (s <= X) {
                double rate = Amplification.rate(0.5 * (h1 + h2), 0.5 * (t1 + t2), Math.max(0.5 * (u1 + u2) * 0.5 * (t1 + t2) / nu, 5));
                double a = amp[prev] + ds * rate; amp[k] = a;
                if (a > nCrit && Double.isNaN(xtr)) xtr = s1 + ds * (nCrit - amp[prev]) / (a - amp[prev]);
                lastN = a; lastRate = rate; lastS = s;
            } else amp[k] = nCrit;
            w[k] = w2; ce[k] = wt > 0 ? ce2 : 0;
            double mn = u2 * t2 * h2;
            note(k, Math.abs(mn - m[k]) / (mn + 2e-4));
            m[k] = mn; big[k] = bigSign * mn; th[k] = t2; h[k] = h2; ue[k] = u2;
            prev = k; s1 = s;
            if (last) { m[te] = mn; big[te] = big[k]; th[te] = t2; h[te] = h2; ue[te] = u2; w[te] = w[k]; ce[te] = ce[k]; amp[te] = amp[k]; }
        }
        int sd = dir < 0 ? 0 : 1; double end = Math.abs(arc[te] - sStag);
        double target = !Double.isNaN(xtr) ? xtr : lastRate > 0 ? lastS + (nCrit - lastN) / lastRate : 9; target = Math.min(target, end + 0.05);
        if (xs[sd] > 8) xs[sd] = target; else { double step = xRelax * Math.max(-0.08, Math.min(0.08, target - xs[sd])); xs[sd] += step; xchange = Math.max(xchange, Math.abs(step)); }
        xt = xs[sd] >= end ? 2 : at(xs[sd], dir); if (dir < 0) xtrU = xt; else xtrL = xt;
    }
    public int worst; void note(int k, double c) { if (c > change) { change = c; worst = k; } }
    boolean inWake;
    void wake() {
        inWake = true;
        t1 = th[0] + th[n - 1]; h1 = (th[0] * h[0] + th[n - 1] * h[n - 1]) / t1; u1 = 0.5 * (ue[0] + ue[n - 1]);
        double c = Math.max(ce[0] * th[0] + ce[n - 1] * th[n - 1], 1e-9) / t1; ce1 = Math.max(c, 0.01);
        double s1 = arc[n - 1];
        for (int k = n; k < nt; k++) {
            ds = arc[k] - s1; wt = 1; cft1 = 0; 
            double dd = df.response(k, k), rest = row(k) - dd * m[k];
            local(k, rest, dd);
            double mn = u2 * t2 * h2; note(k, Math.abs(mn - m[k]) / (mn + 2e-4));
            m[k] = mn; big[k] = mn; th[k] = t2; h[k] = h2; ue[k] = u2; ce[k] = ce2; w[k] = 1;
            t1 = t2; h1 = h2; u1 = u2; ce1 = ce2; s1 = arc[k];
        }
        inWake = false;
    }
    void local(int k, double rest, double dd) {
        double T = th[k] > 0 ? th[k] : t1, Hh = h[k] > 0 ? h[k] : h1, U = ue[k] > 0 ? ue[k] : u1;
        Hh = Math.min(Math.max(Hh, 1.3), 20);
        for (int it = 0; it < 25; it++) {
            residual(T, Hh, U); double a = ra, b = rb, c = U - rest - dd * U * T * Hh;
            double eT = 1e-6 * T, eH = 1e-6 * Hh, eU = 1e-6 * U;
            residual(T + eT, Hh, U); double aT = (ra - a) / eT, bT = (rb - b) / eT, cT = -dd * U * Hh;
            residual(T, Hh + eH, U); double aH = (ra - a) / eH, bH = (rb - b) / eH, cH = -dd * U * T;
            residual(T, Hh, U + eU); double aU = (ra - a) / eU, bU = (rb - b) / eU, cU = 1 - dd * T * Hh;
            double det = aT * (bH * cU - bU * cH) - aH * (bT * cU - bU * cT) + aU * (bT * cH - bH * cT);
            double dT = -(a * (bH * cU - bU * cH) - aH * (b * cU - bU * c) + aU * (b * cH - bH * c)) / det;
            double dH = -(aT * (b * cU - bU * c) - a * (bT * cU - bU * cT) + aU * (bT * c - b * cT)) / det;
            double dU = -(aT * (bH * c - b * cH) - aH * (bT * c - b * cT) + a * (bT * cH - bH * cT)) / det;
            double sc = 1; sc = Math.min(sc, 0.3 * T / Math.abs(dT)); sc = Math.min(sc, 0.3 * Hh / Math.abs(dH)); sc = Math.min(sc, 0.2 * U / Math.abs(dU));
            if (!(sc > 0)) break;
            T += sc * dT; Hh += sc * dH; U += sc * dU; Hh = Math.min(Math.max(Hh, 1.001), 30);
            if (Math.abs(dT) < 1e-7 * T && Math.abs(dH) < 1e-7 * Hh && Math.abs(dU) < 1e-7 * U) break;
        }
        t2 = T; h2 = Hh; u2 = U; residual(T, Hh, u2);
    }

    // ---------- Newton ----------
    public double omega0 = Double.parseDouble(System.getProperty("om", "1")), omegaK = Double.parseDouble(System.getProperty("ok", "0.1")); public int newtons; public double resid;
    double[] out = new double[4]; double[] base = new double[4]; double[] in = new double[8];
    double sA, sB, rampLocal, xRes; int kind; // 0 start 1 surface 2 wake
    /** in: T1,U1,m1,C1,X1,T2,U2,m2 -> out: Ra,Rb,C2,X2 */
    void station(double[] q, double[] o) {
        double T = q[5], U = q[6], Hh = q[7] / (U * T);
        if (kind == 0) { o[0] = (T - 0.29234 * Math.sqrt(nu * sB / U)) / T; o[1] = Hh - 2.216; o[2] = 0; o[3] = q[4]; return; }
        t1 = q[0]; u1 = q[1]; h1 = q[2] / (u1 * t1); ds = sB - sA;
        double rr1 = Math.max(u1 * t1 / nu, 1);
        if (kind == 2) { wt = 1; cft1 = 0; ce1 = q[3]; inWake = true; residual(T, Hh, U); inWake = false; o[0] = ra; o[1] = rb; o[2] = ce2; o[3] = q[4]; return; }
        hs1 = SimilarLayers.energyShape(h1); cfl1 = 2 * SimilarLayers.shear(h1) / rr1; dis1 = SimilarLayers.dissipation(h1) / rr1; cft1 = Entrainment.cf(h1, rr1);
        double X = q[4];
        if (sB <= X) {
            double tm = 0.5 * (t1 + T), um = 0.5 * (u1 + U);
            double a = q[3] + ds * Amplification.rate(0.5 * (h1 + Hh), tm, Math.max(um * tm / nu, 5));
            wt = 0; residual(T, Hh, U); o[0] = ra; o[1] = rb; o[2] = a; o[3] = X; return;
        } else if (sA < X) {
            double mx = q[2] + (q[7] - q[2]) * (X - sA) / ds;
            ds = X - sA; wt = 0;
            double tx = t1 + (T - t1) * 0, ux = u1;
            for (int z = 0; z < 30; z++) {
                residual(tx, mx / (tx * ux), ux); double a0 = ra, b0 = rb; double eT = 1e-6 * tx, eU = 1e-6 * ux;
                residual(tx + eT, mx / ((tx + eT) * ux), ux); double aT = (ra - a0) / eT, bT = (rb - b0) / eT;
                residual(tx, mx / (tx * (ux + eU)), ux + eU); double aU = (ra - a0) / eU, bU = (rb - b0) / eU;
                double det = aT * bU - aU * bT, dt = -(a0 * bU - b0 * aU) / det, du = -(aT * b0 - bT * a0) / det;
                double sc = Math.min(1, Math.min(0.3 * tx / Math.abs(dt), 0.3 * ux / Math.abs(du)));
                tx += sc * dt; ux += sc * du;
                if (Math.abs(dt) < 1e-13 * tx && Math.abs(du) < 1e-13 * ux) break;
            }
            double hx = mx / (tx * ux), ta = 0.5 * (t1 + tx), ua = 0.5 * (u1 + ux);
            xRes = q[3] + (X - sA) * Amplification.rate(0.5 * (h1 + hx), ta, Math.max(ua * ta / nu, 5)) - nCrit;
            t1 = tx; u1 = ux; h1 = hx; ds = sB - X; wt = 1;
            double rx = Math.max(ux * tx / nu, 1); cft1 = Entrainment.cf(h1, rx);
            ce1 = ceStart * Math.max(Entrainment.equilibrium(Math.min(h1, 6), cft1), 1e-3);
        } else { wt = 1; ce1 = q[3]; }
        residual(T, Hh, U); o[0] = ra; o[1] = rb; o[2] = ce2; o[3] = xRes;
    }
    public void init(double alpha, double reynolds) {
        re = reynolds; nu = 1 / re; df.undisplaced(alpha, g0); System.arraycopy(g0, 0, g, 0, nt); findStag();
        for (int i = 0; i < nt; i++) { double s = i < n ? Math.abs(arc[i] - sStag) : arc[n-1] - sStag; s = Math.max(s, 1e-6); ue[i] = Math.max(Math.abs(g0[i]), 1e-3);
            th[i] = 0.5 * Math.sqrt(nu * s / ue[i]) * (i < n ? 1 : 2); h[i] = i < n ? 2.3 : 1.5; m[i] = h[i] * th[i] * ue[i]; }
        started = true; signs(); xs[0] = thwaites(-1) + 0.02; xs[1] = thwaites(1) + 0.02; relax[0] = relax[1] = xRelax; last[0] = last[1] = 0;
    }
    public boolean newton(double alpha, double reynolds, int maxIt) {
        re = reynolds; nu = 1 / re; df.undisplaced(alpha, g0);
        signs(); updateG();
        int nn = nt - 2, W = nn + 3, R = nn + 2;
        double[] X = new double[nt]; final int NS = 3; double[] fixed = new double[nn];
        converged = false;
        for (newtons = 1; newtons <= maxIt; newtons++) {
            int oldStag = stag; findStag2();
            int[] node = new int[nn]; int c = 0;
            for (int k = stag; k > 0; k--) node[c++] = k; int lowerStart = c;
            for (int k = stag + 1; k < n - 1; k++) node[c++] = k; int wakeStart = c;
            for (int k = n; k < nt; k++) node[c++] = k;
            double[][] dT = new double[nn][W], dU = new double[nn][W], dC = new double[nn][W], dX = new double[nn][W]; int[] cell = {-1, -1};
            resid = 0; double[] target = {Double.NaN, Double.NaN}; double[] lastN = new double[2], lastRate = new double[2];
            for (int r = 0; r < nn; r++) {
                int k = node[r]; double[] pT = null, pU = null, pC = null, pX = null, pM = null;
                in[5] = th[k]; in[6] = ue[k]; in[7] = m[k];
                sB = Math.max(Math.abs(arc[k] - sStag), 1e-7);
                int prevIdx = -1;
                if (r < NS || (r >= lowerStart && r < lowerStart + NS)) kind = 0;
                else if (r == wakeStart) {
                    kind = 2; int a = lowerStart - 1, b = wakeStart - 1, na = node[a], nb = node[b];
                    double ta = th[na], tb = th[nb], t = ta + tb;
                    double ca = w[na] == 0 ? 0.01 : ce[na], cb = w[nb] == 0 ? 0.01 : ce[nb];
                    in[0] = t; in[1] = 0.5 * (ue[na] + ue[nb]); in[2] = in[1] * (m[na] / ue[na] + m[nb] / ue[nb]); in[3] = (ca * ta + cb * tb) / t; in[4] = 0;
                    sA = arc[n - 1]; sB = arc[k];
                    pT = new double[W]; pU = new double[W]; pC = new double[W]; pX = new double[W]; pM = new double[W];
                    double dsa = m[na] / ue[na], dsb = m[nb] / ue[nb];
                    for (int j = 0; j < W; j++) { pT[j] = dT[a][j] + dT[b][j]; pU[j] = 0.5 * (dU[a][j] + dU[b][j]);
                        double dma = j == a ? 1 : 0, dmb = j == b ? 1 : 0;
                        pM[j] = pU[j] * (dsa + dsb) + in[1] * ((dma - dsa * dU[a][j]) / ue[na] + (dmb - dsb * dU[b][j]) / ue[nb]);
                        double dca = w[na] == 0 ? 0 : dC[a][j], dcb = w[nb] == 0 ? 0 : dC[b][j];
                        pC[j] = (dca * ta + dcb * tb + ca * dT[a][j] + cb * dT[b][j] - in[3] * pT[j]) / t; }
                } else {
                    kind = r > wakeStart ? 2 : 1; int p = node[r - 1]; prevIdx = r - 1;
                    in[0] = th[p]; in[1] = ue[p]; in[2] = m[p]; in[3] = kind == 2 ? ce[p] : w[p] == 0 ? amp[p] : ce[p]; in[4] = xs[r < lowerStart ? 0 : 1];
                    sA = kind == 2 ? arc[p] : Math.max(Math.abs(arc[p] - sStag), 1e-7); if (kind == 2) { sB = arc[k]; in[4] = 0; }
                    pT = dT[r - 1]; pU = dU[r - 1]; pC = dC[r - 1]; pX = dX[r - 1];
                }
                rampLocal = Math.max(ramp, 2 * Math.abs(sB - sA));
                if (kind == 0) { // similar layer near the stagnation point, lagged
                    double U = Math.max(Math.abs(g[k]), 1e-4); ue[k] = U; th[k] = 0.29234 * Math.sqrt(nu * sB / U); h[k] = 2.216; amp[k] = 0; w[k] = 0; ce[k] = 0; X[k] = Double.NaN;
                    fixed[r] = 2.216 * th[k] * U - m[k]; continue; }
                station(in, base);
                double Ra = base[0], Rb = base[1], C2 = base[2], X2 = base[3];
                int side = r < lowerStart ? 0 : 1;
                if (kind == 2) { ce[k] = C2; w[k] = 1; } else if (sB <= xs[side]) { amp[k] = C2; ce[k] = 0; w[k] = 0;
                    if (Double.isNaN(target[side]) && C2 > nCrit) target[side] = sA + (sB - sA) * (nCrit - in[3]) / (C2 - in[3]);
                    lastN[side] = C2; lastRate[side] = (C2 - in[3]) / (sB - sA); lastPlace[side] = sB;
                } else { ce[k] = C2; w[k] = 1; amp[k] = nCrit; }
                resid = Math.max(resid, Math.max(Math.abs(Ra), Math.abs(Rb)));
                double[][] jac = new double[8][4];
                for (int v = 0; v < 8; v++) {
                    if (kind == 0 && v < 5) continue; if (v == 4 && !(kind == 1 && sA < xs[side] && sB > xs[side])) continue;
                    double q = in[v], e = v == 4 ? (q + 1e-7 < sB ? 1e-7 : -1e-7) : 1e-6 * Math.abs(q) + (v == 3 ? 1e-7 : 1e-12);
                    in[v] = q + e; station(in, out); in[v] = q;
                    for (int o = 0; o < 4; o++) { double d0 = (out[o] - base[o]) / e; jac[v][o] = Double.isFinite(d0) ? d0 : 0; }
                }
                double det = jac[5][0] * jac[6][1] - jac[6][0] * jac[5][1];
                if (Boolean.getBoolean("dbg")) System.out.println(k+" kind "+kind+" in "+java.util.Arrays.toString(in)+" out "+java.util.Arrays.toString(base)+" det "+det);
                double[] tT = dT[r], tU = dU[r], tC = dC[r], tX = dX[r];
                boolean tr = kind == 1 && sA < xs[side] && sB > xs[side]; if (tr) cell[side] = r;
                for (int j = 0; j < W; j++) {
                    double a = j == R ? Ra : 0, b = j == R ? Rb : 0, cc = 0, xx = tr && j == R ? base[3] : 0;
                    if (kind != 0) {
                        double pm1 = pM != null ? pM[j] : j == prevIdx ? 1 : 0;
                        a += jac[0][0] * pT[j] + jac[1][0] * pU[j] + jac[2][0] * pm1 + jac[3][0] * pC[j];
                        b += jac[0][1] * pT[j] + jac[1][1] * pU[j] + jac[2][1] * pm1 + jac[3][1] * pC[j];
                        cc += jac[0][2] * pT[j] + jac[1][2] * pU[j] + jac[2][2] * pm1 + jac[3][2] * pC[j];
                        xx += jac[0][3] * pT[j] + jac[1][3] * pU[j] + jac[2][3] * pm1 + jac[3][3] * pC[j];
                    }
                    if (tr && j == nn + side) { a += jac[4][0]; b += jac[4][1]; cc += jac[4][2]; xx += jac[4][3]; }
                    if (j == r) { a += jac[7][0]; b += jac[7][1]; cc += jac[7][2]; xx += jac[7][3]; }
                    if (a != 0 || b != 0) { tT[j] = -(a * jac[6][1] - b * jac[6][0]) / det; tU[j] = -(jac[5][0] * b - jac[5][1] * a) / det; }
                    tC[j] = cc + jac[5][2] * tT[j] + jac[6][2] * tU[j]; tX[j] = xx + jac[5][3] * tT[j] + jac[6][3] * tU[j];
                }
            }
            // global: U_i + dU - sgn(g0 + D M) = 0
            double[][] J = new double[nn + 2][nn + 2]; double[] rhs = new double[nn + 2];
            signs();
            for (int r = 0; r < nn; r++) {
                if (r < NS || (r >= lowerStart && r < lowerStart + NS)) { J[r][r] = 1; rhs[r] = fixed[r]; continue; }
                int i = node[r]; double sg = i <= stag ? 1 : i < n ? -1 : 1;
                double gi = sg * row(i);
                rhs[r] = gi - ue[i] - dU[r][R]; J[r][nn] = dU[r][nn]; J[r][nn + 1] = dU[r][nn + 1]; resid = Math.max(resid, Math.abs(gi - ue[i]));
                for (int j = 0; j < nn; j++) { int kk = node[j]; double dd = df.response(i, kk); if (kk == 1) dd += df.response(i, 0); if (kk == n - 2) dd += df.response(i, n - 1);
                    J[r][j] = dU[r][j] - sg * dd * (kk <= stag ? -1 : 1); }
            }
            for (int side = 0; side < 2; side++) { int r = cell[side]; int row = nn + side;
                if (r < 0 || resid > 0.5 || Math.abs(dX[r][row]) < 1) { J[row][row] = 1; rhs[row] = 0; freeX[side] = false; }
                else { System.arraycopy(dX[r], 0, J[row], 0, nn + 2); rhs[row] = -dX[r][R]; freeX[side] = true; } }
            double om = omega0 * Math.max(1, Math.pow(1 / Math.max(resid, 1e-9), 1.0) * omegaK);
            if (resid > 1e-3) for (int r = 0; r < nn; r++) if (J[r][r] != 1 || fixed[r] == 0) { int i = node[r]; J[r][r] -= ue[i] / (m[i] * om); }
            double[] dm = new Lu(J).solve(rhs);
            double sc = 1; int lim = -1;
            for (int side = 0; side < 2; side++) if (Math.abs(dm[nn + side]) * sc > xStep) { sc = xStep / Math.abs(dm[nn + side]); lim = -2; }
            double[] fT = new double[nn], fU = new double[nn];
            for (int r = 0; r < nn; r++) {
                int i = node[r]; double a = dT[r][R], b = dU[r][R];
                for (int j = 0; j < nn + 2; j++) { a += dT[r][j] * dm[j]; b += dU[r][j] * dm[j]; }
                fT[r] = a; fU[r] = b;
                if (r < NS || (r >= lowerStart && r < lowerStart + NS)) continue;
                double q = Math.max(Math.abs(a) / th[i] / 0.5, Math.max(Math.abs(b) / (ue[i] + 0.002) / 0.5, Math.abs(dm[r]) / m[i] / 0.6));
                if (q * sc > 1) { sc = 1 / q; lim = i; }
            }
            for (int r = 0; r < nn; r++) { int i = node[r]; double t0 = h[i] - 1; if (r < NS || (r >= lowerStart && r < lowerStart + NS)) continue;
                for (int z = 0; z < 40; z++) { double tn = th[i] + sc * fT[r], un = ue[i] + sc * fU[r], mn = m[i] + sc * dm[r]; double hn = mn / (tn * un) - 1;
                    if (tn > 0 && un > 0 && mn > 0 && hn > 0.5 * t0 && hn < 2 * t0 + 0.3) break; sc *= 0.7; lim = i; } }
            change = 0;
            for (int r = 0; r < nn; r++) { int i = node[r]; if (r < NS || (r >= lowerStart && r < lowerStart + NS)) { m[i] += dm[r]; continue; } th[i] += sc * fT[r]; ue[i] = Math.max(ue[i] + sc * fU[r], 1e-4); m[i] += sc * dm[r];
                double hh = m[i] / (th[i] * ue[i]); if (hh < 1.001) { m[i] = 1.001 * th[i] * ue[i]; } h[i] = m[i] / (th[i] * ue[i]); note(i, Math.max(Math.abs(fT[r]) / th[i], Math.abs(dm[r]) / (m[i] + 1e-4))); }
            m[0] = m[1]; th[0] = th[1]; h[0] = h[1]; ue[0] = ue[1]; ce[0] = ce[1]; amp[0] = amp[1]; w[0] = w[1];
            m[n-1] = m[n-2]; th[n-1] = th[n-2]; h[n-1] = h[n-2]; ue[n-1] = ue[n-2]; ce[n-1] = ce[n-2]; amp[n-1] = amp[n-2]; w[n-1] = w[n-2];
            signs(); updateG();
            xchange = 0;
            for (int side = 0; side < 2; side++) {
                double end = side == 0 ? sStag - arc[1] : arc[n - 2] - sStag;
                double t = target[side];
                if (Double.isNaN(t)) t = lastRate[side] > 0.5 ? lastPlace[side] + (nCrit - lastN[side]) / lastRate[side] : 9;
                if (freeX[side]) { double st = sc * dm[nn + side]; xs[side] = Math.max(xs[side] + st, 0.005); xchange = Math.max(xchange, Math.abs(st)); if (xs[side] > end) xs[side] = end + 0.01; continue; }
                double gap = Math.min(t, end + 0.02) - xs[side];
                xchange = Math.max(xchange, Math.abs(gap));
                if (resid > 0.3) { continue; }
                double slope = (gap - last[side]) / (xs[side] - lastX[side]);
                double step = Math.abs(xs[side] - lastX[side]) > 1e-9 && Math.abs(gap) < 0.1 && slope < -0.3 ? -gap / Math.max(slope, -20) : 0.7 * gap;
                if (Math.abs(step) < 2e-5) step = gap; if (Math.abs(gap) < 1e-5) continue;
                double most = resid > 0.1 ? xStep / 2 : xStep;
                step = Math.min(Math.max(step, -most), most);
                last[side] = gap; lastX[side] = xs[side];
                xs[side] += step;
            }
            xtrU = xs[0] > sStag - arc[1] ? 2 : at(xs[0], -1); xtrL = xs[1] > arc[n - 2] - sStag ? 2 : at(xs[1], 1);
            if (Boolean.getBoolean("hist")) System.out.printf("N %d change %.2e at %d x %.3f xs %.4f %.4f resid %.2e sc %.3f at %d st %d xtr %.4f %.4f%n", newtons, change, worst, worst < n ? pm.x(worst) : 9, xs[0], xs[1], resid, sc, lim, stag, xtrU, xtrL);
            if (change < 3e-4 && xchange < 5e-4) { converged = true; break; }
        }
        forces(alpha);
        return converged;
    }
    double lastN, lastRate, lastS; boolean[] freeX = new boolean[2]; public double xRelax = Double.parseDouble(System.getProperty("xr","0.5")), xStep = Double.parseDouble(System.getProperty("xst","0.04")), x0 = Double.parseDouble(System.getProperty("x0","0.4")); double[] lastPlace = new double[2], relax = {0.5, 0.5}, last = new double[2], lastX = {9, 9}; public double xchange; public double[] xs = {9, 9};
    double at(double s, int dir) { for (int k = dir < 0 ? stag : stag + 1; k > 0 && k < n - 1; k += dir) if (Math.abs(arc[k] - sStag) > s) return pm.x(k); return 2; }
    void findStag2() { int old = stag; findStag();
        if (Math.abs(stag - old) == 1) { int border = Math.max(stag, old); if (Math.abs(g[border]) < 0.06) { stag = old; sStag = arc[old] + (arc[old + 1] - arc[old]) * g[old] / (g[old] - g[old + 1]); } }
        if (stag > old) for (int i = old + 1; i <= stag; i++) flip(i, Math.max(old - 1, 1)); else for (int i = stag + 1; i <= old; i++) flip(i, Math.min(old + 2, n - 2)); signs(); }
    /** distance from stagnation at which Thwaites's method separates in the given speeds, or the end */
    double thwaites(int dir) {
        double sum = 0, sp = 0, up = 0; int te = dir < 0 ? 0 : n - 1;
        for (int k = dir < 0 ? stag : stag + 1; k > 0 && k < n - 1; k += dir) {
            double s = Math.abs(arc[k] - sStag), u = Math.max(Math.abs(g0[k]), 1e-6);
            if (sp == 0) sum = Math.pow(u, 5) * s / 6; else sum += 0.5 * (Math.pow(u, 5) + Math.pow(up, 5)) * (s - sp);
            double t2 = 0.45 * nu / Math.pow(u, 6) * sum; 
            if (sp > 0 && t2 * (u - up) / (s - sp) / nu < -0.09) return s;
            sp = s; up = u;
        }
        return sp;
    }
    void flip(int i, int from) { double s = Math.max(Math.abs(arc[i] - sStag), 1e-6); double a = ue[from] / Math.max(Math.abs(arc[from] - sStag), 1e-6); ue[i] = Math.max(a * s, 1e-3); th[i] = 0.29234 * Math.sqrt(nu * s / ue[i]); m[i] = 2.216 * th[i] * ue[i]; h[i] = 2.216; }
    void forces(double al) {
        double fx = 0, fy = 0, mm = 0, fr = 0;
        for (int j = 0; j < n - 1; j++) { double a = g[j], b = g[j + 1]; double cp = 1 - (a * a + a * b + b * b) / 3;
            double ex = pm.x(j + 1) - pm.x(j), ey = pm.y(j + 1) - pm.y(j);
            double px = -cp * ey, py = cp * ex; fx += px; fy += py; double xm = 0.5 * (pm.x(j) + pm.x(j + 1)) - .25, ym = 0.5 * (pm.y(j) + pm.y(j + 1)); mm -= xm * py - ym * px; }
        cl = fy * Math.cos(al) - fx * Math.sin(al); cdp = fx * Math.cos(al) + fy * Math.sin(al); cm = mm;
        cdUp = sy(0); cdLo = sy(n - 1); cd = cdUp + cdLo;
    }
    double sy(int i) { double hh = Math.min(h[i], hMaxSY); return 2 * th[i] * Math.pow(ue[i], (hh + 5) / 2); }
}
