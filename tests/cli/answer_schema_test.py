"""Every answer of `gauge`, `plan`, `plan --explain`, `buy`, `days`, `learn`, `note`, `records` and `list` obeys its JSON Schema, by Debian's jsonschema; a slip does not. And nothing
in a schema is stale: each property, each value of an enumeration and each null occurs in an answer tried here."""
import datetime
import glob
import json
import os
import shutil
import struct
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from itertools import product

import jsonschema

root, program = os.path.abspath(sys.argv[1]), sys.argv[2]
sys.path.insert(0, f"{root}/tests/laws")
from random_runs import RunMaker  # noqa: E402
sys.path.insert(0, f"{root}/tests/cli")
from begun_batch import begin  # noqa: E402

folder = tempfile.mkdtemp()
today = datetime.date(2026, 12, 1)  # for the program as well: what cures, and what is past its day
os.environ["SOURCE_DATE_EPOCH"] = "1796115600"  # 9 o'clock of it, by coreutils' date
failures = []
schemas, used = {}, {}
for path in sorted(glob.glob(f"{root}/src/schemas/*.answer.schema.json")):
    with open(path) as file:
        schema = json.load(file)
    jsonschema.Draft202012Validator.check_schema(schema)
    schemas[schema["$id"]] = schema


def schema_of(answer):
    kind = answer["schema"].removeprefix("brimwright.").split("/")[0]
    return next(schema for name, schema in schemas.items() if name.endswith(f"/{kind}.answer.schema.json"))


def validator_of(answer):
    schema = schema_of(answer)
    return jsonschema.Draft202012Validator(schema, resolver=jsonschema.RefResolver.from_schema(schema, store=schemas))


# ---- what of a schema occurs: places are (file, pointer)

def places(schema, at):
    """All that should occur somewhere: properties, values of enumerations, nulls beside something else."""
    if not isinstance(schema, dict):
        return
    for value in schema.get("enum", []):
        yield (*at, "enum", value)
    if isinstance(schema.get("type"), list):
        yield from ((*at, "type", kind) for kind in schema["type"])
    for name, below in schema.get("properties", {}).items():
        yield (*at, "properties", name)
        yield from places(below, (*at, "properties", name))
    for name, below in schema.get("$defs", {}).items():
        yield from places(below, (*at, "$defs", name))
    for key in ("allOf", "anyOf"):
        for i, below in enumerate(schema.get(key, [])):
            if key == "anyOf":
                yield (*at, key, i)
            yield from places(below, (*at, key, i))
    yield from places(schema.get("items"), (*at, "items"))


def referred(at, ref):
    """The place that `ref` of a schema at `at` means, and the schema there."""
    file, _, pointer = ref.partition("#")
    name = at[0].rsplit("/", 1)[0] + "/" + file if file else at[0]
    schema, place = schemas[name], (name,)
    for key in pointer.split("/")[1:]:
        schema, place = schema[key], (*place, key)
    return schema, place


def occurs(schema, at, value):
    """Marks what `value`, which obeys `schema`, shows of it."""
    if "$ref" in schema:
        occurs(*referred(at, schema["$ref"]), value)
    if "enum" in schema:
        used.setdefault((*at, "enum", value), value)
    if isinstance(schema.get("type"), list):
        kind = "null" if value is None else next(kind for kind in schema["type"] if kind != "null")
        used[(*at, "type", kind)] = value
    for i, below in enumerate(schema.get("allOf", [])):
        occurs(below, (*at, "allOf", i), value)
    for i, below in enumerate(schema.get("anyOf", [])):
        if (value is None) == (below == {"type": "null"}):
            used[(*at, "anyOf", i)] = value
            occurs(below, (*at, "anyOf", i), value)
    if isinstance(value, dict):
        for name, below in schema.get("properties", {}).items():
            if name in value:
                used[(*at, "properties", name)] = value[name]
                occurs(below, (*at, "properties", name), value[name])
    if isinstance(value, list) and "items" in schema:
        for one in value:
            occurs(schema["items"], (*at, "items"), one)


# ---- the questions

def write(name, document):
    with open(f"{folder}/{name}", "w") as file:
        json.dump(document, file)


def shipped(name):
    with open(f"{root}/{name}") as file:
        return json.load(file)


def ask(words, cwd=root, may_be_refused=False):
    done = subprocess.run([program, *words, "--json"], cwd=cwd, capture_output=True, text=True, timeout=120)
    if done.returncode == 1 and may_be_refused:
        return words, None
    if done.returncode != 0:
        failures.append(f"{' '.join(words)}: {done.stderr.strip()}")
        return words, None
    return words, json.loads(done.stdout)


def of_catalogue():
    yield ["list"]
    yield from (["list", what] for what in ("moulds", "fats", "tips"))


