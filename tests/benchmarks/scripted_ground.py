"""The ground of a hole with Shapely, and what becomes of a ball on it: prepared polygons for the lies, one cut
along each bearing for what stops a ball, drops by the Rules of Golf 2023 (17.1d)."""

from __future__ import annotations

import math

import numpy as np
from shapely.geometry import LineString, shape
from shapely.ops import transform, unary_union
from shapely.prepared import prep

from scripted_model import YARD, Field, Line

try:  # Shapely 2
    from shapely import contains_xy, prepare
except ImportError:  # Shapely 1.8, as in Debian 12: prepares by itself
    from shapely.vectorized import contains as contains_xy

    def prepare(_):
        pass

# The commonest first, since a ball found is not looked for again. Rough is asked last: outside it is out.
LIES = ["fairway", "trees", "bunker", "green", "red penalty area", "yellow penalty area", "teeing area", "rough",
        "out of bounds"]
CODE = {lie: code for code, lie in enumerate(LIES)}
RED, YELLOW, BUNKER = CODE["red penalty area"], CODE["yellow penalty area"], CODE["bunker"]
TREES, OUT = CODE["trees"], CODE["out of bounds"]
BEARING_STEP = math.radians(0.1)
REACH = 600 * YARD


class Plane:
    """Metres east and north of a place, by the radii of curvature of WGS 84 there."""

    def __init__(self, lon: float, lat: float):
        self.lon, self.lat = lon, lat
        e2, sin = 0.00669437999014, math.sin(math.radians(lat))
        w = 1 - e2 * sin**2
        self.per_lat = math.radians(6378137.0 * (1 - e2) / w**1.5)
        self.per_lon = math.radians(6378137.0 / math.sqrt(w) * math.cos(math.radians(lat)))
        self.narrowing = -math.radians(sin * 6378137.0 / math.sqrt(w)) * math.radians(1)

    def metres(self, lon, lat):
        """Meridians converge: a degree of longitude is taken at the latitude halfway to the origin."""
        north = np.asarray(lat) - self.lat
        east = np.asarray(lon) - self.lon
        return east * (self.per_lon + self.narrowing * north / 2), north * self.per_lat


