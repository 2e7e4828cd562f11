#!/usr/bin/env python3
"""The tee decisions of a round the way a golfer who can script would take them: NumPy and Shapely.

    scripted_plan.py MAP.osm PROFILE.json PLAN.json PLAN.geojson [--holes 1,2] [--balls random|even] ...

Hole lines and par come from the map; the lies from the layers that `landwidth plan --format geojson` writes, so
that both programs play on the same ground; constants, and the decisions to compare with, from `--format json`.
Clubs, aims, rules and field are those of landwidth, the code is not. Prints the decisions side by side and what
they took; how sure a decision is in the light of few recorded shots is left out.
"""

from __future__ import annotations

import argparse
import json
import math
import time
import xml.etree.ElementTree as ElementTree
from collections import defaultdict
from dataclasses import dataclass

import numpy as np

STARTED = time.perf_counter()

from scripted_ground import Ground, Plane  # noqa: E402
from scripted_model import YARD, Field, Line, Pattern, read_golfer  # noqa: E402

REPLICATES = 8
AROUND_AIMS = math.radians(45)  # balls further from every aim take the outermost bearing's cuts


@dataclass
class Hole:
    ref: str
    par: int
    plane: Plane
    line: Line
    shapes: dict[str, list]


@dataclass
class Tried:
    """A club at its best aim: strokes are expected ones, `error` one standard error of them."""
    pattern: Pattern
    bearing: float
    strokes: float = 0.0
    error: float = 0.0


def read_holes(map_path: str, layers_path: str, refs: list[str]) -> list[Hole]:
    root = ElementTree.parse(map_path).getroot()
    places = {node.get("id"): (float(node.get("lon")), float(node.get("lat"))) for node in root.iter("node")}
    with open(layers_path, encoding="utf-8") as file:
        features = json.load(file)["features"]
    shapes: dict[str, dict[str, list]] = defaultdict(lambda: defaultdict(list))
    for feature in features:
        properties = feature["properties"]
        if properties["layer"] == "lies":
            shapes[properties["hole"]][properties["lie"]].append(feature["geometry"])
    holes = []
    for way in root.iter("way"):
        tags = {tag.get("k"): tag.get("v") for tag in way.iter("tag")}
        if tags.get("golf") != "hole" or (refs and tags["ref"] not in refs):
            continue
        path = [places[nd.get("ref")] for nd in way.iter("nd")]
        plane = Plane(*path[0])
        line = Line([plane.metres(*place) for place in path])
        holes.append(Hole(tags["ref"], int(tags["par"]), plane, line, shapes[tags["ref"]]))
    return sorted(holes, key=lambda hole: int(hole.ref))


def sensible(hole: Hole, patterns: list[Pattern], assume: dict[str, float]) -> list[Pattern]:
    asked = min(max(p.total for p in patterns), hole.line.length)
    return [p for p in patterns
            if (p.total >= assume["tee_club_floor"] * asked
                and p.carry - 2.5 * p.carry_sd <= hole.line.length + 30 * YARD)
            or (hole.par >= 4 and p.kind == "driver")] or patterns


def aims(hole: Hole, longest: float, assume: dict[str, float]) -> tuple[float, int, int, float]:
    """The bearing of the first leg, the first and last aim in steps of the fan to its right, the step."""
    step = math.tau / round(360 / assume["fan_angle_step"])
    tee = hole.line.v[0]
    forward = math.atan2(*hole.line.legs[0])
    turns = [0.0]
    for place in hole.line.v[1:]:
        away = math.dist(place, tee)
        if away <= longest + 50 * YARD or place is hole.line.v[-1]:
            turns.append(math.remainder(math.atan2(*(place - tee)) - forward, math.tau))
    turn = math.remainder(math.atan2(*(hole.line.v[-1] - tee)) - forward, math.tau)
    reach = math.radians(assume["aim_reach"])
    return (forward, round((min(*turns, turn) - reach) / step), round((max(*turns, turn) + reach) / step), step)


class Shots:
    """Balls of one pattern, hit along any aim of one hole."""

    def __init__(self, ground: Ground, pattern: Pattern, count: int, evenly: bool, seed: int):
        self.ground, self.run = ground, pattern.run
        self.landing, self.angle, self.weight = pattern.balls(count, evenly, seed)

    def hit(self, bearing: float):
        return self.ground.balls(bearing + self.angle, self.landing, self.run)

    def strokes(self, outcome, tee: float) -> np.ndarray:
        """Of every ball, the tee shot included, when the tee is worth `tee` strokes."""
        strokes, replay, drop = outcome
        strokes = 1 + strokes + replay * (1 + tee)
        return np.where(np.isnan(drop), strokes, 1 + np.minimum(drop, 1 + tee))

    def expected(self, bearing: float, tee: float) -> float:
        return float(self.weight @ self.strokes(self.hit(bearing), tee))


