"""The corpus: slips of the pen and habits of drawing, each a small map. A new case is a new entry of CASES.

    Case("name", features, lacks={form: why that form of file cannot hold it}, says=[codes of findings it must have])
"""

import dataclasses

from drawing import area, areas, box, disc, hole, line, moved, point


@dataclasses.dataclass
class Case:
    name: str
    features: list
    says: list = dataclasses.field(default_factory=list)
    lacks: dict = dataclasses.field(default_factory=dict)


BUNKER = area(disc(22, 200, 6), "golf=bunker")
POND = area(disc(-45, 180, 15), "natural=water")
ONE = [*hole("1", 0, 300), BUNKER, POND]
COURSE = area(box(-150, -100, 150, 400), "leisure=golf_course|name=Skerrymoor")


def without(golf, features=ONE):
    return [feature for feature in features if feature.tags.get("golf") != golf]


OVERLAPS = [
    Case("a sound hole", [COURSE, *ONE]),
    Case("trees drawn on a fairway", [*ONE, area(disc(3, 190, 5), "natural=wood")]),
    Case("copse half on a fairway", [*ONE, area(disc(16, 190, 9), "landuse=forest")]),
    Case("tree row on a fairway", [*ONE, line([(10, 150), (10, 210)], "natural=tree_row|height=14 m")]),
    Case("tree as a point", [*ONE, point((4, 170), "natural=tree|height=9"), point((60, 150), "natural=tree")]),
    Case("boundary a little inside a fairway", [area(box(-14, -40, 100, 340), "leisure=golf_course|name=Skerrymoor"), *ONE]),
    Case("boundary through a tee and a bunker", [area(box(-40, -2, 21, 340), "leisure=golf_course"), *ONE]),
    Case("rough inside an uncut wood", [*ONE, area(box(30, 50, 130, 300), "natural=wood"),
                                        area(box(30, 120, 60, 260), "golf=rough")]),
    Case("small areas in larger ones", [*ONE, area(disc(0, 150, 4), "golf=bunker"), area(disc(-45, 180, 3), "golf=rough"),
                                        area(disc(22, 200, 2), "golf=rough"), area(disc(2, 302, 2), "golf=bunker")]),
    Case("overlap to be read two ways", [*ONE, area(box(5, 140, 40, 180), "golf=rough"),
                                         area(box(-60, 210, -5, 240), "golf=lateral_water_hazard")]),
    Case("water over half a fairway", [*ONE, area(box(0, 190, 60, 230), "natural=water|water=pond")]),
    Case("scrub", [*ONE, area(box(20, 100, 60, 160), "natural=scrub"), area(box(-60, 100, -20, 130), "natural=heath")]),
]

ENDS = [
    Case("line drawn green to tee", [line([(0, 300), (0, 0)], "golf=hole|ref=1|par=4"), *without("hole")]),
    Case("line short of its green", [line([(0, 0), (0, 262)], "golf=hole|ref=1|par=4"), *without("hole")]),
    Case("line through its green to a practice green",
         [line([(0, 0), (0, 300), (0, 335)], "golf=hole|ref=1|par=4"), *without("hole"),
          area(disc(0, 340, 9), "golf=green|name=Practice green")]),
    Case("tee behind the line's start", [*without("tee"), area(box(-4, -34, 4, -26), "golf=tee|tee=white"),
                                         area(box(-4, -4, 4, 4), "golf=tee|tee=red")]),
    Case("tee of two holes", [*hole("1", 0, 300), *without("tee", hole("10", 60, 340)),
                              area(box(10, -6, 50, 6), "golf=tee|ref=1;10")]),
    Case("no green", without("green")),
    Case("no tee", without("tee")),
    Case("no pin", without("pin")),
    Case("two greens near the end", [*ONE, area(disc(30, 305, 12), "golf=green")]),
    Case("pin off the green", [*without("pin"), point((0, 318), "golf=pin")]),
    Case("green and tee as points", [*[f for f in ONE if f.tags.get("golf") not in ("green", "tee")],
                                     point((0, 0), "golf=tee"), point((0, 300), "golf=green")]),
    Case("bunker as a point", [*ONE, point((10, 230), "golf=bunker")]),
    Case("fairway as a line", [*without("fairway"), line([(0, 90), (0, 280)], "golf=fairway")]),
    Case("hole line in two parts", [line([(0, 0), (0, 150)], "golf=hole|ref=1|par=4"),
                                    line([(0, 150), (0, 300)], "golf=hole|ref=1|par=4"), *without("hole")]),
    Case("hole line drawn round", [line([(0, 0), (0, 150), (0, 300), (0, 0)], "golf=hole|ref=1|par=4"), *without("hole")]),
]

