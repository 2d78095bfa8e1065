#include "runs/cut_reading.h"

#include "planning/usual_bench.h"

#include <string>
#include <string_view>

namespace brimwright::runs {
namespace {

planning::BarSize bar_size(const Fields& bar) {
  const bool sliced = bar.has("thickness"), in_a_grid = bar.has("length") || bar.has("width");
  if (sliced == in_a_grid)
    throw UserError(bar.place(), sliced ? "gives its size in two ways" : "gives no size",
                    "give \"thickness\" to slice a loaf, or \"length\" and \"width\" to cut a "
                    "slab");
  const auto asked = [&](std::string_view key, std::string_view measure) {
    const Length length = bar.positive_length(key, sliced ? "25 mm" : "75 mm");
    planning::usual_bench().ask(bar, key, measure, length);
    return length;
  };
  const planning::BarSize size =
      sliced ? planning::BarSize(planning::Slices{asked("thickness", "bar's thickness")})
             : planning::BarSize(
                   planning::Grid{asked("length", "bar's side"), asked("width", "bar's side")});
  bar.refuse_unknown();
  return size;
}

planning::Axis axis(const Fields& cut, const std::string& key) {
  const std::string name = cut.choice(key, {"x", "y", "z"});
  if (name == "z") return planning::Axis::z;
  return name == "x" ? planning::Axis::x : planning::Axis::y;
}

Length asked_length(const Fields& fields, const std::string& key, std::string_view measure) {
  const Length length = fields.length(key);
  planning::usual_bench().ask(fields, key, measure, length);
  return length;
}

Length length_or_none(const Fields& fields, const std::string& key, std::string_view measure) {
  return fields.has(key) ? asked_length(fields, key, measure) : Length();
}

}  // namespace

planning::Cut read_cut(const Fields& fields) {
  planning::Cut cut{.bar = bar_size(fields.object("bar"))};
  if (fields.has("along")) cut.along = axis(fields, "along");
  cut.end_trim = length_or_none(fields, "end_trim", "trim");
  cut.side_trim = length_or_none(fields, "side_trim", "trim");
  cut.top_planing = length_or_none(fields, "top_planing", "planing");
  cut.kerf = asked_length(fields, "kerf", "kerf");  // a silent 0 would be wrong for a saw
  cut.face_planing = length_or_none(fields, "face_planing", "planing");
  fields.refuse_unknown();
  return cut;
}

}  // namespace brimwright::runs
