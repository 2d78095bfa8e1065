"""The program's weights against a second implementation of the arithmetic (second_arithmetic.py), on random good runs.

Every weight of `plan RUN --json` must be the same to the last step of its scale; the superfat to a ten-thousandth of
a point beyond its printed digits; and no batter that could be lye-heavy stands there without the alarm in front.

    arithmetic_test.py ROOT PROGRAM [--runs N] [--seed N] [--only NUMBER] [--jobs N] [--keep FOLDER]
"""
import argparse
import json
import os
import shutil
import subprocess
import sys
import tempfile
import traceback
from concurrent.futures import ProcessPoolExecutor

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from random_runs import RunMaker  # noqa: E402
import second_arithmetic as second  # noqa: E402

SAME_G = 0.0011  # JSON shows grams to a thousandth; the finest step is ten times that
REFUSED_AT_MOST = 0.2  # of random good runs: scales too coarse, bottles too small and the like


class Comparison:
    """Collects where the program's figures differ from the second ones."""

    def __init__(self):
        self.differences = []

    def same(self, what, got, expected, tolerance=0.0):
        if got is None or expected is None:
            if got is not expected:
                self.differences.append(f"{what}: got {got}, expected {expected}")
        elif isinstance(expected, str) or isinstance(got, str):
            if got != expected:
                self.differences.append(f"{what}: got {got!r}, expected {expected!r}")
        elif not abs(float(got) - float(expected)) <= tolerance:
            self.differences.append(f"{what}: got {got}, expected {float(expected):.6f}")

    def grams(self, what, got, expected):
        self.same(what + " (g)", got, expected, SAME_G)

    def shown(self, what, got, expected, decimals):
        """A figure that is shown to so many decimals and not weighed."""
        self.same(what, got, expected, 0.5 * 10**-decimals + 2e-7 * abs(float(expected or 0)) + 1e-9)


def by_kind(lines, names):
    """The printed lines as fats, dispersing oils, alkalis, plain water, then all that is stirred in, `names`, as the formula lists it:
    they are printed in the order of the hands, what is wet before the alkali."""

    def place(line):
        name = line["name"]
        if name in names:
            return 4, names.index(name)
        if name.startswith(("NaOH,", "KOH,")):
            return 2, 0
        return (3 if name == "Water, distilled" else 1 if " to disperse the " in name else 0), 0

    return sorted(lines, key=place)


def compare_weighing(compare, whose, got, weighing, superfat):
    compare.grams(whose + " make", got["make_g"], weighing.batter)
    compare.grams(whose + " fats", got["fats_g"], weighing.fats_sum)
    for key, name in (("naoh_g", "NaOH"), ("koh_g", "KOH")):
        mine = sum(m for m, alkali in zip(weighing.alkalis, weighing.formula.alkalis) if alkali[0] == name)
        compare.grams(f"{whose} {name}", got[key], mine)
    compare.grams(whose + " water", got["water_g"], weighing.water)
    expected = [(f"fat {f[0]}", m) for f, m in zip(weighing.formula.fats, weighing.fats)]
    expected += [(f"oil for {p.name}", m) for p, m in zip(weighing.formula.parts, weighing.oils) if m]
    expected += [(a[0], m) for a, m in zip(weighing.formula.alkalis, weighing.alkalis)]
    expected += [("plain water", weighing.plain)] if weighing.plain else []
    expected += [(p.name, m) for p, m in zip(weighing.formula.parts, weighing.parts)]
    compare.same(whose + " ingredients, how many", len(got["ingredients"]), len(expected))
    lines = by_kind(got["ingredients"], [p.name for p in weighing.formula.parts])
    for line, (name, mass) in zip(lines, expected):
        compare.grams(f"{whose} {name}", line["g"], mass)
    for line, mass in zip(lines, weighing.set_aside):
        compare.grams(whose + " oil set aside", line.get("set_aside_for_colours_g", 0), mass)
    aside = got["superfat_percent"]
    compare.shown(whose + " aim", aside["aim"], 100 * weighing.formula.superfat, 2)
    compare.same(f"{whose} superfat (%)", aside["effective"], 100 * superfat.nominal, 0.005 + 1e-4)
    for key, value in (("low", superfat.low), ("high", superfat.high), ("likely_low", superfat.likely_low), ("likely_high", superfat.likely_high)):
        compare.same(f"{whose} superfat, {key} (%)", aside[key], 100 * value, 0.01 + 1e-4)  # ends are shown outwards


