#include "service/learned_batches.h"

#include "units/reading.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>

namespace brimwright::service {

using Json = nlohmann::json;
using namespace learning;

struct PlannedFacts {
  Json assumptions, batches;
  std::string run;
  double below_brim_mm;
};

namespace {

Mass grams_at(const Json& json, const char* key) { return json.at(key).get<double>() * gram; }
Density density_at(const Json& json, const char* key) {
  return json.at(key).get<double>() * gram_per_millilitre;
}
Share share_at(const Json& json, const char* key) { return json.at(key).get<double>() * percent; }

const Json* batch_of(const PlannedFacts& plan, std::int64_t number) {
  for (const Json& batch : plan.batches) {
    const auto numbers = batch.at("numbers").get<std::vector<std::int64_t>>();
    if (std::find(numbers.begin(), numbers.end(), number) != numbers.end()) return &batch;
  }
  return nullptr;
}

struct Level {
  double off_mm;
  Volume volume;
  Area surface;
};
Level level_of(const Json& json) {
  return {json.at("line_off_mm").get<double>(),
          json.at("volume_each_ml").get<double>() * millilitre,
          json.at("ml_per_mm").get<double>() * millilitre / millimetre};
}

FilledMould mould_of(const Json& pour, Length below_brim) {
  FilledMould mould{.mould = pour.at("mould").get<std::string>(),
                    .volume_each = {},
                    .surface = {},
                    .factor_used = pour.at("poured_factor").get<double>(),
                    .brimful = pour.at("measured_brimful_ml").get<double>() * millilitre,
                    .below_brim = below_brim};
  for (const Json& json : pour.at("levels"))
    if (const Level level = level_of(json); level.off_mm == 0) {
      mould.volume_each = level.volume;
      mould.surface = level.surface;
    }
  return mould;
}

/// Between the levels on both sides, by a straight line: at most 1 mm apart, where a wall that
/// leans makes the difference small.
LineReached line_at(const Json& pour, Length off) {
  LineReached line{off};
  const double off_mm = off / millimetre;
  const Json& levels = pour.at("levels");
  for (std::size_t i = 1; i < levels.size(); ++i) {
    const Level low = level_of(levels[i - 1]), high = level_of(levels[i]);
    if (off_mm < low.off_mm || off_mm > high.off_mm) continue;
    const double part = (off_mm - low.off_mm) / (high.off_mm - low.off_mm);
    line.volume_each = low.volume + part * (high.volume - low.volume);
    line.surface = low.surface + part * (high.surface - low.surface);
  }
  return line;
}

BaseFacts base_of(const Json& pour, const Json& batch, Length below_brim) {
  BaseFacts base{.formula = pour.at("formula").get<std::string>(),
                 .density_planned = density_at(pour, "g_per_ml"),
                 .overpour_planned = share_at(pour, "overpour_percent"),
                 .pot_planned = grams_at(pour, "pot_g"),
                 .jugs_planned = grams_at(pour, "jugs_g"),
                 .test_piece_planned = grams_at(pour, "test_piece_g"),
                 .lost_planned = grams_at(batch.at("pour"), "lost_g")};
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

std::vector<ToppingFacts> toppings_of(const Json& pipe, const Json& batch, const std::string& run) {
  std::vector<ToppingFacts> toppings;
  for (const Json& whipping : batch.at("pipe").at("whippings"))
    for (std::int64_t n = 0; n < whipping.at("count").get<std::int64_t>(); ++n)
      toppings.push_back(topping_of(pipe, whipping, run));
  return toppings;
}

CureFacts cure_of(const Json& cure, const std::string& formula) {
  CureFacts facts{.formula = formula,
                  .is_one_batter = cure.at("plain_piece").get<bool>(),
                  .sold_on_day = cure.at("sold_on_day").get<double>(),
                  .water = share_at(cure, "water_percent")};
  if (cure.contains("lost_percent")) facts.lost_planned = share_at(cure, "lost_percent");
  return facts;
}

/// A full cup's density: what it holds stands in its blank, or is noted itself.
std::optional<Density> cup_of(const Json& batch, const records::Notes& notes,
                              const std::string& key) {
  const auto net = notes.mass(key);
  if (!net) return std::nullopt;
  std::optional<Volume> holds;
  for (const Json& blank : batch.at("blanks")) {
    if (blank.at("key") != key) continue;
    if (blank.contains("cup_holds_key"))
      holds = notes.volume(blank.at("cup_holds_key").get<std::string>());
    else if (blank.contains("cup_holds"))
      holds = read_volume(blank.at("cup_holds").get<std::string>(), {});
  }
  if (!holds || !(*holds > Volume{})) return std::nullopt;
  return *net / *holds;
}

void note_base(BaseFacts& base, const Json& pour, const Json& batch, const records::Notes& notes) {
  base.made = notes.mass("base.made");
  base.left_over = notes.mass("base.left_over");
  base.lost_altogether = notes.mass("base.on_tools");
  base.in_pot = notes.mass("base.in_pot");
  base.in_jugs = notes.mass("base.in_jugs");
  base.cup = cup_of(batch, notes, "base.cup");
  for (FilledMould& mould : base.moulds) {
    mould.casts = notes.count("pour.filled");
    if (const auto off = notes.length("pour.line_off")) mould.line = line_at(pour, *off);
  }
}

void note_toppings(std::vector<ToppingFacts>& toppings, const Json& batch,
                   const records::Notes& notes) {
  for (std::size_t i = 0; i < toppings.size(); ++i) {
    const std::string key =
        toppings.size() == 1 ? "topping." : "topping-" + std::to_string(i + 1) + ".";
    ToppingFacts& topping = toppings[i];
    topping.made = notes.mass(key + "made");
    topping.left_over = notes.mass(key + "left_over");
    topping.lost_altogether = notes.mass(key + "on_tools");
    topping.in_bowl_and_whisk = notes.mass(key + "in_bowl");
    topping.in_bag = notes.mass(key + "in_bag");
    topping.cup = cup_of(batch, notes, key + "cup");
    topping.piped = notes.count(key + "piped");
  }
}

std::optional<Minutes> shared_by(const std::optional<std::chrono::seconds>& time,
                                 const std::optional<std::int64_t>& pieces) {
  if (!time || !pieces || *pieces < 1) return std::nullopt;
  return Minutes(*time) / static_cast<double>(*pieces);
}

void note_times(BatchFacts& facts, const records::Notes& notes) {
  std::optional<Minutes> making;
  if (const auto time = notes.minutes("minutes.making")) making = Minutes(*time);
  std::optional<std::int64_t> packed = facts.pieces_made;
  if (packed) *packed -= facts.rejects.value_or(0);
  facts.times = {
      {TimeOf::batch, {}, making},
      {TimeOf::piece_made, {}, shared_by(notes.minutes("minutes.pieces"), facts.pieces_made)},
      {TimeOf::piece_packed, {}, shared_by(notes.minutes("minutes.packing"), packed)}};
}

void note_cure(CureFacts& cure, const std::vector<records::Weighing>& weighings,
               const std::chrono::sys_days& poured) {
  for (const records::Weighing& weighing : weighings) {
    const std::chrono::sys_days day = read_date(weighing.day, {});
    cure.weighings.push_back({static_cast<double>((day - poured).count()),
                              weighing.together / static_cast<double>(weighing.pieces)});
  }
}

BatchFacts facts_of_batch(const records::Batch& batch, const PlannedFacts& plan,
                          const records::Notes& notes,
                          const std::vector<records::Weighing>& weighings) {
  BatchFacts facts = facts_of_plan(plan, batch.number);
  facts.code = batch.code;
  facts.date = read_date(batch.begun_on, {});
  facts.pieces_made = notes.count("pieces.made");
  facts.rejects = notes.count("pieces.rejected");
  const Json* const planned = batch_of(plan, batch.number);
  if (planned == nullptr) return facts;
  if (facts.base) note_base(*facts.base, plan.assumptions.at("pour"), *planned, notes);
  note_toppings(facts.toppings, *planned, notes);
  note_times(facts, notes);
  if (facts.cure) {
    note_cure(*facts.cure, weighings, notes.date("base.made_on").value_or(facts.date));
    if (facts.cure->weighings.empty()) facts.cure.reset();
  }
  return facts;
}

/// A formula whose ingredients come to another density, or a mould that was measured anew, is
/// another: its density, or what it holds, by the names of files.
using Identities = std::map<std::string, double>;

void identify(Identities& identities, const Json& pour) {
  identities[pour.at("formula").get<std::string>()] = pour.at("computed_g_per_ml").get<double>();
  identities[pour.at("mould").get<std::string>()] = pour.at("measured_brimful_ml").get<double>();
}

/// By the names that its files have today.
void call_as_today(BatchFacts& facts, const records::Batch& batch, RenamedFiles& renamed) {
  const auto rename = [&](std::string& name) {
    if (const auto now = renamed.called_now(batch, name)) name = *now;
  };
  if (!facts.base) return;
  rename(facts.base->formula);
  for (FilledMould& mould : facts.base->moulds) rename(mould.mould);
  for (ToppingFacts& topping : facts.toppings) rename(topping.formula);
  if (facts.cure) facts.cure->formula = facts.base->formula;
}

/// The same of a batch, by what its files are called now.
void identify(Identities& identities, const Json& pour, const BatchFacts& facts) {
  if (!facts.base) return;
  identities[facts.base->formula] = pour.at("computed_g_per_ml").get<double>();
  for (const FilledMould& mould : facts.base->moulds)
    identities[mould.mould] = pour.at("measured_brimful_ml").get<double>();
}

bool is_alike(double one, double other) { return std::abs(one - other) <= 0.005 * std::abs(other); }

/// Whether anything of the batch was another then, which is renamed.
bool set_apart(BatchFacts& facts, const Json& pour, const Identities& identities) {
  if (!facts.base) return false;
  bool is_other = false;
  const auto rename = [&](std::string& name, const char* key) {
    if (is_alike(pour.at(key).get<double>(), identities.at(name))) return;
    name += " (earlier)";
    is_other = true;
  };
  for (FilledMould& mould : facts.base->moulds) rename(mould.mould, "measured_brimful_ml");
  rename(facts.base->formula, "computed_g_per_ml");
  if (facts.cure) facts.cure->formula = facts.base->formula;
  return is_other;
}

}  // namespace

std::shared_ptr<const PlannedFacts> planned_facts(const std::string& plan_answer) {
  Json plan = Json::parse(plan_answer);
  if (!plan.contains("assumptions")) return nullptr;
  return std::make_shared<const PlannedFacts>(
      PlannedFacts{std::move(plan["assumptions"]), std::move(plan["batches"]),
                   plan["run"].get<std::string>(), plan["pour"]["below_brim_mm"].get<double>()});
}

BatchFacts facts_of_plan(const PlannedFacts& plan, std::int64_t number) {
  BatchFacts facts;
  facts.run = plan.run;
  const Json* const batch = batch_of(plan, number);
  if (batch == nullptr) return facts;
  facts.pieces_planned = batch->at("pieces").get<std::int64_t>();
  const Json& pour = plan.assumptions.at("pour");
  facts.base = base_of(pour, *batch, plan.below_brim_mm * millimetre);
  if (plan.assumptions.contains("pipe") && batch->contains("pipe"))
    facts.toppings = toppings_of(plan.assumptions.at("pipe"), *batch, plan.run);
  if (const Json& cure = plan.assumptions.at("cure"); !cure.is_null())
    facts.cure = cure_of(cure, facts.base->formula);
  return facts;
}

LearnedBatches learned_batches(const records::Records& records, const PlannedFacts* today,
                               RenamedFiles* renamed) {
  const auto batches = records::batches(records);
  const auto notes = records::all_notes(records);
  const auto weighings = records::all_weighings(records);
  std::map<std::string, std::shared_ptr<const PlannedFacts>> plans;  // by their hash
  Identities identities;
  LearnedBatches learned;
  std::vector<const PlannedFacts*> plan_of;
  for (const records::Batch& batch : batches) {
    auto& plan = plans[batch.plan];
    if (!plan) plan = planned_facts(records::plan_of(records, batch));
    if (!plan) continue;
    const auto noted = notes.find(batch.id);
    const auto weighed = weighings.find(batch.id);
    learned.facts.push_back(facts_of_batch(
        batch, *plan, noted == notes.end() ? records::Notes{} : noted->second,
        weighed == weighings.end() ? std::vector<records::Weighing>{} : weighed->second));
    if (renamed != nullptr) call_as_today(learned.facts.back(), batch, *renamed);
    plan_of.push_back(plan.get());
    identify(identities, plan->assumptions.at("pour"), learned.facts.back());
  }
  if (today != nullptr) identify(identities, today->assumptions.at("pour"));
  for (std::size_t i = 0; i < learned.facts.size(); ++i)
    learned.earlier +=
        set_apart(learned.facts[i], plan_of[i]->assumptions.at("pour"), identities) ? 1 : 0;
  return learned;
}

}  // namespace brimwright::service
