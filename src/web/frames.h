#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::web {

/// What the server and its worker tell each other, one after another on a stream of bytes. Both
/// ends are this very program on this machine, so numbers stand in the machine's own order:
///
///   4 bytes  how many follow
///   1 byte   the kind
///   8 bytes  the number of the request it is about
///   parts    4 bytes for how long each is, and its bytes
struct Frame {
  enum class Kind : std::uint8_t {
    settings,  // to the worker, first of all
    request,   // to the worker
    begun,     // from the worker: a thread works on it
    put_off,   // from the worker: it waits for the patient thread
    answer,    // from the worker
  };

  Kind kind;
  std::uint64_t request = 0;
  std::vector<std::string> parts = {};
};

/// Room for the solid of the largest mesh that is read.
inline constexpr std::size_t longest_frame = std::size_t{1} << 30;

bool fits(const Frame& frame);
/// std::length_error unless it fits.
std::string encoded(const Frame& frame);

/// Takes the bytes of a stream as they come, and gives the frames in them.
class FrameReader {
 public:
  void add(std::string_view bytes) { bytes_.append(bytes); }
  /// Nothing until the next one is there whole. std::runtime_error if it is out of form: then the
  /// other end has gone mad, and nothing more of it can be believed.
  std::optional<Frame> next();

 private:
  std::string bytes_;
  std::size_t read_ = 0;  // of the bytes
};

}  // namespace brimwright::web
