"""Laws of a run made in batches, tried by asking the program twice; and what the shipped examples must not draw.

What a plan says of another number of pieces is asked for with that number. A batch on its own weighs what it weighs among others.
More moulds never take more fillings. No batch is beyond a limit that is told. What is advised where a number is refused passes.

    batches_test.py ROOT PROGRAM [--runs N] [--seed N] [--only NUMBER] [--jobs N] [--keep FOLDER]
"""
import argparse
import copy
import json
import os
import random
import re
import shutil
import subprocess
import sys
import tempfile
import traceback
from concurrent.futures import ProcessPoolExecutor

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from arithmetic_test import SAME_G, write_run  # noqa: E402
from random_runs import RunMaker  # noqa: E402

FEWEST_JUDGED = 0.6  # of the runs that are tried, so many are not refused


class Bench:
    """One run in a folder, and the program to ask about it."""

    def __init__(self, program, files):
        self.program, self.files = program, files
        self.folder = tempfile.mkdtemp(prefix="batches.")
        write_run(files, self.folder)

    def ask(self, *words, run="chance.run.json"):
        """The plan, or the complaint as text."""
        answer = subprocess.run([self.program, "plan", run, *words, "--json"], cwd=self.folder, stdin=subprocess.DEVNULL, capture_output=True,
                                timeout=120)
        if answer.returncode == 1:
            return answer.stderr.decode().strip()
        assert answer.returncode == 0, f"exit {answer.returncode}: {answer.stderr[:300]}"
        return json.loads(answer.stdout)

    def ask_changed(self, change):
        document = copy.deepcopy(self.files["chance.run.json"])
        change(document)
        with open(f"{self.folder}/changed.run.json", "w", encoding="utf-8") as file:
            json.dump(document, file)
        return self.ask(run="changed.run.json")

    def close(self):
        shutil.rmtree(self.folder)


def grams(value, key=""):
    """Every mass in grams below a part of the plan, with the way to it; what is one piece's own left out."""
    if isinstance(value, dict):
        for name, inner in value.items():
            yield from grams(inner, f"{key}/{name}")
    elif isinstance(value, list):
        for i, inner in enumerate(value):
            yield from grams(inner, f"{key}/{i}")
    elif key.rsplit("/", 1)[-1] in ("g", "make_g", "fats_g", "naoh_g", "koh_g", "water_g", "in_pieces_g", "lye_g", "top_up_g") and value is not None:
        yield key, value


def sums_are_the_batches(plan):
    """A run's weights are its batches' weights, so many times each."""
    for part in ("pour", "pipe", "dust"):
        if part not in plan:
            continue
        together = {}
        for batch in plan["batches"]:
            own = batch[part] if part == "dust" else {k: v for k, v in batch[part].items() if k != "whippings"}
            for key, value in grams(own):
                together[key] = together.get(key, 0) + batch["count"] * value
        said = dict(grams(plan[part]))
        for key in said:
            # Each of them is rounded to a thousandth for JSON.
            if abs(said[key] - together.get(key, 0)) > SAME_G * (1 + sum(b["count"] for b in plan["batches"])):
                yield f"{part}{key}: {said[key]} g, the batches together {together.get(key, 0):.3f} g"


def numbers_agree(plan):
    pieces, batches = plan["pieces"], plan["batches"]
    if sum(b["count"] * b["casts"] for b in batches) != pieces["casts"]:
        yield f"{pieces['casts']} casts, in the batches {[(b['count'], b['casts']) for b in batches]}"
    if sorted(n for b in batches for n in b["numbers"]) != list(range(1, pieces["batches"] + 1)):
        yield f"the batches' numbers are {[b['numbers'] for b in batches]}"
    if [b["casts"] for b in batches] != sorted({b["casts"] for b in batches}, reverse=True):
        yield f"sizes are not told largest first: {[b['casts'] for b in batches]}"
    if pieces["casts"] > pieces["fillings"] * pieces["cavities"]:
        yield "more casts than the fillings hold"


def limits_hold(plan):
    """No batch is beyond a limit; the one that sets the size is the tightest."""
    most = [limit for limit in plan["batch_limits"] if "most_pieces" in limit]
    least = [limit for limit in plan["batch_limits"] if "least_pieces" in limit]
    for batch in plan["batches"]:
        yield from (f"a batch of {batch['pieces']} is beyond {limit['text']}" for limit in most if batch["pieces"] > limit["most_pieces"])
        yield from (f"a batch of {batch['pieces']} is below {limit['text']}" for limit in least if batch["pieces"] < limit["least_pieces"])
    tightest = min(limit["most_pieces"] for limit in most)
    yield from (f"sets the batches' size, though another is tighter: {limit['text']}" for limit in most
                if limit["sets"] and limit["most_pieces"] != tightest)


