#include "runs/batch_reading.h"

#include "planning/usual_bench.h"

namespace brimwright::runs {

planning::Pots read_pots(const Fields& run) {
  planning::Pots pots;
  const auto fields = run.optional_object("pots");
  if (!fields) return pots;
  if (fields->has("holds")) {
    pots.holds = fields->positive_volume("holds", "8 l");
    planning::usual_bench().ask(*fields, "holds", "pot", *pots.holds);
  }
  if (fields->has("lye_jug")) {
    pots.lye_jug = fields->positive_volume("lye_jug", "2 l");
    planning::usual_bench().ask(*fields, "lye_jug", "lye jug", *pots.lye_jug);
  }
  fields->refuse_unknown();
  return pots;
}

planning::BatchWish read_batch_wish(const Fields& run, bool pipes) {
  // As many pieces as a run may have; nobody whips one batch in more goes than she has hands for.
  constexpr std::int64_t most_pieces = 1'000'000, most_whippings = 10;
  planning::BatchWish wish;
  const auto fields = run.optional_object("batch");
  if (!fields) return wish;
  if (fields->has("pieces")) wish.pieces = fields->whole_number("pieces", 1, most_pieces);
  if (fields->has("casts")) wish.casts = fields->whole_number("casts", 1, most_pieces);
  if (wish.pieces && wish.casts)
    throw UserError(fields->place("casts"), "is given beside \"pieces\"",
                    "give the size of a batch in one of the two");
  if (fields->has("fill")) {
    fields->choice("fill", {"full"});
    wish.fills_moulds = true;
  }
  if (fields->has("whippings")) {
    wish.whippings = fields->whole_number("whippings", 1, most_whippings);
    if (!pipes)
      throw UserError(fields->place("whippings"), "is given, and the run pipes nothing",
                      "leave it out, or add \"pipe\"");
  }
  fields->refuse_unknown();
  return wish;
}

}  // namespace brimwright::runs
