"""Which numbered sensor definitions read a sensor wrong while a better one exists.

Run: python3 definitions.py > definitions.csv

Written apart from the Go code, from what the style's firmware publishes: the rows of its
tables, straight lines in the divider's ratio between them, ends that saturate. Real sensors:
Steinhart-Hart through three points (Steinhart & Hart 1968), Beta, and the platinum formula of
IEC 60751.

One line for each generation, pull-up of the board, definition in force and real sensor for
which the present reading is off by more than max(2 K, band) and another definition leaves at
most half of that and less than max(2.5 K, band). Errors are actual minus shown, in K, while
190 to 250 degrees are shown; positive: hotter than shown.

    sensor        a known curve, or the points or Beta that a sheet would give
    worst_k       largest error now. A definition whose rows end below 250 shows its end from
                  there on: its error counts up to an actual 250. Empty: there is no actual
                  temperature, as where definition and sensor run in opposite directions.
    best          the other definition with the least largest error: of this generation, of the
                  sensor's kind, for the board's pull-up, within 10 K of the truth in a room of
                  25 degrees, with rows that reach beyond 252
    best_worst_k  that error

Not there: numbers of amplifiers, chips and fixed readings; 22, whose table goes back and
forth; 331, whose pull-up and converter have two supplies. The rows give a reading within
0.6 K of the firmware's, so a pair within that of a limit may fall on either side.
"""
import csv
import math
import sys
from pathlib import Path

import numpy as np

KELVIN = 273.15
PULLUPS = (1000, 4700, 10000)
GENERATIONS = ("older", "newer")
STEP = 0.5  # degrees between the shown temperatures that are tried
PLATINUM = {"110", "147", "1010", "1022", "1047"}
DEFINES = Path(__file__).resolve().parents[3] / "parser" / "defines"


# ---- real sensors ----------------------------------------------------------------

class ThreePoint:
    """1/T = c1 + c2*ln R + c3*(ln R)^3 through three points (degrees C, ohm)."""

    kind = "bead"

    def __init__(self, *points):
        x = [1 / (t + KELVIN) for t, _ in points]
        ln = [math.log(r) for _, r in points]
        a = np.array([[1.0, v, v ** 3] for v in ln])
        self.c = np.linalg.solve(a, np.array(x))

    def temperature(self, ohm):
        ln = np.log(ohm)
        return 1 / (self.c[0] + self.c[1] * ln + self.c[2] * ln ** 3) - KELVIN


class Beta:
    """1/T = 1/298.15 + ln(R/R25)/B."""

    kind = "bead"

    def __init__(self, r25, b):
        self.r25, self.b = r25, b

    def temperature(self, ohm):
        return 1 / (1 / (25 + KELVIN) + np.log(ohm / self.r25) / self.b) - KELVIN


class Platinum:
    """R = R0*(1 + A*t + B*t^2), IEC 60751 above 0 degrees; used below too (beyond any range here)."""

    kind = "platinum"
    A, B = 3.9083e-3, -5.775e-7

    def __init__(self, r0):
        self.r0 = r0

    def temperature(self, ohm):
        inner = self.A ** 2 - 4 * self.B * (1 - np.asarray(ohm) / self.r0)
        t = (-self.A + np.sqrt(np.maximum(inner, 0.0))) / (2 * self.B)
        return np.where(inner < 0, np.inf, t)   # more ohm than the formula ever reaches


CURVES = {
    "ntc-100k-3950": ThreePoint((25, 100e3), (150, 1770), (250, 230)),
    "ntc-100k-4092": ThreePoint((25, 100e3), (150, 1641.9), (250, 226.15)),
    "ntc-100k-4267": ThreePoint((20, 126.8e3), (150, 1360), (300, 80.65)),
    "points 25:100000 160:1074 300:82.78": ThreePoint((25, 100e3), (160, 1074), (300, 82.78)),
    "points 25:500000 200:3734 400:240": ThreePoint((25, 500e3), (200, 3734), (400, 240)),
    "points 25:100000 50:31230 125:2066": ThreePoint((25, 100e3), (50, 31230), (125, 2066)),
    "beta 100000 3950": Beta(100e3, 3950),
    "beta 100000 3974": Beta(100e3, 3974),
    "beta 100000 4100": Beta(100e3, 4100),
    "pt100": Platinum(100.0),
    "pt1000": Platinum(1000.0),
}


def resistance(curve, t):
    """Inverse of curve.temperature by halving."""
    lo, hi = 1e-3, 1e8  # ohm
    rising = curve.kind == "platinum"
    if rising:
        hi = 4.0 * curve.r0
    for _ in range(200):
        mid = math.sqrt(lo * hi)
        if (curve.temperature(mid) < t) == rising:
            lo = mid
        else:
            hi = mid
    return math.sqrt(lo * hi)


