#!/usr/bin/python3
"""Drawn slips and habits through every form of file: same plan, same findings.

    are_read_alike.py PROGRAM [--everything] [NAME...]

Every case of cases.py is written in every form of forms.py and surveyed; what the survey says must be the same, and the
findings that the case is about among it. Each case is planned as OpenStreetMap data and in one other form by turns, with
--everything in all of them. NAMEs: only cases whose name has one of them.

What may differ: the file's name and, where a form has no ids of elements, these and whom to credit. FlatGeobuf without ids is
not tried: it sorts features by place, so that another of two holes with one number comes first. Needs Debian's gdal-bin, python3-gdal and osmium-tool.
"""

import json
import pathlib
import re
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

from cases import CASES
from forms import FORMS, WITHOUT_IDS, Elements

AT_ONCE = 2
ID = re.compile(r"(?:node|way|relation)/\d+|(?:layer [\w.]+, )?feature \d+")
SEVERITIES = ("errors", "warnings", "notes")
PLACES = ("place", "aim_point")
# A few steps of OpenStreetMap's seven decimals: 3 cm.
SAME_PLACE_DEG = 3e-7
# Three clubs show the ground as well as a full bag does.
CLUBS = (("driver", "driver", 215, 20), ("7-iron", "iron", 145, 10), ("sand wedge", "wedge", 80, 6))
GOLFER = {"format": "landwidth-profile/1", "name": "A. Golfer", "handicap_index": 14.0,
          "clubs": [{"name": name, "kind": kind,
                     "pattern": {"carry_yd": carry, "carry_sd_yd": 12, "side_yd": 0, "side_sd_yd": side}}
                    for name, kind, carry, side in CLUBS]}


def normal(value, file, has_ids):
    """Without what may differ."""
    if isinstance(value, dict):
        return {key: normal(item, file, has_ids) for key, item in value.items()
                if key != "source" and (has_ids or key != "attribution")}
    if isinstance(value, list):
        return [normal(item, file, has_ids) for item in value]
    if isinstance(value, str):
        value = value.replace(str(file), "FILE").replace(file.name, "FILE")
        return value if has_ids else ID.sub("ID", value)
    return value


class Answer:
    """What the program says of a file."""

    def __init__(self, program, file, *command):
        words = [program, *map(str, command), "--format", "json"]
        answer = subprocess.run(words, capture_output=True, text=True, check=False)
        if answer.returncode not in (0, 1, 2):
            raise RuntimeError(f"left with {answer.returncode}: {answer.stderr}")
        self.file = file
        self.content = {"error": answer.stderr} if answer.returncode == 2 else json.loads(answer.stdout)

    def codes(self):
        return {finding["code"] for finding in self.content.get("findings", [])}

    def comparable(self, has_ids, differs):
        content = normal(self.content, self.file, has_ids)
        if differs and "findings" in content:
            content["findings"] = [finding for finding in content["findings"] if finding["code"] not in differs]
            content["summary"] = {key: value for key, value in content["summary"].items() if key not in SEVERITIES}
        return content

    def differences(self, other, has_ids, differs):
        return differing(self.comparable(has_ids, differs), other.comparable(has_ids, differs), "")


def same_place(left, right):
    return left and right and all(abs(a - b) < SAME_PLACE_DEG for a, b in zip(left, right))


def differing(expected, actual, path):
    if isinstance(expected, dict) and isinstance(actual, dict):
        for key in sorted({*expected, *actual}):
            left, right = expected.get(key), actual.get(key)
            if not (key in PLACES and same_place(left, right)):
                yield from differing(left, right, f"{path}/{key}")
    elif isinstance(expected, list) and isinstance(actual, list) and len(expected) == len(actual):
        for i, (left, right) in enumerate(zip(expected, actual)):
            yield from differing(left, right, f"{path}[{i}]")
    elif isinstance(expected, list) and isinstance(actual, list):
        yield from (f"{path}: lacks {item}" for item in expected if item not in actual)
        yield from (f"{path}: has besides {item}" for item in actual if item not in expected)
    elif expected != actual:
        yield f"{path}: {expected!r} but {actual!r}"


def check(case, number, program, everything, folder):
    """What is wrong in one case."""
    elements = Elements(case.features)
    golfer = folder / "golfer.json"
    golfer.write_text(json.dumps(GOLFER), encoding="utf-8")
    files = {form: write(elements, folder) for form, write in FORMS.items() if form not in case.lacks}

    def survey(form):
        return Answer(program, files[form], "survey", files[form])

    def plan(form):
        return Answer(program, files[form], "plan", files[form], golfer, "--field", "published")

    first, *others = files
    surveyed, planned = survey(first), plan(first)
    yield from (f"does not say {code}" for code in [*case.says, *case.differs] if code not in surveyed.codes())
    yield from (f"no such form: {form}" for form in case.lacks if form not in FORMS)
    for i, form in enumerate(others):
        has_ids = form not in WITHOUT_IDS
        yield from (f"{form}: survey{line}" for line in surveyed.differences(survey(form), has_ids, case.differs))
        if everything or i == number % len(others):
            yield from (f"{form}: plan{line}" for line in planned.differences(plan(form), has_ids, case.differs))


def told(case, number, program, everything):
    with tempfile.TemporaryDirectory() as name:
        try:
            return list(check(case, number, program, everything, pathlib.Path(name)))
        except RuntimeError as error:
            return [str(error)]


def main():
    program, *rest = sys.argv[1:]
    names = [name for name in rest if name != "--everything"]
    cases = [case for case in CASES if not names or any(name in case.name for name in names)]
    assert cases, "no such case"
    with ThreadPoolExecutor(AT_ONCE) as pool:
        tasks = [pool.submit(told, case, i, program, "--everything" in rest) for i, case in enumerate(cases)]
    answers = [task.result() for task in tasks]
    for case, wrong in zip(cases, answers):
        for line in wrong:
            print(f"{case.name}: {line}")
    wrong = sum(map(bool, answers))
    print(f"{len(cases)} cases in {len(FORMS)} forms of file; wrong: {wrong}")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
