#pragma once

#include "records/records.h"
#include "scratch_folder.h"
#include "service/service.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace brimwright::service {

/// An act of hers, on the file of that name in her folder; on the folder itself without one.
using StudioAct = std::variant<StockRequest, NoteRequest>;
using Told = std::vector<std::string>;

/// A folder of hers: the plain bars of the examples, an order of them and of others that are poured
/// together, which takes what is ready, and records in which nothing is yet.
class Studio {
 public:
  static constexpr auto bars = "plain_bars.run.json", small_bars = "small_bars.run.json";
  static constexpr auto order = "market.order.json";

  Studio() {
    for (const char* name : {bars, "meadow_base.formula.json"})
      std::filesystem::copy(root() + "/examples/" + name, folder());
    std::ostringstream run;
    run << std::ifstream(folder() / bars).rdbuf();
    const std::string small = with(run.str(), "\"Plain bars\"", "\"Small bars\"");
    (void)folder_.write(small_bars, with(small, "ae2be28c", "ae2be28d"));
    (void)folder_.write("studio.json", studio_file);
    (void)folder_.write(order, order_file);
    records::Records::kept_in(folder());
  }

  const std::filesystem::path& folder() const { return folder_.path(); }

  void does(const StudioAct& act) const {
    std::visit([&](auto asked) { done(std::move(asked)); }, act);
  }

 private:
  static constexpr auto order_file = R"({"schema": "brimwright.order/1",
    "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f001", "for": "a market", "ready": "take",
    "lines": [{"run": "plain_bars.run.json", "pieces": 6, "together": "A"},
              {"run": "small_bars.run.json", "pieces": 6, "together": "A"}]})";
  static constexpr auto studio_file = R"({"schema": "brimwright.studio/1", "currency": "EUR",
    "packs": {"castor": [{"holds": "250 g", "paid": "4.00"}],
              "gift box": [{"holds": "50 pieces", "paid": "30.00"}]},
    "lye_solutions": {"The jug": {"alkali": "NaOH", "strength": "50 %",
                                  "strength_range": ["49 %", "51 %"], "kept_at": "20 °C"}},
    "have": {"castor": "200 g", "gift box": "12 pieces"}})";

  static std::string root() { return BRIMWRIGHT_SOURCE_DIR; }
  static std::string with(std::string text, const std::string& old, const std::string& other) {
    const auto at = text.find(old);
    REQUIRE(at != std::string::npos);
    return text.replace(at, old.size(), other);
  }

  template <class Asked>
  void done(Asked asked) const {
    asked.file = folder() / asked.file;
    asked.now = "2026-12-01T09:30:05+01:00";
    asked.today = "2026-12-01";
    if constexpr (std::is_same_v<Asked, NoteRequest>) asked.program = "0";
    if constexpr (std::is_same_v<Asked, StockRequest>)
      if (asked.order) asked.order = folder() / *asked.order;
    const Reply reply = answer({.what = std::move(asked)}, {.shipped = root(), .folders = {}});
    REQUIRE(reply.complaint == "");
  }

  ScratchFolder folder_;
};

inline StudioAct bought(const std::string& material, const std::string& lot) {
  StockRequest asked;
  asked.bought = material;
  asked.pack = "1 kg";
  asked.lot = lot;
  asked.on = "2026-10-01";
  return asked;
}

inline StudioAct made(const std::string& material, const Told& of) {
  StockRequest asked;
  asked.made = material;
  asked.pack = "1 kg";
  asked.of = of;
  return asked;
}

inline StudioAct taken_over() {
  StockRequest asked;
  asked.take_have = true;
  return asked;
}

/// What became of lots and pieces, all in one act; what is sold goes to the order.
inline StudioAct went(const std::vector<std::pair<Told StockRequest::*, Told>>& all) {
  StockRequest asked;
  for (const auto& [what, told] : all) asked.*what = told;
  if (!asked.sold.empty()) asked.order = Studio::order;
  return asked;
}

inline StudioAct reserved(const std::string& of) {
  NoteRequest asked;
  asked.file = of;
  asked.reserve = asked.again = true;
  return asked;
}

inline StudioAct begun(const std::string& what, const std::string& code, const Told& lots) {
  NoteRequest asked;
  asked.file = what;
  asked.begin = true;
  asked.on = "2026-10-20";
  asked.code = code;
  asked.lots = lots;
  if (what != Studio::order) asked.confirmed = {"by-itself"};
  return asked;
}

inline StudioAct begun_again(const std::string& what, const Told& set) {
  NoteRequest asked;
  asked.file = what;
  asked.begin = asked.again = true;
  asked.set = set;
  return asked;
}

inline StudioAct noted(const std::string& of, const std::string& code, const Told& set,
                       const Told& lots = {}) {
  NoteRequest asked;
  asked.file = of;
  asked.batch_code = code;
  asked.set = set;
  asked.lots = lots;
  return asked;
}

inline StudioAct renamed(const std::string& of, const std::string& was, const std::string& is) {
  NoteRequest asked;
  asked.file = of;
  asked.batch_code = was;
  asked.code = is;
  return asked;
}

}  // namespace brimwright::service
