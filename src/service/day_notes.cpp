#include "service/day_notes.h"

#include <algorithm>
#include <string>

namespace brimwright::service {

void note_what_is_missing(DayWork& work, const runs::StudioDays& studio,
                          const std::vector<DayFile>& files) {
  const auto note = [&](const std::string& text) { work.notes.push_back({Severity::note, text}); };
  const auto caution = [&](const std::string& text) {
    work.notes.push_back({Severity::caution, text});
  };
  if (studio.each_piece_packed.count() == 0)
    caution(
        "The studio gives no time for packing (\"work\", \"each_piece_packed\"): packing is put "
        "on the last making day and takes none of its hours.");
  if (!work.studio.trays.empty() && studio.each_tray_fill.count() == 0)
    caution(
        "The studio gives no time for filling a tray (\"work\", \"each_tray_fill\"): casting "
        "takes none of a day's hours.");
  for (const auto& tray : work.studio.trays) {
    if (!tray.is_counted)
      note("How many tubes you have for \"" + tray.name +
           "\" is not known: only your time limits how many are cast on a day.");
    else if (!tray.sets_in)
      note("How long \"" + tray.name +
           "\" sets is not given (\"time_per_tray_fill\"): it is filled once a day.");
  }
  if (!studio.batches_a_day)
    note(
        "The studio does not say how many pots it owns (\"days\", \"pots_owned\"): only the "
        "hours "
        "limit the batches of a day.");
  const auto pipes = [](const DayPart& part) { return part.run->pipe.has_value(); };
  bool is_piped = false;
  for (const DayFile& file : files)
    for (const DayLine& line : file.lines)
      is_piped |= std::any_of(line.parts.begin(), line.parts.end(), pipes);
  if (is_piped && !studio.whippings_a_day)
    note(
        "The studio does not say how many bowls it owns (\"days\", \"bowls_owned\"): only the "
        "hours limit the whippings of a day.");
  if (!studio.rack_places)
    note(
        "The studio does not say how many pieces its rack holds (\"days\", \"rack_places\"): the "
        "room to cure is not checked.");
}

}  // namespace brimwright::service
