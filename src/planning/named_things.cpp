#include "planning/named_things.h"

#include "chemistry/name_words.h"
#include "units/fields.h"

#include <algorithm>
#include <functional>
#include <string>
#include <utility>

namespace brimwright::embedded {
std::string_view named_things_json();
}

namespace brimwright::planning {
namespace {

using chemistry::AdditiveKind;
using chemistry::PhraseBook;

/// Words that tell something, and those that hold one of them and are something else.
class Words {
 public:
  Words(const std::vector<std::string>& words, const std::vector<std::string>& others) {
    for (const auto& word : words) book_.add(word, 0);
    for (const auto& other : others) others_.add(other, 0);
  }

  bool are_in(const std::string& name) const {
    const auto words = chemistry::words_of(name);
    const auto hits = book_.hits(words);
    const chemistry::Cover others(others_.hits(words), words.size());
    return std::any_of(hits.begin(), hits.end(), [&](const PhraseBook::Hit& hit) {
      return !others.holds(hit) && !chemistry::is_denied(words, hit);
    });
  }
  bool are_in_any(const std::vector<std::string>& names) const {
    return std::any_of(names.begin(), names.end(), [&](const auto& name) { return are_in(name); });
  }

 private:
  PhraseBook book_, others_;
};

struct FoodAllergen {
  std::string name;
  Words words;
};

struct Data {
  std::vector<FoodAllergen> food;
  Words glitter, plastic, fine;
  std::string loose_since, rinsed_off_from;
};

Data read_data() {
  const Fields file = Fields::parse(embedded::named_things_json(), "data/named_things.json");
  const Fields plastic = file.object("plastic");
  Data data{.food = {},
            .glitter = {plastic.texts("words"), {}},
            .plastic = {plastic.texts("plastics"), plastic.texts("not")},
            .fine = {plastic.texts("fine"), {}},
            .loose_since = plastic.text("loose_since"),
            .rinsed_off_from = plastic.text("rinsed_off_from")};
  for (const Fields& kind : file.object("food_allergens").objects("kinds"))
    data.food.push_back({kind.text("name"), {kind.texts("words"), kind.texts("not")}});
  return data;
}

const Data& data() {
  static const Data read = read_data();
  return read;
}

/// Something that goes into or onto a piece.
struct Thing {
  std::string name;
  AdditiveKind kind = AdditiveKind::additive;
  std::vector<std::string> inci;
  bool is_powder = false;  // a colour or a dust
};

std::vector<std::string> inci_of(const chemistry::LabelData& label) {
  std::vector<std::string> names;
  for (const auto& part : label.inci) names.push_back(part.name);
  return names;
}

void add_fat(const chemistry::Fat& fat, std::vector<Thing>& things) {
  things.push_back({fat.name, AdditiveKind::additive, {fat.inci}, false});
}

void add_formula(const chemistry::Formula& formula, std::vector<Thing>& things) {
  for (const auto& fat : formula.fats) add_fat(fat.fat, things);
  for (const auto& additive : formula.additives) {
    if (additive.dispersal) add_fat(additive.dispersal->oil, things);
    Thing thing{additive.name, additive.kind, inci_of(additive.label),
                additive.kind == AdditiveKind::colour};
    if (additive.contains_fat) thing.inci.push_back(additive.contains_fat->fat.inci);
    things.push_back(std::move(thing));
  }
}

std::vector<Thing> things_in(const Run& run) {
  std::vector<Thing> things;
  add_formula(run.pour.formula, things);
  if (run.pipe) add_formula(run.pipe->formula, things);
  for (const auto& layer : run.pour.layers)
    for (const auto& colour : layer.colours)
      things.push_back({colour.name, AdditiveKind::colour, inci_of(colour.label), true});
  for (const auto& decoration : run.decorations)
    things.push_back(
        {decoration.material, AdditiveKind::additive, inci_of(decoration.label), false});
  for (const auto& dust : run.dust)
    things.push_back({dust.name, AdditiveKind::colour, inci_of(dust.label), true});
  return things;
}

/// "coconut oil, coconut milk and 2 more"
std::string some_of(const std::vector<std::string>& names) {
  constexpr std::size_t most = 3;
  std::string text;
  for (std::size_t i = 0; i < std::min(most, names.size()); ++i)
    text += (i == 0 ? "" : ", ") + names[i];
  if (names.size() > most) text += " and " + std::to_string(names.size() - most) + " more";
  return text;
}

/// Names of the things that `tells`, each once.
std::vector<std::string> names_of(const std::vector<Thing>& things,
                                  const std::function<bool(const Thing&)>& tells) {
  std::vector<std::string> names;
  for (const Thing& thing : things)
    if (tells(thing) && std::find(names.begin(), names.end(), thing.name) == names.end())
      names.push_back(thing.name);
  return names;
}

void note_food_allergens(const std::vector<Thing>& things, std::vector<Remark>& remarks) {
  std::string found;
  for (const FoodAllergen& food : data().food) {
    const auto names = names_of(things, [&](const Thing& thing) {
      const bool by_name = thing.kind != AdditiveKind::fragrance && food.words.are_in(thing.name);
      return by_name || food.words.are_in_any(thing.inci);
    });
    if (!names.empty())
      found += (found.empty() ? "" : "; ") + food.name + " (" + some_of(names) + ")";
  }
  if (found.empty()) return;
  remarks.push_back(
      {Severity::note,
       "Some people are allergic to what is in this: " + found +
           ". Cosmetics law in the EU asks for no words about food allergens, only for the "
           "ingredients by name (Regulation (EC) 1223/2009, Art. 19, not checked at the source). "
           "Tell buyers who ask, and everyone who makes soap with you."});
}

bool is_glitter(const Thing& thing) { return data().glitter.are_in(thing.name); }

bool is_plastic(const Thing& thing) {
  if (!thing.is_powder && !is_glitter(thing)) return false;
  return data().plastic.are_in(thing.name) || data().plastic.are_in_any(thing.inci);
}

/// Neither its INCI names nor its own name say what it is made of.
bool may_be_plastic(const Thing& thing) {
  return is_glitter(thing) && !is_plastic(thing) && thing.inci.empty() &&
         !data().fine.are_in(thing.name);
}

void caution_on_plastic(const std::vector<Thing>& things, std::vector<Remark>& remarks) {
  const auto plastic = names_of(things, is_plastic), maybe = names_of(things, may_be_plastic);
  if (plastic.empty() && maybe.empty()) return;
  std::string text;
  if (!plastic.empty()) text += "Plastic by its own name: " + some_of(plastic) + ". ";
  if (!maybe.empty())
    text += "Plastic or not? Nothing says what is in " + some_of(maybe) +
            ": put in its \"inci\", from its supplier (mica, cellulose and minerals are fine). ";
  remarks.push_back({Severity::caution,
                     text +
                         "In the EU loose plastic glitter and microbeads for scrubbing have been "
                         "banned since " +
                         data().loose_since + ", and from " + data().rinsed_off_from +
                         " on any plastic particles in what is rinsed off, as soap is (Regulation "
                         "(EU) 2023/2055)."});
}

}  // namespace

std::vector<Remark> named_thing_remarks(const Run& run) {
  const auto things = things_in(run);
  std::vector<Remark> remarks;
  caution_on_plastic(things, remarks);
  note_food_allergens(things, remarks);
  return remarks;
}

}  // namespace brimwright::planning
