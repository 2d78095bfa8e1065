#pragma once

#include "units/fields.h"

#include <nlohmann/json_fwd.hpp>

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace brimwright {

/// An object of a file, and who asked for which of its keys.
struct Fields::Node {
  using Json = nlohmann::ordered_json;
  using Member = std::pair<const std::string, Json>;

  /// What all objects of one file have in common.
  struct Document {
    std::shared_ptr<const Json> json;
    std::string file;
    std::vector<Remark> said = {};
    Spelling spelling = {};
    std::set<std::string> taken = {};  // from other documents, as pointers there
    bool has_none_unknown = false;     // its keys were looked at once and for all
  };
  /// Of another document, for what this object lacks.
  struct Substitute {
    std::shared_ptr<const Node> node;
    std::map<std::string, std::string, std::less<>> keys;  // here and there; empty: all by one name
  };

  Node(std::shared_ptr<Document> its_document, const Json& its_object, std::string its_pointer,
       std::string its_pattern);

  /// How the file spells today's `key` of this object.
  std::string_view spelt(std::string_view key) const {
    return document->spelling.own(pattern, key);
  }

  std::shared_ptr<Document> document;
  const Json* object;
  std::string pointer;
  std::string pattern;  // the pointer as the earlier version spells it, * for a place in a list
  std::vector<const Member*> by_name;  // the library would look through all members for each
  mutable std::set<std::string, std::less<>> asked;
  mutable std::set<std::string, std::less<>> may_hold;  // empty: not told
  mutable std::vector<Substitute> substitutes;
};

/// The object that a whole file's text is, by the rules of Fields::parse.
Fields::Node::Json json_of_document(std::string_view text, const std::string& file);
/// That document, of which nothing was asked yet.
Fields document_of(std::shared_ptr<const Fields::Node::Json> json, std::string file);

/// Where the value of a key stands: in the object itself, or in one that completes it.
struct Held {
  const Fields::Node* by;
  std::string key;  // as it is spelt there
  const Fields::Node::Json* value = nullptr;

  Place place() const;
};
Held held(const Fields::Node& node, std::string_view todays_key);
/// The same, and marks the key as asked for.
Held asked_for(const Fields::Node& node, std::string_view key);
/// The value alone; nothing where the key is absent.
const Fields::Node::Json* found(const Fields::Node& node, std::string_view key);
Place place_in(const Fields::Node& node, std::string_view key);

/// Where what stands in `node` as `own_key` is found by the schema's earlier version.
std::string pattern_of(const Fields::Node& node, std::string_view own_key);
/// Gives the object `of`, which stands in `holder` under `key`, those that complete it there.
void complete(const Fields::Node& of, const Fields::Node& holder, std::string_view key);

/// What `unknown` should have been: what the other version of the schema calls so, or the nearest
/// of the names `known`.
std::optional<std::string> meant_by(const Fields::Node& node, const std::string& unknown,
                                    const std::vector<std::string>& known);
/// The keys of `node` that nobody knows: of those not asked for yet, the ones that may not stand
/// there, or, where that is not told, the ones a slip away from the `missing` key.
std::vector<std::string> unknown_beside(const Fields::Node& node, std::string_view missing);
/// "wal" is not known; did you mean "wall"? Of several keys, one after the other, cut at ten.
std::string unknown_in_words(const Fields::Node& node, const std::vector<std::string>& unknown,
                             std::size_t from);

/// "the bare number 5", "a list": what a value is, for a complaint.
std::string kind_of(const Fields::Node::Json& value);

}  // namespace brimwright
