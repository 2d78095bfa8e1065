#include "service/lot_reading.h"

#include "planning/usual_bench.h"
#include "reports/plan_words.h"
#include "schemas/tidying.h"
#include "trade/amount_text.h"
#include "units/question.h"
#include "units/reading.h"
#include "units/shown_text.h"
#include "units/written_number.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace brimwright::service {
namespace {

using records::Lot;
using records::StandingLot;
using trade::Amount;

constexpr std::int64_t most_packs = 10'000;

Place asked_at(const char* member, const UserTerms& terms) { return terms.place(member); }

const std::string& wanted(const std::optional<std::string>& typed, const char* member,
                          const std::string& example, const UserTerms& terms) {
  if (!typed)
    throw UserError(asked_at(member, terms), "is missing",
                    "give it, such as " + terms.say({member, example}));
  return *typed;
}

MaterialNames::Named material_told(const std::string& typed, const char* member,
                                   const StockRequest& request, const MaterialNames& names,
                                   const UserTerms& terms) {
  const Place where = asked_at(member, terms);
  refuse_unprintable(typed, where);
  auto named = names.named(typed, where);
  if (!named.is_known)
    ask(request, where, typed,
        brimwright::quoted(typed) + " is in no formula, run or list of packs here",
        named.near ? "did you mean " + brimwright::quoted(*named.near) + "?"
                   : "name it as your formula or your packs do");
  return named;
}

/// Packs of it that are known: by the studio, and by lots before.
std::vector<Amount> known_packs(const MaterialNames::Named& named, const StockPlace& place,
                                const MaterialNames& names, const records::Records& records) {
  std::vector<Amount> packs;
  for (const auto& [pack, where] : place.supplies.packs)
    if (names.named(pack.material, where).material == named.material) packs.push_back(pack.holds);
  for (const StandingLot& one : records::lots_of(records, {named.material})) {
    const auto of_one = one.lot.holds.whole() / one.lot.packs;
    packs.push_back(one.lot.holds.is_pieces() ? Amount::pieces(of_one)
                                              : Amount::micrograms(of_one));
  }
  return packs;
}

std::string listed(const std::vector<Amount>& packs) {
  std::vector<std::string> sizes;
  std::string text;
  for (const Amount& pack : packs) {
    const std::string size = trade::pack_size(pack);
    if (std::find(sizes.begin(), sizes.end(), size) != sizes.end() || sizes.size() == 3) continue;
    sizes.push_back(size);
    text += (text.empty() ? "" : ", ") + size;
  }
  return text;
}

/// A pack of 5 kg typed as 5 g is a thousandth of what it was before.
void ask_for_pack(const StockRequest& request, const std::string& typed, const Amount& holds,
                  const std::vector<Amount>& known, const MaterialNames::Named& named,
                  const Place& where) {
  constexpr double far = 50;  // common practice, no source
  std::vector<Amount> alike;
  for (const Amount& one : known)
    if (one.is_alike(holds)) alike.push_back(one);
  const std::string shown = shown_material(named.material);
  if (alike.empty() && !known.empty())
    ask(request, where, typed,
        "a pack of " + shown + " was " + listed(known) + " before, and this is " +
            trade::pack_size(holds),
        holds.is_pieces() ? "give its weight, such as \"5 kg\"" : "give a number of pieces");
  const bool is_near = std::any_of(alike.begin(), alike.end(), [&](const Amount& one) {
    const double ratio = static_cast<double>(holds.whole()) / static_cast<double>(one.whole());
    return ratio < far && ratio > 1 / far;
  });
  if (!alike.empty() && !is_near)
    ask(request, where, typed,
        "a pack of " + shown + " is " + listed(alike) + " elsewhere, and this is " +
            trade::pack_size(holds),
        "look at its unit");
  constexpr std::int64_t small = 50'000'000, large = 1'000'000'000'000;  // 50 g and a tonne
  const auto kind = runs::priced_as(named.material);
  const bool is_by_the_kilo = kind == planning::Priced::fat || kind == planning::Priced::alkali;
  if (alike.empty() && !holds.is_pieces() &&
      ((is_by_the_kilo && holds.whole() < small) || holds.whole() >= large))
    ask(request, where, typed,
        "a pack of " + shown + " of " + trade::pack_size(holds) +
            " is far "
            "from usual",
        "look at its unit");
}

std::int64_t packs_told(const StockRequest& request, const UserTerms& terms) {
  if (!request.packs) return 1;
  const Place where = asked_at("packs", terms);
  const double count = read_number(*request.packs, where);
  if (count != std::floor(count) || count < 1 || count > static_cast<double>(most_packs))
    throw UserError(where, brimwright::quoted(*request.packs) + " is not a number of packs",
                    "write a whole number, 1 or more");
  return static_cast<std::int64_t>(count);
}

/// "27.50 EUR", or "27.50" in the studio's money.
Money read_price(const std::string& typed, const Currency& studios, const Place& where) {
  const std::string text = plain(typed);
  const auto blank = text.find_last_of(' ');
  const std::string code = blank == std::string::npos ? "" : text.substr(blank + 1);
  const bool has_code = code.size() == 3 && std::all_of(code.begin(), code.end(), [](char c) {
                          return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
                        });
  if (!has_code && studios.code.empty())
    throw UserError(where, brimwright::quoted(typed) + " does not say its currency",
                    "write it behind the sum, such as \"27.50 EUR\"");
  if (!has_code) return read_money(text, studios, where);
  std::string capitals = code;
  for (char& c : capitals)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  const Currency own = currency(capitals, where);
  if (!studios.code.empty() && !(own == studios))
    throw UserError(where, "is in " + own.code + ", and the studio pays in " + studios.code,
                    "nothing is converted: give what it came to in " + studios.code);
  return read_money(without_blanks(text.substr(0, blank)), own, where);
}

std::optional<Money> price_told(const StockRequest& request, const Amount& pack,
                                const MaterialNames::Named& named, std::int64_t packs,
                                const StockPlace& place, const records::Records& records,
                                const UserTerms& terms) {
  if (!request.price) return std::nullopt;
  const Place where = asked_at("price", terms);
  const Money price = read_price(*request.price, currency_of(place, records), where);
  if (!pack.is_pieces())
    if (const auto far = planning::far_price({price, pack.mass()}, runs::priced_as(named.material)))
      ask(request, where, *request.price,
          "comes to " + far->shown + ", far from usual for " + far->usual.what + " (" +
              far->usual.range + ", " + far->usual.source + ")",
          "it may be " + far->usual.slip + "; give what one pack cost");
  std::int64_t coins = 0;
  if (__builtin_mul_overflow(price.coins, packs, &coins))
    throw UserError(where, "is more than any price", "look for a slip");
  return Money{coins, price.currency};
}

void ask_for_days(const StockRequest& request, const Lot& lot, const UserTerms& terms) {
  if (!lot.best_before) return;
  const Place where = asked_at("best-before", terms);
  if (*lot.best_before < lot.bought_on)
    ask(request, where, *lot.best_before, "was past already when it came, on " + lot.bought_on,
        "look at year and month");
  constexpr int long_ahead = 10;  // years; common practice, no source
  if (std::stoi(lot.best_before->substr(0, 4)) > std::stoi(lot.bought_on.substr(0, 4)) + long_ahead)
    ask(request, where, *lot.best_before, "is more than ten years ahead", "look at the year");
}

void ask_for_code(const StockRequest& request, const Lot& lot, const records::Records& records,
                  const UserTerms& terms) {
  for (const StandingLot& one : records::lots_called(records, lot.code)) {
    if (one.lot.material != lot.material) continue;
    ask(request, asked_at("lot", terms), lot.code,
        brimwright::quoted(one.lot.code) + " of " + shown_material(lot.material) +
            " is there already, bought on " + one.lot.bought_on + ", with " +
            trade::amount_shown_down(one.there()) + " left",
        "to correct what is left, count it instead");
    return;
  }
}

std::string code_told(const StockRequest& request, const records::Records& records,
                      const UserTerms& terms) {
  if (!request.lot) return records::own_code(records);
  const Place where = asked_at("lot", terms);
  refuse_unprintable(*request.lot, where);
  std::string code(without_blanks(*request.lot));
  if (code == records::unknown_lot || code.find('=') != std::string::npos)
    throw UserError(where, brimwright::quoted(code) + " cannot be a lot's code",
                    "leave out \"=\", and another word than \"unknown\"");
  return code;
}

std::string iso(const std::string& typed, const Place& where) {
  return reports::iso_date(read_date(typed, where));
}

Amount pack_told(const StockRequest& request, const MaterialNames::Named& named,
                 const UserTerms& terms) {
  const std::string& typed = wanted(request.pack, "pack", "\"5 kg\"", terms);
  const Place where = asked_at("pack", terms);
  const Amount holds = runs::amount_in(plain(typed), named.material, {}, where);
  if (holds.whole() == 0)
    throw UserError(where, "holds nothing", "say what one pack holds, such as \"5 kg\"");
  return holds;
}

std::vector<ToldLot::Source> sources_told(const StockRequest& request, const MaterialNames& names,
                                          const records::Records& records, const UserTerms& terms) {
  std::vector<ToldLot::Source> sources;
  for (const std::string& typed : request.of) {
    const Place where = asked_at("of", terms);
    const auto [lots, amount] = read_amount_of_lot(typed, names, records, where);
    std::int64_t needed = amount.whole();
    for (const StandingLot& one : lots) {
      const std::int64_t whole = std::min(needed, one.there().whole());
      if (whole == 0) continue;
      sources.push_back(
          {one.lot, amount.is_pieces() ? Amount::pieces(whole) : Amount::micrograms(whole)});
      needed -= whole;
    }
    if (needed > 0)
      throw UserError(where, brimwright::quoted(typed) + " is more than is left of that lot",
                      "count what is there first, or take the rest of another lot");
  }
  return sources;
}

}  // namespace

