"""Lye already weighed: the superfat that comes out of it, reckoned here from stoichiometry alone; and the law that a mend, typed
back, holds."""
import json
import os
import random
import re
import subprocess
import sys
import tempfile

root, program = sys.argv[1:3]
failures = []
folder = tempfile.mkdtemp()
# IUPAC 2021 abridged atomic weights: NaOH 39.997, KOH 56.105 g/mol.
koh_per_naoh = 56.105 / 39.997


def check(condition, what):
    if not condition:
        failures.append(what)


def write(name, document):
    with open(f"{folder}/{name}", "w") as file:
        json.dump(document, file)


def formula(name, superfat, fats, purity="100 %"):
    return {"schema": "brimwright.formula/2", "name": name,
            "fats": [{"fat": fat, "share": f"{share} %", "saponification_value": value} for fat, share, value in fats],
            "superfat": superfat, "alkali": [{"alkali": "NaOH", "share": "100 %", "purity": purity, "purity_range": [purity, purity]}],
            "water": {"lye_strength": "33 %"}, "pour_temperature": "35 °C"}


base_fats = [("olive", 60, 190), ("coconut", 30, 257), ("castor", 10, 181)]
write("base.formula.json", formula("Base of the test", "6 %", base_fats))
write("top.formula.json", formula("Topping of the test", "7 %", [("coconut", 50, 257), ("palm", 50, 200)]))
write("mould.json", {"schema": "brimwright.mould/2", "name": "Bar", "cavities": 12, "shape": {"kind": "block", "length": "80 mm", "width": "50 mm", "height": "25 mm"}})
run = {"schema": "brimwright.run/2", "name": "Made", "sell": 12, "spoilage": "0 %",
       "pour": {"mould": "mould.json", "formula": "base.formula.json", "line": {"below_brim": "2 mm"}},
       "losses": {"pour": {"overpour": "1 %", "pot": "20 g", "jugs": "0 g", "test_piece": "0 g"}},
       "scales": {"large": {"step": "1 g", "most": "5 kg"}, "fine": {"step": "0.1 g", "most": "500 g"}}}
write("one.run.json", run)
write("seven.run.json", {**run, "sell": 7, "batch": {"pieces": 4}})
piped = {**run, "pipe": {"formula": "top.formula.json", "envelope": {"form": "cone", "diameter": "40 mm", "height": "30 mm", "soap_share": "80 %"},
                         "fills_headspace": "0 %", "whip": {"holds": "100 ml", "net": "70 g"}},
         "losses": {**run["losses"], "pipe": {"bag": "10 g", "bowl_and_whisk": "20 g"}}}
write("piped.run.json", piped)


def asked(*words, file="one.run.json", form=("--json",)):
    return subprocess.run([program, "plan", f"{folder}/{file}", *form, *words], cwd=root, capture_output=True, text=True, timeout=60)


def answer(*words, **how):
    done = asked(*words, **how)
    check(done.returncode == 0, f"{words}: {done.stderr}")
    return json.loads(done.stdout) if done.returncode == 0 else None


def refused(said, *words, **how):
    done = asked(*words, **how)
    told = done.stderr
    if told.startswith("{"):  # with --json a complaint is JSON too
        complaint = json.loads(told)
        told = f"{complaint['file']}: {complaint['field']}: {complaint['problem']}; {complaint['remedy']}"
    check(done.returncode == 1 and done.stdout == "" and re.search(said, told), f"{words}: {done.returncode} {told!r}")


def superfat_of(fats, naoh_g, purity=1.0):
    """1 - alkali / what the fats take, in KOH; `fats` by name in grams."""
    take = sum(g * value / 1000 for fat, _, value in base_fats for g in [fats[fat]])
    return (1 - naoh_g * purity * koh_per_naoh / take) * 100


names = {"olive": "Olive", "coconut": "Coconut", "castor": "Castor"}


def fats_in(batter):
    return {fat: next(line["g"] for line in batter["ingredients"] if line["name"].startswith(names[fat])) for fat in names}


planned = answer()
if planned is None:
    print("\n".join(failures))
    sys.exit(1)
naoh = planned["pour"]["naoh_g"]
fats = fats_in(planned["pour"])
check("made_lye" not in planned, "a lye was made up")
check(asked("--weighed", f"base NaOH {naoh} g").stdout != "", "the planned lye")

