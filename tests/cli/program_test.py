"""The real program on real files: exit status, one line of complaint, nothing on standard output when the
input wants mending. Each case changes one thing in a shipped run, as a slip of the hand would."""
import copy
import json
import math
import os
import re
import resource
import shutil
import signal
import struct
import subprocess
import sys
import tempfile
import time

root, program = sys.argv[1:3]
failures = []


def run(*words, cwd=root, env=None):
    return subprocess.run([program, *words], cwd=cwd, capture_output=True, text=True, timeout=60,
                          env={**os.environ, **(env or {})})


def facets_of(path):
    """The corners of each facet of a binary STL."""
    with open(path, "rb") as file:
        stl = file.read()
    return [[struct.unpack_from("<3f", stl, 84 + 50 * facet + 12 + 12 * corner) for corner in range(3)]
            for facet in range(struct.unpack_from("<I", stl, 80)[0])]


def enclosed(facets):
    """Volume of a closed surface, by the divergence theorem."""
    return sum(a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])
               for a, b, c in facets) / 6


def check(condition, what):
    if not condition:
        failures.append(what)


def put(document, pointer, value):
    *path, last = [int(p) if p.isdigit() else p for p in pointer.strip("/").split("/")]
    for step in path:
        document = document[step]
    if value is None:
        del document[last]
    else:
        document[last] = value


def load(name):
    with open(f"{root}/examples/{name}") as file:
        return json.load(file)


def scene(run_changes=(), base_changes=(), topping_changes=(), mould_changes=()):
    """A folder with the spring order and its files, changed."""
    folder = tempfile.mkdtemp()
    files = {"spring_cups.run.json": load("spring_cups.run.json"),
             "meadow_base.formula.json": load("meadow_base.formula.json"),
             "cloud_topping.formula.json": load("cloud_topping.formula.json")}
    with open(f"{root}/moulds/fluted_cup_small.json") as file:
        files["cup.json"] = json.load(file)
    spring = files["spring_cups.run.json"]
    spring["pour"]["mould"] = "cup.json"
    spring["decorations"][0]["mould"] = "moulds/bead_tray.json"
    for name, changes in (("spring_cups.run.json", run_changes),
                          ("meadow_base.formula.json", base_changes),
                          ("cloud_topping.formula.json", topping_changes), ("cup.json", mould_changes)):
        for pointer, value in changes:
            put(files[name], pointer, value)
    for name, document in files.items():
        with open(f"{folder}/{name}", "w") as file:
            json.dump(document, file)
    return folder


def refused(what, said, words=("plan", "spring_cups.run.json"), **changes):
    folder = scene(**changes)
    done = run(*words, cwd=folder)
    line = done.stderr
    check(done.returncode == 1, f"{what}: exit {done.returncode}, not 1: {done.stdout[:200]}{line}")
    check(done.stdout == "", f"{what}: printed something that could be weighed")
    check(line.count("\n") == 1, f"{what}: not one line: {line!r}")
    check(re.search(said, line) is not None, f"{what}: {line!r} does not say {said!r}")
    shutil.rmtree(folder)


# A sound run first, so that the refusals below are refusals of the slip alone.
folder = scene()
sound = run("plan", "spring_cups.run.json", cwd=folder)
check(sound.returncode == 0, f"the sound run: {sound.stderr}")
check(sound.stderr == "", "the sound run complains")
for line in sound.stdout.splitlines():
    check(len(line) <= 80, f"wider than 80 columns: {line}")
document = json.loads(run("plan", "spring_cups.run.json", "--json", cwd=folder).stdout)
check(document["schema"] == "brimwright.plan/1", "schema of the plan")
# 46 / (1 - 0.04) = 47.92: 48 pieces.
check(document["pieces"]["make"] == 48, "48 pieces are made to sell 46")
for part in ("pour", "pipe"):
    weights = [line["g"] for line in document[part]["ingredients"]]
    check(abs(sum(weights) - document[part]["make_g"]) < 1e-6, f"{part}: ingredients do not sum")
    check(document[part]["superfat_percent"]["effective"] > 0, f"{part}: superfat")
    for line in document[part]["ingredients"]:
        check(re.search(r"\b%s g" % re.escape(format(line["g"], ".1f")), sound.stdout)
              or re.search(r"\b%d g" % line["g"], sound.stdout),
              f"{part}: text and JSON differ in {line['name']}")
# What an ingredient is, it says itself: its name may be anything.
check({line["role"] for line in document["pour"]["ingredients"]} >= {"fat", "alkali", "water"}, "roles of the base")
check(all(line["name"].startswith("NaOH") == (line["role"] == "alkali") for line in document["pour"]["ingredients"]),
      "NaOH is the alkali")
# The price of a piece, summed by hand from the JSON's own lines.
cost = document["piece"]["cost"]
total = sum(round(float(line["amount"]) * 100) for line in cost["materials"] if line["amount"])
check(total == round(float(cost["total"]) * 100), "cost lines do not sum to the total")
check(abs(total / 46 - float(cost["amount"]) * 100) <= 0.5, "cost of a piece")
check(cost["unpriced"] == [], f"unpriced: {cost['unpriced']}")
check(run("plan", "spring_cups.run.json", cwd=folder).stdout == sound.stdout, "two runs differ")
comma = run("plan", "spring_cups.run.json", cwd=folder, env={"LC_ALL": "de_DE.UTF-8", "LANG": "de_DE.UTF-8"})
check(comma.stdout == sound.stdout, "the locale changes the plan")
shutil.rmtree(folder)

folder = scene(base_changes=[("/fragrances/0/name", "Watermelon fragrance")])
melon = json.loads(run("plan", "spring_cups.run.json", "--json", cwd=folder).stdout)["pour"]["ingredients"]
check({line["name"]: line["role"] for line in melon}.get("Watermelon fragrance") == "fragrance",
      "a fragrance that is called after water is a fragrance")
