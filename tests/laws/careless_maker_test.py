"""A careless maker: one slip of the hand in a good formula, and what the program then says.

The law: there is never a quiet plan that is lye-heavy. Quiet is exit 0 without danger in front and without the worst
corner's caution first among the rest. Lye-heavy is reckoned from the printed weights by the second arithmetic, with
published saponification values and with what really stands in the pot: "NaOH" among the additives is alkali, "lemon
juice" is five per cent acid whatever the file calls it.

What no program can see from the file (an own fat unlike any known, a vinegar within its usual strengths, a radius
where nothing contradicts it) is tried too, counted apart and printed.

    careless_maker_test.py ROOT PROGRAM [--slips N] [--seed N] [--only NUMBER] [--jobs N] [--keep FOLDER]
"""
import argparse
import copy
import json
import os
import random
import shutil
import subprocess
import sys
import tempfile
import traceback
import unicodedata
from concurrent.futures import ProcessPoolExecutor

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from arithmetic_test import by_kind, first_alarm, published_of, write_run  # noqa: E402
from random_runs import LOT_VALUES, RunMaker  # noqa: E402
import second_arithmetic as second  # noqa: E402

# KOH in grams that a gram of it is worth, by molar masses (IUPAC 2021): protons taken x 56.105 / M.
KOH = 56.105
ALKALIS = {
    KOH / 39.997: ["NaOH", "NaOH pearls", "Naoh", "sodium hydroxide", "Sodium Hydroxide, 99 %", "sodium-hydroxide flakes", "caustic soda", "lye", "Lye crystals",
                   "Natriumhydroxid", "Ätznatron", "soude caustique", "hydroxyde de sodium", "sosa cáustica", "hidróxido de sodio", "soda caustica",
                   "idrossido di sodio"],
    0.33 * KOH / 39.997: ["lye solution", "lye water", "Natronlauge", "lye, 33 % solution", "NaOH solution", "lessive de soude"],
    1.0: ["KOH", "KOH flakes", "potassium hydroxide", "caustic potash", "Kaliumhydroxid", "Ätzkali", "potasse caustique", "hydroxyde de potassium",
          "potasa cáustica", "hidróxido de potasio", "potassa caustica", "idrossido di potassio"],
    2 * KOH / 105.988: ["soda ash", "sodium carbonate", "Natriumcarbonat", "carbonate de sodium", "carbonato de sodio", "carbonato di sodio"],
    2 * KOH / 286.141: ["washing soda", "Waschsoda", "cristaux de soude"],
    2 * KOH / 138.205: ["potash", "potassium carbonate", "Pottasche", "carbonate de potassium", "carbonato de potasio", "carbonato di potassio"],
    2 * KOH / 74.093: ["calcium hydroxide", "Calciumhydroxid", "hydroxyde de calcium", "hidróxido de calcio", "idrossido di calcio"],
    0.1 * KOH / 17.031: ["ammonia", "Ammoniak", "ammoniaque", "amoníaco", "ammoniaca"],
}

# What is sold under a name: (name, acid as the file may call it, the share really in it; common practice, no source).
JUICES = [("lemon juice", "citric acid, anhydrous", 0.055), ("lime juice", "citric acid, anhydrous", 0.06), ("orange juice", "citric acid, anhydrous", 0.01),
          ("grapefruit juice", "citric acid, anhydrous", 0.014), ("apple cider vinegar", "acetic acid (100 %)", 0.05), ("vinegar", "acetic acid (100 %)", 0.05),
          ("white wine vinegar", "acetic acid (100 %)", 0.06), ("red wine", "tartaric acid", 0.006), ("whey", "lactic acid (100 %)", 0.007),
          ("buttermilk", "lactic acid (100 %)", 0.008), ("sour milk", "lactic acid (100 %)", 0.008), ("kefir", "lactic acid (100 %)", 0.008),
          ("apple juice", "malic acid", 0.006), ("cranberry juice", "citric acid, anhydrous", 0.02)]
# Neutral salts that are easily taken for their acid.
SALTS = [("sodium lactate", "lactic acid 88 % (of which part is lactate ester, titrated as total acid)"), ("sodium citrate", "citric acid, anhydrous"),
         ("trisodium citrate", "citric acid monohydrate"), ("sodium acetate", "acetic acid (100 %)")]
