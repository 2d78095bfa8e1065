#include "planning/sum_workings.h"

#include "planning/pour_workings.h"
#include "planning/weighing_workings.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>

namespace brimwright::planning {
namespace {

/// One of the things that a sum is of, and where its own workings stand.
struct Part {
  std::int64_t count;
  const BatterTally& batter;
  std::string name;  // "a batch of 24 pieces"
  std::string place;
};

std::string place(const std::string& name, std::size_t number) {
  return name + "." + std::to_string(number);
}

/// What `all` tells below `from`, told without that.
std::vector<Working> below(const std::vector<Working>& all, const std::string& from) {
  std::vector<Working> found;
  for (const Working& one : all)
    if (one.of.starts_with(from + ".")) {
      found.push_back(one);
      found.back().of.erase(0, from.size() + 1);
    }
  return found;
}

constexpr auto added_up = "in all = what each takes × how often it is made, added up";

struct Term {
  std::int64_t count;
  Mass each;
  std::string name;
};

/// Alkali is cut where it is not shown whole, never rounded up.
Working sum_of(const std::string& of, const std::vector<Term>& terms, const std::string& total,
               Rounded towards = Rounded::nearest) {
  Working working{.of = of, .formula = added_up, .comes_to = total};
  std::vector<std::string> texts;
  for (const auto& [count, each, name] : terms) {
    const std::string mass = in_figures(each, towards);
    working.with.push_back({name, mass, std::to_string(count) + " of these"});
    texts.push_back(std::to_string(count) + " × " + mass);
  }
  working.sum = added(texts);
  return working;
}

/// A part may have nothing of it on its scale: then it is not listed there.
Mass weighed_in(const BatterTally& batter, const Ingredient& same) {
  for (const Ingredient& i : batter.weighing.ingredients)
    if (i.role == same.role && i.index == same.index) return i.weighed;
  return {};
}

std::vector<Working> ingredient_sums(const std::vector<Part>& parts, const BatterTally& sum) {
  std::vector<Working> all;
  const auto& ingredients = sum.weighing.ingredients;
  for (std::size_t k = 0; k < ingredients.size(); ++k) {
    const Ingredient& i = ingredients[k];
    std::vector<Term> terms;
    for (const Part& part : parts)
      terms.push_back({part.count, weighed_in(part.batter, i), part.name});
    all.push_back(sum_of(place("ingredients", k) + ".g", terms,
                         on_scale(i.weighed, i.step, i.shown),
                         i.role == Role::alkali ? Rounded::down : Rounded::nearest));
  }
  return all;
}

Working make_sum(const std::vector<Part>& parts, const BatterTally& sum) {
  std::vector<Term> terms;
  for (const Part& part : parts)
    terms.push_back({part.count, part.batter.weighing.batter, part.name});
  return sum_of("make_g", terms, in_figures(sum.weighing.batter));
}

/// Of the part whose superfat may come out lowest.
std::string worst_place(const std::vector<Part>& parts) {
  return std::min_element(parts.begin(), parts.end(),
                          [](const Part& a, const Part& b) {
                            return a.batter.weighing.superfat.low < b.batter.weighing.superfat.low;
                          })
      ->place;
}

bool starts_with_any(std::string_view name, std::initializer_list<std::string_view> beginnings) {
  return std::any_of(beginnings.begin(), beginnings.end(),
                     [&](std::string_view beginning) { return name.starts_with(beginning); });
}

/// What is plain arithmetic with the sums themselves: fats, water and the strength of the lye.
std::vector<Working> of_the_sums(const chemistry::Formula& formula, const BatterTally& sum,
                                 std::int64_t casts, const std::vector<Given>& lost) {
  auto all = weighing_workings(formula, sum.per_fat, sum.weighing);
  std::erase_if(all, [](const Working& one) {
    return starts_with_any(one.of, {"ingredients.", "superfat_percent."});
  });
  append_at(all, "", batter_workings(sum, casts, lost));
  return all;
}

std::vector<Working> batter_sums(const chemistry::Formula& formula, const BatterTally& sum,
                                 const std::vector<Part>& parts, std::int64_t casts,
                                 const std::vector<Working>& told) {
  if (parts.size() == 1 && parts.front().count == 1) return below(told, parts.front().place);
  auto all = ingredient_sums(parts, sum);
  all.push_back(make_sum(parts, sum));
  append_at(all, "", of_the_sums(formula, sum, casts, {}));
  for (Working& one : below(told, worst_place(parts)))
    if (one.of.starts_with("superfat_percent.")) all.push_back(std::move(one));
  for (Working& one : below(told, parts.front().place)) {
    const bool is_known = std::any_of(all.begin(), all.end(),
                                      [&](const Working& other) { return other.of == one.of; });
    // What is listed there is not what is listed here.
    const bool is_summed = starts_with_any(one.of, {"ingredients.", "layers.", "loads"});
    if (!is_known && !is_summed) all.push_back(std::move(one));
  }
  return all;
}

std::string name_of(const Batch& batch) { return "a batch of " + counted(batch.pieces, "piece"); }

std::vector<Working> layer_sums(const Plan& plan) {
  std::vector<Working> all;
  for (std::size_t k = 0; k < plan.pour.layers.size(); ++k) {
    const LayerTally& layer = plan.pour.layers[k];
    const std::string here = place("layers", k);
    std::vector<Term> terms;
    for (const Batch& batch : plan.batches)
      terms.push_back({batch.count(), batch.pour.layers[k].mass, name_of(batch)});
    all.push_back(sum_of(here + ".g", terms, on_scale(layer.mass, layer.step)));
    for (std::size_t c = 0; c < layer.colours.size(); ++c) {
      std::vector<Term> powder;
      for (const Batch& batch : plan.batches)
        powder.push_back({batch.count(), batch.pour.layers[k].colours[c].weighed, name_of(batch)});
      const Ingredient& colour = layer.colours[c];
      all.push_back(sum_of(place(here + ".colours", c) + ".g", powder,
                           on_scale(colour.weighed, colour.step)));
    }
  }
  return all;
}

Working loads_sum(const std::string& of_whole, std::int64_t loads) {
  return {.of = "loads",
          .formula = "bag loads of every whipping, added up",
          .with = {{"whippings", of_whole}},
          .comes_to = std::to_string(loads)};
}

std::vector<Working> pour_sums(const Run& run, const Plan& plan, const std::vector<Working>& told) {
  std::vector<Part> parts;
  for (std::size_t b = 0; b < plan.batches.size(); ++b)
    parts.push_back({plan.batches[b].count(), plan.batches[b].pour.batter, name_of(plan.batches[b]),
                     place("batches", b) + ".pour"});
  auto all = batter_sums(run.pour.formula, plan.pour.batter, parts, plan.pieces.casts, told);
  if (parts.size() == 1 && parts.front().count == 1) return all;
  append_at(all, "", layer_sums(plan));
  for (Working& one : below(told, parts.front().place))
    if (one.of.starts_with("layers.") && one.of.ends_with(".mass_each_g"))
      all.push_back(std::move(one));
  return all;
}

std::vector<Working> batch_pipe(const Run& run, const Batch& batch, std::size_t number,
                                const std::vector<Working>& told) {
  std::vector<Part> parts;
  for (std::size_t w = 0; w < batch.whippings.size(); ++w)
    parts.push_back({batch.whippings[w].count, batch.whippings[w].pipe.batter,
                     "a whipping for " + std::to_string(batch.whippings[w].casts),
                     place(place("batches", number) + ".pipe.whippings", w)});
  auto all = batter_sums(run.pipe->formula, batch.pipe->batter, parts, batch.casts, told);
  const bool is_one = parts.size() == 1 && parts.front().count == 1;
  if (!is_one && batch.pipe->loads)
    all.push_back(loads_sum(std::to_string(batch.pipe->whippings), *batch.pipe->loads));
  return all;
}

std::vector<Working> pipe_sums(const Run& run, const Plan& plan, const std::vector<Working>& told) {
  std::vector<Part> parts;
  for (std::size_t b = 0; b < plan.batches.size(); ++b)
    parts.push_back({plan.batches[b].count(), plan.batches[b].pipe->batter,
                     name_of(plan.batches[b]), place("batches", b) + ".pipe"});
  auto all = batter_sums(run.pipe->formula, plan.pipe->batter, parts, plan.pieces.casts, told);
  // A batch's whippings are told with the batch.
  std::erase_if(all, [](const Working& one) { return one.of.starts_with("whippings."); });
  const bool is_one = parts.size() == 1 && parts.front().count == 1;
  if (!is_one && plan.pipe->loads)
    all.push_back(loads_sum(std::to_string(plan.pipe->whippings), *plan.pipe->loads));
  return all;
}

std::vector<Working> dust_sums(const Plan& plan, const std::vector<Working>& told) {
  std::vector<Working> all;
  for (std::size_t i = 0; i < plan.dust.size(); ++i) {
    std::vector<Term> terms;
    for (const Batch& batch : plan.batches)
      terms.push_back({batch.count(), batch.dust[i].make, name_of(batch)});
    const std::string here = place("dust", i);
    for (const Working& one : below(told, "batches.0." + here))
      if (one.of == "each_g") append_at(all, here, {one});
    all.push_back(sum_of(here + ".g", terms, in_figures(plan.dust[i].make)));
  }
  return all;
}

/// Of the whole run's batters, of which the topping's is given to every whipping.
std::vector<Working> bottle_sums(const Plan& plan) {
  std::vector<Working> all;
  for (std::size_t i = 0; i < plan.bottles.size(); ++i)
    for (std::size_t k = 0; k < plan.bottles[i].parts.size(); ++k) {
      std::vector<Term> terms;
      for (const Batch& batch : plan.batches) {
        const auto& parts = batch.bottles[i].parts;
        for (std::size_t p = k; p < (k == 0 ? 1 : parts.size()); ++p)
          terms.push_back({batch.count() * parts[p].count, parts[p].gives, name_of(batch)});
      }
      const auto& part = plan.bottles[i].parts[k];
      all.push_back(sum_of(place(place("bottles", i) + ".parts", k) + ".g", terms,
                           on_scale(part.gives, part.step)));
    }
  return all;
}

}  // namespace

std::vector<Working> sum_workings(const Run& run, const Plan& plan,
                                  const std::vector<Working>& of_batches) {
  std::vector<Working> told = of_batches;
  std::vector<Working> all;
  if (plan.pipe) {
    for (std::size_t b = 0; b < plan.batches.size(); ++b)
      append_at(all, place("batches", b) + ".pipe", batch_pipe(run, plan.batches[b], b, told));
    told.insert(told.end(), all.begin(), all.end());
  }
  append_at(all, "pour", pour_sums(run, plan, told));
  if (plan.pipe) append_at(all, "pipe", pipe_sums(run, plan, told));
  append_at(all, "lye_pot", below(told, "batches.0.lye_pot"));
  append_at(all, "", bottle_sums(plan));
  append_at(all, "", dust_sums(plan, told));
  return all;
}

}  // namespace brimwright::planning
