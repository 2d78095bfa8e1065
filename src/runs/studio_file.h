#pragma once

#include "moulds/library.h"
#include "moulds/mould.h"
#include "planning/tips.h"
#include "units/fields.h"

#include <array>
#include <optional>
#include <set>
#include <string>
#include <string_view>

namespace brimwright::runs {

/// What a studio may say, in the order in which it is told what a run takes of it.
inline constexpr std::array<std::string_view, 21> studio_sections = {
    "scales",    "losses", "spoilage",      "temperatures", "pots",     "bowl",  "bag_holds",
    "lye_spoon", "cups",   "lye_solutions", "blends",       "own_tips", "hand",  "moulds_owned",
    "kerf",      "prices", "packs",         "sellers",      "have",     "waste", "label"};

/// What is the same in every run of a studio (schema brimwright.studio/1), of which a run takes
/// what it does not say itself. Without a file there is nothing in it.
class Studio {
 public:
  Studio() = default;
  /// UserError for a key that no studio has. What stands in its sections is read, and complained
  /// of, by whoever takes it.
  explicit Studio(const Fields& fields);

  /// The studio's document; nothing where there is no file.
  const std::optional<Fields>& fields() const { return fields_; }
  /// A section of it, where it has one.
  std::optional<Fields> section(std::string_view key) const;

  /// The volume of the weigh-cup that `cup` names; without a name, of the only one there is.
  /// UserError at `where` for a name that is none of them, and where one of several is meant.
  std::optional<Volume> cup(const std::optional<std::string>& cup, const Place& where) const;
  /// How many she owns of the mould in `file`.
  std::optional<int> owned(const std::string& file, const moulds::Library& library) const;
  /// The correction for her hand with the tip of that name.
  std::optional<planning::HandCorrection> hand(const std::string& tip) const;

  /// Keeps that a section was taken by other ways than Fields::complete_from.
  void lend(std::string_view section) const { lent_.emplace(section); }
  /// The sections that were.
  const std::set<std::string>& lent() const { return lent_; }

 private:
  std::optional<Fields> fields_;
  mutable std::set<std::string> lent_;
};

/// The studio of a run in `file`: the one that was named to the program, or else the file
/// studio.json beside it. No folder above is looked in.
Studio studio_for(const std::string& file, const moulds::Library& library);

}  // namespace brimwright::runs
