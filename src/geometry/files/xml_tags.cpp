#include "geometry/files/xml_tags.h"

#include <cstddef>
#include <optional>

namespace brimwright::geometry {
namespace {

constexpr std::string_view blanks = " \t\r\n";

/// What follows `end` in `xml`, or nothing if it does not come.
std::optional<std::string_view> after(std::string_view xml, std::string_view end) {
  const std::size_t at = xml.find(end);
  if (at == std::string_view::npos) return std::nullopt;
  return xml.substr(at + end.size());
}

std::string_view without_blanks(std::string_view xml) {
  const std::size_t start = xml.find_first_not_of(blanks);
  return start == std::string_view::npos ? std::string_view() : xml.substr(start);
}

std::string_view without_prefix(std::string_view name) {
  const std::size_t colon = name.find(':');
  return colon == std::string_view::npos ? name : name.substr(colon + 1);
}

/// Takes `name="value"` off the front of `xml`.
bool take_attribute(std::string_view& xml, XmlAttributes& attributes) {
  const std::size_t name_end = xml.find_first_of(" \t\r\n=/>");
  if (name_end == 0 || name_end == std::string_view::npos) return false;
  const std::string name(xml.substr(0, name_end));
  xml = without_blanks(xml.substr(name_end));
  if (!xml.starts_with('=')) return false;
  xml = without_blanks(xml.substr(1));
  if (xml.empty() || (xml[0] != '"' && xml[0] != '\'')) return false;
  const std::size_t close = xml.find(xml[0], 1);
  if (close == std::string_view::npos) return false;
  const bool first_of_its_name = attributes.emplace(name, xml.substr(1, close - 1)).second;
  xml = xml.substr(close + 1);
  return first_of_its_name;
}

/// Takes a tag's name and attributes, up to its end, off the front of `xml`, after its '<'.
bool take_tag(std::string_view& xml, std::string& name, XmlAttributes& attributes) {
  const std::size_t name_end = xml.find_first_of(" \t\r\n/>");
  if (name_end == 0 || name_end == std::string_view::npos) return false;
  name = without_prefix(xml.substr(0, name_end));
  attributes.clear();
  xml = without_blanks(xml.substr(name_end));
  while (!xml.starts_with('>') && !xml.starts_with("/>")) {
    if (!take_attribute(xml, attributes)) return false;
    xml = without_blanks(xml);
  }
  xml = xml.substr(xml.find('>') + 1);
  return true;
}

}  // namespace

bool for_each_tag(std::string_view xml,
                  const std::function<bool(std::string_view name, const XmlAttributes&)>& see) {
  std::string name;
  XmlAttributes attributes;
  for (auto rest = after(xml, "<"); rest; rest = after(xml, "<")) {
    std::optional<std::string_view> passed;
    if (rest->starts_with("!--")) {
      passed = after(*rest, "-->");
    } else if (rest->starts_with("![CDATA[")) {
      passed = after(*rest, "]]>");
    } else if (rest->starts_with('?')) {
      passed = after(*rest, "?>");
    } else if (rest->starts_with('!') || rest->starts_with('/')) {
      passed = after(*rest, ">");
    } else {
      if (!take_tag(*rest, name, attributes)) return false;
      if (!see(name, attributes)) return true;
      passed = rest;
    }
    if (!passed) return false;
    xml = *passed;
  }
  return true;
}

}  // namespace brimwright::geometry
