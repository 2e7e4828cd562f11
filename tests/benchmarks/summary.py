#!/usr/bin/env python3
"""What tests/benchmarks/run has measured, in short.

    summary.py accuracy PARTS.json GOLFER     how far the plan's expected strokes are off, rms, in strokes
    summary.py table FOLDER GOLFER...         times, memory and ratios beside their targets
"""

import json
import sys
from pathlib import Path

TARGET_S, TARGET_MB, TARGET_RATIO = 0.5, 200, 50


def read(path: Path) -> dict:
    return json.loads(path.read_text(encoding="utf-8"))


def accuracy(parts: Path, golfer: str) -> float:
    for one in read(parts)["benchmarks"]:
        if one["name"].startswith("points_and_steps_of_the_plan") and one.get("label") == golfer:
            return one["rms"] / 1e3
    raise SystemExit(f"{parts}: no accuracy of {golfer}")


def table(folder: Path, golfers: list[str]) -> None:
    print(f"{'18 holes, whole process':16} {'wall s':>17} {'cpu s':>6} {'peak MB':>8}   {'scripted, s: random balls':>25} "
          f"{'ratio':>6} {'even balls':>11} {'ratio':>6}")
    for golfer in golfers:
        ours = read(folder / f"{golfer}.time")
        cells = ""
        for balls, width in (("random", 25), ("even", 11)):
            script = read(folder / f"{golfer}.{balls}.json")
            seconds = script["round_seconds"]
            mark = "" if script["round_holes"] == script["holes"] else "*"
            cells += f" {mark + format(seconds, '.1f'):>{width}} {seconds / ours['wall_s']:5.0f}x"
        spread = f"{ours['wall_s']:.3f} ({ours['wall_least_s']:.3f}-{ours['wall_most_s']:.3f})"
        print(f"{golfer:16} {spread:>24} {ours['cpu_s']:6.3f} {ours['peak_mb']:8.0f}  {cells}")
    print(f"targets: wall at most {TARGET_S} s, peak at most {TARGET_MB} MB, ratio at least {TARGET_RATIO}x. Wall is the "
          "median and range of the repetitions; * extrapolated from some holes. landwidth uses every core, the script one.")


if __name__ == "__main__":
    if sys.argv[1] == "accuracy":
        print(f"{accuracy(Path(sys.argv[2]), sys.argv[3]):.6f}")
    else:
        table(Path(sys.argv[2]), sys.argv[3:])