def around_is_true(bench, plan):
    sell = plan["pieces"]["sell"]
    for other in {sell - 1, sell + 1} - {0} - {one["sell"] for one in plan["around"]}:
        if not isinstance(bench.ask("--sell", str(other)), str):
            yield f"nothing is said of {other} pieces, which can be made"
    for one in plan["around"]:
        other = bench.ask("--sell", str(one["sell"]))
        if isinstance(other, str):
            yield f"around says {one}; asked for it: {other}"
        elif (other["pieces"]["fillings"], other["pieces"]["batches"]) != (one["fillings"], one["batches"]):
            yield f"around says {one}; asked for it: {other['pieces']}"


def alone_weighs_the_same(bench, plan, chance):
    batch = chance.choice(plan["batches"])

    def only_this(document):
        document.update(sell=batch["pieces"], spoilage="0 %")
        document.get("batch", {}).pop("fill", None)
        document.pop("bottles", None)

    alone = bench.ask_changed(only_this)
    if isinstance(alone, str):
        yield f"a batch of {batch['pieces']} alone is refused: {alone}"
        return
    if alone["pieces"]["batches"] != 1:
        yield f"a batch of {batch['pieces']} alone takes {alone['pieces']['batches']} batches"
        return
    for part in ("pour", "pipe", "lye_pot", "dust"):
        mine, its = dict(grams(batch.get(part))), dict(grams(alone["batches"][0].get(part)))
        for key in mine.keys() | its.keys():
            if mine.get(key) != its.get(key):
                yield f"batch of {batch['pieces']}, {part}{key}: {mine.get(key)} g among others, {its.get(key)} g alone"


def more_moulds_no_more_fillings(bench, plan):
    owned = bench.files["chance.run.json"]["pour"].get("moulds_owned", bench.files["main.mould.json"].get("owned", 1))
    other = bench.ask_changed(lambda document: document["pour"].update(moulds_owned=owned + 1))
    # More in a filling may leave one that is too small for a batch: then there is no plan.
    if not isinstance(other, str) and other["pieces"]["fillings"] > plan["pieces"]["fillings"]:
        yield f"with one mould more {other['pieces']['fillings']} fillings instead of {plan['pieces']['fillings']}"


ADVISED = re.compile(r"plan (\d+)(?: or (\d+))? pieces to sell")


def advice_passes(bench, complaint):
    """Numbers of pieces that a refusal advises are planned when they are typed."""
    for number in filter(None, (number for found in ADVISED.findall(complaint) for number in found)):
        other = bench.ask("--sell", number)
        if isinstance(other, str):
            yield f"advises --sell {number} ({complaint}), which is refused: {other}"


# What a refusal says would do: words, and what then stands in the run.
WOULD_DO = [(re.compile(r"a pot of ([0-9.]+) L"), lambda run, litres: run["pots"].update(holds=f"{litres} L")),
            (re.compile(r"a lye jug of ([0-9.]+) L"), lambda run, litres: run["pots"].update(lye_jug=f"{litres} L")),
            (re.compile(r"a bowl of ([0-9.]+) L"), lambda run, litres: run["pipe"]["bowl"].update(holds=f"{litres} L")),
            (re.compile(r"([0-9.]+) min of open time"), lambda run, minutes: run["pipe"]["pace"].update(open_time=f"{minutes} min")),
            (re.compile(r"a wish of at least ([0-9]+) (?:piece|loa)"), lambda run, casts: run.update(batch=dict(wish_less(run), casts=int(casts)))),
            (re.compile(r"moulds with ([0-9]+) cavities"), lambda run, cavities: run["pour"].update(moulds_owned=int(cavities)))]  # enough, at the least


def wish_less(run):
    return {key: value for key, value in run.get("batch", {}).items() if key not in ("pieces", "casts")}


def what_would_do_does(bench, complaint):
    """A vessel that is advised is large enough: once it stands in the run, that limit is not in the way any more."""
    run = copy.deepcopy(bench.files["chance.run.json"])
    for _ in range(len(WOULD_DO) + 1):
        where, _, advised = complaint.partition("; it takes ")
        if not advised:
            return
        for words, put in WOULD_DO:
            for amount in words.findall(advised):
                put(run, amount)
        now = bench.ask_changed(lambda document: (document.clear(), document.update(run)))
        if isinstance(now, str) and now.partition("; it takes ")[2] == advised:
            yield f"{complaint}: with that in the run it says so again"
            return
        if not isinstance(now, str):
            return
        complaint = now


