#!/usr/bin/env python3
"""Runs the README's commands and checks that they print what it shows: readme_is_true.py ROOT PROGRAM

A block of commands (lines that start with the program's place in the build folder) may be followed by a block of output; every line of
that, blank lines and "..." aside, must be among what the commands printed. Files they write land in a folder of its own.
"""

import pathlib
import re
import shlex
import subprocess
import sys
import tempfile

PLACE = "build/planner/landwidth"


def run(command, root, program, folder):
    """What a command prints; None when it fails."""
    words = [str(root / word) if word.startswith("demo/") else word for word in shlex.split(command)]
    done = subprocess.run([program, *words[1:]], capture_output=True, text=True, cwd=folder, stdin=subprocess.DEVNULL)
    if done.returncode != 0:
        print(f"{command}: exit code {done.returncode}: {done.stderr.strip()}")
        return None
    return done.stdout


def main():
    root, program = pathlib.Path(sys.argv[1]).resolve(), str(pathlib.Path(sys.argv[2]).resolve())
    blocks = re.findall(r"^```\n(.*?)^```", (root / "README.md").read_text(encoding="utf-8"), re.S | re.M)
    commands = compared = wrong = 0
    printed = None
    with tempfile.TemporaryDirectory() as folder:
        for block in blocks:
            lines = block.splitlines()
            if lines[0].startswith(PLACE):
                outputs = [run(line, root, program, folder) for line in lines]
                commands += len(outputs)
                wrong += outputs.count(None)
                printed = "".join(output or "" for output in outputs).splitlines()
            elif printed is not None:
                for line in lines:
                    if line.strip() and line != "...":
                        compared += 1
                        if line.rstrip() not in printed:
                            wrong += 1
                            print(f"README shows a line that is not printed: {line}")
                printed = None
    print(f"{commands} commands run, {compared} lines compared, {wrong} wrong")
    return 1 if wrong or not commands or not compared else 0


if __name__ == "__main__":
    sys.exit(main())
