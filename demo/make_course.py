#!/usr/bin/env python3
"""Writes wrackholm.osm, the map of an invented golf course, beside this script.

The plan of the course is in wrackholm_plan.py, the shapes in course_shapes.py. Tags follow
OpenStreetMap's golf scheme. Same plan, same bytes: every irregularity is seeded by what it belongs to.
Run it with Python 3.9 or later, standard library only: python3 make_course.py
"""

from __future__ import annotations

import math
import random
from pathlib import Path
from xml.sax.saxutils import quoteattr

import wrackholm_plan as plan
from course_shapes import YARD, LineOfPlay, Point, blob, ragged, scaled_to, smooth

TEE_COLOURS = ("white", "yellow", "red")
TEE_SIZES_M = ((13, 8), (16, 9), (10, 8))
BUNKER = {"golf": "bunker", "natural": "sand"}


class OsmMap:
    """Collects nodes, ways and relations and writes them as OSM XML 0.6."""

    def __init__(self, origin_lon: float, origin_lat: float):
        self._origin = (origin_lon, origin_lat)
        # Metres per degree on the WGS 84 ellipsoid at the origin.
        lat = math.radians(origin_lat)
        e2 = 0.00669437999014
        w = 1 - e2 * math.sin(lat) ** 2
        self._per_lat = math.radians(6378137.0 * (1 - e2) / w ** 1.5)
        self._per_lon = math.radians(6378137.0 / math.sqrt(w) * math.cos(lat))
        self.metres_per_degree = (self._per_lon, self._per_lat)
        self._nodes: list[tuple[int, str, str, dict]] = []
        self._ways: list[tuple[int, list[int], dict]] = []
        self._relations: list[tuple[int, list[tuple[int, str]], dict]] = []

    def node(self, at: Point, tags: dict | None = None) -> int:
        lon = self._origin[0] + at[0] / self._per_lon
        lat = self._origin[1] + at[1] / self._per_lat
        number = 10482117301 + len(self._nodes)
        self._nodes.append((number, f"{lon:.7f}", f"{lat:.7f}", tags or {}))
        return number

    def line(self, points: list[Point], tags: dict, last_node: int | None = None) -> int:
        """An open way; `last_node` is an existing node to end at."""
        refs = [self.node(p) for p in points]
        return self._way(refs if last_node is None else [*refs, last_node], tags)

    def polygon(self, ring: list[Point], tags: dict) -> int:
        refs = [self.node(p) for p in ring]
        return self._way([*refs, refs[0]], tags)

    def multipolygon(self, outer: list[Point], inner: list[Point], tags: dict) -> None:
        members = [(self.polygon(outer, {}), "outer"), (self.polygon(inner, {}), "inner")]
        self._relations.append((15904411 + len(self._relations), members, {"type": "multipolygon", **tags}))

    def _way(self, refs: list[int], tags: dict) -> int:
        number = 1128640177 + len(self._ways)
        self._ways.append((number, refs, tags))
        return number

    def write(self, path: Path) -> None:
        lons, lats = [n[1] for n in self._nodes], [n[2] for n in self._nodes]
        out = ['<?xml version="1.0" encoding="UTF-8"?>', '<osm version="0.6" generator="make_course.py" '
               'attribution="invented course at sea, made by demo/make_course.py">',
               f'  <bounds minlat="{min(lats, key=float)}" minlon="{min(lons, key=float)}"'
               f' maxlat="{max(lats, key=float)}" maxlon="{max(lons, key=float)}"/>']
        for number, lon, lat, tags in self._nodes:
            out += _element("node", f'id="{number}" visible="true" version="1" lat="{lat}" lon="{lon}"', [], tags)
        for number, refs, tags in self._ways:
            out += _element("way", f'id="{number}" visible="true" version="1"', [f'<nd ref="{ref}"/>' for ref in refs], tags)
        for number, members, tags in self._relations:
            parts = [f'<member type="way" ref="{ref}" role="{role}"/>' for ref, role in members]
            out += _element("relation", f'id="{number}" visible="true" version="1"', parts, tags)
        path.write_text("\n".join([*out, "</osm>", ""]), encoding="utf-8")


