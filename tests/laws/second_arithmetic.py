"""The arithmetic of a run, a second time and by other hands: plain Python, exact fractions for everything that is weighed.

Written from what the project promises (the batter's equation, what is rounded when and which way, what is shared by
weight) and from published closed forms, not from the program's own code. It reads the same files a maker writes
and the same published figures (src/chemistry/data), and answers with what should lie on each scale.

Where the program works in binary fractions, a value within a thousand-millionth of a whole number of steps counts as
that whole number; so it does here.
"""
import json
import math
import re
from fractions import Fraction as F
from functools import lru_cache

from second_batches import ceil_of, fillings_of, largest, split
from second_cutting import Block, CutLoaf, Rod

# ---- quantities as a maker writes them ---------------------------------------------------------------------

LENGTHS = {"mm": F(1), "cm": F(10), "m": F(1000), "in": F("25.4"), "ft": F("304.8"), "millimetres": F(1), "inches": F("25.4")}
MASSES = {"mg": F(1, 1000), "g": F(1), "kg": F(1000), "oz": F("28.349523125"), "lb": F("453.59237"), "grams": F(1), "kilograms": F(1000),
          "ounces": F("28.349523125"), "pounds": F("453.59237")}
VOLUMES = {"ml": F(1), "cl": F(10), "l": F(1000), "cm3": F(1), "fl oz": F("29.5735295625"), "tsp": F("4.92892159375"),
           "tbsp": F("14.78676478125"), "cc": F(1), "milliliters": F(1), "liters": F(1000), "teaspoon": F("4.92892159375")}
DENSITIES = {"g/ml": F(1), "g/cm3": F(1), "kg/l": F(1), "kg/m3": F(1, 1000), "g/tsp": 1 / VOLUMES["tsp"], "g per tsp": 1 / VOLUMES["tsp"]}
AREAS = {"mm2": F(1, 100), "cm2": F(1)}


@lru_cache(maxsize=100000)
def number(text):
    """"12", "0.5", "1,5", "1/2", "2 1/4", "2-1/4"."""
    text = re.sub(r"(?<=\d)-(?=\d+/\d)", " ", text.strip())
    return sum((F(part) for part in text.replace(",", ".").split()), F(0))


@lru_cache(maxsize=100000)
def quantity(text, kind):
    """The quantity in `kind`'s first unit; several parts ("1 lb 4 oz") add up."""
    units = {"length": LENGTHS, "mass": MASSES, "volume": VOLUMES, "density": DENSITIES, "area": AREAS}[kind]
    names = "|".join(sorted(map(re.escape, units), key=len, reverse=True))
    parts = re.findall(rf"([-0-9.,/ ]+?)\s*({names})(?=\s|$)", text)
    assert parts and "".join(a + b for a, b in parts).replace(" ", "") == text.replace(" ", ""), f"not a {kind}: {text}"
    return sum((number(amount) * units[unit] for amount, unit in parts), F(0))


def share(text):
    assert text.rstrip().endswith("%"), text
    return number(text.rstrip()[:-1]) / 100


def celsius(text):
    amount, unit = re.fullmatch(r"\s*(-?[0-9.,/ ]+?)\s*(?:°|degrees)?\s*([CF])", text).groups()
    return number(amount) if unit == "C" else (number(amount) - 32) * 5 / 9


def seconds(text):
    units = {"s": F(1), "min": F(60), "h": F(3600), "sec": F(1), "minutes": F(60)}
    parts = re.findall(r"([0-9.,/]+)\s*(s|min|h|sec|minutes)(?=\s|$)", text)
    assert parts and "".join(a + b for a, b in parts) == text.replace(" ", ""), f"not a time: {text}"
    return sum(number(amount) * units[unit] for amount, unit in parts)


def degrees(text):
    return float(number(re.fullmatch(r"\s*([0-9.,/ ]+?)\s*(?:°|deg)", text).group(1)))


# ---- steps of a scale --------------------------------------------------------------------------------------

AS_GOOD_AS = F(1, 10**9)  # as `whole` has it


