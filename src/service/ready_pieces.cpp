#include "service/ready_pieces.h"

#include "records/batch_cost.h"
#include "records/batches.h"
#include "records/lot_use.h"
#include "records/notes.h"
#include "records/pieces.h"
#include "records/records.h"
#include "reports/plan_words.h"
#include "service/ordered.h"
#include "service/piece_acts.h"
#include "service/recorded_stock.h"
#include "service/run_records.h"
#include "service/same_soap.h"
#include "units/nearest_name.h"
#include "units/shown_text.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <filesystem>
#include <map>
#include <optional>
#include <tuple>
#include <utility>
#include <vector>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;

using records::Batch;
using records::PieceChange;
using records::Records;
using reports::ReadyLine;
using reports::ReadyOrder;

/// Pieces of a batch, as far as nobody has them yet.
struct Standing {
  Batch batch;
  bool is_known = false;        // how many were made
  std::int64_t good = 0;        // made, less rejects
  std::int64_t free = 0;        // that no order has taken
  std::string ready_from = {};  // the later of the day noted and the end of its cure
  std::string why_not = {};     // "has no test result"; empty where it is for sale from that day
  std::vector<std::string> changed = {};  // the files by which it would be another today
  std::vector<std::pair<std::string, std::int64_t>> taken_by_others = {};
};

/// A line's run and its batches.
struct RunStands {
  RunRecords run;
  std::vector<Standing> batches = {};

  bool has(const Batch& batch) const {
    if (run.file.empty()) return false;
    const auto keys = run.keys();
    return std::find(keys.begin(), keys.end(), batch.run) != keys.end();
  }
};

std::string key_of(const runs::Order& order) {
  return order.id.empty() ? "file:" + fs::path(order.file).filename().string() : order.id;
}

std::string name_of(const runs::Order& order) {
  return on_one_line(order.whom_for.empty() ? fs::path(order.file).filename().string()
                                            : order.whom_for);
}

bool takes(const runs::Order& order) {
  return std::any_of(order.lines.begin(), order.lines.end(),
                     [](const runs::OrderLine& line) { return line.takes_ready.is; });
}

bool comes_before(const runs::Order& one, const runs::Order& other) {
  const auto rank = [](const runs::Order& order) {
    return std::tuple(!order.due.has_value(), order.due.value_or(std::chrono::year_month_day{}),
                      fs::path(order.file).filename().string());
  };
  return rank(one) < rank(other);
}

std::string day_before(std::chrono::year_month_day day) {
  return reports::iso_date(std::chrono::sys_days(day) - std::chrono::days(1));
}

/// Batches of runs, and who takes of them.
class Stands {
 public:
  Stands(const Records& records, const moulds::Library& library)
      : records_(records), library_(library), cures_(records) {}

  RunStands& of(const std::string& run_file) {
    const auto [known, is_new] = runs_.try_emplace(one_name_of(run_file));
    if (is_new) known->second = stands_of(run_file);
    return known->second;
  }

  /// Those that may be taken: of these batches alone, where some are named.
  std::vector<Standing*> fitting(const runs::OrderLine& line, const std::string& last) {
    std::vector<Standing*> fit;
    const auto& named = line.takes_ready.batches;
    for (Standing& one : of(line.run).batches) {
      const bool is_named = is_among(named, one.batch.code);
      if (!named.empty() && !is_named) continue;
      if (!one.is_known || one.free <= 0 || !one.why_not.empty() || one.ready_from > last) continue;
      if (one.changed.empty() || is_named) fit.push_back(&one);
    }
    std::sort(fit.begin(), fit.end(), [](const Standing* a, const Standing* b) {
      return std::tie(a->ready_from, a->batch.code) < std::tie(b->ready_from, b->batch.code);
    });
    return fit;
  }

  static bool is_among(const std::vector<std::string>& codes, const std::string& code) {
    return std::any_of(codes.begin(), codes.end(), [&](const std::string& one) {
      return records_code(one) == records_code(code);
    });
  }

 private:
  static std::string records_code(std::string code) {
    for (char& c : code)
      if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    return code;
  }

  RunStands stands_of(const std::string& run_file) {
    RunStands stands;
    try {
      stands.run = run_records(run_file, library_);
    } catch (const UserError&) {
      stands.run = {.folder = "", .file = "", .id = "", .name = fs::path(run_file).filename()};
      return stands;  // a built-in example, beside which nothing is recorded
    }
    if (!changes_) changes_ = records::changed_pieces(records_);
    std::map<std::string, records::Notes> notes;
    for (const std::string& key : stands.run.keys())
      notes.merge(records::piece_notes(records_, key));
    for (Batch& batch : batches_of(records_, stands.run)) {
      const records::Notes& its = notes[batch.id];
      Standing one = standing(std::move(batch), its, run_file);
      if (!one.is_known || one.free > 0) stands.batches.push_back(std::move(one));
    }
    return stands;
  }

