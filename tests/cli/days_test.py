"""Runs and orders are put on days: back from a due day, forward to a promise, and what cannot be kept with what would help. The
calendar that is written is read back by libical and by Debian's python3-icalendar. Slips are told in one line each."""
import copy
import csv
import ctypes
import datetime
import io
import json
import os
import re
import shutil
import subprocess
import tempfile
import xml.etree.ElementTree

import icalendar

from checks import check, end, program, read, root, run, write

os.environ["SOURCE_DATE_EPOCH"] = "1790000000"  # Mon 2026-09-21, where a question names no day
folder = tempfile.mkdtemp()
for name in os.listdir(f"{root}/examples"):
    if name.endswith(".json"):
        shutil.copy(f"{root}/examples/{name}", folder)
for name in ("plain_bars", "spring_cups"):
    document = read(f"{folder}/{name}.run.json")
    document.pop("money", None)
    write(f"{folder}/{name}.run.json", document)
tuesdays_and_fridays = {"making": {"tuesday": "6 h", "friday": "6 h"}, "pots_owned": 2, "bowls_owned": 2, "rack_places": 500}
studio = {"schema": "brimwright.studio/1", "currency": "EUR", "days": tuesdays_and_fridays,
          "work": {"paid_an_hour": "15.00", "each_batch": "3 h", "each_piece_packed": "1 min", "each_tray_fill": "10 min"}}
order = {"schema": "brimwright.order/1", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f001", "for": "December market, stall 4; Gruß",
         "due": "2026-12-20", "lines": [{"run": "spring_cups.run.json", "pieces": 24}, {"run": "plain_bars.run.json", "pieces": 12}]}
write(f"{folder}/market.order.json", order)


def days(*words, of=studio, status=0):
    write(f"{folder}/studio.json", of)
    done = subprocess.run([program, "days", *words], cwd=folder, capture_output=True, text=True)
    check(done.returncode == status, f"days {words}: exit {done.returncode}, {done.stderr}")
    return done


def answer(*words, of=studio, **more):
    done = days(*words, "--json", of=of, **more)
    return json.loads(done.stdout) if done.returncode == 0 else {}


def with_days(**more):
    return {**studio, "days": {**tuesdays_and_fridays, **more}}


def acts(told, name):
    return [(day["day"], act) for day in told["days"] for act in day["acts"] if act["act"] == name]


def day(text):
    return datetime.date.fromisoformat(text)