MILKS = [("coconut milk", "coconut", 0.21), ("goat milk", "coconut", 0.04), ("whipping cream", "tallow", 0.35), ("yogurt", "tallow", 0.035),
         ("almond milk", "sweet_almond", 0.02), ("egg yolk", "olive", 0.27)]


class Slip:
    """One slip in a good scene. `koh_per_g`: what a gram of a named ingredient truly takes up (an acid, above zero) or brings
    (an alkali, below zero). `fat_share`: the share of true fat. `fat_values`: true saponification values by fat."""

    def __init__(self, kind, cannot_show=False):
        self.kind, self.cannot_show = kind, cannot_show
        self.koh_per_g, self.fat_share, self.fat_values, self.purity = {}, {}, {}, {}


class CarelessMaker:
    def __init__(self, seed, published, tips):
        self.chance = random.Random(seed)
        self.published, self.tips = published, tips
        self.seed = seed

    def good_scene(self):
        """A plain run that is sound and quiet of itself."""
        for attempt in range(50):
            maker = RunMaker(f"{self.seed}:{attempt}")
            maker.formula("base.formula.json", "Base of chance")
            files = maker.files
            base = files["base.formula.json"]
            base["superfat"] = f"{self.chance.choice([5, 5, 6, 7, 8])} %"
            base["alkali"] = [a for a in base["alkali"] if a["alkali"] == "NaOH"][:1] or [{"alkali": "NaOH", "purity": "99 %"}]
            base["alkali"][0].update(share="100 %", purity="99 %", purity_range=["98.5 %", "99.5 %"])
            base.pop("measured_density", None)
            files["main.mould.json"] = {"schema": "brimwright.mould/2", "name": "Cup", "cavities": 12,
                                        "shape": {"kind": "frustum", "floor_diameter": "58 mm", "brim_diameter": "70 mm", "height": "30 mm"}}
            files["chance.run.json"] = {
                "schema": "brimwright.run/2", "name": "Slip", "sell": 24, "spoilage": "0 %",
                "pour": {"mould": "main.mould.json", "formula": "base.formula.json", "line": {"below_brim": "2 mm"}},
                "losses": {"pour": {"overpour": "1 %", "pot": "20 g", "jugs": "0 g", "test_piece": "0 g"}},
                "scales": {"large": {"step": "1 g", "most": "5 kg"}, "fine": {"step": "0.1 g", "most": "500 g"}}}
            run = second.Run(files["chance.run.json"], files, self.published, self.tips)
            if all(second.superfat_of(batch.pour).low > 0.004 for batch in run.batches):
                return files
        raise AssertionError(f"no quiet scene for {self.seed}")

    # ---- the slips

    def alkali_among_parts(self, files):
        slip = Slip("an alkali among additives, liquids, fragrances, colours or layers' colours")
        base = files["base.formula.json"]
        worth = self.chance.choice(list(ALKALIS))
        name = self.chance.choice(ALKALIS[worth])
        way = self.chance.random()
        if way < 0.1:
            name = name.upper()
        elif way < 0.2:
            name = unicodedata.normalize("NFD", name)
        elif way < 0.3:
            name = self.chance.choice(["{}, dissolved", "my {}", "{} (food grade)", "  {} ", "{}-", "a little {}"]).format(name)
        elif way < 0.35:
            name = name.replace(" ", "\u00a0")
        slip.kind = f"an alkali among {(place := self.chance.choice(['additives', 'fragrances', 'colours', 'liquids', 'layers']))}"
        rate = f"{self.chance.choice([2, 3, 4, 6])} % of fats"
        if place == "layers":
            files["chance.run.json"]["pour"]["layers"] = [{"name": "All", "parts": 1, "colours": [{"name": name, "rate": rate}]}]
        elif place == "liquids":
            base.setdefault("liquids", []).append({"name": name, "rate": rate, "goes_into": "batter",
                                                   "composition": {"water": "67 %", "fat": "none", "sugar": "0 %", "salt": "0 %", "source": "the bottle"}})
        else:
            base.setdefault(place, []).append({"name": name, "rate": rate, "goes_into": "batter", "density": "1.5 g/ml"})
        slip.koh_per_g[name] = -worth
        return slip

    def naoh_value(self, files):
        slip = Slip("a value for NaOH, or one reckoned the wrong way round")
        fat = self.chance.choice(files["base.formula.json"]["fats"])
        true = float(self.published.fats[fat["fat"]].typical) if fat["fat"] in self.published.fats else 192.0
        ratio = 39.997 / KOH
        fat["saponification_value"] = self.chance.choice([round(true * ratio, 1), round(true * ratio / 1000, 4), round(true / ratio, 1), round(true / 1000, 4),
                                                          round(true / ratio / ratio, 1), round(true * 1.1, 1), round(true * 1.25, 1)])
        return slip

    def juice_as_acid(self, files):
        name, acid, really = self.chance.choice(JUICES)
        slip = Slip("a juice, vinegar, wine or sour milk as its pure acid")
        share = self.chance.choice([100, 100, 88, 50, 30])
        self.add_acid(files, name, acid, share, slip, really)
        return slip

    def juice_too_strong(self, files):
        """Stronger than it is, but not absurdly so: what lies within the usual strengths cannot be seen."""
        name, acid, really = self.chance.choice(JUICES)
        bound = 12 if "vinegar" in name else 9 if "juice" in name else 2
        share = self.chance.choice([3, 6, 8, 10, 12, 15, 20, 25])
        slip = Slip("a juice or vinegar stronger than it is", cannot_show=share <= bound)
        self.add_acid(files, name, acid, share, slip, really)
        return slip

    def tartar(self, files):
        slip = Slip("cream of tartar as tartaric acid")
        self.add_acid(files, "cream of tartar", "tartaric acid", 100, slip, None, koh=KOH / 188.18)
        return slip

    def salt_as_acid(self, files):
        name, acid = self.chance.choice(SALTS)
        slip = Slip("a neutral salt as its acid")
        self.add_acid(files, name, acid, 100, slip, 0.0)
        return slip

    def add_acid(self, files, name, acid, share, slip, really, koh=None):
        base = files["base.formula.json"]
        base["additives"] = [a for a in base.get("additives", []) if "contains_acid" not in a]
        base["additives"].append({"name": name, "rate": f"{self.chance.choice([3, 5, 8, 12])} % of fats", "goes_into": self.chance.choice(["lye", "batter"]),
                                  "density": "1.03 g/ml", "contains_fat": "none", "contains_acid": {"acid": acid, "share": f"{share} %"}})
        slip.koh_per_g[name] = koh if koh is not None else really * float(self.published.acids[acid])

    def acid_denied(self, files):
        slip = Slip("\"none\" for an acid")
        name, koh = self.chance.choice([("citric acid", 3 * KOH / 192.123), ("lactic acid", KOH / 90.078), ("vinegar", 0.05 * KOH / 60.052)])
        base = files["base.formula.json"]
        base["additives"] = [{"name": name, "rate": "2 % of fats", "goes_into": "lye", "density": "1.3 g/ml", "contains_acid": "none"}]
        slip.koh_per_g[name] = koh
        return slip

    def values_swapped(self, files):
        slip = Slip("the values of two fats swapped")
        base = files["base.formula.json"]
        names = ["coconut", "olive"] if self.chance.random() < 0.7 else self.chance.sample(sorted(LOT_VALUES), 2)
        first = self.chance.randint(2, 8) * 10
        base["fats"] = [{"fat": names[0], "share": f"{first} %", "saponification_value": LOT_VALUES[names[1]]},
                        {"fat": names[1], "share": f"{100 - first} %", "saponification_value": LOT_VALUES[names[0]]}]
        self.tidy_oils(base)
        return slip

    @staticmethod
    def tidy_oils(base):
        base.pop("own_fats", None)
        for colour in base.get("colours", []):
            colour.pop("dispersed_in", None)

    def own_fat_slipped(self, files):
        """A line of an own file of fats that slipped by one: a known oil with another's value."""
        known = self.chance.random() < 0.75
        slip = Slip("an own fat, known by its name, with another's value" if known else "an own fat unlike any known, with a wrong value", cannot_show=not known)
        base = files["base.formula.json"]
        name, inci, like, acids = self.chance.choice([
            ("Olive oil", "Olea Europaea Fruit Oil", "olive", {"C16:0": "13 %", "C18:1": "71 %", "C18:2": "10 %", "C18:0": "3 %", "C16:1": "2 %", "C18:3": "1 %"}),
            ("Olive", "Olea Europaea Oil", "olive", None), ("Sunflower oil, high oleic", "Helianthus Annuus Seed Oil", "sunflower_high_oleic", None),
            ("Shea butter", "Butyrospermum Parkii Butter", "shea", None), ("Castor", "Ricinus Communis Seed Oil", "castor", None),
            ("Huile d'olive", "Olea Europaea Fruit Oil", "olive", None)])
        if not known:
            name, inci, like, acids = "Tamanu oil", "Calophyllum Inophyllum Seed Oil", None, None
        value = self.chance.choice([257, 266.5, 248, 245])
        own = {"id": "mine", "name": name, "kind": "triglyceride", "inci": inci, "inci_sodium_soap": "Sodium Mine",
               "saponification_value": value if self.chance.random() < 0.5 else {"low": value - 3, "high": value + 3}, "iodine_value": 80, "source": "invented sheet"}
        if acids and self.chance.random() < 0.5:
            own["fatty_acids"] = acids
        files["base.fats.json"] = {"schema": "brimwright.fats/1", "fats": [own]}
        base["own_fats"] = "base.fats.json"
        share = self.chance.randint(3, 9) * 10
        base["fats"] = [{"fat": "mine", "share": f"{share} %"}, {"fat": "palm", "share": f"{100 - share} %"}]
        for colour in base.get("colours", []):
            colour.pop("dispersed_in", None)
        slip.fat_values["mine"] = float(self.published.fats[like].typical) if like else 192.0
        return slip

    def milk_as_fat(self, files):
        name, fat, really = self.chance.choice(MILKS)
        share = self.chance.choice([100, 100, 80, 60])
        slip = Slip("milk, cream or yolk as all fat")
        base = files["base.formula.json"]
        base["additives"] = [{"name": name, "rate": f"{self.chance.choice([8, 12, 16])} % of fats", "goes_into": "batter", "density": "1 g/ml",
                              "contains_fat": {"fat": fat, "share": f"{share} %"}}]
        slip.fat_share[name] = really
        return slip

    def purity(self, files):
        slip = Slip("a purity without its sign, or as a fraction")
        alkali = files["base.formula.json"]["alkali"][0]
        alkali.pop("purity_range")
        alkali["purity"] = self.chance.choice(["0.98", "0.98 %", "98", "9.9 %", "0,99 %", 0.98, 98, "990 %", "8.9 %"])
        slip.purity["NaOH"] = 0.99
        return slip

    def purity_of_other(self, files):
        slip = Slip("KOH's purity for NaOH", cannot_show=True)
        alkali = files["base.formula.json"]["alkali"][0]
        alkali.pop("purity_range")
        alkali["purity"] = self.chance.choice(["90 %", "89 %", "85 %", "92 %"])
        slip.purity["NaOH"] = 0.99
        return slip

    def range_of_purity(self, files):
        slip = Slip("a purity outside its own range")
        files["base.formula.json"]["alkali"][0].update(purity=self.chance.choice(["90 %", "92 %", "95 %"]), purity_range=["98 %", "100 %"])
        slip.purity["NaOH"] = 0.99
        return slip

    def superfat_slip(self, files):
        slip = Slip("a superfat with its point or sign slipped")
        files["base.formula.json"]["superfat"] = self.chance.choice(["0.5 %", "0,6 %", "0.05", "-5 %", "0 %", "50 %", "0.05 %", 5, "5"])
        return slip

    def acid_among_fats(self, files):
        slip = Slip("an acid among the fats")
        base = files["base.formula.json"]
        self.tidy_oils(base)
        base["fats"] = [{"fat": "olive", "share": "97 %"}, {"fat": self.chance.choice(["citric_acid", "lactic_acid", "vinegar", "citric acid"]), "share": "3 %"}]
        return slip

    def unit(self, files):
        slip = Slip("a wrong unit")
        run, base = files["chance.run.json"], files["base.formula.json"]
        self.chance.choice([lambda: run["scales"]["fine"].update(step=self.chance.choice(["0.1 oz", "0.1 kg", "0.1", "0.1 mm"])),
                            lambda: run["scales"]["large"].update(step=self.chance.choice(["1 oz", "1 lb", "1 kg", "1 mg"])),
                            lambda: run["losses"]["pour"].update(pot=self.chance.choice(["20 oz", "20 ml", "20", "20 kg"])),
                            lambda: base.update(water={"lye_strength": self.chance.choice(["0.33", "0.33 %", "33", "66 %", "33 g"])}),
                            lambda: base.update(pour_temperature=self.chance.choice(["100 °C", "40", "40 F", "400 °F"]))])()
        return slip

    def radius(self, files):
        """A radius for a diameter. With a water weighing beside it, that contradicts it."""
        weighed = self.chance.random() < 0.5
        slip = Slip("a radius for a diameter, with water weighed" if weighed else "a radius for a diameter, nothing beside it", cannot_show=not weighed)
        shape = files["main.mould.json"]["shape"]
        if weighed:
            files["main.mould.json"]["water"] = {"temperature": "20 °C", "filled_to": "brim", "weighed_in": "each cavity", "weighings": ["96.8 g", "96.5 g"]}
        shape.update(floor_diameter="29 mm", brim_diameter="35 mm") if self.chance.random() < 0.6 else shape.update(floor_diameter="116 mm", brim_diameter="140 mm")
        return slip

    def alkali_swapped(self, files):
        slip = Slip("shares that add up to more than they should")
        base = files["base.formula.json"]
        self.chance.choice([lambda: base["alkali"][0].update(share="110 %"), lambda: base["alkali"].append({"alkali": "KOH", "share": "10 %", "purity": "90 %"}),
                            lambda: base["fats"][0].update(share="120 %"), lambda: base["alkali"].append(copy.deepcopy(base["alkali"][0]))])()
        return slip

    @staticmethod
    def ready(files, **slipped):
        """A jug of half alkali, half water in the studio, taken by the run; `slipped` is what stands there wrong."""
        jug = {"alkali": "NaOH", "strength": "50 %", "strength_range": ["49.5 %", "50.5 %"], "kept_at": "20 °C", **slipped}
        files["studio.json"] = {"schema": "brimwright.studio/1", "lye_solutions": {"the jug": {k: v for k, v in jug.items() if v is not None}}}
        files["chance.run.json"]["pour"]["lye_from"] = "the jug"

    def strength_typed(self, files):
        slip = Slip("a lye solution's strength typed as a ratio, a bare number or below the truth by a figure")
        slip.purity["NaOH"] = 0.5
        self.ready(files, strength=self.chance.choice(["50", "0.5", "0,5", 50, 0.5, "1:1", "1 : 1", "1/2", "5 %", "500 %", "0.5 %", "50 g", "20 %", "1:2"]))
        return slip

    def strength_range(self, files):
        slip = Slip("a lye solution's range slipped or left out")
        slip.purity["NaOH"] = 0.5
        self.ready(files, strength_range=self.chance.choice([None, [], ["50 %"], ["50.5 %", "49.5 %"], ["49.5", "50.5"], ["5 %", "51 %"], ["50 %", "55 %"], ["51 %", "52 %"],
                                                             ["49 %", "50 %", "51 %"], "49 % to 51 %"]))
        return slip

    def weaker_than_it_is(self, files):
        """The jug was open, or another one was meant: nothing in the file shows it."""
        slip = Slip("a lye solution stronger than its range", cannot_show=True)
        slip.purity["NaOH"] = self.chance.choice([0.5, 0.52, 0.45])
        stated = self.chance.choice([33, 40, 42])
        self.ready(files, strength=f"{stated} %", strength_range=[f"{stated - 1} %", f"{stated + 1} %"])
        return slip

    def open_jug(self, files):
        """It may have grown as strong as the range allows: then the plan says so, where that leaves lye over."""
        slip = Slip("a lye solution as strong as its range allows")
        high = self.chance.choice([51, 51.5, 52])
        self.ready(files, strength_range=["49 %", f"{high} %"])
        slip.purity["NaOH"] = high / 100
        return slip

    def solution_of_other(self, files):
        slip = Slip("a solution of the other alkali, or one that is not there")
        slip.purity["NaOH"] = 0.5
        self.ready(files, **self.chance.choice([{"alkali": "KOH"}, {"alkali": None}, {"alkali": "lye"}]))
        if self.chance.random() < 0.3:
            files["chance.run.json"]["pour"]["lye_from"] = self.chance.choice(["the jugg", "NaOH", ["the jug", "the jug"], []])
        return slip

    SLIPS = [(strength_typed, 2), (strength_range, 2), (weaker_than_it_is, 1), (open_jug, 2), (solution_of_other, 1), (alkali_among_parts, 6), (naoh_value, 2), (juice_as_acid, 4), (juice_too_strong, 3), (tartar, 1), (salt_as_acid, 2), (acid_denied, 1), (values_swapped, 2),
             (own_fat_slipped, 3), (milk_as_fat, 3), (purity, 1), (purity_of_other, 1), (range_of_purity, 1), (superfat_slip, 1), (acid_among_fats, 1), (unit, 1), (radius, 1),
             (alkali_swapped, 1)]

    def scene(self):
        files = self.good_scene()
        slip = self.chance.choices([s for s, _ in self.SLIPS], [w for _, w in self.SLIPS])[0](self, files)
        return files, slip


