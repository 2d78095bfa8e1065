"""What stands ready in the studio is weighed where a run takes it: lye as a solution with extra water, fats as a blend; and a bought
decoration is only counted. Each weight is worked out here by hand; a slip in what stands there is told in one line."""
import copy
import json
import math
import os
import re
import tempfile

from checks import check, end, read, root, run, write

folder = tempfile.mkdtemp()
# M(NaOH) / M(KOH), by IUPAC's abridged atomic weights (2021).
NAOH = 39.997 / 56.105

formula = {
    "schema": "brimwright.formula/2", "name": "Half and half",
    "fats": [{"fat": "olive", "share": "60 %", "saponification_value": {"low": 188, "typical": 190, "high": 192}},
             {"fat": "coconut", "share": "40 %", "saponification_value": {"low": 255, "typical": 257, "high": 259}}],
    "superfat": "5 %",
    "alkali": [{"alkali": "NaOH", "share": "100 %", "purity": "99 %", "purity_range": ["98 %", "100 %"]}],
    "water": {"lye_strength": "33 %"}, "pour_temperature": "38 °C", "cure": "35 days", "water_lost_in_cure": "85 %"}
dual = {**formula, "name": "Dual", "alkali": [{"alkali": "NaOH", "share": "80 %", "purity": "99 %"}, {"alkali": "KOH", "share": "20 %", "purity": "90 %"}]}
plain = read(f"{root}/examples/plain_bars.run.json")
for key in ("$schema", "id", "note"):
    plain.pop(key)
plain["pour"]["formula"] = "base.formula.json"
jug = {"alkali": "NaOH", "strength": "50 %", "strength_range": ["49 %", "51 %"], "kept_at": "20 °C"}
hard = {"fats": [{"fat": "coconut", "share": "70 %"}, {"fat": "Olive oil", "share": "30 %"}]}
studio = {"schema": "brimwright.studio/1", "lye_solutions": {"The jug": jug, "KOH solution": {**jug, "alkali": "KOH", "strength": "45 %", "strength_range": ["44 %", "46 %"]}},
          "blends": {"Hard fats": hard}}


def lay_out(pour=None, of_studio=None, of_formula=None, **more):
    document = copy.deepcopy(plain)
    document["pour"].update(pour or {})
    document.update(more)
    write(f"{folder}/base.formula.json", of_formula or formula)
    write(f"{folder}/a.run.json", document)
    write(f"{folder}/studio.json", studio if of_studio is None else of_studio)


def plan(*words, **scene):
    lay_out(**scene)
    result = run("plan", "a.run.json", "--json", *words, folder=folder)
    check(result.returncode == 0, f"plan {scene}: {result.stderr}")
    return json.loads(result.stdout) if result.returncode == 0 else None


def text_of(command="plan", *words, **scene):
    lay_out(**scene)
    result = run(command, "a.run.json", *words, folder=folder)
    check(result.returncode == 0, f"{command} {words} {scene}: {result.stderr}")
    return re.sub(r"\s+", " ", result.stdout)


def refused(said, *words, **scene):
    lay_out(**scene)
    result = run("plan", "a.run.json", *words, folder=folder)
    line = result.stderr
    check(result.returncode == 1 and line.count("\n") == 1 and not result.stdout, f"not refused in one line: {scene}: {result.returncode} {line}")
    check(said in line, f"{scene}: says {line.strip()!r}, not {said!r}")


def rows(pour):
    return {line["name"]: line["g"] for line in pour["ingredients"]}


def with_jug(**slipped):
    changed = {key: value for key, value in {**jug, **slipped}.items() if value is not None}
    return {**studio, "lye_solutions": {"The jug": changed}}


def need(fats, superfat=0.05):
    """Grams of NaOH for grams of olive and coconut: ISO 3657's value by the molar masses."""
    return (fats[0] * 190 + fats[1] * 257) / 1000 * NAOH * (1 - superfat)


def close(what, got, expected, off):
    check(abs(got - expected) <= off, f"{what}: {got}, expected {expected}")


# ---- lye as a solution

