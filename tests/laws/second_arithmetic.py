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

# ---- quantities as a maker writes them ---------------------------------------------------------------------

LENGTHS = {"mm": F(1), "cm": F(10), "m": F(1000), "in": F("25.4"), "ft": F("304.8")}
MASSES = {"mg": F(1, 1000), "g": F(1), "kg": F(1000), "oz": F("28.349523125"), "lb": F("453.59237")}
VOLUMES = {"ml": F(1), "cl": F(10), "l": F(1000), "cm3": F(1), "fl oz": F("29.5735295625"), "tsp": F("4.92892159375"),
           "tbsp": F("14.78676478125")}
DENSITIES = {"g/ml": F(1), "g/cm3": F(1), "kg/l": F(1), "kg/m3": F(1, 1000)}
AREAS = {"mm2": F(1, 100), "cm2": F(1)}


@lru_cache(maxsize=100000)
def number(text):
    """"12", "0.5", "1,5", "1/2", "2 1/4"."""
    return sum((F(part) for part in text.strip().replace(",", ".").split()), F(0))


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
    amount, unit = re.fullmatch(r"\s*(-?[0-9.,/ ]+?)\s*°?\s*([CF])", text).groups()
    return number(amount) if unit == "C" else (number(amount) - 32) * 5 / 9


def degrees(text):
    return float(number(re.fullmatch(r"\s*([0-9.,/ ]+?)\s*(?:°|deg)", text).group(1)))


# ---- steps of a scale --------------------------------------------------------------------------------------

AS_GOOD_AS = F(1, 10**9)


def whole(value, way):
    value = F(value)
    nearest = math.floor(value + F(1, 2))
    slack = AS_GOOD_AS * max(F(1), abs(value))
    if abs(value - nearest) <= slack:
        return nearest
    return {"up": math.ceil(value), "down": math.floor(value), "nearest": math.floor(value + F(1, 2) + slack)}[way]


def to_step(mass, step, way):
    return whole(F(mass) / step, way) * step


class Scales:
    """Fats, water and melt on the large scale; alkali, additives, oil for colours and powders on the fine one as long as
    it holds them."""

    def __init__(self, document):
        self.large, self.large_holds = (quantity(document["large"][k], "mass") for k in ("reads", "holds"))
        self.fine, self.fine_holds = (quantity(document["fine"][k], "mass") for k in ("reads", "holds"))

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
        for acid in load("neutralisation")["acids"]:
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
        range, the middle of all, the most that the make-up asks for. Of a free fatty acid: the pure acid's."""
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
        if entry["kind"] == "wax_ester":
            most_asked = 1000 * self.molar_mass["KOH"] / entry["mean_molar_mass_g_mol"]["value"]
        elif "fatty_acids" in entry:
            asked_low, most_asked = self.asked_for_by_acids(entry["fatty_acids"]["ranges"])
            low = min(low, F(math.floor(asked_low * 10), 10))
            high = max(high, F(math.ceil(most_asked * 10), 10))
        choices = [sum(governing) / 2, (low + high) / 2]
        if most_asked is not None:
            choices.append(F(math.floor(most_asked * 10), 10))
        return low, min(choices), high

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
    def __init__(self, low, typical, high, density_at, name):
        self.low, self.typical, self.high, self.density_at, self.name = low, typical, high, density_at, name

    @staticmethod
    def published(entry, published):
        low, typical, high = published.values_of(entry)
        density = entry.get("molten_density", entry.get("relative_density"))
        basis = None
        if density and density["temperature_c"] is not None:
            reference = density["reference"]
            basis = 1.0 if reference.startswith("density") else next(
                (water_density(t) for t in (20, 25) if reference.startswith(f"water at {t} °C")), None)
        if basis:
            anchor = float(density["min"] + density["max"]) / 2 * basis, float(density["temperature_c"])
        else:
            iodine = entry.get("iodine_value_g_i2_per_100g", {"min": F(0), "max": F(0)})
            anchor = Fat.by_lund(typical, (iodine["min"] + iodine["max"]) / 2, published)
        return Fat(low, typical, high, lambda t: anchor[0] + published.slope * (float(t) - anchor[1]), entry["name"])

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
        self.per = self.basis = self.replaces = None
        bulk = quantity(entry["bulk_density"], "density") if "bulk_density" in entry else None
        if "replaces" in entry:
            self.replaces = share(entry["replaces"].replace(" of water", ""))
        else:
            self.per, self.basis = rate(entry["rate"], bulk)
        self.water, self.fat, self.acid_koh, self.oil = F(0), None, F(0), None
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
        if isinstance(entry.get("acid"), dict):
            self.acid_koh = published.acids[entry["acid"]["acid"]] * share(entry["acid"]["share"])
        if "dispersed_in" in entry:
            oil = entry["dispersed_in"]
            self.oil = oil["fat"], F(str(oil["oil_per_colour"])), oil.get("from", "formula") == "extra"
        if "density" in entry:
            self.density = float(quantity(entry["density"], "density"))
        elif composition:
            self.density = 1 / contents
        else:
            self.density = published.substance_density(entry["name"]) or water_density(at)
        self.to = entry.get("goes_into", "batter")

    def extra_oil(self, powder):
        return powder * self.oil[1] if self.oil and self.oil[2] else F(0)


