#pragma once

#include <functional>
#include <string>
#include <string_view>

namespace brimwright::schemas {

/// What rewriting a file in today's version of its schema comes to.
struct Tidied {
  std::string text;
  int from_version = 1;
  int version = 1;
  int keys_renamed = 0;
  bool is_as_before = true;  // of today's version already
};

/// The file's `text` in today's version: keys by today's names, what is no longer asked for taken
/// out, everything else to the letter as it was written. UserError, naming `file`, for a text that
/// is no file of this program, and for what today's version has no words for; that nothing unknown
/// stands in it is for the file's own reader to say.
Tidied tidied(std::string_view text, const std::string& file);

/// An id that no other run has: a random UUID (RFC 4122).
std::string new_id();

/// `text`, a run of today's version, with `id` as its "id", after its "schema"; as it is where it
/// has one.
std::string with_id(const std::string& text, const std::string& id, const std::string& file);

/// A text in a document: the value of the key `under`, or itself a key of the object there.
struct TextPlace {
  std::string_view under;
  bool is_key;
  std::string text;
};
/// `text` with what `other` makes of the texts in it, everything else to the letter. UserError,
/// naming `file`, for a text that is no JSON.
std::string with_texts(const std::string& text, const std::string& file,
                       const std::function<std::string(const TextPlace&)>& other);

}  // namespace brimwright::schemas