check([line["name"] for line in melon if line["role"] == "water"] == ["Water, distilled"], "water is water")
check({line["fat"] for line in melon if line["role"] == "fat"} == {line["fat"] for line in load("meadow_base.formula.json")["fats"]},
      "a fat is told by the name that the formula has for it")
shutil.rmtree(folder)

one = json.loads(run("plan", "examples/plain_bars.run.json", "--sell", "12", "--json").stdout)
two = json.loads(run("plan", "examples/plain_bars.run.json", "--sell", "24", "--json").stdout)
sure = one["pour"]["superfat_percent"]
check(sure["low"] <= sure["likely_low"] <= sure["effective"] <= sure["likely_high"] <= sure["high"],
      "the likely superfat lies outside the worst case, or without what comes out")
check(abs(sum(doubt["percent_of_variance"] for doubt in sure["uncertainties"]) - 100) < 1,
      "what puts the superfat in doubt does not add to a whole")
check(two["pieces"]["make"] == 24 and one["pieces"]["make"] == 12, "--sell replaces the file's number")
check(abs(two["pour"]["in_pieces_g"] - 2 * one["pour"]["in_pieces_g"]) < 0.01, "twice the pieces")

at = r"spring_cups\.run\.json: "
base = r"meadow_base\.formula\.json: "
refused("fill deeper than the cavity", at + r"/pour/line: a fill of 40 mm is deeper than the cavity; .*32 mm deep",
        run_changes=[("/pour/line", {"depth": "40 mm"})])
refused("negative superfat", base + "/superfat: ", base_changes=[("/superfat", "-1 %")])
refused("superfat above 30 %", base + "/superfat: ", base_changes=[("/superfat", "31 %")])
refused("no superfat", base + "/superfat: is missing", base_changes=[("/superfat", None)])
refused("lye above 50 %", base + "/water", base_changes=[("/water", {"lye_strength": "52 %"})])
refused("lye above 50 % by ratio", base + "/water", base_changes=[("/water", {"water_to_alkali": 0.9})])
refused("lye absurdly weak", base + "/water", base_changes=[("/water", {"lye_strength": "8 %"})])
refused("a NaOH value for a KOH value", base + "/fats/1/saponification_value.*NaOH",
        base_changes=[("/fats/1/saponification_value", 0.183)])
refused("a NaOH value in mg", base + "/fats/0/saponification_value.*NaOH",
        base_changes=[("/fats/0/saponification_value", 135)])
refused("shares that do not sum", base + r"/fats: .*98 %", base_changes=[("/fats/0/share", "38 %")])
refused("zero pieces", at + "/sell: is 0 pieces", run_changes=[("/sell", 0)])
refused("negative pieces", at + "/sell: is -4 pieces", run_changes=[("/sell", -4)])
refused("fractional pieces", at + r"/sell: is 2\.5 pieces", run_changes=[("/sell", 2.5)])
refused("pieces as text", at + "/sell: ", run_changes=[("/sell", "many")])
refused("density outside sense", base + "/measured_density: is 9 g/ml",
        base_changes=[("/measured_density", "9 g/ml")])
refused("a whip outside sense", at + "/pipe/whip: makes a density",
        run_changes=[("/pipe/whip/net", "7.8 g")])
refused("a bare number where a unit is needed", at + "/losses/pour/pot: is the bare number 25 without a unit",
        run_changes=[("/losses/pour/pot", 25)])
refused("ounces that may be fluid", at + r'/pipe/bag_holds: .*"oz" is a mass',
        run_changes=[("/pipe/bag_holds", "20 oz")])
refused("fluid ounces for a mass", at + r"/losses/pour/pot: .*that is a volume",
        run_changes=[("/losses/pour/pot", "2 fl oz")])
refused("an unknown key", at + '/spoilag: unknown key; did you mean "spoilage"', run_changes=[("/spoilag", "4 %")])
refused("an unknown key deep inside", at + '/decorations/0/spare: unknown key; did you mean "spares"',
        run_changes=[("/decorations/0/spare", "4 %")])
refused("a misspelt key beside a missing one", at + r'/spoilage: is missing, and "nme" is not known \("name"\?\), "spoilge" is not known \("spoilage"\?\)',
        run_changes=[("/spoilage", None), ("/spoilge", "4 %"), ("/nme", "x")])
refused("a misspelt key beside a missing one of the topping", at + '/pipe/formula: is missing, and "bag_hold" is not known .*"bag_holds"',
        run_changes=[("/pipe/formula", None), ("/pipe/bag_hold", "600 ml")])
refused("a negative share where none may be", at + r'/spoilage: "-3 %" is negative; give 0 or more: a share from 0 to 90 %',
        run_changes=[("/spoilage", "-3 %")])
refused("a price without its pack", at + "/money/prices/olive/for: is missing", run_changes=[("/money/prices/olive", {"paid": "34.90"})])
# What the schema lets stand there is not called unknown where another key is missing.
for kind, pointer, first, part in (
        ("run", "", "spoilage", {}), ("run", "/pour", "mould", {}), ("run", "/pipe", "formula", {}), ("run", "/losses/pour", "overpour", {}),
        ("run", "/losses/pipe", "bag", {}), ("run", "/decorations/0", "name", {}), ("formula", "", "name", {}), ("mould", "", "name", {})):
    with open(f"{root}/src/schemas/{kind}.schema.json") as file:
        schema = json.load(file)
    holder = schema["$defs"]["decoration"] if pointer.startswith("/decorations") else schema
    for step in [] if pointer.startswith("/decorations") else pointer.strip("/").split("/"):
        holder = holder["properties"][step] if step else holder
    name = {"run": "spring_cups.run.json", "formula": "meadow_base.formula.json", "mould": "cup.json"}[kind]
    folder = scene()
    with open(f"{folder}/{name}") as file:
        document = json.load(file)
    inner = document
    for step in [int(p) if p.isdigit() else p for p in pointer.strip("/").split("/") if p]:
        inner = inner[step]
    for key in holder["properties"]:
        if key != "own_fats":  # is opened before the rest is read
            inner.setdefault(key, None)
    del inner[first]
    with open(f"{folder}/{name}", "w") as file:
        json.dump(document, file)
    line = run("plan", "spring_cups.run.json", cwd=folder).stderr
    check(f"{pointer}/{first}: is missing; give" in line, f"{kind}{pointer}: {line!r}")
    shutil.rmtree(folder)
