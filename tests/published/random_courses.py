#!/usr/bin/python3
"""Lengths, landing widths and distances to trouble of random holes, measured again with PROJ's geodesics.

    random_courses.py PROGRAM HOLES [SEED]

Every hole is a map of its own somewhere between 55 S and 65 N: 100 to 600 yd with up to two bends, fairways with a gap and an
island, a green, bunkers, water, streams, woods, out of bounds. Here the length is the sum of geodesics (PROJ, by pyproj), a
transect a geodesic square to the line of play; outlines are laid out around its centre (azimuthal equidistant) and cut by the
even-odd rule. The program has a plane around the tee (GeographicLib) and GEOS. What is printed is rounded to 0.1 yd, so that a
figure may differ by 0.05 yd and a hair. Figures that hang by a hair (two stretches as near, an edge at the end of a transect)
may be the other. Nothing round is drawn: trees as points and the bends of streams are polygons of 64 corners in the program, by
design, up to 0.12 % of the radius inside the circle.

Needs Debian's python3-pyproj.
"""

import collections
import json
import math
import pathlib
import random
import subprocess
import sys
import tempfile

from pyproj import Geod, Proj

GEOD = Geod(ellps="WGS84")
YARD_M = 0.9144
# How the program measures: see geometry/landing_width.hpp, geometry/line_of_play.hpp and courses/survey/hole_survey.cpp.
REACH_M = 120.0
BLEND_M = 15.0
FIRST_YD, LAST_YD, STEP_YD = 150, 320, 10
ROUNDING_YD = 0.05
HAIR_YD = 0.001
TROUBLE = {"bunker": "bunker", "lateral_water_hazard": "penalty_red", "water_hazard": "penalty_yellow", "wood": "trees",
           "out_of_bounds": "out_of_bounds", "boundary": "out_of_bounds", "out_of_bounds_line": "out_of_bounds",
           "stream": "penalty_red"}
# Their ring holds what is in bounds; a line is its first edge.
OUT_BEYOND = ("boundary", "out_of_bounds_line")


class Area:
    """Rings of longitude and latitude; the first is the outline, the others are islands in it. A stream has its two ends."""

    def __init__(self, kind, rings, width_m=0.0):
        self.kind, self.rings, self.width_m = kind, rings, width_m

    def feature(self):
        if self.kind == "stream":
            return feature("LineString", self.rings[0], {"waterway": "stream", "width": str(self.width_m)})
        if self.kind == "out_of_bounds_line":
            return feature("LineString", self.rings[0][:2], {"golf": "out_of_bounds"})
        other = {"wood": {"natural": "wood"}, "boundary": {"leisure": "golf_course"}}
        tags = other.get(self.kind, {"golf": self.kind})
        return feature("Polygon", [[*ring, ring[0]] for ring in self.rings], tags)


def feature(geometry, coordinates, tags):
    return {"type": "Feature", "properties": tags, "geometry": {"type": geometry, "coordinates": coordinates}}


def ahead(place, bearing_deg, metres):
    lon, lat, _ = GEOD.fwd(*place, bearing_deg, metres)
    return lon, lat


def azimuth_and_distance(a, b):
    azimuth, _, metres = GEOD.inv(*a, *b)
    return azimuth, metres


class Line:
    """The line of play as geodesics from corner to corner."""

    def __init__(self, corners):
        self.corners = corners
        self.legs = [azimuth_and_distance(a, b) for a, b in zip(corners, corners[1:])]
        self.length_m = sum(metres for _, metres in self.legs)

    def at(self, station_m):
        """The place, and the direction there in degrees from north."""
        done = 0.0
        for i, (azimuth, metres) in enumerate(self.legs):
            if station_m < done + metres or i + 1 == len(self.legs):
                break
            done += metres
        along_m = station_m - done
        place = ahead(self.corners[i], azimuth, along_m)
        here, _ = azimuth_and_distance(place, self.corners[i + 1])
        corner = i if along_m < metres / 2 else i + 1
        if corner in (0, len(self.legs)):
            return place, here
        blend_m = min(BLEND_M, self.legs[corner - 1][1] / 2, self.legs[corner][1] / 2)
        past_m = along_m if corner == i else along_m - metres
        if abs(past_m) >= blend_m:
            return place, here
        azimuth_before = GEOD.inv(*self.corners[corner - 1], *self.corners[corner])[1] + 180.0
        turn = math.remainder(self.legs[corner][0] - azimuth_before, 360.0)
        return place, azimuth_before + turn * (0.5 + 0.5 * past_m / blend_m)


