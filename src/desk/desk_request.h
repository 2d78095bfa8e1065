#pragma once

#include "desk/request.h"

#include <cstdint>
#include <map>
#include <string>

namespace brimwright::desk {

/// How long a request may take: quick ones measure no mesh that is not remembered.
enum class Budget { quick, slow };

/// A request as the worker gets it.
struct DeskRequest {
  std::uint64_t number = 0;  // unlike any other's of this server
  std::string method, path;
  std::map<std::string, std::string> query = {};
  std::string body = {};
};

/// An answer as the worker gives it.
struct DeskAnswer {
  HttpAnswer answer;
  std::string shared_as = {};  // to be opened by its address alone, under this name, if not empty
};

}  // namespace brimwright::desk
