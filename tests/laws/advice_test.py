"""Every piece of advice with a figure holds when it is typed back as printed, in each unit it is printed in, and
one step of that figure further is worse. The list of the advice is `advice` at the end; each entry changes a shipped
example until the program gives it. What no command reaches is held to the same in tests/planning/advice_test.cpp; what `gauge`
advises, and limits of a rate, by the tests of their rooms.

    python3 tests/laws/advice_test.py . PROGRAM [--rounds N] [--seed N]"""
import argparse
import copy
import json
import os
import random
import re
import shutil
import subprocess
import sys
import tempfile
from decimal import Decimal

options = argparse.ArgumentParser()
options.add_argument("root")
options.add_argument("program")
options.add_argument("--rounds", type=int, default=2)
options.add_argument("--seed", type=int, default=20261125)
options = options.parse_args()
chance = random.Random(options.seed)
failures, held = [], {}
folder = tempfile.mkdtemp()
place = os.path.join(folder, "examples")
shutil.copytree(os.path.join(options.root, "examples"), place)
os.mkdir(os.path.join(place, "moulds"))  # for those made here; the others are shipped


def load(name):
    with open(os.path.join(place, name)) as file:
        return json.load(file)


def write(name, document):
    with open(os.path.join(place, name), "w") as file:
        json.dump(document, file)


def call(*words):
    """Exit status, what it prints as JSON, and its complaint."""
    done = subprocess.run([options.program, *words], cwd=place, capture_output=True, text=True, timeout=120)
    told = done.stderr
    if told.startswith("{"):  # with --json a complaint is JSON too
        complaint = json.loads(told)
        told = f"{complaint['file']}: {complaint['field']}: {complaint['problem']}; {complaint['remedy']}"
    return done.returncode, json.loads(done.stdout) if done.returncode == 0 and "--json" in words else done.stdout, told


def plan(run):
    write("asked.run.json", run)
    return call("plan", "asked.run.json", "--json")


def said(answer, words):
    """The first caution or complaint that matches."""
    status, plan_of, complaint = answer
    texts = [complaint] if status else [one["text"] for one in plan_of["cautions"]]
    return next((found for found in (re.search(words, text) for text in texts) if found), None)


LENGTH = r"(?P<mm>[\d.]+) mm \((?P<inches>[\d.]+) in\)"


def lengths(found, mm="mm", inches="inches"):
    """The figure in both units, each with one step of it more and less."""
    for unit, figure in (("mm", found[mm]), ("in", found[inches])):
        value = Decimal(figure)
        finest = Decimal(1).scaleb(min(value.as_tuple().exponent, -1 if unit == "mm" else -2))
        yield f"{value} {unit}", f"{value + finest} {unit}", f"{value - finest} {unit}"


def check(name, condition, what):
    held[name] = held.get(name, 0) + 1
    if not condition:
        failures.append(f"{name}: {what}")


def mm(low, high, digits=2):
    return f"{round(chance.uniform(low, high), digits)} mm"


def block(length, width, height, name="moulds/asked.json", cavities=1, **more):
    write(name, {"schema": "brimwright.mould/2", "name": "Asked", "cavities": cavities,
                 "shape": {"kind": "block", "length": length, "width": width, "height": height, **more}})


def plain(mould="moulds/plain_bar.json", **changes):
    run = load("plain_bars.run.json")
    run["pour"]["mould"] = mould
    run.update(copy.deepcopy(changes))
    return run


def refused_beyond(name, run, put, words, worse="more"):
    """An upper (or lower) bound to what is put into a run: refused with `words`; its figure passes, one step on not."""
    found = said(plan(run), words)
    check(name, found is not None, f"no such advice: {plan(run)[2] or 'planned'}")
    if found is None:
        return
    for figure, above, below in lengths(found):
        put(run, figure)
        check(name, said(plan(run), words) is None, f"{figure} is refused: {plan(run)[2]}")
        put(run, above if worse == "more" else below)
        answer = plan(run)
        check(name, said(answer, words) is not None or answer[0] == 1, f"one step beyond {figure} is not refused")