class Transect:
    """The cut through a place square to a direction: stretches of offsets, right positive, metres."""

    def __init__(self, place, direction_deg):
        self.plane = Proj(proj="aeqd", lon_0=place[0], lat_0=place[1], ellps="WGS84")
        self.cos, self.sin = math.cos(math.radians(direction_deg)), math.sin(math.radians(direction_deg))

    def laid_out(self, ring):
        """(offset, distance ahead) of every corner."""
        places = [self.plane(*place) for place in ring]
        return [(east * self.cos - north * self.sin, east * self.sin + north * self.cos) for east, north in places]

    def stretches(self, area):
        rings = [self.laid_out(ring) for ring in area.rings]
        if area.kind == "stream":
            rings = [banks(*rings[0], area.width_m)]
        offsets = []
        for ring in rings:
            for (x0, y0), (x1, y1) in zip(ring, [*ring[1:], ring[0]]):
                if (y0 <= 0) != (y1 <= 0):
                    offsets.append(x0 + (x1 - x0) * y0 / (y0 - y1))
        offsets.sort()
        if area.kind in OUT_BEYOND:  # out is what is not in it
            offsets = [-math.inf, *offsets, math.inf]
        pairs = [(max(a, -REACH_M), min(b, REACH_M)) for a, b in zip(offsets[::2], offsets[1::2])]
        return [(a, b) for a, b in pairs if a < b]


def banks(start, end, width_m):
    (x0, y0), (x1, y1) = start, end
    length = math.hypot(x1 - x0, y1 - y0)
    x, y = (y1 - y0) / length * width_m / 2, (x0 - x1) / length * width_m / 2
    return [(x0 + x, y0 + y), (x1 + x, y1 + y), (x1 - x, y1 - y), (x0 - x, y0 - y)]


def without(stretches, others):
    for low, high in others:
        stretches = [piece for a, b in stretches for piece in ((a, min(b, low)), (max(a, high), b)) if piece[0] < piece[1]]
    return stretches


def away(stretch):
    return max(stretch[0], -stretch[1], 0.0)


