#include "service/recorded_stock.h"

#include "records/lots.h"
#include "service/stock_place.h"
#include "units/written_number.h"

#include <algorithm>
#include <filesystem>
#include <set>
#include <utility>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;

using records::Lot;
using records::StandingLot;

/// What the lot is called where packs are: its goods' own name while they serve as the material, or
/// tell how pure it is.
const std::string& listed_name(const Lot& lot, const runs::Supplies& supplies) {
  const bool is_make =
      !lot.make.empty() && (supplies.serves_as.contains(lot.make) || is_make_of_alkali(lot.make));
  return is_make ? lot.make : lot.material;
}

/// Lots of alkali once had no make.
bool are_of_one_make(const Lot& lot, const std::string& make) {
  return lot.make == make || (lot.make.empty() && is_make_of_alkali(make));
}

void put(runs::Supplies& supplies, const StandingLot& one, const Place& where) {
  const auto [shelf, is_new] =
      supplies.have.try_emplace(listed_name(one.lot, supplies), runs::OnShelf{one.there(), where});
  if (!is_new && shelf->second.amount.is_alike(one.there()))
    shelf->second.amount = shelf->second.amount + one.there();
}

std::string past_words(const StandingLot& one) {
  return "Lot " + one.lot.code + " of " +
         (one.lot.make.empty() ? shown_material(one.lot.material) : one.lot.make) +
         " is past its best-before day, " + *one.lot.best_before + ", and is not counted.";
}

}  // namespace

std::vector<std::string> have_left_out(const runs::Supplies& supplies, const MaterialNames& names,
                                       const records::Records& records) {
  std::vector<std::string> left_out;
  for (const auto& [listed, shelf] : supplies.have) {
    if (shelf.amount.whole() == 0) continue;
    const auto named = names.named(listed, shelf.where);
    const auto lots = records::lots_of(records, {named.material});
    const bool is_taken = std::any_of(lots.begin(), lots.end(), [&](const StandingLot& one) {
      return one.lot.origin == Lot::Origin::before_records && are_of_one_make(one.lot, named.make);
    });
    if (!is_taken) left_out.push_back(listed);
  }
  return left_out;
}

std::optional<Remark> note_on_have(const std::vector<std::string>& left_out,
                                   const UserTerms& terms) {
  if (left_out.empty()) return std::nullopt;
  std::string names;
  for (const std::string& one : left_out) names += (names.empty() ? "" : ", ") + one;
  return Remark{Severity::caution, "What the studio's \"have\" lists (" + names +
                                       ") is not counted, as lots are recorded: stock with " +
                                       terms.say({"take-have"}) + " makes lots of it, once."};
}

std::optional<records::Records> records_of(const std::vector<std::string>& runs) {
  std::set<std::string> folders;
  for (const std::string& run : runs) {
    std::error_code none;
    const fs::path folder = fs::path(run).parent_path();
    folders.insert(fs::weakly_canonical(folder.empty() ? "." : folder, none).string());
  }
  std::optional<records::Records> found;
  for (const std::string& folder : folders) {
    auto its = records::Records::in(folder);
    if (!its) continue;
    if (found)
      throw UserError({its->path(), ""}, "are other records than " + found->path(),
                      "ask for the runs of each folder by themselves");
    found = std::move(its);
  }
  return found;
}

void put_notes(reports::Buying& buying, const Shelf& shelf) {
  buying.notes.insert(buying.notes.end(), shelf.notes.begin(), shelf.notes.end());
}

Shelf with_recorded_stock(runs::Supplies supplies, const std::vector<std::string>& runs,
                          const std::string& day, const moulds::Library& library,
                          const UserTerms& terms) {
  Shelf shelf{.supplies = std::move(supplies)};
  const auto records = records_of(runs);
  if (!records) return shelf;
  if (library.named) library.named->push_back(records->path());
  if (!shelf.supplies.have.empty()) {
    const StockPlace place = stock_place(fs::path(records->path()).parent_path().string(), library);
    const MaterialNames names(place, library);
    if (auto note = note_on_have(have_left_out(shelf.supplies, names, *records), terms))
      shelf.notes.push_back(std::move(*note));
  }
  shelf.supplies.have.clear();
  for (const StandingLot& one : records::standing_lots(*records)) {
    if (one.left <= 0) continue;
    if (!day.empty() && one.lot.is_past(day))
      shelf.notes.push_back({Severity::caution, past_words(one)});
    else
      put(shelf.supplies, one, {records->path(), ""});
  }
  return shelf;
}

}  // namespace brimwright::service
