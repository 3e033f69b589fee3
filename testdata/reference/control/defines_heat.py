#!/usr/bin/python3
"""Heat-ups as the firmware of the `defines` style runs them, older and newer generation.

Sources: the style's facts, 5.1 (rise watch), 5.2 (hold watch), 6.1 (timing and
output), 6.2 (PID of the hotend); block model of plant.py.

    defines_heat.py CASES.csv OUT.csv [--expect]

CASES.csv has the columns of cases-defines.csv. OUT.csv has one line per case
with the results; with --expect the result columns of CASES.csv are compared and
the cases that differ are printed.
"""
import csv
import json
import math
import sys

from plant import Block, Power

RUN_S = 900.0    # length of a run
BAND_K = 2.0     # "within" band at the end of the run
PID_K1 = 0.95    # smoothing of D, as shipped and in 375 of 376 headers
EPS_S = 1e-6     # guards comparisons of times that are multiples of the sample time


class Loop:
    """PID of the hotend. output() is the heater count 0..255 before the cut."""

    def __init__(self, case):
        self.newer = case["generation"] == "newer"
        self.kp, self.ki, self.kd = case["kp"], case["ki"], case["kd"]
        self.range, self.pid_max, self.dt = case["functional_range"], case["pid_max"], case["sample_s"]
        # Power above the range: BANG_MAX in the older, PID_MAX in the newer generation.
        self.bang = self.pid_max if self.newer else case.get("bang_max", self.pid_max)
        self.min_power = 0 if self.newer else case.get("min_power", 0)
        self.sum = 0.0
        self.d = 0.0
        self.old = 0.0       # T_old starts at 0; the newer generation moves it inside the range only
        self.reset = True

    def output(self, target, t):
        e = target - t
        if target == 0 or e < -self.range:
            out, self.reset = 0.0, True
        elif e > self.range:
            out, self.reset = self.bang, True
        else:
            if self.reset:
                self.sum, self.d, self.reset = 0.0, 0.0, False
            self.sum += e
            if self.ki > 0:
                limit = self.pid_max / (self.ki * self.dt) - self.min_power
                self.sum = min(max(self.sum, 0.0), limit)
            self.d += (1 - PID_K1) * (self.kd / self.dt * (self.old - t) - self.d)
            out = self.kp * e + self.ki * self.dt * self.sum + self.d + self.min_power
            out = min(max(out, 0.0), self.pid_max)
            if self.newer:
                self.old = t
        if not self.newer:
            self.old = t
        return out


def duty_of(out):
    """Counts are cut to a whole number and halved downwards; 127 of 127 ticks is full."""
    return (int(out) >> 1) / 127.0


class RiseWatch:
    """Looked at once, when its window is over; temperatures without their fraction."""

    def __init__(self, case):
        self.rise, self.window = case["rise_c"], case["rise_window_s"]
        self.hysteresis = case["temp_hysteresis"]
        self.due = None
        self.goal = 0

    def arm(self, now, t, target):
        goal = math.trunc(t) + self.rise
        if target > 0 and goal < target - self.hysteresis - 1:
            self.goal, self.due = goal, now + self.window
        else:
            self.due = None

    def look(self, now, t, target):
        """True: heating failed."""
        if self.due is None or now < self.due - EPS_S:
            return False
        if math.trunc(t) >= self.goal:
            self.arm(now, t, target)
            return False
        return True


class HoldWatch:
    def __init__(self, case):
        h = case["hold_hysteresis"]
        self.hysteresis = h if case["generation"] == "newer" else math.trunc(h)
        self.period = case["hold_period_s"]
        self.stable = False
        self.timer = 0.0

    def look(self, now, t, target):
        """True: runaway."""
        if not self.stable:
            if t < target:
                return False
            self.stable = True
        if t >= target - self.hysteresis:
            self.timer = now + self.period
            return False
        return now >= self.timer - EPS_S


