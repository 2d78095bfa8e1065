"""What is the same in every run stands once, in studio.json; a run takes what it does not say, and init begins a folder."""
import copy
import glob
import json
import os
import re
import shutil
import sys
import tempfile

from checks import check, end, failures, read, root, run, write

spring = read(f"{root}/examples/spring_cups.run.json")
for part in ("$schema", "id"):
    spring.pop(part)


def split():
    """The example, and the same with all in a studio that belongs there."""
    lean, studio = copy.deepcopy(spring), {"schema": "brimwright.studio/1"}
    for section in ("scales", "losses", "spoilage", "pots"):
        studio[section] = lean.pop(section)
    for section in ("bowl", "bag_holds", "lye_spoon"):
        studio[section] = lean["pipe"].pop(section)
    studio["temperatures"] = {batter: lean[batter].pop("temperatures") for batter in ("pour", "pipe")}
    money = lean.pop("money")
    studio.update(currency=money["currency"], prices=money["prices"])
    studio["moulds_owned"] = {"moulds/twisted_cup.json": lean["pour"].pop("moulds_owned")}
    studio["label"] = {"market": lean["label"].pop("market")}
    for reading in (lean["pipe"]["whip"], lean["pipe"]["whip_now"], lean["pipe"]["trials"]["weigh_cup"]):
        studio["cups"] = {"beaker": reading.pop("holds")}
    return lean, studio


