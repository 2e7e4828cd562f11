"""The corpus: slips of the pen and habits of drawing, each a small map. A new case is a new entry of CASES.

    Case("name", features, says, lacks, differs)

says: codes of findings that it must have; lacks: {form: why that form of file cannot hold it}; differs: {code: why such findings
are not the same in all forms}.
"""

import dataclasses

from drawing import area, areas, box, disc, hole, line, lines, moved, point


@dataclasses.dataclass
class Case:
    name: str
    features: list
    says: list = dataclasses.field(default_factory=list)
    lacks: dict = dataclasses.field(default_factory=dict)
    differs: dict = dataclasses.field(default_factory=dict)


# Formats that do not take such a thing, by whoever writes them.
CROSSED = {"kml": "the writer refuses areas that cross themselves"}
SHAPELESS = {"fgb": "features without a shape are not written", "shp": "belongs to no form's file",
             "gpkg of osm": "the converter leaves out ways without points", "shp of osm": "the same"}
OVERLAPPING = dict.fromkeys(("shp", "shp of osm"), "rings that cross are no parts of an area there: it is repaired and told")
OUTSIDE = dict.fromkeys(("gpkg of osm", "shp of osm"), "the converter makes a part of an island that reaches out")
MEMBERS = {"relation-crossing": "names the members of a relation, which an export has made into one shape; that the shape is "
                                "repaired is told in every form"}
BUNKER = area(disc(22, 200, 6), "golf=bunker")
POND = area(disc(-45, 180, 15), "natural=water")
ONE = [*hole("1", 0, 300), BUNKER, POND]
COURSE = area(box(-150, -100, 150, 400), "leisure=golf_course|name=Skerrymoor")


def without(golf, features=ONE):
    return [feature for feature in features if feature.tags.get("golf") != golf]


def played(tags, *places):
    """The sound hole with another line of play."""
    return [line(places or [(0, 0), (0, 300)], "golf=hole|" + tags), *without("hole")]


OVERLAPS = [
    Case("a sound hole", [COURSE, *ONE]),
    Case("trees drawn on a fairway", [*ONE, area(disc(3, 190, 5), "natural=wood")]),
    Case("copse half on a fairway", [*ONE, area(disc(16, 190, 9), "landuse=forest")], ["overlap-unclear"]),
    Case("tree row on a fairway", [*ONE, line([(10, 150), (10, 210)], "natural=tree_row|height=14 m")]),
    Case("tree as a point", [*ONE, point((4, 170), "natural=tree|height=9"), point((60, 150), "natural=tree")]),
    Case("boundary a little inside a fairway", [area(box(-14, -40, 100, 340), "leisure=golf_course|name=Skerrymoor"), *ONE],
         ["boundary-inside"]),
    Case("boundary through a tee and a bunker", [area(box(-40, -2, 21, 340), "leisure=golf_course"), *ONE],
         ["boundary-inside"]),
    Case("rough inside an uncut wood", [*ONE, area(box(30, 50, 130, 300), "natural=wood"),
                                        area(box(30, 120, 60, 260), "golf=rough")]),
    Case("small areas in larger ones", [*ONE, area(disc(0, 150, 4), "golf=bunker"), area(disc(-45, 180, 3), "golf=rough"),
                                        area(disc(22, 200, 2), "golf=rough"), area(disc(2, 302, 2), "golf=bunker")]),
    Case("overlap to be read two ways", [*ONE, area(box(5, 140, 40, 180), "golf=rough"),
                                         area(box(-60, 210, -5, 240), "golf=lateral_water_hazard")], ["overlap-unclear"]),
    Case("water over half a fairway", [*ONE, area(box(0, 190, 60, 230), "natural=water|water=pond")], ["overlap-unclear"]),
    Case("scrub", [*ONE, area(box(20, 100, 60, 160), "natural=scrub"), area(box(-60, 100, -20, 130), "natural=heath")],
         ["heath-as-rough"]),
]

