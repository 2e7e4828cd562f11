"""Shapes a golf course is made of: lines of play, mown ribbons, organic outlines.

Everything lives in a local plane in metres, x east and y north. Along a hole, places are given as a
golfer gives them: a station (yards from the back tee along the line of play) and an offset (yards
from that line, right positive).
"""

from __future__ import annotations

import math
import random
from typing import Callable, Sequence

Point = tuple[float, float]
Knot = tuple[float, float, float]  # station, width, offset: all in yards

YARD = 0.9144


def wobble(seed: str, size: float) -> Callable[[float], float]:
    """A smooth, seeded, roughly periodic wander of about +-size; its argument is in metres."""
    rng = random.Random(seed)
    waves = [(rng.uniform(28, 95), rng.uniform(0, math.tau), rng.uniform(0.4, 1.0)) for _ in range(3)]
    total = sum(weight for _, _, weight in waves)
    return lambda t: size / total * sum(w * math.sin(math.tau * t / length + phase) for length, phase, w in waves)


def area(ring: Sequence[Point]) -> float:
    """Area of a ring given without a repeated first point."""
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(ring, [*ring[1:], ring[0]]))) / 2


def smooth(points: Sequence[Point], closed: bool, step: float = 9.0) -> list[Point]:
    """A Catmull-Rom curve through `points`, with a vertex about every `step` metres."""
    n = len(points)

    def pick(i: int) -> Point:
        return points[i % n] if closed else points[min(max(i, 0), n - 1)]

    curve: list[Point] = []
    for i in range(n if closed else n - 1):
        a, b, c, d = (pick(i + k) for k in (-1, 0, 1, 2))
        pieces = max(2, round(math.dist(b, c) / step))
        for k in range(pieces):
            t = k / pieces
            curve.append(tuple(
                0.5 * (2 * b[j] + (c[j] - a[j]) * t + (2 * a[j] - 5 * b[j] + 4 * c[j] - d[j]) * t * t
                       + (3 * b[j] - a[j] - 3 * c[j] + d[j]) * t ** 3) for j in (0, 1)))
    return curve if closed else [*curve, points[-1]]


def blob(seed: str, centre: Point, length: float, width: float, heading: float, lobes: float, count: int) -> list[Point]:
    """An organic outline, star-shaped about its centre, so it never crosses itself.

    `heading` is the direction of `length`, radians clockwise from north. `lobes` from 0 (an ellipse)
    to about 0.2 (a bunker with capes and bays).
    """
    rng = random.Random(seed)
    waves = [(k, lobes * rng.uniform(0.5, 1.0) / (1 + 0.25 * k), rng.uniform(0, math.tau)) for k in (2, 3, 4, 5)]
    ring = []
    for i in range(count):
        angle = math.tau * i / count
        radius = 1 + sum(size * math.sin(k * angle + phase) for k, size, phase in waves)
        along, across = radius * length / 2 * math.cos(angle), radius * width / 2 * math.sin(angle)
        ring.append((centre[0] + along * math.sin(heading) + across * math.cos(heading),
                     centre[1] + along * math.cos(heading) - across * math.sin(heading)))
    return ring


def scaled_to(ring: list[Point], centre: Point, wanted_m2: float) -> list[Point]:
    """The ring blown up or shrunk about `centre` to the area wanted."""
    k = math.sqrt(wanted_m2 / area(ring))
    return [(centre[0] + k * (x - centre[0]), centre[1] + k * (y - centre[1])) for x, y in ring]


def ragged(seed: str, ring: Sequence[Point], size: float) -> list[Point]:
    """The ring with its edge pushed in and out by up to `size` metres, as the edge of a wood is."""
    rng = random.Random(seed)
    perimeter = sum(math.dist(a, b) for a, b in zip(ring, [*ring[1:], ring[0]]))
    # Whole numbers of waves round the ring, so that the ends meet.
    waves = [(max(3, round(perimeter / length)), rng.uniform(0, math.tau)) for length in (61, 37, 26)]
    edge, run = [], 0.0
    for before, at, after in zip([ring[-1], *ring], ring, [*ring[1:], ring[0]]):
        run += math.dist(before, at)
        push = size / 3 * sum(math.sin(math.tau * k * run / perimeter + phase) for k, phase in waves)
        across = math.dist(before, after)
        edge.append((at[0] + push * (after[1] - before[1]) / across, at[1] - push * (after[0] - before[0]) / across))
    return edge


