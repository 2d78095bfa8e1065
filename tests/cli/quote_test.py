"""`quote`: the cost of a piece worked out a second time from the plan's weights and the prices in exact fractions, parts that add
to the whole to the coin, each step found again by planning every number one by one, and what cannot be quoted refused in one line."""
import json
import os
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from decimal import Decimal
from fractions import Fraction

root, program = os.path.abspath(sys.argv[1]), sys.argv[2]
folder = tempfile.mkdtemp()
failures = []


def check(is_so, what):
    if not is_so:
        failures.append(what)


def ran(*words):
    return subprocess.run([program, *words], cwd=root, capture_output=True, text=True, timeout=200)


def answer(*words):
    done = ran(*words, "--json")
    if done.returncode != 0:
        failures.append(f"{' '.join(words)}: {done.stderr.strip()}")
        raise SystemExit("\n".join(failures))
    return json.loads(done.stdout)


def write(name, document):
    with open(f"{folder}/{name}", "w") as file:
        json.dump(document, file)
    return f"{folder}/{name}"


def shipped(name):
    with open(f"{root}/examples/{name}") as file:
        return json.load(file)


def own_copy(change=lambda run: None, studio=None):
    for formula in os.listdir(f"{root}/examples"):
        if formula.endswith((".formula.json", ".fats.json", ".tips.json")):
            write(formula, shipped(formula))
    run = shipped("spring_cups.run.json")
    change(run)
    if studio is not None:
        write("studio.json", {"schema": "brimwright.studio/1", **studio})
    elif os.path.exists(f"{folder}/studio.json"):
        os.remove(f"{folder}/studio.json")
    return write("own.run.json", run)


GRAMS = {"g": 1, "kg": 1000}


def grams(text):
    number, unit = text.split()
    return Fraction(number) * GRAMS[unit]


def materials_cost(plan, prices):
    """Exact, of what the plan weighs out; the prices are of whole packs."""
    return sum((Fraction(str(line["g"])) * Fraction(prices[line["name"]]["paid"]) / grams(prices[line["name"]]["for"])
                for line in plan["piece"]["cost"]["materials"] if line["name"] in prices), Fraction(0))


def adds_up(number):
    each = sum(Decimal(part["each"]) for part in number["parts"])
    check(each == Decimal(number["cost_each"]), f"parts of a piece come to {each}, not {number['cost_each']}")
    items = sum(Decimal(item["cost"]) for item in number["items"] if item["cost"] is not None)
    check(items == Decimal(number["cost"]), f"items come to {items}, not {number['cost']}")


def nearest(value):
    return Decimal(int(value * 100 + Fraction(1, 2))) / 100


# ---- materials alone, by the run's own prices; the copy's dust has none
PRICES = shipped("spring_cups.run.json")["money"]["prices"]
for run in ("examples/spring_cups.run.json", own_copy(lambda run: run["money"]["prices"].pop("gold mica"))):
    quote = answer("quote", run, "--sell", "20,24,46", "--margin", "60 %")
    check([number["sell"] for number in quote["numbers"]] == [20, 24, 46], f"{run}: other numbers")
    for number in quote["numbers"]:
        adds_up(number)
        priced = {name: price for name, price in PRICES.items() if name not in number["unpriced"]}
        exact = materials_cost(answer("plan", run, "--sell", str(number["sell"])), priced)
        check(Decimal(number["cost"]) == nearest(exact), f"{run}, {number['sell']}: costs {number['cost']}, not {float(exact)}")
        each = exact / number["sell"]
        if number["unpriced"]:
            check(number["prices"] == [], f"{run}: a price is told while {number['unpriced']} is unpriced")
            continue
        asked = Fraction(number["prices"][0]["ask"])
        check(asked - Fraction(1, 100) < each / (1 - Fraction(60, 100)) <= asked, f"{run}: asks {asked} for {float(each)}")

# ---- with all that a studio says
MONEY = {"currency": "EUR",
         "prices": {"label paper": {"paid": "8.00", "for": "1 kg"}},
         "packaging": [{"material": "label paper", "each_piece": "2 g"}],
         "work": {"paid_an_hour": "24.00", "each_batch": "90 min", "each_piece_made": "2 min", "each_piece_packed": "90 s"},
         "overhead": {"each_batch": "3.00", "each_piece_made": "0.05"},
         "waste": {"olive": "2 %"},
         "tax": {"rate": "20 %", "prices_paid": "with tax", "prices_asked": "with tax"},
         "fees": {"of_price": "6 %", "each_order": "0.40"},
         "asking": {"retail": {"margin": "40 %"}, "wholesale": {"markup": "25 %"}}}