def whole(value, way):
    value = F(value)
    over, under = value.numerator, value.denominator  # as whole numbers, which are quicker
    nearest = (2 * over + under) // (2 * under)
    if abs(over - nearest * under) * 10**9 <= max(under, abs(over)):
        return nearest
    return {"up": -(-over // under), "down": over // under, "nearest": nearest}[way]


def no_more(value, bound):
    """Not above it, as far as binary fractions tell."""
    return float(value) <= float(bound) * (1 + 1e-9)


def to_step(mass, step, way):
    return whole(F(mass) / step, way) * step


class Scales:
    """Fats, water and melt on the large scale; alkali, additives, oil for colours and powders on the fine one as long as
    it holds them."""

    def __init__(self, document):
        self.large, self.large_holds = (quantity(document["large"][k], "mass") for k in ("step", "most"))
        self.fine, self.fine_holds = (quantity(document["fine"][k], "mass") for k in ("step", "most"))

    def step_on_fine(self, mass):
        return self.fine if mass <= self.fine_holds else self.large

    def goes(self, mass):
        """How often so much is put on its scale."""
        return 1 if mass <= self.fine_holds else self.goes_on_large(mass)

    def goes_on_large(self, mass):
        return max(1, whole(F(mass) / self.large_holds, "up"))


# ---- published figures -------------------------------------------------------------------------------------


def water_density(celsius):
    """g/ml. G. S. Kell, J. Chem. Eng. Data 1975, 20, 97."""
    t = float(celsius)
    return (999.83952 + 16.945176 * t - 7.9870401e-3 * t**2 - 46.170461e-6 * t**3 + 105.56302e-9 * t**4 -
            280.54253e-12 * t**5) / (1 + 16.87985e-3 * t) / 1000


class Published:
    """What the data files say, as far as weights depend on it."""

    def __init__(self, root):
        def load(name):
            with open(f"{root}/src/chemistry/data/{name}.json", encoding="utf-8") as file:
                return json.load(file, parse_float=F, parse_int=F)

        lye = load("lye")
        weights = {k: v for k, v in lye["molar_masses_g_mol"]["atomic_weights"].items() if isinstance(v, F)}
        self.molar_mass = {"NaOH": weights["Na"] + weights["O"] + weights["H"], "KOH": weights["K"] + weights["O"] + weights["H"]}
        self.lye_coefficients = {}
        for alkali, sets in lye["density_model"]["coefficients"].items():
            self.lye_coefficients[alkali] = [float(c) for c in sets[sets["used"]]["c"]]
        self.acids = {}  # KOH that a gram takes up: protons x M(KOH) / M(acid), of a solution its share
        self.crystal_water = {}  # of a gram of a hydrate
        for acid in load("neutralisation")["acids"]:
            if "waters_of_crystallisation" in acid:
                self.crystal_water[acid["acid"]] = acid["waters_of_crystallisation"] * (2 * weights["H"] + weights["O"]) / acid["molar_mass_g_mol"]
            self.acids[acid["acid"]] = self.acids[acid["solution_of"]] * acid["mass_percent"] / 100 if "solution_of" in acid else \
                acid["acid_protons_neutralised"] * self.molar_mass["KOH"] / acid["molar_mass_g_mol"]
        warm = load("densities")["fats_temperature"]
        self.slope = float(warm["slope_g_per_ml_per_k"]["value"])
        self.lund = {k: float(v) for k, v in warm["lund_relation"].items() if isinstance(v, F)}
        self.atoms = weights
        self.koh_without_range = {k: v for k, v in lye["purity_without_range"].items() if isinstance(v, dict)}
        self.fats = {fat["id"]: Fat.published(fat, self) for fat in load("fats")["fats"]}
        liquids = load("liquids")
        self.fats["milk_fat"] = Fat.published(dict(liquids["milk_fat"], kind="triglyceride"), self)
        self.apparent = {k: float(v["value"]) for k, v in liquids["apparent_densities_g_per_ml"].items()}
        self.compositions = {c["name"]: c for c in liquids["compositions"]}
        self.substances = [(name, float(s["g_per_ml"])) for s in load("salts")["substances"] for name in s["names"]]

    def acid_mass(self, name):
        """g/mol of a fatty acid: C(n) H(2n - 2d) O(2), an oxygen more for ricinoleic acid."""
        carbons, bonds = (18, 1) if name == "ricinoleic" else map(int, re.search(r"C?(\d+):(\d+)$", name).groups())
        oxygens = 3 if name == "ricinoleic" else 2
        return carbons * self.atoms["C"] + (2 * carbons - 2 * bonds) * self.atoms["H"] + oxygens * self.atoms["O"]

    def asked_for_by_acids(self, ranges):
        """The least and the most that triglycerides of these acids take up, mg KOH/g: filled up from the heaviest acid on, or from
        the lightest, as far as ranges and a whole allow. A triglyceride weighs three acids and a glycerol less three waters."""
        ends = []
        for heaviest_first in (True, False):
            shares = {name: low / 100 for name, (low, _) in ranges.items()}
            left = 1 - sum(shares.values())
            for name in sorted(ranges, key=self.acid_mass, reverse=heaviest_first):
                more = min(left, (ranges[name][1] - ranges[name][0]) / 100)
                shares[name] += more
                left -= more
            mean = sum(shares.values()) / sum(s / self.acid_mass(name) for name, s in shares.items())
            glycerol_less_water = 3 * self.atoms["C"] + 2 * self.atoms["H"]  # C3H8O3 less 3 H2O
            ends.append(3 * 1000 * self.molar_mass["KOH"] / (3 * mean + glycerol_less_water))
        return ends

    def values_of(self, entry):
        """The least, the one reckoned with and the most of a published fat.

        The range reaches over all that was read or remembered and over what the fatty acids ask for, kept to a tenth
        outward. Reckoned with is the least of three, as too much alkali burns: the middle of the governing document's
        range, the middle of all, the most that the make-up asks for. Of a free fatty acid: the pure acid's. Of a wax that
        saponifies slowly the range reaches down to the least that its free acids take."""
        value = entry["saponification_value_mg_koh_per_g"]
        readings = value.get("readings", [value])
        first = readings[0]
        governing = [first.get("min", first.get("value")), first.get("max", first.get("value"))]
        lows = [r.get("min", r.get("value")) for r in readings]
        highs = [r.get("max", r.get("value")) for r in readings]
        low, high = min(v for v in lows + governing[:1] if v is not None), max(v for v in highs + governing[1:] if v is not None)
        if entry["kind"] == "free_fatty_acid":
            return low, governing[0], high
        most_asked = None
        if "saponifies_slowly" in entry:
            low = min(low, self.sure_of(entry))
        elif entry["kind"] == "wax_ester":
            most_asked = 1000 * self.molar_mass["KOH"] / entry["mean_molar_mass_g_mol"]["value"]
        elif "fatty_acids" in entry:
            asked_low, most_asked = self.asked_for_by_acids(entry["fatty_acids"]["ranges"])
            low = min(low, F(math.floor(asked_low * 10), 10))
            high = max(high, F(math.ceil(most_asked * 10), 10))
        choices = [sum(governing) / 2, (low + high) / 2]
        if most_asked is not None:
            choices.append(F(math.floor(most_asked * 10), 10))
        return low, min(choices), high

    @staticmethod
    def sure_of(entry):
        """What is sure to react of a wax that saponifies slowly, mg KOH/g: its free acids."""
        return entry["saponifies_slowly"]["acid_value_mg_koh_per_g"]["min"]

    def purity_range(self, alkali, purity):
        """Of a purity stated without one: for KOH some points either way, and up to what is sold at least."""
        assumed = self.koh_without_range.get(alkali)
        if not assumed:
            return purity, purity
        off = assumed["points_either_way"] / 100
        return purity - off, min(F(1), max(purity + off, assumed["reaches_at_least_percent"] / 100))

    def lye_density(self, alkali, strength, at):
        """g/ml. Laliberté and Cooper, J. Chem. Eng. Data 2004, 49, 1141."""
        c0, c1, c2, c3, c4 = self.lye_coefficients[alkali]
        w, t = float(strength), float(at)
        apparent = (c0 * w + c1) * math.exp(1e-6 * (t + c4) ** 2) / (w + c2 + c3 * t) / 1000
        return 1 / ((1 - w) / water_density(t) + w / apparent)

    def substance_density(self, name):
        """Of the longest name that stands in it by whole words, or nothing."""
        found = [(len(known), density) for known, density in self.substances
                 if re.search(rf"(?<![a-z]){re.escape(known)}(?![a-z])", name.lower())]
        return max(found)[1] if found else None


class Fat:
    def __init__(self, low, typical, high, density_at, name, sure=None):
        self.low, self.typical, self.high, self.density_at, self.name = low, typical, high, density_at, name
        self.sure = sure  # of a wax that saponifies slowly: no analysis of a lot lifts the range's low end above it

    def with_value(self, value):
        """With a lot's own value."""
        low, typical, high = value_range(value)
        return Fat(low if self.sure is None else min(low, self.sure), typical, high, self.density_at, self.name, self.sure)

    @staticmethod
    def published(entry, published):
        low, typical, high = published.values_of(entry)
        density = entry.get("molten_density", entry.get("relative_density"))
        basis = None
        if density and density["temperature_c"] is not None:
            reference = density["reference"]
            basis = 1.0 if reference.startswith("density") else next(
                (water_density(t) for t in (15.5, 20, 25) if reference.startswith(f"water at {t} °C")), None)
        if basis:
            anchor = float(density["min"] + density["max"]) / 2 * basis, float(density["temperature_c"])
        else:
            iodine = entry.get("iodine_value_g_i2_per_100g", {"min": F(0), "max": F(0)})
            anchor = Fat.by_lund(typical, (iodine["min"] + iodine["max"]) / 2, published)
        slope = float(entry["density_slope_g_per_ml_per_k"]["value"]) if basis and "density_slope_g_per_ml_per_k" in entry \
            else published.slope
        return Fat(low, typical, high, lambda t: anchor[0] + slope * (float(t) - anchor[1]), entry["name"],
                   published.sure_of(entry) if "saponifies_slowly" in entry else None)

    @staticmethod
    def by_lund(saponification, iodine, published):
        lund = published.lund
        relative = lund["constant"] + lund["per_saponification_value"] * float(saponification) + \
            lund["per_iodine_value"] * float(iodine)
        return relative * water_density(lund["temperature_c"]), lund["temperature_c"]

    @staticmethod
    def of_maker(entry, published):
        low, typical, high = value_range(entry["saponification_value"])
        if "density" in entry:
            anchor = (float(quantity(entry["density"]["low"], "density") + quantity(entry["density"]["high"], "density")) / 2,
                      float(celsius(entry["density"]["at"])))
        else:
            iodine = entry.get("iodine_value", 0)
            middle = F(str(iodine)) if not isinstance(iodine, dict) else (F(str(iodine["low"])) + F(str(iodine["high"]))) / 2
            anchor = Fat.by_lund(typical, middle, published)
        return Fat(low, typical, high, lambda t: anchor[0] + published.slope * (float(t) - anchor[1]), entry["name"])


def value_range(value):
    """One saponification value, or its range; without a typical one, the middle."""
    if not isinstance(value, dict):
        return (F(str(value)),) * 3
    low, high = F(str(value["low"])), F(str(value["high"]))
    return low, F(str(value["typical"])) if "typical" in value else (low + high) / 2, high


# ---- a formula ---------------------------------------------------------------------------------------------


class Part:
    """What goes in beside fats and lye: additive, fragrance, colour or liquid."""

    def __init__(self, entry, published, fats, at):
        self.name = entry["name"]
        self.limited = "limit" in entry  # its document sets a most: never weighed above its rate
        self.per = self.basis = self.replaces = None
        bulk = quantity(entry["bulk_density"], "density") if "bulk_density" in entry else None
        if "replaces" in entry:
            self.replaces = share(entry["replaces"].replace(" of water", ""))
        else:
            self.per, self.basis = rate(entry["rate"], bulk)
        self.water, self.fat, self.acid_koh, self.crystal_water, self.oil = F(0), None, F(0), F(0), None
        contents = 0.0
        composition = entry.get("composition")
        if isinstance(composition, str):
            shipped = published.compositions[composition]
            self.water = shipped["water"] / 100
            salt, sugar = float(shipped["salt"]) / 100, float(shipped["sugar"]) / 100
            if shipped["fat"] != "none":
                self.fat = fats[shipped["fat"]], shipped["fat_percent"] / 100
        elif composition:
            self.water = share(composition["water"])
            salt, sugar = float(share(composition["salt"])), float(share(composition["sugar"]))
            if composition["fat"] != "none":
                self.fat = fats[composition["fat"]["fat"]], share(composition["fat"]["share"])
        if composition:
            # Volumes taken as additive; what is neither water, fat, sugar nor salt counts as protein.
            fat = float(self.fat[1]) if self.fat else 0.0
            rest = 1 - float(self.water) - fat - sugar - salt
            contents = float(self.water) / water_density(20) + sugar / published.apparent["sugar"] + \
                salt / published.apparent["salt"] + rest / published.apparent["rest"] + \
                (fat / self.fat[0].density_at(20) if self.fat else 0.0)
        if isinstance(entry.get("contains_fat"), dict):
            self.fat = fats[entry["contains_fat"]["fat"]], share(entry["contains_fat"]["share"])
        if isinstance(entry.get("contains_acid"), dict):
            self.acid_koh = published.acids[entry["contains_acid"]["acid"]] * share(entry["contains_acid"]["share"])
            self.crystal_water = published.crystal_water.get(entry["contains_acid"]["acid"], F(0)) * share(entry["contains_acid"]["share"])
        if "dispersed_in" in entry:
            oil = entry["dispersed_in"]
            self.oil = oil["fat"], oil_per_colour(oil["oil_per_colour"], bulk, fats[oil["fat"]]), oil.get("from", "formula") == "extra"
        if "density" in entry:
            self.density = float(quantity(entry["density"], "density"))
        elif composition:
            self.density = 1 / contents
        else:
            self.density = published.substance_density(entry["name"]) or water_density(at)
        self.to = entry.get("goes_into", "batter")

    def extra_oil(self, powder):
        return powder * self.oil[1] if self.oil and self.oil[2] else F(0)


def oil_per_colour(said, bulk, fat):
    """Grams of oil for a gram of colour: given so, or as "1 tsp in 1 tbsp", the oil in its spoon at 20 °C."""
    if not isinstance(said, str):
        return F(str(said))
    grams = []
    for text, density in zip(said.split(" in "), (bulk, F(fat.density_at(20)))):
        amount, unit = re.fullmatch(r"([0-9.,/ -]+?)\s*([a-z ]+)", text).groups()
        grams.append(number(amount) * (MASSES[unit] if unit in MASSES else VOLUMES[unit] * density))
    return grams[1] / grams[0]


def rate(text, bulk):
    """Grams for each gram of the basis, and the basis. "ppo" is per pound of oils."""
    text = re.sub(r" ppo$", "/lb of oils", text).replace(" per ", "/")
    amount, unit, basis = re.fullmatch(r"\s*([0-9.,/ -]+?)\s*(%|g/kg|oz/lb|tsp/lb|tbsp/lb|tsp/kg) of (fats|oils|batter)", text).groups()
    amount, basis = number(amount), basis.replace("oils", "fats")
    if unit == "%":
        return amount / 100, basis
    if unit == "g/kg":
        return amount / 1000, basis
    if unit == "oz/lb":
        return amount / 16, basis
    spoon, mass = unit.split("/")
    return amount * VOLUMES[spoon] / MASSES[mass] * bulk, basis


class Formula:
    """`standing`: lye solutions that stand ready, as the studio tells of them, each weighed in place of its dry alkali.
    `blend`: fats that stand ready melted together, as the studio tells of them, and the share of all fats that is asked for, or nothing
    for as much as there is room for: it is weighed in place of what it holds of the fats."""

    def __init__(self, document, published, own_fats=(), standing=(), blend=None):
        self.published = published
        solutions = {entry["alkali"]: entry for entry in standing}
        fats = dict(published.fats)
        for entry in own_fats:
            fats[entry["id"]] = Fat.of_maker(entry, published)
        self.name = document["name"]
        self.at = celsius(document["pour_temperature"])
        self.superfat = share(document["superfat"])
        self.fats = []  # (id, fat, share)
        for entry in document["fats"]:
            fat = fats[entry["fat"]]
            if "saponification_value" in entry:
                fat = fat.with_value(entry["saponification_value"])
            self.fats.append((entry["fat"], fat, share(entry["share"])))
        self.blend = self.blend_parts = None  # its share of all fats, and what of it is each fat
        if blend:
            parts = {entry["fat"]: share(entry["share"]) for entry in blend[0]["fats"]}
            total = sum(parts.values())
            self.blend_parts = [parts.get(name, F(0)) / total for name, _, _ in self.fats]
            room = min(s / part for (_, _, s), part in zip(self.fats, self.blend_parts) if part)
            self.blend = share(blend[1]) if blend[1] else room
        self.alkalis = []  # (name, share of saponifying, purity, least and greatest purity)
        for entry in document["alkali"]:
            purity = share(entry["purity"])
            least, most = map(share, entry["purity_range"]) if "purity_range" in entry else published.purity_range(entry["alkali"], purity)
            if entry["alkali"] in solutions:  # what is weighed is so strong, and the rest of it is water
                solution = solutions[entry["alkali"]]
                purity, (least, most) = share(solution["strength"]), map(share, solution["strength_range"])
            self.alkalis.append((entry["alkali"], share(entry["share"]), purity, least, most))
        self.dissolved = [entry["alkali"] in solutions for entry in document["alkali"]]
        self.water_way, self.water_value = next(iter(document["water"].items()))
        self.water_value = F(str(self.water_value)) if self.water_way == "water_to_alkali" else share(self.water_value)
        self.parts = [Part(entry, published, fats, self.at) for list_name in ("additives", "fragrances", "colours", "liquids")
                      for entry in document.get(list_name, [])]
        self.all_fats = fats
        self.water_lost = share(document["water_lost_in_cure"]) if "water_lost_in_cure" in document else None
        measured = document.get("measured_density")
        self.measured = float(quantity(measured, "density")) if measured else None
        self.solve()

    def koh_need(self, fats, oils, parts):
        """KOH for fats less the superfat, and for acids in full; g. Linear in what it is given."""
        fat_need = sum(m * fat.typical for m, (_, fat, _) in zip(fats, self.fats))
        fat_need += sum(m * self.all_fats[p.oil[0]].typical for m, p in zip(oils, self.parts) if p.oil)
        fat_need += sum(m * p.fat[1] * p.fat[0].typical for m, p in zip(parts, self.parts) if p.fat)
        return fat_need / 1000 * (1 - self.superfat) + sum(m * p.acid_koh for m, p in zip(parts, self.parts))

    def bought(self, koh):
        """Each alkali as bought, for a need stated as KOH."""
        molar = self.published.molar_mass
        return [koh * does * molar[name] / molar["KOH"] / purity for name, does, purity, _, _ in self.alkalis]

    def pure(self, alkalis):
        return sum(m * purity for m, (_, _, purity, _, _) in zip(alkalis, self.alkalis))

    def in_solutions(self, alkalis):
        """Water that the solutions among the weighed alkalis bring."""
        return sum((m * (1 - a[2]) for m, a, dissolved in zip(alkalis, self.alkalis, self.dissolved) if dissolved), F(0))

    def as_dry(self, alkalis, plain):
        """The same lye of pure alkali and more water, where solutions were weighed."""
        return [m * a[2] if dissolved else m for m, a, dissolved in zip(alkalis, self.alkalis, self.dissolved)], plain + self.in_solutions(alkalis)

    def all_water(self, alkalis, fats):
        """The formula's water, that in liquids and solutions included."""
        if self.water_way == "lye_strength":
            return self.pure(alkalis) * (1 - self.water_value) / self.water_value
        return self.pure(alkalis) * self.water_value if self.water_way == "water_to_alkali" else fats * self.water_value

    def for_one_gram(self, batter, water):
        """What goes with one gram of fats if that made `batter` and its water were `water`."""
        parts = [p.replaces * water / p.water if p.replaces is not None else p.per * (1 if p.basis == "fats" else batter)
                 for p in self.parts]
        oils = [p.extra_oil(m) for p, m in zip(self.parts, parts)]
        alkalis = self.bought(self.koh_need([s for _, _, s in self.fats], oils, parts))
        all_water = self.all_water(alkalis, F(1))
        plain = all_water - sum(m * p.water for m, p in zip(parts, self.parts)) - self.in_solutions(alkalis)
        return parts, oils, alkalis, plain, 1 + sum(oils) + sum(alkalis) + plain + sum(parts), all_water

    def solve(self):
        """Batter and water for one gram of fats. Both equations, sum(B, W) = B and water(B, W) = W, are linear in B and W:
        three trials give the coefficients, Cramer's rule the answer."""
        def trial(batter, water):
            return self.for_one_gram(F(batter), F(water))[4:]

        (s0, w0), (sb, wb), (sw, ww) = trial(0, 0), trial(1, 0), trial(0, 1)
        a, b, c, d = 1 - (sb - s0), -(sw - s0), -(wb - w0), 1 - (ww - w0)
        determinant = a * d - b * c
        batter, water = (s0 * d - b * w0) / determinant, (a * w0 - c * s0) / determinant
        self.parts_per_gram, self.oils_per_gram, self.alkalis_per_gram, self.plain_per_gram, self.batter_per_gram, _ = \
            self.for_one_gram(batter, water)
        self.density = self.measured or self.computed_density()

    def computed_density(self):
        """Volumes taken as additive; what is impure in KOH is water, in NaOH as dense as the alkali; each alkali takes its water
        in proportion to its mass as weighed."""
        volume = sum(float(s) / fat.density_at(self.at) for _, fat, s in self.fats)
        volume += sum(float(m) / self.all_fats[p.oil[0]].density_at(self.at) for m, p in zip(self.oils_per_gram, self.parts) if p.oil)
        volume += sum(float(m) / p.density for m, p in zip(self.parts_per_gram, self.parts))
        return float(self.batter_per_gram) / (volume + self.lye_volume(self.alkalis_per_gram, self.plain_per_gram))

    def lye_volume(self, alkalis, water):
        """ml of a lye at the pour's temperature; impurities as above; `water` is what is weighed as water."""
        dry, water = self.as_dry(alkalis, water)
        bought = sum(dry)
        lye = bought + water
        return sum(float(lye * m / bought) / self.published.lye_density(name, self.dense_part(name, purity, dissolved) * bought / lye, self.at)
                   for m, (name, _, purity, *_), dissolved in zip(dry, self.alkalis, self.dissolved) if m)

    @staticmethod
    def dense_part(name, purity, dissolved):
        """What of it is as dense in the lye as alkali is: the rest of KOH is water; of a solution's pure alkali all."""
        return purity if name == "KOH" and not dissolved else 1

    def stirred_into_lye(self, parts):
        return sum(float(m) / p.density for m, p in zip(parts, self.parts) if p.to == "lye")


# ---- on the scales -----------------------------------------------------------------------------------------


class Weighing:
    """A batter weighed out: `fats`, `oils`, `alkalis`, `parts` in the formula's order and `plain` water."""

    def __init__(self, formula, to_make, scales):
        self.formula, self.scales = formula, scales
        target = F(to_make)
        self.weigh(target)
        while self.batter < to_make * (1 - AS_GOOD_AS):  # what fell short by rounding is made up by the fats
            target += scales.large
            self.weigh(target)

    def weigh(self, to_make):
        formula, scales = self.formula, self.scales
        all_fats = to_make / formula.batter_per_gram
        exact_fats = [s * all_fats for _, _, s in formula.fats]
        self.blend = None
        if formula.blend is not None:  # weighed as one, and what is left of each fat beside it
            exact_blend = formula.blend * all_fats
            self.blend = to_step(exact_blend, scales.large, "up")
            exact_fats = [m - part * exact_blend for m, part in zip(exact_fats, formula.blend_parts)]
            exact_fats = [m if m > F(1, 10**9) * all_fats else F(0) for m in exact_fats]
        self.beside = [to_step(m, scales.large, "up") for m in exact_fats]
        self.fats = self.beside if self.blend is None else [m + part * self.blend for m, part in zip(self.beside, formula.blend_parts)]
        self.fats_sum = sum(self.fats)
        exact_parts = [m * self.fats_sum for m in formula.parts_per_gram]
        self.parts = [to_step(m, scales.step_on_fine(m), "down" if p.limited else "nearest")
                      for m, p in zip(exact_parts, formula.parts)]
        exact_oils = [p.extra_oil(m) for p, m in zip(formula.parts, self.parts)]
        self.oils = [to_step(m, scales.step_on_fine(m), "nearest") for m in exact_oils]
        exact_alkalis = formula.bought(formula.koh_need(self.fats, self.oils, self.parts))
        self.alkalis = [to_step(m, scales.step_on_fine(m), "down") for m in exact_alkalis]
        self.in_liquids = sum(m * p.water for m, p in zip(self.parts, formula.parts))
        self.in_solutions = formula.in_solutions(self.alkalis)
        self.exact_plain = max(F(0), formula.all_water(self.alkalis, self.fats_sum) - self.in_liquids - self.in_solutions)
        self.plain = to_step(self.exact_plain, scales.large, "nearest")
        # Above 50 % alkali does not dissolve: the pot holds its weight of water at least; and what is dry dissolves before a
        # solution is stirred in.
        dry = sum(m * a[2] for m, a, dissolved in zip(self.alkalis, formula.alkalis, formula.dissolved) if not dissolved)
        least = max(formula.pure(self.alkalis) - self.in_solutions, dry) - sum(m * p.water for m, p in zip(self.parts, formula.parts) if p.to == "lye")
        if self.plain < least * (1 - AS_GOOD_AS):
            self.plain = to_step(least, scales.large, "up")
        self.water = self.plain + self.in_liquids + self.in_solutions
        self.batter = self.fats_sum + sum(self.parts) + sum(self.oils) + sum(self.alkalis) + self.plain
        # How coarse each was weighed, for the superfat's doubts.
        self.doubts = {"fats": [(scales.large if m else F(0), scales.goes_on_large(m)) for m in exact_fats],
                       "blend": None if self.blend is None else (self.blend, scales.large, scales.goes_on_large(exact_blend)),
                       "oils": [(scales.step_on_fine(m), scales.goes(m)) for m in exact_oils],
                       "alkalis": [(scales.step_on_fine(m), scales.goes(m)) for m in exact_alkalis],
                       "parts": [(scales.step_on_fine(m), scales.goes(m)) for m in exact_parts]}
        # Of each fat, what first takes up colours.
        self.set_aside = []
        for fat_id, _, _ in formula.fats:
            oil = sum(m * p.oil[1] for m, p in zip(formula.parts_per_gram, formula.parts) if p.oil and not p.oil[2] and p.oil[0] == fat_id)
            self.set_aside.append(to_step(oil * all_fats, scales.fine, "nearest"))


class Superfat:
    """Superfat by lye reduction of what lies on the scales: nominal, worst case and the likely band; shares of one.

    The worst case: every value at the end of its range, every weighing half a step off. The likely band: every range
    rectangular (JCGM 100:2008, 4.3.7), every doubt through half the difference it makes alone (5.1.3, note 2),
    combined by the root of the sum of squares, 1.96 times, about the middles of all ranges."""

    def __init__(self, formula, fats, oils, alkalis, parts, doubts, of_lye=()):
        """`of_lye`: how far the whole lye may be off besides, as shares of it: a share of a common pot is weighed too."""
        self.of_lye = [min(1.0, float(off)) for off in of_lye]
        self.fats = []  # (mass, low, typical, high, half a step, goes)
        molar = formula.published.molar_mass

        def add(mass, fat, doubt, of_it=F(1)):
            if mass > 0:
                self.fats.append([float(mass * of_it), float(fat.low), float(fat.typical), float(fat.high), float(doubt[0] * of_it / 2), doubt[1]])

        for mass, (_, fat, _), doubt in zip(fats, formula.fats, doubts["fats"]):
            add(mass, fat, doubt)
        self.blend = None  # how far off its weighing may be at worst, how often it is put on the scale, what of it is each fat
        if doubts.get("blend"):
            mass, step, goes = doubts["blend"]
            self.blend = float(min(step / 2 * goes, mass / 2)), goes, [float(p) for p, m in zip(formula.blend_parts, fats) if m > 0]
        for mass, part, doubt in zip(oils, formula.parts, doubts["oils"]):
            if part.oil:
                add(mass, formula.all_fats[part.oil[0]], doubt)
        for mass, part, doubt in zip(parts, formula.parts, doubts["parts"]):
            if part.fat:
                add(mass, part.fat[0], doubt, part.fat[1])
        self.alkalis = [[float(m * molar["KOH"] / molar[name]), float(least), float(purity), float(most),
                         float(step / 2 * molar["KOH"] / molar[name]), goes]
                        for m, (name, _, purity, least, most), (step, goes) in zip(alkalis, formula.alkalis, doubts["alkalis"])]
        self.acids = [[float(m * p.acid_koh), float(step / 2 * p.acid_koh), goes]
                      for m, p, (step, goes) in zip(parts, formula.parts, doubts["parts"]) if p.acid_koh]
        self.work_out()

    @staticmethod
    def value(fats, alkalis, acids):
        return 1 - (sum(m * u for m, u in alkalis) - sum(acids)) / sum(m * s / 1000 for m, s in fats)

    def work_out(self):
        fats = [(f[0], f[2]) for f in self.fats]
        alkalis = [(a[0], a[2]) for a in self.alkalis]
        acids = [a[0] for a in self.acids]
        self.nominal = self.value(fats, alkalis, acids)

        def off(mass, half_step, goes):  # a weighing is never off by more than half of what it weighs
            return min(half_step * goes, mass / 2)

        more, less = math.prod(1 + o for o in self.of_lye), math.prod(1 - o for o in self.of_lye)
        in_blend = [0.0] * len(self.fats)
        if self.blend:
            in_blend[:len(self.blend[2])] = [self.blend[0] * part for part in self.blend[2]]
        self.low = self.value([(f[0] - off(f[0], f[4], f[5]) - b, f[1]) for f, b in zip(self.fats, in_blend)],
                              [((a[0] + off(a[0], a[4], a[5])) * more, a[3]) for a in self.alkalis], [a[0] - off(a[0], a[1], a[2]) for a in self.acids])
        self.high = self.value([(f[0] + off(f[0], f[4], f[5]) + b, f[3]) for f, b in zip(self.fats, in_blend)],
                               [((a[0] - off(a[0], a[4], a[5])) * less, a[1]) for a in self.alkalis], [a[0] + off(a[0], a[1], a[2]) for a in self.acids])

        def half_difference(change):
            return abs(change(+1) - change(-1)) / 2

        def swap(items, i, item):
            return items[:i] + [item] + items[i + 1:]

        root3 = math.sqrt(3)
        ranges, scales = 0.0, 0.0
        for i, (mass, low, typical, high, half, goes) in enumerate(self.fats):
            middle, width = (low + high) / 2, (high - low) / 2 / root3
            ranges += half_difference(lambda sign: self.value(swap(fats, i, (mass, middle + sign * width)), alkalis, acids)) ** 2
            u = off(mass, half, goes) / root3 / math.sqrt(goes)
            scales += half_difference(lambda sign: self.value(swap(fats, i, (mass + sign * u, typical)), alkalis, acids)) ** 2
        for i, (mass, least, purity, most, half, goes) in enumerate(self.alkalis):
            middle, width = (least + most) / 2, (most - least) / 2 / root3
            ranges += half_difference(lambda sign: self.value(fats, swap(alkalis, i, (mass, middle + sign * width)), acids)) ** 2
            u = off(mass, half, goes) / root3 / math.sqrt(goes)
            scales += half_difference(lambda sign: self.value(fats, swap(alkalis, i, (mass + sign * u, purity)), acids)) ** 2
        for i, (mass, half, goes) in enumerate(self.acids):
            u = off(mass, half, goes) / root3 / math.sqrt(goes)
            scales += half_difference(lambda sign: self.value(fats, alkalis, swap(acids, i, mass + sign * u))) ** 2
        if self.blend:
            u = 1 / root3 / math.sqrt(self.blend[1])
            scales += half_difference(lambda sign: self.value([(m + sign * u * b, s) for (m, s), b in zip(fats, in_blend)], alkalis, acids)) ** 2
        for o in self.of_lye:
            u = o / root3
            scales += half_difference(lambda sign: self.value(fats, [(m * (1 + sign * u), p) for m, p in alkalis], acids)) ** 2
        centre = self.value([(f[0], (f[1] + f[3]) / 2) for f in self.fats], [(a[0], (a[1] + a[3]) / 2) for a in self.alkalis], acids)
        half_width = 1.96 * math.sqrt(ranges + scales)
        self.likely_low = min(self.nominal, max(self.low, centre - half_width))
        self.likely_high = max(self.nominal, min(self.high, centre + half_width))


def superfat_of(weighing):
    return Superfat(weighing.formula, weighing.fats, weighing.oils, weighing.alkalis, weighing.parts, weighing.doubts)


# ---- cavities ----------------------------------------------------------------------------------------------


class Cavity:
    """A cavity's height in mm and its contents in ml below a depth, by closed forms."""

    def __init__(self, shape):
        kind = shape["kind"]

        def mm(key):
            return float(quantity(shape[key], "length"))

        self.height = mm("height") if "height" in shape else None
        self.factor = 1.0
        lean = math.tan(math.radians(degrees(shape["draft"]))) if "draft" in shape else 0.0
        if kind == "block":
            length, width, radius = mm("length"), mm("width"), mm("corner_radius") if "corner_radius" in shape else 0.0
            # The walls' true offset: sides by d each, the corners' radius by d until it is gone.
            self.drafted(lean, length * width, 2 * (length + width), 4.0, radius)
        elif kind == "frustum":
            self.turned([(mm("floor_diameter") / 2, 0.0), (mm("brim_diameter") / 2, self.height)])
        elif kind == "fluted_cup":
            self.turned([(mm("floor_diameter") / 2, 0.0), (mm("brim_diameter") / 2, self.height)])
            wave = mm("flute_depth") / mm("brim_diameter")
            # The mean of (1 + a cos)^2 round the circle.
            self.factor = 1 + wave * wave / 2
        elif kind == "polygon":
            n, inner = shape["sides"], mm("across_flats") / 2
            self.drafted(lean, n * inner**2 * math.tan(math.pi / n), 2 * n * inner * math.tan(math.pi / n), n * math.tan(math.pi / n))
        elif kind == "outline":
            self.outline(lean, [(float(quantity(p["x"], "length")), float(quantity(p["y"], "length"))) for p in shape["points"]])
        elif kind == "turned_profile":
            points = [(float(quantity(p["radius"], "length")), float(quantity(p["height"], "length"))) for p in shape["points"]]
            self.height = points[-1][1] - points[0][1]
            self.turned([(r, h - points[0][1]) for r, h in points])
        elif kind in ("dome", "ball", "half_ball"):
            a = mm("diameter") / 2
            b = self.height if kind == "dome" else a
            self.height = 2 * a if kind == "ball" else b
            self.below = lambda h: math.pi * (a / b) ** 2 * h * h * (b - h / 3) / 1000
        elif kind == "half_ring":
            ring, tube = mm("centre_diameter") / 2, mm("tube_diameter") / 2
            self.height = tube

            def below(h):  # Pappus: the segment of the tube's circle, once round
                half_angle = math.acos((tube - h) / tube)
                return 2 * math.pi * ring * tube**2 * (half_angle - math.sin(half_angle) * math.cos(half_angle)) / 1000
            self.below = below
        elif kind == "turned_ring":
            cup = [(mm("outer_floor_diameter") / 2, 0.0), (mm("outer_brim_diameter") / 2, self.height)]
            post = [(mm("post_floor_diameter") / 2, 0.0), (mm("post_brim_diameter") / 2, self.height)]
            self.below = lambda h: turned_below(cup, h) - turned_below(post, h)
        elif kind == "heart":
            side = mm("side")
            # Tip: cot 45° = 1. Two half circles: pi. The notch, an inward corner of 270°, is rounded off by the
            # offset: a quarter disc less.
            self.drafted(lean, side**2 * (1 + math.pi / 4), side * (2 + math.pi), 1 + math.pi - math.pi / 4)
        else:
            raise AssertionError(kind)

    def below(self, h):
        raise AssertionError("no closed form")

    def drafted(self, lean, area, perimeter, corners, radius=0.0):
        """Walls leaning outward: at the depth h the outline has moved inward by d = (height - h) lean, and holds
        area - perimeter d + corners d^2; rounded corners of the brim miss (4 - pi)(radius - d)^2 while that lasts."""
        def below(h):
            # Integrals from the brim down, over the offset d, or straight up for upright walls.
            if lean == 0:
                return (area - (4 - math.pi) * radius**2) * h / 1000
            def from_brim(depth_below_brim):
                d = depth_below_brim * lean
                rounded = radius**3 - max(0.0, radius - d) ** 3
                return (area * d - perimeter * d**2 / 2 + corners * d**3 / 3 - (4 - math.pi) * rounded / 3) / lean
            return (from_brim(self.height) - from_brim(self.height - h)) / 1000
        self.below = below

    def turned(self, points):
        self.below = lambda h: turned_below(points, h)

    def outline(self, lean, points):
        """Shoelace, perimeter, and for each corner cot(half the interior angle)."""
        n = len(points)
        area = sum(points[i][0] * points[(i + 1) % n][1] - points[(i + 1) % n][0] * points[i][1] for i in range(n)) / 2
        if area < 0:
            points, area = points[::-1], -area
        perimeter = sum(math.dist(points[i], points[(i + 1) % n]) for i in range(n))
        corners = 0.0
        for i in range(n):
            (ax, ay), (bx, by), (cx, cy) = points[i - 1], points[i], points[(i + 1) % n]
            turn = math.atan2((bx - ax) * (cy - by) - (by - ay) * (cx - bx), (bx - ax) * (cx - bx) + (by - ay) * (cy - by))
            corners += math.tan(turn / 2)
        self.drafted(lean, area, perimeter, corners)

    def volume(self, h):
        return self.factor * self.below(h)


def turned_below(points, h):
    """Cone frusta, one on another, up to the depth h; ml."""
    total = 0.0
    for (r0, h0), (r1, h1) in zip(points, points[1:]):
        if h <= h0 or h1 <= h0:
            continue
        top = min(h, h1)
        r = r0 + (r1 - r0) * (top - h0) / (h1 - h0)
        total += math.pi * (top - h0) * (r0 * r0 + r0 * r + r * r) / 3
    return total / 1000


class Mould:
    def __init__(self, document, owned=None):
        """`owned`: how many of it, where a run says so itself."""
        self.name = document["name"]
        self.cavities = document["cavities"] * (owned or document.get("owned", 1))
        self.cavity = Cavity(document["shape"])
        water = document.get("water")
        if water:  # the referee: it scales the whole curve
            weighed = sum(quantity(m, "mass") for m in water["weighings"]) / len(water["weighings"])
            volume = float(weighed) / water_density(celsius(water["temperature"]))
            if water["weighed_in"] == "all cavities":
                volume /= document["cavities"]
            depth = self.cavity.height if water["filled_to"] == "brim" else self.depth_of(water["filled_to"])
            self.cavity.factor *= volume / self.cavity.volume(depth)

    def depth_of(self, level):
        if "depth" in level:
            return float(quantity(level["depth"], "length"))
        return self.cavity.height - float(quantity(level["below_brim"], "length"))


# ---- a run -------------------------------------------------------------------------------------------------


def mean(values):
    return sum(values) / len(values)


def opening_area(tip):
    """mm2 of a tip's opening: a circle; a star of n points, 2n triangles to the middle; an outline."""
    if "round" in tip:
        return math.pi * float(quantity(tip["round"]["radius"], "length")) ** 2
    if "star" in tip:
        star = tip["star"]
        outer, inner = (float(quantity(star[k], "length")) for k in ("outer_radius", "inner_radius"))
        return star["points"] * outer * inner * math.sin(math.pi / star["points"])
    points = [(float(quantity(p["x"], "length")), float(quantity(p["y"], "length"))) for p in tip["outline"]]
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(points, points[1:] + points[:1]))) / 2


