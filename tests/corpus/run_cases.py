#!/usr/bin/env python3
"""Runs the program over the bad inputs and checks how it answers.

    run_cases.py PROGRAM FOLDER...

Every FOLDER holds cases.txt with one case a line:

    name | arguments | exit code | text the answer must contain

In the arguments @HERE@ stands for the folder, @COURSE@ and @GOLFER@ for the demo's course and a good profile, and @OUT@ for an
empty folder of the case's own. With exit code 2 the answer is exactly one line on standard error besides warnings, nothing
on standard output (but a file of tags where survey proposes one), and no file appears in @OUT@. With other codes the text may stand on either stream.
"""

import pathlib
import shlex
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[2]
COURSE = ROOT / "demo" / "wrackholm.osm"
GOLFER = ROOT / "demo" / "golfers" / "bogey.json"
# A guard against hanging, with room for sanitizers on a slow machine; no case takes ten seconds of processor time otherwise.
LONGEST_RUN_S = 400
PROPOSAL = "# What the layers and columns of "


def cases_of(folder):
    for line in (folder / "cases.txt").read_text(encoding="utf-8").splitlines():
        if line.strip() and not line.startswith("#"):
            name, arguments, code, text = (part.strip() for part in line.split("|", 3))
            yield name, arguments, int(code), text


def complaints_about(program, folder, arguments, code, text):
    """What is wrong with the program's answer to one case; an empty list when nothing is."""
    with tempfile.TemporaryDirectory() as out:
        places = {"@HERE@": folder, "@COURSE@": COURSE, "@GOLFER@": GOLFER, "@OUT@": out}
        words = shlex.split(arguments)
        for name, place in places.items():
            words = [word.replace(name, str(place)) for word in words]
        answer = subprocess.run([program, *words], capture_output=True, text=True, errors="replace",
                                stdin=subprocess.DEVNULL, timeout=LONGEST_RUN_S)
        left_behind = sorted(path.name for path in pathlib.Path(out).iterdir())
    complaints = []
    if answer.returncode != code:
        complaints.append(f"exit code {answer.returncode} and not {code}")
    lines = [line for line in answer.stderr.splitlines() if not line.startswith("landwidth: warning: ")]
    if code == 2:
        if len(lines) != 1 or not lines[0].startswith("landwidth: "):
            complaints.append(f"not one line of error but {len(lines)}")
        if answer.stdout and not answer.stdout.startswith(PROPOSAL):
            complaints.append("something on standard output")
        if left_behind:
            complaints.append(f"left behind {left_behind}")
        if text not in answer.stderr:
            complaints.append(f"the answer lacks {text!r}")
    elif text not in answer.stdout + answer.stderr:
        complaints.append(f"the answer lacks {text!r}")
    if complaints:
        complaints.append("standard error was: " + answer.stderr.strip()[:600])
    return complaints


def main():
    program, *folders = sys.argv[1:]
    passed = failed = 0
    for folder in map(pathlib.Path, folders):
        for name, arguments, code, text in cases_of(folder):
            complaints = complaints_about(program, folder, arguments, code, text)
            if complaints:
                failed += 1
                print(f"FAILED {folder.name}/{name}: " + "; ".join(complaints))
            else:
                passed += 1
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main())
