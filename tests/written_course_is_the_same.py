#!/usr/bin/env python3
"""Writes the demo course back as GeoJSON and GeoPackage, reads it again and compares.

    written_course_is_the_same.py ROOT PROGRAM

Survey and plan must say the same of the written course as of the original, to the digit shown; findings are points beside it
that a second reading leaves out; what was mended in the file counts. A map of the same course without golf tags must come
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
        run(program, "survey", course, "--format", "gpkg", code=2)
    print("the written course is the same")


if __name__ == "__main__":
    main()
