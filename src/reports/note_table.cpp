#include "reports/note_table.h"

#include "reports/text_table.h"

#include <algorithm>
#include <cstddef>

namespace brimwright::reports {
namespace {

constexpr std::size_t longest_key = 31, longest_value = 12;
const std::string indent = "    ";

class Columns {
 public:
  Columns(const std::vector<NoteRow>& rows, const std::array<std::string, 4>& heads)
      : heads_(heads),
        key_(shown_width(heads[0])),
        what_(shown_width(heads[1])),
        planned_(shown_width(heads[2])),
        noted_(shown_width(heads[3])) {
    for (const NoteRow& row : rows) {
      key_ = std::max(key_, std::min(shown_width(row.key), longest_key));
      what_ = std::max(what_, shown_width(row.what));
      planned_ = std::max(planned_, shown_width(row.planned));
      if (shown_width(row.noted) <= longest_value)
        noted_ = std::max(noted_, shown_width(row.noted));
    }
    const std::size_t others = indent.size() + key_ + planned_ + noted_ + 3 * gap.size();
    const std::size_t left = others < page_width ? page_width - others : 0;
    what_ = std::min(what_, std::max(left, shown_width(heads[1])));
  }

  std::string head() const {
    const std::string rule(key_ + what_ + planned_ + noted_ + 3 * gap.size(), '-');
    return line(heads_[0], heads_[1], heads_[2], heads_[3]) + indent + rule + "\n";
  }

  std::string of(const NoteRow& row) const {
    const std::string said = heads_[3] + ": " + row.noted;
    if (row.what.empty() && row.planned.empty())
      return wrapped(said, indent + set(row.key, key_) + gap, indent + indent);
    const bool is_key_long = shown_width(row.key) > key_;
    const bool is_value_long = shown_width(row.noted) > noted_;
    const auto what = broken(row.what, what_);
    std::string text = is_key_long ? indent + row.key + "\n" : "";
    text +=
        line(is_key_long ? "" : row.key, what.front(), row.planned, is_value_long ? "" : row.noted);
    for (std::size_t i = 1; i < what.size(); ++i) text += line("", "  " + what[i], "", "");
    if (is_value_long) text += wrapped(said, indent + gap, indent + indent);
    return text;
  }

 private:
  std::string line(const std::string& key, const std::string& what, const std::string& planned,
                   const std::string& noted) const {
    std::string text = indent + set(key, key_) + gap + set(what, what_) + gap +
                       set(planned, planned_) + gap + noted;
    text.erase(text.find_last_not_of(' ') + 1);
    return text + "\n";
  }

  static std::string set(const std::string& cell, std::size_t width) {
    const std::size_t its = shown_width(cell);
    return cell + std::string(width > its ? width - its : 0, ' ');
  }

  static inline const std::string gap = "  ";

  std::array<std::string, 4> heads_;
  std::size_t key_, what_, planned_, noted_;
};

}  // namespace

std::string note_table(const std::vector<NoteRow>& rows, const std::array<std::string, 4>& heads) {
  const Columns columns(rows, heads);
  std::string text = columns.head();
  const std::string* part = nullptr;
  for (const NoteRow& row : rows) {
    if ((part == nullptr || *part != row.part) && !row.part.empty())
      text += wrapped(row.part, "  ", indent);
    part = &row.part;
    text += columns.of(row);
  }
  return text;
}

}  // namespace brimwright::reports