chance = random.Random(20261125)
for case in range(40):
    used = round(naoh * chance.uniform(0.7, 1.4), 1)
    purity = chance.choice([None, 97, 99.5])
    words = ["--weighed", f"base NaOH {used} g"] + (["--purity", f"NaOH {purity} %"] if purity else [])
    plan = answer(*words)
    if plan is None:
        continue
    made = plan["made_lye"][0]
    expected = superfat_of(fats, used, (purity or 100) / 100)
    # Printed to two decimals at most; a tenth of a point is what can be told.
    check(abs(made["superfat_percent"]["effective"] - expected) < 0.06, f"{words}: {made['superfat_percent']['effective']}, not {expected}")
    weights = {line["name"].split(",")[0]: line["g"] for line in plan["batches"][0]["pour"]["ingredients"]}
    check(weights["NaOH"] == used, f"{words}: the batch shows {weights['NaOH']} g, not what was used")
    check(abs(plan["pour"]["naoh_g"] - used) < 1e-9, f"{words}: the run's sum forgets it")
    first = plan["cautions"][0]
    is_heavy = made["superfat_percent"]["likely_low"] < 0
    check(is_heavy == (made["severity"] == "danger"), f"{words}: {made['severity']}")
    check(not is_heavy or (first["severity"] == "danger" and "LYE-HEAVY" in first["text"]), f"{words}: the danger does not stand first: {first['text']}")
    check(not is_heavy or "Never fix it with an acid" in first["text"] or "do not use this lye" in first["text"], f"{words}: no word of what to do")
    text = asked(*words, form=()).stdout
    check(text.startswith("ALKALI ALREADY WEIGHED\n" + ("!! LYE-HEAVY" if is_heavy else "")), f"{words}: the text begins {text[:60]!r}")
    check(all(len(line) <= 80 for line in text.splitlines()), f"{words}: wider than 80 columns")
    # Typed back, a mend holds.
    for which in ("to_aim", "to_zero"):
        mend = made[which]
        if mend is None:
            continue
        check(all(abs(one["g"] - round(one["g"])) < 1e-9 for one in mend["add"]), f"{words}: fats finer than the scale")
        back = words[:]
        for one in mend["add"]:
            back += ["--added", f"base {one['fat']} {one['g']} g"]
        again = answer(*back)["made_lye"][0]
        least = 6 if which == "to_aim" else 0
        reached = again["superfat_percent"]["effective" if which == "to_aim" else "likely_low"]
        check(reached >= least - 0.005, f"{back}: {which} reaches {reached}")
        check(again["severity"] != "danger" and again[which] is None, f"{back}: mended, and still {again['text']}")
        more = {fat: fats[fat] + sum(one["g"] for one in mend["add"] if one["fat"] == fat) for fat in fats}
        check(abs(again["superfat_percent"]["effective"] - superfat_of(more, used, (purity or 100) / 100)) < 0.06, f"{back}: another superfat than on paper")
    if made["missing"]:
        more = made["missing"]["add"][0]["g"]
        back = ["--weighed", f"base NaOH {round(used + more, 1)} g"] + words[2:]
        again = answer(*back)["made_lye"][0]
        check(again["superfat_percent"]["effective"] >= 6 - 0.005, f"{back}: more than was missing")
        check(again["missing"] is None, f"{back}: still missing {again['missing']}")
        check(made["missing"]["water_g"] >= more, f"{words}: the missing alkali would not dissolve")
    check(made["superfat_percent"]["effective"] > 6 or made["missing"] is None, f"{words}: alkali is missing below the aim")

# Twice the alkali and more cannot be mended by the fats there are.
plan = answer("--weighed", f"base NaOH {round(2.5 * naoh, 1)} g")
check("do not use" in plan["cautions"][0]["text"] and plan["made_lye"][0]["to_aim"] is None, "beyond mending, and yet mended")

# One batch of several: the others stay as planned.
plain = answer(file="seven.run.json")
check(plain["pieces"]["batches"] == 2, "two batches")
refused("--batch: is missing, and the run's batches differ", "--weighed", "base NaOH 40 g", file="seven.run.json")
refused("--batch: there is no batch 3", "--weighed", "base NaOH 40 g", "--batch", "3", file="seven.run.json")
two = answer("--weighed", "base NaOH 60 g", "--batch", "2", file="seven.run.json")
by_number = {number: batch for batch in two["batches"] for number in batch["numbers"]}
before = {number: batch for batch in plain["batches"] for number in batch["numbers"]}
check(by_number[1]["pour"]["ingredients"] == before[1]["pour"]["ingredients"], "another batch changed too")
check(by_number[2]["pour"]["naoh_g"] == 60 and two["made_lye"][0]["batch"] == 2, "the batch that was asked for")
check(abs(two["pour"]["naoh_g"] - before[1]["pour"]["naoh_g"] - 60) < 1e-6, "the run is not the sum of its batches")

