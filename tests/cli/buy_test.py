"""What runs need together is bought in whole packs at least cost, from a studio's packs, sellers, shelf and waste; a slip in
these is told in one line, and nothing else is printed."""
import copy
import csv
import io
import json
import math
import os
import shutil
import subprocess
import tempfile

from checks import check, end, program, read, root, run, write

plain = read(f"{root}/examples/plain_bars.run.json")
for part in ("$schema", "id"):
    plain.pop(part)

folder = tempfile.mkdtemp()
for name in ("meadow_base.formula.json", "cloud_topping.formula.json"):
    shutil.copy(f"{root}/examples/{name}", folder)


def write_run(name, sell, **more):
    document = copy.deepcopy(plain)
    document.update(name=name, sell=sell, **more)
    write(f"{folder}/{name}.run.json", document)
    return f"{name}.run.json"


def plan_of(name):
    return json.loads(run("plan", name, "--json", folder=folder).stdout)


def used_by(plan):
    """Grams by material, as a plan's cost lists them."""
    return {line["name"]: line["g"] for line in plan["piece"]["cost"]["materials"]}


small, large = write_run("small", 12), write_run("large", 60)
studio = {
    "schema": "brimwright.studio/1",
    "currency": "EUR",
    "packs": {
        "Olive oil": [{"holds": "5 kg", "paid": "27.50", "from": "Oil mill", "as_of": "2026-10-01"},
                      {"holds": "20 kg", "paid": "89.00"}],
        "coconut": [{"holds": "1 l", "paid": "8.00", "from": "Oil mill"}],
        "caustic soda": [{"holds": "1 kg", "paid": "6.00", "from": "Market"}],
        "gift box": [{"holds": "50 pieces", "paid": "30.00"}],
    },
    "sellers": {"Oil mill": {"postage": "6.90", "postage_free_from": "80.00", "lead_time": "5 days"}},
    "have": {"olive": "200 g", "gift box": "12 pieces"},
    "waste": {"olive": "1 %"},
}


def buy(*words, of=studio, status=0):
    write(f"{folder}/studio.json", of)
    result = run("buy", *words, folder=folder)
    check(result.returncode == status, f"buy {words}: exit {result.returncode}, {result.stderr}")
    return result


def bought(*words, of=studio):
    result = buy(*words, "--json", of=of)
    return json.loads(result.stdout) if result.returncode == 0 else {}


def changed(change):
    other = copy.deepcopy(studio)
    change(other)
    return other


# ---- sums of the plans, and the arithmetic of waste, shelf and packs

write(f"{folder}/studio.json", studio)
used = [used_by(plan_of(name)) for name in (small, large)]
answer = bought(small, large)
materials = {one["material"]: one for one in answer["materials"]}
check(set(materials) == set(used[0]), f"materials {set(materials)}")
for name, one in materials.items():
    together = used[0][name] + used[1][name]
    check(abs(one["used_g"] - together) < 0.06, f"{name}: {one['used_g']} g used, {together} planned")
    check(abs(one["needed_g"] - one["used_g"] * (1.01 if name == "olive" else 1)) < 1e-5, f"waste of {name}")
    check(abs(one["to_buy_g"] - max(one["needed_g"] - one["have_g"], 0)) < 1e-5, f"shelf of {name}")
    check(one["bought_g"] == 0 or one["bought_g"] >= one["to_buy_g"], f"too little {name} is bought")
    check(abs(one["left_g"] - max(one["have_g"] + one["bought_g"] - one["needed_g"], 0)) < 1e-5, f"left of {name}")
check(materials["olive"]["have_g"] == 200 and materials["olive"]["shown_as"] == "Olive oil", "a fat by another name")
check(materials["water"]["bought_g"] == 0 and "water" not in answer["unpriced"], "water is bought")
check(any("tap" in note["text"] for note in answer["notes"]), "water from the tap is not told of")
check(set(answer["unpriced"]) == set(materials) - {"olive", "coconut", "NaOH", "water"}, f"unpriced {answer['unpriced']}")
check(answer["proved_cheapest"] and answer["currency"] == "EUR", "currency and proof")