# What is not filled in is unpriced; where nothing is priced there is no cost, and it is not 0.00.
folder = scene(run_changes=[("/money/prices/olive", ""), ("/money/prices/coconut", None), ("/money/prices/castor", {}),
                            ("/money/prices/shea", {"paid": "", "for": "1 kg"})])
with open(f"{folder}/spring_cups.run.json") as file:
    document = json.load(file)
document["money"]["prices"]["coconut"] = None
with open(f"{folder}/spring_cups.run.json", "w") as file:
    json.dump(document, file)
check("unpriced" in run("plan", "spring_cups.run.json", cwd=folder).stdout, "the text does not say what is unpriced")
plan = json.loads(run("plan", "spring_cups.run.json", "--json", cwd=folder).stdout)
check(set(plan["piece"]["cost"]["unpriced"]) == {"olive", "coconut", "castor", "shea"}, f"unpriced: {plan['piece']['cost']['unpriced']}")
document["money"]["prices"] = {"olve": {"paid": "9", "for": "1 kg"}}
with open(f"{folder}/spring_cups.run.json", "w") as file:
    json.dump(document, file)
plan = json.loads(run("plan", "spring_cups.run.json", "--json", cwd=folder).stdout)
check(plan["piece"]["cost"]["amount"] is None and plan["piece"]["cost"]["total"] is None, "no price, and yet a cost")
text = run("plan", "spring_cups.run.json", cwd=folder).stdout
check("so no cost." in text and "0.00" not in text.split("A PIECE")[1].split("\n\n")[0], "no price, and yet a cost in words")
shutil.rmtree(folder)
refused("losses left out", at + "/losses/pour/pot: is missing", run_changes=[("/losses/pour/pot", None)])
refused("losses of a section that is not there", at + "/losses/pipe: unknown key", run_changes=[("/pipe", None)])
refused("an unknown fat", base + '/fats/0/fat: .*"olive"', base_changes=[("/fats/0/fat", "olve")])
refused("an acid that is not said to be one", base + "/additives/0",
        base_changes=[("/additives/0/name", "lemon juice")])
refused("an alkali among the additives", base + '/additives/0/name: "NaOH" is an alkali .*under the formula',
        base_changes=[("/additives/0/name", "NaOH")])
refused("an alkali that belongs nowhere", base + "/additives/0/name: .*leave it out",
        base_changes=[("/additives/0/name", "Washing-Soda 99 %")])
refused("an alkali among the colours of a layer", at + "/pour/layers/0/colours/0/name: .*is an alkali",
        run_changes=[("/pour/layers/0/colours", [{"name": "Natronlauge", "rate": "1 % of batter"}])])
refused("a decoration of lye", at + "/decorations/0/material: .*is an alkali",
        run_changes=[("/decorations/0/material", "caustic soda")])
# The program's own hint for vinegar, typed back in as it stands: what is printed is then no lye-heavy soap.
vinegar = {"name": "vinegar", "rate": "20 % of fats", "goes_into": "lye"}
folder = scene(base_changes=[("/additives/0", vinegar)])
hint = re.search(r"as in (\{.*?\})", run("plan", "spring_cups.run.json", cwd=folder).stderr)
check(hint is not None, "no hint for vinegar")
shutil.rmtree(folder)
folder = scene(base_changes=[("/additives/0", {**vinegar, "contains_acid": json.loads(hint.group(1))})])
sour = json.loads(run("plan", "spring_cups.run.json", "--json", cwd=folder).stdout)["pour"]
said = run("plan", "spring_cups.run.json", cwd=folder).stdout
shutil.rmtree(folder)
check(sour["superfat_percent"]["effective"] >= 6, "the hint for vinegar lowers the superfat")
weighed = next(line["g"] for line in sour["ingredients"] if line["name"] == "vinegar")
check(abs(sour["water_in_acids_g"] - 0.96 * weighed) < 0.01, "vinegar of 4 % holds 96 % of water")
pure = 0.99 * sour["naoh_g"]
check(next(line["role"] for line in sour["ingredients"] if line["name"] == "vinegar") == "acid", "vinegar is an acid")
in_pot = 100 * pure / (pure + sour["water_g"] + 0.96 * weighed)
check(abs(sour["pot_strength_percent"] - in_pot) < 0.01, "vinegar's water is not in the strength of the lye in its pot")
check(sour["pot_strength_percent"] < 25 and f"Lye {in_pot:.1f} % strong" in said, "the strength that is shown is not the pot's")
check(abs(100 * pure / (pure + sour["water_g"]) - 33) < 0.1, "the formula's own water is not as stated")

refused("a mould that is not there", at + "/pour/mould: ", run_changes=[("/pour/mould", "no_such.json")])
refused("a path out of the folder", at + "/pour/formula: ",
        run_changes=[("/pour/formula", "../../../../../../etc/passwd")])
refused("a mesh without its unit", r"cup\.json: /mesh/unit: ",
        mould_changes=[("/mesh", {"file": "meshes/twisted_cup.stl", "role": "cavity", "up": "+z"})])
refused("a solid without pockets as a mould's body", r"""cup\.json: /mesh/role: .*twisted_cup\.stl holds no liquid, (?!.*--).*give "role": "cavity"$""",
        mould_changes=[("/mesh", {"file": "meshes/twisted_cup.stl", "unit": "mm", "role": "body", "up": "+z"})])
