#include "units/usual_measures.h"

#include "units/complaint_facts.h"
#include "units/reading.h"
#include "units/written_number.h"

#include <limits>
#include <stdexcept>

namespace brimwright {
namespace {

/// `text` in the unit that such quantities have inside.
double base_of(const std::string& kind, const std::string& text, const Place& where) {
  if (kind == "volume") return read_volume(text, where).base();
  if (kind == "mass") return read_mass(text, where).base();
  if (kind == "length") return read_length(text, where).base();
  if (kind == "area") return read_area(text, where).base();
  if (kind == "mass on an area") return read_area_density(text, where).base();
  if (kind == "density") return read_density(text, where).base();
  if (kind == "share") return read_share(text, where).of_one();
  if (kind == "time") return static_cast<double>(read_short_time(text, where).count());
  if (kind == "number") return read_number(text, where);
  throw std::logic_error(where.file + ": no such kind of measure: " + kind);
}

}  // namespace

UsualMeasures::UsualMeasures(std::string_view text, std::string file) {
  const Fields data = Fields::parse(text, std::move(file));
  for (const Fields& entry : data.objects("measures")) {
    constexpr double none = std::numeric_limits<double>::infinity();
    const std::string kind = entry.text("in");
    const auto least = entry.optional_text("least"), most = entry.optional_text("most");
    Usual usual{least ? base_of(kind, *least, entry.place("least")) : -none,
                most ? base_of(kind, *most, entry.place("most")) : none,
                least && most ? *least + " to " + *most
                : least       ? *least + " or more"
                              : "at most " + *most,
                entry.text("what"),
                entry.text("slip"),
                entry.text("source")};
    if (!(usual.least < usual.most))
      throw std::logic_error(data.file() + ": a range without room: " + usual.what);
    entry.optional_text("note");
    by_measure_.emplace(entry.text("measure"), std::move(usual));
    entry.refuse_unknown();
  }
}

const Usual& UsualMeasures::of(std::string_view measure) const {
  const auto found = by_measure_.find(measure);
  if (found != by_measure_.end()) return found->second;
  throw std::logic_error("nothing is known of what is usual for " + std::string(measure));
}

bool Usual::holds(double value) const {
  // A hair of binary fractions is no difference.
  return value >= least * (1 - 1e-9) && value <= most * (1 + 1e-9);
}

void ask_once(const Fields& object, const Place& where, const Usual& usual, double value,
              const std::string& shown) {
  const bool is_confirmed = object.confirms(shown);
  if (usual.holds(value)) return;
  const std::string far = quoted(shown) + " is far from usual for " + usual.what + ", " +
                          usual.range + " (" + usual.source + ")";
  const std::string named = "\"confirmed\": " + quoted(shown);
  if (!is_confirmed)
    throw UserErrorWithFacts(
        where, far,
        "is it a slip (" + usual.slip + ")? If it is right, put " + named + " into that object",
        {.keeps = {{.at = object.place("confirmed").field, .figure = shown}}});
  if (!object.confirms_all()) return;
  object.say({Severity::caution, where.field + ": " + far +
                                     ". \"confirmed\": true keeps whatever stands there; " + named +
                                     " keeps this value alone."});
}

}  // namespace brimwright
