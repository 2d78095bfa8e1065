#include "web/request_head.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cstdio>
#include <map>
#include <string>

using namespace brimwright::web;

TEST_CASE("an address's query reads back as what was asked", "[web]") {
  rc::prop("escaped, then decoded", [](const std::map<std::string, std::string>& asked) {
    const auto escaped = [](const std::string& text) {
      std::string out;
      for (const char c : text) {
        char hex[4];
        std::snprintf(hex, sizeof hex, "%%%02x", static_cast<unsigned char>(c));
        out += hex;
      }
      return out;
    };
    std::string address = "/api/file?";
    bool has_nul = false;
    for (const auto& [name, value] : asked) {
      address += escaped(name) + "=" + escaped(value) + "&";
      has_nul = has_nul || (name + value).find('\0') != std::string::npos;
    }
    const auto target = target_of(address);
    RC_ASSERT(target.has_value() == !has_nul);
    if (target) RC_ASSERT(target->query == asked);
  });
  for (const char* broken : {"", "x", "/a b", "/a#b", "/?a=%", "/?a=%4", "/?a=%zz", "/?a=%00",
                             "/?a=1&a=2", "http://127.0.0.1/", "/\x80"})
    CHECK(!target_of(broken));
  CHECK(target_of("/%2e%2e/x")->path == "/%2e%2e/x");  // a path is compared, never decoded
}