def of_moulds():
    for mould in sorted(glob.glob("moulds/*.json", root_dir=root)):
        yield ["gauge", mould, "--depth", "5 mm"]
    for mesh, role, unit in (("shell_pebble", "cavity", "mm"), ("six_pocket_tray", "body", "cm"), ("twisted_cup", "cavity", "in")):
        yield ["gauge", f"meshes/{mesh}.stl", "--role", role, "--unit", unit, "--depth", "2 mm"]
    yield ["gauge", "tests/data/meshes/loaf_skin.stl", "--unit", "mm", "--depth", "10 mm"]
    yield ["gauge", "tests/data/meshes/loaf_skin.stl", "--unit", "mm", "--inspect"]
    yield ["gauge", "tests/data/meshes/slab4_body.stl", "--unit", "mm", "--cavity", "1"]
    yield ["gauge", "tests/data/meshes/fluted_cup_cavity.stl", "--unit", "mm", "--role", "cavity", "--write", f"{folder}/cup.stl"]
    yield ["gauge", "moulds/plain_bar.json", "--fit-volume", "200 ml", "--pour", "60 ml"]
    yield ["gauge", "moulds/bead_tray.json", "--cast-wall", "5 mm", "--cast-base", "5 mm", "--cast-density", "1.1 g/ml"]
    yield ["gauge", "moulds/loaf_short.json", "--tilt", "12 deg", "--pour", "300 ml", "--depth", "60 mm"]
    for lying in ("level", "layered", "free"):
        yield ["gauge", "moulds/low_bowl.json", "--embed", "moulds/marble_tray.json", "--cover", "3 mm", "--lying", lying]
    yield ["gauge", "moulds/low_bowl.json", "--embed", "moulds/plain_bar.json", "--cover", "3 mm"]
    yield ["gauge", "moulds/twisted_cup.json", "--batches-of", "examples/spring_cups.run.json"]
    lettered = shipped("moulds/lettered_bar.json")
    lettered["water"]["weighings"] = ["85.4 g"]
    write("weighed_once.json", lettered)
    yield ["gauge", f"{folder}/weighed_once.json", "--below-brim", "5 mm"]


def of_examples():
    for run in sorted(glob.glob("examples/*.run.json", root_dir=root)):
        yield ["plan", run]
        yield ["plan", run, "--explain"]
    spring = ["plan", "examples/spring_cups.run.json"]
    yield [*spring, "--weighed", "base NaOH 96 g", "--batch", "1"]
    yield [*spring, "--weighed", "base NaOH 200 g", "--batch", "1"]


def of_known_topping():
    """One whose volume stands in place of its trials, as batches told it."""
    spring = shipped("examples/spring_cups.run.json")
    os.makedirs(f"{folder}/known", exist_ok=True)
    for formula in ("meadow_base", "cloud_topping"):
        shutil.copy(f"{root}/examples/{formula}.formula.json", f"{folder}/known")
    spring["pipe"]["trials"].update(
        volume_each="38 ml", learned={"volume_each": {"value": "38 ml", "batches": 7, "on": "2026-12-01", "before": None}})
    spring["decorations"][0]["learned"] = {"melt_loss": {"value": "4 %", "batches": 7, "on": "2026-12-01", "before": "3 %"}}
    write("known/cups.run.json", spring)
    yield ["plan", f"{folder}/known/cups.run.json"]
    yield ["plan", f"{folder}/known/cups.run.json", "--explain"]


def boxes_stl(name, size, boxes):
    """Binary STL of cells filled and emptied box by box, each (is it filled, low corner, high corner)."""
    def filled(cell):
        inside = [full for full, low, high in boxes if all(low[k] <= cell[k] < high[k] for k in range(3))]
        return bool(inside) and inside[-1]

    facets = []
    for cell in product(*(range(side) for side in size)):
        for axis, step in product(range(3), (-1, 1)):
            beside = [cell[k] + step * (k == axis) for k in range(3)]
            if not filled(cell) or filled(beside):
                continue
            corners = []
            for a, b in ((0, 0), (1, 0), (1, 1), (0, 1))[::step]:
                at = list(cell)
                at[axis] += step > 0
                at[(axis + 1) % 3] += a
                at[(axis + 2) % 3] += b
                corners.append(at)
            facets += [(corners[0], corners[1], corners[2]), (corners[0], corners[2], corners[3])]
    stl(name, facets)


def stl(name, facets):
    with open(f"{folder}/{name}", "wb") as file:
        file.write(bytes(80) + struct.pack("<I", len(facets)))
        for facet in facets:
            file.write(struct.pack("<12fH", 0, 0, 0, *(x for corner in facet for x in corner), 0))


