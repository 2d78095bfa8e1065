#include "runs/label_reading.h"

#include "units/reading.h"

namespace brimwright::runs {
namespace {

std::vector<Mass> finished_pieces(const Fields& label) {
  std::vector<Mass> weighed;
  const Place where = label.place("weighed_pieces");
  for (const auto& text : label.texts("weighed_pieces")) {
    const Place place{where.file, where.field + "/" + std::to_string(weighed.size())};
    weighed.push_back(read_mass(text, place));
    if (!(weighed.back() > Mass{}))
      throw UserError(place, "is zero", "give what one finished piece weighs");
  }
  if (weighed.size() < 3)
    throw UserError(where, "holds " + std::to_string(weighed.size()) + " of the 3 pieces needed",
                    "weigh at least three finished pieces, better ten");
  return weighed;
}

/// "2 g" or "2 %" either way.
void read_stated_spread(const Fields& label, planning::PieceSpread& spread) {
  if (!label.has("weight_spread")) return;
  if (label.is_text("weight_spread") &&
      label.text("weight_spread").find('%') != std::string::npos) {
    spread.share = label.share("weight_spread", Share{}, 50 * percent);
    if (!(*spread.share > Share{}))
      throw UserError(label.place("weight_spread"), "is 0 %", "no two pieces weigh the same");
    return;
  }
  spread.either_way = label.positive_mass("weight_spread", "2 g");
}

planning::PieceSpread piece_spread(const Fields& label) {
  planning::PieceSpread spread;
  const bool is_stated = label.has("weight_spread") || label.has("pour_line_off_by");
  if (label.has("weighed_pieces") == is_stated)
    throw UserError(
        label.place(),
        is_stated ? "gives twice how much pieces differ" : "does not give how much pieces differ",
        "give either " + label.quoted("weighed_pieces") + " (three finished pieces or more), or " +
            label.quoted("weight_spread") + " or " + label.quoted("pour_line_off_by"));
  if (label.has("weighed_pieces")) {
    spread.weighed_pieces = finished_pieces(label);
    return spread;
  }
  read_stated_spread(label, spread);
  if (label.has("pour_line_off_by"))
    spread.pour_line_off_by = label.positive_length("pour_line_off_by", "1 mm");
  return spread;
}

/// Another country's law is another law: no market is taken for the one that is spelt most like it.
planning::Market read_market(const Fields& label) {
  const std::string given = label.text("market");
  if (given == "EU") return planning::Market::EU;
  if (given == "US") return planning::Market::US;
  throw UserError(label.place("market"), "\"" + given + "\" is not covered",
                  "covered are \"EU\" (Directive 76/211/EEC, Regulation (EC) 1223/2009) and \"US\" "
                  "(16 CFR 500, NIST Handbook 133); for another market leave out \"label\" and ask "
                  "there for its rules");
}

}  // namespace

std::optional<planning::LabelOrder> read_label_order(const Fields& run) {
  const auto label = run.optional_object("label");
  if (!label) return std::nullopt;
  planning::LabelOrder order;
  order.market = read_market(*label);
  order.weight_spread = piece_spread(*label);
  order.e_mark = label->has("e_mark") && label->truth("e_mark");
  if (order.e_mark && order.market != planning::Market::EU)
    throw UserError(label->place("e_mark"), "is not a mark of this market",
                    "leave it out: it belongs to Directive 76/211/EEC");
  if (label->has("printed_weight"))
    order.printed_weight = label->positive_mass("printed_weight", "95 g");
  label->refuse_unknown();
  return order;
}

}  // namespace brimwright::runs
