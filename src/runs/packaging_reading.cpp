#include "runs/packaging_reading.h"

#include "units/reading.h"
#include "units/written_number.h"

namespace brimwright::runs {
namespace {

using planning::Packaging;

/// "1 piece", "2 pieces", or a mass.
Packaging one_of(const Fields& fields) {
  Packaging packaging{.material = fields.name("material")};
  const std::string each = plain(fields.text("each_piece"));
  const auto blank = each.find(' ');
  const std::string unit = blank == std::string::npos ? "" : each.substr(blank + 1);
  const Place where = fields.place("each_piece");
  if (unit == "piece" || unit == "pieces") {
    packaging.each = each.starts_with('-') ? 0 : read_number(each.substr(0, blank), where);
    if (!(packaging.each > 0) || packaging.each > 1000)
      throw UserError(where, quoted(each) + " is not a number of pieces",
                      "write how many go round one piece, such as \"1 piece\"");
    packaging.is_counted = true;
  } else {
    packaging.each = fields.positive_mass("each_piece", "1 piece") / gram;
  }
  fields.refuse_unknown();
  return packaging;
}

std::string listed(const PackagingList& packaging) {
  std::string names;
  for (const Packaging& one : packaging) names += (names.empty() ? "" : ", ") + one.material;
  return names;
}

}  // namespace

PackagingList read_packaging(const Fields& document) {
  PackagingList packaging;
  for (const Fields& one : document.objects("packaging")) packaging.push_back(one_of(one));
  return packaging;
}

PackagingList read_packaging(const Studio& studio) {
  return studio.fields() ? read_packaging(*studio.fields()) : PackagingList();
}

const PackagingList& packaging_of(const planning::Run& run, const PackagingList& studios) {
  return run.packaging ? *run.packaging : studios;
}

std::optional<std::string> own_packaging_words(const planning::Run& run,
                                               const PackagingList& studios) {
  if (!run.packaging) return std::nullopt;
  const std::string instead =
      studios.empty() ? "" : ", in place of the studio's (" + listed(studios) + ")";
  if (run.packaging->empty())
    return run.name + ": nothing goes round a piece, by the run's own word" + instead + ".";
  return run.name + ": packed as the run says (" + listed(*run.packaging) + ")" + instead + ".";
}

}  // namespace brimwright::runs
