"""Laws of lines that are poured together, on orders of chance, against the second implementation of the arithmetic.

Every weight of every batch of a shared base is that of one weighing for all its lines (second_arithmetic.py): what goes into their
pieces, over them, into their test pieces and jugs, and once what stays in the pot. All pieces are dealt, no pot, jug, bowl, mould or
wish is overfilled, no printed batch is lye-heavy, and together never needs more base, nor more batches, than apart. A word that one
line alone has changes nothing.

    together_test.py ROOT PROGRAM [--orders N] [--seed N] [--only NUMBER] [--jobs N] [--keep FOLDER]
"""
import argparse
import copy
import json
import os
import random
import shutil
import subprocess
import sys
import tempfile
import traceback
from concurrent.futures import ProcessPoolExecutor
from fractions import Fraction as F

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from arithmetic_test import Comparison, compare_weighings, printed_superfat, published_of, write_run  # noqa: E402
from random_runs import RunMaker  # noqa: E402
import second_arithmetic as second  # noqa: E402
from second_arithmetic import quantity, share  # noqa: E402

MILLIGRAM = 0.001
STUDIO = {"schema": "brimwright.studio/1", "currency": "EUR"}
REFUSED_AT_MOST = 0.5  # of random orders: layers that do not fit another base, scales too coarse, bottles and the like


# ---- orders of chance


def renamed(value, names):
    """With every file's name in it as `names` has it."""
    if isinstance(value, dict):
        return {key: renamed(inner, names) for key, inner in value.items()}
    if isinstance(value, list):
        return [renamed(inner, names) for inner in value]
    return names.get(value, value) if isinstance(value, str) else value


def order_of_chance(seed):
    """Files of runs with one base, and the order of them."""
    chance = random.Random(seed)
    files, order = {}, {"schema": "brimwright.order/1", "lines": []}
    standing = {"lye_solutions": {}, "blends": {}}
    for i in range(chance.choice([2, 2, 2, 3, 4])):
        made = RunMaker(f"{seed}:{i}").run()
        own = made.pop("studio.json", {})
        names = {name: f"l{i}_{name}" for name in made}
        names |= {name: f"{name}, {i}" for goods in standing for name in own.get(goods, {})}
        for goods, known in standing.items():
            known |= {names[name]: good for name, good in own.get(goods, {}).items()}
        made = {names[name]: renamed(document, names) for name, document in made.items()}
        run = made.pop(f"l{i}_chance.run.json")
        if i > 0 and chance.random() < 0.2:  # the first one's mould, in other colours
            made, run = {}, copy.deepcopy(files["l0.run.json"])
            run["pour"].pop("layers", None)
        for key in ("lye_pot", "bottles", "money"):
            run.pop(key, None)
        if i > 0:
            first = files["l0.run.json"]
            run["pour"]["formula"] = "l0_base.formula.json"
            for key in ("lye_from", "blend"):
                run["pour"].pop(key, None)
                if key in first["pour"]:
                    run["pour"][key] = first["pour"][key]
            run["scales"] = first["scales"]
            run["losses"]["pour"]["pot"] = first["losses"]["pour"]["pot"]
            run.pop("pots", None)
            if "pots" in first:
                run["pots"] = first["pots"]
        run["name"] = f"Line {i}"
        files.update(made)
        files[f"l{i}.run.json"] = run
        order["lines"].append({"run": f"l{i}.run.json", "pieces": chance.choice([1, 3, 6, 12, 20, 24, 25, 36, 48, 60]), "together": "A"})
    files["chance.order.json"] = order
    files["studio.json"] = STUDIO | {goods: known for goods, known in standing.items() if known}
    return files


# ---- what a line is by itself