def of_buying(plain):
    """Bought of many sellers, whose every set is too much work to look at; short of stock; and nothing to buy."""
    shutil.copy(f"{root}/examples/meadow_base.formula.json", f"{folder}/studio")
    write("studio/bought.run.json", plain)
    many = [f"seller {i}" for i in range(11)]
    write("studio/short.studio.json", {
        "schema": "brimwright.studio/1", "currency": "EUR", "have": {"olive": "100 g"}, "waste": {"olive": "1 %"},
        "packs": {"olive": [{"holds": "5 kg", "paid": "27.50", "from": one, "as_of": "2026-10-01"} for one in many],
                  "Goldmill coconut": [{"holds": "1 kg", "paid": "8"}], "NaOH": [{"holds": "1 kg", "paid": "6", "from": "market"}]},
        "serves_as": {"Goldmill coconut": "coconut"},
        "sellers": {one: {"postage": "6.90", "postage_free_from": "80", "lead_time": "5 days"} for one in many}})
    names = ["olive", "coconut", "rapeseed_low_erucic", "cocoa_butter", "castor", "NaOH", "sodium lactate, 60 % solution", "white kaolin",
             "lavender essential oil", "green mica"]
    write("studio/full.studio.json", {"schema": "brimwright.studio/1", "have": {name: "50 kg" for name in names}})
    for studio in ("short", "full"):
        yield ["buy", f"{folder}/studio/bought.run.json", "--with-stock", "--studio", f"{folder}/studio/{studio}.studio.json"]


def of_poured_together(plain):
    """A base for two lines, in batches; small and on a coarse scale, so that there is something to caution of; a word that is alone."""
    small = {**plain, "scales": {"large": {"step": "1 g", "most": "5 kg"}, "fine": {"step": "1 g", "most": "500 g"}}, "pots": {"holds": "800 ml"}}
    for key in ("money", "id"):
        small.pop(key, None)
    os.makedirs(f"{folder}/poured", exist_ok=True)
    shutil.copy(f"{root}/examples/meadow_base.formula.json", f"{folder}/poured")
    for name in ("one", "two", "three"):
        write(f"poured/{name}.run.json", {**small, "name": name})
    write("poured/studio.json", {"schema": "brimwright.studio/1", "currency": "EUR"})
    words = (("one", "A"), ("two", "A"), ("three", "B"))
    write("poured/both.order.json", {"schema": "brimwright.order/1", "lines": [{"run": f"{name}.run.json", "pieces": 5, "together": word}
                                                                               for name, word in words]})
    yield ["quote", f"{folder}/poured/both.order.json"]
    yield ["buy", f"{folder}/poured/both.order.json"]
    ask(["note", f"{folder}/poured/both.order.json", "--batch", "1", "--begin", "--code", "A"])
    yield ["note", f"{folder}/poured/both.order.json"]
    yield ["note", f"{folder}/poured/one.run.json"]
    yield ["trail", f"{folder}/poured", "A-1"]


def of_what_stands_ready(plain):
    """Both alkalis as solutions, a blend of fats, what these are made of; and a decoration that is bought."""
    os.mkdir(f"{folder}/ready")
    meadow = shipped("examples/meadow_base.formula.json")
    meadow["alkali"] = [{"alkali": "NaOH", "share": "80 %", "purity": "99 %"}, {"alkali": "KOH", "share": "20 %", "purity": "90 %"}]
    write("ready/both.formula.json", meadow)
    half = {"strength": "50 %", "strength_range": ["49 %", "51 %"], "kept_at": "20 °C", "made_from": {"purity": "99 %"}}
    write("ready/studio.json", {
        "schema": "brimwright.studio/1", "currency": "EUR", "packs": {"star": [{"holds": "20 pieces", "paid": "4"}]},
        "lye_solutions": {"soda jug": {"alkali": "NaOH", **half}, "potash jug": {"alkali": "KOH", **half}},
        "blends": {"hard": {"fats": [{"fat": "coconut", "share": "70 %"}, {"fat": "cocoa_butter", "share": "30 %"}]}}})
    star = {"name": "Star", "material": "star", "bought": {}, "per_piece": 1, "spares": "5 %"}
    pour = {**plain["pour"], "formula": "both.formula.json", "lye_from": ["soda jug", "potash jug"], "blend": "hard"}
    write("ready/ready.run.json", {**plain, "pour": pour, "decorations": [star]})
    yield ["plan", f"{folder}/ready/ready.run.json"]
    yield ["buy", f"{folder}/ready/ready.run.json"]


