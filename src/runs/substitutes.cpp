#include "runs/substitutes.h"

#include "chemistry/alkali_names.h"
#include "chemistry/fat_search.h"
#include "chemistry/name_words.h"
#include "chemistry/one_material.h"
#include "units/written_number.h"

#include <algorithm>
#include <set>

namespace brimwright::runs {
namespace {

using chemistry::Fat;
using chemistry::words_of;

constexpr const char* plan_it = "copy the formula and plan it with what you have";

/// What two names of one material have in common.
std::string key_of(const std::string& name) {
  const auto fats = chemistry::fats_named(name);
  if (fats.size() == 1) return fats.front()->id;
  if (const auto alkali = chemistry::names_an_alkali(name)) return alkali->is;
  std::string key;
  for (const std::string& word : words_of(name)) key += " " + word;
  return key;
}

/// "Olive oil" is olive itself; "Virgin olive oil" is a make of it.
bool are_one_name(const std::string& make, const std::string& material) {
  const auto words = words_of(make);
  if (words == words_of(material)) return true;
  if (key_of(make) != key_of(material)) return false;
  const auto fats = chemistry::fats_named(make);
  if (fats.empty()) return false;
  const Fat& fat = *fats.front();
  return make == fat.id || words_of(fat.name) == words ||
         std::any_of(fat.also_called.begin(), fat.also_called.end(),
                     [&](const std::string& other) { return words_of(other) == words; });
}

void refuse_unlisted(const std::string& make, const std::vector<std::string>& listed,
                     const Place& where) {
  if (std::find(listed.begin(), listed.end(), make) != listed.end()) return;
  const auto near = nearest_name(make, listed);
  throw UserError(
      where, quoted(make) + " is not listed under \"packs\"",
      near ? "did you mean " + quoted(*near) + "?" : "list its packs there, by that name");
}

/// The one of `all` that `material` names, but for `make` itself.
const Substitutes::value_type* other_named(const std::string& material, const std::string& make,
                                           const Substitutes& all) {
  for (const auto& one : all)
    if (one.first != make && key_of(one.first) == key_of(material)) return &one;
  return nullptr;
}

void refuse_chain(const std::string& make, const Substitutes& all) {
  const auto& [material, where] = all.at(make);
  const auto* next = other_named(material, make, all);
  if (next == nullptr) return;
  std::set<std::string> passed = {make};
  for (const auto* at = next; at != nullptr && passed.insert(at->first).second;
       at = other_named(at->second.material, at->first, all))
    if (key_of(at->second.material) == key_of(make))
      throw UserError(where, quoted(make) + " and " + quoted(material) + " serve as each other",
                      "keep the one that formulas name, and let the other serve as it");
  throw UserError(where,
                  quoted(material) + " serves as " + quoted(next->second.material) + " itself",
                  "name " + quoted(next->second.material) + " here too, if all three are one");
}

void look_at(const std::string& make, const Substitutes& all) {
  const auto& [material, where] = all.at(make);
  if (are_one_name(make, material))
    throw UserError(where, quoted(make) + " serves as itself", "leave it out");
  if (const auto meant = chemistry::fats_named(material); meant.size() > 1)
    throw UserError(where, quoted(material) + " is a word for several fats",
                    "name the one that formulas have, such as " + quoted(meant.front()->id));
  refuse_chain(make, all);
  if (const auto problem = chemistry::other_material(make, material))
    throw UserError(where, *problem, plan_it);
}

using Fats = std::map<std::string, std::vector<const Fat*>>;  // by id and by name

struct Used {
  Fats fats;
  std::set<std::string> others;
};

void use(Used& used, const Fat& fat) {
  used.fats[fat.id].push_back(&fat);
  if (fat.name != fat.id) used.fats[fat.name].push_back(&fat);
}

void use(Used& used, const chemistry::Formula& formula) {
  for (const auto& one : formula.fats) use(used, one.fat);
  for (const auto& one : formula.additives) {
    used.others.insert(one.name);
    if (one.dispersal) use(used, one.dispersal->oil);
  }
}

Used used_by(const std::vector<const planning::Run*>& runs) {
  Used used;
  for (const auto* run : runs) {
    use(used, run->pour.formula);
    if (run->pipe) use(used, run->pipe->formula);
  }
  return used;
}

/// The fats of the runs that `name` stands for.
std::vector<const Fat*> fats_called(const std::string& name, const Fats& fats) {
  if (const auto own = fats.find(name); own != fats.end()) return own->second;
  const auto meant = chemistry::fats_named(name);
  const auto one = meant.size() == 1 ? fats.find(meant.front()->id) : fats.end();
  return one == fats.end() ? std::vector<const Fat*>() : one->second;
}

bool take_the_same_lye(const Fat& one, const Fat& other) {
  const auto &a = one.saponification, &b = other.saponification;
  return !(a.low < b.low || b.low < a.low || a.typical < b.typical || b.typical < a.typical ||
           a.high < b.high || b.high < a.high);
}

}  // namespace

Substitutes read_substitutes(const Fields& section, const std::vector<std::string>& listed) {
  Substitutes all;
  for (const std::string& make : section.keys()) {
    if (section.is_empty(make)) continue;
    refuse_unlisted(make, listed, section.place(make));
    all[make] = {section.name(make), section.place(make)};
  }
  for (const auto& one : all) look_at(one.first, all);
  return all;
}

void refuse_other_goods(const Substitutes& substitutes,
                        const std::vector<const planning::Run*>& runs) {
  if (substitutes.empty()) return;
  const Used used = used_by(runs);
  for (const auto& [make, serves] : substitutes) {
    const auto is = fats_called(make, used.fats), wanted = fats_called(serves.material, used.fats);
    for (const Fat* one : is)
      for (const Fat* other : wanted)
        if (one->id != other->id && !take_the_same_lye(*one, *other))
          throw UserError(serves.where,
                          quoted(make) + " is another fat than " + quoted(serves.material) +
                              ", with another saponification value",
                          plan_it);
    const bool is_fat = !is.empty(), is_other = used.others.contains(make);
    if (is_fat && used.others.contains(serves.material))
      throw UserError(
          serves.where,
          quoted(make) + " is a fat, and " + quoted(serves.material) + " is an additive", plan_it);
    if (is_other && !wanted.empty())
      throw UserError(
          serves.where,
          quoted(make) + " is an additive, and " + quoted(serves.material) + " is a fat", plan_it);
  }
}

}  // namespace brimwright::runs