def one_more_slice():
    run = load("tilted_loaf.run.json")
    run["cut"] = {"bar": {"thickness": mm(9, 60)}, "end_trim": mm(0, 6), "kerf": mm(0, 3),
                  "face_planing": mm(0, 1)}
    status, answer, complaint = plan(run)
    for more in answer["cut"]["one_more"]:
        found = re.fullmatch(LENGTH, more["size_text"])
        for figure, above, _ in lengths(found):
            run["cut"]["bar"]["thickness"] = figure
            check("one more slice", plan(run)[1]["cut"]["bars_each"] == more["bars"], f"{figure} of {run['cut']}")
            run["cut"]["bar"]["thickness"] = above
            check("one more slice", plan(run)[1]["cut"]["bars_each"] < more["bars"], f"{above} of {run['cut']}")


def one_more_row():
    run = plain("moulds/slab_tray.json", sell=1)
    run["cut"] = {"bar": {"length": mm(40, 90), "width": mm(30, 60)}, "along": "x", "kerf": mm(0, 3)}
    for more in plan(run)[1]["cut"]["one_more"]:
        found = re.fullmatch(LENGTH, more["size_text"])
        for figure, above, _ in lengths(found):
            again = copy.deepcopy(run)
            key = "length" if more["direction"] == "x" else "width"
            again["cut"]["bar"][key] = figure
            check("one more row or column", plan(again)[1]["cut"]["bars_each"] == more["bars"], f"{figure} of {run['cut']}")
            again["cut"]["bar"][key] = above
            check("one more row or column", plan(again)[1]["cut"]["bars_each"] < more["bars"], f"{above} of {run['cut']}")


def thickest_slice():
    run = load("tilted_loaf.run.json")
    run["cut"] = {"bar": {"thickness": "400 mm", "confirmed": True}, "end_trim": mm(0, 9), "kerf": "0 mm", "face_planing": mm(0, 1)}
    refused_beyond("the thickest slice", run, lambda r, x: r["cut"]["bar"].update(thickness=x), f"give at most {LENGTH}")


def largest_bar_of_a_slab():
    run = plain("moulds/slab_tray.json", sell=1)
    run["cut"] = {"bar": {"length": "500 mm", "width": "400 mm", "confirmed": True}, "along": "x", "kerf": "0 mm", "end_trim": mm(0, 9)}
    words = f"give at most {LENGTH} x (?P<mm2>[\\d.]+) mm \\((?P<in2>[\\d.]+) in\\)"
    found = said(plan(run), words)
    for (length, longer, _), (width, wider, _) in zip(lengths(found), lengths(found, "mm2", "in2")):
        for bar, fits in (((length, width), True), ((longer, width), False), ((length, wider), False)):
            run["cut"]["bar"] = dict(zip(("length", "width"), bar), confirmed=True)
            check("the largest bar of a slab", (plan(run)[0] == 0) == fits, f"{bar}: {plan(run)[2]}")


def trims():
    for key in ("end_trim", "side_trim"):
        run = plain("moulds/slab_tray.json", sell=1)
        run["cut"] = {"bar": {"thickness": "1 mm", "confirmed": True}, "kerf": "0 mm", key: mm(190, 250), "confirmed": True}
        refused_beyond(f"the most {key}", run, lambda r, x: r["cut"].update({key: x}), f"trim at most {LENGTH}")


def planings():
    for key in ("face_planing", "top_planing"):
        run = plain("moulds/slab_tray.json", sell=1)
        run["cut"] = {"bar": {"thickness": mm(10, 30), "confirmed": True}, "kerf": "0 mm", key: mm(200, 250), "confirmed": True}
        refused_beyond(f"the most {key}", run, lambda r, x: r["cut"].update({key: x}), f"plane off at most {LENGTH}")


def pour_line():
    block("90 mm", "60 mm", mm(15, 40, 3))
    for key, value, worse in (("below_brim", "60 mm", "more"), ("depth", "70 mm", "more"), ("depth", "0.03 mm", "less")):
        run = plain("moulds/asked.json")
        run["pour"]["line"] = {key: value}
        refused_beyond(f"the pour line by {key}", run, lambda r, x: r["pour"].update(line={key: x}),
                       f"give (?:at most|a depth of at least) {LENGTH}", worse)