def of_lots(plain):
    """Lots bought, made and counted, past their day; batches of them, priced, unpriced and unknown; pieces that went everywhere."""
    os.mkdir(f"{folder}/lots")
    at = f"{folder}/lots"
    shutil.copy(f"{root}/examples/meadow_base.formula.json", at)
    write("lots/plain_bars.run.json", {key: value for key, value in plain.items() if key != "money"})
    write("lots/studio.json", {
        "schema": "brimwright.studio/1", "currency": "EUR", "have": {"gift box": "12 pieces", "white kaolin": "1 kg"},
        "packs": {"gift box": [{"holds": "50 pieces", "paid": "30"}], "Goldmill coconut": [{"holds": "1 kg", "paid": "8"}]},
        "serves_as": {"Goldmill coconut": "coconut"},
        "lye_solutions": {"jug": {"alkali": "NaOH", "strength": "50 %", "strength_range": ["49 %", "51 %"], "kept_at": "20 °C"}}})
    ask(["stock", at])
    os.makedirs(f"{folder}/bare", exist_ok=True)
    yield ["stock", f"{folder}/bare", "--names"]
    acts = [["--bought", "olive", "--pack", "5 kg", "--lot", "OL-1", "--seller", "Oil mill", "--price", "27.50", "--on", "2026-09-01",
             "--best-before", "2026-10-01"], ["--bought", "Goldmill coconut", "--pack", "1 kg", "--lot", "CO-1", "--on", "2026-09-01"],
            ["--bought", "caustic soda", "--pack", "1 kg", "--lot", "NA-1"], ["--made", "jug", "--pack", "1 kg", "--of", "NA-1=500 g", "--lot", "J-1"],
            ["--counted", "OL-1=4.9 kg", "--why", "spilt"], ["--counted", "CO-1=1 kg"]]
    for act in acts:
        ask(["stock", at, *act])
    rows = {"a": ("olive", "Olive oil", 500, {"OL-1": 500}), "b": ("coconut", "Coconut oil", 700, {"CO-1": 300}), "c": ("jug", "jug", 100, {"J-1": 100})}
    begin(at, "A", "2026-10-01", rows, {"pieces.made": "12", "tested": "pass", "ready_on": "2026-11-01"})
    begin(at, "B", "2026-10-02", {"b": ("coconut", "Coconut oil", 300, {})}, {})
    begin(at, "C", "2026-11-30", {}, {"pieces.made": "3"})
    write("lots/market.order.json", {"schema": "brimwright.order/1", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f001",
                                     "lines": [{"run": "plain_bars.run.json", "pieces": 4}]})
    for act in (["--sold", "A=2", "--order", f"{at}/market.order.json"], ["--given", "A=1"], ["--spoilt", "A=1", "--why", "dropped"],
                ["--counted-pieces", "A=7"]):
        ask(["stock", at, *act])
    yield ["stock", at]
    for what in ("OL-1", "CO-1", "NA-1", "A", "B", f"{at}/market.order.json"):
        yield ["trail", at, what]
    yield ["quote", f"{at}/plain_bars.run.json"]
    # Batches put in by SQL were made of no run that is known, so they are taken by their names alone.
    begin(at, "D", "2026-10-05", {}, {"pieces.made": "3", "tested": "pass", "ready_on": "2026-10-06"})
    begin(at, "E", "2026-10-05", {}, {"pieces.made": "2", "tested": "pass", "ready_on": str(today + datetime.timedelta(10))})
    due = {"due": str(today + datetime.timedelta(60))}
    orders = (("taking", 30, "take", {"due": str(today - datetime.timedelta(1))}), ("named", 30, ["A", "D", "E"], due),
              ("few", 2, ["A"], {"due": str(today)}))
    for name, pieces, ready, more in orders:
        write(f"lots/{name}.order.json", {"schema": "brimwright.order/1", "lines": [{"run": "plain_bars.run.json", "pieces": pieces, "ready": ready}], **more})
        yield ["quote", f"{at}/{name}.order.json"]
    yield ["buy", f"{at}/named.order.json"]
    yield ["quote", f"{at}/market.order.json"]
    ask(["stock", at, "--take-have"])
    yield ["stock", at, "--names"]