class Line:
    def __init__(self, document, pieces, files, published, tips):
        self.alone = second.Run({**document, "sell": pieces}, files, published, tips)
        self.document, self.losses = document, document["losses"]["pour"]
        self.each = self.alone.mass_each * (1 + share(self.losses["overpour"]))
        self.layered = bool(document["pour"].get("layers"))
        self.jugs = quantity(self.losses["jugs"], "mass")
        self.mould = document["pour"]["mould"]

    def takes(self, casts):
        """Of a batch: in the pieces and over them, a test piece, and what stays in jugs of its own."""
        return casts * self.each + quantity(self.losses["test_piece"], "mass") + (self.jugs if self.layered else 0)

    def needs_alone(self):
        pot = quantity(self.losses["pot"], "mass")
        return sum(self.takes(casts) + pot + (0 if self.layered else self.jugs) for filling in self.alone.fillings for casts in filling)

    def most(self):
        """Casts of it in one batch by what is its own."""
        own = {what: casts for what, casts in self.alone.most.items() if what in ("cavities", "bowl", "open time")}
        return min(own.values())

    def wish(self):
        """g of base poured in the largest batch it wishes for."""
        casts = self.alone.most.get("wish")
        return None if casts is None else casts * self.each

    def filled_jugs(self, casts, weighing):
        batch = second.Batch()
        batch.casts, batch.pour = casts, weighing
        return self.alone.jugs(batch)


# ---- the laws


def check_batch(compare, got, lines, made):
    """One of the base's batches; adds to `made` what it makes of each line."""
    whose = f"batch {got['numbers'][0]}"
    formula, scales = lines[0].alone.base, lines[0].alone.scales
    parts = {part["line"]: part for part in got["lines"]}
    taken, in_pieces, poured = F(0), F(0), F(0)
    for i, part in parts.items():
        line, casts = lines[i], part["casts"]
        compare.same(f"{whose}, pieces of line {i}", part["pieces"], casts * line.alone.per_cast)
        compare.grams(f"{whose}, line {i} takes", part["takes_g"], line.takes(casts))
        compare.shown(f"{whose}, line {i}, each (g)", part["mass_each_g"], line.alone.mass_each, 3)
        taken += line.takes(casts)
        in_pieces += casts * line.alone.mass_each
        poured += casts * line.each
        if casts > line.most():
            compare.differences.append(f"{whose} makes {casts} casts of line {i}, which allows {line.most()}")
        made[i] += got["count"] * casts
    for i, part in parts.items():
        compare.same(f"{whose}, line {i} (%)", part["share_percent"], 100 * lines[i].takes(part["casts"]) / taken, 1e-4)
        if lines[i].wish() is not None and poured > lines[i].wish() * (1 + F(1, 10**9)):
            compare.differences.append(f"{whose} pours {float(poured):.1f} g, line {i} wishes for {float(lines[i].wish()):.1f} g at most")
    behind = quantity(lines[0].losses["pot"], "mass") + max([lines[i].jugs for i in parts if not lines[i].layered], default=F(0))
    compare.grams(whose + ", left behind", got["left_behind_g"], behind)
    needs = taken + behind
    weighing = second.Weighing(formula, needs, scales)
    base = got["base"]
    compare.shown(whose + ", in the pieces (g)", base["in_pieces_g"], in_pieces, 3)
    compare_weighings(compare, whose, base, [weighing])
    balance = sum(part["takes_g"] for part in parts.values()) + got["left_behind_g"] + got["over_g"]
    compare.same(whose + ", balance (g)", balance, weighing.batter, MILLIGRAM * (len(parts) + 2))
    if weighing.batter < needs * (1 - F(1, 10**9)):
        compare.differences.append(f"{whose} makes {float(weighing.batter)} g and {float(needs)} g are needed")
    if printed_superfat(base, weighing).nominal < -1e-6:
        compare.differences.append(f"{whose} is printed, though lye-heavy")
    check_vessels(compare, whose, lines, weighing)
    check_jugs(compare, whose, got["weigh_out"], parts, lines, weighing)
    return needs


