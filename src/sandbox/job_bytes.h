#pragma once

#include <cstddef>
#include <cstdint>
#include <cstring>
#include <functional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace brimwright::sandbox {

// Values as bytes and back, between a program and its helper on the same machine: in its own order
// of bytes, and read as written. A struct is known by a function beside it that names its parts to
// either of both:
//   template <class Bytes> void pass(Bytes& bytes, Like<Point> auto& p) { bytes(p.x, p.y); }

template <class T, class Wanted>
concept Like = std::is_same_v<std::remove_const_t<T>, Wanted>;

template <class T>
concept PlainBytes =
    std::is_trivially_copyable_v<T> && !std::is_pointer_v<T> && !std::is_same_v<T, bool> &&
    (std::is_arithmetic_v<T> || std::is_enum_v<T> || requires(T t) { std::tuple_size<T>(); });

/// Bytes that cannot have been written by BytesOut from what is read.
class BadBytes : public std::runtime_error {
 public:
  BadBytes() : std::runtime_error("bytes of another kind than expected") {}
};

class BytesOut {
 public:
  using Take = std::function<void(const void* data, std::size_t size)>;
  explicit BytesOut(Take take) : take_(std::move(take)) {}

  template <class... Values>
  void operator()(const Values&... values) {
    (put(values), ...);
  }

 private:
  template <PlainBytes T>
  void put(const T& value) {
    take_(&value, sizeof value);
  }
  void put(const bool& value) { put(static_cast<std::uint8_t>(value ? 1 : 0)); }
  void put(const std::string& text) {
    put_count(text.size());
    take_(text.data(), text.size());
  }
  template <class T>
  void put(const std::vector<T>& values) {
    put_count(values.size());
    if constexpr (PlainBytes<T>)
      take_(values.data(), values.size() * sizeof(T));
    else
      for (const T& value : values) put(value);
  }
  template <class... Kinds>
  void put(const std::variant<Kinds...>& value) {
    put_count(value.index());
    std::visit([this](const auto& its) { put(its); }, value);
  }
  template <class T>
  void put(const T& value) {
    pass(*this, value);
  }
  void put_count(std::size_t count) { put(static_cast<std::uint64_t>(count)); }

  Take take_;
};

/// Reads in the same order; BadBytes for what does not fit.
class BytesIn {
 public:
  explicit BytesIn(std::string_view bytes) : left_(bytes) {}

  template <class... Values>
  void operator()(Values&... values) {
    (get(values), ...);
  }
  std::string_view left() const { return left_; }

 private:
  template <PlainBytes T>
  void get(T& value) {
    take(&value, sizeof value);
  }
  void get(bool& value) {
    std::uint8_t byte = 0;
    get(byte);
    if (byte > 1) throw BadBytes();
    value = byte == 1;
  }
  void get(std::string& text) {
    text.resize(get_count(1));
    take(text.data(), text.size());
  }
  template <class T>
  void get(std::vector<T>& values) {
    if constexpr (PlainBytes<T>) {
      values.resize(get_count(sizeof(T)));
      take(values.data(), values.size() * sizeof(T));
    } else {
      values.resize(get_count(1));
      for (T& value : values) get(value);
    }
  }
  template <class... Kinds>
  void get(std::variant<Kinds...>& value) {
    get_kind<0>(value, get_count(0));
  }
  template <std::size_t kind, class... Kinds>
  void get_kind(std::variant<Kinds...>& value, std::size_t wanted) {
    if constexpr (kind == sizeof...(Kinds))
      throw BadBytes();
    else if (kind == wanted)
      get(value.template emplace<kind>());
    else
      get_kind<kind + 1>(value, wanted);
  }
  template <class T>
  void get(T& value) {
    pass(*this, value);
  }

  /// Of things that each take so many bytes at least, so that no more are made room for than there
  /// can be.
  std::size_t get_count(std::size_t least_bytes) {
    std::uint64_t count = 0;
    get(count);
    if (least_bytes > 0 && count > left_.size() / least_bytes) throw BadBytes();
    return static_cast<std::size_t>(count);
  }
  void take(void* to, std::size_t size) {
    if (size > left_.size()) throw BadBytes();
    if (size > 0) std::memcpy(to, left_.data(), size);
    left_.remove_prefix(size);
  }

  std::string_view left_;
};

/// The bytes of one value.
template <class T>
std::string as_bytes(const T& value) {
  std::string bytes;
  BytesOut out([&](const void* data, std::size_t size) {
    bytes.append(static_cast<const char*>(data), size);
  });
  out(value);
  return bytes;
}

/// One value from bytes that hold nothing else; BadBytes.
template <class T>
T from_bytes(std::string_view bytes) {
  T value{};
  BytesIn in(bytes);
  in(value);
  if (!in.left().empty()) throw BadBytes();
  return value;
}

}  // namespace brimwright::sandbox
