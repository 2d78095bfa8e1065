#include "costing/cost_items.h"

#include "planning/cost.h"
#include "units/number_text.h"
#include "units/printing.h"

#include <algorithm>
#include <cstdint>

namespace brimwright::costing {
namespace {

using trade::ExactMoney;
using trade::Fraction;

/// What one material of one part comes to.
struct Used {
  std::string name, price_name;
  Fraction grams;
};

class Items {
 public:
  explicit Items(const Selling& selling) : selling_(selling) {}

  void add_materials(CostPart part, const std::vector<Used>& materials) {
    for (const Used& one : materials)
      if (one.grams > 0) add_material(part, one.name, one.price_name, one.grams, false);
  }

  /// `quantity` in grams, or in pieces of what is counted.
  void add_material(CostPart part, const std::string& name, const std::string& price_name,
                    const Fraction& quantity, bool is_counted) {
    const auto waste = selling_.waste.find(price_name);
    const Fraction more = waste == selling_.waste.end() ? Fraction(0) : trade::exact(waste->second);
    const Fraction used = quantity * (1 + more);
    CostItem item{part, name, amount_text(quantity, is_counted), {}};
    const auto price = selling_.prices.find(price_name);
    if (price != selling_.prices.end() && price->second.is_counted == is_counted) {
      const UnitPrice& unit = price->second;
      item.cost = without_tax(used / unit.holds * trade::exact(unit.paid));
      item.how = item.amount +
                 (more == 0 ? "" : " × " + decimal(Fraction(1 + more)) + " with waste") + " × " +
                 brimwright::amount_text(unit.paid) + " ÷ " + amount_text(unit.holds, is_counted) +
                 tax_words();
    }
    if (price == selling_.prices.end() && planning::may_be_from_tap(price_name)) be_from_tap(item);
    items_.push_back(std::move(item));
  }

  void add_work(const std::string& name, std::chrono::seconds each, const Fraction& times) {
    if (!selling_.work || each.count() == 0 || times == 0) return;
    const Fraction seconds = Fraction(each.count()) * times;
    const Money& hour = selling_.work->an_hour;
    items_.push_back({CostPart::work, name, minutes_text(each) + " × " + decimal(times),
                      seconds / 3600 * trade::exact(hour),
                      minutes_text(each) + " × " + decimal(times) + " × " +
                          brimwright::amount_text(hour) + " ÷ 60 min"});
  }

  void add_overhead(const std::string& name, const Money& each, const Fraction& times) {
    if (each.coins == 0 || times == 0) return;
    items_.push_back({CostPart::overhead, name, decimal(times), times * trade::exact(each),
                      decimal(times) + " × " + brimwright::amount_text(each)});
  }

  std::vector<CostItem> take() { return std::move(items_); }

 private:
  static std::string decimal(const Fraction& number) {
    return trimmed(number.convert_to<double>(), 4);
  }
  static std::string amount_text(const Fraction& quantity, bool is_counted) {
    return decimal(quantity) + (!is_counted ? " g" : quantity == 1 ? " piece" : " pieces");
  }
  static std::string minutes_text(std::chrono::seconds time) {
    return decimal(Fraction(time.count()) / 60) + " min";
  }

  void be_from_tap(CostItem& item) const {
    item.name = "Water, from the tap";
    item.cost = ExactMoney{0, selling_.currency};
    item.how = item.amount + ", for which no price is listed";
    item.is_from_tap = true;
  }

  /// Work and overhead are told without tax.
  ExactMoney without_tax(ExactMoney paid) const {
    if (selling_.tax && selling_.tax->is_in_paid)
      paid.coins /= 1 + trade::exact(selling_.tax->rate);
    return paid;
  }
  std::string tax_words() const {
    if (!selling_.tax || !selling_.tax->is_in_paid) return "";
    return " ÷ " + decimal(Fraction(1 + trade::exact(selling_.tax->rate))) + " without tax";
  }