class RandomHole:
    """What is drawn, drawn so that one reading only is right: obstacles apart from each other, woods off the fairway."""

    def __init__(self, rng):
        self.rng = rng
        start = (rng.uniform(-180, 180), rng.uniform(-55, 65))
        bearing, legs = rng.uniform(0, 360), rng.choice((1, 1, 2, 3))
        length_m = rng.uniform(100, 600) * YARD_M
        corners = [start]
        for share in self.shares(legs):
            corners.append(ahead(corners[-1], bearing, share * length_m))
            bearing += rng.uniform(-60, 60)
        self.line = Line(corners)
        self.taken = []  # (place, radius) of what stands already
        self.areas = [Area("green", [self.blob(corners[-1], 12)]), *self.fairways()]
        self.add_obstacles()

    def shares(self, legs):
        parts = [self.rng.uniform(0.5, 1) for _ in range(legs)]
        return [part / sum(parts) for part in parts]

    def blob(self, centre, radius_m, least=0.7):
        corners = self.rng.randint(7, 24)
        turn = self.rng.uniform(0, 360)
        return [ahead(centre, turn + 360 * i / corners, radius_m * self.rng.uniform(least, 1)) for i in range(corners)]

    def fairways(self):
        """Along the line, with a gap now and then, and an island in it."""
        end_m = self.line.length_m - 20
        starts, station = [[]], min(60.0, 0.3 * end_m)
        while station < end_m:
            starts[-1].append(station)
            station += self.rng.uniform(15, 40)
            if self.rng.random() < 0.08:
                starts.append([])
        areas = []
        for stations in starts:
            if len(stations) < 3:
                continue
            left, right = [], []
            for station in stations:
                place, direction = self.line.at(station)
                left.append(ahead(place, direction - 90, self.rng.uniform(8, 28)))
                right.append(ahead(place, direction + 90, self.rng.uniform(8, 28)))
            areas.append(Area("fairway", [[*left, *right[::-1]]]))
        return areas

    def add_obstacles(self):
        plans = [("bunker", 3, 9, 0, 40, 8), ("lateral_water_hazard", 8, 30, 15, 90, 4), ("water_hazard", 8, 25, 15, 90, 2),
                 ("wood", 8, 30, 65, 120, 8), ("out_of_bounds", 10, 40, 80, 130, 3)]
        for kind, least, most, near, far, count in plans:
            for _ in range(count):
                station, side = self.rng.uniform(0, self.line.length_m), self.rng.choice((-90, 90))
                place, direction = self.line.at(station)
                radius = self.rng.uniform(least, most)
                centre = ahead(place, direction + side, self.rng.uniform(near, far))
                if self.is_free(kind, centre, radius):
                    self.taken.append((centre, radius))
                    self.areas.append(Area(kind, [self.blob(centre, radius)]))
        if self.rng.random() < 0.4:
            self.add_stream()
        bounds = self.rng.random()
        if bounds < 0.7:
            self.add_bounds("boundary" if bounds < 0.4 else "out_of_bounds_line")

    def is_free(self, kind, centre, radius):
        """Golf's own ground is not in doubt; woods and what is out keep off the fairway's widest."""
        from_line = min(azimuth_and_distance(centre, self.line.at(station)[0])[1]
                        for station in range(0, int(self.line.length_m), 5))
        keep_off = {"wood": 45, "out_of_bounds": 45}.get(kind, 0)
        others = [(self.line.corners[-1], 14), (self.line.corners[0], 5), *self.taken]
        return (from_line > keep_off + radius and
                all(azimuth_and_distance(centre, place)[1] > radius + size + 3 for place, size in others))

    def add_stream(self):
        """Straight across, well clear of what stands already."""
        place, direction = self.line.at(self.rng.uniform(0.3, 0.8) * self.line.length_m)
        bearing = direction + 90 + self.rng.uniform(-25, 25)
        ends = ahead(place, bearing, -300), ahead(place, bearing, 300)
        plane = Proj(proj="aeqd", lon_0=place[0], lat_0=place[1], ellps="WGS84")
        for centre, radius in [*self.taken, (self.line.corners[-1], 14), (self.line.corners[0], 5)]:
            east, north = plane(*centre)
            turn = math.radians(bearing)
            if abs(east * math.cos(turn) - north * math.sin(turn)) < radius + 8:
                return
        self.areas.append(Area("stream", [list(ends)], round(self.rng.uniform(1, 8), 1)))

    def add_bounds(self, kind):
        """A straight edge that runs close by all the golf; woods may reach over it. What is drawn is a huge square around all
        else, or the edge alone."""
        plane = Proj(proj="aeqd", lon_0=self.line.corners[0][0], lat_0=self.line.corners[0][1], ellps="WGS84")
        bearing = self.rng.uniform(0, 360)
        turn = math.radians(bearing)
        golf = [*self.line.corners, *(place for area in self.areas if area.kind not in ("wood", "stream", "out_of_bounds")
                                      for place in area.rings[0])]
        places = [plane(*place) for place in golf]
        off_m = max(east * math.sin(turn) + north * math.cos(turn) for east, north in places) + self.rng.uniform(1, 40)
        side = ahead(self.line.corners[0], bearing, off_m)
        near = [ahead(side, bearing - 90, 1500), ahead(side, bearing + 90, 1500)]
        self.areas.append(Area(kind, [[*near, *(ahead(place, bearing + 180, 3000) for place in reversed(near))]]))

    def geojson(self):
        corners = self.line.corners
        tee = [ahead(corners[0], turn, 3) for turn in (45, 135, 225, 315)]
        features = [feature("LineString", corners, {"golf": "hole", "ref": "1", "par": "4"}),
                    feature("Polygon", [[*tee, tee[0]]], {"golf": "tee"}), feature("Point", corners[-1], {"golf": "pin"}),
                    *(area.feature() for area in self.areas)]
        return json.dumps({"type": "FeatureCollection", "features": features})


class Comparison:
    def __init__(self):
        self.counts = collections.Counter()
        self.worst_yd = collections.Counter()
        self.wrong = []

    def figure(self, kind, where, printed, exact_m, by_a_hair=False):
        exact = exact_m / YARD_M
        self.counts[kind] += 1
        difference = abs(printed - exact)
        if difference <= ROUNDING_YD + HAIR_YD or not by_a_hair:
            self.worst_yd[kind] = max(self.worst_yd[kind], difference)
        if difference > ROUNDING_YD + HAIR_YD and not by_a_hair:
            self.wrong.append(f"{where}: {kind} is printed as {printed}, measured as {exact:.4f} yd")

    def presence(self, kind, where, printed, exact, by_a_hair):
        if (printed is None) != (exact is None) and not by_a_hair:
            self.wrong.append(f"{where}: {kind} is printed as {printed}, measured as {exact}")
        return printed is not None and exact is not None


