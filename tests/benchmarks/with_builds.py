#!/usr/bin/env python3
"""with_builds.py PROFILE.json OUT.json: the profile with two more builds of its driver on trial, for timing a comparison of three."""

import copy
import json
import sys


def main() -> None:
    with open(sys.argv[1], encoding="utf-8") as file:
        profile = json.load(file)
    driver = next(club for club in profile["clubs"] if club["kind"] == "driver")
    for name, longer, wider in (("driver, 43.5 in", -11, 0.9), ("driver, 46 in", 5, 1.06)):
        club = copy.deepcopy(driver)
        club.pop("learnt_from", None)
        club["name"], club["in_bag"] = name, False
        club["pattern"]["carry_yd"] += longer
        club["pattern"]["side_sd_yd"] *= wider
        profile["clubs"].append(club)
    with open(sys.argv[2], "w", encoding="utf-8") as file:
        json.dump(profile, file)


if __name__ == "__main__":
    main()
