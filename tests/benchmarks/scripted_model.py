"""What a place on a hole is worth and where balls land, in NumPy: the model of landwidth, written again.

Same sources, same formulas, own code: see planner/engine/tour_table.hpp, handicap_adjustment.hpp,
published_field.hpp and golfer-profiles/shot_pattern.hpp. Metres and radians; arrays of points are x, y pairs
of arrays.
"""

from __future__ import annotations

import json
import math

import numpy as np

YARD = 0.9144
FOOT = 0.3048

# M. Broadie, Assessing Golfer Performance on the PGA TOUR, Interfaces 42(2), 2012, table 9.
TABLE_YD = [*range(10, 101, 10), *range(120, 601, 20)]
TABLE = {
    "fairway": [2.18, 2.40, 2.52, 2.60, 2.66, 2.70, 2.72, 2.75, 2.77, 2.80, 2.85, 2.91, 2.98, 3.08, 3.19, 3.32, 3.45, 3.58,
                3.69, 3.78, 3.84, 3.88, 3.95, 4.03, 4.11, 4.19, 4.27, 4.34, 4.42, 4.50, 4.58, 4.66, 4.74, 4.82, 4.89],
    "rough": [2.34, 2.59, 2.70, 2.78, 2.87, 2.91, 2.93, 2.96, 2.99, 3.02, 3.08, 3.15, 3.23, 3.31, 3.42, 3.53, 3.64, 3.74,
              3.83, 3.90, 3.95, 4.02, 4.11, 4.21, 4.30, 4.40, 4.49, 4.58, 4.68, 4.77, 4.87, 4.96, 5.06, 5.15, 5.25],
    "bunker": [2.43, 2.53, 2.66, 2.82, 2.92, 3.15, 3.21, 3.24, 3.24, 3.23, 3.21, 3.22, 3.28, 3.40, 3.55, 3.70, 3.84, 3.93,
               4.00, 4.04, 4.12, 4.26, 4.41, 4.55, 4.69, 4.83, 4.97, 5.11, 5.25, 5.40, 5.54, 5.68, 5.82, 5.96, 6.10],
    "trees": [3.45, 3.51, 3.57, 3.71, 3.79, 3.83, 3.84, 3.84, 3.82, 3.80, 3.78, 3.80, 3.81, 3.82, 3.87, 3.92, 3.97, 4.03,
              4.10, 4.20, 4.31, 4.44, 4.56, 4.66, 4.75, 4.84, 4.94, 5.03, 5.13, 5.22, 5.32, 5.41, 5.51, 5.60, 5.70],
}
# M. Broadie, Every Shot Counts, 2014: 1 + missed first putts + three-putts (50 and 60 ft from memory).
PUTTS_FT = [0, 2, 3, 4, 5, 8, 10, 15, 20, 30, 40, 50, 60]
PUTTS = [1, 1.01, 1.04, 1.12, 1.23, 1.504, 1.60 + 0.1 / 15, 1.77 + 0.2 / 15, 1.87, 1.95 + 0.4 / 12, 2.06, 2.14, 2.21]


def continued(x: list, y: list, upto: float) -> tuple[np.ndarray, np.ndarray]:
    """Nodes for np.interp whose first and last piece go on straight, to 0 and to `upto`."""
    first = y[0] + (y[1] - y[0]) / (x[1] - x[0]) * (0 - x[0])
    last = y[-1] + (y[-1] - y[-2]) / (x[-1] - x[-2]) * (upto - x[-1])
    return np.array([0, *x, upto], float), np.array([first, *y, last], float)


