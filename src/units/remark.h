#pragma once

#include <string>

namespace brimwright {

/// How loudly a remark is said. A danger can hurt someone or spoil a batch and is shown first.
enum class Severity { note, caution, danger };

/// "note", "caution" or "danger".
inline std::string name_of(Severity severity) {
  if (severity == Severity::danger) return "danger";
  return severity == Severity::caution ? "caution" : "note";
}

/// A sentence for the maker that goes with a result.
struct Remark {
  Severity severity;
  std::string text;
};

}  // namespace brimwright
