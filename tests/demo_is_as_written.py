#!/usr/bin/env python3
"""Checks that the demo's map and heights are what their scripts write: demo_is_as_written.py ROOT"""

import pathlib
import shutil
import subprocess
import sys
import tempfile

WRITTEN = {"make_course.py": ["wrackholm.osm"], "make_heights.py": ["wrackholm-heights.asc", "wrackholm-heights.prj"]}


def main():
    demo = pathlib.Path(sys.argv[1]) / "demo"
    different = 0
    with tempfile.TemporaryDirectory() as folder:
        for script in demo.glob("*.py"):
            shutil.copy(script, folder)
        for script, files in WRITTEN.items():
            subprocess.run([sys.executable, script], cwd=folder, check=True)
            for name in files:
                if (pathlib.Path(folder) / name).read_bytes() != (demo / name).read_bytes():
                    different += 1
                    print(f"demo/{name} is not what {script} writes: run it and commit both")
    return 1 if different else 0


if __name__ == "__main__":
    sys.exit(main())