class Line:
    """The line of play, tee to pin; `left` is the distance to the hole along it."""

    def __init__(self, vertices: list[tuple[float, float]]):
        self.v = np.array(vertices, float)
        self.legs = np.diff(self.v, axis=0)
        self.lengths = np.hypot(*self.legs.T)
        self.length = float(self.lengths.sum())
        self.stations = np.concatenate([[0.0], np.cumsum(self.lengths)])
        self.straight = self.length - math.dist(self.v[0], self.v[-1]) < 0.05

    def left(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        pin = self.v[-1]
        straight = np.hypot(x - pin[0], y - pin[1])
        if self.straight:
            return straight
        nearest = np.full(x.shape, np.inf)
        least = np.full(x.shape, np.inf)
        for vertex, leg, length, station in zip(self.v, self.legs, self.lengths, self.stations):
            along = np.clip(((x - vertex[0]) * leg[0] + (y - vertex[1]) * leg[1]) / length**2, 0, 1)
            foot_x, foot_y = vertex[0] + along * leg[0], vertex[1] + along * leg[1]
            aside = np.hypot(x - foot_x, y - foot_y)
            detour = self.length - station - along * length - np.hypot(pin[0] - foot_x, pin[1] - foot_y)
            nearest = np.minimum(nearest, aside)
            least = np.minimum(least, detour + aside)
        return straight + np.maximum(0, least - nearest)


class Field:
    """Expected strokes to hole out from a lie at a distance left, for one golfer."""

    def __init__(self, golfer: dict, assume: dict[str, float]):
        index, tour = golfer["handicap_index"], assume["tour_handicap"]

        def handicap(part: str) -> float:
            level = golfer.get(part, {}).get("level", "handicap")
            return {"handicap": index, "tour": tour, "scratch": 0.0}[level] if isinstance(level, str) else level

        def beyond_tour(h: float) -> float:
            return (h - tour) / assume["bogey_handicap"]

        self.around_green = beyond_tour(handicap("short_game")) * assume["short_game_strokes"]
        self.reach = assume["short_game_reach"] * YARD
        self.per_yard = beyond_tour(index) * assume["long_game_strokes"] / 100
        at_18 = assume["putting_stretch_at_18"] - 1
        self.stretch = max(0.5, 1 + at_18 * (handicap("putting") - tour) / (18 - tour))
        self.nodes = {lie: continued(TABLE_YD, column, 1500) for lie, column in TABLE.items()}
        self.putts = continued(PUTTS_FT[1:], PUTTS[1:], 6000)
        self.putts[1][0] = 1.0

    def strokes(self, lie: str, left: np.ndarray) -> np.ndarray:
        if lie == "green":
            return np.interp(self.stretch * left / FOOT, *self.putts)
        extra = self.around_green * -np.expm1(-left / self.reach) + self.per_yard * left / YARD
        return np.interp(left / YARD, *self.nodes["fairway" if lie == "teeing area" else lie]) + extra


class Pattern:
    """Where balls land with a club: metres along the aim line and to the right of it."""

    def __init__(self, club: dict):
        p = club["pattern"]
        self.name, self.kind = club["name"], club["kind"]
        self.carry, self.carry_sd = p["carry_yd"] * YARD, p["carry_sd_yd"] * YARD
        self.run = p["run_yd"] * YARD
        self.total = self.carry + self.run
        usual = (self.carry, p["side_yd"] * YARD, self.carry_sd, p["side_sd_yd"] * YARD, p.get("correlation", 0.0))
        self.parts = [(1.0, usual, p.get("tail_dof"))]
        if mishit := p.get("mishit"):
            sizes = [mishit[key] * YARD for key in ("carry_yd", "side_yd", "carry_sd_yd", "side_sd_yd")]
            self.parts = [(1.0 - mishit["share"], usual, p.get("tail_dof")), (mishit["share"], (*sizes, 0.0), None)]

    def balls(self, count: int, spread_evenly: bool, seed: int) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Distance from the tee, angle to the right of the aim, weight. The first part has `count` balls; random
        balls come in the parts' shares, evenly spread ones in the weights' (a quarter as many mishits)."""
        distances, angles, weights = [], [], []
        for part, (share, (carry, side, carry_sd, side_sd, rho), dof) in enumerate(self.parts):
            n = count
            if part > 0:
                n = count // 4 if spread_evenly else max(1, round(count * share / self.parts[0][0]))
            u, v = square(n, spread_evenly, (seed, part))
            if dof is None:
                radius = np.sqrt(-2 * np.log1p(-u))
            else:
                radius = np.sqrt((dof - 2) * np.expm1(-2 / dof * np.log1p(-u)))
            a, b = radius * np.cos(math.tau * v), radius * np.sin(math.tau * v)
            along, across = carry + carry_sd * a, side + side_sd * (rho * a + math.sqrt(1 - rho * rho) * b)
            distances.append(np.hypot(along, across))
            angles.append(np.arctan2(across, along))
            weights.append(np.full(n, share / n))
        return np.concatenate(distances), np.concatenate(angles), np.concatenate(weights)


def square(n: int, spread_evenly: bool, seed: tuple[int, int]) -> tuple[np.ndarray, np.ndarray]:
    """n points of the unit square: random ones, or the plastic-number sequence at a random shift."""
    rng = np.random.default_rng(seed)
    if not spread_evenly:
        return rng.random(n), rng.random(n)
    i = np.arange(1, n + 1)
    shift = rng.random(2)
    return (shift[0] + i * 0.7548776662466927) % 1, (shift[1] + i * 0.5698402909980532) % 1


def read_golfer(path: str) -> tuple[dict, list[Pattern], float]:
    """The profile, its clubs with a pattern, the length of the longest club that is no putter (0: unknown)."""
    with open(path, encoding="utf-8") as file:
        golfer = json.load(file)
    patterns = [Pattern(club) for club in golfer["clubs"] if "pattern" in club]
    longest = max((club.get("length_in", 0.0) for club in golfer["clubs"] if club["kind"] != "putter"), default=0.0)
    return golfer, patterns, longest * 0.0254