def true_superfat(pour, files, slip, published):
    """Of a batch's base, from the printed weights, by published values and by what was really put in."""
    base = files["base.formula.json"]
    parts = [(key, part) for key in ("additives", "fragrances", "colours", "liquids") for part in base.get(key, [])]
    lines = by_kind(pour["ingredients"], [part["name"] for _, part in parts])
    fats_need = acids = 0.0

    def value_of(fat_id):
        return slip.fat_values[fat_id] if fat_id in slip.fat_values else float(own_value(files, fat_id) or published.fats[fat_id].typical)

    for fat in base["fats"]:
        fats_need += lines.pop(0)["g"] * value_of(fat["fat"]) / 1000
    for _, part in parts:
        oil = part.get("dispersed_in")
        if oil and oil.get("from") == "extra" and lines and "to disperse the" in lines[0]["name"]:
            fats_need += lines.pop(0)["g"] * value_of(oil["fat"]) / 1000
    koh = 0.0
    for alkali in base["alkali"]:
        line = lines.pop(0)
        purity = slip.purity.get(alkali["alkali"]) or float(second.share(alkali["purity"]))
        koh += line["g"] * purity * (KOH / 39.997 if alkali["alkali"] == "NaOH" else 1.0)
    if lines and lines[0]["name"].startswith("Water"):
        lines.pop(0)
    for (_, part), line in zip(parts, lines):
        grams, name = line["g"], part["name"]
        if name in slip.koh_per_g:
            acids += grams * slip.koh_per_g[name]
        elif isinstance(part.get("contains_acid"), dict):
            acids += grams * float(published.acids[part["contains_acid"]["acid"]] * second.share(part["contains_acid"]["share"]))
        fat, share = None, 0.0
        if isinstance(part.get("contains_fat"), dict):
            fat, share = part["contains_fat"]["fat"], float(second.share(part["contains_fat"]["share"]))
        if isinstance(part.get("composition"), str):
            composition = published.compositions[part["composition"]]
            if composition["fat"] != "none":
                fat, share = composition["fat"], float(composition["fat_percent"]) / 100
        elif isinstance(part.get("composition"), dict) and part["composition"]["fat"] != "none":
            fat, share = part["composition"]["fat"]["fat"], float(second.share(part["composition"]["fat"]["share"]))
        if fat:
            fats_need += grams * slip.fat_share.get(name, share) * value_of(fat) / 1000
    for layer in pour.get("layers", []):
        for colour in layer["colours"]:
            acids += colour["g"] * slip.koh_per_g.get(colour["name"], 0.0)
    return 1 - (koh - acids) / fats_need


