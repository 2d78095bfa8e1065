#include "service/lye_story_reading.h"

#include "chemistry/alkali_data.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/written_number.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>
#include <utility>

namespace brimwright::service {
namespace {

using namespace planning;

/// Words of one option, taken from the front.
class Said {
 public:
  Said(const std::string& text, const Place& where, std::string example)
      : text_(plain(text)), rest_(text_), where_(where), example_(std::move(example)) {}

  std::string_view word() {
    const std::size_t end = std::min(rest_.find(' '), rest_.size());
    const std::string_view taken = rest_.substr(0, end);
    rest_.remove_prefix(end);
    while (!rest_.empty() && is_blank(rest_.front())) rest_.remove_prefix(1);
    if (taken.empty()) refuse();
    return taken;
  }
  std::string_view rest() const { return rest_; }
  const Place& where() const { return where_; }
  [[noreturn]] void refuse() const {
    throw UserError(where_, quoted(text_) + " cannot be read", "write it such as " + example_);
  }

 private:
  std::string text_;
  std::string_view rest_;
  Place where_;
  std::string example_;
};

bool is_digit(char c) { return c >= '0' && c <= '9'; }

WhichBatter batter_in(Said& said) {
  const std::string_view name = said.word();
  if (name == "base") return {};
  if (name != "topping") said.refuse();
  WhichBatter which{true, 0};
  if (said.rest().empty() || !is_digit(said.rest().front())) return which;
  const double number = read_number(said.word(), said.where());
  if (number < 1 || number > 1000 || number != std::floor(number)) said.refuse();
  which.whipping = static_cast<std::int64_t>(number);
  return which;
}

chemistry::Alkali alkali_in(Said& said) {
  const std::string_view name = said.word();
  if (name == "NaOH") return chemistry::Alkali::sodium_hydroxide;
  if (name == "KOH") return chemistry::Alkali::potassium_hydroxide;
  said.refuse();
}

Mass mass_in(const Said& said) {
  const Mass mass = read_mass(said.rest(), said.where());
  if (!(mass > Mass{}))
    throw UserError(said.where(), "is zero", "leave it out, or give what was weighed");
  return mass;
}

UsedAlkali used_alkali(const std::string& text, const Place& where) {
  Said said(text, where, "\"base NaOH 96 g\" or \"topping 2 NaOH 30.5 g\"");
  const WhichBatter batter = batter_in(said);
  const chemistry::Alkali alkali = alkali_in(said);
  const bool is_solution = said.rest().starts_with("solution ");
  if (is_solution) said.word();
  return {batter, alkali, mass_in(said), where, is_solution};
}

AddedFat added_fat(const std::string& text, const Place& where) {
  Said said(text, where, "\"base olive 14 g\"");
  const WhichBatter batter = batter_in(said);
  const std::string fat(said.word());
  return {batter, fat, mass_in(said), where};
}

Share purity_of(std::string_view text, const Place& where) {
  const Share purity = read_share(text, where);
  if (purity < 80 * percent || purity > whole)
    throw UserError(where, quoted(text) + " cannot be the purity of a dry alkali",
                    "give 80 to 100 %, as the bag gives it");
  return purity;
}

BoughtPurity bought_purity(const std::string& text, const Place& where) {
  Said said(text, where, "\"NaOH 97 %\" or \"KOH 88 % to 92 %\"");
  const chemistry::Alkali alkali = alkali_in(said);
  const std::string_view both = said.rest();
  const std::size_t to = both.find(" to ");
  if (to != std::string_view::npos) {
    const Share low = purity_of(both.substr(0, to), where),
                high = purity_of(both.substr(to + 4), where);
    if (low > high) said.refuse();
    return {alkali, 0.5 * (low + high), low, high, false, where};
  }
  const Share purity = purity_of(both, where);
  BoughtPurity bought{alkali, purity, purity, purity, false, where};
  if (const auto& assumed = chemistry::data_of(alkali).assumed_purity) {
    bought.low = assumed->low(purity);
    bought.high = assumed->high(purity);
    bought.range_assumed = true;
  }
  return bought;
}

void refuse_twice(const LyeStory& story) {
  for (std::size_t i = 0; i < story.used.size(); ++i)
    for (std::size_t k = 0; k < i; ++k)
      if (story.used[i].batter == story.used[k].batter &&
          story.used[i].alkali == story.used[k].alkali)
        throw UserError(story.used[i].where, "gives one alkali twice for one batter",
                        "give each once, with all of it added up");
  for (std::size_t i = 0; i < story.purities.size(); ++i)
    for (std::size_t k = 0; k < i; ++k)
      if (story.purities[i].alkali == story.purities[k].alkali)
        throw UserError(story.purities[i].where, "gives two purities for one alkali",
                        "give each once");
}

}  // namespace

LyeStory read_lye_story(const PlanRequest& request, const UserTerms& terms) {
  LyeStory story;
  story.batch_where = terms.place("batch");
  if (request.batch) {
    const double number = read_number(*request.batch, story.batch_where);
    if (number < 1 || number > 1e6 || number != std::floor(number))
      throw UserError(story.batch_where, quoted(*request.batch) + " is not a batch",
                      "give its number, 1 or more");
    story.batch = static_cast<std::int64_t>(number);
  }
  for (const auto& text : request.weighed)
    story.used.push_back(used_alkali(text, terms.place("weighed")));
  for (const auto& text : request.added)
    story.added.push_back(added_fat(text, terms.place("added")));
  for (const auto& text : request.purity)
    story.purities.push_back(bought_purity(text, terms.place("purity")));
  refuse_twice(story);
  if (story.used.empty() && !story.added.empty())
    throw UserError(story.added.front().where,
                    "gives fats that were added, but not the lye they were added to",
                    "give with " + terms.say({"weighed"}) + " what the lye was made of");
  if (story.used.empty() && story.batch)
    throw UserError(story.batch_where, "is given without the lye that was already weighed",
                    "give with " + terms.say({"weighed"}) + " what went into that batch");
  return story;
}

}  // namespace brimwright::service