def speaks_of_lye(caution):
    return "lye-heavy" in caution["text"].lower()


def first_alarm(cautions):
    """What stands first: "danger" of a lye-heavy batter, "superfat" (the worst corner's caution, first of those that are no
    danger), or "quiet"."""
    if cautions and cautions[0]["severity"] == "danger" and speaks_of_lye(cautions[0]):
        return "danger"
    rest = [c for c in cautions if c["severity"] != "danger"]
    return "superfat" if rest and rest[0]["severity"] == "caution" and speaks_of_lye(rest[0]) else "quiet"


def printed_superfat(got, weighing):
    """From the printed weights alone, by published values."""
    formula = weighing.formula
    lines = iter([line["g"] for line in by_kind(got["ingredients"], [p.name for p in formula.parts])])
    def take(masses):
        return [second.F(str(next(lines))) if m else second.F(0) for m in masses]

    fats = [second.F(str(next(lines))) for _ in formula.fats]
    oils = take(weighing.oils)
    alkalis = [second.F(str(next(lines))) for _ in formula.alkalis]
    if weighing.plain:
        next(lines)
    parts = [second.F(str(next(lines))) for _ in formula.parts]
    return second.Superfat(formula, fats, oils, alkalis, parts, weighing.doubts)


EDGE = 5e-5 + 1e-6  # half a hundredth of a point: nearer to zero than is shown


def check_alarm(compare, plan, superfats):
    """Danger first where the likely band goes below zero; the superfat first of the cautions where only the worst corner does."""
    alarm = first_alarm(plan["cautions"])
    likely, worst = min(s.likely_low for s in superfats), min(s.low for s in superfats)
    if min(s.nominal for s in superfats) < -1e-6:
        compare.differences.append(f"printed, though lye-heavy: {100 * min(s.nominal for s in superfats):.3f} %")
    if likely < -EDGE and alarm != "danger":
        compare.differences.append(f"the likely band goes to {100 * likely:.3f} %, and no danger stands first but {plan['cautions'][:1]}")
    elif worst < -EDGE and alarm == "quiet":
        compare.differences.append(f"the worst corner is {100 * worst:.3f} %, and the cautions begin with {plan['cautions'][:1]}")
    return likely, worst, alarm


