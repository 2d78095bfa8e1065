#include "service/learned_batches.h"

#include "service/noted_facts.h"
#include "units/reading.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace brimwright::service {

using Json = nlohmann::json;
using namespace learning;

struct PlannedFacts {
  Json assumptions, batches, decorations;
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

/// What is cast ahead, with the run's first batch: what is bought has no blanks of a melt.
std::vector<DecorationFacts> decorations_of(const PlannedFacts& plan, const Json& batch) {
  std::vector<DecorationFacts> decorations;
  const Json& assumed = plan.assumptions.at("decorations");
  for (std::size_t i = 0; i < assumed.size(); ++i)
    if (find_planned_blank(batch, decoration_key(i) + "melted") != nullptr)
      decorations.push_back(
          {.decoration = assumed[i].at("name").get<std::string>(),
           .place = i,
           .melt_loss_planned = share_at(assumed[i], "melt_loss_percent"),
           .left_in_jug_planned = grams_at(assumed[i], "left_in_jug_g"),
           .tray_fills = plan.decorations.at(i).at("tray_fills").get<std::int64_t>()});
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

BatchFacts facts_of_batch(const records::Batch& batch, const PlannedFacts& plan,
                          const records::Notes& notes,
                          const std::vector<records::Weighing>& weighings) {
  BatchFacts facts = facts_of_plan(plan, batch.number);
  facts.code = batch.code;
  facts.date = read_date(batch.begun_on, {});
  const Json* const planned = batch_of(plan, batch.number);
  if (planned == nullptr) return facts;
  if (facts.base) note_facts(facts, plan.assumptions.at("pour"), *planned, notes, weighings);
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
  return std::make_shared<const PlannedFacts>(PlannedFacts{
      std::move(plan["assumptions"]), std::move(plan["batches"]), std::move(plan["decorations"]),
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
  if (number == 1) facts.decorations = decorations_of(plan, *batch);
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
