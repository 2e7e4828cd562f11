#!/usr/bin/env python3
"""time_process.py OUT.json REPETITIONS COMMAND...: wall time, processor time and peak memory of a command.

What it prints on stdout is shown when it runs once and dropped otherwise.
"""

import json
import os
import statistics
import subprocess
import sys
import time


def run_once(command: list[str], show: bool) -> tuple[float, float, float]:
    began = time.perf_counter()
    process = subprocess.Popen(command, stdout=None if show else subprocess.DEVNULL,
                               stderr=None if show else subprocess.DEVNULL)
    _, status, usage = os.wait4(process.pid, 0)
    wall = time.perf_counter() - began
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode != 0:
        raise SystemExit(f"{' '.join(command)}: exit code {process.returncode}")
    # ru_maxrss counts kibibytes on Linux.
    return wall, usage.ru_utime + usage.ru_stime, usage.ru_maxrss * 1024 / 1e6


def main() -> None:
    out, repetitions, command = sys.argv[1], int(sys.argv[2]), sys.argv[3:]
    walls, cpus, peaks = zip(*(run_once(command, repetitions == 1) for _ in range(repetitions)))
    with open(out, "w", encoding="utf-8") as file:
        json.dump({"repetitions": repetitions, "wall_s": statistics.median(walls), "wall_least_s": min(walls),
                   "wall_most_s": max(walls), "cpu_s": statistics.median(cpus), "peak_mb": max(peaks)}, file)


if __name__ == "__main__":
    main()
