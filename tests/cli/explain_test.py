"""`plan RUN --explain`: each sum that is told, worked out here with the figures in it, comes to the figure that the plan has
at that place; no figure that a maker weighs by is mute; and a name is found, or the nearest told."""
import json
import os
import re
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from math import ceil, floor, pi

root, program = os.path.abspath(sys.argv[1]), sys.argv[2]
sys.path.insert(0, f"{root}/tests/laws")
from random_runs import RunMaker  # noqa: E402

folder = tempfile.mkdtemp()
failures = []


# ---- arithmetic in intervals: a figure shown to so many decimals may be half of the last one more or less

class Between:
    def __init__(self, low, high):
        self.low, self.high = low, high

    def __add__(self, other):
        return Between(self.low + other.low, self.high + other.high)

    def __sub__(self, other):
        return Between(self.low - other.high, self.high - other.low)

    def __mul__(self, other):
        ends = [a * b for a in (self.low, self.high) for b in (other.low, other.high)]
        return Between(min(ends), max(ends))

    def __truediv__(self, other):
        assert other.low > 0 or other.high < 0, "divides by what may be nothing"
        return self * Between(1 / other.high, 1 / other.low)


# Unit: in centimetres, grams and seconds, and the decimals that are shown of it.
UNITS = {"g": (1, 3), "mg": (1e-3, 4), "g/ml": (1, 5), "ml": (1, 3), "cm²": (1, 4), "mm": (0.1, 3), "%": (0.01, 4), "mg/g": (1e-3, 2),
         "g/mol": (1, 3), "ml/kg": (1e-3, 5), "mg/cm²": (1e-3, 5), "s": (1, 9), "EUR": (1, 9), "": (1, 5)}
TOKEN = re.compile(r"\s*(?:(?P<number>-?\d+(?:\.\d+)?)(?: ?(?P<unit>mg/cm²|g/mol|mg/g|ml/kg|g/ml|cm²|mg|ml|mm|EUR|%|g|s)(?![\w/]))?|(?P<pi>π)|(?P<sign>[-+−×÷()]))")


def figure(number, unit):
    factor, decimals = UNITS[unit]
    # Counts are exact; a mass of whole grams need not be.
    half = 0 if unit in ("", "s", "EUR") and "." not in number else 0.5001 * 10**-max(decimals, len(number.partition(".")[2]))
    if unit == "g":
        half *= 2  # of alkali the last digit is cut
    return Between((float(number) - half) * factor, (float(number) + half) * factor)


def worked_out(text):
    """The value of a sum; ValueError for what is none."""
    tokens, at = [], 0
    while at < len(text):
        match = TOKEN.match(text, at)
        if not match:
            raise ValueError(f"cannot read {text[at:]!r}")
        at = match.end()
        if match["number"]:
            tokens.append(figure(match["number"], match["unit"] or ""))
        else:
            tokens.append(Between(pi, pi) if match["pi"] else match["sign"])

    def factor():
        token = tokens.pop(0)
        if token != "(":
            if not isinstance(token, Between):
                raise ValueError(f"{token} stands where a figure should")
            return token
        value = terms()
        if tokens.pop(0) != ")":
            raise ValueError("a bracket stays open")
        return value

    def product():
        value = factor()
        while tokens and tokens[0] in ("×", "÷"):
            value = value * factor() if tokens.pop(0) == "×" else value / factor()
        return value

    def terms():
        value = product()
        while tokens and tokens[0] in ("+", "−"):
            value = value + product() if tokens.pop(0) == "+" else value - product()
        return value

    value = terms()
    if tokens:
        raise ValueError(f"{tokens[0]} is left over")
    return value


def rounded(value, how):
    match = re.fullmatch(r"(up to|down to|to the nearest) (?:(a whole number|whole number)|([\d.]+) (?:g|[A-Z]{3}))", how)
    if not match:
        raise ValueError(f"rounded {how!r}")
    step = float(match[3] or 1)
    # What is within 1e-9 of a whole number counts as that (src/units/rounding.h).
    way = {"up to": lambda x: ceil(x - 1e-9 * max(1, abs(x))), "down to": lambda x: floor(x + 1e-9 * max(1, abs(x))), "to the nearest": lambda x: floor(x + 0.5)}[match[1]]
    return Between(step * way(value.low / step), step * way(value.high / step))