def own_value(files, fat_id):
    for document in files.values():
        for fat in document.get("fats", []) if document["schema"].startswith("brimwright.fats/") else []:
            if fat["id"] == fat_id:
                return second.value_range(fat["saponification_value"])[1]
    return None


def try_slip(root, program, seed, number, keep=None):
    """(kind, "refused" | "alarmed" | "sound" | "LYE-HEAVY" | "cannot show" | "fault", in words)."""
    published, tips = published_of(root)
    folder = tempfile.mkdtemp(prefix="careless.")
    kind = "?"
    try:
        files, slip = CarelessMaker(f"{seed}:{number}", published, tips).scene()
        kind = slip.kind
        write_run(files, folder)
        if keep:
            shutil.copytree(folder, f"{keep}/slip_{number}", dirs_exist_ok=True)
        process = subprocess.Popen([program, "plan", "chance.run.json", "--json"], cwd=folder, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE,
                                   stderr=subprocess.PIPE, close_fds=False)
        out, err = process.communicate(timeout=120)
        if process.returncode == 1 and err.count(b"\n") == 1:
            return kind, "refused", err.decode().strip()
        if process.returncode != 0:
            return kind, "fault", f"exit {process.returncode}: {err.decode(errors='replace')[:300]}"
        plan = json.loads(out)
        superfat = min(true_superfat(batch["pour"], files, slip, published) for batch in plan["batches"])
        said = f"prints {plan['pour']['superfat_percent']['effective']} %, truly {100 * superfat:.2f} %; begins with {plan['cautions'][:1]}"
        if first_alarm(plan["cautions"]) != "quiet":
            return kind, "alarmed", said
        if superfat >= 0:
            return kind, "sound", said
        return kind, "cannot show" if slip.cannot_show else "LYE-HEAVY", said
    except Exception:
        return kind, "fault", "this test fails on it: " + traceback.format_exc(limit=3)
    finally:
        shutil.rmtree(folder)