  Standing standing(Batch batch, const records::Notes& notes, const std::string& run_file) {
    const auto change = changes_->find(batch.id);
    const auto count = records::with_notes(
        change == changes_->end() ? records::PieceCount() : change->second, notes);
    Standing one{.batch = std::move(batch),
                 .is_known = count.is_known,
                 .good = count.made - count.rejected,
                 .free = count.there()};
    if (!one.is_known || one.free <= 0) return one;
    constexpr auto end_of_days = "9999-12-31";  // whether it ever is, as it is noted
    one.why_not = records::for_sale(notes, end_of_days).why_not;
    one.ready_from = std::max(notes.text("ready_on").value_or(""), one.batch.begun_on);
    if (const auto until = cures_.until(one.batch))
      one.ready_from = std::max(one.ready_from, *until);
    const auto [known, is_new] = changed_.try_emplace({one.batch.sources, run_file});
    if (is_new)
      known->second = changed_since(records::sources_of(records_, one.batch), one.batch.run_file,
                                    run_file, library_);
    one.changed = known->second;
    return one;
  }

  const Records& records_;
  const moulds::Library& library_;
  Cures cures_;
  std::map<std::string, RunStands> runs_;
  std::optional<std::map<std::string, records::PieceCount>> changes_;
  std::map<std::pair<std::string, std::string>, std::vector<std::string>> changed_;
};

class Taking {
 public:
  Taking(const runs::Order& order, std::int64_t times, const ReadyBy& by, const Records& records,
         const moulds::Library& library)
      : order_(order),
        times_(times),
        by_(by),
        records_(records),
        library_(library),
        folder_(fs::path(records.path()).parent_path()),
        stands_(records, library) {}

  ReadyOrder ready() {
    refuse_elsewhere();
    if (library_.named) library_.named->push_back(records_.path());
    const auto changes = records::changes_of_order(records_, key_of(order_));
    let_others_take(takes(order_) || !changes.empty());
    for (const runs::OrderLine& line : order_.lines) add(line, changes);
    note_other_pieces(changes);
    return std::move(ready_);
  }

 private:
  void refuse_elsewhere() const {
    const fs::path own = fs::path(order_.file).parent_path();
    const bool is_here = one_name_of(own.empty() ? "." : own.string()) ==
                         one_name_of(folder_.empty() ? "." : folder_.string());
    if (takes(order_) && !is_here)
      throw UserError({order_.file, "/ready"},
                      "takes ready pieces, and the order does not lie in the folder of its runs",
                      "put the order there, where other orders know what it takes");
  }

  /// Reads the folder's other orders; those that come first take before this one.
  void let_others_take(bool matters) {
    std::vector<runs::Order> before;
    for (const std::string& file : others()) {
      try {
        const auto other = order_in(file, std::nullopt, library_);
        if (!other) continue;
        if (library_.named) library_.named->push_back(file);
        if (matters) refuse_one_id(*other);
        if (takes(*other) && comes_before(*other, order_)) before.push_back(*other);
      } catch (const UserError& error) {
        if (error.parts().file == order_.file) throw;
        if (takes(order_))
          say(Severity::caution, on_one_line(fs::path(file).filename().string()) +
                                     " cannot be read, so it is not known what it takes of the "
                                     "pieces that are ready.");
      }
    }
    std::sort(before.begin(), before.end(), comes_before);
    for (const runs::Order& other : before) let_take(other);
  }

  std::vector<std::string> others() const {
    std::vector<std::string> files;
    std::error_code none;
    for (const auto& entry :
         fs::directory_iterator(folder_.empty() ? fs::path(".") : folder_, none)) {
      const std::string file = entry.path().string();
      if (file.ends_with(".order.json") && entry.is_regular_file(none) &&
          one_name_of(file) != one_name_of(order_.file))
        files.push_back(file);
    }
    std::sort(files.begin(), files.end());
    return files;
  }

  void refuse_one_id(const runs::Order& other) const {
    if (!order_.id.empty() && other.id == order_.id)
      throw UserError({order_.file, "/id"},
                      "is the id of " +
                          brimwright::quoted(fs::path(other.file).filename().string()) +
                          " too, so it is not known to which of the two pieces went",
                      "take \"id\" out of the copy, and brimwright tidy gives it a new one");
  }

  void let_take(const runs::Order& other) {
    const std::string last = other.due ? std::max(by_.today, day_before(*other.due)) : by_.today;
    const auto changes = records::changes_of_order(records_, key_of(other));
    for (const runs::OrderLine& line : other.lines) {
      if (!line.takes_ready.is || !is_of_ours(line)) continue;
      std::int64_t wanted = line.pieces - delivered(stands_.of(line.run), changes);
      for (Standing* one : stands_.fitting(line, last)) {
        const std::int64_t pieces = std::min(wanted, one->free);
        if (pieces <= 0) break;
        one->free -= pieces;
        wanted -= pieces;
        one->taken_by_others.emplace_back(name_of(other), pieces);
      }
    }
  }

