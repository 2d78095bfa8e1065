#include "service/pouring_orders.h"

#include "records/batches.h"
#include "records/records.h"
#include "runs/order_file.h"
#include "service/order_rest.h"
#include "service/ordered.h"
#include "service/ready_pieces.h"
#include "service/run_records.h"
#include "units/fields.h"
#include "units/shown_text.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <set>
#include <utility>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;
using records::Batch;
using records::Records;

/// Looked at as text, which costs little of a folder with hundreds of files.
bool may_pour_together(const std::string& text) {
  return text.find("brimwright.order/") != text.npos && text.find("\"together\"") != text.npos;
}

std::vector<std::string> may_be_orders(const std::string& folder) {
  std::vector<std::string> files;
  std::error_code none;
  for (const auto& entry : fs::directory_iterator(folder, none))
    if (entry.path().extension() == ".json" && entry.is_regular_file(none))
      files.push_back((folder == "." ? entry.path().filename() : entry.path()).string());
  std::sort(files.begin(), files.end());
  return files;
}

std::string text_or_nothing(const std::string& file) try {
  return text_of_file(file);
} catch (const UserError&) {
  return "";
}

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i)
    text += (i == 0 ? "" : i + 1 < names.size() ? ", " : " and ") + on_one_line(names[i]);
  return text;
}

class Looking {
 public:
  Looking(RunRecords run, std::string day, moulds::Library library)
      : run_(std::move(run)),
        day_(std::move(day)),
        library_(std::move(library)),
        path_(one_name_of((fs::path(run_.folder) / run_.file).string())) {
    library_.named.reset();
  }

  PouringOrders found() {
    for (const std::string& file : may_be_orders(run_.folder)) {
      const std::string text = text_or_nothing(file);
      if (may_pour_together(text)) look_into(file, text);
    }
    return std::move(found_);
  }

 private:
  void look_into(const std::string& file, const std::string& text) try {
    const Fields document = Fields::parse(text, file);
    if (!runs::is_order(document) || is_past(document) || !pours_the_run(document)) return;
    look_at(runs::read_order(Fields::parse(text, file), library_));
  } catch (const UserError& error) {
    found_.remarks.push_back({Severity::caution, std::string("It is not known whether an order "
                                                             "pours this run together with "
                                                             "others: ") +
                                                     error.what() + "."});
  }

  bool is_past(const Fields& document) const {
    return document.is_text("due") && document.text("due") < day_;
  }

  /// Read as a whole are those alone that do.
  bool pours_the_run(const Fields& document) const {
    const auto lines = document.objects("lines");
    return std::any_of(lines.begin(), lines.end(), [&](const Fields& line) {
      return line.has("together") && line.is_text("run") && may_be_the_run(line.text("run")) &&
             is_the_run(line);
    });
  }

  /// By its own name, or through a link: whatever else is named needs no looking for.
  bool may_be_the_run(const std::string& name) const {
    std::error_code none;
    return fs::path(name).filename() == fs::path(path_).filename() ||
           fs::is_symlink(fs::path(run_.folder) / name, none);
  }

  bool is_the_run(const Fields& line) const try {
    return library_.resolve(line.text("run"), line.place("run")) == path_;
  } catch (const UserError&) {
    return false;  // it is not there any more
  }

  void look_at(const runs::Order& order) {
    const auto own = std::find_if(order.lines.begin(), order.lines.end(),
                                  [&](const auto& line) { return line.run == path_; });
    const auto ready = ready_for(order, 1, ready_by(order, std::nullopt, day_, library_), library_);
    PouringOrder pouring{.file = order.file,
                         .whom_for = order.whom_for,
                         .word = own->together,
                         .others = others_left(order, *own, ready),
                         .number = {}};
    const auto its = static_cast<std::size_t>(own - order.lines.begin());
    if (pouring.others.empty() || ready.lines[its].to_make() == 0) return;
    const auto begun = begun_of(order, own->together);
    if (!begun.empty()) {
      pouring.number = left_to_begin(begun);
      if (!pouring.number) return;
    }
    found_.all.push_back(std::move(pouring));
  }

  std::vector<std::string> others_left(const runs::Order& order, const runs::OrderLine& own,
                                       const reports::ReadyOrder& ready) const {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
      const runs::OrderLine& line = order.lines[i];
      if (line.together == own.together && line.run != own.run && ready.lines[i].to_make() > 0)
        names.push_back(name_of(line));
    }
    return names;
  }

  std::string name_of(const runs::OrderLine& line) const try {
    return run_records(line.run, library_).name;
  } catch (const UserError&) {
    return fs::path(line.run).filename().string();
  }

  std::vector<Batch> begun_of(const runs::Order& order, const std::string& word) {
    if (!records_) records_ = Records::in(run_.folder);
    if (!records_) return {};
    return batches_of(*records_, poured_records(order, word, library_));
  }

  /// The first batch of the base that the run takes part in and that was not begun.
  std::optional<std::int64_t> left_to_begin(const std::vector<Batch>& begun) const {
    std::set<std::int64_t> numbers;
    for (const Batch& one : begun) numbers.insert(one.number);
    const Json plan = Json::parse(records::plan_of(*records_, begun.back()));
    const bool is_in_it = is_among(plan.at("batches"));
    for (const Json& size : plan.at("batches")) {
      if (is_in_it && !is_in(size)) continue;
      for (const auto number : size.at("numbers").get<std::vector<std::int64_t>>())
        if (!numbers.contains(number)) return number;
    }
    return std::nullopt;
  }

  bool is_in(const Json& size) const {
    const Json& lines = size.at("lines");
    return std::any_of(lines.begin(), lines.end(),
                       [&](const Json& line) { return line.at("run") == run_.name; });
  }

  /// It is not where the run has another name by now.
  bool is_among(const Json& sizes) const {
    return std::any_of(sizes.begin(), sizes.end(), [&](const Json& size) { return is_in(size); });
  }

  RunRecords run_;
  std::string day_;
  moulds::Library library_;
  std::string path_;
  std::optional<Records> records_;
  PouringOrders found_;
};

}  // namespace

PouringOrders pouring_orders(const std::string& file, const std::string& day,
                             const moulds::Library& library) {
  return Looking(run_records(file, library), day, library).found();
}

std::string pouring_words(const std::vector<PouringOrder>& orders) {
  const PouringOrder& first = orders.front();
  std::vector<std::string> more;
  for (std::size_t i = 1; i < orders.size(); ++i)
    more.push_back(fs::path(orders[i].file).filename().string());
  return (first.whom_for.empty() ? "an order" : "the order for " + on_one_line(first.whom_for)) +
         " pours this run together with " + listed(first.others) + " (" + first.word + ")" +
         (more.empty() ? "" : ", as " + listed(more) + " would") + ", and " +
         (first.number ? "batch " + std::to_string(*first.number) + " of that base" : "its base") +
         " has not been begun";
}

}  // namespace brimwright::service