def laid_by(move, section):
    """ml that one move lays down."""
    def mm(key):
        return float(quantity(move[key], "length"))

    kind = move["move"]
    if kind == "dollop":
        return math.pi * mm("diameter") ** 2 * mm("height") / 6 / 1000
    if kind == "ring":
        return section * 2 * math.pi * mm("radius") / 1000
    if kind == "tail":
        return section * mm("length") / 3 / 1000
    if kind == "dots":
        return move["count"] * section * mm("height") * 2 / 3 / 1000
    if kind == "shells":
        return move["count"] * section * mm("length") / 2 / 1000
    if kind == "bead":
        return section * mm("length") / 1000
    # A conical spiral's length: the integral over the angle of sqrt(rise'^2 + radius'^2 + radius^2), by Simpson's rule.
    angle = 2 * math.pi * move["turns"]
    start, end, rise = mm("start_radius"), mm("end_radius"), mm("rise")
    steps = 400

    def speed(t):
        return math.sqrt((rise / angle) ** 2 + ((end - start) / angle) ** 2 + (start + (end - start) * t / angle) ** 2)
    length = sum((1 if i in (0, steps) else 4 if i % 2 else 2) * speed(angle * i / steps) for i in range(steps + 1)) * angle / steps / 3
    return section * length / 1000


