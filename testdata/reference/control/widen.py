#!/usr/bin/python3
"""The least widening of a watch that a hotend at full duty needs, by brute force.

Sources: `defines` facts 5.1; `sections` facts 4 and 5; block model of plant.py
(above the last point of a power table its last slope goes on).

    widen.py < CASES.jsonl > RESULTS.jsonl

A case (one JSON object a line; keys with a value here may be left out):

    {"id": "a", "style": "defines",
     "heat_capacity_j_per_k": 16.7, "loss_fan_w_per_k": 0.097, "sensor_lag_s": 4.5,
     "ambient_c": 22, "rated_w": 48, "hot_w": null, "duty": 1.0, "at_c": 270,
     "rise_c": 2, "rise_window_s": 20, "temp_hysteresis": 3}

    {"id": "b", "style": "sections", ... the same block and heater ...,
     "hysteresis": 5, "heating_gain": 2, "check_gain_time": 20, "max_error": 120,
     "smooth_time_s": 1, "pulse_late": true}

A watch holds when it does not trip on the way from ambient to at_c, at full duty
with the part fan full, at any phase, as given and with each of these alone: heater
power -7 %, losses +10 %, ambient 15 degrees.

Result for both styles:

    nominal_holds  the watch in force holds as given
    holds          ... and with each of the margins
    exists         a watch within the bounds holds
    least          its settings, before any rounding to what a person would write
    holds_to_c     only where none exists: highest whole temperature up to which the
                   watch in force holds with all margins together (null: below 50)

defines: least is the rise window in whole seconds, 120 at most; by_margin gives the
exact need in s for each margin (null: never). sections: check_gain_time comes first
(whole seconds, 120 at most) with the sum as it is. Where that does not do, max_error is raised
with check_gain_time at 120 (360 at most; it must lie above the figure given), and
least_check_gain_time is the shortest gain time with which that sum holds too;
max_error_alone is the sum needed if check_gain_time stayed (null: above 360).
"""
import json
import math
import sys

import numpy as np
from scipy.signal import lfilter

from plant import FullDuty, Power

MAX_WINDOW_S = 120
MAX_ERROR = 360.0
HORIZON_S = 7200.0   # a hotend that needs longer never gets there
MARGINS = {
    "nominal": {},
    "power": {"power": 0.93},
    "losses": {"losses": 1.10},
    "room": {"ambient": 15.0},
}
ALL_MARGINS = {"all": {"power": 0.93, "losses": 1.10, "ambient": 15.0}}


def curve(case, power=1.0, losses=1.0, ambient=None):
    ambient = case["ambient_c"] if ambient is None else min(ambient, case["ambient_c"])
    heater = Power(case["rated_w"], case.get("hot_w"), factor=power, slope_beyond=True)
    return FullDuty(case["heat_capacity_j_per_k"], case["loss_fan_w_per_k"] * losses,
                    case["sensor_lag_s"], ambient, heater, case.get("duty", 1.0)), ambient


# ---- defines -------------------------------------------------------------------

START_STEP_S = 0.05  # starts tried every 0.05 s, and at every whole degree


def crossings(sensor, levels):
    """First times in s at which the sensor, which only rises, reads each level; inf beyond the horizon."""
    levels = np.asarray(levels, dtype=float)
    lo, hi = np.zeros(len(levels)), np.full(len(levels), HORIZON_S)
    never = sensor(hi) < levels
    for _ in range(40):  # 7200 s halved 40 times: far below a microsecond
        mid = (lo + hi) / 2
        above = sensor(mid) >= levels
        lo, hi = np.where(above, lo, mid), np.where(above, mid, hi)
    hi[never] = math.inf
    return hi


