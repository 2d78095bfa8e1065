#include "records/act.h"
#include "records/batch_code.h"
#include "records/noting.h"
#include "service/note_desk.h"
#include "units/letters.h"
#include "units/written_number.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <utility>

namespace brimwright::service {
namespace {

using records::Batch;
using records::Records;

}  // namespace

/// Somebody else noted another value since the asker looked: neither is written over unasked.
void NoteDesk::ask_about_unseen(const Records& records, const Batch& batch) const {
  if (shown_.seen.empty()) return;
  std::map<std::string, std::string> now;
  for (const auto& [key, noted] : notes_of(records, batch).all) now[key] = noted.value;
  for (const auto& weighing : weighings_of(records, batch))
    now["cured." + weighing.day] = std::to_string(weighing.pieces) +
                                   (weighing.pieces == 1 ? " piece, " : " pieces, ") +
                                   weighing.written;
  for (const auto& [key, seen] : shown_.seen) {
    const auto at = now.find(key);
    const std::string there = at == now.end() ? "" : at->second;
    if (there == seen) continue;
    throw Question({.file = "",
                    .field = key,
                    .asks = "seen",
                    .problem = there.empty() ? Words("was taken back meanwhile")
                                             : Words("was noted as " + brimwright::quoted(there) +
                                                     " meanwhile"),
                    .remedy = "say which is right",
                    .choices = {{{{"seen", there}}}}});
  }
}

void NoteDesk::check_code_of_file(const Batch& batch) const {
  if (!asked_.batch_code) return;
  const std::string code = records::read_batch_code(*asked_.batch_code, asked_.batch_code_at);
  if (in_small_letters(code) != in_small_letters(batch.code))
    throw UserError(asked_.batch_code_at,
                    "is " + brimwright::quoted(code) + ", and the batch is " + batch.code,
                    "take the file of that batch");
}

/// The day of the beginning is no note; what else was confirmed is to be one.
void NoteDesk::note(Records& records, const Batch& batch) {
  std::vector<std::string> confirmed = asked_.confirmed;
  if (request_.on) std::erase(confirmed, plain(*request_.on));
  if (asked_.changes.empty() && !confirmed.empty())
    throw UserError(terms_.place("confirmed"),
                    brimwright::quoted(confirmed.front()) + " is nothing that was asked about",
                    "leave it out");
  if (asked_.changes.empty()) return;
  const bool is_lye_meant = !uses().empty() && std::erase(confirmed, more_lye) > 0;
  const records::Notes before = records::notes_of(records, batch);
  records::note(records, batch, asked_.changes,
                {.today = request_.today,
                 .noted_at = request_.now,
                 .confirmed = std::move(confirmed),
                 .confirmed_at = terms_.place("confirmed")});
  weigh_otherwise(records, batch, before, is_lye_meant);
}

/// Of what is noted, what was used otherwise than planned.
std::vector<records::Note> NoteDesk::uses() const {
  std::vector<records::Note> uses;
  std::copy_if(asked_.changes.begin(), asked_.changes.end(), std::back_inserter(uses),
               [](const records::Note& change) { return takes_lots(change.key); });
  return uses;
}

/// Lots lose what was used; more lye than was planned is never recorded unasked.
void NoteDesk::weigh_otherwise(Records& records, const Batch& batch, const records::Notes& before,
                               bool is_meant) {
  const auto changes = uses();
  if (changes.empty()) return;
  std::vector<std::string> keys;
  const records::Note* said = nullptr;
  for (const records::Note& change : changes) {
    keys.push_back(change.key);
    if (!change.value.empty() && change.key.starts_with(records::weighed_prefix)) said = &change;
  }
  const LotWishes wishes =
      request_.begin ? LotWishes{} : LotWishes{request_.lots, request_.beyond_stock};
  for (Remark& remark :
       use_as_weighed(records, batch, keys, request_.file, library_, wishes, terms_))
    report_.remarks.push_back(std::move(remark));
  const AsWeighed told = as_weighed(records, batch, records::notes_of(records, batch),
                                    request_.file, library_, caller_);
  if (said != nullptr && !is_meant && !was_told(records, batch, before, told))
    ask_about_lye(told.remarks, said->where, "correct the weight, or if it was weighed so");
  report_.remarks.insert(report_.remarks.end(), told.remarks.begin(), told.remarks.end());
}

/// Whether all that is to be asked about was noted before, and so meant.
bool NoteDesk::was_told(const Records& records, const Batch& batch, const records::Notes& before,
                        const AsWeighed& told) const {
  if (told.more_lye.empty()) return true;
  const auto then = as_weighed(records, batch, before, request_.file, library_, caller_).more_lye;
  return std::all_of(told.more_lye.begin(), told.more_lye.end(), [&](const std::string& one) {
    return std::find(then.begin(), then.end(), one) != then.end();
  });
}

void NoteDesk::change() {
  auto records = Records::in(run_.folder);
  if (!records)
    throw UserError({run_.file, ""}, "has no batch that was begun",
                    "give " + terms_.say({"begin"}) + " when its lye is mixed");
  Batch batch = picked(*records);
  records::Act act(*records, act_id(), request_.now, code_ ? "code" : "note",
                   about("code", batch.code));
  if (!act.was_done_before()) {
    check_code_of_file(batch);
    ask_about_unseen(*records, batch);
    if (code_) {
      const std::string before = batch.code;
      batch = records::with_code(*records, batch, *code_, request_.today, terms_.place("code"));
      report_.done.push_back("The batch that was " + before + " is " + batch.code + " now.");
    }
    note(*records, batch);
    act.done();
    tell_noted(batch);
  }
  show(*records, batch);
}

void NoteDesk::tell_noted(const Batch& batch) {
  if (asked_.changes.empty()) return;
  std::string all;
  for (const records::Note& change : asked_.changes)
    all += (all.empty() ? "" : "; ") + change.key +
           (without_blanks(change.value).empty() ? " taken back" : " " + change.value);
  report_.done.push_back("Noted of " + batch.code + ": " + all + ".");
}

}  // namespace brimwright::service
