#include "service/planned_facts.h"

#include "service/json_parts.h"
#include "units/reading.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <string_view>
#include <utility>

namespace brimwright::service {

using Json = nlohmann::json;
using namespace learning;

namespace {

Mass grams_at(const Json& json, const char* key) { return json.at(key).get<double>() * gram; }
Density density_at(const Json& json, const char* key) {
  return json.at(key).get<double>() * gram_per_millilitre;
}
Share share_at(const Json& json, const char* key) { return json.at(key).get<double>() * percent; }

using Part = JsonParts::Part;

Json read(const Part& part) { return Json::parse(part.text.begin(), part.text.end()); }

/// A key that holds letters, digits and . _ - alone, as those of blanks do.
std::string plain_text(const Part& quoted) {
  return std::string(quoted.text.substr(1, quoted.text.size() - 2));
}

/// A batch of the answer, as far as it is needed.
struct AnswerBatch {
  Json numbers, pieces, pour;
  std::vector<Json> whippings = {};
  std::vector<PlannedCup> cups = {};
  bool is_beside_base = false;
  std::vector<std::string> melts = {};  // keys of the blanks of what is melted
  std::optional<Mass> lye_pot = {};
  std::shared_ptr<const WeighOut> weigh_out = {};
};

PlannedTally tally_of(const Json& json) {
  PlannedTally tally{.count = json.value("count", std::int64_t{1}),
                     .has_solutions = !json.value("solutions", Json::array()).empty()};
  if (json.contains("make_g")) tally.make = grams_at(json, "make_g");
  return tally;
}

PlannedScales scales_of(const AnswerBatch& batch) {
  PlannedScales scales{
      .weigh_out = batch.weigh_out, .lye_pot = batch.lye_pot, .base = tally_of(batch.pour)};
  for (const Json& whipping : batch.whippings) scales.whippings.push_back(tally_of(whipping));
  return scales;
}

/// What is read of a plan's answer, which is long: the rest is passed over.
struct Answer {
  Json assumptions, decorations = Json::array(), run, pour;
  std::vector<AnswerBatch> batches = {};
};

class AnswerReading {
 public:
  explicit AnswerReading(std::string_view text) : parts_(text) {}

  Answer answer() const {
    Answer answer;
    parts_.each_member(parts_.whole(), [&](std::string_view key, const Part& value) {
      if (key == "assumptions") answer.assumptions = read(value);
      if (key == "decorations") answer.decorations = read(value);
      if (key == "run") answer.run = read(value);
      if (key == "pour") answer.pour = picked(value, {"below_brim_mm"});
      if (key == "batches")
        parts_.each_element(value,
                            [&](const Part& batch) { answer.batches.push_back(batch_in(batch)); });
    });
    return answer;
  }

 private:
  /// Of an object's members those of these keys, read.
  Json picked(const Part& object, std::initializer_list<std::string_view> keys) const {
    Json found = Json::object();
    parts_.each_member(object, [&](std::string_view key, const Part& value) {
      if (std::find(keys.begin(), keys.end(), key) != keys.end())
        found[std::string(key)] = read(value);
    });
    return found;
  }

  std::vector<Json> whippings_in(const Part& pipe) const {
    std::vector<Json> whippings;
    parts_.each_member(pipe, [&](std::string_view key, const Part& value) {
      if (key == "whippings")
        parts_.each_element(value, [&](const Part& one) {
          whippings.push_back(picked(one, {"count", "loads", "lost_g", "make_g", "solutions"}));
        });
    });
    return whippings;
  }

  void read_blank(AnswerBatch& batch, const Part& blank) const {
    std::string key;
    PlannedCup cup;
    bool is_cup = false;
    parts_.each_member(blank, [&](std::string_view member, const Part& value) {
      if (member == "key") key = plain_text(value);
      is_cup |= member == "cup_holds" || member == "cup_holds_key";
      if (member == "cup_holds") cup.holds = read_volume(read(value).get<std::string>(), {});
      if (member == "cup_holds_key") cup.holds_key = plain_text(value);
    });
    if (key.ends_with(".melted")) batch.melts.push_back(key);
    if (!is_cup) return;
    cup.key = std::move(key);
    batch.cups.push_back(std::move(cup));
  }