own = own_copy(studio=MONEY)
quote = answer("quote", own)
plan = answer("plan", own)
number = quote["numbers"][0]
adds_up(number)
prices = {**PRICES, **MONEY["prices"]}
make, sell, batches = number["make"], number["sell"], number["batches"]
olive = sum(Fraction(str(line["g"])) for line in plan["piece"]["cost"]["materials"] if line["name"] == "olive")
check(olive > 0, "the run has no olive oil to waste")
paid = (materials_cost(plan, prices) + olive * Fraction(2, 100) * Fraction(prices["olive"]["paid"]) / grams(prices["olive"]["for"]) +
        Fraction(2 * sell) * Fraction(8) / 1000)
work = Fraction(24, 60) * (90 * batches + 2 * make + Fraction(3, 2) * sell)
cost = paid / Fraction(12, 10) + work + 3 * batches + Fraction(5, 100) * make
check(Decimal(number["cost"]) == nearest(cost), f"with work: {number['cost']}, not {float(cost)}")
each, fixed, fee = cost / sell, Fraction(40, 100) / sell, Fraction(6, 100) * Fraction(12, 10)
for price, exact in zip(number["prices"], ((each + fixed) / (1 - Fraction(40, 100) - fee), (each * Fraction(125, 100) + fixed) / (1 - fee))):
    asked = Fraction(price["ask"])
    check(asked - Fraction(1, 100) < exact * Fraction(12, 10) <= asked, f"{price['way']}: asks {price['ask']}, not {float(exact * Fraction(12, 10))}")
check([price["way"] for price in number["prices"]] == ["retail", "wholesale"], "not both ways")
told = ran("quote", own).stdout
check("RETAIL, margin 40 %" in told and "WHOLESALE, markup 25 %" in told and "Packaging" in told, f"for people: {told}")

# ---- what is counted is paid by the piece, from the first pack listed; waste goes by any name of a fat
boxed = own_copy(studio={"currency": "EUR", "packs": {"gift box": [{"holds": "50 pieces", "paid": "30.00"}, {"holds": "10 pieces", "paid": "9.00"}]},
                         "packaging": [{"material": "gift box", "each_piece": "2 pieces"}], "waste": {"Olive oil": "10 %"}})
items = {(item["part"], item["name"]): item for item in answer("quote", boxed, "--sell", "25")["numbers"][0]["items"]}
check(items[("Packaging", "gift box")]["cost"] == "30.00", f"50 boxes: {items[('Packaging', 'gift box')]}")
check("1.1 with waste" in items[("Base", "Olive oil")]["how"], f"waste by another name: {items[('Base', 'Olive oil')]}")

# ---- every step, found again one by one
WHOLES = ("fillings", "batches", "tray_fills")


def wholes(run, sell):
    done = ran("plan", run, "--sell", str(sell), "--json")
    if done.returncode != 0:
        return None
    found = json.loads(done.stdout)
    return (found["pieces"]["fillings"], found["pieces"]["batches"], sum(one["tray_fills"] for one in found["decorations"]))


few_moulds = own_copy(lambda run: run["pour"].update(moulds_owned=2))
for run, largest in (("examples/spring_cups.run.json", 30), (few_moulds, 20)):
    quote = answer("quote", run, "--sell", str(largest))
    steps = {step["sell"]: step for step in quote["steps"]}
    gaps = {sell for gap in quote["gaps"] for sell in range(gap["from"], gap["to"] + 1)}
    with ThreadPoolExecutor(os.cpu_count()) as pool:
        found = dict(zip(range(1, 2 * largest + 1), pool.map(lambda sell: wholes(run, sell), range(1, 2 * largest + 1))))
    check(gaps == {sell for sell, one in found.items() if one is None}, f"{run}: other gaps than {gaps}")
    for sell in range(2, 2 * largest + 1):
        before, now = found[sell - 1], found[sell]
        is_step = before is not None and now is not None and any(b > a for a, b in zip(before, now))
        if is_step:
            check(sell in steps, f"{run}: no step at {sell}")
        if sell in steps and now is not None:
            check(tuple(steps[sell][key] for key in WHOLES) == now, f"{run}: another step at {sell}")
    check(steps, f"{run}: no step at all")