void refuse_unprintable(const std::string& text, const Place& where, std::size_t most) {
  if (without_blanks(text).empty() || on_one_line(text) != text || characters_in(text) > most)
    throw UserError(where, brimwright::quoted(text) + " cannot be printed on one line",
                    "write up to " + std::to_string(most) + " characters, without line ends");
}

void ask(const StockRequest& request, const Place& where, const std::string& value,
         const std::string& problem, const std::string& remedy) {
  const auto& meant = request.confirmed;
  if (std::find(meant.begin(), meant.end(), value) != meant.end()) return;
  throw Question({.file = where.file,
                  .field = where.field,
                  .asks = "confirmed",
                  .problem = problem,
                  .remedy = Words(remedy + (remedy.ends_with('?') ? " If not, say "
                                                                  : "; if it is "
                                                                    "meant, say ")) +
                            Words(Answer{"confirmed", "\"" + value + "\""}),
                  .choices = {{{{"confirmed", value}}}}});
}

Currency currency_of(const StockPlace& place, const records::Records& records) {
  if (!place.supplies.currency.code.empty()) return place.supplies.currency;
  const auto& fields = place.studio.fields();
  if (fields && fields->has("currency"))
    return currency(fields->text("currency"), fields->place("currency"));
  for (const StandingLot& one : records::standing_lots(records))
    if (one.lot.paid) return one.lot.paid->currency;
  return {};
}

