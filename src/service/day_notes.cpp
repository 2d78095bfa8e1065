#include "service/day_notes.h"

#include <algorithm>
#include <string>

namespace brimwright::service {

void note_what_is_missing(DayWork& work, const runs::StudioDays& studio,
                          const std::vector<DayFile>& files) {
  const auto lacks = [&](Severity severity, const char* key, const std::string& what,
                         const std::string& then, const char* section = "days") {
    work.lacks.push_back({severity, what, then, {section, key}});
  };
  if (studio.each_piece_packed.count() == 0)
    lacks(Severity::caution, "each_piece_packed", "The studio gives no time for packing",
          "packing is put on the last making day and takes none of its hours.", "work");
  if (!work.studio.trays.empty() && studio.each_tray_fill.count() == 0)
    lacks(Severity::caution, "each_tray_fill", "The studio gives no time for filling a tray",
          "casting takes none of a day's hours.", "work");
  for (const auto& tray : work.studio.trays) {
    if (!tray.is_counted)
      work.notes.push_back(
          {Severity::note, "How many tubes you have for \"" + tray.name +
                               "\" is not known: only your time limits how many are cast on a "
                               "day."});
    else if (!tray.sets_in)
      work.lacks.push_back({Severity::note,
                            "How long \"" + tray.name + "\" sets is not given",
                            "it is filled once a day.",
                            {"time_per_tray_fill"},
                            false});
  }
  if (!studio.batches_a_day)
    lacks(Severity::note, "pots_owned", "The studio does not say how many pots it owns",
          "only the hours limit the batches of a day.");
  const auto pipes = [](const DayPart& part) { return part.run->pipe.has_value(); };
  bool is_piped = false;
  for (const DayFile& file : files)
    for (const DayLine& line : file.lines)
      is_piped |= std::any_of(line.parts.begin(), line.parts.end(), pipes);
  if (is_piped && !studio.whippings_a_day)
    lacks(Severity::note, "bowls_owned", "The studio does not say how many bowls it owns",
          "only the hours limit the whippings of a day.");
  if (!studio.rack_places)
    lacks(Severity::note, "rack_places", "The studio does not say how many pieces its rack holds",
          "the room to cure is not checked.");
}

}  // namespace brimwright::service
