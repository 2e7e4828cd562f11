"""The same map in every form of file: as OpenStreetMap data, and as a browser's or a GIS's export of it.

The export is GeoJSON with the ids of the elements; the others are made of it, or of the OpenStreetMap data, by ogr2ogr with its
own settings, as a user would.
"""

import json
import subprocess
from xml.sax.saxutils import quoteattr

from drawing import lonlat
from osgeo import gdal, ogr

gdal.UseExceptions()
gdal.SetConfigOption("CPL_LOG", "/dev/null")  # what a format shortens is not news
ogr.UseExceptions()


def closed(places):
    return [*places, places[0]] if places else []


def with_numbers(tags):
    return {key: int(value) if value.isdigit() else value for key, value in tags.items()}


class Elements:
    """Features as nodes, ways and relations, and as features of an export with the ids of those."""

    def __init__(self, features):
        self.nodes, self.ways, self.relations = [], [], []
        self.exported = {"node": [], "way": [], "relation": []}
        for feature in features:
            getattr(self, "add_" + feature.kind)(feature)

    def xml(self):
        head = '<?xml version="1.0" encoding="UTF-8"?>\n<osm version="0.6" generator="drawn by hand">\n'
        return head + "\n".join([*self.nodes, *self.ways, *self.relations]) + "\n</osm>\n"

    def geojson(self, as_drawn=False):
        features = []
        for kind in ("node", "way", "relation"):
            for name, geometry, tags in self.exported[kind]:
                properties = with_numbers(tags) if as_drawn else {"@id": name, **tags}
                features.append({"type": "Feature", "properties": properties, "geometry": geometry})
        return json.dumps({"type": "FeatureCollection", "features": features}, ensure_ascii=False, indent=1)

    def add_point(self, feature):
        number = self.node(feature.shape, feature.tags)
        self.export("node", number, "Point", lonlat(feature.shape), feature.tags)

    def add_line(self, feature):
        number = self.way(feature.shape, feature.tags)
        self.export("way", number, "LineString", self.path(feature.shape), feature.tags)

    def add_area(self, feature):
        ring = closed(feature.shape)
        self.export("way", self.way(ring, feature.tags), "Polygon", [self.path(ring)] if ring else [], feature.tags)

    def add_lines(self, feature):
        members = [("", self.way(part, {})) for part in feature.shape]
        number = self.relation("multilinestring", members, feature.tags)
        self.export("relation", number, "MultiLineString", [self.path(part) for part in feature.shape], feature.tags)

    def add_areas(self, feature):
        members = []
        for outline, inners in feature.shape:
            members.append(("outer", self.way(closed(outline), {})))
            members += [("inner", self.way(closed(inner), {})) for inner in inners]
        number = self.relation("multipolygon", members, feature.tags)
        polygons = [[self.path(closed(ring)) for ring in (outline, *inners)] for outline, inners in feature.shape]
        if len(polygons) == 1:
            self.export("relation", number, "Polygon", polygons[0], feature.tags)
        else:
            self.export("relation", number, "MultiPolygon", polygons, feature.tags)

    def node(self, place, tags):
        number = 1 + len(self.nodes)
        lon, lat = lonlat(place)
        self.nodes.append(f'<node id="{number}" version="1" lat="{lat:.7f}" lon="{lon:.7f}">{self.tags(tags)}</node>')
        return number

    def way(self, places, tags):
        number = 1001 + len(self.ways)
        known = {}
        for place in places:
            if place not in known:
                known[place] = self.node(place, {})
        body = "".join(f'<nd ref="{known[place]}"/>' for place in places)
        self.ways.append(f'<way id="{number}" version="1">{body}{self.tags(tags)}</way>')
        return number

    def relation(self, kind, members, tags):
        number = 5001 + len(self.relations)
        body = "".join(f'<member type="way" ref="{way}" role="{role}"/>' for role, way in members)
        words = self.tags({"type": kind, **tags})
        self.relations.append(f'<relation id="{number}" version="1">{body}{words}</relation>')
        return number

    def export(self, kind, number, geometry, coordinates, tags):
        shape = {"type": geometry, "coordinates": coordinates} if coordinates else None
        self.exported[kind].append((f"{kind}/{number}", shape, tags))

    @staticmethod
    def path(places):
        return [lonlat(place) for place in places]

    @staticmethod
    def tags(tags):
        return "".join(f"<tag k={quoteattr(key)} v={quoteattr(value)}/>" for key, value in tags.items())


def run(*command):
    answer = subprocess.run(list(map(str, command)), capture_output=True, text=True, check=False)
    if answer.returncode != 0:
        raise RuntimeError(f"{command}: {answer.stderr}")


def osm(elements, folder):
    path = folder / "map.osm"
    path.write_text(elements.xml(), encoding="utf-8")
    return path


def pbf(_, folder):
    run("osmium", "cat", folder / "map.osm", "-o", folder / "map.osm.pbf")
    return folder / "map.osm.pbf"


def geojson(elements, folder):
    path = folder / "map.geojson"
    path.write_text(elements.geojson(), encoding="utf-8")
    return path


def drawn_geojson(elements, folder):
    """As drawn in a GIS: without ids, numbers in columns of numbers."""
    path = folder / "drawn.geojson"
    path.write_text(elements.geojson(as_drawn=True), encoding="utf-8")
    return path


def converted(name, source="map.geojson", **options):
    """What ogr2ogr does when called with these options."""
    def convert(_, folder):
        gdal.VectorTranslate(str(folder / name), str(folder / source), **options)
        return folder / name
    return convert


def shapefiles(_, folder):
    """One file a kind of geometry, as a GIS offers them."""
    target = folder / "shapefiles"
    target.mkdir()
    for layer, kind in (("points", "POINT"), ("lines", "LINESTRING"), ("areas", "POLYGON")):
        gdal.VectorTranslate(str(target / f"{layer}.shp"), str(folder / "map.geojson"),
                             where=f"OGR_GEOMETRY LIKE '%{kind}'")
    return target


# Name -> what writes it; the first is what the others are compared with.
FORMS = {
    "osm": osm,
    "pbf": pbf,
    "geojson": geojson,
    "drawn geojson": drawn_geojson,
    "gpkg": converted("map.gpkg"),
    "gpkg in metres": converted("metres.gpkg", dstSRS="EPSG:32625"),
    "fgb": converted("map.fgb"),
    "kml": converted("map.kml", format="LIBKML"),
    "kml of the plain writer": converted("plain.kml", format="KML"),
    "shp": shapefiles,
    "gpkg of osm": converted("osm.gpkg", "map.osm"),
    "shp of osm": converted("osm.shapefiles", "map.osm", format="ESRI Shapefile",
                            layers=["points", "lines", "multilinestrings", "multipolygons"]),
}
# Whose features have no ids of OpenStreetMap's elements.
WITHOUT_IDS = {"drawn geojson"}