class Batch:
    """What is mixed, poured, whipped and piped in one go."""

    def weighings(self):
        return [self.pour] + [whipping.weighing for whipping in self.whippings]


class Whipping:
    """One go at the bowl: `casts` of them, weighed, whipped and piped, with its own bag."""

    def __init__(self, casts, weighing, in_pieces, lost, loads, topping):
        self.casts, self.weighing, self.in_pieces, self.lost, self.loads, self.topping = casts, weighing, in_pieces, lost, loads, topping
        self.usable = weighing.batter - lost
        self.casts_now = None if topping.now is None else max(0, whole(self.usable / (topping.volume * topping.now), "down"))

    def is_caught(self):
        """The whisk reaches it: its plain volume is not below what the whisk catches."""
        least = self.topping.whisk_catches
        return least is None or no_more(least, float(self.weighing.batter) / self.topping.formula.density)


class Topping:
    """What is whipped and piped on each cast; `whipping(m)` weighs it for m of them."""

    def __init__(self, pipe, losses, formula, recess, scales, files, tips):
        self.pipe, self.losses, self.formula, self.scales = pipe, losses, formula, scales
        self.cup = quantity(pipe["whip"]["net"], "mass") / quantity(pipe["whip"]["holds"], "volume")
        self.visible = self.visible_topping(pipe, files, tips)
        self.in_recess = float(share(pipe["fills_headspace"])) * recess
        self.volume_each = self.visible + self.in_recess
        self.volume = F(self.volume_each)
        self.mass_each = F(self.volume_each * float(self.cup))
        self.now = None
        if "whip_now" in pipe:
            self.now = quantity(pipe["whip_now"]["net"], "mass") / quantity(pipe["whip_now"]["holds"], "volume")
        bowl = pipe.get("bowl", {})
        self.bowl = quantity(bowl["holds"], "volume") if bowl else None
        self.whisk_catches = quantity(bowl["whisk_needs"], "volume") if "whisk_needs" in bowl else None
        self.whipping = lru_cache(maxsize=None)(self.whipped)

    def whipped(self, casts):
        losses, in_pieces = self.losses, casts * self.mass_each
        stays = sum(quantity(losses[k], "mass") for k in ("bag", "bowl_and_whisk", "tip") if k in losses)
        change = quantity(losses["each_bag_change"], "mass") if "each_bag_change" in losses else F(0)
        if "bag_holds" not in self.pipe:
            return Whipping(casts, Weighing(self.formula, in_pieces + stays, self.scales), in_pieces, stays, None, self)
        bag, loads = quantity(self.pipe["bag_holds"], "volume"), 1
        while True:  # a change of bag loses some, and what is weighed is more, which may itself take another load
            lost = stays + (loads - 1) * change
            weighing = Weighing(self.formula, in_pieces + lost, self.scales)
            needed = max(1, whole(weighing.batter / self.cup / bag, "up"))
            if needed <= loads:
                return Whipping(casts, weighing, in_pieces, lost, loads, self)
            loads = needed

    def most_casts(self, cavities):
        """Of one whipping: by the bowl, at most 60 % full, and by the time that the whipped batter stays open."""
        most = {}
        if self.bowl:
            most["bowl"] = largest(lambda m: float(self.whipping(m).weighing.batter / self.cup), float(F(6, 10) * self.bowl), cavities)
        pace = self.pipe.get("pace")
        if pace:
            open_s, each, change = (float(seconds(pace[k])) if k in pace else 0.0 for k in ("open_time", "time_per_piece", "time_per_bag_change"))
            most["open time"] = largest(lambda m: m * each + ((self.whipping(m).loads or 1) - 1) * change, open_s, cavities)
        return most

    @staticmethod
    def visible_topping(pipe, files, tips):
        """ml above the foot: weighed trials outrank beads, beads an envelope."""
        if "trials" in pipe:
            trials = pipe["trials"]
            if "volume_each" in trials:  # known better than by the trials
                return float(quantity(trials["volume_each"], "volume"))
            cup = quantity(trials["weigh_cup"]["net"], "mass") / quantity(trials["weigh_cup"]["holds"], "volume")
            return float(mean([quantity(m, "mass") for m in trials["weighed"]]) / cup)
        if "beads" in pipe:
            beads = pipe["beads"]
            tip = beads["tip"]
            if isinstance(tip, str):
                own = files[beads["own_tips"]]["tips"] if "own_tips" in beads else []
                tip = next(t for t in own + tips if t["name"] == tip)
            section = opening_area(tip) * beads["bead_to_opening"]
            return tip.get("hand", {}).get("correction", 1) * sum(laid_by(move, section) for move in beads["moves"])
        envelope = pipe["envelope"]
        diameter, height = (float(quantity(envelope[k], "length")) for k in ("diameter", "height"))
        hull = math.pi * diameter**2 * height / (12 if envelope["form"] == "cone" else 6) / 1000
        return float(share(envelope["soap_share"])) * hull


