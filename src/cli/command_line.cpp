#include "cli/command_line.h"

#include "cli/help_text.h"
#include "cli/suggestions.h"
#include "cli/teaching.h"
#include "cli/version.h"
#include "units/shown_text.h"
#include "web/web.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <map>
#include <memory>

namespace brimwright::cli {
namespace {

const Completion json_files{.words = {}, .endings = {".json"}};
const Completion moulds_and_meshes{
    .words = {}, .endings = {".json", ".stl", ".obj", ".ply", ".off", ".3mf", ".gltf", ".glb"}};
const Completion folders{.words = {}, .endings = {}, .folders = true};
Completion ending(const char* one) { return {.words = {}, .endings = {one}}; }

/// What stands in an option's value: "A4|Letter" are the two words.
Completion words_in(const std::string& value) {
  Completion takes;
  if (value.find('|') == std::string::npos) return takes;
  for (const std::string& word : CLI::detail::split(value, '|')) takes.words.push_back(word);
  return takes;
}

/// A FILE.svg ends so.
Completion takes_of(const std::string& value) {
  if (value.starts_with("FILE.")) return ending(value.c_str() + 4);
  if (value == "FOLDER") return folders;
  return words_in(value);
}

/// The parser with all commands, and what it puts the words into.
class Parser {
 public:
  Parser();
  Parser(const Parser&) = delete;
  Parser& operator=(const Parser&) = delete;

  CommandLine read(const std::vector<std::string>& arguments);
  Command described() const { return described(app_); }
  Command described(const CLI::App& app) const;

 private:
  using Text = std::optional<std::string>;

  CLI::App* command(const char* name, const char* what, Asked asked, const char* teaching);
  /// A value without a name.
  template <class Value>
  CLI::Option* argument(CLI::App& to, const char* name, Value& value, const char* what,
                        Completion takes);
  template <class Value>
  CLI::Option* option(CLI::App& to, const char* name, Value& value, const char* type,
                      const char* what, const char* group = "Options");
  void add_json(CLI::App& to);
  void add_library(CLI::App& to);
  void add_studio(CLI::App& to);
  void add_gauge();
  void add_gauge_files(CLI::App& gauge);
  void add_plan();
  void add_sheet();
  void add_quote();
  void add_csv(CLI::App& app, const char* what);
  void add_buy();
  void add_days();
  void add_note();
  void add_records();
  void add_learn();
  void add_stock();
  void add_stock_of_pieces(CLI::App& stock);
  void add_trail();
  void add_others();

  CommandOption described(const CLI::Option& option) const;
  [[noreturn]] void refuse(const CLI::ParseError& error) const;

  Words words_;
  CLI::App app_{about, "brimwright"};
  std::map<const CLI::Option*, Completion> takes_;
};

/// The help in our own layout.
class Help : public CLI::FormatterBase {
 public:
  explicit Help(const Parser& parser) : parser_(parser) {}
  std::string make_help(const CLI::App* app, std::string, CLI::AppFormatMode) const override {
    const bool is_all = app->get_parent() == nullptr;
    return help_text(parser_.described(*app),
                     is_all ? app->get_name() : "brimwright " + app->get_name());
  }

