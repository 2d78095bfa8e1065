#include "service/like_moulds.h"

#include "moulds/mould_file.h"
#include "service/ordered.h"
#include "units/user_error.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace brimwright::service {
namespace {

bool are_like(const moulds::Mould& one, const moulds::Mould& other) {
  constexpr double apart = 0.01;
  const auto within = [](double a, double b) { return std::abs(a - b) <= apart * std::max(a, b); };
  if (one.cavities != other.cavities) return false;
  const Length high = one.curve.height();
  if (!within(high / millimetre, other.curve.height() / millimetre)) return false;
  for (const double share : {0.25, 0.5, 0.75, 1.0})
    if (!within(one.curve.volume_below(share * high) / millilitre,
                other.curve.volume_below(share * high) / millilitre))
      return false;
  return true;
}

/// Counts the studio's like moulds with those that runs use.
class Likes {
 public:
  Likes(DayWork& work, const moulds::Library& library) : work_(work), library_(library) {}

  void count(const std::map<std::string, const moulds::Mould*>& used, const runs::Studio& studio) {
    const auto owned = studio.section("moulds_owned");
    if (!owned) return;
    for (const std::string& name : owned->keys()) {
      const auto mould = mould_named(name, owned->place(name));
      if (!mould || used.contains(one_name_of(mould->file))) continue;
      for (const auto& [file, own] : used)
        if (are_like(*own, *mould)) {
          add(work_.studio.moulds[work_.moulds.at(file)], *mould,
              static_cast<int>(owned->whole_number(name, 1, 1000)));
          break;  // no mould counts with two
        }
    }
  }

 private:
  std::optional<moulds::Mould> mould_named(const std::string& name, const Place& where) const {
    try {
      return moulds::read_mould(library_.resolve(name, where), library_);
    } catch (const UserError&) {
      return std::nullopt;  // none of the runs needs it
    }
  }

  void add(days::Mould& to, const moulds::Mould& like, int count) {
    to.owned += count;
    work_.notes.push_back({Severity::note, "\"" + like.name + "\" counts with \"" + to.name +
                                               "\": a cavity holds the same within 1 %. " +
                                               counted(to.owned, "mould") + " in all."});
  }

  DayWork& work_;
  const moulds::Library& library_;
};

}  // namespace

void count_like_moulds(DayWork& work, const std::map<std::string, const moulds::Mould*>& used,
                       const runs::Studio& studio, const moulds::Library& library) {
  Likes(work, library).count(used, studio);
}

}  // namespace brimwright::service