class Run:
    """Everything that is weighed for a run. `files` gives the document of each file the run names."""

    def __init__(self, document, files, published, tips):
        self.document = document
        self.scales = Scales(document["scales"])

        def formula(batter):
            name, studio = batter["formula"], files.get("studio.json", {})
            own = files[files[name]["own_fats"]]["fats"] if "own_fats" in files[name] else ()
            taken = batter.get("lye_from", [])
            solutions = [studio["lye_solutions"][n] for n in ([taken] if isinstance(taken, str) else taken)]
            blend = batter.get("blend")
            if blend:
                blend = {"name": blend} if isinstance(blend, str) else blend
                blend = studio["blends"][blend["name"]], blend.get("share")
            return Formula(files[name], published, own, solutions, blend)

        pour = document["pour"]
        self.mould = Mould(files[pour["mould"]], pour.get("moulds_owned"))
        cavity = self.mould.cavity
        self.base = formula(pour)
        self.line = self.mould.depth_of(pour["line"])
        self.displaced = sum(self.displaced_by(d, files) for d in document.get("decorations", []))
        self.volume_each = cavity.volume(self.line) - self.displaced
        self.brimful = cavity.volume(cavity.height)
        self.recess = self.brimful - cavity.volume(self.line)
        self.cut = self.cut_up(document["cut"], files[pour["mould"]]["shape"]) if "cut" in document else None

        self.spoilage = share(document["spoilage"])
        self.per_cast = self.cut.columns * self.cut.rows if self.cut else 1
        self.losses = document["losses"]
        self.mass_each = F(self.volume_each * self.base.density)
        self.layer_volumes = self.divide(pour.get("layers", []))
        self.whippings_each, self.topping = document.get("batch", {}).get("whippings", 1), None
        if "pipe" in document:
            self.topping = Topping(document["pipe"], self.losses["pipe"], formula(document["pipe"]), self.recess, self.scales, files, tips)
        self.shared = "lye_pot" in document
        self.batch_of = lru_cache(maxsize=None)(self.mixed)
        self.weigh_base = lru_cache(maxsize=None)(self.weighed_base)

        self.most = self.most_casts()
        self.pieces = self.count(document["sell"])
        self.fillings = fillings_of(self.pieces["casts"], self.mould.cavities, min(self.most.values()))
        self.refusal = self.why_not()
        if self.refusal:
            return
        self.pieces["batches"] = sum(map(len, self.fillings))
        self.batches = [self.batch_of(casts) for filling in self.fillings for casts in filling]
        self.decorations = [self.decoration(d, files) for d in document.get("decorations", [])]
        self.dust = [(d["name"], sum(self.dust_of(d, batch) for batch in self.batches)) for d in document.get("dust", [])]
        self.bottles = [self.share_bottle(b) for b in document.get("bottles", [])]
        self.bars = self.bars_of(files) if self.cut else []

    # -- counting

    def count(self, sell):
        """Pieces and casts; with "fill": "full" every filling fills all cavities, and what is beyond the need goes to stock."""
        needed = whole(sell / (1 - self.spoilage), "up")
        casts, cavities = ceil_of(needed, self.per_cast), self.mould.cavities
        fillings, make = ceil_of(casts, cavities), needed
        if self.document.get("batch", {}).get("fill") == "full":
            casts = fillings * cavities
            make = casts * self.per_cast
        return {"sell": sell, "make": make, "per_cast": self.per_cast, "casts": casts, "cavities": cavities, "fillings": fillings,
                "to_stock": casts * self.per_cast - needed}

    def most_casts(self):
        """The most casts that one batch may have, by each limit that the run states."""
        most = {"cavities": self.mould.cavities}
        wish = self.document.get("batch", {})
        if "pieces" in wish:
            most["wish"] = wish["pieces"] // self.per_cast
        if "casts" in wish:
            most["wish"] = wish["casts"]
        pots, cavities = self.document.get("pots", {}), self.mould.cavities
        if "holds" in pots:
            most["pot"] = largest(self.base_volume, float(F(2, 3) * quantity(pots["holds"], "volume")), cavities)
        if "lye_jug" in pots:
            most["lye jug"] = largest(lambda n: max(self.lye_volumes(n)), float(quantity(pots["lye_jug"], "volume") / 2), cavities)
        if self.topping:
            for what, casts in self.topping.most_casts(cavities).items():
                most[what] = casts * self.whippings_each
        return most

    def base_volume(self, casts):
        """ml of the base batter as weighed, at its plain density."""
        return float(self.weigh_base(casts).batter) / self.base.density

    def lye_volumes(self, casts):
        """ml of each lye that a batch makes: the base's and each whipping's, or the common pot's."""
        if self.shared:  # what a batter takes into its lye besides goes into its share
            pot = self.batch_of(casts).lye_pot
            return [self.base.lye_volume(pot["alkalis"], pot["water"])]
        lyes = [self.weigh_base(casts)]
        if self.topping:
            lyes += [self.topping.whipping(m).weighing for m in split(casts, self.whippings_each) if m]
        return [w.formula.lye_volume(w.alkalis, w.plain) + w.formula.stirred_into_lye(w.parts) for w in lyes]

    def why_not(self):
        """Why the run cannot be made so, in a word, or nothing."""
        if self.fillings is None:
            return "nothing fits"
        for casts in {casts for filling in self.fillings for casts in filling}:
            if self.topping and casts < self.whippings_each:
                return "a whipping without a piece"
            batch = self.batch_of(casts)
            for weighing in batch.weighings():
                if any(m == 0 for m, a in zip(weighing.alkalis, weighing.formula.alkalis) if a[1] > 0):
                    return "scale"
                if superfat_of(weighing).nominal < 0:
                    return "superfat"
            if batch.lye_pot and (min(batch.lye_pot["shares"]) == 0 or min(s.nominal for s in batch.lye_pot["superfats"]) < 0):
                return "superfat"
            if any(not whipping.is_caught() for whipping in batch.whippings):
                return "whisk"
        return None

    # -- one batch

    def weighed_base(self, casts):
        losses = self.losses["pour"]
        to_make = casts * self.mass_each * (1 + share(losses["overpour"])) + sum(quantity(losses[k], "mass") for k in ("pot", "jugs", "test_piece"))
        return Weighing(self.base, to_make, self.scales)

    def mixed(self, casts):
        batch = Batch()
        batch.casts = casts
        batch.pour = self.weigh_base(casts)
        batch.in_pieces = casts * self.mass_each
        batch.layers = self.jugs(batch)
        batch.whippings = [self.topping.whipping(m) for m in split(casts, self.whippings_each)] if self.topping else []
        batch.lye_pot = self.share_lye(batch) if self.shared else None
        return batch

    def pieces_of(self, batch):
        return batch.casts * self.per_cast

    def dust_of(self, dust, batch):
        return to_step(self.pieces_of(batch) * quantity(dust["per_piece"], "mass"), self.scales.fine, "up")

    # -- layers

    def divide(self, layers):
        """ml of each layer in one cavity, lowest first."""
        if not layers:
            return []
        cavity, poured = self.mould.cavity, self.volume_each
        ends = []
        if any("parts" in layer for layer in layers):
            all_parts = sum(F(str(layer["parts"])) for layer in layers)
            so_far = F(0)
            for layer in layers:
                so_far += F(str(layer["parts"]))
                ends.append(float(so_far / all_parts) * poured)
        elif any("mass" in layer for layer in layers):
            said = [float(quantity(layer["mass"], "mass")) if "mass" in layer else None for layer in layers]
            each = poured * self.base.density
            left = each - sum(m for m in said if m is not None)
            said = [left if m is None else m for m in said]
            ends = [sum(said[:i + 1]) / sum(said) * poured for i in range(len(said))]
        else:
            said = [float(quantity(layer["depth"], "length")) if "depth" in layer else None for layer in layers]
            left = self.line - sum(d for d in said if d is not None)
            said = [left if d is None else d for d in said]
            ends = [cavity.volume(sum(said[:i + 1]) / sum(said) * self.line) for i in range(len(said))]
        ends[-1] = poured
        return [end - start for start, end in zip([0.0] + ends, ends)]

    def jugs(self, batch):
        """(name, volume in one cavity, mass in one cavity, mass in the jug, colours), lowest first. A jug holds what goes into the
        pieces and its own residue; the running sums are rounded down, so that no jug is off by a step and all together hold no
        more than there is."""
        layers, losses, answer = self.document["pour"].get("layers", []), self.losses["pour"], []
        fats_of_batter = batch.pour.fats_sum / batch.pour.batter
        exact, sum_so_far = F(0), F(0)
        for layer, volume in zip(layers, self.layer_volumes):
            mass_each = F(volume * self.base.density)
            exact += batch.casts * mass_each * (1 + share(losses["overpour"])) + quantity(losses["jugs"], "mass") / len(layers)
            running = to_step(exact, self.scales.large, "down")
            mass, sum_so_far = running - sum_so_far, running
            colours = []
            for colour in layer.get("colours", []):
                bulk = quantity(colour["bulk_density"], "density") if "bulk_density" in colour else None
                per, basis = rate(colour["rate"], bulk)
                dose = per * mass * (fats_of_batter if basis == "fats" else 1)
                colours.append((colour["name"], to_step(dose, self.scales.step_on_fine(dose), "nearest")))
            answer.append((layer["name"], volume, mass_each, mass, colours))
        return answer

    def displaced_by(self, decoration, files):
        """ml of what is buried in one cast, all of it below the pour line."""
        if "buried" not in decoration:
            return 0.0
        return len(decoration["buried"]["places"]) * self.cast_volume(decoration, files)

    # -- decorations

    def cast_volume(self, decoration, files):
        """ml of one decoration; two halves make one."""
        if "rod" in decoration:
            rod = decoration["rod"]
            return math.pi / 4 * float(quantity(rod["diameter"], "length")) ** 2 * float(quantity(rod["length"], "length")) / 1000
        if "drizzle" in decoration:
            drizzle = decoration["drizzle"]
            return float(quantity(drizzle["area"], "area")) * float(quantity(drizzle["thickness"], "length")) / 10
        mould = Mould(files[decoration["mould"]])
        return mould.cavity.volume(mould.depth_of(decoration["fill"])) * (2 if decoration["cast_as"] == "two halves" else 1)

    def decoration(self, decoration, files):
        needed = self.pieces["make"] * decoration["per_piece"] if "per_piece" in decoration else self.pieces["casts"] * decoration["per_cast"]
        casts = whole(needed * (1 + share(decoration["spares"])), "up")
        if "bought" in decoration:  # only counted
            weighs = quantity(decoration["bought"]["weighs"], "mass") if "weighs" in decoration["bought"] else None
            return {"casts": casts, "cavity_fills": 0, "tray_fills": 0, "volume_each_ml": 0, "mass_each_g": weighs, "make_g": F(0)}
        each = self.cast_volume(decoration, files)
        fills, trays = casts, 1
        if "mould" in decoration:
            fills = casts * (2 if decoration["cast_as"] == "two halves" else 1)
            trays = Mould(files[decoration["mould"]], decoration.get("moulds_owned")).cavities
        tray_fills = 1 if "drizzle" in decoration else -(-fills // trays)
        mass_each = F(each * float(quantity(decoration["density"], "density")))
        melt = (casts * mass_each + tray_fills * quantity(decoration["left_in_jug"], "mass")) / (1 - share(decoration["melt_loss"]))
        return {"casts": casts, "cavity_fills": fills, "tray_fills": tray_fills, "volume_each_ml": each, "mass_each_g": mass_each,
                "make_g": to_step(melt, self.scales.large, "up")}

    # -- cut

    def cut_up(self, cut, shape):
        """Of a block with upright walls and sharp edges."""
        def mm(key):
            return quantity(cut[key], "length") if key in cut else F(0)

        length, width = quantity(shape["length"], "length"), quantity(shape["width"], "length")
        long_axis = "y" if width > length else "x"
        line, bar = F(self.line), {key: quantity(cut["bar"][key], "length") for key in cut["bar"]}
        if "thickness" in bar:
            along = cut.get("along", long_axis)
            return CutLoaf(length, width, line, mm("top_planing"), along, (mm("end_trim"), bar["thickness"], mm("kerf"), mm("face_planing")),
                           (mm("side_trim"), None, mm("kerf"), F(0)))
        # A slab's ends are those of its longer side.
        along_long, along_short = (bar["length"], bar["width"]) if cut["along"] == long_axis else (bar["width"], bar["length"])
        return CutLoaf(length, width, line, mm("top_planing"), long_axis, (mm("end_trim"), along_long, mm("kerf"), mm("face_planing")),
                       (mm("side_trim"), along_short, mm("kerf"), mm("face_planing")))

    def embeds(self, files):
        """(embed, density) of what is buried in one cast, where its form and pose have a closed form here."""
        found = []
        for decoration in self.document.get("decorations", []):
            for place in decoration["buried"]["places"] if "buried" in decoration else []:
                x, y, foot = (quantity(place[key], "length") for key in ("x", "y", "height"))
                if "rod" in decoration:
                    rod = decoration["rod"]
                    axis = "y" if place.get("turn", {}).get("z") == "90 deg" else "x"
                    embed = Rod(quantity(rod["diameter"], "length"), quantity(rod["length"], "length"), axis, x, y, foot)
                else:
                    block = files[decoration["mould"]]["shape"]
                    embed = Block([quantity(block[key], "length") for key in ("length", "width", "height")], x, y, foot)
                found.append((embed, float(quantity(decoration["density"], "density"))))
        return found

    def bars_of(self, files):
        """Of each bar: ml of it in the loaf, ml of each layer's batter in it, ml of the embeds in it, and g of embeds."""
        answer = []
        embeds = self.embeds(files)
        for box in self.cut.bars():
            (x0, x1), (y0, y1), (_, top) = box
            floor = float((x1 - x0) * (y1 - y0)) / 1000
            inside = [(embed.within(box), density) for embed, density in embeds]
            levels, layers = 0.0, []
            for volume in self.layer_volumes or [self.volume_each + self.displaced]:
                # In upright walls a layer is as high as its volume says.
                low, levels = levels, levels + 1000 * volume / float(self.cut.area)
                layers.append(floor * max(0.0, min(float(top), levels) - low))
            if len(layers) == 1:
                layers[0] -= sum(ml for ml, _ in inside)
            answer.append((float(x1 - x0) * float(y1 - y0) * float(top) / 1000, layers, sum(ml for ml, _ in inside),
                           sum(ml * density for ml, density in inside)))
        return answer

    # -- what a piece weighs, and its label

    @staticmethod
    def kept(formula, weighings):
        """Of a fresh batter, the share that is left after the cure, or nothing where its formula does not say: dry matter, and of
        the water what is not lost; of several batches the least."""
        if formula.water_lost is None:
            return None

        def water_share(weighing):
            return (weighing.water + sum(m * p.crystal_water for m, p in zip(weighing.parts, formula.parts))) / weighing.batter
        return 1 - float(formula.water_lost * max(map(water_share, weighings)))

    def colours_in_cast(self):
        """g of each layer's colours in one cast: what went into what is left in the jugs is none of it."""
        answer = []
        for jugs in zip(*(batch.layers for batch in self.batches)):
            mass_each, in_jugs = jugs[0][2], sum(jug[3] for jug in jugs)
            answer.append(float(sum(grams for jug in jugs for _, grams in jug[4]) * mass_each / in_jugs) if in_jugs else 0.0)
        return answer

    def set_on_bar(self, share_of_top):
        """g that a bar surely carries: what is set on each bar, dust too; of a drizzle over the whole loaf its share of the top; of what
        else is set on the loaf, without a place, nothing."""
        on_it = sum(float(quantity(dust["per_piece"], "mass")) for dust in self.document.get("dust", []))
        for decoration, mine in zip(self.document.get("decorations", []), self.decorations):
            if "per_piece" in decoration and "buried" not in decoration:
                on_it += float(decoration["per_piece"] * (mine["mass_each_g"] or 0))
            elif "drizzle" in decoration:
                on_it += share_of_top * float(decoration["per_cast"] * (mine["mass_each_g"] or 0))
        return on_it

    def weights(self):
        """(fresh g, cured g, cured g that a millimetre of the pour line is worth) of each bar, or of the one kind of piece; nothing
        for cured where a formula does not say what water it loses."""
        base = self.kept(self.base, [b.pour for b in self.batches])
        topping = self.kept(self.topping.formula, [w.weighing for b in self.batches for w in b.whippings]) if self.topping else 0.0
        density, colours = self.base.density, self.colours_in_cast()

        def piece(batter, colour, rest, topped, worth):
            fresh = batter + colour + topped + rest
            if base is None or topping is None:
                return fresh, None, None
            return fresh, base * batter + colour + topping * topped + rest, base * density * worth

        if not self.cut:
            h, e = self.line, 1e-4
            worth = (self.mould.cavity.volume(h) - self.mould.cavity.volume(h - e)) / e
            rest = sum(float((d["per_piece"] if "per_piece" in d else d["per_cast"]) * (mine["mass_each_g"] or 0))
                       for d, mine in zip(self.document.get("decorations", []), self.decorations))
            rest += sum(float(quantity(d["per_piece"], "mass")) for d in self.document.get("dust", []))
            return [piece(float(self.mass_each), sum(colours), rest, float(self.topping.mass_each) if self.topping else 0.0, worth)]
        bars = []
        for (x, y, _), (_, layers, _, embedded) in zip(self.cut.bars(), self.bars):
            area = (x[1] - x[0]) * (y[1] - y[0])
            colour = sum(grams * ml / volume for grams, ml, volume in zip(colours, layers, self.layer_volumes))
            share_of_top = float(area / self.cut.area)
            topped = share_of_top * float(self.topping.mass_each) if self.topping else 0.0
            bars.append(piece(density * sum(layers), colour, embedded + self.set_on_bar(share_of_top), topped, float(area) / 1000))
        return bars

    def lightest(self):
        """(lightest, mean) g to believe in: of pieces weighed, the mean less three standard deviations or the lightest of them; of a
        reckoned weight, the lightest bar's, less all that the spread says; less half a step of the scale that holds it as reckoned."""
        label = self.document["label"]
        if "weighed_pieces" in label:
            weighed = [float(quantity(m, "mass")) for m in label["weighed_pieces"]]
            middle = mean(weighed)
            deviation = math.sqrt(sum((m - middle) ** 2 for m in weighed) / (len(weighed) - 1))
            reckoned = mean([piece[0] if piece[1] is None else piece[1] for piece in self.weights()])
            return min(min(weighed), middle - 3 * deviation) - float(self.scales.step_on_fine(reckoned)) / 2, middle
        pieces = self.weights()
        if pieces[0][1] is None:
            return None

        _, cured, worth = min(pieces, key=lambda piece: piece[1])
        spread = label.get("weight_spread", "0 g")
        lost = cured * float(share(spread)) if spread.rstrip().endswith("%") else float(quantity(spread, "mass"))
        low_line = worth * float(quantity(label["pour_line_off_by"], "length")) if "pour_line_off_by" in label else 0.0
        return cured - lost - low_line - float(self.scales.step_on_fine(cured)) / 2, mean([piece[1] for piece in pieces]) + self.somewhere_on_bar()

    def somewhere_on_bar(self):
        """g in the mean of what is set on the loaf without a place: by area. A bar is sure of none of it."""
        if not self.cut:
            return 0.0
        area = mean([(x[1] - x[0]) * (y[1] - y[0]) for x, y, _ in self.cut.bars()])
        return sum(float(area / self.cut.area * decoration["per_cast"] * (mine["mass_each_g"] or 0))
                   for decoration, mine in zip(self.document.get("decorations", []), self.decorations)
                   if "per_cast" in decoration and "buried" not in decoration and "drizzle" not in decoration)

    @staticmethod
    def net_quantity(market, lightest):
        """Rounded down: EU in whole grams; US in tenths of an ounce (of 28.3495 g, 16 CFR 500.19), from a pound up in pounds and ounces,
        and beside them the grams they are, in at most three digits (two below 100 g), neither above the lightest piece."""
        if market == "EU":
            return f"{math.floor(lightest)} g"
        tenths = math.floor(lightest / 2.83495)
        pounds, rest = divmod(tenths, 160)
        figure = 0.1 if tenths * 2.83495 < 9.95 else 1  # below 10 g two digits are tenths
        beside = round(math.floor(tenths * 2.83495 / figure + 0.5) * figure, 1)
        beside -= figure if beside > lightest else 0
        return f"NET WT {f'{pounds} LB {rest / 10:g}' if pounds else f'{tenths / 10:g}'} OZ ({round(beside, 1):g} g)"

    # -- lye shared by weight

    def share_lye(self, batch):
        """One pot for a batch: the alkalis of its batters together, rounded down; water for the stronger lye, enough to dissolve them; made up
        to a weight that the scale shows, not below what went in; shares in proportion to the batters' alkali, rounded down."""
        scales, both = self.scales, batch.weighings()
        pot = {"alkalis": [], "alkali_doubts": []}
        for k in range(len(self.base.alkalis)):
            together = sum(w.alkalis[k] for w in both)
            step = scales.step_on_fine(together)
            pot["alkalis"].append(to_step(together, step, "down"))
            pot["alkali_doubts"].append((step, scales.goes(together)))
        alkali = sum(pot["alkalis"])
        pure = self.base.pure(pot["alkalis"])
        pot["water"] = to_step(alkali * min(w.exact_plain / sum(w.alkalis) for w in both), scales.large, "nearest")
        if pot["water"] < pure:
            pot["water"] = to_step(pure, scales.large, "up")
        tare = quantity(self.document["lye_pot"]["pot_tare"], "mass") if "pot_tare" in self.document["lye_pot"] else F(0)
        pot["lye_step"] = scales.step_on_fine(alkali + pot["water"] + tare)
        pot["lye"] = to_step(alkali + pot["water"], pot["lye_step"], "up")
        asked = [sum(w.alkalis) for w in both]
        exact = [pot["lye"] * part / sum(asked) for part in asked]
        step = max(scales.step_on_fine(m) for m in exact)
        pot["share_step"] = step
        pot["shares"] = [to_step(m, step, "down") for m in exact]
        pot["top_ups"], pot["superfats"] = [], []
        for weighing, taken in zip(both, pot["shares"]):
            of_pot = taken / pot["lye"]
            lacking = weighing.exact_plain - (taken - alkali * of_pot)
            top_up = to_step(max(F(0), lacking), scales.step_on_fine(lacking), "nearest")
            pot["top_ups"].append(top_up if top_up >= F(1, 2) else F(0))  # half a gram of water is what any jug keeps
            pot["superfats"].append(self.superfat_of_share(weighing, taken, pot))
        return pot

    @staticmethod
    def superfat_of_share(weighing, taken, pot):
        of_pot = taken / pot["lye"]
        doubts = dict(weighing.doubts, alkalis=[(step * of_pot, goes) for step, goes in pot["alkali_doubts"]])
        return Superfat(weighing.formula, weighing.fats, weighing.oils, [m * of_pot for m in pot["alkalis"]], weighing.parts, doubts,
                        of_lye=(pot["share_step"] / 2 / taken, pot["lye_step"] / 2 / pot["lye"]))

    # -- bottles of fragrance

    def share_bottle(self, bottle):
        """At one rate for all batters of the run, each part rounded down on the fine scale. For each batch: (how many such parts, g of
        each), the base's and those of its sizes of whipping."""
        holds = quantity(bottle["holds"], "mass")
        whole_run = sum(w.batter for batch in self.batches for w in batch.weighings())

        def part(weighing):
            exact = holds * weighing.batter / whole_run
            return to_step(exact, self.scales.step_on_fine(exact), "down")

        answer = []
        for batch in self.batches:
            sizes = {}
            for whipping in batch.whippings:
                sizes.setdefault(whipping.casts, []).append(part(whipping.weighing))
            answer.append([(1, part(batch.pour))] + [(len(parts), parts[0]) for parts in sizes.values()])
        return answer