def check_vessels(compare, whose, lines, weighing):
    """A pot is two thirds full at most, a lye jug half."""
    pots, formula = lines[0].document.get("pots", {}), weighing.formula
    if "holds" in pots and float(weighing.batter) / formula.density > float(F(2, 3) * quantity(pots["holds"], "volume")) * (1 + 1e-9):
        compare.differences.append(f"{whose} overfills the pot")
    lye = formula.lye_volume(weighing.alkalis, weighing.plain) + formula.stirred_into_lye(weighing.parts)
    if "lye_jug" in pots and lye > float(quantity(pots["lye_jug"], "volume") / 2) * (1 + 1e-9):
        compare.differences.append(f"{whose} overfills the lye jug")


def check_jugs(compare, whose, vessels, parts, lines, weighing):
    """Each line's jugs, with their colours, and what of the batter they take; all together no more than there is."""
    listed = [vessel for vessel in vessels if vessel["vessel"] == "layers"]
    compare.same(whose + ", lines with jugs", len(listed), len(parts))
    step, together = lines[0].alone.scales.large, F(0)
    for vessel, (i, part) in zip(listed, parts.items()):
        line, rows = lines[i], []
        if line.layered:
            for name, _, _, mass, colours in line.filled_jugs(part["casts"], weighing):
                rows += [(name, mass), *colours]
                together += mass
        else:
            rows = [("Plain", second.to_step(part["casts"] * line.each, step, "down"))]
            together += rows[0][1]
        compare.same(f"{whose}, rows of line {i}", len(vessel["rows"]), len(rows))
        for row, (name, mass) in zip(vessel["rows"], rows):
            compare.same(f"{whose}, line {i}", row["name"], name)
            compare.grams(f"{whose}, line {i}, {name}", row["g"], mass)
    if together > weighing.batter:
        compare.differences.append(f"{whose}: its jugs hold {float(together)} g of {float(weighing.batter)} g")


def check_fillings(compare, group, lines):
    """As few as the mould takes that needs most."""
    casts = {}
    for line in lines:
        casts[line.mould] = casts.get(line.mould, 0) + line.alone.pieces["casts"]
    fewest = max(second.ceil_of(casts[line.mould], line.alone.mould.cavities) for line in lines)
    apart = sum(line.alone.pieces["fillings"] for line in lines)
    if not fewest <= group["fillings"] <= apart:
        compare.differences.append(f"{group['fillings']} fillings, where {fewest} are enough")


def check_group(group, lines):
    compare = Comparison()
    made, needs, batches = [0] * len(lines), F(0), 0
    for got in group["batches"]:
        needs += got["count"] * check_batch(compare, got, lines, made)
        batches += got["count"]
    for i, line in enumerate(lines):
        compare.same(f"casts of line {i}", made[i], line.alone.pieces["casts"])
    numbers = sorted(number for got in group["batches"] for number in got["numbers"])
    compare.same("numbers of the batches", str(numbers), str(list(range(1, batches + 1))))
    compare.same("make (g)", group["make_g"], sum(got["base"]["make_g"] * got["count"] for got in group["batches"]), MILLIGRAM * (batches + 1))
    check_fillings(compare, group, lines)
    if all(line.alone.refusal is None for line in lines):
        alone = sum(line.needs_alone() for line in lines)
        if needs > alone * (1 + F(1, 10**9)):
            compare.differences.append(f"together needs {float(needs):.3f} g of base, apart {float(alone):.3f} g")
        if batches > sum(line.alone.pieces["batches"] for line in lines):
            compare.differences.append(f"together takes {batches} batches, more than apart")
    return compare.differences


def ask(program, folder, *words):
    done = subprocess.run([program, *words], cwd=folder, stdin=subprocess.DEVNULL, capture_output=True, timeout=120)
    return done.returncode, done.stdout.decode(), done.stderr.decode()


