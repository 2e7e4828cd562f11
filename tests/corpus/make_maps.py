#!/usr/bin/env python3
"""Writes the maps of this corpus that are not worth typing: the truncated and binary ones.

Needs the fixtures of tests/courses and GDAL's ogr2ogr. Run it with: python3 make_maps.py
"""

import bz2
import gzip
import json
import subprocess
import tempfile
from pathlib import Path

HERE = Path(__file__).parent
MAPS = HERE / "maps"
DATA = HERE.parent / "courses" / "data"

NODES = """<node id="1" lat="46" lon="-33"/><node id="2" lat="46.0027" lon="-33"/>
<node id="3" lat="46.00265" lon="-33.0001"/><node id="4" lat="46.00265" lon="-32.9999"/>
<node id="5" lat="46.0028" lon="-32.9999"/><node id="6" lat="46.0028" lon="-33.0001"/>
<node id="7" lat="46.001" lon="-33.0002"/><node id="8" lat="46.001" lon="-32.9998"/>
<node id="9" lat="46.002" lon="-32.9998"/><node id="10" lat="46.002" lon="-33.0002"/>
"""
HOLE = '<way id="10"><nd ref="1"/><nd ref="2"/><tag k="golf" v="hole"/><tag k="ref" v="1"/></way>\n'
GREEN = """<way id="11"><nd ref="3"/><nd ref="4"/><nd ref="5"/><nd ref="6"/><nd ref="3"/><tag k="golf" v="green"/></way>
"""
ADULT = """{"type":"FeatureCollection","features":[
{"type":"Feature","properties":{"golf":"hole","ref":"1"},"geometry":{"type":"LineString","coordinates":[[-33,46],[-33,46.0027]]}},
{"type":"Feature","properties":{"golf":"green"},"geometry":{"type":"Polygon","coordinates":[[[-33.0001,46.00265],[-32.9999,46.00265],[-32.9999,46.0028],[-33.0001,46.0028],[-33.0001,46.00265]]]}},
{"type":"Feature","properties":{"golf":"pin"},"geometry":{"type":"Point","coordinates":[-33,46.0027]}}]}
"""


def osm(*elements):
    return '<?xml version="1.0" encoding="UTF-8"?>\n<osm version="0.6">\n' + "".join(elements) + "</osm>\n"


def write(name, content):
    path = MAPS / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(content if isinstance(content, bytes) else content.encode())


