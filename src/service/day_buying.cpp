#include "service/day_buying.h"

#include "planning/cost.h"
#include "runs/supplies.h"
#include "service/purchasing.h"
#include "units/written_number.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>

namespace brimwright::service {
namespace {

using reports::Buying;
using Names = std::set<std::string>;

/// What is melted for casts, by the names that prices go by.
Names cast_of(const planning::Run& run) {
  Names names;
  for (const auto& decoration : run.decorations)
    if (!std::holds_alternative<planning::Drizzle>(decoration.made) &&
        !planning::is_bought(decoration))
      names.insert(decoration.material);
  return names;
}

Names cast_of(const DayLine& line) {
  Names names;
  for (const DayPart& part : line.parts) names.merge(cast_of(*part.run));
  return names;
}

Names made_of(const DayLine& line) {
  const Names casts = cast_of(line);
  Names names;
  for (const DayPart& part : line.parts)
    for (const auto& used : planning::materials_used(*part.plan)) {
      if (!casts.contains(used.name)) names.insert(used.name);
      for (const auto& made : used.made_of) names.insert(made.price_name);  // ahead, by herself
    }
  return names;
}

const trade::Seller* seller_named(const Buying& buying, const std::string& name) {
  const auto known = std::find_if(buying.sellers.begin(), buying.sellers.end(),
                                  [&](const trade::Seller& one) { return one.name == name; });
  return known == buying.sellers.end() ? nullptr : &*known;
}

int lead_of(const Buying& buying, const std::string& seller) {
  const auto* known = seller_named(buying, seller);
  return known && known->lead_days ? *known->lead_days : 0;
}

/// The longest lead of each material that is to be bought.
std::map<std::string, int> leads(const Buying& buying) {
  std::map<std::string, int> leads;
  for (const auto& delivery : buying.purchase.deliveries)
    for (const auto& bought : delivery.packs) {
      int& lead = leads[buying.packs[bought.pack].material];
      lead = std::max(lead, lead_of(buying, delivery.seller));
    }
  for (const auto& one : buying.materials)
    if (one.is_unpriced && one.to_buy.whole() > 0) leads.emplace(one.name, 0);
  return leads;
}

days::Lead longest(const std::map<std::string, int>& leads, const Names& of) {
  days::Lead longest;
  for (const auto& name : of)
    if (const auto lead = leads.find(name); lead != leads.end())
      longest = std::max(longest.value_or(0), lead->second);
  return longest;
}

/// What goes round the pieces of a file, by the names that prices go by.
Names packaging_of(const DayFile& file, const runs::PackagingList& studios) {
  Names names;
  for (const auto& [run, pieces] : file.packed())
    if (pieces > 0)
      for (const auto& one : runs::packaging_of(*run, studios)) names.insert(one.material);
  return names;
}

Names packaging_of(const std::vector<DayFile>& files, const runs::PackagingList& studios) {
  Names names;
  for (const DayFile& file : files) names.merge(packaging_of(file, studios));
  return names;
}

/// What is bought and no line names: it is taken to be needed by every one.
Names unknown_names(const std::map<std::string, int>& leads, const std::vector<DayFile>& files,
                    Names known) {
  for (const DayFile& file : files)
    for (const DayLine& line : file.lines) {
      known.merge(made_of(line));
      known.merge(cast_of(line));
    }
  Names unknown;
  for (const auto& [name, lead] : leads)
    if (!known.contains(name)) unknown.insert(name);
  return unknown;
}

void add(std::string& list, const std::string& name) { list += (list.empty() ? "" : ", ") + name; }

void note_unknown_leads(const Buying& buying, std::vector<Remark>& notes) {
  std::string unknown, nobodys, unlisted;
  for (const auto& delivery : buying.purchase.deliveries) {
    const auto* seller = seller_named(buying, delivery.seller);
    if (delivery.seller.empty())
      for (const auto& bought : delivery.packs)
        add(nobodys, reports::shown_as(buying, buying.packs[bought.pack].material));
    else if (!seller || !seller->lead_days)
      add(unknown, brimwright::quoted(delivery.seller));
  }
  for (const auto& one : buying.materials)
    if (one.is_unpriced && one.to_buy.whole() > 0) add(unlisted, one.shown);
  const auto caution = [&](const std::string& text) { notes.push_back({Severity::caution, text}); };
  if (!unknown.empty())
    caution("No lead time is given for " + unknown +
            ": what is ordered there is taken to come the same day.");
  if (!nobodys.empty())
    caution("No seller is given for " + nobodys +
            ": how long it takes to come is not known, and counts as no time.");
  if (!unlisted.empty())
    caution("No pack is listed of " + unlisted +
            ": how long it takes to come is not known, and counts as no time.");
}

void earlier(std::optional<days::Day>& day, days::Day other) {
  day = day ? std::min(*day, other) : other;
}

/// When a material is first needed, and by which of what is asked about.
struct Need {
  std::optional<days::Day> day = {};
  std::size_t asked = 0;