def compare_run(plan, run):
    compare = Comparison()
    for key, value in run.pieces.items():
        compare.same("pieces " + key, plan["pieces"][key], value)
    pour = plan["pour"]
    compare.shown("pour volume (ml)", pour["volume_each_ml"], run.volume_each, 3)
    compare.shown("brimful (ml)", pour["brimful_ml"], run.brimful, 3)
    compare.shown("displaced (ml)", pour["displaced_ml"], run.displaced, 3)
    compare.shown("depth (mm)", pour["depth_mm"], run.line, 3)
    compare.shown("density", pour["density_g_per_ml"], run.base.density, 4)
    compare.shown("mass each (g)", pour["mass_each_g"], run.mass_each, 3)
    compare.shown("in pieces (g)", pour["in_pieces_g"], run.in_pieces, 3)
    superfats = [printed_superfat(pour, run.pour)]
    compare_weighing(compare, "pour", pour, run.pour, second.superfat_of(run.pour))
    compare.same("layers", len(pour.get("layers", [])), len(run.layers))
    for got, (name, volume, mass_each, mass, colours) in zip(pour.get("layers", []), run.layers):
        compare.same("layer", got["name"], name)
        compare.shown(f"layer {name} (ml)", got["volume_each_ml"], volume, 3)
        compare.shown(f"layer {name} each (g)", got["mass_each_g"], mass_each, 3)
        compare.grams(f"layer {name}", got["g"], mass)
        compare.same(f"layer {name}, colours", len(got["colours"]), len(colours))
        for line, (colour, grams) in zip(got["colours"], colours):
            compare.grams(f"layer {name}, {colour}", line["g"], grams)
    if run.pipe:
        pipe = plan["pipe"]
        compare.shown("topping volume (ml)", pipe["volume_each_ml"], run.pipe_volume_each, 3)
        compare.shown("topping in the recess (ml)", pipe["in_headspace_each_ml"], run.in_recess, 3)
        compare.shown("topping visible (ml)", pipe["visible_each_ml"], run.visible, 3)
        compare.shown("topping each (g)", pipe["mass_each_g"], run.pipe_mass_each, 3)
        compare.shown("topping in pieces (g)", pipe["in_pieces_g"], run.pipe_in_pieces, 3)
        compare.shown("plain topping's density", pipe["plain_density_computed_g_per_ml"], run.pipe_formula.computed_density(), 4)
        compare.same("loads", pipe["loads"], run.loads)
        compare.same("pieces now", pipe["pieces_now"], run.pieces_now)
        compare_weighing(compare, "topping", pipe, run.pipe, second.superfat_of(run.pipe))
        superfats.append(printed_superfat(pipe, run.pipe))
    compare.same("topping", "pipe" in plan, run.pipe is not None)
    compare.same("decorations", len(plan["perch"]), len(run.decorations))
    for got, mine in zip(plan["perch"], run.decorations):
        for key in ("casts", "cavity_fills", "tray_fills"):
            compare.same(f"{got['name']} {key}", got[key], mine[key])
        compare.shown(f"{got['name']} volume (ml)", got["volume_each_ml"], mine["volume_each_ml"], 3)
        compare.shown(f"{got['name']} each (g)", got["mass_each_g"], mine["mass_each_g"], 3)
        compare.grams(f"{got['name']} melt", got["make_g"], mine["make_g"])
    for got, (name, grams) in zip(plan["dust"], run.dust):
        compare.grams(name, got["g"], grams)
    if run.cut:
        for key in ("columns", "rows"):
            compare.same("cut " + key, plan["cut"][key], run.cut[key])
        compare.same("bars", plan["cut"]["bars_each"], run.cut["bars"])
        compare.same("bar (ml)", plan["cut"]["bar_ml"]["mean"], run.cut["bar_ml"], 1e-3 + 1e-6 * run.cut["bar_ml"])
    for got, mine in zip(plan["bottles"], run.bottles):
        for part, grams in zip(got["parts"], mine):
            compare.shown("bottle (g)", part["g"], grams, 2)
    if run.lye_pot:
        superfats += compare_pot(compare, plan["lye_pot"], run)
    return compare.differences, check_alarm(compare, plan, superfats)


def compare_pot(compare, got, run):
    pot = run.lye_pot
    for line, mass in zip(got["alkalis"], pot["alkalis"]):
        compare.grams("pot " + line["name"], line["g"], mass)
    compare.grams("pot water", got["water_g"], pot["water"])
    compare.grams("lye in the pot", got["lye_g"], pot["lye"])
    superfats = []
    for share, weighing, taken, top_up, superfat in zip(got["shares"], (run.pour, run.pipe), pot["shares"], pot["top_ups"], pot["superfats"]):
        whose = f"share of {share['batter']}"
        compare.grams(whose, share["lye_g"], taken)
        compare.grams(whose + ", water then", share["top_up_g"], top_up)
        compare.same(whose + ", superfat (%)", share["superfat_percent"], 100 * superfat.nominal, 0.005 + 1e-4)
        superfats.append(run.superfat_of_share(weighing, second.F(str(share["lye_g"])), pot))
    return superfats


def write_run(files, folder):
    for name, document in files.items():
        with open(f"{folder}/{name}", "w", encoding="utf-8") as file:
            json.dump(document, file, ensure_ascii=False, indent=1)


