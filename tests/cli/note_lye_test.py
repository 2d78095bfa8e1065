"""Lye that is not weighed as alkali: what each batter really had out of a shared pot, of yesterday's lye or out of a day's pot is noted
by its row, and each superfat is reckoned here from stoichiometry alone. Bought decorations that were really used are counted."""
import hashlib
import json
import os
import re
import shutil
import tempfile

from checks import check, end, read, run, write

folder = tempfile.mkdtemp()
os.environ["SOURCE_DATE_EPOCH"] = "1796126400"  # 2026-12-01 12:00 UTC, by coreutils' date
koh_per_naoh = 56.105 / 39.997  # IUPAC 2021 abridged atomic weights, g/mol
values = {"olive": 190, "coconut": 257, "castor": 181, "palm": 200}


def formula(name, superfat, shares, strength):
    return {"schema": "brimwright.formula/2", "name": name,
            "fats": [{"fat": fat, "share": f"{share} %", "saponification_value": {"low": values[fat] - 1, "typical": values[fat], "high": values[fat] + 1}}
                     for fat, share in shares.items()],
            "superfat": superfat, "alkali": [{"alkali": "NaOH", "share": "100 %", "purity": "100 %", "purity_range": ["99.9 %", "100 %"]}],
            "water": {"lye_strength": strength}, "pour_temperature": "35 °C"}


write(f"{folder}/base.formula.json", formula("Base of the test", "6 %", {"olive": 60, "coconut": 30, "castor": 10}, "33 %"))
write(f"{folder}/top.formula.json", formula("Topping of the test", "7 %", {"coconut": 50, "palm": 50}, "30 %"))
write(f"{folder}/mould.json", {"schema": "brimwright.mould/2", "name": "Bar", "cavities": 12,
                               "shape": {"kind": "block", "length": "80 mm", "width": "50 mm", "height": "25 mm"}})
bars = {"schema": "brimwright.run/2", "name": "Made", "sell": 12, "spoilage": "0 %",
        "pour": {"mould": "mould.json", "formula": "base.formula.json", "line": {"below_brim": "2 mm"}},
        "losses": {"pour": {"overpour": "1 %", "pot": "20 g", "jugs": "0 g", "test_piece": "0 g"}},
        "scales": {"large": {"step": "1 g", "most": "5 kg"}, "fine": {"step": "0.1 g", "most": "500 g"}}}
topped = {**bars, "pipe": {"formula": "top.formula.json", "fills_headspace": "0 %", "whip": {"holds": "100 ml", "net": "70 g"},
                           "envelope": {"form": "cone", "diameter": "40 mm", "height": "30 mm", "soap_share": "80 %"}},
          "losses": {**bars["losses"], "pipe": {"bag": "10 g", "bowl_and_whisk": "20 g"}}}
write(f"{folder}/pot.run.json", {**topped, "lye_pot": {}})
write(f"{folder}/twice.run.json", {**topped, "lye_pot": {}, "batch": {"whippings": 2}})
warmth = {"room_at": "20 °C", "water_at": "8 °C", "lye_used_at": "8 °C", "fats_at": "35 °C"}
write(f"{folder}/cold.run.json", {**bars, "pour": {**bars["pour"], "temperatures": warmth}})
write(f"{folder}/bars.run.json", bars)
star = {"name": "Star", "material": "sugar star", "bought": {"weighs": "2 g"}, "per_piece": 1, "spares": "0 %"}
write(f"{folder}/stars.run.json", {**bars, "decorations": [star]})


def called(*words, status=0):
    result = run(*words, folder=folder)
    check(result.returncode == status, f"{words}: exit {result.returncode}\n{result.stdout}{result.stderr}")
    return result


def note(which, *words, status=0):
    return called("note", f"{which}.run.json", "--batch", "1", *words, status=status)


def noted(which, weights, *words, status=0):
    sets = [part for row, value in weights.items() for part in ("--set", f"{row}={value}")]
    return note(which, *sets, *words, status=status)


def refused(which, said, weights, *words):
    """One line with these words, and the records are as they were."""
    before = open(f"{folder}/records.sqlite", "rb").read()
    result = noted(which, weights, *words, status=1)
    check(result.stderr.count("\n") == 1 and re.search(said, result.stderr) and not result.stdout, f"{weights}: {result.stderr}")
    check(before == open(f"{folder}/records.sqlite", "rb").read(), f"{weights}: the records changed")
    return result.stderr