refused("a mould's mesh that is upside down", r"""cup\.json: /mesh/up: .*with "up": "\+z" it has 4 cavities; try "up": "\+z"; if that is wrong""",
        mould_changes=[("/mesh", {"file": "tests/data/meshes/slab4_body.stl", "unit": "mm", "role": "body", "up": "-z"})])
# The same questions of who types options.
refused("a mesh that may be a mould", r"slab4_body\.stl: .*with --up \+z it has 4 cavities; give --role cavity if .* or --role body with --up \+z if",
        words=("gauge", f"{root}/tests/data/meshes/slab4_body.stl", "--unit", "mm", "--up", "-z"))
refused("an option that needs another", r"^command line: --density: does nothing alone; give it together with --fit-mass$",
        words=("gauge", f"{root}/moulds/low_bowl.json", "--density", "1 g/ml"))
refused("a file outside the folders that may be read", r"allow its folder with --library /",
        run_changes=[("/pour/formula", "/etc/passwd")])
refused("a bare length in a mould", r"cup\.json: /shape/height: is the bare number 32",
        mould_changes=[("/shape/height", 32)])
refused("an alkali of no purity", base + "/alkali/0/purity: ",
        base_changes=[("/alkali/0/purity", "0 %")])
refused("--sell of nothing", r"command line: --sell: ", words=("plan", "spring_cups.run.json", "--sell", "0"))
refused("--sell of a half", r"command line: --sell: ", words=("plan", "spring_cups.run.json", "--sell", "2.5"))
refused("no such run", r"nothing\.json: there is no such file", words=("plan", "nothing.json"))
refused("an unknown option", "command line: .*--speed", words=("plan", "spring_cups.run.json", "--speed", "9"))
refused("an unknown fat to list", 'did you mean "coconut"', words=("list", "fats", "coconutt"))
refused("a word for several fats to list", r'it may be "palm" \(Palm oil, 199.5 mg/g\), .* or "palm_stearin" \(.*name the one that you have',
        words=("list", "fats", "Palm"))
refused("a formula that names a fat by a word for several", base + r'/fats/0/fat: .*"olive" \(Olive oil, .* or "olive_pomace" \(',
        base_changes=[("/fats/0/fat", "Olive")])
refused("a soap of wax", base + r"/fats: more than half of the alkali would be weighed for Lanolin",
        base_changes=[("/fats", [{"fat": "rapeseed_low_erucic", "share": "10 %"}, {"fat": "lanolin", "share": "90 %"}])])
wool_wax = run("list", "fats", "wool wax").stdout
check(wool_wax.startswith("Lanolin (wool wax)\n") and "stays Lanolin" in wool_wax, "a fat is listed by any of its names")
# Beeswax, 5 % of the base's fats, is reckoned with 57 mg/g, of which 4 are sure. With olive 190, coconut 257, rapeseed 187.5 and
# cocoa butter 193 (list fats): planned 0.4 x 190 + 0.25 x 257 + 0.2 x 187.5 + 0.1 x 193 + 0.05 x 57 = 199.9 mg/g, sure 197.25;
# 1 - 0.94 x 199.9 / 197.25 = 4.74 %.
folder = scene(base_changes=[("/fats/4/fat", "beeswax")], run_changes=[("/money/prices/beeswax", {"paid": "9.00", "for": "500 g"})])
waxen = run("plan", "spring_cups.run.json", cwd=folder)
check(waxen.returncode == 0 and "Beeswax is a wax that lye attacks slowly" in waxen.stdout, "a run with beeswax plans and cautions")
check(re.search(r"superfat\s+is\s+4\.7\s+%", waxen.stdout) is not None, "the superfat that beeswax may leave is told")
check("Cera Alba" in waxen.stdout and "Jojoba" not in waxen.stdout, "beeswax stays what it is on the label")
shutil.rmtree(folder)
refused("a mesh without its unit on the command line", r"twisted_cup\.stl: .*mm, .*cm, .* in.*--unit",
        words=("gauge", f"{root}/meshes/twisted_cup.stl", "--role", "cavity"))
refused("a depth without a unit", "command line: --depth: .*has no unit",
        words=("gauge", "cup.json", "--depth", "12"))
refused("a depth below the floor", "command line: --depth: .*deeper than the cavity",
        words=("gauge", "cup.json", "--depth", "5 in"))

# The decorated piece: each slip in one line, with what would fit.
refused("no way to say how big a topping is", at + "/pipe: does not say how big",
        run_changes=[("/pipe/trials", None), ("/pipe/beads", None)])
refused("a star turned inside out", at + "/pipe/beads/tip: .*inner",
        run_changes=[("/pipe/beads/tip", {"name": "x", "star": {"points": 8, "outer_radius": "4 mm", "inner_radius": "6 mm"}})])
refused("a tip that does not ship", at + '/pipe/beads/tip: .*did you mean "round 8 mm"',
        run_changes=[("/pipe/beads/tip", "round 8mm")])
refused("a spiral that leaves the cup", at + r"/pipe/beads/moves/1: reaches .* beyond the opening's .*take at least",
        run_changes=[("/pipe/beads/moves/1/start_radius", "60 mm")])
refused("a negative headspace", at + "/pour/line/below_brim: ", run_changes=[("/pour/line", {"below_brim": "-2 mm"})])
refused("an embed pressed in deeper than it is tall", at + "/decorations/0/on_top/pressed_in: is 40 mm, but Pearl bead is 16 mm tall",
        run_changes=[("/decorations/0/on_top/pressed_in", "40 mm")])
buried = {"cover": "3 mm", "placed": "before the pour", "places": [{"x": "0 mm", "y": "0 mm", "height": "3 mm"}]}
refused("an embed larger than the hollow", at + "/decorations/0/buried/places/0: Pearl bead sticks out.*across would fit",
        run_changes=[("/decorations/0/on_top", None), ("/decorations/0/buried", buried), ("/decorations/0/mould", None), ("/decorations/0/fill", None),
                     ("/decorations/0/cast_as", None), ("/decorations/0/rod", {"diameter": "16 mm", "length": "120 mm"})])
