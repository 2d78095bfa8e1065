#include "cli/run.h"

#include "cli/option_terms.h"
#include "cli/outputs.h"
#include "cli/version.h"
#include "service/service.h"
#include "units/shown_text.h"
#include "web/web.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <filesystem>

namespace brimwright::cli {
namespace {

constexpr auto about =
    "From a mould to weighed soap ingredients: measures a mould, turns its volume into\n"
    "base, topping and decoration for a run of pieces, and works out every weight, both\n"
    "lyes and the material cost of a piece.\n";

constexpr auto examples =
    "Examples\n"
    "  brimwright list moulds\n"
    "  brimwright gauge moulds/low_bowl.json\n"
    "  brimwright gauge cup.stl --unit mm --role cavity --depth \"30 mm\"\n"
    "  brimwright plan examples/spring_cups.run.json\n"
    "  brimwright plan examples/spring_cups.run.json --sell 40 --json\n"
    "  brimwright sheet examples/spring_cups.run.json --pdf spring.pdf\n"
    "\n"
    "Each command has its own --help. Quantities carry their unit: \"5 mm\", \"2 1/4 in\",\n"
    "\"2 oz\" (mass), \"2 fl oz\" (US volume), \"49 °C\".\n"
    "Exit status: 0 done, 1 the input wants mending, 2 a fault of the program.\n";

constexpr auto gauge_examples =
    "FILE is a mould file (.json) or a mesh (.stl .obj .ply .off .3mf .gltf .glb): the\n"
    "hollow itself or a finished piece (cavity), a mould with its pockets (body), or a\n"
    "mould's inner surface, open above (skin); which is asked where its shape does not tell.\n"
    "Broken meshes are mended where that is sound, and each mend is told.\n"
    "\n"
    "Examples\n"
    "  brimwright gauge moulds/fluted_cup_small.json\n"
    "  brimwright gauge tray.stl --unit mm\n"
    "  brimwright gauge hollow.stl --unit in --up +y --depth \"1 1/2 in\"\n"
    "  brimwright gauge moulds/round_cup.json --fit-mass \"95 g\" --density \"1.01 g/ml\"\n"
    "  brimwright gauge moulds/pebble.json --cast-wall \"10 mm\" --cast-base \"12 mm\"\n"
    "  brimwright gauge moulds/twisted_cup.json --pour \"61.5 ml\"\n"
    "  brimwright gauge moulds/plain_bar.json --prop \"12 deg\" --mark \"18 mm\"\n"
    "  brimwright gauge moulds/twisted_cup.json --picture cup.svg --below-brim \"6 mm\"\n"
    "  brimwright gauge moulds/loaf_short.json --embed moulds/marble_tray.json --cover \"6 mm\"\n";

constexpr auto plan_examples =
    "RUN is a run file (.json) that names its mould and formulas. Shown are the pieces to\n"
    "make, every ingredient of base and topping, both lyes with their effective superfat,\n"
    "decoration, dust, and the material cost of a piece.\n"
    "\n"
    "Examples\n"
    "  brimwright plan examples/spring_cups.run.json\n"
    "  brimwright plan examples/spring_cups.run.json --sell 60\n"
    "  brimwright plan examples/spring_cups.run.json --picture pour.svg\n"
    "  brimwright plan examples/spring_cups.run.json --piece piece.svg --piece piece.glb\n"
    "  brimwright plan examples/spring_cups.run.json --label label.txt\n"
    "  brimwright plan examples/plain_bars.run.json --weighed \"base NaOH 140 g\" --purity \"NaOH "
    "97 "
    "%\"\n"
    "  brimwright plan orders/may.json --library ~/soap/moulds --json > may_plan.json\n";

constexpr auto sheet_examples =
    "The run for the bench, in the order of the hands: the day before, pour, pipe, perch, and\n"
    "blanks for what really happened. Weights can be read from two metres; the pour line is\n"
    "drawn at true size, with a bar of 50 mm to check it. With neither --html nor --pdf the\n"
    "HTML goes to standard output. Print at 100 %, not \"fit to page\".\n"
    "\n"
    "Examples\n"
    "  brimwright sheet examples/spring_cups.run.json --pdf spring.pdf\n"
    "  brimwright sheet examples/spring_cups.run.json --pdf spring.pdf --paper Letter\n"
    "  brimwright sheet examples/spring_cups.run.json --pdf second.pdf --batch 2\n"
    "  brimwright sheet examples/spring_cups.run.json --sell 60 > spring.html\n";

constexpr auto serve_examples =
    "The page is opened in your browser and answered on this computer alone. It works in the\n"
    "folder of RUN, or in the current one; saving there keeps the same files that the other\n"
    "commands read. Shipped examples are saved as copies.\n"
    "\n"
    "Examples\n"
    "  brimwright serve\n"
    "  brimwright serve orders/may.run.json\n"
    "  brimwright serve --port 8080 --no-browser\n";

constexpr auto list_examples =
    "With a name, everything known of that one and where it is from.\n"
    "\n"
    "Examples\n"
    "  brimwright list moulds\n"
    "  brimwright list fats\n"
    "  brimwright list fats coconut\n"
    "  brimwright list tips\n";

constexpr auto tidy_examples =
    "FILE is a run, a formula, a mould or a file of tips. Keys that have another name today are\n"
    "renamed, and everything else stays as you wrote it. A file with a mistake in it is not\n"
    "touched, and then no other is either.\n"
    "\n"
    "Examples\n"
    "  brimwright tidy may.run.json\n"
    "  brimwright tidy *.json moulds/*.json\n";

constexpr auto init_examples =
    "The folder gets a studio.json for what is the same in every run, a mould, a formula and a\n"
    "run. Nothing in them is guessed: each blank says what goes there and how to measure it.\n"
    "\n"
    "Examples\n"
    "  brimwright init soap\n"
    "  brimwright plan soap/first.run.json\n";

/// What the words on the command line come to.
struct Words {
  service::GaugeRequest gauge;
  service::PlanRequest plan;
  service::ListRequest list;
  service::SheetRequest sheet;
  service::TidyRequest tidy;
  service::InitRequest init;
  OutputWords files;
  web::ServerSettings server;
  std::vector<std::string> library;
  std::string studio;
  bool json = false, no_browser = false, is_worker = false;
};

void add_common(CLI::App& command, Words& words, const char* teaching) {
  command.add_flag("--json", words.json, "print one JSON document instead of text");
  command.footer(teaching);
}

void add_library(CLI::App& command, Words& words) {
  command.add_option("--library", words.library, "a further folder files may be named from")
      ->type_name("FOLDER")
      ->allow_extra_args(false);
}

void add_studio(CLI::App& command, Words& words) {
  command
      .add_option("--studio", words.studio,
                  "the studio's file, instead of studio.json beside the run")
      ->type_name("FILE");
}

void add_text(CLI::App& command, const char* name, std::optional<std::string>& value,
              const char* type, const char* what, const char* group) {
  command.add_option(name, value, what)->type_name(type)->group(group);
}

CLI::App* add_gauge(CLI::App& app, Words& words) {
  CLI::App* gauge = app.add_subcommand("gauge", "measure a mould");
  auto& wish = words.gauge;
  gauge->add_option("FILE", wish.file, "a mould file or a mesh")->required();
  gauge->add_option("--depth", wish.depths, "a depth to read off; repeatable")
      ->type_name("LENGTH")
      ->allow_extra_args(false);
  add_library(*gauge, words);
  add_common(*gauge, words, gauge_examples);

  const char* mesh = "About a mesh";
  add_text(*gauge, "--unit", wish.unit, "UNIT", "unit of its numbers: mm, cm, m or in", mesh);
  add_text(*gauge, "--role", wish.role, "ROLE",
           "cavity, body or skin; asked for where it is not clear", mesh);
  add_text(*gauge, "--up", wish.up, "AXIS", "which way is up: +x to -z, or 0.05,0,0.99", mesh);
  add_text(*gauge, "--cavity", wish.cavity, "N", "the one meant, by its number, where they differ",
           mesh);
  gauge->add_flag("--on-board", wish.on_board, "stand it on a board, which closes it below")
      ->group(mesh);
  gauge
      ->add_flag("--inspect", wish.inspect, "list its defects, and where they are; measure nothing")
      ->group(mesh);

  const char* fit = "Make it fit";
  add_text(*gauge, "--fit-volume", wish.fit_volume, "VOLUME", "scale it to hold this", fit);
  add_text(*gauge, "--fit-mass", wish.fit_mass, "MASS", "scale it to hold this, with --density",
           fit);
  add_text(*gauge, "--density", wish.density, "DENSITY", "the batter's, such as \"1.01 g/ml\"",
           fit);
  gauge->add_flag("--fit-depth-only", wish.fit_depth_only, "change the depth, keep the outline")
      ->group(fit);

  const char* cast = "Cast a mould round it";
  add_text(*gauge, "--cast-wall", wish.cast_wall, "LENGTH", "wall on each side", cast);
  add_text(*gauge, "--cast-base", wish.cast_base, "LENGTH", "thickness of the base", cast);
  add_text(*gauge, "--cast-density", wish.cast_density, "DENSITY", "of silicone or plaster", cast);
  gauge->add_flag("--cast-hung", wish.cast_hung, "the master hangs, its top at the surface")
      ->group(cast);

  const char* pour = "Pour a volume";
  add_text(*gauge, "--pour", wish.pour, "VOLUME",
           "how deep this much stands in one cavity; with --prop, in the propped mould", pour);

  const char* prop = "Prop it up and pour";
  add_text(*gauge, "--prop", wish.prop, "ANGLE", "how far it is tilted, such as \"12 deg\"", prop);
  add_text(*gauge, "--low-side", wish.low_side, "SIDE",
           "+x, +y, -x, -y or an angle; +x if not said", prop);
  add_text(*gauge, "--mark", wish.mark, "LENGTH", "poured so far up the low wall, if not --pour",
           prop);

  const char* embeds = "Embeds: how many fit";
  add_text(*gauge, "--embed", wish.embed, "MOULD", "the embed: a mould file, cast full", embeds);
  add_text(*gauge, "--cover", wish.cover, "LENGTH", "batter round each, to wall, top and next one",
           embeds);
  add_text(*gauge, "--lying", wish.lying, "WAY", "level, layered or free; free if not said",
           embeds);

  const char* files = "Write files";
  add_text(*gauge, "--picture", words.files.picture, "FILE.svg", "a drawing to scale, for paper",
           files);
  add_text(*gauge, "--glb", words.files.glb, "FILE.glb", "the filled cavity, for any 3D viewer",
           files);
  gauge->add_flag("--cut-open", wish.cut_open, "the GLB without its front half, to look inside")
      ->group(files);
  add_text(*gauge, "--write", words.files.write, "FILE.stl",
           "the cavity, scaled if it was made to fit", files);
  add_text(*gauge, "--below-brim", wish.below_brim, "LENGTH",
           "the pour line, for fit, embeds and files", files);
  return gauge;
}

CLI::App* add_plan(CLI::App& app, Words& words) {
  CLI::App* plan =
      app.add_subcommand("plan", "plan a run: every weight, both lyes, the cost of a piece");
  plan->add_option("RUN", words.plan.file, "a run file")->required();
  plan->add_option("--sell", words.plan.sell,
                   "saleable pieces wanted, instead of the file's number")
      ->type_name("N");
  plan->add_option("--picture", words.files.picture,
                   "write a drawing of the poured cavity, to scale, with its layers")
      ->type_name("FILE.svg");
  plan->add_option("--piece", words.files.piece,
                   "write the whole piece: FILE.svg from the front, to scale; FILE.glb in colour, "
                   "for any 3D viewer; FILE.stl; repeatable")
      ->type_name("FILE")
      ->allow_extra_args(false);
  plan->add_flag("--cut-open", words.plan.cut_open,
                 "with --piece: .glb and .stl without their front half, to look inside");
  plan->add_option("--label", words.files.label, "write the draft of the label as plain text")
      ->type_name("FILE.txt");
  plan->add_option("--weighed", words.plan.weighed,
                   "lye already weighed: what superfat comes out of it, and what mends it, such as "
                   "\"base NaOH 96 g\" or \"topping NaOH 30.5 g\"; repeatable")
      ->type_name("WHAT")
      ->allow_extra_args(false);
  plan->add_option("--added", words.plan.added,
                   "with --weighed: fats added to mend it, such as \"base olive 14 g\"; repeatable")
      ->type_name("WHAT")
      ->allow_extra_args(false);
  plan->add_option("--batch", words.plan.batch,
                   "with --weighed: in which batch, where the run's batches differ")
      ->type_name("N");
  plan->add_option(
          "--purity", words.plan.purity,
          "the alkali's purity as bought, instead of the formula's: \"NaOH 97 %\" or \"KOH "
          "88 % to 92 %\"; repeatable")
      ->type_name("WHAT")
      ->allow_extra_args(false);
  plan->add_option("--explain", words.plan.explain,
                   "how a figure comes about, by its place in the JSON, such as pour.make_g; "
                   "without a name their list")
      ->type_name("[FIGURE]")
      ->expected(0, 1)
      ->default_str("");
  add_library(*plan, words);
  add_studio(*plan, words);
  add_common(*plan, words, plan_examples);
  return plan;
}

CLI::App* add_sheet(CLI::App& app, Words& words) {
  CLI::App* sheet = app.add_subcommand("sheet", "the run for the bench wall, on paper");
  auto& wish = words.sheet;
  sheet->add_option("RUN", wish.file, "a run file")->required();
  const auto add = [&](const char* name, std::optional<std::string>& value, const char* type,
                       const char* what) { sheet->add_option(name, value, what)->type_name(type); };
  add("--html", words.files.html, "FILE.html", "write one file that any browser shows and prints");
  add("--pdf", words.files.pdf, "FILE.pdf", "write a PDF");
  add("--paper", wish.paper, "PAPER", "A4 or Letter; A4 if not said");
  add("--sell", wish.sell, "N", "saleable pieces wanted, instead of the file's number");
  add("--batch", wish.batch, "N", "the sheet of this batch alone; otherwise one for each size");
  add_library(*sheet, words);
  add_studio(*sheet, words);
  sheet->footer(sheet_examples);
  return sheet;
}

CLI::App* add_list(CLI::App& app, Words& words) {
  CLI::App* list = app.add_subcommand("list", "show what ships: moulds, fats, tips");
  list->add_option("WHAT", words.list.what, "moulds, fats or tips");
  list->add_option("NAME", words.list.name, "one of them");
  add_common(*list, words, list_examples);
  return list;
}

CLI::App* add_serve(CLI::App& app, Words& words) {
  CLI::App* serve = app.add_subcommand("serve", "plan in the browser, on this computer alone");
  serve->add_option("RUN", words.server.run, "a run file to open");
  serve
      ->add_option("--port", words.server.port,
                   "the port; one of the folder's own if not said, or any that is free")
      ->type_name("N")
      ->check(CLI::Range(1, 65535));
  serve->add_flag("--no-browser", words.no_browser, "only print the address");
  add_library(*serve, words);
  add_studio(*serve, words);
  serve->footer(serve_examples);
  return serve;
}

CLI::App* add_tidy(CLI::App& app, Words& words) {
  CLI::App* tidy = app.add_subcommand("tidy", "rewrite files in today's version of their format");
  tidy->add_option("FILE", words.tidy.files, "a file to rewrite; repeatable")->required();
  add_library(*tidy, words);
  add_studio(*tidy, words);
  tidy->footer(tidy_examples);
  return tidy;
}

CLI::App* add_init(CLI::App& app, Words& words) {
  CLI::App* init = app.add_subcommand("init", "make a folder to begin in");
  init->add_option("FOLDER", words.init.folder, "a new or empty folder")->required();
  init->footer(init_examples);
  return init;
}

/// Whatever stands in names and files, it is one line and no terminal obeys it.
void complain(std::ostream& err, const std::string& line) { err << on_one_line(line) << "\n"; }

/// What `work` gives; where it throws, it is said.
template <class Work>
int status_of(std::ostream& err, Work work) {
  try {
    return work();
  } catch (const UserError& error) {
    complain(err, error.what());
    return static_cast<int>(service::Status::wanting);
  } catch (const std::exception& error) {
    complain(err, std::string("a fault of brimwright itself, please report it: ") + error.what());
    return static_cast<int>(service::Status::fault);
  }
}

int served(Words& words, const std::string& shipped, std::ostream& out, std::ostream& err) {
  words.server.library = {shipped, words.library, words.studio};
  words.server.port_said_at = option_terms().place("port");
  if (!words.is_worker) return web::serve(words.server, !words.no_browser, out, err);
  if (!web::be_worker())
    complain(err, std::string("command line: ") + web::worker_word +
                      " is what brimwright serve starts for itself; type brimwright serve");
  return 1;
}

/// CLI11 words its complaints over several lines; a maker gets one.
std::string one_line(std::string text) {
  std::replace(text.begin(), text.end(), '\n', ' ');
  while (!text.empty() && text.back() == ' ') text.pop_back();
  constexpr std::size_t longest = 600;  // it quotes what was typed
  return shortened(text, longest);
}

void want(service::Request& request, const std::vector<service::WantedFile>& files) {
  if (auto* gauge = std::get_if<service::GaugeRequest>(&request.what)) gauge->files = files;
  if (auto* plan = std::get_if<service::PlanRequest>(&request.what)) plan->files = files;
  if (auto* sheet = std::get_if<service::SheetRequest>(&request.what)) sheet->files = files;
}

void make_folder(const std::string& folder) {
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error)
    throw UserError({folder, "", "cannot be made: " + error.message(),
                     "name a folder where you may write"});
}

/// Files first: what is printed tells of them.
int answered(service::Request request, const Words& words, const std::string& shipped,
             std::ostream& out, std::ostream& err, const std::function<void(double)>& progress) {
  const moulds::Library library{shipped, words.library, words.studio};
  const auto outputs = outputs_of(words.files);
  want(request, wanted(outputs));
  const auto reply =
      service::answer(request, library, {.progress = progress, .read = [&](const auto& read) {
                                           check_targets(outputs, read, library);
                                         }});
  if (reply.status == service::Status::done && !words.init.folder.empty())
    make_folder(words.init.folder);
  write(reply.files);
  // JSON has its own way to write control codes, and whoever reads it gets the names as they are.
  out << (words.json ? reply.document : for_terminal(reply.document));
  if (!reply.complaint.empty()) complain(err, reply.complaint);
  return static_cast<int>(reply.status);
}

}  // namespace