def batch(which):
    return json.loads(note(which, "--json").stdout)["batches"][-1]


def rows_of(which):
    plan = json.loads(called("plan", f"{which}.run.json", "--json").stdout)
    return {row["key"]: row["g"] for vessel in plan["batches"][0]["weigh_out"] for row in vessel["rows"]}, plan["batches"][0]


def left(lot):
    answer = json.loads(called("stock", ".", "--json").stdout)
    return next(one["left"] for material in answer["materials"] for one in material["lots"] if one["lot"] == lot)


def take(rows, batter):
    """What its fats can take, in grams of NaOH."""
    return sum(rows.get(f"{batter}.fats.{fat}", 0) * value / 1000 for fat, value in values.items()) / koh_per_naoh


def told_superfat(text, name):
    found = re.search(rf"{name} as it was weighed.*?superfat (-?[\d.]+) %", text)
    check(found, f"nothing is told of {name}: {text}")
    return float(found.group(1)) if found else 0


def agrees(text, name, expected):
    """Told down to a tenth of a point: never more than it is."""
    shown = told_superfat(text, name)
    check(expected - 0.11 < shown < expected + 0.01, f"{name}: {shown} told, {expected:.3f} on paper")


def remarks(which):
    return " ".join(one["text"] for one in batch(which)["as_weighed"])


def base(row):
    return f"weighed.pour.{row}"


# ---- a pot that is shared: each batter its share, as weighed

called("stock", ".", "--bought", "NaOH", "--pack", "1 kg", "--lot", "NA-1", "--on", "2026-11-01")
note("pot", "--begin")
rows, planned = rows_of("pot")
pot, naoh = planned["lye_pot"]["lye_g"], rows["lye-pot.naoh"]
shares = {one: rows[f"{one}.share.lye-solution"] for one in ("pour", "pipe")}
check(left("NA-1") == {"g": 1000 - naoh}, "the pot's alkali is taken when it is begun")
known = {row["key"]: row["planned"] for row in batch("pot")["rows"]}
check(known["weighed.pour.share.lye-solution"] == f"{shares['pour']:g} g" and known["weighed.pipe.share.lye-solution"] == f"{shares['pipe']:g} g", known)
check(known["weighed.lye-pot.topped-up"] == f"{pot:g} g" and "weighed.pour.day-pot" not in known, known)


def out_of_pot(batter, share, alkali=None, made=None):
    """1 - alkali / what the fats can take; a share holds its part of what is in the pot."""
    return (1 - (naoh if alkali is None else alkali) * share / (made or pot) / take(rows, batter)) * 100


more, less = {"weighed.pour.share.lye-solution": f"{shares['pour'] + 5:g} g"}, {"weighed.pipe.share.lye-solution": f"{shares['pipe'] - 5:g} g"}
said = refused("pot", "--confirmed .?lye-heavy", {**more, **less})
agrees(said, "Base of the test", out_of_pot("pour", shares["pour"] + 5))
agrees(said, "Topping of the test", out_of_pot("pipe", shares["pipe"] - 5))
noted("pot", less)  # less lye is told of, and asked about by nothing
check("Base of the test" not in remarks("pot") and "left in the pot: if another batter" in remarks("pot"), remarks("pot"))
noted("pot", more, "--confirmed", "lye-heavy")
told = remarks("pot")
agrees(told, "Base of the test", out_of_pot("pour", shares["pour"] + 5))
agrees(told, "Topping of the test", out_of_pot("pipe", shares["pipe"] - 5))
check("left in the pot" not in told and "Together" not in told, told)
noted("pot", {"weighed.pipe.fats.palm": f"{rows['pipe.fats.palm'] + 1:g} g"})  # what was said to be meant is not asked about again
noted("pot", {"weighed.pipe.fats.palm": ""})
check(left("NA-1") == {"g": 1000 - naoh}, "a share is taken from a lot a second time")

# ---- the share of the wrong batter

noted("pot", {key: "" for key in {**more, **less}})
check(batch("pot")["as_weighed"] == [], "taken back, all is as planned")
refused("pot", "is usual", {"weighed.pipe.share.lye-solution": f"{shares['pour']:g} g"}, "--confirmed", "lye-heavy")
said = refused("pot", "LYE-HEAVY. Topping of the test", {"weighed.pipe.share.lye-solution": f"{shares['pipe'] * 1.2:g} g"})
check(f"{shares['pour'] + shares['pipe'] * 1.2:g} g of lye solution, and the pot held {pot:g} g" in said, said)
refused("pot", "did you mean weighed.pipe.share.lye-solution", {"weighed.pipe.lye.lye-solution": "40 g"})

