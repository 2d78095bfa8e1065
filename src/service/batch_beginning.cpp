#include "service/batch_beginning.h"

#include "records/batch_code.h"
#include "records/poured_from.h"
#include "schemas/tidying.h"
#include "service/ordered.h"
#include "service/run_planning.h"
#include "service/run_records.h"
#include "units/written_number.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <utility>

namespace brimwright::service {
namespace {

using records::Batch;
using records::Records;

/// Each with those of `typed` that are for it; what is for none stays with the first, which refuses
/// it.
std::vector<LotWishes> dealt_wishes(const LotWishes& typed, const std::vector<Begun>& all,
                                    const Records& records, const UserTerms& terms) {
  if (all.size() == 1) return {typed};
  std::vector<LotWishes> dealt;
  LotWishes left = typed;
  for (const Begun& one : all) {
    dealt.push_back(wishes_for(one.rows, typed, records, terms));
    for (const std::string& lot : dealt.back().lots) std::erase(left.lots, lot);
    for (const std::string& code : dealt.back().beyond_stock) std::erase(left.beyond_stock, code);
  }
  auto& first = dealt.front();
  first.lots.insert(first.lots.end(), left.lots.begin(), left.lots.end());
  first.beyond_stock.insert(first.beyond_stock.end(), left.beyond_stock.begin(),
                            left.beyond_stock.end());
  return dealt;
}

/// Who began the line's own batch that day may be about to make the same twice.
void ask_if_begun_alone(const Records& records, const RunRecords& its, std::int64_t number,
                        const Batch& base, std::vector<std::string>& confirmed,
                        const UserTerms& terms) {
  const auto alone = newest_batch(records, its, number);
  if (!alone || alone->begun_on != base.begun_on || records::poured_from(records, alone->id) ||
      std::erase(confirmed, alone->code) > 0)
    return;
  const Place where = terms.place("begin");
  throw Question({.file = where.file,
                  .field = where.field,
                  .asks = "confirmed",
                  .problem = "batch " + std::to_string(number) + " of " +
                             brimwright::quoted(its.name) + " was begun on " + alone->begun_on +
                             " by itself, as " + alone->code,
                  .remedy = Words("begin the other lines by themselves too, or if it is made once "
                                  "more from this base, give ") +
                            Answer{"confirmed", alone->code} + " with it",
                  .choices = {{{{"confirmed", alone->code}}}}});
}

Batch begin_line(Records& records, const PouredBase& all, const PouredBase::Poured& poured,
                 const Batch& base, std::int64_t place, const RunRecords& its,
                 std::vector<std::string>& confirmed, const UserTerms& terms) {
  const PouredBase::Line& line = all.lines[poured.line];
  refuse_shared_id(records, its);
  ask_if_begun_alone(records, its, poured.number, base, confirmed, terms);
  keep_reserved(records, its);
  std::optional<std::string> code = base.code + "-" + std::to_string(place);
  if (code->size() > records::longest_batch_code || records::was_given(records, *code) ||
      reserved_code(records, its, poured.number))
    code.reset();
  Batch batch = records::begin_batch(
      records,
      {.id = schemas::new_id(),
       .run = its.key(),
       .run_file = its.file,
       .run_name = its.name,
       .number = poured.number,
       .begun_on = base.begun_on,
       .begun_at = base.begun_at,
       .pieces = batch_numbered(all.together.lines[poured.line], poured.number).pieces,
       .program = base.program,
       .plan = line.answer,
       .sources = line.sources,
       .code = std::move(code)},
      terms.place("code"));
  records::pour_from(records,
                     {.batch = batch.id,
                      .base = base.id,
                      .place = place,
                      .takes = std::max<std::int64_t>(std::llround(poured.takes / gram * 1e6), 1)});
  return batch;
}

}  // namespace

std::vector<Begun> begin_lines(Records& records, const PouredBase& base, const Batch& of,
                               const std::string& folder, const moulds::Library& library,
                               std::vector<std::string>& confirmed, const UserTerms& terms) {
  std::vector<Begun> all;
  for (const PouredBase::Poured& poured : base.poured_from(of.number)) {
    const planning::Run& run = base.runs[poured.line];
    const planning::Plan& plan = base.together.lines[poured.line];
    const RunRecords its = run_records(base.lines[poured.line].file, library);
    if (one_name_of(its.folder) != one_name_of(folder))
      throw UserError({base.lines[poured.line].file, ""},
                      "lies in another folder than its order, beside which its batch is recorded",
                      "move the order to its runs");
    const auto place = static_cast<std::int64_t>(all.size()) + 1;
    all.push_back({begin_line(records, base, poured, of, place, its, confirmed, terms), &run,
                   weighed_beside_base(run, plan, poured.number)});
  }
  return all;
}

LotsTaken take_of_lots(Records& records, std::vector<Begun> all, const LotWishes& typed,
                       const moulds::Library& library, const UserTerms& terms) {
  for (Begun& one : all) find_what_serves(one.rows, records, *one.run, library);
  const auto wishes = dealt_wishes(typed, all, records, terms);
  LotsTaken taken;
  for (std::size_t i = 0; i < all.size(); ++i) {
    LotsTaken its =
        take_of_lots(records, all[i].batch, *all[i].run, std::move(all[i].rows), wishes[i], terms);
    taken.has_more_lye |= its.has_more_lye;
    for (Remark& remark : its.remarks)
      if (std::none_of(taken.remarks.begin(), taken.remarks.end(),
                       [&](const Remark& told) { return told.text == remark.text; }))
        taken.remarks.push_back(std::move(remark));
  }
  return taken;
}

}  // namespace brimwright::service