 private:
  const Parser& parser_;
};

CLI::App* Parser::command(const char* name, const char* what, Asked asked, const char* teaching) {
  CLI::App* added = app_.add_subcommand(name, what);
  added->footer(teaching);
  added->set_help_flag("-h,--help", "show this help");
  added->callback([this, asked] { words_.asked = asked; });
  return added;
}

template <class Value>
CLI::Option* Parser::argument(CLI::App& to, const char* name, Value& value, const char* what,
                              Completion takes) {
  CLI::Option* added = to.add_option(name, value, what);
  takes_[added] = std::move(takes);
  return added;
}

template <class Value>
CLI::Option* Parser::option(CLI::App& to, const char* name, Value& value, const char* type,
                            const char* what, const char* group) {
  CLI::Option* added = to.add_option(name, value, what)->type_name(type)->group(group);
  if constexpr (std::is_same_v<Value, std::vector<std::string>>) added->allow_extra_args(false);
  takes_[added] = takes_of(type);
  return added;
}

void Parser::add_json(CLI::App& to) {
  to.add_flag("--json", words_.json, "print one JSON document instead of text");
}

void Parser::add_library(CLI::App& to) {
  option(to, "--library", words_.library, "FOLDER", "another folder to look for files in");
}

void Parser::add_studio(CLI::App& to) {
  takes_[option(to, "--studio", words_.studio, "FILE",
                "the studio's file, instead of studio.json beside the run")] = json_files;
}

void Parser::add_gauge() {
  CLI::App& gauge = *command("gauge", "measure a mould", Asked::gauge, gauge_examples);
  auto& wish = words_.gauge;
  argument(gauge, "FILE", wish.file, "a mould file or a mesh; - reads a mould file from a pipe",
           moulds_and_meshes)
      ->required();
  option(gauge, "--depth", wish.depths, "LENGTH", "a depth to read off");
  option(gauge, "--batches-of", wish.batches_of, "FILE",
         "a run, whose pour line it is, or studio.json: compare with the batches recorded there");
  add_library(gauge);
  add_json(gauge);

  const char* mesh = "About a mesh";
  option(gauge, "--unit", wish.unit, "mm|cm|m|in", "unit of its numbers", mesh);
  option(gauge, "--role", wish.role, "cavity|body|skin",
         "what it is; asked for where it is not clear", mesh);
  option(gauge, "--up", wish.up, "AXIS", "which way is up: +x to -z, or 0.05,0,0.99", mesh);
  option(gauge, "--cavity", wish.cavity, "N", "the one meant, by its number, where they differ",
         mesh);
  gauge.add_flag("--on-board", wish.on_board, "stand it on a board, which closes it below")
      ->group(mesh);
  gauge
      .add_flag("--inspect", wish.inspect, "list its defects, and where they are; measure nothing")
      ->group(mesh);

  const char* fit = "Make it fit";
  option(gauge, "--fit-volume", wish.fit_volume, "VOLUME", "scale it to hold this", fit);
  option(gauge, "--fit-mass", wish.fit_mass, "MASS", "scale it to hold this, with --density", fit);
  option(gauge, "--density", wish.density, "DENSITY", "the batter's, such as \"1.01 g/ml\"", fit);
  gauge.add_flag("--fit-depth-only", wish.fit_depth_only, "change the depth, keep the outline")
      ->group(fit);

  const char* cast = "Cast a mould round it";
  option(gauge, "--cast-wall", wish.cast_wall, "LENGTH", "wall on each side", cast);
  option(gauge, "--cast-base", wish.cast_base, "LENGTH", "thickness of the base", cast);
  option(gauge, "--cast-density", wish.cast_density, "DENSITY", "of silicone or plaster", cast);
  gauge
      .add_flag("--cast-hung", wish.cast_hung,
                "the master hangs in the box, its top level with the silicone")
      ->group(cast);

  option(gauge, "--pour", wish.pour, "VOLUME",
         "how deep this much stands in one cavity; with --tilt, in the tilted mould",
         "Pour a volume");

  const char* tilt = "Tilt it and pour";
  option(gauge, "--tilt", wish.tilt, "ANGLE", "tilt the mould by this angle, such as \"12 deg\"",
         tilt);
  option(gauge, "--low-side", wish.low_side, "SIDE", "+x, +y, -x, -y or an angle; default: +x",
         tilt);
  option(gauge, "--mark", wish.mark, "LENGTH",
         "fill height, measured up the low wall, if not --pour", tilt);

  const char* embeds = "How many embeds fit";
  takes_[option(gauge, "--embed", wish.embed, "MOULD", "the embed: a mould file, cast full",
                embeds)] = json_files;
  option(gauge, "--cover", wish.cover, "LENGTH",
         "least batter between embed and wall, pour line, next embed", embeds);
  option(gauge, "--lying", wish.lying, "level|layered|free", "how they lie; default: free", embeds);
  add_gauge_files(gauge);
}

void Parser::add_gauge_files(CLI::App& gauge) {
  auto& wish = words_.gauge;
  const char* files = "Write files (- is standard output)";
  option(gauge, "--picture", words_.files.picture, "FILE.svg", "a drawing to scale, for paper",
         files);
  option(gauge, "--glb", words_.files.glb, "FILE.glb", "the filled cavity, for any 3D viewer",
         files);
  gauge.add_flag("--cut-open", wish.cut_open, "the GLB without its front half, to look inside")
      ->group(files);
  option(gauge, "--write", words_.files.write, "FILE.stl",
         "the cavity, scaled if it was made to fit", files);
  option(gauge, "--below-brim", wish.below_brim, "LENGTH", "headspace to leave below the brim",
         files);
}

void Parser::add_plan() {
  CLI::App& plan =
      *command("plan", "plan a run: every weight, both lye solutions, the cost of a piece",
               Asked::plan, plan_examples);
  auto& wish = words_.plan;
  argument(plan, "RUN", wish.file, "a run file; - reads it from a pipe", json_files)->required();
  plan.add_flag("--brief", wish.brief,
                "dangers and what to weigh on one screen, or one for each batch");
  option(plan, "--sell", wish.sell, "N", "saleable pieces wanted, instead of the file's number");
  option(plan, "--picture", words_.files.picture, "FILE.svg",
         "write a drawing of the poured cavity, to scale, with its layers");
  takes_[option(plan, "--piece", words_.files.piece, "FILE",
                "write the whole piece: FILE.svg from the front, to scale; FILE.glb in colour, "
                "for any 3D viewer; FILE.stl")] = {.words = {},
                                                   .endings = {".svg", ".glb", ".stl"}};
  plan.add_flag("--cut-open", wish.cut_open,
                "with --piece: .glb and .stl without their front half, to look inside");
  option(plan, "--label", words_.files.label, "FILE.txt",
         "write the draft of the label as plain text");
  option(plan, "--weighed", wish.weighed, "WHAT",
         "lye already weighed: what superfat comes out of it, and what corrects it, such as "
         "\"base NaOH 96 g\" or \"topping NaOH 30.5 g\"");
  option(plan, "--added", wish.added, "WHAT",
         "with --weighed: fats added to correct it, such as \"base olive 14 g\"");
  option(plan, "--batch", wish.batch, "N",
         "with --weighed: in which batch, where the run's batches differ");
  option(plan, "--purity", wish.purity, "WHAT",
         "the alkali's purity as bought, instead of the formula's: \"NaOH 97 %\" or \"KOH "
         "88 % to 92 %\"");
  option(plan, "--explain", wish.explain, "[FIGURE]",
         "how a figure is worked out, by its place in the JSON, such as pour.make_g; without a "
         "name their list")
      ->expected(0, 1)
      ->default_str("");
  add_library(plan);
  add_studio(plan);
  add_json(plan);
}

void Parser::add_sheet() {
  CLI::App& sheet =
      *command("sheet", "the run for the bench wall, on paper", Asked::sheet, sheet_examples);
  auto& wish = words_.sheet;
  argument(sheet, "FILE", wish.file, "a run or an order; - reads it from a pipe", json_files)
      ->required();
  option(sheet, "--html", words_.files.html, "FILE.html",
         "write one file that any browser shows and prints");
  option(sheet, "--pdf", words_.files.pdf, "FILE.pdf", "write a PDF");
  option(sheet, "--paper", wish.paper, "A4|Letter", "default: A4");
  option(sheet, "--sell", wish.sell, "N", "saleable pieces wanted, instead of the file's number");
  option(sheet, "--batch", wish.batch, "N",
         "the sheet of this batch alone; otherwise one for each size");
  sheet.add_flag("--days", wish.with_days, "first a page of when to make it, as days says");
  add_library(sheet);
  add_studio(sheet);
}

void Parser::add_csv(CLI::App& app, const char* what) {
  option(app, "--csv", words_.files.csv, "FILE.csv", what);
  option(app, "--csv-for", words_.csv_for, "comma|point",
         "numbers as \"1,5\" between semicolons, or as \"1.5\" (default)");
}

void Parser::add_quote() {
  CLI::App& quote =
      *command("quote", "what a piece costs, and what to ask for it", Asked::quote, quote_examples);
  auto& wish = words_.quote;
  argument(quote, "FILE", wish.file, "a run or an order; - reads it from a pipe", json_files)
      ->required();
  option(quote, "--sell", wish.sell, "N,N",
         "of a run: numbers of pieces, side by side; default: the file's");
  option(quote, "--times", wish.times, "N,N", "of an order: made so many times, side by side");
  option(quote, "--margin", wish.margin, "SHARE",
         "profit as a share of the price, such as \"40 %\"");
  option(quote, "--markup", wish.markup, "SHARE",
         "profit as a share of the cost, such as \"60 %\"");
  option(quote, "--price", wish.price, "AMOUNT", "a price that is set, such as \"6.50\"");
  option(quote, "--way", wish.way, "NAME", "only this one of the studio's ways of selling");
  option(quote, "--html", words_.files.html, "FILE.html", "write all of it as one page");
  option(quote, "--pdf", words_.files.pdf, "FILE.pdf", "write it as a PDF");
  option(quote, "--offer", words_.files.offer, "FILE.html|FILE.pdf",
         "write what a customer is to see: pieces and prices, no cost");
  option(quote, "--picture", words_.files.picture, "FILE.svg",
         "of a run: draw what a piece costs against the number made");
  add_csv(quote, "write all figures as a table");
  add_library(quote);
  add_studio(quote);
  add_json(quote);
}

void Parser::add_buy() {
  CLI::App& buy =
      *command("buy", "what to buy for runs together, at least cost", Asked::buy, buy_examples);
  argument(buy, "FILE", words_.buy.files, "a run or an order; repeatable", json_files)->required();
  buy.add_flag("--with-stock", words_.buy.with_stock,
               "of one run: how many pieces the shelf makes as it is, and what limits them");
  option(buy, "--html", words_.files.html, "FILE.html", "write the list as a page, to tick off");
  option(buy, "--pdf", words_.files.pdf, "FILE.pdf", "write it as a PDF");
  add_csv(buy, "write what is bought as a table");
  add_library(buy);
  add_studio(buy);
  add_json(buy);
}

void Parser::add_days() {
  CLI::App& days = *command("days", "when to make it: latest start, or the day to promise",
                            Asked::days, days_examples);
  auto& wish = words_.days;
  argument(days, "FILE", wish.files, "a run or an order; repeatable", json_files)->required();
  option(days, "--due", wish.due, "DATE", "the due day of all, such as 2026-12-20");
  option(days, "--from", wish.from, "DATE", "the day that stands for today; default: today");
  option(days, "--ics", words_.files.ics, "FILE.ics", "write the days as a calendar");
  takes_[option(days, "--since", wish.since, "FILE.ics",
                "the calendar written before: what is not done any more is cancelled")] =
      ending(".ics");
  option(days, "--alarm", wish.alarm, "TIME", "with --ics: an alarm on each day, such as 18:00");
  option(days, "--svg", words_.files.svg, "FILE.svg", "draw the days as a strip, to scale");
  add_csv(days, "write the days as a table");
  add_library(days);
  add_studio(days);
  add_json(days);
}

void Parser::add_note() {
  CLI::App& note = *command("note", "note what really happened to a batch, or tell what is noted",
                            Asked::note, note_examples);
  auto& wish = words_.note;
  argument(note, "RUN", wish.file, "a run file, or an order whose lines are poured together",
           json_files)
      ->required();
  option(note, "--batch", wish.batch, "N", "which of the run's batches; alone: all its blanks");
  option(note, "--together", wish.together, "WORD",
         "of an order: the base of the lines that have this word");
  option(note, "--batch-code", wish.batch_code, "CODE", "the batch of this code, instead");
  option(note, "--set", wish.set, "KEY=VALUE",
         "note a value, such as base.made=\"1766 g\"; KEY= takes it back; repeatable");
  takes_[option(note, "--notes", wish.notes, "FILE", "note the values of a file")] = json_files;
  option(note, "--confirmed", wish.confirmed, "VALUE",
         "this value was asked about and is so; repeatable");

  const char* begin = "Begin a batch";
  note.add_flag("--begin", wish.begin, "its lye is mixed: freeze its plan and give it a code")
      ->group(begin);
  option(note, "--on", wish.on, "DATE", "with --begin: the day, such as 2026-12-01; default: today",
         begin);
  option(note, "--code", wish.code, "CODE",
         "your own code for it; without --begin another for one that is begun", begin);
  note.add_flag("--reserve", wish.reserve, "give out its code before, for sheet and label")
      ->group(begin);
  note.add_flag("--again", wish.again, "for another making of a batch that was begun")
      ->group(begin);
  option(note, "--lot", wish.lots, "WHAT=CODE",
         "with --begin: take this from that lot, such as olive=OL-12; repeatable", begin);
  option(note, "--beyond-stock", wish.beyond_stock, "CODE",
         "with --begin: take more of that lot than is recorded as left; repeatable", begin);
  add_library(note);
  add_studio(note);
  add_json(note);
}

void Parser::add_records() {
  CLI::App& records = *command("records", "what a folder's records hold; export, import, back up",
                               Asked::records, records_examples);
  auto& wish = words_.records;
  argument(records, "FOLDER", wish.folder, "the folder of the runs", folders)->required();
  option(records, "--export", words_.files.records, "FILE.json", "write everything as JSON");
  option(records, "--import", wish.import, "FILE.json",
         "begin the records of a folder that has none with what was exported");
  option(records, "--backup", wish.backup, "FILE.sqlite",
         "write a whole copy, a file that is not there yet");
  add_json(records);
}

void Parser::add_learn() {
  CLI::App& learn =
      *command("learn", "what batches tell for the next plan", Asked::learn, learn_examples);
  auto& wish = words_.learn;
  argument(learn, "FILE", wish.file, "a run, or studio.json for the batches of all runs",
           json_files)
      ->required();
  option(learn, "--take", wish.take, "FIGURE",
         "write this figure where a typed one would stand, in the file that has it");
  option(learn, "--undo", wish.undo, "FIGURE", "write again what stood there before");
  option(learn, "--picture", words_.files.picture, "FILE.svg",
         "draw plan against actual over the days");
  option(learn, "--year", wish.year, "YEAR",
         "with --picture: that year, each batch against its own plan");
  add_library(learn);
  add_studio(learn);
  add_json(learn);
}

void Parser::add_stock() {
  CLI::App& stock = *command("stock", "what is there of lots and pieces; record what came and went",
                             Asked::stock, stock_examples);
  auto& wish = words_.stock;
  argument(stock, "FILE", wish.file, "the studio's file, or its folder", json_files)->required();
  const char* lots = "A lot";
  option(stock, "--bought", wish.bought, "MATERIAL", "a lot that came", lots);
  option(stock, "--made", wish.made, "MATERIAL", "one you made: lye solution, a blend", lots);
  option(stock, "--of", wish.of, "LOT=AMOUNT", "with --made: what of which lot is in it", lots);
  option(stock, "--pack", wish.pack, "AMOUNT", "what one pack holds, such as \"5 kg\"", lots);
  option(stock, "--packs", wish.packs, "N", "how many packs; default: 1", lots);
  option(stock, "--price", wish.price, "AMOUNT", "of one pack, such as \"27.50 EUR\"", lots);
  option(stock, "--seller", wish.seller, "NAME", "who sold it", lots);
  option(stock, "--lot", wish.lot, "CODE", "the supplier's code; default: one of your own", lots);
  option(stock, "--best-before", wish.best_before, "DATE", "as it is printed on it", lots);
  option(stock, "--counted", wish.counted, "LOT=AMOUNT", "what is left of a lot, as counted", lots);
  stock
      .add_flag("--take-have", wish.take_have,
                "make lots of what the studio's \"have\" lists, once")
      ->group(lots);
  add_stock_of_pieces(stock);
  stock.add_flag("--names", wish.with_names, "tell too what materials and sellers are called here");
  option(stock, "--on", wish.on, "DATE", "the day it happened; default: today");
  option(stock, "--why", wish.why, "WORDS", "the reason, kept with it");
  option(stock, "--confirmed", wish.confirmed, "VALUE", "a value that was asked about is meant");
  add_library(stock);
  add_studio(stock);
  add_json(stock);
}

void Parser::add_stock_of_pieces(CLI::App& stock) {
  auto& wish = words_.stock;
  const char* pieces = "Pieces of a batch";
  option(stock, "--sold", wish.sold, "BATCH=N", "sold, such as 2026-12-01A=12", pieces);
  takes_[option(stock, "--order", wish.order, "FILE", "the order that they are for", pieces)] =
      json_files;
  option(stock, "--for", wish.whom, "WORDS", "for whom, where there is no order's file", pieces);
  option(stock, "--given", wish.given, "BATCH=N", "given away", pieces);
  option(stock, "--spoilt", wish.spoilt, "BATCH=N", "spoilt since they were made", pieces);
  option(stock, "--counted-pieces", wish.counted_pieces, "BATCH=N",
         "how many are there, as counted", pieces);
}

void Parser::add_trail() {
  CLI::App& trail =
      *command("trail", "what a lot, a batch or an order is made of, and where it went",
               Asked::trail, trail_examples);
  argument(trail, "FILE", words_.trail.file, "the studio's file, or its folder", json_files)
      ->required();
  argument(trail, "WHAT", words_.trail.what,
           "a lot's code, a batch's code, an order's file, or for whom it was; \"batch A1\" "
           "where a lot is called A1 too",
           {})
      ->required();
  add_library(trail);
  add_studio(trail);
  add_json(trail);
}

void Parser::add_others() {
  CLI::App& list =
      *command("list", "show what is built in: moulds, fats, tips", Asked::list, list_examples);
  argument(list, "WHAT", words_.list.what, "moulds, fats or tips",
           {.words = {"moulds", "fats", "tips"}, .endings = {}});
  argument(list, "NAME", words_.list.name, "one of them", {});
  add_json(list);

  CLI::App& tidy = *command("tidy", "rewrite files in today's version of their format", Asked::tidy,
                            tidy_examples);
  argument(tidy, "FILE", words_.tidy.files, "a file to rewrite; repeatable", json_files)
      ->required();
  add_library(tidy);
  add_studio(tidy);

  CLI::App& init = *command("init", "make a folder to begin in", Asked::init, init_examples);
  argument(init, "FOLDER", words_.init.folder, "a new or empty folder", folders)->required();

  CLI::App& serve =
      *command("serve", "plan in the browser, on this computer only", Asked::serve, serve_examples);
  argument(serve, "RUN", words_.server.run, "a run file to open", json_files);
  option(serve, "--port", words_.server.port, "N",
         "the port; default: one of the folder's own, or any that is free")
      ->check(CLI::Range(1, 65535).description(""));
  serve.add_flag("--no-browser", words_.no_browser, "only print the address");
  add_library(serve);
  add_studio(serve);

  CLI::App& completions =
      *command("completions", "print what lets a shell complete commands, or the manual page",
               Asked::completions, completions_examples);
  argument(completions, "SHELL", words_.shell, "bash, zsh or fish; or man for the manual page",
           {.words = {"bash", "zsh", "fish", "man"}, .endings = {}})
      ->required();
}

Parser::Parser() {
  app_.footer(examples);
  app_.set_help_flag("-h,--help", "show this help");
  app_.set_version_flag("--version", version_text, "show the version, and its libraries'");
  app_.require_subcommand(1);
  app_.formatter(std::make_shared<Help>(*this));  // before the commands, which take it over
  add_gauge();
  add_plan();
  add_sheet();
  add_quote();
  add_buy();
  add_days();
  add_note();
  add_records();
  add_learn();
  add_stock();
  add_trail();
  add_others();
  // Read by hand, before the others; it is here for who looks for it.
  command("help", "show the help of a command", Asked::list, "");
  // Started by serve for itself; nothing that anybody types, so no help shows it.
  command(web::worker_word, "", Asked::worker, "")->group("");
}

CommandOption Parser::described(const CLI::Option& option) const {
  CommandOption shown{.names = {},
                      .value = option.get_expected_max() == 0 ? "" : option.get_type_name(),
                      .what = option.get_description(),
                      .group = option.get_group() == "Options" ? "" : option.get_group(),
                      .takes = {},
                      .repeats = option.get_items_expected_max() > 1};
  for (const auto& name : option.get_snames()) shown.names.push_back("-" + name);
  for (const auto& name : option.get_lnames()) shown.names.push_back("--" + name);
  if (const auto at = takes_.find(&option); at != takes_.end()) shown.takes = at->second;
  return shown;
}

Command Parser::described(const CLI::App& app) const {
  Command shown{app.get_name(), app.get_description(), app.get_footer(), {}, {}, {}};
  while (shown.what.ends_with('\n')) shown.what.pop_back();
  for (const CLI::Option* option : app.get_options()) {
    if (!option->get_positional()) {
      shown.options.push_back(described(*option));
      continue;
    }
    const auto at = takes_.find(option);
    shown.arguments.push_back({option->get_name(true), option->get_description(),
                               at == takes_.end() ? Completion() : at->second,
                               option->get_required(), option->get_items_expected_max() > 1});
  }
  if (shown.name == "help")
    shown.arguments.push_back({"COMMAND", "one of the commands", {}, false, false});
  for (const CLI::App* below : app.get_subcommands([](const CLI::App*) { return true; }))
    if (!below->get_group().empty()) shown.commands.push_back(described(*below));
  return shown;
}

/// CLI11 words its complaints over several lines; a maker gets one.
std::string one_line(std::string text) {
  std::replace(text.begin(), text.end(), '\n', ' ');
  while (!text.empty() && text.back() == ' ') text.pop_back();
  constexpr std::size_t longest = 600;  // it quotes what was typed
  return shortened(text, longest);
}

void Parser::refuse(const CLI::ParseError& error) const {
  const auto parsed = app_.get_subcommands();
  const CLI::App& in = parsed.empty() ? app_ : *parsed.front();
  const std::string help = "brimwright " + (parsed.empty() ? "" : in.get_name() + " ") + "--help";
  // A slip in an option's name is the cause of whatever else is then missing.
  for (const std::string& left : in.remaining()) {
    if (left.size() < 2 || left[0] != '-') continue;
    const std::string name = left.substr(0, left.find('='));
    throw UserError({"command line", name}, "is not an option here",
                    meant(name, names_of(described(in).options), help + " shows them all"));
  }
  throw UserError({"command line", ""}, one_line(error.what()), help + " shows how");
}

CommandLine Parser::read(const std::vector<std::string>& arguments) {
  std::ostringstream told;
  try {
    // CLI11 takes the words last first.
    app_.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
  } catch (const CLI::Success& wanted) {  // --help and --version
    app_.exit(wanted, told, told);
    return {.words = {}, .told = told.str()};
  } catch (const CLI::ParseError& error) {
    refuse(error);
  }
  return {.words = words_};
}

void refuse_unknown_command(const std::string& typed) {
  if (typed.starts_with("-") || typed == web::worker_word) return;
  const auto known = names_of(all_commands().commands);
  if (std::find(known.begin(), known.end(), typed) != known.end()) return;
  throw UserError({"command line", ""}, "\"" + typed + "\" is not a command",
                  meant(typed, known, "brimwright --help lists them"));
}

}  // namespace

Command all_commands() { return Parser().described(); }

CommandLine read_command_line(const std::vector<std::string>& arguments) {
  std::vector<std::string> asked = arguments;
  if (!asked.empty()) refuse_unknown_command(asked.front());
  if (!asked.empty() && asked.front() == "help") {
    asked.erase(asked.begin());
    if (!asked.empty()) refuse_unknown_command(asked.front());
    asked.emplace_back("--help");
  }
  if (asked.empty()) asked = {"--help"};
  return Parser().read(asked);
}

}  // namespace brimwright::cli