def piped_ring():
    run = load("spring_cups.run.json")
    run["pipe"]["beads"]["moves"][0]["radius"] = radius = f"{chance.randint(60, 90)} mm"
    words = f"take at least {LENGTH} off"
    found = said(plan(run), words)
    taken = Decimal(radius.split()[0])
    for figure, _, less in lengths(found):
        to_mm = Decimal("25.4") if figure.endswith("in") else 1
        for off, fits in ((figure, True), (less, False)):
            run["pipe"]["beads"]["moves"][0]["radius"] = f"{taken - Decimal(off.split()[0]) * to_mm} mm"
            check("a ring beyond the cup", (said(plan(run), words) is None) == fits, f"{off} off {radius}")


def piped_bar():
    run = load("spring_cups.run.json")
    run["pour"]["mould"] = "moulds/plain_bar.json"
    run["pour"].pop("layers")
    beads = run["pipe"]["beads"]
    beads["moves"] = [{"move": "bead", "length": "200 mm", "aside": "90 mm"}]
    words = f"give a bead at most {LENGTH} long, and at most (?P<mm2>[\\d.]+) mm \\((?P<in2>[\\d.]+) in\\) aside"
    found = said(plan(run), words)
    check("a bead beyond the mould", found is not None, plan(run)[2])
    if found is None:
        return
    for (length, longer, _), (aside, farther, _) in zip(lengths(found), lengths(found, "mm2", "in2")):
        for one, fits in (((length, aside), True), ((longer, aside), False), ((length, farther), False)):
            beads["moves"][0].update(zip(("length", "aside"), one))
            check("a bead beyond the mould", (said(plan(run), words) is None) == fits, f"{one}")


def embedded(places, cover="3 mm", **made):
    block("100 mm", "60 mm", "30 mm", "moulds/hollow.json")
    run = plain("moulds/hollow.json")
    run["decorations"] = [{"name": "Embed", "material": "melt", **made, "per_piece": 1, "density": "1.03 g/ml", "spares": "0 %",
                     "melt_loss": "0 %", "left_in_jug": "0 g", "buried": {"cover": cover, "placed": "before the pour", **places}}]
    return run


def embed_above_the_line():
    run = embedded({"places": [{"x": "0 mm", "y": "0 mm", "height": "29.5 mm"}]},
                   rod={"diameter": "8 mm", "length": "20 mm"})
    run["pour"]["line"] = {"below_brim": mm(2, 8)}
    refused_beyond("an embed above the line", run, lambda r, x: r["decorations"][0]["buried"]["places"][0].update(height=x),
                   f'give a "height" of at most {LENGTH}')


def embed_that_would_fit():
    size = [chance.randint(60, 90), chance.randint(50, 70), chance.randint(30, 40)]
    cover = mm(1, 4, 2)
    made = {"mould": "moulds/asked.json", "fill": {"below_brim": "0 mm"}, "cast_as": "one cast"}
    block(*(f"{x} mm" for x in size))
    run = embedded({"arrange": "free"}, cover, **made)
    found = said(plan(run), f"one of {LENGTH} across would fit with")
    check("an embed that would fit", found is not None, plan(run)[2])
    for figure, _, _ in lengths(found):
        unit = 25.4 if figure.endswith("in") else 1
        ratio = float(figure.split()[0]) * unit / max(size)
        block(*(f"{x * ratio:.9f} mm" for x in size))
        check("an embed that would fit", plan(run)[0] == 0, f"{figure} of {size} with {cover}: {plan(run)[2]}")


def embeds_that_fit():
    run = embedded({"arrange": "level"}, rod={"diameter": "12 mm", "length": f"{chance.randint(14, 30)} mm"})
    run["decorations"][0]["per_piece"] = 60
    found = said(plan(run), r"only (\d+) of 60 fit")
    run["decorations"][0]["per_piece"] = int(found[1])
    check("how many embeds fit", plan(run)[0] == 0, f"{found[1]}: {plan(run)[2]}")
    run["decorations"][0]["per_piece"] = int(found[1]) + 1
    check("how many embeds fit", plan(run)[0] == 1, f"{found[1]} and one more fit")


def pressed_too_deep():
    run = load("spring_cups.run.json")
    run["decorations"][0]["on_top"]["pressed_in"] = "90 mm"
    refused_beyond("a decoration pressed in deeper than it is tall", run,
                   lambda r, x: r["decorations"][0]["on_top"].update(pressed_in=x), f"give at most {LENGTH}, or bury it")