# ---- a share of a pot that was itself weighed otherwise

heavy = {"weighed.lye-pot.naoh": f"{naoh + 5:g} g"}
said = refused("pot", "lye-heavy", heavy)
agrees(said, "Base of the test", out_of_pot("pour", shares["pour"], naoh + 5))
both = {**heavy, **more, **less}
noted("pot", both, "--confirmed", "lye-heavy")
told = remarks("pot")
agrees(told, "Base of the test", out_of_pot("pour", shares["pour"] + 5, naoh + 5))
agrees(told, "Topping of the test", out_of_pot("pipe", shares["pipe"] - 5, naoh + 5))
check(left("NA-1") == {"g": 1000 - naoh - 5}, "the pot's alkali as it was weighed")
noted("pot", {"weighed.lye-pot.topped-up": f"{pot + 40:g} g"}, "--confirmed", "lye-heavy")
agrees(remarks("pot"), "Base of the test", out_of_pot("pour", shares["pour"] + 5, naoh + 5, pot + 40))
noted("pot", {key: "" for key in {**both, "weighed.lye-pot.topped-up": ""}})
said = refused("pot", "lye-heavy", {"weighed.lye-pot.topped-up": f"{pot - 10:g} g"})  # not topped up: stronger
agrees(said, "Topping of the test", out_of_pot("pipe", shares["pipe"], naoh, pot - 10))
noted("pot", {"weighed.lye-pot.water": f"{rows['lye-pot.water'] * 1.2:g} g"})
check("weaker than it is taken for here" in remarks("pot"), remarks("pot"))
noted("pot", {"weighed.lye-pot.water": ""})
noted("pot", {"weighed.pour.fats.olive": f"{rows['pour.fats.olive'] + 10:g} g"})  # fats and share together
agrees(remarks("pot"), "Base of the test", (1 - naoh * shares["pour"] / pot / (take(rows, "pour") + 10 * values["olive"] / 1000 / koh_per_naoh)) * 100)
noted("pot", {"weighed.pour.fats.olive": ""})

# ---- where the run is another by now, nothing is told but the danger

write(f"{folder}/pot.run.json", {**topped, "lye_pot": {}, "sell": 10})
refused("pot", "Lye solution for the base: of .* more was weighed .* cannot be told", more)
refused("pot", "less was weighed .* cannot be told", {"weighed.lye-pot.topped-up": f"{pot - 10:g} g"})
noted("pot", less)

# ---- whippings that are weighed together: each an equal part, or one of them all that is more

note("twice", "--begin")
rows, planned = rows_of("twice")
pot, naoh, share = planned["lye_pot"]["lye_g"], rows["lye-pot.naoh"], rows["pipe.share.lye-solution"]
check(len(planned["lye_pot"]["shares"]) == 3, "two whippings")
noted("twice", {"weighed.pipe.share.lye-solution": f"{2 * share - 4:g} g"})
check("One that had" not in remarks("twice"), remarks("twice"))  # the other may be as planned
said = refused("twice", "lye-heavy", {"weighed.pipe.share.lye-solution": f"{2 * share + 2:g} g"})
agrees(said, "Topping of the test", out_of_pot("pipe", share + 1))
expected = out_of_pot("pipe", share + 2)
shown = float(re.search(r"One that had all that is more .*?superfat (-?[\d.]+) %", said).group(1))
check(expected - 0.11 < shown < expected + 0.01, f"{shown} told of the worst, {expected:.3f} on paper")

# ---- yesterday's lye, all of it: whether lye or water is missing, no weight tells

note("cold", "--begin")
rows, planned = rows_of("cold")
all_of_it, alkali = rows["pour.share.lye-solution"], rows["pour.lye.naoh"]
noted("cold", {base("share.lye-solution"): f"{all_of_it + 10:g} g"})  # only water
check(batch("cold")["as_weighed"] == [], batch("cold")["as_weighed"])
noted("cold", {base("share.lye-solution"): f"{all_of_it - 20:g} g"})
told = remarks("cold")
agrees(told, "Base of the test", (1 - alkali / take(rows, "pour")) * 100)
expected = (1 - alkali * (all_of_it - 20) / all_of_it / take(rows, "pour")) * 100
shown = float(re.search(r"left in the jug, it is ([\d.]+) %", told).group(1))
check(expected - 0.01 < shown < expected + 0.11, f"{shown} told, {expected:.3f} on paper")

