#include "reports/vessel_filling.h"

#include "reports/text_mark.h"
#include "units/rounding.h"
#include "units/weight_text.h"

#include <utility>

namespace brimwright::reports {
namespace {

using Kind = Vessel::Kind;

bool is_plain(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); }

/// A running total at which alkali or lye stops comes never late.
Rounded total_towards(Kind kind) {
  return kind == Kind::lye || kind == Kind::lye_pot || kind == Kind::share ? Rounded::down
                                                                           : Rounded::nearest;
}

Mass to_step(Mass mass, Mass step, Rounded towards) {
  if (towards == Rounded::nearest) return rounded_nearest(mass, step);
  return towards == Rounded::down ? rounded_down(mass, step) : rounded_up(mass, step);
}

}  // namespace

std::string on_display(Mass mass, Mass step, Rounded towards) {
  return on_scale(to_step(mass, step, towards), step, towards);
}

std::string key_part(const std::string& name) {
  std::string part;
  bool is_whole = true;
  for (char c : name) {
    is_whole = is_whole && static_cast<unsigned char>(c) < 128;
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    if (is_plain(c))
      part += c;
    else if (!part.empty() && part.back() != '-')
      part += '-';
  }
  if (!part.empty() && part.back() == '-') part.pop_back();
  if (is_whole && !part.empty()) return part;
  return part + (part.empty() ? "" : "-") + text_mark(name).substr(0, 8);
}

void note(WeighOutRow& row, const std::string& words) {
  row.note += (row.note.empty() ? "" : "; ") + words;
}

void note_weighings(WeighOutRow& row, std::int64_t weighings) {
  if (weighings > 1)
    note(row, "too much for the scale: weigh in " + std::to_string(weighings) + " portions");
}

Filling::Filling(Vessel vessel, std::optional<Mass> on_scale_of)
    : vessel_(std::move(vessel)), step_(on_scale_of) {}

void Filling::put(WeighOutRow row) {
  row.key = free_key(vessel_.key + "." + row.key, vessel_.rows);
  row.shown = on_display(row.mass, row.step, row.towards);
  row.beside = beside_scale(to_step(row.mass, row.step, row.towards), row.step, row.towards);
  vessel_.total += row.mass - row.set_aside;
  if (step_) {
    row.running = vessel_.total;
    row.running_shown = on_display(vessel_.total, *step_, total_towards(vessel_.kind));
  }
  finest_ = std::min(finest_, row.step);
  vessel_.rows.push_back(std::move(row));
}

void Filling::say(const std::string& text) { vessel_.words.push_back({text}); }
void Filling::order(const std::string& text) { vessel_.words.push_back({text, true}); }
void Filling::order_first(const std::string& text) { vessel_.words.push_back({text, true, true}); }

Vessel Filling::filled() {
  vessel_.total_shown =
      on_display(vessel_.total, step_.value_or(finest_), total_towards(vessel_.kind));
  return std::move(vessel_);
}

}  // namespace brimwright::reports
