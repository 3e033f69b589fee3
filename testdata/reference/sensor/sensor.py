"""Reference figures for rules/sensor, by NumPy and SciPy.

Run: python3 sensor.py > sensor.json

Written apart from the Go code and by other means: the coefficients of
Steinhart and Hart by solving the linear system, every inverse by bracketing
(brentq), slopes by central differences, fits by SciPy's optimisers.
"""

import json
import math

import numpy as np
from scipy.optimize import brentq, least_squares

ZERO = 273.15


def steinhart(points):
    t, r = np.array(points, float).T
    l = np.log(r)
    a, b, c = np.linalg.solve(np.vstack([np.ones(3), l, l**3]).T, 1 / (t + ZERO))
    return lambda r: 1 / (a + b * math.log(r) + c * math.log(r) ** 3) - ZERO


def beta(r25, b):
    return lambda r: 1 / (1 / 298.15 + math.log(r / r25) / b) - ZERO


def thermistor(temp_of):
    """Adds the resistance of a temperature to the temperature of a resistance."""
    def ohms(t):
        return math.exp(brentq(lambda l: temp_of(math.exp(l)) - t, math.log(1), math.log(1e9), xtol=1e-13, rtol=1e-14))
    return ohms, temp_of


def platinum(r0):
    def ohms(t):
        r = 1 + 3.9083e-3 * t - 5.775e-7 * t * t
        if t < 0:
            r += -4.183e-12 * (t - 100) * t**3
        return r0 * r
    return ohms, lambda r: brentq(lambda t: ohms(t) - r, -235, 1400, xtol=1e-11)


CURVES = {
    "ntc-100k-3950": thermistor(steinhart([(25, 100e3), (150, 1770), (250, 230)])),
    "ntc-100k-4092": thermistor(steinhart([(25, 100e3), (150, 1641.9), (250, 226.15)])),
    "ntc-100k-4267": thermistor(steinhart([(20, 126.8e3), (150, 1360), (300, 80.65)])),
    "beta:100000:3950": thermistor(beta(100e3, 3950)),
    "pt100": platinum(100),
    "pt1000": platinum(1000),
}
TEMPS = {"pt100": range(-200, 851, 50), "pt1000": range(-200, 851, 50)}


def chain(real, real_pullup, believed, believed_pullup, indicated):
    r = CURVES[believed][0](indicated)
    ratio = r / (r + believed_pullup)
    return CURVES[real][1](real_pullup * ratio / (1 - ratio))


CHAINS = [
    ("ntc-100k-3950", 4700, "ntc-100k-4267", 4700),
    ("ntc-100k-3950", 4700, "ntc-100k-4092", 4700),
    ("ntc-100k-3950", 4700, "beta:100000:3950", 4700),
    ("ntc-100k-4267", 4700, "ntc-100k-3950", 4700),
    ("ntc-100k-3950", 2200, "ntc-100k-3950", 4700),
    ("pt1000", 1000, "pt1000", 1100),
    ("pt1000", 4700, "pt1000", 4800),
]


def per_count(curve, pullup, bits, t):
    ohms = CURVES[curve][0]
    ratio = lambda t: ohms(t) / (ohms(t) + pullup)
    h = 0.01
    return 2 * h / (abs(ratio(t + h) - ratio(t - h)) * 2**bits)


def fit(curve, low, high):
    """R25, B and cubic coefficient by a nonlinear fit in 1/T, scaled."""
    ohms = CURVES[curve][0]
    t = np.append(np.linspace(low, high, 25), 25)
    l = np.log([ohms(x) for x in t])
    y = 1 / (t + ZERO)

    def residual(p):
        l25 = p[0]
        return (1 / 298.15 + (l - l25) * p[1] * 1e-4 + p[2] * 1e-7 * (l**3 - l25**3) - y) * 1e6

    p = least_squares(residual, [math.log(ohms(25)), 2.5, 0.5], xtol=1e-15, ftol=1e-15, gtol=1e-15).x
    return [math.exp(p[0]), 1e4 / p[1], p[2] * 1e-7]


def rounded(x):
    return float(f"{x:.9g}")


out = {
    "ohms": {name: [[t, rounded(CURVES[name][0](t))] for t in TEMPS.get(name, range(0, 301, 20))] for name in CURVES},
    "chains": [
        {"real": c[0], "real_pullup_ohm": c[1], "believed": c[2], "believed_pullup_ohm": c[3],
         "indicated_actual_c": [[t, rounded(chain(*c, t))] for t in range(20, 301, 20)]}
        for c in CHAINS
    ],
    "c_per_count": [
        {"curve": c, "pullup_ohm": p, "bits": b, "at_c": t, "c_per_count": rounded(per_count(c, p, b, t))}
        for c, p, b, t in [("ntc-100k-3950", 4700, 10, 270), ("ntc-100k-4267", 4700, 12, 300), ("pt100", 4700, 12, 270), ("pt1000", 4700, 10, 200)]
    ],
    "fits": [
        {"curve": c, "low_c": low, "high_c": high, "r25_b_cubic": [rounded(x) for x in fit(c, low, high)]}
        for c, low, high in [("ntc-100k-3950", 190, 270), ("ntc-100k-4267", 180, 300), ("beta:100000:3950", 190, 270)]
    ],
}
print("{")
print(",\n".join(f" {json.dumps(k)}: " + (
    "[\n  " + ",\n  ".join(json.dumps(x) for x in v) + "\n ]" if isinstance(v, list)
    else "{\n  " + ",\n  ".join(f"{json.dumps(n)}: {json.dumps(x)}" for n, x in v.items()) + "\n }") for k, v in out.items()))
print("}")
