#include "reports/learned_report.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/shown_text.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>

namespace brimwright::reports {
namespace {

using namespace learning;

std::string next_time(MissingNote note) {
  switch (note) {
    case MissingNote::mass_made:
      return "note what was made in all";
    case MissingNote::left_over:
      return "weigh what is left over";
    case MissingNote::lost_altogether:
      return "weigh what is left on the tools";
    case MissingNote::in_pot:
      return "weigh what stays in the pot";
    case MissingNote::in_jugs:
      return "weigh what stays in the jugs";
    case MissingNote::overpoured:
      return "weigh what is poured over and scraped off";
    case MissingNote::test_piece:
      return "weigh the test piece";
    case MissingNote::in_bowl_and_whisk:
      return "weigh what stays in bowl and whisk";
    case MissingNote::in_bag:
      return "weigh what stays in the bag";
    case MissingNote::in_tip:
      return "weigh what stays in the tip";
    case MissingNote::at_bag_changes:
      return "weigh what is lost at bag changes";
    case MissingNote::bag_changes:
      return "count the bag changes";
    case MissingNote::poured_in_mould:
      return "weigh the moulds empty and filled";
    case MissingNote::casts:
      return "count the cavities that are filled";
    case MissingNote::line_reached:
      return "note how far the line is off";
    case MissingNote::cup_of_base:
      return "weigh a cup of the base";
    case MissingNote::cup_of_topping:
      return "weigh a cup of the topping after the second whip";
    case MissingNote::toppings_piped:
      return "count the pieces that are piped";
    case MissingNote::melted:
      return "weigh what is melted";
    case MissingNote::tray_fills:
      return "count the tray fillings";
    case MissingNote::casts_weighed:
      return "weigh some of the casts";
    case MissingNote::in_decoration_jug:
      return "weigh what stays in the jug";
    case MissingNote::lost_in_melt:
      return "weigh what is lost in melting";
    case MissingNote::three_weighings:
      return "weigh cured pieces on three days or more";
    case MissingNote::weighings_for_longer:
      return "go on weighing until the loss slows down";
    case MissingNote::weighings_sooner:
      return "weigh in the first days too";
    case MissingNote::weighings_that_fall:
      return "weigh on a finer scale, or for longer";
    case MissingNote::plain_piece_weighed:
      return "weigh plain pieces, without topping and decoration";
    case MissingNote::weighed_as_planned:
      break;
  }
  return "weigh all of it in the planned proportions";
}

std::string joined(const std::vector<std::string>& all, const std::string& last) {
  std::string text;
  for (std::size_t i = 0; i < all.size(); ++i)
    text += (i == 0 ? "" : i + 1 == all.size() ? last : ", ") + all[i];
  return text;
}

std::string remedy(const Untold& untold) {
  std::vector<std::string> each, one;
  for (const MissingNote note : untold.needed) each.push_back(next_time(note));
  for (const MissingNote note : untold.any_one_of) one.push_back(next_time(note));
  if (!one.empty()) each.push_back(joined(one, " or "));
  return joined(each, ", and ");
}

std::string range_of(const Spread& spread) {
  return value_words(spread.low) + " to " + value_words(spread.high);
}

std::string standing_words(const NamedFigure& named, const UserTerms& terms) {
  switch (named.figure.standing) {
    case Standing::suggested:
      if (named.in.file.empty()) return "to use it, ask of a run whose figure it is";
      if (named.in.refused)
        return "it cannot be taken here, because it " + named.in.refused->problem + ": " +
               named.in.refused->remedy;
      return "to use it: " + terms.say({"take", named.name});
    case Standing::as_planned:
      return "no reason to change it";
    case Standing::too_few:
      return "too few batches to change it for";
    case Standing::nowhere:
      break;
  }
  if (named.figure.id.kind == Kind::topping_each)
    return "for you to know: a topping of a tip's moves has its place in the correction for your "
           "hand";
  return "for you to know";
}

std::string effects_words(const NamedFigure& named) {
  if (!named.no_plan.empty()) return "With it there would be no plan: " + named.no_plan + ".";
  std::string text;
  for (const Effect& effect : named.effects)
    text += (text.empty() ? "With it: " : "; ") + effect.of + " " + value_words(effect.now) +
            " -> " + value_words(effect.then);
  return text.empty() ? "" : text + ".";
}

std::string taken_words(const NamedFigure& named, const UserTerms& terms) {
  if (!named.in.taken) return "";
  const Taking& taken = *named.in.taken;
  return "Taken on " + taken.on + " from " +
         counted(static_cast<std::int64_t>(taken.batches), "batch", "batches") +
         "; to take it back: " + terms.say({"undo", named.name}) + ".";
}

std::string of_figure(const NamedFigure& named, const UserTerms& terms) {
  const Figure& figure = named.figure;
  const std::string used = figure.used_now ? value_words(*figure.used_now) : "none";
  const auto below = [](const std::string& text) {
    return text.empty() ? "" : wrapped(text, "    ", "    ");
  };
  return wrapped(figure_words(figure.id), "  ", "  ") +
         wrapped(value_words(figure.value) + " (" + range_of(figure.spread) + ", " +
                     counted(static_cast<std::int64_t>(figure.values.size()), "batch", "batches") +
                     "); plan: " + used + "; " + standing_words(named, terms),
                 "    ", "    ") +
         below(effects_words(named)) + below(taken_words(named, terms));
}

/// How sure the ranges are, of those that are shown.
std::string sureness(const LearnedReport& report) {
  std::string text;
  const auto has = [&](auto is) {
    return std::any_of(report.figures.begin(), report.figures.end(), is);
  };
  if (has([](const NamedFigure& named) {
        return std::holds_alternative<Interval>(named.figure.spread.is);
      }))
    text += wrapped(
        "From six batches on a range holds the true figure 19 times of 20, unless notes are wrong "
        "in the same way each time.",
        "  ", "  ");
  if (has([](const NamedFigure& named) {
        return std::holds_alternative<WholeRange>(named.figure.spread.is);
      }))
    text += wrapped("Below six it is from the least to the greatest.", "  ", "  ");
  return text;
}

const char* name_of(Contradiction::In in) {
  return in == Contradiction::In::base      ? "base"
         : in == Contradiction::In::topping ? "topping"
                                            : "decoration";
}

}  // namespace

std::string untold_text(const Untold& untold) {
  std::vector<std::string> others;
  for (const FigureId& other : untold.mixed_with) others.push_back(figure_words(other));
  std::string text = figure_words(untold.id) + ": " +
                     counted(static_cast<std::int64_t>(untold.batches), "batch", "batches") +
                     " cannot tell";
  if (!others.empty()) text += " it from " + joined(others, " and ");
  const auto& needed = untold.needed;
  if (std::find(needed.begin(), needed.end(), MissingNote::weighed_as_planned) != needed.end())
    text += "; the last, " + untold.code + ", was weighed otherwise than planned";
  return text + ". Next time " + remedy(untold) + ".";
}

std::string contradiction_text(const Contradiction& one) {
  return "Batch " + one.code + ", " + name_of(one.in) + ": " + in_grams(abs(one.unaccounted)) +
         (one.against == Contradiction::Against::scales ? " more was made than was weighed for it"
          : one.unaccounted > Mass{}                    ? " more was made than is accounted for"
                                                        : " more is accounted for than was made") +
         "; its masses are not counted. Check them.";
}

std::string learned_text(const LearnedReport& report, const UserTerms& terms) {
  std::string text = "WHAT BATCHES TELL  " + on_one_line(report.run) + ", " +
                     counted(static_cast<std::int64_t>(report.batches), "batch", "batches") +
                     "\n\n";
  if (report.figures.empty())
    text += wrapped("Nothing yet: a figure is shown once three batches tell it.", "  ", "  ");
  for (const NamedFigure& named : report.figures) text += of_figure(named, terms);
  if (!report.figures.empty()) text += "\n" + sureness(report);
  if (report.earlier > 0)
    text +=
        "\n" +
        wrapped(counted(static_cast<std::int64_t>(report.earlier), "batch", "batches") +
                    " of another formula, mould or topping under the same name: not counted there.",
                "  ", "  ");
  if (!report.untold.empty()) text += "\nWHAT THEIR NOTES CANNOT TELL\n";
  for (const Untold& untold : report.untold) text += wrapped(untold_text(untold), "  - ", "    ");
  if (!report.contradictions.empty()) text += "\nNOTES THAT CONTRADICT EACH OTHER\n";
  for (const Contradiction& one : report.contradictions)
    text += wrapped(contradiction_text(one), "  - ", "    ");
  return text;
}

}  // namespace brimwright::reports
