#pragma once

#include "planning/measure_memory.h"
#include "units/complaint_facts.h"
#include "units/question.h"
#include "units/user_error.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace brimwright::service {

// What may be asked of the service, and what comes back.

/// What a file that is asked for shows.
enum class FileKind {
  picture,        // SVG: the cavity to scale, of a plan with its pour line and layers
  piece_picture,  // SVG: the whole piece from the front, to scale
  glb,            // of a gauge the filled cavity; of a plan the piece, a named coloured part each
  stl,            // of a gauge the cavity, scaled if it was made to fit; of a plan the piece
  label,          // the label's draft as plain text
  csv,            // of a purchase a line a pack; of a quote a line a figure
  html,           // the bench sheet; of a quote all of it
  pdf,
  offer,  // what a customer gets of a quote, with no cost in it, as HTML
  offer_pdf,
  calendar,  // of days, as iCalendar
  records,   // all of them, as JSON
};

/// A file to make; the reply calls it by `name`, which is looked at by nobody here.
struct WantedFile {
  FileKind kind;
  std::string name;
};
bool wants(const std::vector<WantedFile>& files, FileKind kind);

/// Measure a mould file or a mesh. What is asked is as typed; `unit`, `up`, `role` and `on_board`
/// go with a mesh and are refused with a mould file, which says them itself. `text` is a mould's
/// document to be read in place of what is in `file`, which need not be there. With `batches_of`
/// the ways in which a mould file was measured are told side by side, with what the batches say
/// that are recorded in the folder of that file; of a run, at its pour line.
struct GaugeRequest {
  std::string file;
  std::optional<std::string> text = {};
  std::optional<std::string> unit, up, role;
  bool on_board = false;
  bool inspect = false;                    // list the mesh's defects instead of measuring it
  std::optional<std::string> cavity = {};  // the number of the one meant, where they differ
  std::vector<std::string> depths;
  std::optional<std::string> batches_of = {};
  // Make it fit: a volume, or a mass with the batter's density; `below_brim` is kept free.
  std::optional<std::string> fit_volume, fit_mass, density, below_brim;
  bool fit_depth_only = false;
  // What it takes to cast a mould round it.
  std::optional<std::string> cast_wall, cast_base, cast_density;
  bool cast_hung = false;
  // A pour into the tilted mould.
  std::optional<std::string> tilt, low_side, mark, pour;
  // How many embeds fit in what is poured: a mould file, whose cavity filled is the embed.
  std::optional<std::string> embed, cover, lying;
  std::vector<WantedFile> files = {};  // picture, glb, stl
  bool cut_open = false;               // the GLB without its front half, capped
};

/// Plan a run; `sell` replaces the file's own number of pieces. `text` is a run to be planned as
/// though it stood in `file`, which need not be there. `weighed`, `added` and `purity` tell of lye
/// already weighed, as typed (lye_story_reading.h), in the batch of that number. With `explain` the
/// answer is not the plan but how its figures come about: the one of that name, or all where it is
/// empty.
struct PlanRequest {
  std::string file;
  std::optional<std::string> text = {};
  std::optional<std::string> sell;
  std::vector<WantedFile> files = {};  // picture, piece_picture, glb, stl, label
  bool cut_open = false;               // the solids without their front half, capped
  std::vector<std::string> weighed = {}, added = {}, purity = {};
  std::optional<std::string> batch = {};
  std::optional<std::string> explain = {};
  bool brief = false;  // as text: dangers and what to weigh, and no more
};

/// The sheet for the bench of a run. Where no file is wanted, the document is the HTML. `paper` is
/// A4 or Letter; A4 if not said, save that HTML then prints on either. `batch` is the number of the
/// one batch it is for; without it there is a sheet for each different batch, one after the other.
struct SheetRequest {
  std::string file;
  std::optional<std::string> text = {};
  std::optional<std::string> sell;
  std::optional<std::string> batch = {};
  std::optional<std::string> paper = {};
  std::vector<WantedFile> files = {};  // html, pdf
  std::string printed_at = {};         // as it is to stand on each page; may be empty
  bool with_days = false;              // first when it is made, from the day it is printed on
};

