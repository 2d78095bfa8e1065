#include "runs/selling_reading.h"

#include "runs/money_reading.h"
#include "runs/packaging_reading.h"
#include "runs/supplies.h"
#include "units/learned_values.h"
#include "units/reading.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

namespace brimwright::runs {
namespace {

using costing::Overhead;
using costing::Selling;
using costing::SellingWay;
using costing::Work;

Money money_at(const Fields& fields, std::string_view key, const Currency& currency) {
  return read_money(fields.text(key), currency, fields.place(key));
}

/// Nothing of it where the key is absent.
Money optional_money(const Fields& fields, std::string_view key, const Currency& currency) {
  return fields.has(key) ? money_at(fields, key, currency) : Money{0, currency};
}

std::chrono::seconds optional_time(const Fields& fields, std::string_view key) {
  return fields.has(key) ? fields.positive_short_time(key, "2 min") : std::chrono::seconds{};
}

Work work_of(const Fields& fields, const Currency& currency) {
  Work work{.an_hour = money_at(fields, "paid_an_hour", currency),
            .each_batch = optional_time(fields, "each_batch"),
            .each_piece_made = optional_time(fields, "each_piece_made"),
            .each_tray_fill = optional_time(fields, "each_tray_fill"),
            .each_piece_packed = optional_time(fields, "each_piece_packed")};
  const auto all =
      work.each_batch + work.each_piece_made + work.each_tray_fill + work.each_piece_packed;
  if (all.count() == 0)
    throw UserError(fields.place(), "says no time",
                    "give at least one of \"each_batch\", \"each_piece_made\", \"each_tray_fill\" "
                    "and \"each_piece_packed\", such as \"90 min\"");
  tell_learned(fields);
  fields.refuse_unknown();
  return work;
}

Overhead overhead_of(const Fields& fields, const Currency& currency) {
  Overhead overhead{optional_money(fields, "each_batch", currency),
                    optional_money(fields, "each_piece_made", currency)};
  fields.refuse_unknown();
  return overhead;
}

trade::Tax tax_of(const Fields& fields) {
  const std::vector<std::string> ways = {"with tax", "without tax"};
  const trade::Tax tax{
      .rate = fields.share("rate", Share{}, 50 * percent, "20 %"),
      .is_in_paid = fields.choice("prices_paid", ways) == ways.front(),
      .is_in_asked = fields.choice("prices_asked", ways) == ways.front(),
  };
  fields.refuse_unknown();
  return tax;
}

trade::Fees fees_of(const Fields& fields, const Currency& currency) {
  trade::Fees fees{
      fields.has("of_price") ? fields.share("of_price", Share{}, 90 * percent, "6.5 %") : Share{},
      optional_money(fields, "each_order", currency)};
  fields.refuse_unknown();
  return fees;
}

SellingWay way_of(const Fields& ways, const std::string& name, const Currency& currency) {
  const Fields fields = ways.object(name);
  const int said = int(fields.has("margin")) + int(fields.has("markup")) + int(fields.has("price"));
  if (said != 1)
    throw UserError(fields.place(),
                    said == 0 ? "does not say how the price is calculated"
                              : "says in two ways how the price is calculated",
                    "give one of \"margin\", \"markup\" and \"price\"");
  SellingWay way{.name = name, .asking = trade::SetPrice{}};
  if (fields.has("margin"))
    way.asking = read_margin(fields.text("margin"), fields.place("margin"));
  else if (fields.has("markup"))
    way.asking = read_markup(fields.text("markup"), fields.place("markup"));
  else
    way.asking = read_set_price(fields.text("price"), currency, fields.place("price"));
  fields.refuse_unknown();
  return way;
}

std::vector<Money> endings_of(const Fields& studio, const Currency& currency) {
  std::vector<Money> endings;
  const auto texts = studio.texts("price_endings");
  for (std::size_t i = 0; i < texts.size(); ++i)
    endings.push_back(
        read_money(texts[i], currency,
                   {studio.file(), studio.place("price_endings").field + "/" + std::to_string(i)}));
  return endings;
}

constexpr std::array money_sections = {"packaging", "work",   "overhead",      "tax",
                                       "fees",      "asking", "price_endings", "packs"};

void read_sections(Selling& selling, const Fields& studio) {
  const Currency& currency = selling.currency;
  if (const auto work = studio.optional_object("work")) selling.work = work_of(*work, currency);
  if (const auto overhead = studio.optional_object("overhead"))
    selling.overhead = overhead_of(*overhead, currency);
  if (const auto tax = studio.optional_object("tax")) selling.tax = tax_of(*tax);
  if (const auto fees = studio.optional_object("fees")) selling.fees = fees_of(*fees, currency);
  if (const auto ways = studio.optional_object("asking"))
    for (const std::string& name : ways->keys())
      selling.ways.push_back(way_of(*ways, name, currency));
  selling.endings = endings_of(studio, currency);
}

/// By the names that weighings and packaging go by: the waste of each material, and of what no
/// weighing calls for the first pack.
void add_supplies(Selling& selling, const planning::Run& run, const Supplies& supplies) {
  Needed needed = needed_by(run);
  for (const auto& one : selling.packaging) needed.names.push_back(one.material);
  for (const auto& [name, share] : supplies.waste)
    selling.waste[material_of(name, needed, supplies, supplies.waste_at.at(name))] = share;
  constexpr std::int64_t micrograms = 1'000'000;  // in a gram
  for (const ListedPack& one : supplies.packs) {
    const trade::Amount& holds = one.pack.holds;
    const trade::Fraction whole = holds.whole();
    selling.prices.try_emplace(
        material_of(one.pack.material, needed, supplies, one.where),
        costing::UnitPrice{one.pack.paid,
                           holds.is_pieces() ? whole : trade::Fraction(whole / micrograms),
                           holds.is_pieces()});
  }
}

constexpr Share most_margin = 95 * percent;  // beyond any seller; a slip

/// "0.4 %", which is typed for 40 %.
void refuse_fraction(Share share, const std::string& what, const Place& where) {
  if (share == Share{} || share >= 1 * percent) return;
  throw UserError(where, "is a " + what + " of " + in_percent(share, 3),
                  "write " +
                      brimwright::quoted(in_percent(Share::of_one(share.of_one() * 100), 2)) +
                      " if that is meant; a " + what + " is nothing, or one per cent or more");
}

bool says_money(const Fields& studio) {
  return std::any_of(money_sections.begin(), money_sections.end(),
                     [&](const char* key) { return studio.has(key); });
}

}  // namespace

trade::Asking read_margin(const std::string& typed, const Place& where) {
  const Share margin = read_share(typed, where, "40 %");
  refuse_fraction(margin, "margin", where);
  if (margin > most_margin && margin < whole)
    throw UserError(where,
                    "is " + in_percent(margin, 2) + " of the price, which is more than " +
                        "twenty times the cost",
                    "a share of the cost is a markup; set such a price itself, as a price");
  if (margin >= whole)
    throw UserError(where, "is " + in_percent(margin, 2) + " of the price, which leaves no cost",
                    "give a margin below 100 %; a share of the cost is a markup");
  return trade::Margin{margin};
}

trade::Asking read_markup(const std::string& typed, const Place& where) {
  const Share markup = read_share(typed, where, "60 %");
  refuse_fraction(markup, "markup", where);
  return trade::Markup{markup};
}

trade::Asking read_set_price(const std::string& typed, const Currency& currency,
                             const Place& where) {
  const Money price = read_money(typed, currency, where);
  if (price.coins <= 0) throw UserError(where, "is zero", "give a price above zero");
  return trade::SetPrice{price};
}

Selling read_selling(const planning::Run& run, const moulds::Library& library) {
  const Studio studio = studio_for(run.file, library);
  const auto& fields = studio.fields();
  const bool has_studio = fields && fields->has("currency");
  if (!run.money && !has_studio)
    throw UserError({run.file, run.spelling.pointer("/money")}, "is missing",
                    "give prices, with their currency, here or in a studio.json beside the run");
  const Currency studios = has_studio
                               ? currency(fields->text("currency"), fields->place("currency"))
                               : run.money->currency;
  if (run.money && run.money->currency.code != studios.code && says_money(*fields))
    throw UserError(fields->place("currency"),
                    "is " + studios.code + ", and the prices of " + run.file + " are in " +
                        run.money->currency.code,
                    "give both in one currency: nothing is converted");
  Selling selling;
  selling.currency = run.money ? run.money->currency : studios;
  if (run.money)
    for (const auto& [name, price] : run.money->prices)
      selling.prices[name] = {
          price.paid,
          price.pieces > 0 ? trade::Fraction(price.pieces) : trade::exact(price.pack / gram),
          price.pieces > 0};
  if (fields) read_sections(selling, *fields);
  selling.packaging = packaging_of(run, read_packaging(studio));
  if (fields) selling.letterhead = fields->texts("letterhead");
  if (has_studio && studios.code == selling.currency.code)
    add_supplies(selling, run, *supplies_of(studio, library));
  return selling;
}

}  // namespace brimwright::runs