def unit_of(place):
    """What a figure of the plan has to be multiplied with to be as sums are: shares come in per cent."""
    return 0.01 if "percent" in place else 1


def shown_to(place, value):
    """Half of the last decimal that the plan shows of it, or all of it where it is cut."""
    if "percent" in place:
        return 0.01 if "overrun" not in place else 0.05
    if place.startswith("label."):
        return 0.0051  # to a hundredth of a gram
    if place.startswith("piece."):
        return 0.051 if place in ("piece.fresh_g", "piece.cured_g") else 0.0051
    if place.startswith("cut.") and place.endswith("_g"):
        return 0.051
    return 0.00005 if "g_per_ml" in place or "each_g" in place and place.startswith(("dust", "batches")) and ".dust." in "." + place else 0.00101


def at(document, place):
    for key in place.split("."):
        document = document[int(key)] if isinstance(document, list) else document[key]
    return document


def hold(run, plan, working):
    """What is told against what is."""
    place = working["of"]
    try:
        told = at(plan, place)
    except (KeyError, IndexError, ValueError):
        failures.append(f"{run}: {place} is no place in the plan")
        return
    if not working["formula"] or not (working["with"] or working.get("sum")):
        failures.append(f"{run}: {place} tells nothing")
    if "sum" not in working:
        return
    try:
        value = worked_out(working["sum"])
        exact = value
        if "rounded" in working:
            value = rounded(value, working["rounded"])
    except (ValueError, AssertionError, IndexError) as error:
        failures.append(f"{run}: {place}: {working['sum']}: {error}")
        return
    factor = unit_of(place)
    told, off = float(told) * factor, shown_to(place, told) * factor + 1e-9
    if not value.low - off <= told <= value.high + off:
        failures.append(f"{run}: {place}: {working['sum']} ({working.get('rounded', '')}) comes to {exact.low:.6f} .. {exact.high:.6f}, the plan has {told:.6f}")
    # A sum that holds whatever the figure is, holds nothing.
    # A batch's weight is printed to a milligram; of many batches that adds up.
    in_all = [int(count) for count in re.findall(r"(\d+) × ", working["sum"])] if working["formula"].startswith("in all") else []
    if exact.high - exact.low > max(0.02 + 0.02 * abs(told), 0.0021 * sum(in_all)):
        failures.append(f"{run}: {place}: {working['sum']} is good to {exact.high - exact.low:.4f} only")


# What must not be mute, wherever the plan has it.
BATTER = r"(pour|pipe|batches\.\d+\.pour|batches\.\d+\.pipe|batches\.\d+\.pipe\.whippings\.\d+)"
TELLS = [re.compile(f"{pattern}$") for pattern in (
    r"pieces\.(make|fillings|batches)", BATTER + r"\.(volume_each_ml|mass_each_g|density_g_per_ml|plain_density_computed_g_per_ml)",
    BATTER + r"\.(in_pieces_g|lost_g|make_g|fats_g|water_g|lye_strength_percent|water_to_pure_alkali|water_percent_of_fats)",
    BATTER + r"\.(superfat_percent\.effective|ingredients\.\d+\.g|heat\.peak_c|heat\.cooling|brimful_ml|ml_per_mm)",
    BATTER + r"\.layers\.\d+\.(g|mass_each_g|colours\.\d+\.g)",
    BATTER + r"\.(visible_each_ml|in_headspace_each_ml|overrun_percent|pieces_now|casts_now|loads|piping_s|readings|limits)",
    BATTER + r"\.visible_by\.((trials|beads|envelope)_ml|moves\.\d+\.volume_ml)",
    r"(batches\.\d+\.)?lye_pot\.(alkalis\.\d+\.g|water_g|lye_g|strength_percent|full_pot_g|left_g|heat\.peak_c)",
    r"(batches\.\d+\.)?lye_pot\.shares\.\d+\.(lye_g|top_up_g|superfat_percent)", r"(batches\.\d+\.)?bottles\.\d+\.parts\.\d+\.g",
    r"(batches\.\d+\.)?dust\.\d+\.(g|each_g)", r"decorations\.\d+\.(casts|mass_each_g|make_g|on_top|buried)", r"cut\.(bars_each|offcuts_ml|offcuts_g)",
    r"piece\.(fresh_g|cured_g|label_g|size|lightest\.(fresh_g|cured_g)|cost\.(amount|total))",
    r"label\.net_quantity\.lightest_g")]


