#include "service/figure_taking.h"

#include "moulds/mould_file.h"
#include "planning/topping.h"
#include "reports/learned_report.h"
#include "runs/named_files.h"
#include "runs/run_file.h"
#include "runs/studio_file.h"
#include "schemas/kinds.h"
#include "schemas/value_editing.h"
#include "service/learned_entry.h"
#include "units/fields.h"
#include "units/shown_text.h"
#include "units/written_number.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>
#include <utility>
#include <vector>

namespace brimwright::service {
namespace {

using Json = nlohmann::ordered_json;
using schemas::KeyPath;

Json document_of(const std::string& file) { return Json::parse(text_of_file(file)); }

const std::map<std::string, KeyPath>& loss_objects() {
  static const KeyPath pour = {"losses", "pour"}, pipe = {"losses", "pipe"};
  static const std::map<std::string, KeyPath> objects = {
      {"overpour", pour},       {"pot", pour}, {"jugs", pour},           {"bag", pipe},
      {"bowl_and_whisk", pipe}, {"tip", pipe}, {"each_bag_change", pipe}};
  return objects;
}

bool is_time(const std::string& name) {
  return name == "each_batch" || name == "each_piece_made" || name == "each_tray_fill" ||
         name == "each_piece_packed";
}

/// "melt_loss:Pearl bead" -> the place of that decoration, and its key.
std::optional<Spot> spot_of_decoration(const std::string& name, const FigureFiles& files) {
  for (const std::string key : {"melt_loss", "left_in_jug"}) {
    if (!name.starts_with(key + ":")) continue;
    const std::string of = name.substr(key.size() + 1);
    const auto at = std::find(files.decorations.begin(), files.decorations.end(), of);
    if (of.empty() || at == files.decorations.end()) return std::nullopt;
    if (std::count(at, files.decorations.end(), of) > 1) return std::nullopt;
    return Spot{files.run, {"decorations", std::to_string(at - files.decorations.begin())}, key};
  }
  return std::nullopt;
}

/// Where a value of that name may stand, the one that counts first.
std::vector<Spot> spots_of(const std::string& name, const FigureFiles& files) {
  std::vector<Spot> spots;
  const auto add = [&](const std::string& file, const KeyPath& object, const std::string& key) {
    if (!file.empty()) spots.push_back({file, object, key});
  };
  if (const auto loss = loss_objects().find(name); loss != loss_objects().end()) {
    add(files.run, loss->second, name);
    add(files.studio, loss->second, name);
  }
  if (name == "density") add(files.base_formula, {}, "measured_density");
  if (name == "cure") add(files.base_formula, {}, "water_lost_in_cure");
  if (name == "volume") add(files.mould, {}, "poured_factor");
  if (name == "hand" && !files.tip.empty()) add(files.studio, {"hand", files.tip}, "correction");
  if (is_time(name)) add(files.studio, {"work"}, name);
  if (name == "topping" && files.has_trials) add(files.run, {"pipe", "trials"}, "volume_each");
  if (name == "topping" && files.outline) add(files.run, {"pipe", "envelope"}, "soap_share");
  if (const auto spot = spot_of_decoration(name, files)) spots.push_back(*spot);
  return spots;
}

/// The one that has it; or else, of losses, the studio's, since the run says none.
Spot spot_to_write(const std::vector<Spot>& spots) {
  for (const Spot& spot : spots)
    if (standing(document_of(spot.file), spot) != nullptr) return spot;
  return spots.back();
}

bool is_below(const std::string& file, const std::string& folder) {
  namespace fs = std::filesystem;
  std::error_code none;
  const fs::path below =
      fs::weakly_canonical(file, none).lexically_relative(fs::weakly_canonical(folder, none));
  return !below.empty() && *below.begin() != "..";
}

void refuse_built_in(const Spot& spot, const Place& where, const moulds::Library& library) {
  if (library.shipped.empty()) return;
  for (const char* folder : {"/moulds", "/examples"})
    if (is_below(spot.file, library.shipped + folder))
      throw UserError(
          where,
          "would stand in " + brimwright::quoted(on_one_line(spot.file)) + ", a built-in file",
          "copy that file into your own folder and name it in the run");
}

void refuse_earlier_version(const Spot& spot) {
  const std::string said = document_of(spot.file).value("schema", std::string());
  const Schema* const kind = schemas::kind_called(said);
  if (kind == nullptr || said == kind->today()) return;
  throw UserError({spot.file, "/schema"}, "is of an earlier version", "tidy the file first");
}

void refuse_what_says_it_otherwise(const std::string& name, const Spot& spot,
                                   const FigureFiles& files, const Place& where) {
  const Json document = document_of(spot.file);
  if (name == "cure" && document.contains("drying"))
    throw UserError(where, "does not go with the formula's own \"drying\"",
                    "take \"drying\" out of " + spot.file + " first, or keep to it");
  if (is_time(name) && !document.contains("work"))
    throw UserError(where, "needs the studio's \"work\", which says what your time costs",
                    "add \"work\" with \"paid_an_hour\" to " + spot.file);
  if (name == "hand" && files.is_hand_of_tip)
    throw UserError(where, "is of a tip whose file says its hand itself",
                    "take \"hand\" out of the file of tips first");
}

void refuse_more_than_its_outline(const learning::Figure& figure, const FigureFiles& files,
                                  const Place& where) {
  const auto* each = std::get_if<Volume>(&figure.writes->value);
  if (each == nullptr || !files.outline || *each <= *files.outline) return;
  throw UserError(where, "is more than the outline of the topping encloses",
                  "measure its diameter and height again");
}

/// Has the file's own reader look at all of it.
void read_again(const std::string& text, const std::string& file, const moulds::Library& library) {
  const Fields fields = Fields::parse(text, file);
  const Schema* const kind = schemas::kind_called(fields.text("schema"));
  if (kind == &schemas::run())
    (void)runs::read_run(fields, library, {});
  else if (kind == &schemas::formula())
    (void)runs::read_formula(fields, library);
  else if (kind == &schemas::mould())
    (void)moulds::read_mould(fields, library);
  else
    (void)runs::Studio(fields);
}

/// As it stands in the file: of an outline the share of it that the topping fills.
Json json_of(const learning::Value& value, const FigureFiles& files) {
  if (const auto* each = std::get_if<Volume>(&value); each && files.outline)
    return reports::value_words(Share::of_one(*each / *files.outline));
  if (const auto* factor = std::get_if<learning::Factor>(&value))
    return std::round(factor->factor * 1e4) / 1e4;
  return reports::value_words(value);
}

void refuse_what_cannot_be(const std::string& name, const learning::Figure& figure,
                           const Spot& spot, const FigureFiles& files, const Place& where,
                           const moulds::Library& library) {
  refuse_built_in(spot, where, library);
  refuse_earlier_version(spot);
  refuse_what_says_it_otherwise(name, spot, files, where);
  refuse_more_than_its_outline(figure, files, where);
}

bool is_taken_already(const Json& document, const Spot& spot, const learning::Figure& figure,
                      const FigureFiles& files) {
  return is_as_taken(document, spot) &&
         *standing(document, spot) == json_of(figure.writes->value, files) &&
         taking_of(document, spot)->value("batches", Json(nullptr)) == figure.values.size();
}

/// As one writes it.
std::string text_of(const Json& value) {
  return value.is_string() ? value.get<std::string>() : value.dump();
}

reports::Taking taking_told(const Json& taking) {
  reports::Taking told{.batches = taking.value("batches", std::size_t{}),
                       .on = taking.value("on", std::string()),
                       .steps = 1 + taking.value("earlier", Json::array()).size()};
  if (const Json before = taking.value("before", Json(nullptr)); !before.is_null())
    told.before = text_of(before);
  return told;
}

/// Of a hand, or another object that was not there before its value was taken, nothing is left.
std::string without_what_is_empty(std::string text, KeyPath object) {
  for (; !object.empty(); object.pop_back()) {
    const Json document = Json::parse(text);
    const Json* const at = value_at(document, object);
    if (at == nullptr || !at->empty()) break;
    text = schemas::without_value(text, object);
  }
  return text;
}

[[noreturn]] void refuse_name(const std::string& name, const Place& where) {
  throw UserError(where, "\"" + name + "\" is not a figure that stands in a file of this run",
                  "give a name that is listed, such as \"pot\" or \"density\"");
}

}  // namespace

FigureFiles figure_files(const planning::Run& run, const moulds::Library& library) {
  FigureFiles files{.run = run.file,
                    .studio = {},
                    .mould = run.pour.mould.file,
                    .base_formula = run.pour.formula.file};
  const runs::Studio studio = runs::studio_for(run.file, library);
  if (studio.fields()) files.studio = studio.fields()->file();
  if (run.pipe && run.pipe->beads) {
    const planning::Tip& tip = run.pipe->beads->tip;
    files.tip = tip.name;
    files.is_hand_of_tip = tip.hand && !studio.hand(tip.name);
  }
  files.has_trials = run.pipe && run.pipe->trials;
  if (run.pipe && run.pipe->envelope && !run.pipe->trials && !run.pipe->beads)
    files.outline =
        *planning::visible_topping(*run.pipe).by_envelope / run.pipe->envelope->soap_share.of_one();
  for (const auto& decoration : run.decorations)
    files.decorations.push_back(planning::is_bought(decoration) ? "" : decoration.name);
  return files;
}

reports::StandsIn stands_in(const std::string& name, const learning::Figure& figure,
                            const FigureFiles& files, const moulds::Library& library) {
  reports::StandsIn stands;
  const auto spots = spots_of(name, files);
  if (spots.empty() || !figure.writes) return stands;
  const Spot spot = spot_to_write(spots);
  const Json document = document_of(spot.file);
  stands.file = spot.file;
  stands.would_say = text_of(json_of(figure.writes->value, files));
  if (const Json* const says = standing(document, spot)) stands.says = text_of(*says);
  if (is_as_taken(document, spot)) stands.taken = taking_told(*taking_of(document, spot));
  stands.is_taken = is_taken_already(document, spot, figure, files);
  try {
    refuse_what_cannot_be(name, figure, spot, files, {"", name}, library);
  } catch (const UserError& error) {
    stands.refused = {error.parts().problem, error.parts().remedy};
  }
  return stands;
}

MadeFile taken(const std::string& name, const learning::Figure& figure, const FigureFiles& files,
               const std::string& today, const UserTerms& terms, const moulds::Library& library) {
  const Place where = terms.place("take");
  const auto spots = spots_of(name, files);
  if (spots.empty() || !figure.writes) refuse_name(name, where);
  const Spot spot = spot_to_write(spots);
  refuse_what_cannot_be(name, figure, spot, files, where, library);
  if (is_taken_already(document_of(spot.file), spot, figure, files))
    throw UserError(where, "is taken already from these batches, and stands so in " + spot.file,
                    "take it again once further batches tell of it");
  const std::size_t batches = figure.values.size();
  std::string text = with_taken(text_of_file(spot.file), spot, json_of(figure.writes->value, files),
                                batches, today);
  if (name == "hand")
    text = with_taken(text, {spot.file, spot.object, "trials"}, batches, batches, today);
  read_again(text, spot.file, library);
  return {spot.file, text};
}

Undone undone(const std::string& name, const FigureFiles& files, const UserTerms& terms,
              const moulds::Library& library) {
  const Place where = terms.place("undo");
  const auto spots = spots_of(name, files);
  if (spots.empty()) refuse_name(name, where);
  for (const Spot& spot : spots) {
    const Json document = document_of(spot.file);
    if (taking_of(document, spot) == nullptr) continue;
    if (!is_as_taken(document, spot))
      throw UserError(where,
                      "was written anew in " + brimwright::quoted(on_one_line(spot.file)) +
                          " since it was taken",
                      "change it there");
    std::string text = without_last_taken(text_of_file(spot.file), spot);
    if (const Spot trials{spot.file, spot.object, "trials"};
        name == "hand" && is_as_taken(document, trials))
      text = without_last_taken(text, trials);
    text = without_what_is_empty(std::move(text), spot.object);
    read_again(text, spot.file, library);
    Undone result{.file = {spot.file, text}};
    const Json now = Json::parse(text);
    if (const Json* const says = standing(now, spot)) result.says = text_of(*says);
    if (is_as_taken(now, spot)) result.still_taken = taking_told(*taking_of(now, spot));
    return result;
  }
  throw UserError(where, "\"" + name + "\" was not taken from batches", "there is nothing to undo");
}

}  // namespace brimwright::service
