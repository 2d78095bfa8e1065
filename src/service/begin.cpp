#include "service/begin.h"

#include "schemas/tidying.h"
#include "units/shown_text.h"

#include <array>
#include <filesystem>
#include <string_view>

namespace brimwright::embedded {
std::string_view studio_to_begin_json();
std::string_view mould_to_begin_json();
std::string_view formula_to_begin_json();
std::string_view run_to_begin_json();
}  // namespace brimwright::embedded

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;

struct Beginning {
  std::string name;
  std::string text;
};

std::array<Beginning, 4> beginnings() {
  const std::string run = "first.run.json";
  return {{{"studio.json", std::string(embedded::studio_to_begin_json())},
           {"my_mould.json", std::string(embedded::mould_to_begin_json())},
           {"my_base.formula.json", std::string(embedded::formula_to_begin_json())},
           {run,
            schemas::with_id(std::string(embedded::run_to_begin_json()), schemas::new_id(), run)}}};
}

}  // namespace

Reply begun(const InitRequest& request, const UserTerms& terms) {
  const fs::path folder = request.folder;
  std::error_code none;
  if (fs::exists(folder, none) && !fs::is_directory(folder, none))
    throw UserError(terms.place("folder"), "\"" + request.folder + "\" is a file",
                    "name a folder that is there, or a new one");
  Reply reply;
  for (const Beginning& one : beginnings()) {
    const fs::path path = folder / one.name;
    if (fs::exists(fs::symlink_status(path, none)))
      throw UserError({path.string(), "", "is there already, and nothing is written over it",
                       "name another folder"});
    reply.files.push_back({path.string(), one.text});
    reply.document += "Made: " + on_one_line(path.string()) + "\n";
  }
  const std::string run = on_one_line((folder / "first.run.json").string());
  reply.document +=
      "\nPut your own figures where a text begins with a question mark; each says what "
      "goes there.\nbrimwright plan " +
      run + " names what is still blank,\nbrimwright serve " + run + " shows it in the browser.\n";
  return reply;
}

}  // namespace brimwright::service
