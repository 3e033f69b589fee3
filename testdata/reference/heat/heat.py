"""Reference curves for rules/heat, by SciPy's solve_ivp, and the steady gains of
its Kalman filter, by solve_discrete_are.

Run: python3 heat.py > heat.json

The model is the one of rules/heat: C dT/dt = duty P(T) - h (T - ambient),
dS/dt = (T - S) / lag, with the plastic's melt in h. Written apart from the Go
code and without looking at its steps: adaptive step size, tolerance 1e-10.
"""

import json
import math

import numpy as np
from scipy.integrate import solve_ivp
from scipy.linalg import solve_discrete_are
from scipy.optimize import brentq

MELT = 0.0024  # J/(mm3 K)

PTC = dict(table=([25, 200, 300], [48, 30, 22]), c=16.7, off=0.068, fan=0.097, lag=4.5, ambient=22)
CARTRIDGE = dict(table=([25], [30]), c=12, off=0.06, fan=0.09, lag=3, ambient=25)


def rhs(plant, duty, fan, flow):
    h = plant["off"] + fan * (plant["fan"] - plant["off"]) + MELT * flow

    def f(_, y):
        power = duty * np.interp(y[0], *plant["table"])
        return [(power - h * (y[0] - plant["ambient"])) / plant["c"], (y[0] - y[1]) / plant["lag"]]

    return f


def solve(plant, start, duty, fan, flow, t0, t1, **more):
    return solve_ivp(rhs(plant, duty, fan, flow), [t0, t1], start, rtol=1e-10, atol=1e-10, **more)


def constant(plant, start, fan, flow, end, every):
    times = np.arange(0, end + 1e-9, every)
    y = solve(plant, start, 1, fan, flow, 0, end, t_eval=times, max_step=1).y
    return every, y


def rise(plant, fan, target, margin, window):
    """When S is last armed on the way to target, and its rise from there."""
    start = [plant["ambient"]] * 2
    y = solve(plant, start, 1, fan, 0, 0, 2000, dense_output=True, max_step=1).sol
    level = target - margin
    at = brentq(lambda t: y(t)[1] - level, 0, 2000, xtol=1e-9)
    return [at, float(y(at + window)[1] - level)]


def hold_settle(plant, fan, flow):
    h = plant["off"] + fan * (plant["fan"] - plant["off"]) + MELT * flow
    return brentq(lambda t: np.interp(t, *plant["table"]) - h * (t - plant["ambient"]), 0, 5000, xtol=1e-10)


def hold_trip(plant, target, flow, hysteresis, period):
    y = solve(plant, [target] * 2, 1, 1, flow, 0, 2000, dense_output=True, max_step=1).sol
    at = brentq(lambda t: y(t)[1] - (target - hysteresis), 1, 2000, xtol=1e-9)
    return at + period


def steady_gain(capacity, loss, lag, spacing, ratio):
    """By what share of a reading's surprise block and sensor are put right, where
    heat that nothing tells of moves the block by ratio times the reading's noise
    from row to row, as variances."""
    kept, taken = math.exp(-loss / capacity * spacing), 1 - math.exp(-spacing / lag)
    f, h = np.array([[kept, 0], [taken, 1 - taken]]), np.array([[0.0, 1.0]])
    p = solve_discrete_are(f.T, h.T, np.diag([ratio, 0.0]), np.eye(1))
    return [float(v) for v in (p @ h.T / (h @ p @ h.T + 1))[:, 0]]


GAINS = [(12, 0.06, 3, 1, 1e-3), (12, 0.06, 3, 1, 0.1), (16.7, 0.068, 4.5, 0.5, 1e-5), (8, 0.12, 1.5, 2, 1)]


def curve(result):
    every, y = result
    return dict(every_s=every, block_c=[round(v, 5) for v in y[0]], sensor_c=[round(v, 5) for v in y[1]])


def main():
    cold = [22, 22]
    curves = {
        "cartridge 30 W, fan full": curve(constant(CARTRIDGE, [25, 25], 1, 0, 400, 5)),
        "ptc, fan off": curve(constant(PTC, cold, 0, 0, 400, 5)),
        "ptc, fan full": curve(constant(PTC, cold, 1, 0, 600, 5)),
        "ptc, fan full, hold 270 with 18 mm3/s": curve(constant(PTC, [270, 270], 1, 18, 300, 5)),
    }
    figures = {
        "rise ptc fan 240": rise(PTC, 1, 240, 6, 20),
        "rise ptc fan 270": rise(PTC, 1, 270, 6, 20),
        "rise ptc off 270": rise(PTC, 0, 270, 6, 20),
        "rise cartridge fan 250": rise(CARTRIDGE, 1, 250, 6, 20),
        "settle ptc fan 18": hold_settle(PTC, 1, 18),
        "settle ptc off 0": hold_settle(PTC, 0, 0),
        "hold trip ptc 270": hold_trip(PTC, 270, 18, 4, 40),
    }
    for key, value in figures.items():
        if isinstance(value, float) and not math.isfinite(value):
            raise SystemExit(key + " is not finite")
    lines = ['  %s: %s' % (json.dumps(k), json.dumps(v)) for k, v in curves.items()]
    rows = ['  %s: %s' % (json.dumps(k), json.dumps(v)) for k, v in figures.items()]
    names = "heat_capacity_j_per_k", "loss_w_per_k", "sensor_lag_s", "spacing_s", "ratio"
    gains = ["  " + json.dumps(dict(zip(names, g), gain=steady_gain(*g))) for g in GAINS]
    print('{"curves": {\n' + ",\n".join(lines) + '\n},\n"figures": {\n' + ",\n".join(rows)
          + '\n},\n"gains": [\n' + ",\n".join(gains) + "\n]}")


main()
