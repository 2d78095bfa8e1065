#pragma once

#include "moulds/library.h"
#include "service/stock_place.h"
#include "units/user_error.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// What materials are called in a studio's files: its own lists, and the runs and formulas of its
/// folder. A file there that cannot be read tells of none.
class MaterialNames {
 public:
  MaterialNames(const StockPlace& place, const moulds::Library& library);

  /// A material as lots call it. `make` is what the goods are called where they serve as it, and of
  /// dry alkali where that tells how pure it is ("KOH 85 %").
  struct Named {
    std::string material, make = {};
    bool is_known = true;                  // in any of those files
    std::optional<std::string> near = {};  // of what is not, the nearest that is
  };
  /// UserError at `where` for a word that is used for several.
  Named named(const std::string& typed, const Place& where) const;
  /// One name for each thing that is bought, for people.
  std::vector<std::string> offered() const;

 private:
  void add(const std::string& name);
  void add_studio();
  void add_folder(const moulds::Library& library);
  void add_run(const Fields& run, const moulds::Library& library);
  void add_formula(const Fields& formula, const moulds::Library& library);

  const StockPlace& place_;
  std::vector<std::string> names_;
  std::map<std::string, std::string> own_fats_;  // ids, by their names in small letters
};

/// Whether `name` is dry alkali of a stated purity, which goes with no plan for another.
bool is_make_of_alkali(const std::string& name);

/// To people: of a fat its name, not its id.
std::string shown_material(const std::string& material);

}  // namespace brimwright::service
