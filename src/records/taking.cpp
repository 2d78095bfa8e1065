#include "records/taking.h"

#include "trade/amount_text.h"
#include "units/letters.h"
#include "units/nearest_name.h"
#include "units/question.h"
#include "units/written_number.h"

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

namespace brimwright::records {
namespace {

using Places = std::vector<std::size_t>;

bool are_one_code(const std::string& a, const std::string& b) {
  return in_small_letters(a) == in_small_letters(b);
}

bool serves(const Lot& lot, const Weighed& row) {
  if (!lot.holds.is_alike(row.amount)) return false;
  const auto is = [&](const std::string& name) {
    return !name.empty() &&
           (name == row.material ||
            std::find(row.served_by.begin(), row.served_by.end(), name) != row.served_by.end());
  };
  return is(lot.material) || is(lot.make);
}

bool is_unfit(const Lot& lot, const Weighed& row) {
  return !lot.make.empty() &&
         std::find(row.unfit.begin(), row.unfit.end(), lot.make) != row.unfit.end();
}

/// Of a material, what is short of it.
struct Short {
  std::string material, shown;
  trade::Amount needed, missing;
  Places lots;
};

class Taker {
 public:
  Taker(const std::vector<StandingLot>& lots, const std::vector<Weighed>& rows,
        const FromLots& wishes, std::string day, const std::string& file)
      : lots_(lots), rows_(rows), wishes_(wishes), day_(std::move(day)), file_(file) {
    for (const StandingLot& one : lots) left_.push_back(one.left);
  }

  Taking taken() {
    refuse_wishes_for_nothing();
    for (std::size_t i = 0; i < rows_.size(); ++i) take(i);
    if (!short_.empty()) ask();
    return std::move(taking_);
  }

 private:
  void take(std::size_t i) {
    const Weighed& row = rows_[i];
    const Places serving = fitting_of(row);
    const auto chosen = chosen_for(row);
    if (!chosen && has_none_yet(serving, row)) return tell_later(serving, row);
    if (chosen && chosen->size() == 1 && chosen->front() == unknown_lot) return;
    std::int64_t needed = row.amount.whole();
    for (const std::size_t lot : chosen ? chosen_of(serving, *chosen, row) : fit_of(serving, row)) {
      const std::int64_t whole = std::clamp<std::int64_t>(left_[lot], 0, needed);
      put(i, lot, whole);
      needed -= whole;
    }
    if (needed == 0) return;
    if (const auto lot = lot_beyond(serving))
      put(i, *lot, needed);
    else
      miss(row, needed, serving);
  }

  void put(std::size_t row, std::size_t lot, std::int64_t whole) {
    if (whole == 0) return;
    left_[lot] -= whole;
    const auto known =
        std::find_if(taking_.takes.begin(), taking_.takes.end(),
                     [&](const Take& one) { return one.weighed == row && one.lot == lot; });
    if (known != taking_.takes.end())
      known->whole += whole;
    else
      taking_.takes.push_back({row, lot, whole});
  }

  Places lots_for(const Weighed& row) const {
    Places serving;
    for (std::size_t lot = 0; lot < lots_.size(); ++lot)
      if (serves(lots_[lot].lot, row)) serving.push_back(lot);
    std::stable_sort(serving.begin(), serving.end(), [&](std::size_t a, std::size_t b) {
      return goes_before(lots_[a].lot, lots_[b].lot);
    });
    return serving;
  }

  /// Of those that serve, without unfit ones that nobody named; of these is told.
  Places fitting_of(const Weighed& row) {
    Places fitting;
    for (const std::size_t lot : lots_for(row)) {
      if (!is_unfit(lots_[lot].lot, row) || is_named(lots_[lot].lot, row))
        fitting.push_back(lot);
      else if (lots_[lot].left > 0 && told_.insert(lot).second)
        taking_.remarks.push_back({Severity::caution, unfit_words(lots_[lot], row)});
    }
    return fitting;
  }
  bool is_named(const Lot& lot, const Weighed& row) const {
    const auto is_it = [&](const std::string& code) { return are_one_code(code, lot.code); };
    const auto* chosen = chosen_for(row);
    return (chosen != nullptr && std::any_of(chosen->begin(), chosen->end(), is_it)) ||
           std::any_of(wishes_.beyond.begin(), wishes_.beyond.end(), is_it) ||
           std::find(row.taken_before.begin(), row.taken_before.end(), lot.id) !=
               row.taken_before.end();
  }
  static std::string unfit_words(const StandingLot& unfit, const Weighed& row) {
    return "Lot " + unfit.lot.code + " is " + unfit.lot.make +
           ", and this batch was planned with " + row.shown +
           ": nothing is taken of it unless you choose that lot.";
  }