def run(case):
    """One heat-up from ambient; target set at 0 s. The run goes on after a trip.

    Returns overshoot_k and block_overshoot_k (K above the target, 0 at least),
    within_2k_since_s (None: not within at the end), tripped_watch (rise, hold or
    None) and trip_s.
    """
    power = Power(case["rated_w"], case["hot_w"])
    plant = Block(case["heat_capacity_j_per_k"], case["loss_w_per_k"], case["sensor_lag_s"],
                  case["ambient_c"], power)
    loop, rise, hold = Loop(case), RiseWatch(case), HoldWatch(case)
    dt, target = case["sample_s"], case["target_c"]
    steps = round(RUN_S / dt)
    top = top_block = case["ambient_c"]
    outside = 0.0        # last time outside the band
    watch = trip = None
    rise.arm(0.0, plant.sensor, target)
    for k in range(steps + 1):
        now, t = k * dt, plant.sensor
        top, top_block = max(top, t), max(top_block, plant.block)
        if abs(t - target) > BAND_K:
            outside = now
        if trip is None:
            if hold.look(now, t, target):
                watch, trip = "hold", now
            elif rise.look(now, t, target):
                watch, trip = "rise", now
        plant.step(duty_of(loop.output(target, t)), dt)
    return {
        "overshoot_k": max(0.0, top - target),
        "block_overshoot_k": max(0.0, top_block - target),
        "within_2k_since_s": outside + dt if outside < steps * dt else None,
        "tripped_watch": watch,
        "trip_s": trip,
    }


def read_cases(path):
    cases, expected = [], []
    with open(path, newline="") as f:
        for row in csv.DictReader(f):
            text = ("generation", "hot_w", "tripped_watch")
            case = {k: (v if k in text else float(v) if v else None) for k, v in row.items()}
            case["hot_w"] = json.loads(row["hot_w"]) if row.get("hot_w") else None
            case["case"] = row["case"]
            for k in ("rise_c", "temp_hysteresis"):
                case[k] = int(case[k])
            cases.append(case)
            expected.append({"overshoot_k": case.get("overshoot_k"),
                             "within_2k_since_s": case.get("within_2k_since_s"),
                             "tripped_watch": row.get("tripped_watch") or None,
                             "trip_s": case.get("trip_s")})
    return cases, expected


def differences(got, want):
    """What differs by more than 0.5 K of overshoot, in the watch, or by 1 s in its time."""
    out = []
    if abs(got["overshoot_k"] - want["overshoot_k"]) > 0.5:
        out.append("overshoot")
    if got["tripped_watch"] != want["tripped_watch"]:
        out.append("watch")
    elif got["trip_s"] is not None and abs(got["trip_s"] - want["trip_s"]) > 1.0:
        out.append("trip time")
    return out


def settling_differs(got, want):
    a, b = got["within_2k_since_s"], want["within_2k_since_s"]
    return (a is None) != (b is None) or (a is not None and abs(a - b) > 1.0)


def show(v, digits):
    return "" if v is None else f"{v:.{digits}f}" if isinstance(v, float) else v


COLUMNS = (("overshoot_k", 2), ("block_overshoot_k", 2), ("within_2k_since_s", 1), ("tripped_watch", 0),
           ("trip_s", 1))


def main(argv):
    expect = "--expect" in argv
    src, dst = [a for a in argv if not a.startswith("--")]
    cases, expected = read_cases(src)
    agree = settle = 0
    with open(dst, "w", newline="") as f:
        w = csv.writer(f, lineterminator="\n")
        w.writerow(["case"] + [k for k, _ in COLUMNS])
        for case, want in zip(cases, expected):
            got = run(case)
            w.writerow([case["case"]] + [show(got[k], n) for k, n in COLUMNS])
            if not expect:
                continue
            diff = differences(got, want)
            agree += not diff
            bad_settle = settling_differs(got, want)
            settle += not bad_settle
            if diff or bad_settle:
                what = ", ".join(diff) or "settling only"
                print(f"case {case['case']}: {what}: got {got}, expected {want}")
    if expect:
        print(f"{agree} of {len(cases)} agree in overshoot (0.5 K), watch and time (1 s); "
              f"{settle} in settling (1 s)")


if __name__ == "__main__":
    main(sys.argv[1:])
