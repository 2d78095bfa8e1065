#include "planning/net_quantity.h"

#include "units/fields.h"
#include "units/printing.h"
#include "units/rounding.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace brimwright::embedded {
std::string_view net_quantity_json();
}

namespace brimwright::planning {
namespace {

constexpr const char* data_file = "data/net_quantity.json";

/// One row of a table of tolerances: an error, fixed or as a share of the quantity.
struct ToleranceRow {
  Mass from, to;
  double percent_of = 0;  // 0: fixed
  Mass fixed_error;
};

struct HeightRow {
  Mass above;
  Length height;
};

struct Tables {
  std::vector<ToleranceRow> eu, us;
  Mass eu_rounding;
  double most_short_percent;
  std::vector<HeightRow> heights;
  Length e_mark;
  double grams_for_an_ounce;
};

std::vector<ToleranceRow> read_rows(const Fields& table, std::string_view key,
                                    const std::string& unit_name, Mass unit,
                                    const std::string& upper) {
  std::vector<ToleranceRow> rows;
  for (const Fields& row : table.objects(key)) {
    ToleranceRow read{row.number("from_" + unit_name) * unit, row.number(upper + unit_name) * unit,
                      0, Mass()};
    if (row.has("percent"))
      read.percent_of = row.number("percent");
    else
      read.fixed_error = row.number(unit_name) * unit;
    rows.push_back(read);
  }
  return rows;
}

Tables read_tables() {
  const Fields file = Fields::parse(embedded::net_quantity_json(), data_file);
  const Fields eu = file.object("EU"), us = file.object("US");
  const Fields errors = eu.object("tolerable_negative_error");
  Tables tables{.eu = read_rows(errors, "rows", "g", gram, "to_"),
                .us = read_rows(us, "maximum_allowable_variation", "lb", pound, "below_"),
                .eu_rounding = errors.number("rounding_g") * gram,
                .most_short_percent = eu.object("most_short_percent").number("value"),
                .heights = {},
                .e_mark = eu.object("e_mark_mm").number("value") * millimetre,
                .grams_for_an_ounce = us.object("grams_for_an_ounce").number("value")};
  for (const Fields& row : eu.object("height_of_figures").objects("rows"))
    tables.heights.push_back({row.number("above_g") * gram, row.number("mm") * millimetre});
  return tables;
}

const Tables& tables() {
  static const Tables read = read_tables();
  return read;
}

Mass error_of(const ToleranceRow& row, Mass quantity) {
  return row.percent_of > 0 ? quantity * (row.percent_of / 100) : row.fixed_error;
}

Length figures_for(Mass nominal) {
  Length height;
  for (const HeightRow& row : tables().heights)
    if (nominal > row.above) height = row.height;
  return height;
}

/// The last of the digits that 16 CFR 500.19 allows: three, two below 100 g.
Mass last_digit(Mass mass) {
  const double grams = mass / gram;
  const int digits = grams < 100 ? 2 : 3;
  return std::pow(10.0, std::floor(std::log10(grams)) + 1 - digits) * gram;
}

/// "3.3 OZ", from a pound up "1 LB 2.3 OZ".
std::string ounces_in_words(std::int64_t tenths) {
  const std::int64_t pounds = tenths / 160, rest = tenths % 160;
  const std::string ounces = trimmed(static_cast<double>(rest) / 10, 1) + " OZ";
  if (pounds == 0) return ounces;
  const std::string in_pounds = std::to_string(pounds) + " LB";
  return rest == 0 ? in_pounds : in_pounds + " " + ounces;
}

NetQuantity eu_quantity(Mass lightest, bool e_mark, const Place& where) {
  NetQuantity net;
  net.market = Market::EU;
  net.stated = rounded_down(lightest, gram);
  net.tolerance = tolerable_negative_error(net.stated);
  if (!net.tolerance)
    throw UserError(where,
                    "the lightest piece weighs " + trimmed(lightest / gram, 1) +
                        " g, outside the 5 g to 10 kg of Directive 76/211/EEC",
                    "leave out \"label\" and ask your weights and measures office");
  net.figures = figures_for(net.stated);
  net.statement = fixed(net.stated / gram, 0) + " g" + (e_mark ? " e" : "");
  if (e_mark)
    net.remarks.push_back({Severity::caution,
                           "The e mark is a promise: you measure or check the packs, keep records "
                           "and name a packer in the Union, in letters at least " +
                               trimmed(tables().e_mark / millimetre, 0) +
                               " mm high. Nobody has to use it (76/211/EEC, Annex I and II)."});
  return net;
}

NetQuantity us_quantity(Mass lightest, const Place& where) {
  NetQuantity net;
  net.market = Market::US;
  const Mass legal_ounce = tables().grams_for_an_ounce * gram;
  const std::int64_t tenths = whole_down(10 * (lightest / legal_ounce));
  if (tenths < 1)
    throw UserError(where, "the lightest piece weighs less than 0.1 oz",
                    "leave out \"label\" and ask your weights and measures office");
  const Mass ounces = static_cast<double>(tenths) / 10 * legal_ounce;
  // The same amount in grams, to the nearest, unless the piece does not hold that.
  const Mass grams = std::min(rounded_nearest(ounces, last_digit(ounces)),
                              rounded_down(lightest, last_digit(lightest)));
  net.stated = std::max(ounces, grams);
  net.tolerance = maximum_allowable_variation(net.stated);
  net.statement = "NET WT " + ounces_in_words(tenths) + " (" + trimmed(grams / gram, 1) + " g)";
  net.remarks.push_back(
      {Severity::note,
       "On the lower 30 % of the main panel, in letters at least 1/16 in high on a panel up to 5 "
       "sq in, 1/8 in up to 25 sq in, 3/16 in up to 100 sq in (16 CFR 500, 21 CFR 701.13, not "
       "checked at the source). The allowance is that of NIST Handbook 133, Table 2-5, not checked "
       "at the source either: look there."});
  return net;
}

}  // namespace

std::string name_of(Market market) { return market == Market::EU ? "EU" : "US"; }

std::optional<Mass> tolerable_negative_error(Mass nominal) {
  // Common edges give the same error from both rows, so either may take them.
  for (const ToleranceRow& row : tables().eu)
    if (nominal >= row.from && nominal <= row.to)
      return rounded_up(error_of(row, nominal), tables().eu_rounding);
  return std::nullopt;
}

std::optional<Mass> maximum_allowable_variation(Mass labelled) {
  for (const ToleranceRow& row : tables().us)
    if (labelled >= row.from && labelled < row.to) return error_of(row, labelled);
  return std::nullopt;
}

NetQuantity net_quantity(Market market, Mass lightest, bool e_mark, const Place& where) {
  return market == Market::EU ? eu_quantity(lightest, e_mark, where) : us_quantity(lightest, where);
}

PacksHeld held_against(Market market, Mass stated, const std::vector<Mass>& packs) {
  assert(!packs.empty());
  const auto tolerance =
      market == Market::EU ? tolerable_negative_error(stated) : maximum_allowable_variation(stated);
  assert(tolerance);
  const Mass hair = 1e-9 * stated;  // a pack short by just the tolerance is not short by more
  const auto short_by_more_than = [&](Mass most) {
    return std::count_if(packs.begin(), packs.end(),
                         [&](Mass pack) { return stated - pack > most + hair; });
  };
  PacksHeld held;
  held.stated = stated;
  held.packs = static_cast<std::int64_t>(packs.size());
  held.mean = std::accumulate(packs.begin(), packs.end(), Mass()) / static_cast<double>(held.packs);
  held.mean_reaches = held.mean >= stated - hair;
  held.short_once = short_by_more_than(*tolerance);
  held.short_twice = short_by_more_than(2 * *tolerance);
  const double most_short = static_cast<double>(held.packs) * tables().most_short_percent / 100;
  const bool few_short = market == Market::EU
                             ? static_cast<double>(held.short_once) <= most_short + 1e-9
                             : held.short_once == 0;
  held.passes = held.mean_reaches && few_short && held.short_twice == 0;
  return held;
}

}  // namespace brimwright::planning