  const std::vector<std::string>* chosen_for(const Weighed& row) const {
    for (const std::string& name : {row.row, row.material, row.shown})
      if (const auto at = wishes_.chosen.find(name); at != wishes_.chosen.end()) return &at->second;
    return nullptr;
  }

  Places called(const Places& lots, const std::string& code) const {
    Places called;
    for (const std::size_t lot : lots)
      if (are_one_code(lots_[lot].lot.code, code)) called.push_back(lot);
    return called;
  }

  Places chosen_of(const Places& serving, const std::vector<std::string>& codes,
                   const Weighed& row) const {
    Places chosen;
    for (const std::string& code : codes) {
      const Places its = called(serving, code);
      if (its.empty()) refuse_code(code, row, serving);
      chosen.insert(chosen.end(), its.begin(), its.end());
    }
    return chosen;
  }

  /// Those that were there and not past their best-before day; of the latter is told.
  Places fit_of(const Places& serving, const Weighed& row) {
    Places fit;
    for (const std::string& id : row.taken_before)
      for (const std::size_t lot : serving)
        if (lots_[lot].lot.id == id) fit.push_back(lot);
    for (const std::size_t lot : serving) {
      const bool is_taken = std::find(fit.begin(), fit.end(), lot) != fit.end();
      if (is_taken || is_later(lots_[lot])) continue;
      if (!lots_[lot].lot.is_past(day_))
        fit.push_back(lot);
      else if (lots_[lot].left > 0 && told_.insert(lot).second)
        taking_.remarks.push_back({Severity::caution, past_words(lots_[lot])});
    }
    return fit;
  }

  /// What was weighed before any lot of it came is of an unknown one.
  bool has_none_yet(const Places& serving, const Weighed& row) const {
    return row.taken_before.empty() && !lot_beyond(serving) &&
           std::all_of(serving.begin(), serving.end(),
                       [&](std::size_t lot) { return is_later(lots_[lot]); });
  }
  void tell_later(const Places& serving, const Weighed& row) {
    if (serving.empty() || !told_.insert(serving.front()).second) return;
    const Lot& first = lots_[serving.front()].lot;
    taking_.remarks.push_back({Severity::caution, row.shown + " is of an unknown lot: lot " +
                                                      first.code + " came on " + first.bought_on +
                                                      ", after this batch was begun."});
  }
  bool is_later(const StandingLot& one) const { return one.lot.bought_on > day_; }

  static std::string past_words(const StandingLot& past) {
    return "Lot " + past.lot.code + " of " +
           (past.lot.make.empty() ? past.lot.material : past.lot.make) +
           " is past its best-before day, " + *past.lot.best_before + ": the " +
           trade::amount_shown_down(past.there()) +
           " left of it are not taken unless you choose that lot.";
  }

  std::optional<std::size_t> lot_beyond(const Places& serving) const {
    std::optional<std::size_t> named;
    for (const std::string& code : wishes_.beyond)
      for (const std::size_t lot : called(serving, code)) named = lot;
    return named;
  }

  void miss(const Weighed& row, std::int64_t missing, const Places& serving) {
    const auto amount = [&](std::int64_t whole) {
      return row.amount.is_pieces() ? trade::Amount::pieces(whole)
                                    : trade::Amount::micrograms(whole);
    };
    const auto known = std::find_if(short_.begin(), short_.end(),
                                    [&](const Short& one) { return one.material == row.material; });
    if (known == short_.end()) {
      short_.push_back({row.material, row.shown, needed_of(row), amount(missing), serving});
      return;
    }
    known->missing = known->missing + amount(missing);
  }

