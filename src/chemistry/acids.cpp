#include "chemistry/acids.h"

#include "chemistry/fats.h"
#include "units/fields.h"

#include <algorithm>

namespace brimwright::embedded {
std::string_view neutralisation_json();
}

namespace brimwright::chemistry {
namespace {

bool is_a_fatty_acid(std::string name) {
  std::replace(name.begin(), name.end(), ' ', '_');
  return find_fat(name) != nullptr;
}

std::vector<Acid> read_acids() {
  const Fields file = Fields::parse(embedded::neutralisation_json(), "data/neutralisation.json");
  std::vector<Acid> acids;
  for (const Fields& entry : file.objects("acids")) {
    const std::string name = entry.text("acid");
    if (!is_a_fatty_acid(name)) acids.push_back({name, entry.number("koh_g_per_g")});
  }
  return acids;
}

}  // namespace

const std::vector<Acid>& shipped_acids() {
  static const std::vector<Acid> acids = read_acids();
  return acids;
}

const Acid* find_acid(std::string_view name) {
  const auto& acids = shipped_acids();
  const auto at =
      std::find_if(acids.begin(), acids.end(), [&](const Acid& a) { return a.name == name; });
  return at == acids.end() ? nullptr : &*at;
}

}  // namespace brimwright::chemistry
