#include "reports/label_report.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <array>

namespace brimwright::reports {
namespace {

using Side = TextTable::Side;

// The weeks of a cure, and what a shop keeps it for: common practice, no source.
constexpr std::array<double, 8> shown_days = {0, 7, 14, 21, 28, 35, 42, 90};

std::string line(const std::string& text) { return wrapped(text, "  ", "    "); }

std::string law_line(const planning::PartCure& cure, const std::string& part) {
  const auto& curve = *cure.curve;
  std::string text = part + ": ends at " + fixed_grams(curve.end) + ", 63 % of the loss by day " +
                     trimmed(curve.tau_days, 1);
  if (cure.fit) {
    text += ", fitted to " + std::to_string(cure.fit->weighings) + " weighings";
    text += cure.fit->spread
                ? ", scatter " + trimmed(*cure.fit->spread / gram, 2) + " g (standard deviation)"
                : ", too few to know their scatter";
  }
  return line(text + ".");
}

std::string net_lines(const planning::LabelDraft& label) {
  if (!label.net) return "";
  const auto& net = *label.net;
  std::string text = "Net quantity: " + net.statement;
  if (net.figures)
    text += ", in figures at least " + trimmed(*net.figures / millimetre, 0) + " mm high";
  text += ". Lightest piece to expect: " + fixed_grams(label.lightest->mass) + " (" +
          label.lightest->because + ").";
  if (net.tolerance)
    text += label.market == planning::Market::EU
                ? " Tolerable negative error " + trimmed(*net.tolerance / gram, 1) +
                      " g: on average no less than stated, at most 1 in 40 short by more, none by "
                      "more than twice that (76/211/EEC)."
                : " Maximum allowable variation " + trimmed(*net.tolerance / gram, 1) +
                      " g: on average no less than stated, none short by more (NIST Handbook 133).";
  return line(text);
}

/// Which batch a piece is of. The law as the Austrian agency AGES lists it (ages.at, labelling of
/// cosmetics); for the US nothing of the kind is known here.
std::string batch_line(const planning::Plan& plan, const BatchCodes& codes) {
  const bool is_asked_for = plan.label->market == planning::Market::EU;
  std::string text;
  for (const auto& [number, code] : codes)
    text += (text.empty() ? "" : "; ") + code +
            (plan.pieces.batches == 1 ? "" : " for batch " + std::to_string(number));
  if (text.empty() && !is_asked_for) return "";
  if (text.empty()) text = "none yet; brimwright note gives it out, before the batch or with it";
  return line("Batch number: " + text + "." +
              (is_asked_for ? " On container and packaging (Regulation (EC) No 1223/2009, Article "
                              "19(1)(e))."
                            : ""));
}

std::string held_line(const planning::LabelDraft& label) {
  if (!label.held) return "";
  const auto& held = *label.held;
  return line("Your " + std::to_string(held.packs) + " pieces, checked against " +
              trimmed(held.stated / gram, 2) + " g: mean " + fixed_grams(held.mean) + ", " +
              std::to_string(held.short_once) + " short by more than that, " +
              std::to_string(held.short_twice) +
              " by more than twice: " + (held.passes ? "they pass." : "they do NOT pass."));
}

std::string allergen_lines(const planning::LabelDraft& label) {
  if (label.allergens.empty()) return "";
  TextTable table({Side::left, Side::right, Side::left});
  table.row({"Allergen", "of the piece", "named above 0.01 %"});
  std::string documents;
  for (const auto& allergen : label.allergens) {
    table.row(
        {allergen.name, in_percent(allergen.share, 4), allergen.is_to_be_named ? "yes" : "no"});
    for (const auto& document : allergen.documents)
      if (documents.find(document) == std::string::npos)
        documents += (documents.empty() ? "" : "; ") + document;
  }
  return table.text() + (documents.empty() ? "" : line("Allergens from: " + documents + "."));
}

}  // namespace

std::string cure_text(const planning::Plan& plan) {
  std::vector<std::pair<std::string, const planning::PartCure*>> parts;
  const auto add = [&](const std::string& name, const planning::BatterTally& part) {
    if (part.cure && part.cure->curve) parts.emplace_back(name, &*part.cure);
  };
  add("Base", plan.pour.batter);
  if (plan.pipe) add("Topping", plan.pipe->batter);
  if (parts.empty()) return "";
  std::string text;
  for (const auto& [name, cure] : parts) text += law_line(*cure, name);
  TextTable table(std::vector<Side>(parts.size() + 1, Side::right));
  std::vector<std::string> head{"day"};
  for (const auto& [name, cure] : parts) head.push_back(name);
  table.row(head);
  for (const double day : shown_days) {
    std::vector<std::string> row{fixed(day, 0)};
    for (const auto& [name, cure] : parts) row.push_back(fixed_grams(cure->curve->on_day(day)));
    table.row(row);
  }
  return text + table.text();
}

std::string label_text(const planning::Plan& plan, const BatchCodes& codes) {
  if (!plan.label) return "";
  const auto& label = *plan.label;
  std::string text = "LABEL, DRAFT FOR THE " + name_of(label.market) + "\n";
  text += net_lines(label) + batch_line(plan, codes) + held_line(label);
  text += line("Ingredients as finished soap: " + label.as_saponified.text + ".");
  text += line("Ingredients as weighed in: " + label.as_charged.text + ".");
  text += allergen_lines(label);
  for (const auto& remark : label.remarks)
    text += wrapped(remark.text, remark.severity == Severity::note ? "   - " : "   ! ", "     ");
  return text + "\n";
}

std::string bottles_text(const std::vector<planning::BottleTally>& bottles) {
  std::string text;
  for (const auto& bottle : bottles) {
    std::string shares;
    for (const auto& part : bottle.parts)
      shares += (shares.empty() ? "" : "; ") + part.name + " " + on_scale(part.gives, part.step) +
                ", " + in_percent(part.of_batter, 2) + " of it";
    text += line("A bottle of " + bottle.name + ", " + fixed_grams(bottle.holds) +
                 ", divided so that every batter gets the same percentage: " + shares + ".");
  }
  return text.empty() ? "" : "BOTTLES\n" + text + "\n";
}

}  // namespace brimwright::reports