  /// In all rows of that material together.
  trade::Amount needed_of(const Weighed& row) const {
    trade::Amount needed = row.amount.less(row.amount);
    for (const Weighed& one : rows_)
      if (one.material == row.material && one.amount.is_alike(needed)) needed = needed + one.amount;
    return needed;
  }

  [[noreturn]] void ask() const {
    std::string problem;
    Words beyond;
    std::vector<Choice> choices;
    for (const Short& one : short_) {
      problem += (problem.empty() ? "" : "; ") + words_of(one);
      if (&one != &short_.front()) beyond += Words(" ");
      const Answer answer{"beyond-stock", lots_[one.lots.back()].lot.code};
      beyond += Words(answer);
      choices.push_back({.answers = {answer}});
    }
    throw Question({.file = file_,
                    .field = "",
                    .asks = "beyond-stock",
                    .problem = problem,
                    .remedy = Words("count what is there, record what you bought, or say ") +
                              beyond +
                              Words(", and what is beyond is written as taken of that "
                                    "lot"),
                    .choices = std::move(choices)});
  }

  std::string words_of(const Short& one) const {
    std::string there, past, later;
    for (const std::size_t lot : one.lots) {
      if (lots_[lot].left <= 0) continue;
      std::string& of = is_later(lots_[lot]) ? later : lots_[lot].lot.is_past(day_) ? past : there;
      of += (of.empty() ? "" : ", ") + trade::amount_shown_down(lots_[lot].there()) + " of lot " +
            lots_[lot].lot.code;
    }
    return "of " + one.shown + " " + trade::amount_shown_up(one.needed) + " are needed, and only " +
           (there.empty() ? "nothing is" : there + " are") + " left by the records" +
           (past.empty() ? "" : " (and " + past + ", past its best-before day)") +
           (later.empty() ? "" : " (and " + later + ", which came after " + day_ + ")");
  }

  [[noreturn]] void refuse_code(const std::string& code, const Weighed& row,
                                const Places& serving) const {
    std::string known;
    for (const std::size_t lot : serving)
      if (lots_[lot].left > 0) known += (known.empty() ? "" : ", ") + lots_[lot].lot.code;
    throw Question({.file = file_,
                    .field = "",
                    .asks = "lot",
                    .problem = brimwright::quoted(code) + " is no lot of " + row.shown,
                    .remedy = known.empty()
                                  ? "none of its lots has anything left; say " +
                                        brimwright::quoted(unknown_lot) + " if you cannot tell"
                                  : "of it there are " + known,
                    .choices = {}});
  }

  void refuse_wishes_for_nothing() const {
    std::vector<std::string> names;
    for (const Weighed& row : rows_)
      for (const std::string& name : {row.row, row.material, row.shown}) names.push_back(name);
    for (const auto& [name, codes] : wishes_.chosen) {
      if (std::find(names.begin(), names.end(), name) != names.end()) continue;
      const auto near = nearest_name(name, names);
      throw Question({.file = file_,
                      .field = "",
                      .asks = "lot",
                      .problem = brimwright::quoted(name) + " is nothing that this batch weighs",
                      .remedy = near ? "did you mean " + brimwright::quoted(*near) + "?"
                                     : "name a material or a row of its sheet",
                      .choices = {}});
    }
    for (const std::string& code : wishes_.beyond)
      if (std::none_of(rows_.begin(), rows_.end(),
                       [&](const Weighed& row) { return !called(lots_for(row), code).empty(); }))
        throw Question(
            {.file = file_,
             .field = "",
             .asks = "beyond-stock",
             .problem = brimwright::quoted(code) + " is no lot of anything that this batch weighs",
             .remedy = "name the lot that more was taken of",
             .choices = {}});
  }

  const std::vector<StandingLot>& lots_;
  const std::vector<Weighed>& rows_;
  const FromLots& wishes_;
  std::string day_;
  const std::string& file_;
  std::vector<std::int64_t> left_;
  std::set<std::size_t> told_;
  std::vector<Short> short_;
  Taking taking_;
};

}  // namespace

Taking taken_from(const std::vector<StandingLot>& lots, const std::vector<Weighed>& rows,
                  const FromLots& wishes, const std::string& day, const std::string& file) {
  return Taker(lots, rows, wishes, day, file).taken();
}

}  // namespace brimwright::records
