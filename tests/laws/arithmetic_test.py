"""The program's weights against a second implementation of the arithmetic (second_arithmetic.py), on random good runs.

Every weight of `plan RUN --json` must be the same to the last step of its scale; the superfat to a ten-thousandth of
a point beyond its printed digits; and no batter that could be lye-heavy stands there without the alarm in front.

    arithmetic_test.py ROOT PROGRAM [--runs N] [--seed N] [--only NUMBER] [--jobs N] [--keep FOLDER]
"""
import argparse
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
import traceback
from concurrent.futures import ProcessPoolExecutor

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from random_runs import RunMaker  # noqa: E402
import second_arithmetic as second  # noqa: E402
from second_batches import numbered  # noqa: E402

# What is refused for the size of a batch.
OF_BATCHES = re.compile(r"too little for even|no batch size works|are made in batches of|is cut into|batches of at most|rounds to nothing|too small")
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
    """The printed lines as fats, dispersing oils, alkalis (dry ones first), plain water, then all that is stirred in, `names`, as the formula lists it:
    they are printed in the order of the hands, what is wet before the alkali."""

    def place(line):
        name = line["name"]
        if name in names:
            return 4, names.index(name)
        if name.startswith(("NaOH,", "KOH,", "NaOH solution,", "KOH solution,")):
            return 2, " solution," in name
        return (3 if name in ("Water, distilled", "Extra water, distilled") else 1 if " to disperse the " in name else 0), 0

    return sorted(lines, key=place)


def together(weighings, take):
    """The sum of what `take` gives of each, item by item where it gives a list."""
    taken = [take(w) for w in weighings]
    return [sum(masses) for masses in zip(*taken)] if isinstance(taken[0], list) else sum(taken)


def worst_of(superfats):
    """Of several batches or whippings: the one that may come out lowest."""
    return min(superfats, key=lambda s: s.low)


def compare_weighings(compare, whose, got, weighings):
    """What is printed as the sum of `weighings`, and the superfat of the worst of them."""
    formula = weighings[0].formula

    def total(take):
        return together(weighings, take)

    compare.grams(whose + " make", got["make_g"], total(lambda w: w.batter))
    compare.grams(whose + " fats", got["fats_g"], total(lambda w: w.fats_sum))
    alkalis = total(lambda w: w.alkalis)
    for key, name in (("naoh_g", "NaOH"), ("koh_g", "KOH")):
        dry, _ = formula.as_dry(alkalis, 0)
        # Of a solution the pure alkali, cut to the milligram.
        compare.grams(f"{whose} {name}", got[key], sum(m for m, alkali in zip(dry, formula.alkalis) if alkali[0] == name))
    compare.grams(whose + " water", got["water_g"], total(lambda w: w.water))
    plain = total(lambda w: w.plain)
    expected = [] if formula.blend is None else [("blend", total(lambda w: w.blend))]
    expected += [(f"fat {f[0]}", m) for f, m in zip(formula.fats, total(lambda w: w.beside)) if m]
    expected += [(f"oil for {p.name}", m) for p, m in zip(formula.parts, total(lambda w: w.oils)) if m]
    expected += [(formula.alkalis[k][0], alkalis[k]) for k in in_order(formula)]
    compare.grams(whose + " plain water", got["plain_water_g"], plain)
    dissolved = [(formula.alkalis[k], alkalis[k]) for k in in_order(formula) if formula.dissolved[k]]
    compare.same(whose + " solutions", len(got["solutions"]), len(dissolved))
    for line, ((name, _, strength, low, high), mass) in zip(got["solutions"], dissolved):
        compare.same(whose + " solution", line["alkali"], name)
        compare.grams(f"{whose} {name} solution", line["g"], mass)
        compare.grams(f"{whose} water in {name} solution", line["brings_water_g"], mass * (1 - strength))
        for key, value in (("stated", strength), ("low", low), ("high", high)):
            compare.shown(f"{whose} {name} solution, {key} (%)", line["strength_percent"][key], 100 * value, 2)
    expected += [("plain water", plain)] if plain else []
    expected += [(p.name, m) for p, m in zip(formula.parts, total(lambda w: w.parts))]
    compare.same(whose + " ingredients, how many", len(got["ingredients"]), len(expected))
    lines = by_kind(got["ingredients"], [p.name for p in formula.parts])
    for line, (name, mass) in zip(lines, expected):
        compare.grams(f"{whose} {name}", line["g"], mass)
    aside = [m for m, beside in zip(total(lambda w: w.set_aside), total(lambda w: w.beside)) if beside]
    for line, mass in zip([line for line in lines if line["role"] == "fat"], aside):
        compare.grams(whose + " oil set aside", line.get("set_aside_for_colours_g", 0), mass)
    said, superfats = got["superfat_percent"], [superfat_of(w) for w in distinct(weighings)]
    # Two may come out as low as each other, but for rounding in binary.
    alike = [s for s in superfats if s.low < worst_of(superfats).low + 1e-9]
    superfat = min(alike, key=lambda s: abs(100 * s.nominal - said["effective"]))
    compare.shown(whose + " aim", said["aim"], 100 * formula.superfat, 2)
    compare.same(f"{whose} superfat (%)", said["effective"], 100 * superfat.nominal, 0.005 + 1e-4)
    for key, value in (("low", superfat.low), ("high", superfat.high), ("likely_low", superfat.likely_low), ("likely_high", superfat.likely_high)):
        compare.same(f"{whose} superfat, {key} (%)", said[key], 100 * value, 0.01 + 1e-4)  # ends are shown outwards