refused("bars larger than the loaf", at + "/cut/bar/thickness: ", run_changes=[("/cut", {"bar": {"thickness": "300 mm"}, "kerf": "0 mm"})])
refused("a saw without its kerf", at + "/cut/kerf: is missing", run_changes=[("/cut", {"bar": {"thickness": "10 mm"}})])
refused("a file that is no piece", "command line: --piece: .*does not say what to write",
        words=("plan", "spring_cups.run.json", "--piece", "piece.txt"))
refused("a piece to cut open that is not asked for", "command line: --cut-open: does nothing alone",
        words=("plan", "spring_cups.run.json", "--cut-open"))
refused("embeds without their cover", "command line: --cover: is missing",
        words=("gauge", "cup.json", "--embed", "moulds/bead_tray.json"))

folder = tempfile.mkdtemp()
done = run("plan", "examples/spring_cups.run.json", "--json", "--piece", f"{folder}/a.svg", "--piece", f"{folder}/a.glb",
           "--piece", f"{folder}/a.stl")
check(done.returncode == 0 and sorted(os.listdir(folder)) == ["a.glb", "a.stl", "a.svg"], f"files of a piece: {done.stderr}")
spring = json.loads(done.stdout)
corners = [corner for facet in facets_of(f"{folder}/a.stl") for corner in facet]
tall = max(c[2] for c in corners) - min(c[2] for c in corners)
check(abs(tall - spring["piece"]["size"]["height_mm"]) < 0.01, f"the model is as tall as the plan says: {tall}")
with open(f"{folder}/a.glb", "rb") as file:
    glb = file.read()
scene_json = json.loads(glb[20:20 + struct.unpack_from("<I", glb, 12)[0]])
check([n["name"] for n in scene_json["nodes"] if "mesh" in n] == ["Rose", "Plain", "Cloud topping", "Pearl bead"], "named parts")
# A bar is a box: cut open down its middle it is half a box, closed again by its cut face.
run("plan", "examples/plain_bars.run.json", "--piece", f"{folder}/bar.stl")
run("plan", "examples/plain_bars.run.json", "--piece", f"{folder}/half.stl", "--cut-open")
bar, half = (facets_of(f"{folder}/{name}.stl") for name in ("bar", "half"))
check(abs(enclosed(half) / enclosed(bar) - 0.5) < 1e-5, f"half a bar: {enclosed(half)} of {enclosed(bar)} mm3")
middle = sum(edge(y for facet in bar for _, y, _ in facet) for edge in (min, max)) / 2
check(abs(min(y for facet in half for _, y, _ in facet) - middle) < 1e-4, "the front half is taken off")
run("gauge", "moulds/round_cup.json", "--glb", f"{folder}/half.glb", "--cut-open")
with open(f"{folder}/half.glb", "rb") as file:
    glb = file.read()
half_cup = json.loads(glb[20:20 + struct.unpack_from("<I", glb, 12)[0]])
nearest = [half_cup["accessors"][mesh["primitives"][0]["attributes"]["POSITION"]]["max"][2] for mesh in half_cup["meshes"]]
check(len(nearest) == 2 and all(abs(z) < 1e-6 for z in nearest), f"a filled cup cut open at its middle: {nearest}")
shutil.rmtree(folder)
parts = sum(part["fresh_g"] for part in spring["piece"]["parts"])
check(abs(parts - spring["piece"]["fresh_g"]) < 0.1, "parts sum to the piece")
loaf = json.loads(run("plan", "examples/tilted_loaf.run.json", "--json").stdout)
cut = loaf["cut"]
check(abs(len(cut["bars"]) * cut["bar_ml"]["mean"] + cut["offcuts_ml"] + cut["kerf_ml"] + cut["planing_ml"] - cut["loaf_ml"]) < 0.01,
      "bars + offcuts + kerf + planing = loaf")
check(loaf["pieces"]["casts"] * loaf["pieces"]["per_cast"] >= loaf["pieces"]["make"], "whole loaves are poured")
check(abs(cut["loaf_ml"] - loaf["pour"]["displaced_ml"] - loaf["pour"]["volume_each_ml"]) < 0.01, "displaced + poured = loaf")
bowl = json.loads(run("plan", "examples/marble_bowls.run.json", "--json").stdout)
embeds = bowl["decorations"][0]["buried"]["embeds"]
check(len(embeds) == 3 and all(e["wall_cover_mm"] >= 4 and e["apart_mm"] >= 4 for e in embeds), f"three marbles: {embeds}")

# gauge: what a mesh is, and what can be asked of it.
tray = json.loads(run("gauge", "meshes/six_pocket_tray.stl", "--unit", "mm", "--depth", "10 mm", "--json").stdout)
check(tray["role"] == "body" and len(tray["pockets"]) == 6, "the tray is a body with six pockets")
# A frustum between 48-gons of radius 20 and 25 mm, 25 mm apart (meshes/README.md); at 10 mm the radius is 22.
polygon = 24 * math.sin(2 * math.pi / 48)
check(abs(tray["total_ml"] - 6 * polygon * 25 / 3 * 1.525) < 0.01, f"total of the tray: {tray['total_ml']}")
level = tray["pockets"][3]["levels"][0]
check(abs(level["volume_ml"] - polygon * 10 / 3 * (400 + 440 + 484) / 1000) < 1e-3, f"a level: {level}")
check(abs(level["ml_per_mm"] - polygon * 484 / 1000) < 1e-3, f"a millimetre there: {level}")
plan = json.loads(run("plan", "examples/tray_cups.run.json", "--json").stdout)
check(plan["pieces"]["cavities"] == 12 and plan["pieces"]["fillings"] == 1, "the pockets are the mould's cavities")