def _element(kind: str, attributes: str, parts: list[str], tags: dict) -> list[str]:
    parts = parts + [f"<tag k={quoteattr(key)} v={quoteattr(str(value))}/>" for key, value in tags.items()]
    if not parts:
        return [f"  <{kind} {attributes}/>"]
    return [f"  <{kind} {attributes}>", *(f"    {part}" for part in parts), f"  </{kind}>"]


def rectangle(centre: Point, length: float, width: float, heading: float, rounded: bool = False) -> list[Point]:
    """A box with `length` along `heading` (radians from north); rounded, as tees are mown."""
    corners = [(1, 1), (1, -1), (-1, -1), (-1, 1)]
    if rounded:
        corners = []
        for i in range(20):
            c, s = math.cos(math.tau * i / 20), math.sin(math.tau * i / 20)
            corners.append((math.copysign(abs(c) ** 0.5, c), math.copysign(abs(s) ** 0.5, s)))
    return [(centre[0] + a * length / 2 * math.sin(heading) + b * width / 2 * math.cos(heading),
             centre[1] + a * length / 2 * math.cos(heading) - b * width / 2 * math.sin(heading)) for a, b in corners]


def greenside_bunker(seed: str, green: list[Point], centre: Point, bearing: float, length: float, width: float) -> list[Point]:
    """A bunker lying along the green's edge on the given bearing from its centre."""
    edge = 0.0
    for x, y in green:
        away = math.atan2(x - centre[0], y - centre[1]) - bearing
        if math.cos(away) > 0.75:
            edge = max(edge, math.dist((x, y), centre) * math.cos(away))
    distance = edge + 0.62 * width + 1.5
    at = (centre[0] + distance * math.sin(bearing), centre[1] + distance * math.cos(bearing))
    return blob(seed, at, length, width, bearing + math.pi / 2, 0.22, 22)


def add_hole(osm: OsmMap, hole: plan.Hole, line: LineOfPlay) -> None:
    length = line.length_yd
    key = f"hole {hole.ref}"

    pin = osm.node(line.place(length + hole.green.pin[0], hole.green.pin[1]), {"golf": "pin", "ref": hole.ref})
    osm.line([line.place(s) for s in (0, *line.bends)],
             {"golf": "hole", "ref": hole.ref, "par": hole.par, "handicap": hole.stroke_index, "name": hole.name,
              "golf:course:name": plan.COURSE_NAME}, last_node=pin)

    for (station, offset), colour, (size, width) in zip(hole.tees, TEE_COLOURS, TEE_SIZES_M):
        osm.polygon(rectangle(line.place(station, offset), size, width, line.heading(station), rounded=True),
                    {"golf": "tee", "tee": colour, "surface": "grass"})

    centre = line.place(length)
    heading = line.heading(length) + math.radians(hole.green.turn_deg)
    ring = blob(f"{key} green", centre, 28 * math.sqrt(hole.green.shape), 28 / math.sqrt(hole.green.shape), heading, 0.13, 36)
    green = scaled_to(ring, centre, hole.green.area_m2)
    osm.polygon(green, {"golf": "green", "surface": "grass"})
    for i, (clock, size, width) in enumerate(hole.greenside):
        osm.polygon(greenside_bunker(f"{key} greenside {i}", green, centre, line.heading(length) + clock / 12 * math.tau,
                                     size * YARD, width * YARD), BUNKER)

    for i, knots in enumerate(hole.fairways):
        osm.polygon(line.ribbon(f"{key} fairway {i}", knots, 1.3, 8 if hole.par == 3 else 16),
                    {"golf": "fairway", "surface": "grass"})
    for i, (station, offset, size, width, turn) in enumerate(hole.bunkers):
        osm.polygon(blob(f"{key} bunker {i}", line.place(station, offset), size * YARD, width * YARD,
                         line.heading(station) + math.radians(turn), 0.22, 22), BUNKER)
    for i, knots in enumerate(hole.woods):
        osm.polygon(ragged(f"{key} wood {i}", line.ribbon(f"{key} wood {i}", knots, 2.0, 14), 2.2),
                    {"natural": "wood", "leaf_type": "mixed"})
    for i, knots in enumerate(hole.scrub):
        osm.polygon(ragged(f"{key} scrub {i}", line.ribbon(f"{key} scrub {i}", knots, 2.0, 10), 1.8), {"natural": "scrub"})
    for i, knots in enumerate(hole.deep_rough):
        osm.polygon(line.ribbon(f"{key} rough {i}", knots, 2.0, 12), {"golf": "rough"})
    for station, offset, count in hole.trees:
        rng = random.Random(f"{key} trees {station}")
        spread = 7 * math.sqrt(count)
        for _ in range(count):
            osm.node(line.place(station + rng.uniform(-spread, spread), offset + rng.uniform(-7, 7)), {"natural": "tree"})