void check_seen(const StockRequest& request, std::int64_t now, const std::string& there) {
  if (!request.seen || *request.seen == now) return;
  throw Question({.file = "",
                  .field = "",
                  .asks = "seen",
                  .problem = there + " by the records now, and it was otherwise when you looked",
                  .remedy = "look whether it was recorded already",
                  .choices = {}});
}

std::string day_of_act(const StockRequest& request, const UserTerms& terms) {
  if (!request.on) return request.today;
  const Place where = asked_at("on", terms);
  std::string day = iso(*request.on, where);
  if (day > request.today)
    throw UserError(where, day + " is still to come",
                    "record it on that day, or give the day "
                    "on which it happened");
  return day;
}

ToldLot read_lot(const StockRequest& request, const StockPlace& place, const MaterialNames& names,
                 const records::Records& records, const UserTerms& terms) {
  const char* member = request.made ? "made" : "bought";
  const auto named =
      material_told(request.made ? *request.made : *request.bought, member, request, names, terms);
  const Amount pack = pack_told(request, named, terms);
  const Place where = asked_at("pack", terms);
  ask_for_pack(request, *request.pack, pack, known_packs(named, place, names, records), named,
               where);
  const std::int64_t packs = packs_told(request, terms);
  ToldLot told{.lot = {.id = schemas::new_id(),
                       .code = code_told(request, records, terms),
                       .material = named.material,
                       .make = named.make,
                       .origin = request.made ? Lot::Origin::made : Lot::Origin::bought,
                       .seller = request.seller.value_or(""),
                       .bought_on = day_of_act(request, terms),
                       .best_before = {},
                       .packs = packs,
                       .pack = plain(*request.pack),
                       .holds = pack.times(packs),
                       .paid = price_told(request, pack, named, packs, place, records, terms)}};
  if (told.lot.holds.whole() > Amount::most)
    throw UserError(where, "comes to more than a thousand tonnes", "look for a slip");
  if (!told.lot.seller.empty()) refuse_unprintable(told.lot.seller, asked_at("seller", terms));
  if (request.best_before)
    told.lot.best_before = iso(*request.best_before, asked_at("best-before", terms));
  ask_for_days(request, told.lot, terms);
  ask_for_code(request, told.lot, records, terms);
  if (request.made) told.sources = sources_told(request, names, records, terms);
  return told;
}