def defines_starts(case, plant, ambient):
    """Moments at which a window may begin, and the goal each sets.

    Any moment of the heat-up counts (a target may be given, and so armed anew, at
    any time; the windows that follow one another begin anywhere), as long as the
    goal lies below at_c - temp_hysteresis - 1. The worst fraction of a degree at
    arming is none: so each first reading of a whole degree is a start of its own,
    and the cold start counts as one on a whole degree.
    """
    rise, stop = case["rise_c"], case["at_c"] - case["temp_hysteresis"] - 1
    last = math.ceil(stop - rise) - 1          # highest whole reading that is armed
    whole = np.arange(math.floor(ambient) + 1, last + 1)
    first_read = crossings(plant.sensor, np.append(whole, last + 1))
    top = min(first_read[-1], HORIZON_S)
    times = np.arange(0.0, top, START_STEP_S)
    goals = np.floor(plant.sensor(times) + 1e-9) + rise
    times = np.concatenate([[0.0], times, first_read[:-1]])
    goals = np.concatenate([[ambient + rise], goals, whole + rise])
    armed = (goals < stop) & (times < HORIZON_S)
    return times[armed], goals[armed]


def defines_need(case, margin):
    """Shortest window in s (a real number) with which no start fails; inf: none."""
    plant, ambient = curve(case, **margin)
    times, goals = defines_starts(case, plant, ambient)
    if not len(times):
        return 0.0

    def holds(window):
        return bool(np.all(plant.sensor(times + window) >= goals - 1e-9))

    if not holds(HORIZON_S):
        return math.inf
    lo, hi = 0.0, HORIZON_S
    while hi - lo > 1e-6:
        mid = (lo + hi) / 2
        if holds(mid):
            hi = mid
        else:
            lo = mid
    return hi


def defines(case):
    window = case["rise_window_s"]
    needs = {name: defines_need(case, m) for name, m in MARGINS.items()}
    worst = max(needs.values())
    least = max(1, math.ceil(worst - 1e-5)) if worst < math.inf else None
    exists = least is not None and least <= MAX_WINDOW_S
    result = {
        "nominal_holds": needs["nominal"] <= window + 1e-5,
        "holds": worst <= window + 1e-5,
        "exists": exists,
        "least": {"rise_window_s": least} if exists else None,
        "by_margin": {k: round(v, 3) if v < math.inf else None for k, v in needs.items()},
    }
    if not exists:
        result["holds_to_c"] = highest(
            case, lambda c: defines_need(c, ALL_MARGINS["all"]) <= window + 1e-5)
    return result


# ---- sections ------------------------------------------------------------------

READING_S = 0.3
READING_PHASES = (0.1, 0.2, 0.3)                        # first reading after the target, s
LOOK_PHASES = [(i + 0.5) / 24 for i in range(24)]       # first look after the target, s


def smoothed_looks(case, margin):
    """What the watch sees: times and temperatures of its looks, one row a phase.

    Readings every 0.3 s; a pulse acts 0.3 s after the reading that asked for it
    (pulse_late false: full power from 0 s on).
    """
    plant, ambient = curve(case, **margin)
    stop = case["at_c"] - case["hysteresis"]
    end = min(crossings(plant.sensor, [stop])[0] + 20 * case["smooth_time_s"] + 30, HORIZON_S)
    looks = np.arange(0.0, end)
    a = min(READING_S / case["smooth_time_s"], 1.0)
    times, temperatures = [], []
    for first in READING_PHASES:
        readings = np.arange(first, end + 1, READING_S)
        heat_from = first + READING_S if case.get("pulse_late", True) else 0.0
        seen = ambient + lfilter([a], [1.0, a - 1.0], plant.sensor(readings - heat_from) - ambient)
        seen = np.concatenate([[ambient], seen])       # before the first reading
        for phase in LOOK_PHASES:
            times.append(looks + phase)
            temperatures.append(seen[np.searchsorted(readings, looks + phase, side="left")])
    return times, temperatures, end < HORIZON_S


