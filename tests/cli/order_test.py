"""An order of several runs is quoted, bought for and put on paper as its runs are one by one: costs, materials and packs add up,
fees of each order count once, and a slip in it is told in one line."""
import json
import os
import shutil
import tempfile
from decimal import Decimal
from fractions import Fraction

from checks import check, end, read, root, run, write

folder = tempfile.mkdtemp()
for name in os.listdir(f"{root}/examples"):
    if name.endswith(".json"):
        shutil.copy(f"{root}/examples/{name}", folder)
prices = read(f"{folder}/spring_cups.run.json")["money"]["prices"]
for name in ("spring_cups", "plain_bars"):
    document = read(f"{folder}/{name}.run.json")
    document.pop("money", None)
    write(f"{folder}/{name}.run.json", document)
studio = {"schema": "brimwright.studio/1", "currency": "EUR", "prices": prices,
          "packs": {"gift box": [{"holds": "50 pieces", "paid": "30.00", "from": "Packer"}]},
          "sellers": {"Packer": {"postage": "4.90"}},
          "have": {"gift box": "12 pieces"}, "letterhead": ["Larkfield Soap", "12 Mill Lane"],
          "packaging": [{"material": "gift box", "each_piece": "1 piece"}],
          "fees": {"each_order": "2.00"}, "asking": {"retail": {"margin": "40 %"}, "wholesale": {"markup": "25 %"}}}
write(f"{folder}/studio.json", studio)
order = {"schema": "brimwright.order/1", "for": "December market", "due": "2026-12-20",
         "lines": [{"run": "spring_cups.run.json", "pieces": 24}, {"run": "plain_bars.run.json", "pieces": 30}]}
write(f"{folder}/market.order.json", order)


def told(*words, ok=True):
    done = run(*words, folder=folder)
    check((done.returncode == 0) == ok, f"{words}: exit {done.returncode}, {done.stderr}")
    return done


def answer(*words):
    return json.loads(told(*words, "--json").stdout)


# ---- costs are those of the runs by themselves
quote = answer("quote", "market.order.json", "--times", "1,2")
check([one["times"] for one in quote["times"]] == [1, 2] and quote["due"] == "2026-12-20", "times and day")
for one in quote["times"]:
    pieces = one["times"] * 54
    check(one["pieces"] == pieces, f"{one['pieces']} pieces")
    for line, name in zip(one["lines"], ("spring_cups", "plain_bars")):
        alone = answer("quote", f"{name}.run.json", "--sell", str(line["sell"]))["numbers"][0]
        for key in ("cost", "cost_each", "parts", "items", "make", "batches"):
            check(line[key] == alone[key], f"{name}, {key}: {line[key]} in the order, {alone[key]} alone")
        check(line["prices"][0]["fees"] in (f"{2 / pieces:.2f}",), f"fees of {line['prices'][0]['fees']} a piece of {pieces}")
    check(Decimal(one["cost"]) == sum(Decimal(line["cost"]) for line in one["lines"]), "lines do not add to the order")
    for way, price in enumerate(one["prices"]):
        asked = sum(line["sell"] * Decimal(line["prices"][way]["ask"]) for line in one["lines"])
        check(Decimal(price["ask"]) == asked, f"{price['way']}: {price['ask']}, lines come to {asked}")
        check(price["fees"] == "2.00", f"fees of the order {price['fees']}")
        left = Fraction(price["without_tax"]) - Fraction(price["fees"]) - Fraction(one["cost"])
        check(abs(left - Fraction(price["profit"])) <= Fraction(3, 100), f"{price['profit']} left, not {float(left)}")

# ---- one purchase for all
both = answer("buy", "market.order.json")
needed = {}
for name, sell in (("spring_cups", 24), ("plain_bars", 30)):
    document = read(f"{folder}/{name}.run.json")
    write(f"{folder}/{name}.run.json", {**document, "sell": sell})
    for one in answer("buy", f"{name}.run.json")["materials"]:
        needed[one["material"]] = needed.get(one["material"], 0) + one.get("needed_g", one.get("needed_pieces"))
for one in both["materials"]:
    amount = one.get("needed_g", one.get("needed_pieces"))
    check(abs(amount - needed.pop(one["material"])) < 1e-3, f"{one['material']}: {amount} needed")
check(not needed, f"not bought for the order: {needed}")
boxes = next(one for one in both["materials"] if one["material"] == "gift box")
check((boxes["needed_pieces"], boxes["have_pieces"], boxes["bought_pieces"], boxes["left_pieces"]) == (54, 12, 50, 8), f"boxes {boxes}")
check([one["order"] for one in both["runs"]] == ["market.order.json"] * 2, "whose runs they are")
check(quote["times"][0]["cash"]["total"] == both["total"], f"to lay out {quote['times'][0]['cash']['total']}, bought for {both['total']}")
alone = answer("quote", "spring_cups.run.json", "--sell", "24")["numbers"][0]
check(alone["cash"]["total"] == answer("buy", "spring_cups.run.json")["total"], "cash of a run is not its purchase")
twice = answer("buy", "market.order.json", "plain_bars.run.json")
check(any("2 times" in note["text"] for note in twice["notes"]), "a run that is bought for twice is not told of")