with tempfile.TemporaryDirectory() as outside:
    def folder_with(name, document, studio=None):
        folder = f"{outside}/{name}"
        os.makedirs(folder, exist_ok=True)
        for path in glob.glob(f"{root}/examples/*.formula.json"):
            shutil.copy(path, folder)
        write(f"{folder}/one.run.json", document)
        if studio is not None:
            write(f"{folder}/studio.json", studio)
        return folder

    def plan(folder, *more):
        result = run("plan", "one.run.json", "--json", *more, folder=folder)
        check(result.returncode == 0, f"{folder}: {result.stderr}")
        return json.loads(result.stdout) if result.returncode == 0 else {}

    def complaint(name, document, studio=None, *more):
        result = run("plan", "one.run.json", *more, folder=folder_with(name, document, studio))
        check(result.returncode == 1 and result.stdout == "" and result.stderr.count("\n") == 1,
              f"{name}: {result.returncode} {result.stderr}")
        return result.stderr

    whole = plan(folder_with("whole", spring))
    check("from_studio" not in whole, "a run with everything in itself takes something from nowhere")

    lean, studio = split()
    folder = folder_with("lean", lean, studio)
    taken = plan(folder)
    told = taken.pop("from_studio", {})
    check(taken == whole, "a run that takes from its studio plans to something else")
    check(told.get("sections") == ["scales", "losses", "spoilage", "temperatures", "pots", "bowl", "bag_holds", "lye_spoon",
                                   "cups", "moulds_owned", "prices", "label"], f"taken: {told}")
    check(told.get("file") == "studio.json", f"taken from {told.get('file')}")
    text = run("plan", "one.run.json", folder=folder).stdout
    check("From the studio: scales, losses, spoilage" in text and "(studio.json)" in text, "the text does not say what is the studio's")

    # What a run says wins, key by key.
    own = copy.deepcopy(spring)
    other = copy.deepcopy(studio)
    other["scales"]["large"]["step"] = "5 g"
    other["losses"]["pour"]["pot"] = "300 g"
    other["prices"]["olive"] = {"paid": "99.00", "for": "1 kg"}
    other["moulds_owned"] = {"moulds/twisted_cup.json": 2}
    won = plan(folder_with("own", own, other))
    won.pop("from_studio", None)
    check(won == whole, "a run's own figure does not win over its studio's")
    partly = copy.deepcopy(spring)
    del partly["losses"]["pour"]["pot"], partly["scales"]["fine"], partly["money"]["prices"]["olive"]
    completed = plan(folder_with("partly", partly, studio))
    check(completed.pop("from_studio", {}).get("sections") == ["scales", "losses", "prices"], "what is completed key by key is not told")
    check(completed == whole, "a run completed key by key plans to something else")

    # What her cutter takes away is the studio's, unless the run says otherwise.
    loaf = read(f"{root}/examples/tilted_loaf.run.json")
    loaf.pop("$schema", None)
    uncut = copy.deepcopy(loaf)
    kerf = uncut["cut"].pop("kerf")
    of_studio = plan(folder_with("kerf", uncut, {"schema": "brimwright.studio/1", "kerf": kerf}))
    check(of_studio.pop("from_studio", {}).get("sections") == ["kerf"], "the kerf of the studio is not told")
    check(of_studio == plan(folder_with("own kerf", loaf, {"schema": "brimwright.studio/1", "kerf": "9 mm"})), "kerf")
    check("one.run.json: /cut/kerf" in complaint("no kerf", uncut, {"schema": "brimwright.studio/1"}), "a kerf is taken for 0")
    check("studio.json: /kerf" in complaint("bad kerf", uncut, {"schema": "brimwright.studio/1", "kerf": "2"}), "a kerf without unit")

    # Prices in another currency are not mixed in.
    foreign = {"schema": "brimwright.studio/1", "currency": "USD", "prices": {"olive": {"paid": "1.00", "for": "1 kg"}}}
    unpriced = copy.deepcopy(spring)
    del unpriced["money"]["prices"]["olive"]
    check(plan(folder_with("foreign", unpriced, foreign)) == plan(folder_with("unpriced", unpriced)),
          "a price in another currency is added up")

    # Complaints name the studio's file and place.
    for name, change, words in (
            ("wrong value", lambda s: s["losses"]["pour"].update(pot="25"), "studio.json: /losses/pour/pot"),
            ("wrong key", lambda s: s["losses"]["pour"].update(pott="25 g"), "studio.json: /losses/pour/pott"),
            ("wrong section", lambda s: s.update(losess={}), "studio.json: /losess"),
            ("wrong market", lambda s: s["label"].update(market="UK"), "studio.json: /label/market"),
            ("wrong count", lambda s: s["moulds_owned"].update({"moulds/twisted_cup.json": 0}), "studio.json: /moulds_owned/moulds~1twisted_cup.json"),
            ("wrong price", lambda s: s["prices"].update(olive={"paid": "x", "for": "1 kg"}), "studio.json: /prices/olive/paid"),
            ("wrong version", lambda s: s.update(schema="brimwright.studio/2"), "studio.json: /schema"),
            ("blank", lambda s: s["scales"]["large"].update(step="? such as 1 g"), "studio.json: /scales/large/step: is still to be filled in; such as 1 g")):
        wrong = copy.deepcopy(studio)
        change(wrong)
        said = complaint(name, lean, wrong)
        check(words in said, f"{name}: {words!r} is not in {said}")
    # A blank that this run does not need does not stop it.
    blank = copy.deepcopy(studio)
    blank["bowl"]["holds"] = "? such as 5 l"
    plain = read(f"{root}/examples/plain_bars.run.json")
    result = run("plan", "one.run.json", folder=folder_with("unneeded", {**plain, "id": plain["id"]}, blank))
    check(result.returncode == 0, f"a blank that is not needed stops a run: {result.stderr}")

    # Without a studio a missing section is asked for with the lines to paste, and these guess nothing.
    without = copy.deepcopy(spring)
    del without["losses"]
    said = complaint("no losses", without)
    check("/losses: is missing" in said and "init" in said, said)
    lines = re.search(r'"losses": (\{.*\})', said)
    check(lines is not None, f"no lines to paste: {said}")
    pasted = {**without, "losses": json.loads(lines[1])}
    check("/losses/pour/overpour: is still to be filled in" in complaint("pasted", pasted), "a pasted blank is planned with")
    scaleless = copy.deepcopy(spring)
    del scaleless["scales"]
    said = complaint("no scales", scaleless)
    lines = re.search(r'"scales": (\{.*\})', said)
    check(lines is not None and "/scales/large/step: is still" in complaint("pasted scales", {**scaleless, "scales": json.loads(lines[1])}),
          f"no scales to paste: {said}")

    # The studio is looked for beside the run, and nowhere above; another may be named.
    inner = folder_with("lean/inner", lean)
    check("/losses: is missing" in run("plan", "one.run.json", folder=inner).stderr, "a folder above is searched for a studio")
    named = plan(inner, "--studio", "../studio.json")
    named.pop("from_studio", None)
    check(named == whole, "a studio that is named is not the one")
    check("nowhere.json" in run("plan", "one.run.json", "--studio", "nowhere.json", folder=inner).stderr, "a studio that is not there")
    kept = open(f"{folder}/studio.json").read()
    refused = run("plan", "one.run.json", "--label", "studio.json", folder=folder)
    check(refused.returncode == 1 and open(f"{folder}/studio.json").read() == kept, "a studio is written over")

    # Cups.
    several = copy.deepcopy(studio)
    several["cups"]["mug"] = "300 ml"
    said = complaint("several cups", lean, several)
    check('"beaker", "mug"' in said and "/pipe/" in said, said)
    cupped = copy.deepcopy(lean)
    for reading in (cupped["pipe"]["whip"], cupped["pipe"]["whip_now"], cupped["pipe"]["trials"]["weigh_cup"]):
        reading["cup"] = "beaker"
    chosen = plan(folder_with("chosen", cupped, several))
    chosen.pop("from_studio", None)
    check(chosen == whole, "a cup named among several is another")
    cupped["pipe"]["whip"]["cup"] = "beeker"
    check('did you mean "beaker"?' in complaint("no cup", cupped, several), "an unknown cup")
    cupped["pipe"]["whip"].update(cup="beaker", holds="120 ml")
    check("/pipe/whip/cup" in complaint("both", cupped, several), "a cup that is named and measured")

    # How many moulds she owns is the studio's to say; where a mould's file says it too, a note tells which counts.
    def owning(name, in_studio):
        document, there = copy.deepcopy(lean), copy.deepcopy(studio)
        document["pour"]["mould"] = "mine.json"
        there["moulds_owned"] = in_studio
        folder = folder_with(name, document, there)
        mine = {**read(f"{root}/moulds/twisted_cup.json"), "owned": 3}
        mine["mesh"]["file"] = "meshes/twisted_cup.stl"
        write(f"{folder}/mine.json", mine)
        answer = plan(folder)
        return answer["pieces"]["cavities"], [one["text"] for one in answer["cautions"] if "\"owned\"" in one["text"]]

    cavities = read(f"{root}/moulds/twisted_cup.json")["cavities"]
    check(owning("owned by the file", {}) == (3 * cavities, [
        '3 moulds of "Twisted cup" counted, as its own file states ("owned"). To have your studio say it, write '
        '"moulds_owned": { "mine.json": 3 } in studio.json.']), f"a mould's own count: {owning('owned by the file', {})}")
    check(owning("owned otherwise", {"mine.json": 2}) == (2 * cavities, [
        '2 moulds of "Twisted cup" counted, as studio.json says, not the 3 that the mould\'s own file states ("owned").']),
        f"the studio's count: {owning('owned otherwise', {'mine.json': 2})}")
    check(owning("owned alike", {"mine.json": 3}) == (3 * cavities, []), "a count that both give alike is told")

    # Her hand and her own tips.
    tips = copy.deepcopy(studio)
    tips.update(own_tips="mine.tips.json", hand={"star 8 x 16 mm": {"correction": 1.5, "trials": 6}})
    handy = copy.deepcopy(lean)
    del handy["pipe"]["trials"]
    before = plan(folder_with("no hand", handy, studio))
    folder = folder_with("hand", handy, tips)
    write(f"{folder}/mine.tips.json", {"schema": "brimwright.tips/2", "tips": [{"name": "mine", "round": {"radius": "4 mm"}}]})
    after = plan(folder)
    check(after["pipe"]["visible_each_ml"] == round(1.5 * before["pipe"]["visible_each_ml"], 3) or
          abs(after["pipe"]["visible_each_ml"] / before["pipe"]["visible_each_ml"] - 1.5) < 1e-3, "her hand is not taken")
    handy["pipe"]["beads"]["tip"] = "mine"
    write(f"{folder}/one.run.json", handy)
    check("own_tips" in plan(folder)["from_studio"]["sections"], "her tips are not the studio's")

    # A folder to begin in: nothing guessed, nothing written over, and filled in it plans.
    made = run("init", "begun", folder=outside)
    check(made.returncode == 0 and "studio.json" in made.stdout, f"init: {made.stderr}")
    begun = f"{outside}/begun"
    if not os.path.isdir(begun):
        sys.exit("\n".join(failures))
    texts = {name: open(f"{begun}/{name}").read() for name in sorted(os.listdir(begun))}
    check(len(texts) == 4, f"init made {list(texts)}")
    again = run("init", "begun", folder=outside)
    check(again.returncode == 1 and "is there already" in again.stderr, "init writes over what is there")
    check(texts == {name: open(f"{begun}/{name}").read() for name in sorted(os.listdir(begun))}, "init changed a file")
    check(run("init", "begun/studio.json", folder=outside).returncode == 1, "a file taken for a folder")

    def blanks(value, pointer=""):
        if isinstance(value, dict):
            return [found for key, inner in value.items() for found in blanks(inner, f"{pointer}/{key}")]
        if isinstance(value, list):
            return [found for i, inner in enumerate(value) for found in blanks(inner, f"{pointer}/{i}")]
        return [pointer] if isinstance(value, str) and value.startswith("?") else []

    asked = []
    answers = {"/shape/floor_diameter": "48 mm", "/shape/brim_diameter": "66 mm", "/shape/height": "38 mm", "/cavities": 6,
               "/unmould_after": "36 h", "/fats/0/fat": "olive", "/fats/0/share": "70 %", "/fats/1/fat": "coconut", "/fats/1/share": "30 %",
               "/superfat": "6 %", "/alkali/0/alkali": "NaOH", "/alkali/0/purity": "99 %", "/water/lye_strength": "33 %",
               "/pour_temperature": "38 °C", "/sell": 12, "/pour/line/below_brim": "5 mm", "/scales/large/step": "1 g",
               "/scales/large/most": "5 kg", "/scales/fine/step": "0.1 g", "/scales/fine/most": "500 g", "/losses/pour/overpour": "1 %",
               "/losses/pour/pot": "20 g", "/losses/pour/jugs": "0 g", "/losses/pour/test_piece": "0 g", "/losses/pipe/bag": "30 g",
               "/losses/pipe/bowl_and_whisk": "30 g", "/spoilage": "4 %", "/temperatures/pour/room_at": "20 °C",
               "/temperatures/pour/water_at": "8 °C", "/pots/holds": "5 l", "/pots/lye_jug": "2 l", "/bowl/holds": "5 l",
               "/bowl/whisk_needs": "400 ml", "/kerf": "0 mm", "/bag_holds": "600 ml", "/cups/weigh-cup": "120 ml", "/moulds_owned/my_mould.json": 2,
               "/label/market": "EU", "/currency": "EUR",
               **{f"/{'work'}/{key}": value for key, value in {"paid_an_hour": "15.00", "each_batch": "90 min", "each_piece_made": "30 s",
                                                               "each_tray_fill": "10 min", "each_piece_packed": "1 min"}.items()},
               "/days/making/tuesday": "6 h", "/days/making/saturday": "4 h", "/days/small_jobs/0": "sunday", "/days/off/0": "2026-12-24",
               "/days/pots_owned": 2, "/days/bowls_owned": 1, "/days/used_a_day": 1, "/days/rack_places": 200,
               "/days/cast_beforehand": "7 days", "/days/one_lye_a_day/holds": "5 l", "/days/one_lye_a_day/saves": "20 min", "/cure": "35 days"}
    asking = [("plan",), ("days", "--from", "2026-10-01"), ("quote",)]
    for _ in range(90):
        result = run(asking[0][0], "first.run.json", *asking[0][1:], folder=begun)
        if result.returncode == 0:
            asking.pop(0)
            if not asking:
                break
            continue
        place = re.match(r"(?:.*/)?([^/\s]+\.json): (/\S+): is still to be filled in; \S", result.stderr)
        check(place is not None, f"init's files are refused for something else than a blank: {result.stderr}")
        if place is None:
            break
        document = read(f"{begun}/{place[1]}")
        *steps, last = place[2].strip("/").replace("~1", "/").split("/")
        holder = document
        for step in steps:
            holder = holder[int(step) if isinstance(holder, list) else step]
        holder[int(last) if isinstance(holder, list) else last] = answers[place[2]]
        write(f"{begun}/{place[1]}", document)
        asked.append(place[2])
    check(not asking, f"a folder that is filled in does not answer: {asking}, {result.stderr}")
    check("/losses/pipe/bag" not in asked, "a run that pipes nothing asks for a piping bag")
    everything = {pointer for name in texts for pointer in blanks(json.loads(texts[name]))}
    check(everything == set(answers), f"blanks that this test does not know: {everything ^ set(answers)}")

end("the studio lends what a run does not say, and no more")