def add_cartpath(osm: OsmMap, hole: plan.Hole, line: LineOfPlay) -> None:
    offset = hole.cartpath_offset
    stops = [(-6, math.copysign(9, offset)), (35, offset * 0.7)]
    stops += [(s, offset + 3 * math.sin(s / 23)) for s in range(75, int(line.length_yd) - 30, 35)]
    stops += [(line.length_yd - 5, math.copysign(30, offset))]
    osm.line(smooth([line.place(*stop) for stop in stops], closed=False, step=12),
             {"golf": "cartpath", "highway": "path", "surface": "gravel"})


def bank(seed: str, points: list[Point]) -> list[Point]:
    return ragged(seed, smooth(points, closed=True, step=6), 1.0)


def add_water(osm: OsmMap) -> None:
    for name, width, points in plan.STREAMS:
        tags = {"waterway": "stream", "name": name}
        osm.line(smooth(points, closed=False), tags if width is None else {**tags, "width": width})
    for name, also_natural, points in plan.YELLOW_WATER:
        tags = {"golf": "water_hazard", "name": name}
        osm.polygon(bank(name, points), {**tags, "natural": "water"} if also_natural else tags)
    for name, points in plan.RED_WATER:
        osm.polygon(bank(name, points), {"golf": "lateral_water_hazard", "name": name})
    for name, points in plan.PLAIN_WATER:
        osm.polygon(bank(name, points), {"natural": "water", "water": "pond", "name": name})


def add_land(osm: OsmMap) -> None:
    osm.multipolygon(ragged("Charcoal Wood", smooth(plan.CHARCOAL_WOOD, closed=True), 3.5),
                     ragged("clearing", smooth(plan.CHARCOAL_CLEARING, closed=True), 1.5),
                     {"natural": "wood", "name": "Charcoal Wood", "height": 16})
    for i, (name, points) in enumerate(plan.WOODS):
        osm.polygon(ragged(f"wood {i}", smooth(points, closed=True), 2.5),
                    {"natural": "wood", **({"name": name, "height": 14} if name else {})})
    for i, points in enumerate(plan.SCRUB):
        osm.polygon(ragged(f"scrub {i}", smooth(points, closed=True), 2.0), {"natural": "scrub"})
    for points in plan.DEEP_ROUGH:
        osm.polygon(smooth(points, closed=True), {"golf": "rough"})
    osm.line(plan.TREE_ROW, {"natural": "tree_row", "height": 11})


def add_surroundings(osm: OsmMap) -> None:
    osm.polygon(plan.BOUNDARY, {"leisure": "golf_course", "name": plan.COURSE_NAME, "golf:course": "18_hole",
                                "note": "Invented course for a software demo; it lies in the open sea."})
    osm.line(plan.OUT_OF_BOUNDS_LINE, {"golf": "out_of_bounds"})
    osm.polygon(plan.YARD_OUT_OF_BOUNDS, {"golf": "out_of_bounds", "name": "Greenkeeper's yard"})
    for kind, name, points in plan.ROADS:
        osm.line(smooth(points, closed=False, step=25), {"highway": kind, **({"name": name} if name else {})})
    for kind, centre, length, width, heading in plan.BUILDINGS:
        tags = {"building": "yes", "golf": "clubhouse", "height": 9} if kind == "clubhouse" else {"building": kind}
        if kind == "house":
            tags["building:levels"] = 2
        osm.polygon(rectangle(centre, length, width, math.radians(heading)), tags)


def main() -> None:
    osm = OsmMap(plan.ORIGIN_LON, plan.ORIGIN_LAT)
    for hole in plan.HOLES:
        line = LineOfPlay(hole.corners)
        add_hole(osm, hole, line)
        if hole.cartpath_offset is not None:
            add_cartpath(osm, hole, line)
    add_water(osm)
    add_land(osm)
    add_surroundings(osm)
    osm.write(Path(__file__).with_name("wrackholm.osm"))


if __name__ == "__main__":
    main()
