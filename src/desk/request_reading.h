#pragma once

#include "service/requests.h"
#include "units/fields.h"

#include <functional>
#include <string>

namespace brimwright::desk {

/// The path of the file that a request names; the second argument says whether its text came along,
/// so that the file itself need not be there.
using PathFor = std::function<std::string(const std::string& name, bool may_be_new)>;

/// Requests to the service as the page writes them, with UserError for an unknown or ill-formed
/// key. A number that the command line takes as a word may come as a number or as a text.
///
/// {"file", "run" or "order", "sell"}
service::PlanRequest plan_request(const Fields& fields, const PathFor& path_for);
/// {"file", "mould", and the long names of gauge's options without the dashes in front: "unit",
/// "depth": [...], "fit-volume", "cast-hung": true, ...}; those that write files are not among
/// them.
service::GaugeRequest gauge_request(const Fields& fields, const PathFor& path_for);
/// {"file", "run" or "order", "sell": "12,24" or of an order "times": "1,2", and at most one of
/// "margin", "markup", "price" and "way"}
service::QuoteRequest quote_request(const Fields& fields, const PathFor& path_for);
/// {"files": [...]}
service::BuyRequest buy_request(const Fields& fields, const PathFor& path_for);
/// {"file", "run" or "order", "due", "from", "since": {"name", "text"}}; dates as "2026-12-20";
/// since is a calendar that was exported before
service::DaysRequest days_request(const Fields& fields, const PathFor& path_for);
/// {"file", "year"}
service::LearnRequest learn_request(const Fields& fields, const PathFor& path_for);
/// {"what", "name"}
service::ListRequest list_request(const Fields& fields);

}  // namespace brimwright::desk