NUMBERS = [
    Case("number in the name", [line([(0, 0), (0, 300)], "golf=hole|name=Hole 3 - The Pond|par=4"), *without("hole")]),
    Case("numbers doubled", [*hole("1", 0, 300), *hole("1", 80, 320)]),
    Case("numbers missing", [*hole("2", 0, 300), line([(80, 0), (80, 150)], "golf=hole"), area(disc(80, 150, 10), "golf=green")]),
    Case("number unreadable", [line([(0, 0), (0, 300)], "golf=hole|ref=seven-ish|par=4"), *without("hole")]),
    Case("par and handicap unreadable", [line([(0, 0), (0, 300)], "golf=hole|ref=1|par=four|handicap=low"), *without("hole")]),
    Case("par of a list", [line([(0, 0), (0, 300)], "golf=hole|ref=1|par=4;5|handicap=7"), *without("hole")]),
    Case("par that cannot be", [line([(0, 0), (0, 300)], "golf=hole|ref=1|par=44|handicap=1 - 18"), *without("hole")]),
    Case("umlauts, quotes, ampersands", [line([(0, 0), (0, 300)], 'golf=hole|ref=1|par=4|name=Löwe "A" & <b>, 1\\2'),
                                         *without("hole")]),
    Case("upper case values", [line([(0, 0), (0, 300)], "golf=Hole|ref=1|par=4"), area(disc(0, 300, 12), "golf=Green"),
                               area(box(-16, 90, 16, 280), "golf=FAIRWAY"), area(disc(22, 200, 6), "golf=Bunker"),
                               area(disc(-45, 180, 15), "natural=Water")]),
    Case("drawn twice", [*ONE, BUNKER, area(disc(0, 300, 12), "golf=green")]),
    Case("hole line drawn twice", [*ONE, line([(0, 0), (0, 300)], "golf=hole|ref=1|par=4")]),
]

LACKS = [
    Case("only hole lines", [line([(0, 0), (0, 300)], "golf=hole|ref=1|par=4"), line([(80, 0), (80, 150)], "golf=hole|ref=2|par=3")]),
    Case("par 4 without a fairway", without("fairway")),
    Case("without bunkers and water", hole("1", 0, 300)),
    Case("neighbour's fairway", [*without("fairway"), *hole("2", 45, 310)]),
    Case("disc golf beside", [*ONE, line([(60, 0), (60, 90)], "disc_golf=hole|sport=disc_golf|golf=hole|ref=1")]),
    Case("hole out of use", [*ONE, line([(60, 0), (60, 290)], "golf=hole|ref=2|par=4|disused=yes")]),
    Case("unknown golf value", [*ONE, area(disc(50, 100, 8), "golf=practice_area"), point((55, 120), "golf=drop_zone")]),
]

FAR_M = 20_000
STRAYS = [
    Case("stray point of a green", [*without("green"), area(moved(disc(0, 300, 12), 3, FAR_M, 0), "golf=green")], ["point-stray"]),
    Case("stray first point of a fairway",
         [*without("fairway"), area(moved(box(-16, 90, 16, 280), 0, 0, -FAR_M), "golf=fairway")], ["point-stray"]),
    Case("stray point of a hole line", [line([(0, 0), (FAR_M, 150), (0, 300)], "golf=hole|ref=1|par=4"), *without("hole")],
         ["point-stray"]),
    Case("stray end of a hole line", [line([(0, 0), (0, 150), (FAR_M, 300)], "golf=hole|ref=1|par=4"), *without("hole")],
         ["hole-length"]),
    Case("stray point of a wood", [*ONE, area(moved(disc(50, 200, 20), 5, 0, FAR_M), "natural=wood")], ["point-stray"]),
    Case("stray point of a boundary", [area(moved(box(-150, -100, 150, 400), 2, FAR_M, 0), "leisure=golf_course"), *ONE],
         ["point-stray"]),
]

BOW_TIE = [(-30, 140), (30, 170), (30, 140), (-30, 170)]
# Formats that do not take such a thing, by whoever writes them.
CROSSED = {"kml": "the writer refuses areas that cross themselves"}
SHAPELESS = {"fgb": "features without a shape are not written", "shp": "belongs to no form's file",
             "gpkg of osm": "the converter leaves out ways without points", "shp of osm": "the same"}
