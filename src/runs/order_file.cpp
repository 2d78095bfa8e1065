#include "runs/order_file.h"

#include "schemas/kinds.h"
#include "units/written_number.h"

#include <map>

namespace brimwright::runs {
namespace {

constexpr std::int64_t most_pieces = 1'000'000;  // as in a run

TakesReady ready_word(const Fields& fields) {
  return {.is = fields.choice("ready", {"take", "leave"}) == "take"};
}

/// A line's own word, in place of the order's: "take", "leave", or the batches to take from.
TakesReady ready_of(const Fields& line, const TakesReady& orders) {
  if (!line.has("ready")) return orders;
  if (line.is_text("ready")) return ready_word(line);
  TakesReady ready{.is = true, .batches = line.texts("ready")};
  if (ready.batches.empty())
    throw UserError(line.place("ready"), "names no batch",
                    R"(name batches by their codes, or write "take" or "leave")");
  return ready;
}

OrderLine line_of(const Fields& fields, const TakesReady& ready, const moulds::Library& library) {
  OrderLine line{.run = library.resolve(fields.text("run"), fields.place("run")),
                 .pieces = fields.whole_number("pieces", 1, most_pieces),
                 .together = fields.optional_name("together").value_or(""),
                 .where = fields.place("run"),
                 .together_at = fields.place("together"),
                 .takes_ready = ready_of(fields, ready),
                 .ready_at = fields.place("ready")};
  fields.refuse_unknown();
  if (is_order(library.document(line.run)))
    throw UserError(line.where, "is an order itself",
                    "name runs alone: the lines of that order can stand here");
  return line;
}

void refuse_twice(const std::vector<OrderLine>& lines) {
  std::map<std::string, const OrderLine*> known;
  for (const OrderLine& line : lines) {
    const auto [place, is_new] = known.emplace(line.run, &line);
    if (!is_new)
      throw UserError(line.where, "is the run of " + place->second->where.field + " too",
                      "name each run once, with all its pieces");
  }
}

}  // namespace

bool is_order(const Fields& document) {
  constexpr std::string_view any_version = "brimwright.order/";
  return document.is_text("schema") && document.text("schema").starts_with(any_version);
}

Order read_order(const Fields& fields, const moulds::Library& library) {
  fields.of(schemas::order());
  fields.optional_text("$schema");
  Order order{.file = fields.file(),
              .id = fields.has("id") ? fields.uuid("id") : "",
              .whom_for = fields.optional_name("for").value_or(""),
              .note = fields.optional_text("note").value_or(""),
              .due = {},
              .lines = {}};
  if (fields.has("due")) order.due = fields.date("due");
  const TakesReady ready = fields.has("ready") ? ready_word(fields) : TakesReady{};
  for (const Fields& line : fields.objects("lines"))
    order.lines.push_back(line_of(line, ready, library));
  fields.refuse_unknown();
  if (order.lines.empty())
    throw UserError(fields.place("lines"), "names no run",
                    R"(add at least one line, such as { "run": "may.run.json", "pieces": 24 })");
  refuse_twice(order.lines);
  return order;
}

}  // namespace brimwright::runs
