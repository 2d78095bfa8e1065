#include "units/question.h"

#include <utility>

namespace brimwright {
namespace {

UserError::Parts worded(const Question::Parts& parts, const UserTerms& terms) {
  return {.file = parts.file,
          .field = parts.field,
          .problem = parts.problem.in(terms),
          .remedy = parts.remedy.in(terms)};
}

}  // namespace

const UserTerms& plain_terms() {
  static const UserTerms terms{
      .place =
          [](const std::string& member) {
            return Place{"", member};
          },
      .say =
          [](const Answer& answer) {
            return answer.member + (answer.value.empty() ? "" : " \"" + answer.value + "\"");
          },
  };
  return terms;
}

Words Words::outside_a_file(std::string text) {
  Words words;
  words.parts_.emplace_back(OutsideAFile{std::move(text)});
  return words;
}

std::string Words::in(const UserTerms& terms) const {
  std::string text;
  for (const auto& part : parts_) {
    if (const auto* plain = std::get_if<std::string>(&part))
      text += *plain;
    else if (const auto* answer = std::get_if<Answer>(&part))
      text += terms.say(*answer);
    else if (!terms.are_keys)
      text += std::get<OutsideAFile>(part).text;
  }
  return text;
}

Words& Words::operator+=(const Words& more) {
  parts_.insert(parts_.end(), more.parts_.begin(), more.parts_.end());
  return *this;
}

Words operator+(Words words, const Words& more) { return words += more; }

std::vector<Remark> remarks_in(const UserTerms& terms, const std::vector<Advice>& advice) {
  std::vector<Remark> remarks;
  for (const auto& [severity, text] : advice) remarks.push_back({severity, text.in(terms)});
  return remarks;
}

Question::Question(Parts parts) : Question(std::move(parts), plain_terms()) {}

Question::Question(Parts parts, const UserTerms& terms)
    : UserError(worded(parts, terms)), parts_(std::move(parts)) {}

Question Question::in(const UserTerms& terms) const {
  Parts parts = parts_;
  parts.problem = parts_.problem.in(terms);
  parts.remedy = parts_.remedy.in(terms);
  return Question(std::move(parts), terms);
}

}  // namespace brimwright
