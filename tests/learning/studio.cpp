#include "studio.h"

#include <chrono>
#include <cmath>
#include <string>

using namespace brimwright;
using namespace brimwright::learning;

namespace {

class Chance {
 public:
  explicit Chance(const Studio::Notes& notes) : notes_(notes), random_(notes.seed) {}

  double between(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random_);
  }
  int one_of(int count) { return std::uniform_int_distribution<int>(0, count - 1)(random_); }
  /// What scatters evenly about nought.
  double noise(double deviation) {
    const double off = std::normal_distribution<double>(0, deviation)(random_);
    return notes_.are_alike ? 0 : off;
  }
  /// A note, or none.
  template <class T>
  std::optional<T> noted(T value) {
    if (between(0, 1) < notes_.missing) return std::nullopt;
    return value;
  }
  bool is_slip() { return between(0, 1) < notes_.slips; }
  const Studio::Notes& notes() const { return notes_; }

 private:
  Studio::Notes notes_;
  std::mt19937_64 random_;
};

/// A cup that widens upwards: its volume to a line is area * h + widens * h^2 / 2.
struct Mould {
  std::string name;
  double area_cm2, widens_cm2_per_mm, line_mm;
  double error_mm;  // of the line that would hold what it really holds

  double surface_cm2(double line) const { return area_cm2 + widens_cm2_per_mm * line; }
  double volume_ml(double line) const {
    return (area_cm2 * line + widens_cm2_per_mm * line * line / 2) / 10;
  }
  /// Really: as the measured one a little higher.
  double real_volume_ml(double line) const {
    return volume_ml(line) + error_mm * surface_cm2(line) / 10;
  }
};

struct Formula {
  std::string name;
  double planned_density, density;
};

struct Hand {
  std::string tip, hand;
  double by_moves_ml, correction;
};

FigureId loss_of(LossOf loss, std::string decoration = {}) {
  return {Kind::loss, OfLoss{loss, std::move(decoration)}};
}

class Making {
 public:
  explicit Making(const Studio::Notes& notes) : chance_(notes) {
    for (int i = 0; i < 3; ++i) {
      const std::string number = std::to_string(i);
      moulds_.push_back({"moulds/m" + number + ".json", chance_.between(15, 40),
                         chance_.between(0, 0.3), chance_.between(20, 35),
                         chance_.between(-1.5, 1.5)});
      const double planned = chance_.between(0.98, 1.06);
      formulas_.push_back({"f" + number, planned, planned * chance_.between(0.96, 1.04)});
    }
    for (int i = 0; i < 2; ++i)
      hands_.push_back({"star " + std::to_string(i), i == 0 ? "left" : "right",
                        chance_.between(12, 25), chance_.between(0.8, 1.25)});
    pot_ = chance_.between(10, 60), jugs_ = chance_.between(5, 40);
    overpour_ = chance_.between(0.002, 0.03);
    bowl_ = chance_.between(5, 30), bag_ = chance_.between(5, 30),
    bag_change_ = chance_.between(2, 6);
    jug_film_ = chance_.between(2, 10), melt_ = chance_.between(0.005, 0.03);
    cure_loss_ = chance_.between(0.7, 0.95), minutes_ = chance_.between(60, 150);
  }

  Studio studio() {
    Studio studio;
    for (int i = 0; i < chance_.notes().batches; ++i) studio.batches.push_back(batch(i));
    for (const Mould& mould : moulds_)
      studio.truth[{Kind::volume_error, OfMould{mould.name}}] = mould.error_mm;
    for (const Formula& formula : formulas_) {
      studio.truth[{Kind::base_density, OfFormula{formula.name}}] = formula.density;
      studio.truth[{Kind::cure_loss, OfFormula{formula.name}}] = cure_loss_;
    }
    for (const Hand& hand : hands_) {
      studio.truth[{Kind::hand_correction, OfHand{hand.tip, hand.hand}}] = hand.correction;
      studio.truth[{Kind::topping_each, OfTopping{"peak", hand.tip, hand.hand}}] =
          hand.correction * hand.by_moves_ml;
    }
    studio.truth[{Kind::whipped_density, OfFormula{"whip"}}] = 0.55;
    studio.truth[loss_of(LossOf::pot)] = pot_;
    studio.truth[loss_of(LossOf::jugs)] = jugs_;
    studio.truth[loss_of(LossOf::overpour)] = overpour_;
    studio.truth[loss_of(LossOf::bowl_and_whisk)] = bowl_;
    studio.truth[loss_of(LossOf::bag)] = bag_;
    studio.truth[loss_of(LossOf::bag_changes)] = bag_change_;
    studio.truth[loss_of(LossOf::decoration_jug, "pearl")] = jug_film_;
    studio.truth[loss_of(LossOf::melt, "pearl")] = melt_;
    studio.truth[{Kind::time, OfTime{TimeOf::batch}}] = minutes_;
    return studio;
  }

