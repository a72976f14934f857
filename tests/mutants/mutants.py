#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0
"""Breaks the rules of core one small change at a time and counts the changes that no test notices.

    tests/mutants/mutants.py FOLDER [--sample N] [--seed S] [--minutes M] [FILE ...]

FOLDER is made once: a clone of the last commit, and a build of it with core as a shared library, so that a change costs one compilation and
one link. FILE names sources under core/; without any, those of the rules, the job, the acts, the hold points and the requirements. Each
survivor is printed with its place. Those that are known and change nothing that anybody could see stand in survivors.md beside this file, with
the reason. Not a part of the tests that run every time: some thousand changes at some seconds each take hours, so a sample is drawn.
"""
import argparse
import os
import pathlib
import random
import re
import subprocess
import sys
import time

SOURCE = pathlib.Path(__file__).resolve().parents[2]
RULES = ["core/rules", "core/job", "core/acts", "core/holds", "core/requirements"]
TESTS = r"^core\.(rules|job|acts|holds|requirements|register|list|reports)"

# What a tired programmer might write instead.
CHANGES = [
    (r" == ", " != "), (r" != ", " == "),
    (r" < ", " <= "), (r" > ", " >= "), (r" <= ", " < "), (r" >= ", " > "),
    (r" && ", " || "), (r" \|\| ", " && "),
    (r"(?<=[ (])!(?=[a-zA-Z])", ""),
    (r" \+ 1\b", ""), (r" - (?=\w)", " + "),
    (r"\breturn true;", "return false;"), (r"\breturn false;", "return true;"),
    (r"(?<=\n) +[\w>.-]+\.(?:reset|clear)\(\);\n", "\n"),
]


def run(command, **more):
    return subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, check=False, **more)


def prepare(folder):
    source, build = folder / "source", folder / "build"
    if not source.exists():
        subprocess.run(["git", "clone", "-q", str(SOURCE), str(source)], check=True)
    if not (build / "build.ninja").exists():
        subprocess.run(["cmake", "-S", str(source), "-B", str(build), "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Debug", "-DCMAKE_CXX_FLAGS_DEBUG=-O0", "-DREMATE_CORE_LIBRARY=SHARED",
                        "-DREMATE_PRECOMPILE=ON"], check=True, stdout=subprocess.DEVNULL)
    targets = [t for t in run(["ninja", "-C", str(build), "-t", "targets", "all"]).stdout.split() if re.match(r"tests/bin/tst_core_(rules|job|acts|holds|requirements|register|list|reports)\w*:$", t)]
    subprocess.run(["ninja", "-C", str(build)] + [t.rstrip(":") for t in targets], check=True, stdout=subprocess.DEVNULL)
    return source, build


def is_code(line, at):
    """Neither a comment, an include, a text nor a type."""
    before = line[:at]
    return not (line.lstrip().startswith(("//", "#", "template")) or before.count('"') % 2 or "//" in before)


def mutants_of(path):
    text = path.read_text()
    for pattern, instead in CHANGES:
        for found in re.finditer(pattern, text):
            start = text.rfind("\n", 0, found.start() + 1) + 1
            line = text[start:text.find("\n", found.end() - 1)]
            if is_code(line, found.start() - start):
                yield path, found.start(), found.end(), instead


def survives(build, path, text):
    """None where it does not compile, else whether every test passed."""
    path.write_text(text)
    if run(["ninja", "-C", str(build), "core"]).returncode:
        return None
    tests = run(["ctest", "--test-dir", str(build), "-R", TESTS, "-j", str(os.cpu_count() or 1), "--timeout", "60", "--stop-on-failure"])
    return tests.returncode == 0


def main():
    arguments = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    arguments.add_argument("folder", type=pathlib.Path)
    arguments.add_argument("files", nargs="*")
    arguments.add_argument("--sample", type=int, default=200)
    arguments.add_argument("--seed", type=int, default=1)
    arguments.add_argument("--minutes", type=float, default=1e9)
    told = arguments.parse_args()
    source, build = prepare(told.folder.resolve())
    names = told.files or sorted(str(p.relative_to(source)) for place in RULES for p in (source / place).glob("*.cpp"))
    everything = [m for name in names for m in mutants_of(source / name)]
    random.Random(told.seed).shuffle(everything)
    end = time.monotonic() + told.minutes * 60
    killed, alive, broken = 0, 0, 0
    for path, start, stop, instead in everything[:told.sample]:
        if time.monotonic() > end:
            break
        text = path.read_text()
        try:
            outcome = survives(build, path, text[:start] + instead + text[stop:])
        finally:
            path.write_text(text)
        if outcome is None:
            broken += 1
        elif outcome:
            alive += 1
            line = text.count("\n", 0, start + 1) + 1
            print(f"survived  {path.relative_to(source)}:{line}  {text[start:stop].strip()} -> {instead.strip() or 'nothing'}  |  {text.splitlines()[line - 1].strip()}", flush=True)
        else:
            killed += 1
    tried = killed + alive
    print(f"{killed} of {tried} changes noticed ({100 * killed / max(tried, 1):.1f} %); {broken} did not compile; {len(everything)} in all, seed {told.seed}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
