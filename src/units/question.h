#pragma once

#include "units/quantity.h"
#include "units/remark.h"
#include "units/user_error.h"

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace brimwright {

/// Something that a person may say: by which member of what is asked of the program, by its name
/// there ("role", "fit-mass"), and what ("cavity"; empty where the member says all, or is meant
/// alone).
struct Answer {
  std::string member;
  std::string value = {};
};

/// How those who use the program in one way say such things: by options, by keys of a file, by
/// fields of a page. Whoever asks for them has one, and no room below knows which.
struct UserTerms {
  std::function<Place(const std::string& member)> place;  // of what was said there
  std::function<std::string(const Answer&)> say;          // in a sentence: `role "cavity"`
  std::string one = "field";                              // what one of them is called
  bool are_keys = false;  // of a file: then a sentence need not tell that a file has them too
};
/// In nobody's terms: `role "cavity"`, the member itself as the place.
const UserTerms& plain_terms();

/// A sentence for people with answers in it, which are worded when it is known who reads it.
class Words {
 public:
  Words() = default;
  Words(const char* text) : Words(std::string(text)) {}  // NOLINT(google-explicit-constructor)
  Words(std::string text) : parts_{std::move(text)} {}   // NOLINT(google-explicit-constructor)
  Words(Answer answer) : parts_{std::move(answer)} {}    // NOLINT(google-explicit-constructor)
  /// Said to all but those who are asked in a file.
  static Words outside_a_file(std::string text);

  std::string in(const UserTerms& terms) const;
  Words& operator+=(const Words& more);

 private:
  struct OutsideAFile {
    std::string text;
  };
  std::vector<std::variant<std::string, Answer, OutsideAFile>> parts_;
};
Words operator+(Words words, const Words& more);

/// A remark that may advise what to say.
struct Advice {
  Severity severity;
  Words text;
};
std::vector<Remark> remarks_in(const UserTerms& terms, const std::vector<Advice>& advice);

/// One way to answer: all of `answers` together. `size` is how large the thing asked about would
/// then be.
struct Choice {
  std::vector<Answer> answers;
  std::optional<std::array<Length, 3>> size = {};
};

/// A complaint that asks for something. As a UserError it is worded in plain terms.
class Question : public UserError {
 public:
  struct Parts {
    std::string file, field;  // as a UserError's
    std::string asks;         // the member that answers
    Words problem, remedy;
    std::vector<Choice> choices = {};
  };

  explicit Question(Parts parts);
  const Parts& in_parts() const { return parts_; }
  /// The same, worded.
  Question in(const UserTerms& terms) const;

 private:
  Question(Parts parts, const UserTerms& terms);

  Parts parts_;
};

}  // namespace brimwright