# ---- where another pack begins, found again from what the integer program buys for every number; without postage no material waits
# for another, so that what it buys of each is the cheapest of that material
def paid_for(packs):
    paid = {}
    for pack in packs:
        material = pack["shown_as"].split(", in place of ")[-1]
        paid[material] = paid.get(material, 0) + Decimal(pack["sum"])
    return paid


def paid_by_material(run, numbers):
    """Of each number, what is paid for packs of each material."""
    found = answer("quote", run, "--sell", ",".join(map(str, numbers)))["numbers"]
    return {one["sell"]: paid_for(one["cash"]["packs"]) for one in found}


def take_what_stands_ready(run):
    run["pour"].update(lye_from="The jug", blend={"name": "Hard fats", "share": "30 %"})


packs = {"olive": [{"holds": "1 kg", "paid": "9.00"}, {"holds": "5 kg", "paid": "30.00"}], "Mill oil": [{"holds": "250 g", "paid": "2.60"}],
         "NaOH": [{"holds": "100 g", "paid": "2.00"}, {"holds": "350 g", "paid": "5.00"}], "gift box": [{"holds": "10 pieces", "paid": "3.00"}]}
of_packs = {"currency": shipped("spring_cups.run.json")["money"]["currency"], "packs": packs, "serves_as": {"Mill oil": "olive"},
            "packaging": [{"material": "gift box", "each_piece": "1 piece"}], "waste": {"olive": "5 %"},
            "have": {"Mill oil": "120 g", "caustic soda": "30 g", "gift box": "4 pieces"}}
made_ahead = {
    "lye_solutions": {"The jug": {"alkali": "NaOH", "strength": "50 %", "strength_range": ["49 %", "51 %"], "kept_at": "20 °C",
                                  "made_from": {"purity": "99 %"}}},
    "blends": {"Hard fats": {"fats": [{"fat": "coconut", "share": "70 %"}, {"fat": "olive", "share": "30 %"}]}},
    "have": {**of_packs["have"], "The jug": "200 g", "Hard fats": "90 g"}}
for change, more in ((lambda run: None, {}), (take_what_stands_ready, made_ahead)):
    packed = own_copy(change, studio={**of_packs, **more})
    quote = answer("quote", packed, "--sell", "30")
    made = [sell for sell in range(1, 61) if not any(gap["from"] <= sell <= gap["to"] for gap in quote["gaps"])]
    with ThreadPoolExecutor(os.cpu_count()) as pool:
        parts = pool.map(lambda numbers: paid_by_material(packed, numbers), [made[i:i + 12] for i in range(0, len(made), 12)])
        paid = {sell: one for part in parts for sell, one in part.items()}
    expected = {(sell, material): paid[sell][material] - paid[sell - 1].get(material, 0)
                for sell in made if sell - 1 in paid for material in paid[sell] if paid[sell][material] > paid[sell - 1].get(material, 0)}
    found = {(step["sell"], step["shown_as"]): Decimal(step["more"]) for step in quote["pack_steps"]}
    check(found == expected, f"other packs begin: {sorted(set(found.items()) ^ set(expected.items()))}")
    check({"Olive oil", "NaOH", "gift box"} <= {material for _, material in expected}, f"too few materials to try: {expected}")
    check("ANOTHER PACK, up to 60 pieces" in ran("quote", packed, "--sell", "30").stdout, "packs that begin are not told")

# ---- what lacks a price is named, and no price is told
bare = own_copy(lambda run: run["money"]["prices"].pop("olive"))
number = answer("quote", bare, "--margin", "40 %")["numbers"][0]
check(number["unpriced"] == ["Olive oil"] and number["prices"] == [], f"unpriced: {number['unpriced']} {number['prices']}")
check("UNPRICED: Olive oil" in ran("quote", bare, "--margin", "40 %").stdout, "unpriced is not said")
loss = ran("quote", own_copy(), "--price", "0.01").stdout
check(loss.startswith("!! BELOW COST"), f"a price below cost is not shouted: {loss[:200]}")


