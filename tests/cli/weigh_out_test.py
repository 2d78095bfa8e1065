"""What is weighed out, vessel by vessel: its rows come to the plan's masses and are those of the sheet, to the word; water stands
before the alkali, which is never shown above what it weighs; and a row keeps its key under any number of pieces."""
import html
import json
import os
import re
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

root, program = os.path.abspath(sys.argv[1]), sys.argv[2]
sys.path.insert(0, f"{root}/tests/laws")
from random_runs import RunMaker  # noqa: E402

folder = tempfile.mkdtemp()
failures = []
OUNCE_G = 28.349523125  # exact: 453.59237 g / 16
MILLIGRAM = 0.001


def check(condition, what):
    if not condition:
        failures.append(what)


def ask(*words):
    done = subprocess.run([program, *words], capture_output=True, text=True, timeout=120)
    return done.stdout if done.returncode == 0 else None


def plan_of(run, *words):
    answer = ask("plan", run, "--json", *words)
    return answer and json.loads(answer)


def grams(shown):
    number, unit = shown.split()
    return float(number) * {"g": 1, "oz": OUNCE_G}[unit]


def weighed(rows):
    return sum(row["g"] for row in rows)


def agree(got, wanted, rows, what):
    """Each figure is to the milligram; of alkali the last one is cut."""
    check(abs(got - wanted) <= MILLIGRAM * (rows + 1), f"{what}: {got} g, by the plan {wanted} g")


def batters(batch):
    yield "pour", batch["pour"], 1
    for i, whipping in enumerate(batch.get("pipe", {}).get("whippings", [])):
        yield "pipe" if i == 0 else f"pipe.{i + 1}", whipping, whipping["count"]


def into(batter, where):
    return [one for one in batter["ingredients"] if one["goes_into"] == where]


def masses(plan, batch, vessels, name):
    """The rows of each vessel come to what the plan weighs for it."""
    for key, batter, times in batters(batch):
        its = {kind: vessels.get(f"{key}.{kind}") for kind in ("fats", "lye", "batter", "share")}
        of = {kind: vessel["rows"] if vessel else [] for kind, vessel in its.items()}
        for kind in ("fats", "batter"):
            agree(weighed(of[kind]), weighed(into(batter, kind)), 2 * len(of[kind]), f"{name}: {key}.{kind}")
        lye = into(batter, "lye")
        if batch["lye_pot"]:
            check(its["lye"] is None, f"{name}: {key} has a lye beside the pot")
            from_pot = [row for row in of["share"] if row["role"] == "lye_solution"]
            check(len(from_pot) == 1, f"{name}: {key} takes {len(from_pot)} shares")
            agree(weighed(row for row in of["share"] if row["role"] == "additive" or row["role"] == "liquid"),
                  weighed(one for one in lye if one["role"] not in ("water", "alkali")), len(lye), f"{name}: {key} into its share")
        else:
            agree(weighed(of["lye"]), weighed(lye), 2 * len(of["lye"]), f"{name}: {key}.lye")
            agree(weighed(of["fats"]) + weighed(of["lye"]) + weighed(of["batter"]), batter["make_g"],
                  2 * len(batter["ingredients"]), f"{name}: {key}, all of it")
            check(bool(its["share"]) == its["lye"].get("day_before", False), f"{name}: {key} made yesterday is not taken up today")
            if its["share"]:
                agree(weighed(of["share"]), weighed(lye), len(lye), f"{name}: {key} made yesterday")
        for vessel in filter(None, its.values()):
            check(vessel.get("times", 1) == times, f"{name}: {vessel['key']} is weighed {vessel.get('times', 1)} times, not {times}")
            check(vessel["batter"] == key[:4], f"{name}: {vessel['key']} is of {vessel['batter']}")
        if its["fats"]:
            set_aside = sum(one.get("set_aside_for_colours_g", 0) for one in batter["ingredients"])
            agree(its["fats"]["total_g"], weighed(of["fats"]) - set_aside, 2 * len(of["fats"]), f"{name}: {key}.fats without what is set aside")
            agree(of["fats"][-1]["running_g"], its["fats"]["total_g"], 1, f"{name}: {key}.fats, the last running total")
    if batch["lye_pot"]:
        pot, rows = batch["lye_pot"], vessels["lye-pot"]["rows"]
        agree(weighed(rows), pot["water_g"] + weighed(pot["alkalis"]), 2 * len(rows), f"{name}: the pot")
        shares = sum(row["g"] * vessel.get("times", 1) for vessel in vessels.values() if vessel["vessel"] == "share"
                     for row in vessel["rows"] if row["role"] == "lye_solution")
        agree(shares + pot["left_g"], pot["lye_g"], 2 * len(pot["shares"]), f"{name}: the shares and what is left")
        top_ups = sum(row["g"] * vessel.get("times", 1) for vessel in vessels.values() if vessel["vessel"] == "share"
                      for row in vessel["rows"] if row["role"] == "water")
        agree(top_ups, sum(share["top_up_g"] for share in pot["shares"]), len(pot["shares"]), f"{name}: water into the shares")
    layers = batch["pour"].get("layers", [])
    rows = vessels["pour.layers"]["rows"] if layers else []
    agree(weighed(rows), sum(layer["g"] + weighed(layer["colours"]) for layer in layers), 2 * len(rows), f"{name}: layers")
    if batch["dust"]:
        agree(weighed(vessels["dust"]["rows"]), weighed(batch["dust"]), len(batch["dust"]), f"{name}: dust")
    melts = [vessel for vessel in vessels.values() if vessel["vessel"] == "melt"]
    is_first = 1 in batch["numbers"]
    agree(sum(weighed(vessel["rows"]) for vessel in melts), sum(one["make_g"] for one in plan["decorations"]) if is_first else 0,
          len(melts), f"{name}: melted")