def work(job):
    root, program, seed, numbers = job
    return [(number, *try_slip(root, program, seed, number)) for number in numbers]


OUTCOMES = ("refused", "alarmed", "sound", "cannot show", "LYE-HEAVY", "fault")


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("root")
    parser.add_argument("program")
    parser.add_argument("--slips", type=int, default=600)
    parser.add_argument("--seed", default="20261125")
    parser.add_argument("--only", type=int, help="one slip by its number, and keep its files")
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--keep", default=os.path.join(tempfile.gettempdir(), "careless_maker_test"))
    given = parser.parse_args()
    root, program = os.path.abspath(given.root), os.path.abspath(given.program)
    if given.only is not None:
        print(try_slip(root, program, given.seed, given.only, given.keep), f"files in {given.keep}/slip_{given.only}")
        return
    print(f"{given.slips} slips, seed {given.seed}", flush=True)
    jobs = [(root, program, given.seed, range(start, min(start + 25, given.slips))) for start in range(0, given.slips, 25)]
    table, bad = {}, []
    with ProcessPoolExecutor(given.jobs) as pool:
        for outcomes in pool.map(work, jobs):
            for number, kind, outcome, said in outcomes:
                table.setdefault(kind, dict.fromkeys(OUTCOMES, 0))[outcome] += 1
                if outcome in ("LYE-HEAVY", "fault"):
                    bad.append(number)
                    print(f"{outcome} slip {number}, {kind}: {said}", flush=True)
                    if len(bad) == 1:
                        try_slip(root, program, given.seed, number, given.keep)
    width = max(map(len, table))
    print(" " * width, *OUTCOMES, sep="  ")
    for kind in sorted(table):
        print(kind.ljust(width), *(str(table[kind][o]).rjust(len(o)) for o in OUTCOMES), sep="  ")
    if bad:
        print(f"the first one's files: {given.keep}/slip_{bad[0]}; once more by --seed {given.seed} --only {bad[0]}")
    never_tried = [kind for kind in table if not any(table[kind].values())]
    sys.exit(1 if bad or never_tried else 0)


if __name__ == "__main__":
    main()
