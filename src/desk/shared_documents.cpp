#include "desk/shared_documents.h"

#include "desk/secret.h"

#include <algorithm>
#include <utility>

namespace brimwright::desk {
namespace {

constexpr std::string_view place = "/paper/";

}  // namespace

std::string SharedDocuments::share(HttpAnswer document, const std::string& name) {
  document.more.emplace_back("Content-Security-Policy",
                             "default-src 'none'; style-src 'unsafe-inline'; img-src data:; "
                             "form-action 'none'; base-uri 'none'; frame-ancestors 'none'");
  const std::string path = std::string(place) + new_token() + "/" + name;
  const std::scoped_lock alone(mutex_);
  shared_.push_back({path, std::move(document)});
  if (shared_.size() > most_) shared_.pop_front();
  return path;
}

std::optional<HttpAnswer> SharedDocuments::at(const std::string& path) const {
  const std::scoped_lock alone(mutex_);
  for (const auto& one : shared_)
    if (is_same_secret(one.path, path)) return one.document;
  return std::nullopt;
}

bool SharedDocuments::has(const std::string& path) const {
  const std::scoped_lock alone(mutex_);
  return std::any_of(shared_.begin(), shared_.end(),
                     [&](const Shared& one) { return is_same_secret(one.path, path); });
}

bool SharedDocuments::is_path(const std::string& path) { return path.starts_with(place); }

}  // namespace brimwright::desk