def in_order(formula):
    """The formula's alkalis as they are weighed: what is dry before solutions."""
    return sorted(range(len(formula.alkalis)), key=lambda k: formula.dissolved[k])


def distinct(things):
    return list({id(thing): thing for thing in things}.values())


def superfat_of(weighing):
    if not hasattr(weighing, "superfat"):
        weighing.superfat = second.superfat_of(weighing)
    return weighing.superfat


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

    blend = second.F(0) if weighing.blend is None else second.F(str(next(lines)))
    fats = take(weighing.beside)
    if weighing.blend is not None:
        fats = [m + blend * part for m, part in zip(fats, formula.blend_parts)]
    oils = take(weighing.oils)
    alkalis = [second.F(0)] * len(formula.alkalis)
    for k in in_order(formula):
        alkalis[k] = second.F(str(next(lines)))
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
    if compare.differences:  # nothing below could agree
        return compare.differences, None
    compare_limits(compare, plan, run)
    compare_pour(compare, "pour", plan["pour"], run, run.batches)
    compare.same("topping", "pipe" in plan, run.topping is not None)
    if run.topping:
        compare_pipe(compare, "topping", plan["pipe"], run, [whipping for batch in run.batches for whipping in batch.whippings])
    superfats = compare_batches(compare, plan, run)
    compare.same("decorations", len(plan["decorations"]), len(run.decorations))
    for got, mine in zip(plan["decorations"], run.decorations):
        for key in ("casts", "cavity_fills", "tray_fills"):
            compare.same(f"{got['name']} {key}", got[key], mine[key])
        compare.shown(f"{got['name']} volume (ml)", got["volume_each_ml"], mine["volume_each_ml"], 3)
        compare.shown(f"{got['name']} each (g)", got["mass_each_g"], mine["mass_each_g"], 3)
        compare.grams(f"{got['name']} melt", got["make_g"], mine["make_g"])
    for got, (name, grams) in zip(plan["dust"], run.dust):
        compare.grams(name, got["g"], grams)
    if run.cut:
        compare_cut(compare, plan["cut"], run)
    if "label" in run.document:
        compare_label(compare, plan, run)
    return compare.differences, check_alarm(compare, plan, superfats)


def compare_cut(compare, got, run):
    cut = run.cut
    compare.same("cut columns", got["columns"], cut.columns)
    compare.same("cut rows", got["rows"], cut.rows)
    compare.same("bars", got["bars_each"], cut.columns * cut.rows)
    for goes, ml in cut.ends().items():
        if goes != "bar":
            compare.same(f"cut {goes} (ml)", got[f"{goes}s_ml" if goes == "offcut" else f"{goes}_ml"], ml, 2e-3 + 1e-6 * ml)
    rod = any("rod" in d and "buried" in d for d in run.document.get("decorations", []))
    for i, (line, (ml, layers, embedded_ml, _), (fresh, cured, _)) in enumerate(zip(got["bars"], run.bars, run.weights())):
        compare.same(f"bar {i} (ml)", line["volume_ml"], ml, 1e-3 + 1e-6 * ml)
        off = 0.02 + (5e-4 * embedded_ml if rod else 0)
        compare.same(f"bar {i}, fresh (g)", line["fresh_g"], fresh, off)
        compare.same(f"bar {i}, cured (g)", line["cured_g"], cured, off)
        for layer, expected in zip(line["layers_ml"], layers):
            # A rod cut lengthwise is one of many sides in the program.
            compare.same(f"bar {i}, layer (ml)", layer, expected, 2e-3 + 1e-6 * ml + (5e-3 * embedded_ml if rod else 0))


