"""Every value of every shipped file, replaced by what a slip, a broken editor or malice may leave there.

Whatever stands in a run, formula, mould, fats or tips file, the program answers: exit 0 with a whole answer, or
exit 1 with one line that names a file of the maker's. Never a signal, never a fault of ours (exit 2), never
silence. One case is one start of the real program, because only that shows a crash.

    hostile_values_test.py ROOT PROGRAM [--seed N] [--each X | --all] [--jobs N] [--keep FOLDER]

--each X takes X hostile values for every value of every file in the mean, chosen by the seed; --all takes all of them.
"""
import argparse
import json
import os
import random
import re
import shutil
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

HANG_S = 60  # generous: a loaded machine and a search for embeds' places

# JSON as it stands in the file, so that what no JSON library would write is among it too.
HOSTILE = [
    "null", "true", "0", "-1", "1e13", "1e308", "1e999", "NaN", "9007199254740993", "[]", "{}",
    '""', '" "', '"0"', '"0 %"', '"100 %"', '"0 g"', '"-1 g"', '"1e13 g"', '"5 mm"', '"1e308 mm"', '"1e-300 mm"',
    '"1/0 in"', '"NaN"', '"inf %"', '"1 g 1 g"', '"\\u0000"', '"\\u001b[31mred\\u0007\\u009b2J"', '"\\ud800"', '"\\u202e g 5"',
    json.dumps("long " * 20000), json.dumps("9" * 5000 + " g"), "9" * 400,
    "[" * 50 + "]" * 50, "[" * 3000 + "]" * 3000, '[{"a": [null, {}]}]', '{"a": 1, "a": 2}',
    '"../../../../../etc/passwd"', '"/dev/zero"', '"."',
]
# What may be done to an object or an array besides.
ABSENT, TWICE, LONG_KEY, STRANGE_KEY = "(left out)", "(twice)", "(a very long key)", "(a key of control codes)"


def nodes(value, path=()):
    """The path to every value, objects and arrays too; the document itself first."""
    yield path
    inside = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for key, inner in inside:
        yield from nodes(inner, path + (key,))


def at(document, path):
    for step in path:
        document = document[step]
    return document


MARK = "\u2603 put it here"


def mutated(text, path, hostile):
    """The file's text with the value at `path` replaced."""
    document = json.loads(text)
    if hostile in (LONG_KEY, STRANGE_KEY):
        at(document, path)["k" * 100000 if hostile == LONG_KEY else "\u001b]0;x\u0007\u0000"] = 1
    elif hostile == ABSENT:
        del at(document, path[:-1])[path[-1]]
    elif hostile == TWICE:
        at(document, path[:-1]).insert(path[-1], at(document, path))
    elif path:
        at(document, path[:-1])[path[-1]] = MARK
        return json.dumps(document).replace(json.dumps(MARK), hostile, 1)
    else:
        return hostile
    return json.dumps(document)


def hostiles_for(document, path):
    fitting = list(HOSTILE)
    if path:
        fitting.append(ABSENT if isinstance(path[-1], str) else TWICE)
    if isinstance(at(document, path), dict):
        fitting += [LONG_KEY, STRANGE_KEY]
    return fitting


# ---- what is asked of the program about each file ---------------------------------------------------------

# Runs that use a file, so that what it says is not only read but reckoned with.
OWN_FATS_FORMULA = {
    "schema": "brimwright.formula/2", "name": "Own fats", "own_fats": "studio.fats.json",
    "fats": [{"fat": "argan_studio", "share": "40 %"}, {"fat": "mct_studio", "share": "10 %"}, {"fat": "olive", "share": "50 %"}],
    "superfat": "8 %", "alkali": [{"alkali": "NaOH", "share": "100 %", "purity": "99 %"}],
    "water": {"lye_strength": "30 %"}, "pour_temperature": "35 °C"}
SCALES = {"large": {"step": "1 g", "most": "5 kg"}, "fine": {"step": "0.1 g", "most": "500 g"}}
POUR_LOSSES = {"overpour": "1 %", "pot": "20 g", "jugs": "0 g", "test_piece": "0 g"}


def run_of(mould, formula, **more):
    return {"schema": "brimwright.run/2", "name": "Trial", "sell": 12, "spoilage": "0 %",
            "pour": {"mould": mould, "formula": formula, "line": {"below_brim": "1 mm"}},
            "losses": {"pour": POUR_LOSSES}, "scales": SCALES, **more}


