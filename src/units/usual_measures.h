#pragma once

#include "units/fields.h"
#include "units/quantity.h"
#include "units/share.h"

#include <chrono>
#include <map>
#include <string>
#include <string_view>

namespace brimwright {

/// What is usual for one kind of measure. Its ends are in the unit that quantities have inside.
struct Usual {
  double least, most;
  std::string range;  // "20 ml to 360 ml"
  std::string what;   // "a weigh-cup"
  std::string slip;   // "the bowl for the cup"
  std::string source;

  bool holds(double value) const;
};

/// Asks once for `value`, which stands at `where` in `object` or comes of all that it says: far
/// from usual it is refused with the usual range, the slip it may be and how to keep it, until
/// "confirmed" in `object` names it as it is `shown`. "confirmed": true keeps whatever is in the
/// object; as that would cover the next slip too, it is then said of the document.
void ask_once(const Fields& object, const Place& where, const Usual& usual, double value,
              const std::string& shown);

/// What is usual for many kinds of measure, from a data file of the room that asks.
class UsualMeasures {
 public:
  /// Of `text`, a room's own data: a mistake in it is a fault of ours.
  UsualMeasures(std::string_view text, std::string file);

  const Usual& of(std::string_view measure) const;

  /// Asks for the value that stands at `key` of `object`.
  template <int LengthPower, int MassPower>
  void ask(const Fields& object, std::string_view key, std::string_view measure,
           Quantity<LengthPower, MassPower> value) const {
    ask_once(object, object.place(key), of(measure), value.base(), object.text(key));
  }
  void ask(const Fields& object, std::string_view key, std::string_view measure,
           std::chrono::seconds value) const {
    ask_once(object, object.place(key), of(measure), static_cast<double>(value.count()),
             object.text(key));
  }
  void ask(const Fields& object, std::string_view key, std::string_view measure,
           Share value) const {
    ask_once(object, object.place(key), of(measure), value.of_one(), object.text(key));
  }

  /// Asks for what comes of all that `object` says, printed as `shown`.
  template <int LengthPower, int MassPower>
  void ask_found(const Fields& object, std::string_view measure,
                 Quantity<LengthPower, MassPower> value, const std::string& shown) const {
    ask_once(object, object.place(), of(measure), value.base(), shown);
  }
  void ask_found(const Fields& object, std::string_view measure, double value,
                 const std::string& shown) const {
    ask_once(object, object.place(), of(measure), value, shown);
  }

 private:
  std::map<std::string, Usual, std::less<>> by_measure_;
};

}  // namespace brimwright