  bool is_of_ours(const runs::OrderLine& line) const {
    return std::any_of(order_.lines.begin(), order_.lines.end(), [&](const auto& own) {
      return one_name_of(own.run) == one_name_of(line.run);
    });
  }

  std::int64_t delivered(const RunStands& stands, const std::vector<PieceChange>& changes) const {
    std::int64_t pieces = 0;
    for (const PieceChange& change : changes)
      if (change.what == PieceChange::What::sold)
        if (const auto batch = records::batch_of_id(records_, change.batch);
            batch && stands.has(*batch))
          pieces -= change.pieces;
    return pieces;
  }

  void add(const runs::OrderLine& line, const std::vector<PieceChange>& changes) {
    RunStands& stands = stands_.of(line.run);
    ReadyLine told{.run = line.run,
                   .name = stands.run.name,
                   .wanted = times_ * line.pieces,
                   .delivered = delivered(stands, changes)};
    if (line.takes_ready.is) refuse_shared_id(records_, stands.run);
    for (const std::string& code : line.takes_ready.batches) refuse_other(code, line, stands);
    std::int64_t left = told.to_make();
    std::vector<reports::ReadyBatch> fit;
    for (Standing* one : stands_.fitting(line, by_.last)) {
      const std::int64_t pieces = std::min(left, one->free);
      if (pieces <= 0) break;
      left -= pieces;
      fit.push_back(batch_of(*one, pieces, line.takes_ready.is));
      if (!line.takes_ready.is) continue;
      one->free -= pieces;
      if (!one->changed.empty()) note_changed(told.name, *one, pieces);
    }
    if (line.takes_ready.is) {
      told.batches = std::move(fit);
      if (told.to_make() > 0) add_otherwise(told, stands);
      if (told.to_make() > 0) note_not_counted(told.name, stands, line);
    } else if (!fit.empty()) {
      note_not_taken(told, fit);
    }
    ready_.lines.push_back(std::move(told));
  }

  void refuse_other(const std::string& code, const runs::OrderLine& line,
                    const RunStands& stands) const {
    const auto batch = records::batch_called(records_, code);
    if (batch && stands.has(*batch)) return;
    std::vector<std::string> codes;
    for (const Standing& one : stands.batches) codes.push_back(one.batch.code);
    const auto near = nearest_name(code, codes);
    throw UserError(line.ready_at,
                    brimwright::quoted(code) +
                        (batch ? " is a batch of " + brimwright::quoted(batch->run_name) +
                                     ", which is another run"
                               : " is no batch in the records"),
                    near ? "did you mean " + brimwright::quoted(*near) + "?"
                         : "name one of this run by its code, or write \"take\"");
  }

  reports::ReadyBatch batch_of(const Standing& one, std::int64_t pieces, bool with_cost) const {
    reports::ReadyBatch batch{.code = one.batch.code, .pieces = pieces};
    if (one.ready_from > by_.today) batch.ready_on = one.ready_from;
    if (!with_cost) return batch;
    const auto rows = records::used_by(records_, one.batch.id);
    if (rows.empty()) return batch;
    batch.cost = records::cost_of(records_, rows);
    const trade::Fraction part =
        trade::Fraction(pieces) / trade::Fraction(std::max(one.good, pieces));
    for (auto& sum : batch.cost->sums) sum.coins *= part;
    return batch;
  }

  void note_changed(const std::string& name, const Standing& one, std::int64_t pieces) {
    say(Severity::caution, on_one_line(name) + ": " + std::to_string(pieces) + " of batch " +
                               one.batch.code + " were made by another " + listed(one.changed) +
                               " than today's, and are taken as the order names that batch.");
  }

  void add_otherwise(ReadyLine& told, const RunStands& stands) const {
    for (const Standing& one : stands.batches)
      if (one.is_known && one.free > 0 && one.why_not.empty() && one.ready_from <= by_.last &&
          !one.changed.empty())
        told.otherwise.push_back({one.batch.code, one.free, one.changed});
  }

  void note_not_taken(const ReadyLine& line, const std::vector<reports::ReadyBatch>& fit) {
    ReadyLine would = line;
    would.batches = fit;
    const bool is_one = would.taken() == 1;
    say(Severity::note, on_one_line(line.name) + ": " + std::to_string(would.taken()) +
                            (is_one ? " piece that is" : " pieces that are") + " made already (" +
                            reports::batches_words(fit) + (is_one ? ") is" : ") are") +
                            " not taken, as the order does not say \"ready\": \"take\".");
  }