  const Selling& selling_;
  std::vector<CostItem> items_;
};

/// Adds to the line of that name.
void use(std::vector<Used>& materials, const std::string& name, const std::string& price_name,
         const Fraction& grams) {
  const auto found = std::find_if(materials.begin(), materials.end(),
                                  [&](const Used& one) { return one.price_name == price_name; });
  if (found == materials.end())
    materials.push_back({name, price_name, grams});
  else
    found->grams += grams;
}

Fraction grams(Mass mass) { return trade::exact(mass / gram); }

/// What is made ahead counts as what it is made of, its own waste too, unless it has a price of its
/// own.
void use_all(std::vector<Used>& materials, const std::vector<planning::Ingredient>& ingredients,
             const Selling& selling, const Fraction& times = 1) {
  for (const auto& one : ingredients) {
    const Fraction weighed = times * grams(one.weighed);
    if (one.made_of.empty() || selling.prices.contains(one.price_name)) {
      use(materials, one.name, one.price_name, weighed);
      continue;
    }
    const auto waste = selling.waste.find(one.price_name);
    const Fraction made =
        waste == selling.waste.end() ? weighed : weighed * (1 + trade::exact(waste->second));
    for (const auto& part : one.made_of)
      use(materials, part.name, part.price_name, made * trade::exact(part.in_a_gram));
  }
}

/// What is the base's: whole, or a part of each batch.
struct Base {
  std::vector<Used> used;
  Fraction batches = 0;
};

Base whole_base(const planning::Plan& plan, const Selling& selling) {
  Base base{.used = {}, .batches = plan.pieces.batches};
  use_all(base.used, plan.pour.batter.weighing.ingredients, selling);
  return base;
}

Base part_of_base(const PartOfBase& part, const Selling& selling) {
  Base base{.used = {}};
  for (std::size_t i = 0; i < part.of_batch.size(); ++i) {
    const planning::Batch& batch = part.base.batches[i];
    const Fraction times = Fraction(batch.count()) * part.of_batch[i];
    if (times == 0) continue;
    base.batches += times;
    use_all(base.used, batch.pour.batter.weighing.ingredients, selling, times);
  }
  return base;
}

void add_work(Items& items, const planning::Plan& plan, const Work& work, const Fraction& batches) {
  std::int64_t tray_fills = 0;
  for (const auto& decoration : plan.decorations) tray_fills += decoration.tray_fills;
  items.add_work("each batch", work.each_batch, batches);
  items.add_work("each piece made", work.each_piece_made, plan.pieces.make);
  items.add_work("each tray fill", work.each_tray_fill, tray_fills);
  items.add_work("each piece packed", work.each_piece_packed, plan.pieces.sell);
}

std::vector<CostItem> items_of(const planning::Plan& plan, const Selling& selling, Base base) {
  Items items(selling);
  std::vector<Used> topping, decorations, dust;
  for (const auto& layer : plan.pour.layers) use_all(base.used, layer.colours, selling);
  if (plan.pipe) use_all(topping, plan.pipe->batter.weighing.ingredients, selling);
  for (const auto& one : plan.decorations)
    if (!one.is_bought) use(decorations, one.material, one.material, grams(one.make));
  for (const auto& one : plan.dust) use(dust, one.name, one.name, grams(one.make));
  items.add_materials(CostPart::base, base.used);
  items.add_materials(CostPart::topping, topping);
  items.add_materials(CostPart::decorations, decorations);
  for (const auto& one : plan.decorations)
    if (one.is_bought)
      items.add_material(CostPart::decorations, one.material, one.material, Fraction(one.casts),
                         true);
  items.add_materials(CostPart::dust, dust);
  for (const planning::Packaging& one : selling.packaging)
    items.add_material(CostPart::packaging, one.material, one.material,
                       trade::exact(one.each) * Fraction(plan.pieces.sell), one.is_counted);
  if (selling.work) add_work(items, plan, *selling.work, base.batches);
  if (selling.overhead) {
    items.add_overhead("each batch", selling.overhead->each_batch, base.batches);
    items.add_overhead("each piece made", selling.overhead->each_piece_made, plan.pieces.make);
  }
  return items.take();
}

}  // namespace

std::vector<CostItem> cost_items(const planning::Plan& plan, const Selling& selling) {
  return items_of(plan, selling, whole_base(plan, selling));
}

std::vector<CostItem> cost_items(const planning::Plan& plan, const Selling& selling,
                                 const PartOfBase& part) {
  return items_of(plan, selling, part_of_base(part, selling));
}

ExactMoney sum_of(const std::vector<CostItem>& items, const Currency& currency) {
  ExactMoney sum{0, currency};
  for (const CostItem& item : items)
    if (item.cost) sum = sum + *item.cost;
  return sum;
}

std::vector<std::string> unpriced(const std::vector<CostItem>& items) {
  std::vector<std::string> names;
  for (const CostItem& item : items)
    if (!item.cost && std::find(names.begin(), names.end(), item.name) == names.end())
      names.push_back(item.name);
  return names;
}

}  // namespace brimwright::costing
