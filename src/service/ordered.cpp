#include "service/ordered.h"

#include "runs/studio_file.h"
#include "units/user_error.h"

#include <filesystem>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;

std::string studio_of(const std::string& run, const moulds::Library& library) {
  const auto studio = runs::studio_for(run, library);
  return studio.fields() ? studio.fields()->file() : "";
}

}  // namespace

std::optional<runs::Order> order_in(const std::string& file, const std::optional<std::string>& text,
                                    const moulds::Library& library) {
  const Fields document = text ? Fields::parse(*text, file) : library.document(file);
  if (!runs::is_order(document)) return std::nullopt;
  return runs::read_order(document, library);
}

std::string studio_of_all(const std::vector<std::string>& runs, const moulds::Library& library) {
  std::string first = studio_of(runs.front(), library);
  for (const std::string& run : runs) {
    const std::string other = studio_of(run, library);
    if (other.empty() == first.empty() && one_name_of(other) == one_name_of(first)) continue;
    const std::string& of = other.empty() ? first : other;
    throw UserError({run, ""},
                    "is of another studio than " + runs.front() + " (" + of + " is of one alone)",
                    "ask for the runs of each studio by themselves, or name one studio for all");
  }
  return first;
}

std::string one_name_of(const std::string& file) {
  std::error_code error;
  const fs::path path = fs::weakly_canonical(file, error);
  return error ? file : path.string();
}

}  // namespace brimwright::service