# ---- on paper: due on Sunday 20 December 2026, packed on Friday the 18th, 35 days of cure before it on Friday 13 November
bars = answer("plain_bars.run.json", "--due", "2026-12-20", "--from", "2026-10-01")
check(bars["kept"] and bars["latest_start"] == "2026-11-13" and bars["latest_start_proved"], f"bars begin {bars['latest_start']}")
check([when for when, act in acts(bars, "make")] == ["2026-11-13"], "poured on the 13th")
check([when for when, act in acts(bars, "unmould")] == ["2026-11-17"], "24 h later is a Saturday: unmoulded on the next Tuesday")
check([when for when, act in acts(bars, "pack")] == ["2026-12-18"] and acts(bars, "due")[0][0] == "2026-12-20", "packed on the 18th")
check(bars["asked"][0]["last_making_day"] == "2026-11-13", "last day to pour")
sundays = answer("plain_bars.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=with_days(small_jobs=["saturday"]))
check([when for when, act in acts(sundays, "unmould")] == ["2026-11-14"], "there on Saturdays, she unmoulds on one")
# A holiday on the last making day, one on the packing day, and a stretch of them over the year's end.
off = answer("plain_bars.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=with_days(off=["2026-11-13"]))
check(off["latest_start"] == "2026-11-10", f"a holiday on the last making day: {off['latest_start']}")
off = answer("plain_bars.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=with_days(off=["2026-12-16/2027-01-02"]))
check(off["latest_start"] == "2026-11-10", f"packed on the 15th: {off['latest_start']}")
# Forward over a leap day: poured on Friday 28 January 2028, 35 days to Friday 3 March, promised for the 4th.
leap = answer("plain_bars.run.json", "--from", "2028-01-26")
check(leap["promise"] == "2028-03-04" and leap["kept"] is None and leap["promise_proved"], f"over a leap day: {leap['promise']}")

# ---- forward from the latest start reaches the due day, and one day later does not
market = answer("market.order.json", "--from", "2026-10-01")
check(market["kept"] and market["latest_start_proved"], "the market is kept")
start = market["latest_start"]
open_order = {key: value for key, value in order.items() if key != "due"}
write(f"{folder}/open.order.json", open_order)
check(answer("open.order.json", "--from", start)["promise"] <= "2026-12-20", "forward from the latest start")
later = str(day(start) + datetime.timedelta(1))
check(answer("open.order.json", "--from", later)["promise"] > "2026-12-20", "forward from a day later")
check(not answer("market.order.json", "--from", later)["kept"], "and kept no more")
# The acts in their order, by what the files say: 48 h and 24 h in the mould, 35 days to cure, chilled the evening before.
for batch in market["batches"]:
    hours = 48 if "spring" in batch["runs"][0] else 24
    check(day(batch["unmoulded"]) - day(batch["poured"]) >= datetime.timedelta(hours=hours), f"unmoulded too early: {batch}")
    check(day(batch["cured"]) - day(batch["poured"]) >= datetime.timedelta(35), f"cured too early: {batch}")
    check(max(when for when, act in acts(market, "pack")) >= batch["cured"], f"packed before it has cured: {batch}")
poured = {batch["poured"] for batch in market["batches"] if "spring" in batch["runs"][0]}
check(all(min(when for when, act in acts(market, "chill")) < when for when in poured), "chilled before it is poured")
for when, act in acts(market, "cast"):
    check(when < min(poured), f"cast on {when}, poured on {min(poured)}")
for one in market["days"]:
    check(one["used_min"] <= one["hours_min"], f"{one['day']}: {one['used_min']} of {one['hours_min']} minutes")
    check(day(one["day"]).weekday() in (1, 4) or all(act["act"] in ("due", "cured") for act in one["acts"]), f"work on {one['day']}")
plans = {name: json.loads(run("plan", f"{name}.run.json", "--sell", str(sell), "--json", folder=folder).stdout)
         for name, sell in (("spring_cups", 24), ("plain_bars", 12))}
for name, plan in plans.items():
    made = sorted(batch["pieces"] for batch in market["batches"] if name in batch["runs"][0])
    planned = sorted(batch["pieces"] for batch in plan["batches"] for _ in range(batch["count"]))
    check(made == planned, f"{name}: batches of {made}, planned {planned}")

# ---- what cannot be kept: so many of them, the rest later; what would help does, when it is so
tight = with_days(making={"friday": "3 h 30 min"})
large = {**open_order, "due": "2026-12-20", "lines": [{"run": "plain_bars.run.json", "pieces": 36}]}
write(f"{folder}/large.order.json", large)
late = answer("large.order.json", "--from", "2026-11-05", of=tight)
asked = late["asked"][0]
# A batch of twelve on each Friday from 6 November on: two of them have cured for Friday 18 December, the third is poured on the 20th,
# cured on the 25th and promised for the 26th.
check(not late["kept"] and late["in_time_proved"] and asked["in_time"] == 24 and asked["rest_on"] == "2026-12-26", f"parted: {asked}")
check([when for when, act in acts(late, "make")] == ["2026-11-06", "2026-11-13", "2026-11-20"], "poured on three Fridays")
check([(when, act["pieces"]) for when, act in acts(late, "due")] == [("2026-12-20", 24), ("2026-12-26", 12)], "two days to hand over")
text = days("large.order.json", "--from", "2026-11-05", of=tight).stdout
check(re.search(r"CANNOT BE KEPT: 24 of 36\s+pieces", text) and "the rest on Sat 2026-12-26" in " ".join(text.split()), "told in words")
helps = {one["limit"]: one for one in late["what_if"]}
check("making days" in helps and helps["making days"]["keeps_due"], f"one more making day: {list(helps)}")
weekday = re.search(r"One more making day, (\w+)", helps["making days"]["text"]).group(1).lower()
more = answer("large.order.json", "--from", "2026-11-05", of=with_days(making={"friday": "3 h 30 min", weekday: "3 h 30 min"}))
check(more["kept"] and more["latest_start"] == helps["making days"]["latest_start"], "a making day more does what was said")
moulds_bind = with_days(making={name: "12 h" for name in ("monday", "tuesday", "wednesday", "thursday", "friday")}, pots_owned=9)
moulds_bind["moulds_owned"] = {"moulds/plain_bar.json": 1}
slow = answer("large.order.json", "--from", "2026-11-05", "--due", "2026-12-14", of=moulds_bind)
helps = {one["limit"]: one for one in slow["what_if"]}
check("moulds" in helps, f"one mould of six cavities for 36 pieces limits: {list(helps)}")
two = copy.deepcopy(moulds_bind)
two["moulds_owned"]["moulds/plain_bar.json"] = 2
with_two = answer("large.order.json", "--from", "2026-11-05", "--due", "2026-12-14", of=two)
if helps["moulds"]["keeps_due"]:
    check(with_two["kept"] and with_two["latest_start"] == helps["moulds"]["latest_start"], "one more mould does what was said")
else:
    check(with_two["promise"] == helps["moulds"]["promise"], f"one more mould: {with_two['promise']}, said {helps['moulds']}")

plain_run = read(f"{folder}/plain_bars.run.json")
# ---- buying: ordered as many days before as the seller takes
shop = {**studio, "packs": {name: [{"holds": "5 kg", "paid": "20.00", "from": "Oil mill"}] for name in
                            ("olive", "coconut", "rapeseed_low_erucic", "cocoa_butter", "castor", "NaOH", "white kaolin", "green mica",
                             "lavender essential oil", "sodium lactate, 60 % solution")},
        "sellers": {"Oil mill": {"postage": "6.90", "lead_time": "5 days"}}}
bought = answer("plain_bars.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=shop)
check([when for when, act in acts(bought, "order")] == ["2026-11-08"], f"ordered five days before the 13th: {acts(bought, 'order')}")
check(bought["latest_start"] == "2026-11-08", "which is the start then")
check("water" not in json.dumps(acts(bought, "order")).lower(), "water of which no pack is listed is from the tap, as buy has it")
priced = {**plain_run, "money": {"currency": "EUR", "prices": {"olive": {"paid": "34.90", "for": "5 kg"}}}}
write(f"{folder}/priced.run.json", priced)
nobody = answer("priced.run.json", "--due", "2026-12-20", "--from", "2026-10-01")
check(any("No seller is given for Olive oil" in one["text"] for one in nobody["notes"]), f"a price without a seller: {nobody['notes']}")

# A decoration that is bought is not cast; it is there when the batch is made.
starry = {**read(f"{folder}/plain_bars.run.json"), "name": "Starry", "decorations": [
    {"name": "Star", "material": "star", "bought": {}, "per_piece": 1, "spares": "5 %"}]}
starry.pop("id")
write(f"{folder}/starry.run.json", starry)
stars = {**shop, "packs": {**shop["packs"], "star": [{"holds": "20 pieces", "paid": "4", "from": "Star shop"}]},
         "sellers": {**shop["sellers"], "Star shop": {"postage": "2.00", "lead_time": "8 days"}}}
starred = answer("starry.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=stars)
check(not acts(starred, "cast"), "a bought star is cast")
check([(when, "star" in act["text"]) for when, act in acts(starred, "order")] == [("2026-11-05", True), ("2026-11-08", False)],
      f"ordered eight and five days before the 13th: {acts(starred, 'order')}")

# ---- lines that are poured together are made in the batches of their one base
pair = []
for name, pieces in (("one", 5), ("two", 7)):
    write(f"{folder}/{name}.run.json", {**{key: value for key, value in plain_run.items() if key != "id"}, "name": name.title(),
                                        "pots": {"holds": "2 l"}})
    pair.append({"run": f"{name}.run.json", "pieces": pieces, "together": "A"})
write(f"{folder}/pair.order.json", {**order, "lines": pair})
poured = answer("pair.order.json", "--from", "2026-10-01")
apart = answer("one.run.json", "two.run.json", "--due", "2026-12-20", "--from", "2026-10-01")
check(len(poured["batches"]) == 1 and poured["batches"][0]["pieces"] == 12 and len(poured["batches"][0]["runs"]) == 2, f"{poured['batches']}")
check(len(apart["batches"]) == 2, "by themselves each is a batch")
check([act["min"] for when, act in acts(poured, "make")] == [180], "one batch takes the time of one")
check("One + Two" in acts(poured, "make")[0][1]["text"], acts(poured, "make")[0][1]["text"])

# ---- what is left of a base: of two lines that are alike and poured together as much as of one run of all their pieces
little = {**studio, "moulds_owned": {"moulds/bead_tray.json": 1}}
coarse = {"large": {"step": "25 g", "most": "20 kg", "confirmed": True}, "fine": plain_run["scales"]["fine"]}
for name, pieces in (("one", 5), ("two", 7), ("twelve", 12)):
    write(f"{folder}/coarse_{name}.run.json", {**{key: value for key, value in plain_run.items() if key != "id"}, "name": name.title(),
                                               "sell": pieces, "scales": coarse, "pots": {"holds": "2 l"}})
write(f"{folder}/coarse.order.json", {**order, "lines": [{"run": f"coarse_{name}.run.json", "pieces": pieces, "together": "A"}
                                                         for name, pieces in (("one", 5), ("two", 7))]})
of_one = answer("coarse_twelve.run.json", "--from", "2026-10-01", of=little)["extras"]
of_both = answer("coarse.order.json", "--from", "2026-10-01", of=little)["extras"]
check([one["cavities"] for one in of_both] == [one["cavities"] for one in of_one] and of_one, f"left of one {of_one}, of both {of_both}")
check(of_both[0]["run"] == "One + Two", f"{of_both}")
# Of several batches on a day none is offered a cavity that another's is in; and none of a mould that the work fills.
write(f"{folder}/coarse_many.run.json", {**plain_run, "name": "Many", "sell": 36, "batch": {"pieces": 12}, "scales": coarse})
many = {**with_days(making={"friday": "12 h"}, pots_owned=4),
        "moulds_owned": {"moulds/plain_bar.json": 6, "moulds/half_ring_tray.json": 1, "moulds/bead_tray.json": 1}}
offered = answer("coarse_many.run.json", "--from", "2026-10-01", of=many)
cavities = {}
for one in offered["extras"]:
    when = next(batch["poured"] for batch in offered["batches"] if batch["batch"] == one["batch"])
    cavities[when, one["mould"]] = cavities.get((when, one["mould"]), 0) + one["cavities"]
trays = {read(f"{root}/moulds/{name}.json")["name"]: read(f"{root}/moulds/{name}.json")["cavities"] for name in ("half_ring_tray", "bead_tray")}
check(cavities and all(count <= trays[mould] for (when, mould), count in cavities.items()), f"offered {cavities} of {trays}")

# ---- one lye for the batches of a day
def lye_studio(**of_lye):
    return with_days(making={"tuesday": "6 h", "friday": "6 h"}, small_jobs=["monday", "thursday"], one_lye_a_day=
                     {"holds": "5 l", "pot_tare": "412 g", "saves": "20 min", **of_lye})


pair_of_batches = {**plain_run, "sell": 24, "batch": {"pieces": 12}, "pour": {**plain_run["pour"], "moulds_owned": 9}}
write(f"{folder}/batches.run.json", pair_of_batches)
own = answer("batches.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=with_days(making={"tuesday": "6 h", "friday": "6 h"}))
check(own["lyes"] == [] and own["latest_start"] == "2026-11-13", "each batch its own, in 6 h")
shared = answer("batches.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=lye_studio())
check(shared["latest_start"] == "2026-11-13" and shared["lyes"] == [], "begun on the day itself, there is no evening before")
slower = lye_studio()
slower["work"] = {**slower["work"], "each_batch": "190 min"}
shared = answer("batches.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=slower)
# Twice 190 min are 6 h 20 min, less 20 min the six hours of Friday 13 November; the lye is made on the evening of the 12th.
check(shared["latest_start"] == "2026-11-12" and len(shared["lyes"]) == 1, f"shared: {shared['latest_start']}")
check([act["min"] for when, act in acts(shared, "make")] == [360], "two batches, one lye")
check([(when, act["key"]) for when, act in acts(shared, "chill")] == [("2026-11-12", "lye-1-1")], f"{acts(shared, 'chill')}")
lye = shared["lyes"][0]
pot = lye["pot"]
check((lye["made"], lye["poured"], lye["lye_of"]) == ("2026-11-12", "2026-11-13", "base"), f"{lye['made']}")
check([one["batch"] for one in lye["batches"]] == [1, 2], "for both")


def floor(value, step):
    return int(value / step + 1e-9) * step


# By the rules of the shared pot, anew: alkali is the sum of both batches', rounded down; water by the strength of 33 % of NaOH that is
# 99 % pure; shares in proportion and rounded down; a share's superfat follows from its alkali against that of the batch's own plan.
plan = json.loads(run("plan", "batches.run.json", "--json", folder=folder).stdout)
check([(batch["count"], batch["pieces"]) for batch in plan["batches"]] == [(2, 12)], "two batches alike")
alkali = plan["batches"][0]["pour"]["naoh_g"]
own_superfat = plan["batches"][0]["pour"]["superfat_percent"]["effective"]
both = floor(2 * alkali, 0.1)
check(abs(pot["alkalis"][0]["g"] - both) < 1e-6, f"NaOH {pot['alkalis'][0]['g']}, expected {both}")
check(abs(pot["water_g"] - both * 0.99 * 67 / 33) <= 0.5 + 1e-6, f"water {pot['water_g']}")
check(pot["lye_g"] >= both + pot["water_g"] - 1e-6 and pot["lye_g"] - both - pot["water_g"] < 1, f"made up to {pot['lye_g']}")
check(abs(pot["full_pot_g"] - pot["lye_g"] - 412) < 1e-6, "with its pot")
for share in pot["shares"]:
    check(abs(share["lye_g"] - floor(pot["lye_g"] / 2, 0.1)) < 1e-6, f"share {share['lye_g']} of {pot['lye_g']}")
    taken = both * share["lye_g"] / pot["lye_g"]
    check(taken <= alkali + 1e-9, "a share holds more alkali than its batch asks for")
    superfat = 100 * (1 - (1 - own_superfat / 100) * taken / alkali)
    check(abs(share["superfat_percent"] - superfat) < 0.02, f"superfat {share['superfat_percent']}, expected {superfat}")
check(abs(sum(share["lye_g"] for share in pot["shares"]) + pot["left_g"] - pot["lye_g"]) < 1e-6, "shares and what is left are the lye")
told = " ".join(days("batches.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=slower).stdout.split())
check("ONE POT OF LYE SOLUTION, made on Thu 2026-11-12, for Plain bars, batches 1 and 2 of 2" in told and "make these or those, not both" in told,
      "told in words")
# Batches of a base that lines pour together take their lye out of that pot too, with those of another run: the pot holds the alkali of
# all their weighings, rounded down, and each has its part by mass, rounded down, so that none gets more alkali than it asks for.
third = {**pair_of_batches, "sell": 12, "name": "Third", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f00c"}
for name in ("first", "second", "third"):
    write(f"{folder}/{name}.run.json", {**{key: value for key, value in third.items() if key != "id" or name == "third"}, "name": name.title()})
write(f"{folder}/poured.order.json", {**order, "lines": [*({"run": f"{name}.run.json", "pieces": pieces, "together": "A"} for name, pieces in (("first", 5), ("second", 7))),
                                                         {"run": "third.run.json", "pieces": 12}]})
shared = answer("poured.order.json", "--from", "2026-10-01", of=slower)
bought = json.loads(run("buy", "poured.order.json", "--json", folder=folder).stdout)
asked = {"First + Second": bought["together"][0]["batches"][0]["base"]["naoh_g"],
         "Third": json.loads(run("plan", "third.run.json", "--json", folder=folder).stdout)["pour"]["naoh_g"]}
check([batch["count"] for batch in bought["together"][0]["batches"]] == [1] and len(shared["lyes"]) == 1, f"one pot for both bases: {shared['lyes']}")
pot = shared["lyes"][0]["pot"]
all_of_it = floor(sum(asked.values()), 0.1)
check(abs(pot["alkalis"][0]["g"] - all_of_it) < 1e-6, f"NaOH {pot['alkalis'][0]['g']}, expected {all_of_it}")
check(len(pot["shares"]) == 2, f"{pot['shares']}")
for share in pot["shares"]:
    alkali = next(grams for name, grams in asked.items() if share["batter"].startswith(name))
    part = pot["lye_g"] * alkali / sum(asked.values())
    check(part - 0.2 < share["lye_g"] <= part + 1e-6, f"share {share['lye_g']} of {pot['lye_g']}, expected {part} down")
    check(all_of_it * share["lye_g"] / pot["lye_g"] <= alkali + 1e-9, "a share holds more alkali than its base asks for")
# Not with another strength; a jug too small is told.
strong = read(f"{folder}/meadow_base.formula.json")
strong.update(name="Strong", water={"lye_strength": "35 %"})
write(f"{folder}/strong.formula.json", strong)
write(f"{folder}/strong.run.json", {**pair_of_batches, "sell": 12, "name": "Strong", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f00a",
                                    "pour": {**pair_of_batches["pour"], "formula": "strong.formula.json"}})
write(f"{folder}/weak.run.json", {**pair_of_batches, "sell": 12, "name": "Weak", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f00b"})
apart = answer("strong.run.json", "weak.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=slower)
check(apart["lyes"] == [] and apart["latest_start"] == "2026-11-10", f"of two strengths: {apart['latest_start']}")
strong["water"] = {"lye_strength": "33 %"}
write(f"{folder}/strong.formula.json", strong)
alike = answer("strong.run.json", "weak.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=slower)
check(len(alike["lyes"]) == 1 and alike["latest_start"] == "2026-11-12", f"of one strength: {alike['latest_start']}")
small = answer("batches.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=lye_studio(holds="700 ml"))
check(small["lyes"] == [] and any("does not hold that of two" in one["text"] for one in small["notes"]), f"a small pot: {small['notes']}")
# A superfat that may come out below zero stands before all else, as it does in the plan; each share says so.
lean = read(f"{folder}/meadow_base.formula.json")
lean.update(name="Lean", superfat="0.5 %")
write(f"{folder}/lean.formula.json", lean)
write(f"{folder}/lean.run.json", {**pair_of_batches, "name": "Lean", "pour": {**pair_of_batches["pour"], "formula": "lean.formula.json"}})
told = days("lean.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=slower).stdout
check(told.startswith("!! LYE-HEAVY SOAP MAY COME OUT of Lean, batch 1") and told.count("!! LYE-HEAVY") == 2, told[:200])
warned = answer("lean.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=slower)["lyes"][0]["cautions"]
check([one["severity"] for one in warned[:2]] == ["danger", "danger"], f"dangers first: {warned}")

# The cups' toppings have lyes of their own kind, shared as well; the sheet that follows the days says whose lye is which.
write(f"{folder}/cup_pair.run.json", {**read(f"{folder}/spring_cups.run.json"), "sell": 24, "batch": {"pieces": 13}})
cups = answer("cup_pair.run.json", "--from", "2026-10-01", of=lye_studio())
check({one["lye_of"] for one in cups["lyes"]} == {"base", "topping"} and {act["key"] for when, act in acts(cups, "chill")} >= {"lye-1-1", "lye-topping-1-1"},
      f"of bases and toppings: {[(when, act['key']) for when, act in acts(cups, 'chill')]}")
keys = [act["key"] for one in cups["days"] for act in one["acts"]]
check(len(keys) == len(set(keys)), "a calendar knows each act by its own key")
write(f"{folder}/studio.json", lye_studio())
paper = subprocess.run([program, "sheet", "cup_pair.run.json", "--days"], cwd=folder, capture_output=True, text=True)
check(paper.returncode == 0 and "one or the other, never both" in paper.stdout and "One pot of lye solution" in paper.stdout, f"sheet: {paper.stderr}")
check(all(share["lye_g_text"] + " g" in paper.stdout for one in cups["lyes"] for share in one["pot"]["shares"]), "the shares are on the sheet")
alone = subprocess.run([program, "sheet", "cup_pair.run.json"], cwd=folder, capture_output=True, text=True)
check("One pot of lye solution" not in alone.stdout, "a sheet by itself weighs the lye of its own batches")
# By itself, no sheet knows of what day a batch is: it asks to look there, and so do the plan and a brief one. What never shares says why.
may = "This studio mixes one pot of lye solution for several batches of a day."
check(may in alone.stdout and "One or the other, never both." in alone.stdout, "a sheet by itself does not say that there may be a pot")
plan = json.loads(run("plan", "cup_pair.run.json", "--json", folder=folder).stdout)
check(plan["lye_of_day"]["may_be_shared"] and plan["lye_of_day"]["text"].startswith(may), f"{plan.get('lye_of_day')}")
check(may in " ".join(run("plan", "cup_pair.run.json", folder=folder).stdout.split()), "the plan in words")
check(run("plan", "cup_pair.run.json", "--brief", folder=folder).stdout.startswith("MIND  A batch whose lye comes out of a day's pot"), "brief")
places = sorted(place for one in cups["lyes"] for batch in one["batches"] for place in batch["shares"] if one["lye_of"] == "topping")
check(places == list(range(sum(len(one["pot"]["shares"]) for one in cups["lyes"] if one["lye_of"] == "topping"))), f"each share is of one batch: {places}")
write(f"{folder}/studio.json", lye_studio(holds="700 ml"))
own_lye = json.loads(run("plan", "cup_pair.run.json", "--json", folder=folder).stdout)["lye_of_day"]
check(not own_lye["may_be_shared"] and "does not hold that of two" in own_lye["text"], f"{own_lye}")
write(f"{folder}/studio.json", lye_studio(holds="5"))
check(json.loads(run("plan", "cup_pair.run.json", "--json", folder=folder).stdout)["lye_of_day"]["may_be_shared"], "a slip in the days is told there, and no plan lost")
write(f"{folder}/studio.json", with_days(making={"tuesday": "6 h"}))
check("lye_of_day" not in json.loads(run("plan", "cup_pair.run.json", "--json", folder=folder).stdout), "nothing is shared")
# What the studio does not say: for people without keys, with the way to the field; in words with both.
little = {**studio, "days": {"making": {"tuesday": "6 h", "friday": "6 h"}}}
lacking = answer("cup_pair.run.json", "--from", "2026-10-01", of=little)["notes"]
check(all("_" not in one["text"] and '("' not in one["text"] for one in lacking), f"keys in notes: {lacking}")
check({"/days/pots_owned", "/days/bowls_owned", "/days/rack_places"} <= {one.get("field") for one in lacking}, f"fields: {lacking}")
check('how many pots it owns ("days", "pots_owned"): only the hours limit' in
      " ".join(days("cup_pair.run.json", "--from", "2026-10-01", of=little).stdout.split()), "where a file says it")

# ---- a salt bar is cut the day it is poured
salt = read(f"{folder}/meadow_base.formula.json")
salt.update(name="Salt", unmould_after="2 h", cut_within="5 h")
write(f"{folder}/salt.formula.json", salt)
loaf = read(f"{folder}/tilted_loaf.run.json")
loaf["pour"]["formula"] = "salt.formula.json"
loaf.update(name="Salt bars", decorations=[])
loaf.pop("money", None)
loaf["pour"].pop("layers", None)
write(f"{folder}/salt.run.json", loaf)
salty = answer("salt.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=with_days(making={"tuesday": "4 h", "friday": "6 h"}))
check([when for when, act in acts(salty, "make")] == [when for when, act in acts(salty, "unmould")], "cut on another day")
check(all(day(when).weekday() == 4 for when, act in acts(salty, "make")), "3 h of work and 2 h until it is cut take a Friday of 6 h")
never = days("salt.run.json", "--due", "2026-12-20", "--from", "2026-10-01", of=with_days(making={"tuesday": "4 h"}), status=1)
check("/days/small_jobs: no day takes \"Salt bars\"" in never.stderr and "cut between 2 h and 5 h" in never.stderr and not never.stdout, f"never: {never.stderr}")

# ---- each day of the span once, whether anything is done on it or not
calendar_of = {one["day"]: one for one in market["calendar"]}
first, last = day(market["days"][0]["day"]), day(market["days"][-1]["day"])
check([one["day"] for one in market["calendar"]] == [str(first + datetime.timedelta(i)) for i in range((last - first).days + 1)], "no gap")
check(all(one["hours_min"] == (360 if day(one["day"]).weekday() in (1, 4) else 0) for one in market["calendar"]), "6 h on Tuesdays and Fridays")
check(all(calendar_of[one["day"]][key] == one[key] for one in market["days"] for key in ("hours_min", "used_min", "off")), "as on the days of work")

# ---- the calendar, read by two others
first = f"{folder}/first.ics"
days("market.order.json", "--from", "2026-10-01", "--ics", first, "--alarm", "18:30")
data = open(first, "rb").read()
check(all(len(line) <= 75 for line in data.split(b"\r\n")), "a line of more than 75 octets")
check(b"\n" not in data.replace(b"\r\n", b"") and data.endswith(b"END:VCALENDAR\r\n"), "lines end in CRLF")
calendar = icalendar.Calendar.from_ical(data)
events = {str(event["UID"]): event for event in calendar.walk("VEVENT")}
expected = {f"{order['id']}-{act['key']}@brimwright": (one["day"], act) for one in market["days"] for act in one["acts"]}
check(events.keys() == expected.keys() and len(events) == len(list(calendar.walk("VEVENT"))), "one entry for each act")
for uid, (when, act) in expected.items():
    event = events[uid]
    check(event["DTSTART"].dt == day(when) and event["DTEND"].dt == day(when) + datetime.timedelta(1), f"{uid} on {event['DTSTART'].dt}")
    check(event["DTSTART"].params["VALUE"] == "DATE" and str(event["SUMMARY"]) == act["text"], f"{uid}: {event['SUMMARY']}")
    check(str(event["STATUS"]) == "CONFIRMED" and event["SEQUENCE"] == 0, f"{uid}: {event['STATUS']}")
    check(event["DTSTAMP"].dt.strftime("%Y%m%dT%H%M%SZ") == "20260921T141320Z", f"{uid}: {event['DTSTAMP'].dt}")  # date -u -d @1790000000
    alarms = list(event.walk("VALARM"))
    check(len(alarms) == (act["act"] not in ("due", "cured")), f"{uid}: {len(alarms)} alarms")
    if alarms:
        check(alarms[0]["TRIGGER"].dt == datetime.timedelta(hours=18, minutes=30), f"{uid}: {alarms[0]['TRIGGER'].dt}")
chilled = [event for uid, event in events.items() if "-chill-" in uid]
check(chilled and all("never one for food" in str(event["DESCRIPTION"]) and "never one for food" in str(event.walk("VALARM")[0]["DESCRIPTION"])
                      for event in chilled), "what goes into a fridge of its own")
check(any("December market, stall 4; Gruß" in str(event["SUMMARY"]) for event in events.values()), "commas, semicolons and letters")

libical = ctypes.CDLL("libical.so.3")
for name in ("icalparser_parse_string", "icalcomponent_get_first_component", "icalcomponent_get_next_component", "icalcomponent_get_uid",
             "icalcomponent_get_summary", "icalcomponent_as_ical_string"):
    getattr(libical, name).restype = ctypes.c_char_p if name.endswith(("uid", "summary", "string")) and "parse" not in name else ctypes.c_void_p
VEVENT, ANY_ERROR = 4, 3  # ICAL_VEVENT_COMPONENT, ICAL_XLICERROR_COMPONENT is counted by icalcomponent_count_errors


def by_libical(path):
    """{uid: summary} of its entries; what it finds against the file is an error."""
    whole = ctypes.c_void_p(libical.icalparser_parse_string(open(path, "rb").read()))
    check(bool(whole.value), f"{path}: libical reads nothing")
    check(libical.icalcomponent_count_errors(whole) == 0 and libical.icalrestriction_check(whole) == 1, f"{path}: libical finds errors")
    found = {}
    event = libical.icalcomponent_get_first_component(whole, VEVENT)
    while event:
        one = ctypes.c_void_p(event)
        found[libical.icalcomponent_get_uid(one).decode()] = libical.icalcomponent_get_summary(one).decode()
        event = libical.icalcomponent_get_next_component(whole, VEVENT)
    return found


check(by_libical(first) == {uid: act["text"] for uid, (when, act) in expected.items()}, "libical reads something else")

# ---- the next export: what moved has a higher number, what stayed has the same, what is gone is cancelled
fewer = {**order, "lines": [{"run": "spring_cups.run.json", "pieces": 24}], "due": "2026-12-24"}
write(f"{folder}/market.order.json", fewer)
second = f"{folder}/second.ics"
days("market.order.json", "--from", "2026-10-01", "--ics", second, "--since", first)
after = {str(event["UID"]): event for event in icalendar.Calendar.from_ical(open(second, "rb").read()).walk("VEVENT")}
now = answer("market.order.json", "--from", "2026-10-01")
current = {f"{order['id']}-{act['key']}@brimwright": (one["day"], act) for one in now["days"] for act in one["acts"]}
check(after.keys() == current.keys() | events.keys(), "every entry of both")
for uid, event in after.items():
    if uid not in current:
        check(str(event["STATUS"]) == "CANCELLED" and event["SEQUENCE"] == 1 and event["DTSTART"].dt == events[uid]["DTSTART"].dt, f"{uid} is gone")
        continue
    same = uid in expected and expected[uid][0] == current[uid][0] and expected[uid][1]["text"] == current[uid][1]["text"]
    check(event["SEQUENCE"] == (0 if same or uid not in expected else 1), f"{uid}: number {event['SEQUENCE']}")
check(any(str(event["STATUS"]) == "CANCELLED" for event in after.values()), "the bars are gone")
by_libical(second)
write(f"{folder}/market.order.json", order)
# Another order's entries in the earlier calendar are none of its business.
other = {**order, "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f002", "lines": [{"run": "plain_bars.run.json", "pieces": 12}]}
write(f"{folder}/other.order.json", other)
days("other.order.json", "--from", "2026-10-01", "--ics", f"{folder}/other.ics", "--since", first)
check(all(str(event["UID"]).startswith(other["id"]) for event in icalendar.Calendar.from_ical(open(f"{folder}/other.ics", "rb").read()).walk("VEVENT")),
      "entries of another order")

# ---- table and drawing
table = days("market.order.json", "--from", "2026-10-01", "--csv", "-").stdout
rows = list(csv.DictReader(io.StringIO(table)))
check([(row["day"], row["act"], row["what"]) for row in rows] == [(one["day"], act["act"], act["text"]) for one in market["days"] for act in one["acts"]],
      "the table has the acts of the answer")
drawing = days("market.order.json", "--from", "2026-10-01", "--svg", "-").stdout
tree = xml.etree.ElementTree.fromstring(drawing)
# To scale: of each batch the time in the mould and the cure, both in days.
marks = [(float(one.get("x")), float(one.get("width"))) for one in tree.iter("{http://www.w3.org/2000/svg}rect")
         if one.get("class", "").endswith("hatch3")][:-1]
span = (day(market["days"][-1]["day"]) - day(market["days"][0]["day"])).days + 1
for (x, width), batch in zip(marks, market["batches"]):
    wide = (day(batch["unmoulded"]) - day(batch["poured"])).days * 142 / span  # 190 mm less 44 and 4
    at = 44 + (day(batch["poured"]) - day(market["days"][0]["day"])).days * 142 / span
    check(abs(width - wide) < 0.01 and abs(x - at) < 0.01, f"{batch['batch']}: drawn from {x} for {width}, {at} for {wide} expected")
check(len(marks) == len(market["batches"]), f"{len(marks)} bars for {len(market['batches'])} batches")
check(days("plain_bars.run.json").stdout.count("Mon 2026-09-21") >= 1, "today is handed in")

# ---- slips: one line each, and nothing printed
no_days = {key: value for key, value in studio.items() if key != "days"}
bare = read(f"{folder}/meadow_base.formula.json")
bare.pop("cure")
write(f"{folder}/bare.formula.json", {**bare, "name": "Bare"})
plain = read(f"{folder}/plain_bars.run.json")
write(f"{folder}/bare.run.json", {**plain, "pour": {**plain["pour"], "formula": "bare.formula.json"}})
no_id = {key: value for key, value in order.items() if key != "id"}
write(f"{folder}/no_id.order.json", no_id)
write(f"{folder}/soon.order.json", {**order, "due": "2026-09-30"})
mould = {key: value for key, value in read(f"{root}/moulds/plain_bar.json").items() if key not in ("unmould_after", "$schema")}
write(f"{folder}/bar.json", mould)
write(f"{folder}/unlocked.run.json", {**plain, "pour": {**plain["pour"], "mould": "bar.json"}})
ours = open(first).read()
open(f"{folder}/foreign.ics", "w").write(ours.replace("-//Brimwright//Days//EN", "-//Somebody//Calendar//EN"))
open(f"{folder}/half.ics", "w").write(ours[:len(ours) // 2])
for words, said, of in (
        (("market.order.json", "--due", "3/4/2026"), r"--due: .*is not a date; write year, month and day", studio),
        (("market.order.json", "--due", "2026-02-30"), "--due: .*is not a day of the calendar", studio),
        (("market.order.json", "--from", "tomorrow"), "--from: .*is not a date", studio),
        (("market.order.json", "--due", "2026-09-30", "--from", "2026-10-01"), "--due: is Wed 2026-09-30, before Thu 2026-10-01", studio),
        (("soon.order.json", "--from", "2026-10-01"), "soon.order.json: /due: is Wed 2026-09-30, before", studio),
        (("market.order.json",), "studio.json: /days: is missing, so there is no making day", no_days),
        (("market.order.json",), "/days/making: has no making day", with_days(making={})),
        (("market.order.json",), "/days/making/tuesday: is zero", with_days(making={"monday": "6 h", "tuesday": "0 h"})),
        (("market.order.json",), "/days/making/monday: is more than a day has", with_days(making={"monday": "25 h"})),
        (("market.order.json",), "munday.*monday", with_days(making={"munday": "6 h"})),
        (("market.order.json",), "/days/off/0: .*ends before it begins", with_days(off=["2026-12-27/2026-12-24"])),
        (("market.order.json",), "/days/off/1: .*is not a date", with_days(off=["2026-12-24", "24.12.2026"])),
        (("market.order.json",), "/days/off/1: \"2026-12-24\" stands there twice", with_days(off=["2026-12-24", "2026-12-24"])),
        (("market.order.json",), "/days/off/0: \"2026-02-30\" is not a day of the calendar", with_days(off=["2026-02-30"])),
        (("market.order.json",), "/days/small_jobs/1: \"monday\" stands there twice", with_days(small_jobs=["monday", "monday"])),
        (("market.order.json", "--from", "0000-01-01"), "--from: \"0000-01-01\" is in no year of these times", studio),
        (("market.order.json",), "/days/small_jobs/0: .*is not a weekday", with_days(small_jobs=["Sun"])),
        (("market.order.json",), "/work" + "/each_batch: is missing", {**studio, "work": {"paid_an_hour": "15.00", "each_piece_packed": "1 min"}}),
        (("market.order.json",), "/work: is missing", {key: value for key, value in studio.items() if key != "work"}),
        (("bare.run.json", "--from", "2026-10-01"), "bare.formula.json: /cure: is missing", studio),
        (("unlocked.run.json", "--from", "2026-10-01"), "meadow_base.formula.json: /unmould_after: is missing", studio),
        (("market.order.json", "plain_bars.run.json", "--from", "2026-10-01"), "/due: is missing, and others have a due day", studio),
        (("market.order.json", "market.order.json"), "is named twice", studio),
        (("plain_bars.run.json", "--from", "2026-10-01"), "no day takes it: a batch of 12 pieces takes 3 h, and the longest making day has 2 h",
         with_days(making={"monday": "2 h"})),
        (("plain_bars.run.json", "--from", "2026-10-01"), "/days/rack_places: no day takes \"Plain bars\": a batch of 12 pieces is more than the 10 places of the curing rack", with_days(rack_places=10)),
        (("market.order.json", "--from", "2026-10-01"), "/days/small_jobs: no day takes .*is chilled the evening before, and you are not there on any of the four days",
         with_days(making={"friday": "6 h"})),
        (("market.order.json",), "/days/one_lye_a_day/saves: is no less than a whole batch", lye_studio(saves="3 h")),
        (("market.order.json",), "/days/one_lye_a_day/holds: \"5\" has no unit", lye_studio(holds="5")),
        (("market.order.json",), "/days/one_lye_a_day/pot: unknown key", lye_studio(pot="5 l")),
        (("market.order.json",), "/days/one_lye_a_day/holds: is missing", with_days(one_lye_a_day={"saves": "20 min"})),
        (("market.order.json",), "/days/one_lye_a_day/saves: is missing", with_days(one_lye_a_day={"holds": "5 l"})),
        (("market.order.json", "--since", "first.ics"), "--since: does nothing alone", studio),
        (("market.order.json", "--ics", "new.ics", "--alarm", "6 pm"), "--alarm: .*is not a time of day", studio),
        (("market.order.json", "--ics", "new.ics", "--alarm", "25:00"), "--alarm: \"25:00\" is not a time of day", studio),
        (("market.order.json", "--ics", "new.ics", "--since", "market.order.json"), "is not a calendar that this program wrote", studio),
        (("market.order.json", "--ics", "new.ics", "--since", "foreign.ics"), "foreign.ics: is not a calendar that this program wrote", studio),
        (("market.order.json", "--ics", "new.ics", "--since", "half.ics"), "half.ics: is cut off", studio),
        (("no_id.order.json", "--from", "2026-10-01", "--ics", "new.ics"), "no_id.order.json: /id: is missing", studio),
        (("market.order.json", "--ics", "new.txt"), "--ics: .*does not end in .ics", studio)):
    done = days(*words, of=of, status=1)
    check(done.stdout == "" and done.stderr.count("\n") == 1 and re.search(said, done.stderr), f"{words}: {done.stderr!r}")
check(not os.path.exists(f"{folder}/new.ics"), "a calendar was written all the same")

end("what is to be made is put on days, and its calendar is read by others")
