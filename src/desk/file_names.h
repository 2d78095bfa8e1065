#pragma once

#include <nlohmann/json_fwd.hpp>

#include <functional>
#include <string>
#include <vector>

namespace brimwright::desk {

// Where the documents of a maker name other files: as the text of a few keys, wherever they stand,
// and as the keys of what a studio has under "moulds_owned".

/// Each name once, in the document's order.
std::vector<std::string> file_names_in(const nlohmann::ordered_json& document);

/// What a name is to be from now on.
using NewName = std::function<std::string(const std::string& name)>;
/// The document with new names; its layout may change.
void rename_files_in(nlohmann::ordered_json& document, const NewName& new_name);
/// The text with new names, everything else to the letter. UserError, naming `file`, for a text
/// that is no JSON.
std::string with_files_renamed(const std::string& text, const std::string& file,
                               const NewName& new_name);

}  // namespace brimwright::desk
