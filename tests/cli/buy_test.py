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
        ((small,), changed(lambda s: s.pop("currency")), "studio.json: /currency"),
        ((small,), changed(lambda s: s["sellers"]["Oil mill"].update(postage="x")), "studio.json: /sellers/Oil mill/postage")):
    result = buy(*words, of=of, status=1)
    check(result.stdout == "" and result.stderr.count("\n") == 1 and said in result.stderr, f"{words}, {said}: {result.stderr}")

os.remove(f"{folder}/studio.json")
alone = subprocess.run([program, "buy", small], cwd=folder, capture_output=True, text=True)
check(alone.returncode == 1 and "has no studio.json beside it" in alone.stderr, f"without a studio: {alone.stderr}")

shutil.rmtree(folder)
end("what runs need is bought at least cost, and a slip is told")