# ---- a pot for several batches of a day, where the studio mixes one

write(f"{folder}/studio.json", {"schema": "brimwright.studio/1", "days": {"making": {"monday": "8 h"}, "one_lye_a_day": {"holds": "5 l", "saves": "20 min"}}})
note("bars", "--begin")
rows, planned = rows_of("bars")
alkali, lye = rows["pour.lye.naoh"], rows["pour.lye.naoh"] + rows["pour.lye.water"]
known = {row["key"]: row["planned"] for row in batch("bars")["rows"]}
check(known.get(base("day-pot")) == f"{lye:g} g", known)
said = refused("bars", "lye-heavy", {base("day-pot"): f"{lye + 10:g} g"})
agrees(said, "Base of the test", (1 - alkali * (lye + 10) / lye / take(rows, "pour")) * 100)
noted("bars", {base("day-pot"): f"{lye - 10:g} g"})
agrees(remarks("bars"), "Base of the test", (1 - alkali * (lye - 10) / lye / take(rows, "pour")) * 100)

# ---- bought decorations, as many as were really used

called("stock", ".", "--bought", "sugar star", "--pack", "100 pieces", "--lot", "ST-1", "--on", "2026-11-01")
note("stars", "--begin")
check(left("ST-1") == {"pieces": 88}, "as counted out by the plan")
blank = next(one for one in batch("stars")["blanks"] if one["key"] == "decoration-1.used")
check((blank["kind"], blank["planned"], blank["words"]) == ("count", "12", "Star: used up"), blank)
noted("stars", {"decoration-1.used": "15"})
check(left("ST-1") == {"pieces": 85} and batch("stars")["as_weighed"] == [], "three broke")
code = batch("stars")["begun"]["code"]
traced = json.loads(called("trail", ".", code, "--json").stdout)["batches"][0]["rows"]
check(next(one for one in traced if one["row"] == "decoration-1.bought")["weighed"] == {"pieces": 15}, traced)
refused("stars", "is usual", {"decoration-1.used": "150"})
refused("stars", "are needed, and only", {"decoration-1.used": "150"}, "--confirmed", "150")
noted("stars", {"decoration-1.used": "0"})  # forgotten in the box
check(left("ST-1") == {"pieces": 100}, "none was used")
noted("stars", {"decoration-1.used": ""})
check(left("ST-1") == {"pieces": 88}, "taken back, it is as planned")
refused("stars", "did you mean decoration-1.used", {"decoration-1.use": "12"})
check("Star: used up" in called("sheet", "stars.run.json").stdout, "the sheet has no blank for it")

# ---- a plan that was frozen before there was a blank for them has one all the same, made of what it says of them

called("records", ".", "--export", "out.json")
kept = read(f"{folder}/out.json")
its = next(one for one in kept["tables"]["batch"] if one["code"] == code)
document = next(one for one in kept["tables"]["document"] if one["hash"] == its["plan"])
earlier = json.loads(document["text"])
for size in earlier["batches"]:
    size["blanks"] = [one for one in size["blanks"] if one["key"] != "decoration-1.used"]
document["text"] = json.dumps(earlier, ensure_ascii=False)
hash = hashlib.sha256(document["text"].encode()).hexdigest()
write(f"{folder}/earlier.json", json.loads(json.dumps(kept).replace(its["plan"], hash)))
os.remove(f"{folder}/records.sqlite")
called("records", ".", "--import", "earlier.json")
check(earlier["batches"][0]["blanks"] and batch("stars")["begun"]["plan_sha256"] == hash, "the plan is not the earlier one")
check(next(one for one in batch("stars")["blanks"] if one["key"] == "decoration-1.used") == blank, batch("stars")["blanks"])
noted("stars", {"decoration-1.used": "13"})
check(left("ST-1") == {"pieces": 87}, "one broke")
check(batch("stars")["begun"]["plan_sha256"] == hash, "what is frozen has changed")
called("records", ".")

shutil.rmtree(folder)
end("lye that is shared is noted as it was weighed, and bought decorations as they were counted")
