#!/usr/bin/env python3
"""Writes wrackholm-heights.asc, the ground heights of the invented course, and its .prj beside this script.

Links among low dunes: the ground rolls off the line of play and runs gently along it; tees and greens stand a
little higher or lower than what is between them; water lies low. A text grid of heights in metres over cells
of 0.00007 degrees (5.6 m by 7.8 m), longitude and latitude on WGS 84. Same plan, same bytes. Run it with
Python 3.9 or later, standard library only: python3 make_heights.py
"""

from __future__ import annotations

import math
import random
from pathlib import Path

import wrackholm_plan as plan
from course_shapes import YARD, LineOfPlay, Point, smooth
from make_course import OsmMap

CELL_DEG = 0.00007
WEST, EAST, SOUTH, NORTH = -820.0, 870.0, -260.0, 850.0  # metres on the plan's plane
MEAN_M = 4.6  # of the ground among the dunes
WATER_M = 1.2
CORRIDOR_YD = 27.0  # as wide to either side the ground follows the hole; the dunes have taken over at twice that
BANK_M = 30.0  # over which the ground falls to water

# Metres over the ground around, from the tees and at the green; holes not named are 1.2 and 0.6.
TEE_AND_GREEN_M = {1: (4.5, 0.5), 3: (5.0, 1.0), 5: (0.5, 4.5), 6: (1.0, 3.5), 7: (6.0, 1.0), 9: (0.5, 5.5), 10: (3.0, 0.0),
                   13: (0.0, 3.5), 14: (5.0, -1.0), 16: (1.0, 4.0), 18: (3.5, 2.5)}
USUAL_M = (1.2, 0.6)

WGS84_WKT = ('GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563]],PRIMEM["Greenwich",0],'
             'UNIT["degree",0.0174532925199433]]\n')


def eased(t: float) -> float:
    """From 0 to 1 without a kink at either end."""
    t = min(1.0, max(0.0, t))
    return t * t * (3 - 2 * t)


class Dunes:
    """Rolling ground: waves of many lengths and directions, seeded."""

    def __init__(self, seed: str, lengths_m: tuple[float, float], size_m: float):
        rng = random.Random(seed)
        self._waves = []
        for _ in range(9):
            wave = math.tau / rng.uniform(*lengths_m)
            heading = rng.uniform(0, math.tau)
            self._waves.append((wave * math.sin(heading), wave * math.cos(heading), rng.uniform(0, math.tau), rng.uniform(0.5, 1.0)))
        total = math.sqrt(sum(size * size for *_, size in self._waves) / 2)
        self._size = size_m / total

    def __call__(self, x: float, y: float) -> float:
        return self._size * sum(size * math.sin(kx * x + ky * y + phase) for kx, ky, phase, size in self._waves)


class Grid:
    """Cells by row from the north, their middles on the plan's plane."""

    def __init__(self) -> None:
        osm = OsmMap(plan.ORIGIN_LON, plan.ORIGIN_LAT)
        self.east_m, self.north_m = CELL_DEG * osm.metres_per_degree[0], CELL_DEG * osm.metres_per_degree[1]
        self.columns, self.rows = math.ceil((EAST - WEST) / self.east_m), math.ceil((NORTH - SOUTH) / self.north_m)
        self.west_deg = plan.ORIGIN_LON + WEST / osm.metres_per_degree[0]
        self.south_deg = plan.ORIGIN_LAT + SOUTH / osm.metres_per_degree[1]

    def middle(self, column: int, row: int) -> Point:
        return WEST + (column + 0.5) * self.east_m, SOUTH + (self.rows - row - 0.5) * self.north_m

    def near(self, at: Point, reach_m: float):
        """The cells whose middles may lie within reach of a place."""
        column, row = (at[0] - WEST) / self.east_m, self.rows - (at[1] - SOUTH) / self.north_m
        wide, high = reach_m / self.east_m + 1, reach_m / self.north_m + 1
        for r in range(max(0, int(row - high)), min(self.rows, int(row + high) + 1)):
            for c in range(max(0, int(column - wide)), min(self.columns, int(column + wide) + 1)):
                yield c, r


