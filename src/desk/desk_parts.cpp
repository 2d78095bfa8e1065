#include "desk/desk_parts.h"

#include "desk/answers.h"

namespace brimwright::desk {

UserTerms page_terms() {
  UserTerms terms = plain_terms();
  terms.say = [](const Answer& answer) {
    if (answer.member == "library")
      return std::string("a start of brimwright that names it as a library");
    if (answer.member == "piece") return "a solid of the piece, " + answer.value;
    return plain_terms().say(answer);
  };
  return terms;
}

Fields fields_of(const DeskRequest& request) { return Fields::parse(request.body, "the request"); }

std::string asked(const DeskRequest& request, const std::string& name) {
  const auto at = request.query.find(name);
  if (at == request.query.end() || at->second.empty())
    throw UserError({"", name}, "is missing in the address", "add ?" + name + "=...");
  return at->second;
}

HttpAnswer refused(const service::Reply& reply) {
  if (reply.status == service::Status::fault) return fault(reply.complaint);
  return complaint(422, reply.wanting, reply.complaint,
                   {.member = reply.asks, .choices = reply.choices, .facts = reply.facts});
}

}  // namespace brimwright::desk