fit = json.loads(run("gauge", "moulds/plain_bar.json", "--fit-volume", "200 ml", "--json").stdout)
check(abs(fit["fit"]["brimful_ml"] - 200) < 1e-3, "made to fit")
check(abs(fit["fit"]["across"] ** 3 * fit["pockets"][0]["brimful_ml"] - 200) < 0.01, "by the cube root")
# A half ball of 16 mm (2/3 pi 8^3 = 1072.3 mm3) in a box with 5 mm all round: 26 x 26 x 13 mm.
cast = json.loads(run("gauge", "moulds/bead_tray.json", "--cast-wall", "5 mm", "--cast-base", "5 mm", "--json").stdout)
check(abs(cast["casting"]["material_ml"] - (26 * 26 * 13 - 2 / 3 * math.pi * 512) / 1000) < 2e-3,
      f"silicone: {cast['casting']}")
# A tray's pockets weighed with water: 36 g at 20 degC is 36 / 0.9982041 ml (Kell 1975), in text as in JSON.
folder = tempfile.mkdtemp()
with open(f"{folder}/wet.json", "w") as file:
    json.dump({"schema": "brimwright.mould/2", "name": "Wet tray",
               "mesh": {"file": "meshes/six_pocket_tray.stl", "unit": "mm", "role": "body"},
               "water": {"temperature": "20 °C", "filled_to": "brim", "weighed_in": "each cavity", "weighings": ["36.0 g"]}}, file)
wet = json.loads(run("gauge", "wet.json", "--json", cwd=folder).stdout)
check(len(wet["pockets"]) == 6, "six cavities of the wet tray")
check(all(abs(p["brimful_ml"] - 36 / 0.9982041) < 1e-3 for p in wet["pockets"]), f"water decides: {wet['pockets'][0]}")
text = run("gauge", "wet.json", cwd=folder).stdout
check("6 cavities, each holds 36.1 ml" in text and "holds 39.8" not in text.split("depth")[0], f"text too: {text[:300]}")
done = run("gauge", f"{root}/moulds/round_cup.json", "--fit-volume", "200 ml", "--write", "fit.stl", cwd=folder)
fit = json.loads(run("gauge", "fit.stl", "--unit", "mm", "--role", "cavity", "--json", cwd=folder).stdout)
check(abs(fit["total_ml"] - 200) < 0.02, f"a written cavity holds what it was made to fit: {fit['total_ml']}")
shutil.rmtree(folder)

folder = tempfile.mkdtemp()
done = run("gauge", "moulds/twisted_cup.json", "--picture", f"{folder}/a.svg", "--glb", f"{folder}/a.glb",
           "--write", f"{folder}/a.stl", "--below-brim", "6 mm")
check(done.returncode == 0 and sorted(os.listdir(folder)) == ["a.glb", "a.stl", "a.svg"], f"files: {done.stderr}")
again = json.loads(run("gauge", f"{folder}/a.stl", "--unit", "mm", "--role", "cavity", "--json").stdout)
cup = json.loads(run("gauge", "moulds/twisted_cup.json", "--json").stdout)
check(abs(again["total_ml"] - cup["pockets"][0]["brimful_ml"]) < 1e-3, "a written cavity is read as it was")
done = run("gauge", "moulds/plain_bar.json", "--picture", f"{folder}/no/such/a.svg")
check(done.returncode == 1 and "a.svg" in done.stderr and done.stdout == "", f"no folder: {done.stderr}")
shutil.rmtree(folder)

