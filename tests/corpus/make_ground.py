#!/usr/bin/env python3
"""Writes the rasters of ground heights of this corpus, each wrong in the way its name says.

Text grids over hole 3 of the demo course. Standard library only; run it with: python3 make_ground.py
"""

from pathlib import Path

GROUND = Path(__file__).parent / "ground"
CELL_DEG = 0.0005
WEST, SOUTH = -27.0115, 43.9980
COLUMNS, ROWS = 20, 20
TEE_DEG = (-27.00726, 44.00444)  # of the hole
WGS84 = ('GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563]],PRIMEM["Greenwich",0],'
         'UNIT["degree",0.0174532925199433]]\n')


def rolling(lon, lat):
    return round(5 + 40 * (lon - WEST) + 60 * (lat - SOUTH), 2)


def near_tee(lon, lat):
    return abs(lon - TEE_DEG[0]) < 2 * CELL_DEG and abs(lat - TEE_DEG[1]) < 2 * CELL_DEG


def grid(height, west=WEST, rows=ROWS):
    lines = [f"ncols {COLUMNS}", f"nrows {rows}", f"xllcorner {west}", f"yllcorner {SOUTH}", f"cellsize {CELL_DEG}",
             "NODATA_value -9999"]
    for row in range(rows):
        lat = SOUTH + (rows - row - 0.5) * CELL_DEG
        lines.append(" ".join(str(height(west + (column + 0.5) * CELL_DEG, lat)) for column in range(COLUMNS)))
    return "\n".join([*lines, ""])


def write(name, content, system=WGS84):
    GROUND.mkdir(exist_ok=True)
    (GROUND / name).write_text(content, encoding="ascii")
    if system:
        (GROUND / name).with_suffix(".prj").write_text(system, encoding="ascii")


def main():
    write("sound.asc", grid(rolling))
    write("no_reference_system.asc", grid(rolling), system=None)
    write("gap_under_tee.asc", grid(lambda lon, lat: -9999 if near_tee(lon, lat) else rolling(lon, lat)))
    write("elsewhere.asc", grid(rolling, west=-26.9))
    write("half.asc", grid(rolling, rows=8))
    write("gap_undeclared.asc", grid(lambda lon, lat: -32768 if near_tee(lon, lat) else rolling(lon, lat)))
    write("centimetres.asc", grid(lambda lon, lat: 100 * rolling(lon, lat) + 30000 * (lat > TEE_DEG[1])))
    write("sky.asc", grid(lambda lon, lat: 99999))
    write("not_numbers.asc", grid(lambda lon, lat: "nan" if near_tee(lon, lat) else rolling(lon, lat)))
    write("truncated.asc", grid(rolling)[:1500])
    write("empty.asc", "", system=None)
    write("notes.txt", "The ground rises to the north.\n", system=None)
    band = '<SimpleSource><SourceFilename relativeToVRT="1">sound.asc</SourceFilename></SimpleSource>'
    write("degrees.vrt", f'<VRTDataset rasterXSize="{COLUMNS}" rasterYSize="{ROWS}"><SRS>EPSG:4326</SRS>'
          f"<GeoTransform>{WEST}, {CELL_DEG}, 0, {SOUTH + ROWS * CELL_DEG}, 0, -{CELL_DEG}</GeoTransform>"
          f'<VRTRasterBand dataType="Float32" band="1"><UnitType>degree</UnitType>{band}</VRTRasterBand></VRTDataset>\n',
          system=None)


if __name__ == "__main__":
    main()