dry, wet = plan(), plan(pour={"lye_from": "The jug"})
got = rows(wet["pour"])
solution = got["NaOH solution, 50 % strong (The jug)"]
fats = got["Olive oil"], got["Coconut oil"]
exact = need(fats) / 0.5
check(0 <= exact - solution < 0.1 + 1e-3, f"solution {solution} g, needed {exact}")
close("pure NaOH", wet["pour"]["naoh_g"], solution / 2, 2e-3)
close("all water", wet["pour"]["water_g"], solution / 2 * 67 / 33, 0.5)
close("extra water", got["Extra water, distilled"], solution / 2 * 67 / 33 - solution / 2, 0.5)
close("plain water", wet["pour"]["plain_water_g"], got["Extra water, distilled"], 1e-9)
check("NaOH, 99 % pure" not in got and len(got) == 4, f"dry alkali beside the solution: {got}")
close("batter", wet["pour"]["make_g"], sum(got.values()), 1e-6)
# The same soap, but for what is impure in the dry alkali.
close("batter without what is impure", wet["pour"]["make_g"], dry["pour"]["make_g"], 3)
said = wet["pour"]["solutions"]
check(said == [{"solution": "The jug", "alkali": "NaOH", "g": solution, "strength_percent": {"stated": 50, "low": 49, "high": 51},
                "brings_water_g": said[0]["brings_water_g"]}] and dry["pour"]["solutions"] == [], f"solutions {said}")
close("water of the solution", said[0]["brings_water_g"], solution / 2, 1e-3)
superfat = wet["pour"]["superfat_percent"]
close("superfat", superfat["effective"], 100 * (1 - solution * 0.5 / need(fats, 0)), 6e-3)
# The worst corner: each end of each range, each scale half a step off, as the lowest superfat has it.
low = 1 - (solution + 0.05) * 0.51 / ((((fats[0] - 0.5) * 188 + (fats[1] - 0.5) * 255) / 1000) * NAOH)
check(100 * low - 0.02 <= superfat["low"] <= 100 * low, f"lowest {superfat['low']}, expected {100 * low}")
cause = superfat["uncertainties"][0]["cause"]
check(cause == "the strength of the NaOH solution (49 to 51 %)", f"dominant cause: {cause}")
# As strong as the formula's lye: no extra water, and nothing to pour it into.
as_is = plan(pour={"lye_from": ["The jug"]}, of_studio=with_jug(strength="33 %", strength_range=["32 %", "34 %"]))
check(set(rows(as_is["pour"])) == {"Olive oil", "Coconut oil", "NaOH solution, 33 % strong (The jug)"}, f"extra water: {rows(as_is['pour'])}")
# Where it may have grown so strong that lye is left over, that is told first.
lean = {**formula, "superfat": "1 %"}
loud = plan(pour={"lye_from": "The jug"}, of_formula=lean)
check(loud["cautions"][0]["severity"] == "danger" and "lye-heavy" in loud["cautions"][0]["text"].lower() and
      "strength of the NaOH solution" in loud["cautions"][0]["text"], f"quiet: {loud['cautions'][:1]}")
# Dow: 50 % NaOH begins to crystallise near 14 °C; the curve is good to 5 K.
check(not any("crystallise" in c["text"] for c in wet["cautions"]), "crystals at 20 °C")
cold = plan(pour={"lye_from": "The jug"}, of_studio=with_jug(kept_at="15 °C"))
check(any("The jug: " in c["text"] and "crystallise near 14 °C" in c["text"] for c in cold["cautions"]), "no crystals at 15 °C")
# Olsson 1997, as data/lye.json has it: diluting warms less than dissolving by far.
check(wet["pour"]["heat"]["peak_c"] < dry["pour"]["heat"]["peak_c"] - 20 and wet["pour"]["heat"]["peak_c"] > 20, "heat of dilution")
# Water at 8 °C, solution at 20 °C: with no heat of dilution at all the mixture stays below 20 °C.
check("Diluted, the lye solution may warm to" in text_of(pour={"lye_from": "The jug"}), "the text tells of a fresh lye")

both = plan(pour={"lye_from": ["KOH solution", "The jug"]}, of_formula=dual)
check(both["pour"]["heat"]["peak_c"] is None and len(both["pour"]["solutions"]) == 2, "heat of diluted KOH is not known")
one = plan(pour={"lye_from": "The jug"}, of_formula=dual)
order = [line["name"].split(",")[0] for line in one["pour"]["ingredients"] if line["goes_into"] == "lye"]
check(order == ["Extra water", "KOH", "NaOH solution"], f"what is dry is not dissolved first: {order}")
got = rows(one["pour"])
pure_koh, pure_naoh = 0.9 * got["KOH, 90 % pure"], 0.5 * got["NaOH solution, 50 % strong (The jug)"]
close("water of both", one["pour"]["water_g"], (pure_koh + pure_naoh) * 67 / 33, 0.5)
close("shares of both", pure_koh / 56.105 / (pure_koh / 56.105 + pure_naoh / 39.997), 0.2, 2e-3)

