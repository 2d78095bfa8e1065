#include "web/frames.h"

#include <cstring>
#include <stdexcept>

namespace brimwright::web {
namespace {

using Length = std::uint32_t;

constexpr std::size_t head = 1 + sizeof(std::uint64_t);

template <class Number>
void put(std::string& bytes, Number number) {
  char raw[sizeof number];
  std::memcpy(raw, &number, sizeof number);
  bytes.append(raw, sizeof number);
}

std::size_t size_of(const Frame& frame) {
  std::size_t size = head;
  for (const auto& part : frame.parts) size += sizeof(Length) + part.size();
  return size;
}

[[noreturn]] void refuse() { throw std::runtime_error("a frame is out of form"); }

/// Takes numbers and parts off the front of a frame.
class Cursor {
 public:
  explicit Cursor(std::string_view bytes) : bytes_(bytes) {}

  bool is_at_end() const { return bytes_.empty(); }

  template <class Number>
  Number number() {
    Number value;
    std::memcpy(&value, taken(sizeof value).data(), sizeof value);
    return value;
  }
  std::string part() { return std::string(taken(number<Length>())); }

 private:
  std::string_view taken(std::size_t count) {
    if (count > bytes_.size()) refuse();
    const std::string_view front = bytes_.substr(0, count);
    bytes_.remove_prefix(count);
    return front;
  }

  std::string_view bytes_;
};

Frame decoded(std::string_view bytes) {
  Cursor cursor(bytes);
  const auto kind = cursor.number<std::uint8_t>();
  if (kind > static_cast<std::uint8_t>(Frame::Kind::answer)) refuse();
  Frame frame{.kind = static_cast<Frame::Kind>(kind), .request = cursor.number<std::uint64_t>()};
  while (!cursor.is_at_end()) frame.parts.push_back(cursor.part());
  return frame;
}

}  // namespace

bool fits(const Frame& frame) { return size_of(frame) <= longest_frame; }

std::string encoded(const Frame& frame) {
  if (!fits(frame)) throw std::length_error("a frame would be too long");
  std::string bytes;
  bytes.reserve(sizeof(Length) + size_of(frame));
  put(bytes, static_cast<Length>(size_of(frame)));
  put(bytes, static_cast<std::uint8_t>(frame.kind));
  put(bytes, frame.request);
  for (const auto& part : frame.parts) {
    put(bytes, static_cast<Length>(part.size()));
    bytes += part;
  }
  return bytes;
}

std::optional<Frame> FrameReader::next() {
  const std::string_view left = std::string_view(bytes_).substr(read_);
  if (left.size() < sizeof(Length)) return std::nullopt;
  Length size;
  std::memcpy(&size, left.data(), sizeof size);
  if (size < head || size > longest_frame) refuse();
  if (left.size() - sizeof size < size) return std::nullopt;
  Frame frame = decoded(left.substr(sizeof size, size));
  read_ += sizeof size + size;
  if (read_ == bytes_.size()) {
    bytes_ = {};  // a long one's room is given back
    read_ = 0;
  } else if (read_ > bytes_.size() / 2) {
    bytes_.erase(0, read_);
    read_ = 0;
  }
  return frame;
}

}  // namespace brimwright::web