def tips_run():
    run = run_of("moulds/round_cup.json", "meadow_base.formula.json")
    run["pipe"] = {"formula": "cloud_topping.formula.json", "fills_headspace": "0 %", "whip": {"holds": "120 ml", "net": "78 g"},
                   "beads": {"tip": "open star, large", "own_tips": "studio.tips.json", "bead_to_opening": 1.1,
                             "moves": [{"move": "ring", "radius": "15 mm"}, {"move": "dollop", "diameter": "20 mm", "height": "12 mm"}]}}
    run["losses"]["pipe"] = {"bag": "5 g", "bowl_and_whisk": "5 g"}
    return run


def decorated_run():
    """A run with what the shipped ones leave out: pour from the floor, layers by depth and mass, an envelope, rods,
    a drizzle, a shared pot of lye, a bottle, dust by the piece, batches by pots and wish, a slab cut lengthwise and across."""
    run = run_of("moulds/twisted_cup.json", "meadow_base.formula.json")
    run["pour"]["line"] = {"depth": "26 mm"}
    run["pour"]["layers"] = [{"name": "Low", "depth": "9 mm"}, {"name": "Rest", "rest": True}]
    run["pipe"] = {"formula": "whip.formula.json", "fills_headspace": "50 %", "whip": {"holds": "120 ml", "net": "78 g"},
                   "envelope": {"form": "cone", "diameter": "36 mm", "height": "22 mm", "soap_share": "70 %"}}
    run["losses"]["pipe"] = {"bag": "5 g", "bowl_and_whisk": "5 g"}
    run["lye_pot"] = {"pot_tare": "310 g"}
    run["decorations"] = [
        {"name": "Drizzle", "material": "melt", "drizzle": {"area": "6 cm2", "thickness": "1 mm"}, "per_piece": 1,
         "density": "1.03 g/ml", "spares": "5 %", "melt_loss": "4 %", "left_in_jug": "3 g"}]
    run["dust"] = [{"name": "silver mica", "per_piece": "20 mg"}]
    run["bottles"] = [{"name": "lavender essential oil", "holds": "30 g"}]
    run["label"] = {"market": "US", "weighed_pieces": ["80 g", "81 g", "80.4 g"], "printed_weight": "78 g"}
    run["pots"] = {"holds": "5 l", "lye_jug": "2 l"}
    run["batch"] = {"pieces": 8, "fill": "full", "whippings": 2}
    return run


def slab_run():
    run = run_of("moulds/slab_tray.json", "meadow_base.formula.json", sell=20)
    run["pour"]["layers"] = [{"name": "One", "mass": "300 g"}, {"name": "Two", "rest": True}]
    run["cut"] = {"bar": {"length": "70 mm", "width": "50 mm"}, "along": "x", "end_trim": "3 mm", "side_trim": "2 mm",
                  "top_planing": "1 mm", "kerf": "1 mm", "face_planing": "0.5 mm"}
    return run


def milky_formula():
    """What the shipped formulas leave out: liquids, a measured density, drying by a law, acids of other names."""
    return {"schema": "brimwright.formula/2", "name": "Milky",
            "fats": [{"fat": "olive", "share": "60 %"}, {"fat": "coconut", "share": "25 %"}, {"fat": "castor", "share": "15 %"}],
            "superfat": "7 %", "alkali": [{"alkali": "NaOH", "share": "90 %", "purity": "99 %"},
                                          {"alkali": "KOH", "share": "10 %", "purity": "90 %", "purity_range": ["89 %", "91 %"]}],
            "water": {"share_of_fats": "33 %"}, "pour_temperature": "36 °C", "measured_density": "1.02 g/ml",
            "liquids": [{"name": "goat milk", "replaces": "30 % of water", "goes_into": "batter", "composition": "goat milk", "frozen": True},
                        {"name": "oat drink", "rate": "4 % of fats", "goes_into": "lye", "density": "1.03 g/ml",
                         "composition": {"water": "90 %", "fat": {"fat": "sunflower", "share": "2 %"}, "sugar": "4 %", "salt": "0.1 %", "source": "the carton"}}],
            "additives": [{"name": "citric acid", "rate": "1 % of fats", "goes_into": "lye", "density": "1.67 g/ml",
                           "contains_acid": {"acid": "citric acid, anhydrous", "share": "100 %"}}],
            "cure": "42 days", "drying": {"water_lost_in_the_end": "88 %", "time_to_63_percent": "12 days"}}


class File:
    """A maker's file to be spoilt: where it lies in the scene, and what is then asked."""

    def __init__(self, name, text, asks):
        self.name, self.text, self.asks = name, text, asks
        self.document = json.loads(text)