def order(vessels, name):
    """Alkali goes into what is wet, and what cools first comes after it; what stands overnight is made before all else."""
    for vessel in vessels:
        if vessel["vessel"] not in ("lye", "lye_pot"):
            continue
        rows = vessel["rows"]
        alkalis = [i for i, row in enumerate(rows) if row["role"] == "alkali"]
        check(alkalis, f"{name}: {vessel['key']} has no alkali")
        wet = [i for i, row in enumerate(rows) if row["role"] in ("water", "ice", "liquid")]
        ready = [i for i in alkalis if rows[i]["name"].startswith(("NaOH solution, ", "KOH solution, "))]  # stands ready in the studio
        check((wet or ready == alkalis) and max(wet, default=-1) < alkalis[0], f"{name}: {vessel['key']}: alkali stands at {alkalis}, what is wet at {wet}")
        check(ready == alkalis[len(alkalis) - len(ready):], f"{name}: {vessel['key']}: dry alkali after a solution")
        for i, row in enumerate(rows):
            check(("into the cooled lye" in row.get("note", "")) == (i > alkalis[-1]), f"{name}: {row['key']} at {i}, alkali at {alkalis}")
        orders = " ".join(words["text"] for words in vessel["words"] if words["is_order"])
        into = "never water into alkali" if len(ready) < len(alkalis) else "never water into solution" if wet else "First stir the strong solution"
        check(into in orders, f"{name}: {vessel['key']} does not say which goes into which")
        check(not ready or "stir the strong solution" in orders, f"{name}: {vessel['key']}: the solution is not stirred")
    early = [bool(vessel.get("day_before")) for vessel in vessels]
    check(early == sorted(early, reverse=True), f"{name}: the day before does not come first")


