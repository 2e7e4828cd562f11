#!/usr/bin/env python3
"""Checks that includes between the rooms run one way: imports_run_one_way.py ROOT

A folder inside a room belongs to the room, unless it is listed as a room of its own.
"""

import pathlib
import re
import sys

COURSES = {"geometry", "courses", "courses/tags", "courses/reading", "courses/assembly", "courses/ground", "courses/survey"}
MAY_USE = {
    "geometry": {"geometry"},
    "courses": {"geometry", "courses"},
    "courses/tags": {"geometry", "courses", "courses/tags"},
    "courses/reading": {"geometry", "courses", "courses/tags", "courses/reading"},
    "courses/assembly": {"geometry", "courses", "courses/tags", "courses/reading", "courses/assembly"},
    "courses/ground": {"geometry", "courses", "courses/ground"},
    "courses/survey": {"geometry", "courses", "courses/survey"},
    "golfer-profiles": {"geometry", "golfer-profiles"},
    "planner/engine": COURSES | {"golfer-profiles", "planner/engine"},
    "planner/reports": COURSES | {"golfer-profiles", "planner/engine", "planner/reports"},
    "planner/commands": COURSES | {"golfer-profiles", "planner/engine", "planner/reports", "planner/commands"},
}
INCLUDE = re.compile(r'#include "([^"]+)/[^/"]+"')


def room_of(folder):
    """The innermost room a folder belongs to; the folder itself when it belongs to none."""
    around = [room for room in MAY_USE if folder == room or folder.startswith(room + "/")]
    return max(around, key=len, default=folder)


def main():
    root = pathlib.Path(sys.argv[1])
    read = 0
    wrong = []
    for top in sorted({room.split("/")[0] for room in MAY_USE}):
        for file in sorted([*(root / top).rglob("*.cpp"), *(root / top).rglob("*.hpp")]):
            room = room_of(file.parent.relative_to(root).as_posix())
            if room not in MAY_USE:
                continue
            read += 1
            for used in INCLUDE.findall(file.read_text(encoding="utf-8")):
                if room_of(used) not in MAY_USE[room]:
                    wrong.append(f"{file.relative_to(root)} includes from {used}")
    print("\n".join(wrong))
    print(f"{read} files read, {len(wrong)} wrong includes")
    return 1 if wrong or not read else 0


if __name__ == "__main__":
    sys.exit(main())