_published = {}


def published_of(root):
    if root not in _published:
        with open(f"{root}/src/planning/data/tips.json", encoding="utf-8") as file:
            _published[root] = second.Published(root), json.load(file)["tips"]
    return _published[root]


def try_run(root, program, seed, number, keep=None):
    """("same" | "refused" | "different", what, alarm) of one random run."""
    published, tips = published_of(root)
    folder = tempfile.mkdtemp(prefix="arithmetic.")
    files = RunMaker(f"{seed}:{number}").run()
    write_run(files, folder)
    if keep:
        shutil.copytree(folder, f"{keep}/run_{number}", dirs_exist_ok=True)
    try:
        process = subprocess.Popen([program, "plan", "chance.run.json", "--json"], cwd=folder, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE,
                                   stderr=subprocess.PIPE, close_fds=False)
        out, err = process.communicate(timeout=120)
        if process.returncode == 1 and err.count(b"\n") == 1:
            return "refused", err.decode().strip(), None
        if process.returncode != 0:
            return "different", f"exit {process.returncode}: {err.decode(errors='replace')[:300]}", None
        run = second.Run(files["chance.run.json"], files, published, tips)
        differences, alarm = compare_run(json.loads(out), run)
        return ("different" if differences else "same"), "; ".join(differences), alarm
    except Exception:
        return "different", "this test fails on it: " + traceback.format_exc(limit=3), None
    finally:
        shutil.rmtree(folder)


def work(job):
    root, program, seed, numbers = job
    return [(number, *try_run(root, program, seed, number)) for number in numbers]


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("root")
    parser.add_argument("program")
    parser.add_argument("--runs", type=int, default=2000)
    parser.add_argument("--seed", default="20261125")
    parser.add_argument("--only", type=int, help="one run by its number, and keep its files")
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--keep", default=os.path.join(tempfile.gettempdir(), "arithmetic_test"))
    given = parser.parse_args()
    root, program = os.path.abspath(given.root), os.path.abspath(given.program)
    if given.only is not None:
        print(try_run(root, program, given.seed, given.only, given.keep), f"files in {given.keep}/run_{given.only}")
        return
    print(f"{given.runs} random runs, seed {given.seed}", flush=True)
    chunk = 50
    jobs = [(root, program, given.seed, range(start, min(start + chunk, given.runs))) for start in range(0, given.runs, chunk)]
    counts, refusals, alarms, below = {"same": 0, "refused": 0, "different": 0}, {}, {"danger": 0, "superfat": 0, "quiet": 0}, 0
    kept = None
    with ProcessPoolExecutor(given.jobs) as pool:
        for outcomes in pool.map(work, jobs):
            for number, verdict, what, alarm in outcomes:
                counts[verdict] += 1
                if verdict == "refused":
                    kind = what.split(": ", 1)[-1]
                    refusals.setdefault(kind[:60], []).append(number)
                if alarm:
                    below += alarm[1] < 0
                    alarms[alarm[2]] += 1
                if verdict == "different":
                    print(f"DIFFERENT run {number}: {what}", flush=True)
                    if kept is None:
                        kept = number
                        try_run(root, program, given.seed, number, given.keep)
    print(f"{counts['same']} the same in every weight, {counts['different']} different, {counts['refused']} refused; "
          f"{below} with a worst corner below zero; first stands: {alarms}")
    for kind, numbers in sorted(refusals.items(), key=lambda item: -len(item[1]))[:12]:
        print(f"  refused {len(numbers)} x, such as run {numbers[0]}: {kind}")
    if kept is not None:
        print(f"the first one's files: {given.keep}/run_{kept}; once more by --seed {given.seed} --only {kept}")
    too_many = counts["refused"] > REFUSED_AT_MOST * given.runs
    if too_many:
        print("too many random good runs are refused: the test no longer shows much")
    sys.exit(1 if counts["different"] or too_many else 0)


if __name__ == "__main__":
    main()