int run(const std::vector<std::string>& arguments, const std::string& shipped, std::ostream& out,
        std::ostream& err, const std::function<void(double)>& progress) {
  Words words;
  CLI::App app(about, "brimwright");
  app.footer(examples);
  app.set_version_flag("--version", std::string("brimwright ") + version);
  app.require_subcommand(1);
  const CLI::App* gauge = add_gauge(app, words);
  const CLI::App* plan = add_plan(app, words);
  const CLI::App* sheet = add_sheet(app, words);
  add_list(app, words);
  const CLI::App* tidy = add_tidy(app, words);
  const CLI::App* init = add_init(app, words);
  const CLI::App* serve = add_serve(app, words);
  // Started by serve for itself; nothing that anybody types, so no help shows it.
  const CLI::App* worker = app.add_subcommand(web::worker_word)->group("");
  try {
    // CLI11 takes the words last first.
    app.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
  } catch (const CLI::Success& wanted) {  // --help and --version
    app.exit(wanted, out, err);
    return 0;
  } catch (const CLI::ParseError& error) {
    complain(err, "command line: " + one_line(error.what()) + "; brimwright --help shows how");
    return 1;
  }

  words.is_worker = worker->parsed();
  if (serve->parsed() || words.is_worker)
    return status_of(err, [&] { return served(words, shipped, out, err); });
  service::Request request{.what = words.list,
                           .form = words.json ? service::Form::json : service::Form::text,
                           .terms = option_terms()};
  if (gauge->parsed()) request.what = words.gauge;
  if (plan->parsed()) request.what = words.plan;
  if (sheet->parsed()) request.what = words.sheet;
  if (tidy->parsed()) request.what = words.tidy;
  if (init->parsed()) request.what = words.init;
  return status_of(
      err, [&] { return answered(std::move(request), words, shipped, out, err, progress); });
}

}  // namespace brimwright::cli
