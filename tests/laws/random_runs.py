"""Random good runs: what a maker might well write down, in the forms makers write it in.

Everything hangs on one random.Random, so that a run is known by its seed and number alone.
"""
import random
from fractions import Fraction as F

# Fats with the share that a formula usually holds of them at most, in per cent (common practice, no source).
FATS = {"olive": 80, "coconut": 40, "palm": 50, "palm_kernel": 30, "babassu": 30, "sunflower": 30, "sunflower_high_oleic": 50,
        "safflower_high_oleic": 50, "soybean": 30, "rapeseed_low_erucic": 40, "rice_bran": 30, "sweet_almond": 30, "apricot_kernel": 20,
        "avocado": 25, "grapeseed": 15, "sesame": 15, "cottonseed": 20, "maize": 20, "peanut": 20, "hazelnut": 20, "macadamia": 20,
        "castor": 12, "jojoba": 5, "shea": 20, "cocoa_butter": 20, "mango_butter": 20, "kokum": 10, "sal": 10, "lard": 60, "tallow": 60,
        "coconut_hydrogenated": 30, "olive_pomace": 80, "borage": 5, "argan": 10, "neem": 10, "rosehip": 5,
        "hemp": 10, "flaxseed": 5, "wheat_germ": 5, "walnut": 10, "stearic_acid": 8, "palmitic_acid": 5, "myristic_acid": 5}
# Never the only fat: a formula that is mostly wax is refused.
WAXES = ["beeswax", "lanolin"]
# Near the middle of what is published, so that a lot's own value is one that a supplier might well state.
LOT_VALUES = {"olive": 190, "coconut": 257, "palm": 200, "shea": 180, "castor": 181, "sunflower": 190, "lard": 197, "tallow": 197,
              "beeswax": 95, "cocoa_butter": 193, "rice_bran": 189, "avocado": 189, "sweet_almond": 194}
INNOCENT = ["oat flour", "rice flour", "kaolin", "rose clay", "poppy seed", "ground coffee", "colloidal silver glass", "sodium lactate, 60 % solution",
            "table salt", "silk powder", "sugar", "pumice", "calendula petals", "sodium citrate", "loofah shreds", "soda-free salt mix"]


def fixed(value, decimals):
    text = f"{float(round(F(value), decimals)):.{decimals}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


class Writer:
    """Writes quantities the way people do, now this way, now that."""

    def __init__(self, chance):
        self.chance = chance

    def comma(self, text):
        # A comma with three figures after it could part thousands, and is refused: not written.
        if "." in text and len(text.split(".")[1]) != 3 and self.chance.random() < 0.15:
            return text.replace(".", ",")
        return text

    def length(self, mm):
        way = self.chance.random()
        if way < 0.7:
            return self.comma(fixed(mm, 1)) + " mm"
        if way < 0.85:
            return self.comma(fixed(F(mm) / 10, 2)) + " cm"
        eighths = max(1, round(F(mm) / F("25.4") * 8))
        whole, part = divmod(eighths, 8)
        between, unit = self.chance.choice([(" ", " in"), (" ", " inches"), ("-", " in")])
        return between.join(([str(whole)] if whole or not part else []) + ([f"{part}/8"] if part else [])) + unit

    def mass(self, g):
        way = self.chance.random()
        if way < 0.85:
            return self.comma(fixed(g, 1)) + self.chance.choice([" g", " g", " g", " grams"])
        if way < 0.92:
            return fixed(F(g) / 1000, 4) + " kg"
        return self.comma(fixed(F(g) / F("28.349523125"), 2)) + self.chance.choice([" oz", " ounces"])

    def volume(self, ml):
        way = self.chance.random()
        if way < 0.5:
            return fixed(ml, 0) + self.chance.choice([" ml", " ml", " cc", " milliliters"])
        return fixed(F(ml) / 1000, 2) + " l" if way < 0.85 else fixed(F(ml) / F("29.5735295625"), 1) + " fl oz"

    def per_cent(self, value, decimals=2):
        return self.comma(fixed(value, decimals)) + " %"

    def temperature(self, celsius):
        if self.chance.random() < 0.2:
            return f"{round(celsius * 9 / 5 + 32)} {self.chance.choice(['°F', 'F', 'degrees F'])}"
        return fixed(celsius, 1) + " °C"


