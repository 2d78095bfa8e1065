#include "trade/amount_text.h"

#include "units/printing.h"
#include "units/wording.h"

namespace brimwright::trade {
namespace {

/// To a hundredth of a gram below ten grams, to a tenth below a kilogram, else to the gram.
std::int64_t micrograms_shown(std::int64_t micrograms) {
  if (micrograms < 10'000'000) return 10'000;
  return micrograms < 1'000'000'000 ? 100'000 : 1'000'000;
}

std::string grams(std::int64_t micrograms, std::int64_t step) {
  const int decimals = step == 10'000 ? 2 : step == 100'000 ? 1 : 0;
  return fixed_grams(static_cast<double>(micrograms) * (gram / 1e6), decimals);
}

}  // namespace

std::string amount_shown_up(const Amount& amount) {
  if (amount.is_pieces()) return counted(amount.whole(), "piece");
  const std::int64_t step = micrograms_shown(amount.whole());
  return grams((amount.whole() + step - 1) / step * step, step);
}

std::string amount_shown_down(const Amount& amount) {
  if (amount.is_pieces()) return counted(amount.whole(), "piece");
  const std::int64_t step = micrograms_shown(amount.whole());
  return grams(amount.whole() / step * step, step);
}

std::string stock_size(const Amount& amount) {
  constexpr std::int64_t a_gram = 1'000'000;
  if (amount.is_pieces() || amount.whole() < 1000 * a_gram) return amount_shown_down(amount);
  return trimmed(static_cast<double>(amount.whole() / a_gram) / 1000, 3) + " kg";
}

std::string pack_size(const Amount& amount) {
  if (amount.is_pieces()) return counted(amount.whole(), "piece");
  const Mass mass = amount.mass();
  return mass < kilogram ? trimmed(mass / gram, 2) + " g" : trimmed(mass / kilogram, 3) + " kg";
}

}  // namespace brimwright::trade
