#!/usr/bin/env python3
"""Writes the demo course back as GeoJSON and GeoPackage, reads it again and compares.

    written_course_is_the_same.py ROOT PROGRAM

Survey and plan must say the same of the written course as of the original, to the digit shown; findings are points beside it,
of which a second reading tells again what the first one lost; what was mended in the file counts. A map of the same course without golf tags must come
out the same by the file of tags that survey proposes.
"""

import json
import pathlib
import subprocess
import sys
import tempfile

GROUND = {"green": "Greens", "fairway": "Fairways", "bunker": "Bunkers", "tee": "Tees", "hole": "Holes", "pin": "Pins",
          "rough": "Rough", "water_hazard": "Water hazards", "lateral_water_hazard": "Red penalty areas",
          "out_of_bounds": "OB", "cartpath": "Cart paths", "clubhouse": "Clubhouse"}
OTHER = {"wood": "Woods", "scrub": "Scrub", "tree": "Trees", "tree_row": "Tree rows", "water": "Ponds",
         "stream": "Streams", "yes": "Buildings"}


def run(program, *arguments, code=0):
    answer = subprocess.run([program, *map(str, arguments)], capture_output=True, text=True, check=False)
    assert answer.returncode == code, f"{arguments}: left with {answer.returncode}: {answer.stderr}"
    return answer.stdout


def without_source(document):
    document["course"].pop("source")
    return document


def survey(program, course, *more):
    return without_source(json.loads(run(program, "survey", course, "--format", "json", *more)))


def plan(program, course, golfer):
    return without_source(json.loads(run(program, "plan", course, golfer, "--holes", "1,7", "--field", "published",
                                         "--format", "json")))


def check_findings(collection, findings):
    points = [f for f in collection["features"] if "finding" in f["properties"]]
    assert [p["properties"]["finding"] for p in points] == [f["code"] for f in findings]
    for point, finding in zip(points, findings):
        assert point["geometry"]["type"] == "Point"
        for key in ("severity", "message", "advice", "hole", "feature"):
            assert point["properties"][key] == finding[key]
        if finding["place"]:
            assert point["geometry"]["coordinates"] == finding["place"]


def check_mending(program, folder, collection):
    hole = next(f for f in collection["features"]
                if f["properties"].get("golf") == "hole" and f["properties"]["ref"] == "2")
    hole["properties"]["par"] = "6"
    mended = folder / "mended.geojson"
    mended.write_text(json.dumps(collection), encoding="utf-8")
    assert survey(program, mended)["holes"][1]["par"] == 6


def check_without_tags(program, folder, collection, original):
    features = []
    for feature in collection["features"]:
        tags = feature["properties"]
        if "finding" in tags:
            continue
        kind = (GROUND.get(tags.get("golf")) or ("Course boundary" if "leisure" in tags else None) or
                next((OTHER[tags[k]] for k in ("natural", "waterway", "building") if tags.get(k) in OTHER), "Roads"))
        keep = {k: v for k, v in tags.items()
                if k not in ("golf", "natural", "leisure", "waterway", "highway", "building", "landuse", "@id",
                             "other_tags")}
        features.append({"type": "Feature", "properties": {"Kind": kind, **keep}, "geometry": feature["geometry"]})
    plain = folder / "plain.geojson"
    plain.write_text(json.dumps({"type": "FeatureCollection", "features": features}), encoding="utf-8")
    proposal = folder / "plain.tags"
    proposal.write_text(run(program, "survey", plain, code=2), encoding="utf-8")
    assert "Kind Greens = golf=green" in proposal.read_text(encoding="utf-8")
    for tags in (proposal, "kind"):
        read = survey(program, plain, "--tags", tags)
        assert read["summary"] == original["summary"]
        for hole, same in zip(read["holes"], original["holes"]):
            assert {**hole, "feature": ""} == {**same, "feature": ""}


HOLE = [(1, 0, 0), (2, 0, 150), (3, 0, 300)]
RINGS = {10: (0, 300, 12), 11: (0, 0, 4), 12: (0, 190, 15), 13: (30, 200, 5)}