def scene_files(root):
    """All files of the maker's folder as (name, text), good ones."""
    files = {}
    for folder in ("examples", "moulds"):
        for entry in sorted(os.listdir(f"{root}/{folder}")):
            if entry.endswith(".json"):
                with open(f"{root}/{folder}/{entry}") as file:
                    files[entry if folder == "examples" else f"moulds/{entry}"] = file.read()
    whip = json.loads(files["meadow_base.formula.json"])
    whip.update(name="Whip", water={"lye_strength": "33 %"}, superfat="8 %", pour_temperature="24 °C")
    for name, document in (("tips.run.json", tips_run()), ("decorated.run.json", decorated_run()), ("slab.run.json", slab_run()),
                           ("milky.run.json", run_of("moulds/plain_bar.json", "milky.formula.json")),
                           ("fats.run.json", run_of("moulds/plain_bar.json", "own_fats.formula.json")),
                           ("twin.run.json", run_of("moulds/plain_bar.json", "twin_lye.formula.json")),
                           ("topping.run.json", dict(tips_run())),
                           ("own_fats.formula.json", OWN_FATS_FORMULA), ("milky.formula.json", milky_formula()),
                           ("whip.formula.json", whip)):
        files[name] = json.dumps(document, ensure_ascii=False)
    return files


USED_BY = {"meadow_base.formula.json": "plain_bars.run.json", "cloud_topping.formula.json": "topping.run.json",
           "twin_lye.formula.json": "twin.run.json", "own_fats.formula.json": "fats.run.json",
           "milky.formula.json": "milky.run.json", "whip.formula.json": "decorated.run.json",
           "studio.fats.json": "fats.run.json", "studio.tips.json": "tips.run.json"}


def asks_about(name):
    """What is asked about a spoilt file, as command words; the first is asked always, the others in turn."""
    if name.startswith("moulds/"):
        return [["gauge", name, "--json"], ["gauge", name, "--picture", "cup.svg"], ["plan", "mould.run.json", "--json"]]
    run = name if name.endswith(".run.json") else USED_BY[name]
    return [["plan", run, "--json"], ["plan", run, "--piece", "piece.glb"], ["sheet", run, "--html", "sheet.html"]]


OUTPUTS = ("sheet.html", "piece.glb", "cup.svg")


# ---- judging an answer -------------------------------------------------------------------------------------

RAW_CODES = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f]")


def refuse_constant(word):
    raise ValueError(f"{word} in JSON")


def negative_weights(value, key=""):
    if isinstance(value, dict):
        return any(negative_weights(v, k) for k, v in value.items())
    if isinstance(value, list):
        return any(negative_weights(v, key) for v in value)
    return key in ("g", "make_g", "fats_g", "naoh_g", "koh_g", "water_g", "mass_each_g") and isinstance(value, (int, float)) and value < 0


def fault_of(words, code, out, err, folder, names):
    """What is wrong with an answer, or nothing."""
    if code < 0:
        return f"killed by signal {-code}"
    if code not in (0, 1):
        return f"exit {code}: {err[:300]!r}"
    try:
        out, err = out.decode(), err.decode()
    except UnicodeDecodeError:
        return "answers in what is not UTF-8"
    shown = err if "--json" in words else out + err  # a program reads JSON, a terminal the rest
    if RAW_CODES.search(shown):
        return f"passes control codes on: {RAW_CODES.search(shown).group()!r}"
    if code == 1:
        if not err.endswith("\n") or err.count("\n") != 1 or not err.strip():
            return f"exit 1 with {err.count(chr(10))} lines of complaint: {err[:300]!r}"
        if not any(os.path.basename(name) in err for name in names if name.endswith(".json")):
            return f"complains without naming a file of the maker's: {err[:300]!r}"
        if len(err) > 2000:
            return f"complains in a line of {len(err)} characters: {err[:200]!r}"
        if out:
            return f"complains, and prints {out[:100]!r} too"
        written = [output for output in OUTPUTS if os.path.exists(f"{folder}/{output}")]
        return f"complains, and writes {written[0]} nevertheless" if written else None
    for output in OUTPUTS:
        if output in words and (not os.path.exists(f"{folder}/{output}") or os.path.getsize(f"{folder}/{output}") < 200):
            return f"exit 0 without {output}"
    if "--json" in words:
        try:
            answer = json.loads(out, parse_constant=refuse_constant)
        except ValueError as error:
            return f"exit 0 with what is not JSON: {error}"
        if negative_weights(answer):
            return "prints a weight below zero"
    elif "sheet" not in words and not out.strip():
        return "exit 0 without a word"
    return None