 private:
  /// A cup of 100 ml that weighs 30 g itself.
  double cup_slip() { return chance_.is_slip() ? 0.3 : 0; }

  BatchFacts batch(int number) {
    BatchFacts batch;
    batch.code = "B" + std::to_string(number);
    batch.date = std::chrono::sys_days(std::chrono::year(2026) / 1 / 1) + std::chrono::days(number);
    const Mould& mould = moulds_[static_cast<std::size_t>(chance_.one_of(3))];
    const Formula& formula = formulas_[static_cast<std::size_t>(chance_.one_of(3))];
    const int casts = 20 + chance_.one_of(40);
    const double off_mm = chance_.noise(1);
    batch.base = base(mould, formula, casts, off_mm);
    batch.toppings.push_back(topping(mould, casts, off_mm));
    batch.decorations.push_back(decoration(casts));
    batch.times.push_back(
        {TimeOf::batch, Minutes(90), chance_.noted(Minutes(minutes_ * (1 + chance_.noise(0.1))))});
    batch.cure = cure(formula);
    return batch;
  }

  BaseFacts base(const Mould& mould, const Formula& formula, int casts, double off_mm) {
    const double line = mould.line_mm + off_mm;
    // What is poured in this batch follows its own whims, by the weight of each piece a little.
    const double density = formula.density * (1 + chance_.noise(0.004));
    const double in_pieces = casts * density * (mould.real_volume_ml(line) + chance_.noise(0.2));
    const double pot = pot_ + chance_.noise(3), jugs = jugs_ + chance_.noise(3);
    const double over = in_pieces * overpour_ * (1 + chance_.noise(0.1));
    const double left = std::abs(chance_.noise(40));
    BaseFacts base{.formula = formula.name,
                   .density_planned = formula.planned_density * gram_per_millilitre,
                   .overpour_planned = 1 * percent,
                   .pot_planned = 20 * gram,
                   .jugs_planned = 15 * gram,
                   .test_piece_planned = Mass{},
                   .lost_planned = 60 * gram};
    base.made = chance_.noted((in_pieces + pot + jugs + over + left + chance_.noise(1)) * gram);
    base.left_over = chance_.noted((left + chance_.noise(1)) * gram);
    base.in_pot = chance_.noted((pot + chance_.noise(1)) * gram);
    base.in_jugs = chance_.noted((jugs + chance_.noise(1)) * gram);
    base.overpoured = chance_.noted((over + chance_.noise(1)) * gram);
    if (chance_.notes().has_cups)
      base.cup =
          chance_.noted((density * (1 + chance_.noise(0.003)) + cup_slip()) * gram_per_millilitre);
    FilledMould filled{.mould = mould.name,
                       .volume_each = mould.volume_ml(mould.line_mm) * millilitre,
                       .surface = mould.surface_cm2(mould.line_mm) * square_centimetre};
    filled.casts = chance_.noted(std::int64_t{casts});
    filled.line = chance_.noted(LineReached{(off_mm + chance_.noise(0.1)) * millimetre,
                                            mould.volume_ml(line) * millilitre,
                                            mould.surface_cm2(line) * square_centimetre});
    base.moulds.push_back(filled);
    return base;
  }