def texts():
    whole = osm(NODES, HOLE, GREEN)
    write("empty.osm", "")
    write("picture.png", b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR\x00\x00\x00\x01\x00\x00\x00\x01\x08\x06\x00\x00\x00")
    write("not_geo.json", '{"course": "none", "holes": 18}\n')
    write("overpass.json", '{"version": 0.6, "elements": [{"type": "node", "id": 1, "lat": 46, "lon": -33}]}\n')
    query = {"version": 0.6, "osm3s": {"copyright": "The committee"}, "elements": [
        {"type": "node", "id": 1, "lat": 46, "lon": -33}, {"type": "node", "id": 2, "lat": 46.0027, "lon": -33},
        {"type": "way", "id": 10, "nodes": [1, 2], "tags": {"golf": "hole", "ref": "1"}},
        {"type": "way", "id": 11, "tags": {"golf": "green"}, "geometry": [
            {"lat": 46.00265, "lon": -33.0001}, {"lat": 46.00265, "lon": -32.9999}, {"lat": 46.0028, "lon": -32.9999},
            {"lat": 46.0028, "lon": -33.0001}, {"lat": 46.00265, "lon": -33.0001}]}]}
    write("query.json", json.dumps({**query, "remark": "runtime error: Query timed out"}) + "\n")
    write("truncated_query.json", json.dumps(query)[:300])
    clipped = HOLE.replace('<nd ref="2"/>', '<nd ref="2"/><nd ref="77"/>')
    write("hole_cut.osm", osm('<bounds minlat="45.999" minlon="-33.001" maxlat="46.003" maxlon="-32.999"/>', NODES, clipped, GREEN))
    write("ref_in_words.osm", osm(NODES, HOLE.replace('v="1"', 'v="Hole 7"'), GREEN))
    write("web_page.osm", "<html><body><p>Too many requests</p></body></html>\n")
    write("changes.osm", '<osmChange version="0.6"><create></create></osmChange>\n')
    write("folder_without_maps/notes.txt", "No map here.\n")
    write("truncated.osm", whole[: len(whole) * 2 // 3])
    write("truncated.geojson", ADULT[:420])
    write("no_golf.osm", osm(NODES, HOLE.replace("golf", "highway").replace('"hole"', '"track"')))
    write("no_golf.geojson", ADULT.replace('"golf"', '"use"'))
    write("disc_golf.osm", osm(NODES, HOLE.replace("</way>", '<tag k="sport" v="disc_golf"/></way>')))
    write("no_hole.osm", osm(NODES, GREEN))
    write("hole_points.osm", osm('<node id="1" lat="46" lon="-33"><tag k="golf" v="hole"/><tag k="ref" v="1"/></node>\n'))
    write("nan.osm", whole.replace('lat="46.00265" lon="-33.0001"', 'lat="NaN" lon="-33.0001"'))
    write("1e308.osm", whole.replace('lat="46.00265" lon="-33.0001"', 'lat="46.00265" lon="1e308"'))
    write("no_position.osm", whole.replace('id="3" lat="46.00265" lon="-33.0001"', 'id="3"'))
    write("nan.geojson", ADULT.replace("[-32.9999,46.00265]", "[NaN,46.00265]"))
    write("1e308.geojson", ADULT.replace("[-32.9999,46.00265]", "[1e308,46.00265]"))
    write("pin_nan.geojson", ADULT.replace('"Point","coordinates":[-33,46.0027]', '"Point","coordinates":[-33,NaN]'))
    write("text_coordinate.geojson", ADULT.replace("[-32.9999,46.00265]", '["west",46.00265]'))
    write("latitude_95.geojson", ADULT.replace("[-32.9999,46.00265]", "[-32.9999,95.5]"))
    write("metres_as_degrees.geojson", ADULT.replace("-3", "5000").replace("46.0", "50944"))
    write("wrong_crs.geojson", ADULT.replace('"features"', '"crs":{"type":"name","properties":{"name":"EPSG:3857"}},"features"'))
    write("metres_without_crs.csv", 'golf,ref,WKT\nhole,1,"LINESTRING (500000 5094000, 500000 5094300)"\n')
    write("one_point_hole.osm", osm(NODES, HOLE.replace('<nd ref="2"/>', ""), GREEN))
    write("one_point_hole.geojson", ADULT.replace("[[-33,46],[-33,46.0027]]", "[[-33,46]]"))
    write("no_green.osm", osm(NODES, HOLE))
    write("hole_area.osm", osm(NODES, GREEN, '<way id="10"><nd ref="7"/><nd ref="8"/><nd ref="9"/><nd ref="7"/><tag k="golf" v="hole"/><tag k="ref" v="1"/><tag k="area" v="yes"/></way>\n'))
    crossing = '<way id="12"><nd ref="7"/><nd ref="8"/><nd ref="10"/><nd ref="9"/><nd ref="7"/><tag k="golf" v="fairway"/></way>\n'
    write("self_crossing.osm", osm(NODES, HOLE, GREEN, crossing))


def binaries():
    source = DATA / "two_holes.osm"
    pbf = (DATA / "two_holes.osm.pbf").read_bytes()
    write("truncated.osm.pbf", pbf[:1200])
    write("damaged.osm.pbf", pbf[:1500] + bytes(byte ^ 0x55 for byte in pbf[1500:1560]) + pbf[1560:])
    write("truncated.osm.bz2", bz2.compress(source.read_bytes())[:800])
    write("truncated.osm.gz", gzip.compress(source.read_bytes(), mtime=0)[:800])
    write("zero_byte.shp", b"")
    with tempfile.TemporaryDirectory() as folder:

        def converted(name, *arguments):
            target = Path(folder) / name
            subprocess.run(["ogr2ogr", "-q", *arguments, str(target), str(source), "lines"], check=True)
            return target

        whole = converted("lines.gpkg", "-f", "GPKG").read_bytes()
        write("truncated.gpkg", whole[: len(whole) // 4])
        whole = converted("lines.fgb", "-f", "FlatGeobuf").read_bytes()
        write("truncated.fgb", whole[: len(whole) * 2 // 3])
        whole = converted("lines.kml", "-f", "KML").read_bytes()
        write("truncated.kml", whole[:4000])
        shp = converted("lines.shp", "-f", "ESRI Shapefile")
        for part in (".shp", ".shx"):
            write("shapefile_without_table/lines" + part, shp.with_suffix(part).read_bytes())


if __name__ == "__main__":
    texts()
    binaries()