  AnswerBatch batch_in(const Part& part) const {
    AnswerBatch batch{.numbers = {}, .pieces = {}, .pour = {}};
    parts_.each_member(part, [&](std::string_view key, const Part& value) {
      if (key == "numbers") batch.numbers = read(value);
      if (key == "pieces") batch.pieces = read(value);
      if (key == "pour") batch.pour = picked(value, {"lost_g", "make_g", "solutions"});
      if (key == "pipe" && value.text.front() == '{') batch.whippings = whippings_in(value);
      if (key == "lye_pot" && value.text.front() == '{')
        batch.lye_pot = grams_at(picked(value, {"lye_g"}), "lye_g");
      if (key == "weigh_out")
        batch.weigh_out = std::make_shared<const WeighOut>(std::string(value.text));
      batch.is_beside_base |= key == "beside_base";
      if (key == "blanks")
        parts_.each_element(value, [&](const Part& blank) { read_blank(batch, blank); });
    });
    return batch;
  }

  JsonParts parts_;
};

FilledMould mould_of(const Json& pour, Length below_brim) {
  FilledMould mould{.mould = pour.at("mould").get<std::string>(),
                    .volume_each = {},
                    .surface = {},
                    .factor_used = pour.at("poured_factor").get<double>(),
                    .brimful = pour.at("measured_brimful_ml").get<double>() * millilitre,
                    .below_brim = below_brim};
  for (const Json& level : pour.at("levels"))
    if (level.at("line_off_mm") == 0) {
      mould.volume_each = level.at("volume_each_ml").get<double>() * millilitre;
      mould.surface = level.at("ml_per_mm").get<double>() * millilitre / millimetre;
    }
  return mould;
}

BaseFacts base_of(const Json& pour, const Json& tally, Length below_brim) {
  BaseFacts base{.formula = pour.at("formula").get<std::string>(),
                 .density_planned = density_at(pour, "g_per_ml"),
                 .overpour_planned = share_at(pour, "overpour_percent"),
                 .pot_planned = grams_at(pour, "pot_g"),
                 .jugs_planned = grams_at(pour, "jugs_g"),
                 .test_piece_planned = grams_at(pour, "test_piece_g"),
                 .lost_planned = grams_at(tally, "lost_g")};
  if (pour.contains("levels")) base.moulds.push_back(mould_of(pour, below_brim));
  return base;
}

ToppingFacts topping_of(const Json& pipe, const Json& whipping, const std::string& run) {
  ToppingFacts topping{
      .formula = pipe.at("formula").get<std::string>(),
      .topping = run,
      .tip = pipe.value("tip", std::string()),
      .hand = {},
      .density_planned = density_at(pipe, "g_per_ml"),
      .visible_planned = pipe.at("visible_each_ml").get<double>() * millilitre,
      .in_headspace_planned = pipe.at("in_headspace_each_ml").get<double>() * millilitre,
      .fills_headspace = share_at(pipe, "fills_headspace_percent"),
      .correction_used = pipe.value("hand_correction", 1.0),
      .bowl_and_whisk_planned = grams_at(pipe, "bowl_and_whisk_g"),
      .bag_planned = grams_at(pipe, "bag_g"),
      .tip_planned = grams_at(pipe, "tip_g"),
      .each_bag_change_planned = grams_at(pipe, "each_bag_change_g"),
      .lost_planned = grams_at(whipping, "lost_g")};
  if (pipe.contains("by_moves_ml"))
    topping.by_moves = pipe.at("by_moves_ml").get<double>() * millilitre;
  if (whipping.at("loads").is_number_integer())
    topping.bag_changes = whipping.at("loads").get<std::int64_t>() - 1;
  return topping;
}

std::vector<ToppingFacts> toppings_of(const Json& pipe, const std::vector<Json>& whippings,
                                      const std::string& run) {
  std::vector<ToppingFacts> toppings;
  for (const Json& whipping : whippings)
    for (std::int64_t n = 0; n < whipping.at("count").get<std::int64_t>(); ++n)
      toppings.push_back(topping_of(pipe, whipping, run));
  return toppings;
}

/// What is cast ahead: what is bought has no blanks of a melt.
std::vector<DecorationFacts> decorations_of(const Answer& answer, const AnswerBatch& batch) {
  std::vector<DecorationFacts> decorations;
  const Json& assumed = answer.assumptions.at("decorations");
  for (std::size_t i = 0; i < assumed.size(); ++i)
    if (std::find(batch.melts.begin(), batch.melts.end(), decoration_key(i) + "melted") !=
        batch.melts.end())
      decorations.push_back(
          {.decoration = assumed[i].at("name").get<std::string>(),
           .place = i,
           .melt_loss_planned = share_at(assumed[i], "melt_loss_percent"),
           .left_in_jug_planned = grams_at(assumed[i], "left_in_jug_g"),
           .tray_fills = answer.decorations.at(i).at("tray_fills").get<std::int64_t>()});
  return decorations;
}

CureFacts cure_of(const Json& cure, const std::string& formula) {
  CureFacts facts{.formula = formula,
                  .is_one_batter = cure.at("plain_piece").get<bool>(),
                  .sold_on_day = cure.at("sold_on_day").get<double>(),
                  .water = share_at(cure, "water_percent")};
  if (cure.contains("lost_percent")) facts.lost_planned = share_at(cure, "lost_percent");
  return facts;
}

BatchFacts facts_of(const Answer& answer, const AnswerBatch& batch) {
  BatchFacts facts;
  facts.run = answer.run.get<std::string>();
  facts.pieces_planned = batch.pieces.get<std::int64_t>();
  const Json& all = answer.assumptions;
  facts.base = base_of(all.at("pour"), batch.pour,
                       answer.pour.at("below_brim_mm").get<double>() * millimetre);
  if (all.contains("pipe") && !batch.whippings.empty())
    facts.toppings = toppings_of(all.at("pipe"), batch.whippings, facts.run);
  facts.decorations = decorations_of(answer, batch);
  if (const Json& cure = all.at("cure"); !cure.is_null())
    facts.cure = cure_of(cure, facts.base->formula);
  return facts;
}

std::vector<PlannedLevel> levels_in(const Json& pour) {
  std::vector<PlannedLevel> levels;
  if (!pour.contains("levels")) return levels;
  for (const Json& json : pour.at("levels"))
    levels.push_back({json.at("line_off_mm").get<double>(),
                      json.at("volume_each_ml").get<double>() * millilitre,
                      json.at("ml_per_mm").get<double>() * millilitre / millimetre});
  return levels;
}

}  // namespace

std::shared_ptr<const PlannedFacts> planned_facts(const std::string& plan_answer) {
  const Answer answer = AnswerReading(plan_answer).answer();
  if (answer.assumptions.is_null()) return nullptr;
  const Json& pour = answer.assumptions.at("pour");
  auto plan = std::make_shared<PlannedFacts>(
      PlannedFacts{.run = answer.run.get<std::string>(),
                   .formula = pour.at("formula").get<std::string>(),
                   .mould = pour.at("mould").get<std::string>(),
                   .computed_g_per_ml = pour.at("computed_g_per_ml").get<double>(),
                   .measured_brimful_ml = pour.at("measured_brimful_ml").get<double>(),
                   .levels = levels_in(pour)});
  if (answer.assumptions.contains("pipe"))
    if (const Json& pipe = answer.assumptions["pipe"]; pipe.contains("sized_by_ml"))
      plan->topping_sized_by_ml = pipe["sized_by_ml"].get<double>();
  for (const AnswerBatch& batch : answer.batches)
    plan->batches.push_back({.numbers = batch.numbers.get<std::vector<std::int64_t>>(),
                             .facts = facts_of(answer, batch),
                             .cups = batch.cups,
                             .is_beside_base = batch.is_beside_base,
                             .scales = scales_of(batch)});
  return plan;
}

std::vector<PlannedBase> planned_bases(const std::string& plan_answer) {
  std::vector<PlannedBase> bases;
  for (const AnswerBatch& batch : AnswerReading(plan_answer).answer().batches)
    if (batch.pour.contains("lost_g"))
      bases.push_back({.numbers = batch.numbers.get<std::vector<std::int64_t>>(),
                       .lost = grams_at(batch.pour, "lost_g"),
                       .scales = scales_of(batch)});
  return bases;
}

const PlannedBatch* planned_batch(const PlannedFacts& plan, std::int64_t number) {
  const auto at =
      std::find_if(plan.batches.begin(), plan.batches.end(), [&](const PlannedBatch& batch) {
        return std::find(batch.numbers.begin(), batch.numbers.end(), number) != batch.numbers.end();
      });
  return at == plan.batches.end() ? nullptr : &*at;
}

BatchFacts facts_of_plan(const PlannedFacts& plan, std::int64_t number) {
  const PlannedBatch* const batch = planned_batch(plan, number);
  BatchFacts facts;
  if (batch == nullptr)
    facts.run = plan.run;
  else
    facts = batch->facts;
  if (number != 1) facts.decorations.clear();  // they are cast with the first
  return facts;
}

std::string decoration_key(std::size_t place) {
  return "decoration-" + std::to_string(place + 1) + ".";
}

}  // namespace brimwright::service