  ToppingFacts topping(const Mould& mould, int casts, double off_mm) {
    const Hand& hand = hands_[static_cast<std::size_t>(chance_.one_of(2))];
    const double fills = 0.8,
                 headspace_ml = mould.volume_ml(mould.line_mm + 6) - mould.volume_ml(mould.line_mm);
    const double raised_ml =
        mould.volume_ml(mould.line_mm + off_mm) - mould.volume_ml(mould.line_mm);
    const double density = 0.55 * (1 + chance_.noise(0.05));
    const double each_ml = hand.correction * hand.by_moves_ml * (1 + chance_.noise(0.03)) +
                           fills * (headspace_ml - raised_ml);
    const std::int64_t changes = 1 + chance_.one_of(3);
    const double piped = casts * each_ml * density;
    const double bowl = bowl_ + chance_.noise(2), bag = bag_ + chance_.noise(2);
    const double at_changes = static_cast<double>(changes) * (bag_change_ + chance_.noise(0.5));
    const double left = std::abs(chance_.noise(20));
    ToppingFacts topping{.formula = "whip",
                         .topping = "peak",
                         .tip = hand.tip,
                         .hand = hand.hand,
                         .density_planned = 0.6 * gram_per_millilitre,
                         .visible_planned = hand.by_moves_ml * millilitre,
                         .in_headspace_planned = fills * headspace_ml * millilitre,
                         .fills_headspace = Share::of_one(fills),
                         .by_moves = hand.by_moves_ml * millilitre,
                         .bowl_and_whisk_planned = 10 * gram,
                         .bag_planned = 10 * gram,
                         .tip_planned = Mass{},
                         .each_bag_change_planned = 3 * gram,
                         .bag_changes = changes,
                         .lost_planned = 25 * gram};
    topping.made = chance_.noted((piped + bowl + bag + at_changes + left) * gram);
    topping.left_over = chance_.noted((left + chance_.noise(1)) * gram);
    topping.in_bowl_and_whisk = chance_.noted((bowl + chance_.noise(1)) * gram);
    topping.in_bag = chance_.noted((bag + chance_.noise(1)) * gram);
    topping.at_bag_changes = chance_.noted((at_changes + chance_.noise(1)) * gram);
    if (chance_.notes().has_cups)
      topping.cup = chance_.noted(density * (1 + chance_.noise(0.01)) * gram_per_millilitre);
    topping.piped = chance_.noted(std::int64_t{casts});
    return topping;
  }

  DecorationFacts decoration(int casts) {
    const double each = 5 * (1 + chance_.noise(0.01));
    const std::int64_t fills = 1 + casts / 24;
    const double film = static_cast<double>(fills) * (jug_film_ + chance_.noise(0.5));
    const double left = std::abs(chance_.noise(10));
    const double melted = (casts * each + film + left) / (1 - melt_ * (1 + chance_.noise(0.05)));
    DecorationFacts decoration{
        .decoration = "pearl", .melt_loss_planned = 1 * percent, .left_in_jug_planned = 4 * gram};
    decoration.tray_fills = fills;
    decoration.casts = casts;
    decoration.cast_each = chance_.noted(each * gram);
    decoration.melted = chance_.noted(melted * gram);
    decoration.left_over = chance_.noted(left * gram);
    decoration.in_jug = chance_.noted((film + chance_.noise(0.3)) * gram);
    return decoration;
  }

  CureFacts cure(const Formula& formula) {
    CureFacts cure{.formula = formula.name, .water = 28 * percent};
    cure.sold_on_day = 35;
    const double fresh = 110 * (1 + chance_.noise(0.03)), tau = 10;
    const double by_sale = cure_loss_ * (1 + chance_.noise(0.02)) * 0.28 * fresh;
    const double in_all = by_sale / (1 - std::exp(-35 / tau));
    for (const double day : {1, 4, 9, 16, 24, 35})
      if (const auto grams =
              chance_.noted(fresh - in_all * (1 - std::exp(-day / tau)) + chance_.noise(0.1)))
        cure.weighings.push_back({day, *grams * gram});
    return cure;
  }

  Chance chance_;
  std::vector<Mould> moulds_;
  std::vector<Formula> formulas_;
  std::vector<Hand> hands_;
  double pot_, jugs_, overpour_, bowl_, bag_, bag_change_, jug_film_, melt_, cure_loss_, minutes_;
};

}  // namespace

Studio any_studio(const Studio::Notes& notes) { return Making(notes).studio(); }

double number_of(const Value& value) {
  if (const auto* length = std::get_if<Length>(&value)) return *length / millimetre;
  if (const auto* volume = std::get_if<Volume>(&value)) return *volume / millilitre;
  if (const auto* mass = std::get_if<Mass>(&value)) return *mass / gram;
  if (const auto* density = std::get_if<Density>(&value)) return *density / gram_per_millilitre;
  if (const auto* share = std::get_if<Share>(&value)) return share->of_one();
  if (const auto* factor = std::get_if<Factor>(&value)) return factor->factor;
  return std::get<Minutes>(value).count();
}