def check_lone_word(program, folder, files):
    """A word that one line alone has: the line is the run by itself."""
    line = files["chance.order.json"]["lines"][0]
    answers = []
    for word in ({"together": "alone"}, {}):
        document = {**files["chance.order.json"], "lines": [{"run": line["run"], "pieces": line["pieces"], **word}]}
        with open(f"{folder}/lone.order.json", "w", encoding="utf-8") as file:
            json.dump(document, file)
        answers.append(ask(program, folder, "quote", "lone.order.json", "--json"))
    (code, told, _), (other_code, other, _) = answers
    if code != other_code:
        return [f"with a lone word exit {code}, without {other_code}"]
    if code != 0:
        return []
    told, other = json.loads(told), json.loads(other)
    if not told.pop("remarks"):
        return ["nothing is told of a lone word"]
    other.pop("remarks")
    return [] if told == other else ["a lone word changes the line"]


def try_order(root, program, seed, number, keep=None):
    """("holds" | "refused" | "different", what)."""
    published, tips = published_of(root)
    folder = tempfile.mkdtemp(prefix="together.")
    files = order_of_chance(f"{seed}:{number}")
    write_run(files, folder)
    if keep:
        shutil.copytree(folder, f"{keep}/order_{number}", dirs_exist_ok=True)
    try:
        code, out, err = ask(program, folder, "quote", "chance.order.json", "--json")
        if code == 1:
            complaint = json.loads(err)
            return "refused", f"{complaint['problem']} ({complaint['field']})"
        if code != 0:
            return "different", f"exit {code}: {err[:300]}"
        lines = [Line(files[line["run"]], line["pieces"], files, published, tips) for line in files["chance.order.json"]["lines"]]
        (group,) = json.loads(out)["times"][0]["together"]
        differences = check_group(group, lines)
        if number % 10 == 0:
            differences += check_lone_word(program, folder, files)
        return ("different" if differences else "holds"), "; ".join(differences) or max(len(batch["lines"]) for batch in group["batches"])
    except Exception:
        return "different", "this test fails on it: " + traceback.format_exc(limit=4)
    finally:
        shutil.rmtree(folder)


def work(job):
    root, program, seed, numbers = job
    return [(number, *try_order(root, program, seed, number)) for number in numbers]


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("root")
    parser.add_argument("program")
    parser.add_argument("--orders", type=int, default=300)
    parser.add_argument("--seed", default="20261201")
    parser.add_argument("--only", type=int, help="one order by its number, and keep its files")
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--keep", default=os.path.join(tempfile.gettempdir(), "together_test"))
    given = parser.parse_args()
    root, program = os.path.abspath(given.root), os.path.abspath(given.program)
    if given.only is not None:
        print(try_order(root, program, given.seed, given.only, given.keep), f"files in {given.keep}/order_{given.only}")
        return
    print(f"{given.orders} orders of chance, seed {given.seed}", flush=True)
    chunk = 20
    jobs = [(root, program, given.seed, range(start, min(start + chunk, given.orders))) for start in range(0, given.orders, chunk)]
    counts, refusals, several = {"holds": 0, "refused": 0, "different": 0}, {}, 0
    with ProcessPoolExecutor(given.jobs) as pool:
        for outcomes in pool.map(work, jobs):
            for number, verdict, what in outcomes:
                counts[verdict] += 1
                if verdict == "refused":
                    refusals.setdefault(what[:70], []).append(number)
                if verdict == "different":
                    print(f"DIFFERENT order {number}: {what}", flush=True)
                several += verdict == "holds" and what > 1
    print(f"{counts['holds']} hold, {several} of them with several lines in a batch; {counts['different']} do not; {counts['refused']} refused")
    for kind, numbers in sorted(refusals.items(), key=lambda item: -len(item[1]))[:12]:
        print(f"  refused {len(numbers)} x, such as order {numbers[0]}: {kind}")
    too_many = counts["refused"] > REFUSED_AT_MOST * given.orders
    too_few = 2 * several < counts["holds"]
    if too_many or too_few:
        print("too many are refused, or too few bases are shared: the test no longer shows much")
    sys.exit(1 if counts["different"] or too_many or too_few else 0)


if __name__ == "__main__":
    main()
