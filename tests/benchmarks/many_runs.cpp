#include "many_runs.h"

#include <nlohmann/json.hpp>

#include <array>
#include <cstddef>
#include <fstream>
#include <string>

namespace {

namespace fs = std::filesystem;
using Json = nlohmann::ordered_json;

constexpr std::size_t materials = 60;
constexpr std::array fats = {
    "coconut",   "olive",        "palm",         "sunflower", "rapeseed_low_erucic",
    "rice_bran", "avocado",      "grapeseed",    "castor",    "shea",
    "lard",      "cocoa_butter", "mango_butter", "tallow",    "hemp",
    "argan",     "sesame",       "sweet_almond", "maize",     "babassu"};

std::string powder(std::size_t number) { return "powder " + std::to_string(number); }

/// Fats, NaOH, water, powders.
std::vector<std::string> names() {
  std::vector<std::string> all(fats.begin(), fats.end());
  all.insert(all.end(), {"NaOH", "water"});
  for (std::size_t i = 0; all.size() < materials; ++i) all.push_back(powder(i));
  return all;
}

Json read(const fs::path& file) {
  std::ifstream in(file);
  return Json::parse(in);
}

Json formula(std::size_t number) {
  Json document = {{"schema", "brimwright.formula/2"},
                   {"name", "Base " + std::to_string(number)},
                   {"superfat", "6 %"},
                   {"alkali", {{{"alkali", "NaOH"}, {"share", "100 %"}, {"purity", "99 %"}}}},
                   {"water", {{"lye_strength", "33 %"}}},
                   {"pour_temperature", "38 °C"},
                   {"cure", "35 days"},
                   {"water_lost_in_cure", "85 %"}};
  for (std::size_t i = 0; i < 5; ++i)
    document["fats"].push_back({{"fat", fats[(number + 4 * i) % fats.size()]}, {"share", "20 %"}});
  for (std::size_t i = 0; i < 4; ++i)
    document["additives"].push_back(
        {{"name", powder((number + 10 * i) % (materials - fats.size() - 2))},
         {"rate", "1 % of fats"},
         {"density", "2.6 g/ml"},
         {"goes_into", "fats"},
         {"inci", "Kaolin"}});
  return document;
}

Json studio() {
  Json document = {{"schema", "brimwright.studio/1"}, {"currency", "EUR"}};
  constexpr std::array sizes = {250, 1000, 5000, 25000};  // grams
  std::size_t turn = 0;
  for (const std::string& name : names()) {
    for (const int grams : sizes) {
      const std::size_t a_kilogram = 300 + (137 * ++turn) % 900;  // cents
      const std::size_t cents = a_kilogram * static_cast<std::size_t>(grams) *
                                (120 - static_cast<std::size_t>(grams) / 1000) / 100'000;
      document["packs"][name].push_back({{"holds", std::to_string(grams) + " g"},
                                         {"paid", std::to_string(cents / 100) + "." +
                                                      std::to_string(100 + cents % 100).substr(1)},
                                         {"from", "seller " + std::to_string(turn % 8)}});
    }
  }
  for (int i = 0; i < 8; ++i)
    document["sellers"]["seller " + std::to_string(i)] = {
        {"postage", std::to_string(4 + i % 4) + ".90"},
        {"postage_free_from", std::to_string(60 + 10 * i) + ".00"}};
  return document;
}

}  // namespace

std::vector<std::string> write_many_runs(const fs::path& source, const fs::path& folder,
                                         int count) {
  fs::create_directories(folder);
  std::ofstream(folder / "studio.json") << studio();
  Json run = read(source / "examples/plain_bars.run.json");
  run.erase("id");
  std::vector<std::string> files;
  for (int i = 0; i < count; ++i) {
    const std::string number = std::to_string(i);
    std::ofstream(folder / ("base" + number + ".formula.json"))
        << formula(static_cast<std::size_t>(i));
    run["name"] = "Run " + number;
    run["sell"] = 12 + i;
    run["pour"]["formula"] = "base" + number + ".formula.json";
    files.push_back((folder / ("run" + number + ".run.json")).string());
    std::ofstream(files.back()) << run;
  }
  return files;
}
