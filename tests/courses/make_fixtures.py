#!/usr/bin/env python3
"""Writes data/two_holes.osm and .osm.pbf, an invented course of two holes in the open sea, and
data/incomplete.osm.pbf, one that lacks what its elements refer to.

Shapes are given in metres east and north of the origin. The .osm.pbf holds the same elements as the .osm,
encoded after the format's public description (blobs of zlib-packed protocol buffers, nodes as DenseNodes).
Same script, same bytes. Standard library only: python3 make_fixtures.py
"""

import math
import struct
import zlib
from pathlib import Path
from xml.sax.saxutils import quoteattr

ORIGIN_LON, ORIGIN_LAT = -31.2, -42.6  # open South Atlantic
GRANULARITY = 100  # nanodegrees, the format's default


class Course:
    def __init__(self):
        lat = math.radians(ORIGIN_LAT)
        e2 = 0.00669437999014
        w = 1 - e2 * math.sin(lat) ** 2
        self.per_lat = math.radians(6378137.0 * (1 - e2) / w**1.5)
        self.per_lon = math.radians(6378137.0 / math.sqrt(w) * math.cos(lat))
        self.nodes, self.ways, self.relations = [], [], []

    def node(self, x, y, **tags):
        lon, lat = ORIGIN_LON + x / self.per_lon, ORIGIN_LAT + y / self.per_lat
        self.nodes.append((101 + len(self.nodes), round(lon * 1e7), round(lat * 1e7), fixed(tags)))
        return self.nodes[-1][0]

    def line(self, points, **tags):
        self.ways.append((1001 + len(self.ways), [self.node(x, y) for x, y in points], fixed(tags)))
        return self.ways[-1][0]

    def area(self, points, **tags):
        refs = [self.node(x, y) for x, y in points]
        self.ways.append((1001 + len(self.ways), refs + refs[:1], fixed(tags)))
        return self.ways[-1][0]

    def relation(self, members, **tags):
        self.relations.append((5001 + len(self.relations), members, fixed(tags)))


def fixed(tags):
    return {key.replace("__", ":").rstrip("_"): value for key, value in tags.items()}


def oval(x, y, long, wide, turn=0.0, corners=24):
    points = []
    for i in range(corners):
        a = 2 * math.pi * i / corners
        u, v = long / 2 * math.cos(a), wide / 2 * math.sin(a)
        points.append((x + u * math.cos(turn) - v * math.sin(turn), y + u * math.sin(turn) + v * math.cos(turn)))
    return points


def two_holes():
    c = Course()
    name = "Skerrymoor Links"
    c.area([(-190, -120), (420, -130), (440, 520), (-200, 510)], leisure="golf_course", name=name)
    # Hole 1: par 4, dogleg right.
    c.line([(0, 0), (-6, 215), (70, 345)], golf="hole", ref="1", par="4", handicap="2", name="Låring", golf__course__name=name)
    c.area(oval(0, 0, 14, 8, 1.6), golf="tee", tee="white")
    c.area(oval(-2, 22, 14, 9, 1.6), golf="tee", tee="yellow;red")
    outer = c.area([(-20, 90), (12, 92), (16, 200), (42, 262), (78, 325), (56, 338), (16, 280), (-22, 214)])
    inner = c.area(oval(-2, 214, 16, 8, 0.4))
    c.relation([(outer, "outer"), (inner, "inner")], type="multipolygon", golf="fairway")
    c.area(oval(-2, 214, 16, 8, 0.4), golf="bunker", natural="sand")
    c.area(oval(72, 348, 30, 24, 0.6), golf="green")
    c.node(70, 345, golf="pin")
    c.area(oval(48, 356, 12, 7), golf="bunker")
    c.area(oval(38, 190, 40, 26, 0.8), natural="water", golf="lateral_water_hazard", name="Skerry Loch")
    c.line([(-120, 150), (-60, 140), (-10, 146), (40, 138), (110, 150)], waterway="stream")
    c.line([(-40, 40), (-44, 150), (-52, 250)], natural="tree_row")
    c.node(-30, 120, natural="tree")
    c.area([(-120, 180), (-45, 190), (-50, 300), (-125, 310)], natural="wood")
    c.line([(60, 30), (64, 120), (66, 170)], golf="out_of_bounds")
    c.line([(12, 10), (14, 100), (20, 200), (60, 300)], golf="cartpath", highway="path")
    c.area([(20, -60), (40, -60), (40, -40), (20, -40)], building="yes", name="Clubhouse")
    # Hole 2: par 3 over water.
    c.line([(100, 380), (245, 350)], golf="hole", ref="2", par="3", handicap="1", golf__course__name=name)
    c.area(oval(100, 380, 12, 8), golf="tee", tee="white")
    c.area(oval(170, 364, 70, 30, -0.2), golf="water_hazard", natural="water")
    c.area(oval(246, 350, 26, 22), golf="green")
    c.node(247, 352, golf="pin")
    c.area(oval(262, 340, 14, 8, 1.0), golf="bunker")
    c.area(oval(215, 356, 24, 20), golf="fairway")
    c.line([(-180, 440), (100, 450), (430, 440)], highway="residential", name="Shore Road")
    return c


