#pragma once

#include "units/fields.h"

#include <map>
#include <memory>
#include <string>
#include <typeindex>
#include <typeinfo>
#include <utility>

namespace brimwright {

/// What is read of files while one answer is worked out: of each file once, so that what asks for
/// it again need not wait, and all of the answer is of one state of the files. It goes with the
/// answer: the next one sees what was changed.
class ReadOnce {
 public:
  /// The document in `file`, as Fields::read gives it, of which nothing was asked yet.
  Fields document(const std::string& file);

  /// The text that document() read of `file`, called so; nothing where it was not asked.
  const std::string* text(const std::string& file) const;

  /// What `read()` makes of `file`, which is done at the first time alone. What it throws is not
  /// kept.
  template <class Thing, class Read>
  std::shared_ptr<const Thing> of(const std::string& file, const Read& read) {
    const std::pair<std::type_index, std::string> key{typeid(Thing), file};
    if (const auto known = known_.find(key); known != known_.end())
      return std::static_pointer_cast<const Thing>(known->second);
    auto thing = std::make_shared<const Thing>(read());
    known_.emplace(key, thing);
    return thing;
  }

 private:
  struct Text {
    std::string text;
  };

  std::map<std::pair<std::type_index, std::string>, std::shared_ptr<const void>> known_;
};

}  // namespace brimwright
