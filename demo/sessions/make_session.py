#!/usr/bin/env python3
"""Writes fitting.csv, an invented fitting session of an invented golfer: make_session.py > fitting.csv

Handicap index 11, right-handed, long and wild: whether a second tee club pays is a real question. Every club is a mixture, as the
program's own patterns are: the usual shot a bivariate Student t with the means, standard deviations and correlation below, a mishit a
normal. Ball speed goes with the carry, launch angle and spin scatter about a mean. The same seed gives the same file.
"""

import csv
import math
import random
import sys

SEED = 120  # a session close to its own mixture: nobody is helped by a demo with a freak in it
TAIL_DOF = 6
CORRELATION = -0.25
MISHIT_SHARE = 0.15
MISHIT_CARRY = 0.76  # of the usual carry
MISHIT_SPREAD = 1.5  # of the usual spreads

# club, build, shots; yards: carry, its sd, side (right positive), its sd, run; ball speed mph, launch deg, spin rpm
CLUBS = [
    ("driver", "", 12, 254, 13, 9, 30, 21, 163, 12.6, 2850),
    ("driver", "44 in", 8, 249, 11, 6, 24, 21, 161, 12.4, 2900),
    ("3-wood", "", 9, 234, 11, 4, 20, 17, 154, 11.8, 3500),
    ("driving iron", "", 9, 217, 9, 1, 14, 18, 145, 11.2, 3900),
]


def t_pair(rng):
    """Two numbers of mean 0 and standard deviation 1 from the bivariate t, correlated."""
    first = rng.gauss(0, 1)
    second = CORRELATION * first + math.sqrt(1 - CORRELATION**2) * rng.gauss(0, 1)
    chi_squared = 2 * rng.gammavariate(TAIL_DOF / 2, 1)
    stretch = math.sqrt((TAIL_DOF - 2) / chi_squared)
    return first * stretch, second * stretch


def landing(rng, carry, carry_sd, side, side_sd):
    if rng.random() < MISHIT_SHARE:
        return rng.gauss(carry * MISHIT_CARRY, carry_sd * MISHIT_SPREAD), rng.gauss(side, side_sd * MISHIT_SPREAD)
    along, across = t_pair(rng)
    return carry + along * carry_sd, side + across * side_sd


def side_text(side):
    return f"{abs(side):.0f}{'R' if side > 0 else 'L'}" if round(side) else "0"


def main():
    rng = random.Random(SEED)
    out = csv.writer(sys.stdout, lineterminator="\n")
    out.writerow(["club", "build", "carry_yd", "total_yd", "side_yd", "ball_speed_mph", "launch_deg", "spin_rpm"])
    for club, build, shots, carry, carry_sd, side, side_sd, run, speed, launch, spin in CLUBS:
        for _ in range(shots):
            along, across = landing(rng, carry, carry_sd, side, side_sd)
            total = along + rng.gauss(run, 3)
            ball_speed = speed * (along / carry) ** 0.6 + rng.gauss(0, 0.8)
            out.writerow([club, build, f"{along:.0f}", f"{total:.0f}", side_text(across), f"{ball_speed:.1f}",
                          f"{rng.gauss(launch, 1.3):.1f}", f"{rng.gauss(spin, 250):.0f}"])


if __name__ == "__main__":
    main()