def compare_label(compare, plan, run):
    """The lightest piece to believe in, and the statement rounded down from it."""
    got, mine = plan["label"]["net_quantity"], run.lightest()
    compare.same("label", got is not None, mine is not None)
    if got and mine:
        compare.same("lightest piece (g)", got["lightest_g"], mine[0], 0.02)
        compare.same("mean piece (g)", got["mean_g"], mine[1], 0.02)
        # Shown to a hundredth: either end may be what was rounded down from.
        fitting = [run.net_quantity(plan["label"]["market"], got["lightest_g"] + off) for off in (-0.005, 0.005)]
        if got["statement"] not in fitting:
            compare.differences.append(f"net quantity: got {got['statement']}, expected {fitting}")
        if got["stated_g"] > mine[0] + 0.01:
            compare.differences.append(f"the label says {got['stated_g']} g, the lightest piece may weigh {mine[0]:.3f} g")


def compare_limits(compare, plan, run):
    """Each limit's own number, and which of them keep the batches from being larger."""
    most = {limit["what"]: limit for limit in plan["batch_limits"] if "most_pieces" in limit}
    for what, casts in run.most.items():
        if what not in most:
            compare.differences.append(f"limit {what}: not told, expected {casts} casts")
        else:
            compare.same(f"limit {what}, pieces", most[what]["most_pieces"], casts * run.per_cast)
            sets = run.pieces["batches"] > 1 and casts == min(run.most.values())
            compare.same(f"limit {what} sets", most[what]["sets"], sets)


def compare_pour(compare, whose, got, run, batches):
    compare.shown(whose + " volume (ml)", got["volume_each_ml"], run.volume_each, 3)
    compare.shown(whose + " brimful (ml)", got["brimful_ml"], run.brimful, 3)
    compare.shown(whose + " displaced (ml)", got["displaced_ml"], run.displaced, 3)
    compare.shown(whose + " depth (mm)", got["depth_mm"], run.line, 3)
    compare.shown(whose + " density", got["density_g_per_ml"], run.base.density, 4)
    compare.shown(whose + " mass each (g)", got["mass_each_g"], run.mass_each, 3)
    compare.shown(whose + " in pieces (g)", got["in_pieces_g"], sum(b.in_pieces for b in batches), 3)
    compare_weighings(compare, whose, got, [b.pour for b in batches])
    layers = [list(zip(*jugs)) for jugs in zip(*(b.layers for b in batches))]
    compare.same(whose + " layers", len(got.get("layers", [])), len(layers))
    for line, ((name, *_), (volume, *_), (mass_each, *_), masses, colours) in zip(got.get("layers", []), layers):
        layer = f"{whose}, layer {name}"
        compare.same(layer, line["name"], name)
        compare.shown(layer + " (ml)", line["volume_each_ml"], volume, 3)
        compare.shown(layer + " each (g)", line["mass_each_g"], mass_each, 3)
        compare.grams(layer, line["g"], sum(masses))
        compare.same(layer + ", colours", len(line["colours"]), len(colours[0]))
        for dose, same_colour in zip(line["colours"], zip(*colours)):
            compare.grams(f"{layer}, {same_colour[0][0]}", dose["g"], sum(grams for _, grams in same_colour))


def compare_pipe(compare, whose, got, run, whippings):
    topping = run.topping
    compare.shown(whose + " volume (ml)", got["volume_each_ml"], topping.volume_each, 3)
    compare.shown(whose + " in the recess (ml)", got["in_headspace_each_ml"], topping.in_recess, 3)
    compare.shown(whose + " visible (ml)", got["visible_each_ml"], topping.visible, 3)
    compare.shown(whose + " plain density", got["plain_density_computed_g_per_ml"], topping.formula.computed_density(), 4)
    compare.shown(whose + " each (g)", got["mass_each_g"], topping.mass_each, 3)
    compare_whippings(compare, whose, got, run, whippings)
    compare.shown(whose + " in pieces (g)", got["in_pieces_g"], sum(w.in_pieces for w in whippings), 3)


def compare_whippings(compare, whose, got, run, whippings):
    loads = [w.loads for w in whippings]
    compare.same(whose + " loads", got["loads"], None if loads[0] is None else sum(loads))
    casts_now = max(whippings, key=lambda w: w.casts).casts_now
    compare.same(whose + " casts now", got["casts_now"], casts_now)
    compare.same(whose + " pieces now", got["pieces_now"], casts_now and casts_now * run.per_cast)
    compare_weighings(compare, whose, got, [w.weighing for w in whippings])