def of_days(plain, spring):
    """Kept, promised, late by a part and by all, with every wider limit that helps."""
    for name in ("meadow_base", "cloud_topping"):
        shutil.copy(f"{root}/examples/{name}.formula.json", f"{folder}/days")
    bars = {key: value for key, value in plain.items() if key != "money"}
    cups = {key: value for key, value in spring.items() if key != "money"}
    write("days/bars.run.json", bars)
    write("days/cups.run.json", cups)
    no_id = {key: value for key, value in bars.items() if key != "id"}
    write("days/no_id.run.json", no_id)
    # Water would fill a cavity of this little mould with what is left of a batch whose scale reads by 100 g.
    write("days/coarse.run.json", {**bars, "name": "Coarse", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f003",
                                   "scales": {"large": {"step": "25 g", "most": "20 kg", "confirmed": True}, "fine": plain["scales"]["fine"]}})
    write("days/market.order.json", {"schema": "brimwright.order/1", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f001", "due": "2026-12-20",
                                     "lines": [{"run": "cups.run.json", "pieces": 24}, {"run": "bars.run.json", "pieces": 36}]})
    roomy = {"making": {"tuesday": "6 h", "friday": "6 h"}, "pots_owned": 2, "bowls_owned": 2, "rack_places": 500, "off": ["2026-11-10"]}
    work = {"paid_an_hour": "15.00", "each_batch": "3 h", "each_piece_packed": "1 min", "each_tray_fill": "10 min"}
    packs = {"olive": [{"holds": "5 kg", "paid": "20.00", "from": "Oil mill"}]}

    def studio(name, days, **more):
        write(f"days/{name}.studio.json", {"schema": "brimwright.studio/1", "currency": "EUR", "days": days, "work": work, "packs": packs,
                                           "sellers": {"Oil mill": {"postage": "6.90", "lead_time": "9 days"}}, **more})
        return ["--studio", f"{folder}/days/{name}.studio.json"]

    every = {day: "14 h" for day in ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday")}
    one = {"moulds/plain_bar.json": 1}
    market, bars_file = f"{folder}/days/market.order.json", f"{folder}/days/bars.run.json"
    yield ["days", market, "--from", "2026-10-01", *studio("roomy", roomy)]
    yield ["days", market, "--from", "2026-11-05", *studio("late", roomy)]
    yield ["days", market, "--from", "2026-12-10", *studio("none", roomy)]
    yield ["days", bars_file, "--from", "2026-10-01", *studio("bars", roomy)]
    yield ["days", f"{folder}/days/no_id.run.json", "--from", "2026-10-01", *studio("bars2", roomy)]
    yield ["days", f"{folder}/days/coarse.run.json", "--from", "2026-10-01",
           *studio("coarse", roomy, moulds_owned={"moulds/bead_tray.json": 1})]
    def order_of(name, run, pieces):
        write(f"days/{name}.order.json", {"schema": "brimwright.order/1", "lines": [{"run": run, "pieces": pieces}]})
        return f"{folder}/days/{name}.order.json"

    bare = {"packs": {}, "sellers": {}}
    write("days/small.run.json", {**bars, "batch": {"pieces": 12}})
    many, pots = order_of("many", "bars.run.json", 60), order_of("pots", "small.run.json", 36)
    yield ["days", many, "--from", "2026-10-01", *studio("moulds", {"making": every}, moulds_owned=one)]
    for name, limits in (("pots", {"making": every, "pots_owned": 1}), ("hours", {"making": {"monday": "5 h"}})):
        yield ["days", pots, "--from", "2026-10-01", *studio(name, limits, moulds_owned={"moulds/plain_bar.json": 50})]
    yield ["days", many, "--from", "2026-10-01", *studio("rack", {"making": every, "rack_places": 20})]
    cups_file = f"{folder}/days/cups.run.json"
    yield ["days", cups_file, "--from", "2026-10-01", *studio("bowls", {"making": every, "bowls_owned": 1, "pots_owned": 9}, **bare)]
    yield ["days", cups_file, "--from", "2026-10-01", *studio("casting", {"making": roomy["making"], "cast_beforehand": "3 days"}, **bare)]
    # One lye for the batches of a day: of bases, of toppings, and of both where each batch has one pot for all its batters.
    shared = studio("one_lye", {"making": every, "one_lye_a_day": {"holds": "5 l", "pot_tare": "412 g", "saves": "20 min"}}, **bare)
    write("days/pairs.run.json", {**cups, "batch": {"pieces": 12}})
    write("days/one_pot.run.json", {**cups, "batch": {"pieces": 12}, "lye_pot": {}})
    for name in ("pairs", "one_pot"):
        yield ["plan", f"{folder}/days/{name}.run.json", *shared]
        yield ["days", f"{folder}/days/{name}.run.json", "--from", "2026-10-01", *shared]
    slow = copy_of(cups)
    slow["decorations"][0]["time_per_tray_fill"] = "3 h"
    write("days/slow.run.json", slow)
    yield ["days", f"{folder}/days/slow.run.json", "--from", "2026-10-01",
           *studio("trays", {"making": {"monday": "6 h", "tuesday": "4 h", "friday": "6 h"}}, **bare)]


def copy_of(document):
    return json.loads(json.dumps(document))


def of_fixtures():
    """What no shipped file shows."""
    # Two pockets with a low wall between them, in centimetres; a cavity that ends in a point.
    boxes_stl("joint.stl", (8, 4, 6), [(True, (0, 0, 0), (8, 4, 6)), (False, (1, 1, 1), (3, 3, 6)), (False, (4, 1, 1), (7, 3, 6)),
                                       (False, (3, 1, 4), (4, 3, 6))])
    yield ["gauge", f"{folder}/joint.stl", "--role", "body", "--unit", "cm"]
    o, x, y, z = (0, 0, 0), (0.1, 0, 0), (0, 0.1, 0), (0, 0, 0.1)
    stl("pointed.stl", [(o, y, x), (o, x, z), (o, z, y), (x, y, z)])
    yield ["gauge", f"{folder}/pointed.stl", "--role", "cavity", "--unit", "m"]

    for name in glob.glob("*.formula.json", root_dir=f"{root}/examples"):
        write(name, shipped(f"examples/{name}"))
    plain, spring = shipped("examples/plain_bars.run.json"), shipped("examples/spring_cups.run.json")
    for way in (["--margin", "40 %"], ["--markup", "60 %"], ["--price", "0.50"]):
        yield ["quote", "examples/spring_cups.run.json", "--sell", "12,24", *way]
    priced = {name: price for name, price in spring["money"]["prices"].items() if name != "olive"}
    write("one_unpriced.run.json", {**spring, "money": {**spring["money"], "prices": priced}})
    yield ["quote", f"{folder}/one_unpriced.run.json"]
    write("one.order.json", {"schema": "brimwright.order/1", "lines": [{"run": "one_unpriced.run.json", "pieces": 12}]})
    write("two.order.json", {"schema": "brimwright.order/1", "for": "Spring market", "due": "2027-04-01",
                             "lines": [{"run": "spring_cups.run.json", "pieces": 24}]})
    write("spring_cups.run.json", spring)
    yield ["quote", f"{folder}/one.order.json"]
    write("bare.studio.json", {"schema": "brimwright.studio/1", "currency": "EUR",
                               "packaging": [{"material": "gift box", "each_piece": "1 piece"}]})
    write("bare.run.json", {name: part for name, part in plain.items() if name != "money"})
    yield ["quote", f"{folder}/bare.run.json", "--studio", f"{folder}/bare.studio.json"]
    write("boxed.order.json", {"schema": "brimwright.order/1", "lines": [{"run": "bare.run.json", "pieces": 12}]})
    yield ["buy", f"{folder}/boxed.order.json", "--studio", f"{folder}/bare.studio.json"]
    write("boxed.studio.json", {"schema": "brimwright.studio/1", "currency": "EUR",
                                "packs": {"gift box": [{"holds": "50 pieces", "paid": "30.00"}]},
                                "packaging": [{"material": "gift box", "each_piece": "1 piece"}]})
    yield ["buy", f"{folder}/boxed.order.json", "--studio", f"{folder}/boxed.studio.json"]
    yield ["quote", f"{folder}/two.order.json", "--times", "1,3", "--margin", "40 %"]
    many = [{"holds": f"{size / 100} g", "paid": f"{size * 7 // 100 / 100 + 0.01:.2f}"} for size in (997, 991, 983, 977, 971, 967, 953, 947, 941, 937, 929, 919)]
    write("many.studio.json", {"schema": "brimwright.studio/1", "currency": "EUR", "packs": {"olive": many}})
    write("own_box.run.json", {**plain, "packaging": [{"material": "gift box", "each_piece": "1 piece"}]})
    yield ["quote", f"{folder}/own_box.run.json", "--studio", f"{folder}/many.studio.json"]
    yield from of_poured_together(plain)
    yield from of_lots(plain)
    for weighings in (3, 5):
        formula = shipped("examples/meadow_base.formula.json")
        formula.pop("water_lost_in_cure", None)
        curve = [{"after": f"{day} days", "mass": f"{mass} g"} for day, mass in ((1, 100), (8, 94.2), (20, 90.1), (30, 88.9), (45, 88.1))]
        formula.update(name="Dried", cure="35 days", drying={"weighings": curve[:weighings]})
        write(f"dried{weighings}.formula.json", formula)
        write(f"dried{weighings}.run.json", {**plain, "pour": {**plain["pour"], "formula": f"dried{weighings}.formula.json"}})
        yield ["plan", f"{folder}/dried{weighings}.run.json"]
    topping = {**shipped("examples/cloud_topping.formula.json"), "cure": "35 days",
               "drying": {"water_lost_in_the_end": "90 %", "time_to_63_percent": "12 days"}}
    topping.pop("water_lost_in_cure", None)
    write("dried_topping.formula.json", topping)
    decorations = [{**spring["decorations"][0], "on_top": {"pressed_in": "3 mm"}}]
    pipe = {**spring["pipe"], "formula": "dried_topping.formula.json"}
    pipe.pop("beads")  # so that nobody knows how wide the peak is
    write("unpriced.run.json", {**spring, "pipe": pipe, "decorations": decorations, "dust": [], "money": {"currency": "EUR", "prices": {}}})
    yield ["plan", f"{folder}/unpriced.run.json"]
    write("whipped_twice.run.json", {**spring, "batch": {"pieces": 24, "whippings": 2}})
    yield ["plan", f"{folder}/whipped_twice.run.json"]
    os.mkdir(f"{folder}/studio")
    shutil.copy(f"{root}/examples/meadow_base.formula.json", f"{folder}/studio")
    lent = {"schema": "brimwright.studio/1", "losses": plain["losses"], "scales": plain["scales"]}
    write("studio/studio.json", lent)
    write("studio/lean.run.json", {key: value for key, value in plain.items() if key not in ("losses", "scales")})
    yield ["plan", f"{folder}/studio/lean.run.json"]
    yield from of_buying(plain)
    yield from of_what_stands_ready(plain)
    os.mkdir(f"{folder}/days")
    yield from of_days(plain, spring)
    loaf = shipped("examples/tilted_loaf.run.json")
    write("across.run.json", {**loaf, "cut": {**loaf["cut"], "along": "y", "bar": {"thickness": "20 mm"}}})
    yield ["plan", f"{folder}/across.run.json"]
    # All of a flat dome counts as floor, all of a steep cone as wall.
    for name, points in (("flat", [("0 mm", "0 mm"), ("60 mm", "30 mm")]), ("steep", [("0 mm", "0 mm"), ("30 mm", "60 mm")])):
        write(f"{name}.mould.json", {"schema": "brimwright.mould/2", "name": name, "cavities": 6, "shape": {
            "kind": "turned_profile", "points": [{"radius": radius, "height": height} for radius, height in points]}})
        write(f"{name}.run.json", {**plain, "pour": {**plain["pour"], "mould": f"{name}.mould.json", "line": {"below_brim": "3 mm"}}, "decorations": [{
            "name": "Marble", "material": "melt", "mould": "moulds/marble_tray.json", "fill": {"below_brim": "0 mm"}, "cast_as": "two halves",
            "per_cast": 1, "density": "1.03 g/ml", "spares": "0 %", "melt_loss": "0 %", "left_in_jug": "0 g",
            "buried": {"cover": "0 mm", "placed": "before the pour", "places": [{"x": "0 mm", "y": "0 mm", "height": "30 mm" if name == "steep" else "12 mm"}]}}]})
        yield ["plan", f"{folder}/{name}.run.json"]


def of_records():
    """One after the other: what is noted of a batch from before it is begun until it may be sold, and the records in all."""
    where = f"{folder}/noted"
    os.mkdir(where)
    for name in os.listdir(f"{root}/examples"):
        if name.endswith(".json"):
            shutil.copy(f"{root}/examples/{name}", where)
    run, nameless = f"{where}/spring_cups.run.json", f"{where}/no_id.run.json"
    write("noted/no_id.run.json", {name: part for name, part in shipped("examples/plain_bars.run.json").items() if name != "id"})
    yield ["records", where]
    yield ["note", run]
    yield ["note", run, "--batch", "1"]
    yield ["note", run, "--batch", "1", "--reserve"]
    yield ["note", run, "--batch", "1", "--begin"]
    yield ["note", run, "--batch", "1", "--begin", "--again"]
    yield ["note", nameless, "--begin"]
    yield ["note", run, "--batch", "1", "--set", "base.made=1766 g", "--set", f"cured.{today}=12 pieces, 1040 g"]
    yield ["note", run, "--batch", "1", "--set", "weighed.pour.lye.naoh=1 g", "--confirmed", "1 g"]
    yield ["note", run, "--batch", "1", "--set", "tested=pass", "--set", f"ready_on={today}",
           "--confirmed", str(today)]
    yield ["plan", run]
    yield ["records", where]
    subprocess.run([program, "records", where, "--export", f"{folder}/all.json"], check=True, capture_output=True)
    with open(f"{folder}/all.json") as file:
        nothing = json.load(file)
    write("nothing.json", {**nothing, "tables": {name: [] for name in nothing["tables"]}})
    os.mkdir(f"{folder}/nothing")
    yield ["records", f"{folder}/nothing", "--import", f"{folder}/nothing.json"]


def of_batches():
    """Seven batches of one run, and four of another whose notes lack or contradict something; figures of the first that were taken, and
    batches that took more than the pot of the run would hold."""
    def noted(run, number, *notes):
        day = f"2026-10-{number:02}"
        words = [program, "note", run, "--batch", "1"]
        begin = [*words, "--begin", "--on", day, "--confirmed", day, *(["--again"] if number > 1 else [])]
        for words in (begin, [*words, *(word for note in notes for word in ("--set", note))]):
            done = subprocess.run(words, cwd=root, capture_output=True, text=True, timeout=120)
            if done.returncode:
                failures.append(done.stderr)

    def done(*words):
        ended = subprocess.run([program, *words], cwd=root, capture_output=True, text=True, timeout=120)
        if ended.returncode:
            failures.append(ended.stderr)

    for name, count in (("many", 7), ("few", 4), ("full", 7)):
        os.mkdir(f"{folder}/{name}")
        shutil.copy(f"{root}/examples/meadow_base.formula.json", f"{folder}/{name}")
        shutil.copy(f"{root}/examples/plain_bars.run.json", f"{folder}/{name}")
        run = f"{folder}/{name}/plain_bars.run.json"
        if name == "full":
            with open(run) as file:
                plan = json.load(file)
            pots = {"holds": "200 ml", "confirmed": "200 ml", "lye_jug": "2 l"}  # two thirds of it are a little more than one bar
            write("full/plain_bars.run.json", {**plan, "sell": 1, "pots": pots})
        for i in range(1, count + 1):
            all_of_it = [f"base.made={1340 + i} g", "base.left_over=30 g", f"base.on_tools={40 + i} g", f"base.in_pot={16 + i} g",
                         "base.cup_holds=100 ml", f"base.cup=102.{i} g", "pour.filled=12", "pour.line_off=0.2 mm", "minutes.making=90 min"]
            if name == "few":
                all_of_it = all_of_it[:4] + all_of_it[6:]
                all_of_it[3] = all_of_it[3] if i < 4 else "base.in_pot=900 g"
            if name == "full":
                all_of_it[:4] = [f"base.made={150 + i} g", "base.left_over=10 g", f"base.on_tools={30 + i} g", f"base.in_pot={27 + i} g"]
                all_of_it[6] = "pour.filled=1"
            noted(run, i, *all_of_it)
        yield ["learn", run]
    shutil.copytree(f"{folder}/many", f"{folder}/taken")
    for figure in ("density", "pot"):
        done("learn", f"{folder}/taken/plain_bars.run.json", "--take", figure)
    yield ["learn", f"{folder}/taken/plain_bars.run.json"]


def of_random_runs(count):
    for i in range(count):
        os.mkdir(f"{folder}/{i}")
        for name, document in RunMaker(f"20261125:{i}").run().items():
            write(f"{i}/{name}", document)
        yield ["plan", f"{folder}/{i}/chance.run.json"]


with ThreadPoolExecutor(os.cpu_count()) as pool:
    answers = [*pool.map(ask, [*of_catalogue(), *of_moulds(), *of_examples(), *of_known_topping(), *of_fixtures(), *of_batches()]),
               *pool.map(lambda words: ask(words, may_be_refused=True), of_random_runs(80))]
answers += [ask(words) for words in of_records()]
answers = [(words, answer) for words, answer in answers if answer]


def complaint(*words):
    done = subprocess.run([program, *words, "--json"], cwd=root, capture_output=True, text=True, timeout=120)
    if done.returncode != 1 or done.stdout or done.stderr.count("\n") != 1:
        failures.append(f"{words}: exit {done.returncode}, {done.stdout[:80]!r}, {done.stderr!r}")
    return list(words), json.loads(done.stderr)


answers += [complaint("plan", "no_such.run.json"), complaint("plan", "examples/plain_bars.run.json", "--sell", "none"),
            complaint("gauge", "meshes/twisted_cup.stl", "--role", "cavity"), complaint("plam"), complaint("list", "fatz")]

for words, answer in answers:
    errors = list(validator_of(answer).iter_errors(answer))
    failures.extend(f"{' '.join(words)}: {'/'.join(map(str, error.path))}: {error.message[:200]}" for error in errors[:5])
    if not errors:
        schema = schema_of(answer)
        occurs(schema, (schema["$id"],), answer)

# What the program can say of a fat, and of no shipped one has to.
OF_NO_SHIPPED_FAT = {
    ("$defs", "theory", "properties", "disagreement", "type", "string"),
    ("$defs", "saponification", "properties", "readings", "items", "properties", "low", "type", "null"),
}
expected = {place for name, schema in schemas.items() for place in places(schema, (name,))}
for place in sorted(expected - used.keys(), key=str):
    if place[1:] not in OF_NO_SHIPPED_FAT:
        failures.append(f"occurs in no answer: {place[0].rsplit('/', 1)[1]}#/{'/'.join(map(str, place[1:]))}")
failures += [f"occurs by now: {place}" for place in OF_NO_SHIPPED_FAT if any(seen[1:] == place for seen in used)]

# ---- a slip is seen: one key too many, wherever an object lies

def objects(value, kind=()):
    """Each kind of object in `value` once: (its place without numbers, the object)."""
    if isinstance(value, dict):
        yield kind, value
        for name, below in value.items():
            yield from objects(below, (*kind, name))
    elif isinstance(value, list):
        for below in value[:1]:
            yield from objects(below, kind)


for what in (["plan", "examples/spring_cups.run.json"], ["list"], ["gauge", "moulds/low_bowl.json", "--depth", "5 mm"]):
    answer = next(answer for words, answer in answers if words == what)
    validator = validator_of(answer)
    for kind, one in objects(answer):
        one["nmae"] = "x"
        if validator.is_valid(answer):
            failures.append(f"{' '.join(what)}: the schema lets an unknown key pass in /{'/'.join(kind)}")
        del one["nmae"]


print("\n".join(failures) or f"{len(answers)} answers obey their schemas, and show all {len(expected)} places of them")
sys.exit(bool(failures))