class Ground:
    def __init__(self, line: Line, shapes: dict[str, list], field: Field, plane: Plane, club_length: float,
                 assume: dict[str, float], bearings: tuple[float, float]):
        self.line, self.field = line, field
        self.club_length, self.assume = club_length, assume
        self.lost = assume["trees_lost_share"]
        self.runs = np.array([1.0, assume["run_share_trees"], 0.0, assume["run_share_green"], 0.0, 0.0, 1.0,
                              assume["run_share_rough"], 0.0])
        self.areas = {}
        for lie, parts in shapes.items():
            area = unary_union([transform(plane.metres, shape(part)).buffer(0) for part in parts])
            if not area.is_empty:
                prepare(area)
                self.areas[CODE[lie]] = area
        self._cut_stops(bearings)

    def lies(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        found = np.full(x.shape, OUT, np.int8)
        open_ = np.arange(x.size)
        for code in range(CODE["rough"] + 1):
            area = self.areas.get(code)
            if area is None or open_.size == 0:
                continue
            west, south, east, north = area.bounds
            px, py = x[open_], y[open_]
            near = np.flatnonzero((px >= west) & (px <= east) & (py >= south) & (py <= north))
            inside = near[contains_xy(area, px[near], py[near])]
            found[open_[inside]] = code
            open_ = np.delete(open_, inside)
        return found

    def _cut_stops(self, bearings: tuple[float, float]) -> None:
        """Along bearings a tenth of a degree apart: where a bunker or a penalty area begins, and what a ball in
        it costs when it is dropped. Rows of `starts` are padded with infinity."""
        self.first_bearing = bearings[0]
        count = int((bearings[1] - bearings[0]) / BEARING_STEP) + 2
        cuts: list[list[tuple[float, int]]] = [[] for _ in range(count)]
        tee = self.line.v[0]
        for code in (BUNKER, RED, YELLOW):
            if code not in self.areas:
                continue
            area, quick = self.areas[code], prep(self.areas[code])
            for i, cut in enumerate(cuts):
                bearing = self.first_bearing + i * BEARING_STEP
                ray = LineString([tee, (tee[0] + REACH * math.sin(bearing), tee[1] + REACH * math.cos(bearing))])
                if not quick.intersects(ray):
                    continue
                inside = ray.intersection(area)
                for piece in getattr(inside, "geoms", [inside]):
                    if piece.length > 0:
                        cut.append((min(math.dist(tee, place) for place in piece.coords), code))
        deepest = max(1, max(len(cut) for cut in cuts))
        self.starts = np.full((count, deepest), np.inf)
        self.kinds = np.full((count, deepest), -1, np.int8)
        for i, cut in enumerate(cuts):
            for k, (start, code) in enumerate(sorted(cut)):
                self.starts[i, k], self.kinds[i, k] = start, code
        self.drops = np.full(self.starts.shape, np.inf)
        for colour in (RED, YELLOW):
            row, column = np.nonzero(self.kinds == colour)
            if row.size:
                bearing, start = self.first_bearing + row * BEARING_STEP, self.starts[row, column]
                x, y = tee[0] + start * np.sin(bearing), tee[1] + start * np.cos(bearing)
                self.drops[row, column] = self.drop(x, y, colour)

    def drop(self, x: np.ndarray, y: np.ndarray, colour: int) -> np.ndarray:
        """One stroke and the best of back on the line and, for red, lateral relief; infinity without either."""
        pin = self.line.v[-1]
        to_hole = np.hypot(x - pin[0], y - pin[1])
        back = np.arange(0.0, self.assume["back_on_line_reach"] * YARD + 1e-9, YARD)
        ways_x = x[:, None] + back * ((x - pin[0]) / to_hole)[:, None]
        ways_y = y[:, None] + back * ((y - pin[1]) / to_hole)[:, None]
        if colour == RED:
            radius, angle = np.meshgrid(2 * self.club_length * np.array([1, 2, 3]) / 3, math.tau * np.arange(24) / 24)
            ways_x = np.hstack([ways_x, x[:, None] + (radius * np.sin(angle)).ravel()])
            ways_y = np.hstack([ways_y, y[:, None] + (radius * np.cos(angle)).ravel()])
        lies = self.lies(ways_x.ravel(), ways_y.ravel())
        cost = np.full(lies.shape, np.inf)
        legal = (lies != RED) & (lies != YELLOW) & (lies != OUT)
        if colour == RED:
            nearer = np.hypot(ways_x - pin[0], ways_y - pin[1]) < to_hole[:, None]
            nearer[:, : back.size] = False
            legal &= ~nearer.ravel()
        cost[legal] = 1 + self.worth(ways_x.ravel()[legal], ways_y.ravel()[legal], lies[legal])
        return cost.reshape(ways_x.shape).min(axis=1)

    def worth(self, x: np.ndarray, y: np.ndarray, lies: np.ndarray) -> np.ndarray:
        left = self.line.left(x, y)
        worth = np.zeros(x.shape)
        for code in np.unique(lies):
            of = lies == code
            worth[of] = self.field.strokes(LIES[code], left[of])
        return worth

    def balls(self, bearing: np.ndarray, landing: np.ndarray, run: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """For balls landing so far out on these bearings from the tee: strokes from where they lie, the share that
        is replayed from the tee, and what a drop costs (NaN for balls that need none)."""
        tee = self.line.v[0]
        sin, cos = np.sin(bearing), np.cos(bearing)
        lies = self.lies(tee[0] + landing * sin, tee[1] + landing * cos)
        rest = landing + run * self.runs[lies]
        ray = np.clip(np.rint((bearing - self.first_bearing) / BEARING_STEP).astype(int), 0, len(self.starts) - 1)
        rolling = np.flatnonzero(rest > landing)
        starts = self.starts[ray[rolling]]
        met = np.where(starts >= landing[rolling, None], starts, np.inf)
        first = met.argmin(axis=1)
        stop = met[np.arange(rolling.size), first]
        stopped = stop <= rest[rolling]
        caught = rolling[stopped]
        rest[caught] = stop[stopped]
        lies[caught] = self.kinds[ray[caught], first[stopped]]
        free = rolling[~stopped]
        x, y = tee[0] + rest * sin, tee[1] + rest * cos
        lies[free] = self.lies(x[free], y[free])

        replay = np.where(lies == OUT, 1.0, np.where(lies == TREES, self.lost, 0.0))
        drops = np.full(lies.shape, np.inf)
        for colour in (RED, YELLOW):
            of = np.flatnonzero(lies == colour)
            starts = self.starts[ray[of]]
            entered = (self.kinds[ray[of]] == colour) & (starts <= rest[of, None] + 1e-6)
            last = np.where(entered, starts, -np.inf).argmax(axis=1)
            seen = entered.any(axis=1)
            drops[of[seen]] = self.drops[ray[of[seen]], last[seen]]
            if not seen.all():  # in a corner that no bearing's cut met
                drops[of[~seen]] = self.drop(x[of[~seen]], y[of[~seen]], colour)
        in_play = np.flatnonzero((lies != RED) & (lies != YELLOW) & (lies != OUT))
        strokes = np.zeros(lies.shape)
        strokes[in_play] = (1 - replay[in_play]) * self.worth(x[in_play], y[in_play], lies[in_play])
        return strokes, replay, np.where((lies == RED) | (lies == YELLOW), drops, np.nan)