def compare_batches(compare, plan, run):
    """Each size of batch; answers every superfat that could be mixed, from the printed weights."""
    sizes, superfats = numbered(run.fillings), []
    compare.same("sizes of batches", len(plan["batches"]), len(sizes))
    for got, (casts, numbers) in zip(plan["batches"], sizes):
        whose, batch = f"batch of {casts}", run.batch_of(casts)
        compare.same(whose + ", casts", got["casts"], casts)
        compare.same(whose + ", count", got["count"], len(numbers))
        compare.same(whose + ", numbers", str(got["numbers"]), str(numbers))
        compare.same(whose + ", pieces", got["pieces"], run.pieces_of(batch))
        compare_pour(compare, whose, got["pour"], run, [batch])
        superfats.append(printed_superfat(got["pour"], batch.pour))
        if batch.whippings:
            compare_pipe(compare, whose + " topping", got["pipe"], run, batch.whippings)
            superfats += compare_goes(compare, whose, got["pipe"]["whippings"], run, batch.whippings)
        for line, dust in zip(got["dust"], run.document.get("dust", [])):
            compare.grams(f"{whose} {line['name']}", line["g"], run.dust_of(dust, batch))
        for line, shares in zip(got["bottles"], run.bottles):
            compare.same(whose + " bottle's parts", len(line["parts"]), len(shares[run.batches.index(batch)]))
            for part, (count, grams) in zip(line["parts"], shares[run.batches.index(batch)]):
                compare.same(whose + " bottle's parts alike", part["count"], count)
                compare.shown(whose + " bottle (g)", part["g"], grams, 2)
        if batch.lye_pot:
            superfats += compare_pot(compare, whose, got["lye_pot"], run, batch)
    for line, shares in zip(plan["bottles"], run.bottles):
        base, topping = (sum(count * grams for parts in shares for count, grams in parts[some]) for some in (slice(1), slice(1, None)))
        for part, grams in zip(line["parts"], (base, topping)):
            compare.shown("bottle (g)", part["g"], grams, 2)
    return superfats


def compare_goes(compare, whose, got, run, whippings):
    goes = {}
    for whipping in whippings:
        goes.setdefault(whipping.casts, []).append(whipping)
    compare.same(whose + ", sizes of whippings", len(got), len(goes))
    superfats = []
    for line, (casts, alike) in zip(got, goes.items()):
        what = f"{whose}, whipping of {casts}"
        compare.same(what + ", casts", line["casts"], casts)
        compare.same(what + ", count", line["count"], len(alike))
        compare_whippings(compare, what, line, run, alike[:1])
        superfats.append(printed_superfat(line, alike[0].weighing))
    return superfats


def compare_pot(compare, whose, got, run, batch):
    pot = batch.lye_pot
    for line, mass in zip(got["alkalis"], pot["alkalis"]):
        compare.grams(f"{whose}, pot {line['name']}", line["g"], mass)
    compare.grams(whose + ", pot water", got["water_g"], pot["water"])
    compare.grams(whose + ", lye in the pot", got["lye_g"], pot["lye"])
    compare.same(whose + ", shares", len(got["shares"]), len(pot["shares"]))
    superfats = []
    for share, weighing, taken, top_up, superfat in zip(got["shares"], batch.weighings(), pot["shares"], pot["top_ups"], pot["superfats"]):
        what = f"{whose}, share of {share['batter']}"
        compare.grams(what, share["lye_g"], taken)
        compare.grams(what + ", water then", share["top_up_g"], top_up)
        compare.same(what + ", superfat (%)", share["superfat_percent"], 100 * superfat.nominal, 0.005 + 1e-4)
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
        run = second.Run(files["chance.run.json"], files, published, tips)
        if process.returncode == 1 and err.count(b"\n") == 1:
            said = err.decode().strip()
            if run.refusal is None and OF_BATCHES.search(said):
                return "different", f"refused, though its batches are within all limits: {said}", None
            return ("small" if run.refusal else "refused"), said, None
        if process.returncode != 0:
            return "different", f"exit {process.returncode}: {err.decode(errors='replace')[:300]}", None
        if run.refusal:
            return "different", f"planned, though no batch can be made so ({run.refusal})", None
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
    counts, refusals, alarms, below = {"same": 0, "small": 0, "refused": 0, "different": 0}, {}, {"danger": 0, "superfat": 0, "quiet": 0}, 0
    kept = None
    with ProcessPoolExecutor(given.jobs) as pool:
        for outcomes in pool.map(work, jobs):
            for number, verdict, what, alarm in outcomes:
                counts[verdict] += 1
                if verdict in ("small", "refused"):
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
    print(f"{counts['same']} the same in every weight, {counts['different']} different, {counts['refused']} refused, {counts['small']} too small or too large "
          f"to be made, as reckoned here too; "
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
