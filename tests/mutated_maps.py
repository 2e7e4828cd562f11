#!/usr/bin/env python3
"""Damages small maps in every format and looks how the program takes it.

    python3 mutated_maps.py PROGRAM COUNT [SEED]

Makes COUNT maps out of a few sound ones (OpenStreetMap XML, the same packed, .osm.pbf, .o5m where osmium can write it,
JSON of queries, GeoJSON, GeoPackage, KML, FlatGeobuf), each damaged by one to four slips: bits flipped, the end or a
stretch lost, a stretch twice, numbers changed or swapped, deep nesting, huge counts. Runs `PROGRAM survey FILE` on
each, two at a time, within 10 s and 1 GB. Exit codes 0, 1 and 2 are answers; a signal, more time or any other code
is a defect and is listed with what makes it again:

    python3 mutated_maps.py PROGRAM 1 SEED

Leaves with 1 when there was any. Needs gdal's ogr2ogr, for .osm.pbf also osmium-tool. With KEEP=FOLDER in the environment
the files at fault are kept there.
"""

import bz2
import gzip
import json
import os
import random
import re
import resource
import shutil
import subprocess
import sys
import tempfile
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from xml.etree import ElementTree

HERE = Path(__file__).parent
SOUND = HERE / "courses" / "data" / "two_holes.osm"
SECONDS = 10
BYTES = 1 << 30
AT_ONCE = 2
PLANE = 'golf,leisure,natural,landuse,waterway,highway,building,ref,par,name,handicap,tee'


def query_json(positions):
    """The sound map as query services write JSON."""
    root = ElementTree.parse(SOUND).getroot()
    places = {n.get("id"): {"lat": float(n.get("lat")), "lon": float(n.get("lon"))} for n in root.iter("node")}
    ways = {w.get("id"): [places[nd.get("ref")] for nd in w.iter("nd")] for w in root.iter("way")}
    elements = []
    for item in root:
        record = {"type": item.tag, "id": int(item.get("id"))}
        record["tags"] = {tag.get("k"): tag.get("v") for tag in item.iter("tag")}
        if item.tag == "node":
            record.update(places[item.get("id")])
        elif item.tag == "way":
            record["nodes"] = [int(nd.get("ref")) for nd in item.iter("nd")]
            if positions:
                record["geometry"] = ways[item.get("id")]
        elif item.tag == "relation":
            record["members"] = [{"type": m.get("type"), "ref": int(m.get("ref")), "role": m.get("role")} for m in item.iter("member")]
            for member in record["members"]:
                if positions and member["type"] == "way":
                    member["geometry"] = ways.get(str(member["ref"]), [])
        else:
            continue
        elements.append(record)
    return json.dumps({"version": 0.6, "elements": elements}, indent=1).encode()