class Scene:
    """One folder a worker spoils files in, one after another."""

    def __init__(self, root, program, files):
        self.folder = tempfile.mkdtemp(prefix="hostile_values.")
        self.root, self.program, self.files = root, program, files
        os.mkdir(f"{self.folder}/moulds")
        os.symlink(f"{root}/meshes", f"{self.folder}/meshes")  # of the catalogue, from which files may be read
        for name, text in files.items():
            self.write(name, text)

    def write(self, name, text):
        with open(f"{self.folder}/{name}", "w", encoding="utf-8", errors="surrogatepass") as file:
            file.write(text)

    def ask(self, name, text, words):
        """The fault of the answer to `words` while the file holds `text`, or None."""
        self.write(name, text)
        names = [*self.files, *words]  # what is wrong in one file may show in the one that names it
        if "mould.run.json" in words:
            self.write("mould.run.json", json.dumps(run_of(name, "meadow_base.formula.json")))
        process = subprocess.Popen([self.program, *words], cwd=self.folder, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE,
                                   stderr=subprocess.PIPE, close_fds=False)
        try:
            out, err = process.communicate(timeout=HANG_S)
            fault = fault_of(words, process.returncode, out, err, self.folder, names)
        except subprocess.TimeoutExpired:
            process.kill()
            process.communicate()
            fault = f"hangs: no answer in {HANG_S} s"
        self.clear()
        self.write(name, self.files[name])
        return fault

    def clear(self):
        for output in OUTPUTS:
            if os.path.exists(f"{self.folder}/{output}"):
                os.remove(f"{self.folder}/{output}")


def cases(files, seed, each, everything):
    """(file, path, hostile value, command words), in a fixed order for a seed."""
    chance = random.Random(seed)
    for name, text in files.items():
        if name == "topping.run.json":  # as tips.run.json is
            continue
        document, asks = json.loads(text), asks_about(name)
        for path in nodes(document):
            fitting = hostiles_for(document, path)
            some = int(each) + (chance.random() < each - int(each))
            for hostile in fitting if everything else chance.sample(fitting, min(some, len(fitting))):
                yield name, path, hostile, asks[0 if chance.random() < 0.6 else chance.randrange(1, len(asks))]


def short(hostile):
    return hostile if len(hostile) < 60 else hostile[:40] + f"... ({len(hostile)} characters)"


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("root")
    parser.add_argument("program")
    parser.add_argument("--seed", type=int, default=20261125)
    parser.add_argument("--each", type=float, default=0.4)
    parser.add_argument("--all", action="store_true")
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--keep", help="where to put the spoilt file of each fault")
    given = parser.parse_args()
    root, program = os.path.abspath(given.root), os.path.abspath(given.program)
    files = scene_files(root)
    todo = list(cases(files, given.seed, given.each, given.all))
    print(f"{len(todo)} spoilt files, seed {given.seed}", flush=True)

    # Good files first: a scene that is refused as it stands would prove nothing.
    scene = Scene(root, program, files)
    faults = []
    for name in files:
        for words in asks_about(name):
            fault = scene.ask(name, files[name], words)
            answer = subprocess.run([program, *words], cwd=scene.folder, capture_output=True, timeout=HANG_S, text=True)
            scene.clear()
            is_asked = "far from usual" in answer.stderr  # a bead's tray is no mould for a piece
            if fault or (answer.returncode != 0 and not is_asked):
                faults.append(f"{name} as it stands, {' '.join(words)}: {fault or answer.stderr}")
                print("FAULT", faults[-1], flush=True)
    shutil.rmtree(scene.folder)

    def work(share):
        scene = Scene(root, program, files)
        found = []
        for number, (name, path, hostile, words) in share:
            text = mutated(files[name], path, hostile)
            fault = scene.ask(name, text, words)
            if fault:
                where = "/" + "/".join(map(str, path)) if path else "the whole file"
                found.append(f"{name}: {where} = {short(hostile)}, {' '.join(words)}: {fault}")
                print("FAULT", found[-1], flush=True)
                if given.keep:
                    os.makedirs(given.keep, exist_ok=True)
                    with open(f"{given.keep}/{number}_{os.path.basename(name)}", "w", errors="surrogatepass") as file:
                        file.write(text)
        shutil.rmtree(scene.folder)
        return found

    numbered = list(enumerate(todo))
    with ThreadPoolExecutor(given.jobs) as pool:
        shares = list(pool.map(work, [numbered[i::given.jobs] for i in range(given.jobs)]))
    faults += [fault for share in shares for fault in share]
    print(f"{len(faults)} faults")
    sys.exit(1 if faults else 0)


main()
