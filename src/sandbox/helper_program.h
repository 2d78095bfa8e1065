#pragma once

#include <cstddef>
#include <functional>
#include <string_view>

namespace brimwright::sandbox {

/// Sends bytes from a helper to the program that started it.
using Send = std::function<void(const void* data, std::size_t size)>;

enum class Reach {
  none,  // it can ask nothing of the system but memory and to send (see work_filter.h)
  files  // it opens files as well, such as fonts
};

/// What a helper program does.
struct HelperJob {
  std::string_view name;
  Reach reach;
  std::function<bool(std::string_view bytes, const Send& send)> work;  // whether it succeeded
};

/// The main function of a helper program, for sandbox::worked_by: sets its limits, then looks at
/// what it is given, works and ends without a destructor. Refuses to begin without the filter that
/// `reach` asks for, on a system that knows filters.
[[noreturn]] void be_a_helper(int argc, char** argv, const HelperJob& job);

}  // namespace brimwright::sandbox
