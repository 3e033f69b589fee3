"""Fits a recorded heat-up with SciPy, for rules/heat's FitRun.

Run: python3 heatlog.py > heatlog.json     fits the logs beside this file
     python3 heatlog.py make               writes the logs anew

The logs are invented: solve_ivp with noise. The fit is SciPy's least_squares
(trust region reflective) on a model written apart from the Go code: fixed
steps of RK4 in the figures themselves, not in their logarithms. "room" fits the
temperature of the room along, which is said to be 3 K too high, give or take 2.
"""

import csv
import json
import math
import sys

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import least_squares

LOGS = {
    # A PTC ring: heat-up, hold, hold with the part fan, cool-down.
    "ptc": dict(
        table=([25, 200, 300], [48, 30, 22]), ambient=22,
        true=(16.7, 4.5, 0.068, 0.097), every=0.5, noise=0.4, seed=11,
        phases=[(150, 1, 0), (90, 0.5, 0), (90, 0.5, 1), (150, 0, 0)],
    ),
    # A 30 W cartridge, heat-up and cool-down without a fan, unevenly sampled.
    "cartridge": dict(
        table=([25], [30]), ambient=25,
        true=(12, 3, 0.06, None), every=1, noise=0.3, seed=12,
        phases=[(120, 1, 0), (20, 0.35, 0), (160, 0, 0)],
    ),
}


def make(name, log):
    c, lag, off, full = log["true"]
    rng = np.random.default_rng(log["seed"])
    rows, t, y = [], 0.0, [log["ambient"]] * 2
    for seconds, duty, fan in log["phases"]:
        end = t + seconds
        while t < end - 1e-9:
            rows.append((t, y[1] + rng.normal(0, log["noise"]), duty, fan))
            dt = min(log["every"] * rng.choice([0.9, 1, 1.1]), end - t)
            h = off + fan * ((full or off) - off)

            def rhs(_, s, duty=duty, h=h):
                return [(duty * np.interp(s[0], *log["table"]) - h * (s[0] - log["ambient"])) / c, (s[0] - s[1]) / lag]

            y = list(solve_ivp(rhs, [0, dt], y, rtol=1e-10, atol=1e-10).y[:, -1])
            t += dt
    with open(f"{name}.csv", "w") as out:
        out.write("# Invented: a simulated run with noise, see heatlog.py.\n")
        out.write("time_s,temp_c,duty" + (",fan" if full else "") + "\n")
        for time, temp, duty, fan in rows:
            out.write(f"{time:.2f},{temp:.2f},{duty:g}" + (f",{fan:g}" if full else "") + "\n")


def computed(x, log, rows, ambient):
    """The sensor at each row: x = capacity, lag, start, loss[, loss with fan]."""
    c, lag, start, off = x[:4]
    full = x[4] if len(x) > 4 else off
    temps, watts = (list(map(float, v)) for v in log["table"])

    def power(t):
        if t <= temps[0]:
            return watts[0]
        for i in range(1, len(temps)):
            if t <= temps[i]:
                return watts[i - 1] + (watts[i] - watts[i - 1]) * (t - temps[i - 1]) / (temps[i] - temps[i - 1])
        return watts[-1]

    block = sensor = start
    out = [sensor]
    for (t0, _, duty, fan), (t1, _, _, _) in zip(rows, rows[1:]):
        h = off + fan * (full - off)
        n = max(1, math.ceil((t1 - t0) / 0.25))
        dt = (t1 - t0) / n

        def rhs(b, s):
            return (duty * power(b) - h * (b - ambient)) / c, (b - s) / lag

        for _ in range(n):
            a1, b1 = rhs(block, sensor)
            a2, b2 = rhs(block + dt / 2 * a1, sensor + dt / 2 * b1)
            a3, b3 = rhs(block + dt / 2 * a2, sensor + dt / 2 * b2)
            a4, b4 = rhs(block + dt * a3, sensor + dt * b3)
            block += dt / 6 * (a1 + 2 * a2 + 2 * a3 + a4)
            sensor += dt / 6 * (b1 + 2 * b2 + 2 * b3 + b4)
        out.append(sensor)
    return np.array(out)


SAID_K, ROOM_K = 3, 2  # what is said of the room, above the truth; its standard deviation


def fit(name, log, room):
    with open(f"{name}.csv") as f:
        table = csv.DictReader(line for line in f if not line.startswith("#"))
        rows = [(float(r["time_s"]), float(r["temp_c"]), float(r["duty"]), float(r.get("fan", 0))) for r in table]
    temps = np.array([r[1] for r in rows])
    fan = "fan" in table.fieldnames
    guess = [15, 4, temps[0], 0.08] + ([0.08] if fan else []) + ([log["ambient"] + SAID_K] if room else [])
    names = ["heat_capacity_j_per_k", "sensor_lag_s", "start_c", "loss_w_per_k"]
    names += (["loss_fan_w_per_k"] if fan else []) + (["ambient_c"] if room else [])

    def residuals(x):
        if not room:
            return computed(x, log, rows, log["ambient"]) - temps
        said = (x[-1] - log["ambient"] - SAID_K) / ROOM_K * log["noise"]
        return np.append(computed(x[:-1], log, rows, x[-1]) - temps, said)

    best = least_squares(residuals, guess, x_scale=np.abs(guess), xtol=1e-12, ftol=1e-12, gtol=1e-12)
    squares = np.sum(best.fun[: len(rows)] ** 2)
    variance = squares / (len(rows) - len(guess))
    errs = np.sqrt(np.diag(np.linalg.inv(best.jac.T @ best.jac)) * variance)
    return dict(
        rows=len(rows),
        rms_k=float(f"{math.sqrt(squares / len(rows)):.6g}"),
        figures={k: [float(f"{v:.7g}"), float(f"{e:.5g}")] for k, v, e in zip(names, best.x, errs)},
    )


if sys.argv[1:] == ["make"]:
    for name, log in LOGS.items():
        make(name, log)
else:
    fits = {name + (" room" if room else ""): fit(name, log, room) for room in (False, True) for name, log in LOGS.items()}
    print(json.dumps(fits, indent=1))