/// What a piece costs and what to ask for it, of a run or an order. `sell` is one number of pieces
/// of a run or several, "12,24,48", without it the file's own; `times` how often an order is made,
/// one number or several, "1,2,4". At most one of `margin`, `markup` and `price`, as typed, takes
/// the place of the studio's ways of selling; `way` names one of those, which alone is told then.
struct QuoteRequest {
  std::string file;
  std::optional<std::string> text = {};
  std::optional<std::string> sell, times, margin, markup, price, way;
  std::vector<WantedFile> files = {};  // csv, html, pdf, offer, offer_pdf, picture
  std::string printed_at = {};         // as it is to stand on each page; may be empty
  bool decimal_comma = false;          // in a table: "1,5" between semicolons
};

/// What ships: "moulds", "fats" or "tips", one of them by name, or everything in short.
struct ListRequest {
  std::optional<std::string> what;
  std::optional<std::string> name;
};

/// Rewrite files in today's version of their schemas.
struct TidyRequest {
  std::vector<std::string> files;
};

/// What to buy for several runs together, at least cost. With stock, of a single run also how far
/// what stands on the shelf reaches.
struct BuyRequest {
  std::vector<std::string> files;
  bool with_stock = false;
  std::vector<WantedFile> wanted = {};  // csv, html, pdf
  bool decimal_comma = false;           // in a table: "1,5" between semicolons
  std::string printed_at = {};          // as it is to stand on each page; may be empty
};

/// When to make runs and orders. `due` takes the place of their own due days; `from` is the day
/// that stands for today, and `today` what it is without. `since` names an earlier export of the
/// calendar, which `since_text` is where it is no file here, and `alarm` the time of day of its
/// alarms, "18:00". `printed_at` is a moment of iCalendar, in UTC.
struct DaysRequest {
  std::vector<std::string> files;
  std::optional<std::string> text = {};  // of the one file, in place of what is in it
  std::optional<std::string> due = {}, from = {}, since = {}, since_text = {}, alarm = {};
  std::string today = {};
  std::vector<WantedFile> wanted = {};  // calendar, csv, picture
  std::string printed_at = {};
  bool decimal_comma = false;  // in a table: "1,5" between semicolons
};

/// What batches tell of a run, or of all runs of a studio. `take` and `undo` name a figure to write
/// where a typed one would stand, or to take back from there; `today` is the day that is noted.
/// `year`, such as "2026", is the one that the picture is of, each batch against its own plan.
struct LearnRequest {
  std::string file;
  std::optional<std::string> take = {}, undo = {}, year = {};
  std::string today = {};
  std::vector<WantedFile> wanted = {};  // picture
};

/// Make a folder to begin in.
struct InitRequest {
  std::string folder;
};

/// Note what really happened to a batch of a run, in the records of the run's own folder, or to one
/// of the base that lines of an order are poured from (those whose word is `together`; it may be
/// left out where there is but one); with nothing to do, tell what is noted. `batch` is its number
/// in the run, or `batch_code` the code of one of its makings. `begin` freezes it and `reserve`
/// gives out its code before, `again` for another making of what was begun; `code` is hers in place
/// of the next one, or on its own another for a batch that is begun. Each of `set` is
/// "base.made=1766 g", without a value taken back, and `notes` names a file with more of them.
/// `confirmed` are values that were asked about. `lots` and `beyond_stock` are what begins with the
/// lots that it takes (lot_taking.h).
///
/// `now` is a moment with its offset, `today` its day, `program` the version. `act` is the asker's
/// own id of what is done, which changes nothing when it is done already.
struct NoteRequest {
  std::string file;
  std::optional<std::string> batch = {}, batch_code = {}, together = {};
  bool begin = false, again = false, reserve = false;
  std::optional<std::string> code = {}, on = {}, notes = {};
  std::vector<std::string> set = {}, confirmed = {}, lots = {}, beyond_stock = {};
  std::string now = {}, today = {}, program = {}, act = {};
};

