#include "reports/text_table.h"
#include "reports/workings_report.h"

namespace brimwright::reports {
namespace {

using Side = TextTable::Side;

std::string heading(const Working& working) {
  if (working.comes_to.empty()) return working.of + "\n";
  return working.of + " = " + working.comes_to + "\n";
}

std::string sum_text(const Working& working) {
  if (working.sum.empty()) return "";
  const std::string rounded = working.rounded.empty() ? "" : ", rounded " + working.rounded;
  return wrapped("= " + working.sum + rounded, "  ", "    ");
}

std::string given_text(const Working& working) {
  std::string text;
  for (const Given& given : working.with) {
    const std::string from = given.from.empty() ? "" : " (" + given.from + ")";
    text += wrapped(given.name + ": " + given.value + from, "    ", "      ");
  }
  return text;
}

std::string sources_text(const Working& working) {
  std::string text;
  for (const std::string& source : working.sources)
    text += wrapped("from " + source, "    ", "      ");
  return text;
}

}  // namespace

std::string workings_list(const std::vector<Working>& workings) {
  TextTable table({Side::left, Side::left});
  table.row({"Figure", "comes to"});
  table.rule();
  for (const Working& working : workings) table.row({working.of, working.comes_to});
  return table.text();
}

std::string workings_text(const std::vector<Working>& workings) {
  std::string text;
  for (const Working& working : workings)
    text += (text.empty() ? "" : "\n") + heading(working) + wrapped(working.formula, "  ", "  ") +
            sum_text(working) + given_text(working) + sources_text(working);
  return text;
}

}  // namespace brimwright::reports