for slip, said in (({"strength": "50"}, 'write the pure alkali as a share of the solution: "50 %"'), ({"strength": 50}, "is 50 without a unit"),
                   ({"strength": "0.5"}, '"50 %", if that is meant'), ({"strength": "1:1"}, 'is a ratio, which may be read both ways; write the pure alkali as a share of the solution: "50 %"'),
                   ({"strength": "1:2"}, '"33.33 %" for 1 of alkali in 2 of water'), ({"strength": "52 %"}, "stronger than lye is weighed"), ({"strength": "5 %"}, "weaker than the lye of any batter"),
                   ({"strength_range": None}, "is missing, and no solution keeps to its strength"), ({"strength_range": ["51 %", "49 %"]}, "has the strongest first"),
                   ({"strength_range": ["50.5 %", "51 %"]}, "does not include the strength of 50 %"), ({"strength_range": ["49 %", "54 %"]}, "more than stays dissolved: 52.2 % at 20 °C"),
                   ({"strength_range": ["39 %", "50 %"]}, "too wide to weigh alkali by"), ({"strength_range": ["49", "51"]}, "is 49 without a unit"), ({"strength_range": ["49 %"]}, "has 1 values"),
                   ({"alkali": "KOH", "strength_range": ["49 %", "51 %"]}, 'is a solution of KOH, and "Half and half" takes NaOH'), ({"kept_at": None}, "kept_at"),
                   ({"strength": "30 %", "strength_range": ["29 %", "31 %"]}, "brings more water than \"Half and half\" has in its lye of 33 %"),
                   ({"made_from": {"purity": "40 %"}}, "/made_from/purity")):
    refused(said, pour={"lye_from": "The jug"}, of_studio=with_jug(**slip))
milky = {**formula, "liquids": [{"name": "goat milk", "composition": "goat milk", "goes_into": "lye", "replaces": "60 % of water"}]}
refused('brings, with the liquids of "Half and half"', pour={"lye_from": "The jug"}, of_formula=milky)
refused("did you mean \"The jug\"?", pour={"lye_from": "The jugg"})
refused("names no solution", pour={"lye_from": []})
refused("are both solutions of NaOH", pour={"lye_from": ["The jug", "Another"]}, of_studio={**studio, "lye_solutions": {"The jug": jug, "Another": jug}})
refused("and the studio has no \"lye_solutions\"", pour={"lye_from": "The jug"}, of_studio={"schema": "brimwright.studio/1"})
refused("is what prices call something else", pour={"lye_from": "caustic soda"}, of_studio={**studio, "lye_solutions": {"caustic soda": jug}})
os.remove(f"{folder}/studio.json")
check("there is no studio.json beside the run" in run("plan", "a.run.json", folder=folder).stderr, "no studio")

sheet = text_of("sheet", "--html", "/dev/stdout", pour={"lye_from": "The jug"})
for words in ("Solution into water, never water into solution", "Extra water, distilled", "NaOH solution, 50 % strong (The jug)"):
    check(words in sheet, f"not on the sheet: {words}")
check("Alkali into water, never water into alkali: a little" not in sheet, "the sheet dissolves dry alkali")
weighed = plan("--weighed", f"base NaOH solution {solution + 10} g", pour={"lye_from": "The jug"})
close("superfat of what was weighed", weighed["pour"]["superfat_percent"]["effective"], 100 * (1 - (solution + 10) * 0.5 / need(fats, 0)), 6e-3)
close("water of what was weighed", weighed["pour"]["water_g"], wet["pour"]["water_g"] + 5, 2e-2)
refused("takes NaOH as the solution \"The jug\"", "--weighed", "base NaOH 96 g", pour={"lye_from": "The jug"})
refused("takes NaOH dry, not as a solution", "--weighed", "base NaOH solution 96 g")
refused("takes as the solution \"The jug\"", "--purity", "NaOH 97 %", pour={"lye_from": "The jug"})


# ---- fats as a blend

