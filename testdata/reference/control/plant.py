"""The block model that the other scripts of this folder heat.

    C dT/dt = duty * P(T) - h * (T - ambient)        block
      dS/dt = (T - S) / lag                          sensor

T, S and ambient in degrees Celsius, C in J/K, h in W/K, P in W, lag and t in s.
P(T) is constant, or a table (hot_w) with straight lines between its points.
Melted filament is left out: the part fan is the only extra loss here.
"""
import math

import numpy as np


class Power:
    """Heater power in W at full duty over the block temperature.

    Below the first point of a table its first power stays. Above the last point
    the power is held flat where too much of it matters (overshoot), and the last
    slope goes on, never below 0, where too little of it matters (watches while
    heating): slope_beyond.
    """

    def __init__(self, rated_w, hot_w=None, factor=1.0, slope_beyond=False):
        if hot_w and len(hot_w) > 1:
            pts = sorted((float(t), float(w) * factor) for t, w in hot_w)
        else:
            pts = [(0.0, float(rated_w) * factor)]
        self.segments = []  # (lower end, intercept a, slope b): P = a + b*T above the lower end
        self.segments.append((-math.inf, pts[0][1], 0.0))
        for (t0, w0), (t1, w1) in zip(pts, pts[1:]):
            b = (w1 - w0) / (t1 - t0)
            self.segments.append((t0, w0 - b * t0, b))
        if len(pts) > 1 and not slope_beyond:
            self.segments.append((pts[-1][0], pts[-1][1], 0.0))
        elif len(pts) > 1 and self.segments[-1][2] < 0:  # runs down to 0 W and stays there
            _, a, b = self.segments[-1]
            self.segments.append((-a / b, 0.0, 0.0))

    def segment(self, t):
        """Index of the segment that holds t."""
        i = len(self.segments) - 1
        while i > 0 and t < self.segments[i][0]:
            i -= 1
        return i

    def __call__(self, t):
        _, a, b = self.segments[self.segment(t)]
        return a + b * t


class Block:
    """Block and sensor, stepped by the classical Runge-Kutta method."""

    def __init__(self, heat_capacity, loss, lag, ambient, power, max_step=0.05):
        self.c, self.h, self.lag, self.ambient, self.power = heat_capacity, loss, lag, ambient, power
        self.max_step = max_step
        self.block = self.sensor = float(ambient)

    def _rate(self, t, s, duty):
        return ((duty * self.power(t) - self.h * (t - self.ambient)) / self.c, (t - s) / self.lag)

    def step(self, duty, dt):
        """Moves on by dt seconds at a constant duty (0..1)."""
        n = max(1, math.ceil(dt / self.max_step - 1e-9))
        h = dt / n
        t, s = self.block, self.sensor
        for _ in range(n):
            a1, b1 = self._rate(t, s, duty)
            a2, b2 = self._rate(t + h / 2 * a1, s + h / 2 * b1, duty)
            a3, b3 = self._rate(t + h / 2 * a2, s + h / 2 * b2, duty)
            a4, b4 = self._rate(t + h * a3, s + h * b3, duty)
            t += h / 6 * (a1 + 2 * a2 + 2 * a3 + a4)
            s += h / 6 * (b1 + 2 * b2 + 2 * b3 + b4)
        self.block, self.sensor = t, s


class FullDuty:
    """Block and sensor from ambient at a constant duty, in closed form.

    P(T) is straight in each segment of the table, so there the block is
    A + B*exp(-k*t) and the sensor A + B/(1 - k*lag)*exp(-k*t) + D*exp(-t/lag).
    """

    def __init__(self, heat_capacity, loss, lag, ambient, power, duty):
        self.lag = lag
        self.pieces = []  # (start, k, A, B, start value of the sensor)
        t0, block, sensor = 0.0, float(ambient), float(ambient)
        for _ in range(len(power.segments) + 1):
            i = power.segment(block)
            _, a, b = power.segments[i]
            k = (loss - duty * b) / heat_capacity
            q = (duty * a + loss * ambient) / heat_capacity
            if k * lag == 1.0:  # the two exponentials would coincide
                k *= 1 + 1e-9
            if k <= 0:
                raise ValueError("power rises faster with temperature than the losses do")
            equilibrium = q / k
            self.pieces.append((t0, k, equilibrium, block - equilibrium, sensor))
            top = power.segments[i + 1][0] if i + 1 < len(power.segments) else math.inf
            if equilibrium <= top or equilibrium <= block:
                break
            dt = math.log((block - equilibrium) / (top - equilibrium)) / k
            sensor = float(self._piece_sensor(len(self.pieces) - 1, np.array([dt]))[0])
            t0, block = t0 + dt, top
        self.settles_at = self.pieces[-1][2]

    def _piece_sensor(self, i, t):
        _, k, a, b, s0 = self.pieces[i]
        f = b / (1 - k * self.lag)
        return a + f * np.exp(-k * t) + (s0 - a - f) * np.exp(-t / self.lag)

    def sensor(self, t):
        """Sensor temperature at the times t (array, s); ambient before 0."""
        t = np.asarray(t, dtype=float)
        out = np.empty_like(t)
        starts = [p[0] for p in self.pieces] + [math.inf]
        out[t <= 0] = self.pieces[0][4]
        for i in range(len(self.pieces)):
            m = (t > max(starts[i], 0)) & (t <= starts[i + 1])
            if m.any():
                out[m] = self._piece_sensor(i, t[m] - starts[i])
        return out


def main():
    """Compares the steps, the closed form and SciPy's solver on a few heat-ups at constant duty."""
    from scipy.integrate import solve_ivp

    ring = [[25, 48], [200, 30], [300, 22]]
    for hot_w, slope, duty, lag in ((None, False, 1.0, 4.5), (ring, True, 1.0, 4.5),
                                    (ring, False, 1.0, 0.7), (ring, True, 0.8, 11.0)):
        power = Power(48, hot_w, slope_beyond=slope)
        steps = Block(16.7, 0.068, lag, 22, power)
        closed = FullDuty(16.7, 0.068, lag, 22, power, duty)
        ode = solve_ivp(lambda _, y: steps._rate(y[0], y[1], duty), (0, 600), [22.0, 22.0],
                        rtol=1e-10, atol=1e-9, max_step=0.5, dense_output=True)
        worst = 0.0
        for k in range(1, 601):
            steps.step(duty, 1.0)
            exact = float(closed.sensor(np.array([k]))[0])
            worst = max(worst, abs(steps.sensor - exact), abs(ode.sol(k)[1] - exact))
        print(f"hot_w {bool(hot_w)}, slope beyond {slope}, duty {duty}, lag {lag} s: "
              f"{worst:.1e} K apart at most, settles at {closed.settles_at:.1f}")


if __name__ == "__main__":
    main()