  /// Newest first, and of many only some.
  void note_not_counted(const std::string& name, const RunStands& stands,
                        const runs::OrderLine& line) {
    constexpr std::size_t most_told = 5;
    std::vector<std::string> reasons;
    for (std::size_t i = stands.batches.size(); i-- > 0;) {
      const Standing& one = stands.batches[i];
      for (const auto& [whom, pieces] : one.taken_by_others)
        reasons.push_back(std::to_string(pieces) + " of " + one.batch.code + " (go to " + whom +
                          ")");
      if (one.is_known && one.free <= 0) continue;
      if (auto why = why_not_counted(one, line)) reasons.push_back(std::move(*why));
    }
    if (reasons.empty()) return;
    std::string text = on_one_line(name) + ", made and not counted: ";
    for (std::size_t i = 0; i < std::min(most_told, reasons.size()); ++i)
      text += (i == 0 ? "" : "; ") + reasons[i];
    if (reasons.size() > most_told)
      text += "; and " + std::to_string(reasons.size() - most_told) + " more";
    say(Severity::note, text + ".");
  }

  std::optional<std::string> why_not_counted(const Standing& one,
                                             const runs::OrderLine& line) const {
    const std::string& code = one.batch.code;
    const bool is_named = Stands::is_among(line.takes_ready.batches, code);
    if (!line.takes_ready.batches.empty() && !is_named) return std::nullopt;
    if (!one.is_known) return code + " (how many were made is not noted)";
    const std::string what = std::to_string(one.free) + " of " + code;
    if (!one.why_not.empty()) return what + " (" + one.why_not + ")";
    if (one.ready_from > by_.last) return what + " (ready on " + one.ready_from + " only)";
    if (!one.changed.empty() && !is_named)
      return what + " (made by another " + listed(one.changed) + " than today's: \"ready\": [\"" +
             code + "\"] in its line takes them all the same)";
    return std::nullopt;
  }

  /// What went to this order and is of none of its lines, or was given away, or went to its file
  /// while that had no id.
  void note_other_pieces(const std::vector<PieceChange>& changes) {
    std::int64_t given = 0;
    for (const PieceChange& change : changes) {
      if (change.what == PieceChange::What::given) given -= change.pieces;
      if (change.what != PieceChange::What::sold) continue;
      const auto batch = records::batch_of_id(records_, change.batch);
      if (!batch || std::any_of(order_.lines.begin(), order_.lines.end(),
                                [&](const auto& line) { return stands_.of(line.run).has(*batch); }))
        continue;
      say(Severity::caution, counted(-change.pieces, "piece") + " of " +
                                 on_one_line(batch->run_name) + " (batch " + batch->code +
                                 ") went to this order, and no line of it is of that run.");
    }
    if (given > 0)
      say(Severity::note,
          counted(given, "piece") + " given away for this order are not counted as delivered.");
    if (order_.id.empty()) return;
    std::int64_t by_file = 0;
    for (const PieceChange& change :
         records::changes_of_order(records_, "file:" + fs::path(order_.file).filename().string()))
      if (change.what == PieceChange::What::sold) by_file -= change.pieces;
    if (by_file > 0)
      say(Severity::caution,
          counted(by_file, "piece") +
              " went to a file of this name that had no \"id\", and are not counted as delivered.");
  }

  static std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names) text += (text.empty() ? "" : ", ") + on_one_line(name);
    return text;
  }

  void say(Severity severity, const std::string& text) { ready_.notes.push_back({severity, text}); }

  const runs::Order& order_;
  std::int64_t times_;
  const ReadyBy& by_;
  const Records& records_;
  const moulds::Library& library_;
  fs::path folder_;
  Stands stands_;
  ReadyOrder ready_;
};

ReadyOrder without_records(const runs::Order& order, std::int64_t times) {
  ReadyOrder ready;
  for (const runs::OrderLine& line : order.lines)
    ready.lines.push_back({.run = line.run,
                           .name = fs::path(line.run).filename().string(),
                           .wanted = times * line.pieces});
  if (takes(order))
    ready.notes.push_back({Severity::note,
                           "The order takes pieces that are ready, and nothing is recorded in the "
                           "folder of its runs: all are planned."});
  return ready;
}

}  // namespace

ReadyOrder ready_for(const runs::Order& order, std::int64_t times, const ReadyBy& by,
                     const moulds::Library& library) {
  std::vector<std::string> files;
  for (const runs::OrderLine& line : order.lines) files.push_back(line.run);
  const auto records = records_of(files);
  ReadyOrder ready =
      records ? Taking(order, times, by, *records, library).ready() : without_records(order, times);
  ready.file = order.file;
  return ready;
}

}  // namespace brimwright::service
