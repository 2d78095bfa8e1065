#pragma once

#include "moulds/library.h"
#include "units/user_error.h"
#include "web/http_exchange.h"
#include "web/worker_settings.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace brimwright::web {

struct ServerSettings {
  moulds::Library library;
  std::optional<std::string> run;  // the run to open; its folder is worked in
  std::string folder = ".";        // worked in where no run is given
  std::uint16_t port = 0;          // 0: the folder's own if free, else any that is
  Place port_said_at = {};         // for a complaint about it
  Limits limits = {};
  WorkerLimits worker = {};
  std::string program = "/proc/self/exe";  // started for the worker, as `brimwright serve-worker`
  /// Hears in a line when a worker died; may be empty. Called on a thread of the server's.
  std::function<void(const std::string&)> tell = {};
};

/// The page and what it asks, on 127.0.0.1.
///
/// Every request needs a Host of 127.0.0.1:PORT or localhost:PORT. The page's own files need no
/// more. Whatever begins with /api/ also needs the header `X-Bench-Key: TOKEN`, no Origin but the
/// address's own, and no Sec-Fetch-Site but same-origin. The token is new at each start and stands
/// behind the # of the address, which browsers send to nobody.
///
/// JSON in, JSON out, 4 MiB at most. Where the input wants mending the answer is 422 and
/// {"complaint": {"file", "field", "problem", "remedy", "line"}}, "line" being all of it in
/// one; one that asks for something has "asks" and "choices" too (desk/answers.h). All other
/// refusals (400 to 417, 421, 431, 503, 505, 507) and faults (500) have the same form.
///
///   GET  /  /page.js  /page.css ...   the page, gzipped
///   GET  /api/files                   {"folder", "open": FILE | null, "runs", "orders", "moulds",
///                                     "formulas", "fats", "tips", "meshes": [{"file", "name",
///                                     "note", "shipped"}], "cut": [{"folder", "looked_at": N}],
///                                     ...}: in a folder under "cut" there is more than those N
///                                     looked at, and files of it may be missing; with "makes_pdf"
///                                     and "imports_meshes", whether the helper programs for that
///                                     are installed. A file of the folder itself has "changed",
///                                     a time; a run of it also "made_on", "due", "pieces" and
///                                     "mould", what its mould is called, where there are any; an
///                                     order "due" and "pieces"; a fats or tips file "holds", the
///                                     names of what is in it; a run, formula, mould, fats or tips
///                                     file "used_by": [FILE]
///   GET  /api/file?file=F             {"file", "version", "text", "shipped"} of any JSON file
///                                     listed
///   PUT  /api/file                    {"file", "version": VERSION | null for a new one, "text",
///                                     "from": F, if it begins as a copy of a file elsewhere,
///                                     with "goes_on": true, if what is at the bench of F is the
///                                     copy's from now on} -> {"file", "version", "text"}, or 409
///                                     and {"file",
///                                     "version": V | null, "text", "complaint"} when it changed
///   POST /api/file/rename             {"file", "to"} -> {"file", "renamed_in": [FILE], "cut"}: of
///   a
///                                     run, formula, mould, fats or tips file that lies in the
///                                     folder; the files that name it name it anew, all or none.
///                                     With "cut": true there are files that were not looked at
///   POST /api/file/copy               {"file", "to"} -> {"file", "version", "text"}, a run's with
///                                     an id of its own
///   POST /api/file/remove             {"file", "even_so": true} -> {"removed": SECRET}, or 409 and
///                                     {"complaint", "used_by": [FILE]}, if others name it, unless
///                                     "even_so"
///   POST /api/file/restore            {"removed": SECRET} -> {"file"}; rename, copy and restore
///                                     answer 409 where another file has the name
///   GET  /api/removed                 {"removed": [{"removed": SECRET, "file", "kind", "name",
///                                     "removed_at", "kept_until"}]}: after that time it is
///                                     deleted when another file is removed
///   POST /api/removed/forget          {"removed": SECRET}: deletes it -> as /api/removed
///   GET  /api/changed?file:F=V&file:G=W ...[&run=F&bench=V
///                                     &record=V][&stock=V[&beside:F]...][&wait=S][&tab=T]
///                                     {"changed": {F: VERSION | null}, "unreadable": [G],
///                                     "bench", "record", "stock": VERSION}: those of the files
///                                     that are of another version than that, names of nothing that
///                                     may be read, and, if it is another, the version of what is
///                                     kept at the bench of "run", of what is recorded beside it,
///                                     and of what is in the folder or beside the files "beside:F";
///                                     at once when there are any, else after S (at most 20, else
///                                     20) seconds. A second one of the same T ends the first
///   POST /api/plan                    {"file", "run": {...}, "sell": N} -> what `plan PATH --json`
///                                     prints; with "run", of that document as though it stood
///                                     there
///   POST /api/quote                   {"file", "run": {...}, "sell": "12,24", "margin" | "markup"
///                                     | "price" | "way"}, or of an order {"file", "order": {...},
///                                     "times": "1,2", ...} -> what `quote PATH --json` prints
///   POST /api/gauge                   {"file", "mould": {...}, "unit", "depth": [...], ...} ->
///                                     what `gauge PATH --json` prints; see desk/request_reading.h
///   POST /api/list                    {"what", "name"} -> what `list WHAT NAME --json` prints
///   POST /api/document                {"kind": "picture" | "piece" | "glb" | "stl",
///                                     "plan": {...}},
///                                     {"kind": "sheet" | "sheet-pdf", "plan": {...}, "paper": "A4"
///                                     | "Letter"}, a run's or an order's, {"kind": "label",
///                                     "plan": {...}}, {"kind": "picture" | "glb" | "stl",
///                                     "gauge": {...}}, {"kind": "quote" | "quote-pdf" | "offer" |
///                                     "offer-pdf" | "picture", "quote": {...}} or {"kind": "list"
///                                     | "list-pdf" | "list-csv", "buy": {"files": [F]}} -> the
///                                     file's bytes; of a plan, "piece", "glb" and "stl" show the
///                                     whole piece; with "open": true -> {"address"}, at which a
///                                     browser opens it without the header, until eight more have
///                                     been made. "glb" and "stl" take "cut-open": true in what
///                                     they are of
///   GET  /paper/SECRET/NAME           such a document: with its own styles, running nothing
///   POST /api/mesh?name=cup.stl       the file's bytes, 200 MiB at most -> {"file": "upload:1",
///                                     "name", "bytes"}; good as "file" for /api/gauge and
///                                     /api/document until the server stops
///   POST /api/keep                    {"upload": "upload:1", "as": "cup.stl"} -> {"file"}: puts it
///                                     beside the runs; 409 if another file has the name
///
///   GET  /api/bench?run=F             {"batches": [B], "version": V, "complaints": [COMPLAINT]}:
///                                     the run's batches under way and finished, each B as frozen
///                                     by its first tick: {"id", "run": F, "run_id", "batch":
///                                     NUMBER, "begun_at", "finished_at", "ticks": {KEY: TIME},
///                                     "weigh_cup", "mark", "plan": {...}}; a finished one without
///                                     its "plan" where the answer would be too long. Files of the
///                                     bench that are damaged, or none of the program's, are
///                                     complained of; they are never written over
///   POST /api/bench/tick              {"run": F, "text": the run as typed, its text or {...},
///                                     "batch": NUMBER, "key", "done": true | false, "seen": MARK}
///                                     -> B. The first one plans the run, and freezes the answer;
///                                     409 where "seen" is no longer the mark of what is to be
///                                     weighed, or the batch is finished
///   POST /api/bench/weigh_cup         {"run", "text", "batch", "seen", "reading": "61 g" | null}
///                                     -> B
///   POST /api/bench/anew              {"run", "batch"}: puts the batch away, for another to begin
///   POST /api/bench/finish            {"run", "batch"}; both answer as /api/bench does
///
///   GET  /api/record?run=F[&batch=ID] {"version": V, "record": R, "poured_by": {"order": FILE,
///                                     "words"} | null}: R as `note PATH --json` prints it,
///                                     of all batches of the run whose record has begun, each with
///                                     "noted", how many of its blanks are filled in; "blanks" and
///                                     "cured" of the one with that id alone, or else of the last.
///                                     A built-in run has none. "poured_by" is an order beside it
///                                     that pours it together with others, as long as a batch of
///                                     that base waits. With "&together=WORD", F is an
///                                     order, and it is the base that its lines with that word are
///                                     poured from; so with "together" in what follows
///   POST /api/record/begin            {"run", "text", "batch": NUMBER, "seen": MARK, "code",
///                                     "again": true, "confirmed": [...], "lot": [...],
///                                     "beyond-stock": [...]} -> {"record": R} of that batch: the
///                                     record of the batch at the bench, which is frozen now where
///                                     it is not yet; asked again, the same. 409 where "seen" is
///                                     not its mark. With "together", without "text" and "seen":
///                                     {"act": ID of her own, ...}, frozen now
///   POST /api/record/note             {"run", "batch": ID, "act": ID of her own, "set": {KEY: TEXT
///   | null},
///                                     "seen": {KEY: TEXT | null}, "confirmed": [...], "code",
///                                     "beyond-stock": [...]} ->
///                                     {"record": R}: null takes back. With the id of an act
///                                     that was done it changes nothing; where something else than
///                                     "seen" is noted by now, it "asks" for "seen"
///
///   GET  /api/stock[?names]           {"version": V, "stock": S}: S as `stock FOLDER --json`
///   prints
///                                     it, of the folder itself
///   POST /api/stock/act               {"act": ID of her own, and stock's options without the
///                                     dashes in front: "bought", "pack", "counted": [...],
///                                     "sold": [...], "on", "confirmed": [...], ...; "seen":
///                                     {"g"} | {"pieces"}, what was in sight of the lot that is
///                                     counted, or of the batch whose pieces change} ->
///                                     {"stock": S} of what it touched. With the id of an act that
///                                     was done it changes nothing; where something else than
///                                     "seen" is there by now, it "asks" for "seen"
///   GET  /api/trail?of=CODE           {"version": V, "trail": T}: T as `trail FOLDER CODE --json`
///                                     prints it
///
/// What is kept at the bench lies in the folder's own `.brimwright`, on the disk before the answer.
/// PATH is the file's whole path, links followed; the folder of uploads is left out of whatever is
/// answered.
///
/// This process keeps the port, the key, what was sent and what was laid out, and looks into
/// nothing: all answers but those come from a worker (web/worker.h), a process of its own that is
/// started anew when it dies. The request that it died of is answered with status 500.
class Server {
 public:
  /// Binds the port. UserError for a run or folder that is not there or a port that is taken.
  explicit Server(const ServerSettings& settings);
  ~Server();
  Server(const Server&) = delete;
  Server& operator=(const Server&) = delete;

  std::uint16_t port() const;
  const std::string& token() const;
  std::string address() const;  ///< with the token: for the browser, not for a log

  /// Has the run planned that is likely to be opened first. Before run().
  void plan_ahead();
  /// Serves until stop() or a signal, and then as long as the grace for what is being answered.
  void run();
  void stop();  ///< from any thread
  void stop_at_signals();
  /// After run(): ends the worker, whatever it does, and removes what the page has sent.
  void clear_up();

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace brimwright::web
