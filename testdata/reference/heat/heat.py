"""Reference curves for rules/heat, by SciPy's solve_ivp.

Run: python3 heat.py > heat.json

The model is the one of rules/heat: C dT/dt = duty P(T) - h (T - ambient),
dS/dt = (T - S) / lag, with the plastic's melt in h. Written apart from the Go
code and without looking at its steps: adaptive step size, tolerance 1e-10.
"""

import json
import math

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

MELT = 0.0024  # J/(mm3 K)

PTC = dict(table=([25, 200, 300], [48, 30, 22]), c=16.7, off=0.068, fan=0.097, lag=4.5, ambient=22)
CARTRIDGE = dict(table=([25], [30]), c=12, off=0.06, fan=0.09, lag=3, ambient=25)
GAINS = dict(kp=21.7, ki=1.4, kd=84.0)


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


def loop(plant, controller, sample, target, end, every):
    """Closes the loop: the duty is held from one sample to the next."""
    y = [plant["ambient"]] * 2
    per = round(every / sample)
    rows = []
    for i in range(round(end / sample) + 1):
        if i % per == 0:
            rows.append(y)
        duty = controller(target, y[1])
        y = list(solve(plant, y, duty, 0, 0, 0, sample).y[:, -1])
    return per * sample, np.array(rows).T


def ranged(kp, ki, kd, sample=0.16, band=10, old=0.95):
    s = dict(last=None, i=0.0, d=0.0)

    def duty(target, temp):
        e = target - temp
        rate = 0 if s["last"] is None else (temp - s["last"]) / sample
        s["last"] = temp
        s["d"] = old * s["d"] + (1 - old) * rate
        if abs(e) > band:
            s["i"] = 0.0
            return 1.0 if e > 0 else 0.0
        s["i"] = min(max(s["i"] + e * sample, 0), 255 / ki)
        return min(1, max(0, (kp * e + ki * s["i"] - kd * s["d"]) / 255))

    return duty


def clamped(kp, ki, kd, sample=0.3, smooth=1.0):
    s = dict(last=None, i=0.0, d=0.0)

    def duty(target, temp):
        e = target - temp
        diff = 0 if s["last"] is None else temp - s["last"]
        s["last"] = temp
        s["d"] = (s["d"] * (smooth - sample) + diff) / smooth
        integral = min(max(s["i"] + e * sample, 0), 255 / ki)
        out = kp * e + ki * integral - kd * s["d"]
        held = min(max(out, 0), 255)
        if held == out:
            s["i"] = integral
        return held / 255

    return duty


def on_off(band):
    s = dict(on=False)

    def duty(target, temp):
        if s["on"] and temp >= target + band:
            s["on"] = False
        elif not s["on"] and temp <= target - band and temp < target:
            s["on"] = True
        return 1.0 if s["on"] else 0.0

    return duty


def rise(plant, fan, target, margin, window):
    """When S is last armed on the way to target, and its rise from there."""
    start = [plant["ambient"]] * 2
    y = solve(plant, start, 1, fan, 0, 0, 2000, dense_output=True, max_step=1).sol
    level = target - margin
    at = brentq(lambda t: y(t)[1] - level, 0, 2000, xtol=1e-9)
    return [at, float(y(at + window)[1] - level)]


def largest_sum(plant, fan, target, hysteresis=5, gain=2, window=20):
    """The largest sum that a sum watch holds against its limit, over phases."""
    start = [plant["ambient"]] * 2
    y = solve(plant, start, 1, fan, 0, 0, 2000, dense_output=True, max_step=1).sol
    most = 0.0
    for phase in (0, 0.25, 0.5, 0.75):
        total, approaching, goal, deadline = 0.0, None, 0.0, 0.0
        for k in range(1999):
            t = k + phase
            temp = float(y(t)[1])
            if temp >= target - hysteresis:
                break
            total += target - hysteresis - temp
            if approaching is None:
                approaching, goal, deadline = True, temp + gain, t + window
            elif not approaching:
                most = max(most, total)
            elif temp >= goal:
                total, goal, deadline = 0.0, temp + gain, t + window
            elif t >= deadline:
                approaching = False
        else:
            return None
    return most


def hold_settle(plant, fan, flow):
    h = plant["off"] + fan * (plant["fan"] - plant["off"]) + MELT * flow
    return brentq(lambda t: np.interp(t, *plant["table"]) - h * (t - plant["ambient"]), 0, 5000, xtol=1e-10)


def hold_trip(plant, target, flow, hysteresis, period):
    y = solve(plant, [target] * 2, 1, 1, flow, 0, 2000, dense_output=True, max_step=1).sol
    at = brentq(lambda t: y(t)[1] - (target - hysteresis), 1, 2000, xtol=1e-9)
    return at + period


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
        "ranged, ptc, 240": curve(loop(PTC, ranged(**GAINS), 0.16, 240, 320, 4)),
        "clamped, ptc, 240": curve(loop(PTC, clamped(**GAINS), 0.3, 240, 330, 3)),
        "ranged, ptc, 220, gains too high": curve(loop(PTC, ranged(60, 8, 200), 0.16, 220, 320, 4)),
        "clamped, cartridge, 210": curve(loop(CARTRIDGE, clamped(15, 0.6, 60), 0.3, 210, 330, 3)),
        "on/off, cartridge, 210": curve(loop(CARTRIDGE, on_off(0), 0.16, 210, 320, 4)),
        "on/off with band 2, ptc, 240": curve(loop(PTC, on_off(2), 0.3, 240, 330, 3)),
    }
    figures = {
        "rise ptc fan 240": rise(PTC, 1, 240, 6, 20),
        "rise ptc fan 270": rise(PTC, 1, 270, 6, 20),
        "rise ptc off 270": rise(PTC, 0, 270, 6, 20),
        "rise cartridge fan 250": rise(CARTRIDGE, 1, 250, 6, 20),
        "sum ptc fan 268": largest_sum(PTC, 1, 268),
        "sum ptc fan 270": largest_sum(PTC, 1, 270),
        "sum ptc fan 272": largest_sum(PTC, 1, 272),
        "sum ptc fan 275": largest_sum(PTC, 1, 275),
        "sum ptc fan 278": largest_sum(PTC, 1, 278),
        "settle ptc fan 18": hold_settle(PTC, 1, 18),
        "settle ptc off 0": hold_settle(PTC, 0, 0),
        "hold trip ptc 270": hold_trip(PTC, 270, 18, 4, 40),
    }
    for key, value in figures.items():
        if isinstance(value, float) and not math.isfinite(value):
            raise SystemExit(key + " is not finite")
    lines = ['  %s: %s' % (json.dumps(k), json.dumps(v)) for k, v in curves.items()]
    rows = ['  %s: %s' % (json.dumps(k), json.dumps(v)) for k, v in figures.items()]
    print('{"curves": {\n' + ",\n".join(lines) + '\n},\n"figures": {\n' + ",\n".join(rows) + "\n}}")


main()