blended = plan(pour={"blend": "Hard fats"})
got = rows(blended["pour"])
# Coconut is 40 % of the fats and 70 % of the blend: room for 4/7, with 3/10 of that olive.
name = "Hard fats (blend, 57.14 % of the fats)"
check(list(got)[:2] == [name, "Olive oil"] and "Coconut oil" not in got, f"rows {got}")
all_fats = got[name] + got["Olive oil"]
close("blend", got[name], all_fats * 4 / 7, 1)
fats = got["Olive oil"] + 0.3 * got[name], 0.7 * got[name]
close("fats", blended["pour"]["fats_g"], all_fats, 1e-9)
naoh = got["NaOH, 99 % pure"]
check(0 <= need(fats) / 0.99 - naoh < 0.1 + 1e-3, f"NaOH {naoh}, needed {need(fats) / 0.99}")
close("superfat of a blend", blended["pour"]["superfat_percent"]["effective"], 100 * (1 - naoh * 0.99 / need(fats, 0)), 6e-3)
low = 1 - (naoh + 0.05) * 1.00 / ((fats[0] - 0.5 - 0.15) * 188 / 1000 + (fats[1] - 0.35) * 255 / 1000) / NAOH
close("lowest superfat of a blend", blended["pour"]["superfat_percent"]["low"], 100 * low, 0.02)
check(blended["pour"]["ingredients"][0]["holds"] == [{"fat": "olive", "percent": 30}, {"fat": "coconut", "percent": 70}], "what the blend holds")
some = rows(plan(pour={"blend": {"name": "Hard fats", "share": "20 %"}})["pour"])
close("the share asked for", some["Hard fats (blend, 20 % of the fats)"] / sum(list(some.values())[:3]), 0.2, 2e-3)
close("coconut beside it", (some["Coconut oil"] + 0.7 * some["Hard fats (blend, 20 % of the fats)"]) / sum(list(some.values())[:3]), 0.4, 2e-3)
refused("has too little Coconut oil for that (40 %); take at most 57.1", pour={"blend": {"name": "Hard fats", "share": "58 %"}})
for fats_of, said in (([{"fat": "coconut", "share": "70 %"}, {"fat": "palm", "share": "30 %"}], 'holds "palm", and "Half and half" has none of it'),
                      ([{"fat": "coconut", "share": "70 %"}, {"fat": "olive", "share": "20 %"}], "the fats of the blend add to 90 %"),
                      ([{"fat": "coconut", "share": "100 %"}], "is no blend of fats"),
                      ([{"fat": "coconut", "share": "50 %"}, {"fat": "coconut", "share": "50 %"}], "appears twice in the blend"),
                      ([{"fat": "olive", "share": "50 %"}, {"fat": "Olive oil", "share": "50 %"}], "is a fat of the blend by another name too")):
    refused(said, pour={"blend": "Hard fats"}, of_studio={**studio, "blends": {"Hard fats": {"fats": fats_of}}})
inner = {"Hard fats": {"fats": [{"fat": "inner", "share": "70 %"}, {"fat": "olive", "share": "30 %"}]}, "inner": hard}
refused('studio.json: /blends/Hard fats/fats/0/fat: "inner" is a blend itself', pour={"blend": "Hard fats"}, of_studio={**studio, "blends": inner})
refused("is what prices call something else", pour={"blend": "Olive oil"}, of_studio={**studio, "blends": {"Olive oil": hard}})
mica = {**formula, "colours": [{"name": "green mica", "rate": "10 g/kg of fats", "density": "2.8 g/ml", "dispersed_in": {"fat": "coconut", "oil_per_colour": 3, "from": "formula"}}]}
refused("leaves 0 % of the fats as Coconut oil beside it, and the colours are dispersed in 3 %", pour={"blend": "Hard fats"}, of_formula=mica)
check("melted and stirred before it is weighed" in text_of("sheet", "--html", "/dev/stdout", pour={"blend": "Hard fats"}), "the sheet does not tell to melt the blend")


# ---- what they cost, and what to buy

def priced(*made, **packs):
    trade = {"currency": "EUR", "packs": {"olive": [{"holds": "5 kg", "paid": "25.00"}], "coconut": [{"holds": "1 kg", "paid": "10.00"}],
                                          "NaOH": [{"holds": "1 kg", "paid": "8.00"}], "water": [{"holds": "1 kg", "paid": "1.00"}], **packs}}
    return {**with_jug(made_from={"purity": "98 %"} if made else None), **trade}


