#pragma once

#include "cli/outputs.h"
#include "service/requests.h"
#include "web/web.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::cli {

enum class Asked {
  gauge,
  plan,
  sheet,
  quote,
  buy,
  days,
  learn,
  list,
  tidy,
  init,
  note,
  records,
  stock,
  trail,
  serve,
  worker,
  completions
};

/// What the words on the command line come to.
struct Words {
  Asked asked = Asked::list;
  service::GaugeRequest gauge;
  service::PlanRequest plan;
  service::ListRequest list;
  service::SheetRequest sheet;
  service::QuoteRequest quote;
  service::BuyRequest buy;
  service::DaysRequest days;
  service::LearnRequest learn;
  service::TidyRequest tidy;
  service::InitRequest init;
  service::NoteRequest note;
  service::RecordsRequest records;
  service::StockRequest stock;
  service::TrailRequest trail;
  OutputWords files;
  web::ServerSettings server;
  std::vector<std::string> library;
  std::string studio, shell;
  std::optional<std::string> csv_for;
  bool json = false, no_browser = false;
};

}  // namespace brimwright::cli
