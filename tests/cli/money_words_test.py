"""By what names money goes: water is from the tap where nobody sells it, in plan, quote, buy and days alike; a solution is never taken for
dry alkali; a run's own packaging stands in place of the studio's everywhere. What is asked about is told in one line."""
import csv
import json
import tempfile
from decimal import Decimal

from checks import check, end, read, root, run, write

folder = tempfile.mkdtemp()
formula = read(f"{root}/examples/meadow_base.formula.json")
formula.pop("$schema")
write(f"{folder}/meadow_base.formula.json", formula)
plain = read(f"{root}/examples/plain_bars.run.json")
for part in ("$schema", "money"):
    plain.pop(part, None)
names = ["olive", "coconut", "rapeseed_low_erucic", "cocoa_butter", "castor", "NaOH", "sodium lactate, 60 % solution", "white kaolin", "lavender essential oil",
         "green mica"]
studio = {"schema": "brimwright.studio/1", "currency": "EUR", "packs": {name: [{"holds": "1 kg", "paid": "9.00"}] for name in names},
          "work": {"paid_an_hour": "15.00", "each_batch": "3 h", "each_piece_packed": "1 min"}, "days": {"making": {"tuesday": "6 h", "friday": "6 h"}}}


def lay_out(of=studio, **more):
    write(f"{folder}/studio.json", of)
    write(f"{folder}/a.run.json", {**plain, **more})
    write(f"{folder}/b.run.json", {**plain, "name": "Other bars", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f009"})
    write(f"{folder}/both.order.json", {"schema": "brimwright.order/1", "lines": [{"run": f"{name}.run.json", "pieces": 12} for name in "ab"]})


def text(*words, of=studio, **more):
    lay_out(of, **more)
    done = run(*words, folder=folder)
    check(done.returncode == 0, f"{words}: {done.stderr}")
    return " ".join(done.stdout.split())


def answer(*words, of=studio, **more):
    lay_out(of, **more)
    done = run(*words, "--json", folder=folder)
    check(done.returncode == 0, f"{words}: {done.stderr}")
    return json.loads(done.stdout) if done.returncode == 0 else None


def refused(said, *words, of=studio, **more):
    lay_out(of, **more)
    done = run(*words, folder=folder)
    check(done.returncode == 1 and done.stdout == "" and done.stderr.count("\n") == 1 and said in done.stderr, f"{words}: {done.returncode} {done.stderr!r}, not {said!r}")


def packed(**packs):
    return {**studio, "packs": {**studio["packs"], **packs}}


# ---- water that nobody sells costs nothing and is bought nowhere, and each answer says so

TAP = "Water is taken from the tap"
quote = answer("quote", "a.run.json", "--margin", "40 %")["numbers"][0]
water = next(item for item in quote["items"] if item["from_tap"])
check(quote["unpriced"] == [] and water["cost"] == "0.00" and "tap" in water["name"] and len(quote["prices"]) == 1, f"water of a quote: {quote['unpriced']} {water}")
check("water" not in [one["shown_as"] for one in quote["cash"]["left"]] and quote["cash"]["unpriced"] == [], f"water to lay out: {quote['cash']}")
check(sum(Decimal(item["cost"]) for item in quote["items"]) == Decimal(quote["cost"]), "items do not add up")
plan = answer("plan", "a.run.json")["piece"]["cost"]
line = next(one for one in plan["materials"] if one["name"] == "water")
check(plan["unpriced"] == [] and line["amount"] == "0.00" and line["from_tap"], f"water of a plan: {plan['unpriced']} {line}")
for words in (("quote", "a.run.json"), ("quote", "both.order.json"), ("buy", "a.run.json"), ("days", "a.run.json", "--from", "2026-10-01")):
    check(TAP in text(*words), f"{words} does not tell of the tap")
check("from the tap" in text("plan", "a.run.json"), "the plan's cost does not tell of the tap")
bought = answer("buy", "a.run.json")
check("water" not in bought["unpriced"] and all(pack["material"] != "water" for one in bought["deliveries"] for pack in one["packs"]), "water is bought")

# What is bought is priced, by any of its names and by the litre: 5 l of it weigh less than 5 kg (Kell 1975: 0.9957 g/ml at 30 °C).
for name in ("water", "distilled water", "Wasser, destilliert", "eau déminéralisée", "deionised water"):
    of = packed(**{name: [{"holds": "5 l", "paid": "4.00"}]})
    quote = answer("quote", "a.run.json", "--margin", "40 %", of=of)["numbers"][0]
    water = next(item for item in quote["items"] if item["name"].startswith("Water"))
    grams = float(water["amount"].split()[0])
    check(not water["from_tap"] and abs(float(water["cost"]) - grams * 4 / 4978.5) < 0.0051, f"{name}: {water}")
    bought = answer("buy", "a.run.json", of=of)
    pack = [pack for one in bought["deliveries"] for pack in one["packs"] if pack["material"] == "water"]
    check(len(pack) == 1 and abs(pack[0]["holds_g"] - 4978.5) < 1, f"{name} is not bought: {pack}")
    for words in (("quote", "a.run.json"), ("buy", "a.run.json"), ("days", "a.run.json", "--from", "2026-10-01")):
        check(TAP not in text(*words, of=of), f"{words} takes {name} from the tap")
    short = answer("buy", "a.run.json", "--with-stock", of={**of, "have": {name: "50 kg" for name in names}})["with_stock"]
    check([one["material"] for one in short["limited_by"]] == ["water"], f"{name}, of which there is none: {short}")
full = answer("buy", "a.run.json", "--with-stock", of={**studio, "have": {name: "50 kg" for name in names}})["with_stock"]
check(full["pieces"] == plain["sell"], f"water from the tap is short: {full}")
rose = answer("quote", "a.run.json", of=packed(**{"rose water": [{"holds": "1 l", "density": "1 g/ml", "paid": "9.00"}]}))["numbers"][0]
check(any(item["from_tap"] for item in rose["items"]), "rose water is water")
own = {"currency": "EUR", "prices": {"distilled water": {"paid": "1.00", "for": "1 kg"}}}
check(not any(item["from_tap"] for item in answer("quote", "a.run.json", money=own)["numbers"][0]["items"]), "the run's own price of distilled water")
# What else has no price stays unpriced, and a part of the piece that has nothing but water from the tap is.
bare = answer("quote", "a.run.json", of={**studio, "packs": {}})["numbers"][0]
check(len(bare["unpriced"]) == len(names) and bare["prices"] == [], f"unpriced: {bare['unpriced']}")
check("Base unpriced" in text("quote", "a.run.json", of={**studio, "packs": {}}), "a base of tap water alone has a cost")
check(answer("plan", "a.run.json", of={**studio, "packs": {"gift box": [{"holds": "9 pieces", "paid": "1"}]}})["piece"]["cost"]["amount"] is None, "water alone makes a cost of 0.00")

# ---- a solution is never dry alkali: not as a pack, a price, on the shelf or in waste; nor where the name may be either

commands = (("plan", "a.run.json"), ("quote", "a.run.json"), ("buy", "a.run.json"), ("days", "a.run.json", "--from", "2026-10-01"))
no_naoh = {name: pack for name, pack in studio["packs"].items() if name != "NaOH"}
ten = [{"holds": "10 kg", "paid": "15.00"}]
for name, said in (("NaOH 50 %", "tells of a solution"), ("NaOH 50%", "tells of a solution"), ("sodium hydroxide, 32 percent", "tells of a solution"),
                   ("Natronlauge 50 %", "tells of a solution"), ("caustic soda solution", "tells of a solution"), ("lessive de soude", "tells of a solution"),
                   ("NaOH, liquid", "tells of a solution"), ("NaOH 1:1", "tells of a solution"), ("lye solution", "does not tell which alkali"),
                   ("lye", "does not tell which alkali"), ("lye flakes", "does not tell which alkali"), ("soda lye", "may be a solution, or dry NaOH"),
                   ("NaOH 70 %", "may be a solution, or dry NaOH"), ("NaOH 50", "may be a solution, or dry NaOH"), ("KOH 45 %", "tells of a solution"),
                   ("Kalilauge", "tells of a solution"), ("KOH 70 %", "may be a solution, or dry KOH")):
    for words in commands:
        refused(f'studio.json: /packs/{name.replace("/", "~1")}/0/holds: "{name}" {said}', *words, of={**studio, "packs": {**no_naoh, name: ten}})
refused('"lye_solutions" in the studio', "quote", "a.run.json", of=packed(**{"NaOH 50 %": ten}))
refused('studio.json: /prices/NaOH 50 %', "quote", "a.run.json", of={**studio, "packs": no_naoh, "prices": {"NaOH 50 %": {"paid": "15.00", "for": "10 kg"}}})
refused('a.run.json: /money/prices/NaOH 50 %: "NaOH 50 %" tells of a solution', "plan", "a.run.json", money={"currency": "EUR", "prices": {"NaOH 50 %": {"paid": "15.00", "for": "10 kg"}}})
for words in commands[1:3]:
    refused('studio.json: /have/NaOH 50 %: "NaOH 50 %" tells of a solution', *words, of={**studio, "have": {"NaOH 50 %": "2 kg"}})
    refused('studio.json: /waste/lye: "lye" does not tell', *words, of={**studio, "waste": {"lye": "2 %"}})

# Dry alkali by the names it is sold by, with its purity too; and what stands under "lye_solutions" is itself.
price = next(item for item in answer("quote", "a.run.json", of={**studio, "packs": {**no_naoh, "NaOH": ten}})["numbers"][0]["items"] if item["name"].startswith("NaOH"))
for name in ("NaOH 99 %", "caustic soda", "Sodium hydroxide pearls 98-99 %", "NaOH lye beads", "Ätznatron, Perlen", "NaOH, 25 kg", "NaOH (1310-73-2)", "E 524"):
    got = next(item for item in answer("quote", "a.run.json", of={**studio, "packs": {**no_naoh, name: ten}})["numbers"][0]["items"] if item["name"].startswith("NaOH"))
    check(got["cost"] == price["cost"], f"{name}: {got}")
half = {"alkali": "NaOH", "strength": "50 %", "strength_range": ["49 %", "51 %"], "kept_at": "20 °C"}
ready = {**packed(**{"NaOH 50 %": ten}), "lye_solutions": {"NaOH 50 %": half}}
got = next(item for item in answer("quote", "a.run.json", of=ready)["numbers"][0]["items"] if item["name"].startswith("NaOH"))
check(got["how"].endswith("9.00 ÷ 1000 g"), f"dry NaOH by the solution's price: {got}")
soft = {**formula, "alkali": [{"alkali": "NaOH", "share": "90 %", "purity": "99 %"}, {"alkali": "KOH", "share": "10 %", "purity": "90 %"}]}
write(f"{folder}/meadow_base.formula.json", soft)
for name in ("KOH", "KOH 90 %", "KOH flakes 85-90 %", "potassium hydroxide, 92 %", "KOH for liquid soap"):
    items = answer("quote", "a.run.json", of=packed(**{name: ten}))["numbers"][0]["items"]
    check(next(item for item in items if item["name"].startswith("KOH"))["how"].endswith("15.00 ÷ 10000 g"), f"{name} is no dry KOH")

# ---- alkali of another purity than is planned is weighed otherwise (90 g of pure KOH are 100 g at 90 %, 94.7 g at 95 %: it stands for nothing)


def koh(told):
    return next(item for item in told["numbers"][0]["items"] if item["name"].startswith("KOH"))


def told_in_all(said, of, told=True):
    for words in commands:
        check((said in text(*words, of=of)) == told, f"{words}: {'not ' if told else ''}told: {said}")


for name in ("KOH flakes 85 %", "potassium hydroxide, 95 %", "KOH 93-95 %", "KOH 85 percent"):
    other = packed(**{name: ten})
    told_in_all(f'"{name}" does not count as KOH here: "{formula["name"]}" is planned with KOH that is 90 % pure', other)
    got = answer("quote", "a.run.json", of=other)
    check(koh(got)["cost"] is None and len(got["numbers"][0]["unpriced"]) == 1, f"{name} is priced as KOH of 90 %: {koh(got)}")
    check("KOH" in answer("plan", "a.run.json", of=other)["piece"]["cost"]["unpriced"], f"{name} in a plan's cost")
    check("KOH" in answer("buy", "a.run.json", of=other)["unpriced"], f"{name} is bought as KOH of 90 %")
own = {"currency": "EUR", "prices": {"KOH 95 %": {"paid": "15.00", "for": "10 kg"}}}
check('"KOH 95 %" does not count as KOH' in text("plan", "a.run.json", money=own), "a run's own price of another purity")
# Where one is listed that fits, the other is passed over, be it cheaper and first; on the shelf it is told of.
both = packed(**{"KOH flakes 85 %": [{"holds": "10 kg", "paid": "5.00"}], "KOH 90 %": ten})
told_in_all("does not count as KOH", both, told=False)
check(koh(answer("quote", "a.run.json", of=both))["how"].endswith("15.00 ÷ 10000 g"), "KOH of 90 % by the price of 85 %")
shelf = {**both, "have": {"KOH flakes 85 %": "2 kg"}}
bought = answer("buy", "a.run.json", of=shelf)
check(any(pack["material"] == "KOH" for one in bought["deliveries"] for pack in one["packs"]), f"KOH of 85 % on the shelf is taken for 90 %: {bought}")
check('"KOH flakes 85 %" does not count as KOH' in text("buy", "a.run.json", of=shelf), "the shelf's other purity is not told")
# Planned with the purity of what is bought, it counts; the same of NaOH, which is taken as exactly as pure as stated.
write(f"{folder}/meadow_base.formula.json", {**soft, "alkali": [soft["alkali"][0], {"alkali": "KOH", "share": "10 %", "purity": "85 %"}]})
got = answer("quote", "a.run.json", of=packed(**{"KOH flakes 85 %": ten}))
check(koh(got)["how"].endswith("15.00 ÷ 10000 g"), f"KOH of 85 % for a formula of 85 %: {koh(got)}")
write(f"{folder}/meadow_base.formula.json", formula)
other = {**studio, "packs": {**no_naoh, "NaOH 97 %": ten}}
told_in_all('"NaOH 97 %" does not count as NaOH here', other)
# Runs that plan with two purities are not added up without a word.
write(f"{folder}/weak.formula.json", {**formula, "name": "Weak base", "alkali": [{"alkali": "NaOH", "share": "100 %", "purity": "97 %"}]})
lay_out()
write(f"{folder}/b.run.json", {**plain, "name": "Other bars", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f009", "pour": {**plain["pour"], "formula": "weak.formula.json"}})
done = run("buy", "a.run.json", "b.run.json", folder=folder)
check(done.returncode == 0 and '"Weak base" is planned with NaOH that is 97 % pure' in " ".join(done.stdout.split()), f"two purities in one purchase: {done.stdout}{done.stderr}")
# What only has the word in it is left alone.
check(answer("quote", "a.run.json", of=packed(**{"lye labels": [{"holds": "50 pieces", "paid": "3.00"}]})) is not None, "labels for lye")

# ---- packaging of the run's own

shop = {**studio, "packaging": [{"material": "label", "each_piece": "1 piece"}],
        "packs": {**studio["packs"], "label": [{"holds": "100 pieces", "paid": "10.00"}],
                  "gift box": [{"holds": "10 pieces", "paid": "8.00", "from": "Box maker"}]}, "sellers": {"Box maker": {"lead_time": "9 days", "postage": "0"}}}
boxed = {"packaging": [{"material": "gift box", "each_piece": "1 piece"}, {"material": "tissue", "each_piece": "3 g"}]}
tissue = {**shop, "packs": {**shop["packs"], "tissue": [{"holds": "500 g", "paid": "5.00"}]}}


def packaging(told):
    return {item["name"]: item["cost"] for item in told["items"] if item["part"] == "Packaging"}


check(packaging(answer("quote", "a.run.json", of=tissue)["numbers"][0]) == {"label": f"{plain['sell'] * 0.1:.2f}"}, "the studio's packaging")
told = answer("quote", "a.run.json", of=tissue, **boxed)
check(packaging(told["numbers"][0]) == {"gift box": f"{plain['sell'] * 0.8:.2f}", "tissue": f"{plain['sell'] * 0.03:.2f}"}, f"the run's own: {packaging(told['numbers'][0])}")
words = "packed as the run says (gift box, tissue), in place of the studio's (label)"
check(any(words in one for one in told["remarks"]) and words in text("quote", "a.run.json", of=tissue, **boxed), f"not told: {told['remarks']}")
order = answer("quote", "both.order.json", of=tissue, **boxed)
first, second = order["times"][0]["lines"]
check(set(packaging(first)) == {"gift box", "tissue"} and set(packaging(second)) == {"label"}, "a line of an order packs as the other")
check(sum(words in one for one in order["remarks"]) == 1, f"not told of the order: {order['remarks']}")
for file, labels in (("a.run.json", 0), ("both.order.json", 12)):
    got = answer("buy", file, of=tissue, **boxed)
    used = {one["material"]: one.get("used_pieces", one.get("used_g")) for one in got["materials"]}
    check(used["gift box"] == (12 if labels else plain["sell"]) and used.get("label", 0) == labels, f"{file} buys {used}")
    check(any(words in one["text"] for one in got["notes"]), f"buy {file} does not tell: {got['notes']}")
steps = [one for one in answer("quote", "a.run.json", "--sell", "12", of=tissue, **boxed)["pack_steps"] if one["material"] == "gift box"]
check([one["sell"] for one in steps] == [11, 21], f"another pack of boxes: {steps}")
days = answer("days", "a.run.json", "--from", "2026-10-01", of=tissue, **boxed)
orders = [act["text"] for one in days["days"] for act in one["acts"] if act["act"] == "order"]
check(any("Box maker" in one and "gift box" in one for one in orders) and not any("label" in one for one in orders), f"days: {orders}")
check(any(words in one["text"] for one in days["notes"]), "days do not tell")
none = answer("quote", "a.run.json", of=tissue, packaging=[])
check(packaging(none["numbers"][0]) == {} and any("nothing goes round a piece, by the run's own word, in place of the studio's (label)" in one for one in none["remarks"]), "an empty list")
for slip, said in (([{"material": "gift box", "each_piece": "1"}], "a.run.json: /packaging/0/each_piece"), ([{"material": "gift box"}], "a.run.json: /packaging/0/each_piece: is missing"),
                   ([{"each_piece": "1 piece"}], "a.run.json: /packaging/0/material: is missing"), ([{"material": "gift box", "each_piece": "0 pieces"}], "is not a number of pieces"),
                   ([{"material": "gift box", "each_piece": "1 piece", "paid": "3"}], "/packaging/0/paid: unknown key"), ("gift box", "a.run.json: /packaging")):
    for words in (("plan", "a.run.json"), ("quote", "a.run.json")):
        refused(said, *words, of=tissue, packaging=slip)

# ---- packs of a material that are too many ways to put together: said, and why, in every form

sizes = [997, 991, 983, 977, 971, 967, 953, 947, 941, 937, 929, 919]
hard = {**studio, "packs": {**studio["packs"], "coconut": [{"holds": "100 g", "paid": "1.00"}], "olive": [{"holds": f"{size / 100} g", "paid": f"{size * 7 // 100 / 100 + 0.01:.2f}"} for size in sizes]}}
told = answer("quote", "a.run.json", of=hard)
why = "so many ways that the cheapest could not be proved"
check([one["shown_as"] for one in told["pack_steps_untold"]] == ["Olive oil"] and why in told["pack_steps_untold"][0]["why"], f"untold: {told['pack_steps_untold']}")
check({one["shown_as"] for one in told["pack_steps"]} >= {"Coconut oil"}, "other materials are not told any more")
shown = text("quote", "a.run.json", of=hard)
check(f"Where another pack of Olive oil begins is not told" in shown and why in shown and "Olive oil not told" in shown, shown[-900:])
lay_out(hard)
run("quote", "a.run.json", "--csv", "q.csv", "--html", "q.html", folder=folder)
with open(f"{folder}/q.csv", newline="") as file:
    rows = [row for row in csv.DictReader(file) if row["table"].startswith("ANOTHER PACK")]
check(any("not told" in row["figure"] and why in row["figure"] for row in rows) and any(row["figure"] == "Olive oil" for row in rows), f"the table: {rows}")
check(why in open(f"{folder}/q.html").read(), "the sheet")

end("names of money mean what they say, in every answer alike")