def cost_of(of_studio):
    answer = plan(pour={"lye_from": "The jug", "blend": "Hard fats"}, of_studio=of_studio)
    return {line["name"]: (line["g"], line["amount"]) for line in answer["piece"]["cost"]["materials"]}, answer["piece"]["cost"]["unpriced"], rows(answer["pour"])


lines, unpriced, got = cost_of(priced("made"))
solution, blend = got["NaOH solution, 50 % strong (The jug)"], got[name]
close("NaOH in what is made here", lines["NaOH"][0], solution * 50 / 98, 6e-3)
close("water in it, and beside it", lines["water"][0], solution * (1 - 50 / 98) + got["Extra water, distilled"], 6e-3)
close("olive in and beside the blend", lines["olive"][0], got["Olive oil"] + 0.3 * blend, 6e-3)
check(not unpriced and float(lines["NaOH"][1]) == round(solution * 50 / 98 * 8 / 1000, 2), f"cost {lines}")
lines, unpriced, _ = cost_of(priced())
check(unpriced == ["The jug"], f"a bought solution without a price: {unpriced}")
packs = {"The jug": [{"holds": "2 kg", "paid": "9.00"}], "Hard fats": [{"holds": "10 kg", "paid": "80.00"}]}
lines, unpriced, _ = cost_of(priced("made", **packs))
check(float(lines["The jug"][1]) == round(solution * 9 / 2000, 2) and "NaOH" not in lines, f"a price of its own: {lines}")
check(float(lines["Hard fats"][1]) == round(blend * 80 / 10000, 2) and "coconut" not in lines, f"a price of its own: {lines}")


def bought(of_studio):
    lay_out(pour={"lye_from": "The jug", "blend": "Hard fats"}, of_studio=of_studio)
    result = run("buy", "a.run.json", "--json", folder=folder)
    check(result.returncode == 0, result.stderr)
    return {one["material"]: one for one in json.loads(result.stdout)["materials"]}


to_buy = bought({**priced("made"), "have": {"The jug": "100 g", "Hard fats": "10 kg"}})
close("to make", to_buy["The jug"]["to_make_g"], solution - 100, 1e-5)
check(to_buy["The jug"]["to_buy_g"] == 0 and to_buy["Hard fats"]["to_make_g"] == 0 and "coconut" not in to_buy, f"{to_buy}")
close("NaOH for what is made", to_buy["NaOH"]["used_g"], (solution - 100) * 50 / 98, 1e-3)
to_buy = bought(priced(**packs))
check("NaOH" not in to_buy and to_buy["The jug"]["bought_g"] >= solution and to_buy["Hard fats"]["bought_g"] == 10000, f"{to_buy}")
dry_run = plan(of_studio=priced("made", **{k: v for k, v in packs.items()}))
naoh_line = next(line for line in dry_run["piece"]["cost"]["materials"] if line["name"] == "NaOH")
close("dry NaOH at its own price", float(naoh_line["amount"]), naoh_line["g"] * 8 / 1000, 0.0051)
solution_pack = priced("made")
solution_pack["packs"] = {"NaOH solution 50 %": [{"holds": "1 kg", "paid": "2.00"}], **solution_pack["packs"]}
solution_pack["lye_solutions"]["NaOH solution 50 %"] = jug
naoh_line = next(line for line in plan(of_studio=solution_pack)["piece"]["cost"]["materials"] if line["name"] == "NaOH")
close("dry NaOH is not priced as its solution", float(naoh_line["amount"]), naoh_line["g"] * 8 / 1000, 0.0051)


# ---- lines of an order that are poured together take the same

def poured_together(**second):
    lay_out(pour={"lye_from": "The jug", "blend": "Hard fats"}, of_studio=priced("made"))
    other = read(f"{folder}/a.run.json")
    other["pour"] = {key: value for key, value in {**other["pour"], **second}.items() if value}
    write(f"{folder}/b.run.json", {**other, "name": "Other bars"})
    write(f"{folder}/both.order.json", {"schema": "brimwright.order/1", "lines": [{"run": f"{name}.run.json", "pieces": 6, "together": "A"} for name in "ab"]})
    return run("buy", "both.order.json", "--json", folder=folder)


