#include "chemistry/acids.h"
#include "chemistry/batter_density.h"
#include "chemistry/fats.h"
#include "chemistry/formula_file.h"
#include "chemistry/proportions.h"
#include "chemistry/rate_cautions.h"
#include "formulas.h"

#include <catch2/catch.hpp>

#include <set>

namespace brimwright::chemistry {
namespace {

const std::string root = BRIMWRIGHT_SOURCE_DIR;

TEST_CASE("every shipped formula reads and makes a batter like a batter", "[chemistry]") {
  const auto name = GENERATE(values<std::string>({"meadow_base", "cloud_topping", "twin_lye"}));
  CAPTURE(name);
  const Formula formula = read_formula(Fields::read(root + "/examples/" + name + ".formula.json"));
  const Proportions p = proportions(formula);
  // Between a light oil (0.88) and a strong lye's batter; common practice, no source.
  const double density = batter_density(formula, p).computed / gram_per_millilitre;
  CHECK(density > 0.95);
  CHECK(density < 1.10);
  CHECK(p.batter > 1.3);
  CHECK(p.batter < 1.8);
  // Nothing to watch: at most the quiet note on a lot's one value for shea butter.
  CHECK(rate_cautions(formula, p).empty());
  for (const Remark& remark : data_doubts(formula, p)) {
    CAPTURE(remark.text);
    CHECK(remark.severity == Severity::note);
  }
}

TEST_CASE("the shipped formulas stay above no superfat even at the worst", "[chemistry]") {
  const auto name = GENERATE(values<std::string>({"meadow_base", "cloud_topping", "twin_lye"}));
  CAPTURE(name);
  const Formula formula = read_formula(Fields::read(root + "/examples/" + name + ".formula.json"));
  const auto superfat = test::weighing_of(formula, kilogram, gram).superfat();
  CAPTURE(superfat.low.in_percent(), superfat.dominant_cause);
  CHECK(superfat.low > Share());
}

/// Every key of `fields`, which the schema's object `schema` must describe.
void check_described(const Fields& fields, const Fields& schema) {
  const auto described = schema.object("properties").keys();
  const std::set<std::string> known(described.begin(), described.end());
  for (const auto& key : fields.keys()) {
    CAPTURE(key);
    CHECK(known.contains(key));
  }
}

TEST_CASE("the schema knows what the reader knows", "[chemistry]") {
  const Fields schema = Fields::read(root + "/src/schemas/formula.schema.json");
  const Fields formula = Fields::parse(test::sound_formula(), "sound");  // uses every key
  const Fields defs = schema.object("$defs");
  check_described(formula, schema);
  for (const Fields& fat : formula.objects("fats")) check_described(fat, defs.object("fat"));
  for (const Fields& a : formula.objects("alkali")) check_described(a, defs.object("alkali"));
  check_described(formula.object("water"), defs.object("water"));
  for (const Fields& a : formula.objects("additives")) check_described(a, defs.object("additive"));
  for (const Fields& f : formula.objects("fragrances"))
    check_described(f, defs.object("fragrance"));
  for (const Fields& c : formula.objects("colours")) check_described(c, defs.object("colour"));
}

TEST_CASE("the schema offers the fats and the acids that are shipped", "[chemistry]") {
  const Fields schema = Fields::read(root + "/src/schemas/formula.schema.json");
  const Fields defs = schema.object("$defs");
  CHECK(defs.object("fat_id").texts("enum") == fat_ids());
  std::vector<std::string> acids;
  for (const Acid& acid : shipped_acids()) acids.push_back(acid.name);
  for (const auto* kind : {"additive", "colour"}) {
    const auto ways =
        defs.object(kind).object("properties").object("contains_acid").objects("oneOf");
    REQUIRE(ways.size() == 3);  // "none", which, or what it takes up
    CHECK(ways[1].object("properties").object("acid").texts("enum") == acids);
  }
}

}  // namespace
}  // namespace brimwright::chemistry