def solved(mean_of, tee: float) -> float:
    """The value of a tee from which this shot is always played: v = mean_of(v), a contraction."""
    for _ in range(60):
        before, tee = tee, mean_of(tee)
        if abs(tee - before) < 1e-7:
            break
    return tee


class HolePlanner:
    def __init__(self, hole: Hole, patterns: list[Pattern], field: Field, club_length: float, assume: dict[str, float],
                 options: argparse.Namespace):
        self.hole, self.assume, self.options = hole, assume, options
        self.evenly = options.balls == "even"
        self.patterns = sensible(hole, patterns, assume)
        self.forward, self.first, self.last, self.step = aims(hole, max(p.total for p in patterns), assume)
        bearings = [self.forward + i * self.step for i in (self.first, self.last)]
        self.ground = Ground(hole.line, hole.shapes, field, hole.plane, club_length, assume,
                             (bearings[0] - AROUND_AIMS, bearings[1] + AROUND_AIMS))
        tee = hole.line.v[0]
        self.tee = float(field.strokes("fairway", hole.line.left(tee[:1], tee[1:]))[0])

    def coarse_aims(self, pattern: Pattern) -> list[int]:
        """Local minima of a coarse fan: the best three within 0.03 strokes of the best."""
        shots = Shots(self.ground, pattern, self.options.coarse, self.evenly, 1)
        stride = round(self.assume["aim_coarse_step"] / self.assume["fan_angle_step"])
        rays = range(self.first, self.last + 1, stride)
        cost = [shots.expected(self.forward + ray * self.step, self.tee) for ray in rays]
        padded = [math.inf, *cost, math.inf]
        least = sorted((c, ray) for i, (c, ray) in enumerate(zip(cost, rays)) if c <= padded[i] and c <= padded[i + 2])
        return [ray for c, ray in least[:3] if c <= least[0][0] + 0.03]

    def fine_aim(self, pattern: Pattern, centres: list[int]) -> tuple[int, float]:
        """The best ray around the coarse ones, and the standard deviation of strokes among the balls there."""
        shots = Shots(self.ground, pattern, self.options.fine, self.evenly, 2)
        stride = round(self.assume["aim_coarse_step"] / self.assume["fan_angle_step"])
        rays = sorted({ray for centre in centres for ray in range(centre - stride, centre + stride + 1)
                       if self.first <= ray <= self.last})
        cost = {ray: shots.expected(self.forward + ray * self.step, self.tee) for ray in rays}
        best = min(rays, key=cost.__getitem__)
        balls = shots.strokes(shots.hit(self.forward + best * self.step), self.tee)
        return best, math.sqrt(float(shots.weight @ (balls - cost[best]) ** 2))

    def final(self, pattern: Pattern, bearing: float, count: int):
        """Independent sets of balls at one aim, as a function of the value of the tee."""
        sets = [Shots(self.ground, pattern, max(64, count // REPLICATES), self.evenly, 10 + i) for i in range(REPLICATES)]
        outcomes = [shots.hit(bearing) for shots in sets]
        return lambda tee: np.array([shots.weight @ shots.strokes(o, tee) for shots, o in zip(sets, outcomes)])

    def plan(self) -> list[Tried]:
        found = []
        for pattern in self.patterns:
            ray, deviation = self.fine_aim(pattern, self.coarse_aims(pattern))
            count = self.options.final
            if not self.evenly:
                count = math.ceil((deviation / self.options.accuracy) ** 2)
            bearing = self.forward + ray * self.step
            found.append((Tried(pattern, bearing), self.final(pattern, bearing, count)))
        tee = min(solved(lambda v, means=means: float(means(v).mean()), self.tee) for _, means in found)
        for tried, means in found:
            tried.strokes = float(means(tee).mean())
            tried.error = float(means(tee).std(ddof=1) / math.sqrt(REPLICATES))
        return sorted((tried for tried, _ in found), key=lambda tried: tried.strokes)

    def at(self, pattern: Pattern, bearing: float, tee: float, count: int) -> tuple[float, float]:
        means = self.final(pattern, bearing, count)(tee)
        return float(means.mean()), float(means.std(ddof=1) / math.sqrt(REPLICATES))


def compare(hole: Hole, planner: HolePlanner, tried: list[Tried], theirs: dict, count: int) -> tuple[str, list[float]]:
    """A line with both verdicts, and by how much the strokes of landwidth's first two choices differ from what
    the script gets at the same aims, in thousandths and in standard errors."""
    verdict, best = theirs["verdict"], tried[0]
    tee = verdict["expected_strokes"]
    differences, worst = [], 0.0
    for choice in theirs["choices"][:2]:
        pattern = next(p for p in planner.patterns if p.name == choice["club"])
        mean, error = planner.at(pattern, math.radians(choice["aim_bearing_deg"]), tee, count)
        differences.append(choice["expected_strokes"] - mean)
        worst = max(worst, abs(differences[-1]) / math.hypot(error, choice["standard_error"]), key=abs)
    same = next(t for t in tried if t.pattern.name == verdict["club"])
    turned = math.degrees(math.remainder(same.bearing - math.radians(verdict["aim_bearing_deg"]), math.tau))
    agrees = "yes" if best.pattern.name == verdict["club"] else f"no, by {same.strokes - best.strokes:.4f}"
    margin = verdict["margin_strokes"]
    return (f"{hole.ref:>4}  {verdict['club'][:14]:14} {tee:7.4f} {margin if margin is not None else math.nan:7.4f}   "
            f"{best.pattern.name[:14]:14} {best.strokes:7.4f} {best.error:7.4f}  {turned:+6.2f}  "
            f"{'  '.join(f'{1e3 * d:+6.2f}' for d in differences):14}  {worst:5.1f}  {agrees}"), differences


def options_of() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("map", "profile", "plan", "layers"):
        parser.add_argument(name)
    parser.add_argument("--holes", default="", help="refs, e.g. 1,7 (default: all)")
    parser.add_argument("--balls", choices=("random", "even"), default="random",
                        help="random: plain sampling; even: a low-discrepancy sequence, as landwidth's")
    parser.add_argument("--accuracy", type=float, default=0.001,
                        help="random balls: standard error of expected strokes that the last sample is made for")
    parser.add_argument("--coarse", type=int, default=2000, help="usual shots for the first fan of aims")
    parser.add_argument("--fine", type=int, default=10000, help="usual shots around its best aims")
    parser.add_argument("--final", type=int, default=16384, help="even balls: usual shots at the best aim")
    parser.add_argument("--check", type=int, default=0, help="random balls at landwidth's aims, to compare (not timed)")
    parser.add_argument("--json", help="write the times and differences here")
    return parser.parse_args()


def main() -> None:
    options = options_of()
    golfer, patterns, club_length = read_golfer(options.profile)
    with open(options.plan, encoding="utf-8") as file:
        theirs = json.load(file)
    assume = {name: entry["value"] for name, entry in theirs["assumptions"].items()}
    club_length = club_length or assume["club_length"] * 0.0254
    field = Field(golfer, assume)
    holes = read_holes(options.map, options.layers, options.holes.split(",") if options.holes else [])
    seconds = time.perf_counter() - STARTED
    print(f"{'hole':>4}  {'landwidth':14} {'strokes':>7} {'margin':>7}   {'script':14} {'strokes':>7} {'error':>7}  "
          f"{'turned':>6}  {'same aim, 1/1000':14}  {'z':>3}  same club")
    differences = []
    for hole in holes:
        began = time.perf_counter()
        planner = HolePlanner(hole, patterns, field, club_length, assume, options)
        tried = planner.plan()
        seconds += time.perf_counter() - began
        if options.check:
            answer = next(h for h in theirs["holes"] if h["ref"] == hole.ref)
            line, ours = compare(hole, planner, tried, answer, options.check)
            differences += ours
            print(line, flush=True)
    share = len(holes) / len(theirs["holes"])
    rms = float(np.sqrt(np.mean(np.square(differences)))) if differences else math.nan
    print(f"{len(holes)} holes planned in {seconds:.1f} s; all would take {seconds / share:.1f} s; "
          f"strokes at the same aims differ by {1e3 * rms:.2f} thousandths rms")
    if options.json:
        with open(options.json, "w", encoding="utf-8") as file:
            json.dump({"holes": len(holes), "round_holes": len(theirs["holes"]), "seconds": seconds,
                       "round_seconds": seconds / share, "rms": rms}, file)


if __name__ == "__main__":
    main()