def figures(document, place=""):
    """Every place of the plan that has something in it."""
    if document is None or document == []:
        return
    yield place
    pairs = document.items() if isinstance(document, dict) else enumerate(document) if isinstance(document, list) else ()
    for key, below in pairs:
        yield from figures(below, f"{place}.{key}" if place else str(key))


def ask(*words, cwd=root):
    return subprocess.run([program, "plan", *words], cwd=cwd, capture_output=True, text=True, timeout=120)


def look_at(run):
    plan, how = ask(run, "--json"), ask(run, "--explain", "--json")
    if plan.returncode == 1:
        return 0  # a random run that cannot be made
    if how.returncode != 0:
        failures.append(f"{run}: {how.stderr}")
        return 0
    plan, how = json.loads(plan.stdout), json.loads(how.stdout)
    told = {}
    for working in how["how"]:
        if working["of"] in told:
            failures.append(f"{run}: {working['of']} is told twice")
        told[working["of"]] = working
        hold(run, plan, working)
    mute = [place for place in figures(plan) if place not in told and any(pattern.match(place) for pattern in TELLS)]
    failures.extend(f"{run}: {place} is mute" for place in mute)
    return sum("sum" in working for working in how["how"])


def random_runs(count):
    for i in range(count):
        os.mkdir(f"{folder}/{i}")
        for name, document in RunMaker(f"20261126:{i}").run().items():
            with open(f"{folder}/{i}/{name}", "w") as file:
                json.dump(document, file)
        yield f"{folder}/{i}/chance.run.json"


# This arithmetic is no good if it cannot tell a wrong sum: two known ones, and what no sum is.
for text, value in (("46 ÷ (1 − 4 %)", 47.9166667), ("(24.1 g + 25 g) ÷ 2 ÷ (80.5 g ÷ 120 ml)", 36.5962733), ("π ÷ 12 × 40 mm × 40 mm × 30 mm", 12.5663706),
                    ("(100 g × 190.09 ÷ 1000 × (1 − 5 %)) × 39.997 g/mol ÷ 56.105 g/mol ÷ 99 %", 13.0037)):
    out = worked_out(text)
    if not out.low - 1e-3 <= value <= out.high + 1e-3 or out.high - out.low > 1e-2:
        failures.append(f"this test reads {text} as {out.low} to {out.high}")

examples = sorted(f"examples/{name}" for name in os.listdir(f"{root}/examples") if name.endswith(".run.json"))
with ThreadPoolExecutor(os.cpu_count()) as pool:
    sums = sum(pool.map(look_at, [*examples, *random_runs(60)]))

# ---- for people
spring = "examples/spring_cups.run.json"
done = ask(spring, "--explain", "pour.make_g")
if done.returncode != 0 or not done.stdout.startswith("pour.make_g = ") or "batches.0" in done.stdout or "×" not in done.stdout:
    failures.append(f"pour.make_g: {done.stdout}{done.stderr}")
done = ask(spring, "--explain", "piece.cost")
if [line.split(" = ")[0] for line in done.stdout.splitlines() if line.startswith("piece")] != ["piece.cost.total", "piece.cost.amount"]:
    failures.append(f"piece.cost: {done.stdout}")
listed = ask(spring, "--explain")
every = json.loads(ask(spring, "--explain", "--json").stdout)["how"]
if [line.split()[0] for line in listed.stdout.splitlines()[2:]] != [working["of"] for working in every]:
    failures.append("the list for people is not the list of the JSON")
given = {one["value"] for working in every for one in working["with"]}
failures += [f"a rate is not told as it was typed: {rate}" for rate in ("1 tsp/lb of fats", "4 g/kg of fats", "6 g/kg of fats") if rate not in given]
done = ask(spring, "--explain", "pour.mak_g")
if done.returncode != 1 or done.stdout or done.stderr.count("\n") != 1 or 'did you mean "pour.make_g"?' not in done.stderr:
    failures.append(f"a slip: {done.returncode} {done.stdout}{done.stderr}")

print("\n".join(failures) or f"{sums} sums come to what the plans have")
sys.exit(bool(failures))