class LineOfPlay:
    """The curve a hole is played along: straight legs joined by rounded doglegs."""

    ROUNDING = 85.0  # metres of a leg that a bend may take

    def __init__(self, corners: Sequence[Point]):
        dense: list[Point] = [corners[0]]
        bend_indices: list[int] = []
        for before, corner, after in zip(corners, corners[1:], corners[2:]):
            cut = min(self.ROUNDING, 0.48 * math.dist(before, corner), 0.48 * math.dist(corner, after))
            start = _towards(corner, before, cut)
            end = _towards(corner, after, cut)
            first = len(dense)
            for i in range(41):
                t = i / 40
                dense.append(tuple((1 - t) ** 2 * start[j] + 2 * t * (1 - t) * corner[j] + t * t * end[j] for j in (0, 1)))
            bend_indices += [first + 6, first + 20, first + 34]
        dense.append(corners[-1])
        self._points = dense
        self._stations = [0.0]
        for a, b in zip(dense, dense[1:]):
            self._stations.append(self._stations[-1] + math.dist(a, b) / YARD)
        self.bends = [self._stations[i] for i in bend_indices]  # where the hole's way needs a vertex, yd
        self.length_yd = self._stations[-1]

    def place(self, station: float, offset: float = 0.0) -> Point:
        """Plane point at a station and offset in yards; beyond either end the line goes on straight."""
        (x, y), heading = self._on_curve(station), self.heading(station)
        return x + offset * YARD * math.cos(heading), y - offset * YARD * math.sin(heading)

    def heading(self, station: float) -> float:
        """Direction of play there, radians clockwise from north."""
        # A mean over 20 yd: the curve's own legs are too short to offset wide shapes from.
        a, b = self._on_curve(station - 10), self._on_curve(station + 10)
        return math.atan2(b[0] - a[0], b[1] - a[1])

    def ribbon(self, seed: str, knots: Sequence[Knot], wander_yd: float, end_yd: float) -> list[Point]:
        """A band along the hole whose width and offset follow the knots, with rounded ends."""
        first, last = knots[0][0], knots[-1][0]
        left_wander, right_wander = wobble(seed + " left", wander_yd), wobble(seed + " right", wander_yd)
        count = max(14, round((last - first) / 8))
        left, right = [], []
        for i in range(count + 1):
            # Cosine spacing puts more vertices where the ends curve.
            part = i / count
            part = 0.6 * part + 0.4 * (1 - math.cos(math.pi * part)) / 2
            station = first + part * (last - first)
            width, offset = _through(knots, station, 1), _through(knots, station, 2)
            inside = min(1.0, (station - first) / end_yd, (last - station) / end_yd)
            closing = math.sqrt(max(0.0, 1 - (1 - inside) ** 2))
            left.append(self.place(station, offset - closing * (width / 2 + left_wander(station))))
            right.append(self.place(station, offset + closing * (width / 2 + right_wander(station))))
        return left + right[-2:0:-1]

    def _on_curve(self, station: float) -> Point:
        stations, points = self._stations, self._points
        i = next((k for k in range(1, len(stations)) if stations[k] >= station), len(stations) - 1)
        t = (station - stations[i - 1]) / (stations[i] - stations[i - 1])
        a, b = points[i - 1], points[i]
        return a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])


def _towards(origin: Point, target: Point, distance: float) -> Point:
    t = distance / math.dist(origin, target)
    return origin[0] + t * (target[0] - origin[0]), origin[1] + t * (target[1] - origin[1])


def _through(knots: Sequence[Knot], station: float, column: int) -> float:
    """Cubic Hermite through the knots that never overshoots them (flat at highs and lows)."""
    i = next((k for k in range(1, len(knots)) if knots[k][0] >= station), len(knots) - 1)
    s = [k[0] for k in knots]
    v = [k[column] for k in knots]

    def slope(k: int) -> float:
        if k == 0 or k == len(knots) - 1:
            return 0.0
        before, after = (v[k] - v[k - 1]) / (s[k] - s[k - 1]), (v[k + 1] - v[k]) / (s[k + 1] - s[k])
        return 0.0 if before * after <= 0 else 2 * before * after / (before + after)

    h = s[i] - s[i - 1]
    t = (station - s[i - 1]) / h
    return ((2 * t ** 3 - 3 * t * t + 1) * v[i - 1] + (t ** 3 - 2 * t * t + t) * h * slope(i - 1)
            + (3 * t * t - 2 * t ** 3) * v[i] + (t ** 3 - t * t) * h * slope(i))