ENDS = [
    Case("line drawn green to tee", played("ref=1|par=4", (0, 300), (0, 0)),
         ["line-turned-round"]),
    Case("line short of its green", played("ref=1|par=4", (0, 0), (0, 262)),
         ["green-snapped"]),
    Case("line through its green to a practice green",
         [line([(0, 0), (0, 300), (0, 335)], "golf=hole|ref=1|par=4"), *without("hole"),
          area(disc(0, 340, 9), "golf=green|name=Practice green")], ["line-past-green"]),
    Case("tee behind the line's start", [*without("tee"), area(box(-4, -34, 4, -26), "golf=tee|tee=white"),
                                         area(box(-4, -4, 4, 4), "golf=tee|tee=red")]),
    Case("tee of two holes", [*hole("1", 0, 300), *without("tee", hole("10", 60, 340)),
                              area(box(10, -6, 50, 6), "golf=tee|ref=1;10")], ["tee-snapped"]),
    Case("no green", without("green"), ["green-missing"]),
    Case("no tee", without("tee"), ["tee-unmapped"]),
    Case("no pin", without("pin"), ["pin-inferred"]),
    Case("two greens near the end", [*ONE, area(disc(30, 305, 12), "golf=green")]),
    Case("pin off the green", [*without("pin"), point((0, 318), "golf=pin")], ["pin-inferred"]),
    Case("green and tee as points", [*[f for f in ONE if f.tags.get("golf") not in ("green", "tee")],
                                     point((0, 0), "golf=tee"), point((0, 300), "golf=green")],
         ["green-missing", "area-missing"]),
    Case("bunker as a point", [*ONE, point((10, 230), "golf=bunker")], ["area-missing"]),
    Case("fairway as a line", [*without("fairway"), line([(0, 90), (0, 280)], "golf=fairway")],
         ["area-open", "fairway-missing"]),
    Case("hole line in two parts", [line([(0, 0), (0, 150)], "golf=hole|ref=1|par=4"),
                                    line([(0, 150), (0, 300)], "golf=hole|ref=1|par=4"), *without("hole")],
         ["line-in-parts"]),
    Case("hole line of a relation",
         [lines([[(0, 0), (0, 150)], [(0, 150), (0, 300)]], "golf=hole|ref=1|par=4"), *without("hole")]),
    Case("hole line of a relation with a gap",
         [lines([[(0, 0), (0, 140)], [(0, 160), (0, 300)]], "golf=hole|ref=1|par=4"), *without("hole")], ["line-in-parts"]),
    Case("hole as an area", [area([(0, 0), (0, 300), (3, 150)], "golf=hole|ref=1|par=4"), *without("hole")],
         ["hole-not-a-line"]),
    Case("hole as a point", [point((0, 0), "golf=hole|ref=1|par=4"), *without("hole")]),
    Case("green in two parts", [*without("green"), areas([(disc(0, 300, 9), []), (disc(25, 300, 9), [])], "golf=green")]),
    Case("tee in two parts",
         [*without("tee"), areas([(box(-4, -4, 4, 4), []), (box(-4, -24, 4, -16), [])], "golf=tee|tee=white")]),
    Case("hole line drawn round", played("ref=1|par=4", (0, 0), (0, 150), (0, 300), (0, 0)),
         ["hole-not-a-line"]),
]