def faults_of(bench, chance):
    """(what is wrong, whether there was a plan to judge)."""
    plan = bench.ask()
    if isinstance(plan, str):
        return [*advice_passes(bench, plan), *what_would_do_does(bench, plan)], False
    return [*sums_are_the_batches(plan), *numbers_agree(plan), *limits_hold(plan), *around_is_true(bench, plan),
            *alone_weighs_the_same(bench, plan, chance), *more_moulds_no_more_fillings(bench, plan)], True


def made_in_batches(seed):
    """A random run in which batches matter."""
    for attempt in range(200):
        maker = RunMaker(f"{seed}:{attempt}")
        files = maker.run()
        document = files["chance.run.json"]
        document.pop("label", None)
        if "pots" in document or "batch" in document or "pipe" in document:
            if maker.some(0.25):
                document["sell"] = maker.chance.choice([1, 2, 3])
            if "pots" in document and maker.some(0.1):
                document["pots"] = {maker.chance.choice(["holds", "lye_jug"]): maker.chance.choice(["60 ml", "0.25 l", "10 fl oz"])}
            return files
    raise AssertionError(seed)


def try_run(program, seed, number, keep=None):
    bench = None
    try:
        files = made_in_batches(f"batches {seed}:{number}")
        bench = Bench(program, files)
        if keep:
            shutil.copytree(bench.folder, f"{keep}/run_{number}", dirs_exist_ok=True)
        return (number, *faults_of(bench, random.Random(f"{seed}:{number}")))
    except Exception:
        return number, ["this test fails on it: " + traceback.format_exc(limit=3)], True
    finally:
        if bench:
            bench.close()


def work(job):
    program, seed, numbers = job
    return [try_run(program, seed, number) for number in numbers]


def example_faults(root, program):
    """A shipped example draws no danger, and no caution about its own figures; only those that belong to the craft."""
    for name in sorted(os.listdir(f"{root}/examples")):
        if not name.endswith(".run.json"):
            continue
        answer = subprocess.run([program, "plan", f"{root}/examples/{name}", "--json"], capture_output=True, timeout=300)
        if answer.returncode != 0:
            yield f"{name}: {answer.stderr.decode()}"
            continue
        for caution in json.loads(answer.stdout)["cautions"]:
            if caution["severity"] == "danger" or (caution["severity"] == "caution" and not caution["general"]):
                yield f"{name} draws a {caution['severity']}: {caution['text']}"


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("root")
    parser.add_argument("program")
    parser.add_argument("--runs", type=int, default=60)
    parser.add_argument("--seed", default="20261125")
    parser.add_argument("--only", type=int, help="one run by its number, and keep its files")
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--examples", action="store_true", help="the shipped examples instead of random runs")
    parser.add_argument("--keep", default=os.path.join(tempfile.gettempdir(), "batches_test"))
    given = parser.parse_args()
    root, program = os.path.abspath(given.root), os.path.abspath(given.program)
    if given.only is not None:
        print(try_run(program, given.seed, given.only, given.keep), f"files in {given.keep}/run_{given.only}")
        return
    if given.examples:
        faults = list(example_faults(root, program))
        print(*faults, f"{len(faults)} faults", sep="\n")
        sys.exit(1 if faults else 0)
    print(f"{given.runs} random runs, seed {given.seed}", flush=True)
    jobs = [(program, given.seed, range(start, min(start + 10, given.runs))) for start in range(0, given.runs, 10)]
    judged, bad = 0, []
    with ProcessPoolExecutor(given.jobs) as pool:
        for outcomes in pool.map(work, jobs):
            for number, faults, planned in outcomes:
                judged += planned
                if faults:
                    print(f"FAULT run {number}: {'; '.join(faults)}", flush=True)
                    if not bad:
                        try_run(program, given.seed, number, given.keep)
                    bad.append(number)
    print(f"{judged} planned, {given.runs - judged} refused, {len(bad)} faulty")
    if bad:
        print(f"the first one's files: {given.keep}/run_{bad[0]}; once more by --seed {given.seed} --only {bad[0]}")
    too_few = judged < FEWEST_JUDGED * given.runs
    if too_few:
        print("too many runs are refused: the test no longer shows much")
    sys.exit(1 if bad or too_few else 0)


if __name__ == "__main__":
    main()