# Base and topping together; what does not fit is told.
both = answer("--weighed", f"base NaOH {naoh} g", "--weighed", "topping NaOH 500 g", file="piped.run.json")
check([one["batter"] for one in both["made_lye"]] == ["Base", "Topping"], "both batters")
check(both["cautions"][0]["severity"] == "danger" and "Topping of the test" in both["cautions"][0]["text"], "the topping's danger")
refused("--weighed: is of a topping, and the run pipes none", "--weighed", "topping NaOH 30 g")
refused("--weighed: Base of the test takes no KOH", "--weighed", "base KOH 30 g")
refused('--weighed: "base NaOH" cannot be read|--weighed: .*', "--weighed", "base NaOH")
refused('--weighed: "cake NaOH 3 g" cannot be read; write it such as "base NaOH 96 g"', "--weighed", "cake NaOH 3 g")
refused("--weighed: .*zero|--weighed: is zero", "--weighed", "base NaOH 0 g")
refused("--weighed: is negative|--weighed: .* is negative", "--weighed", "base NaOH -3 g")
refused("--weighed: cannot be the weight on a scale of 0.1 g steps", "--weighed", "base NaOH 96.03 g")
refused("--weighed: gives one alkali twice", "--weighed", "base NaOH 96 g", "--weighed", "base NaOH 97 g")
refused("--added: gives fats that were added, but not the lye", "--added", "base olive 14 g")
refused('--added: "shea" is not a fat of Base of the test', "--weighed", f"base NaOH {naoh} g", "--added", "base shea 14 g")
refused("--purity: .*80 to 100 %", "--weighed", f"base NaOH {naoh} g", "--purity", "NaOH 50 %")
refused("--batch: is given without the lye that was already weighed", "--batch", "1")

# Another bag, nothing weighed yet: all weights anew. The pure alkali is the same.
other = answer("--purity", "NaOH 95 %")
check("made_lye" not in other, "a lye was made up")
check(abs(other["pour"]["naoh_g"] * 0.95 / other["pour"]["fats_g"] - naoh / planned["pour"]["fats_g"]) < 2e-4, "the purity bought was not reckoned with")

# What liquids replace of the water is settled anew, as if the bag's purity stood in the formula: an acid that is dosed by the batter takes
# more lye of a bag that holds less, and with it water. On paper the milk's own water (USDA SR, 01106: 87.03 %) is as much
# as the plain water beside it.
def milky(purity):
    of = formula("Milky", "6 %", base_fats, purity)
    return {**of, "liquids": [{"name": "goat milk", "goes_into": "batter", "replaces": "50 % of water", "density": "1.03 g/ml",
                               "composition": "goat milk"}],
            "additives": [{"name": "citric acid", "rate": "3 % of batter", "density": "1.66 g/ml", "goes_into": "lye",
                           "contains_acid": {"acid": "citric acid, anhydrous", "share": "100 %"}}]}


write("milky.run.json", {**run, "pour": {**run["pour"], "formula": "milky.formula.json"}})
write("milky.formula.json", milky("85 %"))
stated = {one["name"]: one["g"] for one in answer(file="milky.run.json")["pour"]["ingredients"]}
write("milky.formula.json", milky("99 %"))
typed = {one["name"]: one["g"] for one in answer("--purity", "NaOH 85 % to 85 %", file="milky.run.json")["pour"]["ingredients"]}
check(typed == stated, f"another bag: {typed}, and as stated: {stated}")
check(abs(typed["goat milk"] * 0.8703 - typed["Water, distilled"]) < 0.6, f"half of the water is milk's: {typed}")

# A pot that is shared has no alkali of one batter.
write("pot.run.json", {**piped, "lye_pot": {}})
refused("--weighed: is part of a lye solution that the batters share", "--weighed", "base NaOH 90 g", file="pot.run.json")

print("\n".join(failures) or "what comes out agrees with stoichiometry, and every mend holds")
sys.exit(bool(failures))