# Coconut by its published density, the least: CXS 210-1999, table 2, 0.908 at 40 °C of water at 20 °C, 0.9982 g/ml.
packs = {pack["material"]: (pack, one) for one in answer["deliveries"] for pack in one["packs"]}
coconut = packs["coconut"][0]
check(abs(coconut["holds_g"] - 908 * 0.9982) < 0.1, f"a litre of coconut weighs {coconut['holds_g']} g")
check(coconut["count"] == math.ceil(materials["coconut"]["to_buy_g"] / coconut["holds_g"]), "packs of coconut")
soda, market = packs["NaOH"]
check(market["seller"] == "Market" and market["postage"] is None, "a seller who is not listed")
check(any("Market" in note["text"] for note in answer["notes"]), "unknown postage is not told of")
olive, mill = packs["olive"]
check(mill["lead_days"] == 5 and (olive.get("as_of") == "2026-10-01") == (mill["seller"] == "Oil mill"), "the mill")
in_coins = lambda text: round(float(text) * 100)  # noqa: E731
for one in answer["deliveries"]:
    check(in_coins(one["goods"]) == sum(in_coins(pack["sum"]) for pack in one["packs"]), "goods are not the packs' sum")
    check(all(in_coins(pack["sum"]) == pack["count"] * in_coins(pack["paid"]) for pack in one["packs"]), "a pack's sum")
    if one["seller"] == "Oil mill":
        free = in_coins(one["goods"]) >= 8000
        check(one["postage_falls_away"] == free and one["postage"] == ("0.00" if free else "6.90"), "postage")
total = sum(in_coins(one["goods"]) + in_coins(one["postage"] or "0") for one in answer["deliveries"])
check(in_coins(answer["total"]) == total, "the total is not the sum")

# ---- text and CSV say the same

text = buy(small, large).stdout
check(f"Altogether{answer['total'] + ' EUR':>70}" in text, f"no total in\n{text}")
check("[ ] Olive oil" in text and "Oil mill (there in 5 days)" in text, text)
check("Unpriced, and not in the sum: no pack is listed" in text, text)
tricky = changed(lambda s: (s["packs"].update({"olive": [{"holds": "5 kg", "paid": "27.50", "from": '=1+1, "mill"'}]}),
                            s["packs"].pop("Olive oil")))
buy(small, "--csv", "list.csv", of=tricky)
with open(f"{folder}/list.csv", "rb") as file:
    raw = file.read().decode()
rows = list(csv.DictReader(io.StringIO(raw, newline="")))
check(raw.endswith("\r\n") and raw.count("\r\n") == raw.count("\n"), "lines of the table do not end as RFC 4180 has it")
check(any(row["seller"] == '\'=1+1, "mill"' for row in rows), f"a formula is let through: {rows}")
check(any(row["name"] == "postage" and row["sum"] == "not given" for row in rows), "unknown postage in the table")
check(any(row["sum"] == "unpriced" for row in rows), "what is unpriced is not in the table")

# ---- the list on paper: a section a seller, a box a pack, names as they are

buy(small, "--html", "list.html", "--pdf", "list.pdf", of=tricky)
page = open(f"{folder}/list.html").read()
answer = bought(small, of=tricky)
for delivery in answer["deliveries"]:
    for pack in delivery["packs"]:
        check(f"<td>{pack['shown_as']}</td><td>{pack['count']} x " in page and f"<td>{pack['sum']}</td>" in page, f"{pack} is not on\n{page}")
check(page.count('<td class="tick">') == sum(len(one["packs"]) for one in answer["deliveries"]) + len(answer["unpriced"]), "boxes to tick")
check("=1+1, &quot;mill&quot;" in page and f"{answer['total']} EUR" in page and "No pack is listed" in page, page)
check("small: 12 pieces to sell" in page and "taken from the tap" in page, "runs and notes")
check(open(f"{folder}/list.pdf", "rb").read(5) == b"%PDF-", "no PDF")

# ---- the shelf alone