def incomplete():
    """What an extract cut out of a larger one looks like at its edge: members and points are missing."""
    c = Course()
    c.line([(0, 0), (0, 300)], golf="hole", ref="1", golf__course__name="Skerrymoor Links")
    c.area(oval(0, 300, 24, 24), golf="green")
    fairway = c.area([(-20, 100), (20, 100), (20, 200), (-20, 200)], golf="fairway")
    c.ways[-1][1][2] = 99001
    c.line([(200, 0)], golf="hole", ref="2")
    c.relation([(fairway, "outer"), (99002, "inner")], type="multipolygon", natural="wood")
    return c


def write_xml(course, path):
    def tags(items):
        return "".join(f'<tag k={quoteattr(k)} v={quoteattr(v)}/>' for k, v in items.items())

    out = ['<?xml version="1.0" encoding="UTF-8"?>', '<osm version="0.6" generator="make_fixtures.py">']
    for number, lon, lat, items in course.nodes:
        out.append(f'<node id="{number}" version="1" lat="{lat / 1e7:.7f}" lon="{lon / 1e7:.7f}">{tags(items)}</node>')
    for number, refs, items in course.ways:
        body = "".join(f'<nd ref="{ref}"/>' for ref in refs)
        out.append(f'<way id="{number}" version="1">{body}{tags(items)}</way>')
    for number, members, items in course.relations:
        body = "".join(f'<member type="way" ref="{ref}" role="{role}"/>' for ref, role in members)
        out.append(f'<relation id="{number}" version="1">{body}{tags(items)}</relation>')
    path.write_text("\n".join([*out, "</osm>", ""]), encoding="utf-8")


# Protocol buffers: varints, zigzag for signed values, fields as (number << 3 | wire type).


def varint(value):
    out = bytearray()
    while value >= 0x80:
        out.append(value & 0x7F | 0x80)
        value >>= 7
    out.append(value)
    return bytes(out)


def zigzag(value):
    return varint(value << 1 if value >= 0 else (-value << 1) - 1)


def deltas(values):
    before = 0
    for value in values:
        yield value - before
        before = value


def number_field(field, value):
    return varint(field << 3) + varint(value)


def bytes_field(field, data):
    return varint(field << 3 | 2) + varint(len(data)) + data


class Strings:
    def __init__(self):
        self.index, self.items = {"": 0}, [""]

    def __call__(self, text):
        if text not in self.index:
            self.index[text] = len(self.items)
            self.items.append(text)
        return self.index[text]

    def table(self):
        return b"".join(bytes_field(1, text.encode()) for text in self.items)


def tag_fields(strings, tags):
    if not tags:
        return b""
    keys = b"".join(varint(strings(key)) for key in tags)
    values = b"".join(varint(strings(value)) for value in tags.values())
    return bytes_field(2, keys) + bytes_field(3, values)


def primitive_block(course):
    strings = Strings()
    keys_values = b"".join(
        b"".join(varint(strings(k)) + varint(strings(v)) for k, v in tags.items()) + varint(0)
        for _, _, _, tags in course.nodes
    )
    dense = (
        bytes_field(1, b"".join(map(zigzag, deltas([n[0] for n in course.nodes]))))
        + bytes_field(8, b"".join(map(zigzag, deltas([n[2] for n in course.nodes]))))
        + bytes_field(9, b"".join(map(zigzag, deltas([n[1] for n in course.nodes]))))
        + bytes_field(10, keys_values)
    )
    ways = b"".join(
        bytes_field(3, number_field(1, number) + tag_fields(strings, tags) + bytes_field(8, b"".join(map(zigzag, deltas(refs)))))
        for number, refs, tags in course.ways
    )
    relations = b"".join(
        bytes_field(
            4,
            number_field(1, number)
            + tag_fields(strings, tags)
            + bytes_field(8, b"".join(varint(strings(role)) for _, role in members))
            + bytes_field(9, b"".join(map(zigzag, deltas([ref for ref, _ in members]))))
            + bytes_field(10, b"".join(varint(1) for _ in members)),
        )
        for number, members, tags in course.relations
    )
    groups = bytes_field(2, bytes_field(2, dense)) + bytes_field(2, ways) + bytes_field(2, relations)
    return bytes_field(1, strings.table()) + groups + number_field(17, GRANULARITY)


def blob(kind, data):
    packed = number_field(2, len(data)) + bytes_field(3, zlib.compress(data, 9))
    header = bytes_field(1, kind.encode()) + number_field(3, len(packed))
    return struct.pack(">I", len(header)) + header + packed


def write_pbf(course, path):
    header = bytes_field(4, b"OsmSchema-V0.6") + bytes_field(4, b"DenseNodes") + bytes_field(16, b"make_fixtures.py")
    path.write_bytes(blob("OSMHeader", header) + blob("OSMData", primitive_block(course)))


if __name__ == "__main__":
    data = Path(__file__).parent / "data"
    data.mkdir(exist_ok=True)
    write_xml(two_holes(), data / "two_holes.osm")
    write_pbf(two_holes(), data / "two_holes.osm.pbf")
    write_pbf(incomplete(), data / "incomplete.osm.pbf")
