#include "reports/sheet_pdf.h"

#include "reports/sheet_bytes.h"
#include "sandbox/limited_work.h"
#include "units/user_error.h"

#include <chrono>
#include <stdexcept>
#include <utility>

namespace brimwright::reports {
namespace {

using sandbox::Job;
using sandbox::WorkEnd;

// A thousand times what the shipped runs' sheets take, and twenty.
constexpr sandbox::WorkLimits limits{.memory_bytes = std::size_t{1} << 30,
                                     .time = std::chrono::minutes(1)};

[[noreturn]] void refuse(WorkEnd end) {
  if (end != WorkEnd::no_helper)
    throw std::runtime_error("the helper program that makes PDFs did not make one");
  throw UserError({.file = "bench sheet",
                   .field = "",
                   .problem = "cannot be a PDF without " + sandbox::missing_helper(Job::draw_sheet),
                   .remedy = "install that, or take the sheet as HTML, which a browser prints"});
}

}  // namespace

std::string sheet_pdf(const Sheet& sheet, Paper paper) {
  sandbox::WorkReport report =
      sandbox::limited(Job::draw_sheet, {sandbox::as_bytes(PrintedSheet{sheet, paper})}, limits);
  if (report.end != WorkEnd::finished || !report.bytes.starts_with("%PDF-")) refuse(report.end);
  return std::move(report.bytes);
}

}  // namespace brimwright::reports