# ---- on paper: what a customer sees has no cost in it
told("quote", "market.order.json", "--way", "retail", "--offer", "offer.html", "--html", "own.html", "--csv", "own.csv")
offer, own = (open(f"{folder}/{name}.html").read() for name in ("offer", "own"))
first = quote["times"][0]
ask = first["prices"][0]["ask"]
check("Larkfield Soap" in offer and "for December market, due 2026-12-20" in offer and ask in offer, "the offer lacks something")
for secret in (first["cost"], first["prices"][0]["profit"], ">margin", "Olive", "wholesale"):
    check(secret not in offer, f"the offer tells {secret}")
check(first["cost"] in own and first["cash"]["total"] in own, "her own paper lacks the cost")
rows = open(f"{folder}/own.csv", newline="").read()
check(f'"RETAIL, margin 40 %",,Ask,x 1,{ask},EUR\r\n' in rows, f"the price is not in the table: {rows[:400]}")
told("quote", "market.order.json", "--csv", "comma.csv", "--csv-for", "comma")
check(f";{ask.replace('.', ',')};EUR\r\n" in open(f"{folder}/comma.csv", newline="").read(), "no decimal comma")
sheet = told("sheet", "market.order.json").stdout
for name in ("Spring cups, twisted", "Plain bars"):
    check(f">{name}" in sheet, f"no sheet for {name}")
check(sheet.count("Order for December market, due 2026-12-20") >= 1, "the sheet does not say what it is for")
picture = told("quote", "spring_cups.run.json", "--picture", "cost.svg", "--sell", "24").stdout
check("24: " in open(f"{folder}/cost.svg").read() and picture, "the picture does not mark the number asked about")

# ---- slips: one line, nothing written
def slip(words, *said, **change):
    write(f"{folder}/slip.order.json", {**order, **change})
    done = told(*words, ok=False)
    is_so = done.returncode == 1 and done.stdout == "" and done.stderr.count("\n") == 1 and all(one in done.stderr for one in said)
    check(is_so, f"{words} {change}: {done.stdout[:80]}{done.stderr}")


quoted = ("quote", "slip.order.json")
line = order["lines"][0]
os.makedirs(f"{folder}/below", exist_ok=True)
slip(quoted, "/lines", "names no run", lines=[])
slip(quoted, "/lines/1/run", "is the run of /lines/0/run too", lines=[line, {"run": "./below/../spring_cups.run.json", "pieces": 3}])
slip(quoted, "/lines/0/run", "is an order itself", lines=[{"run": "slip.order.json", "pieces": 3}])
slip(quoted, "/lines/0/run", "nobody.run.json", lines=[{"run": "nobody.run.json", "pieces": 3}])
slip(quoted, "/lines/0/pieces", lines=[{"run": "plain_bars.run.json", "pieces": 0}])
slip(quoted, "/lines/0/pieces", "peaces", lines=[{"run": "plain_bars.run.json", "peaces": 3}])
slip(quoted, "/due", due="20/12/2026")
slip((*quoted, "--sell", "12"), "--sell", "is of a run")
slip((*quoted, "--times", "0"), "--times", "is not a number of times")
slip((*quoted, "--times", "100000"), "--times", "times the order")
slip((*quoted, "--times", "1000"), "/lines", "made 1000 times", "give at most 5000")
slip((*quoted, "--way", "retale"), "--way", "retail")
slip((*quoted, "--offer", "x.html"), "--offer", "one way")
slip((*quoted, "--picture", "x.svg"), "--picture", "is of a run")
slip((*quoted, "--csv-for", "comma"), "--csv-for", "--csv")
slip(("quote", "plain_bars.run.json", "--times", "2"), "--times", "is of an order")
slip(("buy", "slip.order.json", "--with-stock"), "--with-stock", "is of one run")
slip(("sheet", "slip.order.json", "--sell", "3"), "--sell", "is of a run")
slip(("plan", "slip.order.json"), "slip.order.json", "schema")
check(not os.path.exists(f"{folder}/x.html") and not os.path.exists(f"{folder}/x.svg"), "something was written")
write(f"{folder}/slip.order.json", order)
told("tidy", "slip.order.json")
check(len(read(f"{folder}/slip.order.json").get("id", "")) == 36, "an order is given no id")
end("an order is what its runs are together")