def damaged_map(first_point="<nd ref='1'/>"):
    """A hole whose line lacks a point, a lake and a boundary cut by the export, a bunker that does not close."""
    nodes = {number: (east, north) for number, east, north in HOLE}
    rings = {}
    for way, (east, north, size) in RINGS.items():
        corners = [(-size, -size), (size, -size), (size, size), (-size, size)]
        rings[way] = [way * 10 + i for i in range(4)]
        nodes.update({way * 10 + i: (east + x, north + y) for i, (x, y) in enumerate(corners)})
    lines = [f"<node id='{n}' lat='{46 + y / 111000:.7f}' lon='{-33 + x / 77000:.7f}'/>" for n, (x, y) in nodes.items()]
    lines.append("<node id='900' lat='46.001' lon='-33.001'><tag k='amenity' v='bench'/></node>")
    tags = {10: "golf=green", 11: "golf=tee", 12: "golf=fairway", 13: "golf=bunker"}
    ways = {1: (first_point + "<nd ref='2'/><nd ref='3'/>", "golf=hole ref=1 par=4")}
    for way, points in rings.items():
        closed = points if way == 13 else [*points, points[0]]
        ways[way] = "".join(f"<nd ref='{n}'/>" for n in closed), tags[way]
    ways[14] = "<nd ref='110'/><nd ref='111'/><nd ref='112'/><nd ref='7777'/><nd ref='110'/>", "natural=water"
    ways[15] = "<nd ref='100'/><nd ref='101'/><nd ref='8888'/><nd ref='100'/>", "leisure=golf_course"
    for way, (points, words) in ways.items():
        pairs = (word.split("=") for word in words.split())
        lines.append(f"<way id='{way}'>{points}" + "".join(f"<tag k='{k}' v='{v}'/>" for k, v in pairs) + "</way>")
    return "<osm version='0.6'>" + "\n".join(lines) + "</osm>"


def check_losses(program, folder, golfer):
    """What the reading lost is told of the copy and of its copy, until its points are removed."""
    source = folder / "damaged.osm"
    source.write_text(damaged_map("<nd ref='1'/><nd ref='9999'/>"), encoding="utf-8")
    codes = {"hole-points-missing", "points-missing", "boundary-cut", "area-open"}
    told = json.loads(run(program, "survey", source, "--format", "json", code=1))["findings"]
    assert codes <= {finding["code"] for finding in told}, told
    for form in ("geojson", "gpkg"):
        before = source
        for copy in ("copy", "copy of copy"):
            written = folder / f"{copy}.{form}"
            answer = subprocess.run([program, "survey", before, "--format", form, "-o", written], capture_output=True,
                                    text=True, check=False)
            assert answer.returncode == 1
            left_out = "1 feature of damaged.osm whose tags say nothing to a golf hole" if copy == "copy" else ""
            assert left_out in answer.stderr and (left_out or not answer.stderr), answer.stderr
            again = json.loads(run(program, "survey", written, "--format", "json", code=1))["findings"]
            assert again == told, f"{form}, {copy}: other findings"
            run(program, "plan", written, golfer, code=2)
            before = written
    collection = json.loads((folder / "copy.geojson").read_text(encoding="utf-8"))
    collection["features"] = [f for f in collection["features"] if f["properties"].get("told_again") != "until removed"]
    for feature in collection["features"]:
        feature["properties"].pop("points_cut", None)
    mended = folder / "losses mended.geojson"
    mended.write_text(json.dumps(collection), encoding="utf-8")
    assert not codes & {finding["code"] for finding in survey(program, mended)["findings"]}


def check_ids(program, folder, collection):
    """A column called id stays, and features that are no elements keep their ids."""
    features = [{**f, "properties": {**f["properties"], "@id": None, "id": str(i)}}
                for i, f in enumerate(collection["features"]) if "finding" not in f["properties"]]
    plain, written = folder / "ids.geojson", folder / "ids kept.geojson"
    plain.write_text(json.dumps({"type": "FeatureCollection", "features": features}), encoding="utf-8")
    run(program, "survey", plain, "--format", "geojson", "-o", written)
    kept = [f["properties"] for f in json.loads(written.read_text(encoding="utf-8"))["features"]]
    assert {p["id"] for p in kept if "finding" not in p} == {str(i) for i in range(len(features))}
    assert survey(program, written) == survey(program, plain)


def main():
    root, program = pathlib.Path(sys.argv[1]), sys.argv[2]
    course = root / "demo" / "wrackholm.osm"
    golfer = root / "demo" / "golfers" / "long-wild.json"
    original, planned = survey(program, course), plan(program, course, golfer)
    assert original["findings"], "a course with nothing to find shows nothing"
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        for form in ("geojson", "gpkg"):
            written = folder / f"course.{form}"
            run(program, "survey", course, "--format", form, "-o", written)
            assert survey(program, written) == original, f"{form}: the survey differs"
            assert plan(program, written, golfer) == planned, f"{form}: the plan differs"
        collection = json.loads((folder / "course.geojson").read_text(encoding="utf-8"))
        check_findings(collection, original["findings"])
        check_without_tags(program, folder, collection, original)
        check_mending(program, folder, collection)
        check_losses(program, folder, golfer)
        check_ids(program, folder, collection)
        run(program, "survey", course, "--format", "gpkg", code=2)
    print("the written course is the same")


if __name__ == "__main__":
    main()