def flat_of_the_peak():
    run = load("spring_cups.run.json")
    run["decorations"][0]["on_top"] = {"pressed_in": mm(2, 6), "peak_flat": "1 mm"}
    refused_beyond("a peak too narrow", run, lambda r, x: r["decorations"][0]["on_top"].update(peak_flat=x),
                   f"in a circle {LENGTH} across, but", "less")


def spills_over():
    block("80 mm", "60 mm", "30 mm", "moulds/hollow.json")
    run = plain("moulds/hollow.json")
    block(mm(20, 40), mm(20, 40), "20 mm")
    run["pour"]["line"] = {"below_brim": mm(0, 0.4)}
    run["decorations"] = [{"name": "Tile", "material": "melt", "mould": "moulds/asked.json", "fill": {"below_brim": "0 mm"},
                     "cast_as": "one cast", "per_piece": 1, "density": "1.03 g/ml", "spares": "0 %", "melt_loss": "0 %",
                     "left_in_jug": "0 g", "on_top": {"pressed_in": mm(6, 12)}}]
    refused_beyond("a decoration pressed into a brimful cup", run, lambda r, x: r["pour"].update(line={"below_brim": x}),
                   f"spill over the brim of each cavity: pour to {LENGTH} below the brim", "less")


def corner_radius():
    run = plain("moulds/asked.json")
    width = mm(30, 50, 3)
    block("90 mm", width, "30 mm", corner_radius="40 mm")
    refused_beyond("a corner's radius", run, lambda r, x: block("90 mm", width, "30 mm", corner_radius=x),
                   f"at the brim, at most {LENGTH}")


def liquids_for_the_batter():
    formula = load("meadow_base.formula.json")
    water = chance.randint(28, 38)
    formula["water"] = {"lye_strength": f"{water} %"}
    formula["liquids"] = [{"name": "oat drink", "replaces": "95 % of water", "goes_into": "batter", "density": "1.03 g/ml",
                           "composition": {"water": "90 %", "fat": {"fat": "sunflower", "share": "1.5 %"}, "sugar": "4 %",
                                           "salt": "0.1 %", "source": "the carton"}}]
    run = plain()
    run["pour"]["formula"] = "asked.formula.json"
    write("asked.formula.json", formula)
    words = r"replace at most ([\d.]+) % of the water"
    found = said(plan(run), words)
    check("liquids for the batter", found is not None, plan(run)[2])
    if found is None:
        return
    for share, fits in ((Decimal(found[1]), True), (Decimal(found[1]) + Decimal("0.1"), False)):
        formula["liquids"][0]["replaces"] = f"{share} % of water"
        write("asked.formula.json", formula)
        check("liquids for the batter", (said(plan(run), words) is None) == fits, f"{share} %: {plan(run)[2]}")


def clear_lye():
    run = plain()
    formula = load("meadow_base.formula.json")
    formula["water"] = {"lye_strength": f"{chance.randint(36, 46)} %"}
    write("asked.formula.json", formula)
    run["pour"]["formula"] = "asked.formula.json"
    run["pour"]["temperatures"] = {"room_at": "20 °C", "water_at": "8 °C", "lye_used_at": "6 °C", "fats_at": "35 °C",
                             "cooled_in": "fridge"}
    words = r"Keep and use it at (\d+) °C \((\d+) °F\) or warmer"
    found = said(plan(run), words)
    if found is None:
        return
    for warmth in (f"{found[1]} °C", f"{found[2]} °F"):
        run["pour"]["temperatures"]["lye_used_at"] = warmth
        check("a lye that stays clear", said(plan(run), words) is None, warmth)
    run["pour"]["temperatures"]["lye_used_at"] = f"{int(found[1]) - 1} °C"
    check("a lye that stays clear", said(plan(run), words) is not None, f"a degree below {found[1]} °C")


advice = [one_more_slice, one_more_row, thickest_slice, largest_bar_of_a_slab, trims, planings, pour_line, piped_ring, piped_bar,
          embed_above_the_line, embed_that_would_fit, embeds_that_fit, pressed_too_deep, flat_of_the_peak, spills_over,
          corner_radius, liquids_for_the_batter, clear_lye]
try:
    for _ in range(options.rounds):
        for one in advice:
            one()
finally:
    shutil.rmtree(folder)
print(f"seed {options.seed}: " + ", ".join(f"{name} {count}" for name, count in held.items()))
if failures:
    print(*failures[:20], sep="\n", file=sys.stderr)
    sys.exit(1)
