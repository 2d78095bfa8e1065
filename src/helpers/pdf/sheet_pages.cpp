#include "helpers/pdf/sheet_pages.h"

#include <optional>
#include <utility>

namespace brimwright::helpers {
namespace {

class Pages {
 public:
  explicit Pages(double height) : height_(height), pages_(1) {}

  void lay(const std::vector<Strip>& strips) {
    for (std::size_t i = 0; i < strips.size();) {
      std::size_t last = i;
      double together = strips[i].height;
      while (strips[last].keeps_next && last + 1 < strips.size()) together += strips[++last].height;
      if (strips[i].starts_page || !has_room(together)) turn();
      for (; i <= last; ++i) {
        if (!has_room(strips[i].height)) turn();
        put(strips[i]);
      }
    }
  }

  std::vector<Page> pages() && { return std::move(pages_); }

 private:
  bool has_room(double height) const { return used_ + height <= height_; }

  void turn() {
    if (used_ == 0) return;
    pages_.emplace_back();
    used_ = 0;
  }

  void put(const Strip& strip) {
    if (used_ == 0 && strip.again)
      for (const Strip& one : *strip.again) put(one);
    pages_.back().push_back({&strip, used_});
    used_ += strip.height;
  }

  double height_, used_ = 0;
  std::vector<Page> pages_;
};

}  // namespace

std::vector<Page> laid_on_pages(const std::vector<Strip>& strips, double height) {
  Pages laid(height);
  laid.lay(strips);
  return std::move(laid).pages();
}

void draw(const Page& page, PdfPaper& paper) {
  std::optional<PdfPaper::Tagged> table;
  std::size_t open = 0;
  for (const auto& [strip, y] : page) {
    if (strip->table != open) table.reset();
    if (strip->table != 0 && strip->table != open) table.emplace(paper, "Table");
    open = strip->table;
    strip->draw(y);
  }
}

}  // namespace brimwright::helpers