# ---- refused in one line, nothing printed
def refused(words, *said):
    done = ran("quote", *words)
    is_so = done.returncode == 1 and done.stdout == "" and done.stderr.count("\n") == 1 and all(one in done.stderr for one in said)
    check(is_so, f"quote {' '.join(words)}: {done.returncode} {done.stdout[:80]}{done.stderr}")


plain = "examples/spring_cups.run.json"
refused([plain, "--margin", "100 %"], "--margin", "below 100 %")
refused([plain, "--margin", "40"], "--margin", "has no unit", '"40 %"')
refused([plain, "--margin", "40 %", "--markup", "60 %"], "--margin", "--markup")
refused([plain, "--price", "-3"], "--price", "is negative")
refused([plain, "--price", "0"], "--price", "is zero")
refused([plain, "--price", ".99"], "--price", '"0.99"')
refused([plain, "--price", "99999999999"], "--price", "is more than any price")
refused([plain, "--margin", "0.4 %"], "--margin", "is a margin of 0.4 %", '"40 %" if that is meant')
refused([plain, "--markup", "0.6 %"], "--markup", '"60 %" if that is meant')
refused([plain, "--margin", "99 %"], "--margin", "more than twenty times the cost")
refused([plain, "--sell", "12,,24"], "--sell")
refused([plain, "--sell", "12,many"], "--sell", "many")
refused([plain, "--sell", "6000"], "--sell", "5000")
refused([own_copy(lambda run: run.pop("money"))], "/money", "is missing")
olive = [{"holds": "1 kg", "paid": "9.00"}]
for change, said in (({"packs": {"olive": olive}}, ("/currency", "is missing", '"EUR"')), ({"currency": "EUR", "packs": {"olive": [{"holds": 5, "paid": "9"}]}}, ("/holds", '"5 kg"')),
                     ({"currency": "EUR", "packs": {"olive": [{"holds": "5 kg", "paid": 9}]}}, ("/paid", "in quotes", '"27.50"')),
                     ({"currency": "EUR", "packs": {"box": [{"holds": "1 piece", "paid": "9000"}]}}, ("/packs/box/0", "9000 EUR a piece", "far from usual")),
                     ({"currency": "EUR", "packs": {"olive": olive}, "packaging": [{"material": "olive", "each_piece": "1 piece"}]}, ("studio.json", "/packaging", "used by weight"))):
    refused([own_copy(studio=change)], *said)
refused([own_copy(lambda run: run.update(packaging=[{"material": "olive", "each_piece": "1 piece"}]), studio={"currency": "EUR"})], "own.run.json", "/packaging", "used by weight")
refused([own_copy(lambda run: run.update(packaging=[{"material": "box", "each_piece": "-1 piece"}]), studio={"currency": "EUR"})], "/packaging/0/each_piece", "not a number of pieces")
misspelt = ran("quote", own_copy(studio={"currency": "EUR", "have": {"olvie": "5 kg"}})).stdout
check('What you have of "olvie" does not count' in " ".join(misspelt.split()), "a misspelt shelf is quiet")
refused([own_copy(studio={"currency": "USD", "work": MONEY["work"]})], "studio.json", "/currency", "USD", "EUR")
refused([own_copy(studio={"currency": "EUR", "work": {"paid_an_hour": "24"}})], "studio.json", "/work", "says no time")
refused([own_copy(studio={"currency": "EUR", "work": {"paid_an_hour": "24", "each_batch": "90"}})], "each_batch", "no unit")
refused([own_copy(studio={"currency": "EUR", "asking": {"retail": {"margin": "40 %", "price": "5"}}})], "/asking/retail", "in two ways")
refused([own_copy(studio={"currency": "EUR", "fees": {"of_price": "60 %"}, "asking": {"retail": {"margin": "40 %"}}})], "leaves nothing")
refused([own_copy(studio={"currency": "EUR", "packaging": [{"material": "box", "each_piece": "1"}]})], "/packaging/0/each_piece")
refused([own_copy(studio={"currency": "EUR", "tax": {"rate": "20 %", "prices_paid": "gross", "prices_asked": "with tax"}})], "/tax/prices_paid")

print("\n".join(failures) or "costs, prices and steps are what they must be")
sys.exit(bool(failures))