NUMBERS = [
    Case("number in the name", played("name=Hole 3 - The Pond|par=4"),
         ["ref-inferred"]),
    Case("numbers doubled", [*hole("1", 0, 300), *hole("1", 80, 320)], ["ref-doubled"]),
    Case("numbers missing", [*hole("2", 0, 300), line([(80, 0), (80, 150)], "golf=hole"), area(disc(80, 150, 10), "golf=green")],
         ["ref-missing", "par-inferred"]),
    Case("number unreadable", played("ref=seven-ish|par=4"),
         ["ref-unreadable"]),
    Case("par and handicap unreadable", played("ref=1|par=four|handicap=low"),
         ["par-unreadable", "handicap-unreadable"]),
    Case("par of a list", played("ref=1|par=4;5|handicap=7"),
         ["par-listed"]),
    Case("par that cannot be", played("ref=1|par=44|handicap=1 - 18"),
         ["par-unreadable", "handicap-unreadable"]),
    Case("courses told by the holes", [line([(0, 0), (0, 300)], "golf=hole|ref=1|par=4|golf:course:name=North"), *without("hole"),
                                       line([(80, 0), (80, 300)], "golf=hole|ref=1|par=4|golf:course:name=South"),
                                       area(disc(80, 300, 12), "golf=green")]),
    Case("lists and blanks in values", [*without("tee"), area(box(-5, -5, 5, 5), "golf=tee|tee=white;yellow|name= Back "),
                                        area(disc(25, 150, 6), "golf=bunker;rough"), area(disc(-25, 150, 6), "golf= bunker ")]),
    Case("long remarks", [line([(0, 0), (0, 300)], "golf=hole|ref=1|par=4|description=<p>Mind the <b>pond</b> & the wall</p>"),
                          *without("hole"), area(disc(30, 150, 9), "natural=wood|note=" + 40 * "never cut; ")]),
    Case("umlauts, quotes, ampersands", [line([(0, 0), (0, 300)], 'golf=hole|ref=1|par=4|name=Löwe "A" & <b>, 1\\2'),
                                         *without("hole")]),
    Case("upper case values", [line([(0, 0), (0, 300)], "golf=Hole|ref=1|par=4"), area(disc(0, 300, 12), "golf=Green"),
                               area(box(-16, 90, 16, 280), "golf=FAIRWAY"), area(disc(22, 200, 6), "golf=Bunker"),
                               area(disc(-45, 180, 15), "natural=Water")]),
    Case("drawn twice", [*ONE, BUNKER, area(disc(0, 300, 12), "golf=green")], ["drawn-twice"]),
    Case("hole line drawn twice", [*ONE, line([(0, 0), (0, 300)], "golf=hole|ref=1|par=4")], ["drawn-twice"]),
    Case("stream and tree drawn twice", [*ONE, *2 * [line([(-80, 150), (80, 160)], "waterway=stream|width=3"),
                                                     point((4, 170), "natural=tree")]], ["drawn-twice"]),
    Case("one line of two holes", [*ONE, line([(0, 0), (0, 300)], "golf=hole|ref=10|par=4")]),
]

LACKS = [
    Case("only hole lines",
         [line([(0, 0), (0, 300)], "golf=hole|ref=1|par=4"), line([(80, 0), (80, 150)], "golf=hole|ref=2|par=3")],
         ["green-missing", "ground-missing"]),
    Case("par 4 without a fairway", without("fairway"), ["fairway-missing"]),
    Case("without bunkers and water", hole("1", 0, 300), ["bunkers-missing", "water-missing"]),
    Case("neighbour's fairway", [*without("fairway"), *hole("2", 45, 310)], ["fairway-missing"]),
    Case("disc golf beside", [*ONE, line([(60, 0), (60, 90)], "disc_golf=hole|sport=disc_golf|golf=hole|ref=1")]),
    Case("disc golf by another key", [*ONE, line([(60, 0), (60, 90)], "golf=hole|ref=4|disc_golf:hole=4")]),
    Case("hole out of use", [*ONE, line([(60, 0), (60, 290)], "golf=hole|ref=2|par=4|disused=yes")]),
    Case("unknown golf value", [*ONE, area(disc(50, 100, 8), "golf=practice_area"), point((55, 120), "golf=drop_zone")],
         ["golf-unknown"]),
]