RINGS = [
    Case("green that does not close", [*without("green"), line(disc(0, 300, 12)[:12], "golf=green")], ["area-open"]),
    Case("bunker with a small gap", [*ONE, line([*disc(-25, 220, 6), (-18.9, 219.4)], "golf=bunker")], ["ring-closed"]),
    Case("water that does not close", [*ONE, line([(-60, 60), (-20, 60), (-20, 90)], "natural=water")], ["area-open"]),
    Case("bow-tie of a fairway", [*without("fairway"), area(BOW_TIE, "golf=fairway")], ["ring-repaired"], CROSSED),
    Case("bow-tie of water", [*ONE, area(BOW_TIE, "natural=water")], ["ring-repaired"], CROSSED),
    Case("bow-tie of a bunker", [*ONE, area([(-40, 140), (-20, 150), (-20, 140), (-40, 150)], "golf=bunker")],
         ["ring-repaired"], CROSSED),
    Case("ring of two points", [*ONE, area([(-20, 150), (-20, 170)], "golf=bunker"), area([(-40, 50), (-20, 50)], "natural=wood")],
         ["ring-thin"], CROSSED),
    Case("area of no points", [*ONE, area([], "golf=bunker"), area([], "natural=wood"), area([], "building=yes")],
         ["shape-missing"], SHAPELESS),
    Case("hole line of no points", [*ONE, line([], "golf=hole|ref=2|par=3")], ["hole-line-point"], SHAPELESS),
    Case("line of one point", [*ONE, line([(30, 30), (30, 30)], "waterway=stream")], ["line-point"]),
    Case("fairway in two parts", [*without("fairway"), areas([(box(-16, 90, 16, 150), []), (box(-16, 180, 16, 280), [])],
                                                             "golf=fairway")]),
    Case("island in a pond", [*ONE, areas([(box(-60, 120, -20, 250), [disc(-40, 185, 10)])], "natural=water")]),
    Case("rough with a hole in it", [*ONE, areas([(box(-50, 60, 50, 320), [box(-17, 80, 17, 315)])], "golf=rough")]),
    Case("wood of rings that touch", [*ONE, areas([(box(30, 100, 60, 200), []), (box(60, 200, 90, 250), [])], "natural=wood")]),
]

GROUND = [
    Case("fence, wall and beach in play", [*ONE, line([(-60, 210), (60, 215)], "barrier=fence"),
                                           line([(18, 100), (18, 260)], "barrier=wall|height=1.5 m"),
                                           area(box(-60, 100, -20, 140), "natural=beach")]),
    Case("stream with a width in words", [*ONE, line([(-80, 150), (80, 160)], "waterway=stream|width=6 ft")]),
    Case("stream with an unreadable width", [*ONE, line([(-80, 150), (80, 160)], "waterway=stream|width=a step")]),
    Case("culvert under a fairway", [*ONE, line([(-80, 150), (-20, 152)], "waterway=ditch"),
                                     line([(-20, 152), (20, 154)], "waterway=ditch|tunnel=culvert")]),
    Case("intermittent stream", [*ONE, line([(-80, 150), (80, 160)], "waterway=stream|intermittent=yes|width=3")]),
    Case("colours of penalty areas", [*ONE, area(disc(30, 120, 8), "golf=penalty_area|penalty_area=yellow"),
                                      area(disc(30, 150, 8), "golf=penalty_area|colour=red"),
                                      area(disc(30, 240, 8), "golf=water_hazard|natural=water"),
                                      area(disc(-30, 240, 8), "golf=lateral_water_hazard")]),
    Case("penalty area as a line", [*ONE, line([(-80, 150), (80, 160)], "golf=lateral_water_hazard|waterway=stream")]),
    Case("out of bounds as a line", [*ONE, line([(40, -20), (42, 340)], "golf=out_of_bounds")]),
    Case("out of bounds as an area", [*ONE, area(box(40, -20, 90, 340), "golf=out_of_bounds")]),
    Case("unreadable heights", [*ONE, area(disc(30, 120, 10), "natural=wood|height=tall"),
                                area(disc(-30, 120, 8), "building=yes|height=9'|building:levels=2"),
                                area(disc(-30, 90, 8), "building=yes|building:levels=several")]),
    Case("roads, paths and buildings", [*ONE, line([(-60, 150), (60, 152)], "highway=residential"),
                                        line([(-60, 130), (60, 132)], "golf=cartpath|highway=path"),
                                        area(box(24, 230, 36, 240), "building=house")]),
    Case("sand without golf", [*ONE, area(disc(25, 150, 6), "natural=sand")]),
    Case("driving range beside", [*ONE, area(box(80, 0, 140, 250), "golf=driving_range"),
                                  line([(100, 0), (100, 200)], "golf=hole|ref=2|par=4")]),
    Case("coastline", [*ONE, line([(60, -300), (60, 600)], "natural=coastline")]),
    Case("two courses", [COURSE, *ONE, area(box(200, -100, 400, 400), "leisure=golf_course|name=Skerrymoor Short"),
                         *[f for f in hole("1", 300, 200)]]),
]

CASES = [*OVERLAPS, *ENDS, *NUMBERS, *LACKS, *STRAYS, *RINGS, *GROUND]