def shown(vessels, name):
    for vessel in vessels:
        total = 0
        for row in vessel["rows"]:
            for text in (row["shown"], row["beside"]):
                if row["role"] == "alkali":
                    check(grams(text) <= row["g"] + MILLIGRAM, f"{name}: {row['key']} weighs {row['g']} g and is shown as {text}")
                # To the step; what is topped up is up in either unit.
                near = row["step_g"] * (2 if row["role"] == "lye_solution" else 1) + MILLIGRAM
                check(abs(grams(text) - row["g"]) <= near, f"{name}: {row['key']}: {text} is not {row['g']} g")
            if "running_g" in row and vessel["vessel"] in ("lye", "lye_pot", "share"):
                total += row["g"]
                agree(row["running_g"], total, len(vessel["rows"]), f"{name}: {row['key']} running")
                check(grams(row["running_shown"]) <= row["running_g"] + MILLIGRAM, f"{name}: {row['key']} runs above {row['running_g']}")


ROW = re.compile(r'<td class="what"><b>(.*?)</b>.*?<td class="weight">(.*?)</td><td class="sum">(.*?)</td>', re.S)


def sheet_rows(run, number, *words):
    page = ask("sheet", run, "--batch", str(number), *words)
    for what, weight, sums in ROW.findall(page):
        beside, _, running = sums.partition("<br>")
        yield tuple(html.unescape(re.sub("<[^>]*>", "", text)) for text in (what, weight, beside, running))


def on_the_sheet(run, batch, name, *words):
    rows = [(row["name"], row["shown"], row["beside"], row.get("running_shown", "")) for vessel in batch["weigh_out"] for row in vessel["rows"]]
    printed = list(sheet_rows(run, batch["numbers"][0], *words))
    check(printed == rows, f"{name}: on the sheet {[row for row in printed if row not in rows]}, weighed {[row for row in rows if row not in printed]}")


def keys_of(batch):
    return {vessel["key"]: {row["key"] for row in vessel["rows"]} for vessel in batch["weigh_out"]}


def steady(batch, other, name):
    """A row keeps its key; those of rounding alone (ice, a little water, a trace of oil) may come and go."""
    one, two = keys_of(batch), keys_of(other)
    for vessel in one.keys() & two.keys():
        moved = {key for key in one[vessel] ^ two[vessel] if not re.search(r"\.(ice|water|.*-to-disperse-the-.*)$", key)}
        check(not moved, f"{name}: {moved} with another number of pieces")


def looked_at(run, *words):
    """How many rows were."""
    name = os.path.basename(os.path.dirname(run)) + "/" + os.path.basename(run)
    plan = plan_of(run, *words)
    if not plan:
        return 0
    rows, marks = 0, {}
    for batch in plan["batches"]:
        vessels = batch["weigh_out"]
        keys = [vessel["key"] for vessel in vessels] + [row["key"] for vessel in vessels for row in vessel["rows"]]
        check(len(set(keys)) == len(keys), f"{name}: keys twice: {sorted(key for key in keys if keys.count(key) > 1)}")
        check(all(re.fullmatch(r"[A-Za-z0-9.-]+", key) for key in keys), f"{name}: {keys}")
        masses(plan, batch, {vessel["key"]: vessel for vessel in vessels}, name)
        order(vessels, name)
        shown(vessels, name)
        on_the_sheet(run, batch, name, *words)
        rows += sum(len(vessel["rows"]) for vessel in vessels)
        marks[batch["mark"]] = vessels
    check(len(marks) == len(plan["batches"]), f"{name}: batches of different weights have one mark")
    check([batch["mark"] for batch in plan_of(run, *words)["batches"]] == list(marks), f"{name}: the same plan, another mark")
    other = plan_of(run, "--sell", str(plan["pieces"]["sell"] + 7))
    if other:
        steady(plan["batches"][0], other["batches"][0], name)
        for batch in other["batches"]:
            check((batch["mark"] in marks) == (batch["weigh_out"] in marks.values()), f"{name}: a mark does not tell its weights")
    return rows


def write(name, document):
    with open(f"{folder}/{name}", "w") as file:
        json.dump(document, file)
    return f"{folder}/{name}"


def shipped(name):
    with open(f"{root}/examples/{name}") as file:
        return json.load(file)