def band(curve, t=250.0):
    """Uncertainty in K at t: beads 1 % of R25 and 1 % of B, root sum of squares, 6 K at most;
    platinum class B of IEC 60751, 0.3 + 0.005 t (from memory)."""
    if curve.kind == "platinum":
        return 0.3 + 0.005 * t
    r, r25 = resistance(curve, t), resistance(curve, 25.0)
    per_k = math.log(resistance(curve, t - 0.5) / resistance(curve, t + 0.5))
    of_b = 0.01 * abs(math.log(r / r25))
    return min(6.0, math.hypot(0.01, of_b) / per_k)


# ---- definitions -----------------------------------------------------------------

class Definition:
    """One numbered definition: rows (shown, ratio) with straight lines between them."""

    def __init__(self, number, pullup, rows):
        self.number, self.pullup = number, pullup
        self.kind = "platinum" if number in PLATINUM else "bead"
        self.shown = np.array([t for t, _ in sorted(rows)])
        ohm = np.array([r for _, r in sorted(rows)])
        self.ratio = ohm / (ohm + pullup)
        self.top = self.shown[-1]
        steps = np.diff(self.ratio)
        self.monotone = bool(np.all(steps > 0) if self.kind == "platinum" else np.all(steps < 0))

    def actual(self, curve, board_pullup, shown):
        """Temperature of the real sensor while the definition shows this (within its rows)."""
        a = np.interp(shown, self.shown, self.ratio)
        return curve.temperature(board_pullup * a / (1 - a))

    def reads(self, curve, board_pullup, actual):
        """What is shown at an actual temperature; the ends saturate."""
        r = resistance(curve, actual)
        a = r / (r + board_pullup)
        order = np.argsort(self.ratio)
        return float(np.interp(a, self.ratio[order], self.shown[order]))

    def worst(self, curve, board_pullup, low, high):
        """Signed error of the largest size while low to high is shown."""
        t = np.arange(low, min(high, self.top) + STEP / 2, STEP)
        errors = list(self.actual(curve, board_pullup, t) - t) if len(t) else []
        if self.top < high:
            errors.append(high - self.top)
        return float(max(errors, key=abs))


def read_definitions():
    """{generation: {number: Definition}} of the numbers on a plain divider."""
    pullups, rows = {}, {}
    with open(DEFINES / "sensors.csv", newline="") as f:
        for row in csv.DictReader(f):
            pullups[row["number"]] = float(row["pullup_ohm"])
    with open(DEFINES / "sensor-rows.csv", newline="") as f:
        for row in csv.DictReader(f):
            for g in GENERATIONS if row["generation"] == "both" else (row["generation"],):
                point = (float(row["shown_c"]), float(row["sensor_ohm"]))
                rows.setdefault(g, {}).setdefault(row["number"], []).append(point)
    return {g: {n: Definition(n, pullups[n], p) for n, p in rows[g].items()} for g in GENERATIONS}


def candidates(definitions, curve, pullup):
    """{number: worst error 190-250} of the definitions that could be written for this sensor."""
    out = {}
    for n, d in definitions.items():
        if d.kind != curve.kind or d.pullup != pullup or d.top - 2 < 250:
            continue
        if abs(d.reads(curve, pullup, 25.0) - 25.0) <= 10.0:
            out[n] = d.worst(curve, pullup, 190, 250)
    return out


def main():
    definitions = read_definitions()
    w = csv.writer(sys.stdout, lineterminator="\n")
    w.writerow(["generation", "pullup_ohm", "number", "sensor", "worst_k", "best", "best_worst_k"])
    for g in GENERATIONS:
        for pullup in PULLUPS:
            for name, curve in CURVES.items():
                able = candidates(definitions[g], curve, pullup)
                wide = band(curve)
                for n in sorted(definitions[g], key=int):
                    d = definitions[g][n]
                    if not d.monotone:
                        sys.exit(f"{g} {n}: rows do not run one way")
                    others = {k: v for k, v in able.items() if k != n}
                    if not others:
                        continue
                    near = d.worst(curve, pullup, 190, 250) if d.kind == curve.kind else math.inf
                    best = min(others, key=lambda k: (abs(others[k]), int(k)))
                    least = abs(others[best])
                    if abs(near) > max(2.0, wide) and least <= abs(near) / 2 and least < max(2.5, wide):
                        shown = f"{near:.2f}" if math.isfinite(near) else ""
                        w.writerow([g, pullup, n, name, shown, best, f"{others[best]:.2f}"])


if __name__ == "__main__":
    main()