  void at(days::Day other, std::size_t of) {
    if (!day || other < *day) asked = of;
    earlier(day, other);
  }
};

class Needs {
 public:
  Needs(const std::vector<DayFile>& files, const reports::DaysReport& report) {
    const auto& schedule = report.schedule;
    for (std::size_t b = 0; b < schedule.batches.size(); ++b) {
      const auto& batch = schedule.batches[b];
      const std::size_t asked = report.deliveries[batch.delivery].asked;
      const DayLine& line = files[asked].lines[batch.line];
      first_.at(batch.chilled.value_or(batch.poured), asked);
      for (const auto& name : made_of(line))
        needs_[name].at(batch.chilled.value_or(batch.poured), asked);
      for (const auto& cast : schedule.casts)
        if (cast.batch == b)
          for (const auto& name : cast_of(line)) needs_[name].at(cast.day, asked);
    }
  }
  void packed(const std::vector<DayFile>& files, const runs::PackagingList& packaging,
              const reports::DaysReport& report) {
    for (const auto& packing : report.schedule.packing) {
      const std::size_t asked = report.deliveries[packing.delivery].asked;
      for (const auto& name : packaging_of(files[asked], packaging))
        needs_[name].at(packing.day, asked);
    }
  }

  /// What none of the lines names is needed by the first of all.
  const Need& of(const std::string& name) const {
    const auto known = needs_.find(name);
    return known == needs_.end() || !known->second.day ? first_ : known->second;
  }

 private:
  Need first_;
  std::map<std::string, Need> needs_;
};

days::Day last_open(const days::Calendar& calendar, days::Day day) {
  while (calendar.is_off(day)) day -= std::chrono::days(1);
  return day;
}

}  // namespace

Buying buying_for_days(std::vector<DayFile>& files, const runs::Studio& studio,
                       runs::Supplies supplies, const runs::PackagingList& packaging,
                       std::vector<Remark>& notes) {
  Buying buying;
  buying.studio = studio.fields()->file();
  std::vector<const planning::Run*> runs;
  for (const DayFile& file : files) {
    add_materials(buying.materials, file.materials());
    for (const auto& [run, pieces] : file.packed()) {
      if (pieces == 0) continue;
      agree_on_currency(*run, supplies);
      add_packaging(buying.materials, *run, pieces, runs::packaging_of(*run, packaging));
      if (const auto words = runs::own_packaging_words(*run, packaging))
        notes.push_back({Severity::note, *words});
      runs.push_back(run);
    }
  }
  take_off_stock(buying.materials, supplies, runs);
  buy(buying, supplies, runs);
  notes.insert(notes.end(), buying.notes.begin(), buying.notes.end());
  if (buying.packs.empty()) {
    notes.push_back({Severity::caution,
                     "The studio lists no packs of its sellers: no day to order by is "
                     "given, and everything is taken to be there."});
    return buying;
  }
  note_unknown_leads(buying, notes);
  for (const auto& one : buying.materials)
    if (one.is_from_tap) notes.push_back({Severity::note, reports::tap_words()});
  const auto all = leads(buying);
  const Names nobodys = unknown_names(all, files, packaging_of(files, packaging));
  for (auto& file : files) {
    file.pack_lead = longest(all, packaging_of(file, packaging));
    for (DayLine& line : file.lines) {
      Names made = made_of(line);
      made.insert(nobodys.begin(), nobodys.end());
      line.make_lead = longest(all, made);
      line.cast_lead = longest(all, cast_of(line));
    }
  }
  return buying;
}

std::vector<reports::DaysReport::Ordering> orderings(const Buying& buying,
                                                     const runs::PackagingList& packaging,
                                                     const std::vector<DayFile>& files,
                                                     const reports::DaysReport& report) {
  if (buying.packs.empty()) return {};
  Needs needs(files, report);
  needs.packed(files, packaging, report);
  std::vector<reports::DaysReport::Ordering> all;
  const auto add = [&](const std::string& seller, const Names& materials, bool is_unlisted) {
    Need first;
    reports::DaysReport::Ordering one{
        .seller = seller, .is_unlisted = is_unlisted, .materials = {}, .ordered = {}, .needed = {}};
    for (const auto& name : materials) {
      const Need& need = needs.of(name);
      if (!need.day) continue;
      first.at(*need.day, need.asked);
      one.materials.push_back(reports::shown_as(buying, name));
    }
    if (!first.day) return;
    one.asked = first.asked;
    one.needed = *first.day;
    one.ordered =
        last_open(report.studio.calendar, one.needed - std::chrono::days(lead_of(buying, seller)));
    all.push_back(std::move(one));
  };
  for (const auto& delivery : buying.purchase.deliveries) {
    Names materials;
    for (const auto& bought : delivery.packs) materials.insert(buying.packs[bought.pack].material);
    add(delivery.seller, materials, false);
  }
  Names unlisted;
  for (const auto& one : buying.materials)
    if (one.is_unpriced && one.to_buy.whole() > 0) unlisted.insert(one.name);
  if (!unlisted.empty()) add("", unlisted, true);
  return all;
}

}  // namespace brimwright::service
