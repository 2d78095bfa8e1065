#include "cli/run.h"

#include "cli/colours.h"
#include "cli/command_line.h"
#include "cli/complaint.h"
#include "cli/completions.h"
#include "cli/input_file.h"
#include "cli/man_page.h"
#include "cli/option_terms.h"
#include "cli/outputs.h"
#include "cli/suggestions.h"
#include "cli/version.h"
#include "service/service.h"
#include "units/present_moment.h"
#include "units/shown_text.h"
#include "web/web.h"

#include <algorithm>
#include <filesystem>

namespace brimwright::cli {
namespace {

/// What `work` gives; where it throws, it is said.
template <class Work>
int status_of(std::ostream& err, Voice voice, Work work) {
  try {
    return work();
  } catch (const UserError& error) {
    complain(err, voice, error.what(), error.parts());
    return static_cast<int>(service::Status::wanting);
  } catch (const std::exception& error) {
    complain_of_fault(err, voice,
                      std::string("Internal error in brimwright (your files are not at fault). "
                                  "Please report it: ") +
                          error.what());
    return static_cast<int>(service::Status::fault);
  }
}

/// --json counts even where something else on the command line is wrong.
Voice voice_of(const std::vector<std::string>& arguments) {
  const auto end = std::find(arguments.begin(), arguments.end(), "--");
  return std::find(arguments.begin(), end, "--json") == end ? Voice::text : Voice::json;
}

int served(Words& words, const std::string& shipped, std::ostream& out, std::ostream& err) {
  words.server.library = {shipped, words.library, words.studio};
  words.server.port_said_at = option_terms().place("port");
  if (words.asked == Asked::serve) return web::serve(words.server, !words.no_browser, out, err);
  if (!web::be_worker())
    throw UserError({"command line", ""},
                    std::string(web::worker_word) + " is what brimwright serve starts for itself",
                    "type brimwright serve");
  return 1;
}

std::string completed(const std::string& shell) {
  if (shell == "bash") return bash_completions(all_commands());
  if (shell == "zsh") return zsh_completions(all_commands());
  if (shell == "fish") return fish_completions(all_commands());
  if (shell == "man") return man_page(all_commands());
  throw UserError({"command line", ""}, "\"" + shell + "\" is not a shell known here",
                  meant(shell, {"bash", "zsh", "fish", "man"}, "say bash, zsh, fish or man"));
}

bool wants_decimal_comma(const Words& words) {
  const std::string mark = words.csv_for.value_or("point");
  const Place where = option_terms().place("csv-for");
  if (mark != "point" && mark != "comma")
    throw UserError(where, "\"" + mark + "\" is no way to write numbers", "give comma or point");
  if (words.csv_for && !words.files.csv)
    throw UserError(where, "does nothing alone", "give it together with --csv FILE.csv");
  return mark == "comma";
}

/// What is asked, with the file that it is about looked for, or read where it is sent.
service::Request request_of(Words& words, std::istream* in) {
  service::Request request{.what = words.list,
                           .form = words.json ? service::Form::json : service::Form::text,
                           .terms = option_terms()};
  const auto about = [&](auto& asked) {
    asked.text = taken_from(asked.file, in);
    request.what = asked;
  };
  if (words.asked == Asked::gauge) {
    if (!words.gauge.batches_of)
      words.gauge.batches_of = words.gauge.file;  // those that are recorded beside the mould
    about(words.gauge);
  }
  if (words.asked == Asked::plan) about(words.plan);
  if (words.asked == Asked::quote) {
    words.quote.printed_at = present_moment();
    words.quote.decimal_comma = wants_decimal_comma(words);
    about(words.quote);
  }
  if (words.asked == Asked::sheet) {
    words.sheet.printed_at = present_moment();
    about(words.sheet);
  }
  if (words.asked == Asked::buy) {
    words.buy.printed_at = present_moment();
    words.buy.decimal_comma = wants_decimal_comma(words);
    request.what = words.buy;
  }
  if (words.asked == Asked::days) {
    words.days.today = present_moment().substr(0, 10);
    words.days.printed_at = present_moment_in_utc();
    words.days.decimal_comma = wants_decimal_comma(words);
    request.what = words.days;
  }
  if (words.asked == Asked::note) {
    words.note.now = present_moment_with_offset();
    words.note.today = words.note.now.substr(0, 10);
    words.note.program = version;
    request.what = words.note;
  }
  if (words.asked == Asked::records) request.what = words.records;
  if (words.asked == Asked::learn) {
    words.learn.today = present_moment().substr(0, 10);
    request.what = words.learn;
  }
  if (words.asked == Asked::tidy) request.what = words.tidy;
  if (words.asked == Asked::init) request.what = words.init;
  if (words.asked == Asked::stock) {
    words.stock.now = present_moment_with_offset();
    words.stock.today = present_moment().substr(0, 10);
    request.what = words.stock;
  }
  if (words.asked == Asked::trail) {
    words.trail.today = present_moment().substr(0, 10);
    request.what = words.trail;
  }
  return request;
}

void want(service::Request& request, const std::vector<service::WantedFile>& files) {
  if (auto* gauge = std::get_if<service::GaugeRequest>(&request.what)) gauge->files = files;
  if (auto* plan = std::get_if<service::PlanRequest>(&request.what)) plan->files = files;
  if (auto* sheet = std::get_if<service::SheetRequest>(&request.what)) sheet->files = files;
  if (auto* quote = std::get_if<service::QuoteRequest>(&request.what)) quote->files = files;
  if (auto* days = std::get_if<service::DaysRequest>(&request.what)) days->wanted = files;
  if (auto* buy = std::get_if<service::BuyRequest>(&request.what)) buy->wanted = files;
  if (auto* all = std::get_if<service::RecordsRequest>(&request.what)) all->files = files;
  if (auto* learn = std::get_if<service::LearnRequest>(&request.what)) learn->wanted = files;
}

void make_folder(const std::string& folder) {
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error)
    throw UserError(
        {folder, "", "cannot be made: " + error.message(), "name a folder where you may write"});
}

/// JSON has its own way to write control codes, and whoever reads it gets the names as they are.
std::string shown(const service::Reply& reply, const Words& words, bool colours) {
  if (words.json) return reply.document;
  std::string text = for_terminal(reply.document);
  if (words.plan.brief && !text.empty())
    text += "The same without --brief shows all; brimwright sheet puts it on paper.\n";
  return colours ? coloured(text) : text;
}

/// Files first: what is printed tells of them.
int answered(Words& words, Voice voice, const Surroundings& around, std::ostream& out,
             std::ostream& err) {
  service::Request request = request_of(words, around.in);
  const moulds::Library library{around.shipped, words.library, words.studio};
  const auto outputs = outputs_of(words.files);
  want(request, wanted(outputs));
  const auto reply = service::answer(request, library,
                                     {.progress = around.progress, .read = [&](const auto& read) {
                                        check_targets(outputs, read, library);
                                      }});
  if (reply.status == service::Status::done && !words.init.folder.empty())
    make_folder(words.init.folder);
  write(reply.files, out);
  // A file that goes to standard output has it for itself.
  if (!is_to_standard_output(outputs)) out << shown(reply, words, around.colours);
  if (!reply.complaint.empty() && reply.status == service::Status::fault)
    complain_of_fault(err, voice, reply.complaint);
  else if (!reply.complaint.empty())
    complain(err, voice, reply.complaint, reply.wanting, reply.choices);
  return static_cast<int>(reply.status);
}

}  // namespace

int run(const std::vector<std::string>& arguments, const Surroundings& around, std::ostream& out,
        std::ostream& err) {
  const Voice voice = voice_of(arguments);
  return status_of(err, voice, [&] {
    auto [words, told] = read_command_line(arguments);
    if (!told && words.asked == Asked::completions) told = completed(words.shell);
    if (told) {
      out << *told;
      return 0;
    }
    if (words.asked == Asked::serve || words.asked == Asked::worker)
      return served(words, around.shipped, out, err);
    return answered(words, voice, around, out, err);
  });
}

}  // namespace brimwright::cli
