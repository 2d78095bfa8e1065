#pragma once

#include "helpers/pdf/pdf_paper.h"

#include <cstddef>
#include <functional>
#include <memory>
#include <vector>

namespace brimwright::helpers {

// All in millimetres.

/// What stays together on a page.
struct Strip {
  double height = 0;
  std::function<void(double y)> draw;
  bool keeps_next = false;  // a heading is not left alone at the foot
  bool starts_page = false;
  std::shared_ptr<const std::vector<Strip>> again = {};  // stand above it where it begins a page
  std::size_t table = 0;                                 // which one it is a row of, from 1
};

/// A strip on its page.
struct Placed {
  const Strip* strip;
  double y;
};
using Page = std::vector<Placed>;

/// Strips on pages `height` high, one below the other. One that keeps its next goes along with it,
/// as far as one page holds them. They outlive the pages.
std::vector<Page> laid_on_pages(const std::vector<Strip>& strips, double height);

/// Rows of one table are told to be that.
void draw(const Page& page, PdfPaper& paper);

}  // namespace brimwright::helpers
