#include "service/never_made.h"

#include "units/user_error.h"
#include "units/wording.h"

#include <algorithm>
#include <functional>
#include <string>
#include <utility>

namespace brimwright::service {
namespace {

std::string hours_in_words(std::chrono::seconds time) {
  return in_hours(std::chrono::ceil<std::chrono::minutes>(time), 2);
}

/// Says what stands against a batch that no day takes.
class Refusing {
 public:
  Refusing(const DayWork& work, const std::vector<DayFile>& files, const days::NeverMade& never,
           const runs::Studio& studio, days::Day from)
      : work_(work),
        studio_(studio),
        line_(work.deliveries[never.delivery].lines[never.line]),
        batch_(line_.batches[never.batch]),
        run_(*files[never.delivery].lines[never.line].parts.front().run),
        from_(from) {}

  [[noreturn]] void refuse() const {
    refuse_size();
    if (would_do([](days::Line& line) { line.is_chilled = false; }))
      say_in_studio(
          "small_jobs",
          "is chilled the evening before, and you are not there on any of the four days before it",
          "say on which other weekdays you are there for small jobs");
    if (line_.cut_within && would_do([](days::Line& line) { line.cut_within.reset(); }))
      say_in_studio("small_jobs",
                    "takes " + hours_in_words(batch_.work) + " and is cut between " +
                        in_hours(line_.unmould_after) + " and " + in_hours(*line_.cut_within) +
                        " after the pour, and you are not there then on any day",
                    "say on which other weekdays you are there to cut, or give longer making days");
    if (would_do([](days::Line& line) { line.batches.front().fills.clear(); }))
      say_in_studio("cast_beforehand",
                    "needs its decorations cast before it, and there is not time enough for that",
                    "let them be cast earlier, or give more hours");
    say("finds no day in five years", "give more making days, or make smaller batches");
  }

 private:
  [[noreturn]] void say(const std::string& why, const std::string& remedy) const {
    throw UserError(run_.place("/batch"), "no day takes it: " + batch_that(why), remedy);
  }
  [[noreturn]] void say_in_studio(const char* key, const std::string& why,
                                  const std::string& remedy) const {
    throw UserError(studio_.section("days")->place(key),
                    "no day takes \"" + run_.name + "\": " + batch_that(why), remedy);
  }
  std::string batch_that(const std::string& why) const {
    return "a batch of " + counted(batch_.pieces, "piece") + " " + why;
  }

  void refuse_size() const {
    const days::Studio& studio = work_.studio;
    const auto longest =
        *std::max_element(studio.calendar.making.begin(), studio.calendar.making.end());
    if (batch_.work > longest)
      say("takes " + hours_in_words(batch_.work) + ", and the longest making day has " +
              hours_in_words(longest),
          "make smaller batches, or give the studio a longer making day");
    for (const auto& [kind, casts] : batch_.filled) {
      const days::Mould& mould = studio.moulds[kind];
      if (casts > mould.owned * mould.cavities)
        say("fills " + counted(casts, "cavity", "cavities") + " of " + mould.name +
                ", and you have " + std::to_string(mould.owned * mould.cavities),
            "make smaller batches, or pour its lines one after the other");
    }
    if (studio.rack_places && batch_.pieces > *studio.rack_places)
      say_in_studio(
          "rack_places",
          "is more than the " + std::to_string(*studio.rack_places) + " places of the curing rack",
          "make smaller batches, or raise it");
    if (studio.whippings_a_day && batch_.whippings > *studio.whippings_a_day)
      say_in_studio("bowls_owned",
                    "takes " + std::to_string(batch_.whippings) +
                        " whippings, and the bowls make " +
                        std::to_string(*studio.whippings_a_day) + " on a day",
                    "make smaller batches, or raise it, or how often each is used on a day");
  }

  /// Whether the batch alone finds a day with that change.
  bool would_do(const std::function<void(days::Line&)>& change) const {
    days::Line line = line_;
    line.batches = {batch_};
    change(line);
    const std::vector<days::Delivery> alone = {{.name = "", .lines = {std::move(line)}}};
    return !days::never_made(work_.studio, alone, from_);
  }

  const DayWork& work_;
  const runs::Studio& studio_;
  const days::Line& line_;
  const days::Batch& batch_;
  const planning::Run& run_;
  days::Day from_;
};

}  // namespace

void refuse_never_made(const DayWork& work, const std::vector<DayFile>& files,
                       const runs::Studio& studio, days::Day from) {
  if (const auto never = days::never_made(work.studio, work.deliveries, from))
    Refusing(work, files, *never, studio, from).refuse();
}

}  // namespace brimwright::service