FAR_M = 20_000
STRAYS = [
    Case("stray point of a green", [*without("green"), area(moved(disc(0, 300, 12), 3, FAR_M, 0), "golf=green")],
         ["point-stray"]),
    Case("stray first point of a fairway",
         [*without("fairway"), area(moved(box(-16, 90, 16, 280), 0, 0, -FAR_M), "golf=fairway")], ["point-stray"]),
    Case("stray point of a hole line", played("ref=1|par=4", (0, 0), (FAR_M, 150), (0, 300)),
         ["point-stray"]),
    Case("stray end of a hole line", played("ref=1|par=4", (0, 0), (0, 150), (FAR_M, 300)),
         ["hole-length"]),
    Case("stray point of an island", [*ONE, areas([(box(-90, 60, -20, 300), [moved(disc(-50, 200, 12), 4, -FAR_M, 0)])],
                                                  "natural=water")],
         ["relation-crossing", "point-stray"], CROSSED, MEMBERS),
    Case("stray point of an out-of-bounds line", [*ONE, line([(40, -20), (41, FAR_M), (42, 340)], "golf=out_of_bounds")],
         ["point-stray"]),
    Case("green stretched by 600 m", [*without("green"), area(moved(disc(0, 300, 12), 9, -600, 40), "golf=green")],
         ["point-stray"]),
    Case("two stray points of a green",
         [*without("green"), area(moved(moved(disc(0, 300, 12), 3, FAR_M, 0), 9, 0, FAR_M), "golf=green")],
         ["ring-repaired"], CROSSED),
    Case("stray point of a wood", [*ONE, area(moved(disc(50, 200, 20), 5, 0, FAR_M), "natural=wood")], ["point-stray"]),
    Case("stray point of a building", [*ONE, area(moved(box(40, 200, 60, 220), 2, 0, FAR_M), "building=yes")], ["point-stray"]),
    Case("stray point of a large wood", [*ONE, area(moved(disc(-900, 200, 800, 64), 24, -9_500, 0), "natural=wood")],
         ["point-stray"]),
    Case("stray point of a boundary", [area(moved(box(-150, -100, 150, 400), 2, FAR_M, 0), "leisure=golf_course"), *ONE],
         ["point-stray", "boundary-inside", "boundary-unused"]),
]

BOW_TIE = [(-30, 140), (30, 170), (30, 140), (-30, 170)]
RINGS = [
    Case("green that does not close", [*without("green"), line(disc(0, 300, 12)[:12], "golf=green")],
         ["green-missing", "area-open"]),
    Case("bunker with a small gap", [*ONE, line([*disc(-25, 220, 6), (-18.9, 219.4)], "golf=bunker")], ["ring-closed"]),
    Case("water that does not close", [*ONE, line([(-60, 60), (-20, 60), (-20, 90)], "natural=water")], ["area-open"]),
    Case("bow-tie of a fairway", [*without("fairway"), area(BOW_TIE, "golf=fairway")], ["ring-repaired"], CROSSED),
    Case("bow-tie of water", [*ONE, area(BOW_TIE, "natural=water")], ["overlap-unclear", "ring-repaired"], CROSSED),
    Case("bow-tie of a bunker", [*ONE, area([(-40, 140), (-20, 150), (-20, 140), (-40, 150)], "golf=bunker")],
         ["ring-repaired"], CROSSED),
    Case("drawn the other way round", [*without("fairway"), area(box(-16, 90, 16, 280)[::-1], "golf=fairway"),
                                       areas([(box(30, 60, 90, 300)[::-1], [disc(60, 200, 12)[::-1]])], "natural=wood")]),
    Case("points drawn twice, a spike",
         [*without("fairway"), area([(-16, 90), (16, 90), (16, 90), (16, 200), (60, 200), (16, 200.0001), (16, 280), (-16, 280)],
                                    "golf=fairway")],
         ["ring-repaired"], CROSSED),
    Case("bow-tie of a relation", [*ONE, areas([(BOW_TIE, [])], "natural=water")],
         ["relation-crossing", "overlap-unclear", "ring-repaired"], CROSSED, MEMBERS),
    Case("relation whose rings cross",
         [*ONE, areas([(box(-60, 100, -20, 180), []), (box(-40, 150, -19, 260), [])], "natural=water")],
         ["relation-crossing"], CROSSED | OVERLAPPING, MEMBERS),
    Case("island that reaches out of its pond", [*ONE, areas([(box(-60, 100, -20, 180), [box(-50, 120, -10, 150)])],
                                                             "natural=water")],
         ["relation-crossing", "overlap-unclear", "ring-repaired"], CROSSED | OUTSIDE, MEMBERS),
    Case("ring of two points",
         [*ONE, area([(-20, 150), (-20, 170)], "golf=bunker"), area([(-40, 50), (-20, 50)], "natural=wood")],
         ["ring-thin"], CROSSED),
    Case("area of no points", [*ONE, area([], "golf=bunker"), area([], "natural=wood"), area([], "building=yes")],
         ["shape-missing"], SHAPELESS),
    Case("hole lines of no points", [*ONE, *2 * [line([], "golf=hole|ref=2|par=3")]], ["hole-line-point"], SHAPELESS),
    Case("line of one point", [*ONE, line([(30, 30), (30, 30)], "waterway=stream")], ["line-point"]),
    Case("fairway in two parts", [*without("fairway"), areas([(box(-16, 90, 16, 150), []), (box(-16, 180, 16, 280), [])],
                                                             "golf=fairway")]),
    Case("island in a pond", [*ONE, areas([(box(-60, 120, -20, 250), [disc(-40, 185, 10)])], "natural=water")]),
    Case("rough with a hole in it", [*ONE, areas([(box(-50, 60, 50, 320), [box(-17, 80, 17, 315)])], "golf=rough")],
         ["overlap-unclear"]),
    Case("wood of rings that touch", [*ONE, areas([(box(30, 100, 60, 200), []), (box(60, 200, 90, 250), [])], "natural=wood")]),
]

