#include "service/material_names.h"

#include "chemistry/fat_search.h"
#include "chemistry/fats.h"
#include "units/fields.h"
#include "units/letters.h"
#include "units/nearest_name.h"

#include <algorithm>
#include <filesystem>
#include <set>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;

bool is_of(const Fields& document, const std::string& schema) {
  return document.is_text("schema") &&
         document.text("schema").starts_with("brimwright." + schema + "/");
}

/// What `work` does with the document of a file; nothing where that cannot be read.
template <class Work>
void with(const std::string& file, const moulds::Library& library, Work work) {
  try {
    work(library.document(file));
  } catch (const UserError&) {
    return;  // who plans with it is told
  }
}

std::optional<std::string> text_at(const Fields& fields, const std::string& key) {
  return fields.is_text(key) ? std::optional(fields.text(key)) : std::nullopt;
}

}  // namespace

bool is_make_of_alkali(const std::string& name) {
  const auto meaning = runs::meaning_of(name);
  return !meaning.dry.empty() && meaning.purity.has_value();
}

MaterialNames::MaterialNames(const StockPlace& place, const moulds::Library& library)
    : place_(place) {
  for (const char* name : {"NaOH", "KOH", "water"}) add(name);
  add_studio();
  add_folder(library);
  std::sort(names_.begin(), names_.end());
  names_.erase(std::unique(names_.begin(), names_.end()), names_.end());
}

void MaterialNames::add(const std::string& name) {
  if (!name.empty()) names_.push_back(name);
}

void MaterialNames::add_studio() {
  for (const auto& listed : place_.supplies.packs) add(listed.pack.material);
  for (const auto& [material, shelf] : place_.supplies.have) add(material);
  for (const std::string& name : place_.supplies.made_ahead) add(name);
  for (const auto& [make, serves] : place_.supplies.serves_as) add(serves.material);
  if (!place_.studio.fields()) return;
  for (const Fields& one : place_.studio.fields()->objects("packaging"))
    add(text_at(one, "material").value_or(""));
}

void MaterialNames::add_folder(const moulds::Library& library) {
  std::error_code none;
  std::set<std::string> files;  // in an order that is the same at each time
  for (fs::directory_iterator at(place_.folder, none); !none && at != fs::directory_iterator();
       at.increment(none))
    if (at->path().extension() == ".json" && at->is_regular_file(none))
      files.insert(at->path().string());
  for (const std::string& file : files)
    with(file, library, [&](const Fields& document) {
      if (is_of(document, "run")) add_run(document, library);
      if (is_of(document, "formula")) add_formula(document, library);
    });
}

void MaterialNames::add_run(const Fields& run, const moulds::Library& library) {
  for (const Fields& one : run.objects("dust")) add(text_at(one, "name").value_or(""));
  for (const Fields& one : run.objects("decorations")) {
    add(text_at(one, "material").value_or(""));
    add(text_at(one, "name").value_or(""));
  }
  for (const char* batter : {"pour", "pipe"}) {
    const auto fields = run.optional_object(batter);
    if (!fields) continue;
    for (const Fields& layer : fields->objects("layers"))
      for (const Fields& colour : layer.objects("colours"))
        add(text_at(colour, "name").value_or(""));
    if (const auto formula = text_at(*fields, "formula"))
      with(library.resolve(*formula, fields->place("formula")), library,
           [&](const Fields& document) { add_formula(document, library); });
  }
}

void MaterialNames::add_formula(const Fields& formula, const moulds::Library& library) {
  for (const Fields& fat : formula.objects("fats")) add(text_at(fat, "fat").value_or(""));
  for (const char* kind : {"additives", "liquids", "fragrances", "colours"})
    for (const Fields& one : formula.objects(kind)) {
      add(text_at(one, "name").value_or(""));
      if (const auto oil = one.optional_object("dispersed_in"))
        add(text_at(*oil, "fat").value_or(""));
    }
  const auto own = text_at(formula, "own_fats");
  if (!own) return;
  with(library.resolve(*own, formula.place("own_fats")), library, [&](const Fields& document) {
    for (const Fields& fat : document.objects("fats"))
      if (const auto id = text_at(fat, "id"))
        own_fats_[in_small_letters(text_at(fat, "name").value_or(*id))] = *id;
  });
}

MaterialNames::Named MaterialNames::named(const std::string& typed, const Place& where) const {
  const std::string small = in_small_letters(typed);
  const auto same = std::find_if(names_.begin(), names_.end(), [&](const std::string& name) {
    return in_small_letters(name) == small;
  });
  std::string name = same == names_.end() ? typed : *same;
  if (const auto own = own_fats_.find(small); own != own_fats_.end()) name = own->second;
  std::vector<std::string> all = names_;
  for (std::string& id : chemistry::fat_ids()) all.push_back(std::move(id));
  const auto serves = place_.supplies.serves_as.find(name);
  if (serves != place_.supplies.serves_as.end())
    return {.material = runs::own_material_of(serves->second.material, all, place_.supplies,
                                              serves->second.where),
            .make = name};
  const std::string material =
      chemistry::fats_named(name).size() == 1 && !place_.supplies.made_ahead.contains(name)
          ? chemistry::fats_named(name).front()->id
          : runs::own_material_of(name, all, place_.supplies, where);
  const auto is_it = [&](const std::string& one) {
    if (one == material) return true;
    const auto fats = chemistry::fats_named(one);
    return fats.size() == 1 && fats.front()->id == material;
  };
  Named found{.material = material};
  if (is_make_of_alkali(name)) found.make = name;
  found.is_known = std::any_of(names_.begin(), names_.end(), is_it);
  if (!found.is_known) found.near = nearest_name(typed, names_);
  return found;
}

std::vector<std::string> MaterialNames::offered() const {
  std::set<std::string> offered;
  for (const std::string& name : names_) try {
      const Named known = named(name, {});
      offered.insert(known.make.empty() ? shown_material(known.material) : known.make);
    } catch (const UserError&) {
      offered.insert(name);  // whoever chooses it is asked which is meant
    }
  return {offered.begin(), offered.end()};
}

std::string shown_material(const std::string& material) {
  const auto* fat = chemistry::find_fat(material);
  return fat == nullptr ? material : fat->name;
}

}  // namespace brimwright::service