def sound_maps(folder):
    """Name -> bytes of the same small map in every format."""
    xml = SOUND.read_bytes()
    maps = {
        "map.osm": xml,
        "map.osm.gz": gzip.compress(xml, mtime=0),
        "map.osm.bz2": bz2.compress(xml),
        "map.osm.pbf": (SOUND.parent / "two_holes.osm.pbf").read_bytes(),
        "nodes.json": query_json(False),
        "positions.json": query_json(True),
    }
    settings = folder / "osm.ini"
    layer = f"[{{}}]\nosm_id=yes\nattributes={PLANE}\nother_tags=no\n"
    settings.write_text("closed_ways_are_polygons=golf\nattribute_name_laundering=no\n"
                        + "".join(layer.format(n) for n in ("points", "lines", "multipolygons", "multilinestrings", "other_relations")))
    environment = {**os.environ, "OSM_CONFIG_FILE": str(settings)}

    def converted(name, *arguments, source=SOUND):
        target = folder / name
        subprocess.run(["ogr2ogr", "-q", *arguments, str(target), str(source)], check=True, env=environment,
                       stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        return target.read_bytes()

    maps["map.gpkg"] = converted("map.gpkg", "-f", "GPKG")
    maps["map.kml"] = converted("map.kml", "-f", "KML", source=folder / "map.gpkg")
    one = ["-sql", f"SELECT {PLANE} FROM lines", "-nln", "lines"]
    maps["map.geojson"] = converted("map.geojson", "-f", "GeoJSON", *one)
    maps["map.fgb"] = converted("map.fgb", "-f", "FlatGeobuf", *one)
    if shutil.which("osmium"):
        for name, form in {"lz4.osm.pbf": "pbf,pbf_compression=lz4", "plain.osm.pbf": "pbf,pbf_compression=none"}.items():
            target = folder / name
            subprocess.run(["osmium", "cat", str(SOUND), "-f", form, "-o", str(target)], check=True)
            maps[name] = target.read_bytes()
    return maps


def place(rng, data):
    return rng.randrange(len(data) + 1)


def stretch(rng, data):
    start = place(rng, data)
    return start, min(len(data), start + rng.choice([1, 4, 16, 64, 256, 1024]))


def bits_flipped(rng, data):
    data = bytearray(data)
    for _ in range(rng.choice([1, 1, 2, 8, 32])):
        if data:
            data[rng.randrange(len(data))] ^= 1 << rng.randrange(8)
    return bytes(data)


def cut_off(rng, data):
    return data[:place(rng, data)]


def stretch_lost(rng, data):
    start, end = stretch(rng, data)
    return data[:start] + data[end:]


def stretch_twice(rng, data):
    start, end = stretch(rng, data)
    return data[:end] + data[start:end] * rng.choice([1, 2, 50]) + data[end:]


def stretch_elsewhere(rng, data):
    start, end = stretch(rng, data)
    at = place(rng, data)
    return data[:at] + data[start:end] + data[at:]


def number_changed(rng, data):
    numbers = list(re.finditer(rb"-?\d+(\.\d+)?", data))
    if not numbers:
        return bits_flipped(rng, data)
    other = rng.choice(numbers).group()
    value = rng.choice([other, b"0", b"-1", b"180", b"1e308", b"1e-320", b"NaN", b"9223372036854775807", b"-9223372036854775808",
                        b"99999999999999999999999", b"4294967296", b""])
    found = rng.choice(numbers)
    return data[:found.start()] + value + data[found.end():]


def nested(rng, data):
    pieces = [b"[", b'{"a":', b"<a>", b"<node>", b'<relation id="1">', b'<way id="1">', b"<Folder>", b"<MultiGeometry>",
              b'{"type":"GeometryCollection","geometries":[', b"(", b"\x0a\x7f"]
    at = place(rng, data)
    return data[:at] + rng.choice(pieces) * rng.choice([3, 100, 10000, 100000]) + data[at:]


def count_huge(rng, data):
    if len(data) < 8:
        return data
    at = rng.randrange(len(data) - 7)
    count = rng.choice([b"\xff\xff\xff\x7f", b"\xff\xff\xff\xff", b"\x00\x00\x00\x80", b"\xff\xff\xff\xff\xff\xff\xff\x7f", b"\x00\x00\x00\x01", b"\x7f\xff\xff\xff"])
    return data[:at] + count + data[at + len(count):]


SLIPS = [bits_flipped, bits_flipped, cut_off, stretch_lost, stretch_twice, stretch_elsewhere, number_changed, number_changed,
         nested, count_huge]


def damaged(maps, seed):
    rng = random.Random(seed)
    name = rng.choice(sorted(maps))
    data = maps[name]
    packing = {"map.osm.gz": (gzip.decompress, lambda b: gzip.compress(b, mtime=0)), "map.osm.bz2": (bz2.decompress, bz2.compress)}.get(name)
    inside = packing and rng.random() < 0.5
    if inside:
        data = packing[0](data)
    slips = [rng.choice(SLIPS) for _ in range(rng.choice([1, 1, 2, 4]))]
    for slip in slips:
        data = slip(rng, data)
    if inside:
        data = packing[1](data)
    return name, data, ", ".join(slip.__name__ for slip in slips)


def bounded():
    resource.setrlimit(resource.RLIMIT_AS, (BYTES, BYTES))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))


def tried(program, maps, folder, seed):
    """None, or what is wrong."""
    name, data, slips = damaged(maps, seed)
    with tempfile.TemporaryDirectory(dir=folder) as own:
        file = Path(own) / name
        file.write_bytes(data)
        start = time.monotonic()
        try:
            run = subprocess.run([program, "survey", str(file)], stdout=subprocess.DEVNULL, stderr=subprocess.PIPE,
                                 timeout=SECONDS, preexec_fn=bounded, cwd=own)
            error = run.stderr.decode("utf-8", "replace").strip()
            code = run.returncode
            wrong = None
            if code < 0:
                wrong = f"signal {-code}"
            elif code not in (0, 1, 2):
                wrong = f"exit code {code}"
            elif "defect" in error or "memory" in error:
                wrong = "says: " + error
            elif code == 2 and error.count("\n") > 0:
                wrong = "says more than one line: " + error[:200]
        except subprocess.TimeoutExpired:
            wrong = f"over {SECONDS} s"
        took = time.monotonic() - start
        if wrong and os.environ.get("KEEP"):
            shutil.copy(file, Path(os.environ["KEEP"]) / f"{seed}_{name}")
        return (f"seed {seed}: {name} ({slips}; {len(data)} bytes): {wrong}" if wrong else None), took


def main():
    if len(sys.argv) not in (3, 4):
        sys.exit(__doc__)
    program = str(Path(sys.argv[1]).resolve())
    count = int(sys.argv[2])
    first = int(sys.argv[3]) if len(sys.argv) == 4 else 1
    with tempfile.TemporaryDirectory() as folder:
        maps = sound_maps(Path(folder))
        for name, data in maps.items():
            file = Path(folder) / ("sound_" + name)
            file.write_bytes(data)
            code = subprocess.run([program, "survey", str(file)], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL).returncode
            if code not in (0, 1):
                sys.exit(f"the sound map {name} is refused: exit code {code}")
        with ThreadPoolExecutor(AT_ONCE) as pool:
            results = list(pool.map(lambda seed: tried(program, maps, folder, seed), range(first, first + count)))
    wrong = [text for text, _ in results if text]
    for text in wrong:
        print(text)
    print(f"{count} damaged maps, {len(wrong)} taken badly; the slowest took {max(took for _, took in results):.1f} s")
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
