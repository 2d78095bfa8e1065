#pragma once

#include <cstdint>

namespace brimwright::days {

enum class Verdict : std::uint8_t { possible, impossible, unknown };

}  // namespace brimwright::days