def largest_error(case, windows, margins):
    """Largest error sum at which the watch asks for a trip, by window and phase.

    0 where it never asks; inf where the sum passes MAX_ERROR and the sum in force,
    or where the hotend never arrives. Returns an array (windows, phases).
    """
    times, temperatures, arrives = [], [], []
    for m in margins.values():
        t, v, a = smoothed_looks(case, m)
        times += t
        temperatures += v
        arrives += [a] * len(t)
    longest = max(len(t) for t in times)
    # A shorter row ends in the band: its last value repeated changes nothing.
    now = np.array([np.pad(t, (0, longest - len(t)), mode="edge") for t in times])
    seen = np.array([np.pad(v, (0, longest - len(v)), mode="edge") for v in temperatures])
    stop, gain = case["at_c"] - case["hysteresis"], case["heating_gain"]
    enough = max(MAX_ERROR, case["max_error"])
    w = np.asarray(windows, dtype=float)[:, None]
    shape = (len(windows), len(now))
    largest = np.zeros(shape)
    in_band = seen[:, 0] >= stop
    error = np.zeros(shape) + np.where(in_band, 0.0, stop - seen[:, 0])
    approaching = np.ones(shape, dtype=bool)
    starting = np.ones(shape, dtype=bool)
    goal = np.zeros(shape) + seen[:, 0] + gain
    goal_time = now[:, 0] + w
    open_ = np.broadcast_to(~in_band, shape).copy()    # neither arrived nor surely tripped
    for k in range(1, longest):
        t, at = seen[:, k], now[:, k]
        open_ &= t < stop
        if not open_.any():
            break
        error += np.where(open_, stop - t, 0.0)
        asks = open_ & ~approaching
        largest = np.where(asks, np.maximum(largest, error), largest)
        sure = asks & (error > enough)
        largest[sure] = np.inf
        open_ &= ~sure
        met = approaching & (t >= goal)
        missed = approaching & ~met & (at >= goal_time - 1e-9)
        follows = approaching & ~met & ~missed & starting
        starting &= ~met
        error[met] = 0.0
        goal = np.where(met, t + gain, np.where(follows, np.minimum(goal, t + gain), goal))
        goal_time = np.where(met, at + w, goal_time)
        approaching &= ~missed
    largest[open_ & ~np.array(arrives)] = np.inf
    return largest


def sections(case):
    case = {"hysteresis": 5, "heating_gain": 2, "check_gain_time": 20, "max_error": 120,
            "smooth_time_s": 1, **case}
    window, limit = case["check_gain_time"], case["max_error"]
    table = largest_error(case, [window], MARGINS)
    phases = table.shape[1] // len(MARGINS)
    alone = table.max()                                # the sum must lie above it
    result = {
        "nominal_holds": bool(table[0, :phases].max() < limit),
        "nominal_trips_of": [int((table[0, :phases] >= limit).sum()), phases],
        "holds": bool(alone < limit),
        "exists": True,
        "least": {"check_gain_time": window, "max_error": limit},
        "max_error_alone": round(float(alone), 3) if alone < MAX_ERROR else None,
    }
    if result["holds"]:
        return result
    windows = list(range(math.floor(window) + 1, MAX_WINDOW_S + 1)) or [window]
    needed = largest_error(case, windows, MARGINS).max(axis=1)
    fits = [w for w, e in zip(windows, needed) if e < limit]
    if fits:
        result["least"]["check_gain_time"] = fits[0]
    elif needed[-1] < MAX_ERROR:
        result["least"] = {"check_gain_time": windows[-1], "max_error": round(float(needed[-1]), 3)}
        result["least_check_gain_time"] = next(w for w, e in zip(windows, needed) if e <= needed[-1])
    else:
        result["exists"], result["least"] = False, None
        result["holds_to_c"] = highest(
            case, lambda c: bool(largest_error(c, [window], ALL_MARGINS).max() < limit))
    return result


# ---- both ----------------------------------------------------------------------

def highest(case, holds, low=50):
    """Highest whole temperature from low to at_c for which holds(case) is true; None: none.

    A hotter goal is never easier at full duty, so halving the interval finds it.
    """
    top = math.floor(case["at_c"])
    if holds({**case, "at_c": top}):
        return top
    if not holds({**case, "at_c": low}):
        return None
    while top - low > 1:
        mid = (low + top) // 2
        if holds({**case, "at_c": mid}):
            low = mid
        else:
            top = mid
    return low


def main():
    for line in sys.stdin:
        if line.strip():
            case = json.loads(line)
            result = {"defines": defines, "sections": sections}[case["style"]](case)
            print(json.dumps({"id": case.get("id"), "style": case["style"], **result}), flush=True)


if __name__ == "__main__":
    main()