# Unlike cavities: what is asked of one is refused until it is said of which.
def boxes_stl(path, boxes):
    """Closed boxes, each by its two corners, in one binary STL."""
    quads = ((0, 2, 3, 1), (4, 5, 7, 6), (0, 1, 5, 4), (2, 6, 7, 3), (0, 4, 6, 2), (1, 3, 7, 5))
    facets = b""
    for low, high in boxes:
        corner = [[(high if n >> axis & 1 else low)[axis] for axis in range(3)] for n in range(8)]
        for a, b, c, d in quads:
            for t in ((a, b, c), (a, c, d)):
                facets += struct.pack("<12fH", 0, 0, 0, *sum((corner[v] for v in t), []), 0)
    with open(path, "wb") as file:
        file.write(b" " * 80 + struct.pack("<I", len(facets) // 50) + facets)


folder = tempfile.mkdtemp()
boxes_stl(f"{folder}/two.stl", [((0, 0, 0), (60, 40, 25)), ((100, 0, 0), (130, 20, 10))])  # 60 ml and 6 ml
two = ("gauge", f"{folder}/two.stl", "--unit", "mm", "--role", "cavity")
text = run(*two).stdout
check("1: 1 cavity of 60.0 ml" in text and "2: 1 cavity of 6.0 ml" in text, f"numbered: {text}")
for words in (("--fit-volume", "90 ml"), ("--fit-mass", "90 g", "--density", "1 g/ml"), ("--pour", "3 ml"),
              ("--cast-wall", "5 mm", "--cast-base", "5 mm"), ("--tilt", "5 deg", "--mark", "5 mm"),
              ("--picture", f"{folder}/a.svg"), ("--glb", f"{folder}/a.glb"), ("--write", f"{folder}/a.stl")):
    done = run(*two, *words)
    check(done.returncode == 1 and done.stdout == "" and
          re.search(rf"{words[0]}: .*1: 1 of 60.0 ml; 2: 1 of 6.0 ml.*--cavity", done.stderr), f"unlike cavities, {words}: {done.stderr}")
check(os.listdir(folder) == ["two.stl"], "nothing is written for an unlike cavity")
second = json.loads(run(*two, "--cavity", "2", "--fit-volume", "48 ml", "--write", f"{folder}/b.stl", "--json").stdout)
check(abs(second["total_ml"] - 6) < 1e-3 and second["cavity"] == 2 and abs(second["fit"]["across"] - 2) < 1e-6, f"the second alone: {second}")
check(min(p[0] for f in facets_of(f"{folder}/b.stl") for p in f) == 200.0, "the second is written, doubled")
refused("a cavity that is not there", r"--cavity: \"3\" is none of the mesh's cavities; give a number from 1 to 2",
        words=(*two, "--cavity", "3"))
refused("a cavity of a mould file", "--cavity: is only for a mesh",
        words=("gauge", f"{root}/moulds/plain_bar.json", "--cavity", "1"))
refused("several solids without a role", "is 2 separate solids: .*--role cavity", words=two[:4])
shutil.rmtree(folder)

# A volume alone gives the depth at which it stands; typed back, the depth holds no more than that.
for mould in ("twisted_cup", "low_bowl", "post_ring", "plain_bar", "round_cup", "six_cup_tray"):
    for wanted in ("7.3 ml", "31.41 ml", "1 fl oz", "0.011 ml"):
        wanted_ml = {"1 fl oz": 29.5735295625}.get(wanted) or float(wanted.split()[0])
        done = run("gauge", f"moulds/{mould}.json", "--pour", wanted)
        found = re.search(r"stands ([\d.]+ mm) \(([\d.]+ in)\)\s+deep,\s+([\d.]+ mm)\s+\(([\d.]+ in)\)\s+below", done.stdout)
        check(found is not None, f"{mould} {wanted}: {done.stdout[-400:]}{done.stderr}")
        for depth in found.groups()[:2] if found else ():
            level = json.loads(run("gauge", f"moulds/{mould}.json", "--depth", depth, "--json").stdout)["pockets"][0]["levels"][0]
            check(level["volume_ml"] <= wanted_ml + 5e-5, f"{mould}: {wanted} at {depth} holds {level}")
            check(level["volume_ml"] >= wanted_ml - 0.03 * level["ml_per_mm"] - 1e-4, f"{mould}: {wanted} at {depth} holds only {level}")
cup = json.loads(run("gauge", "moulds/round_cup.json", "--pour", "40 ml", "--json").stdout)
whole = cup["pockets"][0]["brim_mm"]
check(abs(cup["poured"]["depth_mm"] + cup["poured"]["below_brim_mm"] - whole) <= 0.0011, f"depth and headspace: {cup['poured']}")
done = run("gauge", "moulds/round_cup.json", "--pour", "5 l")
most = re.search(r"at most ([\d.]+ ml)", done.stderr)
check(done.returncode == 1 and most and run("gauge", "moulds/round_cup.json", "--pour", most[1]).returncode == 0, f"the most, typed back: {done.stderr}")
refused("nothing poured", "--pour: is zero; give a volume above zero", words=("gauge", f"{root}/moulds/round_cup.json", "--pour", "0 ml"))

# What a refusal says can be given, typed back, can.
for mould in ("twisted_cup", "low_bowl", "post_ring", "heart_shallow", "six_sided_bar", "loaf_short"):
    file = f"moulds/{mould}.json"
    done = run("gauge", file, "--depth", "1 m")
    for depth in re.search(r"at most ([\d.]+ mm) \(([\d.]+ in)\)", done.stderr).groups():
        check(run("gauge", file, "--depth", depth).returncode == 0, f"{mould}: a depth of {depth}, as advised")
    done = run("gauge", file)
    for depth in re.search(r"([\d.]+ mm)\s+\(([\d /]+ in)\)\s+deep", done.stdout).groups():
        check(run("gauge", file, "--depth", depth).returncode == 0, f"{mould}: its own depth of {depth}")
    done = run("gauge", file, "--tilt", "9 deg", "--mark", "1 m")
    for mark in re.search(r"to ([\d.]+ mm) \(([\d.]+ in)\)", done.stderr).groups():
        check(run("gauge", file, "--tilt", "9 deg", "--mark", mark).returncode == 0, f"{mould}: a mark of {mark}, as advised")
    done = run("gauge", file, "--tilt", "9 deg", "--pour", "9 l")
    most = re.search(r"at most ([\d.]+ ml)", done.stderr)[1]
    check(run("gauge", file, "--tilt", "9 deg", "--pour", most).returncode == 0, f"{mould}: {most} propped, as advised")

bar = f"{root}/moulds/plain_bar.json"
refused("a tray upside down", r"with --up \+z it has 6 cavities.*--role cavity",
        words=("gauge", f"{root}/meshes/six_pocket_tray.stl", "--unit", "mm", "--up", "-z"))
refused("a mesh option with a mould file", "command line: --role: is only for a mesh", words=("gauge", bar, "--role", "body"))
refused("a role that is none", "command line: --role: .*cavity",
        words=("gauge", f"{root}/meshes/twisted_cup.stl", "--unit", "mm", "--role", "lid"))
refused("a board under a hollow", "command line: --on-board: only goes with a mould's body",
        words=("gauge", f"{root}/meshes/six_pocket_tray.stl", "--unit", "mm", "--role", "cavity", "--on-board"))
refused("a board under a hollow in a mould file", r"cup\.json: /mesh/on_board: ",
        mould_changes=[("/mesh", {"file": "meshes/twisted_cup.stl", "unit": "mm", "role": "cavity", "on_board": True})])
refused("a mass to fit without its density", "command line: --density: is missing", words=("gauge", bar, "--fit-mass", "90 g"))
refused("a density without use", "command line: --density: does nothing alone", words=("gauge", bar, "--density", "1 g/ml"))
refused("half a casting box", "command line: --cast-base: is missing", words=("gauge", bar, "--cast-wall", "5 mm"))
refused("a tilt without a pour", "command line: --tilt: needs to know", words=("gauge", bar, "--tilt", "10 deg"))
refused("a pour that spills", "command line: --pour: .*spills over the low brim",
        words=("gauge", bar, "--tilt", "30 deg", "--pour", "110 ml"))
refused("a count that contradicts the mesh", r"cup\.json: /cavities: is 8, but the mesh has 6",
        mould_changes=[("/shape", None), ("/mesh", {"file": "meshes/six_pocket_tray.stl", "unit": "mm", "role": "body"})])

# What is said to mend a lye that may crystallise, typed back, mends it.
def crystals(run_changes=(), topping_changes=(("/water", {"water_to_alkali": 1.6}),)):
    changes = {"run_changes": list(run_changes), "topping_changes": list(topping_changes)}
    done = run("plan", "spring_cups.run.json", "--json", cwd=scene(**changes))
    check(done.returncode == 0, f"crystals: {done.stderr!r}")
    return [caution["text"] for caution in json.loads(done.stdout)["cautions"] if "may crystallise" in caution["text"]]


said = crystals()
remedy = said and re.search(r"use it at (\d+ °C) \((\d+ °F)\) or warmer, or make it ([\d.]+ %) strong or weaker", said[0])
check(remedy, f"crystals: no remedy in {said}")
for degrees in remedy.groups()[:2] if remedy else ():
    check(not crystals(run_changes=[("/pipe/temperatures/lye_used_at", degrees)]), f"crystals: lye kept at {degrees} still draws the caution")
if remedy:
    check(not crystals(topping_changes=[("/water", {"lye_strength": remedy[3]})]), f"crystals: a lye of {remedy[3]} still draws the caution")

# Files that are no JSON, or not what they should be.
for name, content, said in (("a.run.json", "{", "line 1"), ("b.run.json", '{"schema": "brimwright.mould/2"}', "/schema"),
                            ("c.run.json", "\x00\x01\x02", "is not a JSON file"), ("d.run.json", "[]", "one object"),
                            ("e.run.json", '{"sell": 1, "sell": 2}', "appears twice")):
    folder = tempfile.mkdtemp()
    with open(f"{folder}/{name}", "w") as file:
        file.write(content)
    done = run("plan", name, cwd=folder)
    check(done.returncode == 1 and said in done.stderr and done.stderr.startswith(name),
          f"{name}: {done.returncode} {done.stderr!r}")
    shutil.rmtree(folder)

check(run("--version").stdout.startswith("brimwright "), "--version")
with open("/dev/full", "w") as full:
    done = subprocess.run([program, "list", "fats"], cwd=root, stdout=full, stderr=subprocess.PIPE, text=True)
check(done.returncode == 1, f"a full disk goes unnoticed: {done.returncode}")


def with_small_files():
    """As a disk's or a user's limit that is reached: the system would send SIGXFSZ."""
    resource.setrlimit(resource.RLIMIT_FSIZE, (4096, 4096))


# A limit of the size of files: one line, the old file whole, nothing beside it; and so for what is printed.
folder = tempfile.mkdtemp()
order = f"{root}/examples/spring_cups.run.json"
with open(f"{folder}/piece.stl", "w") as file:
    file.write("the old one")
done = subprocess.run([program, "plan", order, "--piece", "piece.stl"], cwd=folder, capture_output=True, text=True,
                      timeout=60, preexec_fn=with_small_files)
check(done.returncode == 1 and done.stdout == "" and done.stderr.count("\n") == 1 and "does not fit" in done.stderr,
      f"a file beyond the limit: {done.returncode} {done.stderr!r}")
with open(f"{folder}/piece.stl") as file:
    check(file.read() == "the old one", "a file beyond the limit spoils the old one")
check(os.listdir(folder) == ["piece.stl"], f"a file beyond the limit leaves {os.listdir(folder)}")
with open(f"{folder}/plan.json", "w") as file:
    done = subprocess.run([program, "plan", order, "--json"], stdout=file, stderr=subprocess.PIPE, text=True,
                          timeout=60, preexec_fn=with_small_files)
check(done.returncode == 1 and done.stderr.count("\n") == 1 and "could not be written" in done.stderr,
      f"printing beyond the limit: {done.returncode} {done.stderr!r}")
read_end, write_end = os.pipe()
os.close(read_end)
done = subprocess.run([program, "list", "fats"], cwd=root, stdout=write_end, stderr=subprocess.PIPE, text=True, timeout=60)
os.close(write_end)
# As `brimwright list | head` ends: who reads has seen enough, which is no error to tell of.
check(done.returncode == 1 and done.stderr == "", f"a pipe nobody reads: {done.returncode} {done.stderr!r}")
shutil.rmtree(folder)

# Ended by whatever signal at whatever moment: dead of that signal, and the file there whole or not at all.
folder = tempfile.mkdtemp()
words = [program, "plan", order, "--piece", "piece.stl"]
start = time.monotonic()
subprocess.run(words, cwd=folder, capture_output=True, timeout=60)
lasts = time.monotonic() - start
with open(f"{folder}/piece.stl", "rb") as file:
    whole = file.read()
for trial in range(12):
    if os.path.exists(f"{folder}/piece.stl"):
        os.remove(f"{folder}/piece.stl")
    kind = (signal.SIGINT, signal.SIGTERM, signal.SIGHUP, signal.SIGKILL)[trial % 4]
    process = subprocess.Popen(words, cwd=folder, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
    time.sleep(lasts * (trial + 1) / 12)
    process.send_signal(kind)
    err = process.communicate(timeout=60)[1]
    check(process.returncode in (0, -kind) and err == b"", f"{kind.name}: exit {process.returncode} {err!r}")
    check(set(os.listdir(folder)) <= {"piece.stl"}, f"{kind.name} leaves {os.listdir(folder)}")
    if os.path.exists(f"{folder}/piece.stl"):
        with open(f"{folder}/piece.stl", "rb") as file:
            check(file.read() == whole, f"{kind.name} leaves half a file")
shutil.rmtree(folder)

print("\n".join(failures) or "all cases as they should be")
sys.exit(bool(failures))
