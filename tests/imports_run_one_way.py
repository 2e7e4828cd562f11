#!/usr/bin/env python3
"""Checks that includes between the rooms run one way: imports_run_one_way.py ROOT

A folder inside a room belongs to the room.
"""

import pathlib
import re
import sys

MAY_USE = {
    "geometry": {"geometry"},
    "courses": {"geometry", "courses"},
    "golfer-profiles": {"geometry", "golfer-profiles"},
    "planner/engine": {"geometry", "courses", "golfer-profiles", "planner/engine"},
    "planner/reports": {"geometry", "courses", "golfer-profiles", "planner/engine", "planner/reports"},
    "planner/commands": {"geometry", "courses", "golfer-profiles", "planner/engine", "planner/reports", "planner/commands"},
}
INCLUDE = re.compile(r'#include "([^"]+)/[^/"]+"')


def main():
    root = pathlib.Path(sys.argv[1])
    read = 0
    wrong = []
    for room, allowed in MAY_USE.items():
        for file in sorted([*(root / room).rglob("*.cpp"), *(root / room).rglob("*.hpp")]):
            read += 1
            for used in INCLUDE.findall(file.read_text(encoding="utf-8")):
                if not any(used == other or used.startswith(other + "/") for other in allowed):
                    wrong.append(f"{file.relative_to(root)} includes from {used}")
    print("\n".join(wrong))
    print(f"{read} files read, {len(wrong)} wrong includes")
    return 1 if wrong or not read else 0


if __name__ == "__main__":
    sys.exit(main())