def rate(text, bulk):
    """Grams for each gram of the basis, and the basis."""
    amount, unit, basis = re.fullmatch(r"\s*([0-9.,/ ]+?)\s*(%|g/kg|tsp/lb|tbsp/lb|tsp/kg) of (fats|batter)", text).groups()
    amount = number(amount)
    if unit == "%":
        return amount / 100, basis
    if unit == "g/kg":
        return amount / 1000, basis
    spoon, mass = unit.split("/")
    return amount * VOLUMES[spoon] / MASSES[mass] * bulk, basis


class Formula:
    def __init__(self, document, published, own_fats=()):
        self.published = published
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
                fat = Fat(*value_range(entry["saponification_value"]), fat.density_at, fat.name)
            self.fats.append((entry["fat"], fat, share(entry["share"])))
        self.alkalis = []  # (name, share of saponifying, purity, least and greatest purity)
        for entry in document["alkali"]:
            purity = share(entry["purity"])
            least, most = map(share, entry["purity_range"]) if "purity_range" in entry else published.purity_range(entry["alkali"], purity)
            self.alkalis.append((entry["alkali"], share(entry["saponifies"]), purity, least, most))
        self.water_way, self.water_value = next(iter(document["water"].items()))
        self.water_value = F(str(self.water_value)) if self.water_way == "water_to_alkali" else share(self.water_value)
        self.parts = [Part(entry, published, fats, self.at) for list_name in ("additives", "fragrances", "colours", "liquids")
                      for entry in document.get(list_name, [])]
        self.all_fats = fats
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

    def all_water(self, alkalis, fats):
        """The formula's water, that in liquids included."""
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
        plain = all_water - sum(m * p.water for m, p in zip(parts, self.parts))
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
        """Volumes taken as additive; impurities taken as dissolved and as dense as the alkali; each alkali takes its water in
        proportion to its mass."""
        volume = sum(float(s) / fat.density_at(self.at) for _, fat, s in self.fats)
        volume += sum(float(m) / self.all_fats[p.oil[0]].density_at(self.at) for m, p in zip(self.oils_per_gram, self.parts) if p.oil)
        volume += sum(float(m) / p.density for m, p in zip(self.parts_per_gram, self.parts))
        bought = sum(self.alkalis_per_gram)
        lye = bought + self.plain_per_gram
        for m, (name, *_) in zip(self.alkalis_per_gram, self.alkalis):
            volume += float(lye * m / bought) / self.published.lye_density(name, bought / lye, self.at)
        return float(self.batter_per_gram) / volume


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
        self.fats = [to_step(m, scales.large, "up") for m in exact_fats]
        self.fats_sum = sum(self.fats)
        exact_parts = [m * self.fats_sum for m in formula.parts_per_gram]
        self.parts = [to_step(m, scales.step_on_fine(m), "nearest") for m in exact_parts]
        exact_oils = [p.extra_oil(m) for p, m in zip(formula.parts, self.parts)]
        self.oils = [to_step(m, scales.step_on_fine(m), "nearest") for m in exact_oils]
        exact_alkalis = formula.bought(formula.koh_need(self.fats, self.oils, self.parts))
        self.alkalis = [to_step(m, scales.step_on_fine(m), "down") for m in exact_alkalis]
        self.in_liquids = sum(m * p.water for m, p in zip(self.parts, formula.parts))
        self.exact_plain = max(F(0), formula.all_water(self.alkalis, self.fats_sum) - self.in_liquids)
        self.plain = to_step(self.exact_plain, scales.large, "nearest")
        # Above 50 % alkali does not dissolve: the pot holds its weight of water at least.
        least = formula.pure(self.alkalis) - sum(m * p.water for m, p in zip(self.parts, formula.parts) if p.to == "lye")
        if self.plain < least * (1 - AS_GOOD_AS):
            self.plain = to_step(least, scales.large, "up")
        self.water = self.plain + self.in_liquids
        self.batter = self.fats_sum + sum(self.parts) + sum(self.oils) + sum(self.alkalis) + self.plain
        # How coarse each was weighed, for the superfat's doubts.
        self.doubts = {"fats": [(scales.large, scales.goes_on_large(m)) for m in exact_fats],
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
        self.low = self.value([(f[0] - off(f[0], f[4], f[5]), f[1]) for f in self.fats],
                              [((a[0] + off(a[0], a[4], a[5])) * more, a[3]) for a in self.alkalis], [a[0] - off(a[0], a[1], a[2]) for a in self.acids])
        self.high = self.value([(f[0] + off(f[0], f[4], f[5]), f[3]) for f in self.fats],
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
    def __init__(self, document):
        self.name = document["name"]
        self.cavities = document["cavities"] * document.get("owned", 1)
        self.cavity = Cavity(document["shape"])
        water = document.get("water")
        if water:  # the referee: it scales the whole curve
            weighed = sum(quantity(m, "mass") for m in water["weighings"]) / len(water["weighings"])
            volume = float(weighed) / water_density(celsius(water["temperature"]))
            if water["of"] == "all cavities":
                volume /= document["cavities"]
            depth = self.cavity.height if water["to"] == "brim" else self.depth_of(water["to"])
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


class Run:
    """Everything that is weighed for a run. `files` gives the document of each file the run names."""

    def __init__(self, document, files, published, tips):
        self.document = document
        self.scales = Scales(document["scales"])

        def formula(name):
            own = files[files[name]["fats_from"]]["fats"] if "fats_from" in files[name] else ()
            return Formula(files[name], published, own)

        pour = document["pour"]
        self.mould = Mould(files[pour["mould"]])
        cavity = self.mould.cavity
        self.base = formula(pour["formula"])
        self.line = self.mould.depth_of(pour["line"])
        self.displaced = sum(self.displaced_by(d, files) for d in document.get("perch", []))
        self.volume_each = cavity.volume(self.line) - self.displaced
        self.brimful = cavity.volume(cavity.height)
        self.recess = self.brimful - cavity.volume(self.line)
        self.cut = self.cut_up(document["cut"], files[pour["mould"]]["shape"]) if "cut" in document else None
        per_cast = self.cut["bars"] if self.cut else 1

        sell = document["sell"]
        make = whole(sell / (1 - share(document["spoilage"])), "up")
        casts = -(-make // per_cast)
        self.pieces = {"sell": sell, "make": make, "per_cast": per_cast, "casts": casts, "cavities": self.mould.cavities,
                       "fillings": -(-casts // self.mould.cavities)}

        losses = document["losses"]["pour"]
        self.mass_each = F(self.volume_each * self.base.density)
        self.in_pieces = casts * self.mass_each
        to_make = self.in_pieces * (1 + share(losses["overpour"])) + sum(quantity(losses[k], "mass") for k in ("pot", "jugs", "test_piece"))
        self.pour = Weighing(self.base, to_make, self.scales)
        self.layers = self.layer_up(pour.get("layers", []))

        self.pipe = None
        if "pipe" in document:
            self.pipe_on(document["pipe"], document["losses"]["pipe"], formula, files, tips)
        self.decorations = [self.decoration(d, files) for d in document.get("perch", [])]
        self.dust = [(d["name"], to_step(make * quantity(d["per_piece"], "mass"), self.scales.fine, "up")) for d in document.get("dust", [])]
        self.lye_pot = self.share_lye() if document.get("lye_pot", {}).get("shared") else None
        self.bottles = [self.share_bottle(b) for b in document.get("bottles", [])]

    # -- pour

    def layer_up(self, layers):
        """(name, volume in one cavity, mass in one cavity, mass of the whole batter, colours), lowest first."""
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
        volumes = [end - start for start, end in zip([0.0] + ends, ends)]
        answer, left = [], self.pour.batter
        fats_of_batter = self.pour.fats_sum / self.pour.batter
        for i, (layer, volume) in enumerate(zip(layers, volumes)):
            mass = left if i + 1 == len(layers) else to_step(F(volume / sum(volumes)) * self.pour.batter, self.scales.large, "nearest")
            left -= mass
            colours = []
            for colour in layer.get("colours", []):
                bulk = quantity(colour["bulk_density"], "density") if "bulk_density" in colour else None
                per, basis = rate(colour["rate"], bulk)
                exact = per * mass * (fats_of_batter if basis == "fats" else 1)
                colours.append((colour["name"], to_step(exact, self.scales.step_on_fine(exact), "nearest")))
            answer.append((layer["name"], volume, volume * self.base.density, mass, colours))
        return answer

    def displaced_by(self, decoration, files):
        """ml of what is buried in one cast, all of it below the pour line."""
        if "buried" not in decoration:
            return 0.0
        return len(decoration["buried"]["places"]) * self.cast_volume(decoration, files)

    # -- pipe

    def pipe_on(self, pipe, losses, formula, files, tips):
        self.pipe_formula = formula(pipe["formula"])
        cup = quantity(pipe["whip"]["net"], "mass") / quantity(pipe["whip"]["holds"], "volume")
        self.visible = self.visible_topping(pipe, files, tips)
        self.in_recess = float(share(pipe["fills_headspace"])) * self.recess
        self.pipe_volume_each = self.visible + self.in_recess
        self.pipe_density = float(cup)
        casts = self.pieces["casts"]
        self.pipe_mass_each = F(self.pipe_volume_each * float(cup))
        in_pieces = casts * self.pipe_mass_each
        stays = sum(quantity(losses[k], "mass") for k in ("bag", "bowl_and_whisk", "tip") if k in losses)
        change = quantity(losses["each_bag_change"], "mass") if "each_bag_change" in losses else F(0)
        self.loads, lost = None, stays
        if "bag_holds" in pipe:
            bag = quantity(pipe["bag_holds"], "volume")
            self.loads = 1
            while True:  # a change of bag loses some, which may itself take another load
                needed = max(1, whole((in_pieces + stays + (self.loads - 1) * change) / cup / bag, "up"))
                if needed <= self.loads:
                    break
                self.loads = needed
            lost = stays + (self.loads - 1) * change
        self.pipe_in_pieces = in_pieces
        self.pipe = Weighing(self.pipe_formula, in_pieces + lost, self.scales)
        if self.loads is not None:
            self.loads = max(self.loads, whole(self.pipe.batter / cup / bag, "up"))
        self.usable = self.pipe.batter - lost
        self.pieces_now = None
        if "whip_now" in pipe:
            now = quantity(pipe["whip_now"]["net"], "mass") / quantity(pipe["whip_now"]["holds"], "volume")
            self.pieces_now = max(0, whole(self.usable / (F(self.pipe_volume_each) * now), "down"))

    @staticmethod
    def visible_topping(pipe, files, tips):
        """ml above the foot: weighed trials outrank beads, beads an envelope."""
        if "trials" in pipe:
            trials = pipe["trials"]
            cup = quantity(trials["weigh_cup"]["net"], "mass") / quantity(trials["weigh_cup"]["holds"], "volume")
            return float(mean([quantity(m, "mass") for m in trials["weighed"]]) / cup)
        if "beads" in pipe:
            beads = pipe["beads"]
            tip = beads["tip"]
            if isinstance(tip, str):
                own = files[beads["tips_from"]]["tips"] if "tips_from" in beads else []
                tip = next(t for t in own + tips if t["name"] == tip)
            section = opening_area(tip) * beads["swell"]
            return tip.get("hand", {}).get("factor", 1) * sum(laid_by(move, section) for move in beads["moves"])
        envelope = pipe["envelope"]
        diameter, height = (float(quantity(envelope[k], "length")) for k in ("diameter", "height"))
        hull = math.pi * diameter**2 * height / (12 if envelope["form"] == "cone" else 6) / 1000
        return float(share(envelope["solidity"])) * hull

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
        return mould.cavity.volume(mould.depth_of(decoration["fill"])) * (2 if decoration["made_of"] == "two halves" else 1)

    def decoration(self, decoration, files):
        needed = self.pieces["make"] * decoration["per_piece"] if "per_piece" in decoration else self.pieces["casts"] * decoration["per_cast"]
        casts = whole(needed * (1 + share(decoration["spares"])), "up")
        each = self.cast_volume(decoration, files)
        fills, trays = casts, 1
        if "mould" in decoration:
            fills = casts * (2 if decoration["made_of"] == "two halves" else 1)
            trays = Mould(files[decoration["mould"]]).cavities
        tray_fills = 1 if "drizzle" in decoration else -(-fills // trays)
        mass_each = F(each * float(quantity(decoration["density"], "density")))
        melt = (casts * mass_each + tray_fills * quantity(decoration["jug_film"], "mass")) / (1 - share(decoration["melt_loss"]))
        return {"casts": casts, "cavity_fills": fills, "tray_fills": tray_fills, "volume_each_ml": each, "mass_each_g": mass_each,
                "make_g": to_step(melt, self.scales.large, "up")}

    # -- cut

    def cut_up(self, cut, shape):
        """Of a block with upright walls and sharp edges: bars, and the volume of one."""
        def mm(key):
            return quantity(cut[key], "length") if key in cut else F(0)

        def bars(whole_length, trim, size):
            # n bars lose n - 1 kerfs between them and two planings each; a hundredth of a millimetre does not cost a bar.
            usable = whole_length - 2 * trim
            return math.floor((usable + F(1, 100) + mm("kerf")) / (size + 2 * mm("face_planing") + mm("kerf")))

        length, width = quantity(shape["length"], "length"), quantity(shape["width"], "length")
        high = F(self.line) - mm("top_planing")
        if "thickness" in cut["bar"]:
            along = cut.get("along", "y" if width > length else "x")
            long_way, across = (length, width) if along == "x" else (width, length)
            size = quantity(cut["bar"]["thickness"], "length")
            n = bars(long_way, mm("end_trim"), size)
            return {"bars": n, "columns": n, "rows": 1, "bar_ml": float(size * (across - 2 * mm("side_trim")) * high) / 1000}
        bar_length, bar_width = quantity(cut["bar"]["length"], "length"), quantity(cut["bar"]["width"], "length")
        # A slab's ends are those of its longer side.
        long_side, short_side = max(length, width), min(length, width)
        long_axis = "y" if width > length else "x"
        ways = {}
        for lies in ("x", "y"):
            along_long, along_short = (bar_length, bar_width) if lies == long_axis else (bar_width, bar_length)
            ways[lies] = bars(long_side, mm("end_trim"), along_long), bars(short_side, mm("side_trim"), along_short)
        columns, rows = ways[cut["along"]]
        return {"bars": columns * rows, "columns": columns, "rows": rows, "bar_ml": float(bar_length * bar_width * high) / 1000}

    # -- lye shared by weight

    def share_lye(self):
        """One pot: the alkalis of both batters together, rounded down; water for the stronger lye, enough to dissolve them; made up
        to a weight that the scale shows, not below what went in; shares in proportion to the batters' alkali, rounded down."""
        scales, both = self.scales, (self.pour, self.pipe)
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
        """At one rate for all batters, rounded down on the fine scale."""
        holds = quantity(bottle["holds"], "mass")
        batters = [self.pour.batter] + ([self.pipe.batter] if self.pipe else [])
        shares = [holds * b / sum(batters) for b in batters]
        return [to_step(m, self.scales.step_on_fine(m), "down") for m in shares]
