#include "reports/plan_words.h"

#include "reports/text_table.h"
#include "units/shown_text.h"

#include <map>
#include <vector>

namespace brimwright::reports {

std::string title(const std::string& left, const std::string& right) {
  const std::size_t used = shown_width(left) + shown_width(right);
  const std::size_t gap = used + 2 < page_width ? page_width - used : 2;
  return left + std::string(gap, ' ') + right + "\n";
}

std::string line(const std::string& text) { return wrapped(text, "  ", "    "); }

std::string material_name(const std::string& price_name, const planning::Run& run) {
  std::vector<const chemistry::Formula*> formulas{&run.pour.formula};
  if (run.pipe) formulas.push_back(&run.pipe->formula);
  for (const chemistry::Formula* formula : formulas) {
    for (const auto& of : formula->fats)
      if (of.fat.id == price_name) return of.fat.name;
    for (const auto& additive : formula->additives)
      if (additive.dispersal && additive.dispersal->oil.id == price_name)
        return additive.dispersal->oil.name;
  }
  return price_name;
}

std::string iso_date(const std::chrono::year_month_day& date) {
  const auto two = [](unsigned number) {
    return (number < 10 ? "-0" : "-") + std::to_string(number);
  };
  return std::to_string(static_cast<int>(date.year())) + two(static_cast<unsigned>(date.month())) +
         two(static_cast<unsigned>(date.day()));
}

std::string whom_and_when(const std::string& whom_for,
                          const std::optional<std::chrono::year_month_day>& due) {
  std::string text = whom_for.empty() ? "" : "for " + whom_for;
  if (due) text += (text.empty() ? "due " : ", due ") + iso_date(*due);
  return text;
}

std::string studio_words(const planning::FromStudio& from) {
  static const std::map<std::string, std::string, std::less<>> words = {
      {"pots", "pot and lye jug"},
      {"bag_holds", "piping bag"},
      {"lye_spoon", "lye spoon"},
      {"cups", "weigh-cup"},
      {"lye_solutions", "lye solutions"},
      {"blends", "blends of fats"},
      {"own_tips", "tips"},
      {"hand", "correction for your hand"},
      {"moulds_owned", "moulds owned"},
      {"kerf", "kerf of a cut"},
      {"label", "market of the label"}};
  std::string text;
  for (const std::string& section : from.sections) {
    const auto word = words.find(section);
    text += (text.empty() ? "" : ", ") + (word == words.end() ? section : word->second);
  }
  return text + " (" + on_one_line(from.file) + ")";
}

}  // namespace brimwright::reports