/// What a folder's records hold in all. `import` names a file that they are begun from, and
/// `backup` one that a copy is written to; of `files` one may be wanted, the records as JSON.
struct RecordsRequest {
  std::string folder;
  std::optional<std::string> import = {}, backup = {};
  std::vector<WantedFile> files = {};  // records
};

/// What there is of lots and pieces in the folder of `file` (stock_place.h), or, with any of what
/// follows, an act that changes it, as typed. `bought` and `made` tell of one lot, with its `pack`
/// and, of one made, what it is `of`: "CO-117=500 g". `counted` is "CO-117=1.2 kg"; what became of
/// pieces is "2026-12-01A=12", those sold of an `order`'s file or for somebody. `take_have` counts
/// what the studio's "have" says as lots. `confirmed` are values that were asked about.
/// `with_names` asks what materials are called there.
///
/// `seen` is how much was in sight, in micrograms or pieces, of the one lot that is counted or the
/// one batch whose pieces change: where it is no longer so, nothing changes, and "seen" is asked.
/// `now` is a moment with its offset, `today` its day. `act` is the asker's own id of what is done,
/// which changes nothing when it is done already.
struct StockRequest {
  std::string file;
  std::optional<std::string> bought = {}, made = {};
  std::optional<std::string> pack = {}, packs = {}, price = {}, seller = {}, lot = {};
  std::optional<std::string> best_before = {}, on = {}, why = {}, order = {}, whom = {};
  std::vector<std::string> of = {}, counted = {};
  std::vector<std::string> sold = {}, given = {}, spoilt = {}, counted_pieces = {};
  bool take_have = false, with_names = false;
  std::vector<std::string> confirmed = {};
  std::optional<std::int64_t> seen = {};
  std::string now = {}, today = {}, act = {};
};

/// Where a lot, a batch's pieces or what an order got are from and went to: `what` is a lot's code,
/// a batch's, or an order's file, id or for whom it was; a file's name only unless `no_file`.
struct TrailRequest {
  std::string file, what;
  bool no_file = false;
  std::string today = {};
};

enum class Form { text, json };

/// Complaints and advice are worded in `terms`, those of whoever asks: a member is called as it is
/// here, with hyphens ("fit-mass"; a depth is "depth", a file of a gauge "picture", "glb" or "stl",
/// one of a piece "piece", what `list` is asked for "list").
struct Request {
  std::variant<GaugeRequest, PlanRequest, ListRequest, SheetRequest, QuoteRequest, BuyRequest,
               DaysRequest, TidyRequest, InitRequest, NoteRequest, RecordsRequest, LearnRequest,
               StockRequest, TrailRequest>
      what;
  Form form = Form::text;
  UserTerms terms = plain_terms();
};

enum class Status {
  done = 0,  // `document` and `files` answer
  wanting,   // `complaint` is one line of what wants mending, `wanting` has its parts
  fault,     // of this program, told in `complaint`
  not_yet,   // only where the library is to use nothing but remembered meshes: one has to be
             // measured first, which may take long; ask again without that
};

struct MadeFile {
  std::string name;
  std::string bytes;
};

struct Reply {
  Status status = Status::done;
  std::string document = {};
  std::vector<MadeFile> files = {};  // as wanted, in their order
  std::string complaint = {};
  UserError::Parts wanting = {};
  // Of a complaint that asks for something: the member that answers, and what may be said there.
  std::string asks = {};
  std::vector<Choice> choices = {};
  ComplaintFacts facts = {};
};

/// What was measured for earlier requests, which a program that answers many keeps.
using planning::MeasureMemory;

/// What a caller hears while it waits, and has kept. A command has nothing of it.
struct Caller {
  std::function<void(double)> progress = {};  // how far a search is, 0 to 1
  /// The files that the request was read from, before what takes long, and once more when there are
  /// others. What is thrown there ends the request.
  std::function<void(const std::vector<std::string>&)> read = {};
  MeasureMemory* memory = nullptr;

  void tell_read(const std::vector<std::string>& files) const {
    if (read) read(files);
  }
};

}  // namespace brimwright::service