def nearest(grid: Grid, places: list[Point], reach_m: float) -> dict[tuple[int, int], tuple[float, int]]:
    """For every cell within reach of any of the places its distance in metres and which place is nearest."""
    found: dict[tuple[int, int], tuple[float, int]] = {}
    for i, place in enumerate(places):
        for cell in grid.near(place, reach_m):
            distance = math.dist(place, grid.middle(*cell))
            if distance < found.get(cell, (reach_m, 0))[0]:
                found[cell] = (distance, i)
    return found


def heights() -> tuple[Grid, list[list[float]]]:
    grid = Grid()
    dunes, swell = Dunes("dunes", (55, 150), 1.9), Dunes("swell", (380, 900), 1.3)
    ground = [[MEAN_M + swell(*grid.middle(c, r)) + dunes(*grid.middle(c, r)) for c in range(grid.columns)] for r in range(grid.rows)]
    for hole in plan.HOLES:
        follow_hole(grid, ground, hole, swell)
    for (column, row), (distance, _) in nearest(grid, water_places(), BANK_M).items():
        share = eased(distance / BANK_M)
        ground[row][column] = share * ground[row][column] + (1 - share) * WATER_M
    return grid, ground


def follow_hole(grid: Grid, ground: list[list[float]], hole: plan.Hole, swell: Dunes) -> None:
    """Lays the ground along a hole's line of play, smooth, from its tees to its green."""
    line = LineOfPlay(hole.corners)
    stations = [4.0 * i for i in range(-5, int(line.length_yd / 4) + 6)]
    roll = Dunes(f"hole {hole.ref}", (120, 260), 0.5)
    tee, green = TEE_AND_GREEN_M.get(hole.ref, USUAL_M)
    levels = []
    for station in stations:
        place = line.place(station)
        from_tee, from_green = eased((90 - station) / 80), eased(1 - (line.length_yd - 18 - station) / 70)
        levels.append(MEAN_M - 0.8 + swell(*place) + roll(*place) + tee * from_tee + green * from_green)
    reach_m = 2 * CORRIDOR_YD * YARD
    for (column, row), (distance, i) in nearest(grid, [line.place(s) for s in stations], reach_m).items():
        share = eased(2 * (distance / reach_m) - 1)
        ground[row][column] = share * ground[row][column] + (1 - share) * levels[i]


def water_places() -> list[Point]:
    """Places in and along all water, a few metres apart."""
    places: list[Point] = []
    for *_, points in plan.YELLOW_WATER + plan.RED_WATER + plan.PLAIN_WATER:
        middle = (sum(x for x, _ in points) / len(points), sum(y for _, y in points) / len(points))
        for x, y in smooth(points, closed=True, step=5):
            places += [(middle[0] + k * (x - middle[0]), middle[1] + k * (y - middle[1])) for k in (1.0, 0.6, 0.2)]
    for *_, points in plan.STREAMS:
        places += smooth(points, closed=False, step=5)
    return places


def main() -> None:
    grid, ground = heights()
    out = [f"ncols {grid.columns}", f"nrows {grid.rows}", f"xllcorner {grid.west_deg:.8f}", f"yllcorner {grid.south_deg:.8f}",
           f"cellsize {CELL_DEG:.5f}", "NODATA_value -9999"]
    # The sea is at 0: no ground of the course lies below.
    out += [" ".join(f"{max(0.0, height):.2f}" for height in row) for row in ground]
    here = Path(__file__)
    here.with_name("wrackholm-heights.asc").write_text("\n".join([*out, ""]), encoding="ascii")
    here.with_name("wrackholm-heights.prj").write_text(WGS84_WKT, encoding="ascii")


if __name__ == "__main__":
    main()