class RunMaker:
    def __init__(self, seed):
        self.seed = seed
        self.chance = random.Random(seed)
        self.write = Writer(self.chance)
        self.files = {}

    def some(self, likely):
        return self.chance.random() < likely

    def between(self, low, high, decimals=1):
        return round(self.chance.uniform(low, high), decimals)

    # ---- formulas

    def shares(self, parts):
        """So many shares that add up to 100, in tenths or hundredths."""
        unit = 100 if self.some(0.2) else 10
        weights = [self.chance.random() + 0.15 for _ in range(parts)]
        shares = [int(100 * unit * w / sum(weights)) for w in weights]
        shares[0] += 100 * unit - sum(shares)
        return [F(s, unit) for s in shares]

    def fats(self, own):
        names = self.chance.sample(sorted(FATS), self.chance.randint(1, 6)) + own
        if self.some(0.1):
            names.append(self.chance.choice(WAXES))
        shares = sorted(self.shares(len(names)), reverse=True)
        # The greatest shares to the fats that bear them.
        names.sort(key=lambda n: -FATS.get(n, 1 if n in WAXES else 15))
        fats = []
        for name, part in zip(names, shares):
            fat = {"fat": name, "share": self.write.per_cent(part)}
            if name in LOT_VALUES and self.some(0.4):
                value = LOT_VALUES[name] + self.between(-2, 2)
                half = self.between(0.5, 2)
                fat["saponification_value"] = value if self.some(0.5) else {
                    "low": round(value - half, 1), "typical": value, "high": round(value + half, 1)}
            fats.append(fat)
        return fats

    def own_fats(self, file):
        fats = [{"id": "argan_mine", "name": "Argan oil", "kind": "triglyceride", "inci": "Argania Spinosa Kernel Oil",
                 "inci_sodium_soap": "Sodium Arganate", "saponification_value": {"low": 189, "high": 199}, "iodine_value": {"low": 91, "high": 110},
                 "source": "invented supplier's sheet"},
                {"id": "pumpkin_mine", "name": "Pumpkin seed oil", "kind": "triglyceride", "inci": "Cucurbita Pepo Seed Oil",
                 "inci_sodium_soap": "Sodium Pumpkinseedate", "saponification_value": {"low": 185, "typical": 191, "high": 198},
                 "density": {"at": "20 °C", "low": "0.915 g/ml", "high": "0.92 g/ml"}, "source": "invented supplier's sheet"}]
        self.files[file] = {"schema": "brimwright.fats/1", "fats": fats}
        return [self.chance.choice(fats)["id"]]

    def alkali(self):
        def purity(name):
            p = self.between(97, 100) if name == "NaOH" else self.between(86, 93)
            entry = {"purity": self.write.per_cent(p)}
            if self.some(0.6):
                entry["purity_range"] = [self.write.per_cent(p - self.between(0, 1)), self.write.per_cent(min(100, p + self.between(0, 1)))]
            return entry

        if self.some(0.75):
            return [{"alkali": "NaOH", "share": "100 %", **purity("NaOH")}]
        if self.some(0.4):
            return [{"alkali": "KOH", "share": "100 %", **purity("KOH")}]
        part = self.chance.randint(5, 95)
        return [{"alkali": "NaOH", "share": f"{part} %", **purity("NaOH")}, {"alkali": "KOH", "share": f"{100 - part} %", **purity("KOH")}]

    def water(self, name):
        # KOH takes more water for the same strength of solution to be as thin (common practice, no source).
        way = self.chance.random()
        if way < 0.06:  # as strong as it dissolves, where rounding matters
            return self.chance.choice([{"lye_strength": "50 %"}, {"lye_strength": self.write.per_cent(self.between(45, 50))}, {"water_to_alkali": 1}])
        if way < 0.5:
            return {"lye_strength": self.write.per_cent(self.between(25, 38))}
        if way < 0.75:
            return {"water_to_alkali": self.between(1.6, 3, 2)}
        return {"share_of_fats": self.write.per_cent(self.between(28, 38))}

    def rate(self, least, most):
        way, basis = self.chance.random(), self.chance.choice(["fats", "oils", "batter"])
        if way < 0.55:
            return {"rate": f"{self.write.per_cent(self.between(least, most, 2))} of {basis}"}
        if way < 0.8:
            return {"rate": f"{self.write.comma(fixed(self.between(10 * least, 10 * most), 1))} g/kg of {basis}"}
        if way < 0.85:
            return {"rate": self.chance.choice([f"1/4 oz/lb of {basis}", f"0.2 oz per lb of {basis}", "1/8 oz ppo"])}
        spoons = self.chance.choice(["1/2", "1", "1-1/2", "1 1/2", "2"])
        unit = self.chance.choice([f"tsp/lb of {basis}", f"tsp/kg of {basis}", f"tsp per lb of {basis}", "tsp ppo"])
        bulk = self.chance.choice([f"{self.between(0.3, 0.9, 2)} g/ml", f"{self.between(1.5, 4.5, 1)} g/tsp", f"{self.between(1.5, 4.5, 1)} g per tsp"])
        return {"rate": f"{spoons} {unit}", "bulk_density": bulk}

    def additives(self):
        additives = []
        for name in self.chance.sample(INNOCENT, self.chance.choice([0, 0, 1, 1, 2, 3])):
            additive = {"name": name, "goes_into": self.chance.choice(["lye", "fats", "batter"]), **self.rate(0.3, 3)}
            if self.some(0.6):
                additive["density"] = f"{self.between(1.1, 2.7, 2)} g/ml"
            additives.append(additive)
        if self.some(0.2):
            additives.append({"name": "shea butter, late", "goes_into": "batter", "density": "0.91 g/ml", "contains_fat": {"fat": "shea", "share": "100 %"},
                              "rate": self.write.per_cent(self.between(1, 4)) + " of fats"})
        if self.some(0.25):
            name, acid, most = self.chance.choice([("citric acid", "citric acid, anhydrous", 2), ("citric acid, hydrate", "citric acid monohydrate", 2),
                                                   ("lactic acid", "lactic acid (100 %)", 2), ("malic acid", "malic acid", 1),
                                                   ("tartaric acid", "tartaric acid", 1), ("ascorbic acid", "ascorbic acid", 1)])
            additives.append({"name": name, "goes_into": "lye", "density": "1.6 g/ml", "contains_acid": {"acid": acid, "share": "100 %"},
                              "rate": self.write.per_cent(self.between(0.2, most)) + " of fats"})
        self.chance.shuffle(additives)
        return additives

    def fragrances(self):
        if self.some(0.4):
            return []
        return [{"name": "invented essential oil blend", "density": f"{self.between(0.85, 1.05, 3)} g/ml", "limit": "5 % of batter",
                 "rate": f"{self.write.per_cent(self.between(1, 3))} of {self.chance.choice(['fats', 'batter'])}"}]

    def colours(self, fats):
        colours = []
        for name in self.chance.sample(["titanium dioxide", "green mica", "ultramarine blue", "iron oxide red"], self.chance.choice([0, 1, 1, 2])):
            colour = {"name": name, "rate": f"{self.between(2, 10)} g/kg of {self.chance.choice(['fats', 'batter'])}", "density": f"{self.between(2.3, 5, 2)} g/ml"}
            liquid = [f["fat"] for f in fats if f["fat"] in ("olive", "sunflower", "rapeseed_low_erucic", "rice_bran", "sweet_almond") and
                      float(F(f["share"].split()[0].replace(",", "."))) > 12]
            if self.some(0.6):
                if liquid and self.some(0.6):
                    colour["dispersed_in"] = {"fat": self.chance.choice(liquid), "oil_per_colour": self.between(1, 4), "from": "formula"}
                else:
                    colour["dispersed_in"] = {"fat": self.chance.choice(["sunflower_high_oleic", "castor", "olive"]), "oil_per_colour": self.between(1, 3),
                                              "from": "extra"}
            if "dispersed_in" in colour and self.some(0.3):
                colour["bulk_density"] = f"{self.between(2.5, 6, 1)} g/tsp"
                colour["dispersed_in"]["oil_per_colour"] = self.chance.choice(["1 tsp in 1 tbsp", "1 tsp in 10 g", "5 g in 1 tbsp"])
            colours.append(colour)
        return colours

    def liquids(self):
        if self.some(0.75):
            return []
        liquid = {"name": "goat milk", "goes_into": self.chance.choice(["lye", "batter"]), "composition": "goat milk"}
        if self.some(0.4):
            liquid = {"name": "oat drink", "goes_into": "batter",
                      "composition": {"water": "90 %", "fat": {"fat": "sunflower", "share": "1.5 %"}, "sugar": "4 %", "salt": "0.1 %", "source": "the carton"}}
        if self.some(0.5):
            liquid["replaces"] = f"{self.chance.randint(5, 25)} % of water"
        else:
            liquid["rate"] = f"{self.between(1, 6)} % of {self.chance.choice(['fats', 'batter'])}"
        if self.some(0.3):
            liquid["density"] = "1.03 g/ml"
        return [liquid]

    def formula(self, file, name, lye=None, temperature=None):
        own, document = [], {"schema": "brimwright.formula/2", "name": name}
        if self.some(0.15):
            document["own_fats"] = f"{file.split('.')[0]}.fats.json"
            own = self.own_fats(document["own_fats"])
        document["fats"] = self.fats(own)
        document["superfat"] = self.write.per_cent(self.between(3, 10))
        alkali, water = lye or (self.alkali(), self.water(name))
        document["alkali"], document["water"] = alkali, water
        document["pour_temperature"] = self.write.temperature(temperature or self.between(25, 50))
        for key, parts in (("additives", self.additives()), ("fragrances", self.fragrances()), ("colours", self.colours(document["fats"])),
                           ("liquids", self.liquids())):
            if parts:
                document[key] = parts
        if self.some(0.15):
            document["measured_density"] = f"{self.between(0.99, 1.05, 3)} g/ml"
        if self.some(0.5):
            document.update(cure="35 days", water_lost_in_cure="85 %")
        self.files[file] = document
        return alkali, water

    # ---- moulds

    def shape(self):
        write, between = self.write.length, self.between
        kind = self.chance.choice(["block", "block", "frustum", "fluted_cup", "polygon", "outline", "turned_profile", "dome", "half_ball", "half_ring",
                                   "turned_ring", "heart"])
        height = between(20, 60)
        draft = {"draft": f"{self.chance.randint(1, 6)}°"} if self.some(0.5) else {}
        if kind == "block":
            shape = {"length": write(between(60, 110)), "width": write(between(40, 60)), "height": write(height), **draft}
            if self.some(0.5):
                shape["corner_radius"] = write(between(2, 12))
            return {"kind": kind, **shape}
        if kind in ("frustum", "fluted_cup"):
            floor, brim = between(40, 60), between(60, 85)
            flutes = {"flutes": self.chance.randint(6, 24), "flute_depth": write(between(2, 6))} if kind == "fluted_cup" else {}
            return {"kind": kind, "floor_diameter": write(floor), "brim_diameter": write(brim), "height": write(height), **flutes}
        if kind == "polygon":
            return {"kind": kind, "sides": self.chance.randint(3, 9), "across_flats": write(between(50, 80)), "height": write(height), **draft}
        if kind == "outline":
            a, b, notch = between(60, 90), between(50, 70), between(15, 25)
            corners = [(0, 0), (a, 0), (a, b), (a / 2, b), (a / 2, b - notch), (0, b - notch)] if self.some(0.5) else [(0, b / 3), (a / 2, 0), (a, b / 3), (a * 0.8, b), (a * 0.2, b)]
            points = [{"x": fixed(x, 1) + " mm", "y": fixed(y, 1) + " mm"} for x, y in corners]
            return {"kind": kind, "points": points[::-1] if self.some(0.5) else points, "height": write(height), **({"draft": "2 deg"} if self.some(0.5) else {})}
        if kind == "turned_profile":
            radii = sorted(between(15, 45) for _ in range(4))
            heights = sorted({between(2, 50) for _ in range(3)})
            points = [{"radius": fixed(r, 1) + " mm", "height": fixed(h, 1) + " mm"} for r, h in zip(radii, [0] + heights)]
            return {"kind": kind, "points": points}
        if kind == "dome":
            return {"kind": kind, "diameter": write(between(60, 90)), "height": write(between(25, 45))}
        if kind == "half_ball":
            return {"kind": kind, "diameter": write(between(60, 90))}
        if kind == "half_ring":
            return {"kind": kind, "centre_diameter": write(between(60, 80)), "tube_diameter": write(between(28, 45))}
        if kind == "turned_ring":
            return {"kind": kind, "outer_floor_diameter": write(between(60, 70)), "outer_brim_diameter": write(between(72, 85)),
                    "post_floor_diameter": write(between(22, 30)), "post_brim_diameter": write(between(12, 20)), "height": write(height)}
        return {"kind": "heart", "side": write(between(45, 65)), "height": write(height), **({"draft": "3°"} if self.some(0.5) else {})}

    def mould(self, file, shape, cavities=None, wet=None):
        document = {"schema": "brimwright.mould/2", "name": "Mould " + file.split(".")[0], "cavities": cavities or self.chance.choice([1, 4, 6, 8, 12, 24]), "shape": shape}
        if self.some(0.3):
            document["owned"] = self.chance.randint(2, 4)
        if wet:
            document["water"] = wet
        self.files[file] = document

    # ---- the run

    def scales(self):
        large, fine = self.chance.choice([("1 g", "0.1 g"), ("1 g", "0.1 g"), ("1 g", "0.01 g"), ("1 g", "1 g"), ("2 g", "0.5 g"), ("5 g", "0.1 g"),
                                          ("0.5 g", "0.05 g"), ("0.1 g", "0.01 g"), ("0.1 oz", "0.01 oz"), ("1 g", "0.01 oz")])
        return {"large": {"step": large, "most": self.chance.choice(["5 kg", "3 kg", "10 kg"])},
                "fine": {"step": fine, "most": self.chance.choice(["500 g", "200 g", "1 kg", "20 oz"])}}

    def layers(self, document, each_g):
        names = ["Low", "Middle", "Upper", "Top"][:self.chance.choice([1, 2, 2, 3, 3, 4])]
        way = self.chance.choice(["parts", "depth", "mass"])
        layers = []
        for i, name in enumerate(names):
            layer = {"name": name}
            if way == "parts":
                layer["parts"] = self.chance.choice([1, 2, 3, 1.5])
            elif i + 1 == len(names):
                layer["rest"] = True
            elif way == "depth":
                layer["depth"] = fixed(self.line_mm * self.chance.uniform(0.1, 0.3), 1) + " mm"
            else:
                layer["mass"] = fixed(each_g * self.chance.uniform(0.1, 0.3), 1) + " g"
            if self.some(0.5):
                layer["colours"] = [{"name": f"colour {i}", **self.rate(0.2, 1)}]
            layers.append(layer)
        document["pour"]["layers"] = layers

    def pipe(self, document):
        pipe = {"formula": "topping.formula.json", "fills_headspace": self.write.per_cent(self.chance.randint(0, 100)),
                "whip": {"holds": self.chance.choice(["120 ml", "4 fl oz", "100 ml"]), "net": fixed(self.between(55, 75), 1) + " g"}}
        way = self.chance.random()
        if way < 0.4:
            pipe["trials"] = {"weighed": [fixed(self.between(18, 22), 1) + " g" for _ in range(self.chance.randint(1, 5))],
                              "weigh_cup": {"holds": "120 ml", "net": "80.5 g"}}
        if way > 0.3 and way < 0.8:
            moves = [{"move": "ring", "radius": fixed(self.between(6, 11), 1) + " mm"}]
            if self.some(0.5):
                moves.append({"move": "spiral", "turns": self.chance.choice([1, 1.5, 2]), "start_radius": "7 mm", "end_radius": "2 mm", "rise": "14 mm"})
            if self.some(0.4):
                moves.append({"move": "tail", "length": "9 mm"})
            if self.some(0.3):
                moves.append({"move": "dots", "count": 5, "circle_radius": "7 mm", "height": "6 mm"})
            if self.some(0.2):
                moves.insert(0, {"move": "dollop", "diameter": "22 mm", "height": "11 mm"})
            tip = self.chance.choice(["star 6 x 10 mm", "round 8 mm", "closed star 6 x 12 mm", "petal 16 x 4 mm",
                                      {"name": "mine", "star": {"points": 7, "outer_radius": "5 mm", "inner_radius": "3.1 mm"}},
                                      {"name": "mine, round", "round": {"radius": "3.5 mm"}, "hand": {"correction": 1.07, "trials": 4}}])
            pipe["beads"] = {"tip": tip, "bead_to_opening": self.between(0.9, 1.3, 2), "moves": moves}
        if way > 0.75:
            pipe["envelope"] = {"form": self.chance.choice(["cone", "dome"]), "diameter": "38 mm", "height": self.write.length(self.between(12, 30)),
                                "soap_share": self.write.per_cent(self.between(50, 90))}
        losses = {"bag": self.write.mass(self.between(10, 40)), "bowl_and_whisk": self.write.mass(self.between(10, 40))}
        if self.some(0.5):
            losses["tip"] = self.write.mass(self.between(1, 5))
        if self.some(0.6):
            pipe["bag_holds"] = f"{self.chance.choice([300, 450, 600])} ml"
            if self.some(0.6):
                losses["each_bag_change"] = self.write.mass(self.between(2, 12))
        if self.some(0.4):
            pipe["whip_now"] = {"holds": "120 ml", "net": fixed(self.between(60, 80), 1) + " g"}
        if self.some(0.4):
            pipe["bowl"] = {"holds": self.chance.choice(["5 l", "2 l", "3.5 l", "1,2 l"])}
            if self.some(0.5):
                pipe["bowl"]["whisk_needs"] = self.chance.choice(["100 ml", "200 ml", "300 ml"])
        if self.some(0.3):
            pipe["pace"] = {"open_time": f"{self.chance.randint(4, 40)} min", "time_per_piece": f"{self.chance.randint(10, 60)} s"}
            if self.some(0.7):
                pipe["pace"]["time_per_bag_change"] = self.chance.choice(["30 s", "1 min", "1 min 30 s"])
        document["pipe"], document["losses"]["pipe"] = pipe, losses

    def decorations(self, document):
        decorations = []
        for i in range(self.chance.randint(1, 2)):
            one = {"name": f"Decoration {i}", "material": "melt", "density": f"{self.between(1.0, 1.1, 3)} g/ml", "spares": self.write.per_cent(self.between(0, 12)),
                   "melt_loss": self.write.per_cent(self.between(0, 8)), "left_in_jug": self.write.mass(self.between(0, 8))}
            way = self.chance.random()
            if way < 0.5:
                self.mould(f"tray{i}.mould.json", self.chance.choice([{"kind": "half_ball", "diameter": "16 mm"}, {"kind": "dome", "diameter": "20 mm", "height": "8 mm"},
                                                                      {"kind": "ball", "diameter": "14 mm"}, {"kind": "heart", "side": "12 mm", "height": "6 mm"}]),
                           self.chance.choice([12, 15, 24]))
                one.update(mould=f"tray{i}.mould.json", fill={"below_brim": self.chance.choice(["0 mm", "1 mm"])}, cast_as=self.chance.choice(["one cast", "two halves"]))
                if self.some(0.3):
                    one["moulds_owned"] = self.chance.randint(1, 3)
            elif way < 0.75:
                one["rod"] = {"diameter": self.write.length(self.between(6, 14)), "length": self.write.length(self.between(20, 150))}
            else:
                one["drizzle"] = {"area": f"{self.between(2, 12)} cm2", "thickness": "1.2 mm"}
            one["per_cast" if self.some(0.3) else "per_piece"] = self.chance.randint(1, 3)
            decorations.append(one)
        document["decorations"] = decorations

    def bury(self, document, length, width):
        """Upright-walled bars buried well inside a block: all of each displaces batter."""
        self.mould("bar.mould.json", {"kind": "block", "length": "20 mm", "width": "10 mm", "height": "8 mm"}, 10)
        document.setdefault("decorations", []).append(
            {"name": "Buried bar", "material": "melt", "density": "1.03 g/ml", "spares": "5 %", "melt_loss": "3 %", "left_in_jug": "2 g", "per_cast": 1,
             "mould": "bar.mould.json", "fill": {"below_brim": "0 mm"}, "cast_as": "one cast",
             "buried": {"cover": "2 mm", "placed": "before the pour", "places": [{"x": "0 mm", "y": "0 mm", "height": "4 mm"}]}})

    def bury_in_loaf(self, document, shape):
        """Blocks, or rods along the loaf or across it, level and well inside."""
        import second_arithmetic
        length, width = (float(second_arithmetic.quantity(shape[key], "length")) for key in ("length", "width"))
        one = {"name": "Laid in", "material": "melt", "density": f"{self.between(0.95, 1.1, 3)} g/ml", "spares": "0 %", "melt_loss": "3 %", "left_in_jug": "2 g"}
        low, high = 4.0, self.line_mm - 5
        places = []
        if self.some(0.5):
            self.mould("bar.mould.json", {"kind": "block", "length": "24 mm", "width": "12 mm", "height": "9 mm"}, 10)
            one.update(mould="bar.mould.json", fill={"below_brim": "0 mm"}, cast_as="one cast")
            for i in range(self.chance.randint(1, 4)):
                places.append({"x": fixed((i - 1.5) * length / 4 + self.between(-6, 6), 1) + " mm", "y": fixed(self.between(-width / 2 + 12, width / 2 - 12), 1) + " mm",
                               "height": fixed(self.between(low, high - 9), 1) + " mm"})
        else:
            across = self.some(0.3)
            thick = self.between(6, 14)
            one["rod"] = {"diameter": fixed(thick, 1) + " mm", "length": fixed((width if across else length) - self.between(10, 30), 1) + " mm"}
            reach = (length if across else width) / 2 - thick / 2 - 6
            for side in self.chance.choice([[0], [-1, 1]]):
                aside = fixed(self.between(-3, 3) if side == 0 else side * self.between(thick, reach), 1) + " mm"
                place = {"x": aside, "y": "0 mm"} if across else {"x": "0 mm", "y": aside}
                places.append({**place, "height": fixed(self.between(low, high - thick), 1) + " mm", **({"turn": {"z": "90 deg"}} if across else {})})
        one.update(per_cast=len(places), buried={"cover": "2 mm", "placed": self.chance.choice(["before the pour", "pressed in after"]), "places": places})
        document.setdefault("decorations", []).append(one)

    def batches(self, document, cavities, each_ml):
        """Pots and jugs about as large as some batch needs them, wishes, and whippings."""
        most = self.chance.randint(1, max(1, min(2 * cavities, 60)))
        pots, batch = {}, {}
        if self.some(0.5):
            pots["holds"] = self.write.volume((most * each_ml * 1.05 + 100) * 1.5)
        if self.some(0.35):
            pots["lye_jug"] = self.write.volume((self.chance.uniform(0.6, 2) * most * each_ml * 0.33 + 50) * 2)
        if self.some(0.4):
            batch["pieces" if self.some(0.6) else "casts"] = self.chance.randint(1, max(1, 2 * cavities))
        if self.some(0.3):
            batch["fill"] = "full"
        if "pipe" in document:
            if self.some(0.3):
                batch["whippings"] = self.chance.choice([1, 2, 2, 3])
            if self.some(0.3):
                document["pipe"]["bowl"] = {"holds": self.write.volume((most * self.between(15, 50) + 150) / 0.6)}
                if self.some(0.3):
                    document["pipe"]["bowl"]["whisk_needs"] = "100 ml"
            if self.some(0.3):
                document["pipe"]["pace"] = {"open_time": f"{self.chance.randint(1, max(1, most))} min", "time_per_piece": "40 s", "time_per_bag_change": "1 min"}
        if pots:
            document["pots"] = pots
        if batch:
            document["batch"] = batch

    def label(self, document, about_g):
        label = {"market": self.chance.choice(["EU", "US"])}
        way = self.chance.random()
        if way < 0.25:
            middle = about_g * self.chance.uniform(0.85, 0.95)
            label["weighed_pieces"] = [fixed(middle + self.between(-2, 2), 1) + " g" for _ in range(self.chance.randint(3, 6))]
        else:
            if way < 0.7:
                label["weight_spread"] = self.chance.choice([fixed(self.between(0.5, 3), 1) + " g", self.write.per_cent(self.between(0.5, 4))])
            if way > 0.5:
                label["pour_line_off_by"] = self.write.comma(fixed(self.between(0.5, 2), 1)) + " mm"
        document["label"] = label

    def cut_block(self):
        """A loaf or slab with upright walls and sharp edges, and how it is cut."""
        between = self.between
        if self.some(0.6):
            shape = {"kind": "block", "length": self.write.length(between(180, 260)), "width": self.write.length(between(60, 85)), "height": self.write.length(between(60, 80))}
            cut = {"bar": {"thickness": self.write.length(between(18, 32))}, "kerf": self.chance.choice(["0 mm", "0 mm", "0.8 mm", "1,5 mm"])}
        else:
            shape = {"kind": "block", "length": self.write.length(between(280, 360)), "width": self.write.length(between(200, 260)), "height": self.write.length(between(30, 45))}
            cut = {"bar": {"length": self.write.length(between(70, 85)), "width": self.write.length(between(48, 60))}, "along": self.chance.choice(["x", "y"]),
                   "kerf": self.chance.choice(["0 mm", "1 mm"])}
        for key, most in (("end_trim", 6), ("side_trim", 4), ("top_planing", 3), ("face_planing", 1)):
            if self.some(0.4):
                cut[key] = fixed(between(0, most), 1) + " mm"
        return shape, cut

    def run(self):
        write, between = self.write, self.between
        document = {"schema": "brimwright.run/2", "name": "Random run", "sell": self.chance.choice([1, 2, 5, 6, 10, 12, 24, 25, 36, 43, 48, 100]), "spoilage": write.per_cent(between(0, 8)),
                    "pour": {"mould": "main.mould.json", "formula": "base.formula.json"},
                    "losses": {"pour": {"overpour": write.per_cent(between(0, 3)), "pot": write.mass(between(5, 40)), "jugs": write.mass(between(0, 30)),
                                        "test_piece": write.mass(between(0, 60))}},
                    "scales": self.scales()}
        is_cut = self.some(0.15)
        buried = not is_cut and self.some(0.06)
        if is_cut:
            shape, document["cut"] = self.cut_block()
            document["sell"] = self.chance.choice([8, 20, 40])
        elif buried:
            shape = {"kind": "block", "length": "90 mm", "width": "60 mm", "height": "40 mm"}
        else:
            shape = self.shape()
        self.files_in_order = document
        cavity_height = self.height_of(shape)
        headspace = between(1, 8) if cavity_height > 25 else between(0.5, 3)
        if buried:
            headspace = between(5, 10)
        self.line_mm = cavity_height - headspace
        document["pour"]["line"] = {"below_brim": fixed(headspace, 1) + " mm"} if self.some(0.7) else {"depth": fixed(self.line_mm - 0.1, 1) + " mm"}
        if "depth" in document["pour"]["line"]:
            self.line_mm = float(document["pour"]["line"]["depth"].split()[0])
        wet = None
        if self.some(0.12) and not is_cut:
            wet = self.water_weighing(shape)
        self.mould("main.mould.json", shape, self.chance.randint(1, 2) if is_cut else None, wet)
        lye = self.formula("base.formula.json", "Base of chance")
        if self.some(0.2 if is_cut else 0.45):
            together = self.some(0.4)
            self.formula("topping.formula.json", "Topping of chance", self.topping_lye(lye) if together else None, between(18, 30))
            self.pipe(document)
            if is_cut:  # what is piped on a loaf is cut with it: evenly over the top, where trials alone tell it
                document["pipe"].update(trials={"weighed": [fixed(self.between(150, 400), 1) + " g"], "weigh_cup": {"holds": "120 ml", "net": "80.5 g"}})
                document["pipe"].pop("beads", None)
                document["pipe"].pop("envelope", None)
                document["cut"].pop("top_planing", None)
            if together:
                document["lye_pot"] = {}
                if self.some(0.5):
                    document["lye_pot"]["pot_tare"] = "312 g"
        if "lye_pot" not in document:
            self.solutions(document)
        laid_in = is_cut and self.some(0.4)
        if not buried and not laid_in and self.some(0.3):
            self.layers(document, self.guess_mass(shape))
        if self.some(0.25):
            self.decorations(document)
        if buried:
            self.bury(document, 90, 60)
        if laid_in:
            self.bury_in_loaf(document, shape)
        if self.some(0.5):
            mould = self.files["main.mould.json"]
            if self.some(0.2):
                document["pour"]["moulds_owned"] = self.chance.randint(1, 6)
            self.batches(document, mould["cavities"] * document["pour"].get("moulds_owned", mould.get("owned", 1)), self.guess_mass(shape))
        if self.some(0.3):
            self.label(document, 90 if is_cut else self.guess_mass(shape))
        self.bought(document)
        if self.some(0.25):
            document["dust"] = [{"name": "gold mica", "per_piece": f"{self.chance.randint(5, 60)} mg"}]
        if self.some(0.1) and any("fragrances" in d for d in self.files.values()):
            document["bottles"] = [{"name": "invented essential oil blend", "holds": write.mass(between(20, 120))}]
        self.files["chance.run.json"] = document
        return self.files

    def solutions(self, document):
        """Lye that stands ready in the studio, about as strong as makers keep it, and taken by some batters."""
        chance = random.Random(f"{self.seed}, solutions")  # of its own: all else of a run stays as it is without it
        write, ready, is_used = Writer(chance), {}, False
        for name, alkali in (("NaOH jug", "NaOH"), ("the small jug", "NaOH"), ("KOH solution 45 %", "KOH")):
            strength = chance.choice([50, 50, 45, 48.5, 40, 33.3])
            ends = strength - round(chance.uniform(0, 1), 1), strength + round(chance.uniform(0, 1.5), 1)
            ready[name] = {"alkali": alkali, "strength": write.per_cent(strength), "strength_range": [write.per_cent(end) for end in ends], "kept_at": "20 °C"}
        for part in ("pour", "pipe"):
            if part not in document or chance.random() > 0.18:
                continue
            taken = {a["alkali"] for a in self.files[document[part]["formula"]]["alkali"]}
            names = [chance.choice(["NaOH jug", "the small jug"])] if "NaOH" in taken else []
            if "KOH" in taken and (not names or chance.random() < 0.6):
                names = chance.choice([["KOH solution 45 %"], names + ["KOH solution 45 %"]])
            document[part]["lye_from"] = names[0] if len(names) == 1 and chance.random() < 0.5 else names
            is_used = True
        blends = {}
        for part in ("pour", "pipe"):
            if part in document and chance.random() < 0.15 and len(self.files[document[part]["formula"]]["fats"]) > 1:
                document[part]["blend"] = self.blend(chance, write, document[part]["formula"], blends)
        if is_used or blends:
            self.files["studio.json"] = {"schema": "brimwright.studio/1", "lye_solutions": ready, "blends": blends}

    def bought(self, document):
        """A decoration that is bought by the piece and only counted; of a chance of its own too."""
        chance = random.Random(f"{self.seed}, bought")
        if chance.random() > 0.1:
            return
        bought = {"weighs": Writer(chance).mass(round(chance.uniform(0.3, 4), 1))} if "label" in document or chance.random() < 0.6 else {}
        document.setdefault("decorations", []).append({"name": "Sugar star", "material": "sugar star", "bought": bought, "spares": f"{chance.randint(0, 12)} %",
                                                       "per_cast" if chance.random() < 0.3 else "per_piece": chance.randint(1, 3)})

    def blend(self, chance, write, formula, blends):
        """Some of a formula's fats, melted together as a maker would: about as they stand in it, or in round figures."""
        fats = self.files[formula]["fats"]
        some = chance.sample(fats, chance.randint(2, len(fats)))
        shares = [float(fat["share"].split()[0].replace(",", ".")) for fat in some]
        parts = [round(100 * s / sum(shares)) if chance.random() < 0.7 else chance.randint(5, 60) for s in shares]
        parts = [max(1, round(100 * part / sum(parts))) for part in parts]
        parts[parts.index(max(parts))] += 100 - sum(parts)
        name = f"blend for {formula}"
        blends[name] = {"fats": [{"fat": fat["fat"], "share": f"{part} %"} for fat, part in zip(some, parts)]}
        if chance.random() < 0.5:
            return name
        room = min(s / part for s, part in zip(shares, parts))  # of one
        return {"name": name, "share": write.per_cent(int(1000 * room * chance.uniform(0.2, 1)) / 10)}

    def topping_lye(self, lye):
        """The same alkalis from the same lot; as strong, or weaker."""
        alkali, water = lye
        if "lye_strength" in water and self.some(0.5):
            strength = F(water["lye_strength"].split()[0].replace(",", "."))
            water = {"lye_strength": fixed(max(F(22), strength - self.chance.randint(1, 5)), 1) + " %"}
        return alkali, water

    def cavity(self, shape):
        import second_arithmetic
        return second_arithmetic.Cavity(shape)

    def height_of(self, shape):
        return self.cavity(shape).height

    def guess_mass(self, shape):
        return self.cavity(shape).volume(self.line_mm)

    def water_weighing(self, shape):
        cavity = self.cavity(shape)
        factor = self.chance.uniform(0.96, 1.04)
        return {"temperature": "20 °C", "filled_to": "brim", "weighed_in": "each cavity",
                "weighings": [fixed(cavity.volume(cavity.height) * factor * self.chance.uniform(0.998, 1.002), 1) + " g" for _ in range(self.chance.randint(1, 3))]}