def with_stock(grams, name=small):
    rich = changed(lambda s: s.update(have={**{m: "100 kg" for m in materials}, "olive": grams}))
    return bought(name, "--with-stock", of=rich)["with_stock"]


check(with_stock("100 kg") == {"pieces": 12, "batches": 1, "short_for": None, "limited_by": []}, "a full shelf")
half = with_stock(f"{materials['olive']['used_g'] * 12 / 72 / 2:.0f} g")
check(0 < half["pieces"] < 12 and half["short_for"] == half["pieces"] + 1, f"half a shelf: {half}")
check([one["material"] for one in half["limited_by"]] == ["olive"], f"what limits: {half}")
for sell in (half["pieces"], half["short_for"]):
    write_run("other", sell)
    need = used_by(plan_of("other.run.json"))["olive"] * 1.01
    has = half["limited_by"][0]["have_g"]
    check((need <= has) == (sell == half["pieces"]), f"{sell} pieces need {need:.1f} g of {has} g")
check(with_stock("0 g")["pieces"] == 0, "an empty shelf makes something")
enough = bought(small, of=changed(lambda s: s.update(have={m: "100 kg" for m in materials})))
check(enough["total"] is None and enough["deliveries"] == [], "a full shelf is bought for")

# ---- the plan's cost takes the first pack

write(f"{folder}/studio.json", studio)
lines = {line["name"]: line for line in plan_of(small)["piece"]["cost"]["materials"]}
check(in_coins(lines["olive"]["amount"]) == round(2750 * lines["olive"]["g"] / 5000), "cost by the first pack")

# ---- goods of another make, in place of a material where that is cheaper

def makes(serves_as, extra=None, **more):
    """Olive of two makes, and what serves as what."""
    packs = {"Olive oil": [{"holds": "5 kg", "paid": "27.50"}], "Goldmill": [{"holds": "750 g", "paid": "4.10"}], **(extra or {})}
    return {**{part: studio[part] for part in ("schema", "currency")}, "packs": packs, "serves_as": serves_as, **more}


def cheapest_by_hand(need, *packs):
    """Coins of the cheapest packs, (grams, coins) each, that cover the need: all counts, one by one."""
    if not packs:
        return 0 if need <= 0 else math.inf
    (grams, coins), *rest = packs
    return min(n * coins + cheapest_by_hand(need - n * grams, *rest) for n in range(max(math.ceil(need / grams), 0) + 1))


for sell in (12, 60, 150):
    of = write_run("makes", sell)
    alone, served = bought(of, of=makes({})), bought(of, of=makes({"Goldmill": "olive"}))
    need = next(one["to_buy_g"] for one in alone["materials"] if one["material"] == "olive")
    check(in_coins(alone["total"]) == cheapest_by_hand(need, (5000, 2750)), f"{sell}: one make costs {alone['total']}")
    check(in_coins(served["total"]) == cheapest_by_hand(need, (5000, 2750), (750, 410)), f"{sell}: two makes cost {served['total']}")
    check(in_coins(served["total"]) <= in_coins(alone["total"]), "naming a make made it dearer")
packs = served["deliveries"][0]["packs"]
told = [one for one in packs if one.get("make") == "Goldmill"]
check(told and all(one["material"] == "olive" and one["shown_as"] == "Goldmill, in place of Olive oil" for one in told), f"{packs}")
check(any(one["severity"] == "caution" and "Goldmill, in place of Olive oil" in one["text"] for one in served["notes"]), f"{served['notes']}")
text = buy(of, "--csv", "list.csv", "--html", "list.html", of=makes({"Goldmill": "olive"})).stdout
check("[ ] Goldmill, in place of Olive oil" in text and "Goldmill, in place of Olive oil." in open(f"{folder}/list.html").read(), text)
with open(f"{folder}/list.csv", newline="") as file:
    rows = [row for row in csv.DictReader(file) if row["in_place_of"]]
check([(row["name"], row["material"], row["in_place_of"]) for row in rows] == [("Goldmill", "olive", "Olive oil")], f"{rows}")

