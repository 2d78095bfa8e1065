#include "planning/usual_bench.h"

#include "units/printing.h"

#include <array>
#include <cmath>
#include <map>
#include <optional>
#include <string>
#include <utility>

namespace brimwright::embedded {
std::string_view usual_bench_json();
}

namespace brimwright::planning {
namespace {

constexpr auto file = "data/usual_bench.json";

/// What is usual for a kilogram or a piece, in a currency of a euro's worth.
struct UsualPrices {
  struct Range {
    double least, most;
  };
  std::array<Range, 5> by_kind;  // in the order of Priced
  std::map<std::string, double, std::less<>> worth_of_a_euro;
};

std::size_t index_of(const std::string& kind) {
  const std::array<std::string, 5> kinds = {"water", "alkali", "fat", "other", "piece"};
  std::size_t i = 0;
  while (kinds.at(i) != kind) ++i;
  return i;
}

UsualPrices read_prices() {
  const Fields prices = Fields::parse(embedded::usual_bench_json(), file).object("prices");
  UsualPrices read;
  for (const Fields& entry : prices.objects("kinds"))
    read.by_kind.at(index_of(entry.text("kind"))) = {entry.number("least"), entry.number("most")};
  const Fields worth = prices.object("worth_of_a_euro");
  for (const auto& code : worth.keys()) read.worth_of_a_euro[code] = worth.number(code);
  return read;
}

const UsualPrices& usual_prices() {
  static const UsualPrices prices = read_prices();
  return prices;
}

std::string what_is_bought(Priced kind) {
  if (kind == Priced::water) return "a kilogram of water";
  if (kind == Priced::piece) return "one piece of what is counted";
  if (kind == Priced::alkali) return "a kilogram of alkali";
  return kind == Priced::fat ? "a kilogram of a fat" : "a kilogram of anything stirred in or on";
}

}  // namespace

const UsualMeasures& usual_bench() {
  static const UsualMeasures usual(embedded::usual_bench_json(), file);
  return usual;
}

namespace {

struct ForOne {
  Usual usual;
  double paid;
  std::string shown;
};

/// Nothing for a currency whose worth is not known here.
std::optional<ForOne> for_one(const Price& price, Priced kind) {
  const Currency& currency = price.paid.currency;
  const auto worth = usual_prices().worth_of_a_euro.find(currency.code);
  if (worth == usual_prices().worth_of_a_euro.end()) return std::nullopt;
  const auto range = usual_prices().by_kind.at(static_cast<std::size_t>(kind));
  const double least = range.least * worth->second, most = range.most * worth->second;
  const double paid = static_cast<double>(price.paid.coins) / std::pow(10.0, currency.decimals);
  const bool is_counted = kind == Priced::piece;
  const double each =
      paid / (is_counted ? static_cast<double>(price.pieces) : price.pack / kilogram);
  const std::string unit = " " + currency.code + (is_counted ? " a piece" : "/kg");
  return ForOne{
      {least, most, trimmed(least, 4) + " to " + trimmed(most, 0) + unit, what_is_bought(kind),
       is_counted ? "a pack's price for a piece's, or a lost point"
                  : "g and kg mixed up, a pack's price for a kilogram's, a lost point",
       "common practice, no source"},
      each,
      trimmed(each, each < 1 ? 4 : 2) + unit};
}

}  // namespace

std::optional<FarPrice> far_price(const Price& price, Priced kind) {
  auto found = for_one(price, kind);
  if (!found || found->usual.holds(found->paid)) return std::nullopt;
  return FarPrice{std::move(found->usual), std::move(found->shown)};
}

void ask_for_price(const Fields& fields, const Price& price, Priced kind) {
  if (const auto found = for_one(price, kind))
    ask_once(fields, fields.place(), found->usual, found->paid, found->shown);
}

}  // namespace brimwright::planning