ToldAmount read_amount_of_lot(const std::string& typed, const MaterialNames& names,
                              const records::Records& records, const Place& where) {
  const auto equals = typed.rfind('=');
  if (equals == std::string::npos || equals == 0 || equals + 1 == typed.size())
    throw UserError(where, brimwright::quoted(typed) + " names no lot and amount",
                    "write both, such as \"CO-117=1.2 kg\"");
  std::string code(without_blanks(typed.substr(0, equals)));
  auto lots = records::lots_called(records, code);
  for (auto colon = code.find(':'); lots.empty() && colon != std::string::npos;
       colon = code.find(':', colon + 1)) {
    const std::string material = names.named(code.substr(0, colon), where).material;
    lots = records::lots_called(records, std::string(without_blanks(code.substr(colon + 1))));
    std::erase_if(lots, [&](const StandingLot& one) { return one.lot.material != material; });
  }
  if (lots.empty())
    throw UserError(where, brimwright::quoted(code) + " is no lot in the records",
                    "look at the list of lots");
  if (lots.front().lot.material != lots.back().lot.material)
    throw UserError(where,
                    brimwright::quoted(code) + " is a lot of " +
                        shown_material(lots.front().lot.material) + " and of " +
                        shown_material(lots.back().lot.material),
                    "name the one that is meant before it: \"" + lots.front().lot.material + ":" +
                        code + "=1.2 kg\"");
  const std::string said(without_blanks(typed.substr(equals + 1)));
  const Amount amount = runs::amount_in(plain(said), lots.front().lot.material, {}, where);
  if (!amount.is_alike(lots.front().lot.holds))
    throw UserError(
        where, amount.is_pieces() ? "counts pieces of what is weighed" : "weighs what is counted",
        amount.is_pieces() ? "give what is left by weight, such as \"1.2 kg\""
                           : "give a number of pieces, such as \"12 pieces\"");
  return {std::move(lots), amount};
}

}  // namespace brimwright::service
