// brimwright-pdf: a bench sheet as PDF, by cairo and Pango, which nothing else needs. They look for
// fonts on the disk, so it may open files.

#include "helpers/pdf/sheet_printing.h"
#include "reports/sheet_bytes.h"
#include "sandbox/helper_program.h"

namespace {

namespace sandbox = brimwright::sandbox;

bool draw(std::string_view bytes, const sandbox::Send& send) {
  const auto given = sandbox::from_bytes<brimwright::reports::PrintedSheet>(bytes);
  const std::string pdf = brimwright::helpers::printed(given.sheet, given.paper);
  send(pdf.data(), pdf.size());
  return true;
}

}  // namespace

int main(int argc, char** argv) {
  sandbox::be_a_helper(argc, argv, {"draw", sandbox::Reach::files, draw});
}