def fixtures():
    """What no example weighs: a shared pot in whippings, a lye of ice and milk, names that are hard to tell apart."""
    base, topping, spring = (shipped(name) for name in ("meadow_base.formula.json", "cloud_topping.formula.json", "spring_cups.run.json"))
    write("meadow_base.formula.json", base)
    write("cloud_topping.formula.json", {**topping, "alkali": base["alkali"]})
    yield write("pot.run.json", {**spring, "lye_pot": {"pot_tare": "312 g"}, "batch": {"pieces": 24, "whippings": 2}})
    yield write("two_sizes.run.json", {**spring, "batch": {"pieces": 25, "whippings": 2}})
    extras = [{"name": name, "rate": f"{0.4 + i / 10:.1f} % of fats", "goes_into": where, **more} for i, (name, where, more) in enumerate([
        ("Seide", "batter", {}), ("絹", "batter", {}), ("絲", "batter", {}), ("water", "lye", {}), ("A+B", "batter", {}), ("a b", "batter", {}),
        ("table salt", "lye", {"stirred_in": "once the lye has cooled"}), ("sodium lactate", "lye", {"stirred_in": "before the alkali"}),
        ("white kaolin", "fats", {}), ("white kaolin", "fats", {})])]
    milk = [{"name": "goat milk", "replaces": "30 % of water", "goes_into": "lye", "frozen": True, "composition": "goat milk"}]
    write("crowded.formula.json", {**base, "additives": base["additives"] + extras, "liquids": milk})
    pour = {**spring["pour"], "formula": "crowded.formula.json", "layers": [{"name": "Rose", "parts": 1, "colours": [
        {"name": "mica", "rate": "1 g/kg of fats"}, {"name": "Mica", "rate": "2 g/kg of fats"}]}, {"name": "rose", "parts": 1}]}
    scales = {"large": {"step": "0.1 oz", "most": "11 lb"}, "fine": {"step": "0.01 oz", "most": "7 oz"}}
    yield write("crowded.run.json", {**spring, "pour": pour})
    yield write("crowded_in_ounces.run.json", {**spring, "pour": pour, "scales": scales})


def of_chance(count):
    for i in range(count):
        os.mkdir(f"{folder}/{i}")
        for name, document in RunMaker(f"20261130:{i}").run().items():
            write(f"{i}/{name}", document)
        yield f"{folder}/{i}/chance.run.json"


examples = sorted(f"{root}/examples/{name}" for name in os.listdir(f"{root}/examples") if name.endswith(".run.json"))
own = list(fixtures())
with ThreadPoolExecutor(2) as pool:
    for run, rows in zip([*examples, *own], pool.map(looked_at, [*examples, *own])):
        check(rows > 0, f"{run} was refused")
    by_chance = sum(rows > 0 for rows in pool.map(looked_at, of_chance(60)))
check(by_chance >= 30, f"only {by_chance} runs of chance were planned")

# What no law above says of the fixtures.
pot = plan_of(own[0])["batches"][0]["weigh_out"]
check([vessel["key"] for vessel in pot if vessel.get("day_before")][-1] == "lye-pot", "the pot is made the day before")
crowded = plan_of(own[2])["batches"][0]["weigh_out"]
lye = next(vessel for vessel in crowded if vessel["key"] == "pour.lye")
names = [row["name"] for row in lye["rows"]]
check(names.index("sodium lactate") < names.index("NaOH, 99 % pure") < names.index("table salt"), f"as the formula says: {names}")
check(names[-2:] == ["sodium lactate, 60 % solution", "table salt"], f"into the cooled lye: {names}")
check(any(row["role"] == "ice" for row in lye["rows"]) and any("frozen" in row.get("note", "") for row in lye["rows"]), f"ice and frozen milk: {lye['rows']}")
layers = next(vessel for vessel in crowded if vessel["key"] == "pour.layers")
check([row.get("adding") for row in layers["rows"]] == [None, "Rose", "Rose", None], f"colours go into their layer: {layers['rows']}")

print("\n".join(failures[:40]) or f"{len(examples)} examples, {len(own)} fixtures and {by_chance} runs of chance are weighed out as planned")
sys.exit(bool(failures))