def nearest(stretches):
    """The stretch nearest to the line, of two as near the wider; and whether that hangs by a hair."""
    order = sorted(stretches, key=lambda stretch: (away(stretch), stretch[0] - stretch[1]))
    hair = len(order) > 1 and abs(away(order[0]) - away(order[1])) < 0.01
    return (order[0] if order else None), hair


def compare_fairway(comparison, where, printed, stretches):
    stretch, hair = nearest(stretches)
    hair = hair or any(b - a < 0.01 or min(abs(a), abs(b)) < 0.01 or away((a, b)) > REACH_M - 0.1 for a, b in stretches)
    if comparison.presence("fairway", where, printed["edges_yd"], stretch, hair):
        comparison.figure("edge", where, printed["edges_yd"]["left"], stretch[0], hair)
        comparison.figure("edge", where, printed["edges_yd"]["right"], stretch[1], hair)
        comparison.figure("width", where, printed["landing_width_yd"], stretch[1] - stretch[0], hair)


def compare_trouble(comparison, where, printed, troubles, side):
    """`troubles`: (stretch, lie)."""
    here = [(away(stretch), lie) for stretch, lie in troubles if (stretch[0] < 0 if side < 0 else stretch[1] > 0)]
    here.sort()
    hair = any(distance > REACH_M - 0.1 for distance, _ in here) or any(min(abs(a), abs(b)) < 0.01 for (a, b), _ in troubles)
    if not comparison.presence("trouble", where, printed, here[0] if here else None, hair):
        return
    comparison.figure("trouble", where, printed["distance_yd"], here[0][0], hair)
    as_near = {lie for distance, lie in here if distance < here[0][0] + 0.01}
    if printed["lie"] not in as_near and not hair:
        comparison.wrong.append(f"{where}: {printed['lie']} and not {here[0]}")


def compare(comparison, name, hole, printed):
    comparison.figure("length", name, printed["length_yd"], hole.line.length_m)
    stations = [yd for yd in range(FIRST_YD, LAST_YD + 1, STEP_YD) if yd * YARD_M <= hole.line.length_m]
    if [t["station_yd"] for t in printed["transects"]] != stations:
        comparison.wrong.append(f"{name}: other stations")
        return
    for station, transect in zip(stations, printed["transects"]):
        where = f"{name}, {station} yd"
        cut = Transect(*hole.line.at(station * YARD_M))
        stretches = collections.defaultdict(list)
        for area in hole.areas:
            stretches[area.kind] += cut.stretches(area)
        troubles = [(stretch, TROUBLE[kind]) for kind in TROUBLE for stretch in stretches[kind]]
        fairway = without(stretches["fairway"], [*(stretch for stretch, _ in troubles), *stretches["green"]])
        compare_fairway(comparison, where, transect, fairway)
        compare_trouble(comparison, where + " left", transect["trouble_left"], troubles, -1)
        compare_trouble(comparison, where + " right", transect["trouble_right"], troubles, 1)


def main():
    program, holes, seed = sys.argv[1], int(sys.argv[2]), int(sys.argv[3]) if len(sys.argv) > 3 else 1
    comparison = Comparison()
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "hole.geojson"
        for number in range(seed, seed + holes):
            hole = RandomHole(random.Random(number))
            path.write_text(hole.geojson(), encoding="utf-8")
            command = [program, "survey", str(path), "--format", "json"]
            answer = subprocess.run(command, capture_output=True, text=True, check=False)
            if answer.returncode != 0:
                comparison.wrong.append(f"seed {number}: {answer.returncode} {answer.stderr}")
                continue
            compare(comparison, f"seed {number}", hole, json.loads(answer.stdout)["holes"][0])
    for line in comparison.wrong:
        print(line)
    for kind, count in sorted(comparison.counts.items()):
        print(f"{count} figures of {kind}: differ by {comparison.worst_yd[kind]:.5f} yd at most, rounded to 0.1 yd")
    assert sum(comparison.counts.values()) > 10 * holes, "hardly anything was measured"
    return 1 if comparison.wrong else 0


if __name__ == "__main__":
    sys.exit(main())
