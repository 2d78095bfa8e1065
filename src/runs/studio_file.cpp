#include "runs/studio_file.h"

#include "schemas/kinds.h"
#include "units/reading.h"

#include <algorithm>
#include <filesystem>
#include <initializer_list>

namespace brimwright::runs {
namespace {

namespace fs = std::filesystem;

constexpr std::int64_t most_moulds = 1000;  // beyond any studio

/// Complains of a key of `section` that is none of `keys`.
void know(const std::optional<Fields>& section, std::initializer_list<std::string_view> keys) {
  if (!section) return;
  for (const std::string_view key : keys) section->has(key);
  section->refuse_unknown();
}

void know_trade(const Fields& studio) {
  if (const auto packs = studio.optional_object("packs"))
    for (const std::string& material : packs->keys())
      for (const Fields& pack : packs->objects(material))
        know(pack, {"holds", "density", "paid", "from", "as_of", "confirmed"});
  if (const auto sellers = studio.optional_object("sellers"))
    for (const std::string& seller : sellers->keys())
      know(sellers->optional_object(seller), {"postage", "postage_free_from", "lead_time"});
}

void know_what_stands_ready(const Fields& studio) {
  if (const auto blends = studio.optional_object("blends"))
    for (const std::string& name : blends->keys()) {
      const auto blend = blends->optional_object(name);
      know(blend, {"fats", "made_on", "from", "note"});
      if (!blend) continue;
      for (const Fields& fat : blend->objects("fats")) know(fat, {"fat", "share"});
    }
  const auto solutions = studio.optional_object("lye_solutions");
  if (!solutions) return;
  for (const std::string& name : solutions->keys()) {
    const auto solution = solutions->optional_object(name);
    if (solution) know(solution->optional_object("made_from"), {"purity"});
    know(solution, {"alkali", "strength", "strength_range", "kept_at", "made_from", "made_on",
                    "from", "note"});
  }
}

void know_selling(const Fields& studio) {
  for (const Fields& one : studio.objects("packaging")) know(one, {"material", "each_piece"});
  know(studio.optional_object("work"), {"paid_an_hour", "each_batch", "each_piece_made",
                                        "each_tray_fill", "each_piece_packed", "learned"});
  know(studio.optional_object("overhead"), {"each_batch", "each_piece_made"});
  know(studio.optional_object("tax"), {"rate", "prices_paid", "prices_asked"});
  know(studio.optional_object("fees"), {"of_price", "each_order"});
  if (const auto ways = studio.optional_object("asking"))
    for (const std::string& way : ways->keys())
      know(ways->optional_object(way), {"margin", "markup", "price"});
}

void know_days(const Fields& studio) {
  const auto days = studio.optional_object("days");
  know(days, {"making", "small_jobs", "off", "pots_owned", "bowls_owned", "used_a_day",
              "rack_places", "cast_beforehand", "one_lye_a_day"});
  if (!days) return;
  know(days->optional_object("making"),
       {"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"});
  know(days->optional_object("one_lye_a_day"), {"holds", "pot_tare", "saves", "confirmed"});
}

void know_all(const Fields& studio) {
  studio.optional_text("$schema");
  studio.optional_name("name");
  studio.optional_text("note");
  for (const std::string_view section : studio_sections) studio.has(section);
  know(studio, {"currency", "serves_as", "packaging", "work", "overhead", "tax", "fees", "asking",
                "price_endings", "letterhead", "days"});
  if (const auto scales = studio.optional_object("scales")) {
    know(scales, {"large", "fine", "confirmed"});
    for (const auto* scale : {"large", "fine"})
      know(scales->optional_object(scale), {"step", "most", "confirmed"});
  }
  if (const auto losses = studio.optional_object("losses")) {
    know(losses, {"pour", "pipe"});
    know(losses->optional_object("pour"),
         {"overpour", "pot", "jugs", "test_piece", "confirmed", "learned"});
    know(losses->optional_object("pipe"),
         {"bag", "bowl_and_whisk", "tip", "each_bag_change", "confirmed", "learned"});
  }
  know(studio.optional_object("pots"), {"holds", "lye_jug", "confirmed"});
  know(studio.optional_object("bowl"), {"holds", "whisk_needs", "confirmed"});
  know(studio.optional_object("lye_spoon"), {"holds", "time_between", "confirmed"});
  if (const auto temperatures = studio.optional_object("temperatures")) {
    know(temperatures, {"pour", "pipe"});
    for (const auto* batter : {"pour", "pipe"})
      know(temperatures->optional_object(batter),
           {"room_at", "water_at", "ice_share", "lye_used_at", "fats_at", "batter_below",
            "cooled_in"});
  }
  know(studio.optional_object("label"), {"market"});
  know_what_stands_ready(studio);
  know_days(studio);
  know_trade(studio);
  know_selling(studio);
}

/// The file that a mould's name means, as it is known everywhere; empty where it is none.
std::string file_of(const std::string& name, const Place& where, const moulds::Library& library) {
  try {
    return library.resolve(name, where);
  } catch (const UserError&) {
    return {};  // a mould that is not there any more is no reason to refuse a run of another
  }
}

}  // namespace

Studio::Studio(const Fields& fields) : fields_(fields) {
  fields.of(schemas::studio());
  know_all(fields);
  fields.have_none_unknown();
}

std::optional<Fields> Studio::section(std::string_view key) const {
  return fields_ ? fields_->optional_object(key) : std::nullopt;
}

std::optional<Volume> Studio::cup(const std::optional<std::string>& name,
                                  const Place& where) const {
  const auto cups = section("cups");
  const auto names = cups ? cups->keys() : std::vector<std::string>();
  if (!name && names.empty()) return std::nullopt;
  if (!names.empty()) lend("cups");
  if (!name && names.size() == 1) return cups->positive_volume(names.front(), "50 ml");
  std::string listed;
  for (const auto& one : names) listed += (listed.empty() ? "\"" : ", \"") + one + "\"";
  if (!name)
    throw UserError(where, "is missing, and the studio has several cups",
                    "name the one that was weighed as \"cup\": " + listed);
  if (std::find(names.begin(), names.end(), *name) != names.end())
    return cups->positive_volume(*name, "50 ml");
  const auto near = nearest_name(*name, names);
  throw UserError(where, "\"" + *name + "\" is not a cup of the studio",
                  near             ? "did you mean \"" + *near + "\"?"
                  : listed.empty() ? "give what the cup \"holds\" instead"
                                   : "name one of " + listed + ", or give what it \"holds\"");
}

std::optional<int> Studio::owned(const std::string& file, const moulds::Library& library) const {
  const auto moulds = section("moulds_owned");
  if (!moulds) return std::nullopt;
  for (const std::string& name : moulds->keys())
    if (file_of(name, moulds->place(name), library) == file) {
      lend("moulds_owned");
      return static_cast<int>(moulds->whole_number(name, 1, most_moulds));
    }
  return std::nullopt;
}

std::optional<planning::HandCorrection> Studio::hand(const std::string& tip) const {
  const auto hands = section("hand");
  const auto own = hands ? hands->optional_object(tip) : std::nullopt;
  if (!own) return std::nullopt;
  lend("hand");
  return planning::read_correction(*own);
}

Studio studio_for(const std::string& file, const moulds::Library& library) {
  std::string path = library.studio;
  if (path.empty()) {
    const fs::path beside = fs::path(file).parent_path() / "studio.json";
    std::error_code none;
    if (!fs::is_regular_file(beside, none)) return {};
    path = beside.string();
  }
  if (library.named) library.named->push_back(path);
  return *library.once<Studio>(path, [&] { return Studio(library.document(path)); });
}

}  // namespace brimwright::runs