GROUND = [
    Case("fence, wall and beach in play", [*ONE, line([(-60, 210), (60, 215)], "barrier=fence"),
                                           line([(18, 100), (18, 260)], "barrier=wall|height=1.5 m"),
                                           area(box(-60, 100, -20, 140), "natural=beach")], ["in-play"]),
    Case("stream with a width in words", [*ONE, line([(-80, 150), (80, 160)], "waterway=stream|width=6 ft")]),
    Case("stream with an average width", [*ONE, line([(-80, 150), (80, 160)], "waterway=stream|width:average=4")]),
    Case("tree with a crown", [*ONE, point((4, 170), "natural=tree|diameter_crown=14 m|height=40 ft")]),
    Case("stream with an unreadable width", [*ONE, line([(-80, 150), (80, 160)], "waterway=stream|width=a step")],
         ["width-assumed"]),
    Case("culvert under a fairway", [*ONE, line([(-80, 150), (-20, 152)], "waterway=ditch"),
                                     line([(-20, 152), (20, 154)], "waterway=ditch|tunnel=culvert")],
         ["width-assumed", "water-under-ground"]),
    Case("intermittent stream", [*ONE, line([(-80, 150), (80, 160)], "waterway=stream|intermittent=yes|width=3")],
         ["water-intermittent"]),
    Case("colours of penalty areas", [*ONE, area(disc(30, 120, 8), "golf=penalty_area|penalty_area=yellow"),
                                      area(disc(30, 150, 8), "golf=penalty_area|colour=red"),
                                      area(disc(30, 240, 8), "golf=water_hazard|natural=water"),
                                      area(disc(-30, 240, 8), "golf=lateral_water_hazard")]),
    Case("penalty area as a line", [*ONE, line([(-80, 150), (80, 160)], "golf=lateral_water_hazard|waterway=stream")],
         ["width-assumed"]),
    Case("out of bounds as a line", [*ONE, line([(40, -20), (42, 340)], "golf=out_of_bounds")]),
    Case("out of bounds as an area", [*ONE, area(box(40, -20, 90, 340), "golf=out_of_bounds")]),
    Case("unreadable heights", [*ONE, area(disc(30, 120, 10), "natural=wood|height=tall"),
                                area(disc(-30, 120, 8), "building=yes|height=9'|building:levels=2"),
                                area(disc(-30, 90, 8), "building=yes|building:levels=several")], ["height-assumed"]),
    Case("roads, paths and buildings", [*ONE, line([(-60, 150), (60, 152)], "highway=residential"),
                                        line([(-60, 130), (60, 132)], "golf=cartpath|highway=path"),
                                        area(box(24, 230, 36, 240), "building=house")]),
    Case("sand without golf", [*ONE, area(disc(25, 150, 6), "natural=sand")], ["sand-as-bunker"]),
    Case("driving range beside", [*ONE, area(box(80, 0, 140, 250), "golf=driving_range"),
                                  line([(100, 0), (100, 200)], "golf=hole|ref=2|par=4")], ["green-missing"]),
    Case("coastline", [*ONE, line([(60, -300), (60, 600)], "natural=coastline")], ["sea-as-red"]),
    Case("two courses", [COURSE, *ONE, area(box(200, -100, 400, 400), "leisure=golf_course|name=Skerrymoor Short"),
                         *[f for f in hole("1", 300, 200)]]),
]

CASES = [*OVERLAPS, *ENDS, *NUMBERS, *LACKS, *STRAYS, *RINGS, *GROUND]
