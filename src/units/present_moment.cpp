#include "units/present_moment.h"

#include "units/number_text.h"

#include <array>
#include <chrono>
#include <cstdlib>
#include <ctime>
#include <optional>

namespace brimwright {
namespace {

std::optional<std::time_t> stated_moment() {
  const char* const stated = std::getenv("SOURCE_DATE_EPOCH");
  if (stated == nullptr) return std::nullopt;
  const auto seconds = number_of(stated);
  if (!seconds || !(*seconds >= 0 && *seconds < 1e11)) return std::nullopt;
  return static_cast<std::time_t>(*seconds);
}

std::time_t moment_or(const std::optional<std::time_t>& stated) {
  return stated.value_or(std::chrono::system_clock::to_time_t(std::chrono::system_clock::now()));
}

}  // namespace

std::string present_moment_in_utc() {
  const std::time_t moment = moment_or(stated_moment());
  std::tm parts{};
  gmtime_r(&moment, &parts);
  std::array<char, 32> text{};
  const std::size_t length = std::strftime(text.data(), text.size(), "%Y%m%dT%H%M%SZ", &parts);
  return {text.data(), length};
}

std::string present_moment_with_offset() {
  const auto stated = stated_moment();
  const std::time_t moment = moment_or(stated);
  std::tm parts{};
  if (stated)
    gmtime_r(&moment, &parts);
  else
    localtime_r(&moment, &parts);
  std::array<char, 32> text{};
  const std::size_t length = std::strftime(text.data(), text.size(), "%Y-%m-%dT%H:%M:%S%z", &parts);
  std::string with_offset(text.data(), length);
  return with_offset.insert(with_offset.size() - 2, ":");  // +0200 as +02:00
}

std::string present_moment() {
  const auto stated = stated_moment();
  const std::time_t moment = moment_or(stated);
  std::tm parts{};
  if (stated)
    gmtime_r(&moment, &parts);
  else
    localtime_r(&moment, &parts);
  std::array<char, 32> text{};
  const std::size_t length = std::strftime(text.data(), text.size(), "%Y-%m-%d %H:%M", &parts);
  return {text.data(), length};
}

}  // namespace brimwright