answer = json.loads(poured_together().stdout)
base = answer["together"][0]["batches"][0]["base"]
got, used = rows(base), {one["material"]: one for one in answer["materials"]}
close("solution for both lines", used["The jug"]["to_make_g"], got["NaOH solution, 50 % strong (The jug)"], 1e-5)
close("water of the shared base", base["water_g"], base["plain_water_g"] + base["solutions"][0]["brings_water_g"], 2e-3)
for second in ({"lye_from": None}, {"blend": None}, {"blend": {"name": "Hard fats", "share": "20 %"}}):
    result = poured_together(**second)
    check(result.returncode == 1 and result.stderr.count("\n") == 1 and "takes other lye or fats that stand ready" in result.stderr, f"poured together with {second}: {result.stderr}")


# ---- a bought decoration

star = {"name": "Sugar star", "material": "sugar star", "bought": {"weighs": "1.5 g"}, "per_piece": 2, "spares": "10 %", "inci": "Sucrose"}
shop = {"schema": "brimwright.studio/1", "currency": "EUR", "packs": {"sugar star": [{"holds": "20 pieces", "paid": "4.00"}]}}
stars = plan(of_studio=shop, decorations=[star])
deco = stars["decorations"][0]
make = stars["pieces"]["make"]
check((deco["bought"], deco["casts"], deco["tray_fills"], deco["make_g"], deco["mass_each_g"]) == (True, math.ceil(2 * make * 1.1 - 1e-9), 0, 0, 1.5), f"{deco}")
check([line for line in stars["piece"]["cost"]["materials"] if line["name"] == "sugar star"] ==
      [{"name": "sugar star", "shown_as": "sugar star", "pieces": deco["casts"], "amount": f"{deco['casts'] * 4 / 20:.2f}"}], "its price by the piece")
part = next(part for part in stars["piece"]["parts"] if part["name"] == "Sugar star")
close("its part of the piece", part["fresh_g"], 3, 1e-9)
check(not any(vessel["key"].startswith("melt") for batch in stars["batches"] for vessel in batch["weigh_out"]), "something is melted")
check(stars["piece"]["size"] is None, "a size with a part of unknown shape")
bare = {**star, "bought": {}}
unknown = plan(of_studio=shop, decorations=[bare])
check(unknown["decorations"][0]["mass_each_g"] is None and any("what one weighs is not given" in c["text"] for c in unknown["cautions"]), "an unknown weight is quiet")
label = {"market": "EU", "weight_spread": "1 g"}
refused("/decorations/0/bought/weighs: is missing, and the label's weight and ingredients go by it", of_studio=shop, decorations=[bare], label=label)
named = plan(of_studio=shop, decorations=[star], label=label)
check("Sucrose" in json.dumps(named["label"]), "its INCI name is not on the label")
nameless = plan(of_studio=shop, decorations=[{k: v for k, v in star.items() if k != "inci"}], label=label)
check("INCI name not given" in json.dumps(nameless["label"]), "a decoration without INCI name is quiet")
refused("is of a decoration that is cast, and this one is bought", of_studio=shop, decorations=[{**star, "melt_loss": "3 %"}])
refused("is of a decoration that is cast, and this one is bought", of_studio=shop, decorations=[{**star, "on_top": {"pressed_in": "2 mm"}}])
refused("is made in more than one way", of_studio=shop, decorations=[{**star, "rod": {"diameter": "5 mm", "length": "9 mm"}}])
refused("is a weight of what is bought by the piece", of_studio={**shop, "packs": {}, "prices": {"sugar star": {"paid": "4.00", "for": "1 kg"}}}, decorations=[star])
refused("counts pieces of what is used by weight", of_studio={**shop, "packs": {}, "prices": {"olive": {"paid": "4.00", "for": "10 pieces"}}}, decorations=[star])
lay_out(of_studio=shop, decorations=[star])
buys = json.loads(run("buy", "a.run.json", "--json", folder=folder).stdout)
line = next(one for one in buys["materials"] if one["material"] == "sugar star")
check((line["used_pieces"], line["bought_pieces"]) == (deco["casts"], 20 * math.ceil(deco["casts"] / 20)), f"bought {line}")
check("DECORATE Sugar star" in text_of(of_studio=shop, decorations=[star]) and "Count out" in text_of("sheet", "--html", "/dev/stdout", of_studio=shop, decorations=[star]), "sheet and text")

end("what stands ready is weighed, told, priced and bought as it stands, and what is bought is counted")
