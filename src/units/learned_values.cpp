#include "units/learned_values.h"

#include "units/printing.h"
#include "units/wording.h"

#include <limits>
#include <string>

namespace brimwright {
namespace {

/// A value as one writes it: a text, or a number.
std::string written(const Fields& fields, std::string_view key) {
  return fields.is_text(key) ? fields.text(key) : exact(fields.number(key));
}

/// Its key in words: "each_bag_change".
std::string in_words(std::string key) {
  for (char& letter : key)
    if (letter == '_') letter = ' ';
  return key;
}

struct Taken {
  std::string value;
  std::int64_t batches;
};

/// One that was taken; with those that were before it, where there were any.
Taken taken_in(const Fields& entry, bool has_earlier) {
  const Taken taken{.value = written(entry, "value"),
                    .batches = entry.whole_number("batches", 1, std::numeric_limits<int>::max())};
  (void)entry.date("on");
  if (entry.has("before") && !entry.is_null("before")) (void)written(entry, "before");
  if (has_earlier && entry.has("earlier"))
    for (const Fields& earlier : entry.objects("earlier")) (void)taken_in(earlier, false);
  entry.refuse_unknown();
  return taken;
}

void tell(const Fields& fields, const std::string& of, const std::string& key,
          const Fields& entry) {
  const auto [value, batches] = taken_in(entry, true);
  if (!fields.has(key) || written(fields, key) != value) return;
  fields.say({Severity::note, (of.empty() ? "" : of + ": ") + "The " + in_words(key) + " figure, " +
                                  value + ", is learned from " +
                                  counted(batches, "batch", "batches") + " (taken on " +
                                  entry.text("on") + ")."});
}

}  // namespace

void tell_learned(const Fields& fields, const std::string& of) {
  const auto learned = fields.optional_object("learned");
  if (!learned) return;
  for (const std::string& key : learned->keys()) tell(fields, of, key, learned->object(key));
}

}  // namespace brimwright
