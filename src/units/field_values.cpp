#include "units/field_node.h"
#include "units/guarded_json.h"
#include "units/letters.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/shown_text.h"
#include "units/written_number.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <utility>

namespace brimwright {

using Json = Fields::Node::Json;
using Member = Fields::Node::Member;

namespace {

constexpr std::size_t largest_file = 4u << 20;
constexpr std::size_t longest_name = 200;
constexpr std::size_t longest_quantity = 200;
constexpr std::size_t most_names = 2'000;
constexpr std::size_t most_plain_values = 1'000;

/// What `init` leaves to be filled in says after its question mark what goes there.
void refuse_blank(const Json& value, const Place& where) {
  if (!value.is_string()) return;
  const std::string text = plain(value.get_ref<const std::string&>());
  if (!text.starts_with('?')) return;
  const std::string what = plain(text.substr(1));
  throw UserError(where, "is still to be filled in", what.empty() ? "write what goes here" : what);
}

const Json& needed(const Fields::Node& node, std::string_view key, const std::string& what) {
  const Json* value = found(node, key);
  if (value != nullptr) refuse_blank(*value, place_in(node, key));
  if (value != nullptr) return *value;
  const auto unknown = unknown_beside(node, key);
  if (unknown.empty()) throw UserError(place_in(node, key), "is missing", "give " + what);
  throw UserError(place_in(node, key), "is missing, and " + unknown_in_words(node, unknown, 0),
                  "correct the spelling, or give " + what);
}

std::string text_of(const Json& value, const Place& where, const std::string& what) {
  refuse_blank(value, where);
  if (!value.is_string()) throw UserError(where, "is " + kind_of(value), "give " + what);
  auto text = value.get<std::string>();
  if (text.find_first_not_of(" \t") == std::string::npos)
    throw UserError(where, "is empty", "give " + what);
  return text;
}

/// `name` if it can stand in a line of print.
const std::string& checked_name(const std::string& name, const Place& where) {
  const std::size_t length = characters_in(name);
  if (length > longest_name)
    throw UserError(where, "is " + std::to_string(length) + " characters long",
                    "a name has at most " + std::to_string(longest_name));
  constexpr std::array<std::string_view, 7> line_ends = {"\n",     "\r",     "\v",    "\f",
                                                         "\u0085", "\u2028", "\u2029"};
  if (std::any_of(line_ends.begin(), line_ends.end(),
                  [&](std::string_view end) { return name.find(end) != std::string::npos; }))
    throw UserError(where, brimwright::quoted(name) + " goes over more than one line",
                    "write the name on one line");
  return name;
}

double number_of(const Json& value, const Place& where) {
  if (!value.is_number()) throw UserError(where, "is " + kind_of(value), "give a plain number");
  const double number = value.get<double>();
  if (!std::isfinite(number)) throw UserError(where, "is not a finite number", "check that number");
  return number;
}

const Json& list_of(const Json& value, const Place& where, std::size_t most) {
  if (!value.is_array()) throw UserError(where, "is " + kind_of(value), "give a list in [ ]");
  if (value.size() > most)
    throw UserError(where, "lists " + std::to_string(value.size()),
                    "at most " + std::to_string(most) + " may stand here");
  return value;
}

}  // namespace

Fields::Fields(std::shared_ptr<const Node> node) : node_(std::move(node)) {}

Json json_of_document(std::string_view text, const std::string& file) {
  if (text.size() > largest_file)
    throw UserError(
        {file, "", "is larger than 4 MiB", "files of this kind are smaller; check its name"});
  if (plain(text).empty()) throw UserError({file, "", "is empty", "check its name"});
  Json json = parsed_json(text, file);
  if (!json.is_object())
    throw UserError({file, "", "holds " + kind_of(json), "it must hold one object in { }"});
  return json;
}

Fields document_of(std::shared_ptr<const Json> json, std::string file) {
  const Json& object = *json;
  const auto document = std::make_shared<Fields::Node::Document>(
      Fields::Node::Document{std::move(json), std::move(file)});
  return Fields(std::make_shared<Fields::Node>(document, object, "", ""));
}

Fields Fields::parse(std::string_view text, std::string file) {
  auto json = std::make_shared<const Json>(json_of_document(text, file));
  return document_of(std::move(json), std::move(file));
}

Fields Fields::read(const std::string& path) { return parse(text_of_file(path), path); }

std::string text_of_file(const std::string& path) {
  std::error_code error;
  const auto status = std::filesystem::status(path, error);
  if (!std::filesystem::exists(status))
    throw UserError({path, "", "there is no such file", "check the name and the folder"});
  if (!std::filesystem::is_regular_file(status))
    throw UserError({path, "", "is not a file that can be read", "name a JSON file"});
  if (std::filesystem::file_size(path, error) > largest_file)
    throw UserError(
        {path, "", "is larger than 4 MiB", "files of this kind are smaller; check its name"});
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  if (!in) throw UserError({path, "", "cannot be read", "check its permissions"});
  return text.str();
}

const std::string& Fields::file() const { return node_->document->file; }
Place Fields::place(std::string_view key) const { return place_in(*node_, key); }
Place Fields::place() const { return {file(), node_->pointer.empty() ? "/" : node_->pointer}; }

const Fields& Fields::may_hold(std::initializer_list<std::string_view> keys) const {
  for (const std::string_view key : keys) node_->may_hold.emplace(node_->spelt(key));
  return *this;
}

namespace {

/// A file of another kind is no slip in a schema's name.
void refuse_other_kind(const std::string& given, const Schema& schema, const Place& where) {
  const std::string kind = given.substr(0, given.find('/'));
  constexpr std::array<std::string_view, 6> kinds = {"run",  "formula", "mould",
                                                     "fats", "tips",    "studio"};
  const auto is_it = [&](std::string_view one) { return kind == "brimwright." + std::string(one); };
  if (kind == schema.name || std::none_of(kinds.begin(), kinds.end(), is_it)) return;
  throw UserError(where, "is " + brimwright::quoted(given) + ", which is another kind of file",
                  "name a file that begins with \"" + schema.today() + "\"");
}

}  // namespace

void Fields::of(const Schema& schema) const {
  std::vector<std::string> versions = {schema.today()};
  if (schema.version > 1) versions.push_back(schema.previous());
  has("$schema");  // for editors
  if (is_text("schema")) refuse_other_kind(text("schema"), schema, place("schema"));
  const bool is_earlier = choice("schema", versions) == schema.previous();
  node_->document->spelling = Spelling(schema, is_earlier);
}

void Fields::complete_from(const Fields& other,
                           std::initializer_list<std::string_view> keys) const {
  for (const std::string_view key : keys) complete_from(other, key, key);
}

void Fields::complete_from(const Fields& other, std::string_view here,
                           std::string_view there) const {
  node_->substitutes.push_back({other.node_, {{std::string(here), std::string(there)}}});
}

void Fields::have_none_unknown() const { node_->document->has_none_unknown = true; }

const std::set<std::string>& Fields::taken() const { return node_->document->taken; }

const Spelling& Fields::spelling() const { return node_->document->spelling; }

std::string Fields::quoted(std::string_view key) const {
  return "\"" + std::string(node_->spelt(key)) + "\"";
}

bool Fields::has(std::string_view key) const { return found(*node_, key) != nullptr; }

std::vector<std::string> Fields::keys() const {
  const auto& members = node_->object->get_ref<const Json::object_t&>();
  if (members.size() > most_names)
    throw UserError(place(), "has " + std::to_string(members.size()) + " names",
                    "at most " + std::to_string(most_names) + " may stand here");
  std::vector<std::string> names;
  for (const Member& member : members) {
    names.push_back(checked_name(member.first, place(member.first)));
    node_->asked.insert(member.first);
  }
  return names;
}

std::optional<Fields> Fields::optional_object(std::string_view key) const {
  const Held own = asked_for(*node_, key);
  if (own.value == nullptr) return std::nullopt;
  if (!own.value->is_object())
    throw UserError(own.place(), "is " + kind_of(*own.value), "give an object in { }");
  const auto object = std::make_shared<Node>(own.by->document, *own.value, own.place().field,
                                             pattern_of(*own.by, own.key));
  if (own.by == node_.get()) complete(*object, *node_, key);
  return Fields(object);
}

Fields Fields::object(std::string_view key) const {
  needed(*node_, key, "an object in { }");
  return *optional_object(key);
}

std::vector<Fields> Fields::objects(std::string_view key, std::size_t most) const {
  std::vector<Fields> elements;
  const Held list = asked_for(*node_, key);
  if (list.value == nullptr) return elements;
  const Place where = list.place();
  const std::string pattern = pattern_of(*list.by, list.key) + "/*";
  for (const Json& element : list_of(*list.value, where, most)) {
    const std::string pointer = where.field + "/" + std::to_string(elements.size());
    if (!element.is_object())
      throw UserError({where.file, pointer, "is " + kind_of(element), "give an object in { }"});
    elements.emplace_back(std::make_shared<Node>(list.by->document, element, pointer, pattern));
  }
  return elements;
}

std::string Fields::text(std::string_view key) const {
  return text_of(needed(*node_, key, "a text"), place(key), "a text");
}

std::optional<std::string> Fields::optional_text(std::string_view key) const {
  if (!has(key)) return std::nullopt;
  return text(key);
}

std::string Fields::name(std::string_view key) const { return checked_name(text(key), place(key)); }

std::optional<std::string> Fields::optional_name(std::string_view key) const {
  if (!has(key)) return std::nullopt;
  return name(key);
}

std::vector<std::string> Fields::texts(std::string_view key) const {
  std::vector<std::string> all;
  const Json* value = found(*node_, key);
  if (value == nullptr) return all;
  const Place where = place(key);
  for (const Json& element : list_of(*value, where, most_plain_values))
    all.push_back(text_of(element, {where.file, where.field + "/" + std::to_string(all.size())},
                          "a text in quotes, with its unit if it is a quantity"));
  return all;
}

std::string Fields::choice(std::string_view key, const std::vector<std::string>& allowed) const {
  std::string listed;
  for (const auto& name : allowed) listed += (listed.empty() ? "\"" : ", \"") + name + "\"";
  const std::string given =
      text_of(needed(*node_, key, "one of " + listed), place(key), "one of " + listed);
  if (std::find(allowed.begin(), allowed.end(), given) != allowed.end()) return given;
  const auto near = nearest_name(given, allowed);
  throw UserError(place(key), "is " + brimwright::quoted(given),
                  near ? "did you mean \"" + *near + "\"?" : "give one of " + listed);
}

double Fields::number(std::string_view key) const {
  return number_of(needed(*node_, key, "a plain number"), place(key));
}

std::vector<double> Fields::numbers(std::string_view key) const {
  std::vector<double> all;
  const Json* value = found(*node_, key);
  if (value == nullptr) return all;
  const Place where = place(key);
  for (const Json& element : list_of(*value, where, most_plain_values))
    all.push_back(number_of(element, {where.file, where.field + "/" + std::to_string(all.size())}));
  return all;
}

std::int64_t Fields::whole_number(std::string_view key, std::int64_t least,
                                  std::int64_t most) const {
  const double value = number(key);
  const std::string bounds = std::to_string(least) + " to " + std::to_string(most);
  if (value != std::floor(value))
    throw UserError(place(key), "is " + exact(value), "give a whole number from " + bounds);
  if (value < static_cast<double>(least) || value > static_cast<double>(most))
    throw UserError(place(key), "is " + exact(value), "give a number from " + bounds);
  return static_cast<std::int64_t>(value);
}

bool Fields::truth(std::string_view key) const {
  const Json& value = needed(*node_, key, "true or false");
  if (!value.is_boolean())
    throw UserError(place(key), "is " + kind_of(value), "give true or false");
  return value.get<bool>();
}

std::string Fields::quantity(std::string_view key, std::string_view written) const {
  const std::string example = brimwright::quoted(written);
  const std::string what = "it with its unit, such as " + example;
  const Json& value = needed(*node_, key, what);
  if (value.is_number())
    throw UserError(place(key), "is " + kind_of(value) + " without a unit",
                    "write it with its unit in quotes, such as " + example);
  std::string text = text_of(value, place(key), what);
  if (text.size() > longest_quantity)
    throw UserError(place(key), brimwright::quoted(text) + " is longer than any quantity",
                    "write " + what);
  return text;
}

bool Fields::is_text(std::string_view key) const {
  const Json* value = found(*node_, key);
  return value != nullptr && value->is_string();
}

bool Fields::is_object(std::string_view key) const {
  const Json* value = found(*node_, key);
  return value != nullptr && value->is_object();
}

bool Fields::is_null(std::string_view key) const {
  const Json* value = found(*node_, key);
  return value != nullptr && value->is_null();
}

bool Fields::is_empty(std::string_view key) const {
  const Json* value = found(*node_, key);
  if (value == nullptr || value->is_null()) return true;
  if (value->is_string()) return plain(value->get_ref<const std::string&>()).empty();
  return value->is_structured() && value->empty();
}

std::string Fields::json() const { return node_->object->dump(); }

void Fields::say(Remark remark) const { node_->document->said.push_back(std::move(remark)); }
const std::vector<Remark>& Fields::said() const { return node_->document->said; }

std::chrono::year_month_day Fields::date(std::string_view key) const {
  const std::string example = "a date such as \"2026-11-14\"";
  return read_date(text_of(needed(*node_, key, example), place(key), example), place(key));
}

std::string Fields::uuid(std::string_view key) const {
  const std::string given = in_small_letters(text(key));
  constexpr std::string_view form = "00000000-0000-0000-0000-000000000000";
  const auto fits = [](char c, char in_form) {
    return in_form == '-' ? c == '-' : (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
  };
  if (given.size() != form.size() || !std::equal(given.begin(), given.end(), form.begin(), fits))
    throw UserError(place(key), brimwright::quoted(given) + " is not an id of this program",
                    "take \"" + std::string(key) + "\" out: brimwright tidy gives it a new one");
  return given;
}

void Fields::refuse_unknown() const {
  if (node_->document->has_none_unknown) return;
  std::vector<std::string> unknown;  // in the file's order
  for (const Member& member : node_->object->get_ref<const Json::object_t&>())
    if (!node_->asked.contains(member.first)) unknown.push_back(member.first);
  if (unknown.empty()) return;
  const std::vector<std::string> known(node_->asked.begin(), node_->asked.end());
  const auto near = meant_by(*node_, unknown.front(), known);
  std::string listed;
  for (const auto& name : known) listed += (listed.empty() ? "" : ", ") + name;
  const std::string others = unknown_in_words(*node_, unknown, 1);
  throw UserError(place(unknown.front()), "unknown key" + (others.empty() ? "" : ", and " + others),
                  near ? "did you mean \"" + *near + "\"?" : "the keys allowed here are " + listed);
}

}  // namespace brimwright
