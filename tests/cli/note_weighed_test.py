"""What was weighed otherwise than planned is noted by its row: lots lose what was used, more lye than planned is shouted and asked
about, and nothing is recorded before she has said so."""
import json
import os
import re
import shutil
import tempfile

from checks import check, end, read, root, run, write

folder = tempfile.mkdtemp()
os.environ["SOURCE_DATE_EPOCH"] = "1796126400"  # 2026-12-01 12:00 UTC, by coreutils' date
shutil.copy(f"{root}/examples/meadow_base.formula.json", folder)
plain = read(f"{root}/examples/plain_bars.run.json")
plain.pop("money", None)
write(f"{folder}/plain_bars.run.json", plain)
write(f"{folder}/studio.json", {"schema": "brimwright.studio/1", "currency": "EUR"})
records = f"{folder}/records.sqlite"


def called(*words, status=0):
    result = run(*words, folder=folder)
    check(result.returncode == status, f"{words}: exit {result.returncode}\n{result.stdout}{result.stderr}")
    return result


def note(*words, status=0):
    return called("note", "plain_bars.run.json", "--batch", "1", *words, status=status)


def weighed(row, value, *words, status=0):
    return note("--set", f"weighed.{row}={value}", *words, status=status)


def refused(said, *words):
    """One line with these words, and the records are as they were."""
    before = open(records, "rb").read()
    result = note(*words, status=1)
    check(result.stderr.count("\n") == 1 and re.search(said, result.stderr) and not result.stdout, f"{words}: {result.stderr}")
    check(before == open(records, "rb").read(), f"{words}: the records changed")
    return result.stderr


def batch():
    return json.loads(note("--json").stdout)["batches"][-1]


def left(lot):
    answer = json.loads(called("stock", ".", "--json").stdout)
    return next(one["left"]["g"] for material in answer["materials"] for one in material["lots"] if one["lot"] == lot)


def traced(row):
    code = batch()["begun"]["code"]
    rows = json.loads(called("trail", ".", code, "--json").stdout)["batches"][0]["rows"]
    return next(one for one in rows if one["row"] == row)


called("stock", ".", "--bought", "olive oil", "--pack", "5 kg", "--lot", "OL-1", "--on", "2026-11-01")
called("stock", ".", "--bought", "NaOH", "--pack", "1 kg", "--lot", "NA-1", "--on", "2026-11-01")
plan = json.loads(called("plan", "plain_bars.run.json", "--json").stdout)
by_key = {row["key"]: row for vessel in plan["batches"][0]["weigh_out"] for row in vessel["rows"]}
olive, alkali = "pour.fats.olive", "pour.lye.naoh"
olive_g, alkali_g = by_key[olive]["g"], by_key[alkali]["g"]
note("--begin")
check((left("OL-1"), left("NA-1")) == (5000 - olive_g, 1000 - alkali_g), "as planned")

# ---- all that is weighed may be noted, and is told as planned until it is

rows = {row["key"]: row for row in batch()["rows"]}
check(set(rows) == {f"weighed.{key}" for key, row in by_key.items() if row["role"] not in ("batter", "lye_solution")}, f"rows: {sorted(rows)}")
check(rows[f"weighed.{olive}"]["planned"] == by_key[olive]["shown"] and "noted" not in rows[f"weighed.{olive}"], "nothing is noted")
check(batch()["as_weighed"] == [], "a batch as planned is told of")
check(f"weighed.{olive}" in note().stdout, "the keys are listed")

# ---- lots lose what was used, and get back what was not

weighed(olive, f"{olive_g + 10:g} g")
check(left("OL-1") == 5000 - olive_g - 10 and traced(olive)["weighed"] == {"g": olive_g + 10}, "more olive oil than planned")
weighed(olive, "")
check(left("OL-1") == 5000 - olive_g and traced(olive)["weighed"] == {"g": olive_g}, "taken back, it is as planned")
weighed("pour.lye.water", "240 g")  # of which there is no lot
check(traced("pour.lye.water")["unknown"] == {"g": 240}, "what has no lot")
check(batch()["as_weighed"] == [], "water changes no superfat")

# ---- more lye is shouted and asked about

effective = plan["batches"][0]["pour"]["superfat_percent"]["effective"]


def superfat_with(grams):
    """By lye reduction, superfat is 1 - alkali / (what the fats could take): so it goes with the alkali in proportion, as nothing in this
    formula is an acid."""
    return 100 - (100 - effective) * grams / alkali_g


said = refused("as it was weighed: superfat", "--set", f"weighed.{alkali}={alkali_g + 1:g} g")
shown = float(re.search(r"superfat (-?[\d.]+) %", said).group(1))
check(superfat_with(alkali_g + 1) - 0.11 < shown <= superfat_with(alkali_g + 1) + 0.01, f"{shown} for {superfat_with(alkali_g + 1)}")
check("--confirmed lye-heavy" in said or '--confirmed "lye-heavy"' in said, said)
refused("LYE-HEAVY", "--set", f"weighed.{alkali}={alkali_g * 1.2:g} g")
refused("LYE-HEAVY", "--set", f"weighed.{alkali}={alkali_g * 1.2:g} g", "--set", "base.trace=10 min")
refused("none of the values", "--set", "base.trace=10 min", "--confirmed", "lye-heavy")
refused("is usual", "--set", f"weighed.{alkali}={alkali_g * 10:g} g", "--confirmed", "lye-heavy")
check(left("NA-1") == 1000 - alkali_g, "what was asked about is taken")
result = weighed(alkali, f"{alkali_g * 1.2:g} g", "--confirmed", "lye-heavy")
check("!! LYE-HEAVY" in result.stdout, result.stdout)
check(abs(left("NA-1") - (1000 - alkali_g * 1.2)) < 1e-6, "the lot of the alkali")
told = batch()["as_weighed"]
check(len(told) == 1 and told[0]["severity"] == "danger" and "LYE-HEAVY" in told[0]["text"], told)
shown = float(re.search(r"superfat (-?[\d.]+) %", told[0]["text"]).group(1))
check(superfat_with(alkali_g * 1.2) - 0.11 < shown <= superfat_with(alkali_g * 1.2) + 0.01, f"{shown} for {superfat_with(alkali_g * 1.2)}")
check("!! LYE-HEAVY" in note().stdout, "it is told whenever the batch is looked at")
weighed(alkali, "")
check(batch()["as_weighed"] == [] and left("NA-1") == 1000 - alkali_g, "taken back")
weighed(alkali, f"{alkali_g - 1:g} g")  # less lye is no danger
check(batch()["as_weighed"][0]["severity"] == "note", batch()["as_weighed"])
weighed(alkali, "")

# ---- slips, and lots that have too little

refused("did you mean weighed.pour.fats.olive", "--set", "weighed.pour.fats.oliv=350 g")
refused("is usual", "--set", f"weighed.{olive}={olive_g * 10:g} g")
called("stock", ".", "--counted", "OL-1=0 g")
refused("are needed, and only", "--set", f"weighed.{olive}={olive_g + 20:g} g")
weighed(olive, f"{olive_g + 20:g} g", "--beyond-stock", "OL-1")
check(left("OL-1") == -20, "more than was recorded was taken")

# ---- where the run is another by now, its superfat cannot be told

write(f"{folder}/plain_bars.run.json", {**plain, "sell": 30})
refused("cannot be told", "--set", f"weighed.{alkali}={alkali_g + 1:g} g")
weighed(olive, "")
shutil.rmtree(folder)
end("what was really weighed is taken from its lots, and lye is asked about")
