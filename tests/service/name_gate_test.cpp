#include "service/name_gate.h"

#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace brimwright;
using Catch::Matchers::Contains;

TEST_CASE("the gate knows lye by its names, apart from the reader's list", "[service]") {
  const auto name = GENERATE(values<std::string>({"NaOH",
                                                  "naoh 50 %",
                                                  "KOH",
                                                  "KOH, flakes",
                                                  "Sodium Hydroxide",
                                                  "potassium-hydroxide",
                                                  "lye",
                                                  "LYE solution",
                                                  "caustic soda",
                                                  "caustic potash",
                                                  "soda ash",
                                                  "Washing soda",
                                                  "sodium carbonate",
                                                  "potassium carbonate",
                                                  "calcium hydroxide",
                                                  "Ätznatron",
                                                  "Aetznatron",
                                                  "A\u0308tzkali",
                                                  "Natronlauge",
                                                  "Kalilauge",
                                                  "Pottasche",
                                                  "Waschsoda",
                                                  "soude caustique",
                                                  "lessive de soude",
                                                  "sosa cáustica",
                                                  "hidróxido de sodio",
                                                  "soda caustica",
                                                  "idrossido di sodio",
                                                  "free-flowing lye",
                                                  "lye, free of carbonate"}));
  CAPTURE(name);
  CHECK(service::is_lye_by_name(name));
}

TEST_CASE("the gate lets pass what the reader lets pass", "[service]") {
  for (const auto* name :
       {"sodium lactate", "sodium citrate", "potassium sorbate", "potato starch", "potash alum",
        "lime oil", "soda-free", "lye-free", "lye-free soap base", "no lye", "sans soude caustique",
        "Koh Samui", "KOH SAMUI", "lye soap shreds", "baking soda", "bicarbonate de soude",
        "cream soda", "Water, distilled", "Olive oil"}) {
    CAPTURE(name);
    CHECK_FALSE(service::is_lye_by_name(name));
  }
}

TEST_CASE("a plan with lye among its additives, fats or colours does not pass", "[service]") {
  const planning::Run sound = planning::paper_run();
  const planning::Plan plan = planning::plan(sound);
  CHECK_NOTHROW(service::pass_name_gate(sound, plan));

  planning::Run spoilt = sound;
  chemistry::Additive additive;
  additive.name = "NaOH";
  spoilt.pour.formula.additives.push_back(additive);
  CHECK_THROWS_WITH(service::pass_name_gate(spoilt, plan), Contains("is an alkali by its name"));

  spoilt.pour.formula.additives.back().name = "vinegar";
  spoilt.pour.formula.additives.back().contains_acid =
      chemistry::ContainedAcid{"acetic acid (100 %)", 60 * percent, 0.9343};
  CHECK_THROWS_WITH(service::pass_name_gate(spoilt, plan), Contains("at most 113"));
  spoilt.pour.formula.additives.back().contains_acid->share = 10 * percent;
  CHECK_NOTHROW(service::pass_name_gate(spoilt, plan));

  planning::Run layered = sound;
  planning::LayerColour colour{"soda ash", {1 * percent, RateBasis::batter}, {}};
  planning::Layer layer;
  layer.colours.push_back(colour);
  layered.pour.layers.push_back(layer);
  CHECK_THROWS_WITH(service::pass_name_gate(layered, plan), Contains("/pour/layers"));

  planning::Plan fat = plan;
  fat.pour.batter.weighing.ingredients.front().name = "Natronlauge";
  CHECK_THROWS_WITH(service::pass_name_gate(sound, fat), Contains("nothing is shown"));
}
