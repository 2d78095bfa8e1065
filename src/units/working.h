#pragma once

#include "units/quantity.h"
#include "units/rounded_text.h"
#include "units/share.h"
#include "units/temperature.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright {

/// One figure that another is made from: "losses together", "83.2 g", "the run". Where it is from
/// may be empty.
struct Given {
  std::string name, value, from = {};
};

/// How one figure of an answer comes about, told by the file that computes it.
struct Working {
  std::string of;       // its place in the answer, numbers from 0: "batches.0.pour.make_g"
  std::string formula;  // in words
  std::vector<Given> with = {};
  /// The formula with the figures in it, as plain arithmetic in the units shown: "3710.3 g + 83.2
  /// g". Empty where it is none.
  std::string sum = {};
  std::string rounded = {};   // "up to 1 g"; empty: shown as it comes
  std::string comes_to = {};  // the figure with its unit
  std::vector<std::string> sources = {};
};

// Figures as finely as arithmetic with them needs, with their unit: whoever types a sum into a
// calculator finds what it comes to.
std::string in_figures(Mass mass, Rounded towards = Rounded::nearest);  // "83.133 g"
std::string in_figures(Volume volume);                                  // "82.121 ml"
std::string in_figures(Length length);                                  // "38.5 mm"
std::string in_figures(Area area);                                      // "28.274 cm²"
std::string in_figures(Density density);                                // "1.01234 g/ml"
std::string in_figures(Share share);                                    // "33.3333 %"
std::string in_figures(Temperature at);                                 // "38 °C"
std::string in_figures(std::int64_t count);
std::string in_figures(double ratio);  // "1.15"

/// "up to 1 g"
std::string to_step(Rounded towards, Mass step);
/// "up to a whole number"
std::string to_whole(Rounded towards);

/// "a + b + c"; "(a + b + c)" where it is a factor of something. Nothing of nothing is "0".
std::string added(const std::vector<std::string>& terms);
std::string in_brackets(const std::vector<std::string>& terms);

/// Puts `more` at the end, each as told of what stands at `place`; an empty `of` is that itself.
void append_at(std::vector<Working>& all, const std::string& place, std::vector<Working> more);

}  // namespace brimwright