# What is there of it counts, a make that is needed itself keeps its packs, and the plan's cost takes the material's own first.
there = bought(of, of=makes({"Goldmill": "olive"}, have={"Goldmill": "1 kg", "olive": "200 g"}))
check(next(one for one in there["materials"] if one["material"] == "olive")["have_g"] == 1200, "the shelf of a make")
buy(of, of=makes({"Goldmill": "olive"}))
cost = {line["name"]: line for line in plan_of(of)["piece"]["cost"]["materials"]}["olive"]
check(in_coins(cost["amount"]) == round(2750 * cost["g"] / 5000), "the plan's cost takes the make that only serves")
only = makes({"Goldmill": "olive"})
only["packs"].pop("Olive oil")
check(in_coins(bought(of, of=only)["total"]) == cheapest_by_hand(need, (750, 410)), "a make alone")

# A run's own price still counts beside what serves as its material.
priced = write_run("priced", 12, money={"currency": "EUR", "prices": {"olive": {"paid": "1.00", "for": "1 kg"}}})
dear = makes({"Goldmill": "olive"})
dear["packs"] = {"Goldmill": [{"holds": "750 g", "paid": "9.00"}]}
grams = next(one["to_buy_g"] for one in bought(priced, of=dear)["materials"] if one["material"] == "olive")
check(in_coins(bought(priced, of=dear)["total"]) == 100 * math.ceil(grams / 1000), "a make hides the run's own price")

# ---- slips: one line, no figure

os.makedirs(f"{folder}/elsewhere", exist_ok=True)
shutil.copy(f"{folder}/{small}", f"{folder}/elsewhere/there.run.json")
shutil.copy(f"{folder}/meadow_base.formula.json", f"{folder}/elsewhere")
write(f"{folder}/elsewhere/studio.json", studio)
in_dollars = write_run("dollars", 12, money={"currency": "USD", "prices": {"olive": {"paid": "9", "for": "1 kg"}}})


def pack(**parts):
    return changed(lambda s: s["packs"].update({"Olive oil": [{"holds": "5 kg", "paid": "27.50", **parts}]}))


for words, of, said in (
        ((small, f"./{small}"), studio, "is named twice"),
        ((small, f"elsewhere/../{small}"), studio, "is named twice"),
        ((small, "elsewhere/there.run.json"), studio, "is of another studio"),
        ((small, in_dollars), studio, "dollars.run.json: /money/currency: is USD"),
        ((small, "nowhere.run.json"), studio, "nowhere.run.json"),
        ((small, large, "--with-stock"), studio, "is of one run"),
        ((small,), pack(holds="5"), "studio.json: /packs/Olive oil/0/holds"),
        ((small,), pack(holds="0 kg"), "studio.json: /packs/Olive oil/0/holds: holds nothing"),
        ((small,), pack(holds="50 pieces"), "counts pieces of \"Olive oil\""),
        ((small,), pack(holds="2.5 pieces"), "is no count of pieces"),
        ((small,), pack(paid="-3"), "studio.json: /packs/Olive oil/0/paid"),
        ((small,), pack(paid="2750000"), "EUR/kg"),
        ((small,), pack(from_="x"), "/packs/Olive oil/0/from_: unknown key"),
        ((small,), changed(lambda s: s["packs"].update(mica=[{"holds": "50 ml", "paid": "4"}])), "what it weighs is not known"),
        ((small,), changed(lambda s: s.update(prices={"olive": {"paid": "9", "for": "1 kg"}})), "/prices/olive"),
        ((small,), changed(lambda s: s["have"].update(olive="3 pieces")), "studio.json: /have/olive: counts pieces"),
        ((small,), changed(lambda s: s["waste"].update(olive="60 %")), "studio.json: /waste/olive"),
        ((small,), makes({"Goldmil": "olive"}), 'studio.json: /serves_as/Goldmil: "Goldmil" is not listed under "packs"; did you mean "Goldmill"?'),
        ((small,), makes({"Olive oil": "olive"}), '"Olive oil" serves as itself'),
        ((small,), makes({"Goldmill": "palm fat"}), "is a word for several fats"),
        ((small,), makes({"Goldmill": "Olive oil", "Olive oil": "Goldmill"}), "serve as each other"),
        ((small,), makes({"Goldmill": "Third", "Third": "olive"}, {"Third": []}), '"Third" serves as "olive" itself'),
        *(((small,), makes({make: material}, {make: [{"holds": "1 kg", "paid": "5"}]}), said) for make, material, said in (
            ("Coconut oil", "olive", "is another fat than \"olive\"; copy the formula and plan it with what you have"),
            ("Goldmill coconut", "olive", "is another fat"),
            ("Goldmill olive pomace", "olive", "is another fat"),
            ("Fractionated coconut, Goldmill", "coconut", "is another fat"),
            ("Goldmill coconut milk", "coconut", "is a liquid by its name"),
            ("KOH flakes", "NaOH", "is another alkali than \"NaOH\""),
            ("caustic soda", "KOH", "is another alkali"),
            ("NaOH 50 %", "NaOH", "tells of a strength of its own"),
            ("lye beads", "olive", "is an alkali by its name"),
            ("Coconut oil", "kaolin", "is a fat by its name"),
            ("citric acid", "lactic acid", "is another acid"),
            ("vinegar", "water", "is what uses up alkali by its name"),
            ("baking soda", "sodium citrate", "is what uses up alkali by its name"),
            ("Coconut fragrance", "coconut", "is a scent"),
            ("sea salt", "sugar", "is another salt or powder"),
            ("goat milk", "coconut milk", "is another liquid"),
            ("sandalwood oil", "kaolin", "may hold fat by its name"))),
        ((small,), changed(lambda s: s.pop("currency")), "studio.json: /currency"),
        ((small,), changed(lambda s: s["sellers"]["Oil mill"].update(postage="x")), "studio.json: /sellers/Oil mill/postage")):
    result = buy(*words, of=of, status=1)
    check(result.stdout == "" and result.stderr.count("\n") == 1 and said in result.stderr, f"{words}, {said}: {result.stderr}")

