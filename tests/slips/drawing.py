"""Small invented maps, drawn in metres east and north of a place in the open sea.

A map is a list of features. Tags are written "golf=hole|ref=1;10|par=4".
"""

import dataclasses
import math

ORIGIN = (-33.0, 46.0)
# Near enough for drawing: every format gets the same degrees.
METRES_PER_DEGREE = 111_150.0


@dataclasses.dataclass
class Feature:
    """`kind` and `shape`: point (x, y); line [places]; area [places] without the first place repeated;
    areas [(outline, [holes in it])]; lines [[places]]."""

    kind: str
    shape: object
    tags: dict


def tags_of(text):
    return dict(tag.split("=", 1) for tag in text.split("|")) if text else {}


def point(place, tags):
    return Feature("point", place, tags_of(tags))


def line(places, tags):
    return Feature("line", list(places), tags_of(tags))


def area(places, tags):
    return Feature("area", list(places), tags_of(tags))


def areas(polygons, tags):
    return Feature("areas", list(polygons), tags_of(tags))


def lines(parts, tags):
    return Feature("lines", [list(part) for part in parts], tags_of(tags))


def box(left, bottom, right, top):
    return [(left, bottom), (right, bottom), (right, top), (left, top)]


def disc(x, y, radius, corners=16):
    turns = [2 * math.pi * i / corners for i in range(corners)]
    return [(x + radius * math.cos(turn), y + radius * math.sin(turn)) for turn in turns]


def moved(places, which, dx, dy):
    """The same outline with one of its places moved."""
    return [(x + dx, y + dy) if i == which else (x, y) for i, (x, y) in enumerate(places)]


def hole(ref, x, length, par=4, fairway=True):
    """A straight hole to the north in the usual parts, 300 m and so on."""
    parts = [line([(x, 0), (x, length)], f"golf=hole|ref={ref}|par={par}"),
             area(box(x - 5, -5, x + 5, 5), "golf=tee|tee=white"),
             area(disc(x, length, 12), "golf=green"),
             point((x, length), "golf=pin")]
    if fairway:
        parts.append(area(box(x - 16, 90, x + 16, length - 20), "golf=fairway"))
    return parts


def lonlat(place):
    """Degrees with the seven decimals of OpenStreetMap data."""
    x, y = place
    lon0, lat0 = ORIGIN
    return (round(lon0 + x / METRES_PER_DEGREE / math.cos(math.radians(lat0)), 7),
            round(lat0 + y / METRES_PER_DEGREE, 7))