# Her own fats, by the values that her file of fats has for each: another value is another fat.
own = read(f"{root}/examples/studio.fats.json")
base = read(f"{root}/examples/meadow_base.formula.json")
first = copy.deepcopy(own["fats"][0])
for change in ("id", "saponification_value"):
    first.pop(change)


def with_own_fats(values):
    """A run whose formula has two fats of her own, mill_a and mill_b, with these saponification values."""
    write(f"{folder}/own.fats.json", {"schema": own["schema"], "fats": [
        {**first, "id": name, "name": name.replace("_", " "), "saponification_value": value} for name, value in zip(("mill_a", "mill_b"), values)]})
    fats = [{"fat": name or fat["fat"], "share": fat["share"]} for fat, name in zip(base["fats"], ("mill_a", "mill_b", *[None] * 9))]
    write(f"{folder}/own.formula.json", {**base, "own_fats": "own.fats.json", "fats": fats})
    pour = copy.deepcopy(plain["pour"])
    pour["formula"] = "own.formula.json"
    return write_run("own", 12, pour=pour)


of_mill = makes({"mill_b": "mill_a"}, {"mill_a": [{"holds": "1 kg", "paid": "9"}], "mill_b": [{"holds": "1 kg", "paid": "5"}]})
for values, is_one in (((190, 190), True), ((190, 194), False)):
    result = buy(with_own_fats(values), of=of_mill, status=0 if is_one else 1)
    if is_one:
        check("mill_b, in place of mill a" in result.stdout, f"fats of one value: {result.stdout}")
    else:
        check(result.stdout == "" and result.stderr.count("\n") == 1 and "is another fat than \"mill_a\", with another saponification value" in result.stderr,
              f"fats of two values: {result.stderr}")

os.remove(f"{folder}/studio.json")
alone = subprocess.run([program, "buy", small], cwd=folder, capture_output=True, text=True)
check(alone.returncode == 1 and "has no studio.json beside it" in alone.stderr, f"without a studio: {alone.stderr}")

shutil.rmtree(folder)
end("what runs need is bought at least cost, and a slip is told")
